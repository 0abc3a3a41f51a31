import { expectFields, expectNumber, expectOneOf, fail } from "../../quantity/index.js";

import { expectPath } from "../label/expect-source.js";

/**
 * How a setting of an injector is written. `"1:N"` is one part of stock in `N` parts of final solution;
 * `"1+N"` is one part of stock and `N` parts of water, which makes `N + 1`. At 1 to 100 the two are 1 %
 * apart, at 1 to 15 nearly 7 %.
 */
export type InjectorReading = "1:N" | "1+N";

/** An injector setting as text, in the reading that it has. */
export type InjectorText = `1:${number}` | `1+${number}`;

/** A setting of an injector. Plain JSON. */
export interface Injector<R extends InjectorReading = InjectorReading> {
  readonly type: "injector";
  readonly version: 1;
  readonly reading: R;
  /** `N`. */
  readonly parts: number;
  /** Volumes of final solution for one of stock: `N`, or `N + 1`. */
  readonly dilution: number;
}

/** The reading of a text. */
export type ReadingOf<T extends InjectorText> = T extends `1:${number}` ? "1:N" : "1+N";

/**
 * Reads a setting of an injector: `1:100` is one part in 100 of final solution, `1+100` one part and 100
 * of water. The two are told apart in the type. Look up which one the maker of the injector means: both
 * stand in print as "1 to 100".
 *
 * Equation: `D = N` for `1:N`, `D = N + 1` for `1+N`
 *
 * - `D` volumes of final solution for one volume of stock
 * - `N` more than 1 for `1:N`, more than 0 for `1+N`; at most 100 000
 *
 * @throws RatewrightError `text` for another notation, `range`
 *
 * Source: the reading "1 in 100", University of Massachusetts Extension, "Fertilizer calculations for
 * greenhouse crops"; the other is common on metering pumps (common practice, no source).
 *
 * @example
 * ```ts
 * import { injector } from "ratewright";
 * injector("1:100").dilution; // => 100
 * injector("1+100").dilution; // => 101
 * injector("1:100").reading; // => "1:N"
 * ```
 */
export const injector = <const T extends InjectorText>(
  setting: T,
  path = "injector",
): Injector<ReadingOf<T>> => {
  expectPath(path);
  const [, sign, digits] =
    (typeof setting === "string" && setting.length <= longest
      ? /^1([:+])(\d+(?:\.\d+)?)$/.exec(setting)
      : null) ?? [];
  if (sign === undefined || digits === undefined) {
    return fail("text", path, setting, "1:100 for one part in 100, or 1+100 for one part and 100 of water");
  }
  const reading = sign === ":" ? "1:N" : "1+N";
  return checkedInjector(
    {
      type: "injector",
      version: 1,
      reading,
      parts: Number(digits),
      dilution: Number(digits) + (sign === ":" ? 0 : 1),
    },
    path,
  ) as Injector<ReadingOf<T>>;
};

/** Takes an injector that may come from JSON, or throws with its path. */
export const checkedInjector = (input: Injector, path: string): Injector => {
  if (input?.type !== "injector") {
    return fail("type", path, input, 'an injector setting, such as injector("1:100")');
  }
  expectFields(input, ["type", "version", "reading", "parts", "dilution"], path);
  const reading = expectOneOf(input.reading, ["1:N", "1+N"], `${path}.reading`);
  const least = reading === "1:N" ? 1 : 0;
  const parts = expectNumber(input.parts, `${path}.parts`, { above: least, max: 100_000 });
  const dilution = reading === "1:N" ? parts : parts + 1;
  if (input.dilution !== dilution) fail("conflict", `${path}.dilution`, input.dilution, `${dilution}`);
  return { type: "injector", version: 1, reading, parts, dilution };
};

/** Far longer than any setting is written. */
const longest = 40;
