import { RatewrightError } from "../../quantity/index.js";
import type { LeastCostBlendInput } from "./blend-input.js";
import { blendOf, type LeastCostBlend } from "./blend-result.js";
import { loadSolver } from "./linear-program.js";
import { missedLimits } from "./missed-limits.js";
import { readProblem } from "./read-blend.js";

/**
 * The cheapest batch of materials, and filler where it has a price, that keeps to limits on nutrients, slow
 * share, salt index and acidity; with the limits that bind and what relaxing each would save.
 *
 * Equation: minimize `sum of p_i m_i` subject to `sum of m_i = W`, `l_j W <= sum of a_ij m_i <= u_j W`,
 * `sum of (s_i - s n_i) m_i >= 0`, `sum of z_i m_i <= z W`, `sum of c_i m_i <= c W`, `0 <= m_i <= stock`
 *
 * - `m_i` weight of a material, `p_i` its price; `W` weight of the batch
 * - `a_ij` percent of a nutrient, between `l_j` and `u_j` in the batch
 * - `n_i`, `s_i` total and slow nitrogen, percent of product; `s` least slow share of the nitrogen
 * - `z_i` salt index by weight, at most `z`; `c_i` potential acidity, at most `c`. Filler counts 0 for both.
 *
 * The shadow price of a limit is what one step of relaxing saves on the batch, for a small step: at a wider
 * one other materials come in. It is checked by relaxing each binding limit a little and solving again.
 *
 * Range: two or more materials in practice; weights and prices of zero or more. A salt index by weight adds up
 * by weight; an index per unit does not, and is refused.
 *
 * Needs the package `highs` (a linear-programming solver in WebAssembly) beside this library. It is loaded
 * at the first call; nothing else here loads it.
 *
 * @throws RatewrightError (as a rejection) `infeasible` with one problem for each limit that is missed in
 *   the batch that comes nearest, and by how much; `missing` where a limited property is not stated for a material;
 *   `conflict`, `duplicate`, `range`, `unit/mismatch`, `substance/mismatch`; `missing` with the path `highs`
 *   where that package is not installed
 *
 * Source: linear programming; the tests solve the same problems with another solver.
 *
 * @example
 * ```ts
 * import { fertilizer, money, quantity } from "ratewright";
 * import { leastCostBlend } from "ratewright/nutrient/blend";
 * const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));
 * const blend = await leastCostBlend({
 *   batch: quantity(2000, "lb"),
 *   materials: [
 *     { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460) },
 *     { product: fertilizer({ id: "sulfate", analysis: "21-0-0-24S" }), price: perTon(300) },
 *     { product: fertilizer({ id: "potash", analysis: "0-0-60" }), price: perTon(480) },
 *   ],
 *   filler: perTon(40),
 *   limits: {
 *     nutrients: [
 *       { least: quantity(23, "% w/w", "N/product") },
 *       { least: quantity(12, "% w/w", "K2O/product") },
 *     ],
 *   },
 * });
 * blend.parts.map(({ product, amount }) => [product, Number(amount.in("lb").toFixed(3))]);
 * // => [["urea", 1000], ["sulfate", 0], ["potash", 400]]
 * Number(blend.cost.in("money:USD").toFixed(6)); // => 338
 * Number(blend.limits[0]?.shadowPrice.in("money:USD").toFixed(4)); // => 9.1304
 * ```
 */
export const leastCostBlend = async <const C extends string>(
  input: LeastCostBlendInput<C>,
): Promise<LeastCostBlend<C>> => {
  const problem = readProblem(input as LeastCostBlendInput<string>);
  const solve = await loadSolver();
  const answer = solve(problem.program);
  if (answer === undefined) throw new RatewrightError(missedLimits(problem.program, problem.rows, solve));
  return blendOf(problem, answer, solve) as LeastCostBlend<C>;
};
