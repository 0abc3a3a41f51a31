// Figures of several rooms that were transcribed a second time from their source, or follow from what a whole is.
import { dailySeries } from "../../src/calendar/index.js";
import { nitrogenForGrowth } from "../../src/interval/index.js";
import { dollarSpotOutlook, insectTargets } from "../../src/pest/index.js";
import { machineCost } from "../../src/price/index.js";
import { money, quantity } from "../../src/quantity/index.js";
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

/** Figures of interval, spread, pest and price. */
export const lateConstants: readonly ConstantCheck[] = [
  ...cells(
    { ...whole, room: "interval" },
    most("of the growth at its optimum, %", (at) =>
      nitrogenForGrowth({ maximum: quantity(1, "lb/1000 ft2", "N"), potential: percent(at) }),
    ),
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
