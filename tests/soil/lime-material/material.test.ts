import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  carbonateEquivalent,
  type FinenessSchemeName,
  finenessSchemes,
  limeForDepth,
  limeForRating,
  limeProductRate,
  limeQuality,
  limeRequirement,
  quantity,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const names = Object.keys(finenessSchemes) as FinenessSchemeName[];

/** Percent between sieves that add up to 100. */
const fractions = (count: number) =>
  fc
    .array(fc.integer({ min: 0, max: 1000 }), { minLength: count, maxLength: count })
    .filter((parts) => parts.some((part) => part > 0))
    .map((parts) => {
      const total = parts.reduce((sum, part) => sum + part, 0);
      return parts.map((part) => (part * 100) / total);
    });

describe("a sieve test", () => {
  test.each(names)("%s: percent passing and percent between sieves are the same lime", (scheme) => {
    const { sieves } = finenessSchemes[scheme];
    fc.assert(
      fc.property(fractions(sieves.length + 1), (parts) => {
        const passing = Object.fromEntries(
          sieves.map((mesh, i) => [
            mesh,
            Math.min(
              100,
              parts.slice(i + 1).reduce((sum, part) => sum + part, 0),
            ),
          ]),
        );
        const by = (test: Parameters<typeof limeQuality>[0]["sieves"]) =>
          limeQuality({ CCE: 100, scheme, ...(test === undefined ? {} : { sieves: test }) });
        const [a, b] = [by({ passing }), by({ fractions: parts })];
        expect(a.fineness as number).toBeCloseTo(b.fineness as number, 8);
        expect(a.effective as number).toBeLessThanOrEqual(100 + 1e-9);
      }),
    );
  });
  test.each(names)("%s: all of it through the finest sieve is all of it", (scheme) => {
    const { sieves } = finenessSchemes[scheme];
    const fine = [...sieves.map(() => 0), 100];
    expect(limeQuality({ CCE: 97, scheme, sieves: { fractions: fine } }).effective).toBeCloseTo(97, 10);
    const coarse = [100, ...sieves.map(() => 0)];
    expect(limeQuality({ CCE: 97, scheme, sieves: { fractions: coarse } }).effective).toBe(0);
  });
  test("has to add up, and its sieves have to be the scheme's", () => {
    const by = (sieves: Parameters<typeof limeQuality>[0]["sieves"]) =>
      limeQuality({ CCE: 90, scheme: "British Columbia", ...(sieves && { sieves }) });
    expect(complaints(() => by({ fractions: [50, 60, 10, 10] }))).toEqual(["conflict sieves.fractions"]);
    expect(complaints(() => by({ fractions: [8, 10, 20, 50] }))).toEqual(["conflict sieves.fractions"]);
    expect(complaints(() => by({ fractions: [0, 10, 120, 0] }))).toEqual(["range sieves.fractions[2]"]);
    expect(complaints(() => by({ fractions: [50, 50] }))).toEqual(["type sieves.fractions"]);
    expect(complaints(() => by({ passing: { 8: 60, 20: 80, 60: 40 } }))).toEqual([
      "conflict sieves.passing.20",
    ]);
    expect(complaints(() => by({ passing: { 10: 100, 20: 80, 60: 40 } }))).toEqual([
      "type sieves.passing.10",
      "missing sieves.passing.8",
    ]);
    expect(by({ fractions: [7.8, 2.4, 10, 78.8] }).findings.map(({ code }) => code)).toEqual([
      "lime/fractions-short",
    ]);
  });
});

