// Cores by hand: 1 g of water is 1 mL, grains are 2.65 g/mL where nothing else is said.
import { quantity } from "../../src/quantity/index.js";
import {
  gravimetricWaterContent,
  soilBulkDensity,
  totalPorosity,
  volumetricWaterContent,
} from "../../src/soil/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const g = (value: number) => quantity(value, "g");
const density = (value: number) => quantity(value, "g/mL", "soil");
const pores = (bulk: number, grains?: number) =>
  totalPorosity({
    bulkDensity: density(bulk),
    ...(grains !== undefined && { particleDensity: density(grains) }),
    water: quantity(20, "% v/v"),
  });
const core = (dry: number) => soilBulkDensity({ dry: g(dry), volume: quantity(100, "mL") });

const byHand: readonly Cell[] = [
  ["24 g of water in 120 g dry, %", 20, () => gravimetricWaterContent({ wet: g(144), dry: g(120) }).in("%")],
  [
    "20 % by weight at 1.5, % by volume",
    30,
    () => volumetricWaterContent({ gravimetric: quantity(20, "%"), bulkDensity: density(1.5) }).in("% v/v"),
  ],
  [
    "10π g in a ring of 2 and 10 cm, g/mL",
    1,
    () =>
      soilBulkDensity({
        dry: g(10 * Math.PI),
        diameter: quantity(2, "cm"),
        length: quantity(10, "cm"),
      }).in("g/mL"),
  ],
  ["lightest in 100 mL, g", 5, () => edge((dry) => goes(() => core(dry)), 100, 1)],
  ["heaviest in 100 mL, g", 265, () => edge((dry) => goes(() => core(dry)), 100, 400)],
  ["pores at half of 2.65, %", 50, () => pores(1.325).total.in("%")],
  ["air beside 20 % of water, %", 30, () => pores(1.325).airFilled?.in("%") ?? 0],
  ["saturation of 20 in 50 %, %", 40, () => pores(1.325).saturation?.in("%") ?? 0],
];
const read: readonly Cell[] = [
  ["particle density where none is given", 2.65, () => pores(1.3).particleDensity.in("g/mL")],
];
const remembered: readonly Cell[] = [
  ["lightest grains, g/mL", 1, () => edge((at) => goes(() => pores(0.3, at)), 2, 0.5)],
  ["heaviest grains, g/mL", 5.3, () => edge((at) => goes(() => pores(0.3, at)), 2, 6)],
];
const room = "soil";

/** What a core says, by hand. */
export const soilCoreConstants: readonly ConstantCheck[] = [
  ...cells({ room, reached: "derived", source: "definitions, by hand" }, byHand),
  ...cells(
    { room, reached: "read", source: "University of California, Davis, Soil Science 100, problem 6" },
    read,
  ),
  ...cells({ room, reached: "from memory", source: "hematite, 5.3; organic matter above 1" }, remembered),
];
