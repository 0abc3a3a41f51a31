import { type CivilDate, civilDate } from "../../calendar/index.js";
import { type Ledger, type LedgerEntry, ledger, standingEntries } from "../../ledger/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectText,
  type Finding,
  fail,
  inUnit,
  likeQuantity,
  numberIn,
  outOfRange,
  perOf,
  type Quantity,
  type QuantityJson,
  quantityOf,
  timesOf,
} from "../../quantity/index.js";
import { expectStock, type ProductQuantity } from "./reorder-point.js";

/** What came into the store. A `Quantity` fits as amount. */
export interface StockReceipt {
  readonly product: string;
  readonly date: CivilDate;
  readonly amount: QuantityJson;
}

/** What should be in the store of one product. */
export interface ProductStock {
  readonly product: string;
  readonly received: ProductQuantity;
  readonly used: ProductQuantity;
  /** Received less used; below zero where more was used than came in. */
  readonly onHand: ProductQuantity;
}

/** What should be in the store, by the books. */
export interface StockOnHand {
  readonly type: "stock-on-hand";
  readonly version: 1;
  readonly on: CivilDate;
  readonly products: readonly ProductStock[];
  /**
   * Entries of the ledgers that were not taken off: how much is not known, no product is named, or none of it came in (a
   * receipt is missing, or the id is written in another way). The store may hold less by them.
   */
  readonly notCounted: readonly string[];
  readonly findings: readonly Finding[];
}

const most = 20_000;

const receiptOf = (input: unknown, at: string) => {
  const given = expectFields(input, ["product", "date", "amount"], at, "what was received into the store");
  return allOf({
    product: () => expectText(given.product, `${at}.product`, "the id of a product"),
    date: () => civilDate(given.date as CivilDate, `${at}.date`),
    amount: () => {
      const q = expectStock(given.amount, `${at}.amount`, "non-negative");
      return quantityOf(q.value, q.unit, "product", `${at}.amount`) as ProductQuantity;
    },
  });
};

/** The amount of an entry: as it is stated, or its rate times its area. */
const usedIn = ({ amount, rate, area }: LedgerEntry): ProductQuantity | undefined => {
  if (amount !== undefined)
    return quantityOf(amount.value, amount.unit, "product", "amount") as ProductQuantity;
  if (rate === undefined || area === undefined) return undefined;
  return timesOf(
    quantityOf(rate.value, rate.unit, "product", "rate"),
    quantityOf(area.value, area.unit, "none", "area"),
  ) as ProductQuantity;
};

/** An amount in the measure of the stock; through the density of the entry where it has one. */
const measuredAs = (
  used: ProductQuantity,
  like: ProductQuantity,
  { density }: LedgerEntry,
): number | undefined => {
  if (used.dimension === like.dimension) return numberIn(used, like.unit);
  if (density === undefined) return undefined;
  const rho = quantityOf(density.value, density.unit, "none", "density");
  return numberIn(used.dimension === "volume" ? timesOf(used, rho) : perOf(used, rho), like.unit);
};

const readBooks = (input: unknown): readonly LedgerEntry[] => {
  if (input === undefined) return [];
  const problems = checks();
  const seen = new Set<unknown>();
  const entries = expectList(input, "ledgers", "ledger").flatMap((book, i) => {
    const at = `ledgers[${i}]`;
    return (
      problems.run((): readonly LedgerEntry[] => {
        if (seen.has(book)) fail("duplicate", at, book, "each ledger once: its use would count twice");
        seen.add(book);
        const given = expectFields(book, ["type", "version", "entries"], at, "a ledger");
        if (given.type !== "ledger") fail("type", `${at}.type`, given.type, '"ledger"');
        return standingEntries(checkedBook(given.entries, at));
      }) ?? []
    );
  });
  problems.done();
  return entries;
};

const checkedBook = (entries: unknown, at: string): Ledger => {
  const problems = checks();
  const book = problems.run(() => ledger(entries as readonly LedgerEntry[]), at);
  problems.done();
  return book as Ledger;
};

