import { describe, expect, test } from "vitest";
import {
  applicationVolume,
  blendShare,
  brownPatchOutlook,
  dailySeries,
  dailyTemperatures,
  effectiveFieldCapacity,
  hourlyWeather,
  irrigationInterval,
  leafWetness,
  ledger,
  limeProductRate,
  limeQuality,
  mowAtHeight,
  netShortwaveRadiation,
  onWetBasis,
  psychrometricConstantKPaPerC,
  quantity,
  soilWaterDay,
  sulfurForCarbonate,
  turfUse,
  waterDose,
  windReading,
} from "../../src/index.js";
import { accumulateDegreeDaysC } from "../../src/interval/index.js";
import { complaints } from "../errors.js";

// Numbers that cannot be, each from a slip that people make, beside the most extreme ones that were measured.

type Row = readonly [slip: string, path: string, wrong: () => unknown, extreme: () => unknown];

const reference = (value: number, unit: "in/d" | "mm/d") =>
  turfUse({ reference: quantity(value, unit), coefficient: 0.8 });
const record = (name: string, unit: string, value: number) =>
  hourlyWeather({
    start: "2026-06-03T06:00-05:00",
    source: "station",
    [name]: { unit, values: [value], ...(/wind|gust/.test(name) && { height: quantity(10, "m") }) },
  } as never);
const station = (value: number, unit: "mi/h" | "m/s") =>
  windReading({ speed: quantity(value, unit), height: quantity(10, "m") });
const applied = (weather: object) =>
  ledger([
    {
      id: "a",
      date: "2026-06-03",
      product: "a",
      amount: { value: 3, unit: "lb" },
      area: { value: 1, unit: "acre" },
      weather,
    } as never,
  ]);
const days = (max: number, unit: "°C" | "°F") =>
  dailyTemperatures({ start: "2026-06-01", unit, sensor: "air", source: "depot", min: [20], max: [max] });
const spread = (value: number) =>
  effectiveFieldCapacity({
    swath: quantity(40, "ft"),
    speed: quantity(value, "mi/h"),
    efficiency: quantity(70, "%"),
  });
const layer = { depth: quantity(10, "cm"), bulkDensity: quantity(1.5, "g/mL", "soil") };
const sulfur = (percent: number) =>
  sulfurForCarbonate({ carbonate: quantity(percent, "% w/w", "CaCO3 equivalent/soil"), layer });
const pond = (percent: number) =>
  waterDose({
    volume: quantity(1, "acre-ft"),
    concentration: quantity(1, "mg/L", "ai"),
    strength: quantity(percent, "% w/w", "ai/product"),
  });
const salt = (value: number) =>
  blendShare({ first: quantity(2, "dS/m"), second: quantity(value, "dS/m"), target: quantity(8, "dS/m") });

const outlook = (values: readonly number[]) => {
  const day = { start: "2026-07-01", source: "depot" } as const;
  return brownPatchOutlook({
    humidity: dailySeries({ ...day, unit: "%", what: "mean relative humidity", values }),
    minimum: dailySeries({
      ...day,
      unit: "°C",
      what: "lowest air temperature",
      values: values.map(() => 20),
    }),
  });
};
const lime = (CCE: number) =>
  limeProductRate({
    rate: quantity(75, "lb/1000 ft2", "CaCO3 equivalent"),
    measure: "CCE",
    quality: { ...limeQuality({ CCE: 80 }), CCE },
    id: "lime-a",
  });

