import { exceeds } from "../numeric/index.js";
import { type Fertilizer, type NutrientsSupplied, nutrientsSupplied } from "../nutrient/index.js";
import {
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  type Quantity,
  quantity,
  quantityOf,
} from "../quantity/index.js";
import type { ProductName } from "./active-ingredient.js";
import { activeInProduct } from "./active-ingredient.js";
import { type Area, allOf, ground, numberIn, type Share, share } from "./inputs.js";

/** A quantity whose kind is checked at run time: a `Quantity` fits, and what JSON left of one. */
export interface AnyQuantity {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
}

/** The most of something that a label, an ordinance or a plan states for a named period. */
export interface StatedLimit {
  /** Of the product, of a nutrient such as `N` or `P2O5`, or of an active ingredient. */
  readonly limit: AnyQuantity;
  /** What was put down in the period before this application; zero where none, but said. */
  readonly before: AnyQuantity;
  /** Such as `calendar year 2026`, in the words of whoever keeps the record. */
  readonly period: string;
  /** Who states it. */
  readonly source: string;
}

/** What remains under one stated limit. */
export interface RemainingUnderLimit {
  readonly of: string;
  readonly period: string;
  readonly source: string;
  readonly limit: Quantity<string, string>;
  /** Before and with this application. */
  readonly used: Quantity<string, string>;
  /** Negative where the limit is passed. */
  readonly remaining: Quantity<string, string>;
  readonly passed: boolean;
}

