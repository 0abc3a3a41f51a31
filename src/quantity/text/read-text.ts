import { type Problem, shown } from "../errors/errors.js";
import { exampleUnit } from "../unit/near-units.js";
import { currencies } from "./aliases.js";
import { cleanText, textLimit } from "./clean-text.js";
import { imperialText } from "./imperial.js";
import { scanNumber } from "./number-text.js";
import { divided, keepPlain, plainEnd, readPlain, restFrom } from "./plain-reading.js";
import { suggestSubstance, suggestUnit } from "./suggest.js";
import type { ParseOptions, TextReading } from "./text-reading.js";
import { twoAmounts } from "./two-amounts.js";
import { readRest } from "./unit-reading.js";

const dollars = ["USD", "CAD", "AUD", "NZD", "MXN", "SGD", "HKD"];
const signs: Readonly<Record<string, readonly string[]>> = {
  $: dollars,
  US$: ["USD"],
  CA$: ["CAD"],
  A$: ["AUD"],
  NZ$: ["NZD"],
  MX$: ["MXN"],
  "€": ["EUR"],
  "£": ["GBP"],
  "¥": ["JPY", "CNY"],
};

const rangeSign = /^ ?(?:-|to |through |\.\.+ ?|… ?|\+-|±)/i;
const laterNumber = /(?: - ?| to | through |…)[+-]?[\d.]/i;

/** Takes a text apart; never throws. */
export const readText = (input: unknown, options: ParseOptions, path: string): TextReading => {
  const stop = (problem: Omit<Problem, "path">): TextReading => ({ problems: [{ ...problem, path }] });
  if (typeof input !== "string") {
    return stop({
      code: "type",
      got: input === null ? "null" : typeof input,
      expected: "a text, such as 3 lb/1000 ft2",
    });
  }
  if (input.length > textLimit) {
    return stop({
      code: "text",
      got: `${input.length} characters`,
      expected: `at most ${textLimit} characters`,
    });
  }
  const end = options.decimal === "," || options.measures !== undefined ? 0 : plainEnd(input);
  const quick = end === 0 ? undefined : readPlain(input, end, options);
  if (quick !== undefined) return quick;
  const reading = readFully(input, options, path);
  if (end > 0) keepPlain(restFrom(input, end), options, reading);
  return reading;
};

/** What was read, with what the number was divided by. */
interface FullReading extends TextReading {
  readonly divisor?: number;
}

const readFully = (input: string, options: ParseOptions, path: string): FullReading => {
  const stop = (problem: Omit<Problem, "path">): TextReading => ({ problems: [{ ...problem, path }] });
  const text = cleanText(input);
  const dimension = options.dimension;
  const example = (): string => `3 ${exampleUnit(dimension ?? "mass/area")}`;
  const problems: Problem[] = [];
  const prefix = /^[\d.]/.test(text)
    ? null
    : /^([+-]?) ?((?:US|CA|A|NZ|MX)?\$|[€£¥]|[A-Z]{3} ?(?=[\d.]))? ?/.exec(text);
  const wantedCode = /^money:([A-Z]{3})/.exec(dimension ?? "")?.[1];
  const sign = prefix?.[2]?.trim();
  // LBS 5 has the form of a currency and an amount
  const coined =
    sign === undefined || Object.hasOwn(signs, sign) || currencies.test(sign) || sign === wantedCode;
  const symbol = coined ? sign : undefined;
  const body = symbol === undefined ? text : `${prefix?.[1] ?? ""}${text.slice(prefix?.[0].length ?? 0)}`;
  // $28/50 lb is a price for 50 lb and no fraction of a dollar
  const amount = symbol === undefined ? body : (/^[+-]?[\d.,]+(?=\/)/.exec(body)?.[0] ?? body);
  const number = scanNumber(amount, 0, options.decimal ?? ".");
  if (number === undefined) {
    return stop({ code: "text", got: shown(input), expected: `a number and a unit, such as ${example()}` });
  }
  if (number.problem !== undefined) problems.push({ ...number.problem, path });
  let rest = body.slice(number.end);
  if (
    number.problem === undefined &&
    ((rangeSign.test(rest) && /^\D{1,10}\d/.test(rest)) || laterNumber.test(rest))
  ) {
    return stop({ code: "text", got: shown(input), expected: "one amount; parseRange reads a range" });
  }
  rest = rest.trim();
  const digits = /\d/.test(rest);
  if (digits && /^x ?1?[\d,]+/.test(rest)) rest = rest.slice(1).trim();
  if (/^k(?: |$)/i.test(rest) && !/^K$/.test(rest) && number.problem === undefined) {
    const full = `${Number((number.value * 1000).toPrecision(15))} ${rest.slice(1).trim()}`.trim();
    return stop({ code: "text", got: shown(input), expected: "the number in full", suggestion: full });
  }
  const together = digits && number.problem === undefined ? twoAmounts(number.value, rest) : undefined;
  if (together !== undefined) {
    const expected = "one number and one unit";
    return stop({ code: "text", got: shown(input), expected, suggestion: together });
  }
  if (symbol !== undefined) {
    const codes = signs[symbol] ?? [symbol];
    const code = codes.length === 1 ? codes[0] : codes.find((one) => one === wantedCode);
    if (code === undefined) {
      return stop({ code: "unit/ambiguous", got: shown(input), expected: "a currency", choices: codes });
    }
    rest = `money:${code}${rest === "" || rest.startsWith("/") ? "" : " "}${rest}`;
  }
  if (options.measures === "imperial") rest = imperialText(rest);
  if (options.measures === "US") rest = rest.replace(/^(?=(?:cwts?|hundredweights?)\b)/i, "short ");
  if (rest === "" && (dimension === "1" || dimension === "count")) rest = dimension;
  if (rest === "") {
    const expected = `a unit after the number, such as ${example()}`;
    return {
      value: number.value,
      problems: [...problems, { code: "missing", path, got: shown(input), expected }],
    };
  }
  const read = readRest(rest, dimension, options.of);
  for (const { raw, ...problem } of read.problems) {
    const near =
      raw === undefined
        ? undefined
        : problem.code === "substance/unknown"
          ? suggestSubstance(raw)
          : suggestUnit(raw, dimension);
    problems.push({ ...problem, path, ...(near !== undefined && { suggestion: near }) });
  }
  const of = settled(read.of, options.of);
  if (of === undefined) {
    problems.push({
      code: "substance/mismatch",
      path,
      got: shown(read.of),
      expected: `a quantity of ${options.of}`,
    });
  }
  return {
    value: divided(number.value, read.divisor),
    divisor: read.divisor,
    ...(read.unit !== undefined && { unit: read.unit }),
    ...(of !== undefined && { of }),
    problems,
  };
};

/** The substance that text and caller agree on; a caller's `product:feed-a` may be written as `product`. */
const settled = (said: string | undefined, wanted: string | undefined): string | undefined => {
  if (said === undefined) return wanted ?? "none";
  if (wanted === undefined || said === wanted || cleanText(wanted) === said) return wanted ?? said;
  return /^(?:product|ai|ae)$/.test(said) && wanted.startsWith(`${said}:`) ? wanted : undefined;
};
