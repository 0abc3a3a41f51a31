import { frozen } from "../../quantity/index.js";
import type { SaltTable } from "./salt-table.js";

const row = (
  material: string,
  value: number,
  percent?: number,
): { material: string; value: number; basis: null; percent?: number } =>
  percent === undefined ? { material, value, basis: null } : { material, value, basis: null, percent };

/** "Salt index values for some garden materials": equal weights, sodium nitrate = 100, with slow sources. */
export const gardenSaltIndexes: SaltTable<"by weight"> = /* @__PURE__ */ frozen({
  scale: "by weight",
  source: {
    title: "Salt index values for some garden materials",
    publisher: "horticulture company article",
    where: "table",
  },
  rows: [
    row("ammonium nitrate", 105, 33),
    row("ammonium sulfate", 69, 21),
    {
      ...row("calcium nitrate", 69, 15.5),
      doubtful: "other tables print 65, and 52.5 is remembered from 1943; the same 69 stands a line above",
    },
    row("dolomite", 1),
    row("magnesium sulfate", 44, 16),
    row("gypsum", 8),
    row("isobutylidene diurea", 5, 30),
    row("potassium chloride", 114, 60),
    row("potassium sulfate", 46, 50),
    row("superphosphate", 8, 20),
    row("ureaform", 10, 38),
    row("urea", 75, 45),
  ],
});
