import { splitUnit, unitDimension } from "./unit-facts.js";

/** Base units in which metric rates are given. */
export const metric: RegExp = /^(?:kg|g|mg|m|cm|mm|km|m2|100 m2|ha|m3|L|mL)$/;
/** Units that are often written for one another: tried where the dimension does not fit. */
const siblings: Readonly<Record<string, readonly string[]>> = {
  oz: ["fl oz"],
  lb: ["psi"],
  in: ["in2", "in3"],
  ft: ["ft2", "ft3"],
  yd: ["yd3", "yd2"],
  m: ["m2", "m3"],
  cm: ["cm2"],
  "%": ["% grade"],
  "lb/in2": ["psi"],
};

const alike = (unit: string): readonly string[] => siblings[unit] ?? [];

/** A unit of the dimension that a reader may have meant by one of another dimension. */
export const siblingUnit = (unit: string, dimension: string): string | undefined => {
  const fits = (text: string): boolean => unitDimension(text) === dimension;
  const parts = splitUnit(unit);
  const candidates = [...alike(unit)];
  if (parts !== undefined) {
    for (const top of alike(parts.top)) candidates.push(`${top}/${parts.bottom}`);
    if (parts.bottom === "m" && !metric.test(parts.top)) candidates.push(`${parts.top}/1000 ft2`);
    for (const bottom of alike(parts.bottom)) candidates.push(`${parts.top}/${bottom}`);
  }
  return candidates.find(fits);
};
