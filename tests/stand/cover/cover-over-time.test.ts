import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, dailyNormals, dailyTemperatures, daysBetween } from "../../../src/calendar/index.js";
import { growthPotential } from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  type CoverStart,
  coverOfPatches,
  coverOverTime,
  plantingDateForCover,
  spacingForCover,
  spreadRateFromCover,
  spreadRateFromPatch,
} from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const rate = (low: number, mid: number, high: number) => ({
  low: quantity(low, "mm/d"),
  mid: quantity(mid, "mm/d"),
  high: quantity(high, "mm/d"),
  source: "made up for the test",
});
const steady = { potential: quantity(100, "%"), source: "made up for the test" };
const plugs: CoverStart = {
  plug: { diameter: quantity(60, "mm") },
  pattern: "triangular",
  spacing: quantity(300, "mm"),
};
const base = {
  start: plugs,
  from: "2026-05-01",
  to: "2026-09-30",
  spread: rate(1, 2, 3),
  growth: steady,
} as const;

describe("coverOverTime", () => {
  test("is the cover of the patches that have grown that long", () => {
    const { days, start } = coverOverTime(base);
    expect(start.in("%")).toBeCloseTo(
      coverOfPatches({
        pattern: "triangular",
        spacing: quantity(300, "mm"),
        diameter: quantity(60, "mm"),
      }).in("%"),
      10,
    );
    for (const at of [0, 9, 40]) {
      const day = days[at];
      expect(day?.date).toBe(addDays("2026-05-01", at + 1));
      const diameter = quantity(60 + 2 * 2 * (at + 1), "mm");
      const expected = coverOfPatches({ pattern: "triangular", spacing: quantity(300, "mm"), diameter });
      expect(day?.mid.in("%")).toBeCloseTo(expected.in("%"), 9);
    }
  });
  test("grows from day to day, low under mid under high, up to 100 % and no further", () => {
    const { days } = coverOverTime(base);
    let before = 0;
    for (const { low, mid, high } of days) {
      expect(mid.in("%")).toBeGreaterThanOrEqual(before);
      expect(low.in("%")).toBeLessThanOrEqual(mid.in("%"));
      expect(mid.in("%")).toBeLessThanOrEqual(high.in("%"));
      before = mid.in("%");
    }
    expect(days.at(-1)?.high.in("%")).toBe(100);
  });
  test("the first day of a cover is the first day that has it", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 99.9, noNaN: true }), (target) => {
        const { reached, days } = coverOverTime({ ...base, targets: [quantity(target, "%")] });
        const { earliest, mid, latest } = reached[0] as (typeof reached)[number];
        for (const [date, key] of [
          [earliest, "high"],
          [mid, "mid"],
          [latest, "low"],
        ] as const) {
          const first = days.find((day) => day[key].in("%") >= target - 1e-9);
          expect(date).toBe(first?.date ?? null);
        }
      }),
    );
  });
  test("factors and growth potential multiply the rate", () => {
    const share = (percent: number) => ({ share: quantity(percent, "%"), source: "made up" });
    const halved = coverOverTime({
      ...base,
      growth: { potential: quantity(50, "%"), source: "made up" },
      factors: { shade: share(80), regulator: share(50) },
    });
    const plain = coverOverTime({ ...base, spread: rate(0.2, 0.4, 0.6) });
    halved.days.forEach((day, i) => {
      expect(day.mid.in("%")).toBeCloseTo(plain.days[i]?.mid.in("%") as number, 9);
    });
    expect(halved.notChecked.some((line) => line.startsWith("nitrogen"))).toBe(true);
    expect(halved.notChecked.some((line) => line.startsWith("shade"))).toBe(false);
    expect(halved.restsOn.map(({ what, source }) => `${what}: ${source}`)).toEqual([
      "spread: made up for the test",
      "shade: made up",
      "regulator: made up",
      "growth: made up",
    ]);
    const rich = coverOverTime({ ...base, factors: { nitrogen: share(120) } });
    expect(rich.findings.map(({ code }) => code)).toContain("cover/factor-above-full");
  });
  test("reads temperatures in the order in which they are trusted", () => {
    const series = (start: string, means: (number | null)[], source: string) =>
      dailyTemperatures({
        start: start as "2026-05-02",
        unit: "°C",
        sensor: "air",
        source,
        min: means.map((mean) => (mean === null ? null : mean - 5)),
        max: means.map((mean) => (mean === null ? null : mean + 5)),
      });
    const flat = (value: number) => Array<number>(366).fill(value);
    const normals = dailyNormals({
      unit: "°F",
      sensor: "air",
      source: "normals",
      min: flat(60),
      max: flat(80),
    });
    const growth = {
      season: "warm-season",
      observed: series("2026-05-02", [20, 24], "station"),
      forecast: series("2026-05-03", [28, 26], "forecast"),
      normals,
    } as const;
    const { days, notChecked } = coverOverTime({ ...base, to: "2026-05-05", growth });
    expect(days.map(({ basis }) => basis)).toEqual(["observed", "observed", "forecast", "normal"]);
    const expected = [20, 24, 26].map((mean) =>
      growthPotential({ mean: quantity(mean, "°C"), season: "warm-season" }).in("%"),
    );
    expect(days.slice(0, 3).map(({ potential }) => potential.in("%"))).toEqual(
      expected.map((value) => expect.closeTo(value, 9)),
    );
    expect(days[3]?.potential.in("%")).toBeCloseTo(
      growthPotential({ mean: quantity(70, "°F"), season: "warm-season" }).in("%"),
      9,
    );
    expect(notChecked.some((line) => line.includes("cooler year"))).toBe(true);
    const gap = { ...growth, observed: series("2026-05-02", [20, null], "station") };
    expect(complaints(() => coverOverTime({ ...base, to: "2026-05-05", growth: gap }))).toEqual([
      "missing growth",
    ]);
    const filled = coverOverTime({ ...base, to: "2026-05-05", growth: { ...gap, gaps: "next source" } });
    expect(filled.days[1]?.basis).toBe("forecast");
  });
  test("cold days move nothing, and are told", () => {
    const flat = (value: number) => Array<number>(366).fill(value);
    const normals = dailyNormals({ unit: "°C", sensor: "air", source: "n", min: flat(0), max: flat(8) });
    const { days, findings, reached } = coverOverTime({
      ...base,
      growth: { season: "warm-season", normals },
    });
    expect(days.at(-1)?.high.in("%")).toBeLessThan(4);
    expect(findings.map(({ code }) => code)).toEqual(["cover/not-reached", "cover/growth-standing"]);
    expect(reached.map(({ earliest }) => earliest)).toEqual([null, null, null]);
  });
  test("roots first", () => {
    const rooted = coverOverTime({ ...base, rooting: quantity(2, "week") });
    const plain = coverOverTime(base);
    expect(rooted.days[13]?.mid.in("%")).toBeCloseTo(rooted.start.in("%"), 10);
    expect(rooted.days[14]?.mid.in("%")).toBe(plain.days[0]?.mid.in("%"));
    expect(plain.notChecked.some((line) => line.startsWith("time to root"))).toBe(true);
    expect(rooted.notChecked.some((line) => line.startsWith("time to root"))).toBe(false);
  });
  test("a present cover goes on where plugs of that cover would", () => {
    const whole = coverOverTime({ ...base, to: "2026-07-31" });
    const at = 20;
    const cover = whole.days[at]?.mid ?? quantity(0, "%");
    const later = coverOverTime({
      ...base,
      start: { pattern: "triangular", spacing: quantity(300, "mm"), cover },
      from: whole.days[at]?.date as "2026-05-22",
      to: "2026-07-31",
    });
    later.days.forEach((day, i) => {
      expect(day.mid.in("%")).toBeCloseTo(whole.days[at + 1 + i]?.mid.in("%") as number, 6);
    });
  });
  test("plants at random places: bare ground is that where no patch reaches, by simulation", () => {
    // 60 plants/m2 on a plane that closes on itself; a fixed sequence of places
    let seed = 12345;
    const dice = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed / 2147483648;
    };
    const [side, n] = [2000, 240];
    const places = Array.from({ length: n }, () => [dice() * side, dice() * side] as const);
    const { days } = coverOverTime({
      ...base,
      start: {
        pattern: "random",
        plantsPerArea: quantity(n / 4, "count/m2"),
        plug: { diameter: quantity(20, "mm") },
      },
      to: "2026-06-01",
    });
    for (const at of [4, 14, 29]) {
      const r = 10 + 2 * (at + 1);
      let hit = 0;
      for (let i = 0; i < 4000; i++) {
        const [x, y] = [dice() * side, dice() * side];
        const within = places.some(([px, py]) => {
          const dx = Math.min(Math.abs(x - px), side - Math.abs(x - px));
          const dy = Math.min(Math.abs(y - py), side - Math.abs(y - py));
          return dx * dx + dy * dy <= r * r;
        });
        if (within) hit++;
      }
      expect(Math.abs((days[at]?.mid.in("%") as number) - hit / 40)).toBeLessThan(4);
    }
  });
  test("tells all that is wrong, and refuses fields that it does not know", () => {
    const wrong = {
      ...base,
      start: { ...plugs, spacing: quantity(0, "mm") },
      to: "2026-04-30",
      spread: rate(3, 2, 1),
      rooting: quantity(1.5, "d"),
      targets: [quantity(0, "%")],
    } as const;
    expect(complaints(() => coverOverTime(wrong))).toEqual([
      "range start.spacing",
      "date to",
      "conflict spread.low",
      "range rooting",
      "range targets[0]",
    ]);
    expect(complaints(() => coverOverTime({ ...base, target: 50 } as never))).toEqual(["type input.target"]);
    const unsourced = { nitrogen: { share: quantity(50, "%"), source: " " } };
    expect(complaints(() => coverOverTime({ ...base, factors: unsourced }))).toEqual([
      "missing factors.nitrogen.source",
    ]);
    const soil = dailyTemperatures({
      start: "2026-05-02",
      unit: "°C",
      sensor: "soil at 5 cm",
      source: "s",
      min: [1],
      max: [2],
    });
    const growth = { season: "warm-season", observed: soil } as const;
    expect(complaints(() => coverOverTime({ ...base, growth }))).toEqual(["conflict growth.observed.sensor"]);
    expect(
      complaints(() => coverOverTime({ ...base, start: { ...plugs, cover: quantity(5, "%") } as never })),
    ).toEqual(["conflict start"]);
  });
});

