import type { Citation } from "./citation.js";

/** Something unusual but possible, or a thing to know before mixing. Never thrown. */
export interface Finding {
  /** Stable code; part of the wire format. */
  readonly code: string;
  readonly severity: "note" | "caution" | "warning";
  /** Where in the input it comes from. */
  readonly path?: string;
  readonly params: Readonly<Record<string, string | number | readonly string[]>>;
  /** The finding in English; `code` and `params` say the same. */
  readonly text: string;
  readonly source?: Citation | "common practice, no source";
}
