import type { DerivedQuantity } from "../derivation/derivation.js";
import { readInputs, resultOf } from "../entry/runnable-entry.js";
import { runnableEntry } from "./catalogue.js";

/**
 * What the formula of an entry gives: the exported function is run on the inputs by name.
 *
 * @param id - of an entry of the catalogue
 * @param inputs - quantities by the names of the entry's inputs; a bare number for a count or a pure number
 * @throws RatewrightError `type` for an id or a field that is not known; `missing`, `unit/mismatch`,
 *   `substance/mismatch` by the path of the input, all at once; and whatever the function throws; `range`
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { entryResult } from "ratewright/teach";
 * entryResult("boom-width", { nozzles: 12, spacing: quantity(20, "in") }).in("ft"); // => 20
 * entryResult("boom-width", { nozzles: 12 }); // => throws missing
 * ```
 */
export const entryResult = (id: string, inputs: Readonly<Record<string, unknown>>): DerivedQuantity => {
  const found = runnableEntry(id, "id");
  return resultOf(found, readInputs(found.entry, inputs, "inputs"));
};
