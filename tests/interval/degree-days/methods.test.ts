import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, dailyTemperatures } from "../../../src/calendar/index.js";
import {
  accumulatedDegreeDays,
  type DegreeDayMethod,
  type DegreeDayModelInput,
  dateReached,
  degreeDayAmount,
  degreeDayModel,
  degreeDays,
  runningDegreeDaysC,
  type UpperCutoff,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";

const methods: readonly DegreeDayMethod[] = [
  "simple average",
  "substitution",
  "clamped average",
  "single sine",
  "double sine",
  "single triangle",
  "double triangle",
  "met office cases",
];
const cutoffs: readonly UpperCutoff[] = ["horizontal", "intermediate", "intermediate floored", "vertical"];
const withCutoff = methods.filter((method) => / (sine|triangle)$/.test(method));
const base = 10;
const upper = 30;

/** Every model with base 10 °C in the air that can be made, with 30 °C as upper threshold where there is one. */
const inputs: readonly DegreeDayModelInput[] = methods.flatMap((method): DegreeDayModelInput[] => {
  const plain = { method, base: { value: base, unit: "°C" }, sensor: "air" } as const;
  const limited = { ...plain, upper: { value: upper, unit: "°C" } } as const;
  if (method === "clamped average") return [limited];
  if (method === "simple average") return [plain, { ...limited, cutoff: "horizontal" }];
  return withCutoff.includes(method)
    ? [plain, ...cutoffs.map((cutoff) => ({ ...limited, cutoff }))]
    : [plain];
});

const heat = (input: DegreeDayModelInput, max: number, min: number, nextMin = min): number =>
  degreeDays({
    max: quantity(max, "°C"),
    min: quantity(min, "°C"),
    nextMin: quantity(nextMin, "°C"),
    model: degreeDayModel(input),
  }).in("°C d");
const of = (method: DegreeDayMethod, cutoff?: UpperCutoff): DegreeDayModelInput => ({
  method,
  base: { value: base, unit: "°C" },
  ...(method === "clamped average" || cutoff !== undefined
    ? { upper: { value: upper, unit: "°C" } as const }
    : {}),
  ...(cutoff === undefined ? {} : { cutoff }),
  sensor: "air",
});

const day = fc
  .tuple(fc.double({ min: -20, max: 45, noNaN: true }), fc.double({ min: 0, max: 30, noNaN: true }))
  .map(([min, range]) => ({ min, max: min + range }));

/** What a curve counts, by adding up many small parts of the day: shares nothing with the closed forms. */
const integrated = (
  shape: "sine" | "triangle",
  max: number,
  min: number,
  cutoff: UpperCutoff | undefined,
): number => {
  const steps = 20_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const x = (i + 0.5) / steps;
    // Half a wave from the lowest to the highest temperature; the way down is its mirror image.
    const t =
      shape === "sine" ? (max + min) / 2 - ((max - min) / 2) * Math.cos(Math.PI * x) : min + (max - min) * x;
    if (t <= base) continue;
    if (cutoff === undefined || t <= upper) sum += t - base;
    else if (cutoff === "horizontal") sum += upper - base;
    else if (cutoff !== "vertical") sum += upper - base - (t - upper);
  }
  const total = sum / steps;
  return cutoff === "intermediate floored" ? Math.max(0, total) : total;
};

