/**
 * The closed table of dimensions. A quotient that is not here is no dimension, and a product that is
 * not in {@link productTable} does not compile.
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
export const simpleQuotients = [
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

/** The quotients of three, with time last. */
export const rateQuotients = ["mass/area/time", "volume/area/time", "mass/volume/time"] as const;

type SimpleQuotient = (typeof simpleQuotients)[number];

/** The dimensions that carry no currency. */
export type PlainDimension =
  | BaseDimension
  | Exclude<SimpleQuotient, `money${string}`>
  | (typeof rateQuotients)[number];

/**
 * All products, `A * B = C`, in either order; each is also two divisions, `C / A = B` and `C / B = A`.
 * Besides these, `"1"` times anything is that thing, `a/b` times `b` is `a` for every simple quotient,
 * and like divided by like is a fraction: `mass/mass` or `volume/volume` where mass or volume stands on
 * top, `length/length` for two lengths, and `"1"` for the rest.
 * Money carries its currency through: `money/mass` stands for `money:USD/mass`.
 */
export const productTable = [
  // geometry and motion
  "length * length = area",
  "length/time * length = area/time",
  "length/length * length = length",
  // a rate with a third factor: time comes last
  "mass/area/time * time = mass/area",
  "mass/area/time * area = mass/time",
  "volume/area/time * time = volume/area",
  "volume/area/time * area = volume/time",
  "mass/volume/time * time = mass/volume",
  // fractions
  "mass/mass * mass = mass",
  "mass/mass * mass/area = mass/area",
  "mass/mass * mass/volume = mass/volume",
  "mass/mass * mass/time = mass/time",
  "mass/mass * mass/length = mass/length",
  "mass/mass * mass/count = mass/count",
  "mass/mass * mass/area/time = mass/area/time",
  "mass/mass * money/mass = money/mass",
  "mass/mass * mass/mass = mass/mass",
  "mass/mass * area/mass = area/mass",
  "volume/volume * volume = volume",
  "volume/volume * volume/area = volume/area",
  "volume/volume * volume/time = volume/time",
  "volume/volume * volume/mass = volume/mass",
  "volume/volume * volume/volume = volume/volume",
  "volume/volume * mass/volume = mass/volume",
  // density and concentration
  "mass/volume * volume/area = mass/area",
  "mass/volume * volume/time = mass/time",
  "mass/volume * volume/length = mass/length",
  "mass/volume * volume/count = mass/count",
  "mass/volume * volume/mass = mass/mass",
  "mass/volume * volume/area/time = mass/area/time",
  "mass/volume * money/mass = money/volume",
  "mass/volume * area/mass = area/volume",
  "volume/mass * mass/area = volume/area",
  "volume/mass * mass/time = volume/time",
  "volume/mass * money/volume = money/mass",
  "volume/mass * mass/length = volume/length",
  // working rate and speed
  "area/time * mass/area = mass/time",
  "area/time * volume/area = volume/time",
  "area/time * time/area = 1",
  "length/time * mass/length = mass/time",
  "length/time * volume/length = volume/time",
  "length/time * count/length = count/time",
  "length * mass/area = mass/length",
  "length * volume/area = volume/length",
  "length/count * count/length = 1",
  "temperature difference * time = degree-days",
  "irradiance * time = radiant exposure",
  // counts
  "mass/count * count/area = mass/area",
  "volume/count * count/area = volume/area",
  "mass/count * count/mass = 1",
  "volume/count * count/volume = 1",
  "mass/count * count/time = mass/time",
  "volume/count * count/time = volume/time",
  "count/mass * mass/area = count/area",
  "count/volume * volume/area = count/area",
  "area/count * count/area = 1",
  "area/count * mass/area = mass/count",
  "area/count * volume/area = volume/count",
  // reciprocals
  "area/mass * mass/area = 1",
  "area/volume * volume/area = 1",
  // money
  "money/mass * mass/area = money/area",
  "money/volume * volume/area = money/area",
  "money/count * count/area = money/area",
  "money/mass * mass/count = money/count",
  "money/volume * volume/count = money/count",
  "money/mass * mass/time = money/time",
  "money/volume * volume/time = money/time",
  "money/area * area/time = money/time",
] as const;

/**
 * Products that are not read backwards: a volume per area stays a volume per area, and only a named
 * function (`depthOf`) makes a depth of it.
 */
export const oneWayProducts = ["length * area = volume"] as const;

type TableRow = (typeof productTable)[number];
type Products = {
  [T in TableRow | (typeof oneWayProducts)[number] as T extends `${infer A} * ${infer B} = ${string}`
    ? `${A} * ${B}` | `${B} * ${A}`
    : never]: T extends `${string} = ${infer C}` ? C : never;
} & {
  [T in SimpleQuotient as T extends `${infer A}/${infer B}`
    ? `${A}/${B} * ${B}` | `${B} * ${A}/${B}`
    : never]: T extends `${infer A}/${string}` ? A : never;
};
type Quotients = {
  [T in TableRow as T extends `${infer A} * ${string} = ${infer C}`
    ? A extends C
      ? never
      : `${C} / ${A}`
    : never]: T extends `${string} * ${infer B} = ${string}` ? B : never;
} & {
  [T in TableRow as T extends `${string} * ${infer B} = ${infer C}`
    ? B extends C
      ? never
      : `${C} / ${B}`
    : never]: T extends `${infer A} * ${string}` ? A : never;
} & {
  [T in SimpleQuotient as T extends `${infer A}/${infer B}` ? `${A} / ${B}` : never]: T;
} & {
  [T in SimpleQuotient as T extends `${infer A}/${string}`
    ? `${A} / ${T}`
    : never]: T extends `${string}/${infer B}` ? B : never;
};

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

type PlainTimes<A extends string, B extends string> = `${A} * ${B}` extends keyof Products
  ? Products[`${A} * ${B}`]
  : never;
type PlainPer<A extends string, B extends string> = A extends B
  ? Like<A>
  : `${A} / ${B}` extends keyof Quotients
    ? Quotients[`${A} / ${B}`]
    : never;

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
