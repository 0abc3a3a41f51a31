// Runs in a process of its own: loads the program of a room, and tries its mutants one by one.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { constants, Script } from "node:vm";
import { root } from "../../house/sources.js";
import type { Mutant } from "./program.js";
import type { Collected, Suite } from "./vitest.js";

/** What became of a mutant. */
export type Outcome = "killed" | "survived" | "no test";

/** What the process tells. */
export type Told =
  | { readonly type: "ready"; readonly tests: number; readonly ms: number; readonly unfit: readonly string[] }
  | { readonly type: "start"; readonly id: string }
  | { readonly type: "beat" }
  | { readonly type: "done"; readonly id: string; readonly outcome: Outcome; readonly by?: string }
  | { readonly type: "end" };

interface Switches {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: {
    readonly static: Readonly<Record<string, number>>;
    readonly perTest: Readonly<Record<string, Readonly<Record<string, number>>>>;
  };
}

const given = process.argv[2] ?? "";
const { program, all, mutants } = JSON.parse(readFileSync(given, "utf8")) as {
  readonly program: string;
  /** Every mutant in the program. */
  readonly all: readonly Mutant[];
  /** Those to be tried. */
  readonly mutants: readonly Mutant[];
};
const switches: Switches = {};
const world = globalThis as unknown as {
  __stryker__: Switches;
  __suite?: Suite;
};
world.__stryker__ = switches;

const script = new Script(`(function (module, exports, require) {${program}\n})`, {
  filename: join(root, "program.cjs"),
  importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
});
const require = createRequire(join(root, "package.json"));
const tell = (told: Told): void => {
  if (process.send) process.send(told);
  else if (told.type !== "beat") console.log(JSON.stringify(told));
};

const loaded = (sourcesLoaded = (): void => {}): readonly Collected[] => {
  const suite: Suite = { collected: [], file: "", sourcesLoaded };
  world.__suite = suite;
  const module = { exports: {} };
  script.runInThisContext()(module, module.exports, require);
  return suite.collected;
};

const fails = async (test: Collected): Promise<boolean> => {
  try {
    await test.run();
    return false;
  } catch {
    return true;
  }
};

/** Of this process alone, in ms: the machine may have other things to do. */
const spentSoFar = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const started = spentSoFar();
// Copies: what runs later without a test of its own is counted there too
let bySources: Readonly<Record<string, number>> = {};
let tests = loaded(() => {
  bySources = { ...switches.mutantCoverage?.static };
});
const atLoad = { ...switches.mutantCoverage?.static };
const isWall = ({ name }: Collected): boolean => name.startsWith("spoilt calls > ");
const times: number[] = [];
/** In ms. */
const longRun = 60;
const unfit: number[] = [];
for (let n = 0; n < tests.length; n += 1) {
  const test = tests[n] as Collected;
  switches.currentTestId = String(n);
  const first = spentSoFar();
  if (await fails(test)) unfit.push(n);
  const start = spentSoFar();
  // Timed when it is warm, as it is each time that it is run for a mutant; a long one has warmed up by its own end
  if (start - first < longRun) await fails(test);
  times.push(start - first < longRun ? spentSoFar() - start : start - first);
  tell({ type: "beat" });
}
switches.currentTestId = undefined;
const perTest = switches.mutantCoverage?.perTest ?? {};
tell({
  type: "ready",
  tests: tests.length,
  ms: spentSoFar() - started,
  unfit: unfit.map((n) => (tests[n] as Collected).name),
});

const fit = tests
  .map((_, n) => n)
  .filter((n) => !unfit.includes(n))
  .sort((a, b) => (times[a] ?? 0) - (times[b] ?? 0));
const fast = fit.filter((n) => !isWall(tests[n] as Collected));
const walls = fit.filter((n) => isWall(tests[n] as Collected));
const readingOf =
  (some: readonly number[]) =>
  (id: string): readonly number[] =>
    some.filter((n) => (perTest[n]?.[id] ?? 0) > 0);
const reading = readingOf(fast);
/** The spoilt calls that come to a mutant; they are tried where nothing else notices it. */
const wallsTo = readingOf(walls);

/** How long the tests of one mutant may take, in ms of their first run; the slowest are left out beyond it. */
const most = Number(process.env.MUTANTS_MOST ?? 1500);

/** The first test of some that fails. */
const killer = async (
  all: readonly Collected[],
  which: readonly number[],
  id: string,
): Promise<number | undefined> => {
  let spent = 0;
  for (const n of which) {
    spent += times[n] ?? 0;
    if (spent > most && n !== which[0]) return undefined;
    switches.hitCount = 0;
    switches.hitLimit = 10_000 + 100 * (perTest[n]?.[id] ?? 0);
    tell({ type: "beat" });
    if (await fails(all[n] as Collected)) return n;
  }
  return undefined;
};

