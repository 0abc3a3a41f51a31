import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, routeLoads } from "../../../src/index.js";
import { complaints } from "../../errors.js";

interface Case {
  readonly areas: readonly number[];
  readonly rate: number;
  readonly capacity: number;
  readonly residual: number;
  readonly plumbing: number;
  readonly start: number;
  readonly refill: "before a stop" | "when empty";
}

const cases: fc.Arbitrary<Case> = fc.record({
  areas: fc.array(fc.double({ min: 0.2, max: 60, noNaN: true }), { minLength: 1, maxLength: 12 }),
  rate: fc.double({ min: 0.2, max: 4, noNaN: true }),
  capacity: fc.double({ min: 10, max: 300, noNaN: true }),
  residual: fc.double({ min: 0, max: 3, noNaN: true }),
  plumbing: fc.double({ min: 0, max: 3, noNaN: true }),
  start: fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 9, noNaN: true })),
  refill: fc.constantFrom("before a stop" as const, "when empty" as const),
});

const gal = (value: number) => quantity(value, "gal", "spray");
const made = ({ areas, rate, capacity, residual, plumbing, start, refill }: Case) => ({
  stops: areas.map((area, i) => ({ id: `stop ${i + 1}`, area: quantity(area, "1000 ft2") })),
  rate: quantity(rate, "gal/1000 ft2", "spray"),
  capacity: gal(capacity),
  residualVolume: gal(residual),
  plumbingVolume: gal(plumbing),
  refill,
  ...(start > 0 && { startWith: gal(start) }),
});

const tried = <T>(call: () => T): { readonly value?: T; readonly refused?: string } => {
  try {
    return { value: call() };
  } catch {
    return { refused: complaints(call).join() };
  }
};

