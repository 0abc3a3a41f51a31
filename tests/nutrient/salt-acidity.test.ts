import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type AcidSource,
  acidityPerNitrogen,
  blendSaltIndex,
  burnRisk,
  burnSchemes,
  compareSaltIndexes,
  foliarBurnRisk,
  gardenSaltIndexes,
  growerAcidity,
  highPartialSaltIndex,
  limeForNitrogen,
  newMexicoSaltIndexes,
  oregonAcidity,
  oregonSaltIndexes,
  partialSaltIndex,
  potentialAcidity,
  potentialAcidityOfSource,
  rememberedSaltIndexes,
  saltIndex,
  scaledSaltIndex,
  tabulatedAcidity,
  tabulatedSaltIndex,
  turfListSaltIndexes,
  weightSaltIndexes,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import { errorOf } from "../errors.js";

const perUnit = (value: number) => saltIndex({ value, scale: "per unit", basis: "N", source: "made up" });
const byWeight = (value: number) => saltIndex({ value, scale: "by weight", source: "made up" });

describe("salt indexes", () => {
  test("of two scales, or two bases, never meet at run time either", () => {
    const calls: (() => unknown)[] = [
      () => compareSaltIndexes(perUnit(1), byWeight(74) as never),
      () => partialSaltIndex(perUnit(1) as never, { percent: 46, basis: "N" }),
      () => scaledSaltIndex(byWeight(74) as never),
      () => scaledSaltIndex(scaledSaltIndex(perUnit(1)) as never),
      () => blendSaltIndex([{ units: 10, partial: byWeight(74) as never }]),
      () => burnRisk(byWeight(74) as never),
      () => burnRisk(tabulatedSaltIndex(newMexicoSaltIndexes, "ammonia") as never),
    ];
    for (const call of calls) expect(errorOf(call).code).toBe("conflict");
    const potash = saltIndex({ value: 1.6, scale: "per unit", basis: "K2O", source: "made up" });
    expect(errorOf(() => compareSaltIndexes(perUnit(5.3), potash)).path).toBe("b.basis");
  });

  test("of a blend lie between those of its parts and do not depend on their order", () => {
    const part = fc.record({
      units: fc.double({ min: 0, max: 20, noNaN: true }),
      partial: fc.double({ min: 0, max: 8, noNaN: true }).map(perUnit),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const units = parts.reduce((sum, one) => sum + one.units, 0);
        const values = parts.map(({ partial }) => partial.value);
        const blend = blendSaltIndex(parts).value;
        expect(blend).toBeGreaterThanOrEqual(Math.min(...values) * units - 1e-9);
        expect(blend).toBeLessThanOrEqual(Math.max(...values) * units + 1e-9);
        expect(blendSaltIndex([...parts].reverse()).value).toBeCloseTo(blend, 9);
      }),
    );
  });

  test("of a single material come back from their partial index", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 150, noNaN: true }),
        fc.double({ min: 1, max: 90, noNaN: true }),
        (s, percent) => {
          const partial = partialSaltIndex(byWeight(s), { percent, basis: "N" });
          expect(blendSaltIndex([{ units: percent, partial }]).value).toBeCloseTo(s, 9);
        },
      ),
    );
  });

  test("make sodium nitrate 100 again on the third scale", () => {
    const nitrate = partialSaltIndex(byWeight(100), { percent: 16.5, basis: "N" });
    expect(scaledSaltIndex(nitrate).value).toBeCloseTo(100, 12);
  });

  test("refuse bad figures, with the path", () => {
    expect(errorOf(() => saltIndex({ value: -1, scale: "by weight", source: "x" }))).toMatchObject({
      path: "value",
    });
    expect(errorOf(() => saltIndex({ value: 1, scale: "per unit", source: "x" } as never))).toMatchObject({
      code: "missing",
      path: "basis",
    });
    expect(
      errorOf(() => saltIndex({ value: 1, scale: "per cent", basis: "N", source: "x" } as never)).path,
    ).toBe("scale");
    expect(errorOf(() => partialSaltIndex(byWeight(74), { percent: 0, basis: "N" })).path).toBe(
      "units.percent",
    );
    expect(
      errorOf(() =>
        blendSaltIndex([
          { units: 60, partial: perUnit(1) },
          { units: 60, partial: perUnit(1) },
        ]),
      ).path,
    ).toBe("parts");
    expect(errorOf(() => blendSaltIndex([{ units: -1, partial: perUnit(1) }])).path).toBe("parts[0].units");
    expect(errorOf(() => tabulatedSaltIndex(oregonSaltIndexes, "salt")).expected).toContain("urea");
    expect(errorOf(() => saltIndex({ value: 1, scale: "by weight" } as never))).toMatchObject({
      code: "missing",
      path: "source",
    });
    const based = { value: 74, scale: "by weight", basis: "N", source: "x" };
    expect(errorOf(() => saltIndex(based as never))).toMatchObject({ code: "conflict", path: "basis" });
  });

  test("tell all problems of a call, with paths of the call", () => {
    const paths = (work: () => unknown) => errorOf(work).problems.map(({ code, path }) => `${code} ${path}`);
    const bad = { ...byWeight(74), value: -3 };
    expect(paths(() => partialSaltIndex(bad, { percent: 0, basis: "Q" } as never))).toEqual([
      "range byWeight.value",
      "range units.percent",
      "type units.basis",
    ]);
    expect(paths(() => partialSaltIndex(byWeight(74), { percent: 46 } as never))).toEqual([
      "missing units.basis",
    ]);
    expect(paths(() => blendSaltIndex([{ units: -1, partial: byWeight(74) }, null] as never))).toEqual([
      "range parts[0].units",
      "conflict parts[0].partial.scale",
      "type parts[1]",
    ]);
    // A result out of bounds is laid to an argument that the call has.
    expect(paths(() => partialSaltIndex(byWeight(74), { percent: 0.01, basis: "N" }))).toEqual([
      "range units.percent",
    ]);
    expect(paths(() => scaledSaltIndex(perUnit(100)))).toEqual(["range partial.value"]);
    expect(paths(() => blendSaltIndex([{ units: 100, partial: perUnit(100) }]))).toEqual(["range parts"]);
    expect(Object.is(byWeight(-0).value, 0)).toBe(true);
    expect(compareSaltIndexes(perUnit(2), perUnit(2))).toBe(0);
    expect(compareSaltIndexes(perUnit(0.1 + 0.2), perUnit(0.3))).toBe(0);
  });

  test("carry the doubt of a print into a blend and a finding", () => {
    const sulfate = tabulatedSaltIndex(weightSaltIndexes, "ammonium sulfate");
    const partial = partialSaltIndex(sulfate, { percent: 21, basis: "N" });
    expect(partial.doubtful).toContain("68.3");
    expect(burnRisk(partial).findings.map(({ code }) => code)).toEqual(["salt/high", "salt/doubtful-figure"]);
    expect(blendSaltIndex([{ units: 10, partial }]).doubtful).toContain("68.3");
  });

  test("stand in their tables once each, on the scale of the table", () => {
    const tables = [
      gardenSaltIndexes,
      newMexicoSaltIndexes,
      oregonSaltIndexes,
      rememberedSaltIndexes,
      turfListSaltIndexes,
      weightSaltIndexes,
    ];
    for (const table of tables) {
      const names = table.rows.map(({ material }) => material);
      expect(new Set(names).size).toBe(names.length);
      for (const row of table.rows) {
        expect(tabulatedSaltIndex(table, row.material)).toMatchObject({
          scale: table.scale,
          value: row.value,
        });
        expect(row.basis === null).toBe(table.scale === "by weight");
      }
    }
  });

  test.each(oregonSaltIndexes.rows.map(({ material, burn }) => [material, burn]))(
    "of %s burn as the table beside it says: %s",
    (material, burn) => {
      const risk = burnRisk(tabulatedSaltIndex(oregonSaltIndexes, material as string));
      expect(risk.class).toBe(burn);
      expect(risk.findings.map(({ code }) => code)).toEqual(burn === "low" ? [] : [`salt/${burn}`]);
    },
  );

  test.each(turfListSaltIndexes.rows.map(({ material, value }) => [material, value > 1.5]))(
    "of %s in the turf list are high: %s",
    (material, high) => {
      const risk = burnRisk(tabulatedSaltIndex(turfListSaltIndexes, material as string));
      expect(risk.class).toBe(high ? "high" : "low");
      expect(risk.scheme).toBe("turf list");
    },
  );

  test("of the turf list are high above 1.5, not at it", () => {
    const [at, above] = [1.5, 1.51].map((value) => burnRisk(perUnit(value), { scheme: "turf list" }));
    expect([at?.class, above?.class]).toEqual(["low", "high"]);
    expect(highPartialSaltIndex).toBe(burnSchemes["turf list"].classes[1]?.from);
  });

  test("between two printed classes have none, and say so", () => {
    const risk = burnRisk(perUnit(1.2));
    expect(risk.class).toBeUndefined();
    expect(risk.checked).toEqual([]);
    expect(risk.notChecked[0]).toContain("between two classes");
  });

  test("of potassium nitrate speak only on the basis that a scheme uses", () => {
    const nitrate = (value: number, basis: "N" | "K2O" | "N+K2O") =>
      saltIndex({ value, scale: "per unit", basis, source: "a table" });
    expect(burnRisk(nitrate(5.3, "N")).class).toBe("high");
    expect(burnRisk(nitrate(1.6, "K2O"), { scheme: "turf list" }).class).toBe("high");
    for (const scheme of ["Oregon State University", "turf list"] as const) {
      const both = burnRisk(nitrate(1.2, "N+K2O"), { scheme });
      expect(both.class).toBeUndefined();
      expect(both.notChecked[0]).toContain("N+K2O");
    }
  });

  test("are sorted by a scheme that exists, or refused with the names", () => {
    expect(() => burnRisk(perUnit(1), { scheme: "none" as never })).toThrow(/turf list/);
    expect(() => burnRisk(perUnit(1), { schem: "turf list" } as never)).toThrow(/scheme/);
  });
});

