import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { type WaterProduct, waterReport } from "../../../src/tank/index.js";

// What is told of a product that breaks down in the tank, and of one of which nothing is known.

const report = (pH: number | undefined, hours: number | undefined, ...products: readonly WaterProduct[]) =>
  waterReport({
    test: pH === undefined ? {} : { pH },
    products,
    ...(hours !== undefined && { timeToEmpty: quantity(hours, "h") }),
  });
const captan: WaterProduct = { id: "c", name: "Captan C", active: "captan" };
const told = (pH: number, hours: number, product: WaterProduct = captan) =>
  report(pH, hours, product).findings.find(({ code }) => code === "water/hydrolysis");

describe("a breakdown in the tank", () => {
  test("is told with every half-life that it rests on, and how to keep it small", () => {
    // Captan at pH 8: 10 minutes; in half an hour three half-lives, 87.5 %.
    expect(told(8, 0.5)).toEqual({
      code: "water/hydrolysis",
      severity: "caution",
      params: { active: "captan", pH: 8, hours: 0.5, least: 80, most: 90 },
      text: "Captan C: water of pH 8 breaks down 80 to 90 % of captan before the tank is empty (0.5 h), by published half-lives (pH 8: 10 min, Ontario Ministry of Agriculture (sprayers101)). They are printed without a temperature; warm water is faster. Mix less at a time, or bring the pH down as the label says.",
      source: expect.objectContaining({ publisher: "Ontario Ministry of Agriculture (sprayers101)" }),
    });
  });

  test("of one figure is told as one, with a temperature and without that remark", () => {
    // Thiophanate-methyl at pH 9: 0.7 d at 25 °C; in 16.8 h half of it.
    const text = told(9, 16.8, { id: "t", active: "thiophanate-methyl" })?.text;
    expect(text).toBe(
      "t: water of pH 9 breaks down 50 % of thiophanate-methyl before the tank is empty (16.8 h), by published half-lives (pH 9, 25 °C: 0.7 d, FAO/WHO Joint Meeting on Pesticide Residues). Mix less at a time, or bring the pH down as the label says.",
    );
  });

  test("a half-life that is printed as a range is told as one", () => {
    expect(told(6, 24, { id: "k", active: "carbaryl" })?.text).toContain("(pH 6: 100 to 150 d, ");
  });

  test("more acid is advised above a printed pH only, or at one above neutral", () => {
    const acid = /bring the pH down/;
    // Captan is printed at 5, 7, 8 and 9.
    expect(told(4, 10)?.text).not.toMatch(acid);
    expect(told(5, 10)?.text).not.toMatch(acid);
    expect(told(7, 10)?.text).not.toMatch(acid);
    expect(told(6, 10)?.text).toMatch(acid);
    expect(told(7.5, 10)?.text).toMatch(acid);
    expect(told(9, 10)?.text).toMatch(acid);
  });

  test("in no time there is none, and none is told", () => {
    expect(told(8, 0)).toBeUndefined();
    expect(report(8, 0, captan).hydrolysis).toHaveLength(1);
  });
});

describe("what is not known of a breakdown", () => {
  const open = (pH: number | undefined, hours: number | undefined, ...products: readonly WaterProduct[]) =>
    report(pH, hours, ...products).notChecked.filter((line) => line.startsWith("breakdown"));

  test("is told product by product, with why", () => {
    expect(open(8, 1, { id: "a" })).toEqual(["breakdown of a in the tank: no active ingredient is stated"]);
    expect(open(8, undefined, captan)).toEqual([
      "breakdown of Captan C in the tank: no time until the tank is empty is stated",
    ]);
    expect(open(8, 1, { id: "g", active: "glyphosate" })).toEqual([
      "breakdown of g in the tank: no half-life of glyphosate on file",
    ]);
    expect(open(8, 1, captan)).toEqual([]);
    expect(open(undefined, 1, captan)).toEqual([]);
  });

  test("what was looked at is listed as checked where there was something to look at", () => {
    const line = "breakdown in the tank by published half-lives";
    expect(report(8, 1, captan).checked).toContain(line);
    expect(report(8, 1, { id: "a" }).checked).not.toContain(line);
    expect(report(8, 1).checked).not.toContain(line);
    expect(report(8, 1, captan).hydrolysis.map(({ product }) => product)).toEqual(["c"]);
  });
});
