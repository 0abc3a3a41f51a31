// Whole pieces of work: a work order, a season's schedule, a ledger of 100,000 entries; and what they cost as they grow.
import { readFileSync } from "node:fs";
import {
  addDays,
  checkLimits,
  type Formulation,
  type Job,
  type Ledger,
  type LedgerEntry,
  type Limit,
  ledger,
  ledgerTotals,
  loadingOrder,
  type SeasonPlan,
  schedule,
  workOrder,
  workOrderSheet,
  workOrderText,
} from "ratewright";
import { race } from "./race.js";
import type { Reading, Results } from "./rows.js";

const job = JSON.parse(
  readFileSync(new URL("../../../examples/park-visit/job.json", import.meta.url), "utf8"),
) as Job;
const order = workOrder(job);

const entry = (i: number, part: string, date: LedgerEntry["date"]): LedgerEntry => {
  const base = { id: `e${i}`, date, parts: [part] };
  return i % 2 === 0
    ? { ...base, supplies: [{ value: 0.001, unit: "lb/1000 ft2", of: "N" }] }
    : {
        ...base,
        product: "feed-a",
        analysis: "24-0-11",
        amount: { value: 0.2, unit: "lb" },
        area: { value: 59_400, unit: "ft2" },
      };
};
const parts = ["north pitch", "south pitch", "bowling lawn", "meadow"];

/** Entries of seven years on four parts, or all in one year on one. */
const stored = (size: number, crowded: boolean): Ledger => ({
  type: "ledger",
  version: 1,
  entries: Array.from({ length: size }, (_, i) =>
    crowded
      ? entry(i, "meadow", addDays("2026-01-01", i % 365))
      : entry(i, parts[i % 4] as string, addDays("2020-01-01", (i * 7) % 2555)),
  ),
});
const limits: readonly Limit[] = [
  { amount: { value: 4, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "bench" },
  { amount: { value: 0.7, unit: "lb/1000 ft2", of: "N:quick" }, per: { days: 30 }, source: "bench" },
  { amount: { value: 0.5, unit: "lb/1000 ft2", of: "P2O5" }, per: { months: 12 }, source: "bench" },
  { kind: "count", of: "N", atMost: 8, per: "calendar year", source: "bench" },
  { kind: "interval", of: "N", atLeastDays: 14, source: "bench" },
];
const proposal = {
  date: "2026-06-08",
  parts: ["meadow"],
  supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }],
} as const;

/** Three treatments from April to October, weekends free, with a limit for the year. */
const season = (days: number): SeasonPlan => ({
  season: { from: "2026-04-01", to: addDays("2026-04-01", days - 1) },
  treatments: [
    {
      id: "feed",
      interval: { minimumDays: 28, maximumDays: 45, source: "plan of the park (invented)" },
      puts: { supplies: [{ value: 0.6, unit: "lb/1000 ft2", of: "N" }] },
    },
    { id: "wetter", interval: { minimumDays: 21, maximumDays: 30, source: "label (invented)" } },
    { id: "regulator", interval: { minimumDays: 14, maximumDays: 21, source: "label (invented)" } },
  ],
  avoid: { weekdays: [6, 7], times: [{ from: "2026-05-25", to: "2026-05-31", why: "tournament" }] },
  limits: [
    {
      amount: { value: 4, unit: "lb/1000 ft2", of: "N" },
      per: "calendar year",
      source: "plan of the park (invented)",
    },
  ],
  shareWithinDays: 3,
});

const milliseconds = (run: () => unknown, rounds: number): Reading => {
  const [ns] = race([run], { rounds, milliseconds: 8 }) as [Reading];
  return { low: ns.low / 1e6, median: ns.median / 1e6, high: ns.high / 1e6 };
};

/** The pieces of work, in milliseconds. */
export const measuredJobs = (rounds: number): Results["jobs"] => {
  const [wide, crowded] = [stored(100_000, false), stored(100_000, true)];
  const made = ledger(crowded.entries);
  const year = { from: "2026-01-01", to: "2026-12-31", part: "meadow" } as const;
  const jobs: readonly (readonly [string, () => unknown, number?])[] = [
    ["work order: `workOrder` of the visit in examples/park-visit", () => workOrder(job), 1],
    ["its text: `workOrderText`", () => workOrderText(order), 1],
    ["its sheet: `workOrderSheet`", () => workOrderSheet(order), 1],
    ["season: `schedule`, three treatments, April to October", () => schedule(season(214))],
    [
      "100,000 entries, seven years, four parts: `checkLimits` with five limits",
      () => checkLimits({ ledger: wide, proposal, limits }),
      300,
    ],
    [
      "100,000 entries, one year, one part: `checkLimits` with five limits",
      () => checkLimits({ ledger: crowded, proposal, limits }),
      300,
    ],
    ["the same, in a ledger that was made here", () => checkLimits({ ledger: made, proposal, limits }), 300],
    [
      "100,000 entries, one year, one part: `ledgerTotals`",
      () => ledgerTotals({ ledger: crowded, ...year }),
      300,
    ],
    ["the same, in a ledger that was made here", () => ledgerTotals({ ledger: made, ...year }), 300],
    ["making it: `ledger`", () => ledger(crowded.entries)],
  ];
  return jobs.map(([name, run, aim]) => ({
    name,
    ...(aim === undefined ? {} : { aim }),
    ms: milliseconds(run, aim === 1 ? rounds : Math.ceil(rounds / 4)),
  }));
};

const areasOf = (count: number): Job => ({
  ...job,
  log: [],
  limits: [],
  site: {
    name: "a park of many lawns",
    parts: Array.from({ length: count }, (_, i) => ({
      name: `lawn ${i}`,
      shape: "rectangle" as const,
      length: { value: 100 + i, unit: "ft" },
      width: { value: 80, unit: "ft" },
    })),
  },
  treatments: job.treatments.slice(0, 1).map((treatment) => ({
    ...treatment,
    parts: Array.from({ length: count }, (_, i) => `lawn ${i}`),
  })),
});

const forms: readonly Formulation[] = ["WG", "WP", "SC", "EC", "SL", "SE"];

/** Milliseconds by size: areas, days, entries, partners of a mix. */
export const measuredGrowth = (rounds: number): Results["growth"] => {
  const series: readonly (readonly [string, string, readonly number[], (n: number) => () => unknown])[] = [
    ["a work order", "areas", [1, 4, 16, 64, 256], (n) => () => workOrder(areasOf(n))],
    ["a schedule", "days of the season", [90, 180, 365, 730, 1460, 2920], (n) => () => schedule(season(n))],
    [
      "a check of limits",
      "entries of the ledger",
      [1_000, 3_000, 10_000, 30_000, 100_000],
      (n) => {
        const from = stored(n, false);
        return () => checkLimits({ ledger: from, proposal, limits });
      },
    ],
    [
      "a loading order",
      "partners of the mix",
      [2, 4, 8, 16, 32],
      (n) => {
        const products = Array.from({ length: n }, (_, i) => ({
          id: `product ${i}`,
          formulation: forms[i % forms.length] as Formulation,
        }));
        return () => loadingOrder({ products });
      },
    ],
  ];
  return series.map(([name, of, sizes, make]) => ({
    name,
    of,
    points: sizes.map((size) => ({ size, ms: milliseconds(make(size), Math.ceil(rounds / 4)).median })),
  }));
};
