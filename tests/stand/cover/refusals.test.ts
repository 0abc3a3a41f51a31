import { dailyNormals, dailyTemperatures } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  cellsToCover,
  coverOfPatches,
  coverOverTime,
  diameterForCover,
  plantingDateForCover,
  spacingForCover,
  spreadRateFromCover,
  spreadRateFromPatch,
} from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const mm = (value: number) => quantity(value, "mm");
const percent = (value: number) => quantity(value, "%");
const day = (value: number) => quantity(value, "mm/d");
const source = "made up for the test";
const grid = { pattern: "square", spacing: mm(300) };
const plug = { diameter: mm(60) };
const start = { ...grid, plug };
const spread = { low: day(1), mid: day(2), high: day(3), source };
const growth = { potential: percent(100), source };
const base = { start, from: "2026-05-01", to: "2026-05-05", spread, growth };
const turned = {
  plug,
  pattern: "square",
  from: "2026-05-01",
  by: "2026-06-01",
  cover: percent(90),
  spread,
  growth,
};
const planting = { start, earliest: "2026-05-01", by: "2026-06-01", cover: percent(90), spread, growth };
const patches = { covered: [1, 0, 0, 0], columns: 2, cell: mm(50) };
const flat = (value: number) => Array<number>(366).fill(value);
const observed = dailyTemperatures({
  start: "2026-05-02",
  unit: "°C",
  sensor: "air",
  source,
  min: [10, null],
  max: [20, null],
});
const soil = { unit: "°C", sensor: "soil at 5 cm", source } as const;
const soilNormals = dailyNormals({ ...soil, min: flat(10), max: flat(20) });
const soilSeries = dailyTemperatures({ ...soil, start: "2026-05-02", min: [10], max: [20] });
const season = "warm-season";

