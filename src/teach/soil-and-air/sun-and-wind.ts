import { quantity } from "../../quantity/index.js";
import {
  extraterrestrialRadiation,
  inverseSunDistance,
  monthlySoilHeatFlux,
  netLongwaveRadiation,
  psychrometricConstantKPaPerC,
  solarDeclination,
  solarRadiationFromSunshine,
  solarRadiationFromTemperatures,
  sunsetHourAngle,
  vaporPressureSlopeKPaPerC,
} from "../../water/index.js";
import { lightFromRadiation, windAtHeight } from "../../weather/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { bigleafLight, fao56, windAtTwoMeters } from "../works/soil-and-air-works.js";

const pure = ["1", "1"] as const;
const air = ["°F", "°C"] as const;
const celsius = ["°C", "°C"] as const;
const radiation = ["MJ/m2/d", "MJ/m2/d"] as const;
const height = ["ft", "m"] as const;
const metric = ["m", "m"] as const;
const day = ["dayOfYear", "J", "day of the year", "none", ["count", "count"], [1, 366]] as const;
const latitude = [
  "latitude",
  "phi",
  "latitude, negative in the south",
  "none",
  ["deg", "deg"],
  [-55, 55],
  ["rad", "rad"],
] as const;
const top = [
  "extraterrestrial",
  "R_a",
  "radiation at the top of the air",
  "none",
  radiation,
  [10, 42],
] as const;
const fahrenheit = "Leaving the temperature in degrees Fahrenheit: the equation is in degrees Celsius.";
const degrees = "Leaving the angle in degrees: the sine of the equation is that of radians.";
const declination = "0.409 * sin(2 * pi * J / 365 - 1.39)";
const hourAngle = `acos(-tan(phi) * tan(${declination}))`;
const ratio = "Counting the hours of daylight as hours of sun: clouds are what the sunshine leaves out.";

/** The sun by date and place. */
export const sunByDate: readonly FormulaSpec[] = [
  formula({
    id: "inverse-sun-distance",
    name: "inverseSunDistance",
    title: "Inverse relative distance to the sun",
    inputs: [day],
    output: ["d", "inverse relative distance", "none", pure],
    equation: "d = 1 + 0.033 * cos(2 * pi * J / 365)",
    run: ({ dayOfYear }) => inverseSunDistance({ dayOfYear: dayOfYear.in("count") }),
    traps: [degrees],
    basis: "published",
    sources: [fao56("equation 23")],
  }),
  formula({
    id: "solar-declination",
    name: "solarDeclination",
    title: "Declination of the sun",
    inputs: [day],
    output: ["delta", "declination", "none", ["deg", "deg"], ["rad", "rad"]],
    equation: `delta = ${declination}`,
    run: ({ dayOfYear }) => solarDeclination({ dayOfYear: dayOfYear.in("count") }),
    traps: [degrees],
    basis: "published",
    sources: [fao56("equation 24")],
  }),
  formula({
    id: "sunset-hour-angle",
    name: "sunsetHourAngle",
    title: "Hour angle of sunset",
    inputs: [latitude, day],
    output: ["omega", "hour angle", "none", ["deg", "deg"], ["rad", "rad"]],
    equation: `omega = ${hourAngle}`,
    run: ({ latitude: place, dayOfYear }) =>
      sunsetHourAngle({ latitude: place, dayOfYear: dayOfYear.in("count") }),
    traps: [degrees, "Forgetting the minus sign of a southern latitude."],
    basis: "published",
    sources: [fao56("equation 25")],
  }),
  formula({
    id: "extraterrestrial-radiation",
    name: "extraterrestrialRadiation",
    title: "Radiation at the top of the atmosphere",
    inputs: [latitude, day],
    output: ["R_a", "radiation at the top of the air", "none", radiation],
    equation: `R_a = 24 * 60 / pi * 0.0820 * (1 + 0.033 * cos(2 * pi * J / 365)) * (${hourAngle} * sin(phi) * sin(${declination}) + cos(phi) * cos(${declination}) * sin(${hourAngle}))`,
    run: ({ latitude: place, dayOfYear }) =>
      extraterrestrialRadiation({ latitude: place, dayOfYear: dayOfYear.in("count") }),
    traps: [degrees, "Forgetting the minus sign of a southern latitude."],
    basis: "published",
    sources: [fao56("equation 21")],
  }),
];

