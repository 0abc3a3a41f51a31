import { readFileSync } from "node:fs";
import { posix } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, test } from "vitest";

// What a bundler ships with `quantity` is what the value type imports. Reading, writing and exchange of
// text must not be among it, and may do nothing when they are loaded, or no bundler could drop them.
const folder = fileURLToPath(new URL("../../src/quantity/", import.meta.url));
const textFiles =
  "text/aliases text/unit-names-written text/expectation border/record border/read-exact border/words text/in-figures text/imperial text/plain-reading text/read-text text/clean-text text/kept-readings border/converted-numbers value/crossing text/format value/money unit/near-units text/number-text text/parse border/read border/schema substance/substance-names text/suggest text/ucum unit/unit-facts unit/unit-names text/unit-reading text/unit-segment unit/units-of".split(
    " ",
  );

const sourceOf = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, readFileSync(`${folder}${file}.ts`, "utf8"), ts.ScriptTarget.ES2022, true);

/** The files of the room that a file needs at run time. */
const importsOf = (file: string): readonly string[] =>
  sourceOf(file).statements.flatMap((statement) => {
    if (
      !ts.isImportDeclaration(statement) ||
      statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword
    ) {
      return [];
    }
    const bindings = statement.importClause?.namedBindings;
    if (
      bindings !== undefined &&
      ts.isNamedImports(bindings) &&
      bindings.elements.every((one) => one.isTypeOnly)
    ) {
      return [];
    }
    const specifier = (statement.moduleSpecifier as ts.StringLiteral).text;
    return [posix.join(posix.dirname(file), specifier).replace(/\.js$/, "")];
  });

/** What runs when a module is loaded: calls and `new` outside functions, unless marked pure. */
const topLevelCalls = (source: ts.SourceFile): readonly string[] => {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) return;
    if (ts.isCallExpression(node) || ts.isNewExpression(node)) {
      if (!/^\s*\/\* @__PURE__ \*\//.test(node.getFullText())) found.push(node.getText());
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

describe("quantity alone", () => {
  test("does not reach the files for text and exchange", () => {
    const reached = new Set(["value/quantity"]);
    for (const file of reached) for (const next of importsOf(file)) reached.add(next);
    expect(reached.has("unit/units")).toBe(true);
    expect(textFiles.filter((file) => reached.has(file))).toEqual([]);
  });

  test.each(textFiles)("%s does nothing when it is loaded", (file) => {
    expect(topLevelCalls(sourceOf(file))).toEqual([]);
  });

  test("such calls are found where they stand", () => {
    const source = ts.createSourceFile("a.ts", "const a = new Map(); const f = () => new Map();", 99, true);
    expect(topLevelCalls(source)).toEqual(["new Map()"]);
  });
});
