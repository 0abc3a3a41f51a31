import { addDays, addMonths, type CivilDate, civilDate, compareDates } from "../../calendar/index.js";
import { wholeUnitsFor, wholeUnitsWithin } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  expectText,
  type FactSource,
  type Finding,
  fail,
  numberIn,
  outOfRange,
  Quantity,
} from "../../quantity/index.js";

/** One application of an amendment. */
export interface AmendmentApplication<S extends string> {
  readonly date: CivilDate;
  readonly rate: Quantity<"mass/area", S>;
}

/** An amendment in applications by date. A plan to be checked against label and local rules. */
export interface SplitAmendment<S extends string> {
  readonly type: "split-amendment";
  readonly version: 1;
  readonly applications: readonly AmendmentApplication<S>[];
  readonly total: Quantity<"mass/area", S>;
  readonly most: Quantity<"mass/area", S>;
  readonly source: FactSource;
  readonly findings: readonly Finding[];
}

/** What {@link splitAmendment} is told. */
export interface SplitAmendmentInput<S extends string> {
  readonly total: Quantity<"mass/area", S>;
  /** The most at once, and who says so. */
  readonly most: Quantity<"mass/area", NoInfer<S>>;
  /** The most in any twelve months; no such limit where it is left out. */
  readonly perYear?: Quantity<"mass/area", NoInfer<S>>;
  readonly source: FactSource;
  readonly first: CivilDate;
  /** Whole months from one application to the next. */
  readonly monthsApart: number;
}

/** Applications beyond this are no plan: the target is then out of reach. */
const mostApplications = 60;
/** Below these years a soil is tested again before a split ends. */
const retestMonths = 36;

const expectMonths = (input: unknown): number => {
  const months = expectNumber(input, "monthsApart", { min: 1, max: 24 });
  return Number.isInteger(months) ? months : outOfRange("monthsApart", months, { step: 1, count: "months" });
};

/**
 * An amendment split into equal applications under a stated maximum, by date: `n = ceil(T / M)`, each `T / n`.
 *
 * - `T` total, `M` the most at once (the smaller of it and the yearly most, where one is stated), in the same substance
 * - application `i` falls `i` times the stated months after the first; where a yearly most is stated, no sooner than
 *   twelve months after the one that it would exceed it with; twelve months after 29 February is 1 March
 *
 * A split that ends more than three years later comes with a finding: the soil wants a new test before.
 *
 * @throws RatewrightError `infeasible` where it takes more than 60 applications, `substance/mismatch`, `range`, `date`,
 *   `missing`, `unit/mismatch`, `type`
 *
 * Source: "Commercial Turf - Maintain", Pennsylvania State University: two or more applications 4 to 6 months apart, none
 * over 100 lb per 1000 ft2; equal parts are common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { splitAmendment } from "ratewright/soil";
 * const lime = (pounds: number) => quantity(pounds, "lb/1000 ft2", "product:lime-a");
 * const split = splitAmendment({
 *   total: lime(180), most: lime(100), source: "laboratory report", first: "2026-10-01", monthsApart: 6,
 * });
 * split.applications.map(({ date, rate }) => [date, rate.in("lb/1000 ft2")]);
 * // => [["2026-10-01", 90], ["2027-04-01", 90]]
 * ```
 */
export const splitAmendment = <S extends string>(input: SplitAmendmentInput<S>): SplitAmendment<S> => {
  const fields = ["total", "most", "perYear", "source", "first", "monthsApart"] as const;
  const record = expectFields(input, fields, "input");
  const total = expectQuantity(record.total, { dimension: "mass/area", bound: "non-negative" }, "total");
  const limit = { dimension: "mass/area", of: total.of, bound: "positive" } as const;
  const read = allOf({
    most: () => expectQuantity(record.most, limit, "most"),
    perYear: () =>
      record.perYear === undefined ? undefined : expectQuantity(record.perYear, limit, "perYear"),
    first: () => civilDate(record.first as CivilDate, "first"),
    months: () => expectMonths(record.monthsApart),
    source: () => sourceOf(record.source),
  });
  const yearly = read.perYear === undefined ? Number.POSITIVE_INFINITY : numberIn(read.perYear, total.unit);
  const cap = Math.min(numberIn(read.most, total.unit), yearly);
  const count = total.value === 0 ? 0 : wholeUnitsFor(total.value, cap);
  if (count > mostApplications) {
    const expected = `at most ${mostApplications} applications under the stated maximum; this takes ${count}`;
    fail("infeasible", "total", total, expected);
  }
  const part = count === 0 ? 0 : total.value / count;
  const inYear = Number.isFinite(yearly) ? wholeUnitsWithin(yearly, part || 1) : count;
  const dates = datesOf({ first: read.first, months: read.months, count, inYear });
  const rate = (value: number): Quantity<"mass/area", S> =>
    new Quantity(value, total.unit, total.of as S, "mass/area");
  return {
    type: "split-amendment",
    version: 1,
    applications: dates.map((date) => ({ date, rate: rate(part) })),
    total: rate(total.value),
    most: new Quantity(read.most.value, read.most.unit, total.of as S, "mass/area"),
    source: read.source,
    findings: lateFinding(read.first, dates[dates.length - 1]),
  };
};

/** Whose maximum it is: words, or a citation that is read field by field. */
const sourceOf = (input: unknown): FactSource => {
  if (typeof input === "string") return expectText(input, "source", "who states the maximum");
  const record = expectFields(input, ["title", "publisher", "year", "where", "url"], "source");
  const text = (name: "title" | "publisher" | "where" | "url"): string =>
    expectText(record[name], `source.${name}`, "a text");
  return {
    title: text("title"),
    publisher: text("publisher"),
    ...(record.year === undefined ? {} : { year: expectNumber(record.year, "source.year") }),
    ...(record.where === undefined ? {} : { where: text("where") }),
    ...(record.url === undefined ? {} : { url: text("url") }),
  };
};

const datesOf = (plan: {
  readonly first: CivilDate;
  readonly months: number;
  readonly count: number;
  readonly inYear: number;
}): readonly CivilDate[] => {
  const offsets: number[] = [];
  for (let i = 0; i < plan.count; i++) {
    const next = i === 0 ? 0 : (offsets[i - 1] as number) + plan.months;
    const before = offsets[i - plan.inYear];
    offsets.push(before === undefined ? next : Math.max(next, before + 12));
  }
  // Counted from the first, for 31 January and a month are 28 February and the next is 31 March.
  const dates: CivilDate[] = [];
  for (const [i, months] of offsets.entries()) {
    const date = addMonths(plan.first, months);
    const before = dates[i - plan.inYear];
    const free = before === undefined ? date : yearAfter(before);
    dates.push(compareDates(free, date) > 0 ? free : date);
  }
  return dates;
};

/** The day on which an application no longer lies within twelve months: of one of 29 February it is 1 March. */
const yearAfter = (date: CivilDate): CivilDate => {
  const same = addMonths(date, 12);
  return same.slice(5) === date.slice(5) ? same : addDays(same, 1);
};

const lateFinding = (first: CivilDate, last: CivilDate | undefined): Finding[] =>
  last !== undefined && compareDates(last, addMonths(first, retestMonths)) > 0
    ? [
        {
          code: "soil/split-outlasts-test",
          severity: "caution",
          path: "first",
          params: { last, months: retestMonths },
          text: `The last application falls on ${last}, more than three years after the first: test the soil again before then.`,
          source: {
            title: "Home Lawn - Maintain: soil should be retested in three years",
            publisher: "Pennsylvania State University",
          },
        },
      ]
    : [];
