// The constants that a problem prints for its reader, and the leeway that they are given. Each is reckoned here from exact
// sizes, and has to be what the text prints, to its last digit.
import type { QuizProblem } from "../../../src/teach/problems/index.js";
import { sizeOf } from "./read-text.js";

// Abridged standard atomic weights (IUPAC 2021)
const [O, P, K] = [15.999, 30.974, 39.098];
const phosphorusShare = (2 * P) / (2 * P + 5 * O);
const potassiumShare = (2 * K) / (2 * K + O);
const [inch, foot, pound, gallon] = [sizeOf("inch"), sizeOf("ft"), sizeOf("lb"), sizeOf("gal")];
/** FAO Irrigation and Drainage Paper 56, equation 47: the wind at a height goes with ln(67.8 z - 5.42). */
const windFactor = (meters: number): number => Math.log(67.8 * meters - 5.42) / Math.log(67.8 * 10 - 5.42);
const soil = 1000;

type Figure = (found: readonly string[]) => number;

/** What is printed, as a pattern whose last group is the figure; what it is; how many times. */
const printed: readonly (readonly [pattern: RegExp, figure: Figure])[] = [
  [/of which 1 (?:lb|kg) holds ([\d.]+) (?:lb|kg) of phosphorus/, () => phosphorusShare],
  [/of phosphate \(P2O5\) holds ([\d.]+) (?:lb|kg)/, () => phosphorusShare],
  [/of potash \(K2O\) holds ([\d.]+) (?:lb|kg)/, () => potassiumShare],
  [/1 gal\/min on 1 sq ft is ([\d.]+) inches per hour/, () => ((gallon / foot ** 2) * 60) / inch],
  [/An acre-foot is ([\d,]+) gallons/, () => (sizeOf("acre") * foot) / gallon],
  [/1 mg\/L in 1 acre-foot is ([\d.]+) lb/, () => (sizeOf("acre") * foot * 0.001) / pound],
  [/An inch of water on 1 sq ft is ([\d.]+) gal/, () => (inch * foot ** 2) / gallon],
  [/43,560 sq ft ÷ 128 is ([\d.]+) sq ft/, () => 43_560 / 128],
  [/1\/128 acre, which is ([\d.]+) m²/, () => sizeOf("acre") / 128],
  [/A quart is ([\d.]+) L/, () => sizeOf("qt") * 1000],
  [/a pound ([\d.]+) g/, () => pound * 1000],
  [/1 inch of soil of 1 g\/cm³ weighs ([\d,]+) lb per 1,000/, () => (inch * soil * 1000 * foot ** 2) / pound],
  [/1 inch of soil of 1 g\/cm³ weighs ([\d,]+) lb an acre/, () => (inch * soil * sizeOf("acre")) / pound],
  [/1 cm of soil of 1 g\/cm³ weighs ([\d,]+) kg per m²/, () => 0.01 * soil],
  [/1 cm of soil of 1 g\/cm³ weighs ([\d,]+) kg per ha/, () => 0.01 * soil * 10_000],
  [/divided by ([\d.]+)\./, () => Math.SQRT2],
  [/the wind at ([\d.]+) m is ([\d.]+) times that at 10 m/, ([to]) => windFactor(Number(to))],
  [
    /([\d.]+) (inches|cm) across, hold .* has an area of ([\d.]+) /,
    ([across, unit = ""]) =>
      (Math.PI * (Number(across) * sizeOf(unit)) ** 2) / 4 / (unit === "cm" ? 1 : foot ** 2),
  ],
  [/A gallon is ([\d.]+) fl oz/, () => 128],
  [/A pint is ([\d.]+) fl oz/, () => 16],
];

/** How many digits of a figure are told: 226,600 has four, 43,560 as well. */
const digitsOf = (text: string): number =>
  text
    .replace(/,/g, "")
    .replace(/^0?\.?0*/, "")
    .replace(".", "")
    .replace(/(?<!\.\d*)0+$/, "").length;

/** By how much a book's rounder constant shifts an answer, where the text prints none or a finer one. */
const bookShifts: readonly (readonly [text: RegExp, shift: number])[] = [
  [/^A round bed|A round planting bed|^Three cores/, 1 - 3.14 / Math.PI],
  [/An inch of water on 1 sq ft/, 1 - 0.623 / ((inch * foot ** 2) / gallon)],
];

/** What is wrong with the constants of a text, and with the leeway of its answer. */
export const printedFaults = (p: QuizProblem): readonly string[] => {
  const faults: string[] = [];
  let shift = 0;
  for (const [pattern, figure] of printed) {
    const found = pattern.exec(p.text)?.slice(1);
    const text = found?.[found.length - 1];
    if (found === undefined || text === undefined) continue;
    const own = figure(found);
    const here = Number(text.replaceAll(",", ""));
    shift = Math.max(shift, Math.abs(here / own - 1));
    if (Number(own.toPrecision(digitsOf(text))) !== here) faults.push(`${text} is printed for ${own}`);
  }
  const leeway = (p.answer.tolerance - 0.5 * 10 ** -p.answer.decimals) / p.answer.value;
  const most = Math.max(shift, ...bookShifts.map(([text, by]) => (text.test(p.text) ? by : 0)));
  if (p.answer.noun === undefined && leeway > 1e-12 && leeway < most * (1 - 1e-9))
    faults.push(`a leeway of ${leeway}, less than the ${most} that a printed constant shifts`);
  if (p.answer.noun === undefined && leeway > 1e-12 && (most === 0 || leeway > 8 * most))
    faults.push(`a leeway of ${leeway}, where a printed constant shifts ${most}`);
  if (p.answer.noun === undefined && leeway <= 1e-12 && most > 1e-5)
    faults.push(`no leeway, where a printed constant shifts ${most}`);
  return faults.map((fault) => `${p.topic} ${p.level} ${p.units} seed ${p.seed}: ${fault}: ${p.text}`);
};
