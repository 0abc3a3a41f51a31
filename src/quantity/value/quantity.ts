import { fail, isQuantityLike, shown } from "../errors/errors.js";
import {
  type CheckedSubstance,
  currentSubstance,
  type NeutralSubstance,
  type PerSubstance,
  type SubstanceHint,
  substancePer,
  substanceTimes,
  type TimesSubstance,
} from "../substance/substances.js";
import { planFor } from "../unit/arithmetic.js";
import { dimensionDue, dimensionNoun } from "../unit/dimension-words.js";
import type { PerDimension, TimesDimension } from "../unit/dimensions.js";
import type {
  AnyUnitHint,
  CheckedUnit,
  CheckedUnitOf,
  DimensionOf,
  Unit,
  UnitHint,
} from "../unit/unit-text.js";
import { knownUnit } from "../unit/units.js";
import { converted } from "./converted.js";
import { alone, expectedSubstance, finite, knownSubstance, notZero, parts, quantityDue } from "./expected.js";
import type { Addend, PerKind, Plain } from "./kinds.js";

// What is neutral goes with every substance, also with one that a generic function does not know yet.
type TimesOperand<D extends string, S extends string, D2 extends string, S2 extends string> = [
  TimesDimension<D, D2>,
] extends [never]
  ? `no product of ${D} and ${D2}`
  : S2 extends NeutralSubstance
    ? Quantity<D2, S2>
    : [TimesSubstance<S, S2>] extends [never]
      ? `cannot multiply ${S} by ${S2}`
      : Quantity<D2, S2>;

type PerOperand<D extends string, S extends string, D2 extends string, S2 extends string> = [
  PerDimension<D, D2>,
] extends [never]
  ? `no quotient of ${D} and ${D2}`
  : S2 extends NeutralSubstance
    ? Quantity<D2, S2>
    : [PerSubstance<S, S2>] extends [never]
      ? `cannot divide ${S} by ${S2}`
      : Quantity<D2, S2>;

/**
 * An amount of something, in a unit: `value` in `unit`, `of` a substance. Immutable by type; make one
 * with {@link quantity}.
 *
 * `D` is the dimension, such as `"mass/area"`; `S` the substance, such as `"N"` or `"product:feed-a"`.
 * Both are checked by the compiler and again at run time.
 */
export class Quantity<in out D extends string, in out S extends string> {
  /** The number as it was given, in `unit`. */
  readonly value: number;
  /** The unit as it was given. */
  readonly unit: string;
  /** What it is a quantity of; `"none"` where there is no stuff, as for an area. */
  readonly of: S;
  /** The dimension, by name. */
  readonly dimension: D;
  /** Never present; it makes the compiler tell `Quantity<D, "N">` from `Quantity<D, "N" | "P2O5">`. */
  declare readonly "~kind"?: (kind: [D, S]) => [D, S];

  /** Use {@link quantity}: the constructor takes any texts for unit, substance and dimension. */
  constructor(value: number, unit: string, of: S, dimension: D) {
    if (typeof unit !== "string" || typeof of !== "string" || typeof dimension !== "string")
      fail("type", "quantity", [unit, of, dimension], "unit, substance and dimension as texts");
    this.value = finite(value, "value") + 0; // -0 becomes 0
    this.unit = unit;
    this.of = of;
    this.dimension = dimension;
  }

  /**
   * The number of `unit`s, exact where the units are whole multiples of one another.
   *
   * @throws RatewrightError `unit/unknown`, `unit/mismatch`
   */
  in<U extends UnitHint<D> | (string & {})>(unit: CheckedUnitOf<U, D> | Unit<D>): number {
    if ((unit as string) === this.unit) return this.value;
    return converted(this.value, this.unit, unit as string);
  }

  /** The sum, in the unit of this one. To a temperature a temperature difference is added. */
  plus(other: Quantity<Addend<D>, S>): Quantity<D, S> {
    return shifted(this, other, 1) as Quantity<D, S>;
  }

