// A room with all its mutants in it, each behind a switch, and its tests, in one program.
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { build } from "esbuild";
import ts from "typescript";
import { filesBelow, root } from "../../house/sources.js";
import { entryOf } from "./entry.js";

/** One mutant: what stands where, in which function, and what is put in its place. */
export interface Mutant {
  readonly id: string;
  readonly file: string;
  readonly line: number;
  /** Where it starts in the text of the file. */
  readonly at: number;
  /** The names of the functions around it, from outside. */
  readonly within: string;
  /** The kind, as the mutator calls it. */
  readonly kind: string;
  readonly was: string;
  readonly is: string;
  /** Whether its room keeps what it has made once, so that a second run does not make it again. */
  readonly keeps: boolean;
}

const quiet = (): void => {};
const logger = {
  isDebugEnabled: () => false,
  isTraceEnabled: () => false,
  isInfoEnabled: () => false,
  isWarnEnabled: () => false,
  isErrorEnabled: () => false,
  isFatalEnabled: () => false,
  trace: quiet,
  debug: quiet,
  info: quiet,
  warn: quiet,
  error: quiet,
  fatal: quiet,
};

const keeping = /^(?:export )?(?:let |const .*new (?:Weak)?(?:Map|Set)\b)/m;

const namesAround = (source: ts.SourceFile, start: number): string => {
  const names: string[] = [];
  const visit = (node: ts.Node): void => {
    if (start < node.getStart(source) || start >= node.end) return;
    const named = node as ts.Node & { readonly name?: ts.Node };
    if (
      (ts.isFunctionDeclaration(node) ||
        ts.isMethodDeclaration(node) ||
        ts.isClassDeclaration(node) ||
        ts.isVariableDeclaration(node)) &&
      named.name !== undefined &&
      ts.isIdentifier(named.name)
    )
      names.push(named.name.text);
    ts.forEachChild(node, visit);
  };
  ts.forEachChild(source, visit);
  return names.slice(0, 2).join(".");
};

/** Instruments a room; `only` keeps the files whose name has it. */
const instrumented = async (
  room: string,
  only: string,
): Promise<{ readonly texts: ReadonlyMap<string, string>; readonly mutants: readonly Mutant[] }> => {
  const paths = filesBelow(`src/${room}`).filter(
    (path) => path.endsWith(".ts") && !/\/(index|house)\.ts$/.test(path) && path.includes(only),
  );
  const keeps = filesBelow(`src/${room}`).some((path) =>
    keeping.test(readFileSync(join(root, path), "utf8")),
  );
  const contents = new Map(paths.map((path) => [path, readFileSync(join(root, path), "utf8")]));
  const { files, mutants } = await new Instrumenter(logger).instrument(
    paths.map((name) => ({ name, mutate: true, content: contents.get(name) ?? "" })),
    { plugins: null, excludedMutations: [], ignorers: [] },
  );
  const sources = new Map(
    paths.map((path) => [
      path,
      ts.createSourceFile(path, contents.get(path) ?? "", ts.ScriptTarget.ES2022, true),
    ]),
  );
  return {
    texts: new Map(files.map(({ name, content }) => [join(root, name), content])),
    mutants: mutants.map(({ id, fileName, location, mutatorName, replacement }) => {
      const source = sources.get(fileName) as ts.SourceFile;
      const at = ({ line, column }: { line: number; column: number }): number =>
        source.getPositionOfLineAndCharacter(line, column);
      return {
        id,
        file: fileName,
        line: location.start.line + 1,
        at: at(location.start),
        within: namesAround(source, at(location.start)),
        kind: mutatorName,
        was: source.text.slice(at(location.start), at(location.end)),
        is: replacement ?? "",
        keeps,
      };
    }),
  };
};

/** The program of a room, and its mutants. */
export const programOfRoom = async (
  room: string,
  only = "",
): Promise<{ readonly program: string; readonly mutants: readonly Mutant[] }> => {
  const { texts, mutants } = await instrumented(room, only);
  const { outputFiles } = await build({
    stdin: { contents: entryOf(room), resolveDir: root, sourcefile: "entry.ts", loader: "ts" },
    bundle: true,
    write: false,
    format: "cjs",
    platform: "node",
    target: "es2022",
    logLevel: "error",
    plugins: [
      {
        name: "mutants",
        setup: ({ onLoad, onResolve }) => {
          onResolve({ filter: /^[^.]/ }, ({ path, kind }) => {
            if (kind === "entry-point") return undefined;
            if (path === "vitest") return { path: join(root, "tests/mutants/alone/vitest.ts") };
            if (path === "ratewright") return { path: join(root, "src/index.ts") };
            if (path.startsWith("ratewright/"))
              return { path: join(root, "src", path.slice(11), "index.ts") };
            return { path, external: true };
          });
          onLoad({ filter: /\.ts$/ }, ({ path }) => {
            const text = texts.get(path) ?? readFileSync(path, "utf8");
            const contents = text.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));
            return { contents, loader: "ts", resolveDir: dirname(path) };
          });
        },
      },
    ],
  });
  return { program: outputFiles[0]?.text ?? "", mutants };
};
