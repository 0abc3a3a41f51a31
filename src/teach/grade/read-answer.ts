import {
  type Dimension,
  isDimension,
  parseQuantity,
  quantityFrom,
  toldBy,
  unitsOf,
} from "../../quantity/index.js";
import type { QuizAnswer, QuizProblem } from "../topics/quiz-problem.js";
import { inDigits } from "./number-words.js";
import { type NumberInText, numberIn } from "./read-number.js";
import { unitMissed, withoutExponents, wordMeant } from "./slips.js";
import { type SaidStuff, stuffIn } from "./stuff.js";

/** What a learner wrote, as far as it could be read. */
export interface ReadAnswer {
  /** The letter of a choice, where that is all there is. */
  readonly letter?: string;
  readonly number?: NumberInText;
  /** What a number means in the unit asked for; `undefined` where its unit does not fit. */
  readonly inUnit?: (value: number) => number;
  readonly unit: "as asked" | "another" | "wrong" | "not given" | "bare ounces";
  readonly unitText: string;
  /** The unit that was meant, where a key was missed: it is taken where it is the one asked for. */
  readonly slip?: string;
  readonly stuff?: SaidStuff;
  readonly unread?: "no number" | "two numbers" | "decimal comma" | "no amount";
}

const fillers =
  /\b(?:about|approximately|approx\.?|roughly|around|circa|ca\.|nearly|exactly|just|only|the answer is|my answer is|answer|it is|it's|it takes|that is|that's|i get|i got|i think|we need|you need|i need|they need|needs?|takes?|in total|total|altogether|equals|comes to|is|would be)\b[:.]?|[~≈=]/gi;

const letterOnly = /^\(?([a-h])\)?[.:]?$/i;
const letterFirst = /^(?:\(([A-Da-d])\)|([A-Da-d])[).:])\s/;

