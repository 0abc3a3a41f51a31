/** What an exhaustive search over all linear orders found. */
export interface BestOrders {
  /** The most rankings that any order keeps. */
  readonly best: number;
  /** How many orders keep as many. */
  readonly count: number;
  /** The most rankings that an order keeps which is not one of these; `undefined` where there is none. */
  readonly next: { readonly kept: number; readonly order: readonly number[] } | undefined;
}

interface Reached {
  readonly kept: number;
  readonly count: number;
  /** Which comes last, and whether what stands before it is the best or the next best of its set. */
  readonly last: number;
  readonly rank: 0 | 1;
}

/**
 * Searches all orders of a table of rankings, exactly: the best order of a set is its last member behind
 * the best order of the rest (Held and Karp), here with the two highest different scores of each set.
 * `counts[i][j]` is how many put i before j.
 */
export const bestOrders = (counts: readonly (readonly number[])[]): BestOrders => {
  const size = counts.length;
  const sets: (readonly Reached[])[] = [[{ kept: 0, count: 1, last: -1, rank: 0 }]];
  for (let set = 1; set < 2 ** size; set++) {
    const found = new Map<number, Reached>();
    for (let last = 0; last < size; last++) {
      if (!(set & (1 << last))) continue;
      const rest = set & ~(1 << last);
      let gain = 0;
      for (let i = 0; i < size; i++) if (rest & (1 << i)) gain += counts[i]?.[last] ?? 0;
      (sets[rest] as readonly Reached[]).forEach(({ kept, count }, rank) => {
        const total = kept + gain;
        const known = found.get(total);
        found.set(
          total,
          known === undefined
            ? { kept: total, count, last, rank: rank as 0 | 1 }
            : { ...known, count: known.count + count },
        );
      });
    }
    sets.push([...found.values()].sort((a, b) => b.kept - a.kept).slice(0, 2));
  }
  const all = sets[2 ** size - 1] as readonly Reached[];
  const traced = (start: 0 | 1): readonly number[] => {
    const order: number[] = [];
    let rank = start;
    for (let set = 2 ** size - 1; set > 0; ) {
      const step = sets[set]?.[rank] as Reached;
      order.unshift(step.last);
      set &= ~(1 << step.last);
      rank = step.rank;
    }
    return order;
  };
  const second = all[1];
  return {
    best: all[0]?.kept ?? 0,
    count: all[0]?.count ?? 0,
    next: second === undefined ? undefined : { kept: second.kept, order: traced(1) },
  };
};
