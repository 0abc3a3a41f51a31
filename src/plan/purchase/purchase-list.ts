import { addDays, type CivilDate, compareDates } from "../../calendar/index.js";
import { exceeds, wholeUnitsFor } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import { type Finding, likeQuantity, Quantity } from "../../quantity/index.js";
import type {
  PackagesBought,
  ProductNeed,
  PurchasedProduct,
  PurchaseLine,
  PurchaseList,
} from "./purchase-types.js";
import { type ReadNeed, type ReadPurchased, readPurchase } from "./read-purchase.js";
import type { ProductQuantity } from "./reorder-point.js";

/** The price of one package where so many are bought. */
const priceOf = ({ prices }: ReadPurchased, packages: number): number | undefined => {
  let price: number | undefined;
  for (const one of prices) if (one.from <= packages) price = one.price;
  return price;
};

const costOf = (product: ReadPurchased, packages: number): number | undefined =>
  packages === 0
    ? 0
    : product.prices.length === 0
      ? undefined
      : packages * (priceOf(product, packages) as number);

const amountLike = (product: ReadPurchased, value: number): ProductQuantity =>
  likeQuantity(product.package as Quantity<string, string>, value) as ProductQuantity;

const cash = <C extends string>(value: number, currency: string): Quantity<`money:${C}`, "none"> =>
  new Quantity(value, `money:${currency}`, "none", `money:${currency}` as `money:${C}`);

const bought = <C extends string>(
  product: ReadPurchased,
  packages: number,
  short: number,
): PackagesBought<C> => {
  const held = packages * product.package.value;
  const cost = costOf(product, packages);
  return {
    packages,
    amount: amountLike(product, held),
    leftOver: amountLike(product, Math.max(0, held - short)),
    cost: cost === undefined || product.currency === undefined ? null : cash<C>(cost, product.currency),
  };
};

/** What each application lacks, where the stock goes to the first ones. */
const lacking = (needs: readonly ReadNeed[], free: number): readonly number[] => {
  let left = free;
  return needs.map(({ amount }) => {
    const taken = Math.min(left, amount);
    left -= taken;
    return amount - taken;
  });
};

interface Line<C extends string> {
  readonly line: PurchaseLine<C>;
  readonly findings: readonly Finding[];
}

const lineOf = <C extends string>(
  product: ReadPurchased,
  all: readonly ReadNeed[],
  orderedOn: CivilDate | undefined,
): Line<C> => {
  const needs = [...all].sort((a, b) => compareDates(a.date, b.date));
  const need = needs.reduce((sum, { amount }) => sum + amount, 0);
  const { safetyStock, stock, leadDays } = product;
  const wanted = need + safetyStock;
  const short = exceeds(wanted, stock) ? wanted - stock : 0;
  const size = product.package.value;
  const packages = wholeUnitsFor(short, size);
  const once = bought<C>(product, packages, short);
  // The stock goes to the first applications; what is kept back is bought first of all.
  const kept = Math.max(0, safetyStock - stock);
  const each = lacking(needs, Math.max(0, stock - safetyStock));
  const visits = [kept, ...each].map((lack) => (lack <= 1e-9 * wanted ? 0 : wholeUnitsFor(lack, size)));
  const perVisit = bought<C>(
    product,
    // Visits that lack only the noise of rounding are counted as none, but together they may open one more package.
    Math.max(
      packages,
      visits.reduce((sum, count) => sum + count, 0),
    ),
    short,
  );
  const first = each.findIndex((lack) => lack > 1e-9 * wanted);
  const runsOutOn = needs[first]?.date ?? null;
  const orderBy =
    runsOutOn === null || leadDays === undefined ? null : addDays(runsOutOn, -Math.ceil(leadDays));
  const line: PurchaseLine<C> = {
    product: product.id,
    productName: product.name,
    applications: needs.length,
    need: amountLike(product, need),
    stock: amountLike(product, stock),
    safetyStock: amountLike(product, safetyStock),
    short: amountLike(product, short),
    once,
    perVisit,
    runsOutOn,
    orderBy,
  };
  return {
    line,
    findings: [
      ...breakFindings(product, once.packages),
      ...lateFindings(line, orderedOn),
      ...(once.packages > 0 ? shelfFindings(product, needs, orderedOn) : []),
    ],
  };
};

/** More packages that cost less. */
const breakFindings = (product: ReadPurchased, packages: number): readonly Finding[] => {
  const cost = costOf(product, packages);
  if (cost === undefined || packages === 0) return [];
  return product.prices.flatMap(({ from }): readonly Finding[] => {
    const more = from > packages ? costOf(product, from) : undefined;
    if (more === undefined || !exceeds(cost, more)) return [];
    return [
      {
        code: "purchase/price-break",
        severity: "note",
        path: "products",
        params: {
          product: product.id,
          packages,
          from,
          cost,
          costAtBreak: more,
          currency: product.currency ?? "",
        },
        text: `${product.name}: ${counted(from, "package")} ${from === 1 ? "costs" : "cost"} less than ${packages}. Buy them only if the rest will keep.`,
      },
    ];
  });
};