  /** The difference, in the unit of this one. From a temperature a temperature difference is taken. */
  minus(other: Quantity<Addend<D>, S>): Quantity<D, S> {
    return shifted(this, other, -1) as Quantity<D, S>;
  }

  /**
   * The product with a number, or with another quantity where the table of dimensions and the algebra
   * of substances have one: a rate times an area is an amount.
   */
  times(factor: D extends "temperature" ? "a temperature has no multiple" : number): Quantity<D, S>;
  times<D2 extends string, S2 extends string>(
    factor: TimesOperand<D, S, D2, S2>,
  ): Quantity<TimesDimension<D, D2>, TimesSubstance<S, S2>>;
  times(factor: unknown): unknown {
    return typeof factor === "number" ? scaled(this, factor, 1) : combined(this, factor, 1);
  }

  /**
   * The quotient by another quantity: an amount per an area is a rate. The same stuff divided by itself is a pure
   * number, in every dimension; different stuff by weight or by volume is a share of one in the other, as `N` per
   * `product` is `N/product`.
   */
  per<D2 extends string, S2 extends string>(
    divisor: PerOperand<D, S, D2, S2>,
  ): Quantity<PerKind<D, S, D2, S2>, PerSubstance<S, S2>> {
    return combined(this, divisor, -1) as Quantity<PerKind<D, S, D2, S2>, PerSubstance<S, S2>>;
  }

  /** The quotient by a number. */
  dividedBy(divisor: D extends "temperature" ? "a temperature has no multiple" : number): Quantity<D, S> {
    return scaled(this, 1, divisor as number) as Quantity<D, S>;
  }

  /** -1, 0 or 1 as this is less than, equal to or more than the other, to the last digit. */
  compare(other: Quantity<D, S>): -1 | 0 | 1 {
    const there = alike(other, this.dimension, this.of, "other");
    return Math.sign(this.value - there.in(this.unit as never)) as -1 | 0 | 1;
  }

  /** `{ value, unit, of }`, which `quantityFrom` reads back. */
  toJSON(): { readonly value: number; readonly unit: string; readonly of: S } {
    return { value: this.value, unit: this.unit, of: this.of };
  }

  /** The quantity as text, for a log line; `format` writes for people. */
  toString(): string {
    return shown(this);
  }

  /** Always throws: `a + b` and `a < b` on quantities would forget their units. */
  valueOf(): never {
    return fail(
      "type",
      "quantity",
      this,
      "no + or < on quantities, but plus, minus, compare, in(unit) or format",
    );
  }
}

type Any = Quantity<string, string>;

const withValue = (value: number, { unit, of, dimension }: Plain): unknown =>
  new Quantity(value, unit, of, dimension);

const shifted = (one: Plain, input: unknown, sign: 1 | -1): unknown => {
  const degrees = one.dimension === "temperature";
  // A kelvin and a degree Celsius are the same difference.
  const unit = degrees ? `${one.unit} diff`.replace("K", "°C") : one.unit;
  const other = alike(input, degrees ? "temperature difference" : one.dimension, one.of, "other");
  return withValue(one.value + sign * other.in(unit as never), one);
};

const scaled = (one: Plain, factor: number, divisor: number): unknown => {
  // 20 °C is not twice 10 °C: a temperature has no multiple.
  if (one.dimension === "temperature") fail("type", "this", one, "what temperatureDifference(a, b) gives");
  if (isQuantityLike(divisor)) fail("type", "number", divisor, "a number; per(...) divides by a quantity");
  notZero(finite(divisor, "number"), "number", 0);
  return withValue((one.value * finite(factor, "number")) / divisor, one);
};

