import { wholeUnitsFor } from "../../numeric/index.js";
import {
  allOf,
  expectAmount,
  expectQuantity,
  expectRecord,
  fail,
  isSubstance,
  numberIn,
  perOf,
  Quantity,
} from "../../quantity/index.js";
import { expectShortText } from "../label/expect-source.js";
import type { Fertilizer } from "../label/fertilizer.js";

/** What {@link packagesFor} needs to know of a product: any record with an id and a package will do. */
export type Packaged<Id extends string = string> = Pick<Fertilizer<Id>, "id" | "package">;

/** How many packages to open, and what stays in the last one. */
export interface Packages<D extends string, Id extends string> {
  readonly type: "packages";
  readonly version: 1;
  /** Whole packages, at least 1 for any need above zero. */
  readonly count: number;
  /** What these packages hold. */
  readonly total: Quantity<D, `product:${Id}`>;
  /** What is left over when the need is taken. */
  readonly leftOver: Quantity<D, `product:${Id}`>;
}

/**
 * The packages to open for a need, rounded up, and what is left over.
 *
 * Equation: `n = ceil(M / B)`, guarded against floating-point noise (a relative 1e-12), so that exactly
 * 792 bags stay 792.
 *
 * - `M` product needed, mass, or volume for a product sold by volume; zero or more
 * - `B` what one package holds, in the same dimension
 *
 * @param need - of this very product
 * @throws RatewrightError `missing` where the product states no package; `unit/mismatch` where the
 *   package is by volume and the need by weight; `substance/mismatch`, `range`
 *
 * Source: 142 bags of 50 lb for 45 acres at 3.6 lb per 1000 ft2 (Turfgrass mathematics review, Virginia
 * certified turfgrass professional program). A county bulletin rounds 7.14 bags to 7 and falls short.
 *
 * @example
 * ```ts
 * import { fertilizer, packagesFor, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "24-0-11", package: quantity(50, "lb") });
 * const packages = packagesFor(quantity(120, "lb", "product:feed-a"), feed);
 * packages.count; // => 3
 * packages.leftOver.in("lb"); // => 30
 * ```
 */
export const packagesFor = <D extends "mass" | "volume", Id extends string>(
  need: Quantity<D, `product:${Id}`>,
  product: Packaged<Id>,
): Packages<D, Id> => {
  const { id, size } = packageOf<D, Id>(product);
  const of = `product:${id}` as const;
  const given = expectAmount(need, { dimensions: ["mass", "volume"], of, bound: "non-negative" }, "need");
  if (given.dimension !== size.dimension) {
    const way = size.dimension === "volume" ? "volumeOfLiquid" : "weightOfLiquid";
    fail("unit/mismatch", "need", need, `a ${size.dimension}, as the package has; ${way}(...) makes one`);
  }
  const wanted = expectQuantity(given, { dimension: size.dimension, of }, "need");
  const [amount, each] = [numberIn(wanted, size.unit), size.value];
  const count = wholeUnitsFor(amount, each);
  const rest = Math.max(0, count * each - amount);
  return {
    type: "packages",
    version: 1,
    count,
    total: new Quantity(count * each, size.unit, of, size.dimension),
    leftOver: new Quantity(rest, size.unit, of, size.dimension),
  };
};

/**
 * The area that an amount covers at a rate.
 *
 * Equation: `A = M / R`
 *
 * - `M` amount, mass or volume, zero or more
 * - `R` rate, in the same dimension per area, more than zero
 *
 * Use the exact rate, not one rounded for the spreader: a published answer that rounds 3.846 to 3.8
 * first is 1.5 % off.
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { areaCovered, quantity } from "ratewright";
 * areaCovered(
 *   quantity(45, "lb", "product:feed-a"),
 *   quantity(3.75, "lb/1000 ft2", "product:feed-a"),
 * ).in("ft2"); // => 12000
 * ```
 */
export const areaCovered = <D extends "mass" | "volume", S extends string>(
  amount: Quantity<D, S>,
  rate: Quantity<NoInfer<`${D}/area`>, NoInfer<S>>,
): Quantity<"area", "none"> => {
  const given = expectAmount(amount, { dimensions: ["mass", "volume"], bound: "non-negative" }, "amount");
  const per = expectQuantity(
    rate,
    { dimension: `${given.dimension}/area`, of: given.of, bound: "positive" },
    "rate",
  );
  return expectQuantity(perOf(given, per), { dimension: "area", of: "none" }, "area");
};

/**
 * The area that one package of a product covers at a rate: {@link areaCovered} of the package.
 *
 * @throws RatewrightError `missing` where the product states no package; as {@link areaCovered}
 *
 * @example
 * ```ts
 * import { fertilizer, packageCoverage, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "24-0-11", package: quantity(45, "lb") });
 * packageCoverage(feed, quantity(3.75, "lb/1000 ft2", "product:feed-a")).in("ft2"); // => 12000
 * ```
 */
export const packageCoverage = <Id extends string>(
  product: Packaged<Id>,
  rate: Quantity<"mass/area", `product:${Id}`> | Quantity<"volume/area", `product:${Id}`>,
): Quantity<"area", "none"> => {
  const { id, size } = packageOf<"mass" | "volume", Id>(product);
  const of = `product:${id}` as const;
  const per = expectQuantity(rate, { dimension: `${size.dimension}/area`, of, bound: "positive" }, "rate");
  const covered = perOf(new Quantity(size.value, size.unit, of, size.dimension), per);
  return expectQuantity(covered, { dimension: "area", of: "none" }, "area");
};

/**
 * What one package holds, as an amount of its product: so that what one bag brings can be asked for.
 *
 * @param product - any record with an id and a package
 * @throws RatewrightError `missing` where the product states no package; `type`, `unit/mismatch`, `range`
 *
 * Source: a 60 lb bag of 30-4-4 holds 18 lb of N (University of Minnesota Extension, "Getting what you paid for").
 *
 * @example
 * ```ts
 * import { fertilizer, nutrientsSupplied, packageContents, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "24-0-11", package: quantity(50, "lb") });
 * const bag = packageContents<"mass", "feed-a">(feed);
 * nutrientsSupplied(bag, feed).N?.in("lb"); // => 12
 * nutrientsSupplied(bag.per(quantity(12_000, "ft2")), feed).N?.in("lb/1000 ft2"); // => 1
 * ```
 */
export const packageContents = <D extends "mass" | "volume" = "mass", Id extends string = string>(
  product: Packaged<Id>,
): Quantity<D, `product:${Id}`> => {
  const { id, size } = packageOf<D, Id>(product);
  return new Quantity(size.value, size.unit, `product:${id}`, size.dimension);
};

/** The id of a product and what one package holds. The caller's `D` is the kind of package that it counts on. */
const packageOf = <D extends "mass" | "volume", Id extends string>(
  product: Packaged<Id>,
): { readonly id: Id; readonly size: Quantity<D, "none"> } => {
  const given = expectRecord(product, "product");
  return allOf({
    id: () => {
      const id = expectShortText(given.id, "product.id", "the id of the product");
      return isSubstance(`product:${id}`)
        ? product.id
        : fail("type", "product.id", id, "an id without slash or colon");
    },
    size: () => {
      if (given.package === undefined)
        fail("missing", "product.package", undefined, "what one package holds");
      const dimensions = ["mass", "volume"] as readonly string[] as readonly D[];
      const held = expectAmount(
        given.package,
        { dimensions, of: "none", bound: "positive" },
        "product.package",
      );
      return new Quantity<D, "none">(held.value, held.unit, "none", held.dimension);
    },
  });
};
