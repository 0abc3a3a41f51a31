// What the site is made of: the pages of the repository, what its rooms ask, what was published for its functions.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type CatalogueEntry, catalogue } from "../../src/teach/index.js";
import type { PublishedCheck } from "../../tests/published/check.js";
import { allChecks } from "../../tests/published/index.js";
import { slug } from "./html.js";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The text of a file of the repository. */
export const read = (path: string): string => readFileSync(`${root}/${path}`, "utf8");

/** The Markdown files of a folder. */
export const markdownIn = (folder: string): readonly string[] =>
  readdirSync(`${root}/${folder}`)
    .filter((name) => name.endsWith(".md"))
    .sort()
    .map((name) => `${folder}/${name}`);

/** The page of the site for a page of the repository. */
export const pathOf = (source: string): string => {
  if (source === "README.md") return "start.html";
  if (source === "docs/evidence.md") return "evidence/index.html";
  if (source === "docs/cases/README.md") return "cases/index.html";
  const name = source.replace(/^.*\//, "").replace(/\.md$/, ".html").toLowerCase();
  if (source.startsWith("docs/cases/")) return `cases/${name}`;
  return source.startsWith("docs/") ? `rooms/${name}` : name;
};

/** The page of a room in the repository, where it has one; the pests stand on the page of the weather. */
export const roomPage = (room: string): readonly string[] => {
  const page = `docs/${room === "pest" ? "weather" : room}.md`;
  return existsSync(`${root}/${page}`) ? [page] : [];
};

/** The pages of the rooms; units and errors are those of the quantity. */
export const roomPages = (): readonly string[] =>
  markdownIn("docs").filter(
    (page) =>
      existsSync(page.replace(/^docs\/(.*)\.md$/, `${root}/src/$1`)) || /\/(units|errors)\.md$/.test(page),
  );

/** The questions that the tables of the rooms put, by the function that answers. */
export const questionsByFunction = (): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const source of markdownIn("docs")) {
    if (source === "docs/evidence.md") continue;
    for (const line of read(source).split("\n")) {
      const [, question = "", functions = ""] = /^\| ([^|]+) \| ([^|]*`[^|]*) \|/.exec(line) ?? [];
      if (/^question|^-+/.test(question)) continue;
      for (const [, name = ""] of functions.matchAll(/`(\w+)`/g)) {
        const asked = question.trim().replace(/`/g, "");
        const sentence = `${asked.charAt(0).toUpperCase()}${asked.slice(1)}`;
        found.set(name, [...(found.get(name) ?? []), sentence]);
      }
    }
  }
  return found;
};

/** Where `npm run docs` writes the reference. */
export const referenceFolder = `${root}/docs/api`;

/** The pages of the reference by the name of the function, from the root of the site; none before `npm run docs`. */
export const referencePages = (): ReadonlyMap<string, string> => {
  const folder = `${referenceFolder}/functions`;
  const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith(".html")) : [];
  return new Map(
    names.map(
      (file) => [file.replace(/^.*\.(?=\w+\.html$)|\.html$/g, ""), `reference/functions/${file}`] as const,
    ),
  );
};

/** The published checks of a function. */
export const checksOf = (name: string): readonly PublishedCheck[] =>
  Object.values(allChecks)
    .flat()
    .filter(({ formulas }) => formulas.includes(name));

/** The chapters of the evidence: heading, anchor, text. */
export const evidenceChapters = (): readonly {
  readonly title: string;
  readonly id: string;
  readonly text: string;
}[] =>
  read("docs/evidence.md")
    .split(/^(?=## )/m)
    .slice(1)
    .map((text) => {
      const title = (text.split("\n")[0] ?? "").replace(/^## /, "");
      return { title, id: slug(title), text };
    });

/** Where the evidence for a function stands, from the root of the site. */
export const evidencePlaces = (): ReadonlyMap<string, string> =>
  new Map(
    evidenceChapters().flatMap(({ id, text }) =>
      [...text.matchAll(/^### (\w+)$/gm)].map(
        ([, name = ""]) => [name, `evidence/${id}.html#${slug(name)}`] as const,
      ),
    ),
  );

/** The entries of the catalogue by the function that computes them. */
export const entriesByFunction = (): ReadonlyMap<string, readonly CatalogueEntry[]> => {
  const found = new Map<string, CatalogueEntry[]>();
  for (const entry of catalogue()) found.set(entry.name, [...(found.get(entry.name) ?? []), entry]);
  return found;
};
