import { frozen } from "../errors/frozen.js";
import type { oneWayProducts, productTable } from "./product-table.js";

/**
 * The closed table of dimensions. A quotient that is not here is no dimension, and a product that is
 * not in `productTable` does not compile.
 */
export type Dimension = PlainDimension | `money:${string}`;

/** The dimensions that stand alone, or that are measured with units of their own. */
export type BaseDimension =
  | "1"
  | "mass"
  | "volume"
  | "area"
  | "length"
  | "time"
  | "count"
  | "pressure"
  | "angle"
  | "temperature"
  | "temperature difference"
  | "degree-days"
  | "conductivity"
  | "exchange capacity"
  | "charge/volume"
  | "radiant exposure"
  | "irradiance"
  | "mass/mass"
  | "volume/volume"
  | "length/length";

/** The quotients `a/b` with `a/b * b = a`. */
export const quotientsOfTwo = [
  "mass/area",
  "volume/area",
  "count/area",
  "mass/volume",
  "volume/mass",
  "mass/length",
  "volume/length",
  "length/count",
  "area/count",
  "count/mass",
  "mass/count",
  "count/volume",
  "volume/count",
  "count/length",
  "count/time",
  "mass/time",
  "volume/time",
  "area/time",
  "length/time",
  "area/mass",
  "area/volume",
  "time/area",
  "1/time",
  "money/mass",
  "money/volume",
  "money/area",
  "money/count",
  "money/time",
] as const;

/** The quotients `a/b` with `a/b * b = a`. */
export const simpleQuotients: typeof quotientsOfTwo = /* @__PURE__ */ frozen(quotientsOfTwo);

/** The quotients of three, with time last. */
export const quotientsOfThree = ["mass/area/time", "volume/area/time", "mass/volume/time"] as const;

/** The quotients of three, with time last. */
export const rateQuotients: typeof quotientsOfThree = /* @__PURE__ */ frozen(quotientsOfThree);

type SimpleQuotient = (typeof simpleQuotients)[number];

/** The dimensions that carry no currency. */
export type PlainDimension =
  | BaseDimension
  | Exclude<SimpleQuotient, `money${string}`>
  | (typeof rateQuotients)[number];

// What follows is written for the compiler's sake: products are looked up, not searched for, and no row of
// the table is taken apart before a quotient asks for it; the cost is measured by tests/budget.
type ProductTable = typeof productTable;
type Products = ProductTable & typeof oneWayProducts;
type ProductsOf = { [P in keyof ProductTable as ProductTable[P]]: P };

/** `B` where a row says `A * B: C` or `B * A: C`. */
type Cofactor<C extends string, A extends string> = C extends keyof ProductsOf
  ? ProductsOf[C] extends infer P
    ? P extends `${A} * ${infer B}` | `${infer B} * ${A}`
      ? B
      : never
    : never
  : never;

type Like<A extends string> = A extends "mass" | `mass/${string}`
  ? "mass/mass"
  : A extends "volume" | `volume/${string}`
    ? "volume/volume"
    : A extends "length"
      ? "length/length"
      : "1";

type Untagged<D extends string> = D extends `money:${string}/${infer R}`
  ? `money/${R}`
  : D extends `money:${string}`
    ? "money"
    : D;
type Currency<D extends string> = D extends `money:${infer C}/${string}`
  ? C
  : D extends `money:${infer C}`
    ? C
    : never;
type Tagged<D extends string, C extends string> = D extends `money/${infer R}`
  ? `money:${C}/${R}`
  : D extends "money"
    ? `money:${C}`
    : D;

/** `T` where the quotient is one of the simple ones. */
type Of<T, Q> = Q extends SimpleQuotient ? T : never;
type PlainTimes<A extends string, B extends string> = `${A} * ${B}` extends keyof Products
  ? Products[`${A} * ${B}`]
  : `${B} * ${A}` extends keyof Products
    ? Products[`${B} * ${A}`]
    : A extends `${infer T}/${B}`
      ? Of<T, A>
      : B extends `${infer T}/${A}`
        ? Of<T, B>
        : never;
type PlainPer<A extends string, B extends string> = A extends B
  ? Like<A>
  : `${A}/${B}` extends SimpleQuotient
    ? `${A}/${B}`
    : B extends `${A}/${infer R}`
      ? B extends SimpleQuotient
        ? R
        : Cofactor<A, B>
      : Cofactor<A, B>;

/** The dimension of a product, or `never` where there is none. */
export type TimesDimension<A extends string, B extends string> = A extends "1"
  ? B
  : B extends "1"
    ? A
    : `${A} ${B}` extends `${string}money:${string}`
      ? Tagged<PlainTimes<Untagged<A>, Untagged<B>>, Currency<A> | Currency<B>>
      : PlainTimes<A, B>;

/** The dimension of a quotient, or `never` where there is none. */
export type PerDimension<A extends string, B extends string> = B extends "1"
  ? A
  : `${A} ${B}` extends `${string}money:${string}`
    ? [Currency<A>, Currency<B>] extends [infer C extends string, infer E extends string]
      ? [C] extends [never]
        ? never
        : [E] extends [never]
          ? Tagged<PlainPer<Untagged<A>, Untagged<B>>, C>
          : C extends E
            ? Tagged<PlainPer<Untagged<A>, Untagged<B>>, C>
            : never
      : never
    : PlainPer<A, B>;
