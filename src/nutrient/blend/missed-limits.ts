import type { Problem } from "../../quantity/index.js";
import type { LimitRow } from "./blend-limits.js";
import type { LinearAnswer, LinearProgram } from "./linear-program.js";

/**
 * Why a blend is not possible: the limits that the nearest batch misses, and by how much. Each row may be
 * missed at a price that counts all of them alike, in parts of its bound.
 */
export const missedLimits = (
  program: LinearProgram,
  rows: readonly LimitRow[],
  solve: (program: LinearProgram) => LinearAnswer | undefined,
): Problem[] => {
  const weights = rows.map(
    ({ coefficients, bound }) => 1 / Math.max(Math.abs(bound), ...coefficients.map(Math.abs), 1e-6),
  );
  const elastic: LinearProgram = {
    cost: [...program.cost.map(() => 0), ...weights],
    lower: [...program.lower, ...rows.map(() => 0)],
    upper: [...program.upper, ...rows.map(() => Number.POSITIVE_INFINITY)],
    rows: program.rows.map((row, k) => ({
      ...row,
      coefficients: [
        ...row.coefficients,
        ...rows.map(({ side }, r) => (r + 1 === k ? (side === "least" ? 1 : -1) : 0)),
      ],
    })),
  };
  const nearest = solve(elastic);
  const width = program.cost.length;
  const problems = rows.flatMap((row, r): Problem[] => {
    const miss = nearest?.x[width + r] ?? 0;
    if (miss <= 1e-8) return [];
    const { bound, unit, of } = row.shown;
    const what = of === "none" ? "salt index by weight" : `${unit} ${of}`;
    const at = row.bound + (row.side === "least" ? -miss : miss);
    const got =
      row.kind === "slow share"
        ? `${round(miss)} % of the batch too ${row.side === "least" ? "little" : "much"} in slow nitrogen`
        : `${round(at)} ${what} in the batch that comes nearest, ${round(miss)} too ${row.side === "least" ? "little" : "much"}`;
    return [
      {
        code: "infeasible",
        path: row.path,
        got,
        expected: `${row.side === "least" ? "at least" : "at most"} ${bound} ${what}`,
      },
    ];
  });
  return problems.length > 0
    ? problems
    : [
        {
          code: "infeasible",
          path: "limits",
          got: "no batch that meets every limit to the last digit",
          expected: "limits that leave some room",
        },
      ];
};

const round = (value: number): number => Number(value.toPrecision(4));
