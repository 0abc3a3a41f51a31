import { fail } from "../errors/errors.js";
import { hasOwn } from "../errors/has-own.js";
import { type CheckedSubstance, isSubstance, substancePer, substanceTimes } from "../substance/substances.js";
import { dimensionDue } from "../unit/dimension-words.js";
import { unitSystem } from "../unit/unit-names.js";
import { converted } from "./converted.js";
import { expectQuantity } from "./expect-quantity.js";
import { operand, Quantity } from "./quantity.js";

const made = <D extends string, S extends string>(
  value: number,
  unit: string,
  of: S,
  dimension: D,
): Quantity<D, S> => new Quantity(value, unit, of, dimension);

/** What a depth, alone or by time, is as a volume per area, and the other way round. */
type DepthOf<D extends string> = D extends "volume/area/time" ? "length/time" : "length";
type VolumePerAreaOf<D extends string> = D extends "length/time" ? "volume/area/time" : "volume/area";

/** The unit of time of a rate with its slash: `/h` of `gal/acre/h` and of `in/h`; nothing where there is none. */
const perTime = (unit: string, dimension: string): string =>
  dimension.endsWith("/time") ? unit.slice(unit.lastIndexOf("/")) : "";

/**
 * The depth of a volume spread over an area, `d = V / A`; in inches for US customary units, else in mm. A volume per area
 * and time gives a depth by time: gal/1000 ft2/h as in/h. The substance is dropped: a length is of nothing.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * @example
 * ```ts
 * import { depthOf, quantity } from "ratewright";
 * depthOf(quantity(25.4, "L/m2", "water")).in("mm"); // => 25.4
 * Number(depthOf(quantity(27154, "gal/acre")).in("in").toFixed(4)); // => 1
 * Number(depthOf(quantity(623.4, "gal/1000 ft2/h", "water")).in("in/h").toFixed(3)); // => 1
 * ```
 */
export const depthOf = <D extends "volume/area" | "volume/area/time", S extends string>(
  volumePerArea: Quantity<D, S>,
): Quantity<DepthOf<D>, "none"> => {
  const q = operand(volumePerArea, "volumePerArea");
  if (q.dimension !== "volume/area" && q.dimension !== "volume/area/time") {
    return dimensionDue("unit/mismatch", "volumePerArea", q, ["volume/area", "volume/area/time"]);
  }
  const time = perTime(q.unit, q.dimension);
  const dimension = (time === "" ? "length" : "length/time") as DepthOf<D>;
  // L/m2 is mm and ft3/ft2 is ft, so nothing is rounded on the way
  return unitSystem(q.unit) === "US"
    ? made(converted(q.value, q.unit, `ft3/ft2${time}`) * 12, `in${time}`, "none", dimension)
    : made(converted(q.value, q.unit, `L/m2${time}`), `mm${time}`, "none", dimension);
};

/**
 * The volume per area of a depth, `V / A = d`; in gal/1000 ft2 for US customary units, else in L/m2. A depth by time gives
 * a volume per area and time: in/h as gal/1000 ft2/h.
 *
 * `of`: what the depth is a depth of; `"none"` where left out
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `substance/unknown`
 *
 * @example
 * ```ts
 * import { quantity, volumePerAreaOf } from "ratewright";
 * volumePerAreaOf(quantity(6, "mm"), "water").in("L/m2"); // => 6
 * Number(volumePerAreaOf(quantity(1, "in"), "water").in("gal/1000 ft2").toFixed(1)); // => 623.4
 * Number(volumePerAreaOf(quantity(0.5, "in/h"), "water").in("gal/1000 ft2/h").toFixed(1)); // => 311.7
 * ```
 */
export function volumePerAreaOf<D extends "length" | "length/time">(
  depth: Quantity<D, "none">,
): Quantity<VolumePerAreaOf<D>, "none">;
export function volumePerAreaOf<D extends "length" | "length/time", const S extends string>(
  depth: Quantity<D, "none">,
  of: CheckedSubstance<S>,
): Quantity<VolumePerAreaOf<D>, S>;
export function volumePerAreaOf(depth: unknown, of: unknown = "none"): unknown {
  const q = operand(depth, "depth");
  if (q.dimension !== "length" && q.dimension !== "length/time") {
    return dimensionDue("unit/mismatch", "depth", q, ["length", "length/time"]);
  }
  if (!isSubstance(of)) return fail("substance/unknown", "of", of, "a substance, such as water");
  const time = perTime(q.unit, q.dimension);
  const dimension = time === "" ? "volume/area" : "volume/area/time";
  if (unitSystem(q.unit) !== "US") {
    return made(converted(q.value, q.unit, `mm${time}`), `L/m2${time}`, of, dimension);
  }
  const feet = converted(q.value, q.unit, `ft${time}`);
  return made(converted(feet, "ft3/ft2", "gal/1000 ft2"), `gal/1000 ft2${time}`, of, dimension);
}

/** The dimensions of fractions, in which like stands over like. */
export type FractionDimension = "mass/mass" | "volume/volume" | "length/length";

/**
 * A fraction as a bare share: 24 % w/w as 24 %. Weight and volume are forgotten, the substance is kept.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * @example
 * ```ts
 * import { quantity, shareOf } from "ratewright";
 * shareOf(quantity(24, "% w/w", "N/product")).in("%"); // => 24
 * shareOf(quantity(1, "in/ft")).in("1"); // => 0.08333333333333333
 * ```
 */
