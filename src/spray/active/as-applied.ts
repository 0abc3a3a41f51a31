import { exceeds } from "../../numeric/index.js";
import { type Fertilizer, type NutrientsSupplied, nutrientsSupplied } from "../../nutrient/index.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
  RatewrightError,
} from "../../quantity/index.js";
import { type Area, ground, type Share, share } from "../inputs.js";
import { activeInProduct, type ProductName } from "./active-ingredient.js";
import {
  type AnyQuantity,
  type RemainingUnderLimit,
  remainingOf,
  type StatedLimit,
} from "./stated-limits.js";

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
  expectFields(input, ["used", "area", "planned", "tolerance", "fertilizer", "active", "limits"]);
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
    // Their own problems belong with the others; what remains under them is known only afterwards.
    limits: () => remainingOf(input.limits ?? [], new Map()),
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
  const q = expectAmount(input, { dimensions: ["mass", "volume"], bound: "non-negative" }, "used");
  return /^product(:[^/]+)?$/.test(q.of)
    ? (q as unknown as Quantity<"mass" | "volume", string>)
    : fail("substance/mismatch", "used", q, "an amount of product");
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
  expectFields(
    product,
    ["type", "version", "id", "name", "form", "analysis", "nitrogen", "slowNitrogen", "density", "package"],
    "fertilizer",
    "a fertilizer, as fertilizer makes it",
  );
  const supplied = (weighed: unknown): NutrientsSupplied<"mass/area"> =>
    renamed({ amount: "used", product: "fertilizer" }, () => nutrientsSupplied(weighed as never, product));
  if ((rate.dimension as string) === "mass/area") return supplied(rate);
  if (product.density === undefined) {
    return fail(
      "missing",
      "fertilizer.density",
      undefined,
      "a density, because the product was measured by volume",
    );
  }
  const density = expectQuantity(
    product.density,
    { dimension: "mass/volume", of: "none", bound: "positive" },
    "fertilizer.density",
  );
  return supplied((rate as unknown as Quantity<"volume/area", "product">).times(density));
};

const activeOf = (rate: Quantity<"mass/area", string>, content: unknown): Quantity<"mass/area", string> =>
  renamed(
    { product: "used", content: "active" },
    () => activeInProduct({ product: rate, content } as never) as never,
  );

/** Runs a formula whose arguments have other names there, and gives its problems the names that they have here. */
const renamed = <T>(names: Readonly<Record<string, string>>, run: () => T): T => {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(
      error.problems.map((one) => {
        const [, first = "", rest = ""] = /^(\w*)(.*)$/.exec(one.path) ?? [];
        return { ...one, path: (names[first] ?? first) + rest };
      }),
    );
  }
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
  for (const { of, period, source, remaining, broken } of limits) {
    if (!broken) continue;
    findings.push({
      code: "as-applied/limit-broken",
      severity: "warning",
      params: { of, period, beyond: -remaining.value, unit: remaining.unit },
      text: `What went down of ${of} in the ${period} is over the stated limit by ${Number((-remaining.value).toPrecision(4))} ${remaining.unit}.`,
      source,
    });
  }
  return findings;
};
