import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  likeQuantity,
  numberIn,
  ofKind,
  outOfRange,
  type Quantity,
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
  /** Negative where the limit is exceeded. */
  readonly remaining: Quantity<string, string>;
  readonly exceeded: boolean;
}

/** What an application puts down per area, by substance. */
type Amounts = ReadonlyMap<string, AnyQuantity>;

/** What remains under each stated limit, and of which of them nothing is known; every bad limit is reported. */
export const remainingOf = (
  stated: readonly StatedLimit[],
  amounts: Amounts,
): { readonly limits: readonly RemainingUnderLimit[]; readonly unknown: readonly string[] } => {
  const limits: RemainingUnderLimit[] = [];
  const unknown: string[] = [];
  const problems = checks();
  // Not forEach, which skips the holes of a list.
  for (const [i, one] of stated.entries()) {
    const found = problems.run(() => remainingUnder(one, `limits[${i}]`, amounts));
    if (typeof found === "string") unknown.push(found);
    else if (found !== undefined) limits.push(found);
  }
  problems.done();
  return { limits, unknown };
};

/** What remains under one limit; the words that say so where it cannot be held against this application. */
const remainingUnder = (one: unknown, at: string, amounts: Amounts): RemainingUnderLimit | string => {
  const { limit, before, period, source } = readLimit(one, at);
  const { unit, of, dimension, value } = limit;
  const now = amounts.get(of);
  if (now === undefined) {
    return `the stated limit of ${of} in the ${period}: how much of it this application puts down is not known`;
  }
  const applied = expectAmount(now, { dimensions: measures }, at);
  if (applied.dimension !== dimension) {
    fail(
      "unit/mismatch",
      `${at}.limit`,
      limit,
      `a limit in the measure of the product, ${applied.dimension}`,
    );
  }
  const used = numberIn(before, unit) + numberIn(applied, unit);
  const exceeded = exceeds(used, value);
  return {
    of,
    period,
    source,
    limit,
    used: likeQuantity(limit, used),
    // A limit that is just reached leaves nothing: what floating point makes of it does not exceed it.
    remaining: likeQuantity(limit, exceeded ? value - used : Math.max(value - used, 0)),
    exceeded,
  };
};

const measures = ["mass/area", "volume/area"] as const;

const readLimit = (
  one: unknown,
  at: string,
): Pick<RemainingUnderLimit, "limit" | "period" | "source"> & { readonly before: AnyQuantity } => {
  if (one === undefined || one === null) return fail("type", at, one, "a stated limit");
  const given = expectFields(one, ["limit", "before", "period", "source"], at, "a stated limit");
  const read = allOf({
    period: () => textOf(given.period, `${at}.period`, "the period, in words"),
    source: () => textOf(given.source, `${at}.source`, "who states the limit"),
    limit: () => rateIn(given.limit, `${at}.limit`, "a limit per area"),
    before: () =>
      rateIn(given.before, `${at}.before`, "what was put down before in the period, zero where none"),
  });
  const { dimension, of } = read.limit;
  return {
    ...read,
    limit: ofKind(read.limit),
    before: expectQuantity(read.before, { dimension, of }, `${at}.before`),
  };
};

/** The longest text that says who states a limit, and for which period. */
const longest = 1000;

const textOf = (input: unknown, path: string, expected: string): string => {
  if (typeof input !== "string" || input === "")
    return fail(input === undefined || input === "" ? "missing" : "type", path, input, expected);
  return input.length > longest
    ? outOfRange(path, described(`a text of ${input.length} characters`), {
        max: longest,
        count: "characters",
      })
    : input;
};

const rateIn = (
  input: unknown,
  path: string,
  expected: string,
): Quantity<(typeof measures)[number], string> =>
  input === undefined || input === null
    ? fail("missing", path, input, expected)
    : expectAmount(input, { dimensions: measures, bound: "non-negative" }, path);