describe("turned round", () => {
  const spacings = fc.double({ min: 100, max: 600, noNaN: true });
  test("the spacing for a cover has it on the day, and a wider one has not", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("square", "triangular"),
        fc.double({ min: 20, max: 100, noNaN: true }),
        fc.integer({ min: 10, max: 150 }),
        (pattern, target, days) => {
          const plug = { side: quantity(5, "cm") };
          const by = addDays("2026-05-01", days);
          const { growth, spread } = base;
          const cover = quantity(target, "%");
          const { low, mid, high } = spacingForCover({
            plug,
            pattern,
            from: "2026-05-01",
            by,
            cover,
            growth,
            spread,
          });
          expect(low.spacing.in("mm")).toBeLessThan(mid.spacing.in("mm"));
          expect(mid.spacing.in("mm")).toBeLessThan(high.spacing.in("mm"));
          const on = (wider: number) =>
            coverOverTime({
              start: { plug, pattern, spacing: quantity(mid.spacing.in("mm") * wider, "mm") },
              from: "2026-05-01",
              to: by,
              growth,
              spread,
            })
              .days.at(-1)
              ?.mid.in("%") as number;
          expect(on(1 - 1e-9)).toBeGreaterThan(target - 1e-6);
          expect(on(1.01)).toBeLessThan(target);
        },
      ),
      { numRuns: 40 },
    );
  });
  test("the planting date for a cover has it by then, and a day later has not", () => {
    fc.assert(
      fc.property(
        spacings,
        fc.double({ min: 20, max: 100, noNaN: true }),
        fc.integer({ min: 0, max: 20 }),
        (spacing, target, root) => {
          const start = { ...plugs, spacing: quantity(spacing, "mm") } as CoverStart;
          const rooting = quantity(root, "d");
          const cover = quantity(target, "%");
          const { growth, spread } = base;
          const { low, mid, high } = plantingDateForCover({
            start,
            cover,
            rooting,
            earliest: "2025-10-01",
            by: "2026-09-30",
            growth,
            spread,
          });
          if (low !== null && high !== null) expect(daysBetween(low, high)).toBeGreaterThanOrEqual(0);
          if (mid === null) return;
          const reachedFrom = (from: typeof mid) =>
            coverOverTime({
              start,
              rooting,
              from,
              to: "2026-09-30",
              growth,
              spread,
              targets: [cover],
            }).reached[0]?.mid;
          const from = mid;
          if (daysBetween(from, "2026-09-30") < 2) return;
          expect(reachedFrom(from)).not.toBe(null);
          expect(reachedFrom(addDays(from, 1))).toBe(null);
        },
      ),
      { numRuns: 60 },
    );
  });
  test("with too little time there is no date", () => {
    const { growth, spread, start } = base;
    const late = { earliest: "2026-09-20", by: "2026-09-30", growth, spread, start } as const;
    expect(plantingDateForCover({ ...late, cover: quantity(95, "%") }).high).toBe(null);
    const scattered = {
      pattern: "random",
      plantsPerArea: quantity(40, "count/m2"),
      plug: { diameter: quantity(2, "cm") },
    } as const;
    expect(
      complaints(() => plantingDateForCover({ ...late, start: scattered, cover: quantity(100, "%") })),
    ).toEqual(["infeasible cover"]);
  });
  test("a cover seen twice gives the rate that leads from the one to the other", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 40, noNaN: true }),
        fc.double({ min: 41, max: 99, noNaN: true }),
        fc.integer({ min: 5, max: 100 }),
        fc.double({ min: 10, max: 100, noNaN: true }),
        (before, after, days, potential) => {
          const grid = { pattern: "square", spacing: quantity(30, "cm") } as const;
          const share = quantity(potential, "%");
          const speed = spreadRateFromCover({
            ...grid,
            before: quantity(before, "%"),
            after: quantity(after, "%"),
            time: quantity(days, "d"),
            potential: share,
          });
          const seen = coverOverTime({
            start: { ...grid, cover: quantity(before, "%") },
            from: "2026-05-01",
            to: addDays("2026-05-01", days),
            spread: { low: speed, mid: speed, high: speed, source: "seen" },
            growth: { potential: share, source: "seen" },
          });
          expect(seen.days.at(-1)?.mid.in("%")).toBeCloseTo(after, 6);
        },
      ),
    );
  });
  test("a rate is refused where none can be told", () => {
    const grid = { pattern: "square", spacing: quantity(30, "cm"), time: quantity(9, "d") } as const;
    const of = (before: number, after: number) =>
      complaints(() =>
        spreadRateFromCover({ ...grid, before: quantity(before, "%"), after: quantity(after, "%") }),
      );
    expect(of(10, 100)).toEqual(["range after"]);
    expect(of(20, 10)).toEqual(["conflict after"]);
    const patch = (before: number, after: number) =>
      complaints(() =>
        spreadRateFromPatch({
          before: quantity(before, "m2"),
          after: quantity(after, "m2"),
          time: quantity(0, "d"),
        }),
      );
    expect(patch(1, 2)).toEqual(["range time"]);
    expect(
      spreadRateFromPatch({ before: quantity(1, "m2"), after: quantity(1, "m2"), time: quantity(9, "d") })
        .value,
    ).toBe(0);
  });
});
