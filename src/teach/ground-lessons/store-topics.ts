import { quantity } from "../../quantity/index.js";
import { nutrientsSuppliedFormula } from "../application/nutrient-rates.js";
import { packagesForNeedFormula, productForAreaFormula } from "../application/tank-amounts.js";
import { countDown, countUp } from "../expression/expression.js";
import { fractionRemainingFormula } from "../ground/air-and-decay.js";
import { reorderPointFormula } from "../ground/money.js";
import { fewestApplicationsFormula } from "../soil-and-air/growth.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { aGrade } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const stockProblem = ({ draw, us, level }: PoseInput): Posed => {
  const unit = us ? "lb" : "kg";
  const taken = us ? draw.step(200, 900, 50) : draw.step(100, 450, 25);
  const during = draw.pick([28, 42, 56]);
  const lead = draw.pick([5, 7, 10, 14]);
  const kept = level === 1 ? 0 : draw.step(20, 100, 10);
  return worked({
    text: `In ${during} days of the season the park uses ${amount(taken, unit)} of fertilizer. A delivery comes ${lead} days after the order.${kept > 0 ? ` ${amount(kept, unit)} is always kept in reserve.` : ""}`,
    ask: { question: "At what stock level must the next order be placed?", unit, of: "product", decimals: 0 },
    working: [
      use(reorderPointFormula, {
        use: quantity(taken, unit, "product"),
        during: quantity(during, "d"),
        leadTime: quantity(lead, "d"),
        safetyStock: quantity(kept, unit, "product"),
      }),
    ],
    mistakes: (answer) => [
      slip("use of the whole time", taken + kept),
      slip("fraction upside down", (taken * during) / lead + kept),
      ...(kept > 0
        ? [slip("lead time only", answer - kept), slip("stock kept back only", kept)]
        : [slip("decimal point one place off", answer / 10), slip("one day only", taken / during)]),
    ],
  });
};

const fillProblem = ({ draw, us }: PoseInput): Posed => {
  const rate = us ? draw.step(3, 6, 0.25) : draw.step(150, 300, 10);
  const [a, b, c] = us
    ? [draw.step(8000, 40_000, 1000), draw.step(6000, 14_400, 200), draw.step(20_000, 60_000, 1000)]
    : [draw.step(800, 4000, 100), draw.step(600, 1400, 20), draw.step(2000, 6000, 100)];
  const hopper = us ? draw.pick([50, 80, 100]) : draw.pick([25, 40, 50]);
  const unit = us ? "lb" : "kg";
  const land = us ? "ft2" : "m2";
  const perArea = us ? "lb/1000 ft2" : "kg/ha";
  const area = a + b + c;
  const need = (rate * area) / (us ? 1000 : 10_000);
  return worked({
    text: `A route takes in the north practice pitch (${amount(a, land)}), the bowling green (${amount(b, land)}) and the meadow (${amount(c, land)}), all at ${amountOf(rate, perArea, "fertilizer")}. The hopper holds ${amount(hopper, unit)}.`,
    ask: {
      question: "How many times is the hopper filled?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["fill", "fills"],
    },
    working: [
      total({
        title: "Area of the route",
        equation: "A = a + b + c",
        parts: {
          a: ["north practice pitch", a, land],
          b: ["bowling green", b, land],
          c: ["meadow", c, land],
        },
        unit: land,
      }),
      use(productForAreaFormula, { rate: quantity(rate, perArea, "product"), area: fromStep(1) }),
      use(packagesForNeedFormula, { need: fromStep(2), contents: quantity(hopper, unit) }),
    ],
    mistakes: (answer) => [
      slip("rounded packages down", countDown(need / hopper)),
      slip("one package too many", answer + 1),
      slip("counted without the package size", countUp(need)),
      slip("forgot an entry", countUp(((a + b) * rate) / (us ? 1000 : 10_000) / hopper)),
    ],
  });
};

const suppliedBy = (rate: number, percent: number, perArea: "lb/1000 ft2" | "kg/ha") =>
  use(nutrientsSuppliedFormula, {
    rate: quantity(rate, perArea, "product"),
    percent: quantity(percent, "% w/w", "N/product"),
  });

