import type { Problem } from "../errors/errors.js";
import type { Dimension } from "../unit/dimensions.js";
import type { DecimalSign } from "./number-text.js";

/** What a text is expected to say. */
export interface ParseOptions {
  /** The dimension that is wanted. It also settles `oz` (weight) and `°F` (a temperature or a difference). */
  readonly dimension?: Dimension;
  /** The substance that is wanted; taken where the text names none. */
  readonly of?: string;
  /** The sign before the decimals; the other one groups thousands. `"."` where left out. */
  readonly decimal?: DecimalSign;
  /** Whose gallon, pint, fluid ounce and hundredweight are meant where the text does not say; `"US"` where left out. */
  readonly measures?: Measures;
}

/** US customary or imperial measures. */
export type Measures = "US" | "imperial";

/** What was read of a text, and all that was wrong with it. */
export interface TextReading {
  readonly value?: number;
  readonly unit?: string;
  readonly of?: string;
  readonly problems: readonly Problem[];
}
