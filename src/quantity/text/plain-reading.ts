import { type KeptReadings, keptReadings } from "./kept-readings.js";
import type { ParseOptions, TextReading } from "./text-reading.js";

/** `12,400.5 ` before a unit. */
const grouped = /^[+-]?[1-9]\d{0,2}(?:,\d{3}){1,4}(?:\.\d{0,9})?/;

/**
 * Where a number in plain digits ends, if a letter, `%`, `°` or `#` follows it, perhaps behind a space: what stands there
 * is read alike for every number. 0 where the text has another form.
 */
export const plainEnd = (text: string): number => {
  let at = text[0] === "-" || text[0] === "+" ? 1 : 0;
  let digits = 0;
  let dots = 0;
  for (; ; at++) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) digits += 1;
    else if (code === 46 && dots === 0) dots = 1;
    else if (code === 44) {
      at = grouped.exec(text)?.[0].length ?? 0;
      digits = at;
      break;
    } else break;
  }
  if (digits === 0 || digits > 20) return 0;
  const code = text.charCodeAt(text[at] === " " ? at + 1 : at);
  // not 1e5, which is a number
  const letter = ((code >= 65 && code <= 90) || (code >= 97 && code <= 122)) && code !== 69 && code !== 101;
  return letter || code === 35 || code === 37 || code === 176 ? at : 0;
};

interface PlainReading {
  readonly unit: string;
  readonly of: string;
  readonly divisor: number;
}
const kept: KeptReadings<PlainReading> = /* @__PURE__ */ keptReadings();

/** By a part of one the number is multiplied, so that 2 stone are 28 lb to the last digit. */
export const divided = (value: number, divisor: number): number => {
  const inverse = Math.round(1 / divisor);
  return 1 / inverse === divisor ? value * inverse : value / divisor;
};

export const restFrom = (input: string, end: number): string =>
  input.slice(input[end] === " " ? end + 1 : end);

/** The plain form, `3 lb/1000 ft2`, where the same was read before behind another number. */
export const readPlain = (
  input: string,
  end: number,
  { dimension, of }: ParseOptions,
): TextReading | undefined => {
  const seen = kept.get(restFrom(input, end), dimension, of);
  if (seen === undefined) return undefined;
  const digits = input.slice(0, end);
  const value = Number(digits.includes(",") ? digits.replace(/,/g, "") : digits);
  return { value: divided(value, seen.divisor), unit: seen.unit, of: seen.of, problems: [] };
};

export const keepPlain = (
  rest: string,
  { dimension, of }: ParseOptions,
  reading: TextReading & { readonly divisor?: number },
): void => {
  if (reading.problems.length > 0 || reading.unit === undefined || reading.of === undefined) return;
  kept.keep(rest, dimension, of, { unit: reading.unit, of: reading.of, divisor: reading.divisor ?? 1 });
};
