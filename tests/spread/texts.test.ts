import { describe, expect, test } from "vitest";
import { type Finding, quantity } from "../../src/quantity/index.js";
import {
  deicingRate,
  effectiveSwath,
  gateSetting,
  passRates,
  spreadPattern,
  spreadRateEstimate,
} from "../../src/spread/index.js";

// What a person reads who uses a spreader: each finding of the room, word for word.

const perThousand = (value: number) => quantity(value, "lb/1000 ft2", "product");
const row = (catches: readonly number[], left: number) =>
  spreadPattern({ catches, unit: "g", pans: { spacing: quantity(1, "ft"), left } });
/** Two catches of 1000 ft2, 0.2 lb apart: their mean is known to 0.1 lb. */
const measured = (mean: number) =>
  spreadRateEstimate({
    amounts: [mean - 0.1, mean + 0.1].map((value) => quantity(value, "lb", "product")),
    area: quantity(1000, "ft2"),
    areaError: quantity(0, "%"),
  });
const walk = (fahrenheit: number) => deicingRate({ pavement: quantity(fahrenheit, "°F") }).findings;
const cautions = [
  "deicing/chloride: Salt runs off into soil and water and stays. Plow or shovel first, keep it off turf and trees, sweep up what is left over, and follow local rules.",
];
const differ =
  "deicing/sources-differ: Watershed districts in Minnesota advise less than 4 lb/1000 ft2 on walks at any temperature.";

const read = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ code, text }) => `${code}: ${text}`);

const rows: readonly (readonly [
  name: string,
  findings: () => readonly Finding[],
  texts: readonly string[],
])[] = [
  ["salt on a warm walk", () => walk(31), cautions],
  ["salt at 22 °F", () => walk(22), [...cautions, differ]],
  [
    "salt at 10 °F",
    () => walk(10),
    [
      ...cautions,
      "deicing/too-cold: Dry salt melts too slowly below 15 °F of pavement. Use a wetted or another deicer, or sand for traction.",
      differ,
    ],
  ],
  [
    "a setting that is drawn on",
    () =>
      gateSetting({
        target: perThousand(6),
        trials: [
          { setting: 3, rate: perThousand(2) },
          { setting: 5, rate: perThousand(5) },
        ],
        beyond: "extrapolate",
      }).findings,
    [
      "setting/extrapolated: The target of 6 lb/1000 ft2 is outside the trials: the line through settings 3 and 5 was extrapolated. Make a run with the setting before you use it.",
    ],
  ],
  [
    "trials of 1 and 1.2 lb, each known to 0.1 lb",
    () =>
      gateSetting({
        target: perThousand(1.1),
        trials: [
          { setting: 3, rate: measured(1) },
          { setting: 4, rate: measured(1.2) },
        ],
      }).findings,
    [
      "trials/not-told-apart: The trials at settings 3 and 4 differ by less than twice the error of their difference: measure again, or try settings farther apart.",
    ],
  ],
  [
    "two passes above a limit",
    () =>
      passRates({
        rate: quantity(1, "lb/1000 ft2", "N"),
        passes: 2,
        limit: quantity(0.9, "lb/1000 ft2", "N"),
      }).findings,
    [
      "limit/exceeded: The 2 passes together put down 1 lb/1000 ft2 of N, above the stated limit of 0.9 lb/1000 ft2 of N. A limit counts the sum of the passes.",
    ],
  ],
  [
    "a row that ends too soon on both sides",
    () => row([1, 4, 5, 4, 2], 2).findings,
    ["left", "right"].map(
      (side) =>
        `pattern/row-too-short: The outermost pan on the ${side} caught something: what fell past it is not in the pattern. Set more pans.`,
    ),
  ],
  [
    "two humps",
    () => effectiveSwath(row([0, 3, 5, 4, 3, 2, 3, 4, 5, 3, 0], 5), { rule: "half of peak" }).findings,
    [
      "pattern/several-crossings: The pattern crosses the level 4 times, not twice: the outermost crossings count. The half rules are made for one hump; look at the CV over all swaths instead.",
    ],
  ],
];

describe("what is told of spreading", () => {
  test.each(rows)("%s", (_, findings, texts) => {
    expect(read(findings())).toEqual(texts);
  });
});
