// What every runtime computes: the arithmetic and the functions that the formulas are made of, and the published figures of
// docs/check-values.json by the packed library. It knows nothing of where it runs.

/** A figure of docs/check-values.json, as far as it is needed here. */
export interface SmokeFigure {
  readonly function: string;
  readonly arguments: readonly unknown[];
  readonly at: readonly (string | number)[];
  readonly unit?: string;
  readonly printed: number;
  readonly right?: number;
  readonly tolerance: number;
  readonly rounding?: "cut";
}

/** The bits of every result, as 16 hexadecimal digits each. */
export interface SmokeResult {
  readonly basics: Readonly<Record<string, readonly string[]>>;
  readonly figures: readonly string[];
  /** Calls that threw, which none should. */
  readonly thrown: readonly string[];
}

interface Library {
  readonly [name: string]: unknown;
  readonly quantityReviver: (key: string, value: unknown) => unknown;
}

const view = new DataView(new ArrayBuffer(8));
const hex = (bits: number): string => (bits + 0x1_0000_0000).toString(16).slice(1);

/** The bits of a number. */
export const bitsOf = (value: number): string => {
  view.setFloat64(0, value);
  return hex(view.getUint32(0)) + hex(view.getUint32(4));
};

/** Numbers of very different sizes, the same everywhere: made by whole numbers and division alone. */
const numbers = (count: number, low: number, high: number): readonly number[] => {
  let state = 12_345;
  return Array.from({ length: count }, () => {
    state = (state * 1_103_515 + 12_345) % 2_147_483_648;
    return low + ((high - low) * state) / 2_147_483_648;
  });
};

const count = 400;
const pairs = (work: (a: number, b: number) => number, low: number, high: number): readonly number[] => {
  const list = numbers(count, low, high);
  return list.map((a, i) => work(a, list[(i + 7) % count] as number));
};
const each = (work: (x: number) => number, low: number, high: number): readonly number[] =>
  numbers(count, low, high).map(work);

const basics: Readonly<Record<string, () => readonly number[]>> = {
  "+": () => pairs((a, b) => a + b, -1e3, 1e5),
  "-": () => pairs((a, b) => a - b, -1e3, 1e5),
  x: () => pairs((a, b) => a * b, -1e3, 1e5),
  "/": () => pairs((a, b) => a / b, 1e-3, 1e5),
  sqrt: () => each(Math.sqrt, 0, 1e6),
  exp: () => each(Math.exp, -30, 30),
  expm1: () => each(Math.expm1, -3, 3),
  log: () => each(Math.log, 1e-6, 1e6),
  log1p: () => each(Math.log1p, -0.9, 3),
  log10: () => each(Math.log10, 1e-6, 1e6),
  pow: () => pairs((a, b) => a ** b, 0.1, 9),
  sin: () => each(Math.sin, -7, 7),
  cos: () => each(Math.cos, -7, 7),
  tan: () => each(Math.tan, -1.5, 1.5),
  asin: () => each(Math.asin, -1, 1),
  acos: () => each(Math.acos, -1, 1),
  atan: () => each(Math.atan, -9, 9),
  atan2: () => pairs(Math.atan2, -9, 9),
  hypot: () => pairs(Math.hypot, -9, 9),
};

const isQuantity = (value: unknown): value is { in(unit: string): number } =>
  typeof value === "object" && value !== null && "in" in value && "dimension" in value;

const figure = (library: Library, asked: SmokeFigure): number => {
  const run = library[asked.function] as (...args: unknown[]) => unknown;
  const args = JSON.parse(JSON.stringify(asked.arguments), library.quantityReviver) as unknown[];
  const value = asked.at.reduce<unknown>(
    (whole, key) => (whole as Readonly<Record<string | number, unknown>> | undefined)?.[key],
    run(...args),
  );
  return isQuantity(value) && asked.unit !== undefined ? value.in(asked.unit) : (value as number);
};

/** Everything, by the library that is handed in. */
export const smoke = (library: Library, figures: readonly SmokeFigure[]): SmokeResult => {
  const thrown: string[] = [];
  const bits = figures.map((asked) => {
    try {
      return bitsOf(figure(library, asked));
    } catch (error) {
      thrown.push(`${asked.function}: ${error instanceof Error ? error.message : String(error)}`);
      return bitsOf(Number.NaN);
    }
  });
  return {
    basics: Object.fromEntries(Object.entries(basics).map(([name, run]) => [name, run().map(bitsOf)])),
    figures: bits,
    thrown,
  };
};
