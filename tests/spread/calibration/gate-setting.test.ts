import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { statedEstimate } from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { gateSetting } from "../../../src/spread/index.js";
import { complaints } from "../../errors.js";
import { perThousand } from "../helpers.js";

const measured = (rate: number, error: number) =>
  statedEstimate({ value: perThousand(rate), error: perThousand(error), meaning: "standard error" });
const trial = (setting: number, rate: number, error?: number) => ({
  setting,
  rate: error === undefined ? perThousand(rate) : measured(rate, error),
});
const settingFor = (target: number, trials: readonly ReturnType<typeof trial>[]) =>
  gateSetting({ target: perThousand(target), trials });

/** Trials on a rising curve, in any order. */
const curves = fc
  .array(
    fc.tuple(fc.double({ min: 0.1, max: 3, noNaN: true }), fc.double({ min: 0.1, max: 9, noNaN: true })),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .map((steps) => {
    let [setting, rate] = [0, 0];
    return steps.map(([s, r]) => {
      setting += s;
      rate += r;
      return trial(setting, rate);
    });
  });

describe("gateSetting", () => {
  test("half-way between two rates lies half-way between two settings", () => {
    const next = settingFor(3, [trial(4, 2), trial(6, 4)]);
    expect(next.setting).toBe(5);
    expect(next.between.map(({ setting }) => setting)).toEqual([4, 6]);
    expect(next.extrapolated).toBe(false);
    expect(next.findings).toEqual([]);
  });

  test("reads the line between the two neighbours of the target, by hand", () => {
    // From 2 at setting 3 over 3 at 4 to 5 at 6.5: a quarter and three quarters of the way on each side.
    const trials = [trial(6.5, 5), trial(3, 2), trial(4, 3)];
    expect(settingFor(2.25, trials).setting).toBeCloseTo(3.25, 12);
    expect(settingFor(2.75, trials).setting).toBeCloseTo(3.75, 12);
    expect(settingFor(3.5, trials).setting).toBeCloseTo(4.625, 12);
    expect(settingFor(4.5, trials).setting).toBeCloseTo(5.875, 12);
    expect(settingFor(3, trials).setting).toBe(4);
    expect(settingFor(4.5, trials).between.map(({ setting, rate }) => [setting, rate.value])).toEqual([
      [4, 3],
      [6.5, 5],
    ]);
    // On a scale that falls: 6 at 1, 3 at 2, 2 at 4.
    const falling = { trials: [trial(1, 6), trial(2, 3), trial(4, 2)], scale: "lower opens" } as const;
    expect(gateSetting({ target: perThousand(5.25), ...falling }).setting).toBeCloseTo(1.25, 12);
    expect(gateSetting({ target: perThousand(2.25), ...falling }).setting).toBeCloseTo(3.5, 12);
    // Beyond the trials the line through the two nearest is drawn on.
    const beyond = (rate: number) =>
      gateSetting({ target: perThousand(rate), trials, beyond: "extrapolate" }).setting;
    expect(beyond(6)).toBeCloseTo(7.75, 12);
    expect(beyond(1)).toBeCloseTo(2, 12);
  });

  test("gives a trial its own setting, whatever the order of the trials", () => {
    fc.assert(
      fc.property(curves, fc.integer({ min: 0, max: 7 }), (trials, at) => {
        const one = trials[at % trials.length] as (typeof trials)[number];
        const mixed = [...trials].reverse();
        const rate = one.rate as ReturnType<typeof perThousand>;
        expect(gateSetting({ target: rate, trials: mixed }).setting).toBe(one.setting);
      }),
    );
  });

  test("rises with the target and never leaves the two trials", () => {
    fc.assert(
      fc.property(
        curves,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (trials, a, b) => {
          const rates = trials.map(({ rate }) => (rate as ReturnType<typeof perThousand>).value);
          const [low, high] = [Math.min(...rates), Math.max(...rates)];
          const at = (share: number) => settingFor(Math.min(high, low + share * (high - low)), trials);
          const [one, other] = [at(Math.min(a, b)), at(Math.max(a, b))];
          expect(one.setting).toBeLessThanOrEqual(other.setting + 1e-9);
          const [first, second] = one.between;
          expect(one.setting).toBeGreaterThanOrEqual(first.setting - 1e-9);
          expect(one.setting).toBeLessThanOrEqual(second.setting + 1e-9);
        },
      ),
    );
  });

  test("does not depend on the unit of the rates", () => {
    const kg = (rate: number) => quantity(perThousand(rate).in("kg/ha"), "kg/ha", "product");
    const metric = gateSetting({
      target: kg(3.3),
      trials: [
        { setting: 4, rate: perThousand(2) },
        { setting: 6, rate: kg(4) },
      ],
    });
    expect(metric.setting).toBeCloseTo(5.3, 9);
  });

  test("carries the errors of the trials to the setting", () => {
    // Half-way: the root of 0.25 x 0.3^2 + 0.25 x 0.4^2 is 0.25; the slope is 2 settings for 4 units of rate.
    const next = settingFor(4, [trial(3, 2, 0.3), trial(5, 6, 0.4)]);
    expect(next.setting).toBe(4);
    expect(next.settingError).toBeCloseTo(0.125, 12);
    // At a trial its own error counts alone.
    expect(settingFor(2, [trial(3, 2, 0.3), trial(5, 6, 0.4)]).settingError).toBeCloseTo(0.15, 12);
    const half = settingFor(4, [trial(3, 2, 0.3), trial(5, 6)]);
    expect(half.settingError).toBeUndefined();
    expect(half.notChecked[0]).toMatch(/without its error/);
  });

  test("agrees with a small simulation of the errors", () => {
    const next = settingFor(3.5, [trial(3, 2, 0.05), trial(5, 6, 0.08)]);
    // A fixed generator: the run is the same every time.
    let seed = 12345;
    const uniform = (): number => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return (seed + 0.5) / 2147483648;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const runs = Array.from({ length: 20_000 }, () => {
      const [r0, r1] = [2 + 0.05 * normal(), 6 + 0.08 * normal()];
      return 3 + (2 * (3.5 - r0)) / (r1 - r0);
    });
    const mean = runs.reduce((a, b) => a + b) / runs.length;
    const spread = Math.sqrt(runs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (runs.length - 1));
    expect(next.settingError as number).toBeGreaterThan(0.97 * spread);
    expect(next.settingError as number).toBeLessThan(1.03 * spread);
  });

  test("says that two trials cannot be told apart", () => {
    const next = settingFor(3, [trial(3, 2.9, 0.2), trial(4, 3.1, 0.2)]);
    expect(next.findings.map(({ code }) => code)).toEqual(["trials/not-told-apart"]);
    expect(next.findings[0]?.params.difference).toBeCloseTo(0.2, 12);
    // Errors of 0.3 and 0.4 make 0.5 for the difference: 0.9 is too little, 1.1 is enough.
    const codes = (rate: number) => settingFor(2.5, [trial(3, 2, 0.3), trial(4, rate, 0.4)]).findings.length;
    expect([codes(2.9), codes(3.1)]).toEqual([1, 0]);
  });

  test("rounding noise does not put a target past the trials", () => {
    // 3 times 1.1 is 3.3000000000000003 in binary: the target is the rate of the trial.
    const next = settingFor(3.3, [trial(3, 3 * 1.1), trial(5, 4)]);
    expect(next.extrapolated).toBe(false);
    expect(next.setting).toBeCloseTo(3, 12);
    expect(complaints(() => settingFor(3.3 * (1 - 1e-8), [trial(3, 3 * 1.1), trial(5, 4)]))).toEqual([
      "infeasible target",
    ]);
  });

  test("refuses to go past the trials unless it is told to, and then says so", () => {
    const trials = [trial(3, 2), trial(5, 4), trial(4, 3)];
    expect(complaints(() => settingFor(4.01, trials))).toEqual(["infeasible target"]);
    expect(complaints(() => settingFor(1.99, trials))).toEqual(["infeasible target"]);
    expect(() => settingFor(4.5, trials)).toThrow(/between the trials, 2 to 4 .*higher setting/);
    expect(() => settingFor(1.5, trials)).toThrow(/lower setting/);
    const beyond = gateSetting({ target: perThousand(5), trials, beyond: "extrapolate" });
    expect(beyond.setting).toBeCloseTo(6, 12);
    expect(beyond.extrapolated).toBe(true);
    expect(beyond.findings.map(({ code }) => code)).toEqual(["setting/extrapolated"]);
    const below = gateSetting({ target: perThousand(1), trials, beyond: "extrapolate" });
    expect(below.setting).toBeCloseTo(2, 12);
  });

  test("refuses trials that do not rise, and names the pair", () => {
    const trials = [trial(3, 2), trial(5, 4), trial(4, 4.5)];
    expect(complaints(() => settingFor(3, trials))).toEqual(["conflict trials[1].rate"]);
    expect(() => settingFor(3, trials)).toThrow(/trials\[2\] at setting 4/);
    expect(complaints(() => settingFor(3, [trial(3, 3), trial(4, 3)]))).toEqual(["conflict trials[1].rate"]);
    expect(complaints(() => settingFor(3, [trial(3, 2), trial(3, 4)]))).toEqual([
      "conflict trials[1].setting",
    ]);
  });

  test("takes a scale that falls only where it is said", () => {
    const trials = [trial(1, 6), trial(3, 2)];
    expect(complaints(() => settingFor(4, trials))).toEqual(["conflict trials[1].rate"]);
    expect(
      complaints(() =>
        gateSetting({
          target: perThousand(4),
          trials: [trial(1, 4), trial(3, 4)],
          scale: "lower opens",
        }),
      ),
    ).toEqual(["conflict trials[1].rate"]);
    const falling = gateSetting({ target: perThousand(4), trials, scale: "lower opens" });
    expect(falling.setting).toBe(2);
    expect(() => gateSetting({ target: perThousand(8), trials, scale: "lower opens" })).toThrow(
      /lower setting/,
    );
    const rising = [trial(1, 2), trial(3, 6)];
    expect(
      complaints(() => gateSetting({ target: perThousand(4), trials: rising, scale: "lower opens" })),
    ).toEqual(["conflict trials[1].rate"]);
  });

  test("gives the marks on either side, and none past the trials", () => {
    const marks = (target: number, step: number) =>
      gateSetting({ target: perThousand(target), trials: [trial(3.2, 2), trial(4.2, 3)], step }).steps.map(
        ({ setting, rate }) => [setting, Number(rate.in("lb/1000 ft2").toFixed(6))],
      );
    expect(marks(2.5, 0.5)).toEqual([
      [3.5, 2.3],
      [4, 2.8],
    ]);
    expect(marks(2.8, 0.5)).toEqual([[4, 2.8]]);
    expect(marks(2.1, 0.5)).toEqual([[3.5, 2.3]]);
    expect(marks(2.5, 10)).toEqual([]);
    // Two units of rate to the setting, errors of 0.3 at 3 and 0.4 at 5.
    const { steps } = gateSetting({
      target: perThousand(3.2),
      trials: [trial(3, 2, 0.3), trial(5, 6, 0.4)],
      step: 0.5,
    });
    expect(steps.map(({ setting, rate }) => [setting, rate.value])).toEqual([
      [3.5, 3],
      [4, 4],
    ]);
    expect(steps[0]?.standardError?.value).toBeCloseTo(Math.hypot(0.75 * 0.3, 0.25 * 0.4), 12);
    expect(steps[1]?.standardError?.value).toBeCloseTo(0.25, 12);
    // Marks on the trials themselves are inside of them.
    const ends = (target: number) =>
      gateSetting({ target: perThousand(target), trials: [trial(3, 2), trial(5, 6)], step: 1 }).steps.map(
        ({ setting, rate }) => [setting, rate.value],
      );
    expect(ends(2.5)).toEqual([
      [3, 2],
      [4, 4],
    ]);
    expect(ends(5.5)).toEqual([
      [4, 4],
      [5, 6],
    ]);
    // A mark in another stretch than the setting has the rate of that stretch.
    const bent = gateSetting({
      target: perThousand(2.9),
      trials: [trial(3, 2), trial(4, 3), trial(6, 7)],
      step: 2.5,
    });
    expect(bent.steps.map(({ setting, rate }) => [setting, rate.value])).toEqual([[5, 5]]);
  });

  test("reports every bad trial by its place", () => {
    const bad = [trial(3, 2), { setting: Number.NaN, rate: perThousand(3) }, { setting: 5 }, undefined];
    expect(complaints(() => gateSetting({ target: perThousand(3), trials: bad as never }))).toEqual([
      "not-finite trials[1].setting",
      "missing trials[2].rate",
      "missing trials[3]",
    ]);
    const wrong = [trial(3, 2), { setting: 4, rate: quantity(3, "lb/1000 ft2", "N") }];
    expect(complaints(() => gateSetting({ target: perThousand(3), trials: wrong as never }))).toEqual([
      "substance/mismatch trials[1].rate",
    ]);
    expect(complaints(() => settingFor(3, [trial(3, 2)]))).toEqual(["missing trials"]);
    expect(complaints(() => gateSetting({ trials: [trial(3, 2), trial(4, 3)] } as never))).toEqual([
      "missing target",
    ]);
    expect(
      complaints(() =>
        gateSetting({
          target: perThousand(2.5),
          trials: [trial(3, 2), trial(4, 3)],
          step: 0,
          scale: "up" as never,
        }),
      ),
    ).toEqual(["type scale", "range step"]);
  });
});
