import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { type JarProduct, jarTest } from "../../../src/tank/index.js";

const jar = (products: readonly JarProduct[]) =>
  jarTest({
    jar: quantity(1, "qt", "spray"),
    applicationVolume: quantity(40, "gal/acre", "spray"),
    products,
  });
const packet: JarProduct = {
  id: "a",
  formulation: "water-soluble packet",
  rate: quantity(16, "oz/acre", "product:a"),
};
const liquid: JarProduct = { id: "b", formulation: "EC", rate: quantity(1, "pt/acre", "product:b") };

test("no part of a packet goes into a jar, for packets are never opened", () => {
  const found = jar([packet, liquid]);
  expect(found.amounts.map(({ id }) => id)).toEqual(["b"]);
  expect(found.steps.map(({ text }) => text).join(" ")).not.toContain("of a.");
  expect(found.findings.map(({ code }) => code)).toContain("jar/packet-left-out");
  expect(jar([liquid]).findings).toEqual([]);
});

test("the caution of dry powders stands where something is weighed", () => {
  const codes = (products: readonly JarProduct[]) => jar(products).cautions.map(({ code }) => code);
  expect(codes([liquid])).not.toContain("caution/dry-powder");
  const powder: JarProduct = { id: "c", formulation: "WP", rate: quantity(4, "oz/acre", "product:c") };
  expect(codes([liquid, powder])).toContain("caution/dry-powder");
});
