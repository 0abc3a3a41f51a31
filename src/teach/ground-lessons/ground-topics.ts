import { quantity } from "../../quantity/index.js";
import { countDown, countUp } from "../expression/expression.js";
import { rectangleAreaFormula, trapezoidAreaFormula } from "../ground/site-shapes.js";
import { sodOrderFormula } from "../ground/stand-planting.js";
import { clippingDryMassFormula, clippingNitrogenFormula } from "../ground/stand-work.js";
import { precipitationRateFormula, zoneRunTimeFormula } from "../ground/water-depth.js";
import { sodiumAdsorptionRatioFormula } from "../soil-and-air/salty-water.js";
import { amountInSoilFormula, soilMassFormula } from "../soil-and-air/soil-report.js";
import { amount, amountOf, num, slip } from "../topics/figures.js";
import { place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const trapezoidProblem = ({ draw, us, level }: PoseInput): Posed => {
  const a = us ? draw.step(60, 200, 5) : draw.step(20, 60, 1);
  const b = us ? draw.step(40, 160, 5) : draw.step(12, 50, 1);
  const high = us ? draw.step(30, 120, 5) : draw.step(10, 40, 1);
  const length = us ? "ft" : "m";
  const acres = level === 2;
  const big = us ? "acre" : "ha";
  const per = us ? 43_560 : 10_000;
  const scale = acres ? 1 / per : 1;
  return worked({
    text: `A part of the meadow is a trapezoid: its parallel sides measure ${amount(a, length)} and ${amount(b, length)}, and they are ${amount(high, length)} apart.`,
    ask: {
      question: "What is its area?",
      unit: acres ? big : us ? "ft2" : "m2",
      of: "none",
      decimals: acres ? 3 : 0,
    },
    working: [
      use(trapezoidAreaFormula, {
        a: quantity(a, length),
        b: quantity(b, length),
        height: quantity(high, length),
      }),
    ],
    mistakes: (answer) => [
      slip("one side for both", a * high * scale),
      slip("one side for both", b * high * scale),
      slip("sum of the sides", answer * 2),
      slip("halved twice", answer / 2),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const rectangleProblem = ({ draw, us, level }: PoseInput): Posed => {
  const long = us ? draw.step(90, 330, 10) : draw.step(30, 110, 5);
  const wide = us ? draw.step(50, 180, 10) : draw.step(15, 70, 5);
  const length = us ? "ft" : "m";
  const big = us ? "acre" : "ha";
  const area = long * wide;
  const acres = level === 2;
  return worked({
    text: `A practice pitch is ${amount(long, length)} long and ${amount(wide, length)} wide.`,
    ask: {
      question: "What is its area?",
      unit: acres ? big : us ? "ft2" : "m2",
      of: "none",
      decimals: acres ? 3 : 0,
    },
    working: [use(rectangleAreaFormula, { length: quantity(long, length), width: quantity(wide, length) })],
    mistakes: (answer) => [
      slip("triangle for rectangle", answer / 2),
      slip("perimeter for area", acres ? (2 * (long + wide)) / (us ? 43_560 : 10_000) : 2 * (long + wide)),
      ...(acres ? [slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", area / (us ? 1000 : 100))] : []),
      slip("decimal point one place off", answer * 10),
      slip("decimal point one place off", answer / 10),
    ],
  });
};

const rainProblem = ({ draw, us, level }: PoseInput): Posed => {
  const flow = us ? draw.step(8, 40, 1) : draw.step(30, 150, 5);
  const area = us ? draw.step(1000, 4000, 250) : draw.step(90, 400, 10);
  const depth = us ? draw.step(0.25, 0.75, 0.05) : draw.step(6, 18, 1);
  const unit = us ? "in/h" : "mm/h";
  const rate = us ? (96.25 * flow) / area : (60 * flow) / area;
  const zone = `A zone of ${place(draw)} gets ${amount(flow, us ? "gal/min" : "L/min")} on ${amount(area, us ? "ft2" : "m2")}.`;
  const first = use(precipitationRateFormula, {
    flow: quantity(flow, us ? "gal/min" : "L/min", "water"),
    area: quantity(area, us ? "ft2" : "m2"),
  });
  if (level === 1) {
    return worked({
      text: `${zone}${us ? " 1 gal/min on 1 sq ft is 96.25 inches per hour." : ""}`,
      ask: { question: "What is the precipitation rate?", unit, of: "none", decimals: us ? 2 : 1 },
      working: [first],
      mistakes: (answer) => [
        slip("fraction upside down", us ? area / flow / 96.25 : area / flow / 60),
        slip("minutes for hours", answer / 60),
        slip("decimal point one place off", answer * 10),
        slip("flow over time", us ? flow * 96.25 : flow * 60),
      ],
      within: us ? [0.3, 2.5] : [6, 60],
    });
  }
  return worked({
    text: `${zone}${us ? " 1 gal/min on 1 sq ft is 96.25 inches per hour." : ""} It is to put down ${amount(depth, us ? "in" : "mm")} of water.`,
    ask: { question: "How long does it run?", unit: "min", of: "none", decimals: 0 },
    working: [
      first,
      use(zoneRunTimeFormula, { depth: quantity(depth, us ? "in" : "mm"), rate: fromStep(1) }),
    ],
    mistakes: (answer) => [
      slip("minutes for hours", (answer / 60) * 100),
      slip("fraction upside down", (rate / depth) * 60),
      slip("multiplied by the rate", rate * depth * 60),
      slip("forgot the depth of water", 60 / rate),
      slip("decimal point one place off", answer * 10),
    ],
    within: [5, 180],
  });
};

const soilProblem = ({ draw, us, level }: PoseInput): Posed => {
  const found = draw.step(30, 180, 5);
  const depth = us ? draw.pick([3, 4, 6, 8]) : draw.pick([8, 10, 15, 20]);
  const density = draw.step(1.2, 1.6, 0.05);
  const unit = us ? "in" : "cm";
  const perArea = us ? "lb/acre" : "kg/ha";
  const parts = { depth: quantity(depth, unit), bulkDensity: quantity(density, "g/mL", "soil") };
  const told = `A soil sample from ${place(draw)} is from the top ${amount(depth, unit)}. The soil has a dry bulk density of ${num(density)} g/cm³.`;
  if (level === 1) {
    return worked({
      text: `${told}${us ? " 1 inch of soil of 1 g/cm³ weighs 5,202 lb per 1,000 sq ft." : " 1 cm of soil of 1 g/cm³ weighs 10 kg per m²."}`,
      ask: {
        question: "What does the layer weigh, dry?",
        unit: us ? "lb/1000 ft2" : "kg/m2",
        of: "none",
        decimals: us ? 0 : 1,
        slack: us ? 1e-4 : 0,
      },
      working: [use(soilMassFormula, parts)],
      mistakes: (answer) => [
        slip("forgot the density", answer / density),
        slip("density upside down", answer / density / density),
        slip("forgot the depth", answer / depth),
        slip("decimal point one place off", answer / 10),
      ],
    });
  }
  return worked({
    text: `${told}${us ? " 1 inch of soil of 1 g/cm³ weighs 226,600 lb an acre." : " 1 cm of soil of 1 g/cm³ weighs 100,000 kg per ha."} The report finds ${amount(found, "ppm")} of potassium (K).`,
    ask: {
      question: "How much potassium does the layer hold?",
      unit: perArea,
      of: "K",
      decimals: 0,
      slack: us ? 1e-4 : 0,
    },
    working: [use(amountInSoilFormula, { content: quantity(found, "ppm w/w", "K/soil"), ...parts })],
    mistakes: (answer) => [
      slip("two times for any layer", 2 * found),
      slip("forgot the density", answer / density),
      slip("forgot the depth", answer / depth),
      slip("potash for potassium", answer * 1.2),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const sodiumProblem = ({ draw }: PoseInput): Posed => {
  const sodium = draw.step(3, 18, 0.5);
  const calcium = draw.step(1, 6, 0.5);
  const magnesium = draw.step(0.5, 4, 0.5);
  return worked({
    text: `The irrigation water of the park has ${num(sodium)} meq/L of sodium, ${num(calcium)} meq/L of calcium and ${num(magnesium)} meq/L of magnesium.`,
    ask: {
      question: "What is its sodium adsorption ratio?",
      unit: "1",
      of: "none",
      decimals: 1,
    },
    working: [
      use(sodiumAdsorptionRatioFormula, {
        Na: quantity(sodium, "meq/L", "Na"),
        Ca: quantity(calcium, "meq/L", "Ca"),
        Mg: quantity(magnesium, "meq/L", "Mg"),
      }),
    ],
    mistakes: () => [
      slip("ratio without a root", sodium / ((calcium + magnesium) / 2)),
      slip("root of the sum", sodium / Math.sqrt(calcium + magnesium)),
      slip("sum for mean", sodium / (calcium + magnesium)),
      slip("one ion left out", sodium / Math.sqrt(calcium / 2)),
    ],
  });
};

const clippingProblem = ({ draw, us, level }: PoseInput): Posed => {
  const volume = us ? draw.step(6, 40, 1) : draw.step(60, 400, 10);
  const dry = draw.pick([50, 55, 60, 65, 70]);
  const share = draw.step(3, 5, 0.25);
  const unit = us ? "qt/1000 ft2" : "mL/m2";
  const perArea = us ? "lb/1000 ft2" : "g/m2";
  const told = `A mowing of the bowling green takes off ${amountOf(volume, unit, "fresh clippings")}. A liter of clippings has ${dry} g of dry mass.${us ? " A quart is 0.94635 L, a pound 453.6 g." : ""}`;
  const clippings = quantity(volume, unit);
  const dryMass = quantity(dry, "g/L");
  const quart = quantity(1, "qt").in("L");
  const nitrogen = level === 2;
  return worked({
    text: nitrogen ? `${told} ${num(share)} % of the dry mass is nitrogen.` : told,
    ask: {
      question: nitrogen ? "How much nitrogen leaves with the clippings?" : "What is their dry mass?",
      unit: perArea,
      of: nitrogen ? "N" : "none",
      decimals: nitrogen ? 3 : us ? 2 : 1,
      slack: us ? 1e-4 : 0,
    },
    working: nitrogen
      ? [use(clippingNitrogenFormula, { clippings, dryMass, share: quantity(share, "%") })]
      : [use(clippingDryMassFormula, { clippings, dryMass })],
    mistakes: (answer) => [
      ...(nitrogen
        ? [
            slip("nutrient for product", (answer * 100) / share),
            slip("divided by the percentage", answer * (100 / share) ** 2),
          ]
        : [slip("density upside down", volume / dry), slip("decimal point one place off", answer / 10)]),
      ...(us
        ? [slip("forgot to convert", answer / quart), slip("units upside down", answer / quart ** 2)]
        : [slip("forgot to convert", answer * 1000)]),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const sodProblem = ({ draw, us, level }: PoseInput): Posed => {
  const area = us ? draw.step(600, 4500, 100) : draw.step(60, 420, 10);
  const waste = draw.pick([5, 8, 10]);
  const pallet = us ? draw.pick([400, 450, 500]) : draw.pick([40, 45, 50]);
  const unit = us ? "ft2" : "m2";
  const told = `${amount(area, unit)} of the north practice pitch is to be sodded, and the crew adds ${waste} % for waste.`;
  const working = [use(sodOrderFormula, { area: quantity(area, unit), waste: quantity(waste, "%") })];
  if (level === 1) {
    return worked({
      text: told,
      ask: { question: "How much sod is ordered?", unit, of: "none", decimals: 0 },
      working,
      mistakes: (answer) => [
        slip("forgot the extra", area),
        slip("percent taken off", area * (1 - waste / 100)),
        slip("percent alone", (area * waste) / 100),
        slip("decimal point one place off", answer * 10),
      ],
    });
  }
  return worked({
    text: `${told} A pallet holds ${amount(pallet, unit)}.`,
    ask: {
      question: "How many pallets is that?",
      unit: "count",
      of: "none",
      decimals: 0,
      noun: ["pallet", "pallets"],
    },
    working: [
      ...working,
      total({
        title: "Pallets",
        equation: "n = ceil(B / b)",
        parts: { B: ["sod", fromStep(1), unit], b: ["a pallet", pallet, unit] },
        unit: "count",
      }),
    ],
    mistakes: (answer) => [
      slip("rounded packages down", countDown((area * (1 + waste / 100)) / pallet)),
      slip("one package too many", answer + 1),
      slip("counted without the package size", countUp(area * (1 + waste / 100))),
      slip("forgot the extra", countUp(area / pallet)),
      slip("percent taken off", countUp((area * (1 - waste / 100)) / pallet)),
    ],
  });
};

/** Shapes, water, soil and what grows. */
export const groundTopics: readonly Topic[] = [
  { id: "site/rectangle", title: "Area of a rectangle", levels: [1, 2], pose: rectangleProblem },
  { id: "site/trapezoid", title: "Area of a trapezoid", levels: [1, 2], pose: trapezoidProblem },
  {
    id: "water/precipitation-rate",
    title: "Precipitation rate and run time",
    levels: [1, 2],
    pose: rainProblem,
  },
  { id: "soil/layer", title: "What a layer of soil weighs and holds", levels: [1, 2], pose: soilProblem },
  { id: "soil/sodium", title: "Sodium in irrigation water", levels: [2], pose: sodiumProblem },
  {
    id: "stand/clippings",
    title: "Clippings and the nitrogen in them",
    levels: [1, 2],
    pose: clippingProblem,
  },
  { id: "stand/sod", title: "Sod with waste", levels: [1, 2], pose: sodProblem },
];
