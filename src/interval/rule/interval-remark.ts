/** Why a date is what it is, what was unusual, or what was not checked. */
export interface IntervalRemark {
  /** Stable: a program may branch on it. */
  readonly code: string;
  readonly params: Readonly<Record<string, string | number>>;
  /** English for a person. */
  readonly text: string;
  readonly source?: string;
}
