// Columns of numbers beside loops written by hand that do the same checks.
import { convertedNumbers, mean, standardDeviation } from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const n = 100_000;
const column = Float64Array.from({ length: n }, (_, i) => 20 + 10 * Math.sin(i / 50));
let converted: Float64Array = new Float64Array();

const convertedByHand = (numbers: Float64Array, top: number, bottom: number): Float64Array => {
  const out = new Float64Array(numbers.length);
  for (let i = 0; i < numbers.length; i++) {
    const value = ((numbers[i] as number) * top) / bottom;
    if (!Number.isFinite(value)) throw new Error(`number ${i}`);
    out[i] = value;
  }
  return out;
};

/** The sum with the error of each addition carried along (Neumaier), as the library has it. */
const sumByHand = (numbers: Float64Array): number => {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < numbers.length; i++) {
    const x = numbers[i] as number;
    if (!Number.isFinite(x)) throw new Error(`number ${i}`);
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
};
const meanByHand = (): number => sumByHand(column) / n;

/** As the library does it: the squares from the mean, less what the rounding of the mean adds to them. */
const deviationByHand = (): number => {
  const middle = meanByHand();
  let [squares, lostOfSquares, rest, lostOfRest] = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const off = (column[i] as number) - middle;
    const x = off * off;
    const next = squares + x;
    lostOfSquares += squares >= x ? squares - next + x : x - next + squares;
    squares = next;
    const other = rest + off;
    lostOfRest += Math.abs(rest) >= Math.abs(off) ? rest - other + off : off - other + rest;
    rest = other;
  }
  return Math.sqrt((squares + lostOfSquares - (rest + lostOfRest) ** 2 / n) / (n - 1));
};

const converts: readonly [() => void, () => void] = [
  () => {
    converted = convertedByHand(column, 0.45359237, 0.40468564224);
  },
  () => {
    converted = convertedNumbers({ numbers: column, from: "lb/acre", to: "kg/ha" });
  },
];

/** The columns. */
export const numberRows: readonly KernelRow[] = [
  {
    name: "convertedNumbers, lb/acre to kg/ha",
    of: "number",
    items: n,
    hand: converts[0],
    own: converts[1],
    results: converts.map((run) => () => {
      run();
      return converted[777] as number;
    }),
  },
  {
    name: "mean",
    of: "number",
    items: n,
    hand: meanByHand,
    own: () => mean(column),
    results: [meanByHand, () => mean(column)],
  },
  {
    name: "standardDeviation",
    of: "number",
    items: n,
    hand: deviationByHand,
    own: () => standardDeviation(column, { divisor: "n-1" }),
    results: [deviationByHand, () => standardDeviation(column, { divisor: "n-1" })],
  },
];
