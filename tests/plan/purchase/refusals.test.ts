// What is bought, what is told of it and what is refused, each at its limit and in the words that a buyer reads.
import { describe, expect, test } from "vitest";
import { money, purchaseList, quantity, reorderPoint } from "../../../src/index.js";
import { problemsOf } from "../../errors.js";

const lb = (value: number) => quantity(value, "lb");
const usd = (value: number) => money(value, "USD");
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
const product = { id: "a", name: "feed", package: lb(50) };
const need = { product: "a", date: "2026-05-04", amount: lb(120) } as const;
const buy = (one: object = {}, more: object = {}) =>
  purchaseList({ needs: [need], products: [{ ...product, ...one }], ...more } as never);

describe("a purchase list by hand", () => {
  // 120, 110 and 120 lb: 350 and 30 kept less 60 in the store is 320: 7 bags, 30 over. Visit by visit 30 lb are free for the first: 90 is 2
  // bags, 110 is 3, 120 is 3: 8 bags, 80 over. The first visit is not covered; 10 days before 4 May is 24 April.
  const list = purchaseList({
    needs: [
      { product: "a", date: "2026-06-15", site: "north", amount: lb(120) },
      { product: "a", date: "2026-05-04", site: "north", amount: lb(120) },
      { product: "a", date: "2026-05-04", site: "south", amount: lb(110) },
    ],
    products: [
      {
        ...product,
        stock: lb(60),
        safetyStock: lb(30),
        prices: [{ from: 1, price: usd(28) }],
        leadTime: quantity(10, "d"),
      },
      { id: "b", package: quantity(1, "gal") },
    ],
  });
  test("every figure of its lines", () => {
    const plain = JSON.parse(JSON.stringify(list.lines));
    const of = "product:a";
    const pounds = (value: number) => ({ value, unit: "lb", of });
    const dollars = (value: number) => ({ value, unit: "money:USD", of: "none" });
    expect(plain[0]).toEqual({
      product: "a",
      productName: "feed",
      applications: 3,
      need: pounds(350),
      stock: pounds(60),
      safetyStock: pounds(30),
      short: pounds(320),
      once: { packages: 7, amount: pounds(350), leftOver: pounds(30), cost: dollars(196) },
      perVisit: { packages: 8, amount: pounds(400), leftOver: pounds(80), cost: dollars(224) },
      runsOutOn: "2026-05-04",
      orderBy: "2026-04-24",
    });
    expect(plain[1]).toMatchObject({
      product: "b",
      productName: "b",
      applications: 0,
      runsOutOn: null,
      orderBy: null,
    });
    expect([list.type, list.version, list.cost?.value, list.perVisitCost?.value, list.findings]).toEqual([
      "purchase-list",
      1,
      196,
      224,
      [],
    ]);
  });
  test("what is kept back is bought first of all, in packages of its own", () => {
    // 30 kept, nothing in the store: a bag; 120 lb: 3 bags. Together 150: 3.
    const { once, perVisit, runsOutOn } = buy({ safetyStock: lb(30) }).lines[0] as never as Record<
      string,
      { packages: number }
    >;
    expect([once?.packages, perVisit?.packages, runsOutOn]).toEqual([3, 4, "2026-05-04"]);
  });
  test("a stock that is just enough buys nothing, at no cost", () => {
    const { lines, cost } = buy({ stock: lb(120), prices: [{ from: 1, price: usd(28) }] });
    expect([lines[0]?.once.packages, lines[0]?.perVisit.packages, lines[0]?.runsOutOn, cost?.value]).toEqual([
      0,
      0,
      null,
      0,
    ]);
    expect(buy({ stock: lb(119.9) }).lines[0]?.once.packages).toBe(1);
  });
  test("the whole costs nothing that is known where a line that is bought has no price", () => {
    const priced = { ...product, prices: [{ from: 1, price: usd(28) }] };
    const two = (amount: number) =>
      purchaseList({
        needs: [need, { product: "b", date: "2026-05-04", amount: lb(amount) }],
        products: [priced, { id: "b", package: lb(10) }],
      }).cost?.value;
    expect([two(5), two(0)]).toEqual([undefined, 84]);
    expect(buy().cost).toBeNull();
  });
});

