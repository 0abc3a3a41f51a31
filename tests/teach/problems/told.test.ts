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
