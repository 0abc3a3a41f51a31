/**
 * The form of a published check: what a source printed, beside what the public API computes.
 * One file per room holds them; `published.test.ts` runs them all, and `docs/evidence.md` is drawn from them.
 */

/** Where a figure was printed. */
export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
  readonly where?: string;
  readonly url?: string;
}

/** One printed figure. */
export interface Answer {
  /** What the figure is, with its unit: `"lb product/1000 ft2"`. */
  readonly of: string;
  /** The figure as printed. */
  readonly printed: number;
  /** The unit in the last printed place: 3.57 is printed to 0.01. The tolerance is half of it. */
  readonly to: number;
  /** `"cut"` where the source truncates: the computed figure may lie up to one unit above. */
  readonly printing?: "rounded" | "cut";
  /**
   * Where the printed figure is wrong: the right one, to the same place, and why. The check then asserts
   * that the computed figure agrees with the right one and not with the printed one.
   */
  readonly wrong?: { readonly right: number; readonly why: string };
}

/** A check of one published example. */
export interface PublishedCheck {
  /** Key of the example: room and number, such as `fert-001`. Several checks may share one. */
  readonly entry: string;
  /** The exported functions that the check exercises. */
  readonly formulas: readonly string[];
  readonly source: Source;
  /** How the figure reached this library: read in the source, remembered, or derived by hand. Only `"read"` counts as independent. */
  readonly reached: "read" | "from memory" | "derived";
  /** What was given, in plain words. */
  /**
   * What kind of evidence it is; a worked example where it is left out. Only worked examples and measurements are
   * independent: a transcription copies a table or statute, a fit has the figure as its constant, a round trip gets
   * its input back.
   */
  readonly kind?: "worked example" | "measurement" | "transcription" | "fit" | "round trip";
  readonly given: string;
  readonly answers: readonly Answer[];
  /** Calls the public API; gives one number per answer, in the unit of the answer. Unrounded. */
  readonly compute: () => readonly number[];
  readonly note?: string;
}

/** A published example that is left out, and why. */
export interface LeftOut {
  readonly entry: string;
  readonly reason: string;
}

/** Whether a computed figure agrees with a printed one, within what the printed digits can tell. */
export const agrees = (computed: number, printed: number, answer: Answer): boolean => {
  const guard = 1e-9 * Math.max(1, Math.abs(printed));
  const off = computed - printed;
  return answer.printing === "cut"
    ? off >= -guard && off < answer.to + guard
    : Math.abs(off) <= answer.to / 2 + guard;
};

const computed = new WeakMap<PublishedCheck, readonly number[]>();

/** The figures that a check computes: once for all tests that a worker runs. */
export const figuresOf = (check: PublishedCheck): readonly number[] => {
  const figures = computed.get(check) ?? check.compute();
  computed.set(check, figures);
  return figures;
};
