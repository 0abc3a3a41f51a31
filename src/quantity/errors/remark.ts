/** Where a fact was printed. */
export interface Citation {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
  readonly where?: string;
  readonly url?: string;
}

/** Where a fact comes from: a citation, a source that the caller named, or words that say that there is none. */
export type FactSource = Citation | "common practice, no source" | "from memory" | (string & {});

/** Something unusual but possible, or a thing to know. Never thrown; an empty list is no approval. */
export interface Finding {
  /** Stable code; part of the wire format. */
  readonly code: string;
  readonly severity: "note" | "caution" | "warning";
  /** Where in the input it comes from. */
  readonly path?: string;
  readonly params: Readonly<Record<string, string | number | readonly string[]>>;
  /** The finding in English; `code` and `params` say the same. */
  readonly text: string;
  readonly source?: FactSource;
}

/** A thing to heed, whatever the figures say. */
export interface Caution {
  /** Stable code; part of the wire format. */
  readonly code: string;
  readonly text: string;
  readonly source: FactSource;
}
