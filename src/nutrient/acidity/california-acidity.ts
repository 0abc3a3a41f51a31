import { frozen } from "../../quantity/index.js";
import type { AcidityTable } from "./acidity-table.js";

/** University of California table: pounds of CaCO3 per pound of nitrogen; below zero for a base. */
export const californiaAcidity: AcidityTable<"CaCO3 equivalent/N"> = /* @__PURE__ */ frozen({
  of: "CaCO3 equivalent/N",
  unit: "lb/lb",
  source: {
    title: "Nitrogen fertilizer characteristics",
    publisher: "county environmental health file (University of California table)",
    where: "table 1",
  },
  rows: [
    { material: "anhydrous ammonia", value: 1.8, nitrogenPercent: 82 },
    { material: "ammonium sulfate", value: 5.24, nitrogenPercent: 21 },
    { material: "ammonium nitrate", value: 1.82, nitrogenPercent: 33.5 },
    { material: "calcium nitrate", value: -1.29, nitrogenPercent: 15.5 },
    { material: "urea", value: 1.56, nitrogenPercent: 46 },
    { material: "aqua ammonia", value: 1.8, nitrogenPercent: 20 },
    { material: "CAN-17", value: 0.53, nitrogenPercent: 17 },
    { material: "UAN-32", value: 1.78, nitrogenPercent: 32 },
    { material: "urea solution", value: 1.56, nitrogenPercent: 23 },
    { material: "ammonium nitrate solution", value: 1.82, nitrogenPercent: 20 },
  ],
});
