import { describe, expect, it } from "vitest";
import { filesBelow, read } from "./sources.js";

describe("docs/nomenclature.md", () => {
  const report = filesBelow("tests/house/api").map(read).join("\n");
  const rows = read("docs/nomenclature.md")
    .split("\n")
    .filter((line) => line.startsWith("| `"))
    .map((line) => line.split("|").map((part) => part.trim()));
  const first = rows.slice(
    0,
    rows.findIndex(([, name = ""]) => name.startsWith("`P`")),
  );

  it("names only what a user meets in the code", () => {
    const names = first.flatMap(([, name = ""]) => name.match(/[A-Za-z]+/g) ?? []);
    expect(names.length).toBeGreaterThan(40);
    expect(names.filter((name) => !new RegExp(`\\b${name}\\b`).test(report))).toEqual([]);
  });

  it("gives each name one meaning", () => {
    const names = first.map(([, name]) => name);
    const meanings = first.map(([, , meaning]) => meaning);
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(meanings).size).toBe(meanings.length);
  });
});
