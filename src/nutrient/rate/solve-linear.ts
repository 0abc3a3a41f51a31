/** What {@link solveLinear} finds. */
export interface LinearSolution {
  /** Values that meet as many independent equations as there are; free unknowns are 0. */
  readonly x: readonly number[];
  /** Unknowns that the equations do not fix. */
  readonly free: readonly number[];
}

/**
 * Solves equations `A x = b` by elimination with full pivoting. Equations that depend on others are left
 * over: the caller looks at `A x - b`.
 */
export const solveLinear = (
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): LinearSolution => {
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  const unknowns = matrix[0]?.length ?? 0;
  const size = Math.max(0, ...matrix.flat().map(Math.abs));
  const pivots: { row: number; column: number }[] = [];
  for (;;) {
    let best: { readonly row: number; readonly column: number; readonly size: number } | undefined;
    rows.forEach((row, r) => {
      if (pivots.some((pivot) => pivot.row === r)) return;
      for (let c = 0; c < unknowns; c++) {
        const found = Math.abs(row[c] as number);
        if (found > (best?.size ?? 1e-11 * size)) best = { row: r, column: c, size: found };
      }
    });
    if (best === undefined) break;
    pivots.push(best);
    const { row: at, column } = best;
    const pivotRow = rows[at] as number[];
    rows.forEach((row, r) => {
      if (r === at) return;
      const factor = (row[column] as number) / (pivotRow[column] as number);
      for (let c = 0; c <= unknowns; c++) row[c] = (row[c] as number) - factor * (pivotRow[c] as number);
      row[column] = 0;
    });
  }
  const x = new Array<number>(unknowns).fill(0);
  for (const { row, column } of pivots) {
    const found = rows[row] as number[];
    x[column] = (found[unknowns] as number) / (found[column] as number);
  }
  const fixed = new Set(pivots.map(({ column }) => column));
  return { x, free: x.map((_, c) => c).filter((c) => !fixed.has(c)) };
};
