import { describe, expect, test } from "vitest";
import { areaCovered, fertilizer, packageCoverage, packagesFor } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const bag = fertilizer({ id: "bag", analysis: "24-0-11", package: quantity(50, "lb") });
const jug = fertilizer({
  id: "jug",
  form: "liquid",
  analysis: "28-0-0",
  density: quantity(10.67, "lb/gal"),
  package: quantity(2.5, "gal"),
});

describe("packages", () => {
  const count = (need: unknown, product: unknown = bag) => packagesFor(need as never, product as never);

  test("are whole, at least one, and rounding opens none", () => {
    const of = (pounds: number) => count(quantity(pounds, "lb", "product:bag")).count;
    expect([0, 1e-9, 49.99, 50, 50.01, 39_600].map(of)).toEqual([0, 1, 1, 1, 2, 792]);
    // 3 * 0.1 is 0.30000000000000004, which is three tenths all the same.
    const tenth = { id: "bag", package: quantity(0.1, "lb") };
    const three = count(quantity(3 * 0.1, "lb", "product:bag"), tenth);
    expect([three.count, three.leftOver.value]).toEqual([3, 0]);
    // The pound is 0.45359237 kg by definition.
    expect(count(quantity(22.6796185, "kg", "product:bag")).count).toBe(1);
  });

  test("by volume leave over what stays in the last jug", () => {
    // 1281 fl oz are 10.0078125 gal of 12.5 in five jugs.
    const found = count(quantity(1281, "fl oz", "product:jug"), jug);
    expect([found.count, found.total.in("gal")]).toEqual([5, 12.5]);
    expect(found.leftOver.in("gal")).toBeCloseTo(12.5 - 10.0078125, 12);
    expect(count(quantity(1280, "fl oz", "product:jug"), jug)).toMatchObject({
      count: 4,
      leftOver: { value: 0 },
    });
  });

  test("need the same product, the same kind of amount, and a package", () => {
    expect(complaints(() => count(quantity(1, "lb", "product:other")))).toEqual(["substance/mismatch need"]);
    expect(complaints(() => count(quantity(1, "lb", "N")))).toEqual(["substance/mismatch need"]);
    expect(complaints(() => count(quantity(1, "gal", "product:bag")))).toEqual(["unit/mismatch need"]);
    const { density: _, ...bare } = jug;
    expect(complaints(() => count(quantity(1, "lb", "product:jug"), bare))).toEqual(["unit/mismatch need"]);
    expect(complaints(() => count(quantity(1, "lb/acre", "product:bag")))).toEqual(["unit/mismatch need"]);
    expect(complaints(() => count(quantity(-1, "lb", "product:bag")))).toEqual(["range need"]);
    expect(complaints(() => count(quantity(1, "lb", "product:bag"), { id: "bag" }))).toEqual([
      "missing product.package",
    ]);
    const empty = { id: "bag", package: quantity(0, "lb") };
    expect(complaints(() => count(quantity(1, "lb", "product:bag"), empty))).toEqual([
      "range product.package",
    ]);
  });

  test("cover the area at which the rate uses them up", () => {
    // 50 lb at 3.75 lb per 1000 ft2: 13 333.33 ft2; 2.5 gal at 0.75 fl oz per 1000 ft2: 426 667 ft2.
    const dry = packageCoverage(bag, quantity(3.75, "lb/1000 ft2", "product:bag"));
    expect(dry.in("ft2")).toBeCloseTo(50_000 / 3.75, 6);
    const wet = packageCoverage(jug, quantity(0.75, "fl oz/1000 ft2", "product:jug"));
    expect(wet.in("ft2")).toBeCloseTo((320 / 0.75) * 1000, 4);
    expect(complaints(() => packageCoverage(bag, quantity(0, "lb/acre", "product:bag")))).toEqual([
      "range rate",
    ]);
    expect(
      complaints(() => areaCovered(quantity(1, "lb", "N"), quantity(1, "lb/acre", "product:bag") as never)),
    ).toEqual(["substance/mismatch rate"]);
  });
});
