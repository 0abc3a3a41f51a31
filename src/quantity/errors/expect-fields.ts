import { described, fail, isQuantityLike, type Problem, RatewrightError, shown } from "./errors.js";
import { expectRecord, isRecord } from "./expect.js";
import { hasOwn } from "./has-own.js";
import { nearField, nearWord } from "./near-name.js";

/** A name as it is, and anything else as it is shown: a list of names may come from anywhere. */
const word = (name: unknown): string => (typeof name === "string" ? name : shown(name));

/** Names that a program gives, as a list of bounded length. */
export const listed = (names: unknown): readonly unknown[] =>
  Array.isArray(names) && names.length <= 1000 ? names : [names];

/** Throws where the words that are to be told are none: that is a slip of the program, not of its input. */
export const expectWords = (words: unknown, path: string): void => {
  const wrong = listed(words).findIndex((one) => typeof one !== "string" || one === "");
  if (wrong >= 0 || listed(words).length === 0)
    fail(
      "type",
      wrong < 0 ? path : `${path}[${wrong}]`,
      wrong < 0 ? words : listed(words)[wrong],
      "a list of words",
    );
};

/** {@link expectFields}, with what finds the known name that a strange one most likely means. */
export const fieldsOf = <const F extends string>(
  input: unknown,
  known: readonly F[],
  path: string,
  expected: string | undefined,
  nearest: (name: string, known: readonly string[]) => string | undefined,
): { readonly [K in F]?: unknown } => {
  const names = listed(known);
  const few = (): string => names.slice(0, 8).map(word).join(", ");
  const record = isRecord(input) ? input : expectRecord(input, path, expected ?? `a record with ${few()}`);
  // Nearly every record is sound: nothing is put into words before one is not.
  let sound = false;
  for (const name in record) {
    if (!hasOwn(record, name)) continue;
    sound = names.includes(name);
    if (!sound) break;
  }
  if (sound) return record as { readonly [K in F]?: unknown };
  // A quantity where a record is due is one mistake, not one for each of its fields.
  if (isQuantityLike(input) && !names.includes("unit")) {
    fail("type", path || word(names[0]), input, `a record with ${few()}: write { ${word(names[0])}: ... }`);
  }
  const strange = Object.keys(record).filter((name) => !names.includes(name));
  if (strange.length === 0) return record as { readonly [K in F]?: unknown };
  expectWords(known, "known");
  // What another function makes or takes, a ledger for what has one: as many strange fields, and one mistake.
  const { type } = record;
  if (typeof type === "string" && "version" in record && 2 * strange.length > Object.keys(record).length) {
    const field = names.find((name) => name === type || name === `${type}s`);
    const how = field === undefined ? "" : `: write { ${word(field)}: ... }`;
    fail(
      "type",
      path || "type",
      described(`a record of type ${shown(type)}`),
      `a record with ${few()}${how}`,
    );
  }
  const problems = strange.map((name): Problem => {
    const near = nearest(name, names as readonly string[]);
    return {
      code: "type",
      path: `${path}.${name}`,
      got: `a field "${name}"`,
      expected: `one of the fields ${names.map(word).join(", ")}`,
      ...(near !== undefined && { suggestion: near }),
    };
  });
  throw new RatewrightError(problems);
};

/**
 * Takes a record whose fields all have known names: a misspelt field would otherwise be passed over.
 *
 * @param expected - what a message asks for
 * @throws RatewrightError `type` for each field that is not known, with the known one that is near
 *
 * @example
 * ```ts
 * import { expectFields } from "ratewright";
 * expectFields({ rate: 3 }, ["rate", "area"], "input").rate; // => 3
 * expectFields({ rtae: 3 }, ["rate", "area"], "input"); // => throws type
 * ```
 */
export const expectFields = <const F extends string>(
  input: unknown,
  known: readonly F[],
  path = "input",
  expected?: string,
): { readonly [K in F]?: unknown } => fieldsOf(input, known, path, expected, nearField);

/** A list has at most so many items, unless a function says otherwise: more than a century of hours. */
const mostItems = 1_000_000;

/**
 * Takes a list that is not empty, or throws. It is looked at before it is copied, so that a list that claims a thousand
 * million items costs nothing.
 *
 * @param most - the most items that it may have, 1,000,000 where it is left out
 * @param of - what its items are, for a message
 * @throws RatewrightError `missing`, `type`; `range` for a longer list
 *
 * @example
 * ```ts
 * import { expectList } from "ratewright";
 * expectList([3, 4], "readings", "reading"); // => [3, 4]
 * expectList([], "readings", "reading"); // => throws missing
 * ```
 */
export const expectList = (
  input: unknown,
  path: string,
  of: string,
  most: number = mostItems,
): readonly unknown[] => {
  if (!Array.isArray(input)) return fail("type", path, input, `a list with at least one ${of}`);
  if (typeof most !== "number") return fail("type", "most", most, "a number of items");
  if (input.length > most)
    return fail("range", path, input, `at most ${most} items`, { params: { max: most } });
  const { length } = input;
  if (length === 0) return fail("missing", path, described("an empty list"), `at least one ${of}`);
  // A copy: a hole in a list is an item that is not there, and map would pass it over.
  const list: unknown[] = [];
  for (let i = 0; i < length; i++) list.push(input[i]);
  return list;
};

/**
 * Takes a text that is not empty, or throws; a blank one counts as `missing`.
 *
 * @param expected - what a message asks for
 * @throws RatewrightError `missing`, `type`, `range`
 *
 * @example
 * ```ts
 * import { expectText } from "ratewright";
 * expectText("meadow", "part", "the name of a part"); // => "meadow"
 * expectText(" ", "part", "the name of a part"); // => throws missing
 * expectText(3, "part", "the name of a part"); // => throws type
 * ```
 */
export const expectText = (input: unknown, path: string, expected: string): string =>
  typeof input === "string" && input.trim() !== ""
    ? input
    : fail(typeof input === "string" ? "missing" : "type", path, input, expected);

/**
 * Takes one of a few words, or throws with the words.
 *
 * @throws RatewrightError `missing`, `type`
 *
 * @example
 * ```ts
 * import { expectOneOf } from "ratewright";
 * expectOneOf("metric", ["US", "metric"], "units"); // => "metric"
 * expectOneOf("SI", ["US", "metric"], "units"); // => throws type
 * ```
 */
export const expectOneOf = <const T extends string>(input: unknown, words: readonly T[], path: string): T =>
  (listed(words) as readonly T[]).find((word) => word === input) ?? noneOf(input, words, path);

const noneOf = (input: unknown, words: unknown, path: string): never => {
  expectWords(words, "words");
  const names = listed(words) as readonly string[];
  const choices = names.map(shown).join(", ");
  const near = typeof input === "string" ? nearWord(input, names) : undefined;
  return fail("type", path, input, `one of ${choices}`, near === undefined ? near : { suggestion: near });
};

/**
 * Takes true or false, or throws with its path.
 *
 * @throws RatewrightError `missing`, `type`
 *
 * @example
 * ```ts
 * import { expectFlag } from "ratewright";
 * expectFlag(true, "established"); // => true
 * expectFlag("yes", "established"); // => throws type
 * ```
 */
export const expectFlag = (input: unknown, path: string): boolean =>
  typeof input === "boolean" ? input : fail("type", path, input, "true or false");
