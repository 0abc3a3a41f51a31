import type { QuizProblem } from "../../../src/teach/problems/index.js";
import { readAsk, readStory, sizeOf } from "./read-text.js";
import { solvers } from "./solvers.js";

/** What a mistake is reckoned from: the figures that a problem prints, in SI units, and the units of its custom. */
export interface Seen {
  /** The amounts with a unit, in order. */
  readonly q: (i: number) => number;
  /** The numbers without one. */
  readonly b: (i: number) => number;
  /** The numbers of the grade. */
  readonly g: (i: number) => number;
  /** The right answer, which is solved apart from the program; the key, where that differs by a printed constant alone. */
  readonly a: number;
  /** The unit that is asked for. */
  readonly u: number;
  readonly level: 1 | 2 | 3;
  readonly us: boolean;
  readonly text: string;
  /** 1,000 sq ft, or a hectare. */
  readonly per: number;
  /** 100 m². */
  readonly per100: number;
  /** A pound, or a kilogram. */
  readonly mass: number;
  /** A gallon, or a liter. */
  readonly vol: number;
  /** A foot, or a meter. */
  readonly length: number;
  /** A mile an hour, or a kilometer an hour. */
  readonly speed: number;
  /** The amount at a place where there is one (the area of a whole job), or 1. */
  readonly whole: (i: number) => number;
  /** How many bags are told of. */
  readonly bags: number;
  /** The passes of a strip, or 1. */
  readonly passes: number;
  /** The percent that a material has, the last amount told. */
  readonly strength: number;
  /** A price per pound or kilogram. */
  readonly price: number;
}

/** What a mistake gives, in SI units; some lead two ways. */
export type SlipsOf = Readonly<Record<string, (seen: Seen) => number | readonly number[]>>;

export const area = { acre: sizeOf("acre"), ha: sizeOf("ha") } as const;
export const volume = { "fl oz": sizeOf("fl oz"), pt: sizeOf("pt") } as const;
export const len = {
  in: sizeOf("inch"),
  ft: sizeOf("ft"),
  yd: sizeOf("yards"),
  qt: sizeOf("qt"),
  lb: sizeOf("lb"),
} as const;
/** Whole things, where float noise of a whole number is none. */
export const up = (value: number): number => Math.ceil(value - 1e-9);
export const down = (value: number): number => Math.floor(value + 1e-9);

const reader =
  (list: readonly number[], what: string) =>
  (i: number): number => {
    const found = list[i];
    if (found === undefined) throw new Error(`no ${what} ${i} among ${list.join(", ")}`);
    return found;
  };

/** What a learner sees in a problem. */
export const seenIn = ({ text, level, units, topic, answer }: QuizProblem): Seen => {
  const story = readStory(text, level);
  const ask = readAsk(text);
  const solved = solvers[topic]?.(story) ?? Number.NaN;
  const key = answer.value * ask.factor;
  const byPrinted = answer.tolerance - 0.5 * 10 ** -ask.decimals;
  const us = units === "US";
  return {
    q: reader(story.q, "amount"),
    b: reader(story.bare, "number"),
    g: reader(story.grade, "number of a grade"),
    // a constant that a text prints has four digits, and the key has them all
    a: Math.abs(solved - key) <= byPrinted * ask.factor ? key : solved,
    u: ask.factor,
    level,
    us,
    text,
    per: sizeOf(us ? "1,000 sq ft" : "ha"),
    per100: sizeOf("100 m²"),
    mass: sizeOf(us ? "lb" : "kg"),
    vol: sizeOf(us ? "gal" : "L"),
    length: sizeOf(us ? "ft" : "m"),
    speed: sizeOf(us ? "mph" : "km/h"),
    whole: (i) => story.q[i] ?? 1,
    bags: text.startsWith("A bag") ? 1 : (story.bare[0] ?? 1),
    passes: story.bare[0] ?? 1,
    strength: story.q[story.q.length - 1] ?? Number.NaN,
    price: story.q[1] ?? Number.NaN,
  };
};

export const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;
export const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
/** The amounts of a list whose length is known. */
export const some = ({ q }: Seen, from: number, to: number): readonly number[] =>
  Array.from({ length: to - from }, (_, i) => q(from + i));
