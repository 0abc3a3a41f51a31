import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dewPoint,
  heatIndex,
  heatTables,
  humidityFromDewPoint,
  inversionReading,
  leafWetness,
  quantity,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const c = (value: number) => quantity(value, "°C");
const f = (value: number) => quantity(value, "°F");
const percent = (value: number) => quantity(value, "%");
const air = fc.record({
  temperature: fc.double({ min: -30, max: 60, noNaN: true }),
  humidity: fc.double({ min: 1, max: 100, noNaN: true }),
});

describe("dewPoint", () => {
  it("comes back as the humidity that it was made of, and never lies above the air", () => {
    fc.assert(
      fc.property(air, ({ temperature, humidity }) => {
        const dew = dewPoint({ temperature: c(temperature), humidity: percent(humidity) });
        expect(dew.in("°C")).toBeLessThanOrEqual(temperature + 1e-9);
        const clipped = c(Math.min(dew.in("°C"), temperature));
        expect(humidityFromDewPoint({ temperature: c(temperature), dewPoint: clipped }).in("%")).toBeCloseTo(
          humidity,
          6,
        );
      }),
    );
  });

  it("is close to what another library prints by another saturation curve", () => {
    // MetPy: 10 °C and 50 % give 0.0479 °C; 25 °C and a dew point of 12 °C give 44.248 %.
    expect(Math.abs(dewPoint({ temperature: c(10), humidity: percent(50) }).in("°C") - 0.0479)).toBeLessThan(
      0.05,
    );
    expect(
      Math.abs(humidityFromDewPoint({ temperature: c(25), dewPoint: c(12) }).in("%") - 44.248),
    ).toBeLessThan(0.05);
  });

  it("keeps the scale of the temperature", () => {
    expect(dewPoint({ temperature: f(70), humidity: percent(65) }).unit).toBe("°F");
  });

  it("refuses air that cannot be", () => {
    const call = dewPoint as (input: unknown) => unknown;
    expect(complaints(() => call({ temperature: c(70), humidity: percent(0) }))).toEqual([
      "range temperature",
      "range humidity",
    ]);
    expect(complaints(() => call({ temperature: c(20), humidity: quantity(80, "1") }))).toEqual([
      "range humidity",
    ]);
    expect(complaints(() => call({}))).toEqual(["missing temperature", "missing humidity"]);
    expect(complaints(() => humidityFromDewPoint({ temperature: c(10), dewPoint: c(11) }))).toEqual([
      "conflict dewPoint",
    ]);
  });
});

describe("heatIndex", () => {
  it("says where another table is stricter", () => {
    const codes = (f: number, rh: number) =>
      heatIndex({
        temperature: quantity(f, "°F"),
        humidity: quantity(rh, "%"),
        table: "from 105 and 130 °F",
      })
        .findings.filter(({ code }) => code === "heat-index/higher-in-other-table")
        .map(({ params }) => params.category);
    // By the chart 88 °F is 103 at 75 %, 94 at 56 % and 106 at 80 %; 96 °F is 126 at 70 % and 132 at 75 %.
    expect(codes(88, 75)).toEqual(["danger"]);
    expect(codes(88, 60)).toEqual([]);
    expect(codes(88, 80)).toEqual([]);
    expect(codes(96, 70)).toEqual(["extreme danger"]);
    expect(codes(96, 75)).toEqual([]);
  });
  it("does not depend on the scale", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (t, rh) => {
          const one = heatIndex({ temperature: c(t), humidity: percent(rh) });
          const other = heatIndex({ temperature: f(t * 1.8 + 32), humidity: percent(rh) });
          expect(other.value.in("°C")).toBeCloseTo(one.value.in("°C"), 6);
        },
      ),
    );
  });

  it("has the words of its band, and warns from danger on", () => {
    for (const { name, fromF } of heatTables["from 103 and 125 °F"].categories) {
      const hot = [80, 85, 90, 95, 100, 105, 110, 115].flatMap((t) =>
        [20, 40, 60, 80, 100].map((rh) => heatIndex({ temperature: f(t), humidity: percent(rh) })),
      );
      for (const one of hot.filter(({ category }) => category === name)) {
        expect(one.value.in("°F")).toBeGreaterThanOrEqual(fromF - 1e-6);
        const word = one.findings.find(({ code }) => code === "heat-index/category");
        expect(word?.severity).toBe(fromF >= 103 ? "warning" : "caution");
      }
    }
  });

  it("names the adjustment it made, and shrinks it to nothing at its edge", () => {
    expect(heatIndex({ temperature: f(95), humidity: percent(10) }).adjustment).toBe("dry air");
    expect(heatIndex({ temperature: f(85), humidity: percent(90) }).adjustment).toBe("humid air");
    expect(heatIndex({ temperature: f(95), humidity: percent(13) }).adjustment).toBe("none");
    const [at, beyond] = [12.999999, 13].map((rh) =>
      heatIndex({ temperature: f(95), humidity: percent(rh) }).value.in("°F"),
    );
    expect(at).toBeCloseTo(beyond as number, 4);
  });

  it("says where the chart ends", () => {
    const codes = heatIndex({ temperature: f(110), humidity: percent(80) }).findings.map(({ code }) => code);
    expect(codes).toContain("heat-index/beyond-chart");
  });
});

