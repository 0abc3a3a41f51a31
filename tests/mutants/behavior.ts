// Changes the programs of the rooms in every way that the mutators of Stryker know, one change at a time, and says which
// changes no test of the room notices: `npm run mutants -- nutrient tank/order`, with `--about=200` for a sample of
// about so many, and `--seed=2` for another one. With SURVIVORS_OUT=folder the results are written there, also those of a
// run that is stopped; `--again` then tries only what they leave, and what has changed since.
import { type ChildProcess, fork } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { rooms } from "../house/sources.js";
import { compilerOf } from "./alone/compiler.js";
import { type Mutant, programOfRoom } from "./alone/program.js";
import type { Told } from "./alone/runner.js";
import { whyEquivalent } from "./equivalent.js";
import { record, today } from "./summary.js";

const words = process.argv.slice(2);
/** Which sample; tests that were written for one are judged by another. */
const seed = words.find((word) => word.startsWith("--seed="))?.slice(7) ?? "";
const longest = Number(process.env.MUTANTS_WAIT ?? 30) * 1000;
const runner = fileURLToPath(new URL("./alone/runner.ts", import.meta.url));

interface Result {
  readonly mutant: Mutant;
  readonly outcome: "killed" | "survived" | "no test" | "no end" | "does not compile";
  readonly by?: string;
}

/** FNV-1a of a text, so that the same share is taken each time. */
const hash = (text: string): number => {
  let sum = 2166136261;
  for (let n = 0; n < text.length; n += 1) sum = Math.imul(sum ^ text.charCodeAt(n), 16777619) >>> 0;
  return sum;
};

/** Runs some mutants in a process of their own, until the end or until one does not end. */
const round = (
  folder: string,
  program: string,
  all: readonly Mutant[],
  todo: readonly Mutant[],
  /** What is known so far, for one who stops the run. */
  running: Result[],
): Promise<readonly Result[]> =>
  new Promise((resolve) => {
    const path = join(folder, "program.json");
    writeFileSync(path, JSON.stringify({ program, all, mutants: todo }));
    const child: ChildProcess = fork(runner, [path], {
      execArgv: [...process.execArgv, "--max-old-space-size=1500"],
    });
    const results: Result[] = [];
    let at: Mutant | undefined;
    let timer: NodeJS.Timeout;
    const beat = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => child.kill("SIGKILL"), longest);
    };
    beat();
    child.on("message", (told: Told) => {
      beat();
      if (told.type === "ready") {
        console.error(`  ${told.tests} tests in ${Math.round(told.ms)} ms`);
        for (const name of told.unfit) console.error(`  cannot be run here: ${name}`);
      }
      if (told.type === "start") at = todo.find(({ id }) => id === told.id);
      if (told.type === "done" && at !== undefined) {
        const by = told.by === undefined ? {} : { by: told.by };
        results.push({ mutant: at, outcome: told.outcome, ...by });
        running.push(...results.slice(-1));
        at = undefined;
        if (results.length % 100 === 0) console.error(`  ${results.length} of ${todo.length}`);
      }
    });
    child.on("exit", () => {
      clearTimeout(timer);
      if (at !== undefined) results.push({ mutant: at, outcome: "no end" });
      resolve(results);
    });
  });

const left = ({ outcome }: Result): boolean => outcome === "survived" || outcome === "no test";
const same = ({ mutant: one }: Result, other: Mutant): boolean =>
  one.file === other.file && one.at === other.at && one.was === other.was && one.is === other.is;

/** What a former run noticed, of what stands where it stood. */
const noticedBefore = (path: string, mutants: readonly Mutant[]): readonly Result[] => {
  const before = existsSync(path) ? (JSON.parse(readFileSync(path, "utf8")) as readonly Result[]) : [];
  return mutants.flatMap((mutant) => {
    const result = before.find((one) => same(one, mutant));
    return result === undefined || left(result) ? [] : [{ ...result, mutant }];
  });
};

let refuses: ((mutant: Mutant) => boolean) | undefined;

const tryRoom = async (
  room: string,
  only: string,
  about: number,
  path: string,
): Promise<{ readonly all: number; readonly results: readonly Result[] }> => {
  const { program, mutants } = await programOfRoom(room, only);
  const oneOf = Math.max(1, Math.round(mutants.length / about));
  let todo = mutants.filter(
    ({ file, within, was, is, line }) =>
      hash(`${seed} ${file} ${within} ${was} ${is} ${oneOf > 1 ? line : ""}`) % oneOf === 0,
  );
  const results: Result[] = again ? [...noticedBefore(path, todo)] : [];
  const done = new Set(results.map(({ mutant }) => mutant.id));
  todo = todo.filter(({ id }) => !done.has(id));
  console.error(`${room}/${only}: ${mutants.length} mutants, ${todo.length} tried`);
  const folder = mkdtempSync(join(tmpdir(), "mutants-"));
  const running: Result[] = [];
  const keep = (): void => {
    if (path !== "") writeFileSync(path, JSON.stringify([...results, ...running], null, 1));
  };
  const stopped = (): void => {
    keep();
    process.exit(1);
  };
  process.once("SIGTERM", stopped);
  while (todo.length > 0) {
    const some = await round(folder, program, mutants, todo, running);
    if (some.length === 0) throw new Error(`the tests of ${room} cannot be loaded`);
    results.push(...some);
    running.length = 0;
    const seen = new Set(some.map(({ mutant }) => mutant.id));
    todo = todo.filter(({ id }) => !seen.has(id));
  }
  process.off("SIGTERM", stopped);
  rmSync(folder, { recursive: true });
  const judged = results.map((result): Result => {
    if (!left(result)) return result;
    refuses ??= compilerOf();
    return refuses(result.mutant) ? { ...result, outcome: "does not compile" } : result;
  });
  return { all: mutants.length, results: judged };
};

const again = words.includes("--again");
const about = Number(words.find((word) => word.startsWith("--about="))?.slice(8) ?? Number.POSITIVE_INFINITY);
const asked = words.filter((word) => !word.startsWith("--"));
const out = process.env.SURVIVORS_OUT;
if (out) mkdirSync(out, { recursive: true });
for (const word of asked.length > 0 ? asked : rooms()) {
  const [room = "", ...rest] = word.split("/");
  const start = Date.now();
  const path = out ? join(out, `${word.replaceAll("/", "-")}.json`) : "";
  const { all, results } = await tryRoom(room, rest.join("/"), about, path);
  const count = (outcome: Result["outcome"]): number =>
    results.filter((one) => one.outcome === outcome).length;
  const killed = count("killed") + count("no end") + count("does not compile");
  const unnoticed = results.filter(left);
  const listed = unnoticed.filter(({ mutant }) => whyEquivalent(mutant) !== undefined).length;
  console.log(
    `${word}: ${results.length} mutants, ${killed} noticed (${((100 * killed) / results.length).toFixed(1)} %), ${listed} listed, ${count("survived")} not, ${count("no test")} in lines that no test runs, ${Math.round((Date.now() - start) / 1000)} s`,
  );
  if (words.includes("--record") && rest.length === 0)
    record("behavior", room, {
      mutants: all,
      tried: results.length,
      noticed: killed,
      listed,
      made: today(),
    });
  if (out) writeFileSync(path, JSON.stringify(results, null, 1));
  else
    for (const { mutant, outcome } of unnoticed)
      if (whyEquivalent(mutant) === undefined)
        console.log(
          `  ${mutant.file}:${mutant.line} ${mutant.within} [${mutant.kind}] ${mutant.was} -> ${mutant.is} (${outcome})`,
        );
}
