import { describe, expect, test } from "vitest";
import { availableNitrogen, compostAmount, onDryBasis, onWetBasis, quantity } from "../../src/index.js";
import { problemsOf } from "../errors.js";

type BareRow = readonly [
  name: string,
  path: string,
  usual: number,
  least: number,
  call: (percent: number) => unknown,
];

const bare: readonly BareRow[] = [
  [
    "compostAmount",
    "moisture",
    40,
    2,
    (moisture) =>
      compostAmount({
        area: quantity(32_400, "ft2"),
        depth: quantity(0.25, "in"),
        bulkDensity: quantity(1000, "lb/yd3", "product"),
        moisture,
      }),
  ],
  [
    "onDryBasis",
    "moisture",
    40,
    2,
    (moisture) => onDryBasis({ content: quantity(0.6, "% w/w", "N/product"), moisture }),
  ],
  [
    "onWetBasis",
    "moisture",
    45,
    0,
    (moisture) => onWetBasis({ content: quantity(1, "% w/w", "N/product"), moisture }),
  ],
  [
    "availableNitrogen",
    "firstYear",
    10,
    2,
    (firstYear) =>
      availableNitrogen({
        organic: quantity(8, "lb/1000 ft2", "N"),
        firstYear,
        years: 3,
        later: "half of the year before",
      }),
  ],
];

describe("a share in the place of a bare percent", () => {
  for (const [name, path, usual, least, call] of bare) {
    test(`${name}: ${usual / 100} at ${path} is told as ${usual}`, () => {
      const told = problemsOf(() => call(usual / 100));
      expect(told.map((one) => [one.code, one.path, one.suggestion])).toEqual([["range", path, `${usual}`]]);
      for (const percent of [usual, least]) expect(problemsOf(() => call(percent))).toEqual([]);
    });
  }
});
