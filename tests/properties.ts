import fc from "fast-check";

// A change is judged by what it changes: the same cases each time. `npm run hunt` looks for new ones, `more` times as many.
const more = Number(process.env.PROPERTY_HUNT ?? 0);

fc.configureGlobal(more > 0 ? { numRuns: 100 * more, interruptAfterTimeLimit: 30_000 } : { seed: 20150608 });

/** So many runs of a property whose single run takes long. */
export const runs = (count: number): { readonly numRuns: number } => ({ numRuns: count * Math.max(1, more) });
