// Tank arithmetic by hand: halves, tenths and the sums that follow from a definition.
import { quantity } from "../../src/quantity/index.js";
import {
  amountFor,
  dilutionAmounts,
  hardnessFromIons,
  hydrolysisLoss,
  loadAmounts,
  relativeAcidity,
  rinseResidue,
  strengthOf,
  tankLoads,
  tankRinse,
} from "../../src/tank/index.js";
import { type ConstantCheck, cells, edge, goes } from "./check.js";

const twice = () =>
  tankRinse({ heel: quantity(1, "gal", "spray"), water: quantity(2, "gal", "water"), rinses: 2 });
const lost = () => hydrolysisLoss({ halfLife: quantity(1, "h"), time: quantity(2, "h") });

/** Thirty millionths of a mean lifetime. */
const brief = 3e-5;
const loads = tankLoads({
  area: quantity(1, "acre"),
  applicationVolume: quantity(10, "gal/acre", "spray"),
  capacity: quantity(50, "gal", "spray"),
});
const coarse = (ounces: number) =>
  loadAmounts({
    loads,
    products: [{ id: "a", form: "dry", rate: quantity(ounces, "oz/acre", "product:a") }],
    increments: { dry: { unit: "oz", step: 1 } },
  }).findings.find(({ code }) => code === "load/step-too-coarse");

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
  ...cells(
    {
      room: "tank",
      reached: "derived",
      within: 3e-10,
      source: "the series of 1 - (1 - exp(-y))/y: y/2 - y^2/6 + y^3/24",
    },
    [
      [
        "lost on average in a brief time, %",
        100 * (brief / 2 - brief ** 2 / 6 + brief ** 3 / 24),
        () =>
          hydrolysisLoss({
            halfLife: quantity(Math.LN2 * 1e6, "s"),
            time: quantity(brief * 1e6, "s"),
          }).onAverage.in("%"),
      ],
    ],
  ),
  ...cells({ room: "tank", reached: "derived", source: "1 oz where 0.8 is computed is a quarter too much" }, [
    ["too much by the scale, %", 25, () => Number(coarse(0.8)?.params.percent)],
  ]),
  ...cells(
    {
      room: "tank",
      reached: "derived",
      within: 1e-8,
      source: "no share of the spray is more than the spray, 100 %",
    },
    [
      [
        "most product in the spray, % v/v",
        100,
        () =>
          edge(
            (share) =>
              goes(() =>
                amountFor({
                  rate: quantity(share, "% v/v", "product:a/spray"),
                  form: "liquid",
                  sprayVolume: quantity(10, "gal", "spray"),
                }),
              ),
            50,
            200,
          ),
      ],
    ],
  ),
];
