// The chemistry of soil and water reports a second time, from formulas written out by hand.
import { quantity } from "../../src/quantity/index.js";
import {
  acidForAlkalinity,
  adjustedSodiumRatio,
  amountInSoil,
  blendShare,
  blendWaters,
  carbonateEquivalent,
  contentInSoil,
  contentOfCharge,
  equivalentWeight,
  exchangeableCharge,
  exchangeCapacity,
  gypsumEquivalent,
  gypsumRequirement,
  type Ion,
  ionBalance,
  irrigationWithLeaching,
  leachingRequirement,
  limeRequirement,
  sodiumAdsorptionRatio,
  sodiumPercentageFromRatio,
  sulfurForCarbonate,
} from "../../src/soil/index.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";
import { moles } from "./weights.js";

const room = "soil";
const meq = (value: number) => quantity(value, "meq/100 g");
const percent = (value: number) => quantity(value, "%");
const siemens = (value: number) => quantity(value, "dS/m");
const assumed = { assumed: "2,000,000 lb/acre" } as const;
const has = (findings: readonly { readonly code: string }[], code: string): boolean =>
  findings.some((one) => one.code === code);

/** Grams of CaCO3 that a mole of acid answers to. */
const perAcid = moles.CaCO3 / 2;

const equivalents: readonly Cell[] = (
  [
    ["Ca", moles.Ca / 2],
    ["Mg", moles.Mg / 2],
    ["K", moles.K],
    ["Na", moles.Na],
    ["Al", moles.Al / 3],
    ["NH4-N", moles.N],
    ["Cl", moles.Cl],
    ["SO4", moles.sulfateIon / 2],
    ["HCO3", moles.bicarbonateIon],
    ["CO3", moles.carbonateIon / 2],
    ["NO3", moles.nitrateIon],
    ["NO3-N", moles.N],
    ["CaCO3 equivalent", perAcid],
  ] as readonly (readonly [Ion, number])[]
).map(([ion, weight]) => [`weight of a charge of ${ion}`, weight, () => equivalentWeight(ion)] as const);

const rounded: readonly Cell[] = (
  [
    ["Ca", 200],
    ["Mg", 120],
    ["K", 391],
    ["Na", 230],
  ] as const
).map(
  ([ion, ppm]) =>
    [
      `ppm of ${ion} for a meq/100 g`,
      ppm,
      () => contentOfCharge(quantity(1, "meq/100 g", `${ion}/soil`), "whole numbers").in("mg/kg"),
    ] as const,
);

/** mL of acid for a liter, with a meq/L to take away, at 1 g/mL and 50 %. */
const dose = (acid: "sulfuric acid" | "phosphoric acid" | "nitric acid") =>
  acidForAlkalinity({
    alkalinity: quantity(2, "meq/L", "CaCO3 equivalent"),
    target: quantity(1, "meq/L", "CaCO3 equivalent"),
    acid,
    strength: quantity(50, "% w/w"),
    density: quantity(1, "g/mL", "product"),
  });
const buffered = (target: number): boolean =>
  !has(
    acidForAlkalinity({
      alkalinity: quantity(2, "meq/L", "CaCO3 equivalent"),
      target: quantity(target, "meq/L", "CaCO3 equivalent"),
      acid: "nitric acid",
      strength: quantity(50, "% w/w"),
      density: quantity(1, "g/mL", "product"),
    }).findings,
    "water/no-buffer-left",
  );