/**
 * What should be in the store, by the books: what came in, less what the ledgers say was used, up to a day.
 *
 * `on hand = received - used`, product by product, in the unit in which it first came in. A stock that is counted is a
 * receipt on the day of the count, with the receipts and ledgers from then on.
 *
 * @param input - `received`, each with `product`, `date` and `amount`; `ledgers` of all sites; `on`, the last day that counts
 * @throws RatewrightError with every problem: `missing`, `date`, `type`, `duplicate` (one ledger twice), `unit/mismatch` (one product
 *   received by weight and by volume), and what `ledger` throws, with paths such as `ledgers[1].entries[3].area`
 *
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { ledger, quantity, stockOnHand } from "ratewright";
 * const stock = stockOnHand({
 *   received: [{ product: "feed-a", date: "2026-02-10", amount: quantity(400, "lb") }],
 *   ledgers: [
 *     ledger([
 *       {
 *         id: "1",
 *         date: "2026-04-20",
 *         product: "feed-a",
 *         area: { value: 59400, unit: "ft2" },
 *         amount: { value: 222.75, unit: "lb" },
 *       },
 *     ]),
 *   ],
 *   on: "2026-05-01",
 * });
 * stock.products[0]?.onHand.value; // => 177.25
 * ```
 */
export const stockOnHand = (input: {
  readonly received: readonly StockReceipt[];
  readonly ledgers?: readonly Ledger[];
  readonly on: CivilDate;
}): StockOnHand => {
  const given = expectFields(input, ["received", "ledgers", "on"]);
  const { received, entries, on } = allOf({
    received: () => {
      const list = expectList(given.received, "received", "receipt");
      if (list.length > most) outOfRange("received", list, { max: most, count: "receipts" });
      const problems = checks();
      const read = list.flatMap((item, i) => problems.run(() => receiptOf(item, `received[${i}]`)) ?? []);
      problems.done();
      return read;
    },
    entries: () => readBooks(given.ledgers),
    on: () => civilDate(given.on as CivilDate, "on"),
  });
  const stock = new Map<string, { like: ProductQuantity; received: number; used: number }>();
  const problems = checks();
  received.forEach(({ product, date, amount }, i) => {
    const known = stock.get(product) ?? { like: amount, received: 0, used: 0 };
    stock.set(product, known);
    if (amount.dimension !== known.like.dimension)
      problems.run(() =>
        fail(
          "unit/mismatch",
          `received[${i}].amount`,
          amount,
          `a ${known.like.dimension}, like the earlier receipts`,
        ),
      );
    else if (date <= on) known.received += numberIn(amount, known.like.unit);
  });
  problems.done();
  const notCounted: string[] = [];
  for (const entry of entries) {
    if (entry.date > on) continue;
    const known = entry.product === undefined ? undefined : stock.get(entry.product);
    const used = known && usedIn(entry);
    const amount = used && measuredAs(used, known.like, entry);
    if (known !== undefined && amount !== undefined) known.used += amount;
    else notCounted.push(`${entry.date} (${entry.id}): ${lackOf(entry, known !== undefined)}.`);
  }
  const products = [...stock].map(([product, { like, received: came, used }]): ProductStock => {
    const q = (value: number): ProductQuantity =>
      inUnit(likeQuantity(like as Quantity<string, string>, value), like.unit) as ProductQuantity;
    return {
      product,
      received: q(came),
      used: q(used),
      onHand: q(exceeds(used, came) || exceeds(came, used) ? came - used : 0),
    };
  });
  return { type: "stock-on-hand", version: 1, on, products, notCounted, findings: products.flatMap(shortOf) };
};

/** Why an entry was not taken off. */
const lackOf = ({ product }: LedgerEntry, cameIn: boolean): string => {
  if (product === undefined) return "which product";
  return cameIn ? `how much of ${product}` : `${product}, but there is no receipt for it`;
};

const shortOf = ({ product, onHand }: ProductStock): readonly Finding[] =>
  onHand.value >= 0
    ? []
    : [
        {
          code: "stock/below-zero",
          severity: "warning",
          params: { product, amount: onHand.value, unit: onHand.unit },
          text: `${product}: more was used than received. A receipt is missing, or an entry is too high: take inventory.`,
        },
      ];