/** The product (sign 1) or the quotient (sign -1) of two quantities; `path` is the name of the first where it is too large. */
export const combined = (one: Plain, input: unknown, sign: 1 | -1, path = "value"): unknown => {
  const other = operand(input, "other");
  const divide = sign === -1;
  const by = `that can ${divide ? "divide" : "multiply"}`;
  const of = (divide ? substancePer : substanceTimes)(one.of, other.of);
  const plan =
    planFor(knownUnit(one.unit, "this"), knownUnit(other.unit, "other"), sign, of === "none") ??
    fail("unit/mismatch", "other", other, `a quantity ${by} ${dimensionNoun(one.dimension)}`);
  if (of === undefined) return fail("substance/mismatch", "other", other, `a substance ${by} ${one.of}`);
  if (divide) notZero(other.value, "other", other);
  const value = ((divide ? one.value / other.value : one.value * other.value) * plan.top) / plan.bottom;
  if (!Number.isFinite(value))
    fail("not-finite", path, one, `amounts whose ${divide ? "quotient" : "product"} is a finite number`);
  return new Quantity(value, plan.unit, of, plan.dimension);
};

/** Takes a quantity of this or another copy of the package whose number was not written over, or what JSON left of one. */
export const operand = (input: unknown, path: string, wanted?: unknown): Any => {
  if (input instanceof Quantity && Number.isFinite(input.value)) return input as Any;
  return isQuantityLike(input)
    ? quantityOf(alone(input, parts, path).value, input.unit, input.of ?? "none", path)
    : quantityDue(path, input, wanted);
};

/** A quantity of this very kind. */
export const alike = (input: unknown, dimension: string, of: string | undefined, path: string): Any => {
  const q = operand(input, path, dimension);
  if (q.dimension !== dimension) dimensionDue("unit/mismatch", path, q, dimension);
  return of === undefined || q.of === of ? q : fail("substance/mismatch", path, q, expectedSubstance(q, of));
};

/**
 * Makes a quantity out of a number, a unit and a substance that are unchecked; throws with the path where one is not
 * right. What a caller knows of its kind is believed: `quantityOf<"mass/area", "N">(...)`.
 * @throws RatewrightError `type`, `not-finite`, `unit/unknown`, `substance/unknown`
 * @example
 * ```ts
 * import { quantityOf } from "ratewright";
 * quantityOf(3, "lb/acre", "N", "rate").dimension; // => "mass/area"
 * ```
 */
export const quantityOf = <D extends string = string, S extends string = string>(
  value: number,
  unit: string,
  of: string,
  path = "quantity",
): Quantity<NoInfer<D>, NoInfer<S>> => {
  finite(value, path);
  const { dimension } = knownUnit(unit, path);
  const now = knownSubstance(typeof of === "string" ? currentSubstance(of) : of, path);
  return new Quantity(value, unit, now as S, dimension as D);
};

/**
 * A quantity: a number in a unit, of a substance.
 * @param value - the number, as the form shows it
 * @param unit - any unit, or a quotient of two: `"lb"`, `"fl oz/1000 ft2"`, `"kg/ha"`, `"mm/d"`
 * `of`: what it is a quantity of; left out for areas, times and lengths
 * @throws RatewrightError `not-finite`, `unit/unknown`, `substance/unknown`
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * const rate = quantity(3, "lb/1000 ft2", "product");
 * rate.in("lb/acre"); // => 130.68
 * rate.times(quantity(12400, "ft2")).in("lb"); // => 37.2
 * quantity(1, "acre").in("ft2"); // => 43560
 * quantity(50, "°F").in("°C"); // => 10
 * ```
 */
export function quantity<const U extends AnyUnitHint | (string & {})>(
  value: number,
  unit: CheckedUnit<U>,
): Quantity<DimensionOf<U>, "none">;
export function quantity<const U extends AnyUnitHint | (string & {}), const S extends SubstanceHint>(
  value: number,
  unit: CheckedUnit<U>,
  of: CheckedSubstance<S>,
): Quantity<DimensionOf<U>, S>;
export function quantity(value: number, unit: string, of = "none"): unknown {
  const { dimension } = knownUnit(unit, "unit");
  return new Quantity(value, unit, of === "none" ? of : knownSubstance(of, "of"), dimension);
}
