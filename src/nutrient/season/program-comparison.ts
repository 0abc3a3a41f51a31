import {
  addDays,
  type CivilDate,
  civilDate,
  type DailyTemperatures,
  daysBetween,
} from "../../calendar/index.js";
import { checks, expectNumber, type Finding, fail, type Quantity, quantity } from "../../quantity/index.js";
import { checkedPlacement, type Placement } from "../release/release-model.js";
import { type MeanTemperature, releaseWeather } from "../release/release-weather.js";
import { type NitrogenPortion, releasedNitrogen, withoutResponse } from "../release/released-nitrogen.js";
import { nitrogenRate } from "./nitrogen-caps.js";
import { programFindings } from "./program-findings.js";
import { added, costsOf, earliestStart, inUnit, peak, type Run } from "./program-sums.js";

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
  if (typeof input !== "object" || input === null) return fail("type", "input", input, "a record");
  const door = checks();
  const first = door.run(() => civilDate(input.from, "from"));
  const count = door.run(() => {
    const given = expectNumber(input.weeks, "weeks", { min: 1, max: 104 });
    return Number.isInteger(given) ? given : fail("range", "weeks", given, "a whole number of weeks");
  });
  const where = door.run(() => checkedPlacement(input.placement, "placement"));
  door.run(() => {
    if (!Array.isArray(input.programs)) fail("type", "programs", input.programs, "a list of programs");
    if (input.programs.length === 0) fail("missing", "programs", "an empty list", "at least one program");
  });
  door.done();
  const [from, weeks, placement] = [first as CivilDate, count as number, where as Placement];
  // Once for all programs: in each application the same fault would be told again, under the wrong path.
  const start = earliestStart(input.programs, from, 7 * weeks);
  const weather = door.run(() => releaseWeather(input.temperature, addDays(from, start), 7 * weeks - start));
  const findings: Finding[] = [...(weather?.findings ?? [])];
  const temperature = weather === undefined ? { mean: quantity(20, "°C") } : input.temperature;
  const names = new Set<string>();
  let unit: string | undefined;
  const runs = input.programs.map((program, p) =>
    door.run(() => {
      if (typeof program?.name !== "string" || program.name === "")
        fail("missing", "name", program?.name, "a name");
      if (names.has(program.name)) fail("duplicate", "name", program.name, "a name of its own");
      names.add(program.name);
      if (!Array.isArray(program.applications)) fail("type", "applications", program.applications, "a list");
      if (program.applications.length === 0)
        fail("missing", "applications", "an empty list", "at least one application");
      const at = checks();
      const releases = program.applications.map((application, a) =>
        at.run((): Run => {
          const begins = daysBetween(from, civilDate(application?.date, "date"));
          if (begins < 0 || begins >= 7 * weeks) {
            fail("date", "date", application.date, `a date from ${from} to ${addDays(from, 7 * weeks - 1)}`);
          }
          const { date: applied, portions } = application;
          const days = 7 * weeks - begins;
          const release = releasedNitrogen({ applied, days, placement, temperature, portions });
          unit ??= release.unit;
          return { start: begins, release };
        }, `applications[${a}]`),
      );
      at.done();
      return { program, releases: releases as readonly Run[] };
    }, `programs[${p}]`),
  );
  const costs = costsOf(input.programs, door);
  door.done();
  const rates = unit as string;
  const seen = new Set<string>();
  const programs = runs.map((run, p): ProgramOutcome<C> => {
    const { program, releases } = run as NonNullable<typeof run>;
    for (const [a, { release }] of releases.entries()) {
      for (const finding of release.findings) {
        if (!finding.path?.startsWith("portions")) continue;
        const key = `${finding.code} ${finding.params.model} ${finding.text}`;
        if (seen.has(key)) continue;
        seen.add(key);
        findings.push({ ...finding, path: `programs[${p}].applications[${a}].${finding.path}` });
      }
    }
    const out = {
      low: added(releases, "low", 7 * weeks, rates),
      mid: added(releases, "mid", 7 * weeks, rates),
      high: added(releases, "high", 7 * weeks, rates),
    };
    const mid = peak(out.mid);
    const peaks = [peak(out.low).load, mid.load, peak(out.high).load];
    const at = (list: Float64Array, day: number): number => (day < 0 ? 0 : (list[day] as number));
    return {
      name: program.name,
      applications: releases.length,
      applied: nitrogenRate(
        releases.reduce((sum, { release }) => sum + inUnit(release.applied, release.unit, rates), 0),
        rates,
      ),
      weeks: Array.from({ length: weeks }, (_, w) => ({
        week: w + 1,
        from: addDays(from, 7 * w),
        available: nitrogenRate(at(out.mid, 7 * w + 6) - at(out.mid, 7 * w - 1), rates),
        outByThen: {
          low: nitrogenRate(at(out.low, 7 * w + 6), rates),
          mid: nitrogenRate(at(out.mid, 7 * w + 6), rates),
          high: nitrogenRate(at(out.high, 7 * w + 6), rates),
        },
      })),
      peakSolubleLoad: {
        low: nitrogenRate(Math.min(...peaks), rates),
        mid: nitrogenRate(mid.load, rates),
        high: nitrogenRate(Math.max(...peaks), rates),
      },
      peakFrom: addDays(from, mid.day),
      cost: costs[p] ?? null,
    };
  });
  findings.push(...programFindings(input.programs));
  const uncosted = programs.filter(({ cost }) => cost === null).map(({ name }) => name);
  return {
    type: "program-comparison",
    version: 1,
    programs,
    assumptions: [
      ...new Set(runs.flatMap((run) => run?.releases.flatMap(({ release }) => release.assumptions) ?? [])),
    ],
    findings,
    checked: ["release by each model in this placement", "the repeat scheme of coated urea"],
    notChecked: [
      ...(uncosted.length > 0 ? [`cost: an application of ${uncosted.join(", ")} states none`] : []),
      ...withoutResponse(
        runs.flatMap((run) => run?.releases.flatMap(({ release }) => release.portions) ?? []),
      ),
      "uptake, losses and moisture",
      "caps and local rules: see remainingNitrogenUnderStatedLimits",
    ],
  };
};
