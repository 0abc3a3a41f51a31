import { described, dimensionDue } from "../../quantity/house.js";
import {
  type Checks,
  checks,
  expectRecord,
  fail,
  outOfRange,
  Quantity,
  quantityFrom,
  shown,
} from "../../quantity/index.js";

/** Reads one value of a stored record, or throws with its path. */
export type Shape<T> = (input: unknown, path: string) => T;

/** More items than this in one list are no work order. */
const longestList = 20_000;
/** A longer text is no line of a sheet. */
const longestText = 20_000;

/** A text, also an empty one. */
export const text: Shape<string> = (input, path) =>
  typeof input !== "string"
    ? fail("type", path, input, "a text")
    : input.length > longestText
      ? outOfRange(path, described(`${input.length} characters`), { max: longestText, count: "characters" })
      : input;

/** A finite number. */
export const number: Shape<number> = (input, path) =>
  typeof input === "number" && Number.isFinite(input)
    ? input
    : fail(
        input === undefined ? "missing" : typeof input === "number" || input === null ? "not-finite" : "type",
        path,
        input,
        "a finite number",
      );

/** One of a few words. */
export const oneOf =
  <const T extends string>(...words: readonly T[]): Shape<T> =>
  (input, path) =>
    words.find((word) => word === input) ??
    fail("type", path, input, `one of ${words.map(shown).join(", ")}`);

/** A sheet multiplies and converts what it prints: beyond this an amount is damage, and might come out without an end. */
const mostPrinted = 1e15;

/** A quantity of one of some dimensions, also where JSON or another copy of the package left it; not below zero. */
export const amount =
  (...dimensions: readonly string[]): Shape<Quantity<string, string>> =>
  (input, path) => {
    const q = anyAmount(input, path);
    if (!dimensions.includes(q.dimension)) return dimensionDue("unit/mismatch", path, q, dimensions);
    return q.value < 0 || q.value > mostPrinted ? outOfRange(path, q, { min: 0, max: mostPrinted }) : q;
  };

/** A quantity of any dimension; what remains of a limit may lie below zero. */
export const anyAmount: Shape<Quantity<string, string>> = (input, path) => {
  if (input instanceof Quantity)
    return quantityFrom({ value: input.value, unit: input.unit, of: input.of }, path) as Quantity<
      string,
      string
    >;
  const { value, unit, of } = expectRecord(input, path, "a quantity");
  return quantityFrom({ value, unit, of }, path) as Quantity<string, string>;
};

/** What may be left out. */
export const maybe =
  <T>(shape: Shape<T>): Shape<T | undefined> =>
  (input, path) =>
    input === undefined ? undefined : shape(input, path);

/** What may be `null`. */
export const orNull =
  <T>(shape: Shape<T>): Shape<T | null> =>
  (input, path) =>
    input === null ? null : shape(input, path);

/** The problems with one more; most records have none, so their list is made with the first. */
const kept = (refused: Checks | undefined, error: unknown): Checks => {
  const all = refused ?? checks();
  all.run(() => {
    throw error;
  });
  return all;
};

/** A list of one shape, with every problem in it. */
export const listOf =
  <T>(shape: Shape<T>): Shape<readonly T[]> =>
  (input, path) => {
    if (!Array.isArray(input)) return fail("type", path, input, "a list, as workOrder returned it");
    if (input.length > longestList)
      return outOfRange(path, described(`${input.length} items`), { max: longestList, count: "items" });
    let refused: Checks | undefined;
    const found: T[] = [];
    for (let i = 0; i < input.length; i++) {
      try {
        found.push(shape(input[i], `${path}[${i}]`));
      } catch (error) {
        refused = kept(refused, error);
      }
    }
    refused?.done();
    return found;
  };

/** A record by the shapes of its fields; what else it holds is kept as it stands. */
export const record =
  <T extends object>(shapes: { readonly [K in keyof T]: Shape<T[K]> }): Shape<T> =>
  (input, path) => {
    const given = expectRecord(input, path, "a record, as workOrder returned it");
    let refused: Checks | undefined;
    const read: Record<string, unknown> = { ...given };
    for (const name of Object.keys(shapes) as (keyof T & string)[]) {
      try {
        const value = shapes[name](given[name], `${path}.${name}`);
        if (value !== undefined) read[name] = value;
      } catch (error) {
        refused = kept(refused, error);
      }
    }
    refused?.done();
    return read as T;
  };

/** A record of quantities by name. */
export const amounts: Shape<Readonly<Record<string, Quantity<string, string>>>> = (input, path) => {
  const given = expectRecord(input, path, "amounts by name");
  const problems = checks();
  const read = Object.entries(given).map(([name, value]) => [
    name,
    problems.run(() => anyAmount(value, `${path}.${name}`)),
  ]);
  problems.done();
  return Object.fromEntries(read);
};
