// What unit libraries do, each task by each library in turn.
import { format, parseQuantity, type Quantity, quantity } from "ratewright";
import { peers } from "./peer-list.js";
import { ways as peerWays, plain, type Ways, wrongCalls, wrongTexts } from "./peers.js";
import { compiled, race } from "./race.js";
import type { Results, Task, Way } from "./rows.js";

const size = 1024;
const numbers = Array.from({ length: size }, (_, i) => ((i * 37) % 97) / 10 + 0.1);
const hectares = Array.from({ length: size }, (_, i) => ((i * 53) % 89) / 20 + 0.05);
const texts = numbers.map((n) => `${n} lb`);
const at = <T>(list: readonly T[], i: number): T => list[i] as T;

/** This library, as the others are asked. */
const own: Ways = {
  construct: (n) => quantity(n, "lb"),
  convertMade: ((made: Quantity<"mass", "none">) => made.in("kg")) as Ways["convertMade"],
  rateTimesArea: (rate, area) => quantity(rate, "lb/acre").times(quantity(area, "ha")).in("kg"),
  read: (text) => parseQuantity(text),
  formToForm: (text) => format(parseQuantity(text) as Quantity<"mass", "none">, { unit: "kg" }),
};

const all: readonly (readonly [string, Ways])[] = [
  ["plain arithmetic", plain],
  ["ratewright", own],
  ...peers.map(({ name }) => [name, peerWays[name] as Ways] as const),
];

/** One way a library: `body` is what is done at place `i` of `xs` and `ys`, with the library's own function as `f`, `g`. */
const waysOf = (
  body: string,
  make: (ways: Ways) => { readonly xs: readonly unknown[]; readonly f: unknown; readonly g?: unknown },
): readonly Way[] =>
  all.flatMap(([library, ways]) => {
    const { xs, f, g } = make(ways);
    if (f === undefined) return [];
    return [
      {
        library,
        work: compiled<Way["work"]>(["xs", "ys", "f", "g"], `return (i) => ${body};`, [xs, hectares, f, g]),
      },
    ];
  });

const tasks = (): readonly Task[] => [
  {
    name: "construct",
    what: "a number of pounds becomes an amount",
    ways: waysOf("f(xs[i])", ({ construct }) => ({ xs: numbers, f: construct })),
  },
  {
    name: "convert",
    what: "an amount made before, in pounds, as a number of kilograms",
    ways: waysOf("f(xs[i])", ({ construct, convertMade }) => ({
      xs: numbers.map(construct),
      f: convertMade,
    })),
  },
  {
    name: "construct and convert",
    what: "a number of pounds as a number of kilograms",
    ways: waysOf("f(g(xs[i]))", ({ construct, convertMade }) => ({
      xs: numbers,
      f: convertMade,
      g: construct,
    })),
  },
  {
    name: "rate x area",
    what: "pounds per acre on hectares, as a number of kilograms, from two numbers",
    ways: waysOf("f(xs[i], ys[i])", ({ rateTimesArea }) => ({ xs: numbers, f: rateTimesArea })),
  },
  {
    name: "typed text",
    what: "`5.3 lb` becomes an amount",
    ways: waysOf("f(xs[i])", ({ read }) => ({ xs: texts, f: read })),
  },
  {
    name: "form to form",
    what: "`5.3 lb` becomes a text in kilograms, such as `2.404 kg`",
    ways: waysOf("f(xs[i])", ({ formToForm }) => ({ xs: texts, f: formToForm })),
  },
];

/** Whether the ways of a task come to the same amount, to a thousandth: a check of the bench, not of the libraries. */
const agree = ({ name, ways }: Task): void => {
  const told = ways.map(({ library, work }) => {
    const result = work(7);
    const number = typeof result === "string" ? Number.parseFloat(result) : result;
    return typeof number === "number" ? ([library, number] as const) : undefined;
  });
  const [first, ...rest] = told.filter((one) => one !== undefined);
  for (const [library, number] of rest) {
    if (first !== undefined && Math.abs(number / first[1] - 1) > 1e-3)
      throw new Error(`${name}: ${library} gives ${number}, ${first[0]} ${first[1]}`);
  }
};

const refuses = (call: () => unknown): boolean => {
  try {
    call();
    return false;
  } catch {
    return true;
  }
};

/** A library that is said to refuse a mass for an area, or a text that is none, has to do so, and one that is not has to let it pass. */
const claims = (): void => {
  for (const { name, runTime, text } of peers) {
    const [wrong, wrongText] = [wrongCalls[name], wrongTexts[name]];
    const asSaid =
      wrong !== undefined &&
      refuses(wrong) === (runTime === "yes") &&
      (wrongText === undefined ? text === "-" : text === (refuses(wrongText) ? "yes" : "no"));
    if (!asSaid) throw new Error(`${name}: what is said of its safety is not so`);
  }
};

/** The readings of every task. */
export const measuredTasks = (rounds: number): Results["tasks"] => {
  claims();
  return tasks().map((task) => {
    agree(task);
    const readings = race(
      task.ways.map(({ work }) => work),
      { rounds },
    );
    const ways = task.ways.map(({ library }, i) => ({ library, ns: at(readings, i) }));
    return { name: task.name, what: task.what, ways };
  });
};
