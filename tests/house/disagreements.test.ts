import { describe, expect, it } from "vitest";
import { works } from "../published/bibliography.js";
import { namedOptions } from "./named-options.js";
import { filesBelow, read } from "./sources.js";

/** The declarations of every room, as the report of the exports has them. */
const declarations = filesBelow("tests/house/api").map(read).join("\n");

describe("docs/disagreements.md", () => {
  it.each(namedOptions)("names an option that there is: $option of $call", ({ call, option }) => {
    const line =
      declarations.split("\n").find((text) => new RegExp(`^(const|function) ${call}\\b`).test(text)) ?? "";
    expect(line).not.toBe("");
    // The option is a field or a parameter of the function, or of the record that it takes by name.
    const taken = [...line.matchAll(/\b([A-Z]\w+)\b/g)].map(([, name]) => name as string);
    const types = taken.flatMap((name) =>
      declarations.split("\n").filter((text) => new RegExp(`^(interface|type) ${name}\\b`).test(text)),
    );
    expect([line, ...types].some((text) => new RegExp(`\\b${option}\\??:`).test(text))).toBe(true);
  });
});

describe("the keys of the bibliography", () => {
  const all = new Set(works().map(({ key }) => key));
  const pages = ["README.md", "DEVELOPERS.md", ...filesBelow("docs")].filter((page) => page.endsWith(".md"));
  const used = pages
    .filter((page) => page !== "docs/bibliography.md")
    .flatMap((page) =>
      [...read(page).matchAll(/\[([^\]]*)\]\((?:\.\.\/)?(?:docs\/)?bibliography\.md#([^)]*)\)/g)].map(
        ([, text, key]) => ({ page, text: text as string, key: key as string }),
      ),
    );

  it("are used in the pages", () => {
    expect(used.length).toBeGreaterThan(50);
  });

  it("are known: each leads to a work, and is written as it is", () => {
    expect(used.filter(({ text, key }) => !all.has(key) || text !== key)).toEqual([]);
  });
});
