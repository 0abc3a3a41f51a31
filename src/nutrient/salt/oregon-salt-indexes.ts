import { type Citation, frozen } from "../../quantity/index.js";
import type { SaltRow, SaltTable } from "./salt-table.js";

const row = (
  material: string,
  percent: number,
  value: number,
  burn: "low" | "moderate" | "high",
): SaltRow => ({
  material,
  value,
  basis: "N",
  percent,
  burn,
});

/** Where the table was printed. */
export const oregonTable: Citation = /* @__PURE__ */ frozen({
  title: "Table 26-2 Common sources of N in turfgrass fertilizers",
  publisher: "Oregon State University forage and grass site",
  where: "table 26-2",
  url: "https://forages.prod.acquia.cws.oregonstate.edu/Tables/26-2",
});

/** Oregon State University, table 26-2: per unit of nitrogen, with the burn potential that it states. */
export const oregonSaltIndexes: SaltTable<"per unit"> = /* @__PURE__ */ frozen({
  scale: "per unit",
  source: oregonTable,
  rows: [
    row("ammonium nitrate", 33, 3.2, "high"),
    row("ammonium sulfate", 21, 3.3, "high"),
    row("isobutylidene diurea", 31, 0.2, "low"),
    row("activated sewage sludge", 6, 0.7, "low"),
    row("potassium nitrate", 13, 5.3, "high"),
    row("sulfur-coated urea", 32, 0.7, "low"),
    row("urea", 45, 1.7, "moderate"),
    row("ureaform or methylene urea", 38, 0.3, "low"),
  ],
});
