// Purchases and a store exactly at their limits.
import { expect, test } from "vitest";
import { purchaseList, quantity, stockOnHand } from "../../../src/index.js";
import { problemsOf } from "../../errors.js";

const lb = (value: number) => quantity(value, "lb");
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
const need = { product: "a", date: "2026-05-04", amount: lb(120) } as const;
const buy = (one: object = {}, more: object = {}) =>
  purchaseList({ needs: [need], products: [{ id: "a", package: lb(50), ...one }], ...more } as never);

test("a hundred years of lead time are taken, and an amount of product is an amount of it", () => {
  expect(told(() => buy({ leadTime: quantity(36_525, "d"), shelfLife: quantity(36_525, "d") }))).toEqual([]);
  for (const of of ["product", "product:a", "none"])
    expect(buy({ stock: quantity(100, "lb", of as "product") }).lines[0]?.short.value).toBe(20);
});

test("a day of ordering that is none, and a need for a product that is not in a long list", () => {
  expect(told(() => buy({}, { orderedOn: "2026-02-30" }))[0]).toMatch(/^date orderedOn: /);
  const products = Array.from({ length: 25 }, (_, i) => ({ id: `p${i}`, package: lb(50) }));
  const [problem] = problemsOf(() => purchaseList({ needs: [need], products } as never));
  expect([problem?.path, problem?.choices?.length, problem?.choices?.[0]]).toEqual([
    "needs[0].product",
    20,
    "p0",
  ]);
});

test("receipts up to 20,000", () => {
  const receipt = { product: "a", date: "2026-02-10", amount: lb(1) } as const;
  const store = (count: number) => () =>
    stockOnHand({ received: Array.from({ length: count }, () => receipt), on: "2026-05-01" });
  expect(told(store(20_001))).toEqual(["range received: 20000 receipts or fewer"]);
  expect(store(20_000)().products[0]?.onHand.value).toBe(20_000);
});

test("prices out of order, of which two begin at the same number", () => {
  const at = (from: number, price: number) => ({ from, price: quantity(price, "money:USD" as "lb") });
  expect(told(() => buy({ prices: [at(4, 22), at(1, 30), at(4, 21)] }))).toEqual([
    "duplicate products[0].prices: each starting quantity once",
  ]);
  // 3 packages at 30; from 3 on at 29 they are 87.
  expect(buy({ prices: [at(3, 29), at(1, 30)] }).cost?.value).toBe(87);
});

test("what is stated by weight is bought by volume through the density, and the other way round", () => {
  // 120 lb at 10 lb/gal are 12 gal: two of 5 gal do not do; 12 gal of it are 120 lb
  const density = quantity(10, "lb/gal");
  const gallons = buy({ package: quantity(5, "gal"), density });
  expect([gallons.lines[0]?.short.toString(), gallons.lines[0]?.once.packages]).toEqual([
    "12 gal of product:a",
    3,
  ]);
  const pounds = buy({ density }, { needs: [{ ...need, amount: quantity(12, "gal") }] });
  expect([pounds.lines[0]?.short.toString(), pounds.lines[0]?.once.packages]).toEqual([
    "120 lb of product:a",
    3,
  ]);
  expect(told(() => buy({ package: quantity(5, "gal") }))).toEqual([
    "missing needs[0].amount: a volume, like the package, or the product's density in products",
  ]);
});

test("prices that begin with more than one package", () => {
  const two = { from: 2, price: quantity(22, "money:USD" as "lb") };
  const [problem] = problemsOf(() => buy({ prices: [two] }));
  expect([problem?.path, problem?.expected, problem?.got]).toEqual([
    "products[0].prices",
    "a price that starts at 1 package",
    "prices that start at 2",
  ]);
});
