import { civilDate, monthDay } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { checks, expectNumber, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import { type CapAmounts, checkedCaps, checkedLog, type DayAmount } from "./nitrogen-caps.js";
import type {
  ClosedSeason,
  MonthTarget,
  ProgramMonth,
  ProgramPlan,
  SeasonProgramInput,
} from "./program-parts.js";

/** A program, checked, all amounts in one unit. */
export interface ReadProgram {
  readonly months: readonly MonthTarget[];
  readonly unit: string;
  readonly caps: CapAmounts;
  readonly applied: readonly DayAmount[];
  readonly closed: readonly ClosedSeason[];
  readonly total: number;
  readonly plan: ProgramPlan;
}

const most = 120;

const checkedPlan = (plan: ProgramPlan): ProgramPlan => {
  const kind: unknown = plan?.kind;
  if (kind !== "fewest applications" && kind !== "even split" && kind !== "growth curve") {
    return fail("type", "plan.kind", kind, '"fewest applications", "even split" or "growth curve"');
  }
  if (plan.kind === "even split" && plan.applications !== undefined) {
    const count = expectNumber(plan.applications, "plan.applications", { min: 1, max: 366 });
    if (!Number.isInteger(count)) fail("range", "plan.applications", count, "a whole number");
  }
  return plan;
};

const rateOf = (input: unknown, path: string): Quantity<"mass/area", "N"> =>
  expectQuantity(input, { dimension: "mass/area", of: "N", bound: "non-negative" }, path);

/** Takes a program that may come from JSON, or throws all that is wrong with it. */
export const readProgram = (input: SeasonProgramInput): ReadProgram => {
  if (typeof input !== "object" || input === null) return fail("type", "program", input, "a record");
  const given: readonly ProgramMonth[] = Array.isArray(input.months)
    ? input.months
    : fail("type", "months", input.months, "a list of months");
  if (given.length === 0) fail("missing", "months", "an empty list", "at least one month");
  if (given.length > most) fail("range", "months", given, `at most ${most} months`);
  const door = checks();
  const plan = door.run(() => checkedPlan(input.plan));
  const wanted = input.total === undefined ? undefined : door.run(() => rateOf(input.total, "total"));
  let unit = wanted?.unit;
  const targets: (number | undefined)[] = [];
  const weights: (number | undefined)[] = [];
  for (const [i, month] of given.entries()) {
    door.run(() => {
      if (typeof month !== "object" || month === null) fail("type", "", month, "a month");
      if (typeof month.month !== "string" || !/^\d{4}-\d{2}$/.test(month.month)) {
        fail("date", "month", month.month, "a month written YYYY-MM");
      }
      civilDate(`${month.month}-01` as never, "month");
      const before = given[i - 1]?.month;
      if (typeof before === "string" && before >= month.month) {
        fail("conflict", "month", month.month, `a month after ${before}`);
      }
      const target = month.target === undefined ? undefined : rateOf(month.target, "target");
      unit ??= target?.unit;
      targets[i] = target?.in(unit as "lb/acre");
      if (target !== undefined && plan?.kind === "growth curve") {
        fail(
          "conflict",
          "target",
          target,
          "no target: a growth curve sets them from the total and the weights",
        );
      }
      weights[i] = month.weight === undefined ? undefined : expectNumber(month.weight, "weight", { min: 0 });
    }, `months[${i}]`);
  }
  const caps = door.run(() => checkedCaps(input.caps, unit, "caps"));
  const closed = input.closed ?? [];
  door.run(() => {
    if (!Array.isArray(closed)) fail("type", "closed", closed, "a list of closed seasons");
    for (const [i, season] of closed.entries()) {
      monthDay(season?.window?.from, `closed[${i}].window.from`);
      monthDay(season.window.to, `closed[${i}].window.to`);
      if (!season.source) fail("missing", `closed[${i}].source`, season.source, "who closes it");
    }
  });
  unit ??= "lb/1000 ft2";
  const common: string = unit;
  const applied = door.run(() => checkedLog(input.applied ?? [], common, "applied"));
  door.done();
  const total = shared(plan as ProgramPlan, given, targets, weights, wanted?.in(unit as "lb/acre"));
  return {
    months: given.map(({ month }, i) => {
      const target = targets[i];
      return target === undefined ? { month } : { month, target };
    }),
    unit,
    caps: caps?.amounts as CapAmounts,
    applied: applied as DayAmount[],
    closed,
    total,
    plan: plan as ProgramPlan,
  };
};

/** The total of the season; for a growth curve the targets are set from the weights. */
const shared = (
  plan: ProgramPlan,
  given: readonly ProgramMonth[],
  targets: (number | undefined)[],
  weights: readonly (number | undefined)[],
  total: number | undefined,
): number => {
  const stated = targets.filter((target) => target !== undefined).length;
  const sum = targets.reduce<number>((all, target) => all + (target ?? 0), 0);
  if (total !== undefined && stated > 0 && (exceeds(total, sum) || exceeds(sum, total))) {
    fail("conflict", "total", total, `the sum of the targets, which is ${sum}, or no total`);
  }
  const whole =
    total ?? (stated > 0 ? sum : fail("missing", "total", undefined, "a total, or a target for each month"));
  if (plan.kind === "fewest applications" && stated > 0 && stated < given.length) {
    const at = targets.indexOf(undefined);
    fail("missing", `months[${at}].target`, undefined, "a target for every month (zero is one), or for none");
  }
  if (plan.kind !== "growth curve") return whole;
  const missing = given.findIndex((_, i) => weights[i] === undefined);
  if (missing >= 0) fail("missing", `months[${missing}].weight`, undefined, "a weight for every month");
  const all = weights.reduce<number>((acc, weight) => acc + (weight ?? 0), 0);
  if (!(all > 0)) fail("range", "months", all, "weights of which one is above zero");
  for (const i of given.keys()) targets[i] = (whole * (weights[i] as number)) / all;
  return whole;
};
