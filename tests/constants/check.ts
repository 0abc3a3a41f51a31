/** A figure of the source beside the same figure, transcribed a second time from where it was printed. */
export interface ConstantCheck {
  /** The room whose constant it is. */
  readonly room: string;
  /** What the figure is. */
  readonly what: string;
  /** As printed in the source. */
  readonly printed: number;
  /** What the library has, or computes, for it. */
  readonly here: () => number;
  /** How far the two may lie apart, as a share of the printed one; equal to the last bit but for rounding if left out. */
  readonly within?: number;
  readonly source: string;
  /** How the figure reached this file. */
  readonly reached: "read" | "from memory" | "derived";
}

/** Whether the library's figure is the printed one. */
export const isAsPrinted = ({ printed, here, within = 1e-9 }: ConstantCheck): boolean =>
  Math.abs(here() - printed) <= within * Math.max(Math.abs(printed), Number.MIN_VALUE);

/** One printed figure, and where the library has it. */
export type Cell = readonly [what: string, printed: number, here: () => number];

/** Figures of one source, each a check of its own. */
export const cells = (
  of: Pick<ConstantCheck, "room" | "source" | "reached" | "within">,
  list: readonly Cell[],
): readonly ConstantCheck[] => list.map(([what, printed, here]) => ({ ...of, what, printed, here }));

/** Where a function that answers yes at one place and no at another changes its mind, by halving. */
export const edge = (says: (at: number) => boolean, yes: number, no: number): number => {
  let [holds, fails] = [yes, no];
  if (!says(yes) || says(no)) return Number.NaN;
  for (let n = 0; n < 60; n += 1) {
    const middle = (holds + fails) / 2;
    if (says(middle)) holds = middle;
    else fails = middle;
  }
  return (holds + fails) / 2;
};

/** Whether a call goes through. */
export const goes = (call: () => unknown): boolean => {
  try {
    call();
    return true;
  } catch {
    return false;
  }
};

/** 1 where two lists are equal in every place, 0 where they are not: for tables that are compared whole. */
export const same = (one: readonly unknown[], other: readonly unknown[]): number =>
  one.length === other.length && one.every((entry, n) => Object.is(entry, other[n])) ? 1 : 0;
