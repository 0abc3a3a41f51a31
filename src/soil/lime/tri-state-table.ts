import { frozen } from "../../quantity/index.js";
import type { LimeTable } from "./lime-table.js";

/**
 * US tons an acre to 8 in of limestone with a neutralizing value of 90 %, by SMP buffer pH, mineral soils. The
 * lime test index is ten times the buffer pH. The figures are from memory: only the heading and the rules were read.
 * A later edition changed the rates of mineral soils: down by 30 to 35 % in Ohio, up by 10 to 20 % in Indiana and
 * Michigan ("More changes to the Tri-State Fertilizer Recommendations", notes of a soil laboratory of the Great Lakes).
 */
export const triStateTable: LimeTable = /* @__PURE__ */ frozen({
  by: "bufferPH",
  targets: [6.8, 6.5, 6],
  unit: "US ton/acre",
  rows: [
    [6.8, 1.4, 1.2, 1],
    [6.7, 2.4, 2.1, 1.7],
    [6.6, 3.4, 2.9, 2.4],
    [6.5, 4.5, 3.8, 3.1],
    [6.4, 5.5, 4.7, 3.9],
    [6.3, 6.5, 5.5, 4.6],
    [6.2, 7.5, 6.4, 5.3],
    [6.1, 8.6, 7.2, 6],
    [6, 9.6, 8.1, 6.7],
  ],
  source: {
    title: "Tri-State Fertilizer Recommendations, Bulletin E-2567; the figures from memory",
    publisher: "Michigan State University, The Ohio State University, Purdue University",
    year: 1995,
    where: "tons of limestone by SMP lime test index, 8 in",
  },
});
