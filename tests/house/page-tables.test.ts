// The tables "question | function | what it takes" of the pages: what they name is exported, and what a room exports is
// named on its page. Links of the pages that are packed lead to what is packed.
import { dirname, normalize } from "node:path";
import { describe, expect, it } from "vitest";
import { exportsOf, loadModules } from "../walls/calls.js";
import { exists, filesBelow, read, rooms } from "./sources.js";

const modules = await loadModules();
const { functions, objects } = exportsOf(modules);

/** Pages of rooms that are not called as the room is. */
const pageOf: Readonly<Record<string, string>> = { quantity: "units", numeric: "accuracy", pest: "weather" };

/** What a page need not name, and why. */
const unnamed: Readonly<Record<string, string>> = {
  isSensor: "asked by dailyTemperatures itself",
  expectRecord: "a door of formulas, in the table by expectFields",
  expectFlag: "a door of formulas, in the table by expectFields",
  expectList: "a door of formulas, in the table by expectFields",
  expectOneOf: "a door of formulas, in the table by expectFields",
  expectName: "a door of formulas, in the table by expectFields",
  expectText: "a door of formulas, in the table by expectFields",
  readFields: "a door of formulas, in the table by expectFields",
  toldAt: "a door of formulas, in the table by expectFields",
  toldBy: "a door of formulas, in the table by expectFields",
  unreadable: "a door of formulas, in the table by expectFields",
  plainCopy: "a door of formulas, in the table by expectFields",
  expectWaterTest: "a door of formulas",
  rangeProblem: "the problem that outOfRange throws",
  shown: "how problems show what they got",
  problemText: "docs/errors.md has the problems",
  problemReason: "docs/errors.md has the problems",
  checks: "docs/errors.md has the problems",
  unitSystem: "whose units a unit belongs to: what the rooms ask to answer in kind",
  inUnit: "arithmetic of code that knows the unit only at run time",
  likeQuantity: "arithmetic of code that knows the unit only at run time",
  numberIn: "arithmetic of code that knows the unit only at run time",
  ofKind: "arithmetic of code that knows the unit only at run time",
  perOf: "arithmetic of code that knows the unit only at run time",
  timesOf: "arithmetic of code that knows the unit only at run time",
};

/** The functions that a page names in the middle column of its tables. */
const namedIn = (page: string): readonly string[] =>
  read(page)
    .split("\n## ")[0]
    ?.split("\n")
    .filter((line) => line.startsWith("| ") && line.split(" | ").length >= 3)
    .flatMap((line) =>
      [...(line.split(" | ")[1] ?? "").matchAll(/`([a-z]\w*)`/g)].map(([, name]) => name ?? ""),
    ) ?? [];

/** Words of a table in the form of code that are no export: methods, fields of results, kinds of limits. */
const noExports: ReadonlySet<string> = new Set([
  "plus",
  "minus",
  "times",
  "per",
  "compare",
  "earliestByStatedRules",
  "earliestByStatedLimit",
  "remainingUnderStatedLimits",
  "rotation",
  "buffer",
  "buffers",
]);

describe.each(rooms())("%s", (room) => {
  const page = `docs/${pageOf[room] ?? room}.md`;

  it("has a page that opens with what it answers", () => {
    expect(read(page)).toMatch(/\| question \| function \| what it takes \|/);
  });

  it("names on it every function that it exports, or there is a reason why not", () => {
    const text = read(page);
    const own = Object.entries(modules[`ratewright/${room}`] ?? {}).filter(
      ([name, value]) => typeof value === "function" && /^[a-z]/.test(name),
    );
    expect(own.length).toBeGreaterThan(0);
    const missing = own.map(([name]) => name).filter((name) => !new RegExp(`\\b${name}\\b`).test(text));
    expect(missing.filter((name) => !(name in unnamed))).toEqual([]);
  });

  it("names nothing in its tables that is not exported", () => {
    const known = (name: string): boolean => functions.has(name) || objects.has(name) || noExports.has(name);
    expect(namedIn(page).filter((name) => !known(name))).toEqual([]);
  });
});

it("no reason stands for a function that its page names", () => {
  const texts = rooms().map((room) => read(`docs/${pageOf[room] ?? room}.md`));
  const idle = Object.keys(unnamed).filter((name) =>
    texts.some((text) => new RegExp(`\\| \`[^|]*\\b${name}\\b`).test(text)),
  );
  expect(idle).toEqual([]);
});

/** A pattern of `files` in package.json: the file itself, a folder, or `*` within one folder. */
const matches = (pattern: string, path: string): boolean =>
  pattern === path ||
  path.startsWith(`${pattern}/`) ||
  new RegExp(`^${pattern.replace(/[.+^${}()|[\]\\]/g, "\\$&").replace(/\*/g, "[^/]*")}$`).test(path);

/** Linked by the page on disagreements, which is drawn; they are larger than all packed pages together. */
const inRepositoryAlone: ReadonlySet<string> = new Set(["docs/bibliography.md", "docs/evidence.md"]);

describe("the pages that are packed", () => {
  const { files } = JSON.parse(read("package.json")) as { readonly files: readonly string[] };
  const packed = (path: string): boolean =>
    files.some((pattern) => !pattern.startsWith("!") && matches(pattern, path)) &&
    !files.some((pattern) => pattern.startsWith("!") && matches(pattern.slice(1), path));
  const pages = ["README.md", "CHANGELOG.md", ...filesBelow("docs")].filter(
    (path) => path.endsWith(".md") && packed(path),
  );

  it("link to what is packed, and to headings that are there", () => {
    expect(pages.length).toBeGreaterThan(20);
    const lost = pages.flatMap((page) =>
      [...read(page).matchAll(/\]\(([^)\s]+)\)/g)].flatMap(([, link = ""]) => {
        if (/^(https?|mailto):/.test(link)) return [];
        const [path = "", heading] = link.split("#");
        const file = path === "" ? page : normalize(`${dirname(page)}/${path}`);
        if (exists(file) && inRepositoryAlone.has(file)) return [];
        if (!exists(file) || !packed(file)) return [`${page}: ${link}`];
        if (heading === undefined || !file.endsWith(".md")) return [];
        const heads = [...read(file).matchAll(/^#+ (.*)$/gm)].map(([, head = ""]) =>
          head
            .toLowerCase()
            .replace(/[^\w\s-]/g, "")
            .replace(/\s/g, "-"),
        );
        return heads.includes(heading) || read(file).includes(`id="${heading}"`) ? [] : [`${page}: ${link}`];
      }),
    );
    expect(lost).toEqual([]);
  });
});
