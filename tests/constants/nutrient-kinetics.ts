// The kinetics of release by hand, on days and weeks that come out even.
import {
  accumulateEquivalentDaysC,
  firstOrderRate,
  naturalOrganic,
  programComparison,
  releaseByWeek,
  releasedNitrogen,
  statedDuration,
} from "../../src/nutrient/index.js";
import { money, quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const room = "nutrient";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const nitrogen = (value: number) => quantity(value, "lb/1000 ft2", "N");
const array = (...values: readonly number[]) => Float64Array.from(values);

const days = (max: number, min: number, response: Parameters<typeof accumulateEquivalentDaysC>[2]): number =>
  number(accumulateEquivalentDaysC(array(max), array(min), response)[0]);
/** The mean of exp(x cos) over a day: the modified Bessel function of order nought, by its series. */
const meanOfCosine = (x: number): number => 1 + x ** 2 / 4 + x ** 4 / 64 + x ** 6 / 2304 + x ** 8 / 147_456;
const warmth: readonly ConstantCheck[] = [
  ...cells(
    {
      ...derived,
      within: 1e-9,
      source:
        "a Q10 of e: one e-fold for 10 °C; Arrhenius with R = 8.314462618 J/(mol K) (CODATA 2018) and 0 °C = 273.15 K",
    },
    [
      [
        "four fifths out by day 35: ln 5 over 35",
        Math.log(5) / 35,
        () => firstOrderRate({ percent: 80, days: 35 }),
      ],
      [
        "a steady day 10 °C above the reference",
        Math.E,
        () => days(35, 35, { kind: "Q10", q10: { low: Math.E, high: Math.E }, referenceC: 25 }),
      ],
      [
        "80 kJ/mol, 35 °C beside 25 °C",
        Math.exp((80_000 / 8.314462618) * (1 / 298.15 - 1 / 308.15)),
        () =>
          days(35, 35, {
            kind: "Arrhenius",
            activationEnergy: { low: 80, high: 80 },
            referenceC: 25,
          }),
      ],
    ],
  ),
  ...cells(
    {
      ...derived,
      within: 1e-8,
      source: "the mean of exp(x cos a) over a turn, by its series, for a swing of 5 °C either way",
    },
    [
      [
        "a day from 20 to 30 °C about the reference",
        meanOfCosine(0.5),
        () => days(30, 20, { kind: "Q10", q10: { low: Math.E, high: Math.E }, referenceC: 25 }),
      ],
    ],
  ),
];

const even = () => statedDuration({ days: { low: 21, high: 21 }, source: "the label" });
const weeks = () =>
  releaseByWeek(
    releasedNitrogen({
      applied: "2026-05-01",
      days: 21,
      placement: "surface or thatch",
      temperature: { mean: quantity(20, "°C") },
      portions: [{ name: "even", nitrogen: nitrogen(0.9), model: even() }],
    }),
  );
const compared = () =>
  programComparison({
    from: "2026-05-01",
    weeks: 3,
    placement: "surface or thatch",
    temperature: { mean: quantity(25, "°C") },
    programs: [
      {
        name: "even",
        applications: [
          {
            date: "2026-05-01",
            portions: [{ name: "even", nitrogen: nitrogen(0.9), model: even() }],
            cost: money(20, "USD").per(quantity(1, "acre")),
          },
        ],
      },
      {
        name: "organic",
        applications: [
          {
            date: "2026-05-01",
            portions: [{ name: "organic", nitrogen: nitrogen(1), model: naturalOrganic }],
            cost: money(90, "USD").per(quantity(1, "acre")),
          },
        ],
      },
    ],
  }).programs[0]?.weeks;
const calendar: readonly ConstantCheck[] = cells(
  { ...derived, within: 1e-9, source: "0.9 lb evenly over 21 days is 0.3 lb a week" },
  [0, 1, 2].flatMap((week): readonly Cell[] => [
    [`released in week ${week + 1}`, 0.3, () => number(weeks()[week]?.released.in("lb/1000 ft2"))],
    [`available in week ${week + 1}`, 0.3, () => number(compared()?.[week]?.available.in("lb/1000 ft2"))],
  ]),
);

/** Warmth and weeks of release. */
export const nutrientKineticConstants: readonly ConstantCheck[] = [...warmth, ...calendar];
