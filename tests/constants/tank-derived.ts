// Tank arithmetic by hand: halves, tenths and the sums that follow from a definition.
import { quantity } from "../../src/quantity/index.js";
import {
  dilutionAmounts,
  hardnessFromIons,
  hydrolysisLoss,
  relativeAcidity,
  rinseResidue,
  strengthOf,
  tankRinse,
} from "../../src/tank/index.js";
import { type ConstantCheck, cells } from "./check.js";

const twice = () =>
  tankRinse({ heel: quantity(1, "gal", "spray"), water: quantity(2, "gal", "water"), rinses: 2 });
const lost = () => hydrolysisLoss({ halfLife: quantity(1, "h"), time: quantity(2, "h") });

/** Figures that follow from a definition. */
export const tankDerivedConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room: "tank",
      reached: "derived",
      within: 1e-12,
      source: "a rinse as large as the heel leaves half of what was there",
    },
    [
      [
        "left after three rinses of the size of the heel, %",
        12.5,
        () =>
          rinseResidue({ heel: quantity(1, "gal", "product"), rinse: quantity(1, "gal", "water") }).in("%"),
      ],
      [
        "left after one of them, %",
        50,
        () =>
          rinseResidue({
            heel: quantity(1, "gal", "product"),
            rinse: quantity(1, "gal", "water"),
            rinses: 1,
          }).in("%"),
      ],
      ["left in a tank after two rinses of the size of the heel, %", 25, () => twice().residue.in("%")],
      ["left after both at once, %", 100 / 3, () => twice().inOneRinse.in("%")],
      ["left however finely the same water is divided, %", 100 / Math.E ** 2, () => twice().limit.in("%")],
    ],
  ),
  ...cells(
    {
      room: "tank",
      reached: "derived",
      within: 1e-12,
      source: "first-order loss: three quarters after two half-lives, 1 - (1 - 1/4) / ln 4 on average",
    },
    [
      ["lost at the end, %", 75, () => lost().atEnd.in("%")],
      ["lost on average, %", 100 * (1 - 0.75 / Math.log(4)), () => lost().onAverage.in("%")],
      ["acidity at pH 5 beside pH 7", 100, () => relativeAcidity(5)],
    ],
  ),
  ...cells(
    {
      room: "tank",
      reached: "derived",
      within: 2e-5,
      source: "CaCO3 of 40.078 + 12.011 + 3 x 15.999 over Ca 40.078 and Mg 24.305 (IUPAC, abridged)",
    },
    [
      [
        "hardness of 40.078 mg/L of calcium",
        40.078 + 12.011 + 3 * 15.999,
        () =>
          hardnessFromIons({ Ca: quantity(40.078, "mg/L", "Ca"), Mg: quantity(0, "mg/L", "Mg") }).in("mg/L"),
      ],
      [
        "hardness of 24.305 mg/L of magnesium",
        40.078 + 12.011 + 3 * 15.999,
        () =>
          hardnessFromIons({ Ca: quantity(0, "mg/L", "Ca"), Mg: quantity(24.305, "mg/L", "Mg") }).in("mg/L"),
      ],
    ],
  ),
  ...cells(
    {
      room: "tank",
      reached: "derived",
      within: 1e-12,
      source: "1 part in 8 is 12.5 %; 2 gal of 40 % by volume in 16 gal are 5 %",
    },
    [
      [
        "1 in 8, % v/v",
        12.5,
        () =>
          dilutionAmounts({ parts: 8, reading: "1 in x", finished: quantity(5, "gal", "spray") }).share.in(
            "% v/v",
          ),
      ],
      [
        "strength made, % v/v",
        5,
        () =>
          strengthOf({
            product: quantity(2, "gal", "product"),
            concentration: quantity(40, "% v/v", "ai:chlorothalonil/product"),
            finished: quantity(16, "gal", "spray"),
          }).in("% v/v"),
      ],
    ],
  ),
];
