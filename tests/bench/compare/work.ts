// Whole pieces of work: a work order, a season's schedule, a ledger of 100,000 entries; and what they cost as they grow.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import {
  addDays,
  checkLimits,
  type Formulation,
  type Job,
  type Ledger,
  ledger,
  ledgerTotals,
  loadingOrder,
  type SeasonPlan,
  schedule,
  workOrder,
  workOrderSheet,
  workOrderText,
} from "ratewright";
import { ledgerLimits as limits, ledgerProposal as proposal, storedLedger } from "../ledgers.js";
import { race, reading } from "./race.js";
import { firstOrderName, type Reading, type Results, warmCalls } from "./rows.js";

const job = JSON.parse(
  readFileSync(new URL("../../../examples/park-visit/job.json", import.meta.url), "utf8"),
) as Job;
const order = workOrder(job);

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

const warmed = (run: () => unknown, calls: number): (() => unknown) => {
  for (let i = 0; i < calls; i++) run();
  return run;
};

/** What a process of its own needs for its first work order, after it has loaded the package. */
const firstOrder = (rounds: number): Reading => {
  const at = (path: string): string => JSON.stringify(new URL(`../../../${path}`, import.meta.url).href);
  const code = `
    import { readFileSync } from "node:fs";
    import { workOrder } from ${at("dist/esm/index.js")};
    const job = JSON.parse(readFileSync(new URL(${at("examples/park-visit/job.json")}), "utf8"));
    const start = process.cpuUsage();
    workOrder(job);
    const { user, system } = process.cpuUsage(start);
    console.log((user + system) / 1000);`;
  const once = (): number =>
    Number(execFileSync(process.execPath, ["--input-type=module", "-e", code], { encoding: "utf8" }));
  return reading(Array.from({ length: rounds }, once));
};

/** A piece of work: its name, what makes it ready, and the aim. */
type Piece = readonly [name: string, ready: () => () => unknown, aim?: number];

// Each is made ready when it is its turn: what clears the memory would go through what the others hold.
const measuredPieces = (pieces: readonly Piece[], rounds: number): Results["jobs"] =>
  pieces.map(([name, ready, aim]) => ({
    name,
    ...(aim === undefined ? {} : { aim }),
    ms: milliseconds(warmed(ready(), aim === 1 ? warmCalls : 0), rounds),
  }));

const checked = (from: Ledger) => () => checkLimits({ ledger: from, proposal, limits });
const totaled = (from: Ledger) => () =>
  ledgerTotals({ ledger: from, from: "2026-01-01", to: "2026-12-31", part: "meadow" });

/** Large ledgers: of seven years on four parts, and of one year on one. */
const stored = (crowded: boolean): Ledger => storedLedger(100_000, crowded);
const made = (): Ledger => ledger(stored(true).entries);

const ledgerPieces: readonly Piece[] = [
  [
    "100,000 entries, seven years, four parts: `checkLimits` with five limits",
    () => checked(stored(false)),
    300,
  ],
  ["100,000 entries, one year, one part: `checkLimits` with five limits", () => checked(stored(true)), 300],
  ["the same, in a ledger that was made here", () => checked(made()), 300],
  ["100,000 entries, one year, one part: `ledgerTotals`", () => totaled(stored(true)), 300],
  ["the same, in a ledger that was made here", () => totaled(made()), 300],
  [
    "making it: `ledger`",
    () => {
      const { entries } = stored(true);
      return () => ledger(entries);
    },
  ],
];

/** The pieces of work, in milliseconds. */
export const measuredJobs = (rounds: number): Results["jobs"] => [
  ...measuredPieces(
    [
      ["work order: `workOrder` of the visit in examples/park-visit", () => () => workOrder(job), 1],
      ["its text: `workOrderText`", () => () => workOrderText(order), 1],
      ["its sheet: `workOrderSheet`", () => () => workOrderSheet(order), 1],
    ],
    rounds,
  ),
  { name: firstOrderName, ms: firstOrder(rounds) },
  ...measuredPieces(
    [["season: `schedule`, three treatments, April to October", () => () => schedule(season(214))]],
    rounds,
  ),
  ...measuredPieces(ledgerPieces, rounds),
];

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
        const from = storedLedger(n, false);
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