export const lightFromRadiationFormula: FormulaSpec = formula({
  id: "light-from-radiation",
  name: "lightFromRadiation",
  title: "Daily light integral from the radiation of a day",
  inputs: [
    ["radiation", "R", "radiation of the day", "none", ["MJ/m2", "MJ/m2"], [2, 32]],
    ["parShare", "p", "share of the energy that plants use", "none", ["%", "%"], [42, 52], pure],
    ["micromolPerJoule", "f", "micromoles of photons in a joule of it", "none", pure, [4.5, 4.65]],
  ],
  output: ["L", "daily light integral, mol/m2", "none", pure],
  equation: "L = R * p * f",
  run: ({ radiation: sum, parShare, micromolPerJoule }) =>
    lightFromRadiation({ radiation: sum, parShare, micromolPerJoule: micromolPerJoule.in("1") })
      .molPerSquareMeter,
  traps: ["Taking all of the energy for light: about half of it is heat."],
  basis: "published",
  sources: [bigleafLight],
});

/** Light for plants. */
export const lightOfDay: readonly FormulaSpec[] = [lightFromRadiationFormula];

/** Radiation and the air of a day. */
export const radiationOfDay: readonly FormulaSpec[] = [
  formula({
    id: "solar-radiation-from-sunshine",
    name: "solarRadiationFromSunshine",
    title: "Solar radiation from the hours of sunshine",
    inputs: [
      top,
      ["sunshine", "n", "hours of bright sun", "none", ["h", "h"], [0, 9]],
      ["daylight", "N", "hours of daylight", "none", ["h", "h"], [9, 16]],
    ],
    output: ["R_s", "solar radiation", "none", radiation],
    equation: "R_s = (0.25 + 0.5 * n / N) * R_a",
    run: solarRadiationFromSunshine,
    traps: [ratio],
    basis: "published",
    sources: [fao56("equation 35")],
  }),
  formula({
    id: "solar-radiation-from-temperatures",
    name: "solarRadiationFromTemperatures",
    title: "Solar radiation from the range of the temperature, inland",
    inputs: [
      top,
      ["min", "T_min", "lowest temperature", "none", air, [40, 60], celsius],
      ["max", "T_max", "highest temperature", "none", air, [61, 95], celsius],
    ],
    output: ["R_s", "solar radiation", "none", radiation],
    equation: "R_s = 0.16 * sqrt(T_max - T_min) * R_a",
    run: (given) => solarRadiationFromTemperatures({ ...given, location: "interior" }),
    traps: [fahrenheit, "Using it inland and at the coast alike: at the coast the factor is 0.19."],
    basis: "published",
    sources: [fao56("equation 50")],
  }),
  formula({
    id: "net-longwave-radiation",
    name: "netLongwaveRadiation",
    title: "Heat that the turf loses to the sky",
    inputs: [
      ["min", "T_min", "lowest temperature", "none", air, [40, 60], celsius],
      ["max", "T_max", "highest temperature", "none", air, [61, 95], celsius],
      ["vaporPressure", "e", "vapor pressure of the air", "none", ["kPa", "kPa"], [0.5, 2.5]],
      ["solar", "R_s", "solar radiation", "none", radiation, [10, 20]],
      ["clearSky", "R_o", "solar radiation under a clear sky", "none", radiation, [18, 32]],
    ],
    output: ["R_l", "net longwave radiation", "none", radiation],
    equation:
      "R_l = 4.903e-9 * ((T_max + 273.16) ^ 4 + (T_min + 273.16) ^ 4) / 2 * (0.34 - 0.14 * sqrt(e)) * (1.35 * min(1, R_s / R_o) - 0.35)",
    run: netLongwaveRadiation,
    traps: ["Leaving out the 273.16: the fourth power is that of kelvins."],
    basis: "published",
    sources: [fao56("equation 39")],
  }),
  formula({
    id: "monthly-soil-heat-flux",
    name: "monthlySoilHeatFlux",
    title: "Heat that goes into the soil in a month",
    inputs: [
      ["before", "T_1", "mean temperature of the month before", "none", air, [35, 75], celsius],
      ["after", "T_2", "mean temperature of the month after", "none", air, [40, 85], celsius],
    ],
    output: ["G", "soil heat flux", "none", radiation],
    equation: "G = 0.07 * (T_2 - T_1)",
    run: monthlySoilHeatFlux,
    traps: [fahrenheit, "Using it for single days: they have next to none."],
    basis: "published",
    sources: [fao56("equation 43")],
  }),
  formula({
    id: "psychrometric-constant",
    name: "psychrometricConstantKPaPerC",
    title: "Psychrometric constant, in kPa per degree Celsius",
    inputs: [["pressure", "P", "pressure of the air", "none", ["kPa", "kPa"], [80, 103]]],
    output: ["gamma", "psychrometric constant", "none", pure],
    equation: "gamma = 0.000665 * P",
    run: psychrometricConstantKPaPerC,
    traps: ["Taking the pressure of sea level in the mountains."],
    basis: "published",
    sources: [fao56("equation 8")],
  }),
  formula({
    id: "vapor-pressure-slope",
    name: "vaporPressureSlopeKPaPerC",
    title: "Slope of the curve of saturation vapor pressure, in kPa per degree Celsius",
    inputs: [["temperature", "T", "air temperature", "none", air, [40, 100], celsius]],
    output: ["Delta", "slope", "none", pure],
    equation: "Delta = 4098 * 0.6108 * exp(17.27 * T / (T + 237.3)) / (T + 237.3) ^ 2",
    run: vaporPressureSlopeKPaPerC,
    traps: [fahrenheit],
    basis: "published",
    sources: [fao56("equation 13")],
  }),
];

