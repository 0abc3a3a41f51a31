import { quantity } from "../../quantity/index.js";
import { countDown, countUp } from "../expression/expression.js";
import { growthBetweenMowingsFormula, leafRemovedFormula, mowAtHeightFormula } from "../ground/stand.js";
import {
  bulkSeedFormula,
  plantsForAreaFormula,
  plantsForAreaWithExtraFormula,
  pureLiveSeedFormula,
  seedOrderFormula,
} from "../ground/stand-planting.js";
import { amount, amountOf, slip } from "../topics/figures.js";
import { areaOf, openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

/** The figures that the levels share. */
const seedFigures = ({ draw, us }: PoseInput) => {
  const purity = draw.int(80, 98);
  const germination = draw.int(70, 92);
  const rate = us ? draw.step(2, 8, 0.5) : draw.step(100, 350, 10);
  const area = areaOf(draw, us);
  const lot = { purity: quantity(purity, "%"), germination: quantity(germination, "%") };
  const live = (purity * germination) / 100;
  const tag = `The seed lot for ${place(draw)} has ${purity} % purity and ${germination} % germination.`;
  return { purity, germination, rate, area, lot, live, tag } as const;
};

const liveSeedProblem = (input: PoseInput): Posed => {
  const { purity, germination, lot, tag } = seedFigures(input);
  return worked({
    text: tag,
    ask: { question: "What percent of the lot is pure live seed?", unit: "%", of: "none", decimals: 1 },
    working: [use(pureLiveSeedFormula, lot, "% w/w")],
    mistakes: () => [
      slip("purity only", purity),
      slip("germination only", germination),
      slip("average of purity and germination", (purity + germination) / 2),
      slip("subtracted the losses", purity + germination - 100),
    ],
  });
};

const bulkSeedProblem = (input: PoseInput): Posed => {
  const { draw, us, level } = input;
  const { purity, germination, rate, area, lot, live, tag } = seedFigures(input);
  const mass = us ? "lb" : "kg";
  const bag = us ? draw.pick([25, 50]) : draw.pick([10, 20]);
  const rateUnit = us ? "lb/1000 ft2" : "kg/ha";
  const units = area / (us ? 1000 : 10_000);
  const alive = rate * units;
  const seed = (alive * 100) / live;
  const less = (alive * live) / 100;
  const text = `${tag} The rate is ${amountOf(rate, rateUnit, "pure live seed")}, and the area is ${amount(area, us ? "ft2" : "m2")}.`;
  const order = [
    use(bulkSeedFormula, { pureLiveSeed: quantity(rate, rateUnit, "pure live seed"), ...lot }),
    use(seedOrderFormula, { area: quantity(area, us ? "ft2" : "m2"), rate: fromStep(1) }),
  ];
  if (level === 2) {
    return worked({
      text,
      ask: { question: "How much seed of this lot does it take?", unit: mass, of: "seed", decimals: 1 },
      working: order,
      mistakes: () => [
        slip("live seed for bulk seed", alive),
        slip("multiplied by the live share", less),
        slip("purity only", (alive * 100) / purity),
        slip("germination only", (alive * 100) / germination),
        slip("one unit of area only", (rate * 100) / live),
      ],
    });
  }
  return worked({
    text: `${text} A bag holds ${amount(bag, mass)}.`,
    ask: {
      question: "How many bags must be bought?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["bag", "bags"],
    },
    working: [
      ...order,
      total({
        title: "Bags",
        equation: "n = ceil(B / b)",
        parts: { B: ["seed", fromStep(2), mass], b: ["a bag", bag, mass] },
        unit: "count",
      }),
    ],
    mistakes: (answer) => [
      slip("rounded packages down", countDown(seed / bag)),
      slip("live seed for bulk seed", countUp(alive / bag)),
      slip("multiplied by the live share", countUp(less / bag)),
      slip("one package too many", answer + 1),
      slip("counted without the package size", countUp(seed)),
    ],
  });
};

const seedProblem = (input: PoseInput): Posed =>
  input.level === 1 ? liveSeedProblem(input) : bulkSeedProblem(input);

/** The figures that the levels share. */
const mowingFigures = ({ draw, us }: PoseInput) => {
  const unit = us ? "in" : "mm";
  const cut = us ? draw.step(1, 3.5, 0.25) : draw.step(24, 90, 6);
  const standing = us ? cut + draw.step(0.25, 1.5, 0.25) : cut + draw.int(6, 40);
  const spot = openGround(draw);
  return { unit, cut, standing, spot } as const;
};

const leafRemovedProblem = (input: PoseInput): Posed => {
  const { unit, cut, standing, spot } = mowingFigures(input);
  return worked({
    text: `The grass on ${spot} stands ${amount(standing, unit)} high and is cut to ${amount(cut, unit)}.`,
    ask: { question: "What percent of the height comes off?", unit: "%", of: "none", decimals: 0 },
    working: [use(leafRemovedFormula, { standing: quantity(standing, unit), cut: quantity(cut, unit) })],
    mistakes: () => [
      slip("share of the cut height", ((standing - cut) * 100) / cut),
      slip("share that stays", (cut * 100) / standing),
      slip("fraction upside down", (standing * 100) / cut),
    ],
  });
};

const oneThird = (spot: string, height: string): string =>
  `${spot.replace("the", "The")} is kept at ${height}, and no mowing takes off more than a third of the standing grass.`;

const mowAtProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { unit, cut, spot } = mowingFigures(input);
  return worked({
    text: oneThird(spot, amount(cut, unit)),
    ask: {
      question: "At what grass height is the next mowing due?",
      unit,
      of: "none",
      decimals: us ? 2 : 0,
    },
    working: [use(mowAtHeightFormula, { cut: quantity(cut, unit) })],
    mistakes: () => [
      slip("a third on top", (cut * 4) / 3),
      slip("two thirds of the cut", (cut * 2) / 3),
      slip("whole height again", cut * 2),
      slip("three times the cut", cut * 3),
    ],
  });
};

const mowIntervalProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { unit, cut, spot } = mowingFigures(input);
  const rate = us ? draw.step(0.1, 0.25, 0.05) : draw.step(2, 6, 1);
  const perDay = us ? "in/d" : "mm/d";
  return worked({
    text: `${oneThird(spot, amount(cut, unit))} It grows ${amount(rate, perDay)}.`,
    ask: { question: "After how many days is the next mowing due?", unit: "d", of: "none", decimals: 1 },
    working: [
      use(growthBetweenMowingsFormula, { cut: quantity(cut, unit) }),
      total({
        title: "Days for that growth",
        equation: "d = G / r",
        parts: { G: ["growth until then", fromStep(1), unit], r: ["growth in a day", rate, perDay] },
        unit: "d",
      }),
    ],
    mistakes: (answer) => [
      slip("a third on top", cut / 3 / rate),
      slip("forgot the growth before", (cut * 1.5) / rate),
      slip("multiplied by the rate", (cut / 2) * rate),
      slip("whole height again", cut / rate),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const mowingProblem = (input: PoseInput): Posed =>
  input.level === 1
    ? leafRemovedProblem(input)
    : input.level === 2
      ? mowAtProblem(input)
      : mowIntervalProblem(input);

const plugProblem = ({ draw, us, level }: PoseInput): Posed => {
  const spacing = us ? draw.pick([6, 8, 9, 10, 12, 15]) : draw.pick([15, 20, 25, 30, 40]);
  const area = us ? draw.step(200, 3000, 100) : draw.step(20, 300, 10);
  const extra = draw.pick([5, 10, 15]);
  const more = level === 2;
  const ground = {
    area: quantity(area, us ? "ft2" : "m2"),
    spacing: quantity(spacing, us ? "in" : "cm"),
  };
  const side = us ? 144 : 10_000;
  const scale = more ? 1 + extra / 100 : 1;
  const plain = (area * side) / spacing ** 2;
  const exact = (plain * (more ? 100 + extra : 100)) / 100;
  return worked({
    text:
      `A bare part of the meadow, ${amount(area, us ? "ft2" : "m2")}, is planted with plugs in a square grid, ${amount(spacing, us ? "in" : "cm")} apart.` +
      (more ? ` The crew orders ${extra} % more, for losses.` : ""),
    ask: {
      question: "How many plugs must be ordered?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["plug", "plugs"],
    },
    working: [
      more
        ? use(plantsForAreaWithExtraFormula, { ...ground, extra: quantity(extra, "%") })
        : use(plantsForAreaFormula, ground),
    ],
    mistakes: () => [
      slip("spacing not squared", countUp((area * (us ? 12 : 100) * scale) / spacing)),
      slip(us ? "feet for inches" : "meters for centimeters", countUp(exact / (us ? 12 : 100))),
      slip("one plant a unit of area", countUp(area * scale)),
      ...(more
        ? [
            slip("forgot the extra", countUp(plain)),
            slip("percent taken off", countUp((plain * (100 - extra)) / 100)),
          ]
        : []),
    ],
  });
};

/** What it takes to establish turf and to keep it. */
export const standTopics: readonly Topic[] = [
  { id: "stand/seed", title: "Pure live seed", levels: [1, 2, 3], pose: seedProblem },
  { id: "stand/mowing", title: "The one-third rule", levels: [1, 2, 3], pose: mowingProblem },
  { id: "stand/plugs", title: "Plugs for an area", levels: [1, 2], pose: plugProblem },
];
