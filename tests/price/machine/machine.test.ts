import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  capitalRecovery,
  fuelUse,
  lifetimeHourCost,
  machineCost,
  money,
  quantity,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const usd = (value: number) => money(value, "USD");
const percent = (value: number) => quantity(value, "%");
const hour = quantity(1, "h");

describe("capitalRecovery", () => {
  it("pays back the price, with interest, by the end", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1000, max: 200_000, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 25 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (price, part, years, interest) => {
          const yearly = capitalRecovery({
            price: usd(price),
            remaining: usd(price * part),
            years,
            interest: percent(interest),
          }).value;
          let owed = price;
          for (let year = 0; year < years; year++) owed = owed * (1 + interest / 100) - yearly;
          expect(Math.abs(owed - price * part)).toBeLessThan(1e-6 * price);
        },
      ),
    );
  });

  it("goes over into plain wear without interest", () => {
    const machine = { price: usd(10_000), remaining: usd(1000), years: 9 };
    const small = capitalRecovery({ ...machine, interest: percent(1e-6) }).value;
    expect(small).toBeCloseTo(capitalRecovery({ ...machine, interest: percent(0) }).value, 3);
  });

  it("keeps its digits however small the interest is", () => {
    const machine = { price: usd(60_000), remaining: usd(0), years: 10 };
    for (const share of [1e-8, 1e-10, 1e-12, 1e-300]) {
      const { value } = capitalRecovery({ ...machine, interest: percent(100 * share) });
      // i / (1 - (1 + i)^-n) = (1 + (n + 1) i / 2 + ...) / n
      expect(Math.abs(value / (6000 * (1 + 5.5 * share)) - 1)).toBeLessThan(1e-14);
    }
  });

  it("refuses a machine that gains value, and two currencies", () => {
    expect(
      complaints(() => capitalRecovery({ price: usd(1), remaining: usd(2), years: 1, interest: percent(0) })),
    ).toEqual(["conflict remaining"]);
    expect(
      complaints(() =>
        capitalRecovery({
          price: usd(2),
          remaining: money(1, "EUR") as never,
          years: 1,
          interest: percent(0),
        }),
      ),
    ).toEqual(["unit/mismatch remaining"]);
  });
});

describe("machineCost", () => {
  const machine = {
    yearly: [{ name: "capital", cost: usd(6000) }],
    hoursPerYear: quantity(500, "h"),
    fuelUse: fuelUse({ horsepower: 40, fuel: "diesel" }),
    fuelPrice: usd(4).per(quantity(1, "gal")),
    repair: usd(3).per(hour),
  };

  it("adds up, and only ownership follows the hours", () => {
    const [one, half] = [machineCost(machine), machineCost({ ...machine, hoursPerYear: quantity(250, "h") })];
    expect(one.ownership.plus(one.fuel).plus(one.lubrication).plus(one.repair).value).toBeCloseTo(
      one.total.value,
      12,
    );
    expect(half.ownership.value).toBeCloseTo(2 * one.ownership.value, 12);
    expect(half.running.value).toBe(one.running.value);
  });

  it("does not depend on the unit of the fuel", () => {
    const liters = { fuelUse: quantity(10, "L/h"), fuelPrice: usd(1.2).per(quantity(1, "L")) };
    expect(machineCost({ ...machine, ...liters }).fuel.value).toBeCloseTo(12, 9);
  });

  it("names each problem", () => {
    expect(
      complaints(() =>
        machineCost({
          ...machine,
          yearly: [...machine.yearly, { name: "", cost: money(1, "EUR") }] as never,
          hoursPerYear: quantity(0, "h"),
        }),
      ),
    ).toEqual(["missing yearly[1].name", "unit/mismatch yearly[1].cost", "range hoursPerYear"]);
    expect(complaints(() => machineCost({ ...machine, repair: money(3, "EUR").per(hour) as never }))).toEqual(
      ["unit/mismatch repair"],
    );
    expect(complaints(() => fuelUse({ horsepower: 0, fuel: "petrol" as never }))).toEqual([
      "range horsepower",
      "type fuel",
    ]);
    expect(
      complaints(() => lifetimeHourCost({ replacement: usd(1), upkeep: usd(1), hours: quantity(0, "h") })),
    ).toEqual(["range hours"]);
  });
});
