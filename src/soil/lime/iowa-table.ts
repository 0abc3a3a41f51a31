import { frozen } from "../../quantity/index.js";
import type { LimeTable } from "./lime-table.js";

/** Pounds of calcium carbonate an acre to 6 in, by buffer pH. The last figure breaks the steps of its column. */
export const iowaTable: LimeTable = /* @__PURE__ */ frozen({
  by: "bufferPH",
  targets: [6.5, 6.9],
  unit: "lb/acre",
  rows: [
    [7, 0, 1100],
    [6.8, 600, 2700],
    [6.6, 2100, 4400],
    [6.4, 3500, 6000],
    [6.2, 5000, 7700],
    [6, 6400, 9300],
    [5.8, 7900, 10600],
  ],
  source: {
    title: "Liming terminology and analysis, quoting Iowa State PM 1688, 2002",
    publisher: "University of Wisconsin-Madison Soil Science",
    where: "lime recommendation in Iowa",
  },
});
