import { type CivilDate, civilDate } from "../../calendar/index.js";
import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  type FactSource,
  type Finding,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import {
  type CapName,
  capNames,
  capText,
  checkedCaps,
  checkedLog,
  type DatedNitrogen,
  type DayAmount,
  dayCount,
  type NitrogenCaps,
  nitrogenRate,
  usedAround,
} from "./nitrogen-caps.js";

/** One cap and how far it is used up for an application on a day. */
export interface CapUse {
  readonly cap: CapName;
  readonly amount: Quantity<"mass/area", "N">;
  readonly used: Quantity<"mass/area", "N">;
  /** Below zero where the cap is exceeded already. */
  readonly remaining: Quantity<"mass/area", "N">;
  readonly source: FactSource;
}

/** What is left on a day under the caps that were stated; it says nothing of any other rule. */
export interface RemainingNitrogen {
  readonly type: "remaining-nitrogen";
  readonly version: 1;
  readonly on: CivilDate;
  /** The least of what the caps leave; below zero where one is exceeded. */
  readonly remainingUnderStatedLimits: Quantity<"mass/area", "N">;
  /** The caps that leave no more than that. */
  readonly binding: readonly CapName[];
  readonly caps: readonly CapUse[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/**
 * How much nitrogen one application on a day could bring before it meets the first of the stated caps.
 *
 * Equation: `r = min over the caps of (cap - used)`. Used is, for the cap per application, what
 * the day itself has already, for all of one day counts as one application (common practice, no source); for
 * 30 days it is the sum in the fullest stretch of 30 days in a row that has the day in it, so that an application
 * already planned for later counts too; for the year the sum in the calendar year of the day.
 *
 * The figure does not authorize an application: the label, local codes (blackout dates, soil and weather rules) and
 * licensed practice come first. What was not stated is listed in `notChecked`.
 *
 * @param input.on - the day of the application in question
 * @param input.applied - what has gone down, or is planned, dates in any order
 * @param input.caps - at least one
 * @throws RatewrightError `missing` without a cap or its source; `conflict` where caps contradict one
 *   another; `date`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: caps of this kind, for example 0.7 lb soluble and 0.9 lb total nitrogen per 1000 ft2 and
 * application: Annotated Code of Maryland, Agriculture, 6-224; yearly maxima: University of Maryland
 * Extension, "Lawn fertilizer schedule table", 2023.
 *
 * @example
 * ```ts
 * import { quantity, remainingNitrogen } from "ratewright";
 * const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
 * const left = remainingNitrogen({
 *   on: "2026-10-10",
 *   applied: [{ date: "2026-05-20", nitrogen: n(0.9) }, { date: "2026-09-15", nitrogen: n(0.9) }],
 *   caps: {
 *     perApplication: { amount: n(0.9), source: "state code" },
 *     perYear: { amount: n(2.7), source: "extension schedule" },
 *   },
 * });
 * Number(left.remainingUnderStatedLimits.in("lb/1000 ft2").toFixed(6)); // => 0.9
 * left.binding; // => ["perApplication", "perYear"]
 * left.notChecked[0]; // => "a cap in any 30 days: none was stated"
 * ```
 */
export const remainingNitrogen = (input: {
  readonly on: CivilDate;
  readonly applied: readonly DatedNitrogen[];
  readonly caps: NitrogenCaps;
}): RemainingNitrogen => {
  expectFields(input, ["on", "applied", "caps"], "input");
  const { on, caps } = allOf({
    on: () => civilDate(input.on, "on"),
    caps: () => {
      const read = checkedCaps(input.caps, undefined, "caps");
      return read.unit === undefined
        ? fail("missing", "caps", described("no cap"), `at least one cap: ${capNames.join(", ")}`)
        : { ...read, unit: read.unit };
    },
    // In any unit: that of the caps is not known yet.
    log: () => checkedLog(input.applied, "lb/1000 ft2", "applied"),
  });
  const { unit, amounts, sources } = caps;
  const log = checkedLog(input.applied, unit, "applied");
  const uses = capNames.flatMap((cap) => {
    const amount = amounts[cap];
    return amount === undefined ? [] : [useOf(cap, amount, usedAround(cap, log, on, dayCount(on)))];
  });
  const least = Math.min(...uses.map(({ remaining }) => remaining));
  const guard = 1e-9 * Math.max(...uses.map(({ amount }) => amount));
  return {
    type: "remaining-nitrogen",
    version: 1,
    on,
    remainingUnderStatedLimits: nitrogenRate(least, unit),
    binding: uses.filter(({ remaining }) => remaining - least <= guard).map(({ cap }) => cap),
    caps: uses.map(({ cap, amount, used, remaining }) => ({
      cap,
      amount: nitrogenRate(amount, unit),
      used: nitrogenRate(used, unit),
      remaining: nitrogenRate(remaining, unit),
      source: sources[cap] as FactSource,
    })),
    findings: [
      ...uses.flatMap((use) => overLonger(use, unit, sources[use.cap])),
      ...overPerApplication(log, amounts.perApplication, unit, sources.perApplication),
    ],
    checked: uses.map(({ cap }) => `the stated cap ${capText[cap]}`),
    notChecked: [
      ...capNames
        .filter((cap) => amounts[cap] === undefined)
        .map((cap) => `a cap ${capText[cap]}: none was stated`),
      "soluble nitrogen, phosphorus, blackout dates and all other rules",
    ],
  };
};

/** A cap and what is used of it, in the unit of the caps. */
interface Use {
  readonly cap: CapName;
  readonly amount: number;
  readonly used: number;
  readonly remaining: number;
}

const useOf = (cap: CapName, amount: number, used: number): Use => ({
  cap,
  amount,
  used,
  // A cap used up to rounding noise leaves nothing; only one that is exceeded goes below zero.
  remaining: exceeds(used, amount) || exceeds(amount, used) ? amount - used : 0,
});

const sourced = (source: FactSource | undefined): { readonly source?: FactSource } =>
  source === undefined ? {} : { source };

/** A cap of 30 days or of the year that is over already; one per application is told beside its entry. */
const overLonger = ({ cap, amount, used }: Use, unit: string, source: FactSource | undefined): Finding[] =>
  cap === "perApplication" || !exceeds(used, amount)
    ? []
    : [
        {
          code: "nitrogen/cap-exceeded",
          severity: "warning",
          path: `caps.${cap}`,
          params: { cap, amount, used, unit },
          text: `${roundedApart(used, amount)(used)} ${unit} of nitrogen ${capText[cap]} is already over the stated ${roundedApart(used, amount)(amount)}.`,
          ...sourced(source),
        },
      ];

/** The days on which more went down than the cap per application, each told once, beside its first entry. */
const overPerApplication = (
  log: readonly DayAmount[],
  cap: number | undefined,
  unit: string,
  source: FactSource | undefined,
): Finding[] => {
  if (cap === undefined) return [];
  const days = new Map<number, { readonly i: number; readonly date: CivilDate; readonly used: number }>();
  for (const [i, { date, day, amount }] of log.entries()) {
    const before = days.get(day) ?? { i, date, used: 0 };
    days.set(day, { ...before, used: before.used + amount });
  }
  return [...days.values()]
    .filter(({ used }) => exceeds(used, cap))
    .map(({ i, date, used }) => ({
      code: "nitrogen/cap-exceeded",
      severity: "warning",
      path: `applied[${i}]`,
      params: { cap: "perApplication", amount: cap, used, unit, date },
      text: `${roundedApart(used, cap)(used)} ${unit} of nitrogen on ${date} is over the stated ${roundedApart(used, cap)(cap)} per application.`,
      ...sourced(source),
    }));
};
