import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { pureLiveSeed } from "../../../src/stand/index.js";
import { problemsOf } from "../../errors.js";

const told = (lot: object) =>
  problemsOf(() => pureLiveSeed(lot as never)).map(({ code, path, suggestion }) => [code, path, suggestion]);

test("a share written with a percent sign is told, with the percent", () => {
  // by hand: 0.98 of 0.85 is 83.3 % pure live seed, and 0.98 % of 0.85 % would call for 10,000 times the seed
  expect(told({ purity: quantity(0.98, "%"), germination: quantity(0.85, "%") })).toEqual([
    ["range", "purity", "98 %"],
    ["range", "germination", "85 %"],
  ]);
  expect(told({ purity: quantity(98, "%"), viable: quantity(0.9, "%") })).toEqual([
    ["range", "viable", "90 %"],
  ]);
  expect(pureLiveSeed({ purity: quantity(98, "%"), germination: quantity(85, "%") }).in("% w/w")).toBeCloseTo(
    83.3,
    9,
  );
  expect(
    pureLiveSeed({ purity: quantity(0.98, "1"), germination: quantity(0.85, "1") }).in("% w/w"),
  ).toBeCloseTo(83.3, 9);
  // a lot of which little grows is a lot
  expect(pureLiveSeed({ purity: quantity(98, "%"), germination: quantity(2, "%") }).in("% w/w")).toBeCloseTo(
    1.96,
    9,
  );
});
