import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type CivilDate,
  ledger,
  money,
  numberIn,
  purchaseList,
  quantity,
  reorderPoint,
  stockOnHand,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const lb = (value: number) => quantity(value, "lb");

describe("what to buy for a season", () => {
  const cases = fc.record({
    amounts: fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: 1, maxLength: 20 }),
    size: fc.double({ min: 1, max: 120, noNaN: true }),
    stock: fc.double({ min: 0, max: 900, noNaN: true }),
    kept: fc.double({ min: 0, max: 90, noNaN: true }),
  });
  const listOf = ({ amounts, size, stock, kept }: typeof cases extends fc.Arbitrary<infer T> ? T : never) =>
    purchaseList({
      needs: amounts.map((amount, i) => ({
        product: "a",
        date: `2026-0${1 + (i % 9)}-15` as CivilDate,
        amount: lb(amount),
      })),
      products: [{ id: "a", package: lb(size), stock: lb(stock), safetyStock: lb(kept) }],
    }).lines[0];

  test("a visit that takes next to nothing opens the package that it opens of the whole season", () => {
    // 499.9999997948196 and 0.00000020568 are 500.0000000005: 501 packages of 1 lb, and 500 and 1 visit by visit
    const line = listOf({
      amounts: [499.9999997948196, 2.0568043623825363e-7],
      size: 1,
      stock: 0,
      kept: 0,
    });
    expect([line?.once.packages, line?.perVisit.packages]).toEqual([501, 501]);
  });

  test("rounded once is never more than rounded per visit, and never too little", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const line = listOf(given);
        if (line === undefined) throw new Error("no line");
        const { once, perVisit, need, short } = line;
        expect(once.packages).toBeLessThanOrEqual(perVisit.packages);
        expect(once.leftOver.value).toBeLessThanOrEqual(perVisit.leftOver.value + 1e-9);
        const total = numberIn(need, "lb");
        expect(once.amount.value + given.stock).toBeGreaterThanOrEqual((total + given.kept) * (1 - 1e-9));
        // Not one package more than is needed.
        if (once.packages > 0)
          expect((once.packages - 1) * given.size).toBeLessThan(short.value * (1 + 1e-9) + 1e-9);
      }),
    );
  });

  test("pounds and kilograms, jugs by weight and by volume: one list", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 80, noNaN: true }), (gallons) => {
        const density = quantity(10, "lb/gal");
        const need = (amount: { value: number; unit: string; of: string }) =>
          purchaseList({
            needs: [{ product: "a", date: "2026-05-01", amount }],
            products: [{ id: "a", package: quantity(25, "lb"), density }],
          }).lines.map(({ short }) => numberIn(short, "lb"))[0];
        expect(need(quantity(gallons, "gal"))).toBeCloseTo(gallons * 10, 8);
        expect(need(quantity(quantity(gallons * 10, "lb").in("kg"), "kg"))).toBeCloseTo(gallons * 10, 8);
      }),
    );
  });

  test("a price break that makes more cost less, a late order, a short shelf life", () => {
    const usd = (value: number) => money(value, "USD");
    const { lines, cost, findings } = purchaseList({
      needs: [
        { product: "a", date: "2026-04-01", amount: lb(430) },
        { product: "a", date: "2027-06-01", amount: lb(20) },
      ],
      products: [
        {
          id: "a",
          package: lb(50),
          prices: [
            { from: 10, price: usd(25) },
            { from: 1, price: usd(30) },
          ],
          leadTime: quantity(2, "week"),
          shelfLife: quantity(365, "d"),
        },
      ],
      orderedOn: "2026-03-20",
    });
    expect(lines[0]?.once.packages).toBe(9);
    expect(cost?.value).toBe(270);
    expect(lines[0]?.orderBy).toBe("2026-03-18");
    expect(findings.map(({ code }) => code)).toEqual([
      "purchase/price-break",
      "purchase/too-late",
      "purchase/shelf-life",
    ]);
    expect(findings[0]?.params.costAtBreak).toBe(250);
  });

  test("an order on the last day is not late, one on the next is", () => {
    const late = (orderedOn: "2026-03-18" | "2026-03-19") =>
      purchaseList({
        needs: [{ product: "a", date: "2026-04-01", amount: lb(30) }],
        products: [{ id: "a", package: lb(50), leadTime: quantity(2, "week") }],
        orderedOn,
      }).findings.map(({ code }) => code);
    // 1 April less 14 days is 18 March.
    expect([late("2026-03-18"), late("2026-03-19")]).toEqual([[], ["purchase/too-late"]]);
  });

  test("what the stock covers is not bought, and has no day to order", () => {
    const list = purchaseList({
      needs: [{ product: "a", date: "2026-04-01", amount: lb(30) }],
      products: [{ id: "a", package: lb(50), stock: lb(30), leadTime: quantity(5, "d") }],
    });
    expect(list.lines[0]).toMatchObject({
      once: { packages: 0, cost: null },
      runsOutOn: null,
      orderBy: null,
    });
    expect(list.cost).toBeNull();
  });

  test("problems by path", () => {
    const products = [{ id: "a", package: lb(50) }];
    const need = { product: "a", date: "2026-04-01", amount: lb(1) };
    expect(complaints(() => purchaseList({ needs: [{ ...need, product: "b" }], products } as never))).toEqual(
      ["missing needs[0].product"],
    );
    expect(
      complaints(() => purchaseList({ needs: [{ ...need, amount: quantity(1, "gal") }], products } as never)),
    ).toEqual(["missing needs[0].amount"]);
    expect(
      complaints(() =>
        purchaseList({
          needs: [{ ...need, date: "May" }, 3],
          products: [{ ...products[0], leedTime: 3 }],
        } as never),
      ),
    ).toEqual(["type products[0].leedTime", "date needs[0].date", "type needs[1]"]);
    const priced = (prices: unknown) => ({ needs: [need], products: [{ ...products[0], prices }] }) as never;
    expect(complaints(() => purchaseList(priced([{ from: 2, price: money(3, "USD") }])))).toEqual([
      "missing products[0].prices",
    ]);
    const bare = Object.assign(Object.create(null), { value: 3, unit: Object.create(null) });
    expect(complaints(() => purchaseList(priced([{ from: 1, price: bare }])))).toEqual([
      "unit/mismatch products[0].prices[0].price",
    ]);
    expect(complaints(() => purchaseList(priced([{ from: 1.5, price: 3 }])))).toEqual([
      "range products[0].prices[0].from",
      "unit/mismatch products[0].prices[0].price",
    ]);
  });
});

