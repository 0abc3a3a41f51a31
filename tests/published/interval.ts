import {
  addDays,
  addMonths,
  applicationDates,
  dayOfMonth,
  daysBetween,
  degreeDayAmount,
  degreeDayModel,
  degreeDays,
  monthOf,
  quantity,
} from "../../src/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";
import { intervalAirChecks } from "./interval-air.js";
import { intervalClockChecks } from "./interval-clocks.js";
import { intervalDegreeDayChecks } from "./interval-degree-days.js";
import { intervalModelChecks, intervalModelLeftOut } from "./interval-models.js";

const twigBorer: Source = {
  title: "Phenology model: peach twig borer (models 1 and 2)",
  publisher: "University of California statewide IPM program",
  where: "model 1",
  url: "https://ipm.ucanr.edu/weather/phenology-models-description/peach-twig-borer/",
};
/** Degree-days of one day, all in °F, by the simple average with air temperatures. */
const dayF = (max: number, min: number, base: number): number =>
  degreeDays({
    max: quantity(max, "°F"),
    min: quantity(min, "°F"),
    model: degreeDayModel({ method: "simple average", base: { value: base, unit: "°F" }, sensor: "air" }),
  }).in("°F d");

const base32 = degreeDayModel({ method: "simple average", base: { value: 32, unit: "°F" }, sensor: "air" });
const celsiusDays = (value: number): number =>
  degreeDayAmount({ value, unit: "°F d", model: base32 }).in("°C d");

