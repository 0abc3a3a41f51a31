import { describe, expect, test } from "vitest";
import type { CivilDate } from "../../src/calendar/index.js";
import { type Finding, quantity } from "../../src/quantity/index.js";
import {
  acidForAlkalinity,
  adjustedSodiumRatio,
  blendWaters,
  exchangeCapacity,
  foliarMicronutrient,
  ionBalance,
  leachingRequirement,
  nutrientNeed,
  sodiumPercentageFromRatio,
  splitAmendment,
  sulfurApplications,
  sulfurToIncorporate,
} from "../../src/soil/index.js";

const meq = (value: number) => quantity(value, "meq/100 g");
const assumed = { assumed: "2,000,000 lb/acre" } as const;
const water = {
  Na: quantity(8, "meq/L", "Na"),
  Ca: quantity(6, "meq/L", "Ca"),
  Mg: quantity(2, "meq/L", "Mg"),
  HCO3: quantity(4, "meq/L", "HCO3"),
  Cl: quantity(4, "meq/L", "Cl"),
  SO4: quantity(2, "meq/L", "SO4"),
  conductivity: quantity(1, "dS/m"),
};
const acid = (target: number) =>
  acidForAlkalinity({
    alkalinity: quantity(2, "meq/L", "CaCO3 equivalent"),
    target: quantity(target, "meq/L", "CaCO3 equivalent"),
    acid: "sulfuric acid",
    strength: quantity(93, "% w/w"),
    density: quantity(1.835, "g/mL", "product"),
  }).findings;
const spray = (oz: number) =>
  foliarMicronutrient({ product: quantity(oz, "oz/1000 ft2", "product"), element: "Fe", percent: 20 })
    .findings;
const capacity = (change: object) =>
  exchangeCapacity({
    cations: {
      Ca: quantity(600, "mg/kg", "Ca/soil"),
      Mg: quantity(120, "mg/kg", "Mg/soil"),
      K: quantity(40, "mg/kg", "K/soil"),
    },
    acidity: meq(1),
    ...change,
  }).findings;
const sodium = { Na: quantity(10, "mg/kg", "Na/soil") };
const split = (first: string, total: number) =>
  splitAmendment({
    total: quantity(total, "lb/1000 ft2", "product"),
    most: quantity(50, "lb/1000 ft2", "product"),
    source: "the laboratory",
    first: first as CivilDate,
    monthsApart: 6,
  }).findings;
const seldom = (freeLime: boolean) =>
  sulfurApplications({
    total: quantity(5, "lb/1000 ft2", "S"),
    mowingHeight: quantity(3, "in"),
    freeLime,
    first: "2026-09-15" as CivilDate,
    monthsApart: 2,
  }).findings;
const need = (test: number, nutrient: "P" | "K") =>
  nutrientNeed({
    nutrient,
    test: quantity(test, "mg/kg", `${nutrient}/soil`),
    extractant: "Mehlich 3",
    guideline: "sufficiency, Mehlich 3",
    soil: "sand",
    use: quantity(1, "g/m2", nutrient),
    layer: assumed,
  } as Parameters<typeof nutrientNeed>[0]).findings;

