// Writes docs/evidence.md, and the same figures as data.
import { mkdirSync, writeFileSync } from "node:fs";
import { bibliographyPage } from "./bibliography.js";
import { evidencePage } from "./evidence.js";
import { checkValues, checkValuesText } from "./values/check-values.js";

const folder = new URL("../../docs/", import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL("evidence.md", folder), evidencePage());
writeFileSync(new URL("check-values.json", folder), checkValuesText(await checkValues()));
writeFileSync(new URL("bibliography.md", folder), bibliographyPage());
console.log("docs/evidence.md, docs/check-values.json and docs/bibliography.md are written");
