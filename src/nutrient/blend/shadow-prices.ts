import { type LimitRow, nitrogenColumns } from "./blend-limits.js";
import type { LinearAnswer, LinearProgram } from "./linear-program.js";
import type { ReadProblem } from "./read-blend.js";

/** Solves a linear program. */
export type Solve = (program: LinearProgram) => LinearAnswer | undefined;

/** A shadow price, and how it was found. */
export interface Priced {
  readonly price: number;
  readonly priced: "exact" | "stepwise";
}

/** What relaxing a limit, or the least or most of a material, is worth. */
export interface ShadowPrices {
  ofRow(r: number, binds: boolean): Priced;
  ofColumn(i: number, side: "least" | "most", binds: boolean): Priced;
}

/** Prices of relaxing, for the whole batch, from the solver and checked by solving again. */
export const shadowPrices = (
  { materials, filler, batch, rows, program, scale }: ReadProblem,
  shares: readonly number[],
  answer: LinearAnswer,
  solve: Solve,
): ShadowPrices => {
  const none: Priced = { price: 0, priced: "exact" };
  const whole = scale * batch.value;
  const compare = (stated: number, step: number, relaxed: LinearProgram, factor: number): Priced => {
    const again = solve(relaxed);
    const saved = again === undefined ? stated : Math.max(0, (answer.cost - again.cost) / step);
    return Math.abs(saved - stated) <= 1e-6 * Math.max(stated, 1e-3)
      ? { price: Math.max(0, stated) * factor, priced: "exact" }
      : { price: saved * factor, priced: "stepwise" };
  };
  return {
    ofRow(r, binds) {
      const row = rows[r] as LimitRow;
      if (!binds) return none;
      const sign = row.side === "least" ? 1 : -1;
      const step = 1e-3 * Math.max(1, Math.abs(row.bound));
      const relaxed = {
        ...program,
        rows: program.rows.map((one, k) =>
          k !== r + 1
            ? one
            : row.side === "least"
              ? { ...one, lower: one.lower - step }
              : { ...one, upper: one.upper + step },
        ),
      };
      // A step of the slow share moves the row by the nitrogen in the batch.
      const nitrogen = nitrogenColumns(materials, filler);
      const perStep =
        row.kind === "slow share"
          ? nitrogen.reduce((sum, each, i) => sum + each * (shares[i] as number), 0) / 100
          : 1;
      return compare(sign * (answer.rowPrice[r + 1] as number), step, relaxed, whole * perStep);
    },
    ofColumn(i, side, binds) {
      if (!binds) return none;
      const bounds = side === "least" ? program.lower : program.upper;
      const sign = side === "least" ? 1 : -1;
      const bound = bounds[i] as number;
      // At zero, or at the whole batch, there is nothing to relax.
      if (side === "least" ? bound === 0 : bound === 1) return none;
      const step = Math.min(1e-3, side === "least" ? bound : 1 - bound);
      const moved = bounds.map((one, k) => (k === i ? one - sign * step : one));
      const relaxed = side === "least" ? { ...program, lower: moved } : { ...program, upper: moved };
      return compare(sign * (answer.columnPrice[i] as number), step, relaxed, scale);
    },
  };
};
