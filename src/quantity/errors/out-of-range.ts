import { fail, type Problem, RatewrightError, shown } from "./errors.js";
import { expectFields } from "./expect-fields.js";

/** Where a number, a measure or a count must lie. A date is a text such as `2026-05-18`. */
export interface RangeBounds {
  /** The least that is taken. */
  readonly min?: number | string;
  /** The most that is taken. */
  readonly max?: number | string;
  /** What it must lie above. */
  readonly above?: number | string;
  /** What it must lie below. */
  readonly below?: number | string;
  /** What it must be a multiple of: 1 for whole numbers. */
  readonly step?: number;
  /** The unit of the bounds, such as `%` or `ft`. */
  readonly unit?: string;
  /** What is counted, such as `characters`. */
  readonly count?: string;
}

const boundNames = ["min", "max", "above", "below", "step", "unit", "count"] as const;

/** The words of a bound; `{}` is where the bounds are said. */
export type RangeWords = `${string}{}${string}`;

/**
 * A bound that was computed is told with the digits that mean something, and never so that what it says would be refused: the
 * least is rounded up and the most down, but for the noise of computing.
 */
const digits = (bound: number | string, way: 1 | -1): string => {
  if (typeof bound !== "number" || Number.isInteger(bound)) return `${bound}`;
  const near = Number(bound.toPrecision(7));
  const size = Math.abs(bound);
  const step = way * 10 ** (Math.floor(Math.log10(size)) - 6);
  return `${(bound - near) * way > 1e-9 * size ? Number((near + step).toPrecision(7)) : near}`;
};

/** One of what is counted: `cans`, `entries`, `passes`. */
const singular = (things: string): string => things.replace(/ies$/, "y").replace(/(ss)es$|s$/, "$1");

const limits = (bounds: RangeBounds): string => {
  const { min, max, above, below, unit, count, step } = bounds;
  const things =
    count !== undefined && step === undefined ? ` ${count}` : unit === undefined ? "" : ` ${unit}`;
  const of = (bound: number | string, way: 1 | -1): string =>
    bound === 0 && things === ""
      ? "zero"
      : digits(bound, way) + (bound === 1 && count !== undefined ? singular(things) : things);
  if (min !== undefined && max !== undefined)
    return min === max ? of(min, 1) : `${digits(min, 1)} to ${digits(max, -1)}${things}`;
  const ends: string[] = [];
  if (min !== undefined) ends.push(`${of(min, 1)} or ${typeof min === "string" ? "later" : "more"}`);
  if (above !== undefined) ends.push(`more than ${of(above, 1)}`);
  if (below !== undefined) ends.push(`less than ${of(below, -1)}`);
  const less = typeof max === "string" ? "earlier" : count === undefined ? "less" : "fewer";
  if (max !== undefined) ends.push(ends.length > 0 ? `at most ${of(max, -1)}` : `${of(max, -1)} or ${less}`);
  return ends.join(" and ");
};

/** Bounds as a text that a person can read: "0 to 100 %", "a whole number of days, 1 or more". */
const boundsText = (bounds: RangeBounds): string => {
  const text = limits(bounds);
  // A bound beyond what a number holds is none
  if (bounds.step === undefined) return text || "a usable number";
  const { step, count } = bounds;
  const whole = `a whole number${count === undefined ? "" : ` of ${count}`}`;
  return [step === 1 ? whole : `${whole} that divides by ${step}`, text]
    .filter((part) => part !== "")
    .join(", ");
};

/** A text as it is, and anything else as it is shown. */
const asText = (input: unknown): string => (typeof input === "string" ? input : shown(input));

/** Bounds that can be written down, numbers and texts; one that is infinite bounds nothing. */
const soundBounds = (bounds: Readonly<Record<string, unknown>>): RangeBounds => {
  const known: Record<string, unknown> = { ...bounds };
  for (const [name, bound] of Object.entries(known)) {
    if (typeof bound === "number" && !Number.isFinite(bound)) delete known[name];
    else if (bound !== undefined && typeof bound !== "number" && typeof bound !== "string")
      fail("type", `bounds.${name}`, bound, "a number, or a text");
  }
  return known;
};

/**
 * A {@link Problem} of the code `range`, whose text is written from its bounds: the two cannot disagree.
 *
 * @param got - what was received, as `shown` has it
 * @param words - the words around the bounds, with `{}` where they go
 * @throws RatewrightError `type` for bounds of other names
 *
 * @example
 * ```ts
 * import { rangeProblem } from "ratewright";
 * rangeProblem("count", "0", { step: 1, min: 1, max: 12 }).expected; // => "a whole number, 1 to 12"
 * ```
 */
export const rangeProblem = (
  path: string,
  got: string,
  bounds: RangeBounds,
  words: RangeWords = "{}",
): Problem => {
  const known = soundBounds(expectFields(bounds, boundNames, "bounds"));
  return {
    code: "range",
    path: asText(path),
    got: asText(got),
    expected: asText(words).replace("{}", () => boundsText(known)),
    params: { ...known },
  };
};

/**
 * Throws the `range` {@link Problem} of a value that lies outside its bounds. The text is written from the bounds, and
 * the bounds are its `params`, for an app that says it in another language.
 *
 * @param path - where: the argument, or the place in a record
 * @param got - what was received
 * @param bounds - where it must lie
 * @param words - the words around the bounds, with `{}` where they go
 * @throws RatewrightError `range`; `type` for bounds of other names
 *
 * @example
 * ```ts
 * import { outOfRange } from "ratewright";
 * outOfRange("moisture", 120, { min: 0, max: 100, unit: "%" }); // => throws range
 * outOfRange("latitude", 95, { min: -90, max: 90 }, "a latitude of {}, negative in the south"); // => throws range
 * ```
 */
export const outOfRange = (path: string, got: unknown, bounds: RangeBounds, words?: RangeWords): never => {
  throw new RatewrightError(rangeProblem(path, shown(got), bounds, words));
};
