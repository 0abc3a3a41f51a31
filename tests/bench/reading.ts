// What reading costs: typed texts, records of a form, a column of a file; beside two general-purpose libraries that
// read the plain texts, and plain arithmetic, in one run. Prints; asserts nothing.
import Qty from "js-quantities";
import { unit as mathUnit } from "mathjs";
import { convertedNumbers, parseQuantity, readQuantity } from "../../src/index.js";

const size = 1024;
const texts = (
  units: readonly string[],
  number = (i: number): string => String((i % 97) / 10 + 0.1),
): readonly string[] => Array.from({ length: size }, (_, i) => `${number(i)} ${units[i % units.length]}`);

const rates = texts(["lb/1000 ft2", "lb/acre", "kg/ha", "g/m2"]);
const weights = texts(["lb", "kg", "g"]);
const words = texts(["lb of N per 1,000 sq ft"]);
const mixed = texts(["pt/acre"], (i) => `${(i % 9) + 1} 1/2`);
const areas = texts(["ft²"], (i) => `12,${400 + (i % 500)}`);
const rate = { dimension: "mass/area", of: "N" } as const;
const records = rates.map((text) => {
  const space = text.indexOf(" ");
  return { value: Number(text.slice(0, space)), unit: text.slice(space + 1), of: "N" };
});
const typedRecords = records.map((record) => ({ ...record, value: String(record.value) }));
const kg: Readonly<Record<string, number>> = { lb: 0.45359237, kg: 1, g: 0.001 };

interface Case {
  readonly name: string;
  readonly work: (i: number) => unknown;
  /** The most microseconds aimed at. */
  readonly atMost?: number;
}
const cases: readonly Case[] = [
  {
    name: "plain: split a weight at its space, Number(text) times a factor",
    work: (i) => {
      const [number, unit] = (weights[i] as string).split(" ") as [string, string];
      return Number(number) * (kg[unit] as number);
    },
  },
  { name: "weight, general library 1", work: (i) => Qty(weights[i] as string) },
  { name: "weight, general library 2", work: (i) => mathUnit(weights[i] as string) },
  { name: "weight, parseQuantity", work: (i) => parseQuantity(weights[i] as string), atMost: 5 },
  {
    name: "rate, parseQuantity with dimension and substance",
    work: (i) => parseQuantity(rates[i] as string, rate),
    atMost: 5,
  },
  { name: "rate in words", work: (i) => parseQuantity(words[i] as string, rate), atMost: 5 },
  { name: "1 1/2 pt/acre", work: (i) => parseQuantity(mixed[i] as string), atMost: 5 },
  { name: "12,400 ft²", work: (i) => parseQuantity(areas[i] as string, { dimension: "area" }), atMost: 5 },
  {
    name: "record, its value a number: readQuantity",
    work: (i) => readQuantity(records[i], rate),
    atMost: 1,
  },
  {
    name: "record, its value a text: readQuantity",
    work: (i) => readQuantity(typedRecords[i], rate),
    atMost: 1,
  },
  { name: "text: readQuantity", work: (i) => readQuantity(rates[i], rate), atMost: 5 },
];

const perRound = 20_000;
const best = cases.map(() => Number.POSITIVE_INFINITY);
for (let round = -2; round < 9; round++) {
  cases.forEach(({ work }, at) => {
    const start = performance.now();
    for (let i = 0; i < perRound; i++) work(i & (size - 1));
    const spent = ((performance.now() - start) * 1000) / perRound;
    if (round >= 0) best[at] = Math.min(best[at] as number, spent);
  });
}
console.log(`best of 9 rounds of ${perRound} calls; µs per call`);
cases.forEach(({ name, atMost }, at) => {
  const spent = best[at] as number;
  const aim = atMost === undefined ? "" : ` | aimed at ${atMost}: ${spent <= atMost ? "met" : "missed"}`;
  console.log(`${spent.toFixed(2).padStart(7)}  ${name}${aim}`);
});

const column = Array.from(
  { length: 100_000 },
  (_, i) => `${i / 100 + 0.01} ${["lb/acre", "lbs/M", "kg per ha"][i % 3]}`,
);
let start = performance.now();
for (const text of column) parseQuantity(text, rate);
console.log(
  `${(performance.now() - start).toFixed(0).padStart(7)} ms  a column of 100,000 typed values | aimed at 500`,
);
const numbers = Float64Array.from(column, Number.parseFloat);
start = performance.now();
convertedNumbers({ numbers, from: "lb/1000 ft2", to: "kg/ha" });
console.log(
  `${(performance.now() - start).toFixed(2).padStart(7)} ms  a column of 100,000 numbers in another unit`,
);
