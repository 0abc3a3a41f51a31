import { describe, expect, it } from "vitest";
import { exists, filesBelow, read, rooms, sourceFiles, subpaths, urlOf } from "../house/sources.js";
import { type Block, blocksOfPage, blocksOfSource, runBlock } from "./blocks.js";

const pages = ["README.md", ...filesBelow("docs").filter((path) => /^docs\/(cases\/)?[^/]+\.md$/.test(path))];
const blocks = [
  ...sourceFiles().flatMap((path) => blocksOfSource(path, read(path))),
  ...pages.filter(exists).flatMap((path) => blocksOfPage(path, read(path))),
];

const modules: Record<string, unknown> = { ratewright: await import("../../src/index.js") };
for (const part of [...rooms(), ...subpaths()]) {
  modules[`ratewright/${part}`] = await import(/* @vite-ignore */ urlOf(`src/${part}/index.ts`));
}

describe("the examples of the documentation do what they say", () => {
  it("are there", () => {
    expect(blocks.length).toBeGreaterThan(0);
  });

  for (const block of blocks.filter(({ run }) => run)) {
    it(`${block.file}:${block.line}`, () => runBlock(block, modules));
  }
});

describe("the reader of examples", () => {
  const error = Object.assign(new Error("no"), { name: "RatewrightError", code: "range" });
  const given = {
    ratewright: {
      list: [1, 2],
      fail: (): never => {
        throw error;
      },
      quantity: { toJSON: () => ({ value: 3, unit: "lb" }), secret: 1 },
    },
  };
  const page = (...lines: string[]): Block[] =>
    blocksOfPage(
      "page.md",
      ["# Page", "```ts", 'import { fail, list, quantity } from "ratewright";', ...lines, "```"].join("\n"),
    );
  const run = async (...lines: string[]): Promise<string> => {
    const [block] = page(...lines);
    if (block === undefined) return "no block";
    return runBlock(block, given).then(
      () => "fine",
      (failure: unknown) => String(failure),
    );
  };

  it("compares values, exactly", async () => {
    expect(await run("list; // => [1, 2]", "list[0]! + 2.75; // => 3.75")).toBe("fine");
    expect(await run("0.9 / 0.24; // => 3.75")).toMatch(/page\.md:4: /);
    expect(await run("list; // => [1, 3]")).toMatch(/page\.md:4: /);
    expect(await run("", "0 * -1; // => 0")).toMatch(/page\.md:5: /);
    expect(await run('quantity; // => { value: 3, unit: "lb" }')).toBe("fine");
    expect(await run("const a: number = 1 + 1; // => 2", "a; // => 3")).toMatch(/page\.md:5: /);
    expect(await run("list.map((n) => ({", "  n,", "})); // => [{ n: 1 }, { n: 2 }]")).toBe("fine");
    expect(await run("list", "  .map((n) => n * 2)", "  .join();", '// => "2,4"')).toBe("fine");
    expect(await run("list; // => [", "//   1,", "//   2,", "// ]")).toBe("fine");
    expect(await run("await Promise.resolve(1); // => 1")).toBe("fine");
  });

  it("compares what is thrown", async () => {
    expect(await run("fail(); // => throws range")).toBe("fine");
    expect(await run("fail(); // => throws missing")).toMatch(/page\.md:4: no/);
    expect(await run("list; // => throws range")).toMatch(/page\.md:4: nothing was thrown/);
    expect(await run("fail();")).toMatch(/no/);
    expect(await run("// @ts-expect-error", "fail();")).toBe("fine");
    expect(await run("// @ts-expect-error", "fail(); // => throws range")).toBe("fine");
  });

  it("notices a check that is not reached, and a value that it cannot read", async () => {
    expect(await run("if (list.length > 2) {", "  list; // => 1", "}")).toMatch(/1 of 1 checks/);
    expect(await run("list; // => a list, of two")).toMatch(/cannot read/);
    expect(await run("list; // => 1, 2")).toMatch(/cannot read/);
    expect(await run('import { x } from "elsewhere";', "x;")).toMatch(/may not import/);
  });

  it("reads doc comments, and goes on from the block before", () => {
    const source = [
      "/**",
      " * Text.",
      " * @example",
      " * ```ts",
      ' * import { a } from "ratewright";',
      " * a; // => 1",
      " * ```",
      " * ```ts",
      " * a; // => 2",
      " * ```",
      " */",
    ];
    expect(blocksOfSource("a.ts", source.join("\n"))).toEqual([
      { file: "a.ts", line: 5, code: 'import { a } from "ratewright";\na; // => 1', run: true, before: "" },
      {
        file: "a.ts",
        line: 9,
        code: "a; // => 2",
        run: true,
        before: 'import { a } from "ratewright";\na; // => 1\n',
      },
    ]);
    expect(blocksOfPage("a.md", "```ts nocheck\na;\n```\n```sh\nls\n```")).toMatchObject([{ run: false }]);
  });
});
