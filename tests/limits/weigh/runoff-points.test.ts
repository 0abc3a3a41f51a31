import { describe, expect, test } from "vitest";
import { runoffMenu, runoffPoints } from "../../../src/limits/index.js";

describe("points from memory", () => {
  test("are told by the measures that have them, in a sentence", () => {
    const measures = [
      { measure: "field slope of 3 % or less" },
      { measure: "Sandy soil, hydrologic group A" },
      { measure: "conservation program" },
      { measure: "own measure", points: 1 },
      { measure: "nobody knows" },
    ];
    const site = runoffPoints({ menu: "US EPA", measures });
    expect(site).toMatchObject({ points: 8, unknown: ["nobody knows"], source: runoffMenu.source });
    expect(site.measures.map(({ by }) => by)).toEqual([
      "menu, from memory",
      "menu, from memory",
      "menu",
      "stated",
    ]);
    expect(site.findings).toEqual([
      {
        code: "runoff/points-from-memory",
        severity: "caution",
        params: { measures: ["field slope of 3 % or less", "Sandy soil, hydrologic group A"] },
        text: 'The points of "field slope of 3 % or less", "Sandy soil, hydrologic group A" are from memory: read the current menu.',
        source: runoffMenu.source,
      },
    ]);
    const own = runoffPoints({ menu: [{ measure: "swale", points: 2 }], measures: [{ measure: "Swale " }] });
    expect([own.points, own.findings, "source" in own]).toEqual([2, [], false]);
  });
});
