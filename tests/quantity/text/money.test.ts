import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { refused } from "./typed.js";

const unit = "a unit, such as lb/1000 ft2";

describe("money", () => {
  const dollars = "a currency ? USD | CAD | AUD | NZD | MXN | SGD | HKD";
  test("a sign of several currencies asks for one, before the number and behind it", () => {
    for (const text of ["$3", "$3/lb", "-$5", "- $5", "$ -5", "5 $", "5 $/lb"])
      refused([[text, "unit/ambiguous", text, dollars]]);
    refused([
      ["¥5", "unit/ambiguous", "¥5", "a currency ? JPY | CNY"],
      ["5 ¥", "unit/ambiguous", "5 ¥", "a currency ? JPY | CNY"],
      ["5 $ N", "unit/unknown", "$ N", unit],
    ]);
    for (const code of "USD|CAD|AUD|NZD|MXN|SGD|HKD|JPY|CNY|EUR|GBP|CHF|SEK|NOK|DKK|PLN|CZK|INR|BRL|ZAR".split(
      "|",
    )) {
      expect(parseQuantity(`5 ${code}`).unit).toBe(`money:${code}`);
      expect(parseQuantity(`${code} 5/kg`).unit).toBe(`money:${code}/kg`);
    }
  });

  test.each([
    ["€5", 5, "money:EUR"],
    ["€ 5/kg", 5, "money:EUR/kg"],
    ["-€5", -5, "money:EUR"],
    ["+£5", 5, "money:GBP"],
    ["US$5", 5, "money:USD"],
    ["CA$5/kg", 5, "money:CAD/kg"],
    ["A$5", 5, "money:AUD"],
    ["NZ$5", 5, "money:NZD"],
    ["MX$5", 5, "money:MXN"],
    ["12 €", 12, "money:EUR"],
    ["12 €/kg", 12, "money:EUR/kg"],
    ["12 € per kg", 12, "money:EUR/kg"],
    ["12 US$/kg", 12, "money:USD/kg"],
    ["12 £/acre", 12, "money:GBP/acre"],
    ["€28/50 kg", 0.56, "money:EUR/kg"],
  ] as const)("%s", (text, value, unit) => {
    const read = parseQuantity(text);
    expect([read.value, read.unit]).toEqual([value, unit]);
  });

  test("the dimension says which of the dollars, and names a rare currency", () => {
    expect(parseQuantity("$5/lb", { dimension: "money:AUD/mass" }).unit).toBe("money:AUD/lb");
    expect(parseQuantity("5 $/lb", { dimension: "money:HKD/mass" }).unit).toBe("money:HKD/lb");
    expect(parseQuantity("KWD 5", { dimension: "money:KWD" }).unit).toBe("money:KWD");
  });
});