type Told = readonly (readonly [code: string, severity: Finding["severity"], text: string])[];
const hazard: Told[number] = [
  "water/acid-hazard",
  "warning",
  "Acid burns skin, eyes and lungs. Add acid to water, never water to acid. Follow its label and safety data sheet, and have a trained person handle it.",
];
const told: readonly (readonly [name: string, found: () => readonly Finding[], told: Told])[] = [
  ["acid, with buffer left", () => acid(1), [hazard]],
  [
    "acid, with next to no buffer left",
    () => acid(0.2),
    [
      hazard,
      [
        "water/no-buffer-left",
        "caution",
        "Almost no alkalinity is left: a little more acid then drops the pH sharply.",
      ],
    ],
  ],
  ["an adjusted ratio", () => adjustedSodiumRatio({ water, method: "equilibrium calcium" }).findings, []],
  ["an adjusted ratio by pHc", () => adjustedSodiumRatio({ water, method: "pHc", pHc: 7.4 }).findings, []],
  [
    "ions that do not balance: 16 and 10",
    () => ionBalance(water).findings,
    [
      [
        "water/ions-off-balance",
        "warning",
        "Cations and anions are 23.08 % apart: a figure, a unit or an ion of this report is missing or wrong.",
      ],
    ],
  ],
  [
    "ions a tenth apart: 16 and 13.1",
    () => ionBalance({ ...water, Cl: quantity(7.1, "meq/L", "Cl") }).findings,
    [],
  ],
  [
    "a blend of waters not tested alike",
    () =>
      blendWaters([
        { share: quantity(50, "%"), water: { Na: water.Na, Ca: water.Ca } },
        { share: quantity(50, "%"), water: { Na: water.Na } },
      ]).findings,
    [["water/not-tested-in-all", "caution", "Not every water was tested for Ca: the blend leaves it out."]],
  ],
  [
    "leaching more than half",
    () =>
      leachingRequirement({
        method: "drainage water",
        water: quantity(3, "dS/m"),
        drainage: quantity(4, "dS/m"),
      }).findings,
    [
      [
        "water/leaching-large",
        "warning",
        "75 % of the water would have to leach: near its limit the equation is of little use.",
      ],
    ],
  ],
  [
    "much iron product",
    () => spray(5),
    [
      [
        "iron/outside-published-rate",
        "warning",
        "5 oz of product per 1,000 sq ft is above the published 2 to 4 oz. Check that the rate is of product, not of iron.",
      ],
    ],
  ],
  [
    "little iron product",
    () => spray(1),
    [
      [
        "iron/outside-published-rate",
        "note",
        "1 oz of product per 1,000 sq ft is below the published 2 to 4 oz. Check that the rate is of product, not of iron.",
      ],
    ],
  ],
  ["iron product as published", () => spray(3), []],
  [
    "no sodium tested",
    () => capacity({}),
    [["soil/sodium-not-tested", "note", "Sodium was not tested and counts as none."]],
  ],
  [
    "a soil with free lime",
    () =>
      capacity({
        cations: {
          Ca: quantity(600, "mg/kg", "Ca/soil"),
          Mg: quantity(120, "mg/kg", "Mg/soil"),
          K: quantity(40, "mg/kg", "K/soil"),
          ...sodium,
        },
        pH: 7.5,
      }),
    [
      [
        "soil/capacity-by-sum-high",
        "caution",
        "At pH 7.5 free lime or salts may dissolve in the extract: the exchange capacity by summation is then too high, and base saturation means little.",
      ],
    ],
  ],
  [
    "a ratio below the fit",
    () => sodiumPercentageFromRatio(0.5).findings,
    [
      [
        "sodium/below-fit",
        "note",
        "At a ratio of 0.5, below 0.85, the equation turns negative: next to no sodium is exchangeable.",
      ],
    ],
  ],
  // eight parts half a year apart end three and a half years on
  [
    "a split of four years",
    () => split("2026-10-01", 400),
    [
      [
        "soil/split-outlasts-test",
        "caution",
        "The last application falls on 2030-04-01, more than three years after the first: test the soil again before then.",
      ],
    ],
  ],
  ["a split of three years", () => split("2026-10-01", 350), []],
  [
    "sulfur on free lime",
    () => seldom(true),
    [
      [
        "sulfur/free-lime",
        "warning",
        "The soil holds free lime: these rates will not lower its pH in a useful time. Treat the symptom instead, such as iron on the leaf.",
      ],
    ],
  ],
  ["sulfur without", () => seldom(false), []],
  [
    "sulfur on bare soil",
    () =>
      sulfurToIncorporate({ material: "sulfur", texture: "clay", pH: 7.2, targetPH: 6.2, freeLime: false })
        .findings,
    [
      [
        "sulfur/bare-soil-only",
        "warning",
        "For bare soil, mixed in well ahead of planting: on standing turf this rate can kill the grass. Test the soil again before a second dose.",
      ],
    ],
  ],
  [
    "much phosphorus",
    () => need(60, "P"),
    [
      [
        "soil/test-above-range",
        "caution",
        "P tests 60 ppm, above the range of the guideline, which ends at 54.",
      ],
    ],
  ],
  [
    "much potassium",
    () => need(120, "K"),
    [
      [
        "soil/test-above-range",
        "note",
        "K tests 120 ppm, above the range of the guideline, which ends at 116.",
      ],
    ],
  ],
  ["potassium at the end of its range", () => need(116, "K"), []],
];

describe("what the soil room says", () => {
  test.each(told.map(([name, found, list]) => [name, found, list] as const))("%s", (_name, found, list) => {
    expect(found().map(({ code, severity, text }) => [code, severity, text])).toEqual(list);
  });
});
