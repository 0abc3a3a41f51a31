import { expect, test } from "vitest";
import { capitalRecovery, fuelUse, lifetimeHourCost, machineCost } from "../../../src/price/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const hour = quantity(1, "h");
const percent = (value: number) => quantity(value, "%");
const call =
  <I>(of: (input: never) => unknown, good: I) =>
  (change: object) =>
  () =>
    of({ ...good, ...change } as never);

const cost = { name: "capital", cost: money(1000, "USD") };
const machine = call(machineCost, {
  yearly: [cost],
  hoursPerYear: quantity(100, "h"),
  fuelUse: quantity(2, "gal/h"),
  fuelPrice: money(4, "USD").per(quantity(1, "gal")),
  repair: money(5, "USD").per(hour),
});
const yearly = (list: unknown) => machine({ yearly: list });

test("an hour of a machine", () => {
  expectRefusals([
    [yearly([]), "missing", "yearly", /yearly cost/],
    [yearly("1000"), "type", "yearly", /yearly cost/],
    [yearly(Array.from({ length: 101 }, () => cost)), "range", "yearly", /"max":100/],
    [yearly([cost, 3]), "type", "yearly[1]", /^a name and a cost/],
    [yearly([cost, { ...cost, name: "" }]), "missing", "yearly[1].name", /^what the cost is for/],
    [
      yearly([cost, { ...cost, cost: undefined }]),
      "missing",
      "yearly[1].cost",
      /^the cost, such as money\(20, "USD"\) /,
    ],
    [
      yearly([cost, { ...cost, cost: money(1, "EUR") }]),
      "unit/mismatch",
      "yearly[1].cost",
      /^the cost in USD, as the first amount is/,
    ],
  ]);
});

test("its hours, fuel and repair", () => {
  expectRefusals([
    [machine({ hoursPerYear: undefined }), "missing", "hoursPerYear", /^the hours of a year/],
    [machine({ hoursPerYear: quantity(0, "h") }), "range", "hoursPerYear", /more than zero/],
    [
      machine({ hoursPerYear: quantity(8785, "h") }),
      "range",
      "hoursPerYear",
      /the hours of a year.*"max":8784,"unit":"h"/,
    ],
    [machine({ fuelUse: undefined }), "missing", "fuelUse", /^fuel per hour, 0 gal\/h where there is none/],
    [machine({ fuelUse: quantity(-1, "gal/h") }), "range", "fuelUse", /zero or more/],
    [
      machine({ fuelPrice: undefined }),
      "missing",
      "fuelPrice",
      /^the price of fuel, such as money\(20, "USD"\) per 1 gal/,
    ],
    [
      machine({ fuelPrice: money(4, "EUR").per(quantity(1, "gal")) }),
      "unit/mismatch",
      "fuelPrice",
      /^money in USD, as the yearly costs are/,
    ],
    [machine({ repair: undefined }), "missing", "repair", /^the repair, such as money\(20, "USD"\) per 1 h/],
    [
      machine({ repair: money(4, "EUR").per(hour) }),
      "unit/mismatch",
      "repair",
      /^money in USD, as the yearly costs are/,
    ],
    [machine({ lubrication: percent(100) }), "range", "lubrication", /"below":100/],
    [machine({ lubrication: 15 }), "type", "lubrication", /^the share with its unit/],
  ]);
  expect(
    machine({ hoursPerYear: quantity(8784, "h"), yearly: Array.from({ length: 100 }, () => cost) }),
  ).not.toThrow();
  expect(
    complaints(
      yearly([
        { name: "", cost: 3 },
        { name: "b", cost: 4 },
      ]),
    ),
  ).toEqual(["missing yearly[0].name", "type yearly[0].cost", "type yearly[1].cost"]);
});

test("its oil is 15 % of the fuel where nothing else is said: 2 gal at 4 USD and a half of it are 8 and 4 USD", () => {
  const of = (change: object) => machine(change)() as ReturnType<typeof machineCost>;
  expect(of({}).lubrication.value).toBeCloseTo(1.2, 12);
  expect(of({ lubrication: percent(50) }).lubrication.value).toBeCloseTo(4, 12);
  expect(of({ lubrication: percent(0) }).running.value).toBeCloseTo(13, 12);
});

test("its life and its capital", () => {
  const life = call(lifetimeHourCost, {
    replacement: money(125_000, "USD"),
    upkeep: money(120_000, "USD"),
    hours: quantity(15_000, "h"),
  });
  const capital = call(capitalRecovery, {
    price: money(60_000, "USD"),
    remaining: money(12_000, "USD"),
    years: 8,
    interest: percent(6),
  });
  expectRefusals([
    [
      life({ replacement: undefined }),
      "missing",
      "replacement",
      /^the price of a new one, such as money\(20, "USD"\) /,
    ],
    [life({ upkeep: undefined }), "missing", "upkeep", /^the upkeep of all years/],
    [life({ upkeep: money(1, "EUR") }), "unit/mismatch", "upkeep", /^money in USD, as the replacement is/],
    [life({ hours: undefined }), "missing", "hours", /^the hours of its life/],
    [life({ hours: quantity(0, "h") }), "range", "hours", /more than zero/],
    [capital({ price: undefined }), "missing", "price", /^the price, such as/],
    [capital({ remaining: undefined }), "missing", "remaining", /^the value at the end/],
    [capital({ remaining: money(1, "EUR") }), "unit/mismatch", "remaining", /^money in USD, as the price is/],
    [
      capital({ remaining: money(60_001, "USD") }),
      "conflict",
      "remaining",
      /^not more than the price, which is 60000/,
    ],
    [capital({ years: 0.4 }), "range", "years", /"min":0.5,"max":50/],
    [capital({ years: 51 }), "range", "years", /50/],
    [capital({ interest: undefined }), "missing", "interest", /^the interest per year, 0 %/],
    [capital({ interest: percent(100) }), "range", "interest", /"below":100/],
    [() => fuelUse({ horsepower: 0, fuel: "diesel" }), "range", "horsepower", /"above":0,"max":1000/],
    [() => fuelUse({ horsepower: 1001, fuel: "diesel" }), "range", "horsepower", /1000/],
    [() => fuelUse({ horsepower: 10, fuel: "coal" as never }), "type", "fuel", /diesel.*gasoline/],
  ]);
  // What still sells for its price costs its interest alone: 6 % of 60 000
  expect((capital({ remaining: money(60_000, "USD") })() as { value: number }).value).toBe(3600);
});
