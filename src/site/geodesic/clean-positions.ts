import { checks, expectFields, type Quantity, quantity } from "../../quantity/index.js";
import { type Length, lengthOf } from "../lengths.js";
import { type Geodesy, loadGeodesy, type Place } from "./geodesy.js";
import { placesOf } from "./positions.js";

/** A fix that was dropped, and why. */
export interface DroppedPosition {
  /** Its place in the list that was given. */
  readonly index: number;
  /** `"repeat"`: the fix before again; `"back-step"`: back along the way just walked; `"closing"`: the start again. */
  readonly reason: "repeat" | "back-step" | "closing";
  /** Distance from the fix that was kept before it, or from the start. */
  readonly distance: Quantity<"length", "none">;
}

/** Positions of a walk around a site, cleaned up. */
export interface CleanPositions {
  readonly type: "clean-positions";
  readonly version: 1;
  readonly positions: readonly (readonly [longitude: number, latitude: number])[];
  /** The same as a closed ring of GeoJSON: the first position again as the last. */
  readonly ring: readonly (readonly [longitude: number, latitude: number])[];
  readonly dropped: readonly DroppedPosition[];
}

/**
 * The positions of a walk around a site without repeated fixes and back-steps, and which were dropped.
 *
 * In order, with `a` the accuracy of a fix and measured on the ellipsoid:
 * - a repeat: less than `a` from the last fix that was kept (standing still, a receiver that jitters)
 * - a back-step: it lies within `a` of the line from the fix kept before the last to the last, and goes back along it
 *   by no more than `2 a`, which two fixes that are each off by `a` can
 * - closing: fixes at the end within `a` of the first
 *
 * All else stays: a true turn is longer than `2 a`. Dropping moves the area by up to `a` times the length of the edge;
 * the accuracy is the receiver's, 3 to 5 m for a telephone in the open and 1 to 3 cm with corrections (common practice,
 * no source).
 *
 * Needs the package `geographiclib-geodesic` beside this library; it is loaded at the first call.
 *
 * @param input.positions - `[longitude, latitude]` in degrees, in the order of the walk
 * @param input.accuracy - how far a fix may be off
 * @throws RatewrightError `range` for degrees out of range or an accuracy not above zero; `missing` for the package;
 * `type`, `unit/mismatch`, `not-finite`; every position that is not right is reported
 *
 * Source: the rules are ours; common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { cleanPositions } from "ratewright/site/geodesic";
 * const walk = await cleanPositions({
 *   positions: [[8, 50], [8.001, 50], [8.001, 50], [8.00098, 50], [8.001, 50.001], [8, 50.001], [8.00001, 50]],
 *   accuracy: quantity(1, "m"),
 * });
 * walk.positions.length; // => 4
 * walk.dropped.map(({ index, reason }) => [index, reason]);
 * // => [[2, "repeat"], [3, "back-step"], [6, "closing"]]
 * ```
 */
export const cleanPositions = async (input: {
  readonly positions: readonly (readonly number[])[];
  readonly accuracy: Length;
}): Promise<CleanPositions> => {
  const record = expectFields(input, ["positions", "accuracy"]);
  const problems = checks();
  const places = problems.run(() => placesOf(record.positions, "positions"));
  const accuracy = problems.run(() => lengthOf(record.accuracy, "accuracy"));
  problems.done();
  const geodesy = await loadGeodesy();
  return cleaned(geodesy, places as readonly Place[], (accuracy as Length).in("m"));
};

/** The rules on a walk, by any way to tell how far two places lie apart; pure, and without a package to load. */
export const cleaned = (geodesy: Geodesy, places: readonly Place[], accuracy: number): CleanPositions => {
  const kept: { readonly place: Place; readonly index: number }[] = [];
  const dropped: DroppedPosition[] = [];
  places.forEach((place, index) => {
    const last = kept[kept.length - 1]?.place;
    const before = kept[kept.length - 2]?.place;
    const step = last === undefined ? Number.POSITIVE_INFINITY : geodesy.distance(last, place);
    if (last !== undefined && step < accuracy) {
      dropped.push({ index, reason: "repeat", distance: quantity(step, "m") });
    } else if (
      last !== undefined &&
      before !== undefined &&
      stepsBack(geodesy, before, last, place, accuracy)
    ) {
      dropped.push({ index, reason: "back-step", distance: quantity(step, "m") });
    } else kept.push({ place, index });
  });
  const start = kept[0] as { readonly place: Place };
  while (kept.length > 1) {
    const end = kept[kept.length - 1] as { readonly place: Place; readonly index: number };
    const distance = geodesy.distance(start.place, end.place);
    if (distance >= accuracy) break;
    dropped.push({ index: end.index, reason: "closing", distance: quantity(distance, "m") });
    kept.pop();
  }
  const positions = kept.map(({ place }): Place => [...place]);
  return {
    type: "clean-positions",
    version: 1,
    positions,
    ring: [...positions, [...(positions[0] as Place)] as Place],
    dropped: dropped.sort((one, other) => one.index - other.index),
  };
};

/** Whether a fix goes back along the leg that was just walked, by no more than two fixes can be off. */
const stepsBack = (geodesy: Geodesy, before: Place, last: Place, place: Place, accuracy: number): boolean => {
  const leg = geodesy.distance(before, last);
  const step = geodesy.distance(last, place);
  const rest = geodesy.distance(before, place);
  if (!(leg > 0)) return false;
  // how far back along the leg, by the law of cosines; a plane is enough at this size
  const back = (leg * leg + step * step - rest * rest) / (2 * leg);
  const aside = Math.sqrt(Math.max(0, step * step - back * back));
  return back > 0 && back <= 2 * accuracy && aside <= accuracy;
};
