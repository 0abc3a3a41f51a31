import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  alkalineHydrolysis,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
  halfLives,
  hardnessClass,
  hardnessFromIons,
  hydrolysisLoss,
  relativeAcidity,
  waterReport,
} from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const hard = (value: number, unit: "mg/L" | "grain/gal" | "grain/imp gal" = "mg/L") =>
  quantity(value, unit, "hardness as CaCO3");

describe("hardness", () => {
  test("ions, grains and ppm", () => {
    const water = hardnessFromIons({ Ca: quantity(100, "mg/L", "Ca"), Mg: quantity(40, "ppm w/w", "Mg") });
    // 2.497 x 100 + 4.118 x 40, factors as printed.
    expect(water.in("mg/L")).toBeCloseTo(249.7 + 164.72, 0);
    // 64.79891 mg in 231 in3 of 16.387064 mL; in 4.54609 L.
    expect(hard(1, "grain/gal").in("mg/L")).toBeCloseTo(64.79891 / (0.231 * 16.387064), 10);
    expect(hard(1, "grain/imp gal").in("mg/L")).toBeCloseTo(64.79891 / 4.54609, 10);
  });

  test("classes by whole mg/L", () => {
    const usgs = (value: number) => hardnessClass(hard(value), "USGS");
    expect([0, 60, 60.4, 60.5, 120, 121, 180, 180.5, 900].map(usgs)).toEqual([
      "soft",
      "soft",
      "soft",
      "moderately hard",
      "moderately hard",
      "hard",
      "hard",
      "very hard",
      "very hard",
    ]);
    expect([75, 76, 150, 151, 300, 301].map((value) => hardnessClass(hard(value), "Vermont"))).toEqual([
      "soft",
      "moderately hard",
      "moderately hard",
      "hard",
      "hard",
      "very hard",
    ]);
    expect(hardnessClass(hard(11, "grain/gal"), "USGS")).toBe("very hard");
  });

  test("what is wrong is named", () => {
    const paths = (run: () => unknown) => errorOf(run).problems.map(({ path }) => path);
    expect(paths(() => hardnessFromIons({} as never))).toEqual(["Ca", "Mg"]);
    expect(paths(() => hydrolysisLoss({} as never))).toEqual(["halfLife", "time"]);
    expect(paths(() => alkalineHydrolysis({ pH: 15 } as never))).toEqual(["active", "pH", "time"]);
    expect(
      paths(() =>
        ammoniumSulfateMinimum({ Ca: quantity(-1, "mg/L", "Ca"), Mg: quantity(1, "psi") as never }),
      ),
    ).toEqual(["Ca", "Mg"]);
    const Ca = quantity(100, "mg/L", "Ca");
    expect(errorOf(() => hardnessFromIons({ Ca } as never)).path).toBe("Mg");
    expect(errorOf(() => hardnessFromIons({ Ca, Mg: quantity(-1, "mg/L", "Mg") })).path).toBe("Mg");
    expect(errorOf(() => hardnessFromIons({ Ca, Mg: Ca as never })).code).toBe("substance/mismatch");
    expect(errorOf(() => hardnessClass(hard(-1), "USGS")).code).toBe("range");
    expect(errorOf(() => hardnessClass(hard(1), "toString" as never)).problems[0]?.choices).toEqual([
      "USGS",
      "Vermont",
    ]);
    expect(errorOf(() => hardnessClass(quantity(1, "psi") as never, "USGS")).path).toBe("hardness");
  });
});

