// How figures are printed, and which seeds are taken.
import { problem } from "../../../src/teach/problems/index.js";
import { amount, fixed, num } from "../../../src/teach/topics/figures.js";

const printed: readonly (readonly [here: () => string, expected: string])[] = [
  ...(
    [
      [3.8, 2, "3.80"],
      [3.845, 2, "3.85"],
      [3.8449, 2, "3.84"],
      [12_400, 0, "12,400"],
      [1_234_567.891, 2, "1,234,567.89"],
      [99.995, 2, "100.00"],
      [0.0625, 3, "0.063"],
      [1234.56, 1, "1,234.6"],
      [87_654.32, 2, "87,654.32"],
      [43_210.98, 2, "43,210.98"],
    ] as const
  ).map(([value, decimals, text]) => [() => fixed(value, decimals), text] as const),
  ...(
    [
      [3000, "3,000"],
      [0.75, "0.75"],
      [1 / 3, "0.333333"],
      [2 / 3, "0.666667"],
      [123_456.7, "123,457"],
      [1_234_567, "1,234,570"],
      [0.000_012_36, "0.00001236"],
      [100, "100"],
      [0.1 + 0.2, "0.3"],
    ] as const
  ).map(([value, text]) => [() => num(value), text] as const),
  [() => num(0.436_428_7, 4), "0.4364"],
  [() => num(0.830_150_2, 4), "0.8302"],
  ...(
    [
      [18.5, "money:USD", "$18.50"],
      [3.8449, "money:USD", "$3.84"],
      [87_654.32, "money:USD", "$87,654.32"],
      [43_210.98, "money:EUR", "€43,210.98"],
      [0.6, "money:USD/lb", "$0.60 per lb"],
      [3000, "ft2", "3,000 sq ft"],
      [1, "in", "1 inch"],
      [0.5, "in", "0.5 inch"],
      [1.5, "in", "1.5 inches"],
      [4, "gal/acre", "4 gal per acre"],
      [4, "lb/1000 ft2", "4 lb per 1,000 sq ft"],
      [12.5, "%", "12.5 %"],
      [3, "mi/h", "3 mph"],
    ] as const
  ).map(([value, unit, text]) => [() => amount(value, unit), text] as const),
];

const speedAt = (seed: number): boolean => {
  try {
    problem({ topic: "spray/speed", level: 1, seed, units: "US" });
    return true;
  } catch {
    return false;
  }
};

export const figureFaults = (): readonly string[] => [
  ...printed.flatMap(([here, expected]) =>
    here() === expected ? [] : [`${here()} is printed, not ${expected}`],
  ),
  // 32 bits
  ...(speedAt(4_294_967_295) ? [] : ["the largest seed is refused"]),
  ...(speedAt(4_294_967_296) ? ["a seed of 33 bits is taken"] : []),
];