export const windAtHeightFormula: FormulaSpec = formula({
  id: "wind-at-height",
  name: "windAtHeight",
  title: "Wind speed at another height over short grass",
  inputs: [
    ["wind", "u_1", "wind as it was measured", "none", ["mi/h", "m/s"], [2, 15]],
    ["from", "z_1", "height of that wind", "none", height, [20, 40], metric],
    ["to", "z_2", "height wanted", "none", height, [1.5, 5], metric],
  ],
  output: ["u_2", "wind at that height", "none", ["mi/h", "m/s"]],
  equation: "u_2 = u_1 * ln(67.8 * z_2 - 5.42) / ln(67.8 * z_1 - 5.42)",
  run: windAtHeight,
  traps: [
    "Taking the wind of a forecast, which is that of 10 m, for the wind at the boom: that is less.",
    "Leaving the heights in feet.",
    "To 2 m the source prints the logarithm rounded, as 4.87: the fourth digit may differ.",
  ],
  basis: "published",
  sources: [fao56("equation 47"), windAtTwoMeters],
});

export const windAtTwoMetersFormula: FormulaSpec = formula({
  id: "wind-at-two-meters",
  name: "windAtHeight",
  title: "Wind speed at 2 m over short grass",
  inputs: [
    ["wind", "u", "wind as it was measured", "none", ["mi/h", "m/s"], [2, 15]],
    ["from", "z", "height of that wind", "none", height, [20, 40], metric],
  ],
  output: ["u_2", "wind at 2 m", "none", ["mi/h", "m/s"]],
  equation: "u_2 = u * 4.87 / ln(67.8 * z - 5.42)",
  run: ({ wind, from }) => windAtHeight({ wind, from, to: quantity(2, "m") }),
  traps: ["Leaving the height in feet: the equation takes meters."],
  basis: "published",
  sources: [fao56("equation 47"), windAtTwoMeters],
});

/** Wind near the ground. */
export const windNearGround: readonly FormulaSpec[] = [windAtHeightFormula, windAtTwoMetersFormula];
