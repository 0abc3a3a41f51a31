import {
  capitalRecovery,
  crewWage,
  fuelUse,
  lifetimeHourCost,
  loadedWage,
  marginOfMarkup,
  markupOfMargin,
  money,
  overtimeShare,
  priceAtMargin,
  priceAtMarkup,
  quantity,
  visitPrice,
  workRate,
} from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

const hour = quantity(1, "h");
const usd = (value: number) => money(value, "USD");
const percent = (value: number) => quantity(value, "%");
const rate = (value: number) => usd(value).per(hour);

const bottomLine: Source = {
  title: "Bottom line",
  publisher: "Lawn & Landscape magazine",
  year: 2019,
  where: "27 February 2019, two-person crew",
  url: "https://www.lawnandlandscape.com/article/bottom-line/",
};
const package2021: Source = {
  title: "Pricing a lawn maintenance package",
  publisher: "Lawn & Landscape magazine",
  year: 2021,
  where: "January 2021, list of costs",
  url: "https://lawnandlandscape.com/article/pricing-a-lawn-maintenance-package",
};
const bucket: Source = {
  title: "BEPs and bucket trucks",
  publisher: "Lawn & Landscape magazine",
  year: 2019,
  where: "April 2019, crew of three and truck",
  url: "http://magazine.lawnandlandscape.com/article/april-2019/beps-and-bucket-trucks.aspx",
};
const ten = quantity(10, "h");
const crew = crewWage([
  { wage: rate(18), hours: ten },
  { wage: rate(14), hours: ten },
]);
const loaded = loadedWage({ wage: crew, overtime: percent(10), risk: percent(10), burden: percent(20) });

