// What the doc comments of the exported functions say, read from the source without a compiler: names are followed from
// the index of a room to the file that declares them.
import { dirname, join } from "node:path";
import ts from "typescript";
import { read, rooms, sourceFiles, subpaths } from "./sources.js";

/** A function that a room exports, and what its doc comment says. */
export interface ExportedFunction {
  readonly room: string;
  readonly name: string;
  /** The comment without its tags. */
  readonly text: string;
  readonly examples: readonly string[];
  /** What the tags `@param`, `@throws` and `@returns` say. */
  readonly tags: readonly { readonly name: string; readonly text: string }[];
  /** Parameters, or fields of a record that is a parameter, that neither the comment nor their own comments explain. */
  readonly unexplained: readonly string[];
  /** Whether a `throw` can be reached from its body. */
  readonly throws: boolean;
}

type Declared = ts.VariableDeclaration | ts.FunctionDeclaration;

interface SourceText {
  /** Declarations by name; a function with overloads has several. */
  readonly declared: ReadonlyMap<string, readonly Declared[]>;
  /** Names that come from elsewhere: the file, and the name there. */
  readonly from: ReadonlyMap<string, readonly [string, string]>;
}

const fileOf = (path: string, specifier: string): string =>
  specifier.startsWith(".")
    ? join(dirname(path), specifier.replace(/\.js$/, ".ts")).replaceAll("\\", "/")
    : specifier;

const sourceText = (path: string): SourceText => {
  const declared = new Map<string, Declared[]>();
  const from = new Map<string, readonly [string, string]>();
  const take = (name: string, node: Declared): void =>
    void declared.set(name, [...(declared.get(name) ?? []), node]);
  for (const node of ts.createSourceFile(path, read(path), ts.ScriptTarget.Latest, true).statements) {
    if (ts.isVariableStatement(node))
      for (const one of node.declarationList.declarations) take(one.name.getText(), one);
    else if (ts.isFunctionDeclaration(node) && node.name !== undefined) take(node.name.text, node);
    else if (
      (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) &&
      node.moduleSpecifier !== undefined &&
      ts.isStringLiteral(node.moduleSpecifier)
    ) {
      const file = fileOf(path, node.moduleSpecifier.text);
      const names = ts.isImportDeclaration(node) ? node.importClause?.namedBindings : node.exportClause;
      if (names !== undefined && !ts.isNamespaceImport(names) && !ts.isNamespaceExport(names))
        for (const { name, propertyName } of names.elements)
          from.set(name.text, [file, (propertyName ?? name).text]);
    }
  }
  return { declared, from };
};

const allSources = (): ReadonlyMap<string, SourceText> =>
  new Map(sourceFiles().map((path) => [path, sourceText(path)]));

type Sources = ReturnType<typeof allSources>;

/** The file that declares a name, and its name there. */
const home = (sources: Sources, path: string, name: string): readonly [string, string] | undefined => {
  const source = sources.get(path);
  if (source === undefined) return undefined;
  if (source.declared.has(name)) return [path, name];
  const next = source.from.get(name);
  return next === undefined ? undefined : home(sources, ...next);
};

/** The functions of a declaration, whose parameters count. */
const functionsOf = (node: Declared): readonly ts.SignatureDeclaration[] => {
  if (ts.isFunctionDeclaration(node)) return [node];
  const made = node.initializer;
  if (made !== undefined && (ts.isArrowFunction(made) || ts.isFunctionExpression(made))) return [made];
  return node.type !== undefined && ts.isFunctionTypeNode(node.type) ? [node.type] : [];
};

const docOf = (node: Declared): readonly ts.JSDoc[] =>
  ts
    .getJSDocCommentsAndTags(ts.isVariableDeclaration(node) ? node.parent.parent : node)
    .filter((part): part is ts.JSDoc => ts.isJSDoc(part));

const plain = (comment: string | ts.NodeArray<ts.JSDocComment> | undefined): string =>
  ts.getTextOfJSDocComment(comment) ?? "";

/** The fields of a record that is spelled out where it is taken; a record with a name has its fields explained at home. */
const fieldsOf = (type: ts.TypeNode | undefined): readonly { name: string; documented: boolean }[] => {
  if (type === undefined) return [];
  if (ts.isIntersectionTypeNode(type)) return type.types.flatMap(fieldsOf);
  if (!ts.isTypeLiteralNode(type)) return [];
  return type.members.flatMap((member) =>
    member.name === undefined
      ? []
      : [{ name: member.name.getText(), documented: ts.getJSDocCommentsAndTags(member).length > 0 }],
  );
};

const escapedName = (name: string): string => name.replace(/[^\w]/g, "\\$&");

