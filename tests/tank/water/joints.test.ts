import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { alkalineHydrolysis, ammoniumSulfateMinimum, waterReport } from "../../../src/tank/index.js";

// Where one rule of the water hands over to another.

test("no acid is advised where the water has the lowest pH that is printed", () => {
  // Captan at pH 5: 32 h; in 64 h two half-lives, 75 %, told as 70 to 80.
  const { findings } = waterReport({
    test: { pH: 5 },
    products: [{ id: "c", name: "Captan C", active: "captan" }],
    timeToEmpty: quantity(64, "h"),
  });
  expect(findings.find(({ code }) => code === "water/hydrolysis")?.text).toBe(
    "Captan C: water of pH 5 breaks down 70 to 80 % of captan before the tank is empty (64 h), by published half-lives (pH 5: 32 h, Ontario Ministry of Agriculture (sprayers101)). They are printed without a temperature; warm water is faster. Mix less at a time.",
  );
});

test("an active ingredient is found however many blanks its label prints in it", () => {
  const active = (name: string) =>
    alkalineHydrolysis({ active: name, pH: 9, time: quantity(1, "h") })?.rows.length;
  expect(active("Thiophanate  methyl ")).toBe(1);
});

test("a stated hardness with one of its two cations gives the range of the equation, not a minimum", () => {
  const hardness = quantity(300, "mg/L", "hardness as CaCO3");
  for (const ions of [{ Mg: quantity(20, "mg/L", "Mg") }, { Ca: quantity(20, "mg/L", "Ca") }]) {
    const report = waterReport({ test: { hardness, ...ions } });
    expect(report.ammoniumSulfateFromHardness).toBeDefined();
    expect(report.ammoniumSulfate).toBeUndefined();
  }
});

test("a hardness of nothing beside magnesium is contradicted, and is no slip of grains", () => {
  const { findings } = waterReport({
    test: { hardness: quantity(0, "mg/L", "hardness as CaCO3"), Mg: quantity(20, "mg/L", "Mg") },
  });
  const [found] = findings.filter(({ code }) => code === "water/hardness-disagrees");
  expect(found?.text).toContain(
    "The test gives a hardness of 0 mg/L as CaCO3, and magnesium for at least 82.4",
  );
  expect(found?.text).not.toContain("grains per gallon");
});

test("the cation equation cites where it was read", () => {
  expect(ammoniumSulfateMinimum({ Ca: quantity(100, "mg/L", "Ca") }).source).toEqual({
    title: "Equation Used to Calculate Rate of AMS, Crop & Pest Report, 2 July 2015",
    publisher: "North Dakota State University Extension",
    year: 2015,
    url: "https://www.ag.ndsu.edu/cpr/weeds/equation-used-to-calculate-rate-of-ams-07-02-15",
  });
});
