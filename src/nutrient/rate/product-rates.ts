import { exceeds } from "../../numeric/index.js";
import { checks, expectRecord, type Finding, fail, type Quantity, quantityOf } from "../../quantity/index.js";
import { type Nutrient, percentOf } from "../label/analysis.js";
import { expectFertilizer, isOtherRecordOf } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { formFactor } from "../label/forms.js";
import { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
import { productRate } from "./product-rate.js";
import { expectTarget, type RateTarget } from "./rate-target.js";
import { sumOfSupplies } from "./sum-of-supplies.js";

/** One nutrient to supply and the product that supplies it. */
export interface RateStep {
  readonly target: RateTarget;
  readonly product: Fertilizer;
}

/** The rate of one product, and what the products before it had already brought of its nutrient. */
export interface StepRate {
  readonly product: string;
  readonly nutrient: Nutrient;
  /** What the products before it bring of this nutrient. */
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
  /** One for each target, in the order in which they were filled. */
  readonly steps: readonly StepRate[];
  readonly balance: readonly TargetBalance[];
  /** Everything that the products together supply, targets or not. */
  readonly supplied: NutrientsSupplied<"mass/area">;
  /** The over-supplies. Only the targets were looked at, no limit of any kind. */
  readonly findings: readonly Finding[];
}

/**
 * Product rates for several nutrients at once by the trade's order: phosphorus first, its nitrogen
 * credited; then potassium; then other nutrients; nitrogen last, for what is still missing.
 *
 * Equation: in turn, `R = max(0, T - C) * 100 / a`, `C` the sum over the products before of `R * a / 100`
 *
 * - `R` product rate, mass per area
 * - `T` target rate of the nutrient, mass per area, zero or more
 * - `C` what the products before bring of that nutrient, in any of its forms (P credits P2O5)
 * - `a` percent of the nutrient in the product, by weight
 *
 * Where the credit exceeds the target the rate is zero and the excess is reported in `balance` and as a
 * finding; there is never a negative amount. A phosphorus source without nitrogen then fits better.
 *
 * @param input.steps - one target and product for each nutrient; no nutrient twice
 * @param input.order - `"phosphorus, potassium, nitrogen"`, the default, or `"as given"`. One printed
 *   example fills potassium before phosphorus; the amounts differ only where a source brings both.
 * @throws RatewrightError `infeasible` where a product has none of its nutrient; `duplicate` where a
 *   nutrient is targeted twice, or two products have one id; `missing`, `type`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: 80 kg N and 60 kg P2O5 per ha take 130.4 kg of 18-46-0, whose 23.47 kg N are credited
 * ("How to interpret fertilizer recommendations", agricultural supplier's advice page, Kenya).
 *
 * @example
 * ```ts
 * import { fertilizer, productRates, quantity } from "ratewright";
 * const found = productRates({
 *   steps: [
 *     { target: quantity(80, "kg/ha", "N"), product: fertilizer({ id: "can", analysis: "26-0-0" }) },
 *     { target: quantity(60, "kg/ha", "P2O5"), product: fertilizer({ id: "dap", analysis: "18-46-0" }) },
 *   ],
 * });
 * found.steps.map(({ product, rate }) => [product, Number(rate.in("kg/ha").toFixed(1))]);
 * // => [["dap", 130.4], ["can", 217.4]]
 * found.findings; // => []
 * ```
 */
export const productRates = (input: {
  readonly steps: readonly RateStep[];
  readonly order?: "phosphorus, potassium, nitrogen" | "as given";
}): ProductRates => {
  expectRecord(input, "input");
  const order = input.order ?? "phosphorus, potassium, nitrogen";
  if (order !== "as given" && order !== "phosphorus, potassium, nitrogen") {
    fail("type", "order", order, '"phosphorus, potassium, nitrogen" or "as given"');
  }
  const wanted = readSteps(input.steps);
  if (order !== "as given") wanted.sort((a, b) => turnOf(a.target.of) - turnOf(b.target.of));
  const steps: StepRate[] = [];
  const brought: NutrientsSupplied<"mass/area">[] = [];
  for (const { target, product } of wanted) {
    const credit = supplyOf(brought, target.of, target.unit);
    const missing = exceeds(target.value, credit) ? target.value - credit : 0;
    const remaining = rateOf(missing, target.unit, target.of);
    const rate = productRate(remaining as never, product);
    steps.push({
      product: product.id,
      nutrient: target.of,
      credited: rateOf(credit, target.unit, target.of),
      remaining,
      rate,
    });
    brought.push(nutrientsSupplied(rate, product));
  }
  const balance = wanted.map(({ target }): TargetBalance => {
    const supply = supplyOf(brought, target.of, target.unit);
    const over = exceeds(supply, target.value) ? supply - target.value : 0;
    return {
      nutrient: target.of,
      target: target as never,
      supplied: rateOf(supply, target.unit, target.of),
      over: rateOf(over, target.unit, target.of),
    };
  });
  return {
    type: "product-rates",
    version: 1,
    steps,
    balance,
    supplied: sumOfSupplies(brought),
    findings: balance.flatMap(overSupply),
  };
};

const turnOf = (nutrient: Nutrient): number =>
  nutrient === "N"
    ? 3
    : nutrient === "P" || nutrient === "P2O5"
      ? 0
      : nutrient === "K" || nutrient === "K2O"
        ? 1
        : 2;

const rateOf = (value: number, unit: string, of: string): Quantity<"mass/area", string> =>
  quantityOf(value, unit, of, of) as unknown as Quantity<"mass/area", string>;

interface ReadStep {
  readonly target: Quantity<"mass/area", Nutrient>;
  readonly product: Fertilizer;
}

const readSteps = (input: readonly RateStep[]): ReadStep[] => {
  if (!Array.isArray(input)) return fail("type", "steps", input, "a list of { target, product }");
  if (input.length === 0) return fail("missing", "steps", "an empty list", "at least one target and product");
  const door = checks();
  const read: ReadStep[] = [];
  (input as readonly RateStep[]).forEach((step, i) => {
    const at = `steps[${i}]`;
    const target = door.run(() => expectTarget(step?.target, "target"), at);
    const product = step?.product;
    if (door.run(() => expectFertilizer(product, "product"), at) !== undefined && target !== undefined) {
      if (!(percentOf(product.analysis, target.of) > 0)) {
        const text = `a product with ${target.of}; ${product.id} states 0 %`;
        door.run(() => fail("infeasible", "product", product.id, text), at);
      }
      const twin = read.findIndex((other) => formFactor(other.target.of, target.of) !== undefined);
      if (twin >= 0) {
        const text = `one target for each nutrient; steps[${twin}] has ${read[twin]?.target.of}`;
        door.run(() => fail("duplicate", "target", target, text), at);
      }
      const other = read.findIndex((one) => isOtherRecordOf(one.product, product));
      if (other >= 0) {
        const text = `an id of its own: steps[${other}] has another product under it`;
        door.run(() => fail("duplicate", "product.id", product.id, text), at);
      }
      read.push({ target, product });
    }
  });
  door.done();
  return read;
};

/** What several supplies hold of a nutrient, whatever the form in which each label states it. */
const supplyOf = (
  brought: readonly NutrientsSupplied<"mass/area">[],
  nutrient: Nutrient,
  unit: string,
): number => {
  let total = 0;
  for (const supply of brought) {
    const stated = Object.entries(supply).find(
      ([form]) => form === nutrient || formFactor(form, nutrient) !== undefined,
    );
    const direct = supply[nutrient] as Quantity<"mass/area", string> | undefined;
    if (direct !== undefined) total += direct.in(unit as never);
    else if (stated !== undefined) {
      total += stated[1].in(unit as never) * (formFactor(stated[0], nutrient) as number);
    }
  }
  return total;
};

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
          text: `${nutrient} comes to ${round(supplied.value)} ${over.unit}, ${round(over.value)} above its target of ${round(target.value)}: another product brings it along.`,
        },
      ]
    : [];

const round = (value: number): number => Number(value.toPrecision(4));
