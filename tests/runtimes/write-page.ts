// `npm run runtimes:page`: draws docs/runtimes.md from results.json.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../house/sources.js";
import { type RuntimeResults, runtimesPage } from "./page.js";

const results = JSON.parse(readFileSync(join(root, "tests/runtimes/results.json"), "utf8")) as RuntimeResults;
writeFileSync(join(root, "docs/runtimes.md"), runtimesPage(results));
console.log("docs/runtimes.md is written");
