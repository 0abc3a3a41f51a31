import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { tellsEach } from "../../tells.js";
import { inch, min, mm, mmPerHour, percent } from "../helpers.js";

type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const mL = (value: number) => quantity(value, "mL", "water");
const cans = [10, 12, 14, 16].map(mm);

describe("what is no record is told with what it should be", () => {
  tellsEach(
    (
      [
        ["catchCanTest", "catches and time"],
        ["christiansenUniformity", "catches"],
        ["christiansenFromLowerQuarter", "lowerQuarter"],
        ["distributionUniformity", "catches"],
        ["schedulingCoefficient", "mean and driest"],
      ] as const
    ).map(([name, fields]) => [() => call[name](3), `type input: expected a record with ${fields}, got 3`]),
  );
});

describe("cans", () => {
  const test = (more: object) => () => call.catchCanTest({ catches: cans, time: min(10), ...more });
  tellsEach([
    [
      () => call.distributionUniformity({}),
      "missing catches: expected what each can caught, as depths or volumes, got undefined",
    ],
    [
      () => call.distributionUniformity({ catches: Array(100_001).fill(mm(1)) }),
      "range catches: expected 100000 cans or fewer, got a list of 100001",
    ],
    [
      () =>
        call.distributionUniformity({ catches: [quantity(1, "lb"), ...cans].map(() => quantity(1, "lb")) }),
      "unit/mismatch catches[0]: expected a depth, a volume of water or a depth per time, got 1 lb",
    ],
    [
      () => call.distributionUniformity({ catches: [...cans, mm(-1)] }),
      "range catches[4]: expected zero or more: an empty can counts as 0, got -1 mm",
    ],
    [
      () => call.distributionUniformity({ catches: Array(4).fill(mm(0)) }),
      "range catches: expected cans with water in them, 1 or more, got cans that are all empty",
    ],
    [
      () => call.distributionUniformity({ catches: [...cans, mm(1)], remainder: "refuse" }),
      'range catches: expected a whole number of cans that divides by 4, or another remainder than "refuse", got 5',
    ],
    [
      () => call.distributionUniformity({ catches: cans, part: "lowest" }),
      'type part: expected one of "lower quarter", "lower half", got "lowest"',
    ],
    [
      test({ catches: cans.map(({ value }) => mmPerHour(value)) }),
      'unit/mismatch catches[0]: expected depths or volumes; distributionUniformity takes rates, got "mm/h"',
    ],
    [
      test({ opening: quantity(20, "cm2") }),
      "conflict opening: expected nothing besides depths: the opening is for volumes, got 20 cm2",
    ],
    [
      test({ diameter: quantity(5, "cm") }),
      "conflict diameter: expected nothing besides depths: the opening is for volumes, got 5 cm",
    ],
    [
      test({ catches: [10, 12, 14, 16].map(mL) }),
      "missing opening: expected the opening of the can as an area, or its diameter where it is round, got undefined",
    ],
    [
      () => call.schedulingCoefficient({ mean: mmPerHour(10), driest: mmPerHour(11) }),
      "range driest: expected 10 mm/h or less, the mean rate, got 11 mm/h",
    ],
    [
      () => call.schedulingCoefficient({ mean: mmPerHour(1e300), driest: mmPerHour(1e-300) }),
      "range driest: expected a rate with a finite ratio to the mean; a dry spot has no coefficient, got 1e-300 mm/h",
    ],
    [
      test({ catches: [1e-320, 1, 1, 1].map(mm) }),
      "range catches: expected catches with a finite ratio to their mean, or 0 for a dry can, got 1e-320",
    ],
    [
      () => call.christiansenFromLowerQuarter({ lowerQuarter: percent(0) }),
      "range lowerQuarter: expected more than 0, got 0",
    ],
    [
      () => call.christiansenFromLowerQuarter({ lowerQuarter: percent(101) }),
      "range lowerQuarter: expected 100 or less, got 101",
    ],
  ]);

  it("what is done with cans that do not divide by four", () => {
    // Lowest first: 1 to 6, mean 3.5. A quarter of six cans is one and a half.
    const six = [6, 5, 4, 3, 2, 1].map(mm);
    const quarter = (remainder?: water.Remainder) =>
      water
        .distributionUniformity({ catches: six, ...(remainder === undefined ? {} : { remainder }) })
        .in("%");
    expect(quarter()).toBeCloseTo((1.5 / 3.5) * 100, 12);
    expect(quarter("up")).toBeCloseTo((1.5 / 3.5) * 100, 12);
    expect(quarter("down")).toBeCloseTo((1 / 3.5) * 100, 12);
    // A quarter of five is one and a quarter: the nearest is one.
    const five = [1, 2, 3, 4, 5].map(mm);
    expect(water.distributionUniformity({ catches: five }).in("%")).toBeCloseTo(100 / 3, 12);
    expect(water.distributionUniformity({ catches: five, remainder: "up" }).in("%")).toBeCloseTo(50, 12);
    expect(
      water.distributionUniformity({ catches: five, part: "lower half", remainder: "down" }).in("%"),
    ).toBeCloseTo(50, 12);
  });

  it("remarks carry their figures and their field", () => {
    const found = water.catchCanTest({ catches: [0, 12, 14, 16, 18].map(mm), time: min(10) });
    expect(found.schedulingCoefficient).toBeNull();
    expect(found.findings.map(({ code, path, params, source }) => [code, path, params, source])).toEqual([
      [
        "water/few-cans",
        "catches",
        { cans: 5, least: 20 },
        "University of Minnesota Extension (20), University of California, Davis (24)",
      ],
      ["water/cans-not-in-quarters", "catches", { cans: 5 }, "University of California, Davis"],
      ["water/empty-can", "catches", {}, "common practice, no source"],
    ]);
    const many = water.catchCanTest({ catches: Array(20).fill(mm(10)), time: min(10) });
    expect(many.findings).toEqual([]);
    expect([many.cans, many.schedulingCoefficient, many.rate.in("mm/h")]).toEqual([
      20,
      1,
      expect.closeTo(60, 9),
    ]);
  });

  it("volumes are depths over the opening, in the system of the opening", () => {
    const catches = [40, 50, 60, 50].map(mL);
    const metric = water.catchCanTest({ catches, time: min(6), opening: quantity(50, "cm2") });
    expect([metric.depth.value, metric.depth.unit, metric.rate.value, metric.rate.unit]).toEqual([
      expect.closeTo(10, 12),
      "mm",
      expect.closeTo(100, 9),
      "mm/h",
    ]);
    const us = water.catchCanTest({ catches, time: min(6), diameter: inch(3) });
    expect([us.depth.unit, us.rate.unit]).toEqual(["in", "in/h"]);
    expect(us.rate.value).toBeCloseTo(us.depth.value * 10, 9);
    expect(
      water.catchCanTest({ catches: cans.map(({ value }) => inch(value)), time: min(6) }).depth.unit,
    ).toBe("in");
  });

  it("a hundred thousand cans, a perfect spread and a rate that rounding puts above the mean", () => {
    expect(complaint(() => call.distributionUniformity({ catches: Array(100_000).fill(mm(1)) }))).toBe(
      "nothing thrown",
    );
    expect(water.christiansenFromLowerQuarter({ lowerQuarter: percent(100) }).in("%")).toBe(100);
    expect(water.schedulingCoefficient({ mean: mmPerHour(10), driest: mmPerHour(10.000000001) })).toBe(1);
  });
});
