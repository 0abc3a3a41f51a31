// The parts of docs/*.md that are drawn from the library itself, between marks such as
// `<!-- table: units -->` and `<!-- end -->`. Run as a program (`npm run docs:tables`) it writes them, and the report
// of what the package exports.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";
import {
  commonQuotients,
  oneWayProducts,
  perOf,
  productTable,
  quantityOf,
  rateQuotients,
  simpleQuotients,
  substances,
  unitName,
  unitTable,
} from "../../src/quantity/index.js";
import { writeApiReport } from "./api-report.js";
import { contestedPairs, inComments, options, publishedOrders } from "./disagreements.js";
import { floorOf } from "./floors.js";
import { read, rooms, root } from "./sources.js";

/** What a size in the table is a number of, by dimension. */
const si: Readonly<Record<string, string>> = {
  mass: "kg",
  length: "m",
  area: "m2",
  volume: "m3",
  time: "s",
  pressure: "Pa",
  temperature: "K",
  "temperature difference": "K",
  "degree-days": "K s",
  count: "",
  angle: "degrees",
  "mass/volume": "kg/m3",
  conductivity: "S/m",
  "exchange capacity": "mol of charge/kg",
  "charge/volume": "mol of charge/m3",
  "radiant exposure": "J/m2",
  irradiance: "W/m2",
};

const code = (text: string): string => `\`${text}\``;
const codes = (list: readonly string[]): string => list.map(code).join(", ");

const units = (): readonly string[] =>
  Object.entries(unitTable).flatMap(([dimension, sizes]) => [
    `**${dimension}**`,
    "",
    "| unit | name | size |",
    "| --- | --- | --- |",
    ...Object.entries(sizes).map(([unit, size]: [string, string]) => {
      const exact = /[a-z]/.test(size) ? size : `${size} ${si[dimension] ?? ""}`.trim();
      return `| ${code(unit)} | ${unitName(unit) || "a bare number"} | ${exact.replace(/\*/g, " x ")} |`;
    }),
    "",
  ]);

const quotients = (): readonly string[] => [
  "| dimension | offered first |",
  "| --- | --- |",
  ...[...simpleQuotients, ...rateQuotients]
    .filter((name) => !name.startsWith("money"))
    .map((name) => {
      const common = (commonQuotients as Readonly<Record<string, readonly string[]>>)[name];
      return `| ${name} | ${common === undefined ? "any quotient of the two" : codes(common)} |`;
    }),
];

const products = (): readonly string[] => {
  const rows = Object.entries({ ...productTable, ...oneWayProducts }).map(([ab, c]) => `${ab} = ${c}`);
  const fractions = /^(mass\/mass|volume\/volume|length\/length) \*/;
  return ["```text", ...rows.filter((row) => !fractions.test(row)), "```"];
};

const divisions = (): readonly string[] => [
  "| divided | by | gives | of |",
  "| --- | --- | --- | --- |",
  ...(
    [
      ["lb", "N", "lb", "N"],
      ["lb", "N", "lb", "product"],
      ["lb/acre", "N", "lb/acre", "N"],
      ["lb/acre", "N", "lb/acre", "product"],
      ["gal/acre", "spray", "gal/acre", "spray"],
      ["fl oz/acre", "product", "gal/acre", "spray"],
      ["gal/min", "water", "gal/min", "water"],
      ["lb/gal", "spray", "lb/gal", "spray"],
      ["mi/h", "none", "mi/h", "none"],
      ["ft", "none", "ft", "none"],
      ["acre", "none", "acre", "none"],
      ["h", "none", "h", "none"],
    ] as const
  ).map(([unit, of, by, what]) => {
    const q = perOf(quantityOf(1, unit, of, "a"), quantityOf(1, by, what, "b"));
    const stuff = (name: string): string => (name === "none" ? "" : ` of ${name}`);
    const result = q.dimension === "1" ? "a pure number" : code(q.dimension);
    return `| ${code(unit)}${stuff(of)} | ${code(by)}${stuff(what)} | ${result} | ${q.of === "none" ? "" : code(q.of)} |`;
  }),
];

const substanceList = (): readonly string[] => [`${codes(substances)}.`];

const errorCodes = (): readonly string[] =>
  read("src/quantity/errors/errors.ts")
    .split("\n")
    .filter((line) => line.startsWith(" * | "))
    .map((line) => line.slice(3));

/** The rooms by floor, with what each answers and its shelves, as the tree has them. */
const house = (): readonly string[] => [
  "| floor | room | what it answers | shelves |",
  "| --- | --- | --- | --- |",
  ...rooms()
    .map((room) => ({ room, floor: floorOf[room] ?? 0, index: read(`src/${room}/index.ts`) }))
    .sort((a, b) => b.floor - a.floor || a.room.localeCompare(b.room, "en"))
    .map(({ room, floor, index }) => {
      const answers = /^\/\/ (.+)\n/.exec(index)?.[1] ?? "";
      const shelves = [...index.matchAll(/^\/\/ ([a-z-]+): /gm)].map(([, shelf]) => shelf as string);
      return `| ${floor} | ${code(room)} | ${answers} | ${shelves.join(", ")} |`;
    }),
];

/** The counts of the page of evidence, in sentences. */
const evidence = (): readonly string[] => {
  const page = read("docs/evidence.md");
  const count = (pattern: RegExp): readonly string[] => {
    const [, ...found] = pattern.exec(page) ?? [];
    if (found.length === 0) throw new Error(`docs/evidence.md has no line for ${pattern.source}`);
    return found.map((digits) => Number(digits).toLocaleString("en-US"));
  };
  const [independent] = count(/\*\*(\d+) figures of independent evidence/);
  const [wrong] = count(/(\d+) figures wrong in the source/);
  const [checked, all] = count(/(\d+) of (\d+) exported functions with a published check/);
  return [
    `- Every test run computes ${independent} published figures again: worked examples and measurements that were read in`,
    "  extension bulletins, handbooks, papers and teaching pages.",
    `- ${wrong} printed figures turned out wrong in their source; each is listed with the reason.`,
    `- ${checked} of ${all} exported functions are checked against a published figure; the others are listed by name.`,
  ];
};

const tables: Readonly<Record<string, () => readonly string[]>> = {
  units,
  quotients,
  products,
  divisions,
  substances: substanceList,
  "error codes": errorCodes,
  evidence,
  house,
  "published orders": publishedOrders,
  "contested pairs": contestedPairs,
  "named options": options,
  "in comments": inComments,
};

/** The pages that have such parts. */
export const pages = [
  "docs/units.md",
  "docs/errors.md",
  "docs/disagreements.md",
  "DEVELOPERS.md",
  "README.md",
] as const;

/** A page with its tables drawn anew. */
export const drawn = (page: string): string =>
  page.replace(/<!-- table: ([a-z ]+) -->\n[\s\S]*?<!-- end -->/g, (_, name: string) => {
    const table = tables[name];
    if (table === undefined) throw new Error(`there is no table ${name}`);
    return `<!-- table: ${name} -->\n\n${table().join("\n").trimEnd()}\n\n<!-- end -->`;
  });

if (argv[1] === fileURLToPath(import.meta.url)) {
  for (const page of pages) {
    const file = join(root, page);
    writeFileSync(file, drawn(readFileSync(file, "utf8")));
    console.log(`${page} is written`);
  }
  writeApiReport();
  console.log("tests/house/api is written");
}
