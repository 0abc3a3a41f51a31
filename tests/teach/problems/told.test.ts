// What a learner is told about a mistake has to be true of the problem at hand: a mistake of one kind that is named in two
// kinds of problems may be told in words of the other. Each row is a kind of problem and what would be false there.
import { describe, expect, it } from "vitest";
import { problem } from "../../../src/teach/problems/index.js";

type Row = readonly [topic: string, levels: readonly (1 | 2 | 3)[], never: RegExp, why: string];

const rows: readonly Row[] = [
  ["weather/wind", [1, 2], /added/, "nothing is added to a wind"],
  ["stand/sod", [1, 2], /profit|cost|weight/, "sod is an area"],
  ["stand/plugs", [2], /profit|cost/, "plugs have no price here"],
  ["price/margin", [2], /It is added/, "a margin is not added to the cost"],
  ["plan/season-order", [2], /That is a weight/, "fluid ounces are no weight"],
  ["plan/route", [2], /weight|package/, "a hopper is filled, and holds no packages"],
  [
    "nutrient/cost",
    [2],
    /priced part of a package/,
    "the price of the whole bag was taken for that of a pound",
  ],
  ["stand/mowing", [3], /depth/, "grass has a height"],
  ["numeric/mean", [1], /standard deviation/, "no deviation is asked for"],
  ["spray/whole-boom", [1], /width of the area/, "no passes are counted"],
  ["quantity/rates-per-acre", [1], /divided by 10/, "who takes ten thousands for an acre multiplies here"],
  [
    "spray/active-ingredient",
    [2, 3],
    /density/,
    "pounds of active ingredient in a gallon are no density of the liquid",
  ],
  ["price/per-area", [1, 2], /divided the wrong way/, "nothing has to be divided"],
  ["spray/speed", [3], /lands on/, "a walk over a course puts nothing down"],
  ["tank/coverage", [3], /You added/, "the room in the tank is what is subtracted"],
  ["spread/passes", [3], /second pass twice/, "the rate was halved twice"],
  ["spread/calibration", [2], /second pass twice/, "the rate was halved twice"],
  ["spray/hand-gun", [2], /Divide the whole area/, "the spray has to be divided by the area"],
];

const saidIn = (topic: string, level: 1 | 2 | 3, units: "US" | "metric"): readonly string[] =>
  Array.from({ length: 30 }, (_, seed) => problem({ topic, level, seed, units })).flatMap(({ mistakes }) =>
    mistakes.map(({ says }) => says),
  );

describe("what is told about a mistake", () => {
  it.each(rows)("%s %j: never %s, for %s", (topic, levels, never) => {
    for (const level of levels)
      for (const units of ["US", "metric"] as const)
        expect(saidIn(topic, level, units).filter((says) => never.test(says))).toEqual([]);
  });

  it("a rule of thumb in pounds an acre is told in kilograms a hectare, too", () => {
    // 2 times the ppm holds for 2,000,000 of the one in an area or of the other
    const told = saidIn("soil/layer", 2, "metric").filter((says) => /doubled/.test(says));
    expect(told.length).toBeGreaterThan(0);
    for (const says of told) expect(says).toContain("2,000,000 kg a hectare");
  });
});

const posed = (topic: string, level: 1 | 2 | 3, units: "US" | "metric") =>
  Array.from({ length: 30 }, (_, seed) => problem({ topic, level, seed, units }));

describe("a problem and its working", () => {
  it("sprays a volume that a boom puts down: 10 to 120 gal an acre, 100 to 1,200 L a hectare", () => {
    for (const [units, least, most] of [
      ["US", 10, 120],
      ["metric", 100, 1200],
    ] as const)
      for (const { answer } of posed("tank/spray-for-active", 2, units)) {
        expect(answer.value).toBeGreaterThanOrEqual(least);
        expect(answer.value).toBeLessThanOrEqual(most);
      }
  });

  it("works in the units of the problem, and with the figures of its text", () => {
    // 1/128 acre is 31.616 m²: no feet on the way to meters
    for (const { steps } of posed("spray/catch", 1, "metric")) {
      expect(steps.join(" ")).not.toMatch(/\bft\b/);
      // 4,046.8564224 / 128, told before it is divided
      expect(steps[0]).toMatch(/^A = 31\.6161 m² \(1\/128 acre\); /);
    }
    // 0.748 times the wind at 10 m, not the logarithms behind it
    for (const { steps, text } of posed("weather/wind", 2, "US"))
      expect(steps.join(" ")).toContain(/is ([\d.]+) times/.exec(text)?.[1]);
    for (const { steps } of posed("numeric/mean", 2, "US")) expect(steps.join(" ")).toContain("÷ √(2)");
  });

  it("says of what went down that it is nitrogen, as the limit is", () => {
    for (const { text } of posed("limits/nitrogen-left", 2, "metric"))
      expect(text.match(/of nitrogen/g)?.length).toBeGreaterThanOrEqual(3);
  });

  it("says how strong a concentrate is by, where the spray is told by volume", () => {
    for (const { text } of posed("tank/strength", 2, "US")) expect(text.match(/by volume/g)).toHaveLength(2);
  });
});
