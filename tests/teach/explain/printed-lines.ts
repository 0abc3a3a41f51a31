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

/** What a line comes to, and how far its printed digits may put it off. */
const computed = (line: string): { readonly value: number; readonly off: number } => {
  const value = math.evaluate(line, { ...functions }) as number;
  let off = 0;
  for (const match of line.matchAll(printed)) {
    const half = doubt(match[0]);
    if (half === 0) continue;
    for (const moved of [Number(match[0]) + half, Number(match[0]) - half]) {
      const other = line.slice(0, match.index) + moved + line.slice(match.index + match[0].length);
      off += Math.abs((math.evaluate(other, { ...functions }) as number) - value);
    }
  }
  return { value, off };
};

/** Whether two sides of a line come to the same, as far as their printed digits go. */
export const sameComputed = (left: string, right: string): boolean => {
  const [a, b] = [computed(left), computed(right)];
  return Math.abs(a.value - b.value) <= a.off + b.off + 1e-9 * Math.abs(a.value) + 1e-15;
};
