import { accurateSum, coverageFactor, standardDeviation } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectList,
  expectQuantity,
  type Finding,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Area, areaAt, given, isMetric, type Length, lengthAt, type Share, sourceAt } from "../read.js";
import { chanceUpper } from "./chance-upper.js";

type Density = Quantity<"count/area", "none">;

/** A threshold as somebody states it: one figure, or a range. */
export interface StatedThreshold {
  readonly low: Density;
  /** The upper end of a range; the same as `low` where left out. */
  readonly high?: Density;
  readonly source: string;
}

/** How an interval lies against a threshold; `"not compared"` where none was given. */
export type ThresholdReading = "above" | "below" | "cannot be told" | "not compared";

/** A density of a pest by counts in cores. */
export interface PestDensity {
  readonly type: "pest-density";
  readonly version: 1;
  readonly cores: number;
  readonly counted: number;
  readonly coreArea: Area;
  readonly density: Density;
  /** Between what the mean density lies, as surely as `confidence` says. */
  readonly low: Density;
  readonly high: Density;
  readonly confidence: Share;
  readonly againstThreshold: ThresholdReading;
  readonly findings: readonly Finding[];
}

const fewest = 10;

/**
 * The density of a pest from counts in cores, with its interval, against a threshold:
 * `D = mean / a`, `mean +- k u`, `u = sqrt(max(s^2, mean) / n)`.
 *
 * - `a` area of a core; one of 4 1/4 in is 0.0985 ft2, so a count stands for 10.15 per ft2 (10 by the trade's
 *   rule)
 * - `n` cores, `s` standard deviation of the counts, `k` of `coverageFactor` with `n - 1` degrees of freedom
 *
 * Counts scatter at least as chance does (a Poisson distribution), so the interval is never narrower than
 * that, however alike the counts came out: its upper end is that of the exact limits of Poisson for all that was counted,
 * where that is the higher one. It ends at zero, below which there is no density. Where
 * nothing was found the upper end is `-ln(1 - confidence) / (n a)`. White grubs lie in patches: cores from one patch say nothing of
 * the rest, so count by zones.
 *
 * `againstThreshold` says where the whole interval lies. Thresholds differ by species, grass and watering.
 *
 * @param input.counts - whole numbers, one for each core; up to 10,000 cores
 * @param input.core - its diameter or its area
 * @param input.threshold - a figure or a range, with its source
 * @param input.confidence - 95 % where it is left out
 * @returns per ft2, or per m2 for a core in metric units
 * @throws RatewrightError `missing`, `conflict`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: an extension text on white grubs, in a copy, for cores of a cup cutter and at least 10 places;
 * JCGM 100:2008 (GUM), G.3 for the interval; F. Garwood 1936, as J. A. Hanley
 * tells it (doi:10.1002/sim.8354), for the limits of Poisson.
 *
 * @example
 * ```ts
 * import { pestDensity, quantity } from "ratewright";
 * const grubs = pestDensity({
 *   counts: [0, 2, 1, 0, 3, 1, 0, 1, 2, 0], core: { diameter: quantity(4.25, "in") },
 *   threshold: { low: quantity(20, "count/ft2"), source: "county bulletin for irrigated turf" },
 * });
 * Number(grubs.density.in("count/ft2").toFixed(1)); // => 10.2
 * [grubs.low, grubs.high].map((end) => Number(end.in("count/ft2").toFixed(1))); // => [2.5, 18.7]
 * grubs.againstThreshold; // => "below"
 * ```
 */
