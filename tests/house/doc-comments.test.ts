import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { withoutExample } from "./doc-comments-exceptions.js";
import { rooms, root, subpaths } from "./sources.js";

interface Exported {
  readonly name: string;
  readonly summary: string;
  readonly examples: readonly string[];
}

/** Every function that a room exports, with its doc comment. */
const exportedFunctions = (): Exported[] => {
  const config = ts.readConfigFile(join(root, "src/tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, join(root, "src"));
  const files = [...rooms(), ...subpaths()].map((room) => ({
    room,
    path: join(root, `src/${room}/index.ts`),
  }));
  const program = ts.createProgram(
    files.map(({ path }) => path),
    options,
  );
  const checker = program.getTypeChecker();
  return files.flatMap(({ room, path }) => {
    const source = program.getSourceFile(path);
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    if (module === undefined) return [];
    return checker.getExportsOfModule(module).flatMap((exported) => {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      const declaration = symbol.valueDeclaration;
      if (declaration === undefined) return [];
      const type = checker.getTypeOfSymbolAtLocation(symbol, declaration);
      if (type.getCallSignatures().length === 0) return [];
      const tags = symbol.getJsDocTags(checker).filter(({ name }) => name === "example");
      return [
        {
          name: `${room}/${exported.name}`,
          summary: ts.displayPartsToString(symbol.getDocumentationComment(checker)),
          examples: tags.map(({ text }) => ts.displayPartsToString(text)),
        },
      ];
    });
  });
};

describe("every exported function", { timeout: 60_000 }, () => {
  const functions = exportedFunctions();
  const names = (list: readonly Exported[]): string[] => list.map(({ name }) => name);

  it("is found", () => {
    expect(functions.length).toBeGreaterThan(0);
  });

  it("says what it does", () => {
    expect(names(functions.filter(({ summary }) => summary.trim() === ""))).toEqual([]);
  });

  it("has a worked example with a checked result", () => {
    const without = functions.filter(({ examples }) => !examples.some((text) => /\/\/ ?=>/.test(text)));
    expect(names(without).filter((name) => withoutExample[name] === undefined)).toEqual([]);
  });

  it("needs its exception, where it has one", () => {
    const without = functions.filter(({ examples }) => examples.length === 0);
    expect(Object.keys(withoutExample).filter((name) => !names(without).includes(name))).toEqual([]);
  });
});