/** Published examples of degree-days, dates and all other clocks. */
export const intervalChecks: readonly PublishedCheck[] = [
  {
    entry: "interval-001",
    formulas: ["degreeDays"],
    source: {
      title: "Use growing degree days to better time your applications",
      publisher: "Purdue University turfgrass science",
      where: "first worked day",
      url: "https://turf.purdue.edu/use-growing-degree-days-to-better-time-your-applications/",
    },
    reached: "read",
    kind: "worked example",
    given: "74 and 52 °F, base 50 °F",
    answers: [{ of: "°F d", printed: 13, to: 1 }],
    compute: () => [dayF(74, 52, 50)],
  },
  {
    entry: "interval-003",
    formulas: ["degreeDays"],
    source: {
      title: "Turf: crabgrass germination and preemergence programs",
      publisher: "Virginia Tech / University of Delaware county extension",
      year: 2008,
      where: "extract from Crop and Soil Environmental News, January 2007",
    },
    reached: "read",
    kind: "worked example",
    given: "75 and 27 °F, base 50 °F",
    answers: [{ of: "°F d", printed: 1, to: 1 }],
    compute: () => [dayF(75, 27, 50)],
    note: "Tells the methods apart: raising the minimum to the base first gives 12.5.",
  },
  {
    entry: "interval-006",
    formulas: ["degreeDays"],
    source: {
      title: "A simple way to calculate degree-days",
      publisher: "University of California statewide IPM program",
      where: "figure cit-t01",
      url: "https://ipm.ucanr.edu/PMG/FIG/cit-t01.html",
    },
    reached: "read",
    kind: "worked example",
    given: "a mean of 64 °F, base 53 °F",
    answers: [{ of: "°F d", printed: 11, to: 1 }],
    compute: () => [dayF(64, 64, 53)],
    note: "Only the mean is given: it stands for both extremes.",
  },
  {
    entry: "interval-007",
    formulas: ["degreeDays"],
    source: {
      title: "Growing degree days",
      publisher: "Midwestern Regional Climate Center",
      where: "example under definition",
      url: "https://mrcc.illinois.edu/gismaps/info/gddinfo.htm",
    },
    reached: "read",
    kind: "worked example",
    given: "a mean of 75 °F, base 65 °F",
    answers: [{ of: "°F d", printed: 10, to: 1 }],
    compute: () => [dayF(75, 75, 65)],
    note: "The same page: a mean at or below the base counts 0.",
  },
  {
    entry: "interval-009",
    formulas: ["degreeDays"],
    source: {
      title: "Calculating growing degree days (three methods)",
      publisher: "Michigan State University Extension district horticulture handout",
      where: "1. Averaging method",
    },
    reached: "read",
    kind: "worked example",
    given: "60 and 35 °F, base 50 °F: a mean 2.5 below the base",
    answers: [{ of: "°F d", printed: 0, to: 1 }],
    compute: () => [dayF(60, 35, 50)],
    note: "The source uses the day to show that averaging misses warm hours of a cold day.",
  },
  {
    entry: "interval-018",
    formulas: ["degreeDays"],
    source: {
      title: "Growing degree day chart instructions (tulips)",
      publisher: "school project on phenology",
      year: 2004,
      where: "steps 3-4",
    },
    reached: "read",
    kind: "worked example",
    given: "a mean of 39 °F, base 40 °F",
    answers: [{ of: "°F d", printed: 0, to: 1 }],
    compute: () => [dayF(39, 39, 40)],
  },
  {
    entry: "interval-021",
    formulas: ["degreeDayAmount"],
    source: twigBorer,
    reached: "read",
    kind: "worked example",
    given: "1080, 369, 232.2, 676.8 and 400 °F d",
    answers: [
      { of: "°C d", printed: 600, to: 0.1 },
      { of: "°C d", printed: 205, to: 0.1 },
      { of: "°C d", printed: 129, to: 0.1 },
      { of: "°C d", printed: 376, to: 0.1 },
      {
        of: "°C d",
        printed: 222,
        to: 0.1,
        wrong: { right: 222.2, why: "printed as 222.0, so rounded to whole degree-days before" },
      },
    ],
    compute: () => [1080, 369, 232.2, 676.8, 400].map(celsiusDays),
  },
  {
    entry: "interval-021",
    formulas: ["quantity"],
    source: twigBorer,
    reached: "read",
    kind: "worked example",
    given: "thresholds of 50 and 88 °F",
    answers: [
      { of: "°C", printed: 10, to: 0.1 },
      { of: "°C", printed: 31.1, to: 0.1 },
    ],
    compute: () => [quantity(50, "°F").in("°C"), quantity(88, "°F").in("°C")],
    note: "A temperature converts with the offset, a degree-day without.",
  },
  {
    entry: "interval-022",
    formulas: ["degreeDayAmount"],
    source: {
      title: "Trinexapac-ethyl applications and growing degree days",
      publisher: "turf trade magazine, University of Wisconsin interview",
      year: 2013,
      where: "second and third answers",
    },
    reached: "read",
    kind: "worked example",
    given: "200 °C d at base 0 °C, as degree-days at base 32 °F",
    answers: [{ of: "°F d", printed: 360, to: 1 }],
    compute: () => [degreeDayAmount({ value: 200, unit: "°C d", model: base32 }).in("°F d")],
  },
  {
    entry: "interval-040",
    formulas: ["applicationDates", "daysBetween"],
    source: {
      title: "Preemergence herbicide failure: why?",
      publisher: "University of Arkansas turf help archive",
      year: 2009,
      where: "rates and dates",
    },
    reached: "derived",
    kind: "worked example",
    given: "first dates 20 February, 1 March and 10 March of a common year, the second 60 days later",
    answers: [
      { of: "day of April", printed: 21, to: 1 },
      { of: "day of April", printed: 30, to: 1 },
      { of: "day of May", printed: 9, to: 1 },
    ],
    compute: () =>
      (["2023-02-20", "2023-03-01", "2023-03-10"] as const).map((first) =>
        dayOfMonth(applicationDates({ first, intervalDays: 60, count: 2 })[1] ?? first),
      ),
    note: "The source prints the first dates and the 60 days; the second dates were counted by hand.",
  },
  {
    entry: "interval-046",
    formulas: ["daysBetween"],
    source: {
      title: "Got seedheads?",
      publisher: "Michigan State University",
      year: 2018,
      where: "2018 window dates",
      url: "https://canr.msu.edu/news/got-seedheads",
    },
    reached: "derived",
    kind: "worked example",
    given: "a window from 30 March to 1 May 2018",
    answers: [{ of: "days", printed: 32, to: 1 }],
    compute: () => [daysBetween("2018-03-30", "2018-05-01")],
    note: "The source prints the dates; the days were counted by hand.",
  },
  {
    entry: "interval-054",
    formulas: ["addDays", "addMonths"],
    source: {
      title: "Garden blog note on degree-day timing of Japanese beetle",
      publisher: "personal gardening blog citing NC State data",
      year: 2023,
      where: "forecast paragraph",
    },
    reached: "read",
    kind: "worked example",
    given: "18 June 2022, a year and about four days later",
    answers: [
      { of: "month", printed: 6, to: 1 },
      { of: "day of the month", printed: 22, to: 1 },
    ],
    compute: () => {
      const date = addDays(addMonths("2022-06-18", 12), 4);
      return [monthOf(date), dayOfMonth(date)];
    },
  },
  ...intervalDegreeDayChecks,
  ...intervalModelChecks,
  ...intervalClockChecks,
  ...intervalAirChecks,
];

/** Examples of degree-days that no check can be made of. */
export const intervalLeftOut: readonly LeftOut[] = [
  {
    entry: "interval-023",
    reason: "Intervals in days without the temperatures that they were seen at.",
  },
  ...intervalModelLeftOut,
];
