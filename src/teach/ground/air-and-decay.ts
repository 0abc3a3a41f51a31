import { fractionRemaining, nitrogenForGrowth, timeUntilRemaining } from "../../interval/index.js";
import { irrigationWithLeaching, onDryBasis, onWetBasis } from "../../soil/index.js";
import {
  atmosphericPressure,
  clearSkyRadiation,
  meanSaturationVaporPressure,
  netShortwaveRadiation,
  saturationVaporPressure,
} from "../../water/index.js";
import { dewPoint, humidityFromDewPoint } from "../../weather/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  arizonaDewPoint,
  asianIrrigationWater,
  nationalPesticideHalfAtFigure,
  nationalPesticideHalfLeft,
  northUnderstandCompost,
  turfgrassNitrogenDemand,
} from "../works/season-works.js";
import { fao56Eq7, fao56Eq11, fao56Eq12, fao56Eq37, fao56Eq38 } from "../works/water-works.js";

const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const air = ["°F", "°C"] as const;
const celsius = ["°C", "°C"] as const;
const kilopascals = ["kPa", "kPa"] as const;
const radiation = ["MJ/m2/d", "MJ/m2/d"] as const;
const content = ["% w/w", "% w/w"] as const;
const fahrenheit = "Leaving the temperature in degrees Fahrenheit: the equation is in degrees Celsius.";
const halfLife = ["halfLife", "h", "half-life", "none", ["d", "d"], [5, 120]] as const;

export const fractionRemainingFormula: FormulaSpec = formula({
  id: "fraction-remaining",
  name: "fractionRemaining",
  title: "Share of a residue that is left",
  inputs: [halfLife, ["elapsed", "t", "time", "none", ["d", "d"], [1, 365]]],
  output: ["f", "share left", "none", share, pure],
  equation: "f = 0.5 ^ (t / h)",
  run: fractionRemaining,
  traps: ["Taking two half-lives for all of it: a quarter is left."],
  basis: "definition",
  sources: [nationalPesticideHalfAtFigure],
});

/** What is left of a residue, and the nitrogen that follows growth. */
export const decay: readonly FormulaSpec[] = [
  fractionRemainingFormula,
  formula({
    id: "time-until-remaining",
    name: "timeUntilRemaining",
    title: "Time until a share of a residue is left",
    inputs: [halfLife, ["remaining", "f", "share left", "none", share, [5, 90], pure]],
    output: ["t", "time", "none", ["d", "d"]],
    equation: "t = h * ln(1 / f) / ln(2)",
    run: timeUntilRemaining,
    traps: ["Counting the share that is gone instead of the one that is left."],
    basis: "definition",
    sources: [nationalPesticideHalfLeft],
  }),
  formula({
    id: "nitrogen-for-growth",
    name: "nitrogenForGrowth",
    title: "Nitrogen that follows a growth potential",
    inputs: [
      ["maximum", "N_max", "nitrogen at the best growth", "N", ["lb/1000 ft2", "kg/ha"], [0.3, 1]],
      ["potential", "g", "growth potential", "none", share, [5, 100], pure],
    ],
    output: ["N", "nitrogen", "N", ["lb/1000 ft2", "kg/ha"]],
    equation: "N = N_max * g",
    run: nitrogenForGrowth,
    traps: ["Taking the model for what a site needs: it is on the high side."],
    basis: "published",
    sources: [turfgrassNitrogenDemand],
  }),
];

/** Air and radiation. */
export const moistAir: readonly FormulaSpec[] = [
  formula({
    id: "saturation-vapor-pressure",
    name: "saturationVaporPressure",
    title: "Saturation vapor pressure",
    inputs: [["temperature", "T", "air temperature", "none", air, [40, 100], celsius]],
    output: ["e", "vapor pressure", "none", kilopascals],
    equation: "e = 0.6108 * exp(17.27 * T / (T + 237.3))",
    run: saturationVaporPressure,
    traps: [fahrenheit],
    basis: "published",
    sources: [fao56Eq11],
  }),
  formula({
    id: "mean-saturation-vapor-pressure",
    name: "meanSaturationVaporPressure",
    title: "Mean saturation vapor pressure of a day",
    inputs: [
      ["min", "T_min", "lowest temperature", "none", air, [40, 65], celsius],
      ["max", "T_max", "highest temperature", "none", air, [66, 100], celsius],
    ],
    output: ["e", "vapor pressure", "none", kilopascals],
    equation:
      "e = (0.6108 * exp(17.27 * T_max / (T_max + 237.3)) + 0.6108 * exp(17.27 * T_min / (T_min + 237.3))) / 2",
    run: meanSaturationVaporPressure,
    traps: ["Taking the pressure at the mean temperature: it is lower.", fahrenheit],
    basis: "published",
    sources: [fao56Eq12],
  }),
  formula({
    id: "atmospheric-pressure",
    name: "atmosphericPressure",
    title: "Air pressure by elevation",
    inputs: [["elevation", "z", "elevation", "none", ["ft", "m"], [0, 9000], ["m", "m"]]],
    output: ["P", "pressure", "none", kilopascals],
    equation: "P = 101.3 * ((293 - 0.0065 * z) / 293) ^ 5.26",
    run: atmosphericPressure,
    traps: ["Leaving the elevation in feet."],
    basis: "published",
    sources: [fao56Eq7],
  }),
  formula({
    id: "clear-sky-radiation",
    name: "clearSkyRadiation",
    title: "Solar radiation under a clear sky",
    inputs: [
      ["extraterrestrial", "R_a", "radiation at the top of the air", "none", radiation, [10, 42]],
      ["elevation", "z", "elevation", "none", ["ft", "m"], [0, 9000], ["m", "m"]],
    ],
    output: ["R_s", "solar radiation", "none", radiation],
    equation: "R_s = (0.75 + 0.00002 * z) * R_a",
    run: clearSkyRadiation,
    traps: ["Leaving the elevation in feet."],
    basis: "published",
    sources: [fao56Eq37],
  }),
  formula({
    id: "net-shortwave-radiation",
    name: "netShortwaveRadiation",
    title: "Sunlight that the turf keeps",
    inputs: [["solar", "R_s", "solar radiation", "none", radiation, [5, 32]]],
    output: ["R_n", "net shortwave radiation", "none", radiation],
    equation: "R_n = (1 - 0.23) * R_s",
    run: netShortwaveRadiation,
    traps: ["Multiplying by 0.23: that is what is sent back."],
    basis: "published",
    sources: [fao56Eq38],
  }),
];

