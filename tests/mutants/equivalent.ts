// Changes of programs that no test can notice, because what comes out is the same for every input, each with the reason.

/** One change, by what stood there and what was put in its place. */
export interface Equivalent {
  readonly file: string;
  /** As it stands in the file. */
  readonly was: string;
  /** What is put in its place; any where it is left out. */
  readonly is?: string;
  readonly why: string;
}

/** The list, by file. */
export const equivalents: readonly Equivalent[] = [];

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
