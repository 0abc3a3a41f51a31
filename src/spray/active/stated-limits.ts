import { exceeds } from "../../numeric/index.js";
import {
  checks,
  expectAmount,
  expectQuantity,
  fail,
  numberIn,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";

/** A quantity whose kind is checked at run time: a `Quantity` fits, and what JSON left of one. */
export interface AnyQuantity {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
}

/** The most of something that a label, an ordinance or a plan states for a named period. */
export interface StatedLimit {
  /** Of the product, of a nutrient such as `N` or `P2O5`, or of an active ingredient. */
  readonly limit: AnyQuantity;
  /** What was put down in the period before this application; zero where none, but said. */
  readonly before: AnyQuantity;
  /** Such as `calendar year 2026`, in the words of whoever keeps the record. */
  readonly period: string;
  /** Who states it. */
  readonly source: string;
}

/** What remains under one stated limit. */
export interface RemainingUnderLimit {
  readonly of: string;
  readonly period: string;
  readonly source: string;
  readonly limit: Quantity<string, string>;
  /** Before and with this application. */
  readonly used: Quantity<string, string>;
  /** Negative where the limit is broken. */
  readonly remaining: Quantity<string, string>;
  readonly broken: boolean;
}

/** What an application puts down per area, by substance. */
type Amounts = ReadonlyMap<string, Quantity<string, string>>;

/** What remains under each stated limit, and of which of them nothing is known; every bad limit is reported. */
export const remainingOf = (
  stated: readonly StatedLimit[],
  amounts: Amounts,
): { readonly limits: readonly RemainingUnderLimit[]; readonly unknown: readonly string[] } => {
  const limits: RemainingUnderLimit[] = [];
  const unknown: string[] = [];
  const door = checks();
  // Not forEach, which skips the holes of a list.
  for (const [i, one] of stated.entries()) {
    const found = door.run(() => remainingUnder(one, `limits[${i}]`, amounts));
    if (typeof found === "string") unknown.push(found);
    else if (found !== undefined) limits.push(found);
  }
  door.done();
  return { limits, unknown };
};

/** What remains under one limit; the words that say so where it cannot be held against this application. */
const remainingUnder = (one: StatedLimit, at: string, amounts: Amounts): RemainingUnderLimit | string => {
  if (typeof one !== "object" || one === null) {
    return fail(one === undefined ? "missing" : "type", at, one, "a stated limit");
  }
  const { period, source } = one;
  const door = checks();
  door.run(() => textOf(period, `${at}.period`, "the period, in words"));
  door.run(() => textOf(source, `${at}.source`, "who states the limit"));
  const limit = door.run(() => rateIn(one.limit, `${at}.limit`));
  const before = door.run(() =>
    one.before === undefined || one.before === null
      ? fail("missing", `${at}.before`, one.before, "what was put down before in the period, zero where none")
      : limit &&
        expectQuantity(
          one.before,
          { dimension: limit.dimension, of: limit.of, bound: "non-negative" },
          `${at}.before`,
        ),
  );
  door.done();
  const { unit, of, dimension, value } = limit as Quantity<string, string>;
  const now = amounts.get(of);
  if (now === undefined) {
    return `the stated limit of ${of} in the ${period}: what this application holds of it is not known`;
  }
  if (now.dimension !== dimension) {
    fail("unit/mismatch", `${at}.limit`, limit, `a limit in the measure of the product, ${now.dimension}`);
  }
  const used = numberIn(before, unit) + numberIn(now, unit);
  const broken = exceeds(used, value);
  const inLimit = (number: number): Quantity<string, string> => quantityOf(number, unit, of, at);
  return {
    of,
    period,
    source,
    limit: limit as Quantity<string, string>,
    used: inLimit(used),
    // A limit that is just reached leaves nothing: what floating point makes of it is no break.
    remaining: inLimit(broken ? value - used : Math.max(value - used, 0)),
    broken,
  };
};

const textOf = (input: unknown, path: string, expected: string): void => {
  if (typeof input !== "string" || input === "") {
    fail(input === undefined || input === "" ? "missing" : "type", path, input, expected);
  }
};

const rateIn = (input: unknown, path: string): Quantity<string, string> =>
  input === undefined || input === null
    ? fail("missing", path, input, "a limit per area")
    : (expectAmount(
        input,
        { dimensions: ["mass/area", "volume/area"], bound: "non-negative" },
        path,
      ) as unknown as Quantity<string, string>);
