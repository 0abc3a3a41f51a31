import { addDays, type CivilDate, type DailyTemperatures } from "../../calendar/index.js";
import { type Finding, numberIn, Quantity } from "../../quantity/index.js";
import type { NitrogenPortion } from "../release/nitrogen-portion.js";
import type { Placement } from "../release/release-model.js";
import type { MeanTemperature } from "../release/release-weather.js";
import { withoutResponse } from "../release/released-nitrogen.js";
import { nitrogenRate } from "./nitrogen-caps.js";
import { programFindings } from "./program-findings.js";
import { added, inUnit, peak } from "./program-sums.js";
import { type ReadComparedProgram, readComparison } from "./read-comparison.js";

/** One application of a program: what goes down on a day, and what it costs per area. */
export interface ProgramApplication<C extends string> {
  readonly date: CivilDate;
  readonly portions: readonly NitrogenPortion[];
  /** Material and work, per area; left out where it is not known. */
  readonly cost?: Quantity<`money:${C}/area`, "none">;
}

/** A program to compare. */
export interface NitrogenProgram<C extends string> {
  readonly name: string;
  readonly applications: readonly ProgramApplication<C>[];
}

/** Low end, middle and high end of an amount of nitrogen. */
export interface NitrogenEstimate {
  readonly low: Quantity<"mass/area", "N">;
  readonly mid: Quantity<"mass/area", "N">;
  readonly high: Quantity<"mass/area", "N">;
}

/** Nitrogen that becomes available in one week. */
export interface ProgramWeek {
  readonly week: number;
  readonly from: CivilDate;
  readonly available: Quantity<"mass/area", "N">;
  readonly outByThen: NitrogenEstimate;
}

/** What a program gives. */
export interface ProgramOutcome<C extends string> {
  readonly name: string;
  readonly applications: number;
  readonly applied: Quantity<"mass/area", "N">;
  readonly weeks: readonly ProgramWeek[];
  /**
   * The most nitrogen that becomes soluble within any seven days in a row: by the middle curve, with the least
   * and the most that the three curves give. A slower curve can have the higher peak, where its release
   * falls into warmer days.
   */
  readonly peakSolubleLoad: NitrogenEstimate;
  /** The first day of the middle peak; on it nitrogen comes out. */
  readonly peakFrom: CivilDate;
  /** `null` where an application states no cost. */
  readonly cost: Quantity<`money:${C}/area`, "none"> | null;
}

