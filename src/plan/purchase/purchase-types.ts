import type { CivilDate } from "../../calendar/index.js";
import type { Finding, Quantity, QuantityJson } from "../../quantity/index.js";
import type { ProductQuantity } from "./reorder-point.js";

/** What one application needs of one product. A `Quantity` fits as amount. */
export interface ProductNeed {
  readonly product: string;
  readonly date: CivilDate;
  /** The site, where there are several. */
  readonly site?: string;
  readonly amount: QuantityJson;
}

/** A price of a package from so many packages on. */
export interface PriceBreak<C extends string = string> {
  readonly from: number;
  /** For each package, all of them. */
  readonly price: Quantity<`money:${C}`, "none">;
}

/** A product as it is bought and stored. */
export interface PurchasedProduct<C extends string = string> {
  readonly id: string;
  readonly name?: string;
  /** What one package holds. */
  readonly package: QuantityJson;
  /** What is in the store; nothing where it is left out. */
  readonly stock?: QuantityJson;
  readonly density?: QuantityJson;
  /** From one package on, and where it gets cheaper. */
  readonly prices?: readonly PriceBreak<C>[];
  /** From the order to the delivery. */
  readonly leadTime?: QuantityJson;
  /** What stays in the store in any case; nothing where it is left out. */
  readonly safetyStock?: QuantityJson;
  /** How long a package keeps, from the delivery. */
  readonly shelfLife?: QuantityJson;
}

/** So many packages, what they hold, what stays over and what they cost. */
export interface PackagesBought<C extends string = string> {
  readonly packages: number;
  readonly amount: ProductQuantity;
  readonly leftOver: ProductQuantity;
  /** `null` where no price is stated. */
  readonly cost: Quantity<`money:${C}`, "none"> | null;
}

/** A line of the purchase list. */
export interface PurchaseLine<C extends string = string> {
  readonly product: string;
  readonly productName: string;
  readonly applications: number;
  /** All applications. */
  readonly need: ProductQuantity;
  readonly stock: ProductQuantity;
  readonly safetyStock: ProductQuantity;
  /** What the stock lacks: need and safety stock, less stock. */
  readonly short: ProductQuantity;
  /** All applications together, rounded up to packages once. */
  readonly once: PackagesBought<C>;
  /** Each application rounded up on its own, as a list visit by visit would have it. */
  readonly perVisit: PackagesBought<C>;
  /** The first application that the stock does not cover; `null` where it covers all. */
  readonly runsOutOn: CivilDate | null;
  /** The last day to order for it; `null` without a lead time, or where the stock covers all. */
  readonly orderBy: CivilDate | null;
}

/** What to buy for a season. */
export interface PurchaseList<C extends string = string> {
  readonly type: "purchase-list";
  readonly version: 1;
  readonly lines: readonly PurchaseLine<C>[];
  /** All lines; `null` where a line that is bought has no price. */
  readonly cost: Quantity<`money:${C}`, "none"> | null;
  readonly perVisitCost: Quantity<`money:${C}`, "none"> | null;
  readonly findings: readonly Finding[];
}
