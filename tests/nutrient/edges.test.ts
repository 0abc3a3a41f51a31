import { describe, expect, test } from "vitest";
import { nutrientsSuppliedKg, quantity, seasonProgram } from "../../src/index.js";
import { dayCount } from "../../src/nutrient/season/nitrogen-caps.js";
import { placeParts } from "../../src/nutrient/season/place-parts.js";
import { complaints } from "../errors.js";

describe("placing the parts of a plan", () => {
  const part = (date: "2026-06-01" | "2026-06-02") => ({ date, last: date, amount: 1, path: date });
  const open = (["2026-06-01", "2026-06-02"] as const).map((date) => ({ date, day: dayCount(date) }));
  const second = (caps: { readonly perYear?: number }) =>
    placeParts({
      parts: [part("2026-06-01"), part("2026-06-02")],
      open,
      caps,
      applied: [],
      intervalDays: 10,
      least: 0.5,
      small: 1e-9,
    }).parts[1];

  test("a part that finds no day has no last day, and is kept out by the one before it", () => {
    const found = second({});
    expect(found).toStrictEqual({ part: part("2026-06-02"), rest: 1, reason: "interval" });
  });

  test("where less than the least amount is left under the caps, the caps keep it out", () => {
    // 1 of 1.1 has gone down: 0.1 is left, and nobody spreads less than 0.5. Of 1.5 that is left, of 1.6 there is 0.6.
    expect([1.1, 1.5, 1.6].map((perYear) => second({ perYear })?.reason)).toEqual([
      "caps",
      "interval",
      "interval",
    ]);
  });
});

describe("placing parts that stand in no order", () => {
  test("gives applications in the order of their days, none outside of the days of its part", () => {
    const open = (["2026-06-01", "2026-06-20", "2026-06-25"] as const).map((date) => ({
      date,
      day: dayCount(date),
    }));
    const { placed, parts } = placeParts({
      parts: [
        { date: "2026-06-20", last: "2026-06-20", amount: 2, path: "late" },
        { date: "2026-06-01", last: "2026-06-01", amount: 1, path: "early" },
        { date: "2026-06-02", last: "2026-06-19", amount: 3, path: "none" },
      ],
      open,
      caps: {},
      applied: [],
      intervalDays: 3,
      least: 0.5,
      small: 1e-9,
    });
    expect(placed.map(({ date, amount }) => [date, amount])).toEqual([
      ["2026-06-01", 1],
      ["2026-06-20", 2],
    ]);
    expect(parts.map(({ to, rest, reason }) => [to, rest, reason])).toEqual([
      ["2026-06-20", 0, undefined],
      ["2026-06-01", 0, undefined],
      [undefined, 3, "closed season"],
    ]);
  });
});

describe("a plan of the fewest applications", () => {
  const target = quantity(1, "lb/1000 ft2", "N");
  const program = (...targets: readonly (typeof target | undefined)[]) =>
    complaints(() =>
      seasonProgram({
        months: targets.map((one, i) => ({ month: `2026-0${6 + i}`, ...(one && { target: one }) })),
        plan: { kind: "fewest applications" },
        caps: { perApplication: { amount: target, source: "label" } },
      } as never),
    );

  test("takes a target for every month", () => {
    expect(program(target, undefined)).toEqual(["missing months[1].target"]);
    expect(program(undefined, target)).toEqual(["missing months[0].target"]);
    expect(program(target, target)).toEqual([]);
  });
});

describe("nutrientsSuppliedKg", () => {
  test("names the rate that is no number, not its area", () => {
    const of = (rate: number) =>
      complaints(() =>
        nutrientsSuppliedKg({
          rateKgPerHa: Float64Array.of(200, rate),
          areaM2: Float64Array.of(1, 1),
          percent: 24,
        }),
      );
    expect([of(Number.POSITIVE_INFINITY), of(-1)].map(([one]) => one?.split(" ")[1])).toEqual(
      Array(2).fill("rateKgPerHa[1]"),
    );
  });
});
