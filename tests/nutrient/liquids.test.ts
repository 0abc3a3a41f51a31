import { expect, test } from "vitest";
import { saltOutFindings } from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";

test("the weaker urea ammonium nitrate solutions salt out where each source prints it", () => {
  // Virginia Cooperative Extension SPES-199, table 1, prints 1 °F for 28 % and 14 °F for 30 % nitrogen; an industry
  // fact sheet prints -1 °F for 28 %.
  const count = (material: "UAN 28" | "UAN 30", fahrenheit: number): number =>
    saltOutFindings(material, quantity(fahrenheit, "°F")).length;
  expect([2, 1, 0, -1].map((t) => count("UAN 28", t))).toEqual([0, 1, 1, 2]);
  expect([15, 14].map((t) => count("UAN 30", t))).toEqual([0, 1]);
  const [finding] = saltOutFindings("UAN 30", quantity(-10, "°C"));
  expect(finding?.source).toMatchObject({ publisher: "Virginia Cooperative Extension", where: "table 1" });
});
