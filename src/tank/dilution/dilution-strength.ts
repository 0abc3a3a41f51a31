import { expectLiquidDensity } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectQuantity,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
  unitSystem,
} from "../../quantity/index.js";

/** What a strength may be measured in: weight or volume of the substance, in weight or volume of the whole. */
export type StrengthDimension = "mass/mass" | "mass/volume" | "volume/volume";

/** How a concentrate is measured out: by weight where its strength is by weight alone, else by volume. */
export type MeasuredOut<C extends StrengthDimension> = C extends "mass/mass" ? "mass" : "volume";

/** A strength in numbers: kg/kg, kg/L or L/L. */
export interface ReadStrength {
  readonly dimension: StrengthDimension;
  readonly value: number;
  /** `ai` of `ai/spray`. */
  readonly top: string;
  readonly bottom: string;
}

const units = { "mass/mass": "kg/kg", "mass/volume": "kg/L", "volume/volume": "L/L" } as const;

/** Takes a strength of something in `bottom`, or throws with its path. */
export const expectStrength = (input: unknown, path: string, bottom: "spray" | "product"): ReadStrength => {
  if (input === undefined || input === null)
    return fail("missing", path, input, `the strength of the ${bottom}`);
  const { value, unit, of } = input as { value: number; unit: string; of: string };
  if (typeof unit !== "string") return fail("type", path, input, "a quantity, such as 2 % w/w");
  const q = quantityOf(value, unit, of ?? "none", path);
  const dimension = q.dimension as StrengthDimension;
  if (!(dimension in units)) {
    return fail("unit/mismatch", path, q, "a strength: % w/w, % w/v, % v/v or a weight per volume");
  }
  const [top, whole] = q.of.split("/") as [string, string?];
  const fits = bottom === "spray" ? whole === "spray" : /^product(:[^/]+)?$/.test(whole ?? "");
  if (!fits) return fail("substance/mismatch", path, q, `a strength in the ${bottom}, such as ai/${bottom}`);
  const strength = numberIn(q, units[dimension]);
  if (strength <= 0) return outOfRange(path, q, { above: 0 });
  if (dimension !== "mass/volume" && exceeds(strength, 1))
    return outOfRange(path, q, { max: 100, unit: "%" });
  return { dimension, value: strength, top, bottom: whole as string };
};

/** Both strengths of one substance, in measures that meet. */
export const expectStrengths = (
  strength: unknown,
  concentration: unknown,
): { readonly inSpray: ReadStrength; readonly inProduct: ReadStrength } => {
  const { inSpray, inProduct } = allOf({
    inSpray: () => expectStrength(strength, "strength", "spray"),
    inProduct: () => expectStrength(concentration, "concentration", "product"),
  });
  if (inSpray.top !== inProduct.top) {
    fail(
      "substance/mismatch",
      "concentration",
      inProduct.top,
      `the strength of ${inSpray.top} in the product`,
    );
  }
  const byVolume = [inSpray, inProduct].filter(({ dimension }) => dimension === "volume/volume").length;
  if (byVolume === 1) {
    fail("unit/mismatch", "concentration", concentration, "both strengths by volume, or both by weight");
  }
  return { inSpray, inProduct };
};

/** An amount of finished spray in numbers, and as it was given. */
export interface Finished {
  /** In kg or L, as the strength needs it. */
  readonly amount: number;
  readonly measure: "mass" | "volume";
  readonly unit: string;
  readonly value: number;
  readonly system: "US" | "metric";
}

/** The finished spray in kg where its strength is by weight in weight, else in L. */
export const finishedFor = (input: unknown, strength: ReadStrength, density: unknown): Finished => {
  if (input === undefined || input === null) return fail("missing", "finished", input, "an amount of spray");
  const { value, unit, of } = input as { value: number; unit: string; of: string };
  const q = quantityOf(value, unit, of ?? "none", "finished");
  if (q.of !== "spray") fail("substance/mismatch", "finished", q, "an amount of spray");
  if (q.value <= 0) outOfRange("finished", q, { above: 0 });
  const wanted = strength.dimension === "mass/mass" ? "mass" : "volume";
  const measure = q.dimension as string;
  if (measure !== "mass" && measure !== "volume") {
    return fail("unit/mismatch", "finished", q, "a volume or a mass of spray");
  }
  const system = unitSystem(q.unit) === "metric" ? "metric" : "US";
  const amount = measure === "mass" ? numberIn(q, "kg") : numberIn(q, "L");
  const given = { measure, unit: q.unit, value: q.value, system } as const;
  if (measure === wanted) return { amount, ...given };
  const rho = densityOf(density, measure);
  return { amount: measure === "volume" ? amount * rho : amount / rho, ...given };
};

/** The density of the finished spray, in kg/L, which is measured by volume or by weight and its strength the other way. */
export const densityOf = (density: unknown, measure: "mass" | "volume"): number => {
  if (density === undefined) {
    fail(
      "missing",
      "density",
      density,
      `the density of the finished spray, for a strength by ${measure === "volume" ? "weight of a volume" : "volume of a weight"}`,
    );
  }
  const q = expectQuantity(density, { dimension: "mass/volume", of: "none", bound: "positive" }, "density");
  return expectLiquidDensity(q, "density").in("kg/L");
};

/** kg or L as a quantity in a unit to read. */
export const amountOf = (
  value: number,
  dimension: "mass" | "volume",
  unit: string,
  of: string,
): Quantity<string, string> => {
  const base = quantityOf(value, dimension === "mass" ? "kg" : "L", of, "amount");
  return quantityOf(numberIn(base, unit), unit, of, "amount");
};

/** An amount of concentrate in kg or L, as its strength needs it, and as it was given. */
export const expectConcentrate = (
  input: unknown,
  strength: ReadStrength,
): {
  readonly amount: number;
  readonly measure: "mass" | "volume";
  readonly given: Quantity<string, string>;
} => {
  const measure = strength.dimension === "mass/mass" ? "mass" : "volume";
  if (input === undefined || input === null) return fail("missing", "product", input, "an amount of product");
  const { value, unit, of } = input as { value: number; unit: string; of: string };
  const given = quantityOf(value, unit, of ?? "none", "product");
  if (given.dimension !== measure) fail("unit/mismatch", "product", given, `a ${measure} of product`);
  if (given.of !== strength.bottom) {
    fail("substance/mismatch", "product", given, `an amount of ${strength.bottom}`);
  }
  if (given.value < 0) outOfRange("product", given, { min: 0 });
  return { amount: numberIn(given, measure === "mass" ? "kg" : "L"), measure, given };
};

/** A spray is no stronger than its concentrate; strengths of two measures are not held against one another. */
export const expectWeaker = (inSpray: ReadStrength, inProduct: ReadStrength, strength: unknown): void => {
  if (inSpray.dimension === inProduct.dimension && exceeds(inSpray.value, inProduct.value)) {
    fail("infeasible", "strength", strength, "a spray no stronger than the concentrate");
  }
};
