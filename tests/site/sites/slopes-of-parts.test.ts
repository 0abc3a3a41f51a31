import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { areaOfShape, netArea, type SiteShape, siteArea } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const ft = (value: number) => ({ value, unit: "ft" });

describe("a slope as a property of a part", () => {
  // 3:4 grade, so that the stretch is 5/4
  const lawn = { shape: "rectangle", length: ft(100), width: ft(20), slope: "75 %" } as const;

  test("measures of a plan are brought to the ground, measures of the ground stay", () => {
    const site = siteArea({
      parts: [
        { ...lawn, name: "map", measured: "plan" },
        { ...lawn, name: "tape", measured: "ground" },
      ],
    });
    expect(site.parts.map(({ area, plan }) => [area.in("ft2"), plan?.in("ft2"), plan?.of])).toEqual([
      [2500, 2000, "plan"],
      [2000, 1600, "plan"],
    ]);
    expect(site.net.in("ft2")).toBe(4500);
    // and the parts go into the next sum
    expect(netArea(site).net.in("ft2")).toBe(4500);
  });

  test("a plan area says so itself", () => {
    const bank: SiteShape = {
      shape: "measured",
      area: { value: 800, unit: "ft2", of: "plan" },
      slope: { value: 75, unit: "% grade" },
    };
    close(areaOfShape(bank).in("ft2"), 1000);
    expect(areaOfShape({ ...bank, slope: "level" }).in("ft2")).toBe(800);
    expect(areaOfShape({ ...bank, slope: quantity(75, "% grade") }).of).toBe("none");
  });

  test("refusals", () => {
    expect(complaints(untyped(areaOfShape, lawn))).toEqual(["missing measured"]);
    expect(complaints(untyped(areaOfShape, { ...lawn, slope: "1:4", measured: "map" }))).toEqual([
      "unit/ambiguous slope",
      "type measured",
    ]);
    expect(complaints(untyped(areaOfShape, { ...lawn, slope: undefined, measured: "plan" }))).toEqual([
      "missing slope",
    ]);
    const plan = { value: 800, unit: "ft2", of: "plan" };
    expect(complaints(untyped(areaOfShape, { shape: "measured", area: plan }))).toEqual(["missing slope"]);
    expect(
      complaints(untyped(areaOfShape, { shape: "measured", area: plan, slope: "3:1", measured: "ground" })),
    ).toEqual(["conflict measured"]);
  });
});

describe("doors", () => {
  test("a shape that is misspelt, a field that is", () => {
    expect(problemsOf(untyped(areaOfShape, { shape: "rectangel" }))[0]?.suggestion).toBe("rectangle");
    expect(problemsOf(untyped(siteArea, { parts: [], cutouts: [] }))).toMatchObject([
      { code: "type", path: "cutouts", suggestion: "cutOuts" },
      { code: "missing", path: "parts" },
    ]);
    expect(complaints(untyped(netArea, { parts: [{ area: quantity(1, "m2"), nmae: "x" }] }))).toEqual([
      "type parts[0].nmae",
    ]);
  });

  test("areas tagged as treated or gross are taken, and lose the tag", () => {
    const site = netArea({
      parts: [{ area: quantity(2, "acre", "gross") }, { area: quantity(1, "acre", "treated") }],
    });
    expect([site.gross.value, site.parts.map(({ area }) => area.of)]).toEqual([3, ["none", "none"]]);
    expect(areaOfShape({ shape: "measured", area: quantity(1, "acre", "treated") }).of).toBe("none");
  });

  test("what a caller hands in is not kept", () => {
    const part = { name: "lawn", area: quantity(1, "acre") };
    const parts = [part];
    const site = netArea({ parts });
    parts.pop();
    (part as { name: string }).name = "meadow";
    expect(site.parts).toEqual([{ name: "lawn", area: quantity(1, "acre") }]);
  });

  test("plain values that are no texts", () => {
    for (const name of [3, { toString: 1 }, [], "x".repeat(300)]) {
      expect(complaints(untyped(netArea, { parts: [{ area: quantity(1, "m2"), name }] }))).toEqual([
        "type parts[0].name",
      ]);
    }
    for (const shape of [{ toString: 1 }, 3, null, ["circle"]]) {
      expect(complaints(untyped(areaOfShape, { shape }))).toEqual(["type shape"]);
    }
    for (const unit of [3, { toString: 1 }, "ft2"]) {
      const points = [
        [0, 0],
        [1, 0],
        [1, 1],
      ];
      expect(complaints(untyped(areaOfShape, { shape: "polygon", points, unit }))).toHaveLength(1);
    }
  });
});
