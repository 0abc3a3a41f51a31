import { existsSync, readdirSync } from "node:fs";
import { defineConfig, type Options } from "tsup";

// The program goes out file by file, so that a bundler takes what is used. The types go out as one file for
// each room: a compiler reads twelve files instead of some 350, in half the time.

const program = (format: "esm" | "cjs"): Options => ({
  entry: ["src/**/*.ts"],
  format: [format],
  outDir: `dist/${format}`,
  legacyOutput: format === "cjs",
  target: "es2020",
  bundle: false,
  splitting: false,
  dts: false,
  silent: true,
});

const rooms = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((path) => path.replaceAll("\\", "/"))
  .filter((path) => existsSync(`src/${path}/index.ts`));

/** Rolls up what `tsc` wrote to dist/types; a room refers to another only through its index. */
const types = (format: "esm" | "cjs"): Options => ({
  entry: Object.fromEntries(
    ["", ...rooms.map((room) => `${room}/`)].map((room) => [`${room}index`, `dist/types/${room}index.d.ts`]),
  ),
  format: ["esm"],
  outDir: `dist/${format}`,
  // tsup sets an option that TypeScript 6 calls deprecated
  dts: { only: true, compilerOptions: { ignoreDeprecations: "6.0" } },
  tsconfig: "src/tsconfig.json",
  external: [/^\.{1,2}\/(\.\.\/)*([a-z]+\/)?index\.js$/],
  silent: true,
});

export default defineConfig([program("esm"), program("cjs"), types("esm"), types("cjs")]);
