// Reads the examples of the documentation and turns them into programs that check themselves.
//
//   expression;            // => value          the value is exactly this
//   const name = ...;      // => value          the same, of the name
//   expression;            // => throws code    it throws a RatewrightError with this code
//
// The value is written as JavaScript. It may go on in the comment lines below, or stand in the
// comment line below the statement. Anything with a `toJSON` is compared as its JSON. A statement
// below `// @ts-expect-error` is compiled and not run, unless it says `// => throws`; a block that
// begins with ```ts nocheck is compiled and not run. A block without an import goes on where the
// block before it, in the same page or doc comment, ended.
import { deepStrictEqual } from "node:assert";
import { runInThisContext } from "node:vm";
import { transform } from "esbuild";
import ts from "typescript";

/** An example: code with the place where it stands. */
export interface Block {
  readonly file: string;
  /** The line of the file on which the code of this block begins, from 1. */
  readonly line: number;
  readonly code: string;
  /** Whether it is run, not only compiled. */
  readonly run: boolean;
  /** The code of the blocks that it goes on from. */
  readonly before: string;
}

interface Line {
  readonly text: string;
  readonly number: number;
}

const importing = /^\s*import\s/m;

/** The blocks in the lines of one page or doc comment. */
const blocksIn = (file: string, lines: readonly Line[]): Block[] => {
  const blocks: Block[] = [];
  let open: { indent: number; run: boolean; wanted: boolean; line: number; code: string[] } | undefined;
  for (const { text, number } of lines) {
    const fence = /^(\s*)```\s*(.*?)\s*$/.exec(text);
    if (open === undefined) {
      if (fence === null) continue;
      const [language, ...marks] = (fence[2] ?? "").split(/\s+/);
      const wanted = language === "ts" || language === "typescript";
      open = {
        indent: (fence[1] ?? "").length,
        run: !marks.includes("nocheck"),
        wanted,
        line: number + 1,
        code: [],
      };
    } else if (fence === null || fence[2] !== "") {
      open.code.push(text.slice(Math.min(open.indent, text.length - text.trimStart().length)));
    } else {
      if (open.wanted) {
        const code = open.code.join("\n");
        const last = blocks.at(-1);
        const goesOn = last !== undefined && !importing.test(code);
        const before = goesOn ? last.before + (last.run ? `${last.code}\n` : "") : "";
        blocks.push({ file, line: open.line, code, run: open.run, before });
      }
      open = undefined;
    }
  }
  return blocks;
};

/** The ```ts blocks of a page of Markdown. */
export const blocksOfPage = (file: string, text: string): Block[] =>
  blocksIn(
    file,
    text.split(/\r?\n/).map((line, at) => ({ text: line, number: at + 1 })),
  );

/** The ```ts blocks of the doc comments of a source file. */
export const blocksOfSource = (file: string, text: string): Block[] => {
  const blocks: Block[] = [];
  for (const comment of text.matchAll(/\/\*\*[\s\S]*?\*\//g)) {
    const first = text.slice(0, comment.index).split("\n").length;
    const lines = comment[0]
      .replace(/\*\/$/, "")
      .split(/\r?\n/)
      .map((line, at) => ({ text: line.replace(/^\s*\/?\*+ ?/, ""), number: first + at }));
    blocks.push(...blocksIn(file, lines));
  }
  return blocks;
};

/** The whole program of a block, with the blocks that it goes on from. */
export const programOf = (block: Block): string => block.before + block.code;

/** How a line of {@link programOf} is named in a message. */
export const placeIn = (block: Block, line: number): string =>
  `${block.file}:${block.line + line - (block.before.split("\n").length - 1)}`;

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
const instrument = (code: string): { readonly code: string; readonly checks: number } => {
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

/** A value as plain data: what JSON would keep, but numbers as they are. */
const plain = (value: unknown): unknown => {
  if (typeof value !== "object" || value === null) return value;
  if ("toJSON" in value && typeof value.toJSON === "function") return plain(value.toJSON());
  if (ArrayBuffer.isView(value)) return Array.from(value as unknown as ArrayLike<number>);
  if (Array.isArray(value)) return value.map(plain);
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, field]) => field !== undefined)
      .map(([key, field]) => [key, plain(field)]),
  );
};

const codeOf = (error: unknown): unknown =>
  error instanceof Error && error.name === "RatewrightError"
    ? (error as Error & { code?: unknown }).code
    : error;

interface Compiled {
  readonly run: (...given: readonly unknown[]) => Promise<void>;
  readonly checks: number;
}

/** The only type that reads as something else without types: `name<Type>(value)`, for a comparison has a space there. */
const typeArgument = /\w</;

/** What is compiled once, for a program may be run many times. */
const programs = new Map<string, Promise<Compiled>>();

const compile = async (program: string): Promise<Compiled> => {
  const { code, checks } = instrument(program);
  const wrapped = `(async (require, __check, __throws) => { "use strict"; ${code}\n})`;
  // Most have no type in them, and to send one to the compiler and back takes longer than to run it.
  if (!typeArgument.test(code)) {
    try {
      return { run: runInThisContext(wrapped), checks };
    } catch (error) {
      if (!(error instanceof SyntaxError)) throw error;
    }
  }
  const { code: plainScript } = await transform(wrapped, { loader: "ts", target: "es2022" });
  return { run: runInThisContext(plainScript), checks };
};

/** A program as a function of what it asks for. */
const compiled = (program: string): Promise<Compiled> => {
  const made = programs.get(program) ?? compile(program);
  programs.set(program, made);
  return made;
};

/**
 * Runs a block with the given modules, and throws with file and line when a check fails, when a
 * check is never reached, or when the code throws.
 */
export const runBlock = async (block: Block, modules: Readonly<Record<string, unknown>>): Promise<void> => {
  let current = 1;
  const reached = new Set<number>();
  const check = (line: number, expected: unknown, actual: unknown): void => {
    current = line;
    reached.add(line);
    deepStrictEqual(plain(actual), plain(expected));
  };
  const judge = (code: string, error: unknown): void => {
    if (codeOf(error) !== code) throw error;
  };
  const throws = (line: number, code: string, action: () => unknown): unknown => {
    current = line;
    reached.add(line);
    const nothing = (): never => {
      throw new Error(`nothing was thrown, expected ${code}`);
    };
    let result: unknown;
    try {
      result = action();
    } catch (error) {
      judge(code, error);
      return undefined;
    }
    if (!(result instanceof Promise)) return nothing();
    return result.then(nothing, (error: unknown) => judge(code, error));
  };
  const load = (name: string): unknown => {
    if (!(name in modules)) throw new Error(`an example may not import "${name}"`);
    return modules[name];
  };
  try {
    const { run, checks } = await compiled(programOf(block));
    await run(load, check, throws);
    const missed = checks - reached.size;
    if (missed > 0) throw new Error(`${missed} of ${checks} checks were never reached`);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    throw new Error(`${placeIn(block, current - 1)}: ${message}`, { cause: error });
  }
};