const chemistry: readonly ConstantCheck[] = cells(
  {
    room,
    reached: "derived",
    source:
      "atomic weights of IUPAC 2021, abridged, and the formulas of the compounds written out atom by atom",
  },
  [
    ...equivalents,
    ["CCE of calcium carbonate", 100, () => carbonateEquivalent("CaCO3")],
    ["CCE of dolomite", (100 * 2 * moles.CaCO3) / moles.dolomite, () => carbonateEquivalent("CaMg(CO3)2")],
    ["CCE of magnesium carbonate", (100 * moles.CaCO3) / moles.MgCO3, () => carbonateEquivalent("MgCO3")],
    ["CCE of hydrated lime", (100 * moles.CaCO3) / moles.slakedLime, () => carbonateEquivalent("Ca(OH)2")],
    ["CCE of burnt lime", (100 * moles.CaCO3) / moles.burntLime, () => carbonateEquivalent("CaO")],
    [
      "CCE of magnesium hydroxide",
      (100 * moles.CaCO3) / moles.magnesiumHydroxide,
      () => carbonateEquivalent("Mg(OH)2"),
    ],
    ["CCE of magnesia", (100 * moles.CaCO3) / moles.magnesia, () => carbonateEquivalent("MgO")],
    [
      "CCE of calcium silicate",
      (100 * moles.CaCO3) / moles.wollastonite,
      () => carbonateEquivalent("CaSiO3"),
    ],
    ["gypsum for gypsum", 1, () => gypsumEquivalent("gypsum")],
    ["anhydrite for gypsum", moles.anhydrite / moles.gypsum, () => gypsumEquivalent("anhydrite")],
    [
      "calcium chloride for gypsum",
      moles.calciumChloride / moles.gypsum,
      () => gypsumEquivalent("calcium chloride dihydrate"),
    ],
    ["sulfur for gypsum", moles.S / moles.gypsum, () => gypsumEquivalent("sulfur")],
    ["sulfuric acid for gypsum", moles.sulfuricAcid / moles.gypsum, () => gypsumEquivalent("sulfuric acid")],
    [
      "ferrous sulfate for gypsum",
      moles.copperas / moles.gypsum,
      () => gypsumEquivalent("ferrous sulfate heptahydrate"),
    ],
    [
      "alum for gypsum: three sulfates set three calcium free",
      moles.alum / 3 / moles.gypsum,
      () => gypsumEquivalent("aluminum sulfate octadecahydrate"),
    ],
    // 1 meq/L takes 1 mmol of a one-proton acid, half a mmol of a two-proton one; a mL at 1 g and 50 % has 500 mg
    ["sulfuric acid, mL/L", moles.sulfuricAcid / 2 / 500, () => dose("sulfuric acid").dose.in("mL/L")],
    ["phosphoric acid, mL/L", moles.phosphoricAcid / 500, () => dose("phosphoric acid").dose.in("mL/L")],
    ["nitric acid, mL/L", moles.nitricAcid / 500, () => dose("nitric acid").dose.in("mL/L")],
    ["sulfur that it brings", moles.S / 2, () => dose("sulfuric acid").brings.in("mg/L")],
    ["phosphorus that it brings", moles.P, () => dose("phosphoric acid").brings.in("mg/L")],
    ["nitrogen that it brings", moles.N, () => dose("nitric acid").brings.in("mg/L")],
    ["alkalinity under which next to no buffer is left, meq/L", 0.5, () => edge(buffered, 0.9, 0.1)],
    // 1 % of 2,000,000 lb is 20,000 lb of lime; a mole of sulfur for each mole of it
    [
      "sulfur for 1 % of lime, lb/acre",
      (20_000 * moles.S) / moles.CaCO3,
      () =>
        sulfurForCarbonate({
          carbonate: quantity(1, "% w/w", "CaCO3 equivalent/soil"),
          layer: assumed,
        }).in("lb/acre"),
    ],
    [
      "a meq/100 g of acidity in 2,000,000 lb, lb/acre",
      (10 * perAcid * 2e6) / 1e6,
      () =>
        limeRequirement({ method: "exchangeable acidity", acidity: meq(1), layer: assumed }).rate.in(
          "lb/acre",
        ),
    ],
    [
      "half of 4 meq/100 g, lb/acre",
      2 * perAcid * 20,
      () =>
        limeRequirement({
          method: "exchangeable acidity",
          acidity: meq(4),
          neutralize: 50,
          layer: assumed,
        }).rate.in("lb/acre"),
    ],
    [
      "from 40 to 80 % of 10 meq/100 g, lb/acre",
      4 * perAcid * 20,
      () =>
        limeRequirement({
          method: "base saturation",
          capacity: meq(10),
          baseSaturation: percent(40),
          targetSaturation: percent(80),
          layer: assumed,
        }).rate.in("lb/acre"),
    ],
    [
      "gypsum for 4.4 meq in 2,240,000 kg, kg/ha",
      (4.4 * 10 * (moles.gypsum / 2) * 2_240_000) / 1e6,
      () =>
        gypsumRequirement({
          capacity: meq(22),
          sodiumPercent: percent(35),
          targetPercent: percent(15),
          layer: { assumed: "2,240,000 kg/ha to 15 cm" },
          purity: 100,
        }).pure.in("kg/ha"),
    ],
    [
      "50 ppm in 2,000,000 lb",
      100,
      () => amountInSoil(quantity(50, "mg/kg", "K/soil"), assumed).in("lb/acre"),
    ],
    ["100 lb in 2,000,000 lb", 50, () => contentInSoil(quantity(100, "lb/acre", "K"), assumed).in("mg/kg")],
    [
      "a meq/100 g of calcium, from ppm",
      1,
      () => exchangeableCharge(quantity(10 * (moles.Ca / 2), "mg/kg", "Ca/soil")).in("meq/100 g"),
    ],
    [
      "a meq/100 g of calcium, in ppm",
      10 * (moles.Ca / 2),
      () => contentOfCharge(quantity(1, "meq/100 g", "Ca/soil")).in("mg/kg"),
    ],
    ["6 of acidity, 3 of calcium, 1 of magnesium: 40 % bases", 40, () => capacity().baseSaturation.in("%")],
    ["calcium's share of it, %", 30, () => capacity().cations.Ca?.saturation.in("%") ?? 0],
  ],
);

function capacity() {
  return exchangeCapacity({
    cations: {
      Ca: quantity(600, "mg/kg", "Ca/soil"),
      Mg: quantity(120, "mg/kg", "Mg/soil"),
      K: quantity(0, "mg/kg", "K/soil"),
      Na: quantity(0, "mg/kg", "Na/soil"),
    },
    acidity: meq(6),
    weights: "whole numbers",
  });
}

