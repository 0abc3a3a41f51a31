import { type Finding, RatewrightError } from "../../quantity/index.js";

/** Runs a formula and says of its problems where in the plan's own input they come from. */
export const relocate = <T>(run: () => T, place: (path: string) => string): T => {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(error.problems.map((problem) => ({ ...problem, path: place(problem.path) })));
  }
};

/** What a formula gives, or a finding where it has no answer for this soil or water: the rest of the plan still stands. */
export const orFinding = <T>(
  run: () => T,
  beyond: (error: RatewrightError) => Finding | undefined,
): { readonly value: T | null; readonly findings: readonly Finding[] } => {
  try {
    return { value: run(), findings: [] };
  } catch (error) {
    const finding =
      error instanceof RatewrightError && error.problems.length === 1 ? beyond(error) : undefined;
    if (finding === undefined) throw error;
    return { value: null, findings: [finding] };
  }
};

/** A number with its unit for a sentence. */
export const amountText = (q: { readonly value: number; readonly unit: string }, figures = 4): string =>
  `${Number(q.value.toPrecision(figures))} ${q.unit}`;
