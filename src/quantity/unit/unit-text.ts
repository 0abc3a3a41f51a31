import { frozen } from "../errors/frozen.js";
import type { BaseUnit, BaseUnitDimension, BaseUnitOf } from "./base-units.js";
import type { Dimension } from "./dimensions.js";

/** A unit text of which only the dimension is known to the compiler: what `isUnit` and `unitsOf` give. */
export type Unit<D extends string> = string & { readonly "~dimension": D };

type PartDimension<U extends string> = U extends BaseUnit
  ? BaseUnitDimension<U>
  : U extends `money:${string}`
    ? U
    : never;

/** The dimension that a unit text has, or `never` where it is not a unit. */
export type DimensionOf<U extends string> = U extends BaseUnit
  ? BaseUnitDimension<U>
  : U extends { readonly "~dimension": infer D }
    ? D
    : string extends U
      ? never
      : Extract<
          U extends `${infer N}/${infer B}`
            ? B extends BaseUnit
              ? `${PartDimension<N>}/${BaseUnitDimension<B>}`
              : B extends `${infer M}/${infer T}`
                ? `${PartDimension<N>}/${PartDimension<M>}/${PartDimension<T>}`
                : never
            : U extends `money:${string}`
              ? U
              : never,
          Dimension
        >;

type NotUnit<U extends string> = [U] extends [infer T extends string] ? `"${T}" is not a unit` : never;
type OtherUnit<U extends string, D extends string> = [U, DimensionOf<U>, D] extends [
  infer T extends string,
  infer E extends string,
  infer F extends string,
]
  ? `"${T}" is a unit of ${E}, not of ${F}`
  : never;

/** The text itself where it is a unit, and a sentence where it is not. */
export type CheckedUnit<U extends string> = [DimensionOf<U>] extends [never]
  ? string extends U
    ? "a plain string is no unit: test it with isUnit, or read it with readQuantity"
    : NotUnit<U>
  : U;

/** The text itself where it is a unit of dimension `D`, and a sentence where it is not. */
export type CheckedUnitOf<U extends string, D extends string> = [DimensionOf<U>] extends [never]
  ? CheckedUnit<U> & string
  : string extends U
    ? // Nothing is known of the text: before it is typed, or where it is a Unit, which its caller takes beside this.
      UnitHint<D>
    : [DimensionOf<U>] extends [D]
      ? U
      : OtherUnit<U, D>;

/** What an editor offers for a dimension: its base units and the trade's common quotients. */
export type UnitHint<D extends string> =
  | BaseUnitOf<D>
  | (D extends keyof typeof commonQuotients ? (typeof commonQuotients)[D][number] : never);

/** What an editor offers where any unit may stand. */
export type AnyUnitHint = BaseUnit | (typeof commonQuotients)[keyof typeof commonQuotients][number];

/** The trade's common quotients, by dimension: offered first, while every other quotient is a unit too. */
export const quotientsInUse = {
  "mass/area": [
    "lb/1000 ft2",
    "oz/1000 ft2",
    "lb/acre",
    "oz/acre",
    "US ton/acre",
    "g/m2",
    "kg/ha",
    "g/ha",
    "t/ha",
  ],
  "volume/area": [
    "gal/1000 ft2",
    "fl oz/1000 ft2",
    "gal/acre",
    "qt/acre",
    "pt/acre",
    "fl oz/acre",
    "L/100 m2",
    "mL/100 m2",
    "L/ha",
    "mL/ha",
    "L/m2",
    "yd3/1000 ft2",
  ],
  "count/area": ["count/ft2", "count/in2", "count/m2", "count/1000 ft2", "count/acre", "count/ha"],
  "mass/mass": ["lb/lb", "lb/US ton", "g/kg", "mg/kg", "kg/t"],
  "volume/volume": ["fl oz/gal", "gal/gal", "mL/L", "L/L"],
  "mass/volume": ["lb/gal", "oz/gal", "kg/L", "g/L", "mg/L", "g/mL", "lb/ft3", "kg/m3", "grain/gal"],
  "volume/mass": ["gal/lb", "fl oz/lb", "L/kg", "mL/g"],
  "mass/length": ["lb/ft", "g/m", "kg/km"],
  "volume/length": ["gal/ft", "fl oz/ft", "L/m", "mL/m"],
  "length/length": ["ft/ft", "in/ft", "m/m"],
  "length/count": ["ft/count", "m/count"],
  "area/count": ["ft2/count", "m2/count"],
  "count/mass": ["count/lb", "count/g", "count/kg"],
  "mass/count": ["lb/count", "oz/count", "g/count", "kg/count"],
  "count/volume": ["count/bu", "count/L"],
  "volume/count": ["gal/count", "fl oz/count", "L/count", "mL/count"],
  "mass/time": ["lb/min", "g/min", "kg/min", "kg/h"],
  "volume/time": ["gal/min", "fl oz/min", "gal/h", "L/min", "mL/min", "L/h", "m3/h"],
  "area/time": ["acre/h", "1000 ft2/min", "ha/h", "m2/min"],
  "length/time": ["mi/h", "km/h", "nmi/h", "ft/min", "ft/s", "m/s", "in/h", "mm/h", "mm/d", "in/week"],
  "area/mass": ["ft2/lb", "m2/kg"],
  "area/volume": ["ft2/gal", "acre/gal", "m2/L"],
  "time/area": ["min/1000 ft2", "h/acre", "h/ha"],
  "1/time": ["1/d", "1/h"],
  "mass/area/time": ["lb/1000 ft2/week", "lb/1000 ft2/d", "g/m2/d", "kg/ha/d"],
  "volume/area/time": ["gal/acre/h", "L/m2/h"],
} as const;

/** The trade's common quotients, by dimension: offered first, while every other quotient is a unit too. */
export const commonQuotients: typeof quotientsInUse = /* @__PURE__ */ frozen(quotientsInUse);
