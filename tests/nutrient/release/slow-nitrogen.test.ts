import { describe, expect, test } from "vitest";
import {
  activityIndex,
  isobutylideneDiurea,
  methyleneUrea,
  naturalOrganic,
  polymerCoatedInSoil,
  polymerCoatedOnSurface,
  type ReleaseModel,
  releasedNitrogen,
  slowPolymerCoatedInSoil,
  statedDuration,
  sulfurCoatedOnSurface,
  sulfurCoatedUrea,
  ureaFormaldehyde,
  ureaform,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

type Placement = "surface or thatch" | "incorporated";

/** Percent out by the end of a day at a steady temperature: low, mid, high. */
const percents = (
  model: ReleaseModel,
  day: number,
  celsius: number,
  placement: Placement = "incorporated",
) => {
  const { cumulative, findings } = releasedNitrogen({
    applied: "2026-05-01",
    days: day,
    placement,
    temperature: { mean: quantity(celsius, "°C") },
    portions: [{ name: "N", nitrogen: quantity(100, "kg/ha", "N"), model }],
  });
  const [low, mid, high] = [cumulative.low, cumulative.mid, cumulative.high].map(
    (list) => list[day - 1] as number,
  );
  return { low, mid, high, codes: findings.map(({ code }) => code) } as {
    readonly low: number;
    readonly mid: number;
    readonly high: number;
    readonly codes: readonly string[];
  };
};

const holds = (
  model: ReleaseModel,
  day: number,
  celsius: number,
  printed: number,
  placement?: Placement,
): void => {
  const { low, high } = percents(model, day, celsius, placement);
  expect(low, "low end").toBeLessThanOrEqual(printed);
  expect(high, "high end").toBeGreaterThanOrEqual(printed);
};
const insoluble = (percent: number) => quantity(percent, "% w/w", "other:WIN/N");

describe("ureaform", () => {
  // Incubation of 14 weeks, two soils 2 to 5 points apart: percent of the nitrogen by temperature.
  const incubation = [
    [10, 20],
    [15, 28],
    [20, 40],
    [25, 50],
    [30, 58],
  ] as const;

  test.each(incubation)(
    "at %s °C comes within 1.5 points of the %s %% that were measured, inside the band",
    (celsius, printed) => {
      const { mid } = percents(ureaform(), 98, celsius);
      expect(Math.abs(mid - printed)).toBeLessThan(1.5);
      for (const soil of [printed - 2.5, printed + 2.5]) holds(ureaform(), 98, celsius, soil);
    },
  );

  test("in 84 days at 5 °C gives a little, at the low end nothing, and says that nobody measured it", () => {
    for (const model of [ureaform(), ureaFormaldehyde, methyleneUrea()]) {
      const { low, mid, high, codes } = percents(model, 84, 5);
      expect(low).toBe(0);
      expect(mid).toBeLessThan(20);
      expect(high).toBeLessThan(75);
      expect(codes).toContain("release/beyond-observed-temperature");
    }
  });

  test("ends where the activity index says: a good third stays at an index of 40", () => {
    const { low, mid, high } = percents(ureaform(), 3660, 25);
    // 60 % insoluble in cold water, 60 % of that in hot water too.
    expect([low, mid, high].map((percent) => Number(percent.toFixed(6)))).toEqual([64, 64, 100]);
    const { index } = activityIndex({
      coldInsoluble: quantity(28, "% w/w", "N/product"),
      hotInsoluble: quantity(14, "% w/w", "N/product"),
    });
    const better = ureaform({ waterInsolubleShare: insoluble(70), activityIndex: index });
    expect(percents(better, 3660, 25).mid).toBeCloseTo(65, 6);
  });

  test("may be gone in the eight weeks of a trade magazine, at the high end", () => {
    holds(ureaform(), 56, 25, 95);
  });

  test("with less than 60 % of its nitrogen insoluble is methylene urea, and the refusal names it", () => {
    expect(complaints(() => ureaform({ waterInsolubleShare: insoluble(40) }))).toEqual([
      "conflict waterInsolubleShare",
    ]);
    expect(() => ureaform({ waterInsolubleShare: insoluble(40) })).toThrow(/methyleneUrea/);
    expect(complaints(() => ureaform({ activityIndexs: 1 } as never))).toEqual(["type input.activityIndexs"]);
    expect(
      complaints(() => ureaform({ waterInsolubleShare: insoluble(120), activityIndex: quantity(140, "%") })),
    ).toEqual(["range waterInsolubleShare", "range activityIndex"]);
  });
});

describe("methylene urea", () => {
  test.each([
    [20, 52],
    [30, 63],
  ])("in six months at %s °C holds the %s %% that were measured", (celsius, printed) => {
    for (const model of [methyleneUrea(), ureaFormaldehyde]) holds(model, 182, celsius, printed);
    const short = methyleneUrea({ waterInsolubleShare: insoluble(25), activityIndex: quantity(60, "%") });
    holds(short, 182, celsius, printed);
  });

  test("has a top by its own index, and needs both figures for it", () => {
    const short = methyleneUrea({ waterInsolubleShare: insoluble(25), activityIndex: quantity(60, "%") });
    expect(percents(short, 3660, 25).mid).toBeCloseTo(90, 6);
    expect(complaints(() => methyleneUrea({ waterInsolubleShare: insoluble(25) }))).toEqual([
      "missing activityIndex",
    ]);
    expect(complaints(() => methyleneUrea({ activityIndex: quantity(40, "%") }))).toEqual([
      "missing waterInsolubleShare",
    ]);
  });
});

describe("isobutylidene diurea", () => {
  const of = (low: number, high: number) =>
    isobutylideneDiurea({ particleSize: { low: quantity(low, "mm"), high: quantity(high, "mm") } });

  test.each([
    [0.6, 0.7, 70, 75],
    [1, 1.2, 147, 58],
    [1.7, 2, 224, 50],
  ])("of %s to %s mm is out on day %s as measured, %s %%", (low, high, day, printed) => {
    expect(Math.abs(percents(of(low, high), day, 21).mid - printed)).toBeLessThan(1);
    holds(of(low, high), day, 21, printed);
  });

  test("of 0.7 to 0.8 mm gives a third in four weeks, a figure that did not make the line", () => {
    expect(percents(of(0.7, 0.8), 28, 21).mid).toBeCloseTo(100 / 3, 0);
  });

  test("of finer particles is sooner out", () => {
    const shares = [0.5, 0.7, 1, 1.5, 2.5].map((mm) => percents(of(mm, mm), 60, 21).mid);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(new Set(shares).size).toBe(5);
  });

  test("goes on in the cold, for it needs no microbes, and says that nobody measured it", () => {
    const { low, codes } = percents(of(0.7, 0.8), 90, 5);
    expect(low).toBeGreaterThan(0);
    expect(codes).toContain("release/beyond-observed-temperature");
  });

  test("refuses sizes that are none", () => {
    expect(complaints(() => of(0.1, 9))).toEqual(["range particleSize.low", "range particleSize.high"]);
    expect(complaints(() => of(2, 1))).toEqual(["conflict particleSize.low"]);
    expect(complaints(() => isobutylideneDiurea({} as never))).toEqual(["missing particleSize"]);
  });
});

describe("sulfur-coated urea", () => {
  const of = (percent: number, sealed: boolean) =>
    sulfurCoatedUrea({ sevenDayDissolution: quantity(percent, "%"), sealed, source: "the maker" });

  test.each([11, 17, 25, 26, 30, 35, 36])(
    "of %s %% gives that much in seven days at the high end, at 25 °C",
    (percent) => {
      const most = Math.max(97, percent) / 100;
      expect(percents(of(percent, false), 7, 25).high).toBeCloseTo(most * percent, 9);
    },
  );

  test("on the surface holds the trial of wax-sealed granules: 25 days of wait, then 1 % a day", () => {
    for (const [day, printed] of [
      [25, 0],
      [28, 3],
      [55, 30],
      [85, 60],
    ] as const) {
      for (const model of [of(25, true), sulfurCoatedOnSurface]) {
        holds(model, day, 25, printed, "surface or thatch");
      }
    }
  });

  test("on the surface holds the trial in which it was no slower than urea", () => {
    expect(percents(of(25, true), 1, 25, "surface or thatch").high).toBe(100);
  });

  test("by a stated duration holds the same trials on the surface", () => {
    const label = statedDuration({ days: { low: 84, high: 84 }, coating: "sulfur", source: "label" });
    holds(label, 28, 25, 3, "surface or thatch");
    holds(label, 1, 25, 100, "surface or thatch");
  });

  test("leaves 3 to 37 % inside after three seasons", () => {
    const { low, high } = percents(of(25, false), 1095, 25);
    expect(low).toBeCloseTo(63, 3);
    expect(high).toBeCloseTo(97, 3);
  });

  test("takes a stated lag, and a seal without one waits up to 25 days", () => {
    const stated = sulfurCoatedUrea({
      sevenDayDissolution: quantity(25, "%"),
      sealed: true,
      lagDays: { low: 10, high: 10 },
      source: "the maker",
    });
    expect(percents(stated, 10, 25).high).toBe(0);
    expect(percents(of(25, true), 25, 25).low).toBe(0);
    expect(percents(of(25, false), 25, 25).low).toBeGreaterThan(10);
  });

  test("refuses a dissolution that is none and a seal that is not stated", () => {
    expect(
      complaints(() =>
        sulfurCoatedUrea({ sevenDayDissolution: quantity(100, "%"), sealed: "wax" as never, source: "x" }),
      ),
    ).toEqual(["range sevenDayDissolution", "type sealed"]);
  });
});

describe("natural organic nitrogen", () => {
  test.each([
    ["swine waste, ten weeks", 70, 25, 20],
    ["biosolids, ten weeks", 70, 25, 60],
    ["poultry manure and feathers, ten weeks", 70, 25, 70],
    ["meals and guano, two weeks, the least", 14, 10, 47],
    ["meals and guano, two weeks, the most", 14, 25, 60],
    ["four fertilizers, eight weeks at 10 °C", 56, 10, 56],
    ["four fertilizers, eight weeks at 25 °C", 56, 25, 66],
    ["blood meal, eight weeks", 56, 25, 66],
    ["heat-dried biosolids on grass, a year, the least", 365, 15, 45],
  ] as const)("holds %s", (_, day, celsius, printed) => {
    holds(naturalOrganic, day, celsius, printed);
  });

  test("goes through the printed points in ten warm weeks, and never comes all at the low end and the middle", () => {
    const ten = percents(naturalOrganic, 70, 25);
    expect(ten.low).toBeCloseTo(20, 9);
    expect(ten.mid).toBeCloseTo(60, 9);
    const years = percents(naturalOrganic, 3660, 25);
    expect(years.low).toBeCloseTo(35, 6);
    expect(years.mid).toBeCloseTo(70, 6);
  });

  test("in the cold is slower, at the low end nothing, and says so in the result", () => {
    const [cold, warm] = [percents(naturalOrganic, 84, 5), percents(naturalOrganic, 84, 25)];
    expect(cold.low).toBe(0);
    expect(cold.mid).toBeLessThan(warm.mid);
    expect(cold.codes).toContain("release/beyond-observed-temperature");
  });

  test("beyond its ten weeks says in the result that the curve is drawn on", () => {
    expect(percents(naturalOrganic, 70, 20).codes).not.toContain("release/beyond-observed-days");
    expect(percents(naturalOrganic, 71, 20).codes).toContain("release/beyond-observed-days");
  });
});

describe("polymer-coated urea on the surface", () => {
  const surface = "surface or thatch";

  test("holds 80 % by day 35 as in Utah, and half in a cool season as in Alberta", () => {
    holds(polymerCoatedOnSurface, 35, 20, 80, surface);
    holds(polymerCoatedOnSurface, 35, 20, 100 - 1e-9, surface);
    holds(polymerCoatedOnSurface, 150, 15, 50, surface);
    expect(percents(polymerCoatedOnSurface, 35, 20, surface).mid).toBeCloseTo(80, 9);
  });

  test("holds half in a cool season also for a product whose label says 80 days", () => {
    const label = statedDuration({ days: { low: 70, high: 90 }, coating: "polymer", source: "label" });
    holds(label, 150, 15, 50, surface);
    holds(label, 35, 20, 80, surface);
  });
});

describe("slow polymer-coated fertilizer in soil", () => {
  test("holds both of its figures at 25 °C, and widens in the cold with a finding", () => {
    const warm = percents(slowPolymerCoatedInSoil, 220, 25);
    expect(warm.low).toBeCloseTo(63.6, 9);
    expect(warm.high).toBeCloseTo(70.8, 9);
    expect(warm.codes).not.toContain("release/beyond-observed-temperature");
    const cold = percents(slowPolymerCoatedInSoil, 220, 5);
    expect(cold.low).toBeLessThan(15);
    expect(cold.high).toBeCloseTo(70.8, 9);
    expect(cold.codes).toContain("release/beyond-observed-temperature");
  });
});

describe("shared models", () => {
  test.each([
    naturalOrganic,
    polymerCoatedInSoil,
    polymerCoatedOnSurface,
    slowPolymerCoatedInSoil,
    sulfurCoatedOnSurface,
    ureaFormaldehyde,
  ])("of $name cannot be changed", (model) => {
    expect(Object.isFrozen(model)).toBe(true);
    expect(Object.isFrozen(model.curve)).toBe(true);
    expect(Object.isFrozen(model.assumptions)).toBe(true);
  });
});
