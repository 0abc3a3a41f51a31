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
