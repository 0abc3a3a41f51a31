import { commonQuotients, unitTable } from "../../src/quantity/index.js";

/** Every base unit with its dimension. */
export const baseUnitDimensions: readonly (readonly [unit: string, dimension: string])[] = Object.entries(
  unitTable,
).flatMap(([dimension, units]) => Object.keys(units).map((unit) => [unit, dimension] as const));

export const baseUnitSample: readonly string[] = baseUnitDimensions.map(([unit]) => unit);

export const commonQuotientList: readonly string[] = Object.values(commonQuotients).flat();

/** Pieces of what people type, for texts that are almost quantities. */
export const inputParts: readonly string[] = [
  ..."0123456789.,-+/ °%#\"'^()²½⁻¹₂µ×·xMATtmk".split(""),
  ..." per | of |/1000 ft2|lb|oz|fl oz|gal|acre|N|K2O|product:a|% w/w|sq |ft|psi|gpa|$|€|USD|1/2|1,000|e9|to|ton|water|/gal".split(
    "|",
  ),
];
