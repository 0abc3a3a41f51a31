/**
 * What a spreadsheet may take for the start of a formula, in narrow and in wide letters, and the apostrophe
 * that guards against it.
 */
const starts = "=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20";

const atStart = /* @__PURE__ */ new RegExp(`^(?:'|\\s*[${starts}]|[\\t\\r\\n])`);
/** Behind what another program could take for the end of a cell. */
const inside = /* @__PURE__ */ new RegExp(`([,;\\t\\r\\n]\\s*)(?=[${starts}'])`, "g");
const guarded = /([,;\t\r\n]\s*)'/g;

/**
 * A text with an apostrophe before everything that a spreadsheet would run as a formula: at its start, and behind
 * a comma, a semicolon, a tab or a new line inside it, where a program with another idea of where a cell ends
 * would begin a new one. An apostrophe that stands there already gets one more, so that {@link unguardedText}
 * gives back exactly what was there.
 *
 * Source of what starts a formula: OWASP, "CSV Injection".
 */
export const guardedText = (text: string): string => {
  const within = text.replace(inside, "$1'");
  return atStart.test(within) ? `'${within}` : within;
};

/** The text that {@link guardedText} was given. */
export const unguardedText = (text: string): string =>
  (text.startsWith("'") ? text.slice(1) : text).replace(guarded, "$1");
