// Writes docs/evidence.md.
import { mkdirSync, writeFileSync } from "node:fs";
import { evidencePage } from "./evidence.js";

const folder = new URL("../../docs/", import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL("evidence.md", folder), evidencePage());
console.log("docs/evidence.md is written");
