import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type LimeRequirementInput,
  limeForSeason,
  limeRequirement,
  potentialAcidityOfSource,
  quantity,
  residualLimeCredit,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const meq = (value: number) => quantity(value, "meq/100 g");
const pounds = (input: LimeRequirementInput): number => limeRequirement(input).rate.in("lb/acre");
const assumed = { assumed: "2,000,000 lb/acre" } as const;

describe("a table", () => {
  const oregon = (bufferPH: number, targetPH: number) =>
    pounds({ method: "Sikora buffer, Oregon", pH: 4.6, targetPH, bufferPH });
  test("asks for more lime as the buffer falls and the target rises", () => {
    const targets = [5.6, 6, 6.4, 6.8, 7.2];
    fc.assert(
      fc.property(
        fc.double({ min: 4.8, max: 6.9, noNaN: true }),
        fc.double({ min: 4.8, max: 6.9, noNaN: true }),
        fc.nat(3),
        (a, b, i) => {
          const [low, high] = a < b ? [a, b] : [b, a];
          const [target, above] = [targets[i] as number, targets[i + 1] as number];
          expect(oregon(low, target)).toBeGreaterThanOrEqual(oregon(high, target) - 1e-6);
          expect(oregon(low, above)).toBeGreaterThanOrEqual(oregon(low, target) - 1e-6);
        },
      ),
    );
  });
  test("of Pennsylvania turf never falls as acidity rises", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 25.7, noNaN: true }),
        fc.double({ min: 2, max: 25.7, noNaN: true }),
        fc.constantFrom(6, 6.5, 7),
        (a, b, targetPH) => {
          const by = (acidity: number) =>
            pounds({ method: "Mehlich buffer, Pennsylvania turf", pH: 5, targetPH, acidity: meq(acidity) });
          expect(by(Math.max(a, b))).toBeGreaterThanOrEqual(by(Math.min(a, b)) - 1e-6);
        },
      ),
    );
  });
  test("says where it has no row, and refuses what lies beyond it", () => {
    const at = (bufferPH: number) =>
      limeRequirement({ method: "Sikora buffer, Oregon", pH: 5, targetPH: 6, bufferPH });
    expect(at(6).findings).toEqual([]);
    expect(at(6.05).findings.map(({ code }) => code)).toEqual(["lime/between-rows"]);
    expect(at(6.05).rate.in("US ton/acre")).toBeCloseTo(2.4, 10);
    expect(complaints(() => at(7))).toEqual(["range bufferPH"]);
    expect(complaints(() => at(4))).toEqual(["range bufferPH"]);
  });
  test("names a doubtful figure", () => {
    const iowa = limeRequirement({ method: "buffer pH, Iowa", pH: 5, targetPH: 6.9, bufferPH: 5.8 });
    expect(iowa.findings.map(({ code }) => code)).toEqual(["lime/doubtful-figure"]);
  });
});

describe("North Carolina", () => {
  const method = "Mehlich buffer, North Carolina" as const;
  test("asks for more as buffer falls and target rises, and credits what was applied", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 6.5, noNaN: true }),
        fc.double({ min: 4, max: 6.5, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b, share) => {
          const by = (bufferPH: number, targetPH: number) => pounds({ method, pH: 4.8, targetPH, bufferPH });
          const target = Math.min(6.6, 4.9 + 1.7 * share);
          expect(by(Math.min(a, b), target)).toBeGreaterThanOrEqual(by(Math.max(a, b), target) - 1e-6);
          expect(by(a, 6.6)).toBeGreaterThanOrEqual(by(a, target) - 1e-6);
        },
      ),
    );
    const credit = quantity(0.25, "US ton/acre", "product:standard-lime");
    const base = { method, pH: 5, targetPH: 6, acidityPerVolume: 1.2 };
    expect(limeRequirement({ ...base, residualCredit: credit }).rate.in("US ton/acre")).toBeCloseTo(0.5, 12);
    const covered = limeRequirement({ ...base, residualCredit: credit.times(10) });
    expect([covered.rate.value, covered.findings[0]?.code]).toEqual([0, "lime/credit-covers"]);
  });
  test("has no value at pH 6.6 and beyond", () => {
    expect(complaints(() => limeRequirement({ method, pH: 6.5, targetPH: 6.8, bufferPH: 6.3 }))).toEqual([
      "range targetPH",
    ]);
    expect(complaints(() => limeRequirement({ method, pH: 6.7, targetPH: 6.6, bufferPH: 6.3 }))).toEqual([
      "conflict targetPH",
    ]);
    expect(limeRequirement({ method, pH: 6.6, targetPH: 6.6, bufferPH: 6.3 }).rate.value).toBe(0);
  });
  test("the credit runs out", () => {
    const applied = quantity(2, "US ton/acre", "product:standard-lime");
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (months) => {
        for (const soil of ["mineral", "organic"] as const) {
          const now = residualLimeCredit({ applied, months, soil }).value;
          expect(now).toBeGreaterThanOrEqual(0);
          expect(residualLimeCredit({ applied, months: months + 1, soil }).value).toBeLessThanOrEqual(now);
        }
      }),
    );
    expect(residualLimeCredit({ applied, months: 0, soil: "mineral" }).value).toBe(2);
  });
});

