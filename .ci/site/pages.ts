// The pages of the site: written, in the order in which a reader meets them.
import { type CatalogueEntry, catalogue, equationText } from "../../src/teach/index.js";
import type { Indexed } from "./client/search-options.js";
import { formulaPage } from "./formula-page.js";
import { homePage, searchPage } from "./front-pages.js";
import { escaped, wordsOf } from "./html.js";
import type { Page } from "./layout.js";
import { render } from "./markdown.js";
import {
  checksOf,
  entriesByFunction,
  evidenceChapters,
  evidencePlaces,
  markdownIn,
  pathOf,
  questionsByFunction,
  read,
  referencePages,
  roomPage,
  roomPages,
} from "./repository.js";
import { indexedFormula } from "./search-index.js";
import { pageWords } from "./trade-words.js";

/** The pages and what the search finds of them. */
export interface Site {
  readonly pages: readonly Page[];
  readonly documents: readonly Indexed[];
  /** Pictures that the pages show: files of the repository. */
  readonly files: ReadonlySet<string>;
}

/** Pages of the repository that become pages of the site; the evidence is divided by itself. */
const sources = (): readonly string[] => [
  "README.md",
  "DEVELOPERS.md",
  "CHANGELOG.md",
  ...markdownIn("docs").filter((source) => source !== "docs/evidence.md"),
  ...markdownIn("docs/cases"),
];

const partOf = (source: string): string | undefined =>
  source.startsWith("docs/cases/") ? "Cases" : source.startsWith("docs/") ? "Rooms" : undefined;

