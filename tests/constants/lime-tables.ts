// The tables of lime by buffer and acidity, typed a second time from the pages that print them.
import { quantity } from "../../src/quantity/index.js";
import { limeMethods, limeRequirement } from "../../src/soil/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

type Input = Parameters<typeof limeRequirement>[0];
type Requirement = ReturnType<typeof limeRequirement>;
const room = "soil";

/** A table as printed: a reading, then a rate for each target, one row after the other. */
const rowsOf = (printed: string): readonly (readonly number[])[] =>
  printed
    .trim()
    .split("\n")
    .map((row) => row.trim().split(/\s+/).map(Number));

/** Each cell of a table, and that its reading has a row of its own. */
const cellsOf = (
  name: string,
  targets: readonly number[],
  printed: string,
  call: (reading: number, targetPH: number) => Requirement,
  unit: string,
): readonly Cell[] =>
  rowsOf(printed).flatMap(([reading = Number.NaN, ...rates]) =>
    targets.flatMap((target, n): Cell[] => [
      [
        `${name}, ${reading} to pH ${target}`,
        rates[n] as number,
        () => call(reading, target).rate.in(unit as "lb/acre"),
      ],
      [
        `${name}, rows at ${reading} to pH ${target}`,
        1,
        () => (call(reading, target).findings.some(({ code }) => code === "lime/between-rows") ? 0 : 1),
      ],
    ]),
  );

/** pH goals 7.0, 6.5 and 6.0; acidity in meq/100 g, lb of CCE per 1000 ft2. */
const pennsylvania = `
  2.0 50 50 50
  2.6 70 50 50
  3.3 70 50 50
  3.9 90 70 50
  4.6 110 70 50
  5.2 110 90 50
  5.8 140 90 50
  6.5 160 110 70
  7.1 160 110 90
  7.8 180 140 90
  8.4 180 140 110
  9.0 210 160 110
  9.7 230 180 140
  10.3 230 180 140
  11.0 250 210 160
  11.6 280 210 160
  12.3 280 230 180
  12.9 300 250 180
  13.5 320 250 210
  14.2 320 280 210
  14.8 340 280 230
  15.5 370 300 230
  16.1 370 320 250
  16.8 390 320 250
  17.4 390 340 280
  18.0 410 340 280
  18.7 440 370 300
  19.3 440 390 300
  20.0 460 390 320
  20.6 480 410 320
  21.2 480 410 340
  21.9 510 460 340
  22.5 530 460 370
  23.2 530 460 370
  23.8 550 480 390
  24.5 570 480 390
  25.1 570 510 410
  25.7 600 530 410`;

/** Targets 5.6, 6.0, 6.4, 6.8 and 7.2; Sikora buffer pH, t/a of 100-score lime to 6 in. */
const oregon = `
  6.9 0.0 0.0 0.5 0.8 1.0
  6.8 0.0 0.4 0.8 1.2 1.6
  6.7 0.2 0.7 1.1 1.6 2.2
  6.6 0.4 0.9 1.5 2.1 2.7
  6.5 0.7 1.2 1.8 2.5 3.3
  6.4 0.9 1.5 2.1 2.9 3.8
  6.3 1.1 1.7 2.5 3.3 4.4
  6.2 1.3 2.0 2.8 3.7 4.9
  6.1 1.5 2.3 3.1 4.2 5.5
  6.0 1.7 2.5 3.5 4.6 6.0
  5.9 1.9 2.8 3.8 5.0 6.6
  5.8 2.2 3.1 4.1 5.4 7.1
  5.7 2.7 4.0 5.5 7.2 9.9
  5.6 3.1 4.5 6.2 8.3 11.4
  5.5 3.5 5.1 7.0 9.3 12.9
  5.4 3.8 5.6 7.7 10.3 14.3
  5.3 4.2 6.2 8.5 11.3 15.8
  5.2 4.6 6.7 9.2 12.3 17.3
  5.1 5.0 7.3 10.0 13 18.7
  5.0 5.3 7.8 10.7 14 20.2
  4.9 5.7 8.4 11.5 15 21.7
  4.8 6.1 8.9 12.2 16.3 23.2`;

/** Targets 6.5 and 6.9; buffer pH, lb of CaCO3 an acre to 6 in. */
const iowa = `
  7.0 0 1100
  6.8 600 2700
  6.6 2100 4400
  6.4 3500 6000
  6.2 5000 7700
  6.0 6400 9300
  5.8 7900 10600`;

