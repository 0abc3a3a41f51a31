import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { heatIndex, heatTables, inversionReading, leafWetness, quantity } from "../../../src/index.js";
import { runs } from "../../properties.js";

// Second readings of the sources, with arithmetic of their own.

/** The script of the weather service, its nine coefficients as a table by powers of T and RH. */
const terms: readonly (readonly [coefficient: number, t: number, rh: number])[] = [
  [-42.379, 0, 0],
  [2.04901523, 1, 0],
  [10.14333127, 0, 1],
  [-0.22475541, 1, 1],
  [-6.83783e-3, 2, 0],
  [-5.481717e-2, 0, 2],
  [1.22874e-3, 2, 1],
  [8.5282e-4, 1, 2],
  [-1.99e-6, 2, 2],
];
const feels = (t: number, rh: number): number => {
  if (t <= 40) return t;
  const hitemp = 61 + (t - 68) * 1.2 + rh * 0.094;
  const hifinal = 0.5 * (t + hitemp);
  if (hifinal <= 79) return hifinal;
  const full = terms.reduce((sum, [c, i, j]) => sum + c * t ** i * rh ** j, 0);
  if (rh < 13 && 80 <= t && t <= 112) return full - ((13 - rh) / 4) * ((17 - Math.abs(t - 95)) / 17) ** 0.5;
  if (rh > 85 && 80 <= t && t <= 87) return full + ((rh - 85) / 10) * ((87 - t) / 5);
  return full;
};
const celsius = (t: number): number => ((t - 32) * 5) / 9;

describe("second readings of the air", () => {
  it("heat index and its band, in both scales", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 120, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.boolean(),
        fc.boolean(),
        (t, rh, metric, older) => {
          const table = older ? "from 105 and 130 °F" : "from 103 and 125 °F";
          const one = heatIndex({
            temperature: metric ? quantity(celsius(t), "°C") : quantity(t, "°F"),
            humidity: quantity(rh, "%"),
            ...(older && { table }),
          });
          const wanted = feels(t, rh);
          // Where the simple form is 79 °F the equation changes, and at 40 °F of air; the last digits decide there.
          const simple = 1.1 * t - 10.3 + 0.047 * rh;
          fc.pre([simple - 79, t - 40, rh - 13, rh - 85].every((off) => Math.abs(off) > 1e-6));
          expect(one.value.in("°F")).toBeCloseTo(wanted, 5);
          const bounds = older ? [80, 90, 105, 130] : [80, 90, 103, 125];
          fc.pre(bounds.every((bound) => Math.abs(wanted - bound) > 1e-6));
          const band = bounds.filter((bound) => wanted >= bound).length;
          const names = [null, "caution", "extreme caution", "danger", "extreme danger"];
          expect(one.category).toBe(names[band]);
          expect(one.table).toBe(table);
        },
      ),
      runs(200),
    );
  });

  it("the default table warns no later than the other", () => {
    const [first, second] = [heatTables["from 103 and 125 °F"], heatTables["from 105 and 130 °F"]];
    first.categories.forEach(({ name, fromF }, i) => {
      expect(second.categories[i]?.name).toBe(name);
      expect(fromF).toBeLessThanOrEqual(second.categories[i]?.fromF ?? 0);
    });
  });

  it("an inversion is warmer above by more than both thermometers can be off", () => {
    const t = fc.double({ min: -20, max: 40, noNaN: true });
    fc.assert(
      fc.property(t, t, fc.double({ min: 0, max: 3, noNaN: true }), fc.boolean(), (low, high, error, us) => {
        const air = (c: number) => (us ? quantity(c * 1.8 + 32, "°F") : quantity(c, "°C"));
        const { state, difference } = inversionReading({
          lower: { temperature: air(low), height: quantity(9, "in") },
          upper: { temperature: air(high), height: quantity(2.7, "m") },
          accuracy: us ? quantity(error * 1.8, "°F diff") : quantity(error, "°C diff"),
        });
        const gap = high - low;
        fc.pre(Math.abs(gap) > 1e-6 && Math.abs(Math.abs(gap) - 2 * error) > 1e-6);
        expect(difference.in("°C diff")).toBeCloseTo(gap, 6);
        expect(state).toBe(
          error > 0 && Math.abs(gap) < 2 * error
            ? "within the error of the thermometers"
            : gap > 0
              ? "inversion"
              : "no inversion measured",
        );
      }),
      runs(200),
    );
  });

  it("wet hours are those at or above the bound, in text as in a table", () => {
    const hour = fc.option(fc.integer({ min: 2, max: 100 }));
    fc.assert(
      fc.property(
        fc.array(hour, { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 1, max: 100 }),
        (rh, bound) => {
          const wet = leafWetness({
            humidity: { unit: "%", values: rh },
            humidityAtOrAbove: quantity(bound, "%"),
          });
          const letters = rh.map((value) => (value === null ? "?" : value >= bound ? "w" : "d")).join("");
          const runsOf = letters.match(/w+/g) ?? [];
          expect(wet.wetHours).toBe(letters.replace(/[^w]/g, "").length);
          expect(wet.unknownHours).toBe(letters.replace(/[^?]/g, "").length);
          expect(wet.longestWetPeriod).toBe(Math.max(0, ...runsOf.map((one) => one.length)));
        },
      ),
      runs(100),
    );
  });
});
