import { checks, expectNumber, type FactSource, fail } from "../../quantity/index.js";
import { checkedCurve, type ReleaseCurve } from "./release-curve.js";
import { checkedResponse, type TemperatureResponse } from "./release-temperature.js";

/** Where granules lie: on the ground or in the thatch, or worked into the soil. It decides how long a coating lasts. */
export type Placement = "surface or thatch" | "incorporated";

/** What {@link releaseModel} is told. */
export interface ReleaseModelInput {
  readonly name: string;
  /** The placement for which the figures were found; `"either"` where it makes no known difference. */
  readonly placement: Placement | "either";
  /** What surrounds the granule, where something does. */
  readonly coating?: "polymer" | "sulfur" | "polymer and sulfur";
  readonly curve: ReleaseCurve;
  readonly temperature: TemperatureResponse;
  /** Percentage points by which the curve missed the measurements; widens the low and the high end. */
  readonly fitErrorPercent?: number;
  readonly assumptions: readonly string[];
  readonly source: FactSource;
}

/** How a source of nitrogen gives it off over time: an estimate with its range. Plain JSON. */
export interface ReleaseModel extends ReleaseModelInput {
  readonly type: "release-model";
  readonly version: 1;
}

/**
 * A release model, checked: a curve over equivalent days, a response to temperature, the placement for
 * which both were found, the assumptions and the source.
 *
 * Any release model is an estimate: moisture, coating damage, particle size and microbes are in none of
 * them, and no turf source prints a table of weekly percentages by temperature. So every parameter is a
 * range, and results carry a low and a high end.
 *
 * @throws RatewrightError with every problem: `type`, `range`, `conflict`, `not-finite`, `missing`
 *
 * @example
 * ```ts
 * import { releaseModel } from "ratewright";
 * const model = releaseModel({
 *   name: "coated, by incubation",
 *   placement: "incorporated",
 *   coating: "polymer",
 *   curve: { kind: "first order", ratePerDay: { low: 0.01, high: 0.02 } },
 *   temperature: { kind: "Q10", q10: { low: 1.8, high: 2.2 }, referenceC: 25 },
 *   assumptions: ["moist soil"],
 *   source: "incubation of our own",
 * });
 * model.curve; // => { kind: "first order", ratePerDay: { low: 0.01, mid: 0.015, high: 0.02 },
 * //   lagDays: { low: 0, mid: 0, high: 0 }, mostPercent: { low: 100, mid: 100, high: 100 } }
 * ```
 */
export const releaseModel = (input: ReleaseModelInput, path = "model"): ReleaseModel => {
  if (typeof input !== "object" || input === null) return fail("type", path, input, "a release model");
  const door = checks();
  const { name, placement, coating, assumptions, source } = input;
  door.run(() => {
    if (typeof name !== "string" || name.trim() === "") fail("missing", `${path}.name`, name, "a name");
  });
  door.run(() => {
    if (placement !== "either") checkedPlacement(placement, `${path}.placement`);
  });
  door.run(() => {
    if (coating !== undefined && !["polymer", "sulfur", "polymer and sulfur"].includes(coating)) {
      fail("type", `${path}.coating`, coating, "polymer, sulfur, polymer and sulfur, or none at all");
    }
  });
  const curve = door.run(() => checkedCurve(input.curve, `${path}.curve`));
  const temperature = door.run(() => checkedResponse(input.temperature, `${path}.temperature`));
  const fitError = door.run(() =>
    input.fitErrorPercent === undefined
      ? undefined
      : expectNumber(input.fitErrorPercent, `${path}.fitErrorPercent`, { min: 0, max: 100 }),
  );
  door.run(() => {
    if (!Array.isArray(assumptions)) fail("type", `${path}.assumptions`, assumptions, "a list of texts");
  });
  door.run(() => {
    if (source === undefined || source === "") fail("missing", `${path}.source`, source, "a source");
  });
  door.done();
  return {
    type: "release-model",
    version: 1,
    name,
    placement,
    ...(coating === undefined ? {} : { coating }),
    curve: curve as ReleaseCurve,
    temperature: temperature as TemperatureResponse,
    ...(fitError === undefined ? {} : { fitErrorPercent: fitError }),
    assumptions: [...assumptions],
    source,
  };
};

/** Takes a placement, or throws with its path: it has no default. */
export const checkedPlacement = (input: Placement, path: string): Placement =>
  input === "surface or thatch" || input === "incorporated"
    ? input
    : fail(input === undefined ? "missing" : "type", path, input, '"surface or thatch" or "incorporated"');
