import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { layerMaterial, looseMaterials, mixWeights } from "../../../src/site/index.js";

// Whole records, as they go on paper: what is told, by whose word, and the figures by hand.

const percent = (value: number) => quantity(value, "%");
const plain = (record: unknown): unknown => JSON.parse(JSON.stringify(record));
const of = (value: number, unit: string, substance = "none") => ({ value, unit, of: substance });

describe("loose material", () => {
  test("a layer to order: 324 ft2 to an inch are a cubic yard", () => {
    const found = layerMaterial({
      area: quantity(3240, "ft2"),
      depth: quantity(1, "in"),
      bulkDensity: quantity(2000, "lb/yd3"),
      extra: percent(10),
      bag: quantity(0.5, "yd3"),
    });
    expect([found.type, found.version, found.volume, found.bags].map(String)).toEqual([
      "layer-material",
      "1",
      "10 yd3",
      "22",
    ]);
    expect(found.order.in("yd3")).toBeCloseTo(11, 12);
    expect([found.weight?.unit, found.weight?.value]).toEqual(["US ton", expect.closeTo(11, 12)]);
    expect([found.weightPerArea?.unit, found.weightPerArea?.value]).toEqual([
      "lb/1000 ft2",
      expect.closeTo(20_000 / 3.24, 8),
    ]);
    const metric = layerMaterial({
      area: quantity(1000, "m2"),
      depth: quantity(5, "mm"),
      bulkDensity: quantity(1600, "kg/m3"),
      extra: percent(100),
    });
    expect([metric.volume, metric.order, metric.weight, metric.weightPerArea].map(String)).toEqual([
      "5 m3",
      "10 m3",
      "16 t",
      "8 kg/m2",
    ]);
    expect(Object.keys(layerMaterial({ area: quantity(1000, "m2"), depth: quantity(5, "mm") }))).toEqual([
      "type",
      "version",
      "volume",
      "order",
    ]);
  });
  test("a mix of four to one, half as heavy and half wet", () => {
    const found = mixWeights({
      volume: quantity(8, "m3"),
      shrinkage: percent(20),
      parts: [
        {
          name: "sand",
          share: percent(80),
          bulkDensity: quantity(1500, "kg/m3"),
          moisture: percent(0),
          basis: "dry weight",
        },
        {
          name: "peat",
          share: percent(20),
          bulkDensity: quantity(750, "kg/m3"),
          moisture: percent(50),
          basis: "wet weight",
        },
      ],
    });
    // 10 m3 loose: 8 of 1.5 t and 2 of 0.75 t, half of that water
    expect([found.type, found.version, found.volume, found.loose].map(String)).toEqual([
      "mix-weights",
      "1",
      "8 m3",
      "10 m3",
    ]);
    expect([found.weight.in("t"), found.dryWeight?.in("t")]).toEqual([
      expect.closeTo(13.5, 10),
      expect.closeTo(12.75, 10),
    ]);
    expect(
      found.parts.map(({ name, volume, weight, dryWeight, share, dryShare }) => [
        name,
        ...[volume.in("m3"), weight.in("t"), dryWeight?.in("t"), share.in("%"), dryShare?.in("%")].map(
          (one) => Number(one?.toFixed(6)),
        ),
      ]),
    ).toEqual([
      ["sand", 8, 12, 12, 88.888889, 94.117647],
      ["peat", 2, 1.5, 0.75, 11.111111, 5.882353],
    ]);
    const us = mixWeights({
      volume: quantity(1, "yd3"),
      parts: [{ name: "sand", share: percent(100), bulkDensity: quantity(2000, "lb/yd3") }],
    });
    expect(plain(us)).toEqual({
      type: "mix-weights",
      version: 1,
      volume: of(1, "yd3"),
      loose: of(1, "yd3"),
      weight: of(1, "US ton"),
      parts: [{ name: "sand", volume: of(1, "yd3"), weight: of(1, "US ton"), share: of(100, "%") }],
    });
  });
  test("printed weights keep their source", () => {
    for (const { source } of looseMaterials)
      expect(source).toMatchObject({
        title: "Sand math: how much sand do I need",
        publisher: "sand supplier technical page",
        where: "weights per cubic yard",
      });
  });
});