const totalProblem = ({ draw, us, level }: PoseInput): Posed => {
  const perArea = us ? "lb/1000 ft2" : "kg/ha";
  const rate = (): number => (us ? draw.step(2, 5, 0.25) : draw.step(100, 250, 10));
  const [r1, r2] = [rate(), rate()];
  const [n1, n2] = [draw.pick([16, 18, 20, 24]), draw.pick([10, 12, 25, 28, 30])];
  const limit = us ? draw.step(2.5, 4, 0.25) : draw.step(120, 200, 10);
  const both = (r1 * n1 + r2 * n2) / 100;
  const left = level === 2;
  const first = (r1 * n1) / 100;
  return worked({
    text:
      `The ledger of the south practice pitch has ${amount(r1, perArea)} of ${aGrade(`${n1}-0-8`)} in May and ${amount(r2, perArea)} of ${aGrade(`${n2}-0-10`)} in September.` +
      (left ? ` The plan sets a limit of ${amountOf(limit, perArea, "nitrogen")} for the year.` : ""),
    ask: {
      question: left
        ? "How much nitrogen is left under the limit?"
        : "How much nitrogen did it get in the season?",
      unit: perArea,
      of: "N",
      decimals: us ? 2 : 1,
    },
    working: [
      suppliedBy(r1, n1, perArea),
      suppliedBy(r2, n2, perArea),
      total({
        title: "The season",
        equation: "N = a + b",
        parts: { a: ["May", fromStep(1), perArea], b: ["September", fromStep(2), perArea] },
        unit: perArea,
      }),
      ...(left
        ? [
            total({
              title: "Left under the limit",
              equation: "r = C - N",
              parts: { C: ["limit", limit, perArea], N: ["put down", fromStep(3), perArea] },
              unit: perArea,
            }),
          ]
        : []),
    ],
    mistakes: () => [
      ...(left ? [] : [slip("product for season's total", r1 + r2)]),
      slip("one entry only", left ? limit - first : first),
      slip(
        "mean of the percentages",
        left ? limit - ((r1 + r2) * (n1 + n2)) / 200 : ((r1 + r2) * (n1 + n2)) / 200,
      ),
      slip("decimal point one place off", left ? (limit - both) * 10 : both * 10),
      ...(left
        ? [slip("what is used for what is left", both), slip("added instead of taken away", limit + both)]
        : [slip("decimal point one place off", both / 10)]),
    ],
    ...(left && { within: us ? [0.2, 3] : [10, 150] }),
  });
};

const halfProblem = ({ draw, level }: PoseInput): Posed => {
  const half = draw.pick([8, 10, 12, 15, 20, 30]);
  const times = level === 1 ? draw.pick([2, 3, 4]) : draw.pick([0.5, 1.5, 2.5]);
  const days = half * times;
  return worked({
    text: `A residue has a half-life of ${half} days. ${days} days have gone by.`,
    ask: { question: "What percent of it is left?", unit: "%", of: "none", decimals: 1 },
    working: [use(fractionRemainingFormula, { halfLife: quantity(half, "d"), elapsed: quantity(days, "d") })],
    mistakes: (answer) => [
      ...(times > 1 ? [slip("one half-life too few", answer * 2)] : []),
      slip("one half-life too many", answer / 2),
      slip("share that is gone", 100 - answer),
      ...(times < 2 ? [slip("linear decay", 100 - 50 * times)] : []),
      slip("fraction upside down", 100 * 0.5 ** (1 / times)),
    ],
  });
};

const splitProblem = ({ draw, us }: PoseInput): Posed => {
  const perArea = us ? "lb/1000 ft2" : "kg/ha";
  const season = us ? draw.step(2, 5, 0.25) : draw.step(100, 250, 10);
  const most = us ? draw.step(0.6, 0.9, 0.05) : draw.step(30, 45, 5);
  return worked({
    text: `The program for the north practice pitch calls for ${amountOf(season, perArea, "nitrogen")} for the season, and no application may have more than ${amount(most, perArea)}.`,
    ask: {
      question: "What is the smallest number of applications?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["application", "applications"],
    },
    working: [
      use(fewestApplicationsFormula, {
        total: quantity(season, perArea, "N"),
        perApplication: quantity(most, perArea, "N"),
      }),
    ],
    mistakes: (answer) => [
      slip("rounded applications down", countDown(season / most)),
      slip("one application too many", answer + 1),
      slip("half of the most at one time", countUp((2 * season) / most)),
      slip("forgot the most at one time", countUp(season)),
    ],
  });
};

/** Stock, routes, the season's total, what is left of it. */
export const storeTopics: readonly Topic[] = [
  { id: "plan/reorder", title: "When to order again", levels: [1, 2], pose: stockProblem },
  { id: "plan/route", title: "Fills on a route", levels: [2], pose: fillProblem },
  { id: "ledger/season-total", title: "The season's total", levels: [1, 2], pose: totalProblem },
  { id: "interval/half-life", title: "Half-lives", levels: [1, 2], pose: halfProblem },
  { id: "interval/split", title: "Applications of a season", levels: [1], pose: splitProblem },
];
