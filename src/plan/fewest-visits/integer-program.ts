import { fail } from "../../quantity/index.js";

/** `lower <= sum of coefficients times the variables named <= upper`, sparse. */
export interface SparseRow {
  readonly columns: readonly number[];
  readonly coefficients: readonly number[];
  readonly lower: number;
  readonly upper: number;
}

/** Variables of 0 or 1, or between them where `whole` says no, that cost least. */
export interface IntegerProgram {
  readonly cost: readonly number[];
  readonly whole: readonly boolean[];
  readonly rows: readonly SparseRow[];
  /** The most nodes of the search. */
  readonly nodes: number;
}

/** What the search found: the best variables, a bound below which no cost lies, and whether the two meet. */
export interface IntegerAnswer {
  readonly status: "found";
  readonly x: readonly number[];
  readonly bound: number;
  readonly proven: boolean;
}

/** What is used of the solver. */
interface Solver {
  readonly infinity: number;
  readonly constants: {
    readonly modelStatus: { readonly optimal: number; readonly infeasible: number };
    readonly variableType: { readonly continuous: number; readonly integer: number };
  };
  createModel(data: unknown): {
    readonly options: { set(options: Readonly<Record<string, unknown>>): unknown };
    readonly info: { get(name: string): unknown };
    run(): unknown;
    getModelStatus(): number;
    getSolution(): { readonly colValue: Float64Array };
    dispose(): void;
  };
}

/** The loader stands at another depth for each kind of module. */
const loaderOf = (module: unknown): (() => Promise<Solver>) => {
  let found = module;
  for (let depth = 0; depth < 3 && typeof found !== "function"; depth++) {
    found = (found as { readonly default?: unknown })?.default;
  }
  return found as () => Promise<Solver>;
};

/** Nothing meets every row, or nothing was found within the nodes. */
export interface NoAnswer {
  readonly status: "infeasible" | "not found";
}

let loading: Promise<Solver> | undefined;

/** Loads the solver, once: it compiles WebAssembly. */
export const loadSolver = async (): Promise<(program: IntegerProgram) => IntegerAnswer | NoAnswer> => {
  const module: unknown = await import("highs").catch((error: unknown) =>
    fail("missing", "highs", String(error), "the package highs: npm install highs"),
  );
  loading ??= loaderOf(module)().catch((error: unknown) => {
    // The next call tries again.
    loading = undefined;
    throw error;
  });
  const solver = await loading;
  return (program) => solve(solver, program);
};

const matrixOf = (rows: readonly SparseRow[], width: number): object => {
  const starts = new Int32Array(rows.length + 1);
  rows.forEach((row, r) => {
    starts[r + 1] = (starts[r] as number) + row.columns.length;
  });
  return {
    format: "csr",
    numRows: rows.length,
    numCols: width,
    starts,
    indices: Int32Array.from(rows.flatMap((row) => row.columns)),
    values: Float64Array.from(rows.flatMap((row) => row.coefficients)),
  };
};

const solve = (solver: Solver, { cost, whole, rows, nodes }: IntegerProgram): IntegerAnswer | NoAnswer => {
  const width = cost.length;
  const { variableType, modelStatus } = solver.constants;
  const finite = (value: number): number =>
    Number.isFinite(value) ? value : Math.sign(value) * solver.infinity;
  const model = solver.createModel({
    numCols: width,
    numRows: rows.length,
    colCost: Float64Array.from(cost),
    colLower: new Float64Array(width),
    colUpper: new Float64Array(width).fill(1),
    rowLower: Float64Array.from(rows, (row) => finite(row.lower)),
    rowUpper: Float64Array.from(rows, (row) => finite(row.upper)),
    integrality: Int32Array.from(whole, (is) => (is ? variableType.integer : variableType.continuous)),
    matrix: matrixOf(rows, width),
  });
  try {
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_max_nodes: nodes, random_seed: 1 });
    model.run();
    const status = model.getModelStatus();
    if (status === modelStatus.infeasible) return { status: "infeasible" };
    const x = [...model.getSolution().colValue];
    const bound = Number(model.info.get("mip_dual_bound"));
    const holds = x.length === width && rows.every((row) => kept(row, x));
    return holds
      ? { status: "found", x, bound, proven: status === modelStatus.optimal }
      : { status: "not found" };
  } finally {
    model.dispose();
  }
};

/** Whether a row is kept: a search that was cut short may hand back nothing of use. */
const kept = ({ columns, coefficients, lower, upper }: SparseRow, x: readonly number[]): boolean => {
  const sum = columns.reduce((total, c, k) => total + (coefficients[k] as number) * (x[c] as number), 0);
  return sum >= lower - 1e-6 && sum <= upper + 1e-6;
};
