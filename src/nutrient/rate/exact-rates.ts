import { inUnit, numberIn, Quantity } from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { type FoundStep, type ReadStep, rateOf } from "./rate-steps.js";
import { solveLinear } from "./solve-linear.js";

/** The rates of the products, each zero or more, that meet every target; undefined where there are none. */
export const exactRates = (wanted: readonly ReadStep[]): FoundStep[] | undefined => {
  const unit = wanted[0]?.target.unit as string;
  const targets = wanted.map(({ target }) => numberIn(target, unit));
  const matrix = targets.map((_, i) =>
    wanted.map(({ product }) => percentOf(product.analysis, (wanted[i] as ReadStep).target.of)),
  );
  const { x, free } = solveLinear(matrix, targets);
  const largest = Math.max(...x.map(Math.abs));
  // Below zero by rounding noise is zero; what the equations leave open, or cannot meet, is no exact answer.
  const rates = x.map((rate) => (Math.abs(rate) <= 1e-12 * largest ? 0 : rate));
  if (free.length > 0 || rates.some((rate) => !(rate >= 0))) return undefined;
  return wanted.map((step, i) => {
    const { product, target } = step;
    const rate = (rates[i] as number) * 100;
    const own = (rates[i] as number) * (matrix[i]?.[i] as number);
    const credited = Math.max(0, (targets[i] as number) - own);
    return {
      ...step,
      credited: numberIn(rateOf(credited, unit, target.of), target.unit),
      rate: inUnit(new Quantity(rate, unit, `product:${product.id}`, "mass/area"), target.unit),
    };
  });
};
