/**
 * The stable error codes. They are part of the wire format: a program may branch on them, and they
 * change only with a major version.
 *
 * | code | meaning |
 * | --- | --- |
 * | `unit/unknown` | the text is not a unit |
 * | `unit/ambiguous` | the text could mean several units; `choices` lists them |
 * | `unit/mismatch` | a quantity of another dimension was wanted |
 * | `substance/unknown` | the text is not a substance |
 * | `substance/ambiguous` | the word could mean several substances; `choices` lists them |
 * | `substance/mismatch` | a quantity of another substance was wanted |
 * | `not-finite` | NaN, infinite, or not a number at all |
 * | `range` | the value lies outside the range in which the formula holds |
 * | `missing` | what is needed is not there: a field, an argument or a quantity |
 * | `type` | a value of another kind was wanted (text, list, record, choice) |
 * | `infeasible` | no answer exists for these inputs |
 * | `date` | not a calendar date, or dates in an impossible order |
 * | `text` | the text cannot be read as a quantity |
 * | `duplicate` | two things carry the same id |
 * | `conflict` | inputs contradict each other |
 */
export type ErrorCode =
  | "unit/unknown"
  | "unit/ambiguous"
  | "unit/mismatch"
  | "substance/unknown"
  | "substance/ambiguous"
  | "substance/mismatch"
  | "not-finite"
  | "range"
  | "missing"
  | "type"
  | "infeasible"
  | "date"
  | "text"
  | "duplicate"
  | "conflict";

/** One thing that is wrong with an input: what, where, and what would be right. */
export interface Problem {
  /** Stable code, see {@link ErrorCode}. */
  readonly code: ErrorCode;
  /** Where: the argument or the place in a record, such as `treatments[1].rate`. */
  readonly path: string;
  /** What was received, as text that a person can read. */
  readonly got: string;
  /** What would have been right. */
  readonly expected: string;
  /** A likely correction, where one is near. */
  readonly suggestion?: string;
  /** The choices, where the input was ambiguous. */
  readonly choices?: readonly string[];
  /** What an app needs to say the same in another language: the bounds of a range, the dimension that was wanted. */
  readonly params?: Readonly<Record<string, string | number | readonly string[]>>;
}

/** The longest part of a message; what is longer is cut, and ends in an ellipsis. */
const longestPart = 600;

/**
 * The codes: what is none of them is told as `type`. Where nothing was given, nothing was given wrongly: the code is
 * `missing`, whatever was due, but for the four that come first.
 */
const codes =
  /^(?:(missing|conflict|duplicate|infeasible)|(?:unit|substance)\/(?:unknown|ambiguous|mismatch)|not-finite|range|type|date|text)$/;

const codeOf = (code: unknown, got: unknown): ErrorCode => {
  const [known, evenOfNothing] = (typeof code === "string" && codes.exec(code)) || ["type"];
  return (got === "undefined" && !evenOfNothing ? "missing" : known) as ErrorCode;
};

/** A part of a message as text, and no longer than a message may be. */
const part = (text: unknown): string => {
  const whole = typeof text === "string" ? text : shown(text);
  return whole.length > longestPart ? `${whole.slice(0, longestPart - 1)}…` : whole;
};

/** A problem whose parts are texts of a bounded length, whoever made it. */
const sound = (problem: Problem): Problem => {
  const { code, path, got, expected, suggestion, choices, params } = Object(problem) as Problem;
  return {
    code: codeOf(code, got),
    // Whoever gives "" as the path wants the fields by their own names: a form has them so.
    path: part(path).replace(/^\./, ""),
    got: part(got),
    expected: part(expected),
    ...(suggestion !== undefined && { suggestion: part(suggestion) }),
    ...(Array.isArray(choices) && { choices: choices.slice(0, 40).map(part) }),
    ...(params !== undefined && { params }),
  };
};

/**
 * What a {@link Problem} says, in one line of English.
 *
 * @example
 * ```ts
 * import { problemText } from "ratewright";
 * problemText({ code: "unit/unknown", path: "rate", got: '"lbs"', expected: "a unit", suggestion: "lb" });
 * // => 'rate: expected a unit, got "lbs" (did you mean lb?)'
 * ```
 */
export const problemText = (problem: Problem): string => textOf(sound(problem));

/**
 * What a {@link Problem} says without its place, for a form that shows it beside the field. An app in another language
 * goes by `code` and `params`.
 *
 * @example
 * ```ts
 * import { problemReason } from "ratewright";
 * problemReason({ code: "range", path: "width", got: "0", expected: "more than 0" }); // => "expected more than 0, got 0"
 * ```
 */
