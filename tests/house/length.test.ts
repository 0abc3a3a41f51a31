import { describe, expect, it } from "vitest";
import { longerFiles, longerFunctions } from "./length-exceptions.js";
import { functionLengths, lineCount, mayHoldLonger } from "./lengths.js";
import { filesBelow, read } from "./sources.js";

const longestFunction = 60;
const longestFile = 300;

const files = ["src", "tests", "examples", ".ci"].flatMap(filesBelow).filter((path) => path.endsWith(".ts"));

/**
 * Tables: of figures that sources printed, a file for each room and subject, as long as what was printed; and of what is
 * refused, a file for each shelf, as long as there are ways to be wrong.
 */
const isTable = (path: string): boolean =>
  /^tests\/(published|constants)\/|^tests\/\w+\/[\w-]+\/refusals\.test\.ts$/.test(path);

/** What is over the limit, by name; of two of one name in one file the longer. */
const over = (all: readonly (readonly [string, number])[], limit: number): Map<string, number> => {
  const found = new Map<string, number>();
  for (const [name, lines] of all) if (lines > Math.max(limit, found.get(name) ?? 0)) found.set(name, lines);
  return found;
};

const long = {
  functions: over(
    // A short file holds no long function.
    files
      .filter((path) => lineCount(read(path)) > longestFunction && mayHoldLonger(read(path), longestFunction))
      .flatMap((path) =>
        functionLengths(path, read(path)).map(({ name, lines }) => [`${path} ${name}`, lines] as const),
      ),
    longestFunction,
  ),
  files: over(
    files.filter((path) => !isTable(path)).map((path) => [path, lineCount(read(path))] as const),
    longestFile,
  ),
};

/** What is longer than the limit and than the exception it has. */
const grown = (found: ReadonlyMap<string, number>, listed: Readonly<Record<string, number>>): string[] =>
  [...found]
    .filter(([name, lines]) => lines > (listed[name] ?? 0))
    .map(([name, lines]) => `${name}: ${lines}`);

/** Exceptions that nothing needs any more: take them off the list. */
const idle = (found: ReadonlyMap<string, number>, listed: Readonly<Record<string, number>>): string[] =>
  Object.keys(listed).filter((name) => !found.has(name));

describe("length", () => {
  it("is counted from the first line of a function to its last", () => {
    const text = 'const three = () => {\n  return 3;\n};\ndescribe("x", () => {\n  it("y", () => {});\n});\n';
    expect(functionLengths("x.ts", text)).toEqual([
      { name: "three", line: 1, lines: 3 },
      { name: "(no name)", line: 5, lines: 1 },
    ]);
    expect(lineCount(text)).toBe(6);
    const of = (lines: number): string => `const a = () => {\n${"  b();\n".repeat(lines - 2)}};\n`;
    expect([60, 61].map((lines) => mayHoldLonger(of(lines), 60))).toEqual([false, true]);
    expect([60, 61].map((lines) => functionLengths("x.ts", of(lines))[0]?.lines)).toEqual([60, 61]);
  });

  it(`of a function is at most ${longestFunction} lines, or what its exception says`, () => {
    expect(grown(long.functions, longerFunctions)).toEqual([]);
  });

  it(`of a file is at most ${longestFile} lines, or what its exception says`, () => {
    expect(grown(long.files, longerFiles)).toEqual([]);
  });

  it("has no exception that nothing needs any more", () => {
    expect(idle(long.functions, longerFunctions)).toEqual([]);
    expect(idle(long.files, longerFiles)).toEqual([]);
  });
});
