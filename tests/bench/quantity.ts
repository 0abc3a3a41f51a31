// What the quantity costs: from what a form holds (the text of a number, a unit) to the number that a screen
// shows, beside plain arithmetic that does the same work, in one run. Prints; asserts nothing.
import { fertilizer, productRate, quantity } from "../../src/index.js";

const rounds = 15;
const perRound = 400_000;
const size = 1024;

/** A small generator of its own, so that every run measures the same numbers. */
let state = 12345;
const random = (below: number): number => {
  state = (state * 1103515245 + 12345) % 2147483648;
  return state % below;
};
const pick = <T>(items: readonly T[]): T => items[random(items.length)] as T;
const many = <T>(make: () => T): readonly T[] => Array.from({ length: size }, make);

const texts = many(() => String((random(900) + 100) / 100));
const numbers = texts.map(Number);
const weights = ["lb", "oz", "kg", "g"] as const;
const rates = ["lb/1000 ft2", "lb/acre", "kg/ha", "g/m2"] as const;
const weightFrom = many(() => pick(weights));
const weightTo = many(() => pick(weights));
const rateFrom = many(() => pick(rates));
const rateTo = many(() => pick(rates));
const rateTops = rateFrom.map((unit) => unit.slice(0, unit.indexOf("/")));
const rateBottoms = rateFrom.map((unit) => unit.slice(unit.indexOf("/")));

const ft2 = 0.09290304;
const kg: Readonly<Record<string, number>> = { lb: 0.45359237, oz: 0.45359237 / 16, kg: 1, g: 0.001 };
const kgPerM2: Readonly<Record<string, number>> = {
  "lb/1000 ft2": 0.45359237 / (1000 * ft2),
  "lb/acre": 0.45359237 / (43560 * ft2),
  "kg/ha": 0.0001,
  "g/m2": 0.001,
};
const factors = many(() => pick(Object.values(kg)));

const grades = ["24-0-11", "16-4-8", "46-0-0", "10-10-10"];
const products = grades.map((grade, i) => fertilizer({ id: `feed-${i}`, analysis: grade }));
const chosen = many(() => pick(products));
/** What plain arithmetic needs of a product: the percentages of its label. */
const labels = chosen.map((product) => ({ N: product.analysis.percent.N ?? Number.NaN }));

const text = (i: number): string => texts[i] as string;
const number = (i: number): number => numbers[i] as number;
const plainWeight = (value: number, i: number): number =>
  (value * (kg[weightFrom[i] as string] as number)) / (kg[weightTo[i] as string] as number);
const typedWeight = (value: number, i: number): number =>
  quantity(value, weightFrom[i] as (typeof weights)[number]).in(weightTo[i] as (typeof weights)[number]);
const plainRate = (value: number, unit: string, i: number): number =>
  (((value * 100) / (labels[i] as { N: number }).N) * (kgPerM2[unit] as number)) /
  (kgPerM2[rateTo[i] as string] as number);
const typedRate = (value: number, unit: string, i: number): number =>
  productRate(
    quantity(value, unit as (typeof rates)[number], "N"),
    chosen[i] as (typeof products)[number],
  ).in(rateTo[i] as (typeof rates)[number]);
const unitOf = (i: number): string => rateFrom[i] as string;
const freshUnit = (i: number): string => (rateTops[i] as string) + (rateBottoms[i] as string);

interface Case {
  readonly name: string;
  readonly work: (i: number) => number;
  /** The case that does the same work in plain arithmetic; aimed at: at most four times as long. */
  readonly beside?: string;
  /** The most nanoseconds aimed at. */
  readonly atMost?: number;
}

