import { type CivilDate, civilDate, daysBetween } from "../../calendar/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type FactSource,
  fail,
  numberIn,
  outOfRange,
  Quantity,
} from "../../quantity/index.js";
import { expectSource } from "../label/expect-source.js";
import { eachOf } from "../label/under-path.js";

/** The most nitrogen per area that a law, a label or a plan states, and which of them does. */
export interface NitrogenCap {
  readonly amount: Quantity<"mass/area", "N">;
  readonly source: FactSource;
}

/** Stated caps. What is left out is not checked. */
export interface NitrogenCaps {
  readonly perApplication?: NitrogenCap;
  /** In any 30 days in a row. */
  readonly per30Days?: NitrogenCap;
  /** In a calendar year. */
  readonly perYear?: NitrogenCap;
}

/** Nitrogen that went down, or is to go down, on a date. */
export interface DatedNitrogen {
  readonly date: CivilDate;
  readonly nitrogen: Quantity<"mass/area", "N">;
}

/** The names of the caps, in the order in which they bind. */
export const capNames = ["perApplication", "per30Days", "perYear"] as const;

/** One of the three caps. */
export type CapName = (typeof capNames)[number];

/** How each cap reads in a sentence. */
export const capText: Readonly<Record<CapName, string>> = {
  perApplication: "per application",
  per30Days: "in any 30 days",
  perYear: "per calendar year",
};

/** Nitrogen on the days that have some, by day; all in one unit. */
export interface DayAmount {
  readonly date: CivilDate;
  /** {@link dayCount} of the date. */
  readonly day: number;
  readonly amount: number;
}

/** A cap in the unit of the plan. */
export type CapAmounts = Readonly<Partial<Record<CapName, number>>>;

const nitrogenKind = { dimension: "mass/area", of: "N", bound: "non-negative" } as const;

/** Where each cap is stated. */
export type CapSources = Readonly<Partial<Record<CapName, FactSource>>>;

/** Takes caps that may come from JSON; a cap that could never be reached under a longer one is a contradiction. */
export const checkedCaps = (
  caps: NitrogenCaps,
  unit: string | undefined,
  path: string,
): { unit: string | undefined; amounts: CapAmounts; sources: CapSources } => {
  const given = expectFields(caps, capNames, path, "a record of caps");
  const stated = capNames.filter((name) => given[name] !== undefined);
  const read = eachOf(
    stated,
    (name) => `${path}.${name}`,
    (name) => {
      const { amount, source } = expectFields(given[name], ["amount", "source"], "", "{ amount, source }");
      return {
        name,
        ...allOf({
          amount: () => expectQuantity(amount, nitrogenKind, "amount"),
          source: () =>
            source === undefined
              ? fail("missing", "source", source, "where the cap is stated")
              : expectSource(source, "source"),
        }),
      };
    },
  );
  const common = unit ?? read[0]?.amount.unit;
  const amounts: Partial<Record<CapName, number>> = {};
  const sources: Partial<Record<CapName, FactSource>> = {};
  for (const { name, amount, source } of read) {
    amounts[name] = numberIn(amount, common as string);
    sources[name] = source;
  }
  for (const [i, short] of read.entries()) {
    for (const long of read.slice(i + 1)) {
      const most = amounts[long.name] as number;
      if ((amounts[short.name] as number) > most * (1 + 1e-9)) {
        const text = `not more than the cap ${capText[long.name]}, which is ${most}`;
        fail("conflict", `${path}.${short.name}.amount`, short.amount, text);
      }
    }
  }
  return { unit: common, amounts, sources };
};

const mostEntries = 10_000;

/** Takes what has gone down, in one unit. */
export const checkedLog = (log: unknown, unit: string, path: string): DayAmount[] => {
  if (!Array.isArray(log)) return fail("type", path, log, "a list of dates with nitrogen");
  if (log.length > mostEntries) outOfRange(path, log, { max: mostEntries, count: "entries" });
  return eachOf(Array.from(log), path, (entry: unknown) => {
    const { date, nitrogen } = expectFields(entry, ["date", "nitrogen"], "", "a date with nitrogen");
    const read = allOf({
      date: () => civilDate(date as CivilDate, "date"),
      rate: () => expectQuantity(nitrogen, nitrogenKind, "nitrogen"),
    });
    return { date: read.date, day: dayCount(read.date), amount: numberIn(read.rate, unit) };
  });
};

/** A day as a whole number, so that many days are compared at once. */
export const dayCount = (date: CivilDate): number => daysBetween("2000-01-01", date);

/** How much of a cap was used where one more application on a day would count. */
export const usedAround = (
  name: CapName,
  log: readonly DayAmount[],
  date: CivilDate,
  day: number,
): number => {
  let used = 0;
  if (name === "perApplication") {
    // What goes down on one day is one application, in however many bags.
    for (const entry of log) if (entry.day === day) used += entry.amount;
    return used;
  }
  if (name === "perYear") {
    const year = date.slice(0, 4);
    for (const entry of log) if (entry.date.startsWith(year)) used += entry.amount;
    return used;
  }
  const near = log.filter((entry) => Math.abs(entry.day - day) < 30);
  // Thirty days that hold the day begin on it or on an application of the 29 days before; the fullest counts. Those that
  // begin later hold no more than those that begin on it.
  for (const from of [day, ...near.map((entry) => entry.day)]) {
    let sum = 0;
    for (const entry of near) if (entry.day >= from && entry.day < from + 30) sum += entry.amount;
    used = Math.max(used, sum);
  }
  return used;
};

/** A rate of nitrogen in the unit of the plan. */
export const nitrogenRate = (value: number, unit: string): Quantity<"mass/area", "N"> =>
  new Quantity<"mass/area", "N">(value, unit, "N", "mass/area");
