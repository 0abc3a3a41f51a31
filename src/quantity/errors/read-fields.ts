import type { Checks } from "./checks.js";
import { fail, type Problem, RatewrightError } from "./errors.js";
import { expectRecord } from "./expect.js";
import { expectFields, listed } from "./expect-fields.js";

/**
 * Every value inside an input that can be neither read nor shown, such as a record with a field `toString`
 * that is no function, or without a prototype: nothing below this door has to reckon with them.
 *
 * @example
 * ```ts
 * import { unreadable } from "ratewright";
 * unreadable({ rate: { value: 3 } }, "job").length; // => 0
 * unreadable({ rate: { toString: 1 } }, "job")[0]?.path; // => "job.rate"
 * ```
 */
export const unreadable = (input: unknown, path: string): Problem[] => {
  const problems: Problem[] = [];
  if (holdsFields(input)) {
    walk(
      { record: input, name: typeof path === "string" ? path : "input", above: undefined, depth: 0 },
      problems,
    );
  }
  return problems;
};

/** No record that anybody writes is so deep; a text of JSON can be deeper than a program can walk. */
const deepest = 64;
/** The most items of a list, as `expectList` has it. */
const longest = 1_000_000;

/** A record on the way down; its path is put together only where something is wrong. */
interface Place {
  readonly record: object;
  readonly name: string;
  readonly above: Place | undefined;
  readonly depth: number;
}

const pathOf = ({ name, above }: Place): string => {
  if (above === undefined) return name;
  const before = pathOf(above);
  return Array.isArray(above.record) ? `${before}[${name}]` : before === "" ? name : `${before}.${name}`;
};

const holdsItself = ({ record, above }: Place): boolean => {
  for (let place = above; place !== undefined; place = place.above) if (place.record === record) return true;
  return false;
};

const holdsFields = (input: unknown): input is object =>
  typeof input === "object" && input !== null && !ArrayBuffer.isView(input);

const unplain = (place: Place, got: string): Problem => ({
  code: "type",
  path: pathOf(place),
  got,
  expected: "plain data, as JSON.parse gives it",
});

const walk = (place: Place, problems: Problem[]): void => {
  const wrong = wrongRecord(place);
  if (wrong !== undefined) {
    problems.push(wrong);
    return;
  }
  const { record, depth } = place;
  const before = problems.length;
  try {
    for (const name of Object.keys(record)) {
      const value = (record as Readonly<Record<string, unknown>>)[name];
      const kind = typeof value;
      if (kind !== "object" && kind !== "bigint" && kind !== "symbol") continue;
      const inside: Place = { record: value as object, name, above: place, depth: depth + 1 };
      if (holdsFields(value)) walk(inside, problems);
      else if (kind !== "object") problems.push(unplain(inside, `a ${kind}`));
    }
  } catch {
    problems.length = before;
    problems.push(unplain(place, "a record that throws when it is read"));
  }
};

const wrongRecord = (place: Place): Problem | undefined => {
  const { record, depth } = place;
  if (holdsItself(place)) return unplain(place, "a record that contains itself");
  if (depth >= deepest) return unplain(place, `a record more than ${deepest} deep`);
  if (Array.isArray(record) && record.length > longest)
    return {
      code: "range",
      path: pathOf(place),
      got: `a list of ${record.length}`,
      expected: `at most ${longest} items`,
      params: { max: longest },
    };
  try {
    if (typeof record.toString === "function") return undefined;
  } catch {
    return unplain(place, "a record that throws when it is read");
  }
  return unplain(place, "a record that cannot be turned into text");
};

/**
 * Runs a check of another record, and tells its problems of the place in this one: `rule.source` of
 * `treatments[0].interval`.
 *
 * @param itsName - how the other record calls itself in its problems
 * @throws RatewrightError with the problems of `run`
 *
 * @example
 * ```ts
 * import { expectNumber, toldAt } from "ratewright";
 * toldAt("treatments[0].interval", "rule", () => expectNumber(14, "rule.days")); // => 14
 * toldAt("treatments[0].interval", "rule", () => expectNumber(null, "rule.days")); // => throws not-finite
 * ```
 */
export const toldAt = <T>(path: string, itsName: string, run: () => T): T => {
  expectCall(run);
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(
      error.problems.map((problem) => {
        const inside = problem.path === itsName || problem.path.startsWith(`${itsName}.`);
        const rest = inside ? problem.path.slice(itsName.length + 1) : problem.path;
        return { ...problem, path: rest === "" ? path : `${path}.${rest}` };
      }),
    );
  }
};

/**
 * Runs a formula, and tells its problems by the places of the record that its arguments came from: `capacity` is
 * `sprayer.tank`.
 *
 * @throws RatewrightError with the problems of `run`
 *
 * @example
 * ```ts
 * import { expectNumber, toldBy } from "ratewright";
 * toldBy({ capacity: "sprayer.tank" }, () => expectNumber(300, "capacity")); // => 300
 * toldBy({ capacity: "sprayer.tank" }, () => expectNumber("300", "capacity")); // => throws not-finite
 * ```
 */
export const toldBy = <T>(places: Readonly<Record<string, string>>, run: () => T): T => {
  expectCall(run);
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(
      error.problems.map((problem) => {
        const name = Object.keys(places).find(
          (key) => problem.path.startsWith(key) && !/^\w/.test(problem.path.slice(key.length)),
        );
        return name === undefined
          ? problem
          : { ...problem, path: `${places[name]}${problem.path.slice(name.length)}` };
      }),
    );
  }
};

/** Reads one field, or throws with its path. */
export type Reader = (input: unknown, path: string) => unknown;

/**
 * Checks a record whose fields have a reader each: every field that is there, and those that are needed. The
 * problems go to a list of {@link Checks}.
 *
 * @param readers - by field: each throws what is wrong with its value
 * @param expected - what a message asks for
 * @throws RatewrightError only with the ten thousandth problem, see {@link checks}
 *
 * @example
 * ```ts
 * import { checks, expectNumber, readFields } from "ratewright";
 * const problems = checks();
 * readFields({ rate: 3 }, { rate: expectNumber, speed: expectNumber }, ["speed"], "input", "a run", problems);
 * problems.count(); // => 1
 * ```
 */
export const readFields = (
  input: unknown,
  readers: Readonly<Record<string, Reader>>,
  needed: readonly string[],
  path: string,
  expected: string,
  problems: Checks,
): void => {
  const run = (Object(problems) as Partial<Checks>).run as Checks["run"];
  expectCall(run);
  const attempt = <T>(check: () => T): T | undefined => run.call(problems, check) as T | undefined;
  const named = expectRecord(readers, "readers", "a reader for each field");
  const at = typeof path === "string" ? path : "input";
  const record = attempt(() => expectFields(input, Object.keys(named), at, expected));
  if (record === undefined) return;
  for (const [name, read] of Object.entries(named)) {
    const value = record[name];
    if (value !== undefined || listed(needed).includes(name)) {
      attempt(() => {
        expectCall(read);
        return (read as Reader)(value, `${at}.${name}`);
      });
    }
  }
};

const expectCall = (run: unknown): void => {
  if (typeof run !== "function") fail("type", "run", run, "a function that reads");
};
