import { quantity } from "../../quantity/index.js";
import { pondVolume, waterDose } from "../../site/index.js";
import { amount, num, slip, step } from "./figures.js";
import type { Posed, PoseInput } from "./topic.js";

/** The figures that the levels share. */
const pondFigures = ({ draw, us }: PoseInput) => {
  const surface = us ? draw.step(0.5, 4, 0.25) : draw.step(1500, 12_000, 500);
  const depth = us ? draw.step(3, 8, 0.5) : draw.step(1, 2.5, 0.1);
  const dose = draw.pick([0.5, 1, 1.5, 2, 3]);
  const percent = draw.pick([25, 40, 50, 80]);
  const volume = pondVolume({
    area: quantity(surface, us ? "acre" : "m2"),
    meanDepth: quantity(depth, us ? "ft" : "m"),
  });
  const unit = us ? "acre-ft" : "m3";
  const held = volume.in(unit);
  const pond = `The irrigation pond of the park has a surface of ${amount(surface, us ? "acre" : "m2")} and a mean depth of ${amount(depth, us ? "ft" : "m")}.`;
  const gallons = us ? volume.in("gal") : volume.in("L");
  return { surface, depth, dose, percent, unit, held, pond, gallons } as const;
};

const pondVolumeProblem = (input: PoseInput): Posed => {
  const { us } = input;
  const { surface, depth, unit, held, pond, gallons } = pondFigures(input);
  const asked = us ? "gal" : "L";
  return {
    text: `${pond}${us ? " An acre-foot is 325,851 gallons." : ""}`,
    ask: { question: "How much water does it hold?", unit: asked, of: "water", decimals: 0 },
    answer: gallons,
    steps: [
      step("Volume", `${num(surface)} × ${num(depth)}`, held, unit),
      step("Water", `${num(surface)} × ${num(depth)} × ${us ? "325,851" : "1,000"}`, gallons, asked),
    ],
    mistakes: [
      slip("forgot the depth", gallons / depth),
      slip("divided by the depth", gallons / depth / depth),
      slip(us ? "feet for inches" : "units upside down", us ? gallons / 12 : held / 1000),
      slip(us ? "yards for feet" : "meters for centimeters", us ? gallons / 3 : gallons / 100),
    ],
  };
};

const pondDoseProblem = (input: PoseInput): Posed => {
  const { us, level } = input;
  const { surface, depth, dose, percent, pond } = pondFigures(input);
  const mass = us ? "lb" : "kg";
  const found = waterDose({
    surface: quantity(surface, us ? "acre" : "m2"),
    depth: quantity(depth, us ? "ft" : "m"),
    concentration: quantity(dose, "mg/L", "ai"),
    strength: quantity(percent, "% w/w", "ai/product"),
  });
  const active = found.active.in(mass);
  const product = (found.product as { in(unit: "lb" | "kg"): number }).in(mass);
  const perVolume = us ? "2.71932" : "0.001";
  const sum = `${num(surface)} × ${num(depth)} × ${num(dose)} × ${perVolume}`;
  const whole = level === 3;
  const scale = whole ? 100 / percent : 1;
  return {
    text:
      `${pond} It is to be dosed to ${amount(dose, "mg/L")} of active ingredient. ` +
      (us ? "1 mg/L in 1 acre-foot is 2.719 lb." : "1 mg/L in 1 m³ is 1 g.") +
      (whole ? ` The product has ${percent} % active ingredient by weight.` : ""),
    ask: {
      question: whole ? "How much product does it take?" : "How much active ingredient does it take?",
      unit: mass,
      of: whole ? "product" : "ai",
      decimals: 1,
      slack: us ? 2e-4 : 0,
    },
    answer: whole ? product : active,
    steps: [
      step("Active ingredient", sum, active, mass),
      ...(whole ? [step("Product", `${sum} × 100 ÷ ${percent}`, product, mass)] : []),
    ],
    mistakes: [
      slip("forgot the depth", (active / depth) * scale),
      slip("forgot the dose", (active / dose) * scale),
      ...(us
        ? [slip("forgot to convert", (active / 2.71932) * scale)]
        : [slip("units upside down", (active * scale) / 10)]),
      ...(whole
        ? [
            slip("forgot the percent active", active),
            slip("multiplied by the percentage", (active * percent) / 100),
          ]
        : []),
      slip("divided by the depth", (active / depth / depth) * scale),
    ],
  };
};

/** Water in a pond, and what it takes to dose it. */
export const pondProblem = (input: PoseInput): Posed =>
  input.level === 1 ? pondVolumeProblem(input) : pondDoseProblem(input);