describe("leaf burn", () => {
  const ask = (
    source: "urea" | "formaldehyde-urea solution" | "triazone solution" | "other",
    lb: number,
    gal: number,
  ) =>
    foliarBurnRisk({
      source,
      nitrogen: quantity(lb, "lb/1000 ft2", "N"),
      volume: quantity(gal, "gal/1000 ft2", "spray"),
    });

  test("speaks of what was studied, and says what was not", () => {
    expect(ask("urea", 1, 4).findings.length).toBe(1);
    expect(ask("formaldehyde-urea solution", 1, 1).findings.length).toBe(1);
    expect(ask("formaldehyde-urea solution", 1, 2).findings.length).toBe(0);
    const light = ask("urea", 0.1, 2);
    expect(light.findings).toEqual([]);
    expect(light.checked).toEqual([]);
    expect(light.notChecked[0]).toContain("this rate and volume");
    expect(ask("other", 1, 1).notChecked[0]).toContain("this source");
  });

  test("does not call checked what the study does not reach", () => {
    // A stronger solution than the one that did no damage, and a volume of which the abstract says nothing.
    for (const [source, lb, gal] of [
      ["triazone solution", 5, 1],
      ["triazone solution", 1, 0.5],
      ["formaldehyde-urea solution", 3, 3],
      ["formaldehyde-urea solution", 1, 1.5],
      ["urea", 1, 4.1],
      ["urea", 0.9, 1],
    ] as const) {
      const risk = ask(source, lb, gal);
      expect([risk.findings, risk.checked], `${source} ${lb} ${gal}`).toEqual([[], []]);
      expect(risk.notChecked[0]).toContain("this rate and volume");
    }
    expect(ask("triazone solution", 1, 4).checked.length).toBe(1);
    expect(ask("triazone solution", 0.5, 5).checked.length).toBe(1);
    expect(ask("urea", 2, 0.5).findings.length).toBe(1);
    expect(ask("formaldehyde-urea solution", 2, 0.5).findings.length).toBe(1);
    expect(ask("formaldehyde-urea solution", 0.5, 0.5).checked).toEqual([]);
    for (const source of ["urea", "other", "triazone solution"] as const) {
      expect(ask(source, 1, 1).notChecked.join()).toContain("another grass");
    }
  });

  test("tells all problems of the question", () => {
    const wrong = { source: "milk", nitrogen: quantity(0, "lb/acre", "N"), volume: quantity(1, "gal") };
    expect(errorOf(() => foliarBurnRisk(wrong as never)).problems.map(({ path }) => path)).toEqual([
      "source",
      "nitrogen",
      "volume",
    ]);
  });
});

