// What a sheet writes of days and hours, held against days that everybody can look up.
import type { CivilDate, Instant } from "../../src/calendar/index.js";
import { newJerseySummaryLimits } from "../../src/limits/index.js";
import { type Job, workOrder, workOrderSheet } from "../../src/plan/index.js";
import { dayText, momentText } from "../../src/plan/sheet/day-text.js";
import { saysOf } from "../limits/published/law.js";
import { type ConstantCheck, cells, edge } from "./check.js";

const written = (text: string, expected: string): number => (text === expected ? 1 : 0);
const day = (date: string, expected: string) =>
  [expected, 1, () => written(dayText(date as CivilDate, false), expected)] as const;
const moment = (at: string, expected: string) =>
  [expected, 1, () => written(momentText(at as Instant, false), expected)] as const;

/** Whether so much of a product with 46 % of nitrogen on 1000 ft2 is more than a homeowner in New Jersey may put down at once. */
const isOver = (pounds: number): boolean =>
  saysOf(newJerseySummaryLimits, "total-n-homeowner", {
    facts: { applicator: "homeowner" },
    analysis: "46-0-0",
    rate: { value: pounds, unit: "lb/1000 ft2" },
  }) === "over";

/** Two liquids, a fluid ounce of each in a gallon of spray. */
const spray = (mixingOrder: NonNullable<Job["sprayer"]>["mixingOrder"] = "consensus"): Job => ({
  type: "job",
  version: 1,
  title: "Two liquids",
  date: "2026-05-04",
  site: { name: "Pitch", parts: [{ shape: "measured", area: { value: 12_000, unit: "ft2" } }] },
  products: [
    { id: "a", name: "Flowable", form: "liquid", formulation: "EC" },
    { id: "b", name: "Wetter", form: "liquid", formulation: "surfactant" },
  ],
  sprayer: {
    tank: { value: 20, unit: "gal" },
    applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    mixingOrder,
  },
  treatments: [
    {
      id: "s",
      method: "spray",
      mix: ["a", "b"].map((product) => ({
        product,
        rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" },
      })),
    },
  ],
});
const linesOf = (job: Job): readonly string[] => {
  const { front, back } = workOrderSheet(workOrder(job));
  return [...front, ...back].flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === "table" ? block.rows.map(({ cells: row }) => row.join(" | ")) : [],
    ),
  );
};
const says = (job: () => Job, part: string) =>
  [part, 1, () => (linesOf(job()).some((line) => line.includes(part)) ? 1 : 0)] as const;

/** What a rate far above its label is put down to, for a feed with so much nitrogen. */
const slipAt = (percent: string): string =>
  workOrder({
    type: "job",
    version: 1,
    title: "Feed",
    date: "2026-05-04",
    site: { name: "Pitch", parts: [{ shape: "measured", area: { value: 12_000, unit: "ft2" } }] },
    products: [
      {
        id: "feed",
        form: "dry",
        analysis: `${percent}-0-0`,
        labelRate: {
          min: { value: 1, unit: "lb/1000 ft2", of: "product" },
          max: { value: 1, unit: "lb/1000 ft2", of: "product" },
        },
      },
    ],
    treatments: [
      {
        id: "feed",
        method: "spread",
        product: "feed",
        rate: { value: 2.175, unit: "lb/1000 ft2", of: "product" },
      },
    ],
  })
    .findings.map(({ text }) => text)
    .join(" ");

/** Figures of plan and ledger. */
export const planConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room: "plan",
      reached: "derived",
      source:
        "any calendar: 6 June 1944 was a Tuesday, 21 July 1969 a Monday, 1 January 2000 a Saturday; 12-hour clock",
    },
    [
      day("1944-06-06", "Tue Jun 6, 1944"),
      day("1969-07-21", "Mon Jul 21, 1969"),
      day("2000-01-01", "Sat Jan 1, 2000"),
      moment("2015-06-08T00:00-04:00", "midnight at the start of Mon Jun 8"),
      moment("2015-06-08T12:00-04:00", "Mon Jun 8, noon"),
      moment("2015-06-08T12:05-04:00", "Mon Jun 8, 12:05 pm"),
      moment("2015-06-08T00:05-04:00", "Mon Jun 8, 12:05 am"),
      moment("2015-06-08T11:59-04:00", "Mon Jun 8, 11:59 am"),
      moment("2015-06-08T16:30-04:00", "Mon Jun 8, 4:30 pm"),
    ],
  ),
  ...cells(
    {
      room: "plan",
      reached: "derived",
      source:
        "a fluid ounce in a gallon is 1/128: 3.906 mL in 500; water is the first of the steps, so the products are the second and third; half of 500 is 250",
    },
    [
      says(() => spray(), "1  Water from the fill point, not warmed | 250 mL | jar mark"),
      says(() => spray(), "2  Flowable | 3.91 mL | syringe"),
      says(() => spray(), "3  Wetter | 3.91 mL | syringe"),
      says(() => spray(), "4  The same water up to | 500 mL | jar mark"),
      says(() => spray(), "Clean water up to half the load"),
    ],
  ),
  ...cells(
    {
      room: "plan",
      reached: "read",
      source:
        "South Dakota State University Extension, Proper mixing order of pesticides and adjuvants: a third of the water first, then filled to half, two thirds",
    },
    [says(() => spray("south-dakota-state"), "33.3 % of the load")],
  ),
  ...cells(
    {
      room: "plan",
      reached: "derived",
      source: "100 / 45.98 = 2.1749 lb of product for a pound of nitrogen",
    },
    [
      [
        "product for nutrient at 45.98 % of nitrogen",
        1,
        () => (slipAt("45.98").includes("(2.17 times at 45.98 % N)") ? 1 : 0),
      ],
    ],
  ),
  ...cells(
    {
      room: "ledger",
      reached: "derived",
      within: 1e-7,
      source: "46 % of the rate is nitrogen: 0.9 lb in 0.9 / 0.46 lb",
    },
    [
      [
        "rate of 46-0-0 that holds 0.9 lb of nitrogen",
        0.9 / 0.46,
        () => edge((pounds) => !isOver(pounds), 1, 3),
      ],
    ],
  ),
];
