// FAO Irrigation and Drainage Paper 29, revision 1, table 11: calcium that stays in the soil water, meq/L.
import { quantity } from "../../src/quantity/index.js";
import { adjustedSodiumRatio } from "../../src/soil/index.js";
import { type ConstantCheck, cells } from "./check.js";

/** Conductivity, dS/m, and the calcium beside it where bicarbonate is a twentieth of the calcium of the water. */
const row: readonly (readonly [conductivity: number, calcium: number])[] = [
  [0.1, 13.2],
  [0.2, 13.61],
  [0.3, 13.92],
  [0.5, 14.4],
  [0.7, 14.79],
  [1, 15.26],
  [1.5, 15.91],
  [2, 16.43],
  [3, 17.28],
  [4, 17.97],
  [6, 19.07],
  [8, 19.94],
];

/** Calcium that stays of a water that holds 1 meq/L of it. */
const calcium = (share: number, conductivity: number): number =>
  adjustedSodiumRatio({
    water: {
      Na: quantity(4, "meq/L", "Na"),
      Ca: quantity(1, "meq/L", "Ca"),
      Mg: quantity(1, "meq/L", "Mg"),
      HCO3: quantity(share, "meq/L", "HCO3"),
      conductivity: quantity(conductivity, "dS/m"),
    },
    method: "equilibrium calcium",
  }).calcium?.in("meq/L") ?? Number.NaN;

/** The row that the library has. The other rows follow from it; the tests of the shelf hold them. */
export const calciumTableConstants: readonly ConstantCheck[] = cells(
  {
    room: "soil",
    source: "FAO Irrigation and Drainage Paper 29, revision 1, table 11, as a public program carries it",
    reached: "read",
  },
  row.map(([conductivity, printed]) => [
    `calcium at ${conductivity} dS/m`,
    printed,
    () => calcium(0.05, conductivity),
  ]),
);
