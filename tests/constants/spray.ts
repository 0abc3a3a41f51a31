// Formulas of acids and salts and the sizes of tips, typed a second time.
import { formulaWeight } from "../../src/nutrient/index.js";
import {
  type AcidPartner,
  acidForms,
  acidShare,
  type HerbicideAcid,
  nozzleLimits,
  ratedFlow,
} from "../../src/spray/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const room = "spray";

/** The weight of a formula as chemists write it, `C8H6Cl2O3`. */
const weightOf = (formula: string): number => {
  const atoms: Record<string, number> = {};
  for (const [, symbol = "", count = ""] of formula.matchAll(/([A-Z][a-z]?)(\d*)/g))
    atoms[symbol] = (atoms[symbol] ?? 0) + Number(count || 1);
  return formulaWeight(atoms as Parameters<typeof formulaWeight>[0]);
};

const acids: Readonly<Record<HerbicideAcid, string>> = {
  "2,4-D": "C8H6Cl2O3",
  "2,4-DB": "C10H10Cl2O3",
  "dichlorprop-P": "C9H8Cl2O3",
  MCPA: "C9H9ClO3",
  "mecoprop-P": "C10H11ClO3",
  dicamba: "C8H6Cl2O3",
  triclopyr: "C7H4Cl3NO3",
  clopyralid: "C6H3Cl2NO2",
  aminopyralid: "C6H4Cl2N2O2",
  fluroxypyr: "C7H5Cl2FN2O3",
  quinclorac: "C10H5Cl2NO2",
  glyphosate: "C3H8NO5P",
};
/** The base or alcohol itself, and what leaves as it joins: nothing, a hydrogen, or water. */
const partners: Readonly<Record<AcidPartner, readonly [whole: string, leaves: string]>> = {
  sodium: ["Na", "H"],
  potassium: ["K", "H"],
  ammonium: ["NH3", ""],
  diammonium: ["N2H6", ""],
  dimethylammonium: ["C2H7N", ""],
  isopropylammonium: ["C3H9N", ""],
  triethylammonium: ["C6H15N", ""],
  diglycolammonium: ["C4H11NO2", ""],
  olamine: ["C2H7NO", ""],
  diolamine: ["C4H11NO2", ""],
  choline: ["C5H14NO", "H"],
  "2-ethylhexyl": ["C8H18O", "H2O"],
  meptyl: ["C8H18O", "H2O"],
  butotyl: ["C6H14O2", "H2O"],
};

const shares: readonly Cell[] = acidForms.map((form): Cell => {
  const [acid, partner] = [form.acid as HerbicideAcid, form.partner as AcidPartner];
  const [whole, leaves] = partners[partner];
  const own = weightOf(acids[acid]);
  const added = weightOf(whole) - (leaves === "" ? 0 : weightOf(leaves));
  return [
    `acid in ${acid} ${partner}, %`,
    (100 * own) / (own + added),
    () => acidShare(acid, partner).in("% w/w"),
  ];
});

const size = (code: string, litersPerMinute: number, gallonsPerMinute: number): readonly Cell[] => [
  [`size ${code} at 3 bar, L/min`, litersPerMinute, () => ratedFlow(code).flow.in("L/min")],
  [`size ${code} at 40 psi, gal/min`, gallonsPerMinute, () => ratedFlow(code, "40 psi").flow.in("gal/min")],
];

/** Acids and tips. */
export const sprayConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "from memory",
      source: "molecular formulas of the acids, bases and alcohols; M(acid) / M(salt or ester)",
    },
    shares,
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "ISO 10625: nominal flows at 3 bar, in steps of 0.4 L/min to the tenth of a gallon; codes in gal/min at 40 psi",
    },
    [
      ...size("01", 0.4, 0.1),
      ...size("015", 0.6, 0.15),
      ...size("02", 0.8, 0.2),
      ...size("025", 1, 0.25),
      ...size("03", 1.2, 0.3),
      ...size("04", 1.6, 0.4),
      ...size("05", 2, 0.5),
      ...size("06", 2.4, 0.6),
      ...size("08", 3.2, 0.8),
      ...size("10", 4, 1),
      ...size("15", 6, 1.5),
      ...size("20", 8, 2),
      ["pressure of the rating, bar", 3, () => ratedFlow("04").pressure.in("bar")],
      ["pressure of the other rating, psi", 40, () => ratedFlow("04", "40 psi").pressure.in("psi")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "limits of worn and uneven tips: Ohio State 10 %, a UK advisory page 5 %, Alberta 5 %, Georgia 10 %",
    },
    [10, 5, 5, 10].map(
      (limit, n): Cell => [
        `limit ${n + 1} of a tip, %`,
        limit,
        () => nozzleLimits()[n]?.limit.in("%") ?? Number.NaN,
      ],
    ),
  ),
];
