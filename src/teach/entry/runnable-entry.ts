import { dimensionNoun } from "../../quantity/house.js";
import { allOf, expectFields, expectQuantity, fail, quantity, quantityOf } from "../../quantity/index.js";
import type { DerivedQuantity } from "../derivation/derivation.js";
import { type CatalogueEntry, type CatalogueInput, entryOf } from "./catalogue-entry.js";
import type { FormulaSpec } from "./formula.js";

/** An entry with what runs it. */
export interface RunnableEntry {
  readonly entry: CatalogueEntry;
  readonly run: FormulaSpec["run"];
}

/** A formula as an entry of a room. */
export const runnableOf = (room: string, spec: FormulaSpec): RunnableEntry => ({
  entry: entryOf(room, spec),
  run: spec.run,
});

/** A product with an id is taken where the entry says product: `product:feed-a`. */
const isOf = (of: string, wanted: string): boolean => of === wanted || of.startsWith(`${wanted}:`);

const inputOf = (given: unknown, input: CatalogueInput, path: string): DerivedQuantity => {
  const { dimension, of, label, usualUnits } = input;
  if (given === undefined)
    return fail("missing", path, given, `${label}: ${dimensionNoun(dimension)}, such as 1 ${usualUnits.US}`);
  if (typeof given === "number" && (dimension === "1" || dimension === "count"))
    return quantityOf(given, dimension, "none", path);
  const q = expectQuantity(given, { dimension }, path);
  if (!isOf(q.of, of))
    return fail(
      "substance/mismatch",
      path,
      q,
      of === "none" ? "a quantity of no substance" : `a quantity of ${of}`,
    );
  return quantityOf(q.value, q.unit, of, path);
};

/** The inputs of an entry by name, or every problem with them. */
export const readInputs = (
  entry: CatalogueEntry,
  inputs: unknown,
  path: string,
): Readonly<Record<string, DerivedQuantity>> => {
  const record = expectFields(
    inputs,
    entry.inputs.map(({ name }) => name),
    path,
  );
  return allOf(
    Object.fromEntries(
      entry.inputs.map((input) => [
        input.name,
        () => inputOf(record[input.name], input, `${path}.${input.name}`),
      ]),
    ),
  );
};

/** What a formula gives for inputs that have been read. */
export const resultOf = (
  { entry, run }: RunnableEntry,
  given: Readonly<Record<string, DerivedQuantity>>,
): DerivedQuantity => {
  // The inputs have the dimensions and substances of the entry, which are those of the function: readInputs saw to it.
  const result = run(given as never);
  const q = typeof result === "number" ? quantity(result, "1") : result;
  return quantityOf(q.value, q.unit, entry.output.of, "result");
};
