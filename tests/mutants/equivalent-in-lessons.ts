// Changes of the problems for learners that no test can notice; see equivalent-list.ts.
import type { Equivalent } from "./equivalent-list.js";

/** The list, by file. */
export const equivalentsInLessons: readonly Equivalent[] = [
  ...["January", "February", "October", "November", "December"].map((month) => ({
    file: "src/teach/ground-lessons/record-topics.ts",
    was: `"${month}"`,
    is: '""',
    why: "the dates of a problem lie between March 20 and the middle of September",
  })),
  ...(
    [
      ["src/teach/application-lessons/strength-topics.ts", '"Flow"'],
      ["src/teach/ground-lessons/record-topics.ts", '"Mean catch"'],
    ] as const
  ).map(([file, was]) => ({
    file,
    was,
    is: '""',
    why: "the heading of a step, which a working of one step does not have",
  })),
];
