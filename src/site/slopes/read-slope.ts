import { expectQuantity, expectRecord, fail, outOfRange, type Quantity } from "../../quantity/index.js";

/**
 * A slope as it is written: an angle, a grade (rise over run), or a text such as `"3:1"`, `"1 in 3"`, `"12 %"`,
 * `"7 deg"` or `"level"`.
 */
export type Slope = Quantity<"angle", "none"> | Quantity<"length/length", "none"> | (string & {});

const expected =
  'an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg"';

/** Longer than any slope that is written. */
const mostText = 40;

/** Takes a slope of 0 or more and less than upright, as rise over run. */
export const gradeOf = (input: unknown, path: string): number => {
  if (input === undefined) return fail("missing", path, input, expected);
  if (typeof input === "string") return fromText(input, path);
  if (typeof input === "number") return fail("type", path, input, `${expected}: a number has no unit`);
  const { unit } = expectRecord(input, path, expected);
  const bound = "non-negative";
  if (unit === "%") {
    return fail(
      "unit/mismatch",
      path,
      input,
      'a grade: write "% grade" for rise over run, or the text "12 %"',
    );
  }
  if (unit === "deg" || unit === "rad") {
    return tangent(
      expectQuantity(input, { dimension: "angle", of: "none", bound }, path).in("deg"),
      path,
      input,
    );
  }
  return expectQuantity(input, { dimension: "length/length", of: "none", bound }, path).in("m/m");
};

const tangent = (degrees: number, path: string, got: unknown): number =>
  degrees < 90 ? Math.tan((degrees * Math.PI) / 180) : outOfRange(path, got, { below: 90, unit: "deg" });

const number = "(\\d+(?:\\.\\d+)?|\\.\\d+)";
const forms = {
  ratio: new RegExp(`^${number}\\s*:\\s*${number}\\s*(h:v|v:h|run:rise|rise:run)?$`, "i"),
  oneIn: new RegExp(`^1 in ${number}$`, "i"),
  percent: new RegExp(`^${number}\\s*(?:%|percent)(?: grade| slope)?$`, "i"),
  degrees: new RegExp(`^${number}\\s*(?:deg|degrees?|°)$`, "i"),
  level: /^(?:level|flat)$/i,
};

const fromText = (text: string, path: string): number => {
  const trimmed = text.length > mostText ? "" : text.trim();
  const [, first, second, order] = forms.ratio.exec(trimmed) ?? [];
  if (first !== undefined && second !== undefined) return fromRatio(text, +first, +second, order, path);
  const [, run] = forms.oneIn.exec(trimmed) ?? [];
  if (run !== undefined) return +run > 0 ? 1 / +run : outOfRange(path, text, { above: 0 }, "a run of {}");
  const [, percent] = forms.percent.exec(trimmed) ?? [];
  if (percent !== undefined) return +percent / 100;
  const [, degrees] = forms.degrees.exec(trimmed) ?? [];
  if (degrees !== undefined) return tangent(+degrees, path, text);
  return forms.level.test(trimmed) ? 0 : fail("text", path, text, expected);
};

/** `3:1` is run to rise; `1:3` is written for the same and for its inverse, so it needs the order beside it. */
const fromRatio = (
  text: string,
  first: number,
  second: number,
  order: string | undefined,
  path: string,
): number => {
  if (order === undefined && first < second) {
    const choices = [`${first}:${second} V:H`, `${first}:${second} H:V`];
    return fail(
      "unit/ambiguous",
      path,
      text,
      "a ratio that says which is the run (H) and which the rise (V)",
      {
        choices,
      },
    );
  }
  const riseFirst = order !== undefined && /^(?:v|rise)/i.test(order);
  const [run, rise] = riseFirst ? [second, first] : [first, second];
  return run > 0 ? rise / run : outOfRange(path, text, { above: 0 }, "a run of {}");
};
