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
import { instrument } from "./instrument.js";

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
