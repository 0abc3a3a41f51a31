// What a soil takes in and what may stand on it, typed a second time from a public program; the hours of the midnight sun.
import type { Instant } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import { hourlyExtraterrestrialRadiation, type IntakeSoil, soilIntake } from "../../src/water/index.js";
import { type ConstantCheck, cells, edge } from "./check.js";

const room = "water";
const at = (soil: IntakeSoil, grade: number) => soilIntake({ soil, slope: quantity(grade, "% grade") });

/** Hundredths of an inch that may stand at 0 to 3, 4 to 6, 7 to 12 and more than 12 % of slope, then hundredths taken in an hour. */
const printed: readonly (readonly [soil: IntakeSoil, ...hundredths: number[]])[] = [
  ["clay", 20, 15, 10, 10, 10],
  ["silty clay", 23, 19, 16, 13, 15],
  ["clay loam", 26, 22, 18, 15, 20],
  ["loam", 30, 25, 21, 17, 35],
  ["sandy loam", 33, 29, 24, 20, 40],
  ["loamy sand", 36, 30, 26, 22, 50],
  ["sand", 40, 35, 30, 25, 60],
];
const slopes = [2, 5, 10, 20] as const;

const midnightSun = (longitude: number): number =>
  Array.from({ length: 24 }, (_, hour) =>
    hourlyExtraterrestrialRadiation({
      latitude: quantity(75, "deg"),
      longitude: quantity(longitude, "deg"),
      start: `2026-06-21T${String(hour).padStart(2, "0")}:00Z` as Instant,
      length: quantity(1, "h"),
    }).in("MJ/m2"),
  ).reduce((sum, one) => sum + one, 0);
/** Equations 21, 23 and 24 of FAO-56 for day 172, when the sun goes round once at 75 degrees. */
const whole = (() => {
  const turn = ((2 * Math.PI) / 365) * 172;
  const delta = 0.409 * Math.sin(turn - 1.39);
  return 24 * 60 * 0.082 * (1 + 0.033 * Math.cos(turn)) * Math.sin((75 * Math.PI) / 180) * Math.sin(delta);
})();

/** Intake by soil and slope. */
export const soilIntakeConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "public program of an irrigation controller, in C: allowable surface accumulation in 1/100 inch at slopes of 0-3, 4-6, 7-12 and >12 %, and infiltration rate in 1/100 inch an hour",
    },
    printed.flatMap(([soil, ...hundredths]) => [
      ...slopes.map(
        (slope, n) =>
          [
            `${soil}, on a slope of ${slope} %, in`,
            (hundredths[n] as number) / 100,
            () => at(soil, slope).storage.in("in"),
          ] as const,
      ),
      [
        `${soil}: intake, in/h`,
        (hundredths[4] as number) / 100,
        () => at(soil, 2).intake.in("in/h"),
      ] as const,
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-8,
      source: "the same: slopes of 0-3, 4-6, 7-12 and >12 %; between two classes the steeper counts",
    },
    ([3, 6, 12] as const).map(
      (end) =>
        [
          `a class of slopes ends at ${end} %`,
          end,
          () => edge((grade) => (at("loam", grade).slopeUpTo ?? 100) <= end, end - 1, end + 1),
        ] as const,
    ),
  ),
  ...cells(
    { room, reached: "derived", source: "the hours of a day add up to the day, whichever meridian it is" },
    [
      ["hours of the midnight sun half an hour west", whole, () => midnightSun(-7.5)],
      ["half an hour east", whole, () => midnightSun(7.5)],
      ["near the date line", whole, () => midnightSun(172.5)],
    ],
  ),
];