describe("sine and triangle", () => {
  test.each(
    (["sine", "triangle"] as const).flatMap((shape) =>
      [undefined, ...cutoffs].map((cutoff) => [shape, cutoff] as const),
    ),
  )("%s, cutoff %s: the closed form is the area under the curve", (shape, cutoff) => {
    fc.assert(
      fc.property(day, ({ max, min }) => {
        // A step that straddles a threshold is off by at most its height.
        expect(
          Math.abs(heat(of(`single ${shape}`, cutoff), max, min) - integrated(shape, max, min, cutoff)),
        ).toBeLessThan(0.004);
      }),
      runs(25),
    );
  });

  test.each(["sine", "triangle"] as const)("double %s is the mean of its two halves", (shape) => {
    fc.assert(
      fc.property(day, fc.double({ min: -20, max: 60, noNaN: true }), ({ max, min }, next) => {
        const single = of(`single ${shape}`, "vertical");
        const second = heat(single, Math.max(max, next), Math.min(max, next));
        expect(heat(of(`double ${shape}`, "vertical"), max, min, next)).toBeCloseTo(
          (heat(single, max, min) + second) / 2,
          10,
        );
      }),
    );
  });

  test("the worked table of eight days above 50 °F up to 88 °F, to its three decimals", () => {
    // Computed by integration, apart from this library, for the four cutoffs.
    const rows = [
      [60, 35, [2.809, 2.809, 2.809, 2.809], [2, 2, 2, 2]],
      [75, 27, [8.146, 8.146, 8.146, 8.146], [6.51, 6.51, 6.51, 6.51]],
      [70, 55, [12.5, 12.5, 12.5, 12.5], [12.5, 12.5, 12.5, 12.5]],
      [95, 45, [20.678, 19.55, 18.422, 10.273], [20.25, 19.76, 19.27, 14.44]],
      [100, 60, [30, 27.117, 24.235, 13.095], [30, 28.2, 26.4, 16.8]],
      [105, 92, [48.5, 38, 27.5, 0], [48.5, 38, 27.5, 0]],
      [45, 30, [0, 0, 0, 0], [0, 0, 0, 0]],
    ] as const;
    for (const [max, min, sine, triangle] of rows) {
      for (const [method, row] of [
        ["single sine", sine],
        ["single triangle", triangle],
      ] as const) {
        [undefined, "horizontal" as const, "intermediate" as const, "vertical" as const].forEach(
          (cutoff, i) => {
            const model = degreeDayModel({
              method,
              base: { value: 50, unit: "°F" },
              ...(cutoff === undefined ? {} : { upper: { value: 88, unit: "°F" } as const, cutoff }),
              sensor: "air",
            });
            const d = degreeDays({ max: quantity(max, "°F"), min: quantity(min, "°F"), model });
            expect(Math.abs(d.in("°F d") - (row[i] as number))).toBeLessThan(0.002);
          },
        );
      }
    }
  });

  test("a code for no figure is refused, also by the floor of the simple average", () => {
    const of999 = (max: number, min: number, nextMin = 5) =>
      complaints(() => heat(of("double triangle"), max, min, nextMin));
    expect(of999(20, -999)).toEqual(["range min"]);
    expect(of999(999.9, 5)).toEqual(["range max"]);
    expect(of999(20, 5, -999)).toEqual(["range nextMin"]);
    expect(complaints(() => heat(of("simple average"), 20, -999))).toEqual(["range min"]);
  });

  test("far above the threshold the intermediate cutoff goes below 0, and the floored one does not", () => {
    expect(heat(of("single sine", "intermediate"), 70, 60)).toBe(-15);
    expect(heat(of("single sine", "intermediate floored"), 70, 60)).toBe(0);
    // A double method floors each half: the one of 60 up to 70 counts 0 and not 20 - 35, the one of 70 down
    // to 20 counts 35 - 2 * 40² / 100 = 3.
    expect(heat(of("double triangle", "intermediate floored"), 70, 60, 20)).toBeCloseTo(1.5, 12);
    expect(heat(of("double triangle", "intermediate"), 70, 60, 20)).toBeCloseTo(-6, 12);
  });
});