// The extremes: 15 mm/d of reference use in hot wind, 41.09 MJ/m2/d of sun outside the air (FAO 56, table 2.6: 47), 84 m/s of mean
// wind, 113 m/s in a gust, 305 mm of rain in an hour, 56.7 °C, 145 mi/h of a spray plane, pure calcite, sea water of 55 dS/m; all
// but FAO 56 from memory.
const rows: readonly Row[] = [
  ["mm/d under in/d", "reference", () => reference(5.6, "in/d"), () => reference(15, "mm/d")],
  [
    "mm/d under in/d, between waterings",
    "use",
    () => irrigationInterval({ water: quantity(0.75, "in"), use: quantity(6.4, "in/d") }),
    () => irrigationInterval({ water: quantity(0.75, "in"), use: quantity(0.6, "in/d") }),
  ],
  [
    "mm under in, of a day",
    "use",
    () =>
      soilWaterDay({
        available: quantity(2, "in"),
        depletion: quantity(50, "%"),
        before: quantity(0, "in"),
        use: quantity(4, "in"),
      }),
    () =>
      soilWaterDay({
        available: quantity(2, "in"),
        depletion: quantity(50, "%"),
        before: quantity(0, "in"),
        use: quantity(0.6, "in"),
      }),
  ],
  [
    "W/m2 under MJ/m2/d",
    "solar",
    () => netShortwaveRadiation({ solar: quantity(255, "MJ/m2/d") } as never),
    () => netShortwaveRadiation({ solar: quantity(47, "MJ/m2/d") } as never),
  ],
  [
    "Pa under kPa",
    "pressure",
    () => psychrometricConstantKPaPerC({ pressure: quantity(81_800, "kPa") }),
    () => psychrometricConstantKPaPerC({ pressure: quantity(34, "kPa") }),
  ],
  ["200 mi/h of wind", "speed", () => station(200, "mi/h"), () => station(188, "mi/h")],
  ["m/s a hundredfold", "speed", () => station(300, "m/s"), () => station(84, "m/s")],
  ["wind of a column", "wind.values[0]", () => record("wind", "mi/h", 200), () => record("wind", "m/s", 84)],
  [
    "a gust of a column",
    "gust.values[0]",
    () => record("gust", "m/s", 200),
    () => record("gust", "m/s", 113),
  ],
  ["rain in um", "rain.values[0]", () => record("rain", "mm", 12_000), () => record("rain", "mm", 305)],
  [
    "°F under °C, air by the hour",
    "temperature.values[0]",
    () => record("temperature", "°C", 68),
    () => record("temperature", "°C", 56.7),
  ],
  [
    "°F under °C, soil by the hour",
    "soilTemperature.values[0]",
    () => record("soilTemperature", "°C", 77),
    () => record("soilTemperature", "°C", 70),
  ],
  ["°F under °C, day by day", "max[0]", () => days(77, "°C"), () => days(134, "°F")],
  [
    "wind of an entry",
    "entries[0].weather.wind",
    () => applied({ wind: { value: 200, unit: "mi/h" } }),
    () => applied({ wind: { value: 15, unit: "mi/h" } }),
  ],
  [
    "95 °C of an entry",
    "entries[0].weather.temperature",
    () => applied({ temperature: { value: 95, unit: "°C" } }),
    () => applied({ temperature: { value: 95, unit: "°F" } }),
  ],
  ["ft/min under mi/h", "speed", () => spread(352), () => spread(25)],
  [
    "ft/min under mi/h, spraying",
    "speed",
    () =>
      applicationVolume({
        flow: quantity(0.4, "gal/min", "spray"),
        speed: quantity(352, "mi/h"),
        width: quantity(20, "in"),
      }),
    () =>
      applicationVolume({
        flow: quantity(0.4, "gal/min", "spray"),
        speed: quantity(145, "mi/h"),
        width: quantity(20, "in"),
      }),
  ],
  ["more carbonate than soil", "carbonate", () => sulfur(10_000), () => sulfur(100)],
  [
    "more nitrogen than compost",
    "content",
    () => onWetBasis({ content: quantity(10_000_000, "mg/kg", "N/product"), moisture: 45 }),
    () => onWetBasis({ content: quantity(46, "% w/w", "N/product"), moisture: 0 }),
  ],
  ["a strength of 5000 %", "strength", () => pond(5000), () => pond(100)],
  [
    "shares in a column of humidity",
    "humidity.values",
    () => record("humidity", "%", 0.65),
    () => record("humidity", "%", 3),
  ],
  [
    "shares in the humidity of leaves",
    "humidity.values",
    () => leafWetness({ humidity: { unit: "%", values: [0.84, 0.95] } }),
    () => leafWetness({ humidity: { unit: "%", values: [84, 95] } }),
  ],
  [
    "shares in a series of humidity",
    "humidity.values",
    () => outlook([0.72, 0.9, 0.8, 0.7, 0.8]),
    () => outlook([72, 0.5, 80, 70, 80]),
  ],
  ["a share for the CCE of a record", "quality.CCE", () => lime(0.875), () => lime(87.5)],
  [
    "mm under in, of a mower",
    "cut",
    () => mowAtHeight({ cut: quantity(75, "in") }),
    () => mowAtHeight({ cut: quantity(14, "in") }),
  ],
  ["uS/cm under dS/m", "second", () => salt(15_000), () => salt(55)],
];

describe("a number that cannot be", () => {
  for (const [slip, path, wrong, extreme] of rows) {
    test(`${slip}: refused at ${path}`, () => {
      expect(complaints(wrong)).toEqual([`range ${path}`]);
      expect(complaints(extreme)).toEqual([]);
    });
  }

  test("of arrays too: 77 °F under °C", () => {
    expect(complaints(() => accumulateDegreeDaysC(Float64Array.of(77), Float64Array.of(50), 10))[0]).toMatch(
      /^range /,
    );
  });
});
