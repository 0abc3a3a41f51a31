// Runs in a process of its own: loads the checks with their numbers read from a list, changes one number after another,
// and tells which of the changes a check notices.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Check } from "../checks.js";

/** What is to be tried. */
export interface Given {
  /** The program that holds the checks; it reads its numbers from the list `__K`, and tells `__T` of each turn of a loop. */
  readonly program: string;
  readonly numbers: readonly number[];
  /** The numbers to be changed, by their place in the list, each with the room that it stands in. */
  readonly todo: readonly { readonly n: number; readonly room: string }[];
}

/** What the process tells. */
export type Told =
  | { readonly type: "beat" }
  /** What was started is tried once more, together with others. */
  | { readonly type: "late" }
  | { readonly type: "does not hold"; readonly name: string }
  | { readonly type: "start"; readonly n: number }
  | { readonly type: "done"; readonly n: number; readonly noticed: boolean; readonly read: boolean };

const factor = 1 + 1e-4;
const { program, numbers, todo } = JSON.parse(readFileSync(process.argv[2] ?? "", "utf8")) as Given;
const tell = (told: Told): void => {
  process.send?.(told);
};

/** How much longer one check may take than as it stands, in ms of this process; more is a loop that does not end. */
const mostSpent = 6000;
const spentBy = new Map<string, number>();
let most = mostSpent;
const spentSoFar = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
let [turns, started] = [0, Number.POSITIVE_INFINITY];
/** Whether numbers are being changed: as it stands every check may take its time. */
let changing = false;
const turn = (): void => {
  turns += 1;
  if (turns % 64 === 0 && spentSoFar() - started > most) throw new Error("no end");
};

const run = new Function("module", "exports", "require", "__K", "__T", program);
const require = createRequire(import.meta.url);
const load = (list: readonly number[]): readonly Check[] => {
  const module: { exports: { checks?: readonly Check[] } } = { exports: {} };
  run(module, module.exports, require, list, turn);
  return module.exports.checks ?? [];
};

const holds = (check: Check): boolean => {
  tell({ type: "beat" });
  const began = spentSoFar();
  const key = `${check.room}: ${check.name}`;
  started = changing ? began : Number.POSITIVE_INFINITY;
  most = mostSpent + 3 * (spentBy.get(key) ?? 0);
  try {
    return check.holds();
  } catch {
    return false;
  } finally {
    started = Number.POSITIVE_INFINITY;
    if (!changing) spentBy.set(key, Math.max(spentSoFar() - began, spentBy.get(key) ?? 0));
  }
};

/** A list of numbers that notes which of them are read, and can be changed. */
tell({ type: "beat" });
const now = [...numbers];
let seen = new Set<number>();
const noted: readonly number[] = new Proxy(now, {
  get: (list, key) => {
    seen.add(Number(key));
    return Reflect.get(list, key);
  },
});
const readIn = (work: () => void): ReadonlySet<number> => {
  seen = new Set();
  work();
  return seen;
};

/** The copy in which a number is changed while it is there. */
let copy: readonly Check[] = [];
const atLoad = readIn(() => {
  copy = load(noted);
});
/** What each check reads the first time, and what it reads each time: what is made once and kept is in the first alone. */
const readFirst = copy.map((check) =>
  readIn(() => {
    if (!holds(check)) tell({ type: "does not hold", name: check.name });
  }),
);
const readBy = copy.map((check) => readIn(() => holds(check)));
const everRead = new Set([...atLoad, ...readFirst.flatMap((read) => [...read])]);
const kept = new Set([
  ...atLoad,
  ...readFirst.flatMap((read, place) => [...read].filter((n) => readBy[place]?.has(n) !== true)),
]);
const warmCopy = (): readonly Check[] => {
  const checks = load(now);
  for (const check of checks) holds(check);
  return checks;
};
copy = warmCopy();
changing = true;

/** The checks of its own room first. */
const ordered = (checks: readonly Check[], room: string): readonly Check[] => [
  ...checks.filter((check) => check.room === room),
  ...checks.filter((check) => check.room !== room),
];

/** Whether a check that reads a number each time notices that it is another. */
const isNoticedHere = (n: number, room: string): boolean => {
  const readers = ordered(
    copy.filter((_, place) => readBy[place]?.has(n) === true),
    room,
  );
  now[n] = (numbers[n] ?? 0) * factor;
  const by = readers.find((check) => !holds(check));
  now[n] = numbers[n] ?? 0;
  if (by === undefined) return false;
  // A check that does not hold afterwards either has met what was kept of the changed number
  if (holds(by)) return true;
  copy = warmCopy();
  return isNoticedAfresh([n], () => true);
};

/**
 * Whether some checks of a fresh copy notice that numbers are others: for what is made as it is loaded, or made once and
 * kept by whichever check wants it first.
 */
const isNoticedAfresh = (some: readonly number[], which: (check: Check) => boolean): boolean => {
  const list = [...numbers];
  // Each by another share, so that no two make up for one another
  for (const [i, n] of some.entries()) {
    const share = (factor - 1) * (i % 2 === 0 ? i + 1 : -(i + 1));
    list[n] = (numbers[n] ?? 0) * (1 + share);
  }
  try {
    return !load(list).filter(which).every(holds);
  } catch {
    return true;
  }
};

const done = (n: number, noticed: boolean): void => tell({ type: "done", n, noticed, read: everRead.has(n) });

/**
 * Finds which of many numbers are noticed by any check at all. Most of those that come here are not: they are changed
 * together, and only where something notices are they told apart.
 */
const sift = (some: readonly number[]): void => {
  if (some.length === 0) return;
  const noticed = isNoticedAfresh(some, () => true);
  if (!noticed || some.length === 1) {
    for (const n of some) done(n, noticed);
    return;
  }
  const half = Math.ceil(some.length / 2);
  sift(some.slice(0, half));
  sift(some.slice(half));
};

const late: number[] = [];
for (const { n, room } of todo) {
  tell({ type: "start", n });
  const mine = (check: Check): boolean => check.room === room;
  if (!everRead.has(n)) done(n, false);
  else if (isNoticedHere(n, room) || (kept.has(n) && isNoticedAfresh([n], mine))) done(n, true);
  else if (kept.has(n)) {
    tell({ type: "late" });
    late.push(n);
  } else done(n, false);
  await new Promise((go) => setImmediate(go));
}
sift(late);
// What was told last has to arrive before the line is cut
await new Promise<void>((go) => {
  if (process.send) process.send({ type: "beat" } satisfies Told, () => go());
  else go();
});
process.disconnect?.();
