import * as lessons from "../../src/teach/index.js";
import { all, type FirstThing, money, q, refused, works } from "./trial.js";

const teach = lessons as unknown as typeof all;
const air = { temperature: q(90, "°F"), humidity: q(70, "%") };
const park = { latitude: q(40, "deg"), longitude: q(-75, "deg"), date: "2026-06-21", offset: "-04:00" };
const thermometers = {
  lower: { temperature: q(61.5, "°F"), height: q(8, "in") },
  upper: { temperature: q(66, "°F"), height: q(9, "ft") },
};
const hour = q(1, "h");
const wages = { overtime: q(0, "%"), risk: q(0, "%"), burden: q(25, "%") };

/** What people do first: wind, air, light, disease and insects. */
export const weather: readonly FirstThing[] = [
  refused(
    "the forecast as text",
    () => all.windAtHeight?.({ wind: "10 mph", from: q(10, "m"), to: q(10, "m") }),
    ["parseQuantity"],
    () => all.windAtHeight?.({ wind: all.parseQuantity?.("10 mph"), from: q(10, "m"), to: q(10, "m") }),
    [10, "mi/h"],
  ),
  refused(
    "wind without the height of the station",
    () => all.windAtHeight?.({ wind: q(10, "mi/h"), to: q(20, "in") }),
    ["weather stations and forecasts state 10 m"],
    () => all.windAtHeight?.({ wind: q(10, "mi/h"), from: q(10, "m"), to: q(10, "m") }),
    [10, "mi/h"],
  ),
  refused(
    "humidity as a bare number",
    () => all.dewPoint?.({ temperature: q(20, "°C"), humidity: 100 }),
    ['quantity(40, "%")'],
    () => all.dewPoint?.({ temperature: q(20, "°C"), humidity: q(100, "%") }),
    [20, "°C"],
  ),
  refused(
    "heat from a dew point",
    () => all.heatIndex?.({ temperature: q(90, "°F"), dewPoint: q(70, "°F") }),
    ["humidityFromDewPoint"],
    () => all.humidityFromDewPoint?.({ temperature: q(90, "°F"), dewPoint: q(90, "°F") }),
    [100, "%"],
  ),
  works("heat in the shade", () => all.heatIndex?.(air).category, "danger"),
  refused(
    "a mean of numbers",
    () => all.runningMean?.({ series: [50, 53, 56], days: 3 }),
    ["start, unit, what, source, values"],
    () =>
      all.runningMean?.({
        series: all.dailySeries?.({
          start: "2026-04-01",
          unit: "°F",
          what: "soil",
          source: "probe",
          values: [50, 53, 56],
        }),
        days: 3,
      }).values?.[2],
    53,
  ),
  refused(
    "a place as numbers",
    () => all.sunTimes?.({ ...park, latitude: 40 }),
    ["an angle", "quantity(40, unit)"],
    () => all.sunTimes?.(park).sunrise,
    "2026-06-21T05:31-04:00",
  ),
  refused(
    "a longitude of America without its sign",
    () => all.sunTimes?.({ ...park, longitude: q(75, "deg") }),
    ["in America it is negative"],
    () => all.sunTimes?.(park).sunset,
    "2026-06-21T20:32-04:00",
  ),
  refused(
    "a time zone by its letters",
    () => all.sunTimes?.({ ...park, offset: "EDT" }),
    ["-05:00"],
    () => all.sunTimes?.(park).sunrise,
    "2026-06-21T05:31-04:00",
  ),
  works(
    "500 micromoles for a day",
    () => all.dailyLightIntegral?.({ ppfdMicromol: Array(24).fill(500) }).molPerSquareMeter,
    43.2,
  ),
  refused(
    "half a day of readings",
    () => all.dailyLightIntegral?.({ ppfdMicromol: Array(12).fill(500) }),
    ["one whole day: 24 readings"],
    () => all.dailyLightIntegral?.({ ppfdMicromol: Array(24).fill(250) }).molPerSquareMeter,
    21.6,
  ),
  refused(
    "the mean radiation of a day",
    () => all.lightFromRadiation?.({ radiation: q(250, "W/m2") }),
    ['times(quantity(1, "d"))'],
    () => all.lightFromRadiation?.({ radiation: q(250, "W/m2").times?.(q(1, "d")) }).molPerSquareMeter,
    21.6 * 2.3,
  ),
  refused(
    "the accuracy of a thermometer as a temperature",
    () => all.inversionReading?.({ ...thermometers, accuracy: q(0.9, "°F") }),
    ['quantity(0.9, "°F diff")'],
    () => all.inversionReading?.({ ...thermometers, accuracy: q(0.9, "°F diff") }).difference,
    [4.5, "°F diff"],
  ),
  works(
    "beetles as well as a beetle",
    () => all.insectTargetsFor?.("Japanese beetles").length,
    all.insectTargetsFor?.("Japanese beetle").length as never,
  ),
  works(
    "the index of brown patch",
    () => all.brownPatchIndex?.({ meanHumidity: q(90, "%"), minimumTemperature: q(20, "°C") }),
    -21.5 + 0.15 * 90 + 1.4 * 20 - 0.033 * 400,
  ),
  refused(
    "Pythium from two lists",
    () => all.pythiumOutlook?.({ weather: { temperature: [30], humidity: [90] } }),
    ["hourlyWeather"],
    () =>
      all.pythiumOutlook?.({
        weather: all.hourlyWeather?.({
          start: "2026-07-14T12:00-05:00",
          source: "station at the depot",
          temperature: { unit: "°C", values: Array(24).fill(30) },
          humidity: { unit: "%", values: Array(24).fill(95) },
        }),
      }).type,
    "pythium-outlook",
  ),
];

