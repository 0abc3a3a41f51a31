import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { coverOverTime } from "../../../src/stand/index.js";
import { growth, never, noFactor, noRooting, percent, rate, rowOfFive, source } from "./row-of-five.js";

describe("a grow-in on a map", () => {
  const of = (more: object = {}) =>
    coverOverTime({
      start: rowOfFive,
      from: "2026-05-01",
      to: "2026-05-21",
      spread: rate(1, 2, 4),
      growth,
      ...more,
    } as Parameters<typeof coverOverTime>[0]);

  test("covers a cell on the day that the edge comes to it", () => {
    const { days, start } = of();
    expect([start.toString(), days.length, days[0]?.date, days.at(-1)?.date]).toEqual([
      "20 %",
      20,
      "2026-05-02",
      "2026-05-21",
    ]);
    const on = (date: string) => {
      const day = days.find((one) => one.date === date);
      return [day?.low, day?.mid, day?.high].map((share) => Math.round(share?.in("%") ?? Number.NaN));
    };
    // after 4, 5, 10 and 20 days the edges are 4, 8 and 16, then 5, 10 and 20, then 10, 20 and 40 mm on their way
    expect([on("2026-05-05"), on("2026-05-06"), on("2026-05-11"), on("2026-05-21")]).toEqual([
      [20, 20, 40],
      [20, 40, 60],
      [40, 60, 100],
      [60, 100, 100],
    ]);
    expect(days[0]).toMatchObject({ basis: "stated" });
    expect(days[0]?.potential.toString()).toBe("100 %");
  });

  test("says when a cover is there, and by whose word", () => {
    const found = of({ targets: [percent(20), percent(60), percent(61), percent(100)] });
    expect(
      found.reached.map(({ cover, earliest, mid, latest }) => [cover.toString(), earliest, mid, latest]),
    ).toEqual([
      ["20 %", "2026-05-01", "2026-05-01", "2026-05-01"],
      ["60 %", "2026-05-06", "2026-05-11", "2026-05-21"],
      // a part of a cell more takes the next cell
      ["61 %", "2026-05-09", "2026-05-16", null],
      ["100 %", "2026-05-11", "2026-05-21", null],
    ]);
    expect(found.findings).toEqual([
      {
        code: "cover/not-reached",
        severity: "note",
        params: { covers: ["61 %", "100 %"], last: "2026-05-21" },
        text: "Not reached by 2026-05-21 at the low rate: 61 %, 100 %.",
      },
    ]);
    expect(found).toMatchObject({ type: "cover-over-time", version: 1 });
    expect(found.restsOn).toEqual([
      { what: "spread", source: "the crew" },
      { what: "growth", source },
    ]);
    expect(found.notChecked).toEqual([
      ...["nitrogen", "water", "shade", "regulator"].map(noFactor),
      noRooting,
      ...never,
    ]);
  });

  test("looks for 50, 90 and 95 % where nobody says, and cautions where the mid rate is too slow", () => {
    const found = of({ to: "2026-05-11" });
    expect(found.reached.map(({ cover }) => cover.in("%"))).toEqual([50, 90, 95]);
    expect(found.findings[0]).toMatchObject({
      severity: "caution",
      params: { covers: ["50 %", "90 %", "95 %"], last: "2026-05-11" },
    });
    expect(of({ to: "2026-07-01" }).findings).toEqual([]);
  });

  test("a growth potential of 10 % or less stands still", () => {
    const at = (potential: number) =>
      of({ targets: [percent(20)], to: "2026-05-04", growth: { potential: percent(potential), source } })
        .findings;
    expect(at(10)).toEqual([
      {
        code: "cover/growth-standing",
        severity: "note",
        params: { days: 3, of: 3 },
        text: "Growth potential is 10 % or less on 3 of 3 days: too cold or too hot to spread.",
        source: "Turf growth potentials: a tool with many uses, turfgrass information center",
      },
    ]);
    expect(at(10.1)).toEqual([]);
  });

  test("factors multiply, and one above all is told", () => {
    const factor = (value: number) => ({ share: percent(value), source: "the crew" });
    // 2 mm a day by 50 and 80 % are 0.8: 10 mm take 13 days
    const found = of({ targets: [percent(40)], factors: { shade: factor(50), water: factor(80) } });
    expect(found.reached[0]?.mid).toBe("2026-05-14");
    expect(found.notChecked.slice(0, 2)).toEqual([noFactor("nitrogen"), noFactor("regulator")]);
    expect(of({ targets: [percent(20)], factors: { nitrogen: factor(100) } }).findings).toEqual([]);
    expect(of({ targets: [percent(20)], factors: { nitrogen: factor(120) } }).findings).toEqual([
      {
        code: "cover/factor-above-full",
        severity: "note",
        path: "factors.nitrogen",
        params: { factor: "nitrogen", percent: 120 },
        text: "The factor for nitrogen is 120 %: it raises the rate above the one stated as the best.",
      },
    ]);
    // nothing grows where a factor is nothing, and all three rates may be the same
    expect(
      of({ factors: { regulator: factor(0) }, spread: rate(2, 2, 2) })
        .days.at(-1)
        ?.high.in("%"),
    ).toBe(20);
  });

  test("rooting takes whole days, up to a year", () => {
    const found = of({ rooting: quantity(5, "d"), targets: [percent(40)] });
    expect(found.reached[0]).toMatchObject({
      earliest: "2026-05-09",
      mid: "2026-05-11",
      latest: "2026-05-16",
    });
    expect(found.notChecked).not.toContain(noRooting);
    expect(
      of({ rooting: quantity(365, "d") })
        .days.at(-1)
        ?.high.in("%"),
    ).toBe(20);
    expect(of({ rooting: quantity(0, "d"), targets: [percent(40)] }).reached[0]?.mid).toBe("2026-05-06");
  });

  test("a cover may be there on the first day, and what was given is not told as missing", () => {
    const found = of({ spread: rate(10, 20, 40), targets: [percent(40)], rooting: quantity(0, "d") });
    expect(found.reached[0]).toMatchObject({
      earliest: "2026-05-02",
      mid: "2026-05-02",
      latest: "2026-05-02",
    });
    expect(found.notChecked).toEqual([
      ...["nitrogen", "water", "shade", "regulator"].map(noFactor),
      ...never,
    ]);
  });

  test("a source has up to 400 letters", () => {
    const by = (letters: number) => () =>
      of({ growth: { potential: percent(100), source: "x".repeat(letters) } });
    expect(by(400)().restsOn[1]?.source).toHaveLength(400);
    expect(by(401)).toThrow(/up to 400 letters/);
  });

  test("1100 days are the most", () => {
    expect(of({ to: "2029-05-05" }).days).toHaveLength(1100);
  });

  test("sources of temperatures are told in the order in which they are trusted", () => {
    const series = (start: "2026-05-02" | "2026-05-03", name: string) =>
      dailyTemperatures({ start, unit: "°C", sensor: "air", source: name, min: [26], max: [36] });
    const found = of({
      to: "2026-05-03",
      targets: [percent(20)],
      growth: {
        season: "warm-season",
        observed: series("2026-05-02", "station"),
        forecast: series("2026-05-03", "forecast"),
      },
    });
    expect(found.restsOn.at(-1)).toEqual({ what: "growth", source: "station; forecast" });
    // the mean of 31 °C is the optimum of a warm-season grass
    expect(found.days.map(({ potential, basis }) => `${potential} ${basis}`)).toEqual([
      "100 % observed",
      "100 % forecast",
    ]);
  });
});
