import { hasOwn } from "../errors/has-own.js";
import { type BaseUnit, unitSizes } from "./base-units.js";
import { unitParts } from "./units.js";

/** Whether a text is a unit that stands alone in the table. */
export const isBaseUnit = (text: string): text is BaseUnit =>
  Object.values(unitSizes).some((units) => hasOwn(units, text));

/** The base units of a dimension, in the order of the table. */
export const baseUnitsOf = (dimension: string): readonly string[] =>
  hasOwn(unitSizes, dimension) ? Object.keys(unitSizes[dimension as keyof typeof unitSizes]) : [];

/** Every base unit, in the order of the table. */
export const allBaseUnits = (): readonly BaseUnit[] =>
  Object.keys(unitSizes).flatMap((dimension) => baseUnitsOf(dimension) as readonly BaseUnit[]);

/** The dimension of a unit text, or `undefined` where it is no unit. */
export const unitDimension = (unit: string): string | undefined => unitParts(unit)?.dimension;

/** The two sides of a quotient, the last slash between them; `undefined` for a base unit and for no unit. */
export const splitUnit = (unit: string): { readonly top: string; readonly bottom: string } | undefined => {
  if ((unitParts(unit)?.names.length ?? 0) < 2) return undefined;
  const slash = unit.lastIndexOf("/");
  return { top: unit.slice(0, slash), bottom: unit.slice(slash + 1) };
};

const stuff: readonly string[] = ["mass", "volume", "count"];

/** Whether a unit measures an amount of something, so that what stands below a slash may be of a substance of its own. */
export const isOfStuff = (unit: string): boolean => stuff.includes(`${unitDimension(unit)}`);
