import { fail } from "../../quantity/index.js";

/** A row of a linear program: `lower <= sum of coefficients times x <= upper`. */
export interface Row {
  readonly coefficients: readonly number[];
  readonly lower: number;
  readonly upper: number;
}

/** A linear program: the x that costs least within bounds and rows. */
export interface LinearProgram {
  readonly cost: readonly number[];
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly rows: readonly Row[];
}

/** An answer; `undefined` stands for none that meets every row. */
export interface LinearAnswer {
  readonly cost: number;
  readonly x: readonly number[];
  /** Change of the cost for each unit by which a row's binding side rises. */
  readonly rowPrice: readonly number[];
  /** Change of the cost for each unit of a variable at one of its bounds. */
  readonly columnPrice: readonly number[];
}

/** What is used of the solver. */
interface Solver {
  readonly infinity: number;
  readonly constants: { readonly modelStatus: { readonly optimal: number; readonly infeasible: number } };
  createModel(data: unknown): {
    readonly options: { set(options: Readonly<Record<string, unknown>>): unknown };
    run(): unknown;
    getModelStatus(): number;
    getObjectiveValue(): number;
    getSolution(): {
      readonly colValue: Float64Array;
      readonly rowDual: Float64Array;
      readonly colDual: Float64Array;
    };
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

let loading: Promise<Solver> | undefined;

/** Loads the solver, once: it compiles WebAssembly. */
export const loadSolver = async (): Promise<(program: LinearProgram) => LinearAnswer | undefined> => {
  const module: unknown = await import("highs").catch((error: unknown) =>
    fail("missing", "highs", String(error), "the package highs: npm install highs"),
  );
  loading ??= loaderOf(module)().catch((error: unknown) => {
    // The next call tries again.
    loading = undefined;
    throw error;
  });
  const solver = await loading;
  return (program) => {
    try {
      return solve(solver, program);
    } catch (error) {
      // What the solver itself refuses is told as ours: its words speak of rows and columns.
      const got = error instanceof Error ? error.message.slice(0, 200) : "an error of the solver";
      return fail("range", "limits", got, "figures that a linear program can be made of");
    }
  };
};

const solve = (solver: Solver, { cost, lower, upper, rows }: LinearProgram): LinearAnswer | undefined => {
  const width = cost.length;
  const bound = (value: number): number =>
    value === Number.POSITIVE_INFINITY
      ? solver.infinity
      : value === Number.NEGATIVE_INFINITY
        ? -solver.infinity
        : value;
  const model = solver.createModel({
    numCols: width,
    numRows: rows.length,
    colCost: Float64Array.from(cost),
    colLower: Float64Array.from(lower, bound),
    colUpper: Float64Array.from(upper, bound),
    rowLower: Float64Array.from(rows, (row) => bound(row.lower)),
    rowUpper: Float64Array.from(rows, (row) => bound(row.upper)),
    matrix: {
      format: "csr",
      numRows: rows.length,
      numCols: width,
      starts: Int32Array.from({ length: rows.length + 1 }, (_, r) => r * width),
      indices: Int32Array.from({ length: rows.length * width }, (_, k) => k % width),
      values: Float64Array.from(rows.flatMap((row) => row.coefficients)),
    },
  });
  try {
    model.options.set({
      output_flag: false,
      solver: "simplex",
      primal_feasibility_tolerance: 1e-10,
      dual_feasibility_tolerance: 1e-10,
    });
    model.run();
    if (model.getModelStatus() !== solver.constants.modelStatus.optimal) return undefined;
    const { colValue, rowDual, colDual } = model.getSolution();
    return {
      cost: model.getObjectiveValue(),
      x: [...colValue],
      rowPrice: [...rowDual],
      columnPrice: [...colDual],
    };
  } finally {
    model.dispose();
  }
};