const rows: readonly Refusal[] = [
  [
    "nothing of patches",
    coverOfPatches,
    [{}],
    [
      'missing pattern: one of "square", "triangular", "rectangular" [undefined]',
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
      "missing diameter: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "patches of less than nothing",
    coverOfPatches,
    [{ ...grid, diameter: mm(-1) }],
    ["range diameter: zero or more [-1 mm]"],
  ],
  [
    "nothing for a diameter",
    diameterForCover,
    [{}],
    [
      'missing pattern: one of "square", "triangular", "rectangular" [undefined]',
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
      "missing cover: a share, such as 85 % [undefined]",
    ],
  ],
  [
    "no cover",
    diameterForCover,
    [{ ...grid, cover: percent(0) }],
    ["range cover: more than 0 % and at most 100 % [0 %]"],
  ],
  [
    "more than all covered",
    diameterForCover,
    [{ ...grid, cover: percent(101) }],
    ["range cover: more than 0 % and at most 100 % [101 %]"],
  ],
  [
    "a cover too small to be one",
    diameterForCover,
    [{ ...grid, spacing: mm(1e-320), cover: percent(1e-300) }],
    ["range cover: a cover that a patch of some width makes [1e-300]"],
  ],
  ["no map", cellsToCover, [], ["missing covered: one figure a cell, 1 or 0 [undefined]"]],
  [
    "a map as a text",
    cellsToCover,
    ["110", 3],
    ['type covered: a list of figures, 1 for covered, 0 for bare ["110"]'],
  ],
  ["a map without cells", cellsToCover, [[], 1], ["range covered: 1 to 4000000 cells [0 cells]"]],
  [
    "a map of other figures",
    cellsToCover,
    [[1, 0.5, 0], 3],
    ["range covered[1]: a whole number, 0 to 1: 1 for covered, 0 for bare [0.5]"],
  ],
  [
    "a map that is bare",
    cellsToCover,
    [[0, 0], 2],
    ["range covered: cells that are covered, 1 or more [no cell that is covered]"],
  ],
  [
    "a map that is no rectangle",
    cellsToCover,
    [[1, 0, 0], 2],
    ["range columns: a number of columns that divides 3 cells [2]"],
  ],
  ["a map without columns", cellsToCover, [[1, 0, 0]], ["missing columns: a whole number [undefined]"]],
  [
    "nothing of a grow-in",
    coverOverTime,
    [{}],
    [
      "missing start: a start with plug and spacing, cover and spacing, or patches [undefined]",
      "missing from: a date such as 2026-05-04 [undefined]",
      "missing to: a date such as 2026-05-04 [undefined]",
      "missing spread: a record with low, mid, high, source [undefined]",
      "missing growth: growth with season and temperatures, or with potential and source [undefined]",
    ],
  ],
  [
    "a start as a length",
    coverOverTime,
    [{ ...base, start: mm(3) }],
    [
      "type start: a record with pattern, spacing, rowSpacing, plantsPerArea, plug, cover, patches: write { pattern: ... } [3 mm]",
    ],
  ],
  [
    "a start of nothing",
    coverOverTime,
    [{ ...base, start: grid }],
    ["missing start: one of plug, cover and patches [a record]"],
  ],
  [
    "a start told twice",
    coverOverTime,
    [{ ...base, start: { ...start, cover: percent(5) } }],
    ["conflict start: one of plug, cover and patches [a record]"],
  ],
  [
    "a start with all of it covered",
    coverOverTime,
    [{ ...base, start: { ...grid, cover: percent(100) } }],
    ["range start.cover: more than 0 % and less than 100 % [100 %]"],
  ],
  [
    "a start with nothing covered",
    coverOverTime,
    [{ ...base, start: { ...grid, cover: percent(0) } }],
    ["range start.cover: more than 0 % and less than 100 % [0 %]"],
  ],
  [
    "a plug of no size",
    coverOverTime,
    [{ ...base, start: { ...grid, plug: {} } }],
    ["missing start.plug: side for a square plug, or diameter for a round one [a record]"],
  ],
  [
    "a grid without a spacing",
    coverOverTime,
    [{ ...base, start: { pattern: "square", plug } }],
    ["missing start.spacing: a length, such as 10 ft or 3 m [undefined]"],
  ],
  [
    "a grid by plants per area",
    coverOverTime,
    [{ ...base, start: { ...start, plantsPerArea: quantity(9, "count/m2") } }],
    [
      'conflict start.plantsPerArea: spacing for an even pattern (spacingFor gives it), or pattern "random" [9 count/m2]',
    ],
  ],
  [
    "plants at random places with a spacing",
    coverOverTime,
    [{ ...base, start: { pattern: "random", spacing: mm(300), plug } }],
    ["conflict start.spacing: plantsPerArea for a random pattern [300 mm]"],
  ],
  [
    "plants at random places without a number",
    coverOverTime,
    [{ ...base, start: { pattern: "random", plug } }],
    ["missing start.plantsPerArea: a count over an area, such as 12 count/ft2 or 130 count/m2 [undefined]"],
  ],
  [
    "a map beside a grid",
    coverOverTime,
    [{ ...base, start: { ...grid, patches } }],
    [
      'type start.pattern: one of the fields patches [a field "pattern"]',
      'type start.spacing: one of the fields patches [a field "spacing"]',
    ],
  ],
  [
    "a map of nothing",
    coverOverTime,
    [{ ...base, start: { patches: {} } }],
    [
      "missing start.patches.covered: one figure a cell, 1 or 0 [undefined]",
      "missing start.patches.columns: a whole number [undefined]",
      "missing start.patches.cell: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a map that is null",
    coverOverTime,
    [{ ...base, start: { patches: null } }],
    ["type start.patches: a record with covered, columns, cell [null]"],
  ],
  [
    "a bare map",
    coverOverTime,
    [{ ...base, start: { patches: { ...patches, covered: [0, 0, 0, 0] } } }],
    ["range start.patches.covered: cells that are covered, 1 or more [no cell that is covered]"],
  ],
  [
    "a map whose columns do not divide it",
    coverOverTime,
    [{ ...base, start: { patches: { ...patches, columns: 3 } } }],
    ["range start.patches.columns: a number of columns that divides 4 cells [3]"],
  ],
  [
    "a map of other figures in a start",
    coverOverTime,
    [{ ...base, start: { patches: { ...patches, covered: [1, 2] } } }],
    ["range start.patches.covered[1]: a whole number, 0 to 1: 1 for covered, 0 for bare [2]"],
  ],
  [
    "a map without cells in a start",
    coverOverTime,
    [{ ...base, start: { patches: { ...patches, covered: [] } } }],
    ["range start.patches.covered: 1 to 4000000 cells [0 cells]"],
  ],
  [
    "dates that are none",
    coverOverTime,
    [{ ...base, from: "May 1", to: 7 }],
    ['date from: a date such as 2026-05-04 ["May 1"]', "type to: a date such as 2026-05-04 [7]"],
  ],
  [
    "no dates",
    coverOverTime,
    [{ ...base, from: undefined, to: undefined }],
    [
      "missing from: a date such as 2026-05-04 [undefined]",
      "missing to: a date such as 2026-05-04 [undefined]",
    ],
  ],
  [
    "a day that is not in the calendar",
    coverOverTime,
    [{ ...base, to: "2026-02-30" }],
    ['date to: a date such as 2026-05-04 ["2026-02-30"]'],
  ],
  [
    "an end on the first day",
    coverOverTime,
    [{ ...base, to: "2026-05-01" }],
    ['date to: a date after 2026-05-01 ["2026-05-01"]'],
  ],
  [
    "more days than are followed",
    coverOverTime,
    [{ ...base, to: "2029-05-06" }],
    ['range to: 2029-05-05 or earlier, 1100 days after 2026-05-01 ["2029-05-06"]'],
  ],
  [
    "no rate of spread",
    coverOverTime,
    [{ ...base, spread: {} }],
    [
      "missing spread.low: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing spread.mid: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing spread.high: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing spread.source: who states it, in up to 400 letters [undefined]",
    ],
  ],
  [
    "rates that are none",
    coverOverTime,
    [{ ...base, spread: { low: day(-1), mid: day(0), high: day(0), source: " " } }],
    [
      "range spread.low: zero or more [-1 mm/d]",
      "range spread.mid: more than zero [0 mm/d]",
      "range spread.high: more than zero [0 mm/d]",
      'missing spread.source: who states it, in up to 400 letters [" "]',
    ],
  ],
  [
    "a low rate above the mid one",
    coverOverTime,
    [{ ...base, spread: { ...spread, low: day(2.5) } }],
    ["conflict spread.low: no more than mid [2.5 mm/d]"],
  ],
  [
    "a high rate below the mid one",
    coverOverTime,
    [{ ...base, spread: { ...spread, high: day(1.5) } }],
    ["conflict spread.high: no less than mid [1.5 mm/d]"],
  ],
  [
    "a rate with a field that is not known",
    coverOverTime,
    [{ ...base, spread: { ...spread, medium: day(2) } }],
    ['type spread.medium: one of the fields low, mid, high, source [a field "medium"]'],
  ],
  [
    "a factor of less than nothing",
    coverOverTime,
    [{ ...base, factors: { shade: { share: percent(-1), source } } }],
    ["range factors.shade.share: 0 % or more [-1 %]"],
  ],
  [
    "a factor of nobody",
    coverOverTime,
    [{ ...base, factors: { water: { share: percent(50) } } }],
    ["missing factors.water.source: who states it, in up to 400 letters [undefined]"],
  ],
  [
    "a factor that is not known",
    coverOverTime,
    [{ ...base, factors: { light: { share: percent(50), source } } }],
    ['type factors.light: one of the fields nitrogen, water, shade, regulator [a field "light"]'],
  ],
  [
    "a factor as a share",
    coverOverTime,
    [{ ...base, factors: { nitrogen: percent(50) } }],
    ["type factors.nitrogen: a record with share, source: write { share: ... } [50 %]"],
  ],
  [
    "rooting for part of a day",
    coverOverTime,
    [{ ...base, rooting: quantity(1.5, "d") }],
    ["range rooting: a whole number of days, 0 to 365 [1.5 d]"],
  ],
  [
    "rooting for more than a year",
    coverOverTime,
    [{ ...base, rooting: quantity(366, "d") }],
    ["range rooting: a whole number of days, 0 to 365 [366 d]"],
  ],
  [
    "rooting for less than no time",
    coverOverTime,
    [{ ...base, rooting: quantity(-1, "d") }],
    ["range rooting: zero or more [-1 d]"],
  ],
  [
    "targets that are none",
    coverOverTime,
    [{ ...base, targets: [percent(0), percent(101), 50] }],
    [
      "range targets[0]: more than 0 % and at most 100 % [0 %]",
      "range targets[1]: more than 0 % and at most 100 % [101 %]",
      'type targets[2]: a share, such as 40 % or 0.4, made by quantity(40, "%") or quantity(0.4, "1") [50]',
    ],
  ],
  [
    "no targets in the list",
    coverOverTime,
    [{ ...base, targets: [] }],
    ["missing targets: at least one cover [an empty list]"],
  ],
  [
    "very many targets",
    coverOverTime,
    [{ ...base, targets: Array.from({ length: 51 }, () => percent(50)) }],
    ["range targets: at most 50 items [a list of 51]"],
  ],
  [
    "no growth",
    coverOverTime,
    [{ ...base, growth: undefined }],
    ["missing growth: growth with season and temperatures, or with potential and source [undefined]"],
  ],
  [
    "a potential of nobody",
    coverOverTime,
    [{ ...base, growth: { potential: percent(101) } }],
    [
      "range growth.potential: 0 to 100 % [101 %]",
      "missing growth.source: who states it, in up to 400 letters [undefined]",
    ],
  ],
  [
    "a potential and a season",
    coverOverTime,
    [{ ...base, growth: { ...growth, season } }],
    ['type growth.season: one of the fields potential, source [a field "season"]'],
  ],
  [
    "growth without a season",
    coverOverTime,
    [{ ...base, growth: { observed } }],
    ['missing growth.season: one of "cool-season", "warm-season" [undefined]'],
  ],
  [
    "growth by other words",
    coverOverTime,
    [{ ...base, growth: { season: "warm", gaps: "skip", constants: "K", aboveOptimum: "rising" } }],
    [
      'type growth.season: one of "cool-season", "warm-season" ["warm"] warm-season?',
      'type growth.gaps: one of "refuse", "next source" ["skip"]',
      'type growth.constants: one of "°C", "°F" ["K"]',
      'type growth.aboveOptimum: one of "held", "falling" ["rising"]',
    ],
  ],
  [
    "temperatures that were not read",
    coverOverTime,
    [{ ...base, growth: { season, observed: [1], forecast: {}, normals: [2] } }],
    [
      "type growth.observed: daily temperatures, as dailyTemperatures makes them [a list of 1]",
      "type growth.forecast: daily temperatures, as dailyTemperatures makes them [a record]",
      "type growth.normals: daily normals, as dailyNormals makes them [a list of 1]",
    ],
  ],
  [
    "temperatures of the soil",
    coverOverTime,
    [{ ...base, growth: { season, observed: soilSeries, normals: soilNormals } }],
    [
      'conflict growth.observed.sensor: air: growth potential is a model of air temperature ["soil at 5 cm"]',
      'conflict growth.normals.sensor: air: growth potential is a model of air temperature ["soil at 5 cm"]',
    ],
  ],
  [
    "a gap in what was observed",
    coverOverTime,
    [{ ...base, growth: { season, observed } }],
    [
      'missing growth: observed, forecast or normals for every day; gaps: "next source" skips a gap in the observed ones [no temperatures on 3 days, the first on 2026-05-03]',
    ],
  ],
  [
    "nothing for a spacing",
    spacingForCover,
    [{}],
    [
      "missing plug: a plug with side or diameter [undefined]",
      'missing pattern: one of "square", "triangular" [undefined]',
      "missing from: a date such as 2026-05-04 [undefined]",
      "missing by: a date such as 2026-05-04 [undefined]",
      "missing cover: a share, such as 85 % [undefined]",
      "missing spread: a record with low, mid, high, source [undefined]",
      "missing growth: growth with season and temperatures, or with potential and source [undefined]",
    ],
  ],
  [
    "a spacing by wrong words",
    spacingForCover,
    [
      {
        ...turned,
        plug: {},
        pattern: "rectangular",
        cover: percent(0),
        by: "2026-05-01",
        rooting: quantity(0.5, "d"),
      },
    ],
    [
      "missing plug: side for a square plug, or diameter for a round one [a record]",
      'type pattern: one of "square", "triangular" ["rectangular"]',
      'date by: a date after 2026-05-01 ["2026-05-01"]',
      "range cover: more than 0 % and at most 100 % [0 %]",
      "range rooting: a whole number of days, 0 to 365 [0.5 d]",
    ],
  ],
  [
    "a spacing by dates that are none",
    spacingForCover,
    [{ ...turned, from: 1, by: "soon", cover: percent(101) }],
    [
      "type from: a date such as 2026-05-04 [1]",
      'date by: a date such as 2026-05-04 ["soon"]',
      "range cover: more than 0 % and at most 100 % [101 %]",
    ],
  ],
  [
    "nothing for a date",
    plantingDateForCover,
    [{}],
    [
      "missing start: a start with plug and spacing, cover and spacing, or patches [undefined]",
      "missing earliest: a date such as 2026-05-04 [undefined]",
      "missing by: a date such as 2026-05-04 [undefined]",
      "missing cover: a share, such as 85 % [undefined]",
      "missing spread: a record with low, mid, high, source [undefined]",
      "missing growth: growth with season and temperatures, or with potential and source [undefined]",
    ],
  ],
  [
    "a date by wrong words",
    plantingDateForCover,
    [{ ...planting, start: {}, by: "2026-05-01", cover: percent(0), rooting: quantity(0.5, "d") }],
    [
      "missing start: one of plug, cover and patches [a record]",
      'date by: a date after 2026-05-01 ["2026-05-01"]',
      "range cover: more than 0 % and at most 100 % [0 %]",
      "range rooting: a whole number of days, 0 to 365 [0.5 d]",
    ],
  ],
  [
    "dates that are none for a date",
    plantingDateForCover,
    [{ ...planting, earliest: 1, by: "soon", cover: percent(101) }],
    [
      "type earliest: a date such as 2026-05-04 [1]",
      'date by: a date such as 2026-05-04 ["soon"]',
      "range cover: more than 0 % and at most 100 % [101 %]",
    ],
  ],
  [
    "all covered by plants at random places",
    plantingDateForCover,
    [
      {
        ...planting,
        start: { pattern: "random", plantsPerArea: quantity(9, "count/m2"), plug },
        cover: percent(100),
      },
    ],
    ["infeasible cover: less than 100 %: plants at random places never reach it [100 %]"],
  ],
  [
    "nothing for a rate",
    spreadRateFromCover,
    [{}],
    [
      'missing pattern: one of "square", "triangular", "rectangular" [undefined]',
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
      "missing before: a share, such as 85 % [undefined]",
      "missing after: a share, such as 85 % [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
    ],
  ],
  [
    "all covered, so that no rate can be told",
    spreadRateFromCover,
    [{ ...grid, before: percent(0), after: percent(100), time: quantity(0, "d"), potential: percent(0) }],
    [
      "range before: more than 0 % and less than 100 % [0 %]",
      "range after: more than 0 % and less than 100 % [100 %]",
      "range time: more than zero [0 d]",
      "range potential: more than 0 % and at most 100 % [0 %]",
    ],
  ],
  [
    "less cover than before",
    spreadRateFromCover,
    [{ ...grid, before: percent(20), after: percent(10), time: quantity(9, "d") }],
    ["conflict after: no less than before [10 %]"],
  ],
  [
    "nothing for a rate of one patch",
    spreadRateFromPatch,
    [{}],
    [
      "missing before: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing after: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
    ],
  ],
  [
    "patches of no area",
    spreadRateFromPatch,
    [
      {
        before: quantity(0, "m2"),
        after: quantity(0, "m2"),
        time: quantity(0, "d"),
        potential: percent(101),
      },
    ],
    [
      "range before: more than zero [0 m2]",
      "range after: more than zero [0 m2]",
      "range time: more than zero [0 d]",
      "range potential: more than 0 % and at most 100 % [101 %]",
    ],
  ],
  [
    "a patch that shrank",
    spreadRateFromPatch,
    [{ before: quantity(2, "ft2"), after: quantity(1, "ft2"), time: quantity(9, "d") }],
    ["conflict after: no less than before [1 ft2]"],
  ],
];

refusalsOf("what is refused of cover", rows);
