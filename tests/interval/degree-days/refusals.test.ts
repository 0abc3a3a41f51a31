import { expect, test } from "vitest";
import {
  accumulateDegreeDaysC,
  accumulatedDegreeDays,
  dateReached,
  degreeDayAmount,
  degreeDayModel,
  degreeDays,
  runningDegreeDaysC,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of degree-days, where the refusal points, and what it says would have been right.

const base = { value: 0, unit: "°C" } as const;
const usual = { method: "simple average", base, sensor: "air" } as const;
const made = () => degreeDayModel(usual);
const model = (change: object) => () => degreeDayModel({ ...usual, ...change } as never);
const upper = { value: 30, unit: "°C" } as const;
const series = {
  type: "daily-temperatures",
  version: 1,
  start: "2026-05-01",
  unit: "°C",
  sensor: "air",
  source: "depot",
  min: [15, 15, 15],
  max: [25, 25, 25],
};
const day = (change: object) => () =>
  degreeDays({ max: quantity(25, "°C"), min: quantity(15, "°C"), model: made(), ...change } as never);
const amount = (change: object) => () =>
  degreeDayAmount({ value: 1, unit: "°C d", model: made(), ...change } as never);
const sum = (change: object) => () =>
  accumulatedDegreeDays({ series, model: made(), from: "2026-05-01", to: "2026-05-03", ...change } as never);
const reach = (change: object) => () =>
  dateReached({
    series,
    model: made(),
    from: "2026-05-01",
    threshold: amount({ value: 20 })(),
    ...change,
  } as never);
const one = () => Float64Array.of(20);
const run = (change: object) => () =>
  runningDegreeDaysC({ method: "simple average", maxC: one(), minC: one(), baseC: 0, ...change } as never);
const bounds = "as air and soil have";

const rows: readonly Refused[] = [
  // A model
  [model({ method: "mean" }), "type", "model.method", "a method of counting degree-days"],
  [model({ base: undefined }), "missing", "model.base", "a temperature in °C or °F"],
  [model({ base: { value: 0, unit: "K" } }), "unit/unknown", "model.base.unit", "°C or °F"],
  [model({ base: { value: -41, unit: "°C" } }), "range", "model.base.value", "-40 or more"],
  [model({ base: { value: 51, unit: "°C" } }), "range", "model.base.value", "50 or less"],
  [model({ base: { value: 123, unit: "°F" } }), "range", "model.base.value", "122 or less"],
  [model({ base: { value: 1.00005, unit: "°C" } }), "range", "model.base.value", "at most three decimals"],
  [model({ base: { value: 1, unit: "°C", at: 1 } }), "type", "model.base.at", "unit"],
  [
    model({ sensor: "leaf" }),
    "type",
    "model.sensor",
    "air, or soil at a depth such as soil at 2.5 cm or soil at 4 in",
  ],
  [model({ start: "02-29" }), "date", "model.start", "a day that every year has"],
  [model({ start: "May" }), "date", "model.start", "a day of the year written MM-DD"],
  [model({ cutoff: "horizontal" }), "missing", "model.upper", "the threshold at which the cutoff begins"],
  [
    model({ method: "clamped average" }),
    "missing",
    "model.upper",
    "the temperature to which both extremes are lowered",
  ],
  [
    model({ method: "substitution", upper }),
    "conflict",
    "model.upper",
    "no upper threshold with substitution",
  ],
  [
    model({ method: "met office cases", upper }),
    "conflict",
    "model.upper",
    "no upper threshold with met office cases",
  ],
  [
    model({ method: "clamped average", upper, cutoff: "vertical" }),
    "conflict",
    "model.cutoff",
    "none: both extremes are held at the threshold",
  ],
  [
    model({ upper }),
    "missing",
    "model.cutoff",
    'the cutoff "horizontal", the only one with a simple average',
  ],
  [model({ upper, cutoff: "vertical" }), "conflict", "model.cutoff", 'the cutoff "horizontal"'],
  [
    model({ method: "single sine", upper }),
    "missing",
    "model.cutoff",
    "what happens above the upper threshold",
  ],
  [
    model({ method: "single sine", upper, cutoff: "flat" }),
    "type",
    "model.cutoff",
    "what happens above the upper threshold",
  ],
  [
    model({ upper: { value: 0, unit: "°C" }, cutoff: "horizontal" }),
    "range",
    "model.upper",
    "which is the base",
  ],
  [
    model({ upper: { value: 99, unit: "°C" }, cutoff: "horizontal" }),
    "range",
    "model.upper.value",
    "50 or less",
  ],
  [model({ days: 1 }), "type", "model.days", "base"],
  // A day
  [day({ max: quantity(1, "ft") }), "unit/mismatch", "max", "a temperature"],
  [day({ max: quantity(76, "°C") }), "range", "max", "75 °C"],
  [day({ min: quantity(-91, "°C") }), "range", "min", "-90"],
  [day({ min: quantity(26, "°C") }), "conflict", "min", "not more than max, which is 25 °C"],
  [day({ model: 7 }), "type", "model", "a degree-day model"],
  [day({ model: { ...made(), version: 2 } }), "type", "model.version", "1"],
  [day({ model: { ...made(), base: { value: 5, unit: "°C" } } }), "conflict", "model.id", ""],
  [
    day({ model: degreeDayModel({ ...usual, method: "double sine" }) }),
    "missing",
    "nextMin",
    "the lowest temperature of the next day, for double sine",
  ],
  [day({ mean: 1 }), "type", "input.mean", "max"],
  [amount({ value: -1 }), "range", "value", "0 or more"],
  [amount({ unit: "d" }), "unit/unknown", "unit", "°C d or °F d"],
  [amount({ model: 7 }), "type", "model", "a degree-day model"],
  // A sum
  [sum({ series: 7 }), "type", "series", "daily temperatures"],
  [sum({ series: { ...series, unit: "K" } }), "unit/unknown", "series.unit", "°C"],
  [
    sum({ series: { ...series, sensor: "soil at 4 in" } }),
    "conflict",
    "series.sensor",
    "the sensor of the model, which is air",
  ],
  [sum({ from: "May" }), "date", "from", "written YYYY-MM-DD"],
  [sum({ to: "May" }), "date", "to", "written YYYY-MM-DD"],
  [sum({ to: "2026-04-30" }), "date", "to", "a date not earlier than 2026-05-01"],
  [sum({ from: "1900-01-01" }), "range", "from", "a century, up to 2026-05-03"],
  [
    sum({ model: degreeDayModel({ ...usual, start: "03-01" }) }),
    "conflict",
    "from",
    "the day from which the model counts, which is 03-01",
  ],
  [
    sum({ to: "2026-05-04" }),
    "missing",
    "series.2026-05-04",
    "a lowest and a highest temperature, or a policy for missing days that covers it",
  ],
  [
    sum({ series: { ...series, min: [15, null, 15] } }),
    "missing",
    "series.2026-05-02",
    "a policy for missing days that covers it",
  ],
  [
    sum({
      series: { ...series, min: [5, 22, 5], max: [15, null, 15] },
      missing: { interpolateUpToDays: 1 },
    }),
    "missing",
    "series.2026-05-02",
    "on the line over the gap the highest is below the lowest",
  ],
  [sum({ missing: "skip" }), "type", "missing", '"refuse", "leave out" or { interpolateUpToDays }'],
  [sum({ missing: { interpolateUpToDays: 0 } }), "range", "missing.interpolateUpToDays", "1 or more"],
  [sum({ missing: { interpolateUpToDays: 1.5 } }), "range", "missing.interpolateUpToDays", "days"],
  [sum({ missing: { days: 1 } }), "type", "missing.days", "interpolateUpToDays"],
  [
    sum({ model: degreeDayModel({ ...usual, method: "double sine" }) }),
    "missing",
    "series.2026-05-03",
    "a highest temperature, the lowest of the next day, or a policy",
  ],
  // A date
  [reach({ threshold: quantity(1, "lb") }), "unit/mismatch", "threshold", "a sum of degree-days"],
  [reach({ threshold: amount({ value: 0 })() }), "range", "threshold", "more than zero"],
  [reach({ fromDay: "never" }), "type", "fromDay", 'the choice "counted" or "not counted"'],
  [reach({ series: 7 }), "type", "series", "daily temperatures"],
  // Arrays
  [run({ method: "mean" }), "type", "method", "a method of counting degree-days"],
  [run({ maxC: [20] }), "type", "maxC", "Float64Array"],
  [run({ minC: new Float64Array(2) }), "conflict", "minC", "as many days as maxC has, which is 1"],
  [run({ outCDays: new Float64Array(2) }), "conflict", "outCDays", "as many days as maxC has, which is 1"],
  [run({ baseC: Number.NaN }), "not-finite", "baseC", "a finite number"],
  [run({ baseC: 101 }), "range", "baseC", bounds],
  [run({ baseC: -274 }), "range", "baseC", bounds],
  [run({ upperC: Number.NaN, cutoff: "horizontal" }), "not-finite", "upperC", "a finite number"],
  [run({ upperC: 0, cutoff: "horizontal" }), "range", "upperC", "which is baseC"],
  [run({ upperC: 30 }), "missing", "cutoff", 'the cutoff "horizontal"'],
  [run({ method: "double sine" }), "missing", "nextMinC", "the lowest temperature of the day after the last"],
  [run({ method: "double sine", nextMinC: Number.NaN }), "not-finite", "nextMinC", "a finite number"],
  [run({ method: "double sine", nextMinC: 101 }), "range", "nextMinC", bounds],
  [run({ base: 0 }), "type", "input.base", "baseC"],
  ...(
    [
      "simple average",
      "substitution",
      "met office cases",
      "single sine",
      "single triangle",
      "double sine",
      "double triangle",
    ] as const
  ).flatMap((method): readonly Refused[] => [
    [
      run({ method, nextMinC: 0, minC: Float64Array.of(21) }),
      "conflict",
      "minC[0]",
      "not more than maxC[0], which is 20",
    ],
    [
      run({ method, nextMinC: 0, maxC: Float64Array.of(Number.NaN) }),
      "not-finite",
      "maxC[0]",
      "a finite number",
    ],
    [
      run({ method, nextMinC: 0, minC: Float64Array.of(Number.NaN) }),
      "not-finite",
      "minC[0]",
      "a finite number",
    ],
    [run({ method, nextMinC: 0, maxC: Float64Array.of(101) }), "range", "maxC[0]", bounds],
    [run({ method, nextMinC: 0, minC: Float64Array.of(-274) }), "range", "minC[0]", bounds],
  ]),
  [
    () => accumulateDegreeDaysC(one(), Float64Array.of(21), 0),
    "conflict",
    "minC[0]",
    "not more than maxC[0]",
  ],
];

describeRefused("what is refused of degree-days", rows);

test("the ends of each range are read", () => {
  for (const call of [
    model({ base: { value: -40, unit: "°C" } }),
    model({ base: { value: 50, unit: "°C" } }),
    model({ base: { value: 122, unit: "°F" } }),
    model({ base: { value: 1.005, unit: "°C" } }),
    model({ start: "02-28" }),
    model({ method: "clamped average", upper }),
    day({ min: quantity(25, "°C") }),
    amount({ value: 0 }),
    sum({ to: "2026-05-01" }),
    sum({ missing: { interpolateUpToDays: 1 } }),
    run({ maxC: Float64Array.of(75), minC: Float64Array.of(-90) }),
    run({ baseC: 75 }),
    run({ baseC: -90 }),
    run({ method: "double sine", nextMinC: 75 }),
  ])
    expect(problemsOf(call)).toEqual([]);
});

test("an unknown method and cutoff are told with those that are known", () => {
  expect(problemsOf(model({ method: "mean" }))[0]?.choices).toHaveLength(8);
  expect(problemsOf(model({ method: "single sine", upper }))[0]?.choices).toEqual([
    "horizontal",
    "intermediate",
    "intermediate floored",
    "vertical",
  ]);
  expect(problemsOf(model({ method: "substitution", upper }))[0]?.suggestion).toBe(
    "the method clamped average",
  );
  expect(problemsOf(model({ method: "met office cases", upper }))[0]).not.toHaveProperty("suggestion");
});

test("a sum is reached on the day at whose end it is just there, with or without the first day", () => {
  // 20 a day from 1 May on.
  const at = (value: number, fromDay: "counted" | "not counted" = "counted") => {
    const found = reach({ threshold: amount({ value })(), fromDay })();
    return found.reached ? [found.date, found.days] : [found.countedTo, found.remaining.in("°C d")];
  };
  expect(at(20)).toEqual(["2026-05-01", 0]);
  expect(at(40)).toEqual(["2026-05-02", 1]);
  expect(at(40.1)).toEqual(["2026-05-03", 2]);
  expect(at(20, "not counted")).toEqual(["2026-05-02", 1]);
  expect(at(70)).toEqual(["2026-05-03", 10]);
});
