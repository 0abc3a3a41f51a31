import { hasOwn } from "../../quantity/house.js";
import { Quantity } from "../../quantity/index.js";
import { entryFields } from "../entry/entry-readers.js";

/** Copies of what callers hand in, and whether all of it could be copied. */
export interface OwnCopies {
  /** A copy that nobody else holds and nobody can change. What cannot be copied stands in it as it is. */
  readonly of: (input: unknown) => unknown;
  /** Whether every copy so far is whole: then what was read in it stays as it was read. */
  readonly whole: () => boolean;
}

/** An entry holds records in records: analysis, percent. What is deeper, or a longer list, is none. */
const deepest = 8;
const longest = 10_000;

/** What a class may give by its prototype, which is not enumerated. */
const perhapsInherited: readonly string[] = [...entryFields, "value", "unit"];

const isPlain = (input: object): boolean => {
  const prototype: unknown = Object.getPrototypeOf(input);
  return prototype === Object.prototype || prototype === null;
};

/**
 * Copies plain data, deep and frozen, each value read once: what a caller changes afterwards, or what a getter gives the
 * second time, changes no copy. Readers refuse what is no plain data; it is left for them to see.
 */
export const ownCopies = (): OwnCopies => {
  let whole = true;
  const asItIs = (input: unknown): unknown => {
    whole = false;
    return input;
  };
  const recordCopy = (input: Readonly<Record<string, unknown>>, depth: number): unknown => {
    const made: Record<string, unknown> = {};
    for (const name in input) {
      if (name === "__proto__") return asItIs(input);
      const value = input[name];
      if (typeof value === "function" && !hasOwn(input, name)) continue;
      made[name] = copyOf(value, depth + 1);
    }
    if (!isPlain(input)) {
      for (const name of perhapsInherited) if (name in input) made[name] ??= copyOf(input[name], depth + 1);
      // A date, a map, a list of bytes: nothing that can be enumerated.
      if (Object.keys(made).length === 0) return asItIs(input);
    }
    return Object.freeze(made);
  };
  const copyOf = (input: unknown, depth: number): unknown => {
    if (typeof input === "number") return input + 0;
    if (typeof input === "function") return asItIs(input);
    if (typeof input !== "object" || input === null) return input;
    if (depth > deepest || ArrayBuffer.isView(input)) return asItIs(input);
    if (input instanceof Quantity) {
      const { value, unit, of, dimension } = input;
      return Number.isFinite(value) ? Object.freeze(new Quantity(value, unit, of, dimension)) : asItIs(input);
    }
    if (!Array.isArray(input)) return recordCopy(input as Readonly<Record<string, unknown>>, depth);
    return input.length > longest
      ? asItIs(input)
      : Object.freeze(Array.from(input, (item: unknown) => copyOf(item, depth + 1)));
  };
  return {
    of: (input) => {
      try {
        return copyOf(input, 0);
      } catch {
        return asItIs(input);
      }
    },
    whole: () => whole,
  };
};