export const pestDensity = (input: {
  readonly counts: readonly number[];
  readonly core: { readonly diameter: Length } | { readonly area: Area };
  readonly threshold?: StatedThreshold;
  readonly confidence?: Share;
}): PestDensity => {
  const record = expectFields(input, ["counts", "core", "threshold", "confidence"]);
  const { counts, core, threshold, confidence } = allOf({
    counts: () => countsOf(record.counts),
    core: () => coreOf(record.core),
    threshold: () => (record.threshold === undefined ? undefined : thresholdOf(record.threshold)),
    confidence: () =>
      record.confidence === undefined
        ? quantity(95, "%")
        : expectQuantity(record.confidence, { dimension: "1", of: "none" }, "confidence"),
  });
  const n = counts.length;
  const counted = accurateSum(counts);
  const each = counted / n;
  const { unit, area } = core;
  const perArea = (count: number): Density => quantity(count / area, unit);
  const [low, high] = interval(counts, each, confidence);
  const findings: Finding[] =
    n >= fewest
      ? []
      : [
          {
            code: "pests/few-cores",
            severity: "caution",
            path: "counts",
            params: { cores: n, fewest },
            text: `${n} ${n === 1 ? "core" : "cores"}: take ${fewest} or more, from all over the ground.`,
            source: "an extension text on white grubs, in a copy",
          },
        ];
  return {
    type: "pest-density",
    version: 1,
    cores: n,
    counted,
    coreArea: quantity(area, unit === "count/m2" ? "m2" : "ft2"),
    density: perArea(each),
    low: perArea(low),
    high: perArea(high),
    confidence: quantity(confidence.in("%"), "%"),
    againstThreshold:
      threshold === undefined
        ? "not compared"
        : low / area > threshold.high.in(unit)
          ? "above"
          : high / area < threshold.low.in(unit)
            ? "below"
            : "cannot be told",
    findings,
  };
};

/** Between what the mean count of a core lies. */
const interval = (counts: readonly number[], each: number, confidence: Share): [number, number] => {
  const n = counts.length;
  // Refuses a confidence that is none, whatever was counted.
  const factor = n > 1 ? coverageFactor(confidence, n - 1) : coverageFactor(confidence);
  if (each === 0) return [0, -Math.log1p(-confidence.in("1")) / n];
  const spread = n > 1 ? standardDeviation(counts, { divisor: "n-1" }) ** 2 : 0;
  const margin = factor * Math.sqrt(Math.max(spread, each) / n);
  const counted = accurateSum(counts);
  // From a million on the two ends agree to a millionth.
  const chance = counted > 1e6 ? 0 : chanceUpper(counted, (1 - confidence.in("1")) / 2) / n;
  return [Math.max(0, each - margin), Math.max(each + margin, chance)];
};

const countsOf = (input: unknown): readonly number[] => {
  const list = expectList(input, "counts", "core", 10_000);
  list.forEach((count, i) => {
    if (typeof count !== "number" || !Number.isSafeInteger(count) || count < 0) {
      const at = `counts[${i}]`;
      if (typeof count !== "number") fail("type", at, count, "a whole number, 0 or more");
      outOfRange(at, count, { step: 1, min: 0 });
    }
  });
  return list as readonly number[];
};

const coreOf = (input: unknown): { readonly unit: "count/m2" | "count/ft2"; readonly area: number } => {
  const record = expectFields(input, ["diameter", "area"], "core", "a core with diameter or area");
  if ((record.diameter === undefined) === (record.area === undefined)) {
    return fail(
      record.area === undefined ? "missing" : "conflict",
      "core",
      input,
      "the diameter of a core, or its area",
    );
  }
  if (record.area !== undefined) {
    const area = areaAt(record.area, "core.area");
    return isMetric(area.unit)
      ? { unit: "count/m2", area: area.in("m2") }
      : { unit: "count/ft2", area: area.in("ft2") };
  }
  const diameter = lengthAt(record.diameter, "core.diameter");
  return isMetric(diameter.unit)
    ? { unit: "count/m2", area: (Math.PI / 4) * diameter.in("m") ** 2 }
    : { unit: "count/ft2", area: (Math.PI / 4) * diameter.in("ft") ** 2 };
};

const thresholdOf = (input: unknown): { readonly low: Density; readonly high: Density } => {
  const record = expectFields(input, ["low", "high", "source"], "threshold");
  const { low, high } = allOf({
    low: () => given(record.low, "threshold.low", "count/area", "none"),
    high: () => given(record.high ?? record.low, "threshold.high", "count/area", "none"),
    source: () => sourceAt(record.source, "threshold.source"),
  });
  if (high.in("count/m2") < low.in("count/m2") * (1 - 1e-12)) {
    fail("conflict", "threshold.high", record.high, "no less than low");
  }
  return { low, high };
};
