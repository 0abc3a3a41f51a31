import { all, create, type FactoryFunctionMap } from "mathjs";

const math = create(all as FactoryFunctionMap, {});
const functions = { ln: Math.log, log10: Math.log10, ceil: Math.ceil, floor: Math.floor };

/** A unit after a number, up to the next sign: `lb N/1,000 ft²`, `% w/w`, `blocks of 1,000 ft²`. */
export const unitAfterNumber =
  /(?<=\d) ?(?:[A-Za-z%°µ]|\/[A-Za-z]|\/1,000 ft)[^=()≈]*?(?= [-*+/] |\)|,\s| = | ≈ |$)/g;

/** A printed line as arithmetic: its signs as a calculator has them, and without its units. */
export const arithmetic = (text: string): string =>
  text
    .replaceAll("−", "-")
    .replaceAll("×", "*")
    .replaceAll("÷", "/")
    .replaceAll("√", "sqrt")
    .replaceAll("π", "pi")
    .replace(/[$€]/g, "")
    .replace(/(?<=[= (]|^)(\d{1,3}(?:,\d{3})+)/g, (number) => number.replaceAll(",", ""))
    .replace(unitAfterNumber, "");

/** Half of the sixth digit of a number: zeros at its end are not written, so that every number may have been rounded there. */
const doubt = (number: string): number =>
  Number(number) === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(Number(number)))) - 5);

// an exponent is one of the equation and not rounded
const printed = /(?<![A-Za-z_\d.^])\d+(?:\.\d+)?(?:e[+-]?\d+)?/g;

/** What a line comes to, and how far its printed digits may put it off. The line is parsed once, with a name for each number. */
const computed = (line: string): { readonly value: number; readonly off: number } => {
  const numbers: number[] = [];
  const halves: number[] = [];
  const named = line.replace(printed, (number) => {
    halves.push(doubt(number));
    return `(printed${numbers.push(Number(number)) - 1})`;
  });
  const sum = math.compile(named);
  const scope: Record<string, unknown> = { ...functions };
  numbers.forEach((number, i) => {
    scope[`printed${i}`] = number;
  });
  const value = sum.evaluate(scope) as number;
  let off = 0;
  numbers.forEach((number, i) => {
    const half = halves[i] as number;
    if (half === 0) return;
    for (const moved of [number + half, number - half]) {
      scope[`printed${i}`] = moved;
      off += Math.abs((sum.evaluate(scope) as number) - value);
    }
    scope[`printed${i}`] = number;
  });
  return { value, off };
};

/** Whether two sides of a line come to the same, as far as their printed digits go. */
export const sameComputed = (left: string, right: string): boolean => {
  const [a, b] = [computed(left), computed(right)];
  return Math.abs(a.value - b.value) <= a.off + b.off + 1e-9 * Math.abs(a.value) + 1e-15;
};