const cases: readonly Case[] = [
  { name: "bare multiply: number * factor", work: (i) => number(i) * (factors[i] as number) },
  { name: "Number(text) alone", work: (i) => Number(text(i)) },
  {
    name: "plain weight, from a number: times and over factors by unit",
    work: (i) => plainWeight(number(i), i),
  },
  {
    name: "typed weight, from a number: quantity(n, unit).in(unit)",
    work: (i) => typedWeight(number(i), i),
    atMost: 60,
  },
  { name: "plain weight, form to form: Number(text) first", work: (i) => plainWeight(Number(text(i)), i) },
  {
    name: "typed weight, form to form: Number(text) first",
    work: (i) => typedWeight(Number(text(i)), i),
    beside: "plain weight, form to form",
  },
  {
    name: "plain rate, from a number: the same with * 100 / percent of N",
    work: (i) => plainRate(number(i), unitOf(i), i),
  },
  {
    name: "typed rate, from a number: productRate(quantity(n, unit, N), feed).in(unit)",
    work: (i) => typedRate(number(i), unitOf(i), i),
    atMost: 80,
  },
  {
    name: "plain rate, form to form: Number(text) first",
    work: (i) => plainRate(Number(text(i)), unitOf(i), i),
  },
  {
    name: "typed rate, form to form: Number(text) first",
    work: (i) => typedRate(Number(text(i)), unitOf(i), i),
    beside: "plain rate, form to form",
  },
  {
    name: "plain rate, form to form, unit text made anew for every call",
    work: (i) => plainRate(Number(text(i)), freshUnit(i), i),
  },
  {
    name: "typed rate, form to form, unit text made anew for every call",
    work: (i) => typedRate(Number(text(i)), freshUnit(i), i),
    beside: "plain rate, form to form, unit text",
  },
];

/** Each case gets a loop of its own: one loop for all would be compiled for all of them at once. */
const loopOf = (work: (i: number) => number): ((count: number) => number) =>
  new Function(
    "work",
    `return (count) => { let sum = 0; for (let i = 0; i < count; i++) sum += work(i & ${size - 1}); return sum; };`,
  )(work) as (count: number) => number;

const loops = cases.map(({ work }) => loopOf(work));
const times: number[][] = cases.map(() => []);
let consumed = 0;
for (let round = -3; round < rounds; round++) {
  loops.forEach((loop, at) => {
    const start = process.hrtime.bigint();
    consumed += loop(perRound);
    const spent = Number(process.hrtime.bigint() - start) / perRound;
    // The first three rounds warm up.
    if (round >= 0) times[at]?.push(spent);
  });
}
if (!Number.isFinite(consumed)) throw new Error("a case gave no number");

const sorted = times.map((list) => [...list].sort((a, b) => a - b));
const quantile = (at: number, q: number): number => sorted[at]?.[Math.round(q * (rounds - 1))] ?? Number.NaN;
const median = (name: string): number =>
  quantile(
    cases.findIndex((one) => one.name.startsWith(name)),
    0.5,
  );

// The typed and the plain way must agree, or the comparison is worth nothing.
for (let i = 0; i < size; i++) {
  const [typed, plain] = [typedRate(number(i), freshUnit(i), i), plainRate(number(i), freshUnit(i), i)];
  if (Math.abs(typed / plain - 1) > 1e-12) throw new Error(`${typed} is not ${plain}`);
}

console.log(`${rounds} rounds of ${perRound} calls; ns per call: median (quartiles)`);
cases.forEach(({ name, beside, atMost }, at) => {
  const ns = (q: number): string => quantile(at, q).toFixed(1);
  const aims: string[] = [];
  const met = (yes: boolean): string => (yes ? "met" : "missed");
  if (beside !== undefined) {
    const ratio = quantile(at, 0.5) / median(beside);
    aims.push(`${ratio.toFixed(1)} times the plain one, aimed at 4: ${met(ratio <= 4)}`);
  }
  if (atMost !== undefined) aims.push(`aimed at ${atMost} ns: ${met(quantile(at, 0.5) <= atMost)}`);
  console.log(
    `${ns(0.5).padStart(7)} (${ns(0.25)} to ${ns(0.75)})  ${name}${aims.map((aim) => ` | ${aim}`).join("")}`,
  );
});
