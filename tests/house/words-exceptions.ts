/** A use of a guarded word that does not speak of an application, and why it may stay. */
export interface WordException {
  /** The file, from the root of the repository. */
  readonly file: string;
  /** The whole string or name as it stands in the file. */
  readonly text: string;
  /** Why it says nothing about whether a person may apply something. */
  readonly reason: string;
}

/** Technical uses of the words that {@link file://./words.test.ts} guards. */
export const wordExceptions: readonly WordException[] = [];
