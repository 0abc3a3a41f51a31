import { frozen } from "../../quantity/index.js";
import type { AcidityTable } from "./acidity-table.js";

/** Oregon State University, table 26-2: pounds of CaCO3 per 100 lb of material; below zero for a base. */
export const oregonAcidity: AcidityTable<"CaCO3 equivalent/product"> = /* @__PURE__ */ frozen({
  of: "CaCO3 equivalent/product",
  unit: "% w/w",
  source: {
    title: "Table 26-2 Common sources of N in turfgrass fertilizers",
    publisher: "Oregon State University forage and grass site",
    where: "table 26-2",
    url: "https://forages.prod.acquia.cws.oregonstate.edu/Tables/26-2",
  },
  rows: [
    { material: "ammonium nitrate", value: 62, nitrogenPercent: 33 },
    { material: "ammonium sulfate", value: 110, nitrogenPercent: 21 },
    { material: "potassium nitrate", value: -23, nitrogenPercent: 13 },
    { material: "urea", value: 71, nitrogenPercent: 45 },
  ],
});
