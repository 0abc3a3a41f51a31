import type { LinearAnswer, LinearProgram } from "./linear-program.js";

/**
 * The price, in the unit of the program, below which a material that was left out comes in; `undefined` where
 * it would not come in for nothing either. Where several limits meet at one point the solver's reduced cost is
 * one of many and can lie above this price, so it is only the first guess: the least cost is concave in the
 * price, and each step along its tangent ends at or below the price that is sought.
 */
export const enteringPrice = (
  program: LinearProgram,
  i: number,
  answer: LinearAnswer,
  solve: (program: LinearProgram) => LinearAnswer | undefined,
): number | undefined => {
  const guess = (program.cost[i] as number) - Math.max(0, answer.columnPrice[i] as number);
  const saving = (price: number): { readonly saved: number; readonly share: number } => {
    const found = solve({ ...program, cost: program.cost.map((one, k) => (k === i ? price : one)) });
    return { saved: answer.cost - (found?.cost ?? answer.cost), share: found?.x[i] ?? 0 };
  };
  // Of a cost that is a share of the highest price, and so no more than 1.
  const enough = 1e-11;
  let price = Math.max(0, guess - 1e-4);
  let step = saving(price);
  if (step.saved <= enough) {
    price = 0;
    step = saving(price);
  }
  if (step.saved <= enough) return undefined;
  // Each step leaves a corner of the limits for good; the count only guards against rounding.
  for (let k = 0; k < 100 && step.saved > enough && step.share > 0; k++) {
    price += step.saved / step.share;
    step = saving(price);
  }
  return Math.abs(price - guess) <= 1e-9 ? guess : price;
};
