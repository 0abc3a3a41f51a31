import { type CivilDate, civilDate, daysBetween } from "../../calendar/index.js";
import {
  checks,
  expectQuantity,
  type FactSource,
  fail,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";

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

/** Takes caps that may come from JSON; a cap that could never be reached under a longer one is a contradiction. */
export const checkedCaps = (
  caps: NitrogenCaps,
  unit: string | undefined,
  path: string,
): { unit: string | undefined; amounts: CapAmounts } => {
  if (typeof caps !== "object" || caps === null) return fail("type", path, caps, "a record of caps");
  const door = checks();
  let common = unit;
  const amounts: Partial<Record<CapName, number>> = {};
  for (const key of Object.keys(caps)) {
    if (!(capNames as readonly string[]).includes(key)) {
      door.run(() => fail("type", `${path}.${key}`, key, capNames.join(", ")));
    }
  }
  for (const name of capNames) {
    const cap = caps[name];
    if (cap === undefined) continue;
    door.run(() => {
      if (typeof cap !== "object" || cap === null) fail("type", `${path}.${name}`, cap, "{ amount, source }");
      const amount = expectQuantity(
        cap.amount,
        { dimension: "mass/area", of: "N", bound: "non-negative" },
        `${path}.${name}.amount`,
      );
      if (cap.source === undefined || cap.source === "") {
        fail("missing", `${path}.${name}.source`, cap.source, "where the cap is stated");
      }
      common ??= amount.unit;
      amounts[name] = amount.in(common as "lb/acre");
    });
  }
  door.run(() => {
    for (const [i, short] of capNames.entries()) {
      for (const long of capNames.slice(i + 1)) {
        const [a, b] = [amounts[short], amounts[long]];
        if (a !== undefined && b !== undefined && a > b * (1 + 1e-9)) {
          fail(
            "conflict",
            `${path}.${short}.amount`,
            caps[short]?.amount,
            `not more than the cap ${capText[long]}, which is ${b}`,
          );
        }
      }
    }
  });
  door.done();
  return { unit: common, amounts };
};

/** Takes what has gone down, in one unit. */
export const checkedLog = (log: readonly DatedNitrogen[], unit: string, path: string): DayAmount[] => {
  if (!Array.isArray(log)) return fail("type", path, log, "a list of dates with nitrogen");
  const door = checks();
  const rows = log.map((entry: DatedNitrogen, i) =>
    door.run(() => {
      if (typeof entry !== "object" || entry === null) fail("type", "", entry, "a date with nitrogen");
      const date = civilDate(entry.date, "date");
      const rate = expectQuantity(
        entry.nitrogen,
        { dimension: "mass/area", of: "N", bound: "non-negative" },
        "nitrogen",
      );
      return { date, day: dayCount(date), amount: rate.in(unit as "lb/acre") };
    }, `${path}[${i}]`),
  );
  door.done();
  return rows as DayAmount[];
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
  // Thirty days that hold the day begin on it or on an application of the 29 days before; the fullest counts.
  for (const from of [day, ...near.map((entry) => entry.day).filter((start) => start < day)]) {
    let sum = 0;
    for (const entry of near) if (entry.day >= from && entry.day < from + 30) sum += entry.amount;
    used = Math.max(used, sum);
  }
  return used;
};

/** A rate of nitrogen in the unit of the plan. */
export const nitrogenRate = (value: number, unit: string): Quantity<"mass/area", "N"> =>
  quantityOf(value, unit, "N", "nitrogen") as unknown as Quantity<"mass/area", "N">;
