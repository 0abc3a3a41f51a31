import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  type AmendmentConventions,
  type AmendmentSite,
  amendmentPlan,
  amendmentPlanText,
  type FertilizerInput,
  fertilizer,
  productRates,
  type SeasonProgramInput,
  type SoilReport,
  seasonProgram,
} from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

interface Job {
  readonly report: SoilReport;
  readonly site: AmendmentSite;
  readonly conventions: AmendmentConventions;
  readonly products: Readonly<Record<string, FertilizerInput>>;
  readonly season: Omit<SeasonProgramInput, "total">;
}

const file = new URL("../../../examples/soil-report/job.json", import.meta.url);
const job = (): Job => JSON.parse(readFileSync(file, "utf8")) as Job;
const changed = (part: "report" | "site" | "conventions", more: object): (() => unknown) => {
  const { report, site, conventions } = job();
  const all = { report, site, conventions, [part]: { ...job()[part], ...more } };
  return () => amendmentPlan(all.report, all.site, all.conventions);
};

describe("the plan of the example", () => {
  const { report, site, conventions, products, season } = job();
  const plan = amendmentPlan(report, site, conventions);

  test("is the work of the single functions", () => {
    // 4.6 meq/100 g for pH 7.0 is 110 lb in the table of Pennsylvania, and the limestone has 92 % less 2 % of water.
    expect(plan.lime?.requirement.rate.in("lb/1000 ft2")).toBe(110);
    expect(plan.lime?.product.rate.in("lb/1000 ft2")).toBeCloseTo(110 / 0.9016, 8);
    expect(plan.lime?.amount.in("lb")).toBeCloseTo((110 / 0.9016) * 80, 6);
    expect(plan.lime?.split.applications.map(({ date }) => date)).toEqual(["2026-09-15", "2027-03-15"]);
    const [phosphorus, potassium] = plan.needs;
    // 4 in at 1.35 g/cm3 are 137.16 kg/m2; use is an eighth and a half of the nitrogen.
    const perPpm = (137.16e-6 * 92.903) / 0.45359237;
    expect(phosphorus?.need.in("lb/1000 ft2")).toBeCloseTo(3 / 8 + (21 - 18) * perPpm, 4);
    expect(potassium?.need.in("lb/1000 ft2")).toBeCloseTo(1.5 + (37 - 42) * perPpm, 4);
    expect(plan.nitrogen.in("lb/1000 ft2")).toBeCloseTo(3 - (18 * 0.2259 * 12 * 0.22661) / 43.56, 3);
  });
  test("feeds product rates and the season without a hand in between", () => {
    const rates = productRates({
      steps: plan.targets.map((target) => ({
        target,
        product: fertilizer(products[target.of] as FertilizerInput),
      })),
    });
    expect(rates.steps.map(({ nutrient }) => nutrient)).toEqual(["P2O5", "K2O", "N"]);
    for (const { target, supplied } of rates.balance) {
      expect(supplied.in("lb/1000 ft2")).toBeGreaterThanOrEqual(target.in("lb/1000 ft2") - 1e-9);
    }
    const dates = seasonProgram({ ...season, total: plan.nitrogen });
    expect(dates.planned.in("lb/1000 ft2")).toBeCloseTo(plan.nitrogen.in("lb/1000 ft2"), 8);
  });
  test("says what it could not judge, and how it found each figure", () => {
    expect(plan.notChecked.join("\n")).toMatch(/S: not in the report/);
    for (const { method, source } of plan.figures)
      expect([method.length > 0, source !== ""]).toEqual([true, true]);
    expect(plan.cautions.map(({ code }) => code)).toContain("caution/lime-on-leaves");
    expect(plan.gypsum).toBeNull();
    const text = amendmentPlanText(plan);
    for (const line of ["Lime", "Nutrients", "Irrigation water", "Not checked"]) {
      expect(text.split("\n")).toContain(line);
    }
    expect(text).not.toMatch(/NaN|undefined|\[object/);
  });
  test("leaves its input alone, and survives JSON", () => {
    const again = job();
    amendmentPlan(again.report, again.site, again.conventions);
    expect(again).toEqual(job());
    expect(JSON.parse(JSON.stringify(plan)).targets[0].of).toBe("N");
  });
});

describe("a plan", () => {
  test("gives no lime at the target, and gypsum where sodium is high", () => {
    const { report, site, conventions } = job();
    const limed = amendmentPlan({ ...report, pH: 7.1 }, site, conventions);
    expect([limed.lime, limed.checked.some((line) => line.includes("no lime is called for"))]).toEqual([
      null,
      true,
    ]);
    const elements = { ...report.elements, Na: { value: 400, unit: "mg/kg", of: "Na/soil" } as never };
    const sodic = amendmentPlan({ ...report, elements }, site, conventions);
    expect(sodic.gypsum?.purity).toBe(90);
    expect(sodic.cautions.map(({ code }) => code)).toContain("caution/sodium-hazard");
  });
  test("does not take little sodium for granted where free lime may hide it", () => {
    const { report, site, conventions } = job();
    const hidden = (pH: number) =>
      amendmentPlan({ ...report, pH, acidity: quantity(0, "meq/100 g") }, site, conventions).notChecked.some(
        (line) => line.startsWith("sodium hidden by free lime"),
      );
    expect([hidden(7.1), hidden(8.2)]).toEqual([false, true]);
  });
  test("still stands where one method has no answer", () => {
    const { report, site, conventions } = job();
    const acidity = { value: 1.2, unit: "meq/100 g", of: "none" } as never;
    const conductivity = { value: 9, unit: "dS/m", of: "none" } as never;
    const plan = amendmentPlan(
      { ...report, acidity, water: { ...report.water, conductivity } },
      site,
      conventions,
    );
    expect([plan.lime, plan.water?.leaching]).toEqual([null, null]);
    const codes = plan.findings.map(({ code }) => code);
    expect(codes).toContain("lime/beyond-table");
    expect(codes).toContain("water/too-salty-for-level");
    expect(plan.needs.length).toBe(2);
    expect(plan.notChecked.some((line) => line.startsWith("lime:"))).toBe(true);
  });
  test("mixes all of the lime into bare soil at once", () => {
    const { report, site, conventions } = job();
    const { most, ...lime } = conventions.lime as NonNullable<typeof conventions.lime>;
    expect(most).toBeDefined();
    const bare = amendmentPlan(report, { ...site, standing: false }, { ...conventions, lime });
    expect(bare.lime?.split.applications.map(({ rate }) => rate.in("lb/1000 ft2"))).toEqual([
      bare.lime?.product.rate.in("lb/1000 ft2"),
    ]);
    expect(amendmentPlanText(bare)).toMatch(/all at once, mixed in/);
    expect(complaints(() => amendmentPlan(report, site, { ...conventions, lime }))).toEqual([
      "missing conventions.lime.most",
    ]);
  });
  test("keeps a maximum that is stated for bare soil, and says what it may have been meant for", () => {
    const { report, site, conventions } = job();
    const bare = amendmentPlan(report, { ...site, standing: false }, conventions);
    const turf = amendmentPlan(report, site, conventions);
    expect(bare.lime?.split.applications).toEqual(turf.lime?.split.applications);
    expect(bare.lime?.split.applications.length).toBeGreaterThan(1);
    expect(bare.findings.map(({ code }) => code)).toContain("lime/split-on-bare-soil");
    expect(turf.findings.map(({ code }) => code)).not.toContain("lime/split-on-bare-soil");
    expect(amendmentPlanText(bare)).not.toMatch(/all at once/);
  });
  test("plans nothing that no convention was stated for", () => {
    const { report, site } = job();
    const { water, ...dry } = report;
    expect(water).toBeDefined();
    const bare = amendmentPlan(dry, site, {});
    expect([bare.lime, bare.needs, bare.gypsum, bare.water]).toEqual([null, [], null, null]);
    expect(bare.notChecked.length).toBeGreaterThan(4);
    expect(bare.nitrogen.value).toBe(3);
  });
  test("takes pounds an acre, and every method that the report has the figures for", () => {
    const { report, site, conventions } = job();
    const lime = conventions.lime as NonNullable<AmendmentConventions["lime"]>;
    const K = { value: 42, unit: "lb/acre", of: "K" } as never;
    const inPounds = amendmentPlan({ ...report, elements: { ...report.elements, K } }, site, conventions);
    expect(inPounds.needs[1]?.test.in("lb/acre")).toBeCloseTo(42, 8);
    const by = (more: object, reported: object = {}) =>
      amendmentPlan({ ...report, ...reported }, site, { lime: { ...lime, ...more } as typeof lime }).lime
        ?.requirement.rate.value;
    expect(by({ method: "exchangeable acidity" })).toBeGreaterThan(0);
    const targetSaturation = { value: 80, unit: "%" };
    expect(by({ method: "base saturation", targetSaturation })).toBeGreaterThan(0);
    expect(
      by({ method: "pH buffering", targetPH: 6.5, perUnitPH: { value: 2, unit: "meq/100 g" } }),
    ).toBeGreaterThan(0);
    expect(by({ method: "Sikora buffer, Oregon", targetPH: 6.4 }, { bufferPH: 6.2 })).toBe(2.8);
    expect(by({ method: "Mehlich buffer, Pennsylvania fields" })).toBe(4600);
  });
  test("refuses a bad report with every path", () => {
    expect(complaints(changed("report", { pH: 15, extractant: "vinegar", date: "spring" }))).toEqual([
      "date report.date",
      "type report.extractant",
      "range report.pH",
    ]);
    expect(complaints(changed("report", { acidity: undefined }))).toEqual(["missing report.acidity"]);
    expect(complaints(changed("report", { extractant: "Olsen" }))).toEqual([
      "conflict report.extractant",
      "conflict report.extractant",
    ]);
    const { lime } = job().conventions;
    expect(complaints(changed("conventions", { lime: { ...lime, targetPH: 6.7, monthsApart: 0 } }))).toEqual([
      "range conventions.lime.targetPH",
    ]);
    const quality = { CCE: 300, moisture: 120 };
    expect(
      complaints(changed("conventions", { lime: { ...lime, material: { id: "a", quality }, most: {} } })),
    ).toEqual([
      "range conventions.lime.material.quality.CCE",
      "range conventions.lime.material.quality.moisture",
      "missing conventions.lime.most.source",
    ]);
    expect(complaints(changed("conventions", { limes: lime }))).toEqual(["type conventions.limes"]);
    expect(
      complaints(changed("report", { elements: { K: { value: 1, unit: "mg/kg", of: "P/soil" } } })),
    ).toEqual(["substance/mismatch report.elements.K"]);
    expect(complaints(() => amendmentPlanText({} as never))).toEqual(["missing plan.type"]);
  });
});