/** The first paragraph of a page, for a list of pages. */
const firstLine = (markdown: string): string => {
  const paragraph = markdown.split(/\n\n+/).find((part, n) => n > 0 && /^[A-Za-z`*[]/.test(part)) ?? "";
  const words = wordsOf(paragraph);
  const sentence = /^.{20,240}?[.?](?=\s|$)/.exec(words)?.[0];
  return sentence ?? /^.{20,}?[.?:](?=\s|$)/.exec(words)?.[0].replace(/:$/, ".") ?? words.slice(0, 160);
};

/** A page of the formulas that a name in code leads to, where the catalogue has one. */
const formulaOf = (): ((code: string) => string | undefined) => {
  const byFunction = entriesByFunction();
  return (code) => {
    const [first, ...others] = byFunction.get(code) ?? [];
    if (first === undefined) return undefined;
    return others.length === 0 ? `formulas/${first.id}.html` : `formulas/index.html#${code}`;
  };
};

/** Where a link of a page of the repository leads in the site. */
const targetOf =
  (files: Set<string>) =>
  (file: string, anchor: string): string => {
    const chapters = evidenceChapters();
    if (file === "docs/evidence.md" && chapters.some(({ id }) => id === anchor))
      return `evidence/${anchor}.html`;
    if (file === "docs/evidence.md" || sources().includes(file))
      return `${pathOf(file)}${anchor === "" ? "" : `#${anchor}`}`;
    if (!file.startsWith("docs/figures/")) throw new Error(`${file} is linked to and is no page of the site`);
    files.add(file);
    return file.replace(/^docs\//, "");
  };

const markdownPages = (files: Set<string>): { pages: Page[]; documents: Indexed[] } => {
  const target = targetOf(files);
  const named = formulaOf();
  const pages: Page[] = [];
  const documents: Indexed[] = [];
  for (const source of sources()) {
    const markdown = read(source);
    const path = pathOf(source);
    const { html, title, headings } = render(markdown, { source, path, target, named });
    const part = partOf(source);
    const line = firstLine(markdown);
    pages.push({
      path,
      title,
      body: html,
      kind: "text",
      description: line,
      ...(part === undefined ? {} : { part }),
    });
    if (source === "CHANGELOG.md") continue;
    documents.push({
      id: path,
      title,
      kind: part === "Cases" ? "worked case" : part === "Rooms" ? "room" : "page",
      line,
      said: pageWords[path] ?? "",
      words: headings.map(({ text }) => text).join(" "),
      text: wordsOf(markdown).slice(0, 4000),
    });
  }
  return { pages, documents };
};

const evidencePages = (files: Set<string>): { pages: Page[]; documents: Indexed[] } => {
  const target = targetOf(files);
  const source = "docs/evidence.md";
  const place = (path: string) => ({ source, path, target, named: formulaOf() });
  const chapters = evidenceChapters();
  const head = read(source).split(/^(?=## )/m)[0] ?? "";
  const counts = chapters.find(({ id }) => id === "counts")?.text ?? "";
  const others = chapters.filter(({ id }) => id !== "counts");
  const index = render(head + counts, place("evidence/index.html"));
  const list = others.map(({ id, title }) => `<li><a href="${id}.html">${escaped(title)}</a></li>`).join("");
  const pages: Page[] = [
    {
      path: "evidence/index.html",
      title: "Evidence",
      part: "Evidence",
      kind: "text",
      body: `${index.html}<h2 id="by-room">By room</h2><ul class="columns">${list}</ul>`,
    },
    ...others.map(({ id, title, text }): Page => {
      const path = `evidence/${id}.html`;
      const { html } = render(`# Evidence: ${title}\n\n${text.replace(/^## .*\n/, "")}`, place(path));
      return { path, title: `Evidence: ${title}`, part: "Evidence", kind: "text wide", body: html };
    }),
  ];
  const documents = pages.map(({ path, title }) => ({
    id: path,
    title,
    kind: "evidence",
    line: "Published figures beside computed ones.",
    said: "",
    words: "published checks figures sources",
    text: "",
  }));
  return { pages, documents };
};

/** The pages that say more of a formula: its room, and the cases that use its function. */
const moreOf = (
  { name, room }: CatalogueEntry,
  reference: ReadonlyMap<string, string>,
): { title: string; path: string }[] => {
  const uses = new RegExp(`\\b${name}\\b`);
  const cases = markdownIn("docs/cases").filter(
    (source) => !source.endsWith("README.md") && uses.test(read(source)),
  );
  const pages = [...roomPage(room), ...cases].map((source) => ({
    title: (read(source).split("\n")[0] ?? "").replace(/^# |`/g, ""),
    path: pathOf(source),
  }));
  const path = reference.get(name);
  return path === undefined ? pages : [...pages, { title: `Reference: ${name}`, path }];
};

const formulaPages = (): { pages: Page[]; documents: Indexed[] } => {
  const questions = questionsByFunction();
  const byFunction = entriesByFunction();
  const places = evidencePlaces();
  const entries = catalogue();
  const reference = referencePages();
  return {
    pages: entries.map((entry) => {
      const evidence = places.get(entry.name);
      const own = byFunction.get(entry.name) ?? [];
      return formulaPage(entry, {
        // A question asks for a function: it stands on the page of the first formula that the function computes.
        questions: own[0] === entry ? (questions.get(entry.name) ?? []) : [],
        checks: checksOf(entry.name),
        ...(evidence === undefined ? {} : { evidence }),
        siblings: own.filter(({ id }) => id !== entry.id),
        more: moreOf(entry, reference),
      });
    }),
    documents: entries.map((entry) => indexedFormula(entry, questions.get(entry.name) ?? [])),
  };
};

const formulaList = (): Page => {
  const entries = catalogue();
  const rooms = [...new Set(entries.map(({ room }) => room))];
  const anchored = new Set<string>();
  const item = ({ id, name, title, equation }: CatalogueEntry): string => {
    const anchor = anchored.has(name) ? "" : ` id="${name}"`;
    anchored.add(name);
    return `<li${anchor}><a href="${id}.html">${escaped(title)}</a> <span class="eq">${escaped(equationText(equation))}</span></li>`;
  };
  const chapter = (room: string): string =>
    `<section><h2 id="${room}">${room}</h2><ul class="index">${entries
      .filter((entry) => entry.room === room)
      .map(item)
      .join("\n")}</ul></section>`;
  const ways = rooms.map((room) => `<a href="#${room}">${room}</a>`).join(" · ");
  return {
    path: "formulas/index.html",
    title: "Formulas",
    part: "Formulas",
    kind: "text",
    description: `${entries.length} formulas of turf care, each with a form.`,
    body: `<h1>Formulas</h1>
<p>${entries.length} formulas. Each page has the equation, a form that takes any unit, the worked steps, where people go wrong, and the
sources.</p>
<p class="ways">${ways}</p>
${rooms.map(chapter).join("\n")}`,
  };
};

const roomList = (): Page => {
  const own = new Set(roomPages());
  const row = (source: string): string => {
    const title = (read(source).split("\n")[0] ?? "").replace(/^# /, "").replace(/`/g, "");
    return `<li><a href="${pathOf(source).replace("rooms/", "")}">${escaped(title)}</a><p>${escaped(firstLine(read(source)))}</p></li>`;
  };
  const others = markdownIn("docs").filter((source) => source !== "docs/evidence.md" && !own.has(source));
  return {
    path: "rooms/index.html",
    title: "Rooms",
    part: "Rooms",
    kind: "text",
    body: `<h1>Rooms</h1>\n<p>The library has a room for each subject. A page opens with the questions that the room answers.</p>
<ul class="pages">${[...own].map(row).join("\n")}</ul>
<h2 id="about">About the library</h2>
<ul class="pages">${others.map(row).join("\n")}</ul>`,
  };
};

/** The functions of the library as they are looked up by name, where the reference was written. */
const referenceDocuments = (): Indexed[] =>
  [...referencePages()].map(([name, path]) => ({
    id: path,
    title: name,
    kind: "reference",
    line: `ratewright/${path.replace(/^.*\/|\.\w+\.html$/g, "").replace(/_/g, "/")}`,
    said: "",
    words: name.replace(/([A-Z])/g, " $1"),
    text: "",
  }));

/** All pages of the site. */
export const sitePages = (): Site => {
  const files = new Set<string>();
  const text = markdownPages(files);
  const evidence = evidencePages(files);
  const formulas = formulaPages();
  const cases = text.pages.filter(({ path, part }) => part === "Cases" && path !== "cases/index.html");
  return {
    pages: [
      homePage(cases),
      searchPage(),
      formulaList(),
      roomList(),
      ...text.pages,
      ...evidence.pages,
      ...formulas.pages,
    ],
    documents: [...formulas.documents, ...text.documents, ...evidence.documents, ...referenceDocuments()],
    files,
  };
};
