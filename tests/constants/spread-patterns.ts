// Spread patterns by hand: what lies under them, where they are cut, and how they overlap.
import { quantity } from "../../src/quantity/index.js";
import {
  type Driving,
  effectiveSwath,
  overlapDeposits,
  panRow,
  patternBalance,
  spreadPattern,
  swathCvPercent,
  swathSearch,
  swathUniformity,
} from "../../src/spread/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const room = "spread";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const ft = (value: number) => quantity(value, "ft");
const percent = (value: number) => quantity(value, "%");

const row = (catches: readonly number[], left: number) =>
  spreadPattern({ catches, unit: "g", pans: { spacing: ft(1), left } });
const triangle = row([0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0], 6);
const skewed = row([0, 1, 2, 3, 4, 5, 6, 4, 2, 0], 6);
/** No pan on the line of travel: at -2.5 to 2.5 ft. */
const between = spreadPattern({
  catches: [0, 2, 6, 4, 2, 0],
  unit: "g",
  pans: { offsets: [-2.5, -1.5, -0.5, 0.5, 1.5, 2.5].map(ft) },
});

/** What a pass of the skewed pattern leaves on a strip 1 ft wide around a pan: three quarters of that catch, an eighth of its neighbors. */
const onStrip = (pan: number): number => {
  const at = (place: number): number => skewed.catches[place + 6] ?? 0;
  return 0.75 * at(pan) + (at(pan - 1) + at(pan + 1)) / 8;
};
/** Passes 3 ft apart, every other one the other way round. */
const backAndForth = (place: number): number =>
  [-4, -3, -2, -1, 0, 1, 2, 3, 4].reduce(
    (sum, pass) => sum + onStrip(pass % 2 === 0 ? place - 3 * pass : 3 * pass - place),
    0,
  );
const strips = (pattern: typeof skewed, swath: number, driving: Driving, positions: number) =>
  overlapDeposits(pattern, { swath: ft(swath), driving, positions });

const patterns: readonly ConstantCheck[] = [
  ...cells(
    {
      ...derived,
      within: 1e-9,
      source: "straight lines from pan to pan: a triangle of 6, a skewed one with 27 under it, by hand",
    },
    [
      [
        "swath at half of the peak of a triangle of 6, ft",
        6,
        () => effectiveSwath(triangle, { rule: "half of peak" }).swath.in("ft"),
      ],
      [
        "at half of (5 + 6 + 5)/3, ft",
        20 / 3,
        () => effectiveSwath(triangle, { rule: "half of center mean" }).swath.in("ft"),
      ],
      [
        "of four pans beside the line, half of (2 + 6 + 4 + 2)/4 = 1.75: -1.625 to 1.625",
        3.25,
        () => effectiveSwath(between, { rule: "half of center mean" }).swath.in("ft"),
      ],
      [
        "left of the line, %",
        (100 * (1 + 2 + 3 + 4 + 5 + 6 / 2)) / 27,
        () => patternBalance(skewed).left.in("%"),
      ],
      ["right of the line, %", (100 * (6 / 2 + 4 + 2)) / 27, () => patternBalance(skewed).right.in("%")],
      ["middle of the pattern, ft", -1, () => patternBalance(skewed).center.in("ft")],
      [
        "left of a line between two pans: 1 + 4 + (6 + 5)/4 of 14, %",
        (100 * (1 + 4 + 11 / 4)) / 14,
        () => patternBalance(between).left.in("%"),
      ],
      ...[4, 4, 4.5, 5.5, 5.5, 4.5, 4, 4].flatMap((deposit, n): readonly Cell[] => [
        [
          `triangle of 6, swath 8, strip ${n + 1}`,
          deposit,
          () => number(strips(triangle, 8, "one direction", 8).deposits[n]),
        ],
        [
          `place of strip ${n + 1}, ft`,
          n - 3.5,
          () => number(strips(triangle, 8, "one direction", 8).offsets[n]),
        ],
      ]),
      ...[-1, 0, 1].map(
        (place, n): Cell => [
          `skewed, swath 3, back and forth, strip ${n + 1}`,
          backAndForth(place),
          () => number(strips(skewed, 3, "back and forth", 3).deposits[n]),
        ],
      ),
      [
        "CV of 8, 5, 4, 5, 8, 8, 8, 8 about 6.75, %",
        (100 * Math.sqrt((5 * 1.25 ** 2 + 2 * 1.75 ** 2 + 2.75 ** 2) / 8)) / 6.75,
        () =>
          number(
            swathCvPercent({
              depositsKgPerM2: Float64Array.from(skewed.catches),
              spacingM: 1,
              firstPanM: -6,
              swathsM: Float64Array.of(4),
              driving: "back and forth",
              divisor: "n",
            })[0],
          ),
      ],
      [
        "most of a triangle of 6 at a swath of 8, % of the mean of 4.5",
        (100 * 6) / 4.5,
        () =>
          swathUniformity(triangle, {
            swath: ft(8),
            driving: "one direction",
            positions: "pans",
            divisor: "n",
          }).highest.in("%"),
      ],
    ],
  ),
  ...cells({ ...derived, source: "a row of pans of 1 1/2 to 2 swaths, one pan on the line of travel" }, [
    ["least row for a swath of 10 ft, ft", 15, () => panRow({ swath: ft(10) }).least.in("ft")],
    ["longest, ft", 20, () => panRow({ swath: ft(10) }).most.in("ft")],
    ["pans 1 ft apart for 12 ft", 13, () => number(panRow({ swath: ft(8), spacing: ft(1) }).pans?.least)],
    [
      "a little more than 6 ft to each side takes 7 pans there",
      15,
      () => number(panRow({ swath: ft(8.0004), spacing: ft(1) }).pans?.least),
    ],
    ["pans 1 ft apart for 16 ft", 17, () => number(panRow({ swath: ft(8), spacing: ft(1) }).pans?.most)],
    [
      "narrowest swath that is tried: two pans, ft",
      2,
      () =>
        number(
          swathSearch(triangle, {
            driving: "one direction",
            positions: "pans",
            divisor: "n",
            limit: percent(25),
          }).rows[0]?.swath.in("ft"),
        ),
    ],
  ]),
];

/** Patterns of spreaders, by hand. */
export const spreadPatternConstants: readonly ConstantCheck[] = [...patterns];
