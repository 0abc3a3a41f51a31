import { money, quantity } from "../../quantity/index.js";
import { nitrogenLeftOfThreeFormula, nitrogenLeftOfTwoFormula } from "../application/nutrient-elements.js";
import { productForAreaFormula } from "../application/tank-amounts.js";
import { priceAtMarginFormula, priceAtMarkupFormula } from "../ground/money.js";
import { degreeDaysAboveBaseFormula } from "../soil-and-air/growth.js";
import { limeForEquivalentFormula } from "../soil-and-air/soil-report.js";
import { amount, amountOf, listed, slip } from "../topics/figures.js";
import { areaOf, place } from "../topics/park.js";
import { fromStep, inEuros, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

interface Day {
  readonly high: number;
  readonly low: number;
}

const heatOfDay = ({ high, low }: Day, base: number, us: boolean) => {
  const unit = us ? "°F" : "°C";
  return use(
    degreeDaysAboveBaseFormula,
    { max: quantity(high, unit), min: quantity(low, unit), base: quantity(base, unit) },
    us ? "°F d" : "°C d",
  );
};

const oneDay = ({ draw, us }: PoseInput): Posed => {
  const base = us ? draw.pick([32, 50]) : draw.pick([0, 10]);
  const low = us ? draw.int(52, 66) : draw.int(11, 18);
  const high = low + 2 * (us ? draw.int(6, 13) : draw.int(3, 7));
  const unit = us ? "°F" : "°C";
  return worked({
    text: `On a day in June the high at the park is ${amount(high, unit)} and the low ${amount(low, unit)}. Degree-days are counted above a base of ${amount(base, unit)}, by the simple average.`,
    ask: { question: "How many degree-days does the day add?", unit: `${unit} d`, of: "none", decimals: 0 },
    working: [heatOfDay({ high, low }, base, us)],
    mistakes: () => [
      slip("high for mean", high - base),
      ...(base === 0 ? [] : [slip("forgot the base", (high + low) / 2)]),
      slip("range for mean", high - low),
      slip("sum for mean", high + low - base),
      slip("low for mean", low - base),
    ],
  });
};

const severalDays = ({ draw, us }: PoseInput): Posed => {
  const base = us ? 50 : 10;
  const unit = us ? "°F" : "°C";
  const gap = (): number => 2 * (us ? draw.int(5, 11) : draw.int(3, 6));
  const warm = (): Day => {
    const low = us ? draw.int(46, 62) : draw.int(8, 16);
    return { low, high: low + gap() };
  };
  const low = us ? draw.int(28, 38) : draw.int(-1, 3);
  const days = [warm(), { low, high: low + 2 * (us ? draw.int(3, 5) : draw.int(2, 3)) }, warm()];
  const means = days.map((day) => (day.high + day.low) / 2);
  const cold = (means[1] ?? 0) - base;
  const sum = `${unit} d`;
  return worked({
    text:
      `Three days in April have highs and lows of ${days.map((day) => `${amount(day.high, unit)} and ${amount(day.low, unit)}`).join(", then ")}. ` +
      `Degree-days are counted above a base of ${amount(base, unit)}, by the simple average.`,
    ask: {
      question: "How many degree-days do the three days add in all?",
      unit: sum,
      of: "none",
      decimals: 0,
    },
    working: [
      ...days.map((day) => heatOfDay(day, base, us)),
      total({
        title: "The three days together",
        equation: "D = D_1 + D_2 + D_3",
        parts: {
          D_1: ["first day", fromStep(1), sum],
          D_2: ["second day", fromStep(2), sum],
          D_3: ["third day", fromStep(3), sum],
        },
        unit: sum,
      }),
    ],
    mistakes: (answer) => [
      slip("negative days counted", answer + cold),
      slip(
        "forgot the base",
        means.reduce((a, b) => a + b, 0),
      ),
      slip(
        "high for mean",
        days.reduce((a, day) => a + Math.max(0, day.high - base), 0),
      ),
      slip("one day only", Math.max(0, (means[0] ?? 0) - base)),
      slip("added instead of taken away", answer - cold),
    ],
  });
};

const heatProblem = (input: PoseInput): Posed => (input.level === 1 ? oneDay(input) : severalDays(input));

const dollarPrices = { markup: priceAtMarkupFormula, margin: priceAtMarginFormula };
const euroPrices = { markup: inEuros(priceAtMarkupFormula), margin: inEuros(priceAtMarginFormula) };

const priceProblem = ({ draw, us, level }: PoseInput): Posed => {
  const currency = us ? "USD" : "EUR";
  const cost = draw.step(120, 900, 10);
  const percent = draw.pick([15, 20, 25, 30, 40]);
  const unit = `money:${currency}`;
  const paid = money(cost, currency);
  const markup = level === 1;
  const share = quantity(percent, "%");
  const formulas = us ? dollarPrices : euroPrices;
  return worked({
    text: `A visit to ${place(draw)} costs the contractor ${amount(cost, unit)}. The price is set ${markup ? `with a markup of ${percent} % on the cost` : `for a margin of ${percent} % of the price`}.`,
    ask: { question: "What is the price?", unit, of: "none", decimals: 2 },
    working: [
      markup
        ? use(formulas.markup, { cost: paid, markup: share })
        : use(formulas.margin, { cost: paid, margin: share }),
    ],
    mistakes: () => [
      markup
        ? slip("markup for margin", (cost * 100) / (100 - percent))
        : slip("margin for markup", cost * (1 + percent / 100)),
      slip("percent alone", (cost * percent) / 100),
      slip("percent taken off", cost * (1 - percent / 100)),
      slip("divided by the percent alone", (cost * 100) / percent),
    ],
  });
};

const limeProblem = ({ draw, us, level }: PoseInput): Posed => {
  const need = us ? draw.step(20, 90, 5) : draw.step(1000, 4000, 250);
  const rating = draw.pick([60, 75, 80, 90, 95]);
  const area = areaOf(draw, us);
  const rateUnit = us ? "lb/1000 ft2" : "kg/ha";
  const mass = us ? "lb" : "kg";
  const rate = (need * 100) / rating;
  const whole = level === 2;
  const units = area / (us ? 1000 : 10_000);
  const scale = whole ? units : 1;
  const ofThisLime = use(limeForEquivalentFormula, {
    rate: quantity(need, rateUnit, "CaCO3 equivalent"),
    equivalent: quantity(rating, "%"),
  });
  return worked({
    text:
      `The soil report for ${place(draw)} asks for ${amountOf(need, rateUnit, "calcium carbonate equivalent")}. The lime on hand has a calcium carbonate equivalent of ${rating} %.` +
      (whole ? ` The area is ${amount(area, us ? "ft2" : "m2")}.` : ""),
    ask: whole
      ? {
          question: "How much of this lime does the whole area take?",
          unit: mass,
          of: "product",
          decimals: 0,
        }
      : { question: "What is the rate of this lime?", unit: rateUnit, of: "product", decimals: us ? 1 : 0 },
    working: whole
      ? [
          ofThisLime,
          use(productForAreaFormula, { rate: fromStep(1), area: quantity(area, us ? "ft2" : "m2") }),
        ]
      : [ofThisLime],
    mistakes: () => [
      slip("multiplied by the rating", ((need * rating) / 100) * scale),
      slip("forgot the rating", need * scale),
      slip("percentage taken off", need * (1 + (100 - rating) / 100) * scale),
      ...(whole ? [slip("one unit of area only", rate)] : [slip("decimal point one place off", rate / 10)]),
    ],
    within: whole ? (us ? [20, 950] : [10, 480]) : us ? [10, 125] : [500, 5500],
  });
};

const nitrogenLeft = ({ draw, us, level }: PoseInput): Posed => {
  const unit = us ? "lb/1000 ft2" : "kg/ha";
  const cap = us ? draw.step(2.5, 4, 0.25) : draw.step(120, 200, 10);
  const applied = Array.from({ length: level + 1 }, () =>
    us ? draw.step(0.4, 0.9, 0.05) : draw.step(20, 45, 5),
  );
  const used = applied.reduce((a, b) => a + b, 0);
  const names = ["first", "second", "third"];
  return worked({
    text: `The plan for ${place(draw)} sets a limit of ${amountOf(cap, unit, "nitrogen")} a year. So far ${listed(applied.map((each) => amount(each, unit)))} of nitrogen have gone down.`,
    ask: { question: "How much nitrogen is left under the limit?", unit, of: "N", decimals: us ? 2 : 0 },
    working: [
      use(level === 1 ? nitrogenLeftOfTwoFormula : nitrogenLeftOfThreeFormula, {
        cap: quantity(cap, unit, "N"),
        ...Object.fromEntries(applied.map((each, i) => [names[i], quantity(each, unit, "N")])),
      }),
    ],
    mistakes: (left) => [
      slip("what is used for what is left", used),
      slip("forgot an entry", left + (applied[applied.length - 1] ?? 0)),
      slip("added instead of taken away", cap + used),
      slip("forgot what is gone already", cap),
    ],
  });
};

/** The season, the soil and the bill. */
export const seasonTopics: readonly Topic[] = [
  { id: "interval/degree-days", title: "Degree-days", levels: [1, 2], pose: heatProblem },
  {
    id: "limits/nitrogen-left",
    title: "Nitrogen left under a yearly limit",
    levels: [1, 2],
    pose: nitrogenLeft,
  },
  { id: "price/margin", title: "Markup and margin", levels: [1, 2], pose: priceProblem },
  { id: "soil/lime", title: "Lime at hand for a recommendation", levels: [1, 2], pose: limeProblem },
];
