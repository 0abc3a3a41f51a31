import { quantity } from "../../src/quantity/index.js";
import {
  gravimetricWaterContent,
  soilBulkDensity,
  totalPorosity,
  volumetricWaterContent,
} from "../../src/soil/index.js";
import { waterVolume } from "../../src/water/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

const g = (value: number) => quantity(value, "g");
const davis: Source = {
  title: "Practice problems: porosity and bulk density",
  publisher: "University of California, Davis, Soil Science 100",
  where: "problems 1, 6 and 9",
  url: "https://lawr.ucdavis.edu/classes/ssc100/probsets/pset01.html",
};
const density = (value: number) => quantity(value, "g/mL", "soil");

/** Cores: water by weight and by volume, bulk density, pores. */
export const soilCoreChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-150",
    formulas: ["soilBulkDensity", "totalPorosity"],
    source: davis,
    reached: "read",
    given:
      "400 cm3 of 575 g dry; a bulk density of 1.35 g/cm3; 250 g with 65 g of water that fill 55 % of the pores, grains of 2.65 g/cm3",
    answers: [
      to("g/cm3", 1.44, 0.01),
      to("% pores", 49, 1),
      to("% pores of 185 g in 188 cm3", 63, 1),
      to("% of the pores filled", 55, 1),
    ],
    compute: () => {
      const clod = totalPorosity({
        bulkDensity: soilBulkDensity({ dry: g(185), volume: quantity(188, "mL") }),
        particleDensity: density(2.65),
        water: quantity((100 * 65) / 188, "% v/v"),
      });
      return [
        soilBulkDensity({ dry: g(575), volume: quantity(400, "mL") }).in("g/mL"),
        totalPorosity({ bulkDensity: density(1.35) }).total.in("%"),
        clod.total.in("%"),
        clod.saturation?.in("%") ?? Number.NaN,
      ];
    },
  },
  {
    entry: "soil-151",
    formulas: ["gravimetricWaterContent"],
    source: {
      title: "Water problems: problem set",
      publisher: "a university course in soils, PLSOIL 105 and 106",
      where: "worked example, question 1",
      url: "https://studylib.net/doc/18855260/water-problems--problem-set",
    },
    reached: "read",
    given: "205 cm3 at field capacity, 361.6 g wet and 298.8 g dry",
    answers: [to("% of the dry weight", 21, 0.1)],
    compute: () => [gravimetricWaterContent({ wet: g(361.6), dry: g(298.8) }).in("%")],
  },
  {
    entry: "soil-152",
    formulas: ["volumetricWaterContent", "gravimetricWaterContent", "soilBulkDensity"],
    source: {
      title: "Soil, Water, and Weather (SOIL 4683): solution for homework 2",
      publisher: "Oklahoma State University, read in a copy without its formulas",
      where: "questions 1 and 2",
      url: "http://spotidoc.com/doc/273943/solution-for-homework-%23-2",
    },
    reached: "read",
    given: "a core of 3.85 cm and 10.00 cm, 201.13 g wet and 177.75 g dry: what brings it to 0.35 by volume",
    answers: [to("cm of water", 1.5, 0.1), to("mL of water", 17, 1)],
    compute: () => {
      const size = { diameter: quantity(3.85, "cm"), length: quantity(10, "cm") };
      const now = volumetricWaterContent({
        gravimetric: gravimetricWaterContent({ wet: g(201.13), dry: g(177.75) }),
        bulkDensity: soilBulkDensity({ dry: g(177.75), ...size }),
      });
      const depth = quantity(10 * (0.35 - now.in("% v/v") / 100), "cm");
      const area = quantity((Math.PI / 4) * 3.85 ** 2, "cm2");
      return [depth.in("cm"), waterVolume({ depth, area }).in("mL")];
    },
  },
];