const unexplained = (functions: readonly ts.SignatureDeclaration[], said: string): readonly string[] => {
  // `catchTime`, or its words: "the catch time".
  const named = (name: string): boolean =>
    new RegExp(`\`[^\`]*\\b${escapedName(name)}\\b[^\`]*\``).test(said) ||
    new RegExp(`@param [\\w.]*\\b${escapedName(name)}\\b`).test(said) ||
    new RegExp(`\\b${escapedName(name.replace(/([a-z])([A-Z])/g, "$1 $2"))}`, "i").test(said);
  const missing = functions.flatMap(({ parameters }) =>
    parameters.flatMap((parameter) => {
      const name = parameter.name.getText();
      const fields = fieldsOf(parameter.type);
      if (fields.length > 0)
        return fields.flatMap(({ name: field, documented }) =>
          documented || named(field) ? [] : [`${name}.${field}`],
        );
      // What the function is about, and the name that errors give it, go without saying.
      return parameters[0] === parameter || name === "path" || named(name) ? [] : [name];
    }),
  );
  return [...new Set(missing)];
};

/** Which declarations reach a `throw`, by the names in their bodies; what stands in a `try` that is caught does not count. */
const throwing = (sources: Sources): ((path: string, name: string) => boolean) => {
  const uses = new Map<string, { direct: boolean; names: Set<string> }>();
  const visit = (node: ts.Node, found: { direct: boolean; names: Set<string> }): void => {
    if (ts.isTryStatement(node) && node.catchClause !== undefined) {
      visit(node.catchClause, found);
      if (node.finallyBlock !== undefined) visit(node.finallyBlock, found);
      return;
    }
    if (ts.isThrowStatement(node)) found.direct = true;
    if (ts.isTypeNode(node)) return;
    if (ts.isIdentifier(node) && !(ts.isPropertyAccessExpression(node.parent) && node.parent.name === node))
      found.names.add(node.text);
    ts.forEachChild(node, (child) => visit(child, found));
  };
  const usesOf = (path: string, name: string): { direct: boolean; names: Set<string> } => {
    const key = `${path} ${name}`;
    const known = uses.get(key);
    if (known !== undefined) return known;
    const found = { direct: false, names: new Set<string>() };
    for (const node of sources.get(path)?.declared.get(name) ?? []) {
      const body = ts.isFunctionDeclaration(node) ? node.body : node.initializer;
      if (body !== undefined) visit(body, found);
    }
    uses.set(key, found);
    return found;
  };
  return (path, name) => {
    const seen = new Set<string>();
    const waiting: (readonly [string, string])[] = [[path, name]];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      const key = next.join(" ");
      if (seen.has(key)) continue;
      seen.add(key);
      const { direct, names } = usesOf(...next);
      if (direct) return true;
      for (const used of names) {
        const at = home(sources, next[0], used);
        if (at !== undefined) waiting.push(at);
      }
    }
    return false;
  };
};

let docs: readonly ExportedFunction[] | undefined;

/** Every function that a room exports, with its doc comment. */
export const exportedDocs = (): readonly ExportedFunction[] => {
  docs ??= readDocs();
  return docs;
};

const readDocs = (): readonly ExportedFunction[] => {
  const sources = allSources();
  const throwsFrom = throwing(sources);
  return [...rooms(), ...subpaths()].flatMap((room) => {
    const index = `src/${room}/index.ts`;
    const { from, declared } = sources.get(index) as SourceText;
    return [...from.keys(), ...declared.keys()].flatMap((name): readonly ExportedFunction[] => {
      const [path, own] = home(sources, index, name) ?? [];
      const nodes = path === undefined ? undefined : sources.get(path)?.declared.get(own as string);
      if (path === undefined || nodes === undefined) return [];
      const functions = nodes.flatMap(functionsOf);
      if (functions.length === 0) return [];
      // Of a function with overloads the last declaration is its body, which nobody sees.
      const seen = functions.length > 1 ? functions.slice(0, -1) : functions;
      const docs = nodes.flatMap(docOf);
      const tags = docs.flatMap((doc) =>
        (doc.tags ?? []).map((tag) => ({
          name: tag.tagName.text,
          text: `${ts.isJSDocParameterTag(tag) ? `${tag.name.getText()} ` : ""}${plain(tag.comment)}`,
        })),
      );
      const text = docs.map(({ comment }) => plain(comment)).join("\n\n");
      const said = [
        text,
        ...tags.filter((tag) => tag.name !== "example").map((tag) => `@${tag.name} ${tag.text}`),
      ];
      return [
        {
          room,
          name,
          text,
          examples: tags.filter((tag) => tag.name === "example").map((tag) => tag.text),
          tags: tags.filter((tag) => tag.name !== "example"),
          unexplained: unexplained(seen, said.join("\n")),
          throws: throwsFrom(path, own as string),
        },
      ];
    });
  });
};