describe("lime by charge", () => {
  test("is linear in acidity, and in the weight of soil", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: 1, max: 12, noNaN: true }),
        (acidity, factor, inches) => {
          const by = (value: number, depth: number) =>
            pounds({
              method: "exchangeable acidity",
              acidity: meq(value),
              layer: { ...assumed, depth: quantity(depth, "in") },
            });
          expect(by(acidity * factor, inches)).toBeCloseTo(by(acidity, inches) * factor, 4);
          expect(by(acidity, inches * 2)).toBeCloseTo(by(acidity, inches) * 2, 4);
        },
      ),
    );
  });
  test("raising base saturation to all of it neutralizes the acidity", () => {
    const acid = pounds({ method: "exchangeable acidity", acidity: meq(2.5), layer: assumed });
    const base = pounds({
      method: "base saturation",
      capacity: meq(10),
      baseSaturation: quantity(75, "%"),
      targetSaturation: quantity(100, "%"),
      layer: assumed,
    });
    expect(base).toBeCloseTo(acid, 8);
    const buffered = pounds({
      method: "pH buffering",
      pH: 5,
      targetPH: 6,
      perUnitPH: meq(2.5),
      layer: assumed,
    });
    expect(buffered).toBeCloseTo(acid, 8);
  });
  test("metric and US layers agree", () => {
    const density = quantity(1.4, "g/mL", "soil");
    const by = (depth: ReturnType<typeof quantity<"in">> | ReturnType<typeof quantity<"mm">>) =>
      pounds({
        method: "exchangeable acidity",
        acidity: meq(3),
        layer: { depth: depth as ReturnType<typeof quantity<"in">>, bulkDensity: density },
      });
    expect(by(quantity(6, "in"))).toBeCloseTo(by(quantity(152.4, "mm")), 6);
  });
});

describe("bad input", () => {
  test("is refused, all of it at once", () => {
    const method = "Sikora buffer, Oregon" as const;
    expect(complaints(() => limeRequirement({ method, pH: 15, targetPH: -1, bufferPH: 12 }))).toEqual([
      "range pH",
      "range targetPH",
      "range bufferPH",
    ]);
    expect(complaints(() => limeRequirement({ method, pH: 6.5, targetPH: 6, bufferPH: 6 }))).toEqual([
      "conflict targetPH",
    ]);
    expect(complaints(() => limeRequirement({ method, pH: 5, targetPH: 6.5, bufferPH: 6 }))).toEqual([
      "range targetPH",
    ]);
    expect(complaints(() => limeRequirement({ method: "Woodruff" } as never))).toEqual(["type method"]);
    expect(
      complaints(() => limeRequirement({ method, pH: 5, targetPH: 6, acidity: meq(4) } as never)),
    ).toEqual(["type input.acidity"]);
    expect(
      complaints(() =>
        limeRequirement({
          method: "base saturation",
          capacity: meq(10),
          baseSaturation: quantity(80, "%"),
          targetSaturation: quantity(120, "%"),
          layer: assumed,
        }),
      ),
    ).toEqual(["range targetSaturation"]);
    expect(
      complaints(() =>
        limeRequirement({
          method: "base saturation",
          capacity: meq(10),
          baseSaturation: quantity(80, "%"),
          targetSaturation: quantity(70, "%"),
          layer: assumed,
        }),
      ),
    ).toEqual(["conflict targetSaturation"]);
  });
});

test("the nitrogen of a season calls for lime, and nitrate for none", () => {
  const season = (source: "nitrate" | "urea") =>
    limeForSeason([
      {
        nitrogen: quantity(4, "lb/1000 ft2", "N"),
        acidity: potentialAcidityOfSource({ source, convention: "half nitrogen credit" }),
      },
    ]);
  expect(season("urea").rate.in("lb/1000 ft2")).toBeCloseTo(7.15, 2);
  expect([season("nitrate").rate.value, season("nitrate").findings[0]?.code]).toEqual([
    0,
    "lime/season-is-basic",
  ]);
});
