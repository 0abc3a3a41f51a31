import { interpolate } from "../../numeric/index.js";
import { type Citation, fail, outOfRange } from "../../quantity/index.js";

/** A published table of lime rates: the reading first in each row, then a rate for each target pH. */
export interface LimeTable {
  readonly by: "acidity" | "bufferPH";
  readonly targets: readonly number[];
  readonly unit: "lb/1000 ft2" | "lb/acre" | "US ton/acre";
  readonly rows: readonly (readonly number[])[];
  readonly source: Citation;
}

/** A rate read from a table. */
export interface TableRate {
  readonly value: number;
  /** Whether the reading has a row of its own; between rows the rate lies on a straight line. */
  readonly exact: boolean;
}

/** Reads a rate, or throws where the table does not reach. */
export const tableRate = (table: LimeTable, reading: number, target: number): TableRate => {
  const column = table.targets.indexOf(target) + 1;
  if (column === 0) {
    fail("range", "targetPH", target, "a target that the table has", { choices: table.targets.map(String) });
  }
  const rows = [...table.rows].sort((a, b) => (a[0] as number) - (b[0] as number));
  const xs = rows.map((row) => row[0] as number);
  const [least, most] = [xs[0] as number, xs[xs.length - 1] as number];
  // A reading a hair off its row is that row.
  const own = rows.find((row) => Math.abs((row[0] as number) - reading) < 1e-6);
  if (own !== undefined) return { value: own[column] as number, exact: true };
  if (reading < least || reading > most) {
    outOfRange(
      table.by,
      reading,
      { min: least, max: most },
      '{}, which is where the table reaches: beyond it take the rate that the laboratory printed, or the method "exchangeable acidity"',
    );
  }
  return {
    value: interpolate({ xs, ys: rows.map((row) => row[column] as number), x: reading }),
    exact: false,
  };
};