export const shareOf = <D extends FractionDimension, S extends string>(
  fraction: Quantity<D, S>,
): Quantity<"1", S> => {
  const q = operand(fraction, "fraction");
  const like = { "mass/mass": "kg/kg", "volume/volume": "L/L", "length/length": "m/m" };
  if (!hasOwn(like, q.dimension)) {
    return dimensionDue("unit/mismatch", "fraction", q, Object.keys(like));
  }
  if (q.unit.startsWith("% ")) return made(q.value, "%", q.of as S, "1");
  return made(converted(q.value, q.unit, like[q.dimension as FractionDimension]), "1", q.of as S, "1");
};

/**
 * A bare share as a fraction by weight: 24 % as 24 % w/w. The inverse of {@link shareOf}.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * @example
 * ```ts
 * import { fractionByWeight, quantity } from "ratewright";
 * fractionByWeight(quantity(24, "%", "N/product")).in("% w/w"); // => 24
 * ```
 */
export const fractionByWeight = <S extends string>(share: Quantity<"1", S>): Quantity<"mass/mass", S> => {
  const q = expectQuantity(share, { dimension: "1" }, "share");
  return made(converted(q.value, q.unit, "%"), "% w/w", q.of as S, "mass/mass");
};

/**
 * A bare share as a fraction by volume: 0.25 % as 0.25 % v/v. The inverse of {@link shareOf}.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * @example
 * ```ts
 * import { fractionByVolume, quantity } from "ratewright";
 * fractionByVolume(quantity(0.25, "%", "product/spray")).in("% v/v"); // => 0.25
 * ```
 */
export const fractionByVolume = <S extends string>(share: Quantity<"1", S>): Quantity<"volume/volume", S> => {
  const q = expectQuantity(share, { dimension: "1" }, "share");
  return made(converted(q.value, q.unit, "%"), "% v/v", q.of as S, "volume/volume");
};

type Top<S extends string> = S extends `${infer T}/${string}` ? T : "none";
type Bottom<S extends string> = S extends `${string}/${infer B}` ? B : S;

/**
 * Weight per volume of a fraction by weight, through the density of the whole:
 * `c = w * rho`, with `w` the fraction (mass/mass) of `T` in `B` and `rho` the density (mass/volume) of `B`.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`
 *
 * @example
 * ```ts
 * import { quantity, weightPerVolumeOf } from "ratewright";
 * const nitrogen = quantity(28, "% w/w", "N/product");
 * weightPerVolumeOf(nitrogen, quantity(10, "lb/gal", "product")).toString(); // => "2.8 lb/gal of N"
 * ```
 */
export const weightPerVolumeOf = <S extends string>(
  fraction: Quantity<"mass/mass", S>,
  density: Quantity<"mass/volume", Bottom<NoInfer<S>>>,
): Quantity<"mass/volume", Top<S>> => {
  const w = expectQuantity(fraction, { dimension: "mass/mass", bound: "non-negative" }, "fraction");
  const rho = expectQuantity(density, { dimension: "mass/volume", bound: "positive" }, "density");
  // a fraction of nothing named has no weight of the whole
  const of =
    (w.of === "none" && rho.of !== "none" ? undefined : substanceTimes(w.of, rho.of)) ??
    fail("substance/mismatch", "density", rho, `a density of what ${w.of} is a fraction of`);
  const value = (converted(w.value, w.unit, "% w/w") * rho.value) / 100;
  return made(value, rho.unit, of as Top<S>, "mass/volume");
};

/**
 * The fraction by weight of a weight per volume, through the density of the whole: `w = c / rho`, with `c`
 * the weight of `T` per volume and `rho` the density (both mass/volume) of `B`.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`
 *
 * @example
 * ```ts
 * import { quantity, weightFractionOf } from "ratewright";
 * const nitrogen = quantity(2.8, "lb/gal", "N");
 * weightFractionOf(nitrogen, quantity(10, "lb/gal", "product")).toString(); // => "28 % w/w of N/product"
 * ```
 */
export const weightFractionOf = <T extends string, B extends string>(
  weightPerVolume: Quantity<"mass/volume", T>,
  density: Quantity<"mass/volume", B>,
): Quantity<"mass/mass", `${T}/${B}`> => {
  const c = expectQuantity(
    weightPerVolume,
    { dimension: "mass/volume", bound: "non-negative" },
    "weightPerVolume",
  );
  const rho = expectQuantity(density, { dimension: "mass/volume", bound: "positive" }, "density");
  const of = substancePer(c.of, rho.of);
  if (of !== `${c.of}/${rho.of}`) {
    return fail("substance/mismatch", "density", rho, `the density of what ${c.of} is dissolved in`);
  }
  const value = (converted(c.value, c.unit, rho.unit) * 100) / rho.value;
  return made(value, "% w/w", of as `${T}/${B}`, "mass/mass");
};

/**
 * How much warmer `warmer` is than `cooler`; in the degrees of the first, negative where it is colder.
 * Two temperatures have no sum, and their difference is not a temperature.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * @example
 * ```ts
 * import { quantity, temperatureDifference } from "ratewright";
 * temperatureDifference(quantity(86, "°F"), quantity(50, "°F")).in("°C diff"); // => 20
 * ```
 */
export const temperatureDifference = <S extends string>(
  warmer: Quantity<"temperature", S>,
  cooler: Quantity<"temperature", S>,
): Quantity<"temperature difference", S> => {
  const a = expectQuantity(warmer, { dimension: "temperature" }, "warmer");
  const b = expectQuantity(cooler, { dimension: "temperature", of: a.of }, "cooler");
  const unit = a.unit === "°F" ? "°F diff" : "°C diff";
  return made(a.value - converted(b.value, b.unit, a.unit), unit, a.of as S, "temperature difference");
};