describe("the order of the methods", () => {
  test("without an upper threshold: simple average <= triangle <= sine <= substitution", () => {
    fc.assert(
      fc.property(day, ({ max, min }) => {
        const row = (["simple average", "single triangle", "single sine", "substitution"] as const).map(
          (method) => heat(of(method), max, min),
        );
        row.slice(1).forEach((value, i) => {
          expect(value).toBeGreaterThanOrEqual((row[i] as number) - 1e-12);
        });
      }),
      runs(500),
    );
  });

  test("an upper threshold breaks it", () => {
    const [a, b] = [
      heat(of("single sine", "horizontal"), 34, 14),
      heat(of("single triangle", "horizontal"), 34, 14),
    ];
    expect(a).toBeLessThan(b);
  });

  test("all agree on a day that lies between the thresholds", () => {
    for (const input of inputs) expect(heat(input, 25, 15)).toBeCloseTo(10, 12);
  });

  test("substitution and simple average differ only where the base lies between the extremes", () => {
    fc.assert(
      fc.property(day, ({ max, min }) => {
        const more = heat(of("substitution"), max, min) - heat(of("simple average"), max, min);
        expect(more).toBeGreaterThanOrEqual(0);
        if (min >= base || max <= base) expect(more).toBe(0);
        else expect(more).toBeGreaterThan(0);
      }),
    );
  });

  test("the clamped average lies between 0 and the distance of its thresholds", () => {
    fc.assert(
      fc.property(day, ({ max, min }) => {
        const d = heat(of("clamped average"), max, min);
        expect(d).toBeGreaterThanOrEqual(0);
        expect(d).toBeLessThanOrEqual(upper - base);
      }),
    );
  });

  test("Met Office cases: each by hand, and where the mean is near the base", () => {
    for (const [max, min, by] of [
      [20, 12, 16 - 10],
      [9, 2, 0],
      // III, the mean at or above the base: half of what is above less a quarter of what is below.
      [22, 0, 12 / 2 - 10 / 4],
      [20, 2, 10 / 2 - 8 / 4],
      // IV, the mean below the base: a quarter of what is above.
      [20, -2, 10 / 4],
      [20, 0, 10 / 4],
      [11, -20, 1 / 4],
    ] as const) {
      expect(heat(of("met office cases"), max, min), `${max} and ${min}`).toBe(by);
    }
  });

  test("Met Office cases: what lies above less what lies below is the mean less the base", () => {
    // Below the base is above it with the signs turned.
    fc.assert(
      fc.property(day, ({ max, min }) => {
        const turned = degreeDays({
          max: quantity(-min, "°C"),
          min: quantity(-max, "°C"),
          model: degreeDayModel({
            method: "met office cases",
            base: { value: -base, unit: "°C" },
            sensor: "air",
          }),
        }).in("°C d");
        expect(heat(of("met office cases"), max, min) - turned).toBeCloseTo((max + min) / 2 - base, 9);
      }),
    );
  });

  test("more heat never counts less, except above a threshold at which development slows", () => {
    const slowing = ["intermediate", "intermediate floored", "vertical"];
    for (const input of inputs.filter(({ cutoff }) => !slowing.includes(cutoff ?? ""))) {
      fc.assert(
        fc.property(day, fc.double({ min: 0, max: 10, noNaN: true }), ({ max, min }, more) => {
          expect(heat(input, max + more, min + more)).toBeGreaterThanOrEqual(heat(input, max, min) - 1e-9);
        }),
        runs(40),
      );
    }
  });

  test("°F in, °F d out: the same day", () => {
    for (const input of inputs) {
      fc.assert(
        fc.property(day, day, ({ max, min }, other) => {
          const f = (t: number) => quantity((t * 9) / 5 + 32, "°F");
          const d = degreeDays({
            max: f(max),
            min: f(min),
            nextMin: f(other.min),
            model: degreeDayModel(input),
          });
          expect(d.unit).toBe("°F d");
          // The share of a day above a level near its highest temperature loses half of the digits.
          expect(d.in("°C d")).toBeCloseTo(heat(input, max, min, other.min), 6);
        }),
        runs(20),
      );
    }
  });
});

