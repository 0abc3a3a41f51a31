import { exceeds } from "../../numeric/index.js";
import { likeQuantity } from "../../quantity/index.js";
import type { Nutrient } from "../label/analysis.js";
import { type NutrientsSupplied, nutrientsSupplied } from "./nutrients-supplied.js";
import { productRate } from "./product-rate.js";
import type { FoundStep, ReadStep } from "./rate-steps.js";
import { supplyOf } from "./supply-of.js";

/** The rates one after another, each for what the products before it leave open. */
export const inTurn = (wanted: readonly ReadStep[]): FoundStep[] => {
  const found: FoundStep[] = [];
  const brought: NutrientsSupplied<"mass/area">[] = [];
  for (const step of wanted) {
    const { target, product } = step;
    const credited = supplyOf(brought, target.of, target.unit);
    const missing = exceeds(target.value, credited) ? target.value - credited : 0;
    const rate = productRate(likeQuantity(target, missing), product);
    found.push({ ...step, credited, rate });
    brought.push(nutrientsSupplied(rate, product));
  }
  return found;
};

/** The trade's order by hand: phosphorus, potassium, others, nitrogen. */
export const byTurn = (a: ReadStep, b: ReadStep): number => turnOf(a.target.of) - turnOf(b.target.of);

const turnOf = (nutrient: Nutrient): number =>
  nutrient === "N"
    ? 3
    : nutrient === "P" || nutrient === "P2O5"
      ? 0
      : nutrient === "K" || nutrient === "K2O"
        ? 1
        : 2;
