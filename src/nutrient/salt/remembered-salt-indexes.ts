import { frozen } from "../../quantity/index.js";
import type { UnitBasis } from "./salt-index.js";
import type { SaltRow, SaltTable } from "./salt-table.js";

const row = (material: string, value: number, basis: UnitBasis): SaltRow => ({ material, value, basis });

/**
 * The partial salt indexes of Mortvedt 2001 (after Rader et al. 1943) as remembered: not read. They
 * reproduce published blends (10-34-0 20.0, 7-21-7 27.8), and the twelve that `weightSaltIndexes` has too are its
 * figures divided by the percent of the grade, within half a percent (ammonium sulfate apart, which is doubtful
 * there). Another book (McCarty 2001, as quoted) prints 0.6 for diammonium phosphate, 0.5 for monoammonium
 * phosphate, 2.2 for potassium chloride and 1.6 for potassium nitrate.
 */
export const rememberedSaltIndexes: SaltTable<"per unit"> = /* @__PURE__ */ frozen({
  scale: "per unit",
  source: "from memory",
  rows: [
    row("ammonia", 0.572, "N"),
    row("ammonium nitrate", 3.059, "N"),
    row("ammonium sulfate", 3.252, "N"),
    row("ammonium thiosulfate", 7.533, "N"),
    row("urea", 1.618, "N"),
    row("UAN 28", 2.25, "N"),
    row("UAN 32", 2.221, "N"),
    row("10-34-0", 0.455, "N+P2O5"),
    row("diammonium phosphate", 0.456, "N+P2O5"),
    {
      ...row("monoammonium phosphate", 0.405, "N+P2O5"),
      doubtful: "0.405 needs 66 units (11-55-0); as 11-52-0 it would be 0.424",
    },
    row("triple superphosphate", 0.224, "P2O5"),
    row("single superphosphate", 0.39, "P2O5"),
    row("monopotassium phosphate", 0.097, "P2O5+K2O"),
    row("potassium chloride", 1.936, "K2O"),
    row("potassium nitrate", 1.219, "N+K2O"),
    row("potassium sulfate", 0.852, "K2O"),
    row("potassium thiosulfate", 2.72, "K2O"),
    row("sodium nitrate", 6.08, "N"),
  ],
});
