import { frozen } from "../../quantity/index.js";
import type { AcidityTable } from "./acidity-table.js";

/** A crop adviser study wiki, table 2: pounds of CaCO3 per pound of nitrogen. */
export const adviserAcidity: AcidityTable<"CaCO3 equivalent/N"> = /* @__PURE__ */ frozen({
  of: "CaCO3 equivalent/N",
  unit: "lb/lb",
  source: {
    title: "Acidity generated from common fertilizers",
    publisher: "crop adviser study wiki",
    where: "table 2",
  },
  rows: [
    { material: "ammonia", value: 1.8 },
    { material: "urea", value: 1.8 },
    { material: "urea ammonium nitrate", value: 1.8 },
    { material: "ammonium sulfate", value: 5.4 },
    {
      material: "monoammonium phosphate",
      value: 5.4,
      doubtful: "the figure fits; the source labels the material 18-46-0, which is diammonium phosphate",
    },
    { material: "diammonium phosphate", value: 3.6 },
  ],
});
