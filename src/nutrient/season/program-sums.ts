import { type CivilDate, civilDate, daysBetween } from "../../calendar/index.js";
import { type Checks, checks, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import type { NitrogenRelease } from "../release/released-nitrogen.js";
import { nitrogenRate } from "./nitrogen-caps.js";

/** The release of one application, and the day on which it begins. */
export interface Run {
  readonly start: number;
  readonly release: NitrogenRelease;
}

/** The day of the first application that has a date within the weeks; 0 where none has. */
export const earliestStart = (
  programs: readonly { readonly applications: readonly { readonly date: CivilDate }[] }[],
  from: CivilDate,
  days: number,
): number => {
  const quiet = checks();
  const starts = programs.flatMap((program) =>
    (Array.isArray(program?.applications) ? program.applications : []).map((application) =>
      quiet.run(() => daysBetween(from, civilDate(application?.date, "date"))),
    ),
  );
  const within = starts.filter((day): day is number => day !== undefined && day >= 0 && day < days);
  return within.length === 0 ? 0 : Math.min(...within);
};

/** An amount of nitrogen in another unit. */
export const inUnit = (value: number, from: string, to: string): number =>
  nitrogenRate(value, from).in(to as "lb/acre");

/** What is out by the end of each day, all applications together. */
export const added = (
  releases: readonly Run[],
  bound: "low" | "mid" | "high",
  days: number,
  unit: string,
): Float64Array => {
  const total = new Float64Array(days);
  for (const { start, release } of releases) {
    const factor = inUnit(1, release.unit, unit);
    const list = release.cumulative[bound];
    for (let i = start; i < days; i++) total[i] = (total[i] as number) + factor * (list[i - start] as number);
  }
  return total;
};

/** The largest sum of seven days in a row, and the first of them that brings something. */
export const peak = (cumulative: Float64Array): { load: number; day: number } => {
  let best = { load: 0, day: 0 };
  const at = (day: number): number => (day < 0 ? 0 : (cumulative[day] as number));
  for (let last = 0; last < cumulative.length; last++) {
    const load = at(last) - at(last - 7);
    if (load > best.load * (1 + 1e-12)) best = { load, day: Math.max(0, last - 6) };
  }
  // Seven days from the first day with release hold as much as seven that begin before it.
  let { day } = best;
  while (best.load > 0 && at(day) === at(day - 1)) day++;
  return { load: best.load, day };
};

/** An application, as far as its cost goes. */
interface Costed<C extends string> {
  readonly cost?: Quantity<`money:${C}/area`, "none">;
}

/** The cost of each program, `null` where an application states none; all in one currency. */
export const costsOf = <C extends string>(
  programs: readonly { readonly applications: readonly Costed<C>[] }[],
  door: Checks,
): readonly (Quantity<`money:${C}/area`, "none"> | null)[] => {
  let dimension: string | undefined;
  return programs.map((program, p) => {
    const applications: readonly Costed<C>[] = Array.isArray(program?.applications)
      ? program.applications
      : [];
    let total: Quantity<string, "none"> | undefined;
    let known = true;
    for (const [a, application] of applications.entries()) {
      const cost: unknown = application?.cost;
      if (cost === undefined) {
        known = false;
        continue;
      }
      door.run(() => {
        const at = `programs[${p}].applications[${a}].cost`;
        const currency = /^(money:[A-Z]{3})\//.exec(String((cost as { unit?: unknown } | null)?.unit))?.[1];
        if (currency === undefined) fail("unit/mismatch", at, cost, "money per area");
        dimension ??= `${currency}/area`;
        const one = expectQuantity(cost, { dimension, of: "none", bound: "non-negative" }, at) as Quantity<
          string,
          "none"
        >;
        total = total === undefined ? one : total.plus(one as never);
      });
    }
    return known ? ((total ?? null) as Quantity<`money:${C}/area`, "none"> | null) : null;
  });
};
