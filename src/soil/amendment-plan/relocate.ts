import { RatewrightError } from "../../quantity/index.js";

/** Runs a formula and says of its problems where in the plan's own input they come from. */
export const relocate = <T>(run: () => T, place: (path: string) => string): T => {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(error.problems.map((problem) => ({ ...problem, path: place(problem.path) })));
  }
};

/** A number with its unit for a sentence. */
export const amountText = (q: { readonly value: number; readonly unit: string }): string =>
  `${Number(q.value.toPrecision(4))} ${q.unit}`;
