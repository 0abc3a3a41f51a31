import { type CivilDate, civilDate } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectQuantity,
  expectText,
  fail,
  inUnit,
  outOfRange,
  perOf,
  type Quantity,
  quantityOf,
  shown,
  timesOf,
} from "../../quantity/index.js";
import { expectStock, type ProductQuantity } from "./reorder-point.js";

/** A price of a package from so many on, read. */
export interface ReadBreak {
  readonly from: number;
  readonly price: number;
}

/** A product, read; amounts in the unit of its package. */
export interface ReadPurchased {
  readonly id: string;
  readonly name: string;
  readonly package: ProductQuantity;
  readonly stock: number;
  readonly safetyStock: number;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly prices: readonly ReadBreak[];
  readonly currency?: string;
  readonly leadDays?: number;
  readonly shelfDays?: number;
}

/** A need, read: in the unit of the package. */
export interface ReadNeed {
  readonly product: string;
  readonly date: CivilDate;
  readonly site: string;
  readonly amount: number;
}

const most = 20_000;

const list = (input: unknown, path: string, of: string): readonly unknown[] => {
  const items = expectList(input, path, of);
  return items.length <= most ? items : outOfRange(path, items, { max: most });
};

const each = <T>(
  items: readonly unknown[],
  path: string,
  read: (item: unknown, at: string) => T,
): readonly T[] => {
  const problems = checks();
  const found = items.flatMap((item, i) => {
    const one = problems.run(() => ({ read: read(item, `${path}[${i}]`) }));
    return one === undefined ? [] : [one.read];
  });
  problems.done();
  return found;
};

const breaksOf = (input: unknown, path: string): Pick<ReadPurchased, "prices" | "currency"> => {
  if (input === undefined) return { prices: [] };
  let currency: string | undefined;
  const prices = each(list(input, path, "price"), path, (item, at): ReadBreak => {
    const given = expectFields(
      item,
      ["from", "price"],
      at,
      "the quantity it starts at, and the price of one package",
    );
    return allOf({
      from: () => {
        const from = expectNumber(given.from, `${at}.from`, { min: 1 });
        return Number.isInteger(from) ? from : outOfRange(`${at}.from`, from, { step: 1, count: "packages" });
      },
      price: () => {
        const { unit } = Object(given.price) as { unit?: unknown };
        const money = typeof unit === "string" ? /^money:[A-Z]{3}$/.exec(unit)?.[0] : undefined;
        if (given.price === undefined)
          fail("missing", `${at}.price`, undefined, 'money, such as money(28, "USD")');
        if (money === undefined)
          return fail(
            "unit/mismatch",
            `${at}.price`,
            given.price,
            'money for one package, such as money(28, "USD")',
          );
        currency ??= money;
        if (money !== currency) fail("unit/mismatch", `${at}.price`, given.price, `a price in ${currency}`);
        return expectQuantity(
          given.price,
          { dimension: money, of: "none", bound: "non-negative" },
          `${at}.price`,
        ).value;
      },
    });
  });
  const sorted = [...prices].sort((a, b) => a.from - b.from);
  if (sorted[0]?.from !== 1)
    fail(
      "missing",
      path,
      described(`prices that start at ${shown(sorted[0]?.from)}`),
      "a price that starts at 1 package",
    );
  if (sorted.slice(1).some(({ from }, i) => from === sorted[i]?.from))
    fail("duplicate", path, input, "each starting quantity once");
  return { prices: sorted, ...(currency !== undefined && { currency: currency.slice("money:".length) }) };
};

const optional = <T>(input: unknown, read: (input: unknown) => T): T | undefined =>
  input === undefined ? undefined : read(input);

const days = (input: unknown, path: string): number | undefined =>
  optional(input, (given) => {
    const found = expectQuantity(given, { dimension: "time", of: "none", bound: "non-negative" }, path).in(
      "d",
    );
    return found <= 36_525
      ? found
      : outOfRange(path, given, { max: 36_525, unit: "d" }, "{}, a hundred years");
  });

const fields = [
  "id",
  "name",
  "package",
  "stock",
  "density",
  "prices",
  "leadTime",
  "safetyStock",
  "shelfLife",
] as const;

