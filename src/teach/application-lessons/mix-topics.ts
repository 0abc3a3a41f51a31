import { elementOf } from "../../nutrient/index.js";
import { quantity } from "../../quantity/index.js";
import { phosphorusOfPhosphateFormula, potassiumOfPotashFormula } from "../application/nutrient-elements.js";
import {
  dryProductForSprayFormula,
  liquidForLawnFormula,
  liquidForSprayFormula,
  packagesForVolumeFormula,
} from "../application/tank-amounts.js";
import { countDown, countUp } from "../expression/expression.js";
import { amount, num, slip } from "../topics/figures.js";
import { aGrade, areaOf, openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const volumeUnit = (us: boolean): "gal" | "L" => (us ? "gal" : "L");
const massUnit = (us: boolean): "lb" | "kg" => (us ? "lb" : "kg");

/** Rates that a label states for a volume of spray. */
const perVolumeProblem = ({ draw, us, level }: PoseInput): Posed => {
  const tank = us ? draw.pick([4, 15, 25, 30, 50]) : draw.pick([15, 50, 100, 150, 200]);
  const rate = us ? draw.step(0.5, 4, 0.25) : draw.step(2, 20, 0.5);
  const unit = us ? "fl oz" : "mL";
  return level === 1
    ? worked({
        text: `The label of a liquid product asks for ${amount(rate, us ? "fl oz/gal" : "mL/L")} of spray. The tank for ${place(draw)} is filled to ${amount(tank, volumeUnit(us))}.`,
        ask: { question: "How much product goes in?", unit, of: "product", decimals: us ? 1 : 0 },
        working: [
          use(liquidForSprayFormula, {
            rate: quantity(rate, us ? "fl oz/gal" : "mL/L", "product/spray"),
            sprayVolume: quantity(tank, volumeUnit(us), "spray"),
          }),
        ],
        mistakes: (answer) => [
          slip("fraction upside down", tank / rate),
          slip("one unit of spray only", rate),
          slip("decimal point one place off", answer / 10),
          slip("decimal point one place off", answer * 10),
          slip("added instead of multiplied", rate + tank),
        ],
      })
    : hundredProblem({ draw, us, level, units: us ? "US" : "metric" });
};

/** Rates for 100 gallons or 100 liters. */
const hundredProblem = ({ draw, us }: PoseInput): Posed => {
  const tank = us ? draw.pick([25, 50, 60, 150, 200, 300]) : draw.pick([50, 150, 200, 400, 600]);
  const rate = us ? draw.step(0.5, 4, 0.25) : draw.step(50, 300, 10);
  const mass = us ? "lb" : "g";
  const big = volumeUnit(us);
  return worked({
    text: `The label of a wettable powder asks for ${amount(rate, mass)} in 100 ${big} of spray. The tank for ${place(draw)} is filled to ${amount(tank, big)}.`,
    ask: { question: "How much powder goes in?", unit: mass, of: "product", decimals: us ? 2 : 0 },
    working: [
      total({
        title: `Powder for 1 ${big}`,
        equation: "c = m / V",
        parts: { m: ["powder", rate, mass], V: ["spray", 100, big] },
        unit: `${mass}/${big}`,
        of: "product/spray",
      }),
      use(dryProductForSprayFormula, {
        rate: fromStep(1),
        sprayVolume: quantity(tank, big, "spray"),
      }),
    ],
    mistakes: (answer) => [
      slip("rate for 100 as for one", rate * tank),
      slip("one unit of spray only", rate),
      slip("fraction upside down", (rate * 100) / tank),
      slip("decimal point one place off", answer / 10),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** What the second and the third number of a grade mean in a bag. */
const bagContentProblem = ({ draw, us, level }: PoseInput): Posed => {
  const [n, p, k] = [
    draw.pick([10, 12, 16, 18, 20]),
    draw.pick([4, 5, 6, 8, 10]),
    draw.pick([7, 9, 11, 14, 15]),
  ];
  const bag = us ? draw.pick([40, 50]) : draw.pick([20, 25]);
  const bags = draw.int(1, 6);
  const mass = massUnit(us);
  const potash = draw.pick([true, false]);
  const percent = potash ? k : p;
  const weight = bag * bags;
  const oxide = (weight * percent) / 100;
  const element = level === 2;
  const [name, of] = potash ? (["potash", "K2O"] as const) : (["phosphate", "P2O5"] as const);
  const inBags = total({
    title: potash ? "Potash in the bags" : "Phosphate in the bags",
    equation: "X = n * B * a / 100",
    parts: {
      n: ["bags", bags, "count"],
      B: ["in a bag", bag, mass],
      a: [`percent of ${name}`, percent, "1"],
    },
    unit: mass,
    of,
  });
  const share = num(elementOf(quantity(1, "kg", of)).value, 4);
  const told = `${bags === 1 ? "A bag" : `${bags} bags`} of ${amount(bag, mass)}${bags === 1 ? "" : " each"} of ${aGrade(`${n}-${p}-${k}`)} fertilizer ${bags === 1 ? "goes" : "go"} on ${place(draw)}.`;
  return worked({
    text: element
      ? `${told} 1 ${mass} of ${name} (${of}) holds ${share} ${mass} of ${potash ? "potassium (K)" : "phosphorus (P)"}.`
      : told,
    ask: {
      question: element
        ? `How much ${potash ? "potassium (K)" : "phosphorus (P)"} is that?`
        : `How much ${name} (${of}) is that?`,
      unit: mass,
      of: element ? (potash ? "K" : "P") : of,
      decimals: 2,
      slack: element ? 2e-4 : 0,
    },
    working: element
      ? [
          inBags,
          use(potash ? potassiumOfPotashFormula : phosphorusOfPhosphateFormula, { amount: fromStep(1) }),
        ]
      : [inBags],
    mistakes: (answer) => [
      slip("wrong number of the grade", (answer * (potash ? p : k)) / percent),
      slip("nutrient for product", weight),
      ...(element ? [slip(potash ? "potash for potassium" : "oxide for element", oxide)] : []),
      ...(bags > 1 ? [slip("one bag only", answer / bags)] : []),
      slip("divided by the percentage", (weight * 100) / percent),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** The figures that the levels share. */
const seasonFigures = ({ draw, us }: PoseInput) => {
  const rate = us ? draw.step(1, 6, 0.5) : draw.step(1, 6, 0.25);
  const area = us ? areaOf(draw, us) : draw.step(2000, 12_000, 500);
  const times = draw.int(3, 6);
  const perArea = us ? "fl oz/1000 ft2" : "L/ha";
  const small = us ? "fl oz" : "L";
  const land = us ? "ft2" : "m2";
  const once = (rate * area) / (us ? 1000 : 10_000);
  const steps = [
    use(
      liquidForLawnFormula,
      { rate: quantity(rate, perArea, "product"), area: quantity(area, land) },
      small,
    ),
    total({
      title: "The season",
      equation: "M = n * m",
      parts: { n: ["applications", times, "count"], m: ["product each time", fromStep(1), small] },
      unit: small,
      of: "product",
    }),
  ];
  const told = `The plan has ${times} applications of a liquid product at ${amount(rate, perArea)} on ${amount(area, land)} of ${us ? place(draw) : openGround(draw)}.`;
  return { rate, times, small, once, season: once * times, steps, told } as const;
};

const seasonNeedProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { rate, times, small, once, steps, told } = seasonFigures(input);
  return worked({
    text: told,
    ask: {
      question: "How much product does the season take?",
      unit: small,
      of: "product",
      decimals: us ? 0 : 1,
    },
    working: steps,
    mistakes: (answer) => [
      slip("forgot the number of applications", once),
      slip("one unit of area only", rate * times),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? answer / 43.56 : answer * 100),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const seasonJugsProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { times, season, steps, told } = seasonFigures(input);
  const jug = us ? draw.pick([1, 2.5]) : draw.pick([1, 5]);
  const big = volumeUnit(us);
  const volume = us ? season / 128 : season;
  const exact = volume / jug;
  return worked({
    text: `${told} It is sold in jugs of ${amount(jug, big)}.${us ? " A gallon is 128 fl oz." : ""}`,
    ask: {
      question: "How many jugs does the season take?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["jug", "jugs"],
    },
    working: [...steps, use(packagesForVolumeFormula, { need: fromStep(2), contents: quantity(jug, big) })],
    mistakes: (answer) => [
      slip("rounded packages down", countDown(exact)),
      slip("one package too many", answer + 1),
      slip("forgot the number of applications", countUp(exact / times)),
      slip("counted without the package size", countUp(volume)),
      slip("rounded for each application", times * countUp(exact / times)),
      ...(us ? [slip("ounce for fluid ounce", countUp(exact * 8))] : []),
    ],
    within: [1, 40],
  });
};

/** What a season takes of one product. */
const seasonOrderProblem = (input: PoseInput): Posed =>
  input.level === 1 ? seasonNeedProblem(input) : seasonJugsProblem(input);

/** Labels that state a volume or a weight, what is in a bag, and what a season takes. */
export const mixTopics: readonly Topic[] = [
  { id: "tank/per-volume", title: "Product for a volume of spray", levels: [1, 2], pose: perVolumeProblem },
  {
    id: "nutrient/in-a-bag",
    title: "Phosphate and potash in a bag",
    levels: [1, 2],
    pose: bagContentProblem,
  },
  { id: "plan/season-order", title: "Product for a season", levels: [1, 2], pose: seasonOrderProblem },
];
