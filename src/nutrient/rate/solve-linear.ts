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
    let best = { row: -1, column: -1, size: 1e-11 * size };
    rows.forEach((row, r) => {
      if (pivots.some((pivot) => pivot.row === r)) return;
      for (let c = 0; c < unknowns; c++) {
        const found = Math.abs(row[c] as number);
        if (found > best.size) best = { row: r, column: c, size: found };
      }
    });
    if (best.row < 0) break;
    pivots.push(best);
    const pivotRow = rows[best.row] as number[];
    rows.forEach((row, r) => {
      if (r === best.row) return;
      const factor = (row[best.column] as number) / (pivotRow[best.column] as number);
      if (factor === 0) return;
      for (let c = 0; c <= unknowns; c++) row[c] = (row[c] as number) - factor * (pivotRow[c] as number);
      row[best.column] = 0;
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
