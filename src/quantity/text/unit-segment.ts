import { readSubstance } from "../substance/substance-names.js";
import { readUnitName } from "./aliases.js";

/** One side of a slash, taken apart: `100 gal water`. */
export interface Segment {
  readonly text: string;
  readonly name: string;
  readonly reads: readonly string[];
  readonly sure: string | undefined;
  readonly choices: readonly string[];
  readonly of: string | undefined;
  readonly said: boolean;
  readonly unknownOf: string | undefined;
  readonly divisor: number;
}

/** Whole numbers only: in `lb/1.000 ft2` the full stop may stand for either thing. */
const numberBelow = /^(\d{1,3}(?:,\d{3})+|[1-9]\d{0,2}(?: \d{3})+|\d{1,9}) ?([^\d.,].*)/;

/** `12 100 m2` is 12100 m2 or 12 times 100 m2, and who writes `1000 M` may mean 1000 ft2 or a thousand of them. */
export const unclearLot: RegExp =
  /^(?:[1-9]\d{0,2}(?: \d{3})* 100 ?(?:m\^?2|sq(?:uare|\.)? ?m(?!i))|\d{3,} ?M$)/;

/** Units above the slash that go with 1000 ft2. */
const customary = /^(?:lb|oz|US ton|gal|qt|pt|fl oz|cup|yd3|ft3|bu|count|#|money:)/;

/** `lb/1000`, `lb/K`, `per thousand`. */
const thousand = /^(?:1,?000|[Kk]|(?:a |one )?thousand)$/;

/** 1000 ft2, but only where what is expected says so: it may be a thousand seeds. */
const perThousand = (name: string, top: string): Omit<Segment, "of" | "said" | "unknownOf" | "text"> => ({
  name,
  reads: customary.test(top) ? ["1000 ft2"] : [],
  sure: undefined,
  choices: ["1000 ft2"],
  divisor: 1,
});

/** `kgN`, `lb-N`, `#N`: a weight and the symbol of what it is of, without the space. */
const glued = /^(#|lbs?\.?|oz\.?|kg|g|mg)[-.]?\(?([A-Z][A-Za-z\d-]*)\)?$/;

/** Splits `lb of N`, `lb N`, `1000 ft2`, `100 gal water` into number, unit and substance; `top` is the unit above the slash. */
export const readSegment = (text: string, top?: string): Segment => {
  const words = text.split(" ");
  const none = { of: undefined, said: false, unknownOf: undefined };
  const unread: Segment = { text, name: text, reads: [], sure: undefined, choices: [], divisor: 1, ...none };
  if (unclearLot.test(text)) return unread;
  const named = (name: string): Omit<Segment, "of" | "said" | "unknownOf"> | undefined => {
    if (top !== undefined && thousand.test(name)) return { ...perThousand(name, top), text };
    if (top !== undefined && /^A\.?$/.test(name)) {
      return { text, name, reads: ["acre"], sure: "acre", choices: [], divisor: 1 };
    }
    if (top !== undefined && /^M\.?$/.test(name)) {
      const lot = "1000 ft2";
      const sure = customary.test(top) ? lot : undefined;
      return { text, name, reads: [lot], sure, choices: sure === undefined ? ["m", lot] : [], divisor: 1 };
    }
    const reading = readUnitName(name);
    if (reading === undefined) return undefined;
    const { size = 1, ...rest } = reading;
    return { text, name, sure: undefined, ...rest, divisor: top === undefined ? 1 / size : size };
  };
  const saidAt = words.findIndex((word) => word.toLowerCase() === "of");
  if (saidAt !== -1) {
    const name = words.slice(0, saidAt).join(" ");
    const stuff = words.slice(saidAt + 1).join(" ");
    const of = readSubstance(stuff);
    const inner = readSegment(name, top);
    // "lb N of K" says two things, "lb bags of N" one that is not understood
    const twice = inner.of !== undefined && inner.of !== of ? `${inner.of} of ${stuff}` : undefined;
    const unknownOf = inner.unknownOf ?? (of === undefined ? stuff : twice);
    return { ...inner, text, of, said: true, unknownOf };
  }
  let longest: Segment | undefined;
  for (let count = words.length; count !== 0; count--) {
    const unit = named(words.slice(0, count).join(" "));
    if (unit === undefined) continue;
    const stuff = words.slice(count).join(" ");
    const of = readSubstance(stuff);
    if (stuff === "" || of !== undefined) return { ...unit, ...none, of };
    longest ??= { ...unit, ...none, unknownOf: stuff };
  }
  const below = top === undefined ? null : numberBelow.exec(text);
  if (below !== null) {
    const divisor = Number((below[1] as string).replace(/[, ]/g, ""));
    const inner = readSegment(below[2] as string, top);
    if (divisor > 0 && inner.divisor === 1 && inner.reads.length + inner.choices.length > 0) {
      return { ...inner, text, divisor };
    }
  }
  if (longest !== undefined) return longest;
  const [, weight, symbol] = glued.exec(text) ?? [];
  return symbol === undefined || readSubstance(symbol) === undefined
    ? unread
    : { ...readSegment(`${weight} ${symbol}`, top), text, name: text };
};

/** `kg ha^-1 d^-1` and `kg ha-1` as `kg/ha/d`, and `m-2` as `/m2`. */
export const withoutPowers = (text: string): string => {
  if (text.includes("/") || text.includes(" per ")) return text;
  const out: string[] = [];
  for (const word of text.split(" ")) {
    const power = /^([a-zA-Z°]+)\^?-([123])$/.exec(word);
    if (power === null) out.push(word);
    else {
      const before = out[out.length - 1];
      const lot = before === undefined || /[^\d,]/.test(before) ? "" : `${out.pop()} `;
      out.push(`/${lot}${power[1]}${power[2] === "1" ? "" : power[2]}`);
    }
  }
  return out.join(" ");
};

/** The sides of the slashes, `per` being one. */
export const segmentsOf = (text: string): readonly string[] =>
  text
    .replace(/(^| )per /gi, "/")
    .split("/")
    .map((part) => part.trim());
