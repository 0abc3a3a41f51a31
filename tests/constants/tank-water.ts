// Facts of water in the tank, typed a second time from what the sources print, and the edges of its report.
import { quantity } from "../../src/quantity/index.js";
import {
  ammoniumSulfateMinimum,
  ammoniumSulfateRates,
  carrierPHs,
  fixedJarAmount,
  hardnessThresholds,
  type WaterTest,
  waterReport,
} from "../../src/tank/index.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";

const room = "tank";
const read = { room, reached: "read" } as const;
const remembered = { room, reached: "from memory" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;

type Ion = "K" | "Na" | "Ca" | "Mg" | "Fe";
/** Pounds in 100 gal for 1000 ppm of one cation. */
const pounds = (ion: Ion) => () =>
  ammoniumSulfateMinimum({ [ion]: quantity(1000, "mg/L", ion) } as never).minimum.in("lb/gal") * 100;
const sulfate: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      within: 1e-6,
      source: "Using AMS to combat hard water antagonism, Purdue: 0.002 X ppm K + 0.005 X ppm Na + ...",
    },
    [
      ["ammonium sulfate for 1000 ppm of K, lb/100 gal", 2, pounds("K")],
      ["ammonium sulfate for 1000 ppm of Na, lb/100 gal", 5, pounds("Na")],
    ],
  ),
  ...cells(
    {
      ...remembered,
      within: 1e-6,
      source: "the equation of North Dakota State: 0.002 K + 0.005 Na + 0.009 Ca + 0.014 Mg + 0.042 Fe",
    },
    [
      ["ammonium sulfate for 1000 ppm of Ca, lb/100 gal", 9, pounds("Ca")],
      ["ammonium sulfate for 1000 ppm of Mg, lb/100 gal", 14, pounds("Mg")],
      ["ammonium sulfate for 1000 ppm of Fe, lb/100 gal", 42, pounds("Fe")],
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Washington State University small grains: 8.5 to 17; North Dakota State: 4-6 suffices in most waters",
    },
    [
      ["ammonium sulfate: enough for most, least", 4, () => number(ammoniumSulfateRates[0]?.min)],
      ["ammonium sulfate: enough for most, most", 6, () => number(ammoniumSulfateRates[0]?.max)],
      ["ammonium sulfate: general, least", 8.5, () => number(ammoniumSulfateRates[1]?.min)],
      [
        "ammonium sulfate: general, most: 51 lb in 300 gal",
        51 / 3,
        () => number(ammoniumSulfateRates[1]?.max),
      ],
    ],
  ),
];

/** Rows of thresholds as printed, each met by its value, its unit and a word of its publisher. */
const threshold = (value: number, unit: string, publisher: RegExp, nth = 0): Cell => [
  `hard water: ${value} ${unit}, ${publisher.source}`,
  value,
  () =>
    number(
      hardnessThresholds.filter((one) => one.unit === unit && publisher.test(one.source.publisher))[nth]
        ?.value,
    ),
];
const water: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "thresholds: USGA 2018, Canola Council, WeedSmart, Manitoba Agriculture 2022, University of Saskatchewan in Grainews",
    },
    [
      threshold(200, "mg/L", /USGA/),
      threshold(300, "mg/L", /Canola/),
      threshold(300, "mg/L", /WeedSmart/),
      threshold(350, "mg/L", /Manitoba/),
      threshold(20, "grain/gal", /Grainews/, 0),
      threshold(35, "grain/gal", /Grainews/, 1),
      threshold(40, "grain/gal", /Grainews/, 2),
    ],
  ),
  ...cells(
    {
      ...read,
      source: "Grounds Maintenance: below 6.0; Clemson in GrowerTalks: 5.0-6.0; Colorado adviser 2002: 4-6",
    },
    [
      ["pH, Grounds Maintenance, most", 6, () => number(carrierPHs[0]?.max)],
      ["pH, Clemson, least", 5, () => number(carrierPHs[1]?.min)],
      ["pH, Clemson, most", 6, () => number(carrierPHs[1]?.max)],
      ["pH, Colorado, least", 4, () => number(carrierPHs[2]?.min)],
      ["pH, Colorado, most", 6, () => number(carrierPHs[2]?.max)],
    ],
  ),
  ...cells({ room, reached: "derived", source: "Utah State University 2012, per pint; a quart is two" }, [
    [
      "jar: fertilizer for a quart, g",
      2.2,
      () => number(fixedJarAmount("dry fertilizer", quantity(1, "qt", "water"))?.value),
    ],
  ]),
];

const says = (code: string, test: WaterTest): boolean =>
  waterReport({ test }).findings.some((one) => one.code === code);
const bicarbonate = (mg: number): WaterTest => ({ HCO3: quantity(mg, "mg/L", "HCO3") });
const reported = (code: string, name: string, input: Parameters<typeof waterReport>[0]) => () =>
  Number(waterReport(input).findings.find((one) => one.code === code)?.params[name]);
const reports: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      within: 1e-8,
      source:
        "water is neutral at pH 7; Grounds Maintenance: below 6.0; Colorado adviser 2002: 4-6; Saskatchewan, Spray water quality, March 2021: bicarbonate from 500 ppm",
    },
    [
      ["alkaline above pH", 7, () => edge((pH) => says("water/pH-alkaline", { pH }), 8, 6.5)],
      ["to be sprayed soon above pH", 6, () => edge((pH) => says("water/pH-spray-soon", { pH }), 6.5, 5)],
      ["acid below pH", 4, () => edge((pH) => says("water/pH-acid", { pH }), 3, 5)],
      [
        "bicarbonate that is told from, mg/L",
        500,
        () => edge((mg) => says("water/bicarbonate", bicarbonate(mg)), 600, 400),
      ],
      [
        "bicarbonate that is told of, mg/L",
        500,
        reported("water/bicarbonate", "limit", { test: bicarbonate(600) }),
      ],
    ],
  ),
  ...cells(
    {
      ...read,
      within: 1e-6,
      source: "Using AMS to combat hard water antagonism, Purdue: 0.002 lb per ppm of K in 100 gal",
    },
    [
      [
        "reported for 1000 ppm of K, lb/100 gal",
        2,
        reported("water/sulfate-minimum", "poundsPer100Gallons", {
          test: { K: quantity(1000, "mg/L", "K") },
        }),
      ],
      [
        "reported beside it as given, lb/100 gal",
        1,
        reported("water/sulfate-below-minimum", "poundsPer100Gallons", {
          test: { K: quantity(1000, "mg/L", "K") },
          ammoniumSulfate: quantity(0.01, "lb/gal", "product:ams/spray") as never,
        }),
      ],
    ],
  ),
];

/** Facts of water, typed a second time. */
export const tankWaterConstants: readonly ConstantCheck[] = [...sulfate, ...water, ...reports];
