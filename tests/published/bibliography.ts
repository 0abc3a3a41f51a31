// Draws docs/bibliography.md: every work that the code, the catalogue of formulas or a published check cites, each once.
import ts from "typescript";
import { catalogue } from "../../src/teach/index.js";
import { filesBelow, read } from "../house/sources.js";
import type { Source } from "./check.js";
import { allChecks } from "./index.js";

/** A work, and who cites it. */
export interface Work {
  readonly key: string;
  readonly title: string;
  readonly publisher: string;
  readonly years: readonly number[];
  readonly urls: readonly string[];
  /** Files of `src`, as `tank/order`. */
  readonly code: readonly string[];
  /** Formulas of the catalogue. */
  readonly formulas: readonly string[];
  /** Entries of published checks. */
  readonly checks: readonly string[];
}

interface Use {
  readonly source: Source;
  readonly code?: string;
  readonly formula?: string;
  readonly check?: string;
}

const textOf = (node: ts.Expression | undefined): string | undefined =>
  node !== undefined && ts.isStringLiteralLike(node) ? node.text : undefined;

/** The citations that stand in a file as records: a title and a publisher side by side. */
const citationsIn = (file: string): readonly Source[] => {
  const text = read(file);
  if (!/\bpublisher\b/.test(text)) return [];
  const found: Source[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isObjectLiteralExpression(node)) {
      const field = (name: string): ts.Expression | undefined =>
        node.properties.find(
          (property): property is ts.PropertyAssignment =>
            ts.isPropertyAssignment(property) && property.name.getText() === name,
        )?.initializer;
      const [title, publisher, url] = ["title", "publisher", "url"].map((name) => textOf(field(name)));
      const year = field("year");
      if (title !== undefined && publisher !== undefined)
        found.push({
          title,
          publisher,
          ...(year !== undefined && ts.isNumericLiteral(year) ? { year: Number(year.text) } : {}),
          ...(url === undefined ? {} : { url }),
        });
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true));
  return found;
};

const uses = (): readonly Use[] => [
  ...filesBelow("src")
    .filter((file) => file.endsWith(".ts") && !file.startsWith("src/teach/"))
    .flatMap((file) =>
      citationsIn(file).map((source) => ({ source, code: file.replace(/^src\/|\/[^/]*$/g, "") })),
    ),
  ...catalogue().flatMap(({ id, sources }) => sources.map((source) => ({ source, formula: id }))),
  ...Object.values(allChecks).flatMap((checks) =>
    checks.map(({ source, entry }) => ({ source, check: entry })),
  ),
];

const plain = (text: string): string =>
  text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();

const words = (text: string, most: number): string =>
  plain(text)
    .split(" ")
    .filter((word) => !/^(the|of|and|a|an|for|in|on|to|university|extension|by)$/.test(word))
    .slice(0, most)
    .join("-");

const distinct = <T>(things: readonly (T | undefined)[]): readonly T[] =>
  [...new Set(things)].filter((thing): thing is T => thing !== undefined).sort();

/** Every work, by publisher and title. */
export const works = (): readonly Work[] => {
  const groups = new Map<string, Use[]>();
  for (const use of uses()) {
    const same = sameWork(use.source);
    groups.set(same, [...(groups.get(same) ?? []), use]);
  }
  const taken = new Set<string>();
  return [...groups.keys()].sort().map((same) => {
    const group = groups.get(same) as readonly Use[];
    const { title, publisher } = (group[0] as Use).source;
    const years = distinct(group.map(({ source }) => source.year));
    const stem = [words(publisher, 2), years[0], words(title, 3)].filter(Boolean).join("-");
    let key = stem;
    for (let n = 2; taken.has(key); n++) key = `${stem}-${n}`;
    taken.add(key);
    return {
      key,
      title,
      publisher,
      years,
      urls: distinct(group.map(({ source }) => source.url)),
      code: distinct(group.map(({ code }) => code)),
      formulas: distinct(group.map(({ formula }) => formula)),
      checks: distinct(group.map(({ check }) => check)),
    };
  });
};

/** The keys of works by publisher and title. */
let keys: ReadonlyMap<string, string> | undefined;

const sameWork = ({ publisher, title }: Pick<Source, "publisher" | "title">): string =>
  `${plain(publisher)}|${plain(title)}`;

/** The key of a work that is cited, as a list: empty where a citation is of no work that the library names. */
export const keysOf = (source: Source): readonly string[] => {
  keys ??= new Map(works().map((work) => [sameWork(work), work.key]));
  const key = keys.get(sameWork(source));
  return key === undefined ? [] : [key];
};

const cell = (text: string): string => text.replace(/\|/g, "\\|").replace(/\s+/g, " ").trim();

const cited = ({ title, years, urls }: Work): string => {
  const [first, ...others] = urls;
  const name = first === undefined ? title : `[${title.replace(/[[\]]/g, "")}](${first})`;
  const also = others.map((url, n) => `[${n + 2}](${url})`).join(", ");
  return cell([`${name}${also === "" ? "" : `, also ${also}`}`, years.join(", ")].filter(Boolean).join(", "));
};

const list = (what: string, names: readonly string[]): readonly string[] =>
  names.length === 0
    ? []
    : [
        `${what} ${names.length > 8 ? `${names.slice(0, 8).join(", ")} and ${names.length - 8} more` : names.join(", ")}`,
      ];

/** The page. */
export const bibliographyPage = (): string => {
  const all = works();
  const lines = [
    "# Bibliography",
    "",
    "Every work that the code, the formulas of `ratewright/teach` or a published check cites, by publisher. `npm run evidence`",
    "draws this page; a test fails where it is out of date. What a work says beside what the library computes is on the",
    "[evidence page](evidence.md). A source was read as far as the tools of the day reached it: the evidence page says of",
    "each figure whether it was read, derived, or written down from memory.",
    "",
    `${all.length} works: ${all.filter(({ checks }) => checks.length > 0).length} behind published checks, ${all.filter(({ code }) => code.length > 0).length} named in the code, ${all.filter(({ formulas }) => formulas.length > 0).length} behind formulas of the catalogue.`,
    "",
    "| key | publisher | work | cited by |",
    "| --- | --- | --- | --- |",
    ...all.map((work) => {
      const by = [
        ...list("code:", work.code),
        ...list("formulas:", work.formulas),
        ...list("checks:", work.checks),
      ].join("; ");
      return `| <a id="${work.key}"></a>${work.key} | ${cell(work.publisher)} | ${cited(work)} | ${cell(by)} |`;
    }),
  ];
  return `${lines.join("\n")}\n`;
};
