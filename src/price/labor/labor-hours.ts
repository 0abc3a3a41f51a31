import { wholeUnitsFor } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  type Area,
  allOf,
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectQuantity,
  expectText,
  fail,
  type Length,
  outOfRange,
  quantity,
  type Speed,
} from "../../quantity/index.js";
import { effectiveFieldCapacity } from "../../spread/index.js";
import { expectHours, type Share, type Time } from "../cash.js";

/** A task that a machine or a person does over an area. */
export interface LaborTask {
  readonly name: string;
  readonly area: Area;
  readonly swath: Length;
  readonly speed: Speed;
  /** What is left of the full swath and speed after overlap, turns and stops. There is no default. */
  readonly efficiency: Share;
  /** How often in the season; once where it is left out. */
  readonly times?: number;
  /** People who work on it together; one where it is left out. */
  readonly people?: number;
}

/** Man-hours of a site. */
export interface LaborHours {
  readonly type: "labor-hours";
  readonly version: 1;
  readonly tasks: readonly {
    readonly name: string;
    /** One time, by the clock. */
    readonly each: Time;
    /** All times and people. */
    readonly manHours: Time;
  }[];
  readonly manHours: Time;
  /** People for these hours, rounded up; `null` where the hours of a person are not given. */
  readonly people: number | null;
}

const taskOf = (input: unknown, path: string): { name: string; each: number; manHours: number } => {
  const known = ["name", "area", "swath", "speed", "efficiency", "times", "people"] as const;
  const fields = expectFields(input, known, path);
  const { name, area, rate, times, people } = allOf({
    name: () => expectText(fields.name, `${path}.name`, "the name of the task"),
    area: () =>
      fields.area === undefined
        ? fail("missing", `${path}.area`, undefined, "the area of the task")
        : expectQuantity(fields.area, { dimension: "area", bound: "positive" }, `${path}.area`).in("m2"),
    rate: () => {
      const problems = checks();
      const found = problems.run(
        () =>
          effectiveFieldCapacity({
            swath: fields.swath as Length,
            speed: fields.speed as Speed,
            efficiency: fields.efficiency as Share,
          }).in("m2/h"),
        path,
      );
      problems.done();
      return found ?? fail("missing", path, undefined, "swath, speed and efficiency");
    },
    times: () =>
      fields.times === undefined ? 1 : expectNumber(fields.times, `${path}.times`, { above: 0, max: 1000 }),
    people: () => (fields.people === undefined ? 1 : wholePeople(fields.people, `${path}.people`)),
  });
  const each = area / rate;
  return { name, each, manHours: each * times * people };
};

const wholePeople = (input: unknown, path: string): number => {
  const people = expectNumber(input, path, { min: 1, max: 1000 });
  return Number.isInteger(people) ? people : outOfRange(path, people, { step: 1, count: "people" });
};

/**
 * Man-hours of a site from the areas of its tasks, and the people that they take.
 *
 * `hours each = area / (swath x speed x efficiency)`, `man-hours = hours each x times x people on the task`
 *
 * The efficiency is a task's own: a mower between beds loses more than one on an open field. Where turns and fills are known
 * apart, {@link workRate} and {@link fieldEfficiency} give it. Travel between sites, loading and cleaning are not in it: add
 * them as hours of their own.
 *
 * @param input.hoursPerPerson - the working hours of one person over the same season
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type` with paths such as `tasks[1].efficiency`
 * Source: field capacity as for `effectiveFieldCapacity`; the sum is arithmetic.
 *
 * @example
 * ```ts
 * import { laborHours, quantity } from "ratewright";
 * const site = laborHours({
 *   tasks: [
 *     { name: "mow pitches", area: quantity(4, "acre"), swath: quantity(6, "ft"), speed: quantity(5, "mi/h"), efficiency: quantity(80, "%"), times: 30 },
 *     { name: "mow bowling green", area: quantity(0.4, "acre"), swath: quantity(22, "in"), speed: quantity(3, "mi/h"), efficiency: quantity(75, "%"), times: 120 },
 *   ],
 *   hoursPerPerson: quantity(1200, "h"),
 * });
 * site.tasks.map(({ manHours }) => Number(manHours.in("h").toFixed(1))); // => [41.3, 96]
 * site.people; // => 1
 * ```
 */
export const laborHours = (input: {
  readonly tasks: readonly LaborTask[];
  readonly hoursPerPerson?: Time;
}): LaborHours => {
  const fields = expectFields(input, ["tasks", "hoursPerPerson"]);
  const { list, own } = allOf({
    list: () => {
      const tasks = expectList(fields.tasks, "tasks", "task");
      return tasks.length <= 1000
        ? tasks
        : outOfRange("tasks", described(`${tasks.length} tasks`), { max: 1000 });
    },
    own: () =>
      fields.hoursPerPerson === undefined
        ? undefined
        : expectHours(fields.hoursPerPerson, "hoursPerPerson", "the hours of one person", "positive"),
  });
  const problems = checks();
  const tasks = list.flatMap((one, i) => problems.run(() => taskOf(one, `tasks[${i}]`)) ?? []);
  problems.done();
  const manHours = tasks.reduce((sum, task) => sum + task.manHours, 0);
  return {
    type: "labor-hours",
    version: 1,
    tasks: tasks.map(({ name, each, manHours: all }) => ({
      name,
      each: quantity(each, "h"),
      manHours: quantity(all, "h"),
    })),
    manHours: quantity(manHours, "h"),
    people: own === undefined ? null : wholeUnitsFor(manHours, own),
  };
};
