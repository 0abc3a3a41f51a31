// The measurements as one program, which run.ts bundles and starts: it writes what they came to, as JSON, to the file
// that it is given.
import { readFileSync, writeFileSync } from "node:fs";
import { cpus, totalmem } from "node:os";
import { measuredKernels, measuredMemory } from "./kernels.js";
import { measuredOpening } from "./opening.js";
import { peers } from "./peer-list.js";
import type { Results } from "./rows.js";
import { measuredTasks } from "./tasks.js";
import { measuredGrowth, measuredJobs } from "./work.js";

const [, , into = "", asked = "21"] = process.argv;
const rounds = Number(asked);
const told = <T>(name: string, results: T): T => {
  console.error(`  measured: ${name}`);
  return results;
};
const versionOf = (name: string): string =>
  (
    JSON.parse(
      readFileSync(new URL(`../../../node_modules/${name}/package.json`, import.meta.url), "utf8"),
    ) as {
      version: string;
    }
  ).version;

const results: Results = {
  machine: {
    cpu: cpus()[0]?.model ?? "",
    cores: cpus().length,
    memoryGiB: Math.round(totalmem() / 2 ** 30),
  },
  system: `${process.platform} ${process.arch}`,
  node: process.version,
  v8: process.versions.v8 ?? "",
  versions: Object.fromEntries(peers.map(({ name }) => [name, versionOf(name)])),
  tasks: told("tasks", measuredTasks(rounds)),
  kernels: told("kernels", measuredKernels(rounds)),
  memory: told("memory", measuredMemory()),
  jobs: told("jobs", measuredJobs(rounds)),
  growth: told("growth", measuredGrowth(rounds)),
  opening: told("opening", measuredOpening(Math.ceil(rounds / 2))),
};

/** Three digits that count: more would only be noise. */
const short = (_: string, value: unknown): unknown =>
  typeof value === "number" && !Number.isInteger(value) ? Number(value.toPrecision(3)) : value;
writeFileSync(into, `${JSON.stringify(results, short, 2)}\n`);
