import { frozen } from "../../quantity/index.js";
import type { AcidityTable } from "./acidity-table.js";

/** A growers' page: pounds of CaCO3 per short ton, as United States labels state it; below zero for a base. */
export const growerAcidity: AcidityTable<"CaCO3 equivalent/product"> = /* @__PURE__ */ frozen({
  of: "CaCO3 equivalent/product",
  unit: "lb/US ton",
  source: {
    title: "N source potential acidity and basicity",
    publisher: "growers' questions page",
    where: "table",
  },
  rows: [
    { material: "ammonium sulfate", value: 2200 },
    { material: "urea", value: 1680 },
    { material: "diammonium phosphate", value: 1400 },
    { material: "ammonium nitrate", value: 1220 },
    { material: "monoammonium phosphate", value: 1120 },
    { material: "calcium nitrate", value: -400 },
    { material: "potassium nitrate", value: -520 },
    { material: "sodium nitrate", value: -580 },
  ],
});
