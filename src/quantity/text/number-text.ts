import { type Problem, shown } from "../errors/errors.js";

/** The sign that stands before the decimals. */
export type DecimalSign = "." | ",";

/** A number at the start of a text, and where it ends; `problem` where it is there but cannot be read. */
export interface ScannedNumber {
  readonly value: number;
  readonly end: number;
  readonly problem?: Omit<Problem, "path">;
}

/** Denominators of an inch rule and of a measuring cup. `3/1000 ft2` is a rate without its unit. */
const denominators: readonly number[] = [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 32, 64];

const bad = (
  end: number,
  got: string,
  expected: string,
  more: Pick<Problem, "suggestion" | "choices"> = {},
): ScannedNumber => ({
  value: Number.NaN,
  end,
  problem: { code: "text", got: shown(got), expected, ...more },
});

/** `12,400.5` as `12400.5`: digits, groups of three, decimals; `undefined` where they are not so. */
const plainRun = (run: string, decimal: DecimalSign): string | undefined => {
  const [whole, part = "", ...more] = run.split(decimal) as [string, ...string[]];
  const groups = whole.split(decimal === "." ? "," : ".") as [string, ...string[]];
  const [first, ...rest] = groups;
  const grouped =
    rest.length === 0 || (/^[1-9]\d{0,2}$/.test(first) && rest.every((digits) => digits.length === 3));
  return grouped && more.length === 0 && !/\D/.test(part) ? `${groups.join("")}.${part}` : undefined;
};

/** Why digits are no number where `decimal` stands before the decimals. */
const badRun = (run: string, end: number, decimal: DecimalSign): ScannedNumber => {
  const group = decimal === "." ? "," : ".";
  const turned = plainRun(run, group) !== undefined;
  const marks = run.replace(/\d/g, "");
  if (marks === decimal.repeat(marks.length)) {
    const full = turned ? { suggestion: run.split(decimal).join("") } : {};
    return bad(end, run, `a number with one "${decimal}"`, full);
  }
  const other = turned ? `; the option decimal: "${group}" takes the other sign` : "";
  const expected = `a number with "${decimal}" before its decimals and groups of three${other}`;
  // in 0,5 and in 1.234,5 the last sign can stand before decimals alone
  const mixed = marks.length > 1 && !marks.endsWith(decimal);
  const sure = turned && (mixed || /^0\D\d/.test(run)) ? plainRun(run, group) : undefined;
  if (sure !== undefined) return bad(end, run, expected, { suggestion: sure.replace(".", decimal) });
  return marks === group && /\d\D\d/.test(run)
    ? bad(end, run, expected, { choices: [run.replace(group, decimal), run.replace(group, "")] })
    : bad(end, run, expected);
};

/** `11/2` with the space that may have been left out: `1 1/2`. */
const mixedReadings = (run: string, below: number): readonly string[] => {
  const readings: string[] = [];
  for (let i = 1; i < run.length; i++) {
    const [whole, top] = [run.slice(0, i), run.slice(i)];
    if (!top.startsWith("0") && Number(top) < below) {
      readings.push(`${whole} ${top}/${below}`);
    }
  }
  return Number(run) < below ? [] : readings;
};

/** A number whose first digits were found: where it began and ended so far, and its sign. */
interface Begun {
  readonly text: string;
  readonly at: number;
  readonly run: string;
  /** Where the first digits end. */
  readonly end: number;
  readonly rest: string;
  readonly factor: 1 | -1;
  readonly decimal: DecimalSign;
}

/** `1/2`. */
const fraction = ({ run, end, rest, factor }: Begun): ScannedNumber | undefined => {
  const found = /^\/(\d+)(?![\d.,])/.exec(rest);
  if (found === null) return undefined;
  const below = Number(found[1]);
  const after = end + found[0].length;
  if (!denominators.includes(below)) {
    return bad(after, `${run}/${below}`, "a fraction such as 1/2 or 3/16, or a unit before the slash");
  }
  const mixed = mixedReadings(run, below);
  if (mixed.length > 0) {
    const choices = [...mixed, String(Number(run) / below)];
    return bad(after, `${run}/${below}`, "a space between a whole number and its fraction", { choices });
  }
  return { value: (factor * Number(run)) / below, end: after };
};