/** Programs side by side. */
export interface ProgramComparison<C extends string> {
  readonly type: "program-comparison";
  readonly version: 1;
  readonly programs: readonly ProgramOutcome<C>[];
  readonly assumptions: readonly string[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/**
 * Programs side by side, such as one heavy slow-release application and monthly quick ones: nitrogen that
 * becomes available week by week, the peak soluble load, and the cost per area.
 *
 * Equation: every application is run through {@link releasedNitrogen} from its date to the end, and the
 * daily releases are added up. Week `w` is days `7 w - 6` to `7 w`, the first day being `from`. The peak is
 * the largest sum of seven days in a row. The cost is the sum of the stated costs.
 *
 * The estimate is as uncertain as its models; compare programs by whole ranges, not by middles alone.
 *
 * @param input.from - first day; no application lies before it
 * @param input.weeks - how many weeks, 1 to 104; no application lies after them
 * @param input.placement - where the granules lie, for all programs
 * @param input.temperature - daily temperatures from the first application to the end, or one mean
 * @throws RatewrightError `missing`, `range`, `date`, `duplicate` (a name twice), `unit/mismatch` (two
 *   currencies, in one program or between two), and as {@link releasedNitrogen}
 *
 * Source: field comparison of coated urea once, twice and three times a year with monthly urea on
 * Kentucky bluegrass: Brigham Young University (Buss, thesis), 2016, abstract.
 *
 * @example
 * ```ts
 * import { money, naturalOrganic, programComparison, quantity, quickRelease } from "ratewright";
 * const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
 * const comparison = programComparison({
 *   from: "2026-05-01", weeks: 8, placement: "surface or thatch", temperature: { mean: quantity(25, "°C") },
 *   programs: [
 *     { name: "quick, monthly", applications: ["2026-05-01", "2026-06-01"].map((date) => ({
 *       date: date as "2026-05-01",
 *       portions: [{ name: "urea", nitrogen: n(0.5), model: quickRelease }],
 *       cost: money(20, "USD").per(quantity(1, "acre")),
 *     })) },
 *     { name: "organic, once", applications: [{
 *       date: "2026-05-01",
 *       portions: [{ name: "organic", nitrogen: n(1), model: naturalOrganic }],
 *       cost: money(90, "USD").per(quantity(1, "acre")),
 *     }] },
 *   ],
 * });
 * comparison.programs.map(({ cost }) => cost?.in("money:USD/acre")); // => [40, 90]
 * comparison.programs.map((p) => Number(p.peakSolubleLoad.mid.in("lb/1000 ft2").toFixed(3))); // => [0.5, 0.124]
 * ```
 */
export const programComparison = <C extends string = string>(input: {
  readonly from: CivilDate;
  readonly weeks: number;
  readonly placement: Placement;
  readonly temperature: DailyTemperatures | MeanTemperature;
  readonly programs: readonly NitrogenProgram<C>[];
}): ProgramComparison<C> => {
  const { from, weeks, weather, programs: read } = readComparison(input);
  const unit = read[0]?.runs[0]?.release.unit as string;
  const programs = read.map((program): ProgramOutcome<C> => outcomeOf(program, { from, weeks, unit }));
  const uncosted = programs.filter(({ cost }) => cost === null).map(({ name }) => name);
  const releases = read.flatMap(({ runs }) => runs.map(({ release }) => release));
  return {
    type: "program-comparison",
    version: 1,
    programs,
    assumptions: [...new Set(releases.flatMap(({ assumptions }) => assumptions))],
    findings: [...weather.findings, ...modelFindings(read), ...programFindings(input.programs)],
    checked: ["release by each model in this placement", "the repeat scheme of coated urea"],
    notChecked: [
      ...(uncosted.length > 0 ? [`cost: an application of ${uncosted.join(", ")} states none`] : []),
      ...withoutResponse(releases.flatMap(({ portions }) => portions)),
      "uptake, losses and moisture",
      "caps and local rules: see remainingNitrogen",
    ],
  };
};

/** The findings on the models, each once, at the first application that has it. */
const modelFindings = (programs: readonly ReadComparedProgram[]): Finding[] => {
  const seen = new Set<string>();
  return programs.flatMap(({ runs }, p) =>
    runs.flatMap(({ release }, a) =>
      release.findings.flatMap((finding): Finding[] => {
        if (!finding.path?.startsWith("portions")) return [];
        const key = `${finding.code} ${finding.params.model} ${finding.text}`;
        if (seen.has(key)) return [];
        seen.add(key);
        return [{ ...finding, path: `programs[${p}].applications[${a}].${finding.path}` }];
      }),
    ),
  );
};

const outcomeOf = <C extends string>(
  { name, runs, costs }: ReadComparedProgram,
  { from, weeks, unit }: { readonly from: CivilDate; readonly weeks: number; readonly unit: string },
): ProgramOutcome<C> => {
  const out = {
    low: added(runs, "low", 7 * weeks, unit),
    mid: added(runs, "mid", 7 * weeks, unit),
    high: added(runs, "high", 7 * weeks, unit),
  };
  const mid = peak(out.mid);
  const peaks = [peak(out.low).load, mid.load, peak(out.high).load];
  /** What is out by the end of a week. */
  const by = (list: Float64Array, week: number): number => (week === 0 ? 0 : (list[7 * week - 1] as number));
  const rate = (value: number): Quantity<"mass/area", "N"> => nitrogenRate(value, unit);
  return {
    name,
    applications: runs.length,
    applied: rate(runs.reduce((sum, { release }) => sum + inUnit(release.applied, release.unit, unit), 0)),
    weeks: Array.from({ length: weeks }, (_, w) => ({
      week: w + 1,
      from: addDays(from, 7 * w),
      available: rate(by(out.mid, w + 1) - by(out.mid, w)),
      outByThen: {
        low: rate(by(out.low, w + 1)),
        mid: rate(by(out.mid, w + 1)),
        high: rate(by(out.high, w + 1)),
      },
    })),
    peakSolubleLoad: { low: rate(Math.min(...peaks)), mid: rate(mid.load), high: rate(Math.max(...peaks)) },
    peakFrom: addDays(from, mid.day),
    cost: totalCost<C>(costs),
  };
};

/** The cost of a program, `null` where an application states none. */
const totalCost = <C extends string>(
  costs: readonly (Quantity<string, "none"> | undefined)[],
): Quantity<`money:${C}/area`, "none"> | null => {
  const stated = costs.filter((cost) => cost !== undefined);
  const [first] = stated;
  if (first === undefined || stated.length < costs.length) return null;
  const total = stated.reduce((sum, cost) => sum + numberIn(cost, first.unit), 0);
  return new Quantity(total, first.unit, "none", first.dimension as `money:${C}/area`);
};
