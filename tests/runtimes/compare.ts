// How far the results of a runtime lie from those of Node here.
import type { SmokeFigure, SmokeResult } from "./smoke.js";

/** What one runtime came to. */
export interface Compared {
  readonly name: string;
  readonly version: string;
  readonly engine: string;
  /** Figures, how many of them equal to the last bit, and how far the others lie, in parts of the figure. */
  readonly figures: number;
  readonly equal: number;
  readonly farthest: number;
  /** Figures that are not the published ones, or threw: none should be. */
  readonly wrong: readonly string[];
  /** The most units in the last place between this runtime and Node here, by operation. */
  readonly ulps: Readonly<Record<string, number>>;
}

const number = (bits: string): number => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  return view.getFloat64(0);
};

/** Bits as a place in the order of all numbers, so that neighbors are one apart. */
const place = (bits: string): bigint => {
  const raw = BigInt(`0x${bits}`);
  return raw >> 63n === 1n ? -(raw - (1n << 63n)) : raw;
};

/** How many steps from one number to the next lie between two, at most `Number.MAX_SAFE_INTEGER`. */
export const ulpsBetween = (a: string, b: string): number => {
  const apart = place(a) - place(b);
  const size = apart < 0n ? -apart : apart;
  return size > BigInt(Number.MAX_SAFE_INTEGER) ? Number.MAX_SAFE_INTEGER : Number(size);
};

const agrees = (value: number, { printed, right, tolerance, rounding }: SmokeFigure): boolean => {
  const from = right ?? printed;
  const slack = 1e-9 * Math.abs(from);
  return rounding === "cut"
    ? value >= from - slack && value < from + tolerance + slack
    : Math.abs(value - from) <= tolerance + slack;
};

/** The results of a runtime beside those of the reference. */
export const compared = (
  who: Pick<Compared, "name" | "version" | "engine">,
  result: SmokeResult,
  reference: SmokeResult,
  figures: readonly SmokeFigure[],
): Compared => {
  const off = figures.flatMap((figure, i) =>
    agrees(number(result.figures[i] as string), figure) ? [] : [`${figure.function}, figure ${i}`],
  );
  const apart = result.figures.map((bits, i) => {
    const [value, wanted] = [number(bits), number(reference.figures[i] as string)];
    return bits === reference.figures[i] ? 0 : Math.abs(value - wanted) / Math.max(Math.abs(wanted), 1e-300);
  });
  const ulps = Object.entries(reference.basics).map(([name, list]) => [
    name,
    Math.max(...list.map((bits, i) => ulpsBetween(result.basics[name]?.[i] as string, bits))),
  ]);
  return {
    ...who,
    figures: figures.length,
    equal: apart.filter((distance) => distance === 0).length,
    farthest: Number(Math.max(...apart).toPrecision(2)),
    wrong: [...result.thrown, ...off],
    ulps: Object.fromEntries(ulps),
  };
};

/** Operations that IEEE 754 defines to the last bit. */
export const exactOperations: readonly string[] = ["+", "-", "x", "/", "sqrt"];

/** What a runtime fails of what is asked: exact arithmetic, 2 units in the last place, the published figures. */
export const shortcomings = ({ name, ulps, wrong, farthest }: Compared): readonly string[] => [
  ...wrong.map((what) => `${name}: ${what}`),
  ...Object.entries(ulps).flatMap(([operation, most]) =>
    most > (exactOperations.includes(operation) ? 0 : 2)
      ? [`${name}: ${operation} lies ${most} units in the last place off`]
      : [],
  ),
  ...(farthest > 1e-12 ? [`${name}: a figure lies ${farthest} of itself off`] : []),
];
