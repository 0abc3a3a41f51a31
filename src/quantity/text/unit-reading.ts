import { type Problem, shown } from "../errors/errors.js";
import { readSubstance } from "../substance/substance-names.js";
import { isSubstance } from "../substance/substances.js";
import { exampleUnit, unitInWords } from "../unit/dimension-words.js";
import { metric, siblingUnit } from "../unit/near-units.js";
import { isOfStuff, unitDimension } from "../unit/unit-facts.js";
import { readUnitName } from "./aliases.js";
import { hintBelow } from "./below-slash.js";
import { type KeptReadings, keptReadings } from "./kept-readings.js";

import { unclearForm } from "./two-forms.js";
import { readSegment, type Segment, segmentsOf, withoutPowers } from "./unit-segment.js";

/** What stands after the number: a unit, perhaps a substance, and a number below the slash. */
export interface RestReading {
  readonly unit?: string;
  readonly of?: string;
  /** `2 pt per 100 gal` is 2 / 100 pt/gal. */
  readonly divisor: number;
  readonly problems: readonly RestProblem[];
}

/** A problem with what stands after the number; `raw` is the part that was not understood. */
export type RestProblem = Omit<Problem, "path"> & { readonly raw?: string };

const fractions = ["% w/w", "% v/v", "% w/v"];

const divisorOf = (segments: readonly Segment[]): number =>
  segments.reduce((product, segment) => product * segment.divisor, 1);

