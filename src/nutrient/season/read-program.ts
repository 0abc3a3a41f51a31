import { type CivilDate, civilDate, monthDay } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { expectSource } from "../label/expect-source.js";
import { eachOf, listOf } from "../label/under-path.js";
import { type CapAmounts, checkedCaps, checkedLog, type DayAmount } from "./nitrogen-caps.js";
import type { ClosedSeason, MonthTarget, ProgramPlan, SeasonProgramInput } from "./program-parts.js";
import { type ApplicationInterval, readInterval, readLeastAmount } from "./program-spacing.js";

/** A program, checked, all amounts in one unit. */
export interface ReadProgram {
  readonly months: readonly MonthTarget[];
  readonly unit: string;
  readonly caps: CapAmounts;
  readonly applied: readonly DayAmount[];
  readonly closed: readonly ClosedSeason[];
  readonly total: number;
  readonly plan: ProgramPlan;
  readonly leastInterval: ApplicationInterval;
  readonly intervalStated: boolean;
  readonly leastAmount: number;
}

const mostMonths = 120;
const mostClosed = 100;
const fields = [
  "months",
  "total",
  "plan",
  "caps",
  "closed",
  "applied",
  "leastInterval",
  "leastAmount",
] as const;
const kinds = ["fewest applications", "even split", "growth curve"] as const;

const wantedPlan = `a record with kind: ${kinds.map((kind) => `{ kind: "${kind}" }`).join(", ")}`;

const checkedPlan = (plan: unknown): ProgramPlan => {
  const given = expectFields(plan, ["kind", "applications"], "plan", wantedPlan);
  const kind = expectOneOf(given.kind, kinds, "plan.kind");
  if (kind !== "even split") {
    if (given.applications !== undefined) {
      fail(
        "conflict",
        "plan.applications",
        given.applications,
        'no number of applications but in an "even split"',
      );
    }
    return { kind };
  }
  if (given.applications === undefined) return { kind };
  const applications = expectNumber(given.applications, "plan.applications", { min: 1, max: 366 });
  return Number.isInteger(applications)
    ? { kind, applications }
    : outOfRange("plan.applications", applications, { step: 1 });
};

const rateOf = (input: unknown, path: string): Quantity<"mass/area", "N"> =>
  expectQuantity(input, { dimension: "mass/area", of: "N", bound: "non-negative" }, path);

/** A month as it was given: its name, and its target and weight where it has them. */
interface ReadMonth {
  readonly month: string;
  readonly target: Quantity<"mass/area", "N"> | undefined;
  readonly weight: number | undefined;
}

const monthName = (input: unknown): string => {
  if (typeof input !== "string" || !/^\d{4}-\d{2}$/.test(input)) {
    return fail("date", "month", input, "a month written YYYY-MM");
  }
  civilDate(`${input}-01` as CivilDate, "month");
  return input;
};

const readMonths = (input: unknown, kind: unknown): readonly ReadMonth[] => {
  const list = listOf(input, "months", "month", mostMonths);
  let before = "";
  return eachOf(list, "months", (given) => {
    const { month, target, weight } = expectFields(given, ["month", "target", "weight"], "", "a month");
    const read = allOf({
      month: () => {
        const name = monthName(month);
        const last = before;
        before = name;
        return last >= name ? fail("conflict", "month", name, `a month after ${last}`) : name;
      },
      target: () => {
        if (target === undefined) return undefined;
        const rate = rateOf(target, "target");
        const text = "no target: a growth curve sets them from the total and the weights";
        return kind === "growth curve" ? fail("conflict", "target", rate, text) : rate;
      },
      weight: () => (weight === undefined ? undefined : expectNumber(weight, "weight", { min: 0 })),
    });
    return read;
  });
};

