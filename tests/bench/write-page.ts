// `npm run bench:page`: draws docs/performance.md and its figures from results.json.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { costFigures } from "../../.ci/figures/cost.js";
import { figureFolder } from "../../.ci/figures/draw.js";
import { figureSvg } from "../../.ci/figures/frame.js";
import { root } from "../house/sources.js";
import type { Results } from "./compare/rows.js";
import { performancePage } from "./page.js";

const results = JSON.parse(readFileSync(join(root, "tests/bench/results.json"), "utf8")) as Results;
writeFileSync(join(root, "docs/performance.md"), performancePage(results));
for (const figure of costFigures()) writeFileSync(`${figureFolder}${figure.name}.svg`, figureSvg(figure));
console.log("docs/performance.md and its figures are written");
