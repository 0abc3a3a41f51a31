// Writes into an example the checks that its comments ask for.
import ts from "typescript";

interface Expectation {
  readonly throws: string | undefined;
  readonly value: string;
}

const isOneValue = (text: string): boolean => {
  const file = ts.createSourceFile("value.ts", `(${text}\n);`, ts.ScriptTarget.ES2022, true);
  const faults = (file as unknown as { readonly parseDiagnostics: readonly unknown[] }).parseDiagnostics;
  const statement = file.statements[0];
  if (faults.length > 0 || file.statements.length !== 1 || statement === undefined) return false;
  if (!ts.isExpressionStatement(statement) || !ts.isParenthesizedExpression(statement.expression))
    return false;
  const inner = statement.expression.expression;
  return !(ts.isBinaryExpression(inner) && inner.operatorToken.kind === ts.SyntaxKind.CommaToken);
};

/** What the comment at the end of a line says, or nothing. `lines` are those of the whole program. */
const expectationAt = (lines: readonly string[], line: number, end: number): Expectation | undefined => {
  let at = line;
  let match = /^[\s;,)]*\/\/ ?=>\s*(.*)$/.exec((lines[at] ?? "").slice(end));
  if (match === null && /^[\s;]*$/.test((lines[at] ?? "").slice(end))) {
    at += 1;
    match = /^\s*\/\/ ?=>\s*(.*)$/.exec(lines[at] ?? "");
  }
  if (match === null) return undefined;
  const said = (match[1] ?? "").trim();
  const thrown = /^throws\s+(\S+)$/.exec(said);
  if (thrown !== null) return { throws: thrown[1] ?? "", value: "" };
  let value = said;
  for (;;) {
    if (isOneValue(value)) return { throws: undefined, value };
    at += 1;
    const more = /^\s*\/\/(?! ?=>)(.*)$/.exec(lines[at] ?? "");
    if (more === null) throw new SyntaxError(`line ${line + 1}: cannot read "${said}" as one value`);
    value += `\n${more[1] ?? ""}`;
  }
};

const expectsError = (source: ts.SourceFile, statement: ts.Node): boolean =>
  (ts.getLeadingCommentRanges(source.text, statement.getFullStart()) ?? []).some(({ pos, end }) =>
    source.text.slice(pos, end).includes("@ts-expect-error"),
  );

/** An import as a statement inside a function; what is imported as a type alone is not there at run time. */
const required = ({ importClause: clause, moduleSpecifier }: ts.ImportDeclaration): string => {
  const call = `require(${moduleSpecifier.getText()})`;
  if (clause === undefined) return `${call};`;
  const { name, namedBindings: names } = clause;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return ";";
  if (names !== undefined && ts.isNamespaceImport(names)) return `const ${names.name.text} = ${call};`;
  const parts = (names?.elements ?? [])
    .filter(({ isTypeOnly }) => !isTypeOnly)
    .map((part) => `${(part.propertyName ?? part.name).getText()}: ${part.name.text}`);
  if (name !== undefined) parts.push(`default: ${name.text}`);
  return parts.length === 0 ? ";" : `const { ${parts.join(", ")} } = ${call};`;
};

/** The program with its checks written in, on the same lines, and how many checks it has. */
export const instrument = (code: string): { readonly code: string; readonly checks: number } => {
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.ES2022, true);
  const lines = code.split("\n");
  const edits: { readonly start: number; readonly end: number; readonly text: string }[] = [];
  let checks = 0;
  const edit = (start: number, end: number, text: string): void => {
    edits.push({ start, end, text });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      edit(node.getStart(source), node.end, sameLines(required(node), node.getText(source)));
      return;
    }
    if (ts.isExpressionStatement(node) || ts.isVariableStatement(node)) {
      const start = node.getStart(source);
      const { line, character } = source.getLineAndCharacterOfPosition(node.end);
      const expected = expectationAt(lines, line, character);
      const declaration = ts.isVariableStatement(node) ? node.declarationList.declarations[0] : undefined;
      const expression = ts.isExpressionStatement(node) ? node.expression : declaration?.initializer;
      if (expected !== undefined && expression !== undefined) {
        checks += 1;
        const place = line + 1;
        if (expected.throws !== undefined) {
          const inner = expression.getText(source);
          const [open, wait] = /\bawait\b/.test(inner) ? ["async () =>", "await "] : ["() =>", ""];
          const call = `${wait}__throws(${place}, ${JSON.stringify(expected.throws)}, ${open} (${inner}\n));`;
          edit(start, node.end, sameLines(call, node.getText(source)));
        } else if (ts.isExpressionStatement(node)) {
          edit(start, start, `__check(${place}, ${oneLine(expected.value)}, (`);
          edit(expression.end, expression.end, "))");
        } else if (declaration !== undefined) {
          const name = declaration.name.getText(source);
          if (!ts.isIdentifier(declaration.name)) throw new SyntaxError(`line ${place}: "=>" after ${name}`);
          edit(node.end, node.end, ` __check(${place}, ${oneLine(expected.value)}, (${name}));`);
        }
        return;
      }
      if (expectsError(source, node)) {
        edit(start, node.end, sameLines(";", node.getText(source)));
        return;
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  const sorted = edits.sort((a, b) => b.start - a.start || b.end - a.end);
  let out = code;
  for (const { start, end, text } of sorted) out = out.slice(0, start) + text + out.slice(end);
  return { code: out, checks };
};

const oneLine = (value: string): string => `(${value.replaceAll("\n", " ")})`;

/** The text with as many line ends as the original has, so that lines keep their numbers. */
const sameLines = (text: string, original: string): string =>
  text.replaceAll("\n", " ") + "\n".repeat(original.split("\n").length - 1);
