// Measures several ways of one task in turn, round by round, so that a machine that slows down slows all of them, in
// processor time, so that other work on the machine does not count.
import type { Reading } from "./rows.js";

/** The median of readings, and the quarters. */
export const reading = (values: readonly number[]): Reading => {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] as number;
  return { low: at(0.25), median: at(0.5), high: at(0.75) };
};

/** Nanoseconds of processor time since `start`. */
const nanoseconds = (start: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(start);
  return Math.max(1, user + system) * 1000;
};

/** A result that the machine cannot leave out as unused. */
const box: { last?: unknown } = {};

type Loop = (count: number) => unknown;

let made = 0;

/**
 * A function from its text, compiled by itself: of functions that come from one place in the source the machine learns
 * together, and inlines none. The number keeps it from taking two of the same text for one.
 */
export const compiled = <T>(parameters: readonly string[], body: string, values: readonly unknown[]): T =>
  new Function(...parameters, `/* ${made++} */ ${body}`)(...values) as T;

/** A loop of its own for each way. */
const loopOf = (work: (i: number) => unknown): Loop =>
  compiled(
    ["work", "box"],
    "return (count) => { for (let i = 0; i < count; i++) box.last = work(i & 1023); };",
    [work, box],
  );

/**
 * Nanoseconds of processor time a call of each way, over `rounds` rounds after three to warm up. A round of a way takes about
 * `milliseconds`.
 */
export const race = (
  ways: readonly ((i: number) => unknown)[],
  options: { readonly rounds?: number; readonly milliseconds?: number } = {},
): readonly Reading[] => raceTimes(ways, options).map(reading);

/** The same, each round by itself. */
export const raceTimes = (
  ways: readonly ((i: number) => unknown)[],
  { rounds = 21, milliseconds = 4 } = {},
): readonly (readonly number[])[] => {
  const loops = ways.map(loopOf);
  const timed = (loop: Loop, count: number): number => {
    const start = process.cpuUsage();
    loop(count);
    return nanoseconds(start);
  };
  const counts = loops.map((loop) => {
    loop(20);
    let count = 1;
    let spent = timed(loop, count);
    // A first call now and then waits for the compiler: nothing is concluded from it.
    if (spent > milliseconds * 5e5) spent = timed(loop, count);
    while (spent < milliseconds * 5e5 && count < 1e7) {
      count *= 2;
      spent = timed(loop, count);
    }
    return Math.max(1, Math.round((count * milliseconds * 1e6) / spent));
  });
  const times: number[][] = loops.map(() => []);
  for (let round = -3; round < rounds; round++) {
    for (const [at, loop] of loops.entries()) {
      const count = counts[at] as number;
      const spent = timed(loop, count) / count;
      if (round >= 0) times[at]?.push(spent);
    }
  }
  return times;
};
