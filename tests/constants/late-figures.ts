// Figures of several rooms that were transcribed a second time from their source, or follow from what a whole is.
import { dailyNormals, dailySeries, dailyTemperatures } from "../../src/calendar/index.js";
import {
  degreeDayAmount,
  degreeDayModel,
  degreeDaySchedule,
  nitrogenForGrowth,
  runningDegreeDaysC,
} from "../../src/interval/index.js";
import { dollarSpotOutlook, insectTargets } from "../../src/pest/index.js";
import { machineCost } from "../../src/price/index.js";
import { money, quantity } from "../../src/quantity/index.js";
import { amendmentPlan } from "../../src/soil/index.js";
import { effectiveFieldCapacity } from "../../src/spread/index.js";
import { problemsOf } from "../errors.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);
const percent = (value: number) => quantity(value, "%");

/** Where a call begins to be refused, and the bound that the refusal tells. */
const most = (what: string, call: (at: number) => unknown): readonly Cell[] => [
  [`most ${what}`, 100, () => edge((at) => goes(() => call(at)), 50, 200)],
  [`told: most ${what}`, 100, () => number(problemsOf(() => call(150))[0]?.params?.max)],
];
const whole = { reached: "derived", within: 1e-8, source: "no part is more than the whole, 100 %" } as const;

const day = { start: "2026-06-01", source: "invented" } as const;
const outlook = () =>
  dollarSpotOutlook({
    temperature: dailySeries({
      ...day,
      unit: "°C",
      what: "mean air temperature",
      values: [20, 20, 20, 20, 20, 20],
    }),
    humidity: dailySeries({
      ...day,
      unit: "%",
      what: "mean relative humidity",
      values: [80, 80, 80, 80, 80, 80],
    }),
  });

/** What a pitch needs of potassium by a report, as a number of the unit that the plan takes. */
const potashNeed = (K: Parameters<typeof amendmentPlan>[0]["elements"]["K"]): number =>
  amendmentPlan(
    {
      laboratory: "invented",
      date: "2026-03-02",
      extractant: "Mehlich 3",
      pH: 6.5,
      layer: { depth: quantity(10, "cm"), bulkDensity: quantity(1.3, "g/mL", "soil") },
      elements: K === undefined ? {} : { K },
    },
    {
      name: "invented",
      area: quantity(1, "ha"),
      standing: true,
      nitrogen: quantity(100, "kg/ha", "N"),
      grass: "cool-season grass",
    },
    { nutrients: { guideline: "minimum levels, Mehlich 3", list: ["K"] } },
  ).needs[0]?.target.value ?? Number.NaN;

const heat = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
const flat = (value: number): readonly number[] => Array.from({ length: 366 }, () => value);
/**
 * A normal day of 20 °C over a base of 0 °C that a warm year moves up by one degree Celsius, counted on the scale of what
 * was observed: the interval that it fills.
 */
const warmDay = (observed: "°C" | "°F"): number => {
  const [of, cool, warm, spread] =
    observed === "°F" ? (["°C", 15, 25, 1] as const) : (["°F", 59, 77, 1.8] as const);
  const normals = dailyNormals({
    unit: of,
    sensor: "air",
    source: "invented",
    min: flat(cool),
    max: flat(warm),
    spread: flat(spread),
  });
  const day = dailyTemperatures({
    unit: observed,
    sensor: "air",
    source: "invented",
    start: "2026-06-01",
    min: [20],
    max: [20],
  });
  return edge(
    (value) =>
      degreeDaySchedule({
        observed: day,
        normals,
        model: heat,
        from: "2026-06-01",
        interval: degreeDayAmount({ value, unit: `${observed} d`, model: heat }),
      }).visits[0]?.early === "2026-06-02",
    10,
    60,
  );
};