describe("potential acidity", () => {
  test("from the composition agrees with that from the formula, and with tables to a few percent", () => {
    const half = "half nitrogen credit";
    const salts: readonly (readonly [AcidSource, Record<string, number>])[] = [
      ["ammonium sulfate", { N: 21.2, S: 24.263 }],
      ["urea", { N: 46.65 }],
      ["ammonium nitrate", { N: 35 }],
      ["monoammonium phosphate", { N: 12.177, P: 26.928 }],
      ["diammonium phosphate", { N: 21.21, P: 23.451 }],
    ];
    for (const convention of [half, "full nitrification"] as const) {
      for (const [source, percent] of salts) {
        const nitrogen = percent.N as number;
        const composed = acidityPerNitrogen(potentialAcidity({ percent, convention }), {
          nitrogenPercent: nitrogen,
        });
        const formula = potentialAcidityOfSource({ source, convention }).in("lb/lb");
        // An ammonium salt counts its ammonium once as nitrogen and once as the acid of its anion.
        expect(composed.in("lb/lb")).toBeCloseTo(formula, 2);
      }
    }
    const nitrate = potentialAcidity({ percent: { N: 13, K: 36.5 }, convention: half }).in("% w/w");
    expect(Math.abs(nitrate - tabulatedAcidity(oregonAcidity, "potassium nitrate").in("% w/w"))).toBeLessThan(
      1,
    );
    const calcium = potentialAcidity({ percent: { N: 15.5, Ca: 19 }, convention: half }).in("lb/US ton");
    expect(
      Math.abs(calcium / tabulatedAcidity(growerAcidity, "calcium nitrate").in("lb/US ton") - 1),
    ).toBeLessThan(0.03);
    const sodium = potentialAcidity({ percent: { N: 16, Na: 26.3 }, convention: half }).in("lb/US ton");
    expect(
      Math.abs(sodium / tabulatedAcidity(growerAcidity, "sodium nitrate").in("lb/US ton") - 1),
    ).toBeLessThan(0.03);
  });

  test("by full nitrification doubles urea and takes ammonium sulfate to 7.15", () => {
    const full = (source: AcidSource) =>
      potentialAcidityOfSource({ source, convention: "full nitrification" }).in("lb/lb");
    expect(full("urea")).toBeCloseTo(3.573, 3);
    expect(full("ammonium sulfate")).toBeCloseTo(7.15, 2);
    expect(full("nitrate")).toBe(0);
  });

  test("counts every element with its charge", () => {
    const of = (percent: Record<string, number>, convention = "half nitrogen credit" as const): number =>
      potentialAcidity({ percent, convention }).in("% w/w");
    // Neutral salts form neither acid nor base: percents from the formulas.
    expect(of({ K: 52.44, Cl: 47.55 })).toBeCloseTo(0, 1); // KCl
    expect(of({ K: 44.87, S: 18.4 })).toBeCloseTo(0, 1); // K2SO4
    expect(of({ Mg: 20.19, S: 26.63 })).toBeCloseTo(0, 1); // MgSO4
    expect(of({ Ca: 29.44, S: 23.55 })).toBeCloseTo(0, 1); // CaSO4
    expect(of({ Na: 39.34, Cl: 60.66 })).toBeCloseTo(0, 1); // NaCl
    expect(of({ Ca: 17.12, P: 26.47 })).toBeCloseTo(0, 1); // Ca(H2PO4)2: one equivalent of each phosphate
    // Liming materials at their calcium carbonate equivalent: 100, 119, 179 and 109 in common tables (from memory).
    expect(of({ Ca: 40.04 })).toBeCloseTo(-100, 0);
    expect(of({ Mg: 28.83 })).toBeCloseTo(-119, 0);
    expect(Math.abs(of({ Ca: 71.47 }) + 179)).toBeLessThan(0.6);
    expect(Math.abs(of({ Ca: 21.73, Mg: 13.18 }) + 109)).toBeLessThan(0.6);
    // A pound of sulfur takes 3.12 lb of CaCO3: 100.09 / 32.06.
    expect(of({ S: 100 })).toBeCloseTo(312.2, 1);
    // Ammonium chloride, 26.19 % N and 66.27 % Cl: 1.5 equivalents in 53.49 g.
    expect(of({ N: 26.19, Cl: 66.27 })).toBeCloseTo((1.5 * 50.043 * 100) / 53.49, 1);
    // The doc's warning: nitrogen alone is not ammonium sulfate.
    expect(of({ N: 21 })).toBeCloseTo(37.5, 1);
  });

  test("tells all problems together", () => {
    const paths = (work: () => unknown) => errorOf(work).problems.map(({ code, path }) => `${code} ${path}`);
    expect(paths(() => potentialAcidity({ percent: { N: -1, P2O5: 3 } } as never))).toEqual([
      "missing convention",
      "range percent.N",
      "substance/unknown percent.P2O5",
    ]);
    const stated = quantity(100, "% w/w", "CaCO3 equivalent/product");
    expect(paths(() => acidityPerNitrogen(stated, { nitrogenPercent: 101 }))).toEqual([
      "range nitrogenPercent",
    ]);
    expect(paths(() => potentialAcidity({} as never))).toEqual(["missing convention", "missing percent"]);
    expect(paths(() => potentialAcidityOfSource({ source: "guano" } as never))).toEqual([
      "missing convention",
      "type source",
    ]);
    const perProduct = quantity(1, "% w/w", "N/product") as never;
    expect(paths(() => acidityPerNitrogen(perProduct, { nitrogenPercent: 0 }))).toEqual([
      "substance/mismatch acidity",
      "range nitrogenPercent",
    ]);
    const entry = { nitrogen: quantity(-1, "lb/acre", "N"), acidity: quantity(5, "lb/lb") };
    expect(paths(() => limeForNitrogen([entry, null] as never))).toEqual([
      "range season[0].nitrogen",
      "substance/mismatch season[0].acidity",
      "type season[1]",
    ]);
  });

  test("needs a convention, elements and no more than 100 %", () => {
    const ask = (input: unknown) => errorOf(() => potentialAcidity(input as never));
    expect(ask({ percent: { N: 21 } })).toMatchObject({ code: "missing", path: "convention" });
    expect(ask({ percent: { P2O5: 52 }, convention: "full nitrification" })).toMatchObject({
      code: "substance/unknown",
      path: "percent.P2O5",
    });
    expect(ask({ percent: { N: 60, S: 60 }, convention: "full nitrification" })).toMatchObject({
      path: "percent",
    });
    expect(ask({ percent: { N: Number.NaN }, convention: "full nitrification" })).toMatchObject({
      path: "percent.N",
    });
    expect(
      errorOf(() =>
        acidityPerNitrogen(quantity(1, "% w/w", "CaCO3 equivalent/product"), { nitrogenPercent: 0 }),
      ).path,
    ).toBe("nitrogenPercent");
  });

  test("is offset source by source, bases included", () => {
    const season = [
      { nitrogen: quantity(2, "lb/1000 ft2", "N"), acidity: quantity(1.8, "lb/lb", "CaCO3 equivalent/N") },
      { nitrogen: quantity(43.56, "lb/acre", "N"), acidity: quantity(-1.29, "lb/lb", "CaCO3 equivalent/N") },
    ];
    expect(limeForNitrogen(season).in("lb/1000 ft2")).toBeCloseTo(3.6 - 1.29, 9);
    expect(limeForNitrogen(season.slice(1)).in("lb/1000 ft2")).toBeLessThan(0);
    expect(limeForNitrogen(JSON.parse(JSON.stringify(season))).in("lb/1000 ft2")).toBeCloseTo(2.31, 9);
    const wrong = [{ ...season[0], acidity: quantity(110, "% w/w", "CaCO3 equivalent/product") }];
    expect(errorOf(() => limeForNitrogen(wrong as never))).toMatchObject({
      code: "substance/mismatch",
      path: "season[0].acidity",
    });
  });
});
