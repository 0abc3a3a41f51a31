import { described } from "../../quantity/house.js";
import { allOf, expectFields, expectQuantity, fail, likeQuantity, Quantity } from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { expectWeighed, isOtherRecordOf } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { productNitrogen } from "../label/nitrogen-breakdown.js";
import type { Nutrient } from "../label/nutrient.js";
import { statesNone } from "../label/states-none.js";
import { eachOf, listOf } from "../label/under-path.js";
import { productRate } from "./product-rate.js";
import { expectSlowShare } from "./rate-cap.js";
import { expectTarget, type RateTarget } from "./rate-target.js";

/** The part that one source takes of a target. */
export interface SourceRate {
  readonly product: string;
  /** Of the nutrient. */
  readonly part: Quantity<"mass/area", string>;
  readonly rate: Quantity<"mass/area", `product:${string}`>;
}

/**
 * Product rates where a target is split between sources by stated shares: 75 % of the nitrogen from a slow
 * source, 25 % from a quick one.
 *
 * Equation: `R_i = T * w_i * 100 / a_i`, the shares `w_i` adding up to 1
 *
 * - `R_i` product rate, mass per area; `T` target of the nutrient, mass per area, zero or more
 * - `w_i` share of the target from source i, 0 to 1; `a_i` percent of the nutrient in it, by weight
 *
 * The share says where the nutrient comes from, not how much of it is slow: a slow source may hold quick
 * nitrogen too. For a wanted slow share of the nitrogen use {@link slowShareRates}.
 *
 * @param input.parts - each source with its share of the target, as `quantity(75, "%")`
 * @throws RatewrightError `conflict` where the shares do not add up to 100 %; `infeasible` where a source has none of
 *   the nutrient; `duplicate` where two products have one id; `missing`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: 15 000 ft2 at 1 lb N, 75 % from 31-0-0 and 25 % from 46-0-0: 36.3 and 8.2 lb ("Four steps in
 * fertilizer calculations", turf management lecture).
 *
 * @example
 * ```ts
 * import { fertilizer, quantity, ratesBySource } from "ratewright";
 * const rates = ratesBySource({
 *   target: quantity(1, "lb/1000 ft2", "N"),
 *   parts: [
 *     { product: fertilizer({ id: "slow", analysis: "31-0-0" }), share: quantity(75, "%") },
 *     { product: fertilizer({ id: "urea", analysis: "46-0-0" }), share: quantity(25, "%") },
 *   ],
 * });
 * rates.map(({ rate }) => Number(rate.times(quantity(15_000, "ft2")).in("lb").toFixed(1)));
 * // => [36.3, 8.2]
 * ```
 */
export const ratesBySource = (input: {
  readonly target: RateTarget;
  readonly parts: readonly { readonly product: Fertilizer; readonly share: Quantity<"1", "none"> }[];
}): readonly SourceRate[] => {
  expectFields(input, ["target", "parts"], "input");
  const { target, parts } = allOf({
    target: () => expectTarget(input.target, "target"),
    parts: () => readParts(input.parts),
  });
  const total = parts.reduce((sum, { percent }) => sum + percent, 0);
  if (Math.abs(total - 100) > 1e-7) {
    fail("conflict", "parts", described(`${total} % in all`), "shares that add up to 100 %");
  }
  return eachOf(parts, "parts", ({ product, percent }): SourceRate => {
    const part = likeQuantity(target, (target.value * percent) / 100);
    return { product: product.id, part: textOf(part), rate: productRate(part, product) };
  });
};

const mostParts = 50;

/** The sources with their shares, percent of the target. */
const readParts = (input: unknown): readonly { readonly product: Fertilizer; readonly percent: number }[] => {
  const list = listOf(input, "parts", "{ product, share }", mostParts);
  const seen: Fertilizer[] = [];
  return eachOf(list, "parts", (given) => {
    const part = expectFields(given, ["product", "share"], "", "{ product, share }");
    return allOf({
      product: () => {
        const product = expectWeighed(part.product as Fertilizer, "product");
        const other = seen.findIndex((one) => isOtherRecordOf(one, product));
        seen.push(product);
        return other < 0
          ? product
          : fail(
              "duplicate",
              "product.id",
              product.id,
              `a different id: parts[${other}] has it for another product`,
            );
      },
      percent: () =>
        expectQuantity(part.share, { dimension: "1", of: "none", bound: "non-negative" }, "share").in("%"),
    });
  });
};