describe("a route from one tank", () => {
  test("what is filled in and what was there is what the stops take and what is left", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const route = routeLoads(made(given));
        const out = route.stops.reduce((sum, { amount }) => sum + amount.value, 0);
        // Hoses of a machine that starts with mix in it are full of it.
        const before = given.start > 0 ? given.start + given.plumbing : 0;
        // A tank that ends within 1e-9 of what the whole route takes is not filled once more: see `exceeds`.
        const filled = route.loaded.value + before;
        expect(Math.abs(filled - out - route.leftOver.value)).toBeLessThanOrEqual(1.001e-9 * out);
      }),
    );
  });

  test("the tank never holds more than it holds, and never less than what the pump leaves", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const route = routeLoads(made(given));
        const low = Math.min(given.residual, given.start);
        for (const { after, before } of route.fills) {
          expect(after.value).toBeLessThanOrEqual(given.capacity * (1 + 1e-12));
          expect(before.value).toBeGreaterThanOrEqual(low - 1e-9);
        }
        for (const { leaveWith } of route.stops) {
          expect(leaveWith.value).toBeGreaterThanOrEqual(low - 1e-9 * given.capacity);
          expect(leaveWith.value).toBeLessThanOrEqual(given.capacity * (1 + 1e-12));
        }
      }),
    );
  });

  test("past stops where it cannot be filled it takes along what they take, and fills at none of them", () => {
    fc.assert(
      fc.property(cases, fc.infiniteStream(fc.boolean()), (given, open) => {
        const stops = made(given).stops.map((stop) => ({ ...stop, canFill: open.next().value as boolean }));
        const { value: route, refused } = tried(() => routeLoads({ ...made(given), stops }));
        if (route === undefined) {
          expect(refused).toMatch(/^infeasible stops\[\d+\]\.canFill$/);
          return;
        }
        const low = Math.min(given.residual, given.start);
        for (const { stop, after } of route.fills) {
          expect(stop === "stop 1" || stops.find(({ id }) => id === stop)?.canFill).toBe(true);
          expect(after.value).toBeLessThanOrEqual(given.capacity * (1 + 1e-12));
        }
        for (const { leaveWith } of route.stops)
          expect(leaveWith.value).toBeGreaterThanOrEqual(low - 1e-9 * given.capacity);
        const filled = route.loaded.value + (given.start > 0 ? given.start + given.plumbing : 0);
        const out = route.stops.reduce((sum, { amount }) => sum + amount.value, 0);
        // What a full tank may lack of a stretch without a place to fill, and of the whole route.
        expect(Math.abs(filled - out - route.leftOver.value)).toBeLessThanOrEqual(2.001e-9 * out);
      }),
    );
  });

  test("the last filling leaves what tank and hoses keep, to the last digit", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const route = routeLoads(made(given));
        fc.pre(route.fills.length > 0);
        expect(route.leftOver.value).toBe(given.residual + given.plumbing);
      }),
    );
  });

  test("driven until empty takes no more fillings than filled before each stop", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const count = (refill: Case["refill"]) => routeLoads(made({ ...given, refill })).fills.length;
        expect(count("when empty")).toBeLessThanOrEqual(count("before a stop"));
      }),
    );
  });

  test("gallons and liters, square feet and square meters: one route", () => {
    fc.assert(
      fc.property(cases, (given) => {
        const us = routeLoads(made(given));
        const liters = (value: number) => quantity(gal(value).in("L"), "L", "spray");
        const metric = routeLoads({
          ...made(given),
          stops: given.areas.map((area, i) => ({
            id: `stop ${i + 1}`,
            area: quantity(quantity(area, "1000 ft2").in("m2"), "m2"),
          })),
          capacity: liters(given.capacity),
          residualVolume: liters(given.residual),
          plumbingVolume: liters(given.plumbing),
          ...(given.start > 0 && { startWith: liters(given.start) }),
        });
        expect(metric.fills.map(({ stop }) => stop)).toEqual(us.fills.map(({ stop }) => stop));
        metric.fills.forEach(({ added }, i) => {
          expect(quantity(added.value, "L", "spray").in("gal")).toBeCloseTo(
            us.fills[i]?.added.value ?? -1,
            6,
          );
        });
      }),
    );
  });

  test("by hand: 50 gal, stops of 18, 30 and 27 gal, 2 gal below the outlet and 1 gal in the hoses", () => {
    const stops = [12_000, 20_000, 18_000].map((area, i) => ({
      id: `${i + 1}`,
      area: quantity(area, "ft2"),
    }));
    const day = { stops, rate: quantity(1.5, "gal/1000 ft2", "spray"), capacity: gal(50) };
    const held = { ...day, residualVolume: gal(2), plumbingVolume: gal(1) };
    // 50 - 2 - 1 = 47 can go out: 29 are left for 30. Up to 50: 19 in. Then 18 are left for 27: the last takes 9.
    expect(routeLoads(held).fills.map(({ stop, added }) => [stop, Number(added.value.toFixed(9))])).toEqual([
      ["1", 50],
      ["2", 19],
      ["3", 9],
    ]);
    // Driven until empty: 47, then 28 for the rest, in the middle of the second stop, with 29 of 30 gal done.
    const empty = routeLoads({ ...held, refill: "when empty" });
    expect(empty.fills.map(({ stop, added }) => [stop, Number(added.value.toFixed(9))])).toEqual([
      ["1", 50],
      ["2", 28],
    ]);
    expect(empty.fills[1]?.doneThere.in("ft2")).toBeCloseTo((20_000 * 29) / 30, 6);
    expect(empty.fills.map(({ area }) => area.in("ft2")).reduce((a, b) => a + b, 0)).toBeCloseTo(50_000, 6);
  });

  test("what a stop lacks within the noise of rounding is filled in with the next load", () => {
    const filled = (areas: readonly number[], residual: number) => {
      const stops = areas.map((area, i) => ({ id: `${i + 1}`, area: quantity(area, "1000 ft2") }));
      const rate = quantity(1, "gal/1000 ft2", "spray");
      const route = routeLoads({ stops, rate, capacity: gal(10), residualVolume: gal(residual) });
      return route.fills.map(({ added }) => added.value);
    };
    // Two loads of 10 gal are 9e-9 and 27e-9 gal short of two stops, each within 1e-9 of what is loaded: the third makes good.
    const short = filled([10 + 9e-9, 10 + 18e-9, 5], 0);
    expect(short.map((added) => added.toFixed(10))).toEqual([
      "10.0000000000",
      "10.0000000000",
      "5.0000000270",
    ]);
    // Found by a long search: 24 loads of 10 gal less 5.83e-9 gal are 5e-8 gal short of 240 gal less 9e-8. In all, what both
    // stops take and, once, what the tank keeps.
    const long = filled([240 - 9e-8, 0.8], 5.83e-9);
    expect(long.reduce((sum, added) => sum + added, 0)).toBeCloseTo(240.8 - 9e-8 + 5.83e-9, 10);
  });

  test("what cannot be filled on the way is taken along, or refused with the place", () => {
    const stops = [10, 20, 15].map((area, i) => ({
      id: `${i + 1}`,
      area: quantity(area, "1000 ft2"),
      canFill: i === 0,
    }));
    const rate = quantity(1, "gal/1000 ft2", "spray");
    const route = routeLoads({ stops, rate, capacity: gal(40) });
    // Filled to 40, sprayed 10, topped up before it leaves: 35 are needed.
    expect(route.fills.map(({ stop, added, doneThere }) => [stop, added.value, doneThere.value])).toEqual([
      ["1", 40, 0],
      ["1", 5, 10],
    ]);
    expect(complaints(() => routeLoads({ stops, rate, capacity: gal(34) }))).toEqual([
      "infeasible stops[1].canFill",
    ]);
  });

  test("every problem at once, by its place", () => {
    const bad = {
      stops: [
        { id: "a", area: quantity(0, "ft2") },
        { id: "a", area: quantity(2, "gal"), canfill: true },
      ],
      rate: quantity(2, "gal", "spray"),
      refill: "never",
    };
    expect(complaints(() => routeLoads(bad as never))).toEqual([
      "range stops[0].area",
      "type stops[1].canfill",
      "unit/mismatch rate",
      "type refill",
    ]);
    const good = { stops: [{ id: "a", area: quantity(1, "acre") }], rate: quantity(40, "gal/acre", "spray") };
    expect(complaints(() => routeLoads({ ...good, capacity: gal(1e-9) }))).toEqual(["range capacity"]);
    expect(complaints(() => routeLoads({ ...good, capacity: gal(10), startWith: gal(11) }))).toEqual([
      "range startWith",
    ]);
    expect(complaints(() => routeLoads({ ...good, capacity: quantity(10, "lb") }))).toEqual([
      "unit/mismatch capacity",
    ]);
  });
});

test("a rate of a nutrient is not what is in the hopper", () => {
  const stops = [{ id: "a", area: quantity(12, "1000 ft2") }];
  const rate = quantity(3, "lb/1000 ft2", "N") as never;
  expect(complaints(() => routeLoads({ stops, rate, capacity: quantity(10, "lb") as never }))).toEqual([
    "substance/mismatch rate",
  ]);
});
