import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { refused } from "./typed.js";

const substance = (after: string): string => `a substance after ${after}, such as N, P2O5, product or water`;

describe("substances", () => {
  test("what is none, with the one that is near", () => {
    refused([
      ["3 lb nitrogin/acre", "substance/unknown", "nitrogin", `${substance("lb")} => N`],
      ["3 lb gravel/acre", "substance/unknown", "gravel", substance("lb")],
      ["3 lb of gravel per acre", "substance/unknown", "gravel", substance("lb")],
      ["3 lb bags of N", "substance/unknown", "bags", substance("lb")],
      ["3 lb N of K", "substance/unknown", "N of K", substance("lb")],
      ["3 lb/acre of gravel", "substance/unknown", "gravel", substance("acre")],
    ]);
  });

  test("another than the one that is wanted", () => {
    refused([
      ["3 lb N/acre", "substance/mismatch", "N", "a quantity of K2O", { of: "K2O" }],
      ["3 lb product:a", "substance/mismatch", "product:a", "a quantity of product:b", { of: "product:b" }],
      ["3 lb ai", "substance/mismatch", "ai", "a quantity of product:b", { of: "product:b" }],
      ["3 lb N", "substance/mismatch", "N", "a quantity of N:slow", { of: "N:slow" }],
    ]);
    for (const [text, of] of [
      ["3 lb product", "product:b"],
      ["3 lb a.i.", "ai:2,4-D"],
      ["3 lb ae", "ae:2,4-D"],
    ] as const)
      expect(parseQuantity(text, { of }).of).toBe(of);
  });

  test("two that contradict each other, or of which it is not said which is meant", () => {
    const both = "what is above the slash and what is below it";
    refused([
      ["3 lb N/1000 ft2 of K", "conflict", "lb N/1000 ft2 of K", "one substance"],
      ["5 g N/L of K/product", "conflict", "g N/L of K/product", "one substance"],
      [
        "2 fl oz per 100 lb of seed",
        "conflict",
        "fl oz/100 lb of seed",
        `${both} ? fl oz seed/100 lb | fl oz product/100 lb seed`,
      ],
      [
        "2 fl oz/gal product",
        "conflict",
        "fl oz/gal product",
        `${both} ? fl oz product/gal | fl oz/gal of none/product`,
      ],
      ["3 lb N/lb N", "conflict", "lb N/lb N", "two substances, such as N/product"],
      [
        "$3/lb treated",
        "conflict",
        "money:USD/lb treated",
        "a price of a substance",
        { dimension: "money:USD/mass" },
      ],
    ]);
  });
});

test("what the options ask for is looked at first", () => {
  const wrong = (options: object): readonly string[] =>
    problemsOf(() => parseQuantity("3 lb", options as never)).map(
      ({ code, path, expected, suggestion }) =>
        `${code} ${path}: ${expected}${suggestion ? ` => ${suggestion}` : ""}`,
    );
  const fields = "one of the fields dimension, of, decimal, measures";
  expect(wrong({ dimension: "weight" })).toEqual(["type options.dimension: a dimension, such as mass/area"]);
  expect(wrong({ of: "nitrogen" })).toEqual([
    "substance/unknown options.of: a substance, such as N or product",
  ]);
  expect(wrong({ decimal: ";" })).toEqual(['type options.decimal: one of ".", ","']);
  expect(wrong({ measures: "UK" })).toEqual(['type options.measures: one of "US", "imperial"']);
  expect(wrong({ dimensoin: "mass", extra: 1 })).toEqual([
    `type options.dimensoin: ${fields} => dimension`,
    `type options.extra: ${fields}`,
  ]);
  expect(wrong([])).toEqual(['type options: a record, such as { dimension: "mass" }']);
  expect(wrong("mass" as never)).toEqual(['type options: a record, such as { dimension: "mass" }']);
});
