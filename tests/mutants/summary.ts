// What the runs of the mutants came to, kept as data: `--record` writes it, docs/mutants.md is drawn from it.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../house/sources.js";

/** Changes of programs that were tried in a room. */
export interface BehaviorResult {
  /** All that the mutators can make. */
  readonly mutants: number;
  readonly tried: number;
  readonly noticed: number;
  /** Not noticed, and no other program, with the reason in tests/mutants/equivalent-list.ts; left out before there was a list. */
  readonly listed?: number;
  /** The day of the run. */
  readonly made: string;
}

/** Numbers that were changed by one part in ten thousand. */
export interface ConstantsResult {
  readonly numbers: number;
  readonly noticed: number;
  /** Not noticed, with a reason in tests/mutants/listed.ts. */
  readonly listed: number;
  readonly made: string;
}

/** By room. */
export interface Summary {
  readonly behavior: Readonly<Record<string, BehaviorResult>>;
  readonly constants: Readonly<Record<string, ConstantsResult>>;
}

const path = join(root, "tests/mutants/summary.json");

/** What is recorded. */
export const summary = (): Summary => JSON.parse(readFileSync(path, "utf8")) as Summary;

/** The day, for a record. */
export const today = (): string => new Date().toISOString().slice(0, 10);

/** Records a room. */
export const record = <K extends keyof Summary>(part: K, room: string, result: Summary[K][string]): void => {
  const before = summary();
  const rooms = Object.entries({ ...before[part], [room]: result }).sort(([a], [b]) => (a < b ? -1 : 1));
  writeFileSync(path, `${JSON.stringify({ ...before, [part]: Object.fromEntries(rooms) }, null, 2)}\n`);
};
