import { exceeds } from "../../numeric/index.js";
import { allOf, expectFields, expectOneOf, type Finding, type Quantity } from "../../quantity/index.js";
import type { Nutrient } from "../label/analysis.js";
import { exactRates } from "./exact-rates.js";
import type { NutrientsSupplied } from "./nutrients-supplied.js";
import { type RateStep, rateOf, readSteps } from "./rate-steps.js";
import { byTurn, inTurn } from "./rates-in-turn.js";
import { sumOfSupplies } from "./sum-of-supplies.js";
import { broughtBy, oversupplies, supplyOf } from "./supply-of.js";

/** The rate of one product, and what the other products bring of its nutrient. */
export interface StepRate {
  readonly product: string;
  readonly nutrient: Nutrient;
  /** What the products before it bring of this nutrient; all others, where the rates were solved at once. */
  readonly credited: Quantity<"mass/area", string>;
  /** What was still to come, zero where the credit is enough. */
  readonly remaining: Quantity<"mass/area", string>;
  readonly rate: Quantity<"mass/area", `product:${string}`>;
}

/** One target beside what all products together bring. */
export interface TargetBalance {
  readonly nutrient: Nutrient;
  readonly target: Quantity<"mass/area", string>;
  readonly supplied: Quantity<"mass/area", string>;
  /** What is supplied above the target; zero where it is met. */
  readonly over: Quantity<"mass/area", string>;
}

/** What {@link productRates} gives. */
export interface ProductRates {
  readonly type: "product-rates";
  readonly version: 1;
  /**
   * `"exact"`: every target is met exactly; `"in turn"`: one target was filled after another and some are exceeded,
   * because no rates of zero or more meet all of them, or because the order asked for it.
   */
  readonly method: "exact" | "in turn";
  /** One for each target, in the order in which they are filled. */
  readonly steps: readonly StepRate[];
  readonly balance: readonly TargetBalance[];
  /** Everything that the products together supply, targets or not. */
  readonly supplied: NutrientsSupplied<"mass/area">;
  /** The over-supplies. Only the targets were looked at, no limit of any kind. */
  readonly findings: readonly Finding[];
}

/** How {@link productRates} goes about several targets. */
export type RateOrder = "exact where possible" | "phosphorus, potassium, nitrogen" | "as given";

/**
 * Product rates for several nutrients at once: the rates that meet every target exactly where there are such, otherwise
 * one after another in the trade's order: phosphorus first, its nitrogen credited; then potassium; then other
 * nutrients; nitrogen last, for what is still missing.
 *
 * Equations: exact, `sum over j of R_j a_ij / 100 = T_i` for all targets `i`, with every `R_j` zero or more; in turn,
 * `R = max(0, T - C) * 100 / a`, `C` the sum over the products before of `R * a / 100`
 *
 * - `R_j` product rate, mass per area
 * - `T_i` target rate of the nutrient, mass per area, zero or more
 * - `C` what the products before bring of that nutrient, in any of its forms (P credits P2O5)
 * - `a_ij` percent of the nutrient i in the product j, by weight
 *
 * In turn, where the credit exceeds the target the rate is zero and the excess is reported in `balance` and as a
 * finding; there is never a negative amount. A phosphorus source without nitrogen then fits better.
 *
 * @param input.steps - one target and product for each nutrient; no nutrient twice
 * @param input.order - `"exact where possible"`, the default; `"phosphorus, potassium, nitrogen"`, the trade's order by
 *   hand, or `"as given"`. One printed example fills potassium before phosphorus; in turn the amounts differ
 *   only where a source brings both.
 * @throws RatewrightError `infeasible` where a product has none of its nutrient; `duplicate` where a
 *   nutrient is targeted twice, or two products have one id; `missing`, `type`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: 80 kg N and 60 kg P2O5 per ha take 130.4 kg of 18-46-0, whose 23.47 kg N are credited
 * ("How to interpret fertilizer recommendations", agricultural supplier's advice page, Kenya). Exact: conservation of
 * each nutrient.
 *
 * @example
 * ```ts
 * import { fertilizer, productRates, quantity } from "ratewright";
 * const [n, p] = [quantity(2, "lb/1000 ft2", "N"), quantity(1, "lb/1000 ft2", "P2O5")];
 * const steps = [
 *   { target: n, product: fertilizer({ id: "a", analysis: "20-5-10" }) },
 *   { target: p, product: fertilizer({ id: "b", analysis: "10-10-10" }) },
 * ];
 * const rates = (found: ReturnType<typeof productRates>) =>
 *   found.steps.map(({ product, rate }) => [product, Number(rate.in("lb/1000 ft2").toFixed(2))]);
 * rates(productRates({ steps })); // => [["b", 6.67], ["a", 6.67]]
 * rates(productRates({ steps, order: "phosphorus, potassium, nitrogen" })); // => [["b", 10], ["a", 5]]
 * ```
 */
export const productRates = (input: {
  readonly steps: readonly RateStep[];
  readonly order?: RateOrder;
}): ProductRates => {
  expectFields(input, ["steps", "order"], "input");
  const { order, wanted } = allOf({
    order: () => (input.order === undefined ? orders[0] : expectOneOf(input.order, orders, "order")),
    wanted: () => readSteps(input.steps),
  });
  const ordered = order === "as given" ? wanted : [...wanted].sort(byTurn);
  const turns = inTurn(ordered);
  const found = order === orders[0] && oversupplies(turns) ? (exactRates(ordered) ?? turns) : turns;
  const brought = broughtBy(found);
  const balance = wanted.map(({ target }): TargetBalance => {
    const supply = supplyOf(brought, target.of, target.unit);
    return {
      nutrient: target.of,
      target: rateOf(target.value, target.unit, target.of),
      supplied: rateOf(supply, target.unit, target.of),
      over: rateOf(exceeds(supply, target.value) ? supply - target.value : 0, target.unit, target.of),
    };
  });
  return {
    type: "product-rates",
    version: 1,
    method: oversupplies(found) ? "in turn" : "exact",
    steps: found.map(({ product, target, credited, rate }) => ({
      product: product.id,
      nutrient: target.of,
      credited: rateOf(credited, target.unit, target.of),
      remaining: rateOf(
        exceeds(target.value, credited) ? target.value - credited : 0,
        target.unit,
        target.of,
      ),
      rate,
    })),
    balance,
    supplied: sumOfSupplies(brought),
    findings: balance.flatMap(overSupply),
  };
};

const orders: readonly ["exact where possible", "phosphorus, potassium, nitrogen", "as given"] = [
  "exact where possible",
  "phosphorus, potassium, nitrogen",
  "as given",
];

const overSupply = ({ nutrient, target, supplied, over }: TargetBalance): Finding[] =>
  over.value > 0
    ? [
        {
          code: "nutrient/over-supplied",
          severity: "caution",
          params: {
            nutrient,
            target: target.value,
            supplied: supplied.value,
            over: over.value,
            unit: over.unit,
          },
          text: `${nutrient} comes to ${round(supplied.value)} ${over.unit}, ${round(over.value)} above its target of ${round(target.value)}: another product also supplies it.`,
        },
      ]
    : [];

const round = (value: number): number => Number(value.toPrecision(4));
