import { expect, test } from "vitest";
import { cleanText } from "../../../src/quantity/text/clean-text.js";

// What word processors, phones and copied labels write, and the plain signs for it.
const rows: readonly (readonly [typed: string, plain: string])[] = [
  ["3 lb/1000 ft2", "3 lb/1000 ft2"],
  ["  3   lb  ", "3 lb"],
  ["3\tlb\n/acre", "3 lb /acre"],
  ["3\u00a0\u2009lb", "3 lb"],
  ["3\u200b\u200d\u2060 lb\ufeff", "3 lb"],
  // a fraction behind a digit is a mixed number, 0 and 9 are digits too
  ["10½ lb", "10 1/2 lb"],
  ["9½ lb", "9 1/2 lb"],
  ["½ lb", "1/2 lb"],
  ["lb ¼", "lb 1/4"],
  ["1⁄2", "1/2"],
  ["3÷4", "3/4"],
  ["3 × 1,000", "3 x 1,000"],
  ["3×4", "3x4"],
  ["72℉", "72°F"],
  ["22℃", "22°C"],
  ["72ºF", "72°F"],
  ["72˚F", "72°F"],
  ["45％", "45%"],
  ["5µm", "5um"],
  ["5μm", "5um"],
  ["5′ 6″", "5' 6\""],
  ["5’ 6”", "5' 6\""],
  ["−3 – 4 — 5 ‑ 6", "-3 - 4 - 5 - 6"],
  ["﹣3 －4", "-3 -4"],
  // a power is told from a number
  ["10²", "10^2"],
  ["10⁰", "10^0"],
  ["10⁻¹²", "10^-12"],
  ["⁵", "^5"],
  ["ha⁻¹ d⁻¹", "ha^-1 d^-1"],
  ["m²/m²", "m^2/m^2"],
  ["P₂O₅", "P2O5"],
  ["x₀", "x0"],
  ["x₉", "x9"],
  // 3₀ is no 30
  ["3₀", "3₀"],
  // a dot between digits may be a decimal sign; beside a letter it is a times
  ["3·5", "3·5"],
  ["3⋅5 9∙0", "3⋅5 9∙0"],
  ["kg·ha", "kg ha"],
  ["5·kg", "5 kg"],
  ["kg·5", "kg 5"],
  ["kg·", "kg"],
  ["kg · ha", "kg ha"],
  // a soft hyphen was a hyphen where it parts numbers; in a word it is none
  ["1\u00ad2", "1-2"],
  ["1\u00ad.5", "1-.5"],
  ["gal\u00adlon", "gallon"],
  ["3\u00adlb", "3lb"],
  ["NO\u00ad3", "NO3"],
  ["3\u00ad", "3"],
  ["", ""],
  [" ", ""],
  // what is not known stays
  ["3 é 漢 😀", "3 é 漢 😀"],
  ["constructor ß", "constructor ß"],
];

test.each(rows)("%j is %j", (typed, plain) => {
  expect(cleanText(typed)).toBe(plain);
});

test("what is clean is not changed by cleaning", () => {
  for (const [, plain] of rows) expect(cleanText(plain)).toBe(plain);
});
