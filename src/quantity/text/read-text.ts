import { type Problem, shown } from "../errors/errors.js";
import { hasOwn } from "../errors/has-own.js";
import { exampleUnit } from "../unit/dimension-words.js";
import { currencies } from "./aliases.js";
import { cleanText, textLimit } from "./clean-text.js";
import { imperialText } from "./imperial.js";
import { inFigures } from "./in-figures.js";
import { scanNumber } from "./number-text.js";
import { divided, keepPlain, plainEnd, readPlain, restFrom } from "./plain-reading.js";
import { suggestSubstance, suggestUnit } from "./suggest.js";
import type { ParseOptions, TextReading } from "./text-reading.js";
import { twoAmounts, twoSides } from "./two-amounts.js";
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

/** What stands between the two numbers of a range, the second perhaps with its currency: `3-5`, `$3-$5`. */
export const rangeSign: RegExp = /^ ?(?:-|to |through |thru |\.\.+|…) ?(?=[+-]?(?:[A-Z]*[$€£¥] ?)?[\d.,])/i;
/** The same behind the unit of the first: `16 fl oz - 1 qt`. */
export const laterSign: RegExp = /(?: - ?| to | thr(?:ough|u) |…)(?=[+-]?[\d.])/i;
/** An amount and how far it may be off, or a range without its second end: a form that joins two fields leaves this. */
const oneEnd = /^ ?(?:- |±|\+\/?-)/;
/** A currency before an amount. */
export const coinAhead: RegExp = /^([+-]?) ?((?:US|CA|A|NZ|MX)?\$|[€£¥]|[A-Z]{3}) ?/;

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
  if (reading.problems.length > 0)
    return { ...reading, problems: offered(input, options, path) ?? reading.problems };
  if (end > 0) keepPlain(restFrom(input, end), options, reading);
  return reading;
};

const numberAndUnit = (dimension = "mass/area"): string =>
  `a number and a unit, such as 3 ${exampleUnit(dimension)}`.replace(/(3) money:(...)/, "$2 $1");

/** What a text that is not read may stand for, where that is read in this field: `half an acre` as `1/2 acre`. */
const offered = (input: string, options: ParseOptions, path: string): readonly Problem[] | undefined => {
  const { dimension } = options;
  const clean = cleanText(input);
  const texts = inFigures(clean, dimension).flatMap((text) => {
    if (text === clean) return [];
    const [problem, ...others] = readFully(text, options, path).problems;
    if (problem === undefined) return [text];
    // "1h 30m" is two amounts, "1h 30 min", and they are 1.5 h
    const sum = problem.got === shown(text) && others.length === 0 ? problem.suggestion : undefined;
    return sum === undefined || readFully(sum, options, path).problems.length > 0 ? [] : [sum];
  });
  if (texts[0] === undefined) return undefined;
  const [suggestion, ...more] = texts;
  // what is offered says less than "up to 3 lb"
  const [bound] =
    /^(?:up to|at (?:least|most)|not? (?:more|less) than|max(?:imum)?|[<>]=?|[≤≥])/i.exec(clean) ?? [];
  return [
    {
      code: "text",
      path,
      got: shown(input),
      expected: `${numberAndUnit(dimension)}${bound === undefined ? "" : `, without ${shown(bound)}`}`,
      ...(more[0] === undefined ? { suggestion } : { choices: texts }),
    },
  ];
};

/** `1,500 ha`, which is 1500 or 1.5 of them where the comma stands before the decimals; `1,000 ft2` is the name of a unit. */
const mixedGroups = /(?:\/|\bper) ?(?!1,000 ?(?:ft|sq|square))\d{1,3},\d{3}(?!\d)/i;

/** What was read, with what the number was divided by. */
interface FullReading extends TextReading {
  readonly divisor?: number;
}

/** A text with the sign or code of a currency taken off. */
interface WithoutCurrency {
  /** `$`, `EUR`: what stood before the number, or nothing. */
  readonly symbol: string | undefined;
  /** The currency that the caller wants. */
  readonly wanted: string | undefined;
  readonly body: string;
  /** The part that a number is looked for in. */
  readonly amount: string;
}

const withoutCurrency = (text: string, dimension: string | undefined): WithoutCurrency => {
  const found = coinAhead.exec(text);
  const wanted = dimension?.match(/money:(.{3})/)?.[1];
  const symbol = found?.[2] as string;
  // LBS 5 has the form of a currency and an amount
  if (found === null || !(hasOwn(signs, symbol) || currencies.test(symbol) || symbol === wanted))
    return { symbol: undefined, wanted, body: text, amount: text };
  const body = found[1] + text.slice(found[0].length);
  // $28/50 lb is a price for 50 lb and no fraction of a dollar
  return { symbol, wanted, body, amount: /^[+-]?[\d.,]+(?=\/)/.exec(body)?.[0] ?? body };
};

