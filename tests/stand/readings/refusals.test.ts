import { quantity } from "../../../src/quantity/index.js";
import { greenSpeed, pestDensity } from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");
const perFoot = (value: number) => quantity(value, "count/ft2");
const core = { diameter: quantity(4.25, "in") };
const counts = [1, 0, 2];
const source = "the park's own limit";

const rows: readonly Refusal[] = [
  [
    "no rolls",
    greenSpeed,
    [{}],
    [
      "missing up: a list with at least one roll [undefined]",
      "missing down: a list with at least one roll [undefined]",
    ],
  ],
  [
    "rolls that are none",
    greenSpeed,
    [{ up: [], down: [ft(9), ft(0), quantity(9, "lb")] }],
    [
      "missing up: at least one roll [an empty list]",
      "range down[1]: more than zero [0 ft]",
      "unit/mismatch down[2]: a length, such as 10 ft or 3 m [9 lb]",
    ],
  ],
  [
    "rolls of many days",
    greenSpeed,
    [{ up: Array.from({ length: 101 }, () => ft(9)), down: [ft(9)] }],
    ["range up: at most 100 items [a list of 101]"],
  ],
  [
    "nothing of pests",
    pestDensity,
    [{}],
    [
      "missing counts: a list with at least one core [undefined]",
      "missing core: a core with diameter or area [undefined]",
    ],
  ],
  [
    "counts that are none",
    pestDensity,
    [{ counts: [1, -1, 0.5, "2", Number.NaN], core }],
    ["range counts[1]: a whole number, zero or more [-1]"],
  ],
  ["no counts", pestDensity, [{ counts: [], core }], ["missing counts: at least one core [an empty list]"]],
  [
    "counts of a whole country",
    pestDensity,
    [{ counts: Array.from({ length: 10_001 }, () => 0), core }],
    ["range counts: at most 10000 items [a list of 10001]"],
  ],
  [
    "a core without a size",
    pestDensity,
    [{ counts, core: {} }],
    ["missing core: the diameter of a core, or its area [a record]"],
  ],
  [
    "a core of two sizes",
    pestDensity,
    [{ counts, core: { ...core, area: quantity(0.1, "ft2") } }],
    ["conflict core: the diameter of a core, or its area [a record]"],
  ],
  [
    "a core of no area",
    pestDensity,
    [{ counts, core: { area: quantity(0, "ft2") } }],
    ["range core.area: more than zero [0 ft2]"],
  ],
  [
    "a core of no diameter",
    pestDensity,
    [{ counts, core: { diameter: quantity(0, "in") } }],
    ["range core.diameter: more than zero [0 in]"],
  ],
  [
    "a core as a quantity",
    pestDensity,
    [{ counts, core: quantity(4, "in") }],
    ["type core: a record with diameter, area: write { diameter: ... } [4 in]"],
  ],
  [
    "a threshold of nobody",
    pestDensity,
    [{ counts, core, threshold: {} }],
    [
      "missing threshold.low: a count over an area, such as 12 count/ft2 or 130 count/m2 [undefined]",
      "missing threshold.high: a count over an area, such as 12 count/ft2 or 130 count/m2 [undefined]",
      "missing threshold.source: who states it, in up to 400 letters [undefined]",
    ],
  ],
  [
    "a threshold with its ends changed",
    pestDensity,
    [{ counts, core, threshold: { low: perFoot(20), high: perFoot(10), source } }],
    ["conflict threshold.high: no less than low [10 count/ft2]"],
  ],
  [
    "a threshold per mass",
    pestDensity,
    [{ counts, core, threshold: { low: perFoot(5), high: quantity(9, "count/lb"), source } }],
    ["unit/mismatch threshold.high: a count over an area, such as 12 count/ft2 or 130 count/m2 [9 count/lb]"],
  ],
  [
    "a confidence that is a length",
    pestDensity,
    [{ counts, core, confidence: ft(1) }],
    ["unit/mismatch confidence: a share, such as 40 % or 0.4 [1 ft]"],
  ],
  [
    "a confidence of all",
    pestDensity,
    [{ counts, core, confidence: quantity(100, "%") }],
    ["range confidence: 1 to 99.99 % [100 %]"],
  ],
  [
    "a confidence of all from one core",
    pestDensity,
    [{ counts: [0], core, confidence: quantity(100, "%") }],
    ["range confidence: 1 to 99.99 % [100 %]"],
  ],
];

refusalsOf("what is refused of readings", rows);
