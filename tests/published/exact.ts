import type { PublishedCheck } from "./check.js";
import list from "./exact.json" with { type: "json" };

// Figures that the sources print and that are met to the last bit but for rounding. Where the source rounds, a figure may
// lie half of its last place away; where it was met exactly once, it is held to that: a coefficient that is off by one
// part in ten thousand would still round to the printed 2.5, but it would no longer give 2.5.

type Exact = Readonly<Record<string, Readonly<Record<string, readonly number[]>>>>;
const exact: Exact = list;

/** Whether a computed figure is the printed one, but for the rounding of doubles. */
export const isExactly = (computed: number, printed: number): boolean =>
  Math.abs(computed - printed) <= 1e-9 * Math.abs(printed);

/** The printed figures of an entry that are met exactly, as recorded. */
export const metExactly = (room: string, entry: string): readonly number[] => exact[room]?.[entry] ?? [];

/** The figures of a room's checks that are met exactly today: those of an entry that are so wherever they stand in it. */
export const exactOf = (checks: readonly PublishedCheck[]): Readonly<Record<string, readonly number[]>> => {
  const met = new Map<string, Map<number, boolean>>();
  for (const { entry, answers, compute } of checks) {
    const computed = compute();
    const figures = met.get(entry) ?? new Map<number, boolean>();
    answers.forEach(({ printed, wrong }, n) => {
      const right = wrong?.right ?? printed;
      figures.set(right, isExactly(computed[n] as number, right) && figures.get(right) !== false);
    });
    met.set(entry, figures);
  }
  return Object.fromEntries(
    [...met]
      .map(([entry, figures]) => [entry, [...figures].flatMap(([right, is]) => (is ? [right] : []))] as const)
      .filter(([, figures]) => figures.length > 0),
  );
};