/** Published checks of prices. */
export const priceChecks: readonly PublishedCheck[] = [
  {
    entry: "price-001",
    formulas: ["crewWage", "loadedWage", "overtimeShare"],
    source: bottomLine,
    reached: "read",
    given: "18 and 14 USD/h, 10 h a day each or 50 h a week, 10 % overtime, 10 % risk",
    answers: [
      { of: "USD/h, average wage", printed: 16, to: 1 },
      { of: "USD/h with overtime and risk", printed: 19.2, to: 0.01 },
      { of: "% that overtime adds to 50 h", printed: 10, to: 1 },
    ],
    compute: () => [crew.value, loaded.paid.value, overtimeShare({ hours: quantity(50, "h") }).in("%")],
  },
  {
    entry: "price-002",
    formulas: ["loadedWage", "markupOfMargin"],
    source: package2021,
    reached: "read",
    given: "16.00 USD/h, 10 % overtime, 10 % risk, burden 20 %; a margin of 10 %",
    answers: [
      { of: "USD/h of overtime", printed: 1.6, to: 0.01 },
      { of: "USD/h of risk", printed: 1.6, to: 0.01 },
      { of: "USD/h in all", printed: 19.2, to: 0.01 },
      { of: "USD/h of burden", printed: 3.84, to: 0.01 },
      { of: "% markup", printed: 11.11, to: 0.01 },
    ],
    compute: () => [
      loaded.overtime.value,
      loaded.risk.value,
      loaded.paid.value,
      loaded.burden.value,
      markupOfMargin(percent(10)).in("%"),
    ],
  },
  {
    entry: "price-001",
    formulas: ["visitPrice", "priceAtMargin"],
    source: bottomLine,
    reached: "read",
    kind: "fit",
    given:
      "the day of 20 man-hours, overhead 12 USD per man-hour, margin 10 %, 1,000 USD a day; equipment is in a chart that was not read, so that the break-even of 900 stands for it",
    answers: [
      { of: "USD a day", printed: 1000, to: 1 },
      { of: "USD per man-hour, portal to portal", printed: 50, to: 1 },
      { of: "USD per man-hour of 16 at the curb", printed: 62.5, to: 0.01 },
    ],
    compute: () => {
      const equipment = 900 - 20 * loaded.cost.value - 20 * 12;
      const day = visitPrice({
        manHours: quantity(20, "h"),
        wage: loaded.cost,
        other: [{ name: "equipment and crew truck", cost: usd(equipment) }],
        overhead: rate(12),
        aim: { margin: percent(10) },
      });
      const price = priceAtMargin({ cost: day.breakEven, margin: percent(10) });
      return [day.price.value, day.perManHour.value, price.value / 16];
    },
    note: "The equipment is backed out of the printed price, so that the figures are no independent check.",
  },
  {
    entry: "price-003",
    formulas: ["crewWage", "lifetimeHourCost", "overtimeShare"],
    source: bucket,
    reached: "read",
    given: "27, 21 and 15 USD/h; 45 h a week; 125,000 USD and 15 years of 8,000 over 15,000 h",
    answers: [
      { of: "USD/h, average wage", printed: 21, to: 1 },
      { of: "% that overtime adds to 45 h", printed: 5.6, to: 0.1 },
      { of: "USD/h of the truck", printed: 16.33, to: 0.01 },
    ],
    compute: () => [
      crewWage([27, 21, 15].map((wage) => ({ wage: rate(wage), hours: quantity(45, "h") }))).value,
      overtimeShare({ hours: quantity(45, "h") }).in("%"),
      lifetimeHourCost({ replacement: usd(125_000), upkeep: usd(120_000), hours: quantity(15_000, "h") })
        .value,
    ],
  },
  {
    entry: "price-003",
    formulas: ["loadedWage"],
    source: bucket,
    reached: "read",
    given: "21 USD/h with 5.6 % overtime and 10 % risk",
    answers: [{ of: "USD/h", printed: 24.27, to: 0.01, printing: "cut" }],
    compute: () => [
      loadedWage({ wage: rate(21), overtime: percent(5.6), risk: percent(10), burden: percent(35) }).paid
        .value,
    ],
  },
  {
    entry: "price-004",
    formulas: ["fuelUse"],
    source: {
      title: "Estimating farm machinery costs",
      publisher: "Iowa State University Extension, Ag Decision Maker A3-29",
      where: "example of a 180 hp diesel tractor",
      url: "https://www.extension.iastate.edu/AGDM/crops/html/a3-29.html",
    },
    reached: "read",
    given: "180 hp at the power take-off, diesel",
    answers: [{ of: "gal/h", printed: 7.92, to: 0.01 }],
    compute: () => [fuelUse({ horsepower: 180, fuel: "diesel" }).in("gal/h")],
  },
  {
    entry: "price-005",
    formulas: ["capitalRecovery"],
    source: {
      title: "Estimating farm machinery costs",
      publisher: "Iowa State University Extension, Ag Decision Maker A3-29",
      where: "capital recovery in the example",
    },
    reached: "from memory",
    given: "130,000 USD, 34,500 after 15 years, 8 %",
    answers: [{ of: "USD a year, with a factor of three digits", printed: 13_934, to: 50 }],
    compute: () => [
      capitalRecovery({ price: usd(130_000), remaining: usd(34_500), years: 15, interest: percent(8) }).value,
    ],
    note: "Price, years, interest and 23 % of 150,000 were read; the result is remembered.",
  },
  {
    entry: "price-006",
    formulas: ["workRate"],
    source: {
      title: "Time and motion of a sprayer",
      publisher: "The Western Producer",
      year: 2015,
      where:
        "June 2015, read as an excerpt; title paraphrased; its 48 % of the time spent spraying should be 54",
    },
    reached: "read",
    given: "90 ft at 14 mph, standing 37 % of the day, turning 15 % of the driving",
    answers: [{ of: "acre/h", printed: 82, to: 1 }],
    compute: () => [
      workRate({
        swath: quantity(90, "ft"),
        speed: quantity(14, "mi/h"),
        standing: percent(37),
        turning: percent(15),
      }).in("acre/h"),
    ],
  },
  {
    entry: "price-007",
    formulas: ["priceAtMarkup", "priceAtMargin", "marginOfMarkup"],
    source: {
      title: "Contracting 101: mark-up and margin",
      publisher: "Contracting Business magazine",
      year: 2024,
      where: "25 April 2024, a part of 100 USD",
      url: "https://www.contractingbusiness.com/columns/article/55020946/contracting-101-mark-up-and-margin",
    },
    reached: "read",
    given: "a cost of 100 USD: 20 % marked up, and a margin of 20 %",
    answers: [
      { of: "USD, marked up", printed: 120, to: 1 },
      { of: "USD, at the margin", printed: 125, to: 1 },
      { of: "% margin of the mark-up", printed: 16.67, to: 0.01 },
    ],
    compute: () => [
      priceAtMarkup({ cost: usd(100), markup: percent(20) }).value,
      priceAtMargin({ cost: usd(100), margin: percent(20) }).value,
      marginOfMarkup(percent(20)).in("%"),
    ],
  },
  {
    entry: "price-008",
    formulas: ["markupOfMargin", "priceAtMarkup", "marginOfMarkup"],
    source: {
      title: "The mistake of markup",
      publisher: "handout for builders, unsigned",
      where: "sample job of 10,000 USD, read as a summary",
      url: "https://www.scribd.com/document/334587070/The-Mistake-of-Markup",
    },
    reached: "read",
    given: "a margin of 20 % on a job that costs 10,000 USD",
    answers: [
      { of: "% mark-up", printed: 25, to: 1 },
      { of: "USD, price", printed: 12_500, to: 1 },
      { of: "% margin of that price", printed: 20, to: 1 },
    ],
    compute: () => {
      const markup = markupOfMargin(percent(20));
      return [
        markup.in("%"),
        priceAtMarkup({ cost: usd(10_000), markup }).value,
        marginOfMarkup(percent(25)).in("%"),
      ];
    },
  },
];
