import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type FactSource,
  type Finding,
  numberIn,
  Quantity,
} from "../../quantity/index.js";
import { type Nutrient, percentOf } from "../label/analysis.js";
import { expectWeighed } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { productNitrogen } from "../label/nitrogen-breakdown.js";
import { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
import { type CappedSubstance, expectSlowShare, type RateCap, type ReadCap, readCaps } from "./rate-cap.js";

/** One cap beside what the highest rate brings of its substance. */
export interface CapAtRate {
  readonly id: string;
  readonly of: CappedSubstance;
  readonly limit: Quantity<"mass/area", string>;
  /** What the product brings of it at the highest rate; absent where no cap bounds the rate. */
  readonly at?: Quantity<"mass/area", string>;
  /**
   * `"binds"`: it sets the rate; `"slack"`: another cap binds first; `"not bounded"`: the product has none
   * of the substance; `"not for this product"`: the slow share lies outside of what the cap names.
   */
  readonly standing: "binds" | "slack" | "not bounded" | "not for this product";
  readonly source?: FactSource;
}

/** What {@link highestProductRate} gives. */
export interface HighestProductRate<Id extends string = string> {
  readonly type: "highest-product-rate";
  readonly version: 1;
  /** Absent where no cap bounds this product. */
  readonly rate?: Quantity<"mass/area", `product:${Id}`>;
  /** The caps or the requirement that set the rate; several where they bind at once. */
  readonly binding: readonly string[];
  /** Every cap that was given, in order. Nothing else was looked at. */
  readonly caps: readonly CapAtRate[];
  /** What the product brings at that rate; empty where no cap bounds it. */
  readonly supplied: NutrientsSupplied<"mass/area">;
  /** A cap that leaves nothing has one. An empty list is no approval. */
  readonly findings: readonly Finding[];
}

/**
 * The highest rate of a product under several caps acting together: total nitrogen, quick-release nitrogen, slow
 * nitrogen, P2O5 or P, any nutrient. Says which cap binds.
 *
 * Equation: `R = min over i of C_i * 100 / a_i`
 *
 * - `R` product rate, mass per area
 * - `C_i` cap on a substance, mass per area; one of zero or less, as where it is used up, gives a rate of zero and a finding
 * - `a_i` percent of that substance in the product, by weight: total N; quick-release N (total less slow); slow N;
 *   P2O5 or P, whichever the cap names
 *
 * A 20 % slow product under 0.9 lb total and 0.7 lb quick-release is held to 0.875 lb of nitrogen, not 0.9: at
 * 0.9 it would bring 0.72 lb quick-release. Caps that give the same rate to a relative 1e-9 all bind.
 *
 * A requirement of a least slow share (`leastSlowShare`, percent of the NITROGEN) that the product does not
 * meet sets the rate to zero and binds as `"slow share"`, beside any cap of zero; it looks only at products with
 * nitrogen. A product without nitrogen has no slow share, so no cap that names one is for it.
 *
 * The rate is the highest under the caps that were given, and says nothing of other rules, of the label or of the
 * turf.
 *
 * @param input.product - a record made by `fertilizer`; without stated slow nitrogen all counts as quick-release
 * @throws RatewrightError `conflict` where a cap names a slow share that no product can have; `duplicate`, `missing`,
 *   `range`, `unit/mismatch`, `substance/mismatch`; what `fertilizer` throws for the record of a product
 *
 * Source: caps of 0.7 lb soluble and 0.9 lb total per 1000 ft2 and 20 % slow, Maryland Code, Agriculture
 * 6-224; 2 lb at 65 % slow with 0.7 lb soluble, University of Florida IFAS Extension EP353.
 *
 * @example
 * ```ts
 * import { fertilizer, highestProductRate, quantity } from "ratewright";
 * const feed = fertilizer({
 *   id: "feed-a",
 *   analysis: "20-0-10",
 *   slowNitrogen: quantity(4, "% w/w", "N:slow/product"),
 * });
 * const caps = [
 *   { limit: quantity(0.9, "lb/1000 ft2", "N") },
 *   { limit: quantity(0.7, "lb/1000 ft2", "N:quick") },
 * ];
 * const highest = highestProductRate({ product: feed, caps });
 * highest.rate?.in("lb/1000 ft2"); // => 4.375
 * highest.supplied.N?.in("lb/1000 ft2"); // => 0.875
 * highest.binding; // => ["N:quick"]
 * ```
 */
export const highestProductRate = <Id extends string>(input: {
  readonly product: Fertilizer<Id>;
  readonly caps: readonly RateCap[];
  readonly leastSlowShare?: Quantity<"mass/mass", "N:slow/N">;
}): HighestProductRate<Id> => {
  expectFields(input, ["product", "caps", "leastSlowShare"], "input");
  const { product, caps, least } = allOf({
    product: () => expectWeighed(input.product, "product"),
    caps: () => readCaps(input.caps, "caps"),
    least: () =>
      input.leastSlowShare === undefined ? 0 : expectSlowShare(input.leastSlowShare, "leastSlowShare"),
  });
  const unit = caps[0]?.limit.unit as string;
  const share = slowSharePercent(product);
  const bounds = caps.map((cap) => (appliesTo(cap, share) ? boundOf(cap, product, unit) : undefined));
  const lacking = share !== undefined && exceeds(least, share);
  const bounded = bounds.filter((bound) => bound !== undefined);
  const highest = lacking ? 0 : bounded.length > 0 ? Math.min(...bounded) : undefined;
  if (highest === undefined) {
    return {
      type: "highest-product-rate",
      version: 1,
      binding: [],
      caps: caps.map((cap) => capAt(cap, share, undefined, undefined)),
      supplied: {},
      findings: [],
    };
  }
  const rate: Quantity<"mass/area", `product:${Id}`> = new Quantity(
    highest,
    unit,
    `product:${product.id}`,
    "mass/area",
  );
  const supplied = nutrientsSupplied(rate, product);
  const rows = caps.map((cap, i) =>
    capAt(cap, share, rate, {
      bound: bounds[i],
      binds: bounds[i] !== undefined && !exceeds(bounds[i], highest),
      percent: percentOfCapped(product, cap.of),
    }),
  );
  const binding = rows.filter(({ standing }) => standing === "binds").map(({ id }) => id);
  return {
    type: "highest-product-rate",
    version: 1,
    rate,
    binding: lacking ? ["slow share", ...binding] : binding,
    caps: rows,
    supplied,
    findings: caps.flatMap((cap, i) => (bounds[i] === undefined ? [] : usedUp(cap, i))),
  };
};

/** The finding on a cap that leaves nothing. */
const usedUp = ({ id, of, limit, source }: ReadCap, i: number): Finding[] =>
  limit.value > 0
    ? []
    : [
        {
          code: "rate/cap-used-up",
          severity: "caution",
          path: `caps[${i}].limit`,
          params: { cap: id, of, limit: limit.value, unit: limit.unit },
          text: `The cap "${id}" leaves no ${of} (${Number(limit.value.toPrecision(4))} ${limit.unit}): the highest rate is 0.`,
          ...(source === undefined ? {} : { source }),
        },
      ];

/** Slow nitrogen in percent of the nitrogen; `undefined` for a product without nitrogen. */
const slowSharePercent = (product: Fertilizer): number | undefined =>
  percentOf(product.analysis, "N") > 0 ? productNitrogen(product).slowShare.in("% w/w") : undefined;

const appliesTo = ({ from, below }: ReadCap, share: number | undefined): boolean => {
  if (from === 0 && below === undefined) return true;
  if (share === undefined) return false;
  return !exceeds(from, share) && (below === undefined || exceeds(below, share));
};

/** Percent of product by weight of what a cap limits. */
const percentOfCapped = (product: Fertilizer, of: CappedSubstance): number => {
  if (of !== "N:quick" && of !== "N:slow") return percentOf(product.analysis, of as Nutrient);
  if (!(percentOf(product.analysis, "N") > 0)) return 0;
  const { slow, quick } = productNitrogen(product);
  return of === "N:slow" ? slow.in("% w/w") : quick.in("% w/w");
};

const boundOf = (cap: ReadCap, product: Fertilizer, unit: string): number | undefined => {
  const percent = percentOfCapped(product, cap.of);
  return percent > 0 ? (Math.max(0, numberIn(cap.limit, unit)) * 100) / percent : undefined;
};

const capAt = (
  cap: ReadCap,
  share: number | undefined,
  rate: { readonly value: number; readonly unit: string } | undefined,
  found: { bound: number | undefined; binds: boolean; percent: number } | undefined,
): CapAtRate => {
  const standing = !appliesTo(cap, share)
    ? "not for this product"
    : found?.bound === undefined
      ? "not bounded"
      : found.binds
        ? "binds"
        : "slack";
  return {
    id: cap.id,
    of: cap.of,
    limit: cap.limit,
    ...(rate === undefined || found === undefined
      ? {}
      : {
          at: new Quantity<"mass/area", string>(
            (rate.value * found.percent) / 100,
            rate.unit,
            cap.of,
            "mass/area",
          ),
        }),
    standing,
    ...(cap.source === undefined ? {} : { source: cap.source }),
  };
};

/**
 * The least slow share of the nitrogen with which a full total rate stays within a cap on quick-release nitrogen.
 *
 * Equation: `s = 1 - S / T`, zero where the cap is not below the total
 *
 * - `s` slow nitrogen, percent of the NITROGEN
 * - `S` cap on quick-release nitrogen, mass per area, zero or more
 * - `T` total nitrogen put down, mass per area, more than zero
 *
 * @param input.quickCap - `S`
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: the caps of Maryland Code, Agriculture 6-224; that 0.9 lb total under 0.7 lb soluble needs 22.2 % follows.
 *
 * @example
 * ```ts
 * import { quantity, slowShareNeeded } from "ratewright";
 * const needed = slowShareNeeded({
 *   total: quantity(0.9, "lb/1000 ft2", "N"),
 *   quickCap: quantity(0.7, "lb/1000 ft2", "N:quick"),
 * });
 * Number(needed.in("% w/w").toFixed(2)); // => 22.22
 * ```
 */
export const slowShareNeeded = (input: {
  readonly total: Quantity<"mass/area", "N">;
  readonly quickCap: Quantity<"mass/area", "N:quick">;
}): Quantity<"mass/mass", "N:slow/N"> => {
  expectFields(input, ["total", "quickCap"], "input");
  const [positive, open] = ["positive", "non-negative"] as const;
  const { total, quick } = allOf({
    total: () => expectQuantity(input.total, { dimension: "mass/area", of: "N", bound: positive }, "total"),
    quick: () =>
      expectQuantity(input.quickCap, { dimension: "mass/area", of: "N:quick", bound: open }, "quickCap"),
  });
  const cap = numberIn(quick, total.unit);
  const share = exceeds(total.value, cap) ? ((total.value - cap) * 100) / total.value : 0;
  return new Quantity(share, "% w/w", "N:slow/N", "mass/mass");
};
