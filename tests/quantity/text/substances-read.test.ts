// Where a substance may stand in a text, and what is asked where it may be said of either side.
import { describe, expect, test } from "vitest";
import { parseQuantity, readQuantity } from "../../../src/quantity/index.js";
import { readAnew } from "../../../src/quantity/text/unit-reading.js";
import { problemsOf } from "../../errors.js";
import { refused } from "./typed.js";

const read = (text: string, options: object = {}): readonly unknown[] => {
  const { value, unit: name, of } = parseQuantity(text, options as { decimal: "." });
  return [text, value, name, of];
};

describe("substances", () => {
  test("above, below and behind", () => {
    for (const [text, name, of, options] of [
      ["3 lb/1000 ft2/week N", "lb/1000 ft2/week", "N"],
      ["3 lb product:a/acre of product:a", "lb/acre", "product:a"],
      ["4 lb/gal of ai:2,4-D", "lb/gal", "ai:2,4-D"],
      ["2 fl oz/gal of product", "fl oz/gal", "product"],
      ["2 fl oz/gal product", "fl oz/gal", "product", { of: "product" }],
      ["3 lb N of nitrogen", "lb", "N"],
      ["3 mg N/count seed", "mg/count", "N/seed"],
      ["3 lb nitrate as no3", "lb", "NO3"],
      // what a caller calls by its id may be written without it, and an id as a word processor writes it
      ["3 lb product", "lb", "product:feed-a", { of: "product:feed-a" }],
      ["24 % w/w N/product", "% w/w", "N/product:feed-a", { of: "N/product:feed-a" }],
      ["3 lb ai/acre", "lb/acre", "ai:2,4-D", { of: "ai:2,4-D" }],
      ["3 lb of product:half-n-half", "lb", "product:half–n–half", { of: "product:half–n–half" }],
      ["3 lb of product:half–n–half", "lb", "product:half–n–half", { of: "product:half–n–half" }],
    ] as readonly (readonly [string, string, string, object?])[])
      expect(read(text, options).slice(2)).toEqual([name, of]);
    for (const [text, of] of [
      ["3 lb product:b", "product:a"],
      ["3 lb products", "product:a"],
      ["3 lb ai", "product:a"],
      ["3 lb N/acre", "N:slow"],
    ] as const)
      expect([text, problemsOf(() => parseQuantity(text, { of }))[0]?.code]).toEqual([
        text,
        text.includes("products") ? "substance/unknown" : "substance/mismatch",
      ]);
  });

  test("of which it is not said whether it is measured or measured in", () => {
    const both = "what is above the slash and what is below it";
    refused([
      [
        "2 qt per 100 gal of product:feed-a",
        "conflict",
        "qt/100 gal of product:feed-a",
        `${both} ? qt product:feed-a/100 gal | qt/100 gal of none/product:feed-a`,
      ],
      [
        "2 qt per gal of other:product x",
        "conflict",
        "qt/gal of other:product x",
        `${both} ? qt other:product x/gal | qt product/gal other:product x`,
      ],
      ["3 lb N/acre of K", "conflict", "lb N/acre of K", "one substance"],
    ]);
    expect(
      problemsOf(() => parseQuantity("2 fl oz/oz seed", { dimension: "volume/mass" })).map(
        ({ code, expected }) => [code, expected],
      ),
    ).toEqual([["conflict", both]]);
    // said at a medium, it is what it is in
    expect(parseQuantity("3 mg/kg of soil", { of: "none/soil" }).of).toBe("none/soil");
  });

  test("an id with the word per in it, where the caller says so, and else the end of the unit", () => {
    const id = "product:4 per bag";
    expect(readAnew(`lb of ${id}`, "mass", id)).toMatchObject({ unit: "lb", of: id, problems: [] });
    expect(readAnew("lb of product:x per acre", "mass/area", id)).toMatchObject({
      unit: "lb/acre",
      of: "product:x",
      problems: [],
    });
    expect(readAnew("lb N per acre", "mass/area", id)).toMatchObject({ unit: "lb/acre", of: "N" });
    expect(readAnew(`lbz of ${id}`, "mass", id).problems.map(({ code, raw }) => [code, raw])).toEqual([
      ["unit/unknown", "lbz"],
    ]);
  });

  test("in a record a word with spaces about it is in the same doubt", () => {
    expect(
      readQuantity({ value: 10, unit: "mg/L", of: " nitrate " }, { dimension: "mass/volume" }).problems.map(
        ({ code, choices }) => [code, choices],
      ),
    ).toEqual([["substance/ambiguous", ["NO3-N", "NO3"]]]);
  });
});
