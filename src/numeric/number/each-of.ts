import { described } from "../../quantity/house.js";
import { checks, expectList, outOfRange } from "../../quantity/index.js";

/** More of anything than this in one list of a job is taken for a slip. */
export const mostItems = 1000;

/** Reads every item of a list that is not empty, or throws the problems of all. */
export const eachOf = <T>(
  input: unknown,
  path: string,
  of: string,
  read: (item: unknown, at: string, i: number) => T,
  most: number = mostItems,
): readonly T[] => {
  // Its length is looked at before it is read.
  if (Array.isArray(input) && input.length > most)
    outOfRange(path, described(`a list of ${input.length}`), { max: most });
  const list = expectList(input, path, of);
  const problems = checks();
  const found = list.map((item, i) => problems.run(() => read(item, `${path}[${i}]`, i)));
  problems.done();
  // Each item was read, or its problems were thrown above.
  return found as readonly T[];
};
