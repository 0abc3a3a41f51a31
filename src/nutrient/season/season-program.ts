import { isWithinWindow } from "../../calendar/index.js";
import { counted } from "../../quantity/house.js";
import type { Finding, Quantity } from "../../quantity/index.js";
import {
  type CapName,
  capNames,
  capText,
  type DatedNitrogen,
  dayCount,
  nitrogenRate,
} from "./nitrogen-caps.js";
import { type OpenDay, type PlacedPart, placeParts } from "./place-parts.js";
import {
  type PlannedPart,
  type ProgramPlan,
  plannedParts,
  type SeasonProgramInput,
  seasonDays,
} from "./program-parts.js";
import type { ApplicationInterval } from "./program-spacing.js";
import { type ReadProgram, readProgram } from "./read-program.js";

/** What a month gets, beside its target. */
export interface MonthBalance {
  readonly month: string;
  /** `null` where the plan has none for the month. */
  readonly target: Quantity<"mass/area", "N"> | null;
  readonly planned: Quantity<"mass/area", "N">;
}

/** Applications by date. A plan to be checked against label and local rules; it does not authorize an application. */
export interface SeasonProgram {
  readonly type: "season-program";
  readonly version: 1;
  readonly plan: ProgramPlan;
  readonly applications: readonly DatedNitrogen[];
  readonly months: readonly MonthBalance[];
  readonly target: Quantity<"mass/area", "N">;
  readonly planned: Quantity<"mass/area", "N">;
  /** What the stated caps, the closed seasons and the least interval leave no room for. */
  readonly shortfall: Quantity<"mass/area", "N">;
  /** The fewest days from one application to the next that the plan keeps, and who says so. */
  readonly leastInterval: ApplicationInterval;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** Room below which a rest counts as placed, as a share of the season. */
const guard = 1e-9;

/**
 * The applications of a season by date: a target split into applications so that no stated cap is exceeded.
 *
 * - `"fewest applications"`: with a target for every month, each month gets `ceil(target / cap)` equal
 *   applications; with a total only, the season gets `ceil(total / cap)`. `cap` is the one per application.
 * - `"even split"`: the total in equal applications: as many as stated, or one on the first open day of each month.
 * - `"growth curve"`: the total shared by the weights of the months (growth potential, clippings of past
 *   years); each month is then split as for fewest applications.
 *
 * The season is the days of the listed months that no closed season holds. Applications lie evenly over the open days
 * of their month or season, the first on its first. Two are never nearer than the least interval: stated, or a named
 * practice, two weeks where it is left out. (A number of applications that you state goes before the practice: then the
 * interval is shortened, and a warning says so.) An application that would pass a cap, or lies too near another, moves
 * to the first later day of its month (of the season for a total and an even split) that takes it whole; where none does,
 * it goes down in parts of at least the least amount, on days with room, and the rest is a shortfall with its reason,
 * never squeezed in. Fixed entries of `applied` count against the caps and the interval. Amounts compare at a
 * relative 1e-9.
 *
 * @throws RatewrightError `missing` (a target, a weight, a total, a cap's source), `conflict` (caps that contradict,
 *   months out of order, total beside targets), `range`, `type`, `date`, `unit/mismatch`
 *
 * Source: monthly rates that add up to the yearly maximum, University of Maryland Extension, "Lawn
 * fertilizer schedule table", 2023; a yearly need in applications of at most 1 lb N per 1000 ft2,
 * Michigan State University Extension, "Benefits of using lawn fertilizers containing slow release
 * nitrogen". Even spacing, two weeks between applications and the least amount are common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, seasonProgram } from "ratewright";
 * const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
 * const program = seasonProgram({
 *   months: [{ month: "2026-05", target: n(0.9) }, { month: "2026-09", target: n(1.2) }],
 *   plan: { kind: "fewest applications" },
 *   caps: { perApplication: { amount: n(0.9), source: "state code" } },
 * });
 * program.applications.map(({ date }) => date); // => ["2026-05-01", "2026-09-01", "2026-09-16"]
 * program.applications.map(({ nitrogen }) => nitrogen.in("lb/1000 ft2")); // => [0.9, 0.6, 0.6]
 * program.shortfall.in("lb/1000 ft2"); // => 0
 * ```
 */
export const seasonProgram = (input: SeasonProgramInput): SeasonProgram => {
  const program = readProgram(input);
  const { months, unit, caps, applied, total, plan } = program;
  const open = openDays(program);
  const dates = open.map(({ date }) => date);
  const parts = plannedParts({ months, plan, total, most: caps.perApplication, open: dates });
  const spacing = spacingFor(program, parts, open);
  const intervalDays = spacing.interval.days;
  const small = guard * total;
  const placing = placeParts({ parts, open, caps, applied, intervalDays, least: program.leastAmount, small });
  const { placed } = placing;
  const planned = placed.reduce((sum, { amount }) => sum + amount, 0);
  return {
    type: "season-program",
    version: 1,
    plan,
    applications: placed.map(({ date, amount }) => ({ date, nitrogen: nitrogenRate(amount, unit) })),
    months: months.map(({ month, target }) => ({
      month,
      target: target === undefined ? null : nitrogenRate(target, unit),
      planned: nitrogenRate(
        placed.reduce((sum, { date, amount }) => (date.startsWith(month) ? sum + amount : sum), 0),
        unit,
      ),
    })),
    target: nitrogenRate(total, unit),
    planned: nitrogenRate(planned, unit),
    shortfall: nitrogenRate(
      placing.parts.reduce((sum, { rest }) => sum + rest, 0),
      unit,
    ),
    leastInterval: spacing.interval,
    findings: [
      ...spacing.findings,
      ...placing.parts.flatMap((part) => partFindings(part, unit, intervalDays)),
    ],
    ...coverage(program, intervalDays),
  };
};

const openDays = ({ months, closed }: ReadProgram): OpenDay[] =>
  seasonDays(months)
    .filter((date) => !closed.some(({ window }) => isWithinWindow(date, window)))
    .map((date) => ({ date, day: dayCount(date) }));

/** The interval that is kept: the one that was read, or a shorter one where a stated number of applications asks for it. */
const spacingFor = (
  { plan, leastInterval, intervalStated }: ReadProgram,
  parts: readonly PlannedPart[],
  open: readonly OpenDay[],
): { readonly interval: ApplicationInterval; readonly findings: readonly Finding[] } => {
  const byCount = plan.kind === "even split" && plan.applications !== undefined;
  const starts = parts.map(({ date }) => dayCount(date));
  const gap = Math.min(...starts.slice(1).map((day, i) => day - (starts[i] as number)));
  if (intervalStated || !byCount || open.length === 0 || gap >= leastInterval.days) {
    return { interval: leastInterval, findings: [] };
  }
  return {
    interval: { days: gap, source: "the stated number of applications" },
    findings: [
      {
        code: "program/interval-shortened",
        severity: "warning",
        path: "plan.applications",
        params: { applications: parts.length, days: gap, practice: leastInterval.days },
        text: `${counted(parts.length, "application")} are ${counted(gap, "day")} apart at the closest, fewer than the ${leastInterval.days} of common practice. State leastInterval to keep a longer one.`,
        source: leastInterval.source,
      },
    ],
  };
};

/** What a part that has no room says of itself, by its reason. */
const reasonTexts = {
  "closed season": () => "every day is in a prohibited period",
  interval: (days: number) =>
    `other applications are closer than the least interval of ${counted(days, "day")}`,
  caps: () => "the stated caps leave too little for one application",
} as const;

const partFindings = ({ part, to, rest, reason }: PlacedPart, unit: string, days: number): Finding[] => {
  if (reason !== undefined) {
    return [
      {
        code: "program/shortfall",
        severity: "warning",
        path: part.path,
        params: { amount: rest, unit, from: part.date, to: part.last, reason },
        text: `${Number(rest.toPrecision(4))} ${unit} of nitrogen planned from ${part.date} on does not fit by ${part.last}: ${reasonTexts[reason](days)}.`,
      },
    ];
  }
  if (to === part.date) return [];
  return [
    {
      code: "program/moved",
      severity: "note",
      path: part.path,
      params: { from: part.date, to: to ?? part.date },
      text: `An application planned for ${part.date} moved to ${to}, or was split: there was no room before.`,
    },
  ];
};

/** What was checked and what was not. */
const coverage = (
  { caps, closed }: ReadProgram,
  days: number,
): Pick<SeasonProgram, "checked" | "notChecked"> => ({
  checked: [
    ...capNames.filter((name) => caps[name] !== undefined).map((name) => `the stated cap ${capText[name]}`),
    ...closed.map(({ window }) => `no applications from ${window.from} to ${window.to}`),
    `at least ${counted(days, "day")} from one application to the next`,
  ],
  notChecked: [
    ...capNames
      .filter((name: CapName) => caps[name] === undefined)
      .map((name) => `a cap ${capText[name]}: none was stated`),
    "soluble nitrogen, phosphorus, weather, soil and all other rules",
  ],
});
