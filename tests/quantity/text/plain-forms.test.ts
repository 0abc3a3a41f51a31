import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { divided, plainEnd, restFrom } from "../../../src/quantity/text/plain-reading.js";
import { twoAmounts } from "../../../src/quantity/text/two-amounts.js";
import { problemsOf } from "../../errors.js";

describe("where plain digits end", () => {
  test.each([
    ["3 lb", 1],
    ["3lb", 1],
    ["-3lb", 2],
    ["+3 lb", 2],
    [".5 lb", 2],
    ["+.5 lb", 3],
    ["3. lb", 2],
    ["12.25 lb", 5],
    ["12,400 lb", 6],
    ["-12,400 lb", 7],
    ["12,400.5 ft2", 8],
    ["12,400. ft2", 7],
    ["1,234,567,890,123 lb", 17],
    ["3%", 1],
    ["3 °F", 1],
    ["3#", 1],
    ["3 A", 1],
    ["3 Z", 1],
    ["3 a", 1],
    ["3 z", 1],
    [`${"1".repeat(20)} lb`, 20],
  ])("%s: %i", (text, end) => {
    expect(plainEnd(text)).toBe(end);
  });

  // every other form goes the longer way
  test.each([
    ..."1e5 lb|1E5 lb|3 each|1.2.3 lb|3 1/2 lb|3/4 lb|3-4 lb|12,40 lb|0,400 kg|12,4000 lb|1,5 lb|12 400 ft2".split(
      "|",
    ),
    ..."lb|-lb|.lb|+|3|3 |3  lb|3 $|3 @|3 [|3 `|3 {|3 ½ lb|1½ lb|--3 lb|3 .5|3,|,3 lb|1,234,567,890,123,456 lb".split(
      "|",
    ),
    "",
    "1,000.1234567890 lb",
    `${"1".repeat(21)} lb`,
  ])('"%s" is no plain form', (text) => {
    expect(plainEnd(text)).toBe(0);
  });

  test("what stands behind it begins after one space, if any", () => {
    expect([restFrom("3 lb", 1), restFrom("3lb", 1), restFrom("3  lb", 1)]).toEqual(["lb", "lb", " lb"]);
  });

  test("a number read once is not read into the next", () => {
    for (const power of ["e3", "E3"])
      for (const digit of [1, 2, 3]) expect(parseQuantity(`${digit}${power} lb`).value).toBe(digit * 1000);
    for (const [text, value] of [
      ["1,400 lb", 1400],
      ["2,400 lb", 2400],
      ["2,400.5 lb", 2400.5],
      ["2 stone", 28],
      ["3 stone", 42],
      ["3 pt/100 gal", 0.03],
      ["5 pt/100 gal", 0.05],
    ] as const)
      expect([text, parseQuantity(text).value]).toEqual([text, value]);
    expect(parseQuantity("3 kg", { of: "N" }).of).toBe("N");
    expect(parseQuantity("3 kg").of).toBe("none");
    expect(parseQuantity("3 kg", { of: "K" }).of).toBe("K");
  });

  test("what is divided by a part of one is multiplied, to the last digit", () => {
    expect([divided(2, 1 / 14), divided(3, 1 / 112), divided(7, 1)]).toEqual([28, 336, 7]);
    expect([divided(3, 8), divided(1, 100), divided(3, 0.4)]).toEqual([0.375, 0.01, 3 / 0.4]);
  });
});

describe("two amounts in one", () => {
  test.each([
    [5, "ft 6 in", "5.5 ft"],
    [-5, "ft 6 in", "-5.5 ft"],
    [0, "ft 6 in", "0.5 ft"],
    [5, "' 6 \"", "5.5 ft"],
    [5, "ft. 6 in.", "5.5 ft"],
    [12, "ft 4.5 in", "12.375 ft"],
    [3, "lb and 8 oz", "3.5 lb"],
    [3, "lb 8 ounces", "3.5 lb"],
    // a stone is 14 lb
    [2, "stone 3 lb", "31 lb"],
    [3, "lb 1 stone", "17 lb"],
    [1, "gal 2 qt", "1.5 gal"],
    [1, "h 15 min", "1.25 h"],
    [1, "lb N 8 oz", "1.5 lb of N"],
    [1, "lb 8 oz N", "1.5 lb of N"],
    [2, "m 5 cm", "2.05 m"],
    [1, "ha 500 m2", "1.05 ha"],
  ] as const)("%s %s is %s", (value, rest, sum) => {
    expect(twoAmounts(value, rest)).toBe(sum);
  });

  test.each([
    ..."ft 6 gal|ft by 60 ft|ft x 60 ft|fl oz per 100 gal|lb to 5 lb|lb in 8 oz|lb on 8 oz|lb for 8 oz|lb a 8 oz".split(
      "|",
    ),
    ..."lb an 8 oz|lb each 8 oz|lb every 8 oz|lb of 8 oz|deg C 5 deg C|lb|lb 8|8 oz|ft 1234567 in|ft 6 in 3".split(
      "|",
    ),
    ..."gravel 8 oz|ft 6 gravel|lb/acre 8 oz|oz 8 oz".split("|"),
  ])("%s has no sum", (rest) => {
    expect(twoAmounts(3, rest)).toBeUndefined();
  });
});

describe("currencies", () => {
  test.each([
    ["US$5/lb", "USD"],
    ["CA$5/lb", "CAD"],
    ["A$5/lb", "AUD"],
    ["NZ$5/lb", "NZD"],
    ["MX$5/lb", "MXN"],
    ["€5/lb", "EUR"],
    ["£5/lb", "GBP"],
    ["5 €/lb", "EUR"],
    ["5 £ per lb", "GBP"],
    ["5 US$/lb", "USD"],
    ["CHF 5/lb", "CHF"],
    ["5 SEK/lb", "SEK"],
    ["-€5/lb", "EUR"],
  ])("%s is in %s", (text, code) => {
    const price = parseQuantity(text);
    expect([price.value, price.unit]).toEqual([text.startsWith("-") ? -5 : 5, `money:${code}/lb`]);
  });

  test("a sign of several countries is asked for, and settled by what is wanted", () => {
    expect(problemsOf(() => parseQuantity("¥5/kg"))[0]?.choices).toEqual(["JPY", "CNY"]);
    for (const code of ["JPY", "CNY"] as const)
      expect(parseQuantity("¥5/kg", { dimension: `money:${code}/mass` }).unit).toBe(`money:${code}/kg`);
    for (const code of ["USD", "CAD", "AUD", "NZD", "MXN", "SGD", "HKD"] as const)
      expect(parseQuantity("$5", { dimension: `money:${code}` }).unit).toBe(`money:${code}`);
    expect(problemsOf(() => parseQuantity("$5", { dimension: "money:EUR" }))[0]?.expected).toBe("a currency");
  });
});