const byBuffer =
  (method: "Sikora buffer, Oregon" | "buffer pH, Iowa") =>
  (bufferPH: number, targetPH: number): Requirement =>
    limeRequirement({ method, pH: 4.5, targetPH, bufferPH } as Input);
const byAcidity =
  (method: "Mehlich buffer, Pennsylvania turf" | "Mehlich buffer, Pennsylvania fields") =>
  (acidity: number, targetPH: number): Requirement =>
    limeRequirement({ method, pH: 4.5, targetPH, acidity: quantity(acidity, "meq/100 g") } as Input);
const inField = byAcidity("Mehlich buffer, Pennsylvania fields");
const doubtful = (bufferPH: number, targetPH: number): number =>
  byBuffer("buffer pH, Iowa")(bufferPH, targetPH).findings.some(({ code }) => code === "lime/doubtful-figure")
    ? 1
    : 0;

/** Lime by buffer and acidity. */
export const limeTableConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Lime recommendations - turf, table 1, Pennsylvania State University Agricultural Analytical Services Laboratory",
    },
    cellsOf(
      "Pennsylvania turf",
      [7, 6.5, 6],
      pennsylvania,
      byAcidity("Mehlich buffer, Pennsylvania turf"),
      "lb/1000 ft2",
    ),
  ),
  ...cells(
    { room, reached: "read", source: "EM 9585, Oregon State University Extension, October 2025, table 1" },
    [
      ...cellsOf(
        "Oregon Sikora",
        [5.6, 6, 6.4, 6.8, 7.2],
        oregon,
        byBuffer("Sikora buffer, Oregon"),
        "US ton/acre",
      ),
      ["depth of Oregon's rates, in", 6, () => limeMethods["Sikora buffer, Oregon"].depthInches ?? 0],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Liming terminology and analysis, University of Wisconsin-Madison, quoting Iowa State PM 1688: 6 in, 6.5 and 6.9",
    },
    [
      ...cellsOf("Iowa buffer", [6.5, 6.9], iowa, byBuffer("buffer pH, Iowa"), "lb/acre"),
      ["depth of Iowa's rates, in", 6, () => limeMethods["buffer pH, Iowa"].depthInches ?? 0],
      // Steps of 1,600 and 1,700 by turns lead from 9,300 to 11,000, not to the printed 10,600
      ["doubt of the last figure, 5.8 to 6.9", 1, () => doubtful(5.8, 6.9)],
      ["doubt of a figure on the way to it", 1, () => doubtful(5.9999, 6.9)],
      ["no doubt of a figure before it", 1, () => 1 - doubtful(6, 6.9)],
      ["no doubt of the other column", 1, () => 1 - doubtful(5.8, 6.5)],
      [
        "what the steps would give",
        9300 + 1700,
        () =>
          Number(
            byBuffer("buffer pH, Iowa")(5.8, 6.9).findings.find(({ code }) => code === "lime/doubtful-figure")
              ?.params.bySteps,
          ),
      ],
      [
        "what is printed",
        10600,
        () =>
          Number(
            byBuffer("buffer pH, Iowa")(5.8, 6.9).findings.find(({ code }) => code === "lime/doubtful-figure")
              ?.params.printed,
          ),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "The Agronomy Guide, part 1, section 2, Pennsylvania State University: 1,000 a meq for pH 7.0; for 6.5 840 a meq above 4.0, else 2,000; 7 in",
    },
    [
      ["fields, 6 meq to pH 7", 6000, () => inField(6, 7).rate.in("lb/acre")],
      ["fields, 6 meq to pH 6.5", 5040, () => inField(6, 6.5).rate.in("lb/acre")],
      ["fields, just above 4 meq to pH 6.5", 840 * 4.0001, () => inField(4.0001, 6.5).rate.in("lb/acre")],
      ["fields, 4 meq to pH 6.5", 2000, () => inField(4, 6.5).rate.in("lb/acre")],
      ["fields, 3 meq to pH 7", 3000, () => inField(3, 7).rate.in("lb/acre")],
      ["the least rate as told", 2000, () => Number(inField(3, 6.5).findings[0]?.params.rate)],
      [
        "depth of the rates, in",
        7,
        () => limeMethods["Mehlich buffer, Pennsylvania fields"].depthInches ?? 0,
      ],
    ],
  ),
];
