import { quantity } from "../../quantity/index.js";
import { amountFor, areaPerTank, dilutionAmounts, tankLoads } from "../../tank/index.js";
import { amount, num, slip, step } from "./figures.js";
import { place } from "./park.js";
import type { Posed, PoseInput, Topic } from "./topic.js";

/** The figures that the levels share. */
const coverageFigures = ({ draw, us }: PoseInput) => {
  const tank = us ? draw.pick([25, 50, 60, 100, 150, 200]) : draw.pick([100, 200, 300, 400, 600]);
  const rate = us ? draw.step(30, 90, 5) : draw.step(300, 800, 50);
  const volume = us ? "gal" : "L";
  const land = us ? "acre" : "ha";
  const perArea = us ? "gal/acre" : "L/ha";
  const capacity = quantity(tank, volume, "spray");
  const applicationVolume = quantity(rate, perArea, "spray");
  const covered = areaPerTank({ capacity, applicationVolume });
  const told = `A sprayer has a tank of ${amount(tank, volume)} and applies ${amount(rate, perArea)}.`;
  const small = us ? "ft2" : "m2";
  const size = us ? 43_560 : 10_000;
  return { tank, rate, volume, land, capacity, applicationVolume, covered, told, small, size } as const;
};

const tankAreaProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { tank, rate, land, covered, told, small, size } = coverageFigures(input);
  const unit = level === 1 ? land : small;
  const answer = covered.in(unit);
  const acres = covered.in(land);
  return {
    text: told,
    ask: { question: "What area does a full tank cover?", unit, of: "none", decimals: level === 1 ? 2 : 0 },
    answer,
    steps: [
      step("Area", `${num(tank)} ÷ ${num(rate)}`, acres, land),
      ...(level === 2
        ? [step("In the unit asked for", `${num(tank)} ÷ ${num(rate)} × ${num(size)}`, answer, small)]
        : []),
    ],
    mistakes: [
      slip("tank over area", (rate / tank) * (level === 2 ? size : 1)),
      ...(level === 2
        ? [
            us ? slip("acre for 1,000 sq ft", acres * 1000) : slip("hectare for 100 m²", acres * 100),
            slip("decimal point one place off", answer * 10),
            slip("decimal point one place off", answer / 10),
          ]
        : [slip("decimal point one place off", acres * 10), slip("decimal point one place off", acres / 10)]),
    ],
  };
};

const lastLoadProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { tank, rate, volume, land, capacity, applicationVolume, told } = coverageFigures(input);
  const area = us ? draw.step(1.5, 9, 0.5) : draw.step(0.6, 4, 0.2);
  const plan = tankLoads({ area: quantity(area, land), applicationVolume, capacity });
  const spray = plan.volume.in(volume);
  const exact = spray / tank;
  const last = plan.loads[plan.loads.length - 1];
  const rest = last === undefined ? 0 : last.volume.in(volume);
  return {
    text: `${told} The job is ${amount(area, land)}: ${place(draw)} and the ground around it.`,
    ask: {
      question: "How much spray goes into the last, part-filled load?",
      unit: volume,
      of: "spray",
      decimals: us ? 1 : 0,
    },
    answer: plan.loads.length > 1 && rest < tank ? rest : Number.NaN,
    steps: [
      step("Spray for the job", `${num(area)} × ${num(rate)}`, spray, volume),
      step("Tanks", `${num(spray)} ÷ ${num(tank)}`, exact, "count"),
      step("Last load", `${num(spray)} - ${plan.loads.length - 1} × ${num(tank)}`, rest, volume),
    ],
    mistakes: [
      slip("whole tanks only", tank),
      slip("added instead of taken away", tank - rest),
      slip("shared out evenly", spray / plan.loads.length),
      slip("whole job for the last load", spray),
    ],
  };
};

const coverageProblem = (input: PoseInput): Posed =>
  input.level < 3 ? tankAreaProblem(input) : lastLoadProblem(input);

/** The figures that the levels share. */
const loadFigures = ({ draw, us, level }: PoseInput) => {
  const tank = us ? draw.pick([25, 50, 60, 100]) : draw.pick([100, 200, 300, 400]);
  const rate = us ? draw.step(1, 4, 0.5) : draw.step(0.5, 3, 0.25);
  const carrier = us ? draw.pick([1, 1.5, 2]) : draw.step(300, 600, 50);
  const acre = us ? draw.step(40, 90, 5) : carrier;
  const unit = us ? "fl oz" : "L";
  const volume = us ? "gal" : "L";
  const perSmall = us ? "fl oz/1000 ft2" : "L/ha";
  const spread = us ? "gal/1000 ft2" : "L/ha";
  const spot = place(draw);
  const productRate = quantity(rate, perSmall, "product:a");
  const mixed = level === 3 && us;
  const applicationVolume = mixed ? quantity(acre, "gal/acre", "spray") : quantity(carrier, spread, "spray");
  const small = us ? "1000 ft2" : "ha";
  return {
    tank,
    rate,
    carrier,
    acre,
    unit,
    volume,
    perSmall,
    spread,
    spot,
    productRate,
    mixed,
    applicationVolume,
    small,
  } as const;
};

