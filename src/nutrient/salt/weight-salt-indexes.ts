import { frozen } from "../../quantity/index.js";
import type { SaltTable } from "./salt-table.js";

const row = (material: string, value: number): { material: string; value: number; basis: null } => ({
  material,
  value,
  basis: null,
});

/** "Salinity index of common fertilizers" (citing Mortvedt 2001): equal weights, sodium nitrate = 100. */
export const weightSaltIndexes: SaltTable<"by weight"> = /* @__PURE__ */ frozen({
  scale: "by weight",
  source: {
    title: "Salinity index of common fertilizers (citing Mortvedt 2001)",
    publisher: "agronomy company article",
    where: "table",
  },
  rows: [
    row("ammonia", 47.1),
    row("urea", 74.4),
    row("ammonium nitrate", 104),
    row("calcium nitrate", 65),
    row("monoammonium phosphate", 26.7),
    row("monopotassium phosphate", 8.4),
    row("diammonium phosphate", 29.2),
    {
      ...row("ammonium sulfate", 88.3),
      doubtful:
        "88.3 would be 4.2 per unit, where other tables print 3.25 (68.3 by weight, 69.0 as measured in 1943): likely a misprint that was copied",
    },
    row("triple superphosphate", 10.1),
    row("potassium nitrate", 69.5),
    row("single superphosphate", 7.8),
    row("sodium nitrate", 100),
    row("potassium chloride", 116.2),
    row("calcium carbonate", 4.7),
    row("potassium sulfate", 42.6),
    row("calcium sulfate", 8.1),
    row("sodium chloride", 153.8),
  ],
});
