// Writes docs/mutants.md.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../house/sources.js";
import { mutantsPage } from "./page.js";

writeFileSync(join(root, "docs/mutants.md"), mutantsPage());
console.log("docs/mutants.md is written");
