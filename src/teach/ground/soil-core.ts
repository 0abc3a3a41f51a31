import {
  gravimetricWaterContent,
  soilBulkDensity,
  totalPorosity,
  volumetricWaterContent,
} from "../../soil/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { courseWaterProblems, davisCores } from "../works/soil-and-air-works.js";

const weight = ["oz", "g"] as const;
const grams = ["g", "g"] as const;
const density = ["lb/ft3", "g/mL"] as const;
const perMilliliter = ["g/mL", "g/mL"] as const;
const share = ["%", "%"] as const;

/** What a core of soil says of its pores and its water. */
export const soilCores: readonly FormulaSpec[] = [
  formula({
    id: "soil-bulk-density",
    name: "soilBulkDensity",
    title: "Bulk density of a soil by a core",
    inputs: [
      ["dry", "M", "weight after the oven", "soil", weight, [18, 24], grams],
      ["volume", "V", "volume of the core", "none", ["in3", "mL"], [20, 28], ["mL", "mL"]],
    ],
    output: ["B", "bulk density", "soil", density, perMilliliter],
    equation: "B = M / V",
    run: ({ dry, volume }) => soilBulkDensity({ dry, volume }),
    traps: ["Weighing the core wet: its water is no part of it."],
    basis: "definition",
    sources: [davisCores],
  }),
  formula({
    id: "gravimetric-water-content",
    name: "gravimetricWaterContent",
    title: "Water of a soil by weight",
    inputs: [
      ["wet", "W", "weight as taken", "soil", weight, [12, 14]],
      ["dry", "D", "weight after the oven", "soil", weight, [9, 11]],
    ],
    output: ["w", "water in percent of the dry weight", "none", share],
    equation: "w = 100 * (W - D) / D",
    run: ({ wet, dry }) => gravimetricWaterContent({ wet, dry }),
    traps: ["Dividing by the wet weight: the dry soil is the base."],
    basis: "definition",
    sources: [courseWaterProblems],
  }),
  formula({
    id: "volumetric-water-content",
    name: "volumetricWaterContent",
    title: "Water of a soil by volume",
    inputs: [
      ["gravimetric", "w", "water in percent of the dry weight", "none", share, [5, 25]],
      ["bulkDensity", "B", "bulk density", "soil", density, [75, 100], perMilliliter],
    ],
    output: ["v", "water in percent of the volume", "none", ["% v/v", "% v/v"]],
    equation: "v = w * B",
    run: ({ gravimetric, bulkDensity }) => volumetricWaterContent({ gravimetric, bulkDensity }),
    traps: ["Taking percent by weight for percent by volume: the bulk density stands between them."],
    basis: "definition",
    sources: [davisCores],
  }),
  formula({
    id: "total-porosity",
    name: "totalPorosity",
    title: "Pores of a soil",
    inputs: [
      ["bulkDensity", "B", "bulk density", "soil", density, [75, 100]],
      ["particleDensity", "R", "density of the grains", "soil", density, [155, 170]],
    ],
    output: ["P", "pores in percent of the volume", "none", share],
    equation: "P = 100 * (1 - B / R)",
    run: ({ bulkDensity, particleDensity }) => totalPorosity({ bulkDensity, particleDensity }).total,
    traps: ["Taking 2.65 g/mL for peat: organic grains are lighter."],
    basis: "definition",
    sources: [davisCores],
  }),
];
