// Tables of the nutrient room, typed a second time from what their sources print.
import {
  atomicWeights,
  densitySlopeOfUan,
  formFactor,
  type LiquidMaterialId,
  labelChart20,
  liquidMaterials,
} from "../../src/nutrient/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const room = "nutrient";
const read = { room, reached: "read" } as const;
const remembered = { room, reached: "from memory" } as const;
const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);

const weights = {
  H: 1.008,
  C: 12.011,
  F: 18.998,
  Na: 22.99,
  Al: 26.982,
  Si: 28.085,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Fe: 55.845,
} as const;
const chemistry: readonly ConstantCheck[] = [
  ...cells(
    { ...remembered, source: "IUPAC, standard atomic weights abridged to five digits, conventional values" },
    Object.entries(weights).map(
      ([element, weight]): Cell => [
        `atomic weight of ${element}`,
        weight,
        () => atomicWeights[element as keyof typeof weights],
      ],
    ),
  ),
  ...cells(
    {
      room,
      reached: "derived",
      within: 1e-9,
      source: "IUPAC weights: O 15.999, N 14.007, K 39.098, Si 28.085, S 32.06; K2O, SiO2, SO3, SO4 and NO3",
    },
    [
      ["K in K2O", (2 * 39.098) / (2 * 39.098 + 15.999), () => number(formFactor("K2O", "K"))],
      ["Si in SiO2", 28.085 / (28.085 + 2 * 15.999), () => number(formFactor("SiO2", "Si"))],
      ["S in SO3", 32.06 / (32.06 + 3 * 15.999), () => number(formFactor("SO3", "S"))],
      ["S in SO4", 32.06 / (32.06 + 4 * 15.999), () => number(formFactor("SO4", "S"))],
      ["N in NO3", 14.007 / (14.007 + 3 * 15.999), () => number(formFactor("NO3", "NO3-N"))],
    ],
  ),
];

const densities = (id: LiquidMaterialId, rows: readonly (readonly [f: number, lb: number])[]) => [
  ...rows.flatMap(([f, lb], n): readonly Cell[] => [
    [`${id}: temperature ${n + 1}, °F`, f, () => number(liquidMaterials[id].fahrenheit[n])],
    [`${id} at ${f} °F, lb/gal`, lb, () => number(liquidMaterials[id].lbPerGal[n])],
  ]),
];
const poly = () => liquidMaterials["ammonium polyphosphate"];
const saltOut = (id: LiquidMaterialId, f: number, publisher: RegExp): Cell => [
  `${id} salts out at, °F`,
  f,
  () =>
    number(
      liquidMaterials[id].saltOut.find(({ source }) =>
        publisher.test(typeof source === "string" ? source : (source.publisher ?? "")),
      )?.fahrenheit,
    ),
];
const liquids: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "Virginia SPES-199, table 1: 28 % at 30 to 90 °F 10.76 10.70 10.67 10.64 10.61 10.58, 30 % 10.99 10.93 10.90 10.87 10.84 10.81, salt out 14 °F",
    },
    [
      ...densities("UAN 28", [
        [30, 10.76],
        [50, 10.7],
        [60, 10.67],
        [70, 10.64],
        [80, 10.61],
        [90, 10.58],
      ]),
      ...densities("UAN 30", [
        [30, 10.99],
        [50, 10.93],
        [60, 10.9],
        [70, 10.87],
        [80, 10.84],
        [90, 10.81],
      ]),
      saltOut("UAN 30", 14, /Virginia/),
      [
        "change of density, lb/gal for 1 °F: 10.58 less 10.67 over 30",
        -0.003,
        () => densitySlopeOfUan.in("lb/gal"),
      ],
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Estimated physical characteristics of fertilizer material: typical density and salt-out temperature (28-0-0 -1 10.67, 32-0-0 28 11.06, 10-34-0 -10 11.65, 12-0-0-26S 11.04, 10-0-0-10Zn 32 10.4, 7-21-7 20 11.2, 4-10-10 18 10.3); its table of density by temperature (20 °F: 10.78, 10.98, 11.17, 11.76 for 28, 30, 32 % and 10-34-0; 30 °F: 10.76, 10.95, 11.14, 11.74)",
    },
    [
      ["32-0-0, first temperature, °F", 20, () => number(liquidMaterials["UAN 32"].fahrenheit[0])],
      ["32-0-0, second temperature, °F", 30, () => number(liquidMaterials["UAN 32"].fahrenheit[1])],
      ["32-0-0 at 20 °F, lb/gal", 11.17, () => number(liquidMaterials["UAN 32"].lbPerGal[0])],
      ["32-0-0 at 30 °F, lb/gal", 11.14, () => number(liquidMaterials["UAN 32"].lbPerGal[1])],
      ["10-34-0, first temperature, °F", 20, () => number(poly().fahrenheit[0])],
      ["10-34-0, second temperature, °F", 30, () => number(poly().fahrenheit[1])],
      ["10-34-0 at 20 °F, lb/gal", 11.76, () => number(poly().lbPerGal[0])],
      ["10-34-0 at 30 °F, lb/gal", 11.74, () => number(poly().lbPerGal[1])],
      ["32-0-0, lb/gal", 11.06, () => number(liquidMaterials["UAN 32"].lbPerGal[2])],
      ["10-34-0, lb/gal", 11.65, () => number(liquidMaterials["ammonium polyphosphate"].lbPerGal[2])],
      ["12-0-0-26S, lb/gal", 11.04, () => number(liquidMaterials["ammonium thiosulfate"].lbPerGal[0])],
      ["10-0-0-10Zn, lb/gal", 10.4, () => number(liquidMaterials["zinc ammonia solution"].lbPerGal[0])],
      ["7-21-7, lb/gal", 11.2, () => number(liquidMaterials["7-21-7"].lbPerGal[0])],
      ["4-10-10, lb/gal", 10.3, () => number(liquidMaterials["4-10-10"].lbPerGal[0])],
      saltOut("UAN 32", 28, /fact sheet/),
      saltOut("ammonium polyphosphate", -10, /fact sheet/),
      saltOut("zinc ammonia solution", 32, /fact sheet/),
      saltOut("7-21-7", 20, /fact sheet/),
      saltOut("4-10-10", 18, /fact sheet/),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Michigan State, Ensuring proper fertilizer concentration, label chart (fert-075): 50 ppm 0.5 3.38 6.75 oz/gal and 0.32 mS/cm, 100 ppm 1 6.75 13.5 0.64, 200 ppm 2 13.5 27 1.28",
    },
    (
      [
        [50, 0.5, 3.38, 6.75, 0.32],
        [100, 1, 6.75, 13.5, 0.64],
        [200, 2, 13.5, 27, 1.28],
      ] as const
    ).flatMap(([ppm, by15, by100, by200, conductivity], n): readonly Cell[] => {
      const of = () => labelChart20.rows[n];
      return [
        [`chart: row ${n + 1}, ppm`, ppm, () => number(of()?.ppm)],
        [`chart: ${ppm} ppm at 1:15`, by15, () => number(of()?.ouncesPerGallon["1:15"])],
        [`chart: ${ppm} ppm at 1:100`, by100, () => number(of()?.ouncesPerGallon["1:100"])],
        [`chart: ${ppm} ppm at 1:200`, by200, () => number(of()?.ouncesPerGallon["1:200"])],
        [`chart: ${ppm} ppm, mS/cm`, conductivity, () => number(of()?.conductivity)],
      ];
    }),
  ),
];

/** Weights of atoms, and tables of liquids. */
export const nutrientTableConstants: readonly ConstantCheck[] = [...chemistry, ...liquids];