describe("ammonium sulfate by the cation equation", () => {
  const per100 = (ions: Parameters<typeof ammoniumSulfateMinimum>[0]) =>
    ammoniumSulfateMinimum(ions).minimum.in("lb/gal") * 100;

  test("each cation by its printed coefficient, and only those tested", () => {
    expect(per100({ K: quantity(1000, "mg/L", "K") })).toBeCloseTo(2, 12);
    expect(per100({ Na: quantity(1000, "mg/L", "Na") })).toBeCloseTo(5, 12);
    expect(per100({ Ca: quantity(1000, "mg/L", "Ca") })).toBeCloseTo(9, 12);
    expect(per100({ Mg: quantity(1000, "mg/L", "Mg") })).toBeCloseTo(14, 12);
    expect(per100({ Fe: quantity(1000, "mg/L", "Fe") })).toBeCloseTo(42, 12);
    const some = ammoniumSulfateMinimum({ Ca: quantity(0, "mg/L", "Ca") });
    expect(some.notCounted).toEqual(["K", "Na", "Mg", "Fe"]);
    expect(some.text).toContain("minimum by the equation, not the need");
    expect(errorOf(() => ammoniumSulfateMinimum({})).code).toBe("missing");
    expect(errorOf(() => ammoniumSulfateMinimum({ Ca: quantity(-1, "mg/L", "Ca") })).path).toBe("Ca");
  });

  test("the range by hardness holds for every mixture of calcium and magnesium", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (ca, mg) => {
          const ions = { Ca: quantity(ca, "mg/L", "Ca"), Mg: quantity(mg, "mg/L", "Mg") };
          const { min, max } = ammoniumSulfateFromHardness(hardnessFromIons(ions));
          const exact = ammoniumSulfateMinimum(ions).minimum.in("lb/gal");
          expect(exact).toBeGreaterThanOrEqual(min.in("lb/gal") * (1 - 1e-12));
          expect(exact).toBeLessThanOrEqual(max.in("lb/gal") * (1 + 1e-12));
        },
      ),
    );
  });
});

