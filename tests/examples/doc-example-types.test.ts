import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { exists, filesBelow, read, root, sourceFiles } from "../house/sources.js";
import { blocksOfPage, blocksOfSource, placeIn, programOf } from "./blocks.js";

const pages = ["README.md", ...filesBelow("docs").filter((path) => /^docs\/(cases\/)?[^/]+\.md$/.test(path))];
const blocks = [
  ...sourceFiles().flatMap((path) => blocksOfSource(path, read(path))),
  ...pages.filter(exists).flatMap((path) => blocksOfPage(path, read(path))),
];

/** Compiles every example as a file of its own that is nowhere on the disk. */
const faults = (): string[] => {
  const config = ts.readConfigFile(join(root, "tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, root);
  const files = new Map(
    blocks.map((block, at) => [
      join(root, `tests/examples/example-${at}.mts`).replaceAll("\\", "/"),
      { block, text: `${programOf(block)}\nexport {};\n` },
    ]),
  );
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (name) => files.has(name) || fileExists(name);
  host.readFile = (name) => files.get(name)?.text ?? readFile(name);
  host.getSourceFile = (name, version, ...rest) => {
    const text = files.get(name)?.text;
    return text === undefined
      ? getSourceFile(name, version, ...rest)
      : ts.createSourceFile(name, text, version);
  };
  const program = ts.createProgram([...files.keys()], options, host);
  return [...files].flatMap(([name, { block }]) => {
    const source = program.getSourceFile(name);
    const found = [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)];
    return found.map(({ start, messageText }) => {
      const line = source?.getLineAndCharacterOfPosition(start ?? 0).line ?? 0;
      return `${placeIn(block, line)}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`;
    });
  });
};

describe("the examples of the documentation", () => {
  it("compile, and fail to compile where they say so", { timeout: 600_000 }, () => {
    expect(faults()).toEqual([]);
  });
});