/** What an application really came to. */
export interface AsApplied<D extends "mass" | "volume", P extends string> {
  readonly type: "as-applied";
  readonly version: 1;
  readonly rate: Quantity<`${D}/area`, P>;
  readonly planned?: Quantity<`${D}/area`, P>;
  /** How far the real rate lies above the plan; negative where below. */
  readonly deviation?: Share;
  /** What was used beyond the plan for this area; negative where less. */
  readonly beyondPlan?: Quantity<D, P>;
  /** Per area, where the product is a fertilizer. */
  readonly nutrients?: NutrientsSupplied<"mass/area">;
  /** Per area, where the content of active ingredient was given. */
  readonly active?: Quantity<"mass/area", string>;
  readonly remainingUnderStatedLimits: readonly RemainingUnderLimit[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/**
 * What an application really came to, from the product that was used and the area that was covered.
 *
 * - real rate `= used / area`; deviation `= rate / planned - 1`
 * - nutrients by `nutrientsSupplied`; a liquid is weighed through the density of its record
 * - what remains under a stated limit `= limit - before - now`, for the product, a nutrient or an active
 *   ingredient
 *
 * The limits are the caller's, from the label or an ordinance: none is known here, and a limit that cannot
 * be held against this product is named in `notChecked`. What is left over in the tank or the hopper is not
 * used: take it off first.
 *
 * @param input - `used`, zero or more; `area`, more than zero; `planned` rate; `tolerance` around it, beyond
 * which a finding says so; `fertilizer`, the record of this product; `active` content of it; `limits`
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`,
 * `type`
 * Source: arithmetic; what an application record holds, common practice, no source.
 *
 * @example
 * ```ts
 * import { asApplied, fertilizer, quantity } from "ratewright";
 * const done = asApplied({
 *   used: quantity(50, "lb", "product:feed-a"),
 *   area: quantity(12_000, "ft2"),
 *   planned: quantity(3.75, "lb/1000 ft2", "product:feed-a"),
 *   fertilizer: fertilizer({ id: "feed-a", analysis: "24-0-11" }),
 *   limits: [{
 *     limit: quantity(3, "lb/1000 ft2", "N"),
 *     before: quantity(1.5, "lb/1000 ft2", "N"),
 *     period: "calendar year",
 *     source: "county ordinance",
 *   }],
 * });
 * Number(done.rate.in("lb/1000 ft2").toFixed(4)); // => 4.1667
 * Number(done.deviation?.in("%").toFixed(2)); // => 11.11
 * Number(done.nutrients?.N?.in("lb/1000 ft2").toFixed(6)); // => 1
 * Number(done.remainingUnderStatedLimits[0]?.remaining.value.toFixed(6)); // => 0.5
 * ```
 */
export const asApplied = <D extends "mass" | "volume", const P extends ProductName>(input: {
  readonly used: Quantity<D, P>;
  readonly area: Area | Quantity<"area", "treated"> | Quantity<"area", "gross">;
  readonly planned?: Quantity<`${NoInfer<D>}/area`, NoInfer<P>>;
  readonly tolerance?: Share;
  readonly fertilizer?: Fertilizer;
  readonly active?: AnyQuantity;
  readonly limits?: readonly StatedLimit[];
}): AsApplied<D, P> => {
  expectRecord(input);
  const { used, area, tolerance } = allOf({
    used: () => usedOf(input.used),
    area: () => ground(input.area, "area"),
    tolerance: () => (input.tolerance === undefined ? undefined : share(input.tolerance, "tolerance", 1)),
    limits: () =>
      input.limits === undefined || Array.isArray(input.limits)
        ? undefined
        : fail("type", "limits", input.limits, "a list of limits"),
  });
  const rate = used.per(area as never) as unknown as Quantity<"mass/area", string>;
  const { planned, nutrients, active } = allOf({
    planned: () => plannedOf(input.planned, rate),
    nutrients: () => (input.fertilizer === undefined ? undefined : suppliedBy(rate, input.fertilizer)),
    active: () => (input.active === undefined ? undefined : activeOf(rate, input.active)),
  });
  const deviation =
    planned === undefined
      ? undefined
      : (100 * (numberIn(rate, planned.unit) - planned.value)) / planned.value;
  const amounts = new Map<string, Quantity<string, string>>([
    [rate.of, rate as unknown as Quantity<string, string>],
  ]);
  for (const [of, q] of Object.entries(nutrients ?? {}))
    amounts.set(of, q as unknown as Quantity<string, string>);
  if (active !== undefined) amounts.set(active.of, active as unknown as Quantity<string, string>);
  const { limits, unknown } = remainingOf(input.limits ?? [], amounts);
  return {
    type: "as-applied",
    version: 1,
    rate: rate as never,
    ...(planned === undefined
      ? {}
      : {
          planned: planned as never,
          deviation: quantity(deviation as number, "%"),
          beyondPlan: likeUsed(used, used.value - numberIn(planned.times(area as never), used.unit)) as never,
        }),
    ...(nutrients === undefined ? {} : { nutrients }),
    ...(active === undefined ? {} : { active }),
    remainingUnderStatedLimits: limits,
    findings: findingsOf(deviation, tolerance, limits),
    checked: [
      "the real rate",
      ...(planned === undefined ? [] : ["the rate against the plan"]),
      ...limits.map(({ of, period }) => `the stated limit of ${of} in the ${period}`),
    ],
    notChecked: [
      ...(planned === undefined ? ["the plan: no planned rate was given"] : []),
      ...(planned !== undefined && tolerance === undefined
        ? ["whether the deviation matters: no tolerance was given"]
        : []),
      ...(nutrients === undefined ? ["nutrients: no fertilizer record was given"] : []),
      ...unknown,
      "limits that were not given here",
    ],
  };
};

const usedOf = (input: unknown): Quantity<"mass" | "volume", string> => {
  if (input === undefined || input === null) return fail("missing", "used", input, "the product used");
  const { value, unit, of } = input as { value: number; unit: string; of?: string };
  if (typeof unit !== "string") return fail("type", "used", input, "a mass or a volume of product");
  const q = quantityOf(value, unit, of ?? "none", "used");
  if (q.dimension !== "mass" && q.dimension !== "volume")
    fail("unit/mismatch", "used", q, "a mass or a volume");
  if (!/^product(:[^/]+)?$/.test(q.of)) fail("substance/mismatch", "used", q, "an amount of product");
  if (q.value < 0) fail("range", "used", q, "zero or more");
  return q as unknown as Quantity<"mass" | "volume", string>;
};

const likeUsed = (used: Quantity<"mass" | "volume", string>, value: number): Quantity<string, string> =>
  quantityOf(value, used.unit, used.of, "used");

const plannedOf = (
  planned: unknown,
  { dimension, of }: Quantity<"mass/area", string>,
): Quantity<"mass/area", string> | undefined =>
  planned === undefined
    ? undefined
    : expectQuantity(planned, { dimension, of, bound: "positive" }, "planned");

const suppliedBy = (
  rate: Quantity<"mass/area", string>,
  product: Fertilizer,
): NutrientsSupplied<"mass/area"> => {
  if ((rate.dimension as string) === "mass/area") return nutrientsSupplied(rate as never, product);
  if (product.density === undefined) {
    return fail(
      "missing",
      "fertilizer.density",
      undefined,
      "a density, for the product was measured by volume",
    );
  }
  const density = expectQuantity(
    product.density,
    { dimension: "mass/volume", of: "none", bound: "positive" },
    "fertilizer.density",
  );
  const weighed = (rate as unknown as Quantity<"volume/area", "product">).times(density);
  return nutrientsSupplied(weighed as never, product);
};

const activeOf = (rate: Quantity<"mass/area", string>, content: unknown): Quantity<"mass/area", string> =>
  activeInProduct({ product: rate, content } as never) as never;

const remainingOf = (
  stated: readonly StatedLimit[],
  amounts: ReadonlyMap<string, Quantity<string, string>>,
): { readonly limits: readonly RemainingUnderLimit[]; readonly unknown: readonly string[] } => {
  const limits: RemainingUnderLimit[] = [];
  const unknown: string[] = [];
  stated.forEach((one, i) => {
    const at = `limits[${i}]`;
    if (typeof one !== "object" || one === null) fail("type", at, one, "a stated limit");
    const { period, source } = one;
    if (typeof period !== "string" || period === "")
      fail("missing", `${at}.period`, period, "the period, in words");
    if (typeof source !== "string" || source === "")
      fail("missing", `${at}.source`, source, "who states the limit");
    const limit = rateIn(one.limit, `${at}.limit`);
    const { dimension, of } = limit;
    const before = expectQuantity(
      one.before ?? missing(`${at}.before`),
      { dimension, of, bound: "non-negative" },
      `${at}.before`,
    );
    const now = amounts.get(of);
    if (now === undefined) {
      unknown.push(
        `the stated limit of ${of} in the ${period}: what this application holds of it is not known`,
      );
      return;
    }
    if (now.dimension !== dimension) {
      fail("unit/mismatch", `${at}.limit`, limit, `a limit in the measure of the product, ${now.dimension}`);
    }
    const used = numberIn(before, limit.unit) + numberIn(now, limit.unit);
    const inLimit = (value: number): Quantity<string, string> => quantityOf(value, limit.unit, of, at);
    limits.push({
      of,
      period,
      source,
      limit,
      used: inLimit(used),
      remaining: inLimit(limit.value - used),
      passed: exceeds(used, limit.value),
    });
  });
  return { limits, unknown };
};

const missing = (path: string): never =>
  fail("missing", path, undefined, "what was put down before in the period, zero where none");

const rateIn = (input: unknown, path: string): Quantity<string, string> => {
  if (input === undefined || input === null) return fail("missing", path, input, "a limit per area");
  const { value, unit, of } = input as { value: number; unit: string; of?: string };
  if (typeof unit !== "string") return fail("type", path, input, "a limit per area");
  const q = quantityOf(value, unit, of ?? "none", path);
  if (q.dimension !== "mass/area" && q.dimension !== "volume/area")
    fail("unit/mismatch", path, q, "a limit per area");
  return q.value < 0 ? fail("range", path, q, "zero or more") : q;
};

const findingsOf = (
  deviation: number | undefined,
  tolerance: Share | undefined,
  limits: readonly RemainingUnderLimit[],
): readonly Finding[] => {
  const findings: Finding[] = [];
  if (deviation !== undefined && tolerance !== undefined && exceeds(Math.abs(deviation), tolerance.in("%"))) {
    const off = Number(Math.abs(deviation).toPrecision(3));
    findings.push({
      code: "as-applied/off-plan",
      severity: "caution",
      params: { percent: deviation, tolerance: tolerance.in("%") },
      text: `The real rate lies ${off} % ${deviation > 0 ? "above" : "below"} the plan. Calibrate again before the next application.`,
    });
  }
  for (const { of, period, source, remaining, passed } of limits) {
    if (!passed) continue;
    findings.push({
      code: "as-applied/limit-passed",
      severity: "warning",
      params: { of, period, beyond: -remaining.value, unit: remaining.unit },
      text: `The stated limit of ${of} in the ${period} is passed by ${Number((-remaining.value).toPrecision(4))} ${remaining.unit}.`,
      source,
    });
  }
  return findings;
};