const lateFindings = (
  {
    product,
    productName,
    orderBy,
    runsOutOn,
  }: Pick<PurchaseLine, "product" | "productName" | "orderBy" | "runsOutOn">,
  orderedOn: CivilDate | undefined,
): readonly Finding[] => {
  // Without a lead time an order is late only where it goes out after the application itself.
  const latest = orderBy ?? runsOutOn;
  if (orderedOn === undefined || latest === null || compareDates(latest, orderedOn) >= 0) return [];
  return [
    {
      code: "purchase/too-late",
      severity: "warning",
      path: "orderedOn",
      params: { product, orderBy: latest, runsOutOn: runsOutOn ?? "" },
      text: `${productName}: for ${runsOutOn} the order should have gone out by ${latest}.`,
    },
  ];
};

/** What is needed after a package that comes now has passed its shelf life. */
const shelfFindings = (
  { id, name, shelfDays, leadDays = 0, package: size }: ReadPurchased,
  needs: readonly ReadNeed[],
  orderedOn: CivilDate | undefined,
): readonly Finding[] => {
  if (shelfDays === undefined || orderedOn === undefined) return [];
  const keepsUntil = addDays(orderedOn, Math.floor(leadDays + shelfDays));
  const later = needs.filter(({ date }) => compareDates(date, keepsUntil) > 0);
  if (later.length === 0) return [];
  const amount = later.reduce((sum, need) => sum + need.amount, 0);
  return [
    {
      code: "purchase/shelf-life",
      severity: "caution",
      path: "products",
      params: { product: id, keepsUntil, amount, unit: size.unit },
      text: `${name}: what is ordered now keeps until ${keepsUntil}; ${later.length} of its applications ${later.length === 1 ? "comes" : "come"} later. Order for those separately.`,
    },
  ];
};

/**
 * What to buy for a season: the need of every product over all dated applications and sites, less what is in the store,
 * rounded up to packages ONCE, beside what rounding visit by visit would buy and leave over.
 *
 * - `short = need + safety stock - stock`, and none where that is below zero
 * - `packages = ceil(short / package)`, guarded against floating-point noise; never more than the sum over visits of
 *   `ceil(what the visit lacks / package)`, where the stock goes to the first visits
 * - `cost = packages * price`, the price of the number that is bought, for all of them
 * - `runs out on` the first application that the stock, less the safety stock, does not cover; `order by` that day less
 *   the lead time
 *
 * A price break that makes more packages cheaper, an order that comes too late, and applications after the shelf life of
 * what is ordered now are findings.
 *
 * @param input - `needs`, each with `product`, `date`, `amount` and, where there are several, `site`; `products`, each with
 *   `id`, `package` and, where they are known, `stock`, `prices`, `leadTime`, `safetyStock`, `shelfLife`, and a `density`
 *   where it is sold by weight and measured by volume, or the other way round; `orderedOn`, for orders that are late and for
 *   shelf life
 * @throws RatewrightError with every problem, each with its path such as `needs[3].amount`: `missing` (a product that is
 *   not in the list, a density, the price from 1 package on), `duplicate`, `date`, `range`, `unit/mismatch` (two
 *   currencies), `substance/mismatch`, `type` for a field that is not known
 *
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { money, purchaseList, quantity } from "ratewright";
 * const list = purchaseList({
 *   needs: [
 *     { product: "feed-a", date: "2026-05-04", site: "north", amount: quantity(120, "lb") },
 *     { product: "feed-a", date: "2026-05-04", site: "south", amount: quantity(110, "lb") },
 *     { product: "feed-a", date: "2026-06-15", site: "north", amount: quantity(120, "lb") },
 *   ],
 *   products: [
 *     {
 *       id: "feed-a",
 *       package: quantity(50, "lb"),
 *       stock: quantity(60, "lb"),
 *       prices: [{ from: 1, price: money(28, "USD") }],
 *       leadTime: quantity(10, "d"),
 *     },
 *   ],
 * });
 * const [feed] = list.lines;
 * feed?.once.packages; // => 6
 * feed?.once.leftOver.value; // => 10
 * feed?.perVisit.packages; // => 8
 * feed?.orderBy; // => "2026-04-24"
 * list.cost?.value; // => 168
 * ```
 */
export const purchaseList = <C extends string = string>(input: {
  readonly needs: readonly ProductNeed[];
  readonly products: readonly PurchasedProduct<C>[];
  readonly orderedOn?: CivilDate;
}): PurchaseList<C> => {
  const { products, needs, orderedOn } = readPurchase(input);
  const byProduct = new Map<string, ReadNeed[]>();
  for (const need of needs) {
    const list = byProduct.get(need.product);
    if (list === undefined) byProduct.set(need.product, [need]);
    else list.push(need);
  }
  const lines = products.map((product) => lineOf<C>(product, byProduct.get(product.id) ?? [], orderedOn));
  const currency = products.find((product) => product.currency !== undefined)?.currency;
  const total = (kind: "once" | "perVisit"): Quantity<`money:${C}`, "none"> | null => {
    if (currency === undefined) return null;
    let sum = 0;
    for (const { line } of lines) {
      const { packages, cost } = line[kind];
      if (packages > 0 && cost === null) return null;
      sum += cost?.value ?? 0;
    }
    return cash<C>(sum, currency);
  };
  return {
    type: "purchase-list",
    version: 1,
    lines: lines.map(({ line }) => line),
    cost: total("once"),
    perVisitCost: total("perVisit"),
    findings: lines.flatMap(({ findings }) => findings),
  };
};
