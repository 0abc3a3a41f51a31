import { describe, expect, test } from "vitest";
import { runoffMenu, runoffPoints } from "../../../src/limits/index.js";

describe("points that nobody states", () => {
  test("are asked for by their measures, in a sentence", () => {
    const measures = [
      { measure: "field slope of 3 % or less" },
      { measure: "Conservation program" },
      { measure: "own measure", points: 1 },
      { measure: "sandy soil" },
    ];
    const site = runoffPoints({ menu: "US EPA", measures });
    // 2 of the menu and 1 stated
    expect(site).toMatchObject({ points: 3, source: runoffMenu.source });
    expect(site.unknown).toEqual(["field slope of 3 % or less", "sandy soil"]);
    expect(site.measures.map(({ by }) => by)).toEqual(["menu", "stated"]);
    expect(site.findings).toEqual([
      {
        code: "runoff/points-not-stated",
        severity: "caution",
        params: { measures: ["field slope of 3 % or less", "sandy soil"] },
        text: 'Nobody states the points of "field slope of 3 % or less", "sandy soil": state them from the current menu.',
      },
    ]);
    const own = runoffPoints({ menu: [{ measure: "swale", points: 2 }], measures: [{ measure: "Swale " }] });
    expect([own.points, own.findings, "source" in own]).toEqual([2, [], false]);
  });
});