/** An amount of a nutrient, which of them known only as the program runs. */
const textOf = <S extends Nutrient>(q: Quantity<"mass/area", S>): Quantity<"mass/area", string> =>
  new Quantity<"mass/area", string>(q.value, q.unit, q.of, "mass/area");

/**
 * Rates of two products that together give a target of nitrogen of which a wanted share is slow.
 *
 * Equation: `w = (s - s2) / (s1 - s2)`; `R1 = T * w * 100 / a1`; `R2 = T * (1 - w) * 100 / a2`
 *
 * - `T` target of nitrogen, mass per area, zero or more
 * - `s` wanted slow nitrogen, percent of the NITROGEN; `s1`, `s2` of the two products
 * - `w` share of the nitrogen that comes from the first; `a1`, `a2` percent of N in the products, by weight
 *
 * Range: `s` between `s1` and `s2`.
 *
 * @param input.slowShare - `s`
 * @throws RatewrightError `infeasible` where the wanted share lies outside of what the two products span, with the
 *   span; `duplicate` where two products have one id; `range`, `unit/mismatch`, `substance/mismatch`; what
 *   `fertilizer` throws for the record of a product
 *
 * Source: conservation of total and slow nitrogen.
 *
 * @example
 * ```ts
 * import { fertilizer, quantity, slowShareRates } from "ratewright";
 * const slow = fertilizer({
 *   id: "coated",
 *   analysis: "40-0-0",
 *   nitrogen: { percent: { urea: 8, coated: 32 } },
 * });
 * const rates = slowShareRates({
 *   target: quantity(1, "lb/1000 ft2", "N"),
 *   slowShare: quantity(60, "% w/w", "N:slow/N"),
 *   products: [slow, fertilizer({ id: "urea", analysis: "46-0-0" })],
 * });
 * rates.map(({ part }) => part.in("lb/1000 ft2")); // => [0.75, 0.25]
 * ```
 */
export const slowShareRates = (input: {
  readonly target: Quantity<"mass/area", "N">;
  readonly slowShare: Quantity<"mass/mass", "N:slow/N">;
  readonly products: readonly [Fertilizer, Fertilizer];
}): readonly [SourceRate, SourceRate] => {
  expectFields(input, ["target", "slowShare", "products"], "input");
  const { target, wanted, products } = allOf({
    target: () =>
      expectQuantity(input.target, { dimension: "mass/area", of: "N", bound: "non-negative" }, "target"),
    wanted: () => expectSlowShare(input.slowShare, "slowShare"),
    products: () => readPair(input.products),
  });
  const [first, second] = products;
  const [s1, s2] = [slowPercent(first), slowPercent(second)];
  const [low, high] = [Math.min(s1, s2), Math.max(s1, s2)];
  if (wanted < low - 1e-9 * high || wanted > high + 1e-9 * high) {
    fail(
      "infeasible",
      "slowShare",
      described(`${wanted} %`),
      `a share from ${low} to ${high} %, which these two span`,
    );
  }
  // Two products of one slow share give that share in any proportion: the first alone then does. One that has the
  // wanted share itself goes down alone, and nothing of the other by rounding noise.
  const exact = s1 === s2 ? 1 : Math.min(1, Math.max(0, (wanted - s2) / (s1 - s2)));
  const share = exact < 1e-12 ? 0 : 1 - exact < 1e-12 ? 1 : exact;
  const part = (product: Fertilizer, value: number): SourceRate => {
    const nitrogen = likeQuantity(target, value);
    return { product: product.id, part: textOf(nitrogen), rate: productRate(nitrogen, product) };
  };
  return [part(first, target.value * share), part(second, target.value * (1 - share))];
};

const slowPercent = (product: Fertilizer): number => productNitrogen(product).slowShare.in("% w/w");

/** Two products with nitrogen. */
const readPair = (input: unknown): readonly [Fertilizer, Fertilizer] => {
  if (!Array.isArray(input) || input.length !== 2) return fail("type", "products", input, "two products");
  const read = (i: 0 | 1): Fertilizer => {
    const product = expectWeighed(input[i] as Fertilizer, `products[${i}]`);
    return percentOf(product.analysis, "N") > 0 ? product : statesNone(product, "N", `products[${i}]`);
  };
  const { first, second } = allOf({ first: () => read(0), second: () => read(1) });
  if (isOtherRecordOf(first, second)) {
    const text = "a different id: products[0] has it for another product";
    fail("duplicate", "products[1].id", second.id, text);
  }
  return [first, second];
};