/** An amount in the unit of the package; through the density where one is by weight and the other by volume. */
const inPackages = (
  input: unknown,
  path: string,
  sold: ProductQuantity,
  density: Quantity<"mass/volume", "none"> | undefined,
): number => {
  const { value, unit, of } = expectStock(input, path, "non-negative") as ProductQuantity;
  if (of !== "none" && of !== "product" && of !== sold.of)
    fail("substance/mismatch", path, input, `an amount of ${sold.of}`);
  const plain = quantityOf(value, unit, "none", path);
  if (plain.dimension === sold.dimension) return inUnit(plain, sold.unit).value;
  if (density === undefined)
    return fail(
      "missing",
      path,
      input,
      `a ${sold.dimension}, like the package, or the product's density in products`,
    );
  return inUnit(sold.dimension === "mass" ? timesOf(plain, density) : perOf(plain, density), sold.unit).value;
};

const productOf = (input: unknown, at: string): ReadPurchased => {
  const given = expectFields(input, fields, at, "a product with its package");
  const { id, sold, density, ...rest } = allOf({
    id: () => expectText(given.id, `${at}.id`, "the id of a product"),
    name: () => optional(given.name, (name) => expectText(name, `${at}.name`, "a name")),
    sold: () => expectStock(given.package, `${at}.package`, "positive"),
    density: () =>
      optional(given.density, (rho) =>
        expectQuantity(rho, { dimension: "mass/volume", of: "none", bound: "positive" }, `${at}.density`),
      ),
    prices: () => breaksOf(given.prices, `${at}.prices`),
    leadDays: () => days(given.leadTime, `${at}.leadTime`),
    shelfDays: () => days(given.shelfLife, `${at}.shelfLife`),
  });
  const tagged = quantityOf(sold.value, sold.unit, `product:${id}`, `${at}.id`) as ProductQuantity;
  const { stock, safetyStock } = allOf({
    stock: () => optional(given.stock, (stock) => inPackages(stock, `${at}.stock`, tagged, density)),
    safetyStock: () =>
      optional(given.safetyStock, (kept) => inPackages(kept, `${at}.safetyStock`, tagged, density)),
  });
  const { name, prices, leadDays, shelfDays } = rest;
  return {
    id,
    name: name ?? id,
    package: tagged,
    stock: stock ?? 0,
    safetyStock: safetyStock ?? 0,
    ...(density && { density }),
    ...prices,
    ...(leadDays !== undefined && { leadDays }),
    ...(shelfDays !== undefined && { shelfDays }),
  };
};

/** Reads products and needs, or throws all that is wrong with them. */
export const readPurchase = (
  input: unknown,
): {
  readonly products: readonly ReadPurchased[];
  readonly needs: readonly ReadNeed[];
  readonly orderedOn: CivilDate | undefined;
} => {
  const given = expectFields(input, ["needs", "products", "orderedOn"]);
  const { products, needs, orderedOn } = allOf({
    products: () => {
      const read = each(list(given.products, "products", "product"), "products", productOf);
      read.forEach(({ id }, i) => {
        if (read.findIndex((other) => other.id === id) !== i)
          fail("duplicate", `products[${i}].id`, id, "an id that no other product has");
      });
      const currencies = new Set(read.flatMap(({ currency }) => currency ?? []));
      if (currencies.size > 1)
        fail(
          "unit/mismatch",
          "products",
          described([...currencies].join(", ")),
          "prices in one currency: there are no exchange rates here",
        );
      return read;
    },
    needs: () =>
      each(list(given.needs, "needs", "need"), "needs", (item, at) => {
        const need = expectFields(
          item,
          ["product", "date", "site", "amount"],
          at,
          "what one application needs",
        );
        return allOf({
          product: () => expectText(need.product, `${at}.product`, "the id of a product"),
          date: () => civilDate(need.date as CivilDate, `${at}.date`),
          site: () =>
            optional(need.site, (site) => expectText(site, `${at}.site`, "the name of a site")) ?? "",
          amount: () => expectStock(need.amount, `${at}.amount`, "non-negative"),
        });
      }),
    orderedOn: () => optional(given.orderedOn, (date) => civilDate(date as CivilDate, "orderedOn")),
  });
  const byId = new Map(products.map((product) => [product.id, product]));
  const read = each(needs, "needs", (item, at): ReadNeed => {
    const need = item as (typeof needs)[number];
    const product =
      byId.get(need.product) ??
      fail("missing", `${at}.product`, need.product, "the id of a product in the list", {
        choices: [...byId.keys()].slice(0, 20),
      });
    return { ...need, amount: inPackages(need.amount, `${at}.amount`, product.package, product.density) };
  });
  return { products, needs: read, orderedOn };
};
