import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  type FactSource,
  fail,
} from "../../quantity/index.js";
import { expectPath, expectShortText, expectSource, expectTexts } from "../label/expect-source.js";
import { checkedCurve, type ReleaseCurve } from "./release-curve.js";
import { checkedResponse, type TemperatureResponse } from "./release-temperature.js";

/** Where granules lie: on the ground or in the thatch, or worked into the soil. It decides how long a coating lasts. */
export type Placement = "surface or thatch" | "incorporated";

/** How far the measurements behind a model reach. Outside of it a result carries a finding. */
export interface ObservedReach {
  /** The last day that was measured or printed. */
  readonly days?: number;
  /** The coldest temperature, °C. */
  readonly fromC?: number;
  /** The warmest temperature, °C. */
  readonly toC?: number;
}

/** What {@link releaseModel} is told. */
export interface ReleaseModelInput {
  readonly name: string;
  /** The placement for which the figures were found; `"either"` where it makes no known difference. */
  readonly placement: Placement | "either";
  /** What surrounds the granule, where something does. */
  readonly coating?: "polymer" | "sulfur" | "polymer and sulfur";
  readonly curve: ReleaseCurve;
  readonly temperature: TemperatureResponse;
  /** How far the figures reach, in days and in temperature. */
  readonly observed?: ObservedReach;
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

const fields = [
  "type",
  "version",
  "name",
  "placement",
  "coating",
  "curve",
  "temperature",
  "observed",
  "fitErrorPercent",
  "assumptions",
  "source",
] as const;
const placements = ["surface or thatch", "incorporated"] as const;
const coatings = ["polymer", "sulfur", "polymer and sulfur"] as const;

const checkedReach = (input: ObservedReach, path: string): ObservedReach => {
  expectFields(input, ["days", "fromC", "toC"], path);
  const given = (name: keyof ObservedReach, bounds: { min?: number; above?: number; max: number }) =>
    input[name] === undefined ? {} : { [name]: expectNumber(input[name], `${path}.${name}`, bounds) };
  const { days, from, to } = allOf({
    days: () => given("days", { above: 0, max: 36_600 }),
    from: () => given("fromC", { min: -60, max: 100 }),
    to: () => given("toC", { min: -60, max: 100 }),
  });
  if ((input.fromC ?? -60) > (input.toC ?? 100)) {
    fail("conflict", `${path}.fromC`, input.fromC, "not more than the warmest temperature");
  }
  return { ...days, ...from, ...to };
};

/**
 * A release model, checked: a curve over equivalent days, a response to temperature, the placement for
 * which both were found, how far the figures reach, the assumptions and the source.
 *
 * Any release model is an estimate: moisture, coating damage and microbes are in none of them, and no turf
 * source prints a table of weekly percentages by temperature. So every parameter is a range, and results
 * carry a low and a high end.
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
 *   observed: { days: 90, fromC: 15, toC: 30 },
 *   assumptions: ["moist soil"],
 *   source: "incubation of our own",
 * });
 * model.curve; // => { kind: "first order", ratePerDay: { low: 0.01, mid: 0.015, high: 0.02 },
 * //   lagDays: { low: 0, mid: 0, high: 0 }, mostPercent: { low: 100, mid: 100, high: 100 } }
 * ```
 */
export const releaseModel = (input: ReleaseModelInput, path = "model"): ReleaseModel => {
  expectPath(path);
  expectFields(input, fields, path, "a release model");
  const { placement, coating, observed, fitErrorPercent } = input;
  const { reach, fitError, ...read } = allOf({
    name: () => expectShortText(input.name, `${path}.name`, "a name"),
    placement: () => (placement === "either" ? placement : checkedPlacement(placement, `${path}.placement`)),
    coating: () => (coating === undefined ? coating : expectOneOf(coating, coatings, `${path}.coating`)),
    curve: () => checkedCurve(input.curve, `${path}.curve`),
    temperature: () => checkedResponse(input.temperature, `${path}.temperature`),
    reach: () => (observed === undefined ? observed : checkedReach(observed, `${path}.observed`)),
    fitError: () =>
      fitErrorPercent === undefined
        ? fitErrorPercent
        : expectNumber(fitErrorPercent, `${path}.fitErrorPercent`, { min: 0, max: 100 }),
    assumptions: () => expectTexts(input.assumptions, `${path}.assumptions`),
    source: () => expectSource(input.source, `${path}.source`),
  });
  return {
    type: "release-model",
    version: 1,
    name: read.name,
    placement: read.placement,
    ...(read.coating === undefined ? {} : { coating: read.coating }),
    curve: read.curve,
    temperature: read.temperature,
    ...(reach === undefined ? {} : { observed: reach }),
    ...(fitError === undefined ? {} : { fitErrorPercent: fitError }),
    assumptions: read.assumptions,
    source: read.source,
  };
};

/** Takes a placement, or throws with its path: it has no default. */
export const checkedPlacement = (input: unknown, path: string): Placement =>
  placements.find((one) => one === input) ??
  fail("type", path, input, '"surface or thatch" or "incorporated"');