describe("hydrolysis", () => {
  test("half after a half-life, and the average is the mean of what goes out", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (halfLife, time) => {
          const loss = hydrolysisLoss({ halfLife: quantity(halfLife, "h"), time: quantity(time, "h") });
          const atEnd = loss.atEnd.in("%");
          expect(atEnd).toBeCloseTo(100 * (1 - 0.5 ** (time / halfLife)), 8);
          // Mean over 400 portions, each lost as far as its own time.
          let sum = 0;
          for (let i = 0; i < 400; i++) sum += 1 - 0.5 ** ((time * (i + 0.5)) / 400 / halfLife);
          if (time / halfLife < 20) expect(loss.onAverage.in("%")).toBeCloseTo(sum / 4, 1);
          expect(loss.onAverage.in("%")).toBeLessThanOrEqual(atEnd + 1e-9);
        },
      ),
    );
    const small = hydrolysisLoss({ halfLife: quantity(150, "d"), time: quantity(1, "s") });
    expect(small.onAverage.in("%") / small.atEnd.in("%")).toBeCloseTo(0.5, 6);
    // 1 - (1 - e^-y) / y for y = 0.00012 ln 2, to forty digits apart from the code.
    const early = hydrolysisLoss({ halfLife: quantity(1, "h"), time: quantity(0.00012, "h") });
    expect(early.onAverage.in("%") / 0.00415876777703407).toBeCloseTo(1, 8);
    const none = hydrolysisLoss({ halfLife: quantity(1, "h"), time: quantity(0, "h") });
    expect([none.atEnd.value, none.onAverage.value]).toEqual([0, 0]);
  });

  test("the printed half-lives lose half: the shortest of a pH the most, the longest the least", () => {
    const hours = { min: 1 / 60, h: 1, d: 24 } as const;
    const inHours = (each: (typeof halfLives)[number]["shortest"]) => each.value * hours[each.unit];
    for (const { active, pH } of halfLives) {
      const rows = halfLives.filter((row) => row.active === active && row.pH === pH);
      const found = (time: number) =>
        alkalineHydrolysis({ active, pH, time: quantity(time, "h") })?.atEnd.map((share) => share.in("%"));
      expect(found(Math.min(...rows.map(({ shortest }) => inHours(shortest))))?.[1]).toBeCloseTo(50, 9);
      expect(found(Math.max(...rows.map(({ longest }) => inHours(longest))))?.[0]).toBeCloseTo(50, 9);
    }
  });

  test("half-lives get shorter as pH rises, which the range between two rows rests on", () => {
    const minutes = { min: 1, h: 60, d: 1440 } as const;
    for (const one of halfLives) {
      for (const other of halfLives.filter((row) => row.active === one.active && row.pH > one.pH)) {
        const [lower, higher] = [one.shortest, other.longest];
        expect(higher.value * minutes[higher.unit]).toBeLessThanOrEqual(lower.value * minutes[lower.unit]);
      }
    }
  });

  test("sources that differ for one pH make a range, and all are named", () => {
    // Carbaryl at pH 9: 1 to 3 days by a garden column, 3.2 h by the handbooks' figure.
    const day = alkalineHydrolysis({ active: "carbaryl", pH: 9, time: quantity(8, "h") });
    // 1 - 0.5^(8 / 72) is 7.4 %, 1 - 0.5^(8 / 3.2) is 82.3 %, rounded outward to one digit.
    expect(day?.atEnd.map((share) => share.in("%"))).toEqual([7, 90]);
    expect(day?.rows.map(({ source }) => source.publisher)).toHaveLength(2);
    // Between: the longest of pH 7 (30 d) and the shortest of pH 9 (3.2 h), four rows in all.
    const between = alkalineHydrolysis({ active: "carbaryl", pH: 8, time: quantity(8, "h") });
    // 1 - 0.5^(8 / 720) is 0.77 %.
    expect(between?.atEnd.map((share) => share.in("%"))).toEqual([0.7, 90]);
    expect(between?.rows.map(({ pH }) => pH)).toEqual([7, 7, 9, 9]);
    // As US labels write it.
    expect(
      alkalineHydrolysis({ active: " Thiophanate methyl", pH: 7, time: quantity(36, "d") })?.atEnd[0].in("%"),
    ).toBeCloseTo(50, 9);
    // Above all rows: nothing printed there, so that the most is all.
    expect(
      alkalineHydrolysis({ active: "thiophanate-methyl", pH: 9.5, time: quantity(1, "h") })?.rows,
    ).toHaveLength(1);
  });

  test("nothing is made up between and beyond the rows", () => {
    const at = (pH: number, time = quantity(2, "h")) =>
      alkalineHydrolysis({ active: "Captan", pH, time })?.atEnd.map((share) => share.in("%"));
    // 1 - 0.5^(2 / 32) is 4.2 %.
    expect(at(4)).toEqual([0, 5]);
    // Two sources print pH 7, 8 h and 4.9 h: 1 - 0.5^(2 / 4.9) is 24.6 %.
    expect(at(6)).toEqual([4, 30]);
    expect(at(9.5)?.[1]).toBe(100);
    expect(at(9.5, quantity(0, "h"))).toEqual([0, 0]);
    expect(alkalineHydrolysis({ active: "dicamba", pH: 8, time: quantity(1, "h") })).toBeUndefined();
    expect(errorOf(() => alkalineHydrolysis({ active: "captan", pH: 15, time: quantity(1, "h") })).path).toBe(
      "pH",
    );
    expect(errorOf(() => hydrolysisLoss({ halfLife: quantity(0, "h"), time: quantity(1, "h") })).path).toBe(
      "halfLife",
    );
  });

  test("a share says no more than a half-life of one or two digits can tell", () => {
    // 30 min at a half-life of 10 min: 87.5 %; 60 min: 98.4 %; 2 h: 99.98 %.
    const at = (minutes: number) =>
      alkalineHydrolysis({ active: "captan", pH: 8, time: quantity(minutes, "min") })?.atEnd.map((share) =>
        share.in("%"),
      );
    expect([at(30), at(60), at(120)]).toEqual([
      [80, 90],
      [98, 99],
      [99, 100],
    ]);
  });

  test("the rounded band holds the share that each row gives", () => {
    const hours = { min: 1 / 60, h: 1, d: 24 } as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...halfLives),
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        (row, time) => {
          const found = alkalineHydrolysis({ active: row.active, pH: row.pH, time: quantity(time, "h") });
          const lost = 100 * (1 - 0.5 ** (time / (row.longest.value * hours[row.longest.unit])));
          const [least, most] = (found?.atEnd ?? []).map((share) => share.in("%")) as [number, number];
          expect(least).toBeLessThanOrEqual(lost + 1e-9);
          expect(most).toBeGreaterThanOrEqual(lost - 1e-9);
        },
      ),
    );
  });

  test("each row holds the temperature that its source prints, or says that it prints none", () => {
    const warm = halfLives.filter(({ temperature }) => temperature !== "not printed");
    expect(new Set(warm.map(({ active, temperature }) => `${active} ${temperature}`))).toEqual(
      new Set(["thiophanate-methyl 25"]),
    );
    const known = alkalineHydrolysis({ active: "thiophanate-methyl", pH: 7, time: quantity(1, "h") });
    expect([known?.temperatures, known?.rowsWithoutTemperature]).toEqual([[25], 0]);
    const unknown = alkalineHydrolysis({ active: "captan", pH: 7, time: quantity(1, "h") });
    expect([unknown?.temperatures, unknown?.rowsWithoutTemperature]).toEqual([[], 2]);
  });

  test("ten times as acid for each step of pH", () => {
    expect([7, 6, 5].map((pH) => relativeAcidity(pH))).toEqual([1, 10, 100]);
  });
});

