/**
 * A sheet of 20 problems and its key, to print and to load: `npx tsx examples/worksheet/run.ts 7 metric` makes sheet 7 in
 * metric units. The files go to `examples/worksheet/out`, or to the folder named last.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { worksheetCsv, worksheetHtml, worksheetMarkdown } from "ratewright/teach";
import { worksheet } from "ratewright/teach/problems";
import { worksheetQti } from "ratewright/teach/qti";

const [seed = "1", units = "US", folder] = process.argv.slice(2);
const out = folder ?? fileURLToPath(new URL("./out", import.meta.url));

const sheet = worksheet({ count: 20, seed: Number(seed), units: units === "metric" ? "metric" : "US" });
const title = `Winter training of the park crew, sheet ${seed}`;
const qti = worksheetQti(sheet);
const files = [
  { name: "sheet.html", text: worksheetHtml(sheet, { title, key: false }) },
  { name: "sheet-and-key.html", text: worksheetHtml(sheet, { title, choices: true }) },
  { name: "sheet-and-key.md", text: worksheetMarkdown(sheet, { title }) },
  { name: "sheet.csv", text: worksheetCsv(sheet) },
  ...[qti.test, ...qti.items].map(({ name, xml }) => ({ name: `qti/${name}`, text: xml })),
];

mkdirSync(`${out}/qti`, { recursive: true });
for (const { name, text } of files) writeFileSync(`${out}/${name}`, text);
console.log(
  `${sheet.problems.length} problems of ${new Set(sheet.problems.map(({ topic }) => topic)).size} topics`,
);
console.log(
  files
    .slice(0, 5)
    .map(({ name }) => name)
    .join(", "),
);
