// The published checks once more, with every call of an exported function written down: what went in, what came out.
import { rmSync } from "node:fs";
import { relative, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import { root, urlOf } from "../../house/sources.js";
import type { PublishedCheck } from "../check.js";

/** A call of an exported function. */
export interface RecordedCall {
  readonly name: string;
  readonly args: readonly unknown[];
  readonly result: unknown;
}

/** A published check, its figures as computed, and the calls that they came from. */
export interface RecordedCheck {
  readonly check: PublishedCheck;
  readonly computed: readonly number[];
  readonly calls: readonly RecordedCall[];
}

interface Recording {
  readonly allChecks: Readonly<Record<string, readonly PublishedCheck[]>>;
  readonly calls: RecordedCall[];
}

const here = fileURLToPath(new URL("..", import.meta.url));

/** Every export of a path; the functions write down each call that is made from outside. */
const recorder = (path: string, names: readonly string[]): string => `
import * as library from ${JSON.stringify(path)};
import { recorded } from "calls";
${names.map((name) => `export const ${name} = recorded("${name}", library.${name});`).join("\n")}
`;

const calls = `
export const calls = [];
export const recorded = (name, run) => {
  if (typeof run !== "function" || /^class\\b/.test(String(run))) return run;
  return (...args) => {
    const result = run(...args);
    calls.push({ name, args, result });
    return result;
  };
};
`;

/** The checks, with the doors of the library replaced by ones that write down who came in. */
const doors: Plugin = {
  name: "recorder",
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^calls$/ }, () => ({ path: "calls", namespace: "calls" }));
    onResolve({ filter: /\bsrc\/.*\bindex\.js$/ }, ({ path, resolveDir, namespace }) =>
      namespace === "file"
        ? { path: resolve(resolveDir, path.replace(/\.js$/, ".ts")), namespace: "recorder" }
        : undefined,
    );
    onLoad({ filter: /.*/, namespace: "calls" }, () => ({ contents: calls }));
    onLoad({ filter: /.*/, namespace: "recorder" }, async ({ path }) => ({
      contents: recorder(
        path,
        Object.keys((await import(/* @vite-ignore */ urlOf(relative(root, path)))) as object),
      ),
      resolveDir: here,
    }));
  },
};

const recording = async (): Promise<Recording> => {
  // Beside the packages that it loads, and out of sight of what transforms the tests.
  const file = fileURLToPath(new URL(`../../../node_modules/.recorded-${process.pid}.mjs`, import.meta.url));
  await build({
    stdin: {
      contents: `export { allChecks } from "./index.js"; export { calls } from "calls";`,
      resolveDir: here,
    },
    bundle: true,
    platform: "node",
    format: "esm",
    packages: "external",
    outfile: file,
    plugins: [doors],
  });
  try {
    return (await import(pathToFileURL(file).href)) as Recording;
  } finally {
    rmSync(file, { force: true });
  }
};

/** Every published check with the calls that it makes. */
export const recordedChecks = async (): Promise<readonly RecordedCheck[]> => {
  const { allChecks, calls } = await recording();
  return Object.values(allChecks)
    .flat()
    .map((check) => {
      calls.length = 0;
      const computed = check.compute();
      return { check, computed, calls: [...calls] };
    });
};