const readClosed = (input: unknown): readonly ClosedSeason[] => {
  if (input === undefined) return [];
  if (!Array.isArray(input)) return fail("type", "closed", input, "a list of closed seasons");
  if (input.length > mostClosed) outOfRange("closed", input, { max: mostClosed, count: "closed seasons" });
  return eachOf(Array.from(input), "closed", (given) => {
    const { window, source } = expectFields(given, ["window", "source"], "", "{ window, source }");
    const { from, to } = expectFields(window, ["from", "to"], "window", "{ from, to }");
    return allOf({
      window: () => allOf({ from: () => monthDay(from, "window.from"), to: () => monthDay(to, "window.to") }),
      source: () => expectSource(source, "source"),
    });
  });
};

/** Takes a program that may come from JSON, or throws all that is wrong with it. */
export const readProgram = (input: SeasonProgramInput): ReadProgram => {
  expectFields(input, fields, "program", "a record");
  const read = allOf({
    plan: () => checkedPlan(input.plan),
    total: () => (input.total === undefined ? undefined : rateOf(input.total, "total")),
    months: () => readMonths(input.months, input.plan?.kind),
    caps: () => checkedCaps(input.caps, undefined, "caps"),
    closed: () => readClosed(input.closed),
    applied: () => checkedLog(input.applied ?? [], anyUnit, "applied"),
    interval: () => readInterval(input.leastInterval, "leastInterval"),
    least: () => readLeastAmount(input.leastAmount, anyUnit, "leastAmount"),
  });
  const stated = read.months.find(({ target }) => target !== undefined)?.target;
  const unit = read.total?.unit ?? stated?.unit ?? anyUnit;
  const here = (amount: Quantity<"mass/area", "N"> | undefined): number | undefined =>
    amount === undefined ? undefined : numberIn(amount, unit);
  const { targets, total } = shared(
    read.plan,
    read.months,
    read.months.map(({ target }) => here(target)),
    here(read.total),
  );
  return {
    months: read.months.map(({ month }, i) => ({ month, target: targets[i] })),
    unit,
    caps: checkedCaps(input.caps, unit, "caps").amounts,
    applied: checkedLog(input.applied ?? [], unit, "applied"),
    closed: read.closed,
    total,
    plan: read.plan,
    leastInterval: read.interval,
    intervalStated: input.leastInterval !== undefined,
    leastAmount: readLeastAmount(input.leastAmount, unit, "leastAmount"),
  };
};

/** The unit in which amounts are read until that of the plan is known. */
const anyUnit = "lb/1000 ft2";

/** The targets of the months and the total of the season; for a growth curve the targets are set from the weights. */
const shared = (
  plan: ProgramPlan,
  given: readonly ReadMonth[],
  targets: readonly (number | undefined)[],
  total: number | undefined,
): { readonly targets: readonly (number | undefined)[]; readonly total: number } => {
  const stated = targets.filter((target) => target !== undefined).length;
  const sum = targets.reduce<number>((all, target) => all + (target ?? 0), 0);
  if (total !== undefined && stated > 0 && (exceeds(total, sum) || exceeds(sum, total))) {
    fail("conflict", "total", total, `the sum of the targets, which is ${sum}, or no total`);
  }
  const whole =
    total ?? (stated > 0 ? sum : fail("missing", "total", undefined, "a total, or a target for each month"));
  if (plan.kind === "fewest applications" && stated > 0 && stated < given.length) {
    const gap = targets.indexOf(undefined);
    fail(
      "missing",
      `months[${gap}].target`,
      undefined,
      "a target for every month (zero is one), or for none",
    );
  }
  if (plan.kind !== "growth curve") return { targets, total: whole };
  const missing = given.findIndex(({ weight }) => weight === undefined);
  if (missing >= 0) fail("missing", `months[${missing}].weight`, undefined, "a weight for every month");
  const all = given.reduce((sum, { weight = 0 }) => sum + weight, 0);
  if (!(all > 0 && Number.isFinite(all)))
    outOfRange("months", all, { above: 0 }, "weights that add up to {}");
  return { targets: given.map(({ weight = 0 }) => (whole * weight) / all), total: whole };
};
