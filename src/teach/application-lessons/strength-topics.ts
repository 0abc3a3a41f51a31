import { quantity } from "../../quantity/index.js";
import { concentrateForStrengthFormula } from "../application/tank.js";
import { sprayForLawnFormula } from "../application/tank-amounts.js";
import { rectangleAreaFormula } from "../ground/site-shapes.js";
import { amount, amountOf, num, slip } from "../topics/figures.js";
import { areaOf, openGround, place } from "../topics/park.js";
import { fromStep, total, use } from "../topics/steps.js";
import type { Posed, PoseInput, Topic } from "../topics/topic.js";
import { worked } from "../topics/worked.js";

const volumeUnit = (us: boolean): "gal" | "L" => (us ? "gal" : "L");
const massUnit = (us: boolean): "lb" | "kg" => (us ? "lb" : "kg");

/** Percent of active ingredient by weight: of a dry mix, or of a spray. */
const weightProblem = ({ draw, us, level }: PoseInput): Posed => {
  const wanted = draw.pick([0.5, 1, 1.5, 2, 2.5, 4, 5]);
  const strength = draw.pick([25, 40, 50, 75, 80]);
  const mass = massUnit(us);
  const weight = us ? draw.step(20, 100, 5) : draw.step(10, 50, 5);
  const volume = us ? draw.step(5, 60, 5) : draw.step(20, 200, 10);
  const density = us ? 8.34 : 1;
  const spray = level === 3;
  const whole = spray ? volume * density : weight;
  const water = total({
    title: "Weight of the spray",
    equation: "W = V * d",
    parts: { V: ["spray", volume, volumeUnit(us)], d: ["it weighs", density, us ? "lb/gal" : "kg/L"] },
    unit: mass,
  });
  const powder = total({
    title: "Powder",
    equation: "P = W * c / s",
    parts: {
      W: [spray ? "weight of the spray" : "mix", spray ? fromStep(1) : weight, mass],
      c: ["percent wanted", wanted, "1"],
      s: ["percent in the powder", strength, "1"],
    },
    unit: mass,
  });
  return worked({
    text: spray
      ? `${amount(volume, volumeUnit(us))} of spray is to hold ${num(wanted)} % active ingredient by weight. The spray weighs ${amount(density, us ? "lb/gal" : "kg/L")}. The powder on hand has ${strength} % active ingredient.`
      : `${amount(weight, mass)} of a dry mix is to hold ${num(wanted)} % active ingredient by weight. The powder on hand has ${strength} % active ingredient; the rest of the mix is a dry carrier.`,
    ask: { question: "How much powder does it take?", unit: mass, of: "product", decimals: 2 },
    working: spray ? [water, powder] : [powder],
    mistakes: (answer) => [
      slip("product for nutrient", (whole * wanted) / 100),
      slip("multiplied by the percentage", (whole * wanted * strength) / 10_000),
      slip("fraction upside down", (whole * strength) / wanted),
      slip(spray ? "water for product" : "carrier for product", whole - answer),
      ...(spray && us ? [slip("forgot the density", answer / density)] : []),
    ],
  });
};