describe("waterReport", () => {
  test("ions, pH and time: everything at once", () => {
    const report = waterReport({
      test: {
        pH: 8.2,
        Ca: quantity(120, "mg/L", "Ca"),
        Mg: quantity(90, "mg/L", "Mg"),
        HCO3: quantity(510, "mg/L", "HCO3"),
      },
      products: [
        { id: "f", name: "Fungicide", active: "captan", labelPH: { max: 7 } },
        { id: "h", name: "Amine", contains: ["amine phenoxy"], active: "2,4-D" },
      ],
      timeToEmpty: quantity(20, "min"),
      ammoniumSulfate: quantity(0.01, "lb/gal", "product:sulfate/spray"),
    });
    // 2.497 x 120 + 4.118 x 90 = 670 mg/L: above 35 grains (599), below 40 (685).
    expect(report.hardness?.in("mg/L")).toBeCloseTo(670.3, 0);
    expect(report.findings.map(({ code }) => code)).toEqual([
      "water/hardness",
      "water/hardness-amine",
      "water/bicarbonate",
      "water/sulfate-minimum",
      "water/sulfate-below-minimum",
      "water/pH-label",
      "water/pH-alkaline",
      "water/hydrolysis",
    ]);
    const passed = report.findings[0]?.params.passed;
    expect(Array.isArray(passed) ? passed.length : 0).toBe(6);
    expect(report.notChecked.join()).toContain("no half-life of 2,4-D on file");
    expect(report.ammoniumSulfate?.notCounted).toEqual(["K", "Na", "Fe"]);
    expect(JSON.parse(JSON.stringify(report)).hardness.of).toBe("hardness as CaCO3");
  });

  test("soft, slightly acid water raises nothing, and that reads as no approval", () => {
    const report = waterReport({ test: { pH: 5.5, hardness: hard(50) } });
    expect(report.findings.map(({ code }) => code)).toEqual(["water/sulfate-range"]);
    expect(report.notChecked.length).toBeGreaterThan(0);
    const empty = waterReport({ test: {} });
    expect(empty.findings).toEqual([]);
    expect(empty.checked).toEqual([]);
    expect(empty.notChecked.length).toBeGreaterThanOrEqual(4);
  });

  test("a hardness with iron alone is no water of iron alone", () => {
    const Fe = quantity(1, "mg/L", "Fe");
    const sulfate = quantity(0.017, "lb/gal", "product:sulfate/spray");
    const report = waterReport({ test: { hardness: hard(500), Fe }, ammoniumSulfate: sulfate });
    // 0.014 x 500 / 4.118 = 1.700 and 0.009 x 500 / 2.497 = 1.802, and 0.042 for the iron; 1.7 is given.
    expect(report.ammoniumSulfate).toBeUndefined();
    const { min, max } = report.ammoniumSulfateFromHardness ?? {};
    expect((min?.in("lb/gal") ?? 0) * 100).toBeCloseTo(1.742, 3);
    expect((max?.in("lb/gal") ?? 0) * 100).toBeCloseTo(1.844, 3);
    expect(report.findings.map(({ code }) => code)).toEqual([
      "water/hardness",
      "water/sulfate-range",
      "water/sulfate-below-minimum",
    ]);
    expect(report.findings[1]?.params.notCounted).toEqual(["K", "Na"]);
    expect(report.findings[1]?.text).toContain("with Fe; K, Na, not tested, would add to it");
    // With calcium and magnesium both tested the equation itself is used.
    const full = waterReport({
      test: { hardness: hard(282), Ca: quantity(80, "mg/L", "Ca"), Mg: quantity(20, "mg/L", "Mg"), Fe },
    });
    expect(full.ammoniumSulfateFromHardness).toBeUndefined();
    expect((full.ammoniumSulfate?.minimum.in("lb/gal") ?? 0) * 100).toBeCloseTo(0.72 + 0.28 + 0.042, 9);
    // Without a printed hardness there are the cations alone.
    const bare = waterReport({ test: { Ca: quantity(80, "mg/L", "Ca") } });
    expect((bare.ammoniumSulfate?.minimum.in("lb/gal") ?? 0) * 100).toBeCloseTo(0.72, 9);
    expect(bare.hardness).toBeUndefined();
  });

  test("a printed hardness that calcium and magnesium contradict is told", () => {
    const told = (hardness: number, ca?: number, mg?: number) =>
      waterReport({
        test: {
          hardness: hard(hardness),
          ...(ca !== undefined && { Ca: quantity(ca, "mg/L", "Ca") }),
          ...(mg !== undefined && { Mg: quantity(mg, "mg/L", "Mg") }),
        },
      }).findings.filter(({ code }) => code === "water/hardness-disagrees");
    // 2.497 x 80 + 4.118 x 20 = 282.1 mg/L, which is 16.5 grains per gallon; with the grains typed as mg/L:
    expect(told(16.5, 80, 20)).toHaveLength(1);
    expect(told(16.5, 80, 20)[0]?.text).toContain("grains per gallon?");
    expect(told(16.5, 80, 20)[0]?.params.fromIons).toBeCloseTo(282.1, 1);
    expect(told(400, 80, 20)[0]?.text).not.toContain("grains");
    expect(told(282, 80, 20)).toEqual([]);
    expect(told(258, 80, 20)).toEqual([]);
    expect(told(256, 80, 20)).toHaveLength(1);
    expect(told(310, 80, 20)).toEqual([]);
    expect(told(311, 80, 20)).toHaveLength(1);
    // Calcium alone, 199.8 mg/L: there may be more, not less.
    expect(told(400, 80)).toEqual([]);
    expect(told(180, 80)).toHaveLength(1);
    expect(told(70, undefined, 20)).toHaveLength(1);
    expect(told(0, 80, 20)).toHaveLength(1);
    expect(told(0, 0, 0)).toEqual([]);
  });

  test("the ends of the printed ranges of pH, of a label and of bicarbonate", () => {
    const codes = (test: object, labelPH?: object) =>
      waterReport({ test, products: [{ id: "a", ...(labelPH && { labelPH }) }] })
        .findings.map(({ code }) => code)
        .filter((code) => code !== "water/sulfate-range");
    // Below 6 mixes keep, from 6 to 7 spray at once, above 7 acidify (Grounds Maintenance); 4 is the lowest printed.
    expect([3.9, 4, 6, 6.1, 7, 7.1].map((pH) => codes({ pH }))).toEqual([
      ["water/pH-acid"],
      [],
      [],
      ["water/pH-spray-soon"],
      ["water/pH-spray-soon"],
      ["water/pH-alkaline"],
    ]);
    const label = { min: 4.5, max: 5.5 };
    expect([4.4, 4.5, 5.5, 5.6].map((pH) => codes({ pH }, label))).toEqual([
      ["water/pH-label"],
      [],
      [],
      ["water/pH-label"],
    ]);
    const at = (mg: number) => codes({ HCO3: quantity(mg, "mg/L", "HCO3") });
    expect([499, 500, 501].map(at)).toEqual([[], ["water/bicarbonate"], ["water/bicarbonate"]]);
  });

  test("hard water and amines: what is not stated is not checked", () => {
    const report = (hardness: number) =>
      waterReport({ test: { hardness: hard(hardness) }, products: [{ id: "a", name: "Herbicide A" }] });
    // 35 grains per gallon are 599 mg/L.
    expect(report(605).notChecked.join()).toContain("for Herbicide A");
    expect(report(590).notChecked.join()).not.toContain("Herbicide A");
  });

  test("breakdown: no loss without time, no acid where no figure says that it helps", () => {
    const found = (active: string, pH: number, hours: number) =>
      waterReport({
        test: { pH },
        products: [{ id: "a", active }],
        timeToEmpty: quantity(hours, "h"),
      }).findings.find(({ code }) => code === "water/hydrolysis");
    expect(found("captan", 8, 0)).toBeUndefined();
    // Carbaryl is printed from pH 6 on.
    expect(found("carbaryl", 5, 24)?.text).not.toContain("bring the pH down");
    expect(found("captan", 8, 1)?.text).toContain("bring the pH down");
    // 7 h: 0.5^(7/8) is left at pH 7, nothing to speak of at pH 8; both rows are named with their sources.
    const between = found("captan", 7.5, 7);
    // 1 - 0.5^(7/8) is 45.5 %.
    expect(between?.params).toMatchObject({ least: 40, most: 100 });
    expect(between?.text).toContain("They are printed without a temperature");
    expect(between?.text).toContain(
      "pH 7: 8 h, Hawaii horticulture column; pH 7: 4.9 h, European Chemicals Agency; pH 8: 10 min, Ontario",
    );
  });
});
