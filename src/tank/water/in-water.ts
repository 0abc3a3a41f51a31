import { fail, outOfRange, quantityOf } from "../../quantity/index.js";

/** What a water test prints: milligrams per liter, grains per gallon, or parts per million, of an ion or as CaCO3. */
export interface InWater<S extends string> {
  readonly value: number;
  /** A mass per volume (`mg/L`, `grain/gal`, `grain/imp gal`) or `ppm w/w`. */
  readonly unit: string;
  readonly of: S | `${S}/water`;
}

/**
 * What dissolves in water, in mg/L. Parts per million by weight count as milligrams per liter, as water
 * tests take them: a liter of water weighs 1 kg.
 */
export const inWater = (input: unknown, of: string, path: string): number => {
  if (typeof input !== "object" || input === null)
    return fail("type", path, input, `an amount of ${of} in water`);
  const { value, unit, of: given } = input as InWater<string>;
  const q = quantityOf(value, unit, given ?? "none", path);
  if (q.of !== of && q.of !== `${of}/water`)
    fail("substance/mismatch", path, q, `an amount of ${of} in water`);
  if (q.value < 0) outOfRange(path, q, { min: 0 });
  const read = q.in as (unit: string) => number;
  if (q.dimension === "mass/volume") return read.call(q, "mg/L");
  if (q.dimension === "mass/mass") return read.call(q, "ppm w/w");
  return fail("unit/mismatch", path, q, "mg/L, grain/gal or ppm w/w");
};