const nameOf = (n: number): string => tests[n]?.name ?? "";

/** With a copy of its own, so that what is made as it is loaded is made by the mutant. */
const tryAfresh = async (id: string, first: readonly number[], all: boolean): Promise<string | undefined> => {
  switches.activeMutant = id;
  switches.hitCount = 0;
  switches.hitLimit = 10_000_000;
  try {
    let copy: readonly Collected[];
    try {
      copy = loaded();
    } catch {
      return "as it is loaded";
    }
    if (copy.length !== tests.length) return "as it is loaded";
    const rest = all ? fast.filter((n) => !first.includes(n)) : [];
    const by = await killer(copy, [...first, ...rest], id);
    return by === undefined ? undefined : nameOf(by);
  } finally {
    switches.activeMutant = undefined;
  }
};

/** With the copy that is loaded; a test that then also fails without the mutant shows that the copy is spoilt. */
const tryHere = async (id: string, first: readonly number[]): Promise<string | undefined> => {
  switches.activeMutant = id;
  const by = await killer(tests, first, id);
  switches.activeMutant = undefined;
  if (by === undefined) return undefined;
  if (!(await fails(tests[by] as Collected))) return nameOf(by);
  tests = loaded();
  return tryAfresh(id, first, false);
};

const done = (id: string, by: string | undefined): void =>
  tell(
    by === undefined
      ? { type: "done", id, outcome: "survived" }
      : { type: "done", id, outcome: "killed", by },
  );

/** By spoilt calls of the functions that come to a mutant. */
const tryWalls = async (id: string): Promise<string | undefined> => {
  let spent = 0;
  for (const n of wallsTo(id)) {
    spent += times[n] ?? 0;
    if (spent > most && n !== wallsTo(id)[0]) return undefined;
    switches.activeMutant = id;
    switches.hitCount = 0;
    switches.hitLimit = 10_000_000;
    tell({ type: "beat" });
    const noticed = await fails(tests[n] as Collected);
    switches.activeMutant = undefined;
    if (noticed && !(await fails(tests[n] as Collected))) return nameOf(n);
  }
  return undefined;
};

/** Those of the shelf of a mutant first: there are more tests that come to it than time to run them. */
const ownFirst = ({ file }: Mutant, which: readonly number[]): readonly number[] => {
  const shelf = dirname(file).replace(/^src/, "tests");
  const own = (n: number): boolean => dirname(tests[n]?.file ?? "") === shelf;
  return [...which.filter(own), ...which.filter((n) => !own(n))];
};

/** Where a mutant stands: its file, and the outermost name there. */
const placesOf = ({ file, within }: Mutant): readonly string[] => [`${file} ${within.split(".")[0]}`, file];
const readersOf = new Map<string, Set<number>>();
for (const mutant of all)
  for (const n of reading(mutant.id))
    for (const place of placesOf(mutant)) {
      const readers = readersOf.get(place) ?? new Set();
      readersOf.set(place, readers.add(n));
    }

/** Tests that run nothing of the room: they hold what it made as it was loaded, such as the words of an entry, and cost little. */
const ofLoaded = fast.filter((n) => Object.keys(perTest[n] ?? {}).length === 0 && (times[n] ?? 0) < longRun);
/**
 * For what is made as it is loaded, no test is known to read it: those that come to what stands beside it are tried first, a
 * formula beside the texts of its entry.
 */
const nearFirst = (mutant: Mutant): readonly number[] => {
  const near = placesOf(mutant).map((place) => readersOf.get(place) ?? new Set());
  return [
    ...new Set([
      ...ofLoaded,
      ...ownFirst(mutant, reading(mutant.id)),
      ...near.flatMap((some) => fast.filter((n) => some.has(n))),
    ]),
  ];
};

for (const mutant of mutants) {
  const { id, keeps } = mutant;
  tell({ type: "start", id });
  const first = ownFirst(mutant, reading(id));
  const early = (atLoad[id] ?? 0) > 0;
  // What only a test ran as it was loaded is tried in the loaded copy first: to load all of it again takes longer
  const here = (bySources[id] ?? 0) > 0 || first.length === 0 ? undefined : await tryHere(id, first);
  const afresh = async (): Promise<string | undefined> =>
    early
      ? tryAfresh(id, nearFirst(mutant), true)
      : keeps && first.length > 0
        ? tryAfresh(id, first, false)
        : undefined;
  const by = here ?? (await afresh()) ?? (await tryWalls(id));
  if (by === undefined && first.length === 0 && wallsTo(id).length === 0 && !early)
    tell({ type: "done", id, outcome: "no test" });
  else done(id, by);
  await new Promise((go) => setImmediate(go));
}
tell({ type: "end" });
process.disconnect?.();
