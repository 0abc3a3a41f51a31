import { existsSync, readdirSync, readFileSync } from "node:fs";
import { defineConfig, type Options } from "tsup";
import ts from "typescript";

// Whoever imports the root or a room loads few files: what several of them share lies in chunks. Whoever bundles takes
// what is used, for nothing runs as a file loads. The types go out as one file for each room, rolled up from what
// `tsc` wrote: they do not depend on the bundler.

/** The folders with an entry of their own: the root, the rooms, and the paths that load an optional package. */
const doors = ["", ...readdirSync("src", { recursive: true, encoding: "utf8" })]
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => existsSync(`src/${path}/index.ts`))
  .map((path) => (path === "" ? "index" : `${path}/index`));

/** What a bundler has to keep, for it might do something: calls, and what could reach a getter or a conversion. */
const mayAct = (node: ts.Node): boolean =>
  ts.isCallExpression(node) ||
  ts.isNewExpression(node) ||
  ts.isPropertyAccessExpression(node) ||
  ts.isElementAccessExpression(node) ||
  ts.isSpreadAssignment(node) ||
  ts.isSpreadElement(node) ||
  ts.isTemplateExpression(node) ||
  ts.isBinaryExpression(node);
const acts = (node: ts.Node): boolean =>
  !ts.isFunctionLike(node) &&
  (mayAct(node) || (ts.forEachChild(node, (part) => acts(part) || undefined) ?? false));

/** Whether a table is one call that its author has marked, with nothing inside that might do something. */
const isMarked = (made: ts.Node, text: string): boolean =>
  (ts.isCallExpression(made) || ts.isNewExpression(made)) &&
  text.slice(made.pos, made.end).trimStart().startsWith("/* @__PURE__ */") &&
  !made.arguments?.some(acts);

/** A file in which every table that is made, not only written down, is marked as free of effects, so that a bundler can drop it. */
const marked = (path: string): string => {
  const text = readFileSync(path, "utf8");
  const tables = ts
    .createSourceFile(path, text, ts.ScriptTarget.ES2022)
    .statements.filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => declarationList.declarations)
    .flatMap(({ initializer }) =>
      initializer !== undefined && acts(initializer) && !isMarked(initializer, text) ? [initializer] : [],
    );
  let out = "";
  let done = 0;
  for (const { pos, end } of tables) {
    out += `${text.slice(done, pos)} /* @__PURE__ */ (() => (${text.slice(pos, end)}))()`;
    done = end;
  }
  return out + text.slice(done);
};

const tablesAreDropped: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "tables are dropped",
  setup(build) {
    build.onLoad({ filter: /[\\/]src[\\/].*\.ts$/ }, ({ path }) => ({
      contents: marked(path),
      loader: "ts",
    }));
  },
};

/** The program as ES modules; `.ci/commonjs.ts` makes the other half of them. */
const program: Options = {
  entry: Object.fromEntries(doors.map((door) => [door, `src/${door}.ts`])),
  format: ["esm"],
  outDir: "dist/esm",
  target: "es2020",
  bundle: true,
  splitting: true,
  esbuildPlugins: [tablesAreDropped],
  dts: false,
  silent: true,
};

/** Rolls up what `tsc` wrote to dist/types; a room refers to another only through its index. */
const types: Options = {
  entry: Object.fromEntries(doors.map((door) => [door, `dist/types/${door}.d.ts`])),
  format: ["esm"],
  outDir: "dist/cjs",
  // tsup sets an option that TypeScript 6 calls deprecated
  dts: { only: true, compilerOptions: { ignoreDeprecations: "6.0" } },
  tsconfig: "src/tsconfig.json",
  external: [/^\.{1,2}\/(\.\.\/)*([a-z]+\/)?index\.js$/],
  silent: true,
};

export default defineConfig([program, types]);