describe("what is told", () => {
  const breaks = (second: number) => [
    { from: 1, price: usd(30) },
    { from: 4, price: usd(second) },
  ];
  test("more packages that cost less, and not what costs the same", () => {
    // 3 at 30 are 90; 4 at 22 are 88, 4 at 22.50 are 90
    expect(buy({ prices: breaks(22) }).findings).toEqual([
      {
        code: "purchase/price-break",
        severity: "note",
        path: "products",
        params: { product: "a", packages: 3, from: 4, cost: 90, costAtBreak: 88, currency: "USD" },
        text: "feed: 4 packages cost less than 3. Buy them only if the rest will keep.",
      },
    ]);
    expect(buy({ prices: breaks(22.5) }).findings).toEqual([]);
    expect(buy({ prices: breaks(22), stock: lb(120) }).findings).toEqual([]);
    // at the break itself its price holds: 4 x 22
    expect(
      purchaseList({ needs: [{ ...need, amount: lb(200) }], products: [{ ...product, prices: breaks(22) }] })
        .cost?.value,
    ).toBe(88);
  });
  test("an order that comes too late, to the day, with a lead time and without", () => {
    const late = (orderedOn: string, more: object = { leadTime: quantity(10, "d") }) =>
      buy(more, { orderedOn }).findings;
    expect(late("2026-04-24")).toEqual([]);
    expect(late("2026-04-25")).toEqual([
      {
        code: "purchase/too-late",
        severity: "warning",
        path: "orderedOn",
        params: { product: "a", orderBy: "2026-04-24", runsOutOn: "2026-05-04" },
        text: "feed: for 2026-05-04 the order should have gone out by 2026-04-24.",
      },
    ]);
    expect(late("2026-05-04", {})).toEqual([]);
    expect(late("2026-05-05", {}).map(({ code }) => code)).toEqual(["purchase/too-late"]);
    expect(late("2026-05-05", { stock: lb(120) })).toEqual([]);
    // Part of a day counts as a whole one.
    expect(buy({ leadTime: quantity(9.5, "d") }).lines[0]?.orderBy).toBe("2026-04-24");
  });
  test("what comes after the shelf life, to the day", () => {
    const kept = (days: number) =>
      buy({ shelfLife: quantity(days, "d"), leadTime: quantity(3, "d") }, { orderedOn: "2026-04-01" })
        .findings;
    // 1 April and 3 days to the delivery, and 30 days: 4 May
    expect(kept(30)).toEqual([]);
    expect(kept(29)).toEqual([
      {
        code: "purchase/shelf-life",
        severity: "caution",
        path: "products",
        params: { product: "a", keepsUntil: "2026-05-03", amount: 120, unit: "lb" },
        text: "feed: what is ordered now keeps until 2026-05-03; 1 of its applications comes later. Order for those separately.",
      },
    ]);
    expect(
      buy({ shelfLife: quantity(1, "d"), stock: lb(120) }, { orderedOn: "2026-04-01" }).findings,
    ).toEqual([]);
  });
});

/** What is told, what is put into a product, and what into the call. */
type Refused = readonly [told: string, product: object, call?: object];

