import { frozen } from "../../quantity/index.js";
import type { UnitBasis } from "./salt-index.js";
import type { SaltRow, SaltTable } from "./salt-table.js";

const row = (material: string, value: number, basis: UnitBasis): SaltRow => ({ material, value, basis });

/** New Mexico State University: per unit, scaled so that sodium nitrate is 100 (16.5 times the index per unit). */
export const newMexicoSaltIndexes: SaltTable<"per unit, sodium nitrate 100"> = /* @__PURE__ */ frozen({
  scale: "per unit, sodium nitrate 100",
  source: {
    title: "Fertilizer part 2 (salt index)",
    publisher: "New Mexico State University, Eddy County Extension",
    year: 2017,
    where: "table",
  },
  rows: [
    row("ammonium sulfate", 53.7, "N"),
    row("ammonium nitrate", 49.3, "N"),
    {
      ...row("potassium chloride", 26.7, "K2O"),
      doubtful:
        "26.7 is the figure of urea on this scale (1.618 times 16.5); potassium chloride should be about 32",
    },
    row("potassium sulfate", 14.1, "K2O"),
    row("ammonia", 9.4, "N"),
    row("diammonium phosphate", 7.5, "N+P2O5"),
    row("monoammonium phosphate", 6.7, "N+P2O5"),
    row("single superphosphate", 6.4, "P2O5"),
    row("triple superphosphate", 3.5, "P2O5"),
  ],
});