const water = {
  Na: quantity(8, "meq/L", "Na"),
  Ca: quantity(6, "meq/L", "Ca"),
  Mg: quantity(2, "meq/L", "Mg"),
  HCO3: quantity(4, "meq/L", "HCO3"),
  Cl: quantity(8, "meq/L", "Cl"),
  SO4: quantity(2, "meq/L", "SO4"),
};
const leaching = (soil: number, ec: number, method: "average root zone" | "drainage water") =>
  method === "drainage water"
    ? leachingRequirement({ method, water: siemens(ec), drainage: siemens(soil) })
    : leachingRequirement({ method, water: siemens(ec), soil: siemens(soil) });
const blended = (first: number, second: number): boolean => {
  try {
    blendWaters([
      { share: percent(first), water: {} },
      { share: percent(second), water: {} },
    ]);
    return true;
  } catch {
    return false;
  }
};
const salty = (SAR: number): number => sodiumPercentageFromRatio(SAR).percent?.in("%") ?? -1;

const waters: readonly ConstantCheck[] = [
  ...cells({ room, reached: "derived", source: "definitions, on figures that divide evenly" }, [
    // 8 / sqrt((6 + 2) / 2)
    ["sodium adsorption ratio", 4, () => sodiumAdsorptionRatio(water)],
    // cations 16, anions 14
    ["difference of an ion balance, %", 100 * (2 / 30), () => ionBalance(water).difference.in("%")],
    [
      "share of the first of two waters, %",
      60,
      () => blendShare({ first: siemens(1), second: siemens(2), target: siemens(1.4) }).in("%"),
    ],
    [
      "water for 4 mm with a fifth to leach",
      5,
      () => irrigationWithLeaching({ use: quantity(4, "mm"), share: percent(20) }).in("mm"),
    ],
    [
      "shares may miss 100 % by rounding to a tenth: 0.2",
      50.2,
      () => edge((share) => blended(50, share), 50, 60),
    ],
    ["and so below", 49.8, () => edge((share) => blended(50, share), 50, 40)],
    // 7.73 / 8.4: SAR of 4 times 1 + 8.4 - 7.4
    ["adjusted by pHc of 7.4", 8, () => adjustedSodiumRatio({ water, method: "pHc", pHc: 7.4 }).ratio],
    // (HCO3 / Ca)^(-2/3): eight times the bicarbonate leaves a quarter of the calcium
    ["calcium that eight times the bicarbonate leaves", 1 / 4, () => calcium(0.5) / calcium(0.0625)],
  ]),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "FAO Irrigation and Drainage Paper 29: LR = ECw / (5 ECe - ECw); the older LR = ECw / ECdw (Bureau of Reclamation)",
    },
    [
      ["leaching, 1 and 2.2 dS/m, %", 10, () => leaching(2.2, 1, "average root zone").share.in("%")],
      ["leaching, 1 and 4 dS/m of drainage, %", 25, () => leaching(4, 1, "drainage water").share.in("%")],
      [
        "share from which the equation is of little use, %",
        50,
        () =>
          100 *
          edge(
            (share) => !has(leaching(1, share, "drainage water").findings, "water/leaching-large"),
            0.1,
            0.9,
          ),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Oklahoma Administrative Code 165:10: ESP = 100 (-0.0126 + 0.01475 SAR) / (1 + (-0.0126 + 0.01475 SAR))",
    },
    [
      [
        "ESP at an SAR of 13",
        (100 * (-0.0126 + 0.01475 * 13)) / (1 - 0.0126 + 0.01475 * 13),
        () => salty(13),
      ],
      ["ESP at 1", (100 * (-0.0126 + 0.01475)) / (1 - 0.0126 + 0.01475), () => salty(1)],
      [
        "SAR below which it is less than nothing",
        0.0126 / 0.01475,
        () => edge((at) => salty(at) >= 0, 5, 0.1),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "CEC calculations, Clemson University Agricultural Service Laboratory: K 782, Mg 240, Ca 400, Na 460 in lb/acre",
    },
    [
      ...rounded,
      [
        "ppm of aluminum for 2 cmolc/kg (university course notes)",
        180,
        () => contentOfCharge(quantity(2, "cmolc/kg", "Al/soil"), "whole numbers").in("mg/kg"),
      ],
    ],
  ),
];

/** Calcium that stays at 1 dS/m, with so much bicarbonate for each of calcium. */
function calcium(share: number): number {
  const found = adjustedSodiumRatio({
    water: { ...water, HCO3: quantity(6 * share, "meq/L", "HCO3"), conductivity: siemens(1) },
    method: "equilibrium calcium",
  });
  return found.calcium?.in("meq/L") ?? Number.NaN;
}

/** Chemistry of reports and waters. */
export const soilChemistryConstants: readonly ConstantCheck[] = [...chemistry, ...waters];
