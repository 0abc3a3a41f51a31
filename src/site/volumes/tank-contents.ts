import { checks, outOfRange, quantity } from "../../quantity/index.js";
import { type Length, lengthOf, type UnitSet } from "../lengths.js";
import { type Volume, volumeOf } from "../volumes.js";
import { type ReadTank, readTank, type Tank } from "./tank-shapes.js";

/** The volume of a tank in the unit of the trade: gal for US customary measures, L for metric ones. */
export const tankVolumeIn = (value: number, units: UnitSet): Volume => {
  const volume = quantity(value, units.volume);
  return /m$/.test(units.length) ? quantity(volume.in("L"), "L") : quantity(volume.in("gal"), "gal");
};

/**
 * What a tank holds when it is full.
 *
 * - `"box"`: `length * width * height`
 * - `"upright cylinder"`: `pi / 4 * diameter^2 * height`
 * - `"lying cylinder"`: `pi / 4 * diameter^2 * length`
 * - `"lying ellipse"`: `pi / 4 * width * height * length`
 * - `"cone bottom"`: `pi / 12 * coneHeight * (diameter^2 + diameter * outlet + outlet^2) + pi / 4 * diameter^2 * height`
 *
 * All measured inside, above zero; ends flat. Ends that bulge hold more. In gal for US customary measures, in L for
 * metric ones.
 *
 * @throws RatewrightError with every measure that is not right: `missing`, `type`, `unit/mismatch`, `not-finite`,
 * `range`
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { tankCapacity } from "ratewright/site";
 * const nurse = { shape: "lying cylinder", diameter: quantity(48, "in"), length: quantity(65, "in") } as const;
 * Math.round(tankCapacity(nurse).in("gal")); // => 509
 * ```
 */
export const tankCapacity = (tank: Tank): Volume => {
  const { units, height, volumeTo } = readTank(tank);
  return tankVolumeIn(volumeTo(height), units);
};

/**
 * What is in a tank that is filled to a depth: a dip stick, read.
 *
 * - `"lying cylinder"`: `V = length * (r^2 acos((r - h) / r) - (r - h) sqrt(2 r h - h^2))`, with `r` half the
 *   diameter and `h` the depth
 * - `"lying ellipse"`: the same of a circle, stretched: `V = width / height` times that of a cylinder of the height
 * - `"cone bottom"`: the cone up to the depth, then the straight side
 *
 * A lying tank does not fill evenly: at a tenth of its depth it holds a twentieth (5.2 %), at a quarter a fifth
 * (19.6 %). Depth from 0 to the inside height, at the deepest place; the tank stands level.
 *
 * @throws RatewrightError `range` for a depth of more than the height; with every measure that is not right:
 * `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { tankContents } from "ratewright/site";
 * const nurse = { shape: "lying cylinder", diameter: quantity(48, "in"), length: quantity(65, "in") } as const;
 * Math.round(tankContents(nurse, quantity(12, "in")).in("gal")); // => 100
 * Math.round(tankContents(nurse, quantity(24, "in")).in("gal")); // => 255
 * ```
 */
export const tankContents = (tank: Tank, depth: Length): Volume => {
  const problems = checks();
  const read = problems.run(() => readTank(tank));
  const dip = problems.run(() => lengthOf(depth, "depth", "non-negative"));
  problems.done();
  const { units, volumeTo, height } = read as ReadTank;
  return tankVolumeIn(volumeTo(depthIn(dip as Length, height, units)), units);
};

/** A depth that the tank has, as a number; a last digit more than the height is the height. */
const depthIn = (depth: Length, height: number, units: UnitSet): number => {
  const value = depth.in(units.length);
  return value <= height * (1 + 1e-12)
    ? Math.min(value, height)
    : outOfRange("depth", depth, { max: height, unit: units.length }, "{}, the height inside");
};

/**
 * The depth at which a tank holds a volume: the mark on the stick, or where to stop filling.
 *
 * The inverse of {@link tankContents}, found by halving to the last digits; in the unit of the first measure of the
 * tank. Volume from 0 to the capacity.
 *
 * @throws RatewrightError `range` for more than the tank holds; with every measure that is not right: `missing`,
 * `type`, `unit/mismatch`, `not-finite`
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { tankDepth } from "ratewright/site";
 * const nurse = { shape: "lying cylinder", diameter: quantity(48, "in"), length: quantity(65, "in") } as const;
 * Number(tankDepth(nurse, quantity(100, "gal")).in("in").toFixed(1)); // => 12
 * ```
 */
export const tankDepth = (tank: Tank, volume: Volume): Length => {
  const problems = checks();
  const read = problems.run(() => readTank(tank));
  const held = problems.run(() => volumeOf(volume, "volume", "non-negative"));
  problems.done();
  const { units, height, volumeTo } = read as ReadTank;
  const wanted = (held as Volume).in(units.volume);
  const full = volumeTo(height);
  if (wanted > full * (1 + 1e-12)) {
    outOfRange(
      "volume",
      held,
      { max: tankVolumeIn(full, units).value, unit: tankVolumeIn(full, units).unit },
      "{}, what the tank holds",
    );
  }
  let [low, high] = [0, height];
  // 100 halvings reach below the last digit of any height
  for (let i = 0; i < 100 && high - low > 1e-15 * height; i++) {
    const middle = (low + high) / 2;
    if (volumeTo(middle) < wanted) low = middle;
    else high = middle;
  }
  return quantity(wanted >= full ? height : wanted === 0 ? 0 : (low + high) / 2, units.length);
};
