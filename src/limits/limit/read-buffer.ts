import type { Stated } from "../../ledger/index.js";
import {
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import type { BufferReduction, RunoffMeasure } from "./limit.js";
import { plainWord, reaches } from "./limit-condition.js";
import type { ReadField, ReadLimit } from "./read-types.js";

type ReadBuffer = Extract<ReadLimit, { kind: "buffer" }>;

/** More points than this no label asks for, and no measure earns. */
export const mostPoints = 50;
const mostMeasures = 200;

/** A list of measures by name, each once; whatever else is wrong with it is told at once. */
const byMeasure = <T extends { readonly measure: string }>(
  input: unknown,
  path: string,
  read: (item: unknown, at: string) => T,
): readonly T[] => {
  const list = expectList(input, path, "measure");
  if (list.length > mostMeasures) outOfRange(path, list, { max: mostMeasures, count: "measures" });
  const problems = checks();
  const seen = new Set<string>();
  const found = list.map((item, i) =>
    problems.run(() => {
      const one = read(item, `${path}[${i}]`);
      const word = plainWord(one.measure);
      if (seen.has(word)) fail("duplicate", `${path}[${i}].measure`, one.measure, "each measure once");
      seen.add(word);
      return one;
    }),
  );
  problems.done();
  return found as readonly T[];
};

const readReduction = (item: unknown, at: string): BufferReduction => {
  const { measure, percent } = expectFields(item, ["measure", "percent"], at, "a measure and its percent");
  return {
    measure: expectText(measure, `${at}.measure`, "the measure, as the label words it"),
    percent: expectNumber(percent, `${at}.percent`, { min: 0, max: 100 }),
  };
};

const readPoints = (item: unknown, at: string): RunoffMeasure => {
  const { measure, points } = expectFields(item, ["measure", "points"], at, "a measure and its points");
  return {
    measure: expectText(measure, `${at}.measure`, "the measure, as the menu words it"),
    points: expectNumber(points, `${at}.points`, { min: 0, max: mostPoints }),
  };
};

/** Reads the points of measures: the name of a table, or a list. */
export const readMenu = (input: unknown, path: string): "US EPA" | readonly RunoffMeasure[] =>
  typeof input === "string" ? expectOneOf(input, ["US EPA"], path) : byMeasure(input, path, readPoints);

const distance =
  (bound: "positive" | "non-negative") =>
  (input: unknown, path: string): Stated =>
    input === undefined
      ? fail("missing", path, input, 'a distance, such as quantity(25, "ft")')
      : expectQuantity(input, { dimension: "length", of: "none", bound }, path);

/** Reads what a buffer states beside of what it is. */
export const readBuffer = (
  base: Pick<ReadBuffer, "kind" | "of" | "path" | "source">,
  field: ReadField,
  has: (name: string) => boolean,
): ReadBuffer => {
  const atLeast = field("atLeast", distance("positive"));
  return {
    ...base,
    from: field("from", (value, p) => expectText(value, p, 'what it is kept from, such as "water"')),
    atLeast,
    ...(has("reductions") && {
      reductions: field("reductions", (value, p) => byMeasure(value, p, readReduction)),
      together: field("together", (value, p) => expectOneOf(value, ["sum", "in turn"], p)),
    }),
    ...(has("floor") && {
      floor: field("floor", (value, p) => {
        const floor = distance("non-negative")(value, p);
        return atLeast === undefined || reaches(atLeast, floor)
          ? floor
          : outOfRange(p, value, { max: atLeast.value, unit: atLeast.unit }, "{}, the buffer itself");
      }),
    }),
  };
};
