import { quantity, windAtHeight } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const at2 = (speed: number) =>
  windAtHeight({ wind: quantity(speed, "m/s"), from: quantity(10, "m"), to: quantity(2, "m") });

/** Wind, moist air and heat. */
export const weatherAirChecks: readonly PublishedCheck[] = [
  {
    entry: "weather-001",
    formulas: ["windAtHeight"],
    source: {
      title: "u2_fao56: 2-meter wind speed as described in FAO 56",
      publisher: "NCAR Command Language, manual",
      where: "example 1, which is example 14 of chapter 3 of FAO Irrigation and Drainage Paper 56",
      url: "https://www.ncl.ucar.edu/Document/Functions/Crop/u2_fao56.shtml",
    },
    reached: "read",
    given: "3.2 m/s at 10 m, wanted at 2 m",
    answers: [
      { of: "m/s", printed: 2.39, to: 0.01 },
      { of: "km/h", printed: 8.62, to: 0.01 },
      { of: "mi/h", printed: 5.35, to: 0.01 },
    ],
    compute: () => [at2(3.2).in("m/s"), at2(3.2).in("km/h"), at2(3.2).in("mi/h")],
  },
  {
    entry: "weather-002",
    formulas: ["windAtHeight"],
    source: {
      title: "wind2: wind speed at the standard height of 2 m",
      publisher: "R package sirad, manual",
      year: 2019,
      where: "example",
      url: "https://rdrr.io/cran/sirad/man/wind2.html",
    },
    reached: "read",
    given: "5 m/s at 10 m, wanted at 2 m",
    answers: [{ of: "m/s", printed: 3.74, to: 0.01 }],
    compute: () => [at2(5).in("m/s")],
  },
];
