// What `npm run figures` does: draws the figures of the docs, out of the library's own results.
import { mkdirSync, writeFileSync } from "node:fs";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";
import { costFigures } from "./cost.js";
import { type Figure, figureSvg } from "./frame.js";
import { groundCover } from "./meadow.js";
import { nozzleChart } from "./nozzles.js";
import { degreeDays } from "./regulator.js";
import { releaseCurves } from "./release-curves.js";
import { soilWater } from "./soil-water.js";
import { cvAgainstSwath, patternOverlap } from "./spreader.js";

/** All figures. */
export const figures = (): readonly Figure[] => [
  releaseCurves(),
  patternOverlap(),
  cvAgainstSwath(),
  degreeDays(),
  groundCover(),
  nozzleChart(),
  soilWater(),
  ...costFigures(),
];

/** Where the figures lie. */
export const figureFolder: string = fileURLToPath(new URL("../../docs/figures/", import.meta.url));

if (argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(figureFolder, { recursive: true });
  for (const figure of figures()) writeFileSync(`${figureFolder}${figure.name}.svg`, figureSvg(figure));
}
