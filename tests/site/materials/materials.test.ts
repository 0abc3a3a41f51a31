import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  coverArea,
  coverDepth,
  coverVolume,
  dryBulkDensity,
  layerMaterial,
  looseMaterials,
  mixWeights,
  moistBulkDensity,
} from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const percent = (value: number) => quantity(value, "%");
const lbYd3 = (value: number) => quantity(value, "lb/yd3");
const size = fc.double({ min: 0.01, max: 1000, noNaN: true });

test("cover: volume, depth and area are one another's inverses, in either system", () => {
  fc.assert(
    fc.property(size, size, (a, d) => {
      for (const [area, depth] of [
        [quantity(a, "ft2"), quantity(d, "in")],
        [quantity(a, "ha"), quantity(d, "cm")],
        [quantity(a, "m2", "treated"), quantity(d, "in")],
      ] as const) {
        const volume = coverVolume({ area, depth });
        close(coverDepth({ volume, area }).in("mm"), depth.in("mm"));
        close(coverArea({ volume, depth }).in("m2"), area.in("m2"));
      }
    }),
  );
  expect(
    complaints(untyped(coverDepth, { volume: quantity(1, "yd3"), area: quantity(1, "ft2", "gross") })),
  ).toEqual(["substance/mismatch area"]);
  expect(problemsOf(untyped(coverVolume, { aera: 3, area: 3, depth: quantity(1, "in") }))).toMatchObject([
    { code: "type", path: "aera", suggestion: "area" },
    { code: "type", path: "area" },
  ]);
});

describe("a layer", () => {
  test("weight, extra, bags", () => {
    const layer = layerMaterial({
      area: quantity(648, "ft2"),
      depth: quantity(3, "in"),
      bulkDensity: lbYd3(2000),
      extra: percent(10),
      bag: quantity(2, "ft3"),
    });
    close(layer.volume.in("yd3"), 6);
    close(layer.order.in("yd3"), 6.6);
    close(layer.weight?.in("US ton") ?? 0, 6.6);
    // 6.6 yd3 are 178.2 ft3
    expect(layer.bags).toBe(90);
    close(layer.weightPerArea?.in("lb/1000 ft2") ?? 0, 12_000 / 0.648);
    const metric = layerMaterial({
      area: quantity(100, "m2"),
      depth: quantity(5, "mm"),
      bulkDensity: quantity(1.6, "g/mL"),
    });
    close(metric.weight?.in("kg") ?? 0, 800);
    close(metric.weightPerArea?.in("kg/m2") ?? 0, 8);
    expect(metric).not.toHaveProperty("bags");
  });

  test("refusals", () => {
    const base = { area: quantity(1, "ft2"), depth: quantity(1, "in") };
    expect(
      complaints(untyped(layerMaterial, { ...base, extra: percent(150), bulkDensity: 100, bag: 2 })),
    ).toEqual(["type bulkDensity", "range extra", "type bag"]);
    expect(complaints(untyped(layerMaterial, { ...base, density: lbYd3(3) }))).toEqual(["type density"]);
  });
});

describe("moisture", () => {
  test("dry and moist are inverses on both bases, and the bases agree", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (value, w) => {
          const bulkDensity = lbYd3(value);
          const dryBasis = { moisture: percent(w), basis: "dry weight" } as const;
          // the same water as a share of the wet weight
          const wetBasis = { moisture: percent((100 * w) / (100 + w)), basis: "wet weight" } as const;
          const moist = moistBulkDensity({ bulkDensity, ...dryBasis });
          close(dryBulkDensity({ bulkDensity: moist, ...dryBasis }).in("lb/yd3"), value);
          close(moistBulkDensity({ bulkDensity, ...wetBasis }).in("lb/yd3"), moist.in("lb/yd3"), 1e-9);
        },
      ),
    );
  });

  test("refusals: the basis is never guessed", () => {
    const bulkDensity = lbYd3(2700);
    expect(complaints(untyped(dryBulkDensity, { bulkDensity, moisture: percent(8) }))).toEqual([
      "missing basis",
    ]);
    expect(
      complaints(untyped(dryBulkDensity, { bulkDensity, moisture: percent(100), basis: "wet weight" })),
    ).toEqual(["range moisture"]);
    expect(complaints(untyped(moistBulkDensity, { bulkDensity, moisture: 8, basis: "dry" }))).toEqual([
      "type basis",
      "type moisture",
    ]);
    expect(complaints(untyped(dryBulkDensity, { bulkDensity }))).toEqual(["missing moisture"]);
  });

  test("the table is read by the formulas, and cannot be changed", () => {
    for (const { bulkDensity } of looseMaterials) {
      expect(quantity(bulkDensity.value, bulkDensity.unit).in("lb/ft3")).toBeGreaterThan(40);
    }
    expect(Object.isFrozen(looseMaterials[0]?.bulkDensity)).toBe(true);
  });
});

describe("a mix", () => {
  const sand = {
    name: "sand",
    share: percent(80),
    bulkDensity: lbYd3(2700),
    moisture: percent(8),
    basis: "dry weight",
  } as const;
  const peat = {
    name: "peat",
    share: percent(20),
    bulkDensity: lbYd3(600),
    moisture: percent(50),
    basis: "wet weight",
  } as const;

  test("volumes and weights add up, wet and dry", () => {
    const mix = mixWeights({ volume: quantity(90, "yd3"), parts: [sand, peat], shrinkage: percent(10) });
    close(mix.loose.in("yd3"), 100);
    close(mix.weight.in("lb"), 80 * 2700 + 20 * 600);
    close(mix.dryWeight?.in("lb") ?? 0, (80 * 2700) / 1.08 + 20 * 300);
    close(mix.parts[0]?.share.in("1") ?? 0, 216 / 228);
    close(mix.parts[1]?.dryShare?.in("1") ?? 0, 6 / (200 + 6));
    close(
      mix.parts.reduce((sum, { volume }) => sum + volume.in("yd3"), 0),
      100,
    );
  });

  test("a part of unknown moisture: no dry weight of the whole", () => {
    const plain = { name: "compost", share: percent(20), bulkDensity: lbYd3(1200) };
    const mix = mixWeights({ volume: quantity(10, "m3"), parts: [sand, plain] });
    expect(mix).not.toHaveProperty("dryWeight");
    expect(mix.parts[0]).not.toHaveProperty("dryShare");
    expect(mix.parts[0]).toHaveProperty("dryWeight");
    expect(mix.weight.unit).toBe("t");
  });

  test("refusals", () => {
    const volume = quantity(10, "m3");
    expect(complaints(untyped(mixWeights, { volume, parts: [sand] }))).toEqual(["conflict parts"]);
    expect(
      complaints(untyped(mixWeights, { volume, parts: [sand, { ...peat, name: "sand", share: 20 }] })),
    ).toEqual(["duplicate parts[1].name", "type parts[1].share"]);
    expect(
      complaints(
        untyped(mixWeights, { volume, parts: [sand, { ...peat, basis: undefined }], shrinkage: percent(95) }),
      ),
    ).toEqual(["missing parts[1].basis", "range shrinkage"]);
    expect(complaints(untyped(mixWeights, { volume, parts: [{ ...sand, denisty: 1 }, peat] }))).toEqual([
      "type parts[0].denisty",
    ]);
  });
});
