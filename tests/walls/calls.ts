// Valid calls of every exported function, listened to while the examples of the documentation run.
import { rmSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { type Block, blocksOfPage, blocksOfSource, programOf, runBlock } from "../examples/blocks.js";
import { filesBelow, read, rooms, root, sourceFiles, subpaths, urlOf } from "../house/sources.js";

/** A function as a caller sees it who gives it anything. */
export type AnyFunction = (...given: readonly unknown[]) => unknown;

/** The modules by the name under which they are imported. */
export type Modules = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** The folder of what is built, `dist`, where the matrix is to run on that and not on the sources. */
const built = process.env.WALLS_PACKAGE;

/** All modules of the package. */
export const loadModules = async (): Promise<Modules> => {
  const modules: Record<string, Readonly<Record<string, unknown>>> = {};
  for (const part of ["", ...rooms(), ...subpaths()]) {
    const folder = part === "" ? "" : `${part}/`;
    const url =
      built === undefined
        ? urlOf(`src/${folder}index.ts`)
        : pathToFileURL(join(root, built, "esm", folder, "index.js")).href;
    modules[part === "" ? "ratewright" : `ratewright/${part}`] = await import(/* @vite-ignore */ url);
  }
  return modules;
};

/** The maker of quantities of a second copy: the sources compiled once more, or the CommonJS half of what is built. */
export const loadSecondCopy = async (): Promise<AnyFunction> => {
  const { quantity } =
    built === undefined
      ? await compiledOnceMore()
      : (createRequire(import.meta.url)(`../../${built}/cjs/index.js`) as Amounts);
  return quantity;
};

interface Amounts {
  readonly quantity: AnyFunction;
}

const compiledOnceMore = async (): Promise<Amounts> => {
  // Beside the packages, where nothing transforms it
  const outfile = join(root, `node_modules/.second-copy-${process.pid}.mjs`);
  await build({ entryPoints: [join(root, "src/quantity/index.ts")], bundle: true, format: "esm", outfile });
  try {
    return (await import(pathToFileURL(outfile).href)) as Amounts;
  } finally {
    rmSync(outfile, { force: true });
  }
};

const isClass = (value: AnyFunction): boolean => /^class[\s{]/.test(Function.prototype.toString.call(value));

/** What the modules export, by name: functions, and objects. Classes are apart, see {@link methodsOf}. */
export const exportsOf = (
  modules: Modules,
): {
  readonly functions: ReadonlyMap<string, AnyFunction>;
  readonly objects: ReadonlyMap<string, object>;
} => {
  const functions = new Map<string, AnyFunction>();
  const objects = new Map<string, object>();
  for (const module of Object.values(modules)) {
    for (const [name, value] of Object.entries(module)) {
      if (typeof value === "function") {
        if (!isClass(value as AnyFunction)) functions.set(name, value as AnyFunction);
      } else if (typeof value === "object" && value !== null) objects.set(name, value);
    }
  }
  return { functions, objects };
};

/** The programs of the examples; where one goes on from another, only the one that goes furthest. */
const blocks = (from: (file: string) => boolean): Block[] => {
  const all = [
    ...sourceFiles().flatMap((path) => blocksOfSource(path, read(path))),
    ...filesBelow("docs")
      .filter((path) => /^docs\/[^/]+\.md$/.test(path))
      .flatMap((path) => blocksOfPage(path, read(path))),
  ].filter(({ run, file }) => run && from(file));
  return all.filter((block, n) => {
    const next = all[n + 1];
    return next === undefined || next.file !== block.file || !next.before.startsWith(programOf(block));
  });
};

const lengthOf = (given: readonly unknown[]): string => {
  try {
    return JSON.stringify(given, (_, value: unknown) =>
      typeof value === "function" || typeof value === "bigint" ? String(value) : value,
    );
  } catch {
    return "";
  }
};

/** Calls that work, by function; those with most in them first. `from` says which files' examples are listened to. */
export const callsOf = async (
  modules: Modules,
  from: (file: string) => boolean = () => true,
): Promise<ReadonlyMap<string, readonly (readonly unknown[])[]>> => {
  const heard = new Map<string, Map<string, readonly unknown[]>>();
  const listening = new Map<AnyFunction, AnyFunction>();
  for (const [name, inner] of exportsOf(modules).functions) {
    const calls = new Map<string, readonly unknown[]>();
    heard.set(name, calls);
    listening.set(inner, (...given) => {
      const result = inner(...given);
      calls.set(lengthOf(given), given);
      return result;
    });
  }
  const heardModules = Object.fromEntries(
    Object.entries(modules).map(([path, module]) => [
      path,
      Object.fromEntries(
        Object.entries(module).map(([name, value]) => [name, listening.get(value as AnyFunction) ?? value]),
      ),
    ]),
  );
  // An example that fails is the business of tests/examples/; the calls before it count.
  for (const block of blocks(from)) await runBlock(block, heardModules).catch(() => undefined);
  return new Map(
    [...heard].map(([name, calls]) => [
      name,
      [...calls]
        .sort((a, b) => b[0].length - a[0].length || (a[0] < b[0] ? -1 : 1))
        .map(([, given]) => given),
    ]),
  );
};

let all: Promise<ReadonlyMap<string, readonly (readonly unknown[])[]>> | undefined;

/** The calls of every example: once for all tests that a worker runs. Who spoils one takes a copy. */
export const allCalls = (): NonNullable<typeof all> => {
  all ??= loadModules().then((modules) => callsOf(modules));
  return all;
};