describe("the kernel", () => {
  const weather = fc.array(day, { minLength: 1, maxLength: 40 });
  test.each(inputs.map((input) => [degreeDayModel(input).id, input] as const))(
    "%s: is the sum of the days, and parts add up to the whole",
    (_id, input) => {
      fc.assert(
        fc.property(weather, fc.nat(), (days, at) => {
          const kernel = (part: typeof days, nextMinC: number): number => {
            const totals = runningDegreeDaysC({
              method: input.method,
              maxC: Float64Array.from(part, ({ max }) => max),
              minC: Float64Array.from(part, ({ min }) => min),
              baseC: base,
              nextMinC,
              ...(input.upper === undefined ? {} : { upperC: upper }),
              ...(input.cutoff === undefined ? {} : { cutoff: input.cutoff }),
            });
            return totals[totals.length - 1] ?? 0;
          };
          const whole = kernel(days, 12);
          const byDay = days.reduce(
            (sum, { max, min }, i) => sum + heat(input, max, min, days[i + 1]?.min ?? 12),
            0,
          );
          expect(whole).toBeCloseTo(byDay, 8);
          const cut = at % days.length;
          expect(kernel(days.slice(0, cut), days[cut]?.min ?? 0) + kernel(days.slice(cut), 12)).toBeCloseTo(
            whole,
            8,
          );
        }),
        runs(30),
      );
    },
  );

  const one = Float64Array.of(20);
  const low = Float64Array.of(10);
  const run = (more: object) =>
    complaints(() => runningDegreeDaysC({ method: "single sine", maxC: one, minC: low, baseC: 5, ...more }));
  test("refuses what does not go together", () => {
    expect(run({ method: "guess" })).toEqual(["type method"]);
    expect(run({ method: "clamped average" })).toEqual(["missing upperC"]);
    expect(run({ upperC: 30 })).toEqual(["missing cutoff"]);
    expect(run({ cutoff: "vertical" })).toEqual(["missing upperC"]);
    expect(run({ upperC: 5, cutoff: "vertical" })).toEqual(["range upperC"]);
    expect(run({ upperC: Number.NaN, cutoff: "vertical" })).toEqual(["not-finite upperC"]);
    expect(run({ method: "double sine" })).toEqual(["missing nextMinC"]);
    expect(run({ method: "double sine", nextMinC: Number.NaN })).toEqual(["not-finite nextMinC"]);
    expect(run({ maxC: undefined })).toEqual(["missing maxC"]);
    expect(run({ minC: undefined })).toEqual(["missing minC"]);
    // Codes of weather stations for "no figure", and °F in a list of °C.
    const codes = { maxC: Float64Array.of(20, 20), minC: Float64Array.of(10, -9999) };
    const fahrenheit = { maxC: Float64Array.of(20, 105), minC: Float64Array.of(10, 60) };
    const infinite = { maxC: Float64Array.of(20, Number.POSITIVE_INFINITY), minC: Float64Array.of(1, 2) };
    expect(run({ method: "double sine", nextMinC: -9999 })).toEqual(["range nextMinC"]);
    expect(run({ baseC: -1e308 })).toEqual(["range baseC"]);
    const bad = Float64Array.of(10, Number.NaN);
    const two = Float64Array.of(20, 20);
    for (const method of methods) {
      const more = { method, nextMinC: 3, ...(method === "clamped average" ? { upperC: 30 } : {}) };
      expect(run({ ...more, maxC: two, minC: bad })).toEqual(["not-finite minC[1]"]);
      expect(run({ ...more, maxC: low, minC: one })).toEqual(["conflict minC[0]"]);
      expect(run({ ...more, ...codes })).toEqual(["range minC[1]"]);
      expect(run({ ...more, ...fahrenheit })).toEqual(["range maxC[1]"]);
      expect(run({ ...more, ...infinite })).toEqual(["not-finite maxC[1]"]);
    }
  });
});

