import fc from "fast-check";

// A change is judged by what it changes: the same cases each time. `npm run hunt` looks for new ones, `more` times as many.
const more = Number(process.env.PROPERTY_HUNT ?? 0);

fc.configureGlobal(more > 0 ? { numRuns: 100 * more, interruptAfterTimeLimit: 30_000 } : { seed: 20150608 });

/** So many runs of a property whose single run takes long; no more than all others have, where that is said for a whole run. */
export const runs = (count: number): { readonly numRuns: number } => {
  const { numRuns = count } = fc.readConfigureGlobal();
  return { numRuns: more > 0 ? count * more : Math.min(count, numRuns) };
};