describe("the lime at hand", () => {
  const lb = (value: number) => quantity(value, "lb/1000 ft2", "CaCO3 equivalent");
  test("weaker lime takes more, wet lime takes more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 20, max: 179, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (rate, CCE, moisture) => {
          const by = (quality: ReturnType<typeof limeQuality>, measure: "CCE" | "effective") =>
            limeProductRate({ rate: lb(rate), measure, quality, id: "a" }).rate.in("lb/1000 ft2");
          expect((by(limeQuality({ CCE }), "CCE") * CCE) / 100).toBeCloseTo(rate, 8);
          const sieves = { passing: { 4: 100, 8: 90, 60: 50 } };
          const dry = limeQuality({ CCE, scheme: "Iowa ECCE", sieves });
          const wet = limeQuality({ CCE, scheme: "Iowa ECCE", sieves, moisture });
          expect(by(wet, "effective") * (100 - moisture)).toBeCloseTo(by(dry, "effective") * 100, 4);
        },
      ),
    );
  });
  test("a recommendation is met by the measure that it is in, and by no other", () => {
    const rate = lb(50);
    const cce = limeQuality({ CCE: 90 });
    expect(complaints(() => limeProductRate({ rate, measure: "effective", quality: cce, id: "a" }))).toEqual([
      "missing quality.effective",
    ]);
    expect(
      complaints(() => limeProductRate({ rate, measure: "standard lime", quality: cce, id: "a" })),
    ).toEqual(["substance/mismatch rate"]);
    const standard = quantity(1.5, "US ton/acre", "product:standard-lime");
    const label = limeQuality({ equalToTon: quantity(2250, "lb", "product") });
    const found = limeProductRate({ rate: standard, measure: "standard lime", quality: label, id: "a" });
    expect(found.rate.in("lb/acre")).toBeCloseTo(3375, 8);
  });
  test("takes what limeRequirement gives, and notes another state's sieves", () => {
    const requirement = limeRequirement({ method: "buffer pH, Iowa", pH: 5.8, targetPH: 6.5, bufferPH: 6.4 });
    const quality = limeQuality({
      CCE: 90,
      scheme: "Mississippi RNV",
      sieves: { passing: { 10: 100, 50: 60 } },
    });
    const found = limeProductRate({ requirement, quality, id: "lime-a" });
    expect(found.rate.in("lb/acre")).toBeCloseTo(3500 / 0.72, 6);
    expect(found.findings.map(({ code }) => code)).toEqual(["lime/other-scheme"]);
  });
  test("a rating meets its own kind only", () => {
    const recommended = quantity(1600, "lb/acre", "other:ENM");
    const rating = quantity(400, "lb/US ton", "other:ECCE/product") as never;
    expect(complaints(() => limeForRating({ recommended, rating }))).toEqual(["substance/mismatch rating"]);
  });
  test("Missouri counts pounds of ENM, which are no pounds of carbonate", () => {
    const lime = limeQuality({ CCE: 90, scheme: "Missouri ENM", sieves: { fractions: [10, 20, 10, 60] } });
    expect(lime.fineness).toBeCloseTo(71, 10);
    expect(lime.perTon?.in("lb/US ton")).toBeCloseTo(0.9 * 0.71 * 800, 8);
    expect(lime.perTon?.of).toBe("other:ENM/product");
  });
  test("depth is a proportion", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 30, noNaN: true }), (inches) => {
        const [from, to] = [quantity(8, "in"), quantity(inches, "in")];
        const there = limeForDepth({ rate: lb(100), from, to });
        expect(limeForDepth({ rate: there, from: to, to: from }).value).toBeCloseTo(100, 8);
      }),
    );
  });
});

test("water in the lime counts by every measure, and nothing that is stated goes unread", () => {
  const rate = quantity(90, "lb/1000 ft2", "CaCO3 equivalent");
  const wet = limeProductRate({
    rate,
    measure: "CCE",
    quality: limeQuality({ CCE: 90, moisture: 10 }),
    id: "a",
  });
  expect(wet.rate.in("lb/1000 ft2")).toBeCloseTo(90 / 0.81, 10);
  expect(complaints(() => limeQuality({ effective: 63, moisture: 10 }))).toEqual(["conflict moisture"]);
  expect(complaints(() => limeQuality({ CCE: 90, scheme: "Iowa ECCE" }))).toEqual(["missing sieves"]);
});

test("magnesium carbonate is not dolomite", () => {
  expect(carbonateEquivalent("MgCO3")).toBeCloseTo(118.7, 1);
  expect(carbonateEquivalent("CaMg(CO3)2")).toBeCloseTo(108.5, 0);
  expect(carbonateEquivalent("CaO")).toBeCloseTo(178.5, 1);
  const mix = (carbonateEquivalent("CaCO3") * 100.086 + carbonateEquivalent("MgCO3") * 84.313) / 184.399;
  expect(carbonateEquivalent("CaMg(CO3)2")).toBeCloseTo(mix, 4);
  expect(complaints(() => limeQuality({ CCE: 400, moisture: 120 }))).toEqual(["range CCE", "range moisture"]);
  expect(complaints(() => limeQuality({}))).toEqual(["missing CCE"]);
});
