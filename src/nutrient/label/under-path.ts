import { checks, expectList, outOfRange } from "../../quantity/index.js";

/** What a reader gives, its problems told under a path: `limit` under `caps[1]` is `caps[1].limit`. */
export const under = <T>(path: string, read: () => T): T => eachOf([path], (at) => at, read)[0] as T;

/** What a reader gives of each item of a list, or all problems of all items, each under `path[index]` or at a path of its own. */
export const eachOf = <I, T>(
  list: readonly I[],
  path: string | ((item: I, index: number) => string),
  read: (item: I, index: number) => T,
): T[] => {
  const at = typeof path === "string" ? (_: I, i: number): string => `${path}[${i}]` : path;
  const problems = checks();
  const found: T[] = [];
  for (const [i, item] of list.entries()) problems.run(() => found.push(read(item, i)), at(item, i));
  problems.done();
  return found;
};

/** Takes a list of at least one and at most so many items, or throws; its length is looked at before it is read. */
export const listOf = (input: unknown, path: string, of: string, most: number): readonly unknown[] => {
  if (Array.isArray(input) && input.length > most) {
    outOfRange(path, `a list of ${input.length}`, { max: most, count: "entries" });
  }
  return expectList(input, path, of);
};
