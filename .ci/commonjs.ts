// The CommonJS half of the package, from the ES module half, file by file: the same chunks, and local names for what
// they take from each other, so that a call costs no look-up. Functions are written out where the ES modules have
// arrows: V8 puts off reading a function until it is called, but reads an arrow inside a module at once, and half of the
// time to load was that. A bundler reads the ES modules, where arrows save bytes.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { transformSync } from "esbuild";
import ts from "typescript";

interface Named {
  readonly propertyName?: ts.Node;
  readonly name: ts.Node;
}

/** `a as b` of an import or an export, as the key and the value of an object. */
const pair = (key: ts.Node | undefined, value: ts.Node | undefined, source: ts.SourceFile): string => {
  const [one, other] = [key?.getText(source), value?.getText(source)];
  return one === other ? `${one}` : `${one}: ${other}`;
};

const required = ({ importClause, moduleSpecifier }: ts.ImportDeclaration, source: ts.SourceFile): string => {
  const loaded = `require(${moduleSpecifier.getText(source)})`;
  if (importClause === undefined) return `${loaded};`;
  const { name, namedBindings } = importClause;
  if (name !== undefined && namedBindings === undefined)
    return `const ${name.text} = ((loaded) => loaded && loaded.__esModule ? loaded.default : loaded)(${loaded});`;
  if (name !== undefined || namedBindings === undefined || !ts.isNamedImports(namedBindings))
    throw new Error(`${loaded}: an import of a form that is not written as CommonJS here`);
  const names = namedBindings.elements.map((one: Named) =>
    pair(one.propertyName ?? one.name, one.name, source),
  );
  return `const { ${names.join(", ")} } = ${loaded};`;
};

const exported = (
  { exportClause, moduleSpecifier }: ts.ExportDeclaration,
  source: ts.SourceFile,
): readonly string[] => {
  if (moduleSpecifier !== undefined || exportClause === undefined || !ts.isNamedExports(exportClause))
    throw new Error(`${source.fileName}: an export of a form that is not written as CommonJS here`);
  return exportClause.elements.map((one: Named) => pair(one.name, one.propertyName ?? one.name, source));
};

/** An ES module as CommonJS. What it exports is set as it has run: the chunks load each other in no circle. */
export const commonJs = (code: string, path: string): string => {
  const plain = transformSync(code, {
    target: "es2020",
    supported: { arrow: false, "dynamic-import": false },
  }).code;
  const source = ts.createSourceFile(path, plain, ts.ScriptTarget.ES2020);
  const names: string[] = [];
  const parts = source.statements.map((statement) => {
    if (ts.isImportDeclaration(statement)) return required(statement, source);
    if (ts.isExportDeclaration(statement)) {
      names.push(...exported(statement, source));
      return "";
    }
    if (ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.length)
      throw new Error(`${path}: ${statement.getText(source).slice(0, 60)}`);
    return statement.getText(source);
  });
  const mark = 'Object.defineProperty(module.exports, "__esModule", { value: true });';
  return ['"use strict";', ...parts, `module.exports = { ${names.join(", ")} };`, mark, ""].join("\n");
};

/** Writes each file of `from` as CommonJS to the same place in `to`. */
export const writeCommonJs = (from: string, to: string): void => {
  for (const path of readdirSync(from, { recursive: true, encoding: "utf8" })) {
    if (!path.endsWith(".js")) continue;
    const target = join(to, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, commonJs(readFileSync(join(from, path), "utf8"), path));
  }
};