const joinUnits = (lists: readonly (readonly string[])[]): readonly string[] =>
  lists.reduce<readonly string[]>(
    (done, list) => done.flatMap((a) => list.map((b) => `${a}/${b}`.replace(/^\//, ""))),
    [""],
  );

/** What a choice measures that can be typed back: there are no gallons per degree. */
const measuredBy = (choice: string): string | undefined =>
  unitDimension(
    choice
      .split("/")
      .map((part) => readUnitName(part)?.sure ?? part)
      .join("/"),
  );

/** A choice with the numbers below the slash: of `oz/100 gal` it is `fl oz/100 gal`, and not a hundred times as much. */
const withLots = (choice: string, segments: readonly Segment[]): string =>
  choice
    .split("/")
    .map((part, i) => ((segments[i]?.divisor ?? 1) > 1 ? `${segments[i]?.divisor} ${part}` : part))
    .join("/");

/** The unit that the segments mean together, or why there is none. */
const unitOf = (
  segments: readonly Segment[],
  text: string,
  dimension: string | undefined,
): string | RestProblem => {
  const unknown = segments.find((segment) => segment.reads.length + segment.choices.length === 0);
  const expected =
    dimension === undefined ? `a unit, such as ${exampleUnit("mass/area")}` : unitInWords(dimension);
  const hint = hintBelow(unknown?.name, text);
  if (hint !== undefined) return { code: "unit/unknown", got: shown(text), expected: `${expected}; ${hint}` };
  if (unknown !== undefined)
    return {
      code: "unit/unknown",
      got: shown(text),
      expected,
      raw: segments.map(({ name }) => name).join("/"),
    };
  const all = joinUnits(segments.map((segment) => segment.reads));
  const fitting = dimension === undefined ? [] : all.filter((unit) => unitDimension(unit) === dimension);
  if (fitting.length === 1) return fitting[0] as string;
  const known = segments.some(({ sure }) => sure !== undefined && metric.test(sure));
  const sure = segments.map((segment) => segment.sure ?? (segment.name === "t" && known ? "t" : undefined));
  // a sibling of the unit alone would lose the number below the slash
  const siblingOf = (unit: string, wanted: string): string | undefined => {
    const divisor = divisorOf(segments);
    const lot = { 100: "100 m2", 1000: "1000 ft2" }[divisor];
    const near = siblingUnit(unit, wanted);
    if (divisor === 1) return near;
    return lot?.endsWith(`${near?.split("/")[1]}`) ? near?.replace(/\/.*/, `/${lot}`) : undefined;
  };
  if (sure.every((unit) => unit !== undefined)) {
    const unit = sure.join("/");
    if (unitDimension(unit) === undefined) return { code: "unit/unknown", got: shown(text), expected };
    if (dimension === undefined) return unit;
    const suggestion = siblingOf(unit, dimension);
    return { code: "unit/mismatch", got: shown(text), expected, ...(suggestion && { suggestion }) };
  }
  const lists = segments.map((segment, index) =>
    sure[index] === undefined ? segment.choices : [sure[index]],
  );
  const choices = joinUnits(lists as string[][])
    .filter((choice) => {
      const measured = measuredBy(choice);
      return measured !== undefined && (dimension === undefined || measured === dimension);
    })
    .map((choice) => withLots(choice, segments));
  const near = dimension === undefined ? [] : all.flatMap((unit) => siblingOf(unit, dimension) ?? []);
  if (near.length > 0)
    return { code: "unit/mismatch", got: shown(text), expected, suggestion: near[0] as string };
  if (choices.length === 0)
    return { code: dimension === undefined ? "unit/unknown" : "unit/mismatch", got: shown(text), expected };
  return {
    code: "unit/ambiguous",
    got: shown(text),
    expected: `${expected}; ${shown(text)} ${choices.length > 1 ? "could be several" : "is not clear"}`,
    choices,
  };
};

const neutral: readonly string[] = ["treated", "gross", "plan"];
const media = ["water", "spray", "soil"];
/** What may stand below the slash as the thing that is measured: a gallon of product, a liter of water. */
const carrier = /product|a[ie]|water|spray|soil|seed|treated|gross|plan|:(?!quick|slow)/;

/** The substance that the segments say together. */
const substanceOf = (
  segments: readonly Segment[],
  unit: string | undefined,
  of: string | undefined,
  spoken: boolean,
): string | undefined | RestProblem => {
  const [top, ...below] = segments as [Segment, ...Segment[]];
  const bottom = below.find((segment) => segment.of !== undefined);
  if (bottom === undefined || bottom.of === undefined) return top.of;
  const conflict = (expected: string, choices?: readonly string[]): RestProblem => ({
    code: "conflict",
    got: shown(segments.map((segment) => segment.text).join("/")),
    expected,
    ...(choices && { choices }),
  });
  if (!isOfStuff(`${bottom.reads[0]}`)) {
    if (top.of === undefined || top.of === bottom.of) return bottom.of;
    if (neutral.includes(bottom.of)) return top.of;
    return conflict("one substance");
  }
  if (top.of !== undefined) {
    const pair = `${top.of}/${bottom.of}`;
    return isSubstance(pair) && top.of !== bottom.of ? pair : conflict("two substances, such as N/product");
  }
  const priced = `none/${bottom.of}`;
  if (unit?.startsWith("money:") === true)
    return isSubstance(priced) ? priced : conflict("a price of a substance");
  if (of === bottom.of || of === priced) return of;
  // nobody measures nitrogen by the liter: 5 mg/L N is 5 mg of it
  if (unitDimension(`${unit}`) === "mass/volume" && !carrier.test(bottom.of)) return bottom.of;
  if (bottom.said && !spoken && !media.includes(bottom.of)) return bottom.of;
  const lot = bottom.divisor === 1 ? bottom.name : `${bottom.divisor} ${bottom.name}`;
  return conflict("what is above the slash and what is below it", [
    `${top.name} ${bottom.of}/${lot}`,
    bottom.of.startsWith("product")
      ? `${top.name}/${lot} of none/${bottom.of}`
      : `${top.name} product/${lot} ${bottom.of}`,
  ]);
};

/**
 * Reads what stands after the number, in cleaned text: `lb/1000 ft2`, `lb of N per 1,000 sq ft`,
 * `fl oz product/gal spray`, `% w/w N/product`.
 */
export const readRest = (rest: string, dimension?: string, of?: string): RestReading => {
  const seen = kept.get(rest, dimension, of);
  if (seen !== undefined) return seen;
  const reading = readAnew(rest, dimension, of);
  return reading.problems.length === 0 ? kept.keep(rest, dimension, of, reading) : reading;
};

const kept: KeptReadings<RestReading> = /* @__PURE__ */ keptReadings();

/** The same, without what was read before. */
export const readAnew = (written: string, dimension?: string, of?: string): RestReading => {
  // "pints to the acre", "2 lb an acre"
  const rest = written.replace(/ (?:to (?:the|an?|each|every)|for (?:each|every)|an(?= acre\b)) /gi, " per ");
  // an id may hold the word "per" itself, but only where the caller says so: "per acer" is no part of an id
  if (of !== undefined && / per /i.test(of)) {
    const loose = readWith(rest, dimension, of, true);
    if (loose.of === of) return loose;
  }
  return readWith(rest, dimension, of, false);
};

/** The substance that is said of the whole at the end, `... of N/product`, with what stands before it. */
const trailingSubstance = (
  text: string,
  spoken: boolean,
  loose: boolean,
): { readonly body: string; readonly of?: string } => {
  const said = /^(.*) of (.*)/i.exec(text);
  if (said === null) return { body: text };
  const after = said[2] as string;
  const ofWhole = !/ per /i.test(after) && (!spoken || after.includes("/"));
  const of = /[/:]/.test(after) && (loose || ofWhole) ? readSubstance(after) : undefined;
  return of === undefined ? { body: text } : { body: said[1] as string, of };
};

/** What stands between the slashes, each part read, with what is wrong between them. */
const segmentsIn = (
  text: string,
  spoken: boolean,
  loose: boolean,
): { readonly segments: readonly Segment[]; readonly problems: readonly RestProblem[] } => {
  const whole = wholeReading(text, loose);
  if (whole !== undefined) return { segments: [whole], problems: [] };
  const { body, of } = trailingSubstance(text, spoken, loose);
  const parts = segmentsOf(body);
  const first = readSegment(parts[0] as string);
  const head: Segment =
    parts[0] === "" && parts.length > 1 ? { ...first, name: "1", reads: ["1", "count"], sure: "1" } : first;
  const topUnit = head.sure ?? head.reads[0] ?? head.name;
  const below = parts.slice(1, 4).map((part) => readSegment(part, topUnit));
  if (of === undefined) return { segments: [head, ...below], problems: [] };
  const conflict = head.of !== undefined && head.of !== of;
  return {
    segments: [{ ...head, of }, ...below],
    problems: conflict ? [{ code: "conflict", got: shown(text), expected: "one substance" }] : [],
  };
};

const unknownSubstances = (segments: readonly Segment[]): readonly RestProblem[] =>
  segments.flatMap(({ name, unknownOf }) =>
    unknownOf === undefined
      ? []
      : [
          {
            code: "substance/unknown",
            got: shown(unknownOf),
            expected: `a substance after ${name}, such as N, P2O5, product or water`,
            raw: unknownOf,
          },
        ],
  );

const concentration = (dimension: string | undefined): boolean =>
  /^(?:mass|volume)\/(?:mass|volume)$/.test(`${dimension}`);

/** A percent alone says neither of weight nor of volume, where it is one of a substance. */
const isPercentOfWhat = (
  segments: readonly Segment[],
  dimension: string | undefined,
  of: string,
): boolean => {
  const bare = segments.length === 1 && segments[0]?.sure === "%";
  return bare && (concentration(dimension) || (of !== "none" && dimension !== "1"));
};

const readWith = (
  rest: string,
  dimension: string | undefined,
  of: string | undefined,
  loose: boolean,
): RestReading => {
  const text = withoutPowers(rest);
  // "per gal of N" may be said of the gallon, "/gal of N" is said of the whole
  const spoken = /\bper [^/]* of /i.test(text);
  const { segments, problems } = segmentsIn(text, spoken, loose);
  const read = unitOf(segments, text, dimension);
  const substance = substanceOf(segments, typeof read === "string" ? read : undefined, of, spoken);
  const told = typeof substance === "string" ? substance : undefined;
  const two = told && unclearForm(text, typeof read === "string" ? read : undefined, told, of);
  const name = two ? undefined : told;
  const unit: string | RestProblem = isPercentOfWhat(segments, dimension, name ?? of ?? "none")
    ? {
        code: "unit/ambiguous",
        got: shown(text),
        expected: "a percent of weight or of volume",
        choices: fractions.filter((unit) => !concentration(dimension) || unitDimension(unit) === dimension),
      }
    : read;
  return {
    ...(typeof unit === "string" && { unit }),
    ...(name !== undefined && { of: name }),
    divisor: divisorOf(segments),
    problems: [
      ...(typeof unit === "object" ? [unit] : []),
      ...problems,
      ...unknownSubstances(segments),
      ...(two ? [two] : []),
      ...(typeof substance === "object" ? [substance] : []),
    ],
  };
};

/** A name that has a slash of its own, such as `% w/w N/product` or `meq/100 g`: the longest is taken. */
const wholeReading = (text: string, loose: boolean): Segment | undefined => {
  const words = text.split(" ");
  for (let count = words.length; count !== 0; count--) {
    const name = words.slice(0, count).join(" ");
    const reading = readUnitName(name);
    if (reading === undefined) continue;
    const said = words[count]?.toLowerCase() === "of";
    const after = words.slice(said ? count + 1 : count).join(" ");
    const of = loose || !/ per /i.test(after) ? readSubstance(after) : undefined;
    if (after === "" ? said : of === undefined) continue;
    const { size = 1, ...rest } = reading;
    return { text, name, sure: undefined, ...rest, of, said, unknownOf: undefined, divisor: 1 / size };
  }
  return undefined;
};
