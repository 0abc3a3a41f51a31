import { counted } from "../../quantity/house.js";
import { expectRecord, type Finding, fail } from "../../quantity/index.js";
import { expectOneOpening, openingOf } from "../depth/catch-depth.js";
import {
  type Area,
  area,
  isMetric,
  type Length,
  length,
  made,
  optional,
  type Rate,
  readRecord,
  type Share,
  type Time,
  time,
  type Volume,
  word,
} from "../read.js";
import { lowShare, type Remainder, readCatches } from "./catches.js";
import { coefficientOf } from "./christiansen-uniformity.js";

/** What a test with catch cans says of a zone. */
export interface CatchCanTest {
  readonly type: "catch-can-test";
  readonly version: 1;
  readonly cans: number;
  /** The mean depth caught in the test. */
  readonly depth: Length;
  readonly rate: Rate;
  readonly lowerQuarter: Share;
  readonly lowerHalf: Share;
  readonly christiansen: Share;
  /** The mean by the driest can; `null` where a can stayed empty. */
  readonly schedulingCoefficient: number | null;
  readonly findings: readonly Finding[];
}

/**
 * Works up a test with catch cans: mean depth and precipitation rate, lower quarter, lower half, Christiansen's
 * coefficient and the scheduling coefficient of the driest can.
 *
 * - `catches` depths read off the cans; or volumes of water with the `opening` (an area) or the `diameter` of the cans,
 *   which then are all alike
 * - `time` that the zone ran
 * - `remainder` as in {@link distributionUniformity}
 *
 * Few cans, or a number that does not divide by four, is a finding.
 *
 * @throws RatewrightError `missing` where volumes come without the opening; `conflict` where depths come with one; as
 * {@link distributionUniformity}
 *
 * Source: the formulas of {@link distributionUniformity} and {@link christiansenUniformity}; 24 cans and a number that
 * divides by four: University of California, Davis; 20 cans: University of Minnesota Extension.
 *
 * @example
 * ```ts
 * import { catchCanTest, quantity } from "ratewright";
 * const catches = [0.2, 0.25, 0.22, 0.13].map((value) => quantity(value, "in"));
 * const zone = catchCanTest({ catches, time: quantity(15, "min") });
 * zone.rate.in("in/h").toFixed(2); // => "0.80"
 * zone.lowerQuarter.in("%").toFixed(0); // => "65"
 * zone.findings.map(({ code }) => code); // => ["water/few-cans"]
 * ```
 */
export const catchCanTest = (input: {
  readonly catches: readonly Length[] | readonly Volume[];
  readonly time: Time;
  readonly opening?: Area;
  readonly diameter?: Length;
  readonly remainder?: Remainder;
}): CatchCanTest => {
  const { volumes, ...q } = readTest(input);
  const { catches } = q;
  const mm = volumes
    ? (10 * made(catches.mean, catches.unit, "volume", "water").in("mL")) / openingOf(q.opening, q.diameter)
    : made(catches.mean, catches.unit, "length").in("mm");
  const metric = isMetric((q.opening ?? q.diameter)?.unit ?? catches.unit);
  const deep = made(mm, "mm", "length");
  const hours = q.time.in("h");
  const driest = catches.sorted[0] as number;
  const schedulingCoefficient = coefficientOfDriest(catches.mean, driest);
  return {
    type: "catch-can-test",
    version: 1,
    cans: catches.sorted.length,
    depth: metric ? deep : made(deep.in("in"), "in", "length"),
    rate: metric
      ? made(mm / hours, "mm/h", "length/time")
      : made(deep.in("in") / hours, "in/h", "length/time"),
    lowerQuarter: made(lowShare(catches, 4, q.remainder), "%", "1"),
    lowerHalf: made(lowShare(catches, 2, q.remainder), "%", "1"),
    christiansen: made(coefficientOf(catches), "%", "1"),
    schedulingCoefficient,
    findings: remarks(catches.sorted.length, driest),
  };
};

const readTest = (input: unknown) => {
  const volumes = caughtVolumes(input);
  const found = readRecord(
    input,
    {
      catches: (value, path) => {
        const found = readCatches(4)(value, path);
        return found.unit.includes("/")
          ? fail(
              "unit/mismatch",
              `${path}[0]`,
              found.unit,
              "depths or volumes; distributionUniformity takes rates",
            )
          : found;
      },
      time,
      opening: (value, path) => {
        if (volumes) expectOneOpening(input, path);
        else notBeside(value, path);
        return optional(area)(value, path);
      },
      diameter: (value, path) => {
        if (!volumes) notBeside(value, path);
        return optional(length)(value, path);
      },
      remainder: word(["nearest", "up", "down", "refuse"], "nearest"),
    },
    "a record with catches and time",
  );
  return { volumes, ...found };
};

/** The mean by the driest can; `null` where it stayed empty. */
const coefficientOfDriest = (mean: number, driest: number): number | null => {
  const coefficient = driest > 0 ? mean / driest : null;
  return coefficient === Infinity
    ? fail("range", "catches", driest, "catches with a finite ratio to their mean, or 0 for a dry can")
    : coefficient;
};

/** Whether the first can was read as a volume; the catches themselves are read, with every problem, after. */
const caughtVolumes = (input: unknown): boolean => {
  const { catches } = expectRecord(input, "input", "a record with catches and time");
  const unit: unknown = Array.isArray(catches) ? Object(catches[0]).unit : undefined;
  return (
    typeof unit === "string" &&
    /^(mL|L|m3|in3|ft3|gal|qt|pt|cup|fl oz|tbsp|tsp|imp gal|imp fl oz)$/.test(unit)
  );
};

const notBeside = (value: unknown, path: string): void => {
  if (value !== undefined)
    fail("conflict", path, value, "nothing besides depths: the opening is for volumes");
};

const remarks = (cans: number, driest: number): readonly Finding[] => {
  const found: Finding[] = [];
  if (cans < 20) {
    found.push({
      code: "water/few-cans",
      severity: "caution",
      path: "catches",
      params: { cans, least: 20 },
      text: `${counted(cans, "can")} ${cans === 1 ? "says" : "say"} little about a zone: use at least 20, preferably 24.`,
      source: "University of Minnesota Extension (20), University of California, Davis (24)",
    });
  }
  if (cans % 4 !== 0) {
    found.push({
      code: "water/cans-not-in-quarters",
      severity: "note",
      path: "catches",
      params: { cans },
      text: `${cans} cans do not divide by four: the lower quarter takes the nearest whole number of cans, or what was asked for.`,
      source: "University of California, Davis",
    });
  }
  if (driest === 0) {
    found.push({
      code: "water/empty-can",
      severity: "warning",
      path: "catches",
      params: {},
      text: "A can stayed empty: some ground gets no water, and no run time makes up for it.",
      source: "common practice, no source",
    });
  }
  return found;
};
