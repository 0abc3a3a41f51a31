import { expect, test } from "vitest";
import { fertilizer, quantity, slowShareRates } from "../../../src/index.js";

const half = (id: string, analysis: string, slow: number) =>
  fertilizer({ id, analysis, slowNitrogen: quantity(slow, "% w/w", "N:slow/product") });

test("of two products of one slow share, the wanted one, the first goes down alone", () => {
  const rates = slowShareRates({
    target: quantity(1, "lb/1000 ft2", "N"),
    slowShare: quantity(50, "% w/w", "N:slow/N"),
    products: [half("a", "20-0-0", 10), half("b", "40-0-0", 20)],
  });
  // 1 lb of N from 20 % is 5 lb of the product.
  expect(rates.map(({ rate }) => rate.in("lb/1000 ft2"))).toEqual([5, 0]);
});
