// The library computes and warns. Nothing that it says or names may claim that an application is
// allowed, permitted, safe, legal, compatible or ok.
import ts from "typescript";
import { describe, expect, it, vi } from "vitest";
import { exists, filesBelow, read, sourceFiles, urlOf } from "./sources.js";
import { wordExceptions } from "./words-exceptions.js";

const guarded = /^(allowed|permitted|permissible|safe|safely|legal|legally|lawful|compatible|ok|okay)$/i;

/** The words of a text or of a name: `isTankSafe` has three. */
const words = (text: string): string[] =>
  text
    .replace(/([a-z\d])([A-Z])/g, "$1 $2")
    .replace(/([A-Z]+)([A-Z][a-z])/g, "$1 $2")
    .split(/[^A-Za-z]+/);

const claims = (text: string): boolean => words(text).some((word) => guarded.test(word));

interface Saying {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

/** Every string, every piece of a template and every declared name of a file. */
const sayings = (file: string, code: string): Saying[] => {
  const languageVersion = ts.ScriptTarget.ES2022;
  const jsDocParsingMode = ts.JSDocParsingMode.ParseNone;
  const source = ts.createSourceFile(file, code, { languageVersion, jsDocParsingMode }, true);
  const found: Saying[] = [];
  const add = (node: ts.Node, text: string): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    found.push({ file, line, text });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
      const named = ts.isExportDeclaration(node) ? node.exportClause : undefined;
      if (named !== undefined) ts.forEachChild(named, visit);
      return;
    }
    if (ts.isStringLiteralLike(node) && /^https:\/\/\S+$/.test(node.text)) return; // an address is not our word
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      add(node, node.text);
    } else if (ts.isIdentifier(node) && declares(node)) {
      add(node, node.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

/** Whether an identifier is where a name is given: a declaration, a field, a key, an exported name. */
const declares = (node: ts.Identifier): boolean => {
  const parent = node.parent as ts.Node & { readonly name?: ts.Node };
  return parent.name === node && !ts.isPropertyAccessExpression(parent);
};

const excepted = ({ file, text }: Saying): boolean =>
  wordExceptions.some((exception) => exception.file === file && exception.text === text);

describe("the words of the library", () => {
  const files = [...sourceFiles(), ...filesBelow("examples").filter((path) => path.endsWith(".ts"))];
  const claiming = files.flatMap((file) => sayings(file, read(file))).filter(({ text }) => claims(text));

  it("make no claim about an application, in a text or in a name", () => {
    expect(claiming.filter((saying) => !excepted(saying))).toEqual([]);
  });

  it("need every exception that is listed", () => {
    const unused = wordExceptions.filter(
      ({ file, text }) => !claiming.some((saying) => saying.file === file && saying.text === text),
    );
    expect(unused).toEqual([]);
  });

  it("are found where they stand", () => {
    const found = (code: string): string[] =>
      sayings("a.ts", code)
        .map(({ text }) => text)
        .filter(claims);
    expect(found('const a = "This mix is safe.";')).toEqual(["This mix is safe."]);
    expect(found("const a = `It is $" + "{b} to apply, and legal`;")).toEqual([" to apply, and legal"]);
    expect(found("export interface A { readonly isAllowed: boolean }")).toEqual(["isAllowed"]);
    expect(found("const a = { ok: true };")).toEqual(["ok"]);
    expect(found('const a = { url: "https://example.org/legal-content/" };')).toEqual([]);
    expect(found("export { check as tankCompatible };")).toEqual(["tankCompatible"]);
    expect(
      found('import { safe } from "./ok.js"; Number.isSafeInteger(1); const incompatible = "unsafe";'),
    ).toEqual([]);
  });

  const demos = ["park-visit", "park-meadow", "park-week"].map((name) => `examples/${name}/run.ts`);
  it.each(demos.filter(exists))("stay clear of it in what %s prints", async (demo) => {
    // Run here and not in a process of its own: the sources are loaded already.
    const print = vi.spyOn(process.stdout, "write").mockReturnValue(true);
    const log = vi.spyOn(console, "log").mockReturnValue(undefined);
    try {
      await import(/* @vite-ignore */ urlOf(demo));
      const printed = [...print.mock.calls, ...log.mock.calls].map(([text]) => String(text)).join("\n");
      expect(printed.length).toBeGreaterThan(500);
      expect(printed.split("\n").filter(claims)).toEqual([]);
    } finally {
      print.mockRestore();
      log.mockRestore();
    }
  });
});
