// Whether a change of a program is one that no test can notice: see the list.
import { equivalents } from "./equivalent-list.js";

/** Why a change is listed, or nothing. */
export const whyEquivalent = (mutant: {
  readonly file: string;
  readonly was: string;
  readonly is: string;
}): string | undefined =>
  equivalents.find(
    ({ file, was, is }) =>
      file === mutant.file && was === mutant.was && (is === undefined || is === mutant.is),
  )?.why;