export const problemReason = (problem: Problem): string => reasonOf(sound(problem));

const reasonOf = ({ expected, got, suggestion, choices }: Problem): string =>
  `expected ${expected}, got ${got}` +
  (suggestion ? ` (did you mean ${suggestion}?)` : "") +
  (choices?.[0] ? ` (say which: ${choices.join(", ")})` : "");

const textOf = (problem: Problem): string => `${problem.path}: ${reasonOf(problem)}`;

/** The message tells so many problems; the rest stand in `problems`. */
const mostTold = 50;

/**
 * The one error class of the library. It carries every problem that was found, not just the first:
 * `problems` has at least one entry, and `code`, `path`, `got`, `expected` and `suggestion` repeat
 * the first of them.
 *
 * @example
 * ```ts
 * import { quantity, RatewrightError } from "ratewright";
 * try {
 *   quantity(Number.NaN, "lb");
 * } catch (error) {
 *   if (error instanceof RatewrightError) {
 *     error.code; // => "not-finite"
 *     error.path; // => "value"
 *   }
 * }
 * ```
 */
export class RatewrightError extends Error {
  declare readonly code: ErrorCode;
  declare readonly path: string;
  declare readonly got: string;
  declare readonly expected: string;
  declare readonly suggestion?: string;
  declare readonly params?: Problem["params"];
  declare readonly problems: readonly Problem[];

  /**
   * @param problems - one problem, or all that were found
   */
  constructor(problems: Problem | readonly Problem[]) {
    const all: readonly Problem[] = [problems].flat().map(sound);
    const rest = all.length - mostTold;
    const told = all.slice(0, mostTold).map(textOf);
    super(told.concat(rest > 0 ? `and ${rest} more` : []).join("\n"));
    Object.assign(this, all[0], { name: "RatewrightError", problems: all });
  }
}

/** Whether something has the form of a quantity: one of this or of another copy of the package, or what JSON left of it. */
export const isQuantityLike = (value: unknown): value is QuantityLike => {
  const { value: number, unit, of = "" } = Object(value) as Partial<QuantityLike>;
  return typeof number === "number" && typeof unit === "string" && typeof of === "string";
};

interface QuantityLike {
  readonly value: number;
  readonly unit: string;
  readonly of?: string;
}

/** A number, in words where a person writes none; and whatever else is neither text, function nor record. */
const plainShown = (value: unknown): string =>
  String(value).replace("NaN", "not a number").replace("-Inf", "minus inf").replace("Inf", "inf");

/** Words of the library about what was given. */
class Words {
  constructor(readonly text: string) {}
}

/**
 * What was given, described: a message has it without the quotes that mark a text of the caller's.
 *
 * @param text - words of the library and numbers; a text of the caller's goes to {@link fail} as it is
 */
export const described = (text: string): unknown => new Words(text.slice(0, 200));

/**
 * How a received value is shown in a {@link Problem}: short, and safe for any input.
 *
 * @example
 * ```ts
 * import { quantity, shown } from "ratewright";
 * shown(quantity(3, "lb", "N")); // => "3 lb of N"
 * shown([1, 2]); // => "a list of 2"
 * ```
 */
export const shown = (value: unknown): string => {
  if (value instanceof Words) return value.text;
  if (typeof value === "string") return JSON.stringify(value.slice(0, 60));
  if (typeof value === "function") return "a function";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (isQuantityLike(value)) {
    const { value: number, unit, of } = value;
    return `${plainShown(number)} ${unit}${of && of !== "none" ? ` of ${of}` : ""}`.slice(0, 90);
  }
  return Object(value) === value ? "a record" : plainShown(value);
};

/**
 * Throws one {@link Problem} as a {@link RatewrightError}; its code is `missing` where `got` is `undefined`.
 *
 * @param code - one of the codes of docs/errors.md
 * @param path - the place of the value: `treatments[0].rate`
 * @param got - the value, as it came
 * @param expected - what would do
 * @param more - `suggestion` and `params`
 * @throws RatewrightError always
 *
 * @example
 * ```ts
 * import { fail } from "ratewright";
 * fail("range", "width", 0, "a width above zero"); // => throws range
 * ```
 */
export const fail = (
  code: ErrorCode,
  path: string,
  got: unknown,
  expected: string,
  more?: Pick<Problem, "suggestion" | "choices" | "params">,
): never => {
  throw new RatewrightError({ code, path, got: shown(got), expected, ...more });
};
