import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { hostFor } from "../house/program.js";
import { exists, filesBelow, read, root, sourceFiles } from "../house/sources.js";
import { blocksOfPage, blocksOfSource, placeIn, programOf } from "./blocks.js";

const pages = ["README.md", ...filesBelow("docs").filter((path) => /^docs\/(cases\/)?[^/]+\.md$/.test(path))];
const blocks = [
  ...sourceFiles().flatMap((path) => blocksOfSource(path, read(path))),
  ...pages.filter(exists).flatMap((path) => blocksOfPage(path, read(path))),
];

/** What must and must not compile by itself. */
const typeTests = filesBelow("tests").filter((path) => path.endsWith(".test-d.ts"));

/**
 * Compiles every example as a file of its own that is nowhere on the disk, and the type tests with them: the compiler goes
 * through the library once for both.
 */
const faults = (): { readonly examples: readonly string[]; readonly typeTests: readonly string[] } => {
  const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, root);
  const files = new Map(
    blocks.map((block, at) => [
      join(root, `tests/examples/example-${at}.mts`).replaceAll("\\", "/"),
      { block, text: `${programOf(block)}\nexport {};\n` },
    ]),
  );
  const host = hostFor(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (name) => files.has(name) || fileExists(name);
  host.readFile = (name) => files.get(name)?.text ?? readFile(name);
  host.getSourceFile = (name, version, ...rest) => {
    const text = files.get(name)?.text;
    return text === undefined
      ? getSourceFile(name, version, ...rest)
      : ts.createSourceFile(name, text, version);
  };
  const named = new Map(typeTests.map((path) => [join(root, path).replaceAll("\\", "/"), path]));
  const program = ts.createProgram([...files.keys(), ...named.keys()], options, host);
  const faultsOf = (name: string, place: (line: number) => string): string[] => {
    const source = program.getSourceFile(name);
    if (source === undefined) return [`${name} is not there`];
    const found = [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)];
    return found.map(({ start, messageText }) => {
      const line = source.getLineAndCharacterOfPosition(start ?? 0).line;
      return `${place(line)}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
    });
  };
  return {
    examples: [...files].flatMap(([name, { block }]) => faultsOf(name, (line) => placeIn(block, line))),
    typeTests: [...named].flatMap(([name, path]) => faultsOf(name, (line) => `${path}:${line + 1}`)),
  };
};

describe("what the compiler says", () => {
  const found = faults();

  it("the examples of the documentation compile, and fail to compile where they say so", () => {
    expect(found.examples).toEqual([]);
  });
  it("the type tests compile, and fail to compile where they say so", () => {
    expect(typeTests.length).toBeGreaterThan(10);
    expect(found.typeTests).toEqual([]);
  });
});
