import ts from "typescript";
import { describe, expect, it } from "vitest";
import { apiReport, declarations, keptReport } from "./api-report.js";
import { filesBelow } from "./sources.js";

/** What a source declares, as the report has it. */
const declared = (source: string): ReadonlyMap<string, readonly string[]> =>
  declarations(
    ts.transpileDeclaration(source, {
      fileName: "x.ts",
      compilerOptions: { isolatedDeclarations: true, target: ts.ScriptTarget.ES2022 },
    }).outputText,
  );

describe("the report of what the package exports", { timeout: 600_000 }, () => {
  it("is the one that is kept in tests/house/api: npm run docs:tables writes it", () => {
    const report = apiReport();
    const kept = filesBelow("tests/house/api");
    expect(kept).toEqual([...report.keys()].sort());
    for (const [path, text] of keptReport(kept))
      expect(text.split("\n"), path).toEqual(report.get(path)?.split("\n"));
  });

  it("names no export of a room that the root hides", () => {
    expect(keptReport(["tests/house/api/root.txt"]).get("tests/house/api/root.txt")).not.toContain(
      "is hidden",
    );
  });

  it("has a line for each overload, without comments, bodies and what stays inside", () => {
    const source = [
      "/** Said. */",
      "export function f(a: number): number;",
      "export function f(a: string): string;",
      "export function f(a: unknown): unknown { return a; }",
      "export const list = ['a', 'b'] as const;",
      "export interface Row {\n  /** Said. */\n  readonly a: number;\n}",
    ].join("\n");
    expect([...declared(source)]).toEqual([
      ["f", ["function f(a: number): number;", "function f(a: string): string;"]],
      ["list", ['const list: readonly [ "a", "b" ];']],
      ["Row", ["interface Row { readonly a: number; }"]],
    ]);
  });

  it("notices a change beyond the place where a long line is cut", () => {
    const line = (last: string): string | undefined => {
      const names = Array.from({ length: 100 }, (_, at) => `"name-${at}"`).join(" | ");
      return declared(`export type T = ${names} | "${last}";`).get("T")?.[0];
    };
    expect(line("a")).not.toBe(line("b"));
    expect(line("a")).toBe(line("a"));
  });
});
