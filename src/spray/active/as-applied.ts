import { exceeds } from "../../numeric/index.js";
import { fertilizerFields } from "../../nutrient/house.js";
import { type Fertilizer, type NutrientsSupplied, nutrientsSupplied } from "../../nutrient/index.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  likeQuantity,
  numberIn,
  ofKind,
  outOfRange,
  perOf,
  type Quantity,
  quantity,
  timesOf,
  toldBy,
} from "../../quantity/index.js";
import { type Area, ground, type Share, share } from "../inputs.js";
import { activeIn, type ProductName } from "./active-ingredient.js";
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
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`; what
 *   `fertilizer` throws for the record of a product
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
  const { used, area, rate, planned, tolerance, nutrients, active, stated } = readApplied<D, P>(input);
  const deviation = planned && (100 * (numberIn(rate, planned.unit) - planned.value)) / planned.value;
  const amounts: readonly AnyQuantity[] = [
    rate,
    ...Object.values(nutrients ?? {}),
    ...(active ? [active] : []),
  ];
  const { limits, unknown } = remainingOf(stated, new Map(amounts.map((one) => [one.of, one])));
  return {
    type: "as-applied",
    version: 1,
    rate,
    ...(planned !== undefined &&
      deviation !== undefined && {
        planned,
        deviation: quantity(deviation, "%"),
        beyondPlan: likeQuantity(used, used.value - numberIn(timesOf(planned, area), used.unit)),
      }),
    ...(nutrients && { nutrients }),
    ...(active && { active }),
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

/** An application, read: the rate that it came to, and what the records make of it. */
interface Applied<D extends "mass" | "volume", P extends string> {
  readonly used: Quantity<D, P>;
  readonly area: Area;
  readonly rate: Quantity<`${D}/area`, P>;
  readonly planned: Quantity<`${D}/area`, P> | undefined;
  readonly tolerance: Share | undefined;
  readonly nutrients: NutrientsSupplied<"mass/area"> | undefined;
  readonly active: Quantity<"mass/area", string> | undefined;
  readonly stated: readonly StatedLimit[];
}

const readApplied = <D extends "mass" | "volume", P extends string>(input: unknown): Applied<D, P> => {
  const given = expectFields(input, [
    "used",
    "area",
    "planned",
    "tolerance",
    "fertilizer",
    "active",
    "limits",
  ]);
  const { used, area, tolerance, stated } = allOf({
    used: () => usedOf<D, P>(given.used),
    area: () => ground(given.area, "area"),
    tolerance: () => (given.tolerance === undefined ? undefined : share(given.tolerance, "tolerance", 1)),
    stated: () => limitsOf(given.limits),
  });
  const rate = ofKind<`${D}/area`, P>(perOf(used, area));
  const read = allOf({
    planned: () =>
      given.planned === undefined
        ? undefined
        : expectQuantity(
            given.planned,
            { dimension: rate.dimension, of: rate.of, bound: "positive" },
            "planned",
          ),
    nutrients: () => (given.fertilizer === undefined ? undefined : suppliedBy(rate, given.fertilizer)),
    active: () => (given.active === undefined ? undefined : activeOf(rate, given.active)),
    // Their own problems belong with the others; what remains under them is known only afterwards.
    limits: () => remainingOf(stated, new Map()),
  });
  return { used, area, rate, tolerance, stated, ...read };
};

/** More limits than this are taken for a slip. */
const mostLimits = 1000;

const limitsOf = (input: unknown): readonly StatedLimit[] => {
  if (input === undefined) return [];
  if (!Array.isArray(input)) return fail("type", "limits", input, "a list of limits");
  if (input.length > mostLimits) outOfRange("limits", input, { max: mostLimits });
  return Array.from(input);
};

const usedOf = <D extends "mass" | "volume", P extends string>(input: unknown): Quantity<D, P> => {
  if (input === undefined || input === null) return fail("missing", "used", input, "the product used");
  const q = expectAmount(input, { dimensions: ["mass", "volume"], bound: "non-negative" }, "used");
  return /^product(:[^/]+)?$/.test(q.of)
    ? ofKind<D, P>(q)
    : fail("substance/mismatch", "used", q, "an amount of product");
};

const suppliedBy = (rate: AnyQuantity, input: unknown): NutrientsSupplied<"mass/area"> => {
  const record = expectFields(input, fertilizerFields, "fertilizer", "a fertilizer, as fertilizer makes it");
  return toldBy({ amount: "used", product: "fertilizer" }, () =>
    nutrientsSupplied(
      ofKind<"mass/area", `product:${string}`>(weighed(rate, record.density)),
      // Read there, field by field.
      record as Fertilizer,
    ),
  );
};

/** The rate by weight: as it is, or of what was measured by volume through its density. */
const weighed = (rate: AnyQuantity, density: unknown): unknown => {
  if (expectAmount(rate, { dimensions: ["mass/area", "volume/area"] }, "used").dimension === "mass/area")
    return rate;
  if (density === undefined)
    return fail(
      "missing",
      "fertilizer.density",
      undefined,
      "a density, because the product was measured by volume",
    );
  return timesOf(
    rate,
    expectQuantity(
      density,
      { dimension: "mass/volume", of: "none", bound: "positive" },
      "fertilizer.density",
    ),
  );
};

const activeOf = (rate: AnyQuantity, content: unknown): Quantity<"mass/area", string> =>
  toldBy({ product: "used", content: "active" }, () =>
    expectQuantity(activeIn(rate, content), { dimension: "mass/area" }, "active"),
  );

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
      text: `The real rate is ${off} % ${deviation > 0 ? "above" : "below"} the plan. Calibrate again before the next application.`,
    });
  }
  for (const { of, period, source, remaining, exceeded } of limits) {
    if (!exceeded) continue;
    findings.push({
      code: "as-applied/limit-exceeded",
      severity: "warning",
      params: { of, period, beyond: -remaining.value, unit: remaining.unit },
      text: `The ${of} applied in the ${period} is over the stated limit by ${Number((-remaining.value).toPrecision(4))} ${remaining.unit}.`,
      source,
    });
  }
  return findings;
};
