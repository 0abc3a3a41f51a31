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

/** Takes `12,400.5` apart: digits, groups of three, decimals. */
const readRun = (run: string, end: number, decimal: DecimalSign): ScannedNumber => {
  const group = decimal === "." ? "," : ".";
  const [whole = "", part, ...more] = run.split(decimal);
  const groups = whole.split(group);
  const first = groups[0] as string;
  const grouped =
    groups.length > 1 &&
    /^[1-9]\d{0,2}$/.test(first) &&
    groups.slice(1).every((digits) => digits.length === 3);
  if (more.length === 0 && (groups.length === 1 || grouped) && part?.includes(group) !== true) {
    return { value: Number(`${groups.join("") || "0"}.${part || "0"}`), end };
  }
  const marks = run.replace(/\d/g, "");
  if (marks === group && /^\d+[.,]\d+$/.test(run)) {
    const other = `the option decimal: "${group}" takes the other sign`;
    return bad(end, run, `a number with "${decimal}" before its decimals and groups of three; ${other}`, {
      choices: [run.replace(group, decimal), run.replace(group, "")],
    });
  }
  if (marks.length > 1 && new Set(marks).size === 1 && marks[0] === decimal) {
    const groups = run.split(decimal);
    const full = groups.slice(1).every((digits) => digits.length === 3) ? groups.join("") : undefined;
    return bad(end, run, `a number with one "${decimal}"`, full === undefined ? {} : { suggestion: full });
  }
  // 12.400,5 is sound with the other sign
  const turned = decimal === "." ? "," : ".";
  const other = readsWith(run, turned) ? `; the option decimal: "${turned}" takes the other sign` : "";
  return bad(end, run, `a number with "${decimal}" before its decimals and groups of three${other}`);
};

/** Whether digits are a number where the other sign stands before the decimals. */
const readsWith = (run: string, decimal: DecimalSign): boolean => {
  const group = decimal === "." ? "," : ".";
  const [whole = "", part, ...more] = run.split(decimal);
  const [first = "", ...groups] = whole.split(group);
  return (
    more.length === 0 &&
    part?.includes(group) !== true &&
    /^[1-9]\d{0,2}$/.test(first) &&
    groups.every((digits) => digits.length === 3)
  );
};

/** `11/2` with the space that may have been left out: `1 1/2`. */
const mixedReadings = (run: string, below: number): readonly string[] => {
  const readings: string[] = [];
  for (let i = 1; i < run.length; i++) {
    const [whole, top] = [run.slice(0, i), run.slice(i)];
    if (!whole.startsWith("0") && !top.startsWith("0") && Number(top) < below) {
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

/** `12 400` and `12'400`. */
const spacedNumber = (begun: Begun): ScannedNumber | undefined => {
  const { text, at, run, factor, decimal } = begun;
  if (!/^[1-9]\d{0,2}$/.test(run)) return undefined;
  const spaced = /^(?:(?: \d{3})+|(?:'\d{3})+)(?![\d/'"])/.exec(begun.rest)?.[0];
  if (spaced === undefined) return undefined;
  const digits = run + spaced.replace(/[ ']/g, "");
  const end = begun.end + spaced.length;
  const rest = text.slice(end);
  if (/ 100$/.test(spaced) && /^ ?(?:m|sq)/i.test(rest)) {
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
  return { value: factor * Number(`${digits}.${decimals.slice(1) || "0"}`), end: end + decimals.length };
};

/** `3`, `12,400.5` and `1e-3`. */
const plainNumber = ({ text, at, run, rest, factor, decimal, ...begun }: Begun): ScannedNumber => {
  const read = readRun(run, begun.end, decimal);
  if (read.problem !== undefined) return read;
  const power = /^[eE]([+-]?\d{1,4})(?![\d.])/.exec(rest);
  const value =
    power === null
      ? read.value
      : Number(`${read.value}`.includes("e") ? Number.NaN : `${read.value}e${power[1]}`);
  const end = begun.end + (power === null ? 0 : power[0].length);
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
 * Reads a number at `start`: `3`, `.5`, `12,400.5`, `12 400`, `12'400`, `1e-3`, `1/2`, `1 1/2`, `1-1/2`.
 * `undefined` where no number stands there. Every step looks at a fixed number of characters or moves on.
 */
export const scanNumber = (text: string, start: number, decimal: DecimalSign): ScannedNumber | undefined => {
  const tail = text.slice(start);
  const sign = /^[+-]?/.exec(tail)?.[0] ?? "";
  const run = /^[.,]?\d[\d.,]*/.exec(tail.slice(sign.length))?.[0];
  if (run === undefined) return undefined;
  const at = start + sign.length;
  const end = at + run.length;
  const begun: Begun = { text, at, run, end, rest: text.slice(end), factor: sign === "-" ? -1 : 1, decimal };
  const whole = /^\d+$/.test(run);
  const found = whole ? (fraction(begun) ?? mixedNumber(begun) ?? spacedNumber(begun)) : undefined;
  if (found !== undefined) return found;
  const dotted = /^[·⋅∙]\d+/.exec(begun.rest)?.[0];
  if (dotted !== undefined)
    return bad(end + dotted.length, run + dotted, `a number with "${decimal}" before its decimals`);
  return plainNumber(begun);
};
