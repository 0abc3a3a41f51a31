// Diseases, insects and prices: criteria as the sources print them, prices from exact figures.
import type { Instant } from "../../src/calendar/index.js";
import { hourlyWeather } from "../../src/interval/index.js";
import { brownPatchSpells, insectTargets, pythiumCriteria } from "../../src/pest/index.js";
import {
  capitalRecovery,
  fieldEfficiency,
  fuelUse,
  loadedWage,
  machineCost,
  marginOfMarkup,
  markupOfMargin,
  overtimeShare,
  priceAtMargin,
  priceAtMarkup,
  visitPrice,
  workRate,
} from "../../src/price/index.js";
import { money, quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const nan = Number.NaN;
const percent = (value: number) => quantity(value, "%");
const hour = quantity(1, "h");

const target = (id: string, from: number, to?: number, base?: number): readonly Cell[] => {
  const of = () => insectTargets.find((one) => one.id === id);
  return [
    [`${id}: from`, from, () => of()?.from ?? nan],
    ...(to === undefined ? [] : [[`${id}: to`, to, () => of()?.to ?? nan] as const]),
    ...(base === undefined ? [] : [[`${id}: base`, base, () => of()?.base?.value ?? nan] as const]),
  ];
};
const criterion = (id: string) => pythiumCriteria.find((one) => one.id === id);

/** 48 hours, all of one kind but for what a test changes; the humid spell ends with the tenth hour, the last. */
const spell = (change: {
  readonly soil?: number;
  readonly coldSoil?: number;
  readonly air?: number;
  readonly coldAir?: number;
  readonly rain?: number;
  readonly rainHour?: number;
  readonly humid?: number;
  readonly coldHour?: number;
}): boolean => {
  const all = (value: number): number[] => Array.from({ length: 48 }, () => value);
  const at = (list: number[], hours: number, value: number | undefined): number[] =>
    value === undefined ? list : list.map((one, n) => (n === hours ? value : one));
  const { spells } = brownPatchSpells({
    weather: hourlyWeather({
      start: "2026-07-14T00:00-05:00" as Instant,
      source: "invented",
      temperature: { unit: "°C", values: at(all(change.air ?? 25), change.coldHour ?? 30, change.coldAir) },
      soilTemperature: {
        unit: "°C",
        values: at(all(change.soil ?? 25), change.coldHour ?? 30, change.coldSoil),
      },
      humidity: { unit: "%", values: all(0).map((_, n) => (n >= 38 ? (change.humid ?? 97) : 60)) },
      rain: { unit: "mm", values: at(all(0), change.rainHour ?? 40, change.rain ?? 5) },
    }),
  });
  return spells.some(({ favorable }) => favorable === true);
};

/** Criteria and targets. */
export const pestConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room: "pest",
      reached: "read",
      source:
        "Kill billbug, abstract 217-2 of 2015: 155-195 DD10 from March 1; 39-111, 459-484 and 768-838 DD5 from January 13",
    },
    [
      ...target("bluegrass billbug, first adults, eastern model", 155, 195, 10),
      ...target("billbugs, first adults, Utah", 39, 111, 5),
      ...target("billbugs, 30 % of adults, Utah", 459, 484, 5),
    ],
  ),
  ...cells(
    {
      room: "pest",
      reached: "read",
      source:
        "Japanese beetles emerge in Iowa, Iowa State University 2014: about 1,030 growing degree days, base 50 °F, until around 2,150",
    },
    target("Japanese beetle, adults", 1030, 2150, 50),
  ),
  ...cells(
    {
      room: "pest",
      reached: "read",
      source:
        "University of Massachusetts, 2 May 2018: 125 to 150; Penn State, 5 April 2010: adults leave at 100 to 120",
    },
    [
      ...target("annual bluegrass weevil, application against adults", 125, 150),
      ...target("annual bluegrass weevil, adults leave shelter", 100, 120),
    ],
  ),
  ...cells(
    {
      room: "pest",
      reached: "read",
      source:
        "Plant Disease 67 (1983), 1126-1128, abstract: above 30 °C, 14 h above 90 %, not below 20 °C; Kentucky model 1: 82 °F, 68 °F, 9 h",
    },
    [
      ["maximum, °C", 30, () => criterion("Pennsylvania, 1983")?.maximumAbove.value ?? nan],
      ["minimum, °C", 20, () => criterion("Pennsylvania, 1983")?.minimumAbove.value ?? nan],
      ["humid hours", 14, () => criterion("Pennsylvania, 1983")?.hours ?? nan],
      ["humidity, %", 90, () => criterion("Pennsylvania, 1983")?.humidityAbove?.value ?? nan],
      ["maximum, °F", 82, () => criterion("Kentucky, model 1")?.maximumAbove.value ?? nan],
      ["minimum, °F", 68, () => criterion("Kentucky, model 1")?.minimumAbove.value ?? nan],
      ["humid hours of Kentucky", 9, () => criterion("Kentucky, model 1")?.hours ?? nan],
    ],
  ),
  ...cells(
    {
      room: "pest",
      reached: "from memory",
      within: 1e-8,
      source:
        "University of Kentucky, brown patch model 2: soil mean above 21 and minimum above 18, air mean above 20 and minimum above 15 °C over 24 h, 3 mm of rain in 36 h, 10 h above 95 %",
    },
    [
      ["mean of the soil, °C", 21, () => edge((soil) => spell({ soil }), 25, 19)],
      ["minimum of the soil, °C", 18, () => edge((coldSoil) => spell({ coldSoil }), 24, 10)],
      ["mean of the air, °C", 20, () => edge((air) => spell({ air }), 25, 16)],
      ["minimum of the air, °C", 15, () => edge((coldAir) => spell({ coldAir }), 24, 5)],
      ["rain, mm", 3, () => Number(edge((rain) => spell({ rain }), 5, 1).toFixed(6))],
      ["humidity of a spell, %", 95, () => edge((humid) => spell({ humid }), 99, 80)],
      // 36 hours up to the tenth, which is the last of the 48
      [
        "first hour of 36 that counts",
        1,
        () => (spell({ rainHour: 12 }) && !spell({ rainHour: 11 }) ? 1 : 0),
      ],
      [
        "first hour of 24 that counts",
        1,
        () => (!spell({ coldHour: 24, coldAir: 5 }) && spell({ coldHour: 23, coldAir: 5 }) ? 1 : 0),
      ],
      [
        "and of the soil",
        1,
        () => (!spell({ coldHour: 24, coldSoil: 5 }) && spell({ coldHour: 23, coldSoil: 5 }) ? 1 : 0),
      ],
    ],
  ),
];

