import { type Citation, frozen } from "../../quantity/index.js";
import type { UnitBasis } from "./salt-index.js";
import type { SaltRow, SaltTable } from "./salt-table.js";

const row = (material: string, value: number, basis: UnitBasis): SaltRow => ({ material, value, basis });

/** Where the table was printed. */
export const turfList: Citation = /* @__PURE__ */ frozen({
  title: "Saline fertiliser index (after McCarty 2001, golf course management text)",
  publisher: "turf agronomy company article",
  where: "list",
});

/**
 * A turf list after McCarty 2001, per unit; above 1.5 it calls high. The basis is not printed: it is the
 * one by which the figure fits other tables.
 */
export const turfListSaltIndexes: SaltTable<"per unit"> = /* @__PURE__ */ frozen({
  scale: "per unit",
  source: turfList,
  rows: [
    row("ammonium nitrate", 3, "N"),
    row("ammonium sulfate", 3.3, "N"),
    row("potassium nitrate", 1.6, "K2O"),
    row("calcium nitrate", 4.1, "N"),
    row("urea", 1.6, "N"),
    row("monoammonium phosphate", 0.5, "N+P2O5"),
    row("diammonium phosphate", 0.6, "N+P2O5"),
    row("potassium chloride", 2.2, "K2O"),
    row("potassium sulfate", 0.9, "K2O"),
  ],
});