/** Dew and humidity. */
export const humidAir: readonly FormulaSpec[] = [
  formula({
    id: "dew-point",
    name: "dewPoint",
    title: "Dew point of air",
    inputs: [
      ["temperature", "T", "air temperature", "none", air, [40, 100], celsius],
      ["humidity", "H", "relative humidity", "none", share, [15, 99]],
    ],
    output: ["D", "dew point", "none", air, celsius],
    equation:
      "D = 237.3 * (ln(H / 100) + 17.27 * T / (237.3 + T)) / (17.27 - ln(H / 100) - 17.27 * T / (237.3 + T))",
    run: dewPoint,
    traps: [fahrenheit, "Dew forms on a leaf before the air itself is saturated."],
    basis: "published",
    sources: [arizonaDewPoint, fao56Eq11],
  }),
  formula({
    id: "humidity-from-dew-point",
    name: "humidityFromDewPoint",
    title: "Relative humidity from the dew point",
    inputs: [
      ["temperature", "T", "air temperature", "none", air, [66, 100], celsius],
      ["dewPoint", "D", "dew point", "none", air, [40, 65], celsius],
    ],
    output: ["H", "relative humidity", "none", share],
    equation: "H = 100 * exp(17.27 * D / (237.3 + D) - 17.27 * T / (237.3 + T))",
    run: humidityFromDewPoint,
    traps: [fahrenheit],
    basis: "published",
    sources: [arizonaDewPoint, fao56Eq11],
  }),
];

/** Water with salt, and contents on a wet or a dry basis. */
export const soilBases: readonly FormulaSpec[] = [
  formula({
    id: "irrigation-with-leaching",
    name: "irrigationWithLeaching",
    title: "Water to apply so that a share of it leaches",
    inputs: [
      ["use", "U", "what the grass uses", "none", ["in", "mm"], [0.2, 3]],
      ["share", "L", "leaching requirement", "none", share, [5, 40], pure],
    ],
    output: ["I", "water to apply", "none", ["in", "mm"]],
    equation: "I = U / (1 - L)",
    run: irrigationWithLeaching,
    traps: ["Adding the share to the use: it is a share of what is applied."],
    basis: "definition",
    sources: [asianIrrigationWater],
  }),
  formula({
    id: "content-on-dry-basis",
    name: "onDryBasis",
    title: "Content on the dry basis",
    inputs: [
      ["content", "w", "content as received", "N/product", content, [0.2, 3]],
      ["moisture", "m", "moisture, percent of it as received", "none", pure, [10, 70]],
    ],
    output: ["d", "content on the dry basis", "N/product", content],
    equation: "d = w * 100 / (100 - m)",
    run: ({ content: wet, moisture }) => onDryBasis({ content: wet, moisture: moisture.in("1") }),
    traps: ["Mixing figures of both bases in one sum."],
    basis: "definition",
    sources: [northUnderstandCompost],
  }),
  formula({
    id: "content-on-wet-basis",
    name: "onWetBasis",
    title: "Content as received",
    inputs: [
      ["content", "d", "content on the dry basis", "N/product", content, [0.2, 5]],
      ["moisture", "m", "moisture, percent of it as received", "none", pure, [10, 70]],
    ],
    output: ["w", "content as received", "N/product", content],
    equation: "w = d * (100 - m) / 100",
    run: ({ content: dry, moisture }) => onWetBasis({ content: dry, moisture: moisture.in("1") }),
    traps: ["Spreading by the dry figure what is weighed wet."],
    basis: "definition",
    sources: [northUnderstandCompost],
  }),
];
