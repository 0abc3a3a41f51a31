import { fail, type Problem, RatewrightError } from "./errors.js";
import { expectRecord } from "./expect.js";
import { hasOwn } from "./has-own.js";

/** Runs checks one after another and keeps what they complain about, so that a caller sees all problems at once. */
export interface Checks {
  /** What `check` gives, or `undefined` where it threw; its problems are kept, with `at` before their path. */
  run<T>(check: () => T, at?: string): T | undefined;
  /** Keeps one problem. */
  add(problem: Problem): void;
  /** How many problems were kept so far. */
  count(): number;
  /** Throws all that was kept, where anything was. */
  done(): void;
}

/** The path of a part inside a record: `treatments[1]` and `rate` give `treatments[1].rate`. A point at its front is taken off by the error. */
const joined = (at: string, path: string): string =>
  path === "" || path.startsWith("[") ? at + path : `${at}.${path}`;

/** So many problems are told at once; what is wrong in more places is looked at no further. */
const mostKept = 10_000;

/**
 * A fresh list of {@link Checks}. With the ten thousandth problem it throws what it has: a long list of nothing costs no
 * more than that.
 *
 * @example
 * ```ts
 * import { checks, quantity } from "ratewright";
 * const refused = checks();
 * refused.run(() => quantity(Number.NaN, "lb"), "rate");
 * refused.run(() => quantity(Number.NaN, "acre"), "area");
 * refused.count(); // => 2
 * refused.done(); // => throws not-finite
 * ```
 */
export const checks = (): Checks => {
  const problems: Problem[] = [];
  const keep = (problem: Problem): void => {
    problems.push(problem);
    if (problems.length >= mostKept) throw new RatewrightError(problems);
  };
  return {
    run(check, at = "") {
      try {
        return check();
      } catch (error) {
        if (!(error instanceof RatewrightError)) throw error;
        for (const problem of error.problems) keep({ ...problem, path: joined(at, problem.path) });
        return undefined;
      }
    },
    add: keep,
    count() {
      return problems.length;
    },
    done() {
      if (problems.length > 0) throw new RatewrightError(problems);
    },
  };
};

/**
 * Runs the reader of every named argument and gives what they give by name, or throws the problems of all.
 *
 * @typeParam R - the readers by name
 * @throws RatewrightError with every problem of every reader
 *
 * @example
 * ```ts
 * import { allOf, expectNumber } from "ratewright";
 * allOf({ slope: () => expectNumber(4, "slope"), share: () => expectNumber(0.5, "share") }); // => { slope: 4, share: 0.5 }
 * allOf({ slope: () => expectNumber(null, "slope"), share: () => expectNumber(null, "share") }); // => throws not-finite
 * ```
 */
export const allOf = <const R extends Readonly<Record<string, () => unknown>>>(
  readers: R,
): { readonly [K in keyof R]: ReturnType<R[K]> } => {
  const problems: Problem[] = [];
  const found: Record<string, unknown> = {};
  const given = expectRecord(readers, "readers");
  for (const name in given) {
    if (!hasOwn(given, name)) continue;
    const read = given[name];
    try {
      found[name] =
        typeof read === "function" ? read() : fail("type", `readers.${name}`, read, "a function that reads");
    } catch (error) {
      if (!(error instanceof RatewrightError)) throw error;
      problems.push(...error.problems.slice(0, mostKept - problems.length));
    }
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  return found as { readonly [K in keyof R]: ReturnType<R[K]> };
};
