// The solver on programs that are small enough to solve in the head.
import { describe, expect, it } from "vitest";
import { type IntegerProgram, loadSolver } from "../../../src/plan/fewest-visits/integer-program.js";

const none = Number.POSITIVE_INFINITY;
const row = (coefficients: readonly number[], lower: number, upper: number) => ({
  columns: coefficients.map((_, i) => i),
  coefficients,
  lower,
  upper,
});
const solved = async (program: Omit<IntegerProgram, "nodes"> & { readonly nodes?: number }) =>
  (await loadSolver())({ nodes: 1000, ...program });

describe("the solver", () => {
  it("finds the cheapest variables, and says that nothing is cheaper", async () => {
    // at least two of three: the two that cost 1 and 2
    const found = await solved({
      cost: [3, 1, 2],
      whole: [true, true, true],
      rows: [row([1, 1, 1], 2, none)],
    });
    expect(found).toEqual({ status: "found", x: [0, 1, 1], bound: 3, proven: true });
  });

  it("keeps what is whole whole, and lets the rest lie between", async () => {
    const rows = [row([2], 1, none)];
    expect(await solved({ cost: [1], whole: [true], rows })).toMatchObject({ x: [1], proven: true });
    expect(await solved({ cost: [1], whole: [false], rows })).toMatchObject({ x: [0.5], proven: true });
  });

  it("keeps a variable at 1 or below, and every row from both sides", async () => {
    // the more the better: each at 1, unless a row holds it back
    expect(
      await solved({ cost: [-1, -1], whole: [true, true], rows: [row([1, 1], -none, none)] }),
    ).toMatchObject({
      x: [1, 1],
    });
    expect(
      await solved({ cost: [-2, -1], whole: [true, true], rows: [row([1, 1], -none, 1)] }),
    ).toMatchObject({
      x: [1, 0],
    });
    const sparse = { columns: [1], coefficients: [1], lower: -none, upper: 0 };
    expect(
      await solved({ cost: [-1, -5], whole: [true, true], rows: [row([1, 0], 0, 1), sparse] }),
    ).toMatchObject({
      x: [1, 0],
    });
  });

  it("says where nothing meets every row", async () => {
    expect(await solved({ cost: [1, 1], whole: [true, true], rows: [row([1, 1], 3, none)] })).toEqual({
      status: "infeasible",
    });
  });

  it("says where it found nothing within its nodes, which is not that there is nothing", async () => {
    // Two rows that must come out exactly, on twelve variables: no solution is near those of the relaxed program.
    let seed = 7;
    const next = (): number => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return 1 + Math.floor((seed / 2147483648) * 99);
    };
    const rows = [0, 1].map(() => {
      const coefficients = Array.from({ length: 12 }, next);
      const half = Math.floor(coefficients.reduce((a, b) => a + b) / 2);
      return row(coefficients, half, half);
    });
    const program = { cost: Array<number>(12).fill(1), whole: Array<boolean>(12).fill(true), rows };
    expect(await solved({ ...program, nodes: 1 })).toEqual({ status: "not found" });
    const meets = (set: number): boolean =>
      rows.every(
        ({ coefficients, lower }) =>
          coefficients.reduce((sum, c, k) => sum + ((set >> k) % 2 === 1 ? c : 0), 0) === lower,
      );
    const any = Array.from({ length: 2 ** 12 }, (_, set) => set).some(meets);
    expect((await solved({ ...program, nodes: 100_000 })).status).toBe(any ? "found" : "infeasible");
  });
});