/** What people do first: indicators, prices and lessons. */
export const office: readonly FirstThing[] = [
  refused(
    "half-life and Koc as numbers",
    () => all.leachingScore?.({ halfLife: 60, koc: 100 }),
    ["a time", "quantity(60, unit)"],
    () => all.leachingScore?.({ halfLife: q(60, "d"), koc: q(100, "mL/g") }).score,
    Math.log10(60) * 2,
  ),
  works(
    "pints beside fluid ounces",
    () =>
      all.treatmentFrequency?.({
        area: q(10, "acre"),
        treatments: [
          {
            name: "May",
            rate: q(2, "pt/acre", "product"),
            fullRate: q(64, "fl oz/acre", "product"),
            treated: q(5, "acre"),
          },
        ],
      }).index,
    0.25,
  ),
  refused(
    "more ground treated than there is",
    () =>
      all.treatmentFrequency?.({
        area: q(1, "ha"),
        treatments: [
          {
            name: "May",
            rate: q(1, "L/ha", "product"),
            fullRate: q(1, "L/ha", "product"),
            treated: q(2, "ha"),
          },
        ],
      }),
    ["10000 m2 or less", "second treatment separately"],
    () =>
      all.treatmentFrequency?.({
        area: q(1, "ha"),
        treatments: ["May", "June"].map((name) => ({
          name,
          rate: q(1, "L/ha", "product"),
          fullRate: q(1, "L/ha", "product"),
          treated: q(1, "ha"),
        })),
      }).index,
    2,
  ),
  refused(
    "active ingredient as product",
    () =>
      all.activeUses?.({
        area: q(10, "acre"),
        applications: [{ date: "2026-04-20", active: q(0.5, "lb/acre", "product"), area: q(4, "acre") }],
      }),
    ["ai or ae"],
    () => all.fieldImpact?.({ quotient: 20, active: q(1.5, "lb/acre", "ai"), per: "lb/acre" }).value,
    30,
  ),
  refused(
    "a wage without its hour",
    () => all.loadedWage?.({ wage: money(16, "USD"), ...wages }),
    ["a cost per time, such as 2 USD/h"],
    () => all.loadedWage?.({ wage: money(16, "USD").per?.(hour), ...wages }).cost,
    [20, "money:USD/h"],
  ),
  refused(
    "a margin as a bare number",
    () => all.priceAtMargin?.({ cost: money(90, "USD"), margin: 10 }),
    ['quantity(10, "%")'],
    () => all.priceAtMargin?.({ cost: money(90, "USD"), margin: q(10, "%") }),
    [100, "money:USD"],
  ),
  refused(
    "a margin of 100 %",
    () => all.priceAtMargin?.({ cost: money(90, "USD"), margin: q(100, "%") }),
    ["less than 100 %", "priceAtMarkup"],
    () => all.priceAtMarkup?.({ cost: money(90, "USD"), markup: q(100, "%") }),
    [180, "money:USD"],
  ),
  works("a margin of 20 % as a markup", () => all.markupOfMargin?.(q(20, "%")), [25, "%"]),
  refused(
    "hours by position",
    () => all.overtimeShare?.(50),
    ["hours, regular, factor"],
    () => all.overtimeShare?.({ hours: q(50, "h") }),
    [10, "%"],
  ),
  refused(
    "interest of 0.06",
    () =>
      all.capitalRecovery?.({
        price: money(60000, "USD"),
        remaining: money(12000, "USD"),
        years: 8,
        interest: 0.06,
      }),
    ["interest", 'quantity(10, "%")'],
    () =>
      all.capitalRecovery?.({
        price: money(60000, "USD"),
        remaining: money(12000, "USD"),
        years: 8,
        interest: q(0, "%"),
      }),
    [6000, "money:USD"],
  ),
  refused(
    "an entry by the name of its function",
    () => teach.catalogueEntry?.("productRate"),
    ["did you mean product-rate?"],
    () => teach.catalogueEntry?.("product-rate").id,
    "product-rate",
  ),
  refused(
    "the spacing of a lesson as a number",
    () => teach.entryResult?.("boom-width", { nozzles: 12, spacing: 20 }),
    ["inputs.spacing", "length"],
    () => teach.entryResult?.("boom-width", { nozzles: 12, spacing: q(20, "in") }),
    [20, "ft"],
  ),
  refused(
    "a product without its sign in an equation",
    () => teach.equationText?.("R = 100T / p"),
    ["an operation"],
    () => teach.equationText?.("R = 100 * T / p"),
    "R = 100 × T ÷ p",
  ),
];