type Refusal = Pick<Problem, "code" | "expected" | "suggestion" | "choices">;

/** A refusal with the decimals of its figures as the field writes them. */
const inSigns = (refusal: Refusal, decimal: string | undefined): Refusal => {
  if (decimal !== ",") return refusal;
  const written = (text: string): string => text.replace(/(\d)\.(?=\d)/g, "$1,");
  const { suggestion, choices } = refusal;
  return {
    ...refusal,
    ...(suggestion !== undefined && { suggestion: written(suggestion) }),
    ...(choices !== undefined && { choices: choices.map(written) }),
  };
};

/** Why what stands after a number is not the unit of one amount, where it is not. */
const notOneAmount = (value: number, rest: string, dimension = "", coin = ""): Refusal | undefined => {
  if (rangeSign.test(rest) || laterSign.test(rest))
    return { code: "text", expected: "one amount; parseRange reads a range" };
  if (oneEnd.test(rest)) return { code: "text", expected: "one amount, or a range with both of its ends" };
  if (/^ ?(?:k |K |k$)/.test(rest)) {
    const full = `${coin}${Number((value * 1000).toPrecision(15))} ${rest.trim().slice(1).trim()}`.trim();
    return { code: "text", expected: "the number in full", suggestion: full };
  }
  const other = clockTime(value, rest, dimension) ?? partsIn(value, rest, dimension);
  if (other !== undefined) return { code: "text", ...other };
  const area = dimension === "area" ? twoSides(value, rest.trim()) : undefined;
  if (area !== undefined)
    return { code: "text", expected: "one area: two sides are multiplied first", suggestion: area };
  // square feet, or feet and inches
  if (dimension === "" && /^ ?(?:ft|feet|foot)\.? [23]$/i.test(rest))
    return {
      code: "unit/ambiguous",
      expected: "an area or a length",
      choices: [`${value} ft${rest.slice(-1)}`, `${twoAmounts(value, rest.trim(), "length")}`],
    };
  const together = twoAmounts(value, rest.trim(), dimension || undefined);
  return together === undefined
    ? undefined
    : { code: "text", expected: "one number and one unit", suggestion: together };
};

type Told = Omit<Refusal, "code">;

/** `1h30` and `1:30` in the field of a time. */
const clockTime = (value: number, rest: string, dimension?: string): Told | undefined => {
  const [, sign, digits] = (dimension === "time" && /^ ?(h|:) ?([0-5]\d)$/i.exec(rest)) || [];
  if (digits === undefined || !Number.isInteger(value) || value < 0) return undefined;
  const both = 60 * value + Number(digits);
  const expected = "one number and one unit";
  return sign === ":"
    ? { expected, choices: [`${both} min`, `${both} s`] }
    : { expected, suggestion: `${both} min` };
};

/** `1:100`, which is read as one part in 100 and as one part and 100; `1 in 100`; `1+100`. */
const partsIn = (value: number, rest: string, dimension?: string): Told | undefined => {
  const unit = dimension === "volume/volume" ? "L" : dimension === "mass/mass" ? "kg" : undefined;
  const [, sign, digits] = (unit && /^ ?(:|in|\+) ?([1-9]\d{0,8})$/i.exec(rest)) || [];
  if (digits === undefined || !Number.isInteger(value) || value < 1) return undefined;
  const share = (parts: number): string => `${value} ${unit}/${parts} ${unit}`;
  const [within, beside] = [share(Number(digits)), share(value + Number(digits))];
  const expected = "a share with its units";
  if (sign === ":") return { expected, choices: [within, beside] };
  return { expected, suggestion: sign === "+" ? beside : within };
};

/** A currency's sign behind the number: `12 €/kg`. */
const signBehind = /^(?:(?:US|CA|A|NZ|MX)?\$|[€£¥])(?= ?(?:$|\/|per ))/;

/** What stands after the number with its currency before it, or the currencies that the sign may mean. */
const withCurrency = (after: string, { symbol: before, wanted }: WithoutCurrency): string | Refusal => {
  const symbol = before ?? signBehind.exec(after)?.[0];
  if (symbol === undefined) return after;
  const rest = before === undefined ? after.slice(symbol.length) : after;
  const codes = signs[symbol] ?? [symbol];
  const code = codes.length === 1 ? codes[0] : codes.find((one) => one === wanted);
  return code === undefined
    ? { code: "unit/ambiguous", expected: "a currency", choices: codes }
    : `money:${code} ${rest}`.replace(/ +(?=[ /]|$)/, "");
};