/** A concentrate by volume, for a percent of active ingredient. */
const concentrateProblem = ({ draw, us }: PoseInput): Posed => {
  const wanted = draw.pick([0.25, 0.5, 1, 1.5, 2]);
  const strength = draw.pick([24, 36, 40, 48]);
  const volume = us ? draw.pick([15, 25, 30, 50, 55, 100]) : draw.pick([50, 100, 150, 200, 400]);
  const big = volumeUnit(us);
  return worked({
    text: `${amount(volume, big)} of spray is to hold ${num(wanted)} % active ingredient by volume. The concentrate on hand has ${strength} % active ingredient by volume.`,
    ask: { question: "How much concentrate goes in?", unit: big, of: "product", decimals: 2 },
    working: [
      use(concentrateForStrengthFormula, {
        strength: quantity(wanted, "% v/v", "ai/spray"),
        concentration: quantity(strength, "% v/v", "ai/product"),
        finished: quantity(volume, big, "spray"),
      }),
    ],
    mistakes: (answer) => [
      slip("product for nutrient", (volume * wanted) / 100),
      slip("water for product", volume - answer),
      slip("multiplied by the percentage", (volume * wanted * strength) / 10_000),
      slip("fraction upside down", (volume * strength) / wanted),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

const strengthProblem = (input: PoseInput): Posed =>
  input.level === 2 ? concentrateProblem(input) : weightProblem(input);

/** Spray of a strength by weight, for a rate of active ingredient. */
const sprayForActiveProblem = ({ draw, us }: PoseInput): Posed => {
  const active = draw.step(0.5, 3, 0.25);
  const strength = draw.pick([0.25, 0.5, 1, 1.5, 2]);
  const density = us ? 8.34 : 1;
  const perArea = us ? "lb/acre" : "kg/ha";
  const weight = us ? "lb/gal" : "kg/L";
  const inSpray = (density * strength) / 100;
  return worked({
    text: `A treatment of ${place(draw)} takes ${amountOf(active, perArea, "active ingredient")}. The spray holds ${num(strength)} % of it by weight and weighs ${amount(density, weight)}.`,
    ask: {
      question: "What is the application volume?",
      unit: us ? "gal/acre" : "L/ha",
      of: "spray",
      decimals: us ? 1 : 0,
    },
    working: [
      total({
        title: `Active ingredient in 1 ${volumeUnit(us)} of spray`,
        equation: "c = d * s / 100",
        parts: { d: ["the spray weighs", density, weight], s: ["percent by weight", strength, "1"] },
        unit: weight,
      }),
      total({
        title: "Application volume",
        equation: "V = a / c",
        parts: {
          a: ["active ingredient wanted", active, perArea],
          c: ["active ingredient in the spray", fromStep(1), weight],
        },
        unit: us ? "gal/acre" : "L/ha",
      }),
    ],
    mistakes: (answer) => [
      ...(us ? [slip("forgot the density", (active * 100) / strength)] : []),
      slip("multiplied by the percentage", active * inSpray),
      slip("product for nutrient", active / density),
      slip("fraction upside down", inSpray / active),
      slip("percentage as a whole number", active / strength / density),
      slip("decimal point one place off", answer * 10),
      slip("decimal point one place off", answer / 10),
    ],
    // less is a mist, more is a drench
    within: us ? [10, 120] : [100, 1200],
  });
};

/** The figures that the levels share. */
const sprayNeedProblem = ({ draw, us, level }: PoseInput): Posed => {
  const rate = us ? draw.pick([1, 1.5, 2, 2.5]) : draw.step(200, 600, 50);
  const long = us ? draw.step(100, 300, 10) : draw.step(30, 100, 5);
  const wide = us ? draw.step(60, 150, 10) : draw.step(20, 60, 5);
  const measured = areaOf(draw, us);
  const shaped = level === 2;
  const area = shaped ? long * wide : measured;
  const per = us ? 1000 : 10_000;
  const perArea = us ? "gal/1000 ft2" : "L/ha";
  const length = us ? "ft" : "m";
  const land = us ? "ft2" : "m2";
  const size = shaped
    ? `is ${amount(long, length)} long and ${amount(wide, length)} wide`
    : `covers ${amount(area, land)}`;
  const rectangle = use(rectangleAreaFormula, {
    length: quantity(long, length),
    width: quantity(wide, length),
  });
  const spray = use(sprayForLawnFormula, {
    area: shaped ? fromStep(1) : quantity(area, land),
    applicationVolume: quantity(rate, perArea, "spray"),
  });
  return worked({
    text: `${(shaped ? openGround(draw) : place(draw)).replace("the", "The")} ${size} and gets ${amountOf(rate, perArea, "spray")}.`,
    ask: {
      question: "How much spray is that?",
      unit: volumeUnit(us),
      of: "spray",
      decimals: 1,
    },
    working: shaped ? [rectangle, spray] : [spray],
    mistakes: (answer) => [
      slip("one unit of area only", rate),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? answer / 43.56 : answer * 100),
      ...(us ? [slip("divided by the area", area / per / rate)] : []),
      ...(shaped ? [slip("perimeter for area", (rate * 2 * (long + wide)) / per)] : []),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** A catch of a nozzle as its flow. */
const flowProblem = ({ draw, us, level }: PoseInput): Posed => {
  const small = us ? "fl oz" : "mL";
  const caught = us ? draw.int(12, 80) : draw.step(400, 1800, 20);
  const seconds = level === 1 ? 60 : draw.pick([15, 20, 30, 45]);
  const flow = us ? "gal/min" : "L/min";
  const size = us ? 128 : 1000;
  return worked({
    text: `A nozzle of the boom fills a jug with ${amount(caught, small)} in ${level === 1 ? "a minute" : amount(seconds, "s")}.${us ? " A gallon is 128 fl oz." : ""}`,
    ask: { question: "What is its flow?", unit: flow, of: "spray", decimals: us ? 3 : 2 },
    working: [
      total({
        title: "Flow",
        equation: "q = c / t",
        parts: {
          c: ["caught", caught, small, us ? "gal" : "L"],
          t: ["time", seconds, "s", "min"],
        },
        unit: flow,
      }),
    ],
    mistakes: (answer) => [
      ...(us
        ? [slip("ounce for fluid ounce", answer * 8), slip("fluid ounces in a quart", answer * 4)]
        : [slip("decimal point one place off", answer / 10)]),
      ...(level === 2
        ? [slip("time left out", caught / size), slip("fraction upside down", seconds / 60 / (caught / size))]
        : [slip("fraction upside down", size / caught)]),
      slip("decimal point one place off", answer * 10),
    ],
  });
};

/** Strength, spray for an area, and flow. */
export const strengthTopics: readonly Topic[] = [
  {
    id: "tank/strength",
    title: "Percent of active ingredient",
    levels: [1, 2, 3],
    pose: strengthProblem,
  },
  {
    id: "tank/spray-for-active",
    title: "Spray for a rate of active ingredient",
    levels: [2],
    pose: sprayForActiveProblem,
  },
  { id: "tank/spray-for-area", title: "Spray for an area", levels: [1, 2], pose: sprayNeedProblem },
  { id: "quantity/flow", title: "Flow of a nozzle from its catch", levels: [1, 2], pose: flowProblem },
];
