import { fail } from "../../quantity/index.js";

/** Whether a sign stands in no document: a control character other than a tab or the end of a line, half of a pair, a noncharacter. */
const isUnprintable = (code: number): boolean =>
  (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d) ||
  (code >= 0x7f && code <= 0x9f) ||
  (code >= 0xd800 && code <= 0xdfff) ||
  (code & 0xfffe) === 0xfffe;

/** A text that a sheet of any kind can hold: XML 1.0 has no control characters, and paper has none either. */
export const printable = (text: string, path: string): string => {
  for (const sign of text) {
    const code = sign.codePointAt(0) ?? 0;
    if (isUnprintable(code)) {
      const name = `U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
      return fail("text", path, name, "a text without control characters or half signs");
    }
  }
  return text;
};
