import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { complaint } from "../../errors.js";

const meq = (value: number) => quantity(value, "meq/100 g");
const rate = (value: number) => quantity(value, "lb/1000 ft2", "CaCO3 equivalent");
const layer = { assumed: "2,000,000 lb/acre" } as const;
const codes = (found: { readonly findings: readonly { readonly code: string }[] }) =>
  found.findings.map(({ code }) => code);

describe("lime", () => {
  const limed = (input: object) => soil.limeRequirement(input as Parameters<typeof soil.limeRequirement>[0]);
  const iowa = (bufferPH: number, targetPH = 6.9) =>
    limed({ method: "buffer pH, Iowa", pH: 5, targetPH, bufferPH });

  it("rows of a table are themselves, and the line between them is told", () => {
    expect([iowa(7).rate.value, iowa(5.8).rate.value]).toEqual([1100, 10_600]);
    expect(codes(iowa(6))).toEqual([]);
    expect(codes(iowa(5.8))).toEqual(["lime/doubtful-figure"]);
    expect(codes(iowa(5.8, 6.5))).toEqual([]);
    const between = iowa(6.9);
    expect(between.rate.value).toBeCloseTo(1900, 9);
    expect(between.findings[0]).toMatchObject({
      code: "lime/between-rows",
      path: "bufferPH",
      params: { reading: 6.9 },
    });
    expect(codes(iowa(6.4 + 1e-7))).toEqual([]);
    expect(codes(iowa(6.4 + 1e-5))).toEqual(["lime/between-rows"]);
    expect(iowa(5.8).findings[0]).toMatchObject({
      path: "bufferPH",
      params: { printed: 10_600, bySteps: 11_000 },
    });
  });

  it("a soil at its target needs none, by each kind of method", () => {
    const same = { pH: 6.5, targetPH: 6.5 };
    for (const input of [
      { method: "Mehlich buffer, North Carolina", ...same, bufferPH: 6.5 },
      { method: "Mehlich buffer, Pennsylvania fields", ...same, acidity: meq(3) },
      { method: "Mehlich buffer, Pennsylvania turf", ...same, acidity: meq(3) },
      { method: "pH buffering", ...same, perUnitPH: meq(2), layer },
    ]) {
      const found = limed(input);
      expect([found.rate.value, codes(found), found.targetPH]).toEqual([0, ["lime/none-needed"], 6.5]);
      expect(found.findings[0]).toMatchObject({ path: "targetPH", params: { pH: 6.5 } });
    }
  });

  it("four milliequivalents are little in Pennsylvania, and a straight line holds from pH 4.5 on", () => {
    const field = (acidity: number, targetPH = 6.5) =>
      limed({ method: "Mehlich buffer, Pennsylvania fields", pH: 5, targetPH, acidity: meq(acidity) });
    expect([field(4).rate.value, field(4.1).rate.value, field(4, 7).rate.value]).toEqual([
      2000,
      expect.closeTo(3444, 9),
      4000,
    ]);
    expect(field(4).findings[0]).toMatchObject({
      path: "acidity",
      params: { acidity: 4, rate: 2000, unit: "lb/acre" },
    });
    const line = (pH: number) => limed({ method: "pH buffering", pH, targetPH: 7, perUnitPH: meq(2), layer });
    expect(codes(line(4.5))).toEqual([]);
    expect(line(4.4).findings[0]).toMatchObject({ path: "pH", params: { pH: 4.4 } });
  });

  it("lime that is not used up yet counts against the need, and covers it", () => {
    const credit = (tons: number) =>
      limed({
        method: "Mehlich buffer, North Carolina",
        pH: 5.6,
        targetPH: 6.6,
        acidityPerVolume: 1.5,
        residualCredit: quantity(tons, "US ton/acre", "product:standard-lime"),
      });
    expect([credit(0.5).rate.value, credit(1.5).rate.value, credit(2).rate.value]).toEqual([
      expect.closeTo(1, 12),
      expect.closeTo(0, 12),
      0,
    ]);
    expect(codes(credit(1))).toEqual([]);
    expect(credit(2).findings[0]).toMatchObject({
      path: "residualCredit",
      params: { needed: expect.closeTo(1.5, 9), credit: 2, unit: "US ton/acre" },
    });
    const left = (months: number, of: "mineral" | "organic" = "mineral") =>
      soil.residualLimeCredit({ applied: rate(100), months, soil: of }).value;
    expect([left(0), left(6), left(12.5), left(13), left(3, "organic")]).toEqual([100, 52, 0, 0, 52]);
  });

  it("buffers up to half of a tenth above their start, and Ac up to 100", () => {
    const acidity = (bufferPH: number) => soil.acidityFromBuffer({ buffer: "Adams-Evans", bufferPH }).value;
    expect([acidity(8), acidity(8.05), acidity(7)]).toEqual([0, 0, 8]);
    expect(complaint(() => acidity(8.06))).toBe("range bufferPH");
    const above = { buffer: "pH 7.0 buffer of a commercial laboratory", bufferPH: 7.4 } as const;
    expect(soil.acidityFromBuffer(above).value).toBe(0);
    const most = { method: "Mehlich buffer, North Carolina", pH: 5, targetPH: 6, acidityPerVolume: 100 };
    expect(complaint(() => limed(most))).toBe("nothing thrown");
  });

  it("sieve fractions miss 100 % by their rounding without a remark, and by two percent with one", () => {
    const sieved =
      (...fractions: number[]) =>
      () =>
        soil.limeQuality({ CCE: 90, scheme: "Iowa ECCE", sieves: { fractions } });
    // Four figures to a tenth are off by 0.2 at most.
    expect(codes(sieved(10, 20, 30, 39.8)())).toEqual([]);
    expect(codes(sieved(10, 20, 30, 40.2)())).toEqual([]);
    expect(complaint(sieved(10, 20, 30, 40.3))).toBe("conflict sieves.fractions");
    expect(sieved(10, 20, 30, 38)().findings[0]).toMatchObject({
      code: "lime/fractions-short",
      path: "sieves.fractions",
      params: { total: 98 },
    });
    expect(complaint(sieved(10, 20, 30, 37.9))).toBe("conflict sieves.fractions");
    // 10 % of what passes 4 mesh, 30 % of 8 and 60 % of 60: 0.1 x 90 + 0.3 x 70 + 0.6 x 40
    expect(sieved(10, 20, 30, 40)().fineness).toBeCloseTo(54, 12);
    const equal = soil.limeQuality({
      CCE: 90,
      scheme: "Iowa ECCE",
      sieves: { passing: { 4: 100, 8: 100, 60: 100 } },
    });
    expect(equal.fineness).toBe(100);
  });

  it("a rating of another state is told with both names", () => {
    const requirement = iowa(6, 6.5);
    const quality = soil.limeQuality({ effective: 60, scheme: "Missouri ENM" });
    const found = soil.limeProductRate({ requirement, quality, id: "lime-a" });
    expect(found.findings[0]).toMatchObject({
      code: "lime/other-scheme",
      path: "quality.scheme",
      params: { scheme: "Missouri ENM", own: "Iowa ECCE" },
    });
    const own = soil.limeQuality({ effective: 60, scheme: "Iowa ECCE" });
    expect(soil.limeProductRate({ requirement, quality: own, id: "lime-a" }).findings).toEqual([]);
    expect(found.rate.in("lb/acre")).toBeCloseTo(6400 / 0.6, 6);
    expect([quality.perTon?.in("lb/US ton"), quality.perTon?.of]).toEqual([480, "other:ENM/product"]);
  });
});