const visit = () =>
  visitPrice({
    manHours: quantity(2, "h"),
    wage: money(20, "USD").per(hour),
    overhead: money(0, "USD").per(hour),
    aim: { markup: percent(25) },
  });

/** Prices. */
export const priceConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room: "price",
      reached: "derived",
      source: "definitions, on figures that divide evenly; 168 h are a week",
    },
    [
      [
        "a margin of 20 % on 80",
        100,
        () => priceAtMargin({ cost: money(80, "USD"), margin: percent(20) }).value,
      ],
      [
        "a markup of 25 % on 80",
        100,
        () => priceAtMarkup({ cost: money(80, "USD"), markup: percent(25) }).value,
      ],
      ["markup of a margin of 20 %", 25, () => markupOfMargin(percent(20)).in("%")],
      ["margin of a markup of 25 %", 20, () => marginOfMarkup(percent(25)).in("%")],
      [
        "margin at which there is no price, %",
        100,
        () => edge((margin) => goes(() => markupOfMargin(percent(margin))), 50, 150),
      ],
      ["price of a visit at a quarter more", 50, () => visit().price.value],
      ["margin of it, %", 20, () => visit().margin.in("%")],
      ["markup of it, %", 25, () => visit().markup.in("%")],
      [
        "wage of 16 with a tenth each and a fifth on top",
        16 * 1.2 * 1.2,
        () =>
          loadedWage({
            wage: money(16, "USD").per(hour),
            overtime: percent(10),
            risk: percent(10),
            burden: percent(20),
          }).cost.value,
      ],
      [
        "hours of a week",
        168,
        () => edge((hours) => goes(() => overtimeShare({ hours: quantity(hours, "h") })), 40, 200),
      ],
      [
        "work rate: 8.25 ft at 1 mi/h is an acre an hour; a fifth standing and a quarter turning leave 60 %",
        0.6,
        () =>
          workRate({
            swath: quantity(8.25, "ft"),
            speed: quantity(1, "mi/h"),
            standing: percent(20),
            turning: percent(25),
          }).in("acre/h"),
      ],
      // a tenth of 100 ft overlaps: 90 ft wide, run in 100 s and turned in 25
      ["share of the time that works, %", 80, () => field().efficiency.in("%")],
      [
        "running cost: 8 of fuel with a sixth of oil beside it, 5 of repair",
        8 * 1.15 + 5,
        () => running().total.value - running().ownership.value,
      ],
      [
        "a price spread evenly without interest",
        6000,
        () =>
          capitalRecovery({
            price: money(60_000, "USD"),
            remaining: money(12_000, "USD"),
            years: 8,
            interest: percent(0),
          }).value,
      ],
      [
        "capital recovery of 1000 over two years at 10 %: 1000 (0.1 1.21) / 0.21",
        (1000 * 0.1 * 1.21) / 0.21,
        () =>
          capitalRecovery({
            price: money(1000, "USD"),
            remaining: money(0, "USD"),
            years: 2,
            interest: percent(10),
          }).value,
      ],
    ],
  ),
  ...cells(
    {
      room: "price",
      reached: "from memory",
      source:
        "Estimating farm machinery costs: 0.044 gal of diesel and 0.060 of gasoline for an hour of each horsepower; oil 15 % of fuel",
    },
    [
      ["diesel, 100 hp", 4.4, () => fuelUse({ horsepower: 100, fuel: "diesel" }).in("gal/h")],
      ["gasoline, 100 hp", 6, () => fuelUse({ horsepower: 100, fuel: "gasoline" }).in("gal/h")],
    ],
  ),
];

function field() {
  return fieldEfficiency({
    swath: quantity(100, "ft"),
    speed: quantity(3600, "ft/h"),
    overlap: percent(0),
    runLength: quantity(100, "ft"),
    turn: quantity(25, "s"),
  });
}
function running() {
  return machineCost({
    yearly: [{ name: "capital", cost: money(1000, "USD") }],
    hoursPerYear: quantity(100, "h"),
    fuelUse: quantity(2, "gal/h"),
    fuelPrice: money(4, "USD").per(quantity(1, "gal")),
    repair: money(5, "USD").per(hour),
  });
}