/** Words of the trade for which the library asks back, since they have more than one meaning; a problem has only one. */
const plainUnits = (text: string, { units, answer }: QuizProblem): string => {
  let unit = text
    .replace(/\b(?:tonnes?|metric tons?)\b/i, "t")
    .replace(/\b(?:US|U\.S\.|short) tons?\b|\btons?\b/i, (ton) =>
      units === "US" || ton.includes(" ") ? "US ton" : "t",
    )
    .replace(/^T$/, answer.unit === "US ton" ? "US ton" : "T")
    .replace(/^cbm$/i, "m3")
    .replace(/^(?:gdd|dd|degree[- ]days?|growing degree[- ]days?)$/i, answer.unit)
    .replace(/^°?([FC]) ?(?:degree[- ]days?|days?|d)$/i, "°$1 d")
    .replace(/\ba (?=\d|thousand)/i, "per ")
    .replace(/\b(?:per )?thousand (?=sq|ft)/i, (all) => (/^per/i.test(all) ? "per 1,000 " : "1,000 "))
    .replace(/\b(?:to the|to an|an?|each|every) (?=acre|hectare|gallon|minute|hour|day|pound|bag)/i, "per ")
    .replace(/ ?(?:\/|\bper |\beach )(?:nozzle|tip)s?$/i, "")
    .replace(/\bsecs?\b\.?/i, "s")
    .replace(/\(?\bno unit\b\)?/i, "")
    .replace(/\bkph\b/i, "km/h")
    .replace(/\b(?:miles an hour|miles per hour)\b/i, "mph");
  if (answer.unit.endsWith("1000 ft2"))
    unit = unit.replace(/\s*(?:\/|per )\s*(?:M|K|1,?000)$/, " per 1,000 sq ft");
  if (answer.unit === "psi")
    unit = unit.replace(
      /^(?:#|lbs?\.?|pounds?)(?: of pressure| ?(?:\/|per ) ?(?:in2|sq(?:uare|\.)? in(?:ch)?))?$/i,
      "psi",
    );
  // sand is told in yards, and cubic ones are meant
  if (answer.unit === "yd3") unit = unit.replace(/^(?:yards?|yds?)\.?$/i, "cu yd");
  // what is counted is named or not: 37 grubs per sq ft
  if (answer.unit.startsWith("count/"))
    unit = unit.replace(/^(?:[a-z]+ ?)?(?=\/|\bper\b|$)/i, (all) => (/^per$/i.test(all) ? all : ""));
  if (answer.unit.startsWith("count/") && /^(?:\/|per )/i.test(unit))
    unit = `count${unit.startsWith("/") ? "" : " "}${unit}`;
  return unit.trim();
};

/** A thousand square feet as the trade writes it; an M or a K there is no potassium. */
const thousands = (text: string, { answer }: QuizProblem): string =>
  answer.unit.endsWith("1000 ft2") ? text.replace(/(\/|\bper )\s*(?:M|K)\s*$/, "$1 1000") : text;

/** The dimension of the unit asked for. */
const dimensionOf = ({ unit }: QuizAnswer): string =>
  toldBy({ quantity: "problem.answer" }, () => quantityFrom({ value: 1, unit, of: "none" }).dimension);

/** How a number of the unit that a text names is one of the unit asked for; `undefined` where it is none. */
const crossing = (unit: string, answer: QuizAnswer): ((value: number) => number) | undefined => {
  const dimension = dimensionOf(answer);
  if (!isDimension(dimension)) return undefined;
  try {
    const one = parseQuantity(`1 ${unit}`, { dimension: dimension as Dimension });
    return (value) => quantityFrom({ value, unit: one.unit, of: "none" }).in(answer.unit as never);
  } catch {
    return undefined;
  }
};

const synonyms: Readonly<Record<string, readonly string[]>> = {
  bags: ["sack", "sacks", "package", "packages"],
  passes: ["trip", "trips", "run", "runs", "rounds"],
  days: ["d"],
  plugs: ["plants", "plant"],
  jugs: ["containers", "container", "bottles", "bottle", "packages", "package"],
};

type ReadUnit = Pick<ReadAnswer, "unit" | "inUnit" | "unitText" | "slip">;

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

const moneyUnit = (text: string, currency: string, answer: QuizAnswer): ReadUnit => {
  const [, asked] = answer.unit.split("/");
  const cents = /\bcents?\b|\bct\b|¢/i.test(text) ? 0.01 : 1;
  const below = /(?:\/|\bper |\ba |\bfor (?:a |each )?)\s*([a-z ]+)$/i.exec(text)?.[1];
  const mine = currency === "" && !/dollars?|usd|euros?|eur|cents?|ct|¢/i.test(text);
  const euros = /€|euros?|eur/i.test(`${currency}${text}`);
  if (!mine && cents === 1 && euros !== answer.unit.includes("EUR")) return { unit: "wrong", unitText: text };
  if (
    asked === undefined &&
    /(?:\/|\bper )\s*(?:acres?|ac|ha|lbs?|kg|gal|bags?|tons?|h|hours?|m2|m²|sq|1,?000)\b/i.test(text)
  )
    return { unit: "wrong", unitText: text.trim() };
  if (below === undefined || asked === undefined) {
    return { unit: mine ? "not given" : "as asked", inUnit: (value) => value * cents, unitText: text };
  }
  const across = crossing(below, { ...answer, unit: asked });
  if (across === undefined) return { unit: "wrong", unitText: text };
  const factor = across(1);
  return {
    unit: factor === 1 ? "as asked" : "another",
    inUnit: (value) => (value * cents) / factor,
    unitText: text,
  };
};

/** A unit that does not fit: one in which a key was missed, or another. */
const missed = (unit: string, answer: QuizAnswer): ReadUnit => {
  const slip = unitMissed(unit);
  const inUnit = slip === undefined ? undefined : crossing(slip, answer);
  if (slip === undefined || inUnit === undefined) return { unit: "wrong", unitText: unit };
  return { unit: slip === answer.unit ? "as asked" : "wrong", inUnit, unitText: unit, slip };
};

const plainUnit = (text: string, problem: QuizProblem): ReadUnit => {
  const { answer } = problem;
  const unit = plainUnits(text.replace(/[.,;!?]+$/, "").trim(), problem);
  if (unit === "") return { unit: "not given", inUnit: (value) => value, unitText: "" };
  const dimension = dimensionOf(answer);
  if (/^(?:oz|ounces?)\b/i.test(unit) && dimension.startsWith("volume")) {
    const across = crossing(unit.replace(/^(?:oz|ounces?)/i, "fl oz"), answer);
    return {
      unit: across === undefined ? "wrong" : "bare ounces",
      ...(across && { inUnit: across }),
      unitText: unit,
    };
  }
  const across = crossing(unit, answer);
  // A keyboard with its capitals locked: the unit of the question, letter by letter.
  if (across === undefined && unit === unit.toUpperCase() && answer.text.toUpperCase().endsWith(` ${unit}`))
    return { unit: "as asked", inUnit: (value) => value, unitText: unit };
  if (across === undefined) return missed(unit, answer);
  return { unit: Math.abs(across(1) - 1) < 1e-12 ? "as asked" : "another", inUnit: across, unitText: unit };
};

/** What stands behind a number: `lb of N per 1,000 sq ft`. */
const unitBehind = (
  text: string,
  currency: string,
  problem: QuizProblem,
): ReadUnit & { readonly stuff?: SaidStuff } => {
  const { stuff, rest } = stuffIn(thousands(text, problem));
  const { answer } = problem;
  const read =
    answer.noun !== undefined
      ? countUnit(rest, answer.noun)
      : answer.unit.startsWith("money:")
        ? moneyUnit(rest.replace(/ of$/, ""), currency, answer)
        : plainUnit(rest, problem);
  return stuff === undefined ? read : { ...read, stuff };
};

/** Whether a second number belongs to the unit: the 1,000 of sq ft. */
const ofUnit = (before: string, digits: string): boolean =>
  /(?:\/|per|an?|each)\s*$/i.test(before) && /^1?[,.]?0?00+$/.test(digits.replace(/^1/, ""));

/** What is said beside a count, of how large each is: `6 bags (50 lb)`, `6 50-lb bags`. */
const withoutSizes = (text: string): string =>
  text
    .replace(/\([^()]*\)/g, " ")
    .replace(/ of \d+(?:\.\d+)?[ -]?(?:lbs?|pounds?|kg|gal(?:lons?)?|L|liters?)\b(?: each)?/gi, " ")
    .replace(/(?<=\d\s+)\d+(?:\.\d+)?[ -](?:lbs?|pounds?|kg|gal(?:lons?)?|L|liters?)\b/gi, " ");

/** An answer as it stands between quotation marks: 5" is five inches, and has one mark only. */
const unquoted = (text: string): string =>
  /^(["'“”„«]+)(.*[^"'“”«»])(["'”“»]+)$/s.exec(text)?.[2]?.trim() ?? text;

/** Takes an answer apart. */
export const readAnswer = (input: string, problem: QuizProblem): ReadAnswer => {
  const text = unquoted(input.trim());
  const letter =
    letterOnly.exec(text)?.[1] ??
    letterFirst
      .exec(`${text} `)
      ?.slice(1)
      .find((each) => each !== undefined);
  const none = { unit: "not given", unitText: "" } as const;
  if (letter !== undefined) return { ...none, letter: letter.toUpperCase() };
  const counted = problem.answer.noun === undefined ? text : withoutSizes(text);
  const plain = withoutExponents(inDigits(counted))
    .replace(/\^(?=[23])/g, "")
    .replace(/[０-９]/g, (sign) => String("０１２３４５６７８９".indexOf(sign)))
    .replace(/[₀-₉]/g, (sign) => String("₀₁₂₃₄₅₆₇₈₉".indexOf(sign)))
    .replace(/(\d+(?:\.\d+)?) thousand\b(?! ?(?:sq|ft))/gi, (_, digits) => String(Number(digits) * 1000))
    // hours and minutes
    .replace(/\b(\d{1,2}):([0-5]\d)(?= ?h)/gi, "$1 h $2 min")
    .replace(/(?<=\d) ?h(?:(?:ou)?rs?)? ([0-5]?\d)$/i, " h $1 min")
    .replace(/(?<= min) ?h(?:ou)?rs?\b|(?<= min) ?h\b/gi, "")
    .replace(fillers, " ")
    .replace(/\s+/g, " ")
    .trim();
  const decimalComma = problem.units === "metric";
  const number = numberIn(plain, 0, decimalComma);
  if (number === undefined) return { ...none, unread: "no number" };
  const before = plain.slice(0, number.start);
  if (/\b(?:not|(?:less|fewer|more|other) than|under|over|below|above)\s*$/i.test(before))
    return { ...none, unread: "no amount" };
  if (/^[-−]{2,}\s*$/.test(before)) return { ...none, unread: "no number" };
  if (/^[-−]\s*$/.test(before)) {
    return {
      ...none,
      number: { ...number, values: number.values.map((value) => -value) },
      unit: "not given",
    };
  }
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
  const currency =
    /[$€]\s*$/.exec(plain.slice(0, number.start))?.[0].trim() ?? /^\s*[$€]/.exec(behind)?.[0].trim() ?? "";
  const tail = behind.replace(/^\s*[$€]/, "");
  if (second === undefined || ofUnit(behind.slice(0, second.start), digits)) {
    return { number, ...unitBehind(tail, currency, problem) };
  }
  return compound(plain, number, second, problem) ?? { ...none, unread: "two numbers" };
};

/** An amount in two units: `3 lb 8 oz`, `1 gal and 12 fl oz`. */
const compound = (
  plain: string,
  first: NumberInText,
  second: NumberInText,
  problem: QuizProblem,
): ReadAnswer | undefined => {
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

/** Units in which a bare number would be the answer: what a learner left out, or worked in. */
export const otherUnitsOf = (answer: QuizAnswer): readonly string[] => {
  const dimension = answer.noun === undefined && !answer.unit.startsWith("money:") ? dimensionOf(answer) : "";
  return isDimension(dimension) ? unitsOf(dimension as Dimension).map(({ unit }) => unit) : [];
};
