import {
  dailySeries,
  frostChance,
  frostDates,
  heatIndex,
  leafWetness,
  quantity,
  windAtHeight,
} from "../../src/index.js";
import type { Answer, PublishedCheck } from "./check.js";

const at2 = (speed: number) =>
  windAtHeight({ wind: quantity(speed, "m/s"), from: quantity(10, "m"), to: quantity(2, "m") });

/** The chart of the weather service: °F at 40, 45, ... % of humidity, as far as it is printed. */
const heatChart: Readonly<Record<number, readonly number[]>> = {
  110: [136],
  108: [130, 137],
  106: [124, 130, 137],
  104: [119, 124, 131, 137],
  102: [114, 119, 124, 130, 137],
  100: [109, 114, 118, 124, 129, 136],
  98: [105, 109, 113, 117, 123, 128, 134],
  96: [101, 104, 108, 112, 116, 121, 126, 132],
  94: [97, 100, 103, 106, 110, 114, 119, 124, 129, 135],
  92: [94, 96, 99, 101, 105, 108, 112, 116, 121, 126, 131],
  90: [91, 93, 95, 97, 100, 103, 106, 109, 113, 117, 122, 127, 132],
  88: [88, 89, 91, 93, 95, 98, 100, 103, 106, 110, 113, 117, 121],
  86: [85, 87, 88, 89, 91, 93, 95, 97, 100, 102, 105, 108, 112],
  84: [83, 84, 85, 86, 88, 89, 90, 92, 94, 96, 98, 100, 103],
  82: [81, 82, 83, 84, 84, 85, 86, 88, 89, 90, 91, 93, 95],
  80: [80, 80, 81, 81, 82, 82, 83, 84, 84, 85, 86, 86, 87],
};

const feltF = (t: number, rh: number): number =>
  heatIndex({ temperature: quantity(t, "°F"), humidity: quantity(rh, "%") }).value.in("°F");

const heatRow = ([row, printed]: [string, readonly number[]]): PublishedCheck => {
  const t = Number(row);
  // The chart leaves out the adjustment for humid air, which the equation page states: up to 87 °F it is compared to 85 %.
  const compared = printed.slice(0, t <= 87 ? 10 : printed.length);
  const humidities = compared.map((_, i) => 40 + 5 * i);
  return {
    entry: "weather-003",
    formulas: ["heatIndex"],
    source: {
      title: "Heat index information",
      publisher: "National Weather Service, Tulsa",
      where: `chart, row of ${t} °F`,
      url: "http://www.srh.noaa.gov/tsa/?n=heatindex",
    },
    reached: "read",
    kind: "worked example",
    given: `${t} °F, ${humidities[0]} to ${humidities.at(-1)} %`,
    answers: compared.map((value, i): Answer => {
      const answer = { of: `°F at ${humidities[i]} %`, printed: value, to: 1 };
      return t === 90 && humidities[i] === 45
        ? { ...answer, wrong: { right: 92, why: "the regression gives 92.49, which the chart rounds up" } }
        : answer;
    }),
    compute: () => humidities.map((rh) => feltF(t, rh)),
  };
};

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
  ...Object.entries(heatChart).map(heatRow),
  {
    entry: "weather-004",
    formulas: ["heatIndex"],
    source: {
      title: "What is the heat index?",
      publisher: "a safety page that repeats a table of the National Weather Service",
      year: 2015,
      where: "example above the table",
      url: "https://w12thrd.blogspot.com/2015/07/what-is-heat-index.html",
    },
    reached: "read",
    given: "96 °F and 65 %",
    answers: [{ of: "°F", printed: 121, to: 1 }],
    compute: () => [feltF(96, 65)],
  },
  {
    entry: "weather-011",
    formulas: ["heatIndex"],
    source: {
      title: "heat_index",
      publisher: "MetPy, an open library of meteorology, calc/basic.py",
      where: "examples in the comment on the function",
      url: "https://github.com/Unidata/MetPy/blob/main/src/metpy/calc/basic.py",
    },
    reached: "read",
    given: "60 °F, 90 °F and 30 °C at 90 %",
    answers: [
      { of: "°F at 60 °F", printed: 59.93, to: 0.01 },
      { of: "°F at 90 °F", printed: 121.901204, to: 1e-6 },
      { of: "°C at 30 °C", printed: 40.774647, to: 1e-6 },
    ],
    compute: () => [
      feltF(60, 90),
      feltF(90, 90),
      heatIndex({ temperature: quantity(30, "°C"), humidity: quantity(90, "%") }).value.in("°C"),
    ],
  },
  {
    entry: "weather-009",
    formulas: ["frostDates", "frostChance"],
    source: {
      title: "Last freeze/frost probability",
      publisher: "National Centers for Environmental Information",
      where: "what 90 % on 1 March means: nine years of ten have as cold a day later",
    },
    reached: "read",
    kind: "transcription",
    given: "ten winters, nine of them with a frost after 1 March",
    answers: [{ of: "%", printed: 90, to: 1 }],
    compute: () => {
      const start = Date.UTC(2000, 6, 24);
      const end = Date.UTC(2010, 6, 24);
      const days = Array.from({ length: (end - start) / 86_400_000 }, (_, i) =>
        new Date(start + i * 86_400_000).toISOString().slice(0, 10),
      );
      const minima = dailySeries({
        start: "2000-07-24",
        unit: "°F",
        what: "lowest air temperature",
        source: "made up",
        values: days.map((day) => (day.endsWith(day.startsWith("2004") ? "-02-10" : "-03-20") ? 30 : 50)),
      });
      return [frostChance({ dates: frostDates({ minima }), date: "03-01", side: "after" }).in("%")];
    },
  },
  {
    entry: "weather-010",
    formulas: ["leafWetness"],
    source: {
      title: "Suitability of relative humidity as an estimator of leaf wetness duration",
      publisher: "XVI Congresso Brasileiro de Agrometeorologia (Sentelhas et al.)",
      where: "abstract: hours of 90 % and more",
    },
    reached: "read",
    kind: "transcription",
    given: "the bound, found by trying every percent",
    answers: [{ of: "% at or above", printed: 90, to: 1 }],
    compute: () => {
      const values = Array.from({ length: 101 }, (_, i) => i);
      return [leafWetness({ humidity: { unit: "%", values } }).hours.indexOf(true)];
    },
  },
];