const areaNeedProblem = (input: PoseInput): Posed => {
  const { draw, us } = input;
  const { rate, unit, perSmall, spot, productRate } = loadFigures(input);
  const area = us ? draw.step(5000, 30_000, 1000) : draw.step(2000, 12_000, 500);
  const need = amountFor({ rate: productRate, form: "liquid", area: quantity(area, us ? "ft2" : "m2") }).in(
    unit,
  );
  const per = us ? 1000 : 10_000;
  return {
    text: `The label rate of a liquid product is ${amount(rate, perSmall)}. ${spot.replace("the", "The")} has ${amount(area, us ? "ft2" : "m2")}.`,
    ask: { question: "How much product does it take?", unit, of: "product", decimals: us ? 1 : 2 },
    answer: need,
    steps: [step("Product", `${num(rate)} × ${num(area)} ÷ ${num(per)}`, need, unit)],
    mistakes: [
      slip("one unit of area only", rate),
      slip(us ? "acre for 1,000 sq ft" : "hectare for 100 m²", us ? need / 43.56 : need * 100),
      slip("fraction upside down", area / per / rate),
      slip("divided by the area", rate / (area / per)),
    ],
  };
};

const tankNeedProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const {
    tank,
    rate,
    carrier,
    acre,
    unit,
    volume,
    perSmall,
    spread,
    spot,
    productRate,
    mixed,
    applicationVolume,
    small,
  } = loadFigures(input);
  const covered = areaPerTank({ capacity: quantity(tank, volume, "spray"), applicationVolume });
  const parts = covered.in(small);
  const need = amountFor({ rate: productRate, form: "liquid", area: covered }).in(unit);
  const applied = mixed ? amount(acre, "gal/acre") : amount(carrier, spread);
  const per = mixed ? acre / 43.56 : carrier;
  const areaSum = mixed ? `${num(tank)} ÷ ${num(acre)} × 43.56` : `${num(tank)} ÷ ${num(carrier)}`;
  const inGallons = level === 3 && !us;
  return {
    text: `The label rate of a liquid product is ${amount(rate, perSmall)}. The sprayer for ${spot} applies ${applied} and has a tank of ${amount(tank, volume)}.`,
    ask: {
      question: "How much product goes into a full tank?",
      unit: inGallons ? "mL" : unit,
      of: "product",
      decimals: inGallons ? 0 : us ? 1 : 2,
    },
    answer: inGallons ? need * 1000 : need,
    steps: [
      step("Area that a tank covers", areaSum, parts, small),
      step(
        "Product",
        `${areaSum} × ${num(rate)}${inGallons ? " × 1,000" : ""}`,
        inGallons ? need * 1000 : need,
        inGallons ? "mL" : unit,
      ),
    ],
    mistakes: [
      ...(mixed ? [slip("acre for 1,000 sq ft", (tank / acre) * rate)] : []),
      slip("tank over area", ((rate * per) / tank) * (inGallons ? 1000 : 1)),
      slip("one unit of area only", rate * (inGallons ? 1000 : 1)),
      slip("tank times rate", rate * tank * (inGallons ? 1000 : 1)),
      slip("fraction upside down", (parts / rate) * (inGallons ? 1000 : 1)),
    ],
  };
};

const loadProblem = (input: PoseInput): Posed =>
  input.level === 1 ? areaNeedProblem(input) : tankNeedProblem(input);

const dilutionProblem = ({ draw, us, level }: PoseInput): Posed => {
  const volume = us ? draw.pick([2, 3, 4, 5, 10, 15, 25]) : draw.pick([5, 10, 12, 15, 20, 40]);
  const percent = draw.pick([0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3]);
  const parts = draw.pick([9, 15, 19, 24, 39, 49]);
  const big = us ? "gal" : "L";
  const unit = us ? "fl oz" : "mL";
  const size = us ? 128 : 1000;
  const finished = quantity(volume, big, "spray");
  const filled = `A spot sprayer is filled with ${amount(volume, big)} of finished spray for ${place(draw)}.`;
  if (level === 1) {
    const need = dilutionAmounts({ parts: 100 / percent, reading: "1 in x", finished }).product.in(unit);
    return {
      text: `${filled} The label asks for ${num(percent)} % of product by volume.`,
      ask: { question: "How much product goes in?", unit, of: "product", decimals: us ? 1 : 0 },
      answer: need,
      steps: [step("Product", `${num(volume)} × ${size} × ${num(percent)} ÷ 100`, need, unit)],
      mistakes: [
        slip("decimal point one place off", need * 10),
        slip("decimal point one place off", need / 10),
        ...(us
          ? [slip("ounce for fluid ounce", need / 8), slip("fluid ounces in a quart", need / 4)]
          : [slip("units upside down", need / 100), slip("fraction upside down", (volume * 100) / percent)]),
      ],
    };
  }
  const reading = level === 2 ? "1 in x" : "1 plus x";
  const made = dilutionAmounts({ parts, reading, finished });
  const need = made.product.in(unit);
  const all = volume * size;
  const divisor = level === 2 ? parts : parts + 1;
  return {
    text: `${filled} The label asks for 1 part of product ${level === 2 ? `in ${parts} parts of the finished mix` : `and ${parts} parts of water`}.`,
    ask: { question: "How much product goes in?", unit, of: "product", decimals: us ? 1 : 0 },
    answer: need,
    steps: [step("Product", `${num(volume)} × ${size} ÷ ${divisor}`, need, unit)],
    mistakes: [
      slip("parts of water for parts of the mix", level === 2 ? all / (parts + 1) : all / parts),
      slip("water for product", all - need),
      slip("product added on top", level === 2 ? all / (parts - 1) : all / (parts + 2)),
      slip("percentage as a whole number", (all * parts) / 100),
      ...(us
        ? [slip("ounce for fluid ounce", need / 8), slip("fluid ounces in a quart", need / 4)]
        : [slip("decimal point one place off", need / 10)]),
    ],
  };
};

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
