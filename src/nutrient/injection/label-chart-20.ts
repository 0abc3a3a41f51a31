import { frozen } from "../../quantity/index.js";
import type { InjectorChart } from "./injector-chart.js";

/** A label chart of a soluble fertilizer with 20 % N (the percentage is inferred from the figures). */
export const labelChart20: InjectorChart = /* @__PURE__ */ frozen({
  product: "soluble fertilizer, 20 % N (inferred); about 4 lb dissolve in a gallon",
  nutrient: "N",
  source: {
    title: "Ensuring proper fertilizer concentration in greenhouse growing",
    publisher: "Michigan State University Extension",
    where: "table 1 (a label chart)",
    url: "https://www.canr.msu.edu/news/ensuring-proper-fertilizer-concentration-in-greenhouse-growing",
  },
  rows: [
    { ppm: 50, ouncesPerGallon: { "1:15": 0.5, "1:100": 3.38, "1:200": 6.75 }, conductivity: 0.32 },
    { ppm: 100, ouncesPerGallon: { "1:15": 1, "1:100": 6.75, "1:200": 13.5 }, conductivity: 0.64 },
    { ppm: 200, ouncesPerGallon: { "1:15": 2, "1:100": 13.5, "1:200": 27 }, conductivity: 1.28 },
  ],
});
