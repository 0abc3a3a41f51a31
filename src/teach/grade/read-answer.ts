import { type Dimension, isDimension, unitsOf } from "../../quantity/index.js";
import type { QuizAnswer, QuizProblem } from "../topics/quiz-problem.js";
import { plainAnswer, unwrapped } from "./plain-answer.js";
import { plainUnits, thousands } from "./plain-units.js";
import { moneyUnit } from "./read-money.js";
import { type NumberInText, numberIn } from "./read-number.js";
import { unitMissed, wordMeant } from "./slips.js";
import { type SaidStuff, stuffIn } from "./stuff.js";
import { unitAhead } from "./unit-ahead.js";
import { crossing, dimensionOf, type ReadUnit } from "./unit-crossing.js";

/** What a learner wrote, as far as it could be read. */
export interface ReadAnswer extends ReadUnit {
  /** The letter of a choice, where that is all there is. */
  readonly letter?: string;
  readonly number?: NumberInText;
  readonly stuff?: SaidStuff;
  readonly unread?: "no number" | "two numbers" | "decimal comma" | "no amount" | "not worked out";
}

/** A letter, by itself or with a word for what it is: `B`, `(b)`, `choice B`, `the answer is B`. */
const letterOnly =
  /^(?:(?:the |my )?(?:answer|choice|option|letter)(?: is)?:? |it(?: i|['’])s )?\(?([a-h])\)?[.:!]?$/i;
const letterFirst = /^(?:\(([A-Da-d])\)|([A-Da-d])[).:])\s/;

const synonyms: Readonly<Record<string, readonly string[]>> = {
  bags: ["sack", "sacks", "package", "packages"],
  passes: ["trip", "trips", "run", "runs", "rounds"],
  days: ["d"],
  plugs: ["plants", "plant"],
  jugs: ["containers", "container", "bottles", "bottle", "packages", "package"],
};

const countUnit = (text: string, noun: readonly string[]): ReadUnit => {
  const known = [...noun, ...(synonyms[noun[1] ?? ""] ?? []), "whole"];
  const words = text
    .toLowerCase()
    .replace(/[.,;!?]+(?=\s|$)/g, "")
    .split(/\s+/)
    .filter((word) => word !== "" && word !== "full");
  const strange = words.filter((word) => !known.includes(word));
  const [slip] = strange.length === 1 ? strange.flatMap((word) => wordMeant(word, noun) ?? []) : [];
  const fits = strange.length === 0 || slip !== undefined;
  return {
    unit: words.length === 0 ? "not given" : fits ? "as asked" : "wrong",
    inUnit: (value) => value,
    unitText: text.trim(),
    ...(slip !== undefined && { slip }),
  };
};

/** A unit that does not fit: one in which a key was missed, or another. */
const missed = (unit: string, unitText: string, answer: QuizAnswer): ReadUnit => {
  const slip = unitMissed(unit);
  const inUnit = slip === undefined ? undefined : crossing(slip, answer);
  if (slip === undefined || inUnit === undefined) return { unit: "wrong", unitText };
  return { unit: slip === answer.unit ? "as asked" : "wrong", inUnit, unitText, slip };
};

const plainUnit = (text: string, problem: QuizProblem): ReadUnit => {
  const { answer } = problem;
  const unitText = text.replace(/[.,;!?]+$/, "").trim();
  const unit = plainUnits(unitText, problem);
  if (unit === "") return { unit: "not given", inUnit: (value) => value, unitText: "" };
  const dimension = dimensionOf(answer);
  if (/^(?:oz|ounces?)\b/i.test(unit) && dimension.startsWith("volume")) {
    const across = crossing(unit.replace(/^(?:oz|ounces?)/i, "fl oz"), answer);
    return {
      unit: across === undefined ? "wrong" : "bare ounces",
      ...(across && { inUnit: across }),
      unitText,
    };
  }
  const across = crossing(unit, answer);
  // A keyboard with its capitals locked: the unit of the question, letter by letter.
  if (across === undefined && unit === unit.toUpperCase() && answer.text.toUpperCase().endsWith(` ${unit}`))
    return { unit: "as asked", inUnit: (value) => value, unitText };
  if (across === undefined) return missed(unit, unitText, answer);
  return { unit: Math.abs(across(1) - 1) < 1e-12 ? "as asked" : "another", inUnit: across, unitText };
};

/** What stands behind a number: `lb of N per 1,000 sq ft`. */
const unitBehind = (
  text: string,
  currency: string,
  problem: QuizProblem,
): ReadUnit & { readonly stuff?: SaidStuff } => {
  const { stuff, rest } = stuffIn(thousands(text, problem));
  const { answer } = problem;
  const read = answer.unit.startsWith("money:")
    ? moneyUnit(rest.replace(/ of$/, ""), currency, problem)
    : currency !== ""
      ? ({ unit: "wrong", unitText: `${currency} ${rest}`.trim() } as const)
      : answer.noun !== undefined
        ? countUnit(rest, answer.noun)
        : plainUnit(rest, problem);
  return stuff === undefined ? read : { ...read, stuff };
};

/** The unit beside a number: behind it, or before it where none is behind. */
const unitBeside = (before: string, behind: string, currency: string, problem: QuizProblem) => {
  const read = unitBehind(behind, currency, problem);
  const ahead = read.unit === "not given" && currency === "" ? unitAhead(before, problem) : undefined;
  return ahead === undefined ? read : { ...read, ...unitBehind(ahead, "", problem) };
};

/** Whether a second number belongs to the unit: the 1,000 of sq ft. */
const ofUnit = (before: string, digits: string): boolean =>
  /(?:\/|per|an?|each)\s*$/i.test(before) && /^1?[,.]?0?00+$/.test(digits.replace(/^1/, ""));

/** A number with the sign before it. A dash with a space behind it begins a line, and is no sign. */
const signed = (number: NumberInText, before: string): NumberInText =>
  /^(?:[-−]\s*|–|(?:minus|negative)\s*)[$€]?\s*$/i.test(before)
    ? { ...number, values: number.values.map((value) => -value) }
    : number;

/** Takes an answer apart. */
export const readAnswer = (input: string, problem: QuizProblem): ReadAnswer => {
  const text = unwrapped(input.trim());
  const letter =
    letterOnly.exec(text)?.[1] ??
    letterFirst
      .exec(`${text} `)
      ?.slice(1)
      .find((each) => each !== undefined);
  const none = { unit: "not given", unitText: "" } as const;
  if (letter !== undefined) return { ...none, letter: letter.toUpperCase() };
  const plain = plainAnswer(text, problem);
  const decimalComma = problem.units === "metric";
  const number = numberIn(plain, 0, decimalComma);
  if (number === undefined) return { ...none, unread: "no number" };
  if (/π|\bpi\b/i.test(plain)) return { ...none, unread: "not worked out" };
  const before = plain.slice(0, number.start);
  if (/\b(?:not|(?:less|fewer|more|other) than|under|over|below|above)\s*$/i.test(before))
    return { ...none, unread: "no amount" };
  if (/^[-−]{2,}\s*$/.test(before)) return { ...none, unread: "no number" };
  if (number.values.length === 0) return { ...none, unread: "decimal comma" };
  const behind = plain.slice(number.end);
  const second = numberIn(
    behind.replace(/\b[a-z]+\d\w*|\d{1,2}-\d{1,2}-\d{1,2}|[²³]|(?:ft|m|yd|in)\d/gi, (all) =>
      " ".repeat(all.length),
    ),
    0,
    decimalComma,
  );
  const digits = second === undefined ? "" : behind.slice(second.start, second.end);
  const currency = /[$€£¥]\s*$/.exec(before)?.[0].trim() ?? /^\s*[$€£¥]/.exec(behind)?.[0].trim() ?? "";
  const tail = behind.replace(/^\s*[$€£¥]/, "");
  if (second === undefined || ofUnit(behind.slice(0, second.start), digits)) {
    return { number: signed(number, before), ...unitBeside(before, tail, currency, problem) };
  }
  const both = compound(plain, number, second, problem);
  return both === undefined
    ? { ...none, unread: "two numbers" }
    : { ...both, number: signed(both.number, before) };
};

/** An amount in two units: `3 lb 8 oz`, `1 gal and 12 fl oz`. */
const compound = (
  plain: string,
  first: NumberInText,
  second: NumberInText,
  problem: QuizProblem,
): (ReadAnswer & { readonly number: NumberInText }) | undefined => {
  const large = plain
    .slice(first.end, first.end + second.start)
    .replace(/\band\b|,/gi, " ")
    .trim();
  const { stuff, rest } = stuffIn(plain.slice(first.end + second.end));
  if (large === "" || /-|–|\bto\b|\bor\b/.test(large) || problem.answer.noun !== undefined) return undefined;
  const big = plainUnit(large, problem);
  const small = plainUnit(rest, problem);
  const bigIn = big.inUnit;
  const smallIn = small.inUnit;
  if (bigIn === undefined || smallIn === undefined || large === rest || rest === "") return undefined;
  const value = bigIn(first.values[0] ?? 0) + smallIn(second.values[0] ?? 0);
  const read = {
    number: { ...first, values: [value], halfPlace: smallIn(second.halfPlace) },
    inUnit: (each: number) => each,
    unit: small.unit === "bare ounces" ? small.unit : ("another" as const),
    unitText: `${large} ${rest}`,
  };
  return stuff === undefined ? read : { ...read, stuff };
};

/** Units of the problem's system in which a bare number would be the answer: what a learner left out, or worked in. */
export const otherUnitsOf = ({ answer, units }: QuizProblem): readonly string[] => {
  const dimension = answer.noun === undefined && !answer.unit.startsWith("money:") ? dimensionOf(answer) : "";
  if (!isDimension(dimension)) return [];
  const usual = unitsOf(dimension as Dimension).filter(({ system }) => system === units || system === "both");
  return usual.map(({ unit }) => unit);
};
