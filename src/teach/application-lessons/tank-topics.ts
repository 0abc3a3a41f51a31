import { quantity } from "../../quantity/index.js";
import {
  areaPerTankFormula,
  dilutionByPercentFormula,
  dilutionOneInFormula,
  dilutionOnePlusFormula,
} from "../application/tank.js";
import {
  lawnPerTankFormula,
  liquidForLawnFormula,
  sprayForAreaFormula,
  tankLoadCountFormula,
} from "../application/tank-amounts.js";
import { countUp } from "../expression/expression.js";
import { amount, num, slip } from "../topics/figures.js";
import { openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

/** The figures that the levels share. */
const coverageFigures = ({ draw, us }: PoseInput) => {
  const tank = us ? draw.pick([25, 50, 60, 100, 150, 200]) : draw.pick([100, 200, 300, 400, 600]);
  const rate = us ? draw.step(30, 90, 5) : draw.step(300, 800, 50);
  const volume = us ? "gal" : "L";
  const land = us ? "acre" : "ha";
  const perArea = us ? "gal/acre" : "L/ha";
  const capacity = quantity(tank, volume, "spray");
  const applicationVolume = quantity(rate, perArea, "spray");
  const told = `A sprayer has a tank of ${amount(tank, volume)} and applies ${amount(rate, perArea)}.`;
  return { tank, rate, volume, land, capacity, applicationVolume, told } as const;
};

const tankAreaProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { tank, rate, land, capacity, applicationVolume, told } = coverageFigures(input);
  const unit = level === 1 ? land : us ? "ft2" : "m2";
  const size = us ? 43_560 : 10_000;
  const acres = tank / rate;
  return worked({
    text: told,
    ask: { question: "What area does a full tank cover?", unit, of: "none", decimals: level === 1 ? 2 : 0 },
    working: [use(areaPerTankFormula, { capacity, applicationVolume })],
    mistakes: (answer) => [
      slip("tank over area", (rate / tank) * (level === 2 ? size : 1)),
      ...(level === 2
        ? [us ? slip("acre for 1,000 sq ft", acres * 1000) : slip("hectare for 100 m²", acres * 100)]
        : []),
      slip("decimal point one place off", answer * 10),
      slip("decimal point one place off", answer / 10),
    ],
  });
};

/** More loads than that want a larger sprayer. */
const mostLoads = 8;

const lastLoadProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { tank, rate, volume, land, capacity, applicationVolume, told } = coverageFigures(input);
  const area = us ? draw.step(1.5, 9, 0.5) : draw.step(0.6, 4, 0.2);
  const ground = quantity(area, land);
  const spray = area * rate;
  const loads = countUp(spray / tank - 1e-9);
  const isPart = loads > 1 && loads <= mostLoads && loads * tank - spray > 1e-6;
  return worked({
    text: `${told} The job is ${amount(area, land)}: ${place(draw)} and the ground around it.`,
    ask: {
      question: "How much spray goes into the last, part-filled load?",
      unit: volume,
      of: "spray",
      decimals: us ? 1 : 0,
    },
    working: [
      use(sprayForAreaFormula, { area: ground, applicationVolume }),
      use(tankLoadCountFormula, { area: ground, applicationVolume, capacity }),
      total({
        title: "What is left for the last load",
        equation: "r = S - (n - 1) * C",
        parts: {
          S: ["spray for the job", fromStep(1), volume],
          n: ["loads", fromStep(2), "count"],
          C: ["a full tank", tank, volume],
        },
        unit: volume,
      }),
    ],
    mistakes: (answer) => [
      slip("whole tanks only", tank),
      slip("room left in the tank", tank - answer),
      slip("shared out evenly", spray / loads),
      slip("whole job for the last load", spray),
    ],
    // a job of full loads only has no such load, and nobody sprays dozens of them
    within: isPart ? [0, tank] : [1, 0],
  });
};

const coverageProblem = (input: PoseInput): Posed =>
  input.level < 3 ? tankAreaProblem(input) : lastLoadProblem(input);

/** The figures that the levels share. */
const loadFigures = ({ draw, us, level }: PoseInput) => {
  const tank = us ? draw.pick([25, 50, 60, 100]) : draw.pick([100, 200, 300, 400]);
  const rate = us ? draw.step(1, 4, 0.5) : draw.step(0.5, 3, 0.25);
  const carrier = us ? draw.pick([1, 1.5, 2]) : draw.step(300, 600, 50);
  const acre = us ? draw.step(40, 90, 5) : carrier;
  const mixed = level === 3 && us;
  const spread = us ? "gal/1000 ft2" : "L/ha";
  return {
    tank,
    rate,
    carrier,
    acre,
    mixed,
    spread,
    unit: us ? "fl oz" : "L",
    volume: us ? "gal" : "L",
    perSmall: us ? "fl oz/1000 ft2" : "L/ha",
    spot: openGround(draw),
    applicationVolume: mixed ? quantity(acre, "gal/acre", "spray") : quantity(carrier, spread, "spray"),
  } as const;
};

const areaNeedProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { rate, unit, perSmall, spot } = loadFigures(input);
  const area = us ? draw.step(5000, 30_000, 1000) : draw.step(2000, 12_000, 500);
  const per = us ? 1000 : 10_000;
  return worked({
    text: `The label rate of a liquid product is ${amount(rate, perSmall)}. ${spot.replace("the", "The")} covers ${amount(area, us ? "ft2" : "m2")}.`,
    ask: { question: "How much product does it take?", unit, of: "product", decimals: us ? 1 : 2 },
    working: [
      use(liquidForLawnFormula, {
        rate: quantity(rate, perSmall, "product"),
        area: quantity(area, us ? "ft2" : "m2"),
      }),
    ],
    mistakes: (answer) => [
      slip("one unit of area only", rate),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? answer / 43.56 : answer * 100),
      slip("fraction upside down", area / per / rate),
      slip("divided by the area", rate / (area / per)),
    ],
  });
};

const tankNeedProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { tank, rate, carrier, acre, unit, volume, perSmall, spread, spot, mixed, applicationVolume } =
    loadFigures(input);
  const applied = mixed ? amount(acre, "gal/acre") : amount(carrier, spread);
  const per = mixed ? acre / 43.56 : carrier;
  const inSmall = level === 3 && !us;
  const scale = inSmall ? 1000 : 1;
  return worked({
    text: `The label rate of a liquid product is ${amount(rate, perSmall)}. The sprayer for ${spot} applies ${applied} and has a tank of ${amount(tank, volume)}.`,
    ask: {
      question: "How much product goes into a full tank?",
      unit: inSmall ? "mL" : unit,
      of: "product",
      decimals: inSmall ? 0 : us ? 1 : 2,
    },
    working: [
      use(mixed ? areaPerTankFormula : lawnPerTankFormula, {
        capacity: quantity(tank, volume, "spray"),
        applicationVolume,
      }),
      use(liquidForLawnFormula, { rate: quantity(rate, perSmall, "product"), area: fromStep(1) }),
    ],
    mistakes: () => [
      ...(mixed ? [slip("acre for 1,000 sq ft", (tank / acre) * rate)] : []),
      slip("tank over area", ((rate * per) / tank) * scale),
      slip("one unit of area only", rate * scale),
      slip("tank times rate", rate * tank * scale),
      slip("fraction upside down", (tank / per / rate) * scale),
    ],
  });
};

const loadProblem = (input: PoseInput): Posed =>
  input.level === 1 ? areaNeedProblem(input) : tankNeedProblem(input);

/** The figures that the levels share. */
const dilutionFigures = ({ draw, us }: PoseInput) => {
  const volume = us ? draw.pick([2, 3, 4, 5, 10, 15, 25]) : draw.pick([5, 10, 12, 15, 20, 40]);
  const percent = draw.pick([0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3]);
  /** Parts of the whole mix, of which one is product. */
  const parts = draw.pick([20, 25, 40, 50, 64, 100]);
  const big = us ? "gal" : "L";
  return {
    percent,
    parts,
    unit: us ? "fl oz" : "mL",
    /** All of the finished spray in the unit of the answer. */
    all: volume * (us ? 128 : 1000),
    finished: quantity(volume, big, "spray"),
    filled: `A spot sprayer is filled with ${amount(volume, big)} of finished spray for ${place(draw)}.`,
    volume,
  } as const;
};

const percentProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { volume, percent, unit, finished, filled } = dilutionFigures(input);
  return worked({
    text: `${filled} The label asks for ${num(percent)} % of product by volume.`,
    ask: { question: "How much product goes in?", unit, of: "product", decimals: us ? 1 : 0 },
    working: [use(dilutionByPercentFormula, { strength: quantity(percent, "%"), finished })],
    mistakes: (answer) => [
      slip("decimal point one place off", answer * 10),
      slip("decimal point one place off", answer / 10),
      ...(us
        ? [slip("ounce for fluid ounce", answer / 8), slip("fluid ounces in a quart", answer / 4)]
        : [
            slip("percentage as a whole number", answer * 100),
            slip("divided by the percentage", (volume * 1000 * 100) / percent),
          ]),
    ],
  });
};

const partsProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { parts: whole, unit, all, finished, filled } = dilutionFigures(input);
  const among = level === 2;
  const parts = among ? whole : whole - 1;
  return worked({
    text: `${filled} The label asks for 1 part of product ${among ? `in ${parts} parts of the finished mix` : `and ${parts} parts of water`}.`,
    ask: { question: "How much product goes in?", unit, of: "product", decimals: us ? 1 : 0 },
    working: [
      use(among ? dilutionOneInFormula : dilutionOnePlusFormula, { parts: quantity(parts, "1"), finished }),
    ],
    mistakes: (answer) => [
      slip("parts of water for parts of the mix", among ? all / (parts + 1) : all / parts),
      slip("water for product", all - answer),
      slip("product added on top", among ? all / (parts - 1) : all / (parts + 2)),
      slip("parts as percent", (all * parts) / 100),
      ...(us
        ? [slip("ounce for fluid ounce", answer / 8), slip("fluid ounces in a quart", answer / 4)]
        : [slip("decimal point one place off", answer / 10)]),
    ],
  });
};

const dilutionProblem = (input: PoseInput): Posed =>
  input.level === 1 ? percentProblem(input) : partsProblem(input);

/** From a label to what goes into a tank. */
export const tankTopics: readonly Topic[] = [
  {
    id: "tank/coverage",
    title: "What a tank covers, and the last load",
    levels: [1, 2, 3],
    pose: coverageProblem,
  },
  {
    id: "tank/product-per-load",
    title: "Product for an area and for a tank",
    levels: [1, 2, 3],
    pose: loadProblem,
  },
  {
    id: "tank/dilution",
    title: "Dilution by percent and by parts",
    levels: [1, 2, 3],
    pose: dilutionProblem,
  },
];
