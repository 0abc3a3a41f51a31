import process from "node:process";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { compiledSources } from "./tests/compiled-sources.js";
import { LongestFirst } from "./tests/longest-first.js";

const src = fileURLToPath(new URL("./src", import.meta.url));

const runsOnce = process.argv.includes("run") && !process.argv.includes("--typecheck.only");
/** What asks the compiler: a part of `npm run typecheck`, for together they take as long as the tests of five rooms. */
const types = [
  "tests/examples/doc-example-types.test.ts",
  "tests/house/api-report.test.ts",
  "tests/house/records.test.ts",
];
const tests: Readonly<Record<string, readonly string[]>> = {
  // These need Chromium and the site: npm run site:test.
  browser: ["tests/browser/*.browser.ts"],
  types,
};
const counts = process.argv.some((word) => word.startsWith("--coverage"));

export default defineConfig(({ mode }) => ({
  // A run with coverage counts lines of the sources themselves, and one that watches looks for what changes in them.
  plugins: runsOnce && !counts && mode !== "types" ? [compiledSources()] : [],
  resolve: {
    // The tests read the sources, so they need no build; tests/consumers/ looks at what is packed.
    alias: [
      { find: /^ratewright$/, replacement: `${src}/index.ts` },
      { find: /^ratewright\/(.+)$/, replacement: `${src}/$1/index.ts` },
    ],
  },
  test: {
    include: [...(tests[mode] ?? ["tests/**/*.test.ts"])],
    exclude: ["node_modules/**", ...(mode === "types" ? [] : types)],
    globalSetup: mode === "browser" ? ["tests/browser/write-site.ts"] : [],
    setupFiles: ["tests/properties.ts"],
    // The library has no state that one test could leave to another, so its files are loaded once and not for each test file.
    isolate: false,
    // Every core works; one of them is not kept back for the program that reports.
    maxWorkers: "100%",
    sequence: { sequencer: LongestFirst },
    // The mode `built` runs the matrix of tests/walls/ on what is built, with its CommonJS half as the second copy.
    env: mode === "hunt" ? { PROPERTY_HUNT: "200" } : mode === "built" ? { WALLS_PACKAGE: "dist" } : {},
    // The longest takes a second or two; a slow machine takes its time, and no test judges by it.
    testTimeout: mode === "hunt" ? 600_000 : 300_000,
    hookTimeout: 300_000,
    // `npm run typecheck` compiles these; here they are told one by one, where they are asked for: `npm run test:types`.
    typecheck: {
      enabled: process.argv.includes("--typecheck.only"),
      include: ["tests/**/*.test-d.ts"],
      tsconfig: "tests/tsconfig.types.json",
    },
    coverage: { include: ["src/**/*.ts"] },
  },
}));
