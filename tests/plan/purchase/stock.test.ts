// What should be in the store by the books, and what is told of entries that could not be taken off.
import { describe, expect, test } from "vitest";
import { ledger, quantity, stockOnHand } from "../../../src/index.js";
import { problemsOf } from "../../errors.js";

const lb = (value: number) => quantity(value, "lb");
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);

describe("the store by the books", () => {
  const received = [{ product: "a", date: "2026-02-10", amount: lb(400) }] as const;
  const entry = (more: object) =>
    ledger([
      { id: "1", date: "2026-04-20", product: "a", area: { value: 10_000, unit: "ft2" }, ...more } as never,
    ]);
  const stock = (more: object, on = "2026-05-01") =>
    stockOnHand({ received, ledgers: [entry(more)], on } as never);
  test("received less used; by amount, by rate and area, and through a density", () => {
    expect(stock({ amount: { value: 150, unit: "lb" } }).products[0]?.onHand.value).toBe(250);
    expect(
      stock({ rate: { value: 3, unit: "lb/1000 ft2", of: "product" } }).products[0]?.onHand.value,
    ).toBeCloseTo(370, 9);
    const gallons = {
      amount: { value: 3, unit: "gal" },
      density: { value: 10, unit: "lb/gal" },
      form: "liquid",
    };
    expect(stock(gallons).products[0]?.used.value).toBeCloseTo(30, 9);
    expect(stock({ amount: { value: 400, unit: "lb" } }).findings).toEqual([]);
    expect(stock({ amount: { value: 400.5, unit: "lb" } }).findings).toEqual([
      {
        code: "stock/below-zero",
        severity: "warning",
        params: { product: "a", amount: -0.5, unit: "lb" },
        text: "a: more was used than received. A receipt is missing, or an entry is too high: take inventory.",
      },
    ]);
  });
  test("nothing is left of 0.1 and 0.2 where 0.3 went out, and nothing below", () => {
    const twice = [0.1, 0.2].map((value, i) => ({ product: "a", date: `2026-02-1${i}`, amount: lb(value) }));
    const all = entry({ amount: { value: 0.3, unit: "lb" } });
    const { products, findings } = stockOnHand({
      received: twice,
      ledgers: [all],
      on: "2026-05-01",
    } as never);
    expect([products[0]?.onHand.value, findings]).toEqual([0, []]);
  });
  test("up to the day and with it, of receipts and of entries", () => {
    expect(stock({ amount: { value: 150, unit: "lb" } }, "2026-04-20").products[0]?.used.value).toBe(150);
    expect(stock({ amount: { value: 150, unit: "lb" } }, "2026-04-19").products[0]?.used.value).toBe(0);
    expect(stock({ amount: { value: 150, unit: "lb" } }, "2026-02-10").products[0]?.received.value).toBe(400);
    expect(stock({ amount: { value: 150, unit: "lb" } }, "2026-02-09").products[0]?.received.value).toBe(0);
  });
  test("what could not be taken off is named, with why", () => {
    expect(stock({ amount: { value: 3, unit: "gal" }, form: "liquid" }).notCounted).toEqual([
      "2026-04-20 (1): how much of a.",
    ]);
    expect(stock({ product: "b", amount: { value: 3, unit: "lb" } }).notCounted).toEqual([
      "2026-04-20 (1): b, but there is no receipt for it.",
    ]);
    expect(
      stock({ product: undefined, supplies: [{ value: 1, unit: "lb/1000 ft2", of: "N" }] }).notCounted,
    ).toEqual(["2026-04-20 (1): which product."]);
  });
  test("what is refused", () => {
    const book = entry({ amount: { value: 1, unit: "lb" } });
    const asked = (more: object) =>
      told(() => stockOnHand({ received, ledgers: [book], on: "2026-05-01", ...more } as never));
    expect(asked({ ledgers: [book, book] })).toEqual([
      "duplicate ledgers[1]: each ledger once: its use would count twice",
    ]);
    expect(asked({ ledgers: [{ ...book, type: "x" }] })).toEqual(['type ledgers[0].type: "ledger"']);
    expect(asked({ ledgers: [5] })).toEqual(["type ledgers[0]: a ledger"]);
    expect(asked({ received: [5] })).toEqual(["type received[0]: what was received into the store"]);
    expect(asked({ received: [{ ...received[0], product: 5 }] })).toEqual([
      "type received[0].product: the id of a product",
    ]);
    expect(asked({ received: [...received, { ...received[0], amount: quantity(1, "gal") }] })).toEqual([
      "unit/mismatch received[1].amount: a mass, like the earlier receipts",
    ]);
    expect(asked({ ledgers: undefined })).toEqual([]);
  });
});