/** `1 1/2` and `1-1/2`. */
const mixedNumber = ({ text, at, run, end, rest, factor }: Begun): ScannedNumber | undefined => {
  const mixed = /^([ -])(\d+)\/(\d+)(?![\d.,])/.exec(rest);
  if (mixed === null || (mixed[1] !== " " && !(Number(run) > 0 && Number(mixed[2]) < Number(mixed[3]))))
    return undefined;
  const [top, below] = [Number(mixed[2]), Number(mixed[3])];
  const after = end + mixed[0].length;
  if (!denominators.includes(below) || top >= below || top === 0) {
    return bad(after, text.slice(at, after), "a whole number and a fraction below 1, such as 1 1/2");
  }
  return { value: (factor * (Number(run) * below + top)) / below, end: after };
};

/** In `3 100 m2` and `3 100 sq m` what is counted may be 100 m2. */
const lotOf = /^ ?(?:m\^?2|sq(?:uare|\.)? ?m(?!i))/i;

/** `12 400` and `12'400`. */
const spacedNumber = (begun: Begun): ScannedNumber | undefined => {
  const { text, at, run, factor, decimal } = begun;
  if (!/^[1-9]\d{0,2}$/.test(run)) return undefined;
  const spaced = /^(?:(?: \d{3})+|(?:'\d{3})+)(?![\d/'"])/.exec(begun.rest)?.[0];
  if (spaced === undefined) return undefined;
  const digits = run + spaced.replace(/[ ']/g, "");
  const end = begun.end + spaced.length;
  const rest = text.slice(end);
  if (/ 100$/.test(spaced) && lotOf.test(rest)) {
    const before = text.slice(at, end - 4);
    return bad(end, text.slice(at, end), "one number and one unit", {
      choices: [`${digits} m2`, `${before} x 100 m2`],
    });
  }
  const decimals = /^[.,]\d+/.exec(rest)?.[0] ?? "";
  if (decimals !== "" && decimals[0] !== decimal) {
    const after = end + decimals.length;
    return bad(after, text.slice(at, after), `a number with "${decimal}" before its decimals`);
  }
  return { value: factor * Number(`${digits}.${decimals.slice(1)}`), end: end + decimals.length };
};

/** `3`, `12,400.5` and `1e-3`. */
const plainNumber = ({ text, at, run, rest, factor, decimal, ...begun }: Begun): ScannedNumber => {
  const digits = plainRun(run, decimal);
  if (digits === undefined) return badRun(run, begun.end, decimal);
  const power = /^[eE][+-]?\d{1,4}(?![\d.])/.exec(rest)?.[0] ?? "";
  const value = Number(digits + power);
  const end = begun.end + power.length;
  const raised = /^\^-?\d*/.exec(text.slice(end))?.[0];
  if (raised !== undefined)
    return bad(end + raised.length, text.slice(at, end) + raised, "a number without a power");
  // 1e-400 is not nothing
  if (!Number.isFinite(value) || (value === 0 && /[1-9]/.test(run))) {
    return {
      value: Number.NaN,
      end,
      problem: { code: "not-finite", got: shown(text.slice(at, end)), expected: "a number that can be held" },
    };
  }
  return { value: factor * value, end };
};

/**
 * Reads the number that a text begins with: `3`, `.5`, `12,400.5`, `12 400`, `12'400`, `1e-3`, `1/2`, `1 1/2`, `1-1/2`.
 * `undefined` where it begins with none. Every step looks at a fixed number of characters or moves on.
 */
export const scanNumber = (text: string, decimal: DecimalSign): ScannedNumber | undefined => {
  const begin = /^[+-]?([.,]?\d[\d.,]*)/.exec(text);
  if (begin === null) return undefined;
  const run = begin[1] as string;
  const end = begin[0].length;
  const at = end - run.length;
  const begun: Begun = {
    text,
    at,
    run,
    end,
    rest: text.slice(end),
    factor: text[0] === "-" ? -1 : 1,
    decimal,
  };
  const whole = /^\d+$/.test(run);
  const found = whole ? (fraction(begun) ?? mixedNumber(begun) ?? spacedNumber(begun)) : undefined;
  if (found !== undefined) return found;
  const dotted = /^[·⋅∙]\d+/.exec(begun.rest)?.[0];
  if (dotted !== undefined)
    return bad(end + dotted.length, run + dotted, `a number with "${decimal}" before its decimals`);
  return plainNumber(begun);
};
