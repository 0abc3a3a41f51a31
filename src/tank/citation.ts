/** Where a rule was published. */
export interface Citation {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
  readonly where?: string;
}
