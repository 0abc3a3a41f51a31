import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import {
  cashPerHour,
  expectCash,
  expectCosts,
  expectHours,
  expectShare,
  type Money,
  type MoneyPerTime,
  type Share,
  type Time,
} from "../cash.js";

/** A yearly cost that comes whether the machine runs or not. */
export interface YearlyCost<C extends string = string> {
  readonly name: string;
  readonly cost: Money<C>;
}

/** What an hour of a machine costs. */
export interface MachineCost<C extends string = string> {
  readonly type: "machine-cost";
  readonly version: 1;
  /** Capital, tax, insurance, housing: the yearly costs over the hours of a year. */
  readonly ownership: MoneyPerTime<C>;
  readonly fuel: MoneyPerTime<C>;
  readonly lubrication: MoneyPerTime<C>;
  readonly repair: MoneyPerTime<C>;
  /** Fuel, lubrication and repair. */
  readonly running: MoneyPerTime<C>;
  /** Ownership and running. */
  readonly total: MoneyPerTime<C>;
}

/**
 * What an hour of a machine costs: to own (yearly costs by the hours of a year) and to run (fuel, lubrication, repair). The
 * person on it is not in it: that is labor.
 *
 * `total = yearly / hours + fuel use x fuel price (1 + lubrication) + repair`
 *
 * The fewer hours a year, the dearer each: with half the hours the ownership of an hour doubles.
 *
 * @param input.yearly - capital recovery ({@link capitalRecovery}), tax, insurance, housing
 * @param input.hoursPerYear - hours that the machine works in a year
 * @param input.fuelUse - volume per hour: your log, or {@link fuelUse}; 0 where it burns none
 * @param input.fuelPrice - money per volume
 * @param input.lubrication - share of the fuel cost; 15 % where it is left out
 * @param input.repair - money per hour; 0 where there is none. No default
 * @throws RatewrightError `missing`, `range`, `unit/mismatch` for another currency than the first, `type`
 * Source: Iowa State University Extension, Ag Decision Maker A3-29 (ownership and operating costs; lubrication 15 % of fuel).
 *
 * @example
 * ```ts
 * import { machineCost, money, quantity } from "ratewright";
 * const hour = machineCost({
 *   yearly: [{ name: "capital", cost: money(8000, "USD") }, { name: "insurance", cost: money(400, "USD") }],
 *   hoursPerYear: quantity(600, "h"),
 *   fuelUse: quantity(2, "gal/h"), fuelPrice: money(4, "USD").per(quantity(1, "gal")),
 *   repair: money(5, "USD").per(quantity(1, "h")),
 * });
 * hour.ownership.value; // => 14
 * Number(hour.total.value.toFixed(2)); // => 28.2
 * ```
 */
export const machineCost = <C extends string>(input: {
  readonly yearly: readonly YearlyCost<C>[];
  readonly hoursPerYear: Time;
  readonly fuelUse: Quantity<"volume/time", "none">;
  readonly fuelPrice: Quantity<`money:${C}/volume`, "none">;
  readonly lubrication?: Share;
  readonly repair: MoneyPerTime<C>;
}): MachineCost<C> => {
  const known = ["yearly", "hoursPerYear", "fuelUse", "fuelPrice", "lubrication", "repair"] as const;
  const fields = expectFields(input, known);
  const { yearly, hours, use, price, oil, repair } = allOf({
    yearly: () => expectCosts(fields.yearly, "yearly", { of: "yearly cost", most: 100 }),
    hours: () => expectHours(fields.hoursPerYear, "hoursPerYear", "the hours of a year", "positive"),
    use: () =>
      fields.fuelUse === undefined
        ? fail("missing", "fuelUse", undefined, "fuel per hour, 0 gal/h where there is none")
        : expectQuantity(
            fields.fuelUse,
            { dimension: "volume/time", of: "none", bound: "non-negative" },
            "fuelUse",
          ).in("gal/h"),
    price: () => expectCash(fields.fuelPrice, "fuelPrice", { what: "the price of fuel", per: "gal" }),
    oil: () =>
      fields.lubrication === undefined
        ? 15
        : expectShare(fields.lubrication, "lubrication", "the share", 100),
    repair: () => expectCash(fields.repair, "repair", { what: "the repair", per: "h" }),
  });
  for (const [path, one] of Object.entries({ fuelPrice: price, repair })) {
    if (one.currency !== yearly.currency) {
      fail(
        "unit/mismatch",
        path,
        fields[path as "repair"],
        `money in ${yearly.currency}, as the yearly costs are`,
      );
    }
  }
  if (hours > 8784)
    outOfRange("hoursPerYear", described(`${hours} h`), { max: 8784, unit: "h" }, "{}, the hours of a year");
  const per = (value: number): MoneyPerTime<C> => cashPerHour(value, yearly.currency as C);
  const [own, fuel] = [yearly.sum / hours, use * price.value];
  const running = (fuel * (100 + oil)) / 100 + repair.value;
  return {
    type: "machine-cost",
    version: 1,
    ownership: per(own),
    fuel: per(fuel),
    lubrication: per((fuel * oil) / 100),
    repair: per(repair.value),
    running: per(running),
    total: per(own + running),
  };
};

/**
 * What an hour of a machine costs over its whole life: `(replacement + upkeep) / lifetime hours`, with the upkeep of all years.
 * A quick way that leaves out interest and what the machine still sells for, and counts no fuel.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: J. Huston, Lawn & Landscape, April 2019 (bucket truck).
 *
 * @example
 * ```ts
 * import { lifetimeHourCost, money, quantity } from "ratewright";
 * const truck = { replacement: money(125000, "USD"), upkeep: money(120000, "USD"), hours: quantity(15000, "h") };
 * Number(lifetimeHourCost(truck).value.toFixed(2)); // => 16.33
 * ```
 */
export const lifetimeHourCost = <C extends string>(input: {
  readonly replacement: Money<C>;
  readonly upkeep: Money<C>;
  readonly hours: Time;
}): MoneyPerTime<C> => {
  const fields = expectFields(input, ["replacement", "upkeep", "hours"]);
  const { replacement, upkeep, hours } = allOf({
    replacement: () => expectCash(fields.replacement, "replacement", { what: "the price of a new one" }),
    upkeep: () => expectCash(fields.upkeep, "upkeep", { what: "the upkeep of all years" }),
    hours: () => expectHours(fields.hours, "hours", "the hours of its life", "positive"),
  });
  if (upkeep.currency !== replacement.currency) {
    fail("unit/mismatch", "upkeep", fields.upkeep, `money in ${replacement.currency}, as the replacement is`);
  }
  return cashPerHour((replacement.value + upkeep.value) / hours, replacement.currency as C);
};