describe("when to order again, and what should be there", () => {
  test("the reorder point does not depend on units, and grows with each of its terms", () => {
    const day = (value: number) => quantity(value, "d");
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e4, noNaN: true }),
        fc.integer({ min: 1, max: 365 }),
        fc.integer({ min: 0, max: 90 }),
        (use, during, lead) => {
          const at = (more: number) =>
            reorderPoint({
              use: lb(use),
              during: day(during),
              leadTime: day(lead + more),
              safetyStock: quantity(1, "kg"),
            }).orderAt.value;
          const kilos = reorderPoint({
            use: quantity(lb(use).in("kg"), "kg"),
            during: quantity(during * 24, "h"),
            leadTime: day(lead),
            safetyStock: quantity(1, "kg"),
          });
          expect(quantity(kilos.orderAt.value, "kg").in("lb")).toBeCloseTo(at(0), 6);
          expect(at(1)).toBeGreaterThanOrEqual(at(0));
        },
      ),
    );
    expect(complaints(() => reorderPoint({ use: lb(3), during: day(0) } as never))).toEqual([
      "range during",
      "missing leadTime",
    ]);
  });

  test("purchases less ledgers, corrected entries once, rates by area, and what is not known is told", () => {
    const book = ledger([
      {
        id: "1",
        date: "2026-04-01",
        product: "a",
        area: { value: 10_000, unit: "ft2" },
        rate: { value: 3, unit: "lb/1000 ft2" },
      },
      {
        id: "2",
        date: "2026-04-02",
        product: "a",
        area: { value: 1, unit: "acre" },
        amount: { value: 900, unit: "lb" },
      },
      {
        id: "3",
        date: "2026-04-02",
        product: "a",
        area: { value: 1, unit: "acre" },
        amount: { value: 90, unit: "lb" },
        corrects: "2",
      },
      { id: "4", date: "2026-04-03", product: "a", note: "some" },
      {
        id: "5",
        date: "2026-06-01",
        product: "a",
        area: { value: 1, unit: "acre" },
        amount: { value: 90, unit: "lb" },
      },
      {
        id: "6",
        date: "2026-04-04",
        product: "a",
        density: { value: 10, unit: "lb/gal" },
        area: { value: 1, unit: "acre" },
        amount: { value: 2, unit: "gal" },
      },
    ]);
    const received = [{ product: "a", date: "2026-03-01", amount: lb(100) }] as const;
    const stock = stockOnHand({ received, ledgers: [book], on: "2026-05-01" });
    expect(stock.products[0]?.used.value).toBeCloseTo(30 + 90 + 20, 9);
    expect(stock.products[0]?.onHand.value).toBeCloseTo(-40, 9);
    expect(stock.findings.map(({ code }) => code)).toEqual(["stock/below-zero"]);
    expect(stock.notCounted).toEqual(["2026-04-03 (4): how much of a."]);
    expect(
      complaints(() =>
        stockOnHand({ received, ledgers: [{ ...book, entries: [{ id: "1" }] }], on: "x" } as never),
      ),
    ).toEqual(["missing ledgers[0].entries[0].date", "date on"]);
  });

  test("a ledger that is handed in twice is refused", () => {
    const received = [{ product: "a", date: "2026-03-01", amount: lb(100) }] as const;
    const book = ledger([{ id: "1", date: "2026-04-01", product: "a" }]);
    expect(complaints(() => stockOnHand({ received, ledgers: [book, book], on: "2026-05-01" }))).toEqual([
      "duplicate ledgers[1]",
    ]);
  });

  test("entries without a product, and of a product that never came in, are named", () => {
    const received = [{ product: "a", date: "2026-03-01", amount: lb(100) }] as const;
    const other = ledger([
      { id: "1", date: "2026-04-01", product: "A", rate: { value: 5, unit: "lb/acre" } },
      { id: "2", date: "2026-04-02", rate: { value: 5, unit: "lb/acre" } },
      { id: "3", date: "2026-06-02", product: "b" },
    ]);
    expect(stockOnHand({ received, ledgers: [other], on: "2026-05-01" }).notCounted).toEqual([
      "2026-04-01 (1): A, but there is no receipt for it.",
      "2026-04-02 (2): which product.",
    ]);
  });

  test("shelf life is told of what is bought; an order after the application is late without a lead time", () => {
    const told = (date: "2026-01-02" | "2026-09-01", stock: number) =>
      purchaseList({
        needs: [{ product: "a", date, amount: lb(10) }],
        products: [{ id: "a", package: lb(50), stock: lb(stock), shelfLife: quantity(30, "d") }],
        orderedOn: "2026-03-01",
      }).findings.map(({ code }) => code);
    expect(told("2026-09-01", 60)).toEqual([]);
    expect(told("2026-09-01", 0)).toEqual(["purchase/shelf-life"]);
    expect(told("2026-01-02", 60)).toEqual([]);
    expect(told("2026-01-02", 0)).toEqual(["purchase/too-late"]);
  });
});
