import { RatewrightError } from "../../quantity/index.js";

/** A product as the arranging sees it: where it stands by its kind, and what its label says. */
export interface Placed {
  readonly id: string;
  /** Place by formulation: lower goes in earlier. */
  readonly place: number;
  /** Ids that this product's label puts after it. */
  readonly before: readonly string[];
  /** Ids that this product's label puts before it. */
  readonly after: readonly string[];
}

/** For ids, of which no two are the same. */
const byText = (a: string, b: string): number => (a < b ? -1 : 1);

/** A shortest cycle, the first by id, as `a, b, a`. */
const cycleIn = (next: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] | undefined => {
  let best: readonly string[] | undefined;
  for (const start of [...next.keys()].sort(byText)) {
    const from = new Map<string, string>();
    const queue = [start];
    for (let here = queue.shift(); here !== undefined; here = queue.shift()) {
      for (const to of [...(next.get(here) as ReadonlySet<string>)].sort(byText)) {
        if (to === start) {
          const path: string[] = [];
          for (let at = here; at !== start; at = from.get(at) as string) path.unshift(at);
          const cycle = [start, ...path, start];
          if (best === undefined || cycle.length < best.length) best = cycle;
          queue.length = 0;
          break;
        }
        if (from.has(to)) continue;
        from.set(to, here);
        queue.push(to);
      }
    }
  }
  return best;
};

/**
 * The order of products by place, with every label instruction kept. The product whose label speaks
 * moves: put before another it goes in right ahead of that one, put after it right behind; all others
 * stay where their kind puts them. Ties go by id, so the order of the input does not matter.
 *
 * @throws RatewrightError `conflict` where the instructions form a circle, which it names
 */
export const arranged = (products: readonly Placed[]): readonly string[] => {
  const next = new Map<string, Set<string>>(products.map(({ id }) => [id, new Set<string>()]));
  for (const { id, before, after } of products) {
    for (const other of before) next.get(id)?.add(other);
    for (const other of after) next.get(other)?.add(id);
  }
  const cycle = cycleIn(next);
  if (cycle !== undefined) {
    throw new RatewrightError({
      code: "conflict",
      path: "products",
      got: `instructions that go around in a circle: ${cycle.join(" before ")}`,
      expected: "label instructions that do not contradict one another",
    });
  }
  const ordered = [...products].sort((a, b) => a.place - b.place || byText(a.id, b.id));
  const home = new Map(ordered.map(({ id, place }) => [id, place]));
  const effective = new Map(home);
  // Without circles a pull passes through each product at most once.
  for (const _ of ordered) {
    for (const { id, before, after } of ordered) {
      const own = home.get(id) as number;
      const behind = Math.max(own, ...after.map((other) => effective.get(other) as number));
      effective.set(id, Math.min(behind, ...before.map((other) => effective.get(other) as number)));
    }
  }
  const key = (id: string): number => effective.get(id) as number;
  // Of one key they stay as they were: by the place of their kind, then by id.
  const waiting = ordered.map(({ id }) => id).sort((a, b) => key(a) - key(b));
  const speaksFor = new Map(products.map(({ id, before }) => [id, new Set(before)]));
  /** A product that can go in now so that `id` can: itself, or one whose label puts it right ahead of it. */
  const headOf = (id: string, seen: Set<string>): string | undefined => {
    seen.add(id);
    const blockers = waiting.filter((other) => next.get(other)?.has(id));
    if (blockers.length === 0) return id;
    if (!blockers.every((other) => speaksFor.get(other)?.has(id))) return undefined;
    for (const other of blockers) {
      const head = seen.has(other) ? undefined : headOf(other, seen);
      if (head !== undefined) return head;
    }
    return undefined;
  };
  const result: string[] = [];
  while (waiting.length > 0) {
    // Without circles one of them is always free.
    const seen = new Set<string>();
    let head: string | undefined;
    for (const id of waiting) head ??= headOf(id, seen);
    result.push(...waiting.splice(waiting.indexOf(head as string), 1));
  }
  return result;
};