describe("what is refused", () => {
  test.each<Refused>([
    ["type products[0]: a product with its package", {}, { products: [5] }],
    ["missing products[0].id: the id of a product", { id: undefined }],
    ["type products[0].name: a name", { name: 5 }],
    ["missing products[0].package: an amount of product, such as 50 lb", { package: undefined }],
    ["type products[0].prices[0]: the quantity it starts at, and the price of one package", { prices: [5] }],
    ["range products[0].prices[0].from: 1 or more", { prices: [{ from: 0, price: usd(3) }] }],
    ['missing products[0].prices[0].price: money, such as money(28, "USD")', { prices: [{ from: 1 }] }],
    [
      'unit/mismatch products[0].prices[0].price: money for one package, such as money(28, "USD")',
      { prices: [{ from: 1, price: lb(3) }] },
    ],
    [
      "unit/mismatch products[0].prices[1].price: a price in money:USD",
      {
        prices: [
          { from: 1, price: usd(3) },
          { from: 2, price: money(2, "EUR") },
        ],
      },
    ],
    [
      "missing products[0].prices: a price that starts at 1 package",
      { prices: [{ from: 2, price: usd(3) }] },
    ],
    [
      "duplicate products[0].prices: each starting quantity once",
      {
        prices: [
          { from: 1, price: usd(3) },
          { from: 1, price: usd(2) },
        ],
      },
    ],
    ["range products[0].leadTime: 36525 d or less, a hundred years", { leadTime: quantity(36_526, "d") }],
    ["range products[0].shelfLife: 36525 d or less, a hundred years", { shelfLife: quantity(36_526, "d") }],
    [
      "missing products[0].stock: a mass, like the package, or the product's density in products",
      { stock: quantity(3, "gal") },
    ],
    [
      "substance/mismatch products[0].safetyStock: an amount of product:a",
      { safetyStock: quantity(3, "lb", "N") },
    ],
    ["duplicate products[1].id: an id that no other product has", {}, { products: [product, product] }],
    [
      "unit/mismatch products: prices in one currency: there are no exchange rates here",
      {},
      {
        products: [
          { ...product, prices: [{ from: 1, price: usd(3) }] },
          { id: "b", package: lb(3), prices: [{ from: 1, price: money(3, "EUR") }] },
        ],
      },
    ],
    ["type needs[0]: what one application needs", {}, { needs: [5] }],
    ["missing needs[0].product: the id of a product", {}, { needs: [{ ...need, product: undefined }] }],
    ["type needs[0].site: the name of a site", {}, { needs: [{ ...need, site: 5 }] }],
    ["missing needs[0].product: the id of a product in the list", {}, { needs: [{ ...need, product: "c" }] }],
    [
      "missing needs[0].amount: an amount of product, such as 50 lb",
      {},
      { needs: [{ ...need, amount: undefined }] },
    ],
    ["range needs: 20000 or less", {}, { needs: Array.from({ length: 20_001 }, () => need) }],
  ])("%s", (...row: readonly unknown[]) => {
    const [expected, one, more] = row as Refused;
    expect(told(() => buy(one, more))).toContain(expected);
  });

  test("the point of reordering", () => {
    const asked = { use: lb(600), during: quantity(30, "d"), leadTime: quantity(10, "d") };
    const point = (more: object) => () => reorderPoint({ ...asked, ...more } as never);
    expect(told(point({ use: undefined }))).toEqual(["missing use: an amount of product, such as 50 lb"]);
    expect(told(point({ during: undefined }))).toEqual(["missing during: a time, such as 10 d"]);
    expect(told(point({ leadTime: undefined }))).toEqual(["missing leadTime: a time, such as 10 d"]);
    expect(told(point({ during: quantity(0, "d") }))).toEqual(["range during: more than zero"]);
    expect(told(point({ safetyStock: quantity(1, "gal") }))).toEqual([
      "unit/mismatch safetyStock: a mass, like the first amount; the product's density converts one to the other",
    ]);
    expect(told(point({ safetyStock: quantity(1, "lb", "N") }))).toEqual([
      "substance/mismatch safetyStock: an amount of none, like the first amount",
    ]);
    expect(reorderPoint({ ...asked, leadTime: quantity(0, "d") }).orderAt.value).toBe(0);
    expect(JSON.parse(JSON.stringify(reorderPoint({ ...asked, safetyStock: quantity(100, "lb") })))).toEqual({
      type: "reorder-point",
      version: 1,
      leadTimeUse: { value: 200, unit: "lb", of: "none" },
      safetyStock: { value: 100, unit: "lb", of: "none" },
      orderAt: { value: 300, unit: "lb", of: "none" },
    });
  });
});
