import {
  addDays,
  type CivilDate,
  civilDate,
  type DailyTemperatures,
  daysBetween,
} from "../../calendar/index.js";
import {
  allOf,
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectShortText } from "../label/expect-source.js";
import { eachOf, listOf } from "../label/under-path.js";
import type { NitrogenPortion } from "../release/nitrogen-portion.js";
import { checkedPlacement, type Placement } from "../release/release-model.js";
import { type MeanTemperature, type ReleaseWeather, releaseWeather } from "../release/release-weather.js";
import { releasedNitrogen } from "../release/released-nitrogen.js";
import type { Run } from "./program-sums.js";

/** A program as it was read, with the release of each of its applications. */
export interface ReadComparedProgram {
  readonly name: string;
  readonly runs: readonly Run[];
  /** Of each application; undefined where it states none. */
  readonly costs: readonly (Quantity<string, "none"> | undefined)[];
}

/** A comparison as it was read. */
export interface ReadComparison {
  readonly from: CivilDate;
  readonly weeks: number;
  readonly weather: ReleaseWeather;
  readonly programs: readonly ReadComparedProgram[];
}

type Temperature = DailyTemperatures | MeanTemperature;

const mostPrograms = 100;
const mostApplications = 400;
const fields = ["from", "weeks", "placement", "temperature", "programs"] as const;

/** Takes a comparison that may come from JSON, or throws all that is wrong with it. */
export const readComparison = (input: {
  readonly from: CivilDate;
  readonly weeks: number;
  readonly placement: Placement;
  readonly temperature: Temperature;
  readonly programs: unknown;
}): ReadComparison => {
  expectFields(input, fields, "input");
  const { from, weeks, placement, programs } = allOf({
    from: () => civilDate(input.from, "from"),
    weeks: () => {
      const given = expectNumber(input.weeks, "weeks", { min: 1, max: 104 });
      return Number.isInteger(given) ? given : outOfRange("weeks", given, { step: 1, count: "weeks" });
    },
    placement: () => checkedPlacement(input.placement, "placement"),
    programs: () => {
      return listOf(input.programs, "programs", "program", mostPrograms);
    },
  });
  // Once for all programs: in each application the same fault would be told again, under the wrong path.
  const start = earliestStart(programs, from, 7 * weeks);
  const problems = checks();
  const weather = problems.run(() =>
    releaseWeather(input.temperature, addDays(from, start), 7 * weeks - start),
  );
  // A temperature that is none is told once; the applications are then read at any.
  const temperature = weather === undefined ? { mean: quantity(20, "°C") } : input.temperature;
  const read = problems.run(() => readPrograms(programs, { from, days: 7 * weeks, placement, temperature }));
  problems.done();
  return {
    from,
    weeks,
    weather: weather as ReleaseWeather,
    programs: read as readonly ReadComparedProgram[],
  };
};

interface Frame {
  readonly from: CivilDate;
  readonly days: number;
  readonly placement: Placement;
  readonly temperature: Temperature;
}

const readPrograms = (list: readonly unknown[], frame: Frame): readonly ReadComparedProgram[] => {
  const names = new Set<string>();
  let currency: string | undefined;
  return eachOf(list, "programs", (item) => {
    const given = expectFields(item, ["name", "applications"], "", "{ name, applications }");
    const { name, applications } = allOf({
      name: () => {
        const name = expectShortText(given.name, "name", "a name");
        if (names.has(name)) fail("duplicate", "name", name, "a name of its own");
        names.add(name);
        return name;
      },
      applications: () => {
        const all = listOf(given.applications, "applications", "application", mostApplications);
        return eachOf(all, "applications", (application) => {
          const read = readApplication(application, frame, currency);
          currency ??= read.cost?.dimension.split("/")[0];
          return read;
        });
      },
    });
    return { name, runs: applications.map(({ run }) => run), costs: applications.map(({ cost }) => cost) };
  });
};

const readApplication = (
  item: unknown,
  { from, days, placement, temperature }: Frame,
  currency: string | undefined,
): { readonly run: Run; readonly cost: Quantity<string, "none"> | undefined } => {
  const { date, portions, cost } = expectFields(item, ["date", "portions", "cost"], "", "{ date, portions }");
  return allOf({
    run: (): Run => {
      const applied = civilDate(date as CivilDate, "date");
      const start = daysBetween(from, applied);
      if (start < 0 || start >= days) {
        fail("date", "date", applied, `a date from ${from} to ${addDays(from, days - 1)}`);
      }
      const parts = portions as readonly NitrogenPortion[];
      const input = { applied, days: days - start, placement, temperature, portions: parts };
      return { start, release: releasedNitrogen(input) };
    },
    cost: () => (cost === undefined ? undefined : readCost(cost, currency)),
  });
};

/** Money per area, in the currency of all. */
const readCost = (cost: unknown, currency: string | undefined): Quantity<string, "none"> => {
  const unit: unknown = Object(cost).unit;
  const own = typeof unit === "string" ? /^(money:[A-Z]{3})\//.exec(unit)?.[1] : undefined;
  if (own === undefined) return fail("unit/mismatch", "cost", cost, "money per area");
  const dimension: string = `${currency ?? own}/area`;
  return expectQuantity(cost, { dimension, of: "none", bound: "non-negative" }, "cost");
};

/** The day of the first application that has a date within the weeks; 0 where none has. */
const earliestStart = (programs: readonly unknown[], from: CivilDate, days: number): number => {
  const quiet = checks();
  const starts = programs.flatMap((program) => {
    const applications: unknown = Object(program).applications;
    return (Array.isArray(applications) ? applications.slice(0, mostApplications) : []).map(
      (application: unknown) =>
        quiet.run(() => daysBetween(from, civilDate(Object(application).date, "date"))),
    );
  });
  const within = starts.filter((day): day is number => day !== undefined && day >= 0 && day < days);
  return within.length === 0 ? 0 : Math.min(...within);
};
