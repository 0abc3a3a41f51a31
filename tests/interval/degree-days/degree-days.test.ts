import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  accumulateDegreeDaysC,
  degreeDayAmount,
  degreeDayModel,
  degreeDays,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaint } from "../../errors.js";

const base50 = degreeDayModel({ method: "simple average", base: { value: 50, unit: "°F" }, sensor: "air" });
const base10 = degreeDayModel({ method: "simple average", base: { value: 10, unit: "°C" }, sensor: "air" });
const temperature = fc.integer({ min: -400, max: 450 }).map((tenths) => tenths / 10);

describe("degreeDays", () => {
  test("floors the mean, not the temperatures: the day of the published pair 75/27 counts 1, not 12.5", () => {
    const day = { max: quantity(75, "°F"), min: quantity(27, "°F"), model: base50 };
    expect(degreeDays(day).in("°F d")).toBe(1);
  });

  test("is the same on either scale, without an offset", () => {
    fc.assert(
      fc.property(temperature, temperature, (a, b) => {
        const [high, low] = [Math.max(a, b), Math.min(a, b)];
        const c = degreeDays({ max: quantity(high, "°C"), min: quantity(low, "°C"), model: base10 });
        const f = degreeDays({
          max: quantity(high * 1.8 + 32, "°F"),
          min: quantity(low * 1.8 + 32, "°F"),
          model: base50,
        });
        expect(c.unit).toBe("°C d");
        expect(f.unit).toBe("°F d");
        expect(f.in("°C d")).toBeCloseTo(c.value, 10);
      }),
    );
  });

  test("takes mixed scales and kelvin", () => {
    expect(
      degreeDays({ max: quantity(293.15, "K"), min: quantity(50, "°F"), model: base10 }).in("°C d"),
    ).toBeCloseTo(5, 10);
  });

  test("refuses a minimum above the maximum, and what is no temperature", () => {
    const [warm, cold] = [quantity(20, "°C"), quantity(10, "°C")];
    expect(complaint(() => degreeDays({ max: cold, min: warm, model: base10 }))).toBe("conflict min");
    expect(
      complaint(() => degreeDays({ max: quantity(5, "°C diff") as never, min: cold, model: base10 })),
    ).toBe("unit/mismatch max");
    expect(complaint(() => degreeDays({ max: warm, min: 10 as never, model: base10 }))).toBe("type min");
  });

  test("another model does not add", () => {
    const base0 = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
    const day = { max: quantity(20, "°C"), min: quantity(10, "°C") };
    const sum = degreeDays({ ...day, model: base10 });
    expect(complaint(() => sum.plus(degreeDays({ ...day, model: base0 }) as never))).toBe(
      "substance/mismatch other",
    );
    expect(sum.plus(degreeDays({ ...day, model: base50 })).in("°C d")).toBe(10);
  });
});

describe("degreeDayAmount", () => {
  test("converts without an offset", () => {
    const model = base50;
    expect(degreeDayAmount({ value: 1080, unit: "°F d", model }).in("°C d")).toBe(600);
    expect(degreeDayAmount({ value: 200, unit: "°C d", model }).in("°F d")).toBe(360);
  });
  test("refuses a negative amount and another unit", () => {
    expect(complaint(() => degreeDayAmount({ value: -1, unit: "°C d", model: base50 }))).toBe("range value");
    expect(complaint(() => degreeDayAmount({ value: 1, unit: "°C" as never, model: base50 }))).toBe(
      "unit/unknown unit",
    );
  });
});

describe("accumulateDegreeDaysC", () => {
  test("is the running sum of the days", () => {
    const days = fc.array(fc.tuple(temperature, temperature), { maxLength: 60 });
    fc.assert(
      fc.property(days, temperature, (pairs, baseC) => {
        const maxC = Float64Array.from(pairs, ([a, b]) => Math.max(a, b));
        const minC = Float64Array.from(pairs, ([a, b]) => Math.min(a, b));
        const totals = accumulateDegreeDaysC(maxC, minC, baseC);
        // In exact twentieths of a degree.
        let twentieths = 0;
        pairs.forEach(([a, b], i) => {
          twentieths += Math.max(0, Math.round(a * 10) + Math.round(b * 10) - 2 * Math.round(baseC * 10));
          expect(totals[i]).toBeCloseTo(twentieths / 20, 9);
        });
      }),
    );
  });

  test("writes where it is told, also over an input", () => {
    const maxC = Float64Array.of(20, 30);
    expect(accumulateDegreeDaysC(maxC, Float64Array.of(10, 10), 10, maxC)).toBe(maxC);
    expect(Array.from(maxC)).toEqual([5, 15]);
  });

  test.each([
    [Float64Array.of(1, Number.NaN), Float64Array.of(0, 0), "not-finite maxC[1]"],
    [Float64Array.of(1, 1), Float64Array.of(Number.NaN, 0), "not-finite minC[0]"],
    [Float64Array.of(Number.POSITIVE_INFINITY), Float64Array.of(0), "not-finite maxC[0]"],
    [Float64Array.of(1), Float64Array.of(Number.NEGATIVE_INFINITY), "not-finite minC[0]"],
    [Float64Array.of(1, 2, 3), Float64Array.of(0, 0, 4), "conflict minC[2]"],
    [Float64Array.of(1, 2), Float64Array.of(0), "conflict minC"],
    [Float64Array.of(1e308), Float64Array.of(-1e308), "range minC[0]"],
    [Float64Array.of(1e308), Float64Array.of(1e308), "range maxC[0]"],
    [Float64Array.of(1, 2, 100.1), Float64Array.of(1, 2, 3), "range maxC[2]"],
    [Float64Array.of(1, 2, 3), Float64Array.of(1, -273.2, 3), "range minC[1]"],
    [[1] as never, Float64Array.of(0), "type maxC"],
  ])("%j with %j: %s", (maxC, minC, expected) => {
    expect(complaint(() => accumulateDegreeDaysC(maxC, minC, 0))).toBe(expected);
  });

  test("refuses a base that is none and an output that does not fit", () => {
    const day = Float64Array.of(1);
    expect(complaint(() => accumulateDegreeDaysC(day, day, Number.NaN))).toBe("not-finite baseC");
    expect(complaint(() => accumulateDegreeDaysC(day, day, 0, new Float64Array(2)))).toBe(
      "conflict outCDays",
    );
  });
});