describe("models", () => {
  test("each has an id of its own", () => {
    expect(new Set(inputs.map((input) => degreeDayModel(input).id)).size).toBe(inputs.length);
  });
  test("refuses what does not go together, all at once", () => {
    const model = (more: object) =>
      complaints(() =>
        degreeDayModel({ method: "single sine", base: { value: 50, unit: "°F" }, sensor: "air", ...more }),
      );
    const top = { value: 88, unit: "°F" } as const;
    expect(model({ upper: top })).toEqual(["missing model.cutoff"]);
    expect(model({ upper: top, cutoff: "flat" })).toEqual(["type model.cutoff"]);
    expect(model({ cutoff: "horizontal" })).toEqual(["missing model.upper"]);
    expect(model({ upper: { value: 10, unit: "°C" }, cutoff: "horizontal" })).toEqual(["range model.upper"]);
    expect(model({ method: "substitution", upper: top })).toEqual(["conflict model.upper"]);
    expect(model({ method: "met office cases", upper: top, cutoff: "horizontal" })).toEqual([
      "conflict model.upper",
    ]);
    expect(model({ method: "simple average", upper: top, cutoff: "vertical" })).toEqual([
      "conflict model.cutoff",
    ]);
    expect(model({ method: "clamped average", upper: top, cutoff: "horizontal" })).toEqual([
      "conflict model.cutoff",
    ]);
    expect(model({ method: "clamped average" })).toEqual(["missing model.upper"]);
    expect(model({ upper: { value: 300, unit: "°F" }, cutoff: "horizontal", base: 3 })).toEqual([
      "type model.base",
      "range model.upper.value",
    ]);
  });
  test("degree-days of one method are not those of another", () => {
    const sine = degreeDayModel(of("single sine"));
    const simple = degreeDayModel(of("simple average"));
    const series = dailyTemperatures({
      start: "2026-05-01",
      unit: "°C",
      sensor: "air",
      source: "station at the depot",
      min: [10, 10],
      max: [20, 20],
    });
    const threshold = degreeDayAmount({ value: 5, unit: "°C d", model: simple });
    expect(
      complaints(() =>
        dateReached({ series, model: sine, from: "2026-05-01", threshold: threshold as never }),
      ),
    ).toEqual(["substance/mismatch threshold"]);
  });
});

describe("double methods over a series", () => {
  const model = degreeDayModel(of("double sine"));
  const series = (min: (number | null)[], max: (number | null)[]) =>
    dailyTemperatures({ start: "2026-05-01", unit: "°C", sensor: "air", source: "depot", min, max });
  const sum = (
    s: ReturnType<typeof series>,
    days: number,
    missing?: "leave out" | { interpolateUpToDays: number },
  ) =>
    accumulatedDegreeDays({
      series: s,
      model,
      from: "2026-05-01",
      to: addDays("2026-05-01", days - 1),
      ...(missing === undefined ? {} : { missing }),
    });
  test("the last day needs the morning after it", () => {
    const three = series([15, 11, 13], [25, 21, 23]);
    expect(complaints(() => sum(three, 3))).toEqual(["missing series.2026-05-03"]);
    // All above the base: half-days with means 20, 18, 16 and 17 less 10.
    expect(sum(three, 2).total.in("°C d")).toBeCloseTo((10 + 8 + 6 + 7) / 2, 10);
    expect(sum(three, 3, "leave out").leftOut).toEqual(["2026-05-03"]);
  });
  test("a missing lowest temperature touches two days", () => {
    const gap = series([15, null, 13, 12], [25, 21, 23, 20]);
    expect(complaints(() => sum(gap, 3))).toEqual(["missing series.2026-05-01", "missing series.2026-05-02"]);
    expect(sum(gap, 3, { interpolateUpToDays: 1 }).filled).toEqual(["2026-05-01", "2026-05-02"]);
  });
});
