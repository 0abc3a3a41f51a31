import { wholeUnitsFor } from "../../numeric/index.js";
import {
  allOf,
  expectAmount,
  expectOneOf,
  expectQuantity,
  expectRecord,
  fail,
  isSubstance,
  numberIn,
  ofKind,
  perOf,
  Quantity,
  quantityOf,
  timesOf,
} from "../../quantity/index.js";
import { expectShortText } from "../label/expect-source.js";
import type { Fertilizer } from "../label/fertilizer.js";

/** What {@link packagesFor} needs to know of a product: any record with an id and a package will do. */
export type Packaged<Id extends string = string> = Pick<Fertilizer<Id>, "id" | "package" | "density">;

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
 * - `B` what one package holds, in the same dimension; where the one is by weight and the other by volume, through the
 *   density of the product, and total and remainder are by weight or by volume as the need is
 *
 * @param need - of this very product
 * @throws RatewrightError `missing` where the product states no package; `unit/mismatch` where the
 *   package is by volume and the need by weight, or the other way round, and the product states no density, or the
 *   need is a rate; `substance/mismatch`, `range`
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
  const { id, size, density } = packageOf<"mass" | "volume", Id>(product);
  const of = `product:${id}` as const;
  const given = expectNeed<D>(need, of);
  // In the unit of the package where the two are alike, else in the unit of the package times or per the density.
  const each = given.dimension === size.dimension ? size : throughDensity(size, density, given);
  const [amount, held] = [numberIn(given, each.unit), each.value];
  const count = wholeUnitsFor(amount, held);
  const rest = Math.max(0, count * held - amount);
  return {
    type: "packages",
    version: 1,
    count,
    total: new Quantity(count * held, each.unit, of, given.dimension),
    leftOver: new Quantity(rest, each.unit, of, given.dimension),
  };
};

/** An amount of this very product; of a rate the way to an amount is named. */
const expectNeed = <D extends "mass" | "volume">(need: unknown, of: string): Quantity<D, string> => {
  const dimensions = ["mass", "volume", "mass/area", "volume/area"] as const;
  const given = expectAmount(need, { dimensions, of, bound: "non-negative" }, "need");
  return given.dimension === "mass" || given.dimension === "volume"
    ? expectQuantity(given, { dimension: given.dimension as D }, "need")
    : fail("unit/mismatch", "need", given, "an amount; rate.times(area) makes one of a rate");
};

/** What a package holds by weight where it is sold by volume, and the other way round. */
const throughDensity = (
  size: { readonly value: number; readonly unit: string; readonly dimension: string },
  density: Quantity<"mass/volume", "none"> | undefined,
  need: { readonly dimension: string },
): Quantity<string, string> => {
  const held = quantityOf(size.value, size.unit, "none", "product.package");
  if (density === undefined) {
    const way = "a product density converts one to the other";
    return fail("unit/mismatch", "need", need, `a ${size.dimension}, as the package has; ${way}`);
  }
  return size.dimension === "volume" ? timesOf(held, density) : perOf(held, density);
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
 * first prints 13,200 ft2 for 13,000.
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
  return ofKind<"area", "none">(perOf(given, per));
};

/**
 * The area that one package of a product covers at a rate: {@link areaCovered} of the package.
 *
 * @throws RatewrightError `missing` where the product states no package; as {@link areaCovered}
 *
 * Source: as {@link areaCovered}.
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
 * @param kind - `"mass"` where it is left out; `"volume"` for a product sold by volume
 * @throws RatewrightError `missing` where the product states no package; `unit/mismatch` where the package is of the other
 *   kind; `type`, `range`
 *
 * Source: a 60 lb bag of 30-4-4 holds 18 lb of N (University of Minnesota Extension, "Getting what you paid for").
 *
 * @example
 * ```ts
 * import { fertilizer, nutrientsSupplied, packageContents, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "24-0-11", package: quantity(50, "lb") });
 * const bag = packageContents(feed);
 * nutrientsSupplied(bag, feed).N.in("lb"); // => 12
 * nutrientsSupplied(bag.per(quantity(12_000, "ft2")), feed).N.in("lb/1000 ft2"); // => 1
 * packageContents(feed, "volume"); // => throws unit/mismatch
 * ```
 */
export const packageContents = <const D extends "mass" | "volume" = "mass", Id extends string = string>(
  product: Packaged<Id>,
  kind?: D,
): Quantity<D, `product:${Id}`> => {
  const wanted = kind === undefined ? "mass" : expectOneOf(kind, ["mass", "volume"], "kind");
  const { id, size } = packageOf<D, Id>(product);
  if (size.dimension !== wanted) {
    const way = wanted === "mass" ? '; packageContents(product, "volume") gives what it holds' : "";
    fail("unit/mismatch", "product.package", size, `a package by ${wanted}${way}`);
  }
  return new Quantity(size.value, size.unit, `product:${id}`, size.dimension);
};

/** The id of a product and what one package holds. The caller's `D` is the kind of package that it counts on. */
const packageOf = <D extends "mass" | "volume", Id extends string>(
  product: Packaged<Id>,
): {
  readonly id: Id;
  readonly size: Quantity<D, "none">;
  readonly density: Quantity<"mass/volume", "none"> | undefined;
} => {
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
    density: () =>
      given.density === undefined
        ? undefined
        : expectQuantity(
            given.density,
            { dimension: "mass/volume", of: "none", bound: "positive" },
            "product.density",
          ),
  });
};
