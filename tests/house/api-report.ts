// What the package offers, as text: every export of every path, a line each, as its declaration has it. It is kept in
// tests/house/api/, one file a path, so that a change of what users may call shows in review. `npm run docs:tables`
// writes the files; api-report.test.ts says when they are stale.
import { createHash } from "node:crypto";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";
import { libraryProgram } from "./program.js";
import { read, rooms, root, subpaths } from "./sources.js";

/** Where the report lies. */
const folder = "tests/house/api";

/** A longer declaration is cut here; a short hash of the whole tells whether the rest changed. */
const longest = 500;

const oneLine = (text: string): string => {
  const line = text
    .replace(/^export (declare )?/, "")
    .replace(/\s+/g, " ")
    .trim();
  if (line.length <= longest) return line;
  const hash = createHash("sha256").update(line).digest("hex").slice(0, 8);
  return `${line.slice(0, longest)} ... (${line.length} characters, ${hash})`;
};

/** The names that a statement of a declaration file declares. */
const declaredBy = (statement: ts.Statement): readonly string[] => {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  }
  const named =
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement);
  return named && statement.name !== undefined ? [statement.name.text] : [];
};

/** What a declaration file declares, by name: overloads are several lines. */
export const declarations = (outputText: string): ReadonlyMap<string, readonly string[]> => {
  const source = ts.createSourceFile("x.d.ts", outputText, ts.ScriptTarget.ES2022, true);
  const printer = ts.createPrinter({ removeComments: true });
  const found = new Map<string, string[]>();
  for (const statement of source.statements) {
    const line = oneLine(printer.printNode(ts.EmitHint.Unspecified, statement, source));
    for (const name of declaredBy(statement)) found.set(name, [...(found.get(name) ?? []), line]);
  }
  return found;
};

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The exports of each entry, with the symbol that each stands for. */
const exportsOf = (entries: readonly string[]): readonly (readonly [string, ts.Symbol])[][] => {
  const paths = entries.map((entry) => join(root, entry));
  const program = libraryProgram();
  const checker = program.getTypeChecker();
  return paths.map((path) => {
    const source = program.getSourceFile(path);
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    if (module === undefined) throw new Error(`${path} exports nothing`);
    return checker.getExportsOfModule(module).map((symbol) => {
      const aliased = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
      return [symbol.name, aliased ? checker.getAliasedSymbol(symbol) : symbol] as const;
    });
  });
};

/** The declaration files of some sources, as the build writes them. */
const declarationTexts = (files: ReadonlySet<ts.SourceFile>): ReadonlyMap<ts.SourceFile, string> => {
  const written = new Map<ts.SourceFile, string>();
  for (const file of files) {
    libraryProgram().emit(file, (_name, text) => void written.set(file, text), undefined, true);
  }
  return written;
};

/** The root: whole rooms, and what of a room it does not have (two rooms with one name would hide it from both). */
const rootReport = (names: readonly string[], byRoom: ReadonlyMap<string, readonly string[]>): string => {
  const whole = [...byRoom].filter(([, ofRoom]) => ofRoom.some((name) => names.includes(name)));
  const hidden = whole.flatMap(([room, ofRoom]) =>
    ofRoom.filter((name) => !names.includes(name)).map((name) => `- ${name} of ${room} is hidden`),
  );
  return `${[...whole.map(([room]) => `all of ${room}`), ...hidden].join("\n")}\n`;
};

/** The files of the report by path, with what they have to say. */
export const apiReport = (): ReadonlyMap<string, string> => {
  const paths = [...rooms(), ...subpaths()];
  const [ofRoot = [], ...ofPaths] = exportsOf([
    "src/index.ts",
    ...paths.map((path) => `src/${path}/index.ts`),
  ]);
  const fileOf = ([name, symbol]: readonly [string, ts.Symbol]): ts.SourceFile => {
    const file = symbol.declarations?.[0]?.getSourceFile();
    if (file === undefined) throw new Error(`${name} is declared nowhere`);
    return file;
  };
  const byFile = new Map(
    [...declarationTexts(new Set(ofPaths.flat().map(fileOf)))].map(([file, text]) => [
      file,
      declarations(text),
    ]),
  );
  const linesOf = ([name, symbol]: readonly [string, ts.Symbol]): readonly string[] => {
    const file = fileOf([name, symbol]);
    const lines = byFile.get(file)?.get(symbol.name);
    if (lines === undefined) throw new Error(`${name}: no declaration in ${file.fileName}`);
    return symbol.name === name ? lines : lines.map((line) => `${name} is ${line}`);
  };
  const report = new Map<string, string>();
  paths.forEach((path, at) => {
    const list = [...(ofPaths[at] ?? [])].sort(([a], [b]) => order(a, b));
    report.set(`${folder}/${path.replace("/", ".")}.txt`, `${list.flatMap(linesOf).join("\n")}\n`);
  });
  const byRoom = new Map(rooms().map((room, at) => [room, (ofPaths[at] ?? []).map(([name]) => name)]));
  report.set(
    `${folder}/root.txt`,
    rootReport(
      ofRoot.map(([name]) => name),
      byRoom,
    ),
  );
  return report;
};

/** Writes the report anew. */
export const writeApiReport = (): void => {
  const report = apiReport();
  rmSync(join(root, folder), { recursive: true, force: true });
  for (const [path, text] of report) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
};

/** The files of the report as they lie there. */
export const keptReport = (paths: readonly string[]): ReadonlyMap<string, string> =>
  new Map(paths.map((path) => [path, read(path)]));
