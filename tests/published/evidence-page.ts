// Writes docs/evidence.md, and the same figures as data.
import { mkdirSync, writeFileSync } from "node:fs";
import { evidencePage } from "./evidence.js";
import { checkValues, checkValuesText } from "./values/check-values.js";

const folder = new URL("../../docs/", import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL("evidence.md", folder), evidencePage());
writeFileSync(new URL("check-values.json", folder), checkValuesText(await checkValues()));
console.log("docs/evidence.md and docs/check-values.json are written");