describe("leafWetness", () => {
  const humidity = { unit: "%", values: [84, 90, 95, null, 96, 88] };

  it("counts rain as wet and leaves open what a missing figure could be", () => {
    const rain = { unit: "mm", values: [0.2, 0, 0, 0, 0, null] };
    const wet = leafWetness({ humidity, rain });
    expect(wet.hours).toEqual([true, true, true, null, true, null]);
    expect(wet).toMatchObject({ wetHours: 4, unknownHours: 2, longestWetPeriod: 3 });
  });

  it("goes by the dew point where that is stated", () => {
    const temperature = { unit: "°F", values: [60, 60, 60, 60, null, 60] };
    const wet = leafWetness({ humidity, temperature, depressionAtOrBelow: quantity(2, "°C diff") });
    expect(wet.hours).toEqual([false, true, true, null, null, true]);
    expect(wet.rule.by).toBe("dew point depression");
  });

  it("never gains hours from a higher bound", () => {
    fc.assert(
      fc.property(
        fc.array(fc.option(fc.double({ min: 1.1, max: 100, noNaN: true })), { minLength: 1, maxLength: 48 }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (values, a, b) => {
          const hours = (bound: number) =>
            leafWetness({ humidity: { unit: "%", values }, humidityAtOrAbove: percent(bound) }).wetHours;
          expect(hours(Math.max(a, b))).toBeLessThanOrEqual(hours(Math.min(a, b)));
        },
      ),
    );
  });

  it("names each problem with its place", () => {
    const call = leafWetness as (input: unknown) => unknown;
    expect(complaints(() => call({ humidity: { unit: "%", values: [80, 101] } }))).toEqual([
      "range humidity.values[1]",
    ]);
    expect(complaints(() => call({ humidity: { unit: "mm", values: [80] } }))).toEqual([
      "unit/mismatch humidity.unit",
    ]);
    expect(complaints(() => call({ humidity: { unit: "%", values: [80, "x"] } }))).toEqual([
      "not-finite humidity.values[1]",
    ]);
    expect(complaints(() => call({ humidity, rain: { unit: "mm", values: [0] } }))).toEqual([
      "conflict rain.values",
    ]);
    expect(complaints(() => call({ humidity, depressionAtOrBelow: quantity(2, "°C diff") }))).toEqual([
      "missing temperature",
    ]);
    expect(
      complaints(() =>
        call({ humidity, humidityAtOrAbove: percent(90), depressionAtOrBelow: quantity(2, "°C diff") }),
      ),
    ).toEqual(["conflict depressionAtOrBelow"]);
  });
});

describe("inversionReading", () => {
  const at = (temperature: number, height: number) => ({
    temperature: c(temperature),
    height: quantity(height, "m"),
  });
  const state = (low: number, high: number, accuracy?: number) =>
    inversionReading({
      lower: at(low, 0.2),
      upper: at(high, 2.7),
      ...(accuracy === undefined ? {} : { accuracy: quantity(accuracy, "°C diff") }),
    });

  it("says the difference on the scale of the thermometers", () => {
    const thermometer = (degrees: number, height: number) => ({
      temperature: f(degrees),
      height: quantity(height, "ft"),
    });
    const { difference } = inversionReading({ lower: thermometer(61.5, 1), upper: thermometer(66, 9) });
    expect(difference.unit).toBe("°F diff");
    expect(difference.value).toBeCloseTo(4.5, 9);
    expect(state(10, 12)).toMatchObject({ difference: { unit: "°C diff" } });
  });
  it("is one wherever the upper air is warmer by more than the thermometers can err", () => {
    expect(state(15, 16, 0.4).state).toBe("inversion");
    expect(state(15, 16, 0.5).state).toBe("within the error of the thermometers");
    expect(state(16, 15, 0.2).state).toBe("no inversion measured");
    expect(state(15, 15).state).toBe("no inversion measured");
  });

  it("never says that none is there without telling to measure again", () => {
    const codes = state(16, 15).findings.map(({ code }) => code);
    expect(codes).toEqual(["inversion/not-seen", "inversion/accuracy-not-stated"]);
    expect(state(15, 18, 0.5).findings.map(({ code }) => code)).toEqual(["inversion/measured"]);
  });

  it("names heights that are not those of the source", () => {
    const found = inversionReading({
      lower: at(15, 1),
      upper: at(16, 1.5),
      accuracy: quantity(0.1, "°C diff"),
    });
    expect(found.findings.map(({ code }) => code)).toContain("inversion/heights");
  });

  it("refuses thermometers that hang the wrong way round", () => {
    expect(complaints(() => inversionReading({ lower: at(15, 3), upper: at(16, 1) }))).toEqual([
      "conflict upper.height",
    ]);
    expect(complaints(() => inversionReading({ lower: at(15, 3) } as never))).toEqual(["missing upper"]);
  });
});
