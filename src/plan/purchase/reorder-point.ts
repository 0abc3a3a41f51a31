import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  inUnit,
  likeQuantity,
  numberIn,
  type Quantity,
  type QuantityJson,
} from "../../quantity/index.js";

/** A mass or a volume of a product. */
export type ProductQuantity = Quantity<"mass", string> | Quantity<"volume", string>;

/** The stock at which to order again. */
export interface ReorderPoint {
  readonly type: "reorder-point";
  readonly version: 1;
  /** What is used from the order to the delivery. */
  readonly leadTimeUse: ProductQuantity;
  readonly safetyStock: ProductQuantity;
  /** Order when no more than this is left. */
  readonly orderAt: ProductQuantity;
}

const measures = ["mass", "volume"] as const;

/** Takes an amount of product, of a measure and a substance that are given or its own. */
export const expectStock = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative",
  like?: ProductQuantity,
): ProductQuantity => {
  if (input === undefined) return fail("missing", path, input, "an amount of product, such as 50 lb");
  const read = expectAmount(input, { dimensions: measures, bound }, path);
  if (like === undefined) return read as ProductQuantity;
  if (read.dimension !== like.dimension)
    fail(
      "unit/mismatch",
      path,
      read,
      `a ${like.dimension}, like the first amount; the product's density converts one to the other`,
    );
  if (read.of !== like.of)
    fail("substance/mismatch", path, read, `an amount of ${like.of}, like the first amount`);
  return inUnit(read as Quantity<string, string>, like.unit) as ProductQuantity;
};

/**
 * The reorder point: the stock at which to order again, so that the delivery comes before the safety stock is touched.
 *
 * `order at = use / during * lead time + safety stock`
 *
 * It takes the use as even through `during`. Turf work is not even: take the weeks in which the product is used, not the
 * year, or go by the dates of the applications with {@link purchaseList}.
 *
 * @param input - `use` of the product over `during`; `leadTime` from the order to the delivery; `safetyStock`, zero where
 *   left out: no stock is kept back then
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: chapter 12, "Managing inventory", of a textbook of operations management, p. 543: 60 packs a week, 6 weeks and 153.6
 * kept back make 513.6. It takes its safety stock from the spread of the lead time; here the caller states it.
 *
 * @example
 * ```ts
 * import { quantity, reorderPoint } from "ratewright";
 * const point = reorderPoint({
 *   use: quantity(600, "lb", "product:feed-a"),
 *   during: quantity(30, "d"),
 *   leadTime: quantity(10, "d"),
 *   safetyStock: quantity(100, "lb", "product:feed-a"),
 * });
 * point.orderAt.toString(); // => "300 lb of product:feed-a"
 * ```
 */
export const reorderPoint = (input: {
  readonly use: QuantityJson;
  readonly during: QuantityJson;
  readonly leadTime: QuantityJson;
  readonly safetyStock?: QuantityJson;
}): ReorderPoint => {
  const given = expectFields(input, ["use", "during", "leadTime", "safetyStock"]);
  const days = (path: "during" | "leadTime", bound: "positive" | "non-negative"): number =>
    given[path] === undefined
      ? fail("missing", path, undefined, "a time, such as 10 d")
      : expectQuantity(given[path], { dimension: "time", of: "none", bound }, path).in("d");
  const { use, during, lead } = allOf({
    use: () => expectStock(given.use, "use", "non-negative"),
    during: () => days("during", "positive"),
    lead: () => days("leadTime", "non-negative"),
  });
  const safety =
    given.safetyStock === undefined
      ? 0
      : numberIn(expectStock(given.safetyStock, "safetyStock", "non-negative", use), use.unit);
  const like = (value: number): ProductQuantity =>
    likeQuantity(use as Quantity<string, string>, value) as ProductQuantity;
  const leadTimeUse = (use.value * lead) / during;
  return {
    type: "reorder-point",
    version: 1,
    leadTimeUse: like(leadTimeUse),
    safetyStock: like(safety),
    orderAt: like(leadTimeUse + safety),
  };
};
