import { fail } from "../errors/errors.js";
import { expectFields } from "../errors/expect-fields.js";
import type {
  AnyUnitHint,
  CheckedUnit,
  CheckedUnitOf,
  DimensionOf,
  Unit,
  UnitHint,
} from "../unit/unit-text.js";
import { knownUnit, ratioOf } from "../unit/units.js";

/**
 * A column of numbers in another unit, each as `quantity(number, from).in(to)` gives it: `(x - a) * top / bottom + b`, where
 * a and b are the zero points of temperature scales and 0 for all else. For a table or an imported file; the units are
 * names that `isUnit` takes. The input is not changed.
 *
 * @throws RatewrightError `not-finite` with the index of the number; `unit/unknown`, `unit/mismatch`, `type`, `missing`
 *
 * @example
 * ```ts
 * import { convertedNumbers } from "ratewright";
 * [...convertedNumbers({ numbers: [1, 2, 3], from: "lb/1000 ft2", to: "lb/acre" })]; // => [43.56, 87.12, 130.68]
 * convertedNumbers({ numbers: [50], from: "°F", to: "°C" })[0]; // => 10
 * convertedNumbers({ numbers: [1, Number.NaN], from: "lb", to: "kg" }); // => throws not-finite
 * ```
 */
export const convertedNumbers = <
  const U extends AnyUnitHint | (string & {}),
  const V extends UnitHint<DimensionOf<U>> | (string & {}),
>(input: {
  readonly numbers: ArrayLike<number>;
  /** The unit that the numbers are in. */
  readonly from: CheckedUnit<U>;
  /** The unit that is wanted, of the same dimension. */
  readonly to: CheckedUnitOf<V, DimensionOf<U>> | Unit<DimensionOf<U>>;
}): Float64Array => {
  const { numbers, from, to } = expectFields(input, ["numbers", "from", "to"]);
  if (!Array.isArray(numbers) && !(ArrayBuffer.isView(numbers) && "length" in numbers)) {
    return fail("type", "numbers", numbers, "a list or a typed array of numbers");
  }
  if (typeof from !== "string") return fail("type", "from", from, "the name of a unit, such as lb/acre");
  if (typeof to !== "string") return fail("type", "to", to, "the name of a unit, such as kg/ha");
  knownUnit(from, "from");
  const ratio = ratioOf(from, to, "to");
  const list = numbers as ArrayLike<unknown>;
  const out = new Float64Array(list.length);
  for (let i = 0; i < out.length; i++) {
    const number = list[i];
    const value =
      typeof number === "number" ? ((number - ratio.from) * ratio.top) / ratio.bottom + ratio.to : Number.NaN;
    if (!Number.isFinite(value)) return fail("not-finite", `numbers[${i}]`, number, "a finite number");
    out[i] = value;
  }
  return out;
};
