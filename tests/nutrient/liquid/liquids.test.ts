import { expect, test } from "vitest";
import { analysisByWeight, saltOutFindings } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

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

test("a label in weight by volume is refused at the nutrient at fault", () => {
  const density = quantity(1.2, "kg/L");
  const by = (perVolume: object) => complaints(() => analysisByWeight({ perVolume, density } as never));
  expect(by({ N: quantity(1201, "g/L", "N"), P2O5: quantity(90, "g/L", "P2O5") })).toEqual([
    "range perVolume.N",
  ]);
  expect(by({ N: quantity(12, "g/L", "N"), P2O5: quantity(90, "g/L", "K2O") })).toEqual([
    "substance/mismatch perVolume.P2O5",
  ]);
  expect(by({ N: quantity(700, "g/L", "N"), K2O: quantity(700, "g/L", "K2O") })).toEqual(["range perVolume"]);
  expect(by({})).toEqual(["missing perVolume"]);
  expect(complaints(() => analysisByWeight({ density } as never))).toEqual(["missing perVolume"]);
});
