import { addDays, type CivilDate, compareDates, isWithinWindow, windowAround } from "../calendar/index.js";
import { exceeds } from "../numeric/index.js";
import { formFactor, type NutrientsSupplied } from "../nutrient/index.js";
import { type Finding, type Quantity, quantityOf } from "../quantity/index.js";
import type { LimitPeriod } from "./job.js";
import type { ReadJob } from "./read-job.js";
import type { ReadLimit, ReadLogEntry } from "./read-log.js";
import type { SprayOrder } from "./spray-order.js";
import { statedRate, suppliedBy } from "./spray-order.js";
import type { SpreadOrder } from "./spread-order.js";

/** Nutrients per area, by name: what an application adds, or what has gone down. */
export type NutrientRates = Readonly<Record<string, Quantity<"mass/area", string>>>;

/** What one application adds. */
export interface NutrientEntry {
  readonly date: CivilDate;
  /** The treatment of this visit, or the place in the log. */
  readonly from: string;
  readonly supplies: NutrientRates;
}

/** A limit, and how far it is used up. */
export interface LimitUse {
  /** The limit, as the job states it. */
  readonly limit: {
    readonly of: string;
    readonly amount: Quantity<"mass/area", string>;
    readonly per: LimitPeriod;
    readonly source: string;
  };
  readonly path: string;
  /** From when to when it was added up; `null` at both ends for one application. */
  readonly from: CivilDate | null;
  readonly to: CivilDate | null;
  readonly before: Quantity<"mass/area", string>;
  readonly adds: Quantity<"mass/area", string>;
  readonly after: Quantity<"mass/area", string>;
  /** What is left of the limit after this visit; below zero where it is passed. */
  readonly remainingUnderStatedLimits: Quantity<"mass/area", string>;
  readonly passed: boolean;
}

/** The nutrients of one part of the site. */
export interface NutrientAccount {
  /** A part of the site, or `"whole site"`. */
  readonly part: string;
  /** This calendar year so far, without this visit. */
  readonly yearSoFar: NutrientRates;
  readonly visit: readonly NutrientEntry[];
  /** The visit added up. */
  readonly visitTotal: NutrientRates;
  readonly yearAfter: NutrientRates;
  readonly limits: readonly LimitUse[];
}

const add = (rates: readonly NutrientRates[]): NutrientRates => {
  const total: Record<string, Quantity<"mass/area", string>> = {};
  for (const rate of rates) {
    for (const [of, q] of Object.entries(rate)) total[of] = total[of] === undefined ? q : total[of].plus(q);
  }
  return total;
};

/** An amount of a nutrient in the form asked for: P from P2O5 where only that is there; zero where there is none. */
const amountOf = (rates: NutrientRates, of: string, unit: string): number => {
  const inUnit = (q: Quantity<"mass/area", string>): number => q.in(unit as "lb/acre");
  if (rates[of] !== undefined) return inUnit(rates[of]);
  for (const [form, q] of Object.entries(rates)) {
    const factor = formFactor(form, of);
    if (factor !== undefined) return inUnit(q) * factor;
  }
  return 0;
};

/** The nutrients that a log entry states: where no soluble nitrogen is, all of the nitrogen is soluble. */
const statedNutrients = (entry: ReadLogEntry, findings: Finding[]): NutrientRates => {
  const rates = add((entry.nutrients ?? []).map((q) => ({ [q.of]: q })));
  if (rates.N === undefined || rates["N:soluble"] !== undefined) return withSlow(rates);
  const slow = rates["N:slow"];
  const soluble = slow === undefined ? rates.N.value : rates.N.value - slow.in(rates.N.unit as "lb/acre");
  if (slow === undefined) {
    findings.push({
      code: "nitrogen/no-slow-stated",
      severity: "note",
      path: entry.path,
      params: { date: entry.date },
      text: `The entry of ${entry.date} states no slow-release nitrogen: all of its nitrogen counts as soluble.`,
      source: "common practice, no source",
    });
  }
  return {
    ...rates,
    "N:soluble": quantityOf(Math.max(0, soluble), rates.N.unit, "N:soluble", entry.path) as never,
  };
};

const withSlow = (rates: NutrientRates): NutrientRates => rates;

const periodOf = (date: CivilDate, per: LimitPeriod): { from: CivilDate; to: CivilDate } | undefined => {
  if (per === "application") return { from: date, to: date };
  if (per === "calendar year")
    return { from: `${date.slice(0, 4)}-01-01` as CivilDate, to: `${date.slice(0, 4)}-12-31` as CivilDate };
  if ("days" in per) return { from: addDays(date, 1 - per.days), to: date };
  return isWithinWindow(date, per) ? windowAround(date, per) : undefined;
};