/** Figures of interval, spread, soil, pest and price. */
export const lateConstants: readonly ConstantCheck[] = [
  ...cells(
    { ...whole, room: "interval" },
    most("of the growth at its optimum, %", (at) =>
      nitrogenForGrowth({ maximum: quantity(1, "lb/1000 ft2", "N"), potential: percent(at) }),
    ),
  ),
  ...cells(
    {
      room: "interval",
      reached: "derived",
      within: 1e-7,
      source: "definitions, on figures that divide evenly; a degree Celsius is 1.8 degrees Fahrenheit",
    },
    [
      [
        "half of the nitrogen at half of the growth",
        0.5,
        () =>
          nitrogenForGrowth({ maximum: quantity(1, "lb/1000 ft2", "N"), potential: percent(50) }).in(
            "lb/1000 ft2",
          ),
      ],
      // the mean of 20 and 10 is no less than 14.9993: (20 - b)/2 - (b - 10)/4
      [
        "Met Office case III, the mean just above the base",
        5.0007 / 2 - 4.9993 / 4,
        () =>
          runningDegreeDaysC({
            method: "met office cases",
            baseC: 14.9993,
            maxC: Float64Array.of(20),
            minC: Float64Array.of(10),
          })[0] ?? Number.NaN,
      ],
      ["a warm day of 21 °C, °F d", 21 * 1.8, () => warmDay("°F")],
      ["a warm day of 21 °C, °C d", 21, () => warmDay("°C")],
    ],
  ),
  ...cells(
    { ...whole, room: "spread" },
    most("of the time that is spent on the field, %", (at) =>
      effectiveFieldCapacity({
        swath: quantity(40, "ft"),
        speed: quantity(6, "mi/h"),
        efficiency: percent(at),
      }),
    ),
  ),
  ...cells(
    {
      room: "price",
      reached: "derived",
      within: 1e-12,
      source: "100 for fuel, 15 % of it for oil, 5 for repair: 120",
    },
    [
      [
        "oil for a million of fuel",
        150_000,
        () =>
          machineCost({
            yearly: [{ name: "capital", cost: money(1, "USD") }],
            hoursPerYear: quantity(1, "h"),
            fuelUse: quantity(1, "gal/h"),
            fuelPrice: money(1_000_000, "USD").per(quantity(1, "gal")),
            lubrication: percent(15),
            repair: money(5, "USD").per(quantity(1, "h")),
          }).lubrication.value,
      ],
      [
        "running cost of an hour",
        120,
        () =>
          machineCost({
            yearly: [{ name: "capital", cost: money(1, "USD") }],
            hoursPerYear: quantity(1, "h"),
            fuelUse: quantity(1, "gal/h"),
            fuelPrice: money(100, "USD").per(quantity(1, "gal")),
            lubrication: percent(15),
            repair: money(5, "USD").per(quantity(1, "h")),
          }).running.value,
      ],
    ],
  ),
  ...cells(
    {
      room: "soil",
      reached: "derived",
      source: "10 cm of soil of 1.3 g/mL are 1.3 million kg/ha: 20 ppm of it are 26 kg/ha",
    },
    [
      [
        "need by kg/ha over need by mg/kg",
        1,
        () => potashNeed(quantity(26, "kg/ha", "K")) / potashNeed(quantity(20, "mg/kg", "K/soil")),
      ],
    ],
  ),
  ...cells(
    {
      room: "pest",
      reached: "read",
      source:
        "University of Massachusetts, 4 June 2020: about 400 degree days at mean instars of 2.6 to 2.8; Smith, Kerns et al. 2018, abstract: five-day means, 20 %",
    },
    [
      [
        "larvae between the second and third instar: from",
        400,
        () =>
          number(
            insectTargets.find(({ id }) => id === "annual bluegrass weevil, larvae of the third instar")
              ?.from,
          ),
      ],
      ["dollar spot: probability at which the trials acted, %", 20, () => outlook().action],
      ["dollar spot: days of the mean", 5, () => outlook().days.findIndex(({ value }) => value !== null) + 1],
    ],
  ),
];
