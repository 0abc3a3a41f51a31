import type { LeftOut } from "./check.js";
import { allChecks, allLeftOut } from "./index.js";

/** What became of a list of eligible entries. An entry that a check reads is covered, whatever else is said of it. */
export interface Coverage {
  readonly covered: readonly string[];
  readonly leftOut: readonly LeftOut[];
  readonly open: readonly string[];
}

/** Sorts entries into covered by a check of any room, left out with a reason, and neither. */
export const coverage = (entries: readonly string[]): Coverage => {
  const read = new Set(
    Object.values(allChecks)
      .flat()
      .filter(({ reached }) => reached === "read")
      .map(({ entry }) => entry),
  );
  const excluded = Object.values(allLeftOut).flat();
  const leftOut = entries
    .filter((entry) => !read.has(entry))
    .flatMap((entry) => excluded.find((one) => one.entry === entry) ?? []);
  return {
    covered: entries.filter((entry) => read.has(entry)),
    leftOut,
    open: entries.filter((entry) => !read.has(entry) && !leftOut.some((one) => one.entry === entry)),
  };
};