const within = (date: CivilDate, { from, to }: { from: CivilDate; to: CivilDate }): boolean =>
  compareDates(date, from) >= 0 && compareDates(date, to) <= 0;

const tidy = (value: number): number => Number(value.toPrecision(4));

const useOf = (
  limit: ReadLimit,
  date: CivilDate,
  log: readonly NutrientEntry[],
  visit: NutrientRates,
): LimitUse | undefined => {
  const period = periodOf(date, limit.per);
  if (period === undefined) return undefined;
  const { unit, of } = limit.amount;
  const before = log
    .filter((entry) => within(entry.date, period))
    .reduce((total, entry) => total + amountOf(entry.supplies, of, unit), 0);
  const adds = amountOf(visit, of, unit);
  const q = (value: number): Quantity<"mass/area", string> =>
    quantityOf(value, unit, of, limit.path) as never;
  return {
    limit: { of, amount: limit.amount, per: limit.per, source: limit.source },
    path: limit.path,
    from: limit.per === "application" ? null : period.from,
    to: limit.per === "application" ? null : period.to,
    before: q(before),
    adds: q(adds),
    after: q(before + adds),
    remainingUnderStatedLimits: q(limit.amount.value - before - adds),
    passed: exceeds(before + adds, limit.amount.value),
  };
};

/** How a period reads in a sentence. */
export const periodText = (per: LimitPeriod): string =>
  per === "application"
    ? "in one application"
    : per === "calendar year"
      ? "in a calendar year"
      : "days" in per
        ? `in ${per.days} days`
        : `from ${per.from} to ${per.to}`;

/** Adds up the nutrients of each part of the site, and compares with the limits that the job states. */
export const nutrientAccounts = (
  job: ReadJob,
  orders: readonly (SpreadOrder | SprayOrder)[],
  findings: Finding[],
  notChecked: string[],
): readonly NutrientAccount[] => {
  const log = job.log.map((entry) => {
    const { product, rate } = entry;
    const supplies =
      product !== undefined && rate !== undefined
        ? ((suppliedBy(product, statedRate(rate, product.id, entry.path), job.sprayer, notChecked) ??
            {}) as NutrientRates)
        : statedNutrients(entry, findings);
    return { entry, row: { date: entry.date, from: entry.path, supplies } };
  });
  const visit = orders.map((order) => {
    const supplied: readonly (NutrientsSupplied<"mass/area"> | undefined)[] =
      order.method === "spread" ? [order.supplies] : order.products.map((product) => product.supplies);
    const supplies = add(supplied.map((s) => (s ?? {}) as NutrientRates));
    return { order, row: { date: job.date, from: order.treatment, supplies } };
  });
  const byPart = [...job.treatments, ...job.log].some((item) => item.parts !== undefined);
  const names = byPart ? [...job.site.parts.keys()] : ["whole site"];
  return names.map((part): NutrientAccount => {
    const touches = (parts: readonly string[] | undefined): boolean =>
      parts === undefined || parts.length === 0 || parts.includes(part);
    const before = log.filter(({ entry }) => touches(entry.parts)).map(({ row }) => row);
    const now = visit.filter(({ order }) => touches(order.parts)).map(({ row }) => row);
    const year = before
      .filter(({ date }) => date.slice(0, 4) === job.date.slice(0, 4))
      .map((row) => row.supplies);
    const visitTotal = add(now.map((row) => row.supplies));
    const uses = job.limits.flatMap((limit) => {
      const use = useOf(limit, job.date, before, visitTotal);
      if (use === undefined) {
        const season = periodText(limit.per);
        notChecked.push(
          `${part}: the limit on ${limit.amount.of} ${season}, for ${job.date} lies outside it.`,
        );
        return [];
      }
      if (use.passed) findings.push(passedFinding(use, part));
      return [use];
    });
    return {
      part,
      yearSoFar: add(year),
      visit: now,
      visitTotal,
      yearAfter: add([...year, visitTotal]),
      limits: uses,
    };
  });
};

const passedFinding = (use: LimitUse, part: string): Finding => {
  const { limit, before, adds, after } = use;
  const { unit, value } = limit.amount;
  return {
    code: "limit/passed",
    severity: "warning",
    path: use.path,
    params: {
      part,
      of: limit.of,
      limit: value,
      before: before.value,
      adds: adds.value,
      after: after.value,
      unit,
    },
    text: `${part}: ${tidy(after.value)} ${unit} of ${limit.of} ${periodText(limit.per)} passes the stated limit of ${tidy(value)} (${tidy(before.value)} before, ${tidy(adds.value)} now).`,
    source: limit.source,
  };
};