/** Where the comma stands before the decimals, a full stop groups below the slash as well: `kg/1.000 m2`. */
const withGroups = (rest: string, decimal: string | undefined): string =>
  decimal !== ","
    ? rest
    : rest.replace(
        /((?:\/|\bper) ?)(\d{1,3}(?:\.\d{3})+)(?= ?[^\d.,])/gi,
        (_, sign: string, number: string) => `${sign}${number.replace(/\./g, "")}`,
      );

const byMeasures = (rest: string, { measures, dimension }: ParseOptions): string => {
  if (rest === "" && (dimension === "1" || dimension === "count")) return dimension;
  if (measures === "imperial") return imperialText(rest);
  return measures === "US"
    ? rest.replace(/(^|\/ ?|\bper )(?=(?:cwts?|hundredweights?)\b)/gi, "$1short ")
    : rest;
};

const nearestTo = (
  raw: string,
  code: Problem["code"],
  dimension: ParseOptions["dimension"],
): string | undefined => (code === "substance/unknown" ? suggestSubstance(raw) : suggestUnit(raw, dimension));

/** Choices of a price as it was typed: `$420/US ton` for `$420/ton`, whatever the unit is called here. */
const asPriced = (problem: Problem, input: string, amount: string): Problem => ({
  ...problem,
  got: shown(input),
  choices: problem.choices?.map((choice) => `${amount}${choice.replace(/^money:.../, "")}`) ?? [],
});

const readFully = (input: string, options: ParseOptions, path: string): FullReading => {
  const { dimension } = options;
  const stop = (refusal: Refusal): TextReading => ({ problems: [{ ...refusal, path, got: shown(input) }] });
  const priced = withoutCurrency(cleanText(input), dimension);
  const number = scanNumber(priced.amount, options.decimal ?? ".");
  if (number === undefined) return stop({ code: "text", expected: numberAndUnit(dimension) });
  const problems: Problem[] = number.problem === undefined ? [] : [{ ...number.problem, path }];
  const behind = priced.body.slice(number.end);
  const after = behind.replace(/^ ?x ?(?=\d)/, "");
  const refusal = notOneAmount(number.value, behind, dimension, priced.symbol);
  if (refusal !== undefined)
    return problems.length === 0 ? stop(inSigns(refusal, options.decimal)) : { problems };
  const coined = withCurrency(after.trim(), priced);
  if (typeof coined !== "string") return stop(coined);
  const rest = byMeasures(withGroups(coined, options.decimal), options);
  if (options.decimal === "," && mixedGroups.test(rest))
    return stop({ code: "text", expected: 'below the slash, groups of three with "." as above it' });
  if (rest === "") {
    const expected = numberAndUnit(dimension).replace("number and a unit", "unit after the number");
    return {
      value: number.value,
      problems: [...problems, { code: "missing", path, got: shown(input), expected }],
    };
  }
  const read = readRest(rest, dimension, options.of);
  const typed = `${priced.symbol ?? ""}${priced.body.slice(0, number.end)}`;
  for (const { raw, ...problem } of read.problems) {
    const suggestion = raw === undefined ? undefined : nearestTo(raw, problem.code, dimension);
    const told = { ...problem, path, ...(suggestion !== undefined && { suggestion }) };
    problems.push(
      told.choices !== undefined && coined !== after.trim() ? asPriced(told, input, typed) : told,
    );
  }
  const of = settled(read.of, options.of);
  if (of === undefined) {
    const expected = `a quantity of ${options.of}`;
    problems.push({ code: "substance/mismatch", path, got: shown(read.of), expected });
  }
  return {
    value: divided(number.value, read.divisor),
    divisor: read.divisor,
    ...(read.unit !== undefined && { unit: read.unit }),
    ...(of !== undefined && { of }),
    problems,
  };
};

/** The substance that text and caller agree on; a caller's `N/product:feed-a` may be written as `N/product`, or `N`. */
const settled = (said: string | undefined, wanted: string | undefined): string | undefined => {
  if (said === undefined) return wanted ?? "none";
  if (wanted === undefined) return said;
  const plain = wanted.replace(/(product|ai|ae):[^/]*/g, "$1");
  // a label has 4 lb ai/gal: the field says in what; 12 % slow N is of the bag, and no share of the nitrogen
  const alone = /^(.+)\/(?:product|spray)$/.exec(plain)?.[1];
  return [cleanText(wanted), plain, alone].includes(said) ? wanted : undefined;
};
