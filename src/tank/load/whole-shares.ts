/**
 * Cuts an amount into shares that are whole numbers of steps. `exact` are the shares in steps; the sum of
 * the result is the rounded sum of `exact`, and no share is off by a whole step: each running sum is
 * rounded, and a share is the difference of two of them, so nothing drifts.
 */
export const wholeShares = (exact: readonly number[], total: number): number[] => {
  const rounded = Math.round(total);
  let sum = 0;
  let given = 0;
  return exact.map((share, i) => {
    sum += share;
    const upTo = i === exact.length - 1 ? rounded : Math.min(rounded, Math.round(sum));
    const steps = upTo - given;
    given = upTo;
    return steps;
  });
};
