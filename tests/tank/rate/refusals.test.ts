import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  amountFor,
  impliedAreaRate,
  labelRate,
  perVolume,
  strengthForAreaRate,
} from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a rate, where the refusal points, and what it says would have been right.

const area = quantity(2, "acre");
const sprayVolume = quantity(100, "gal", "spray");
const perArea = quantity(2, "lb/acre", "product:a");
const poured = quantity(2, "pt/acre", "product:a");
const inSpray = quantity(1, "% v/v", "product:a/spray");
const applicationVolume = quantity(20, "gal/acre", "spray");
const recipe = { value: 2, unit: "pt", of: "product:a", per: { value: 100, unit: "gal" } };
const amount = (change: object) => () => amountFor({ rate: perArea, form: "dry", area, ...change } as never);
const label = (input: object) => () => labelRate(input as never);

const rows: readonly Refused[] = [
  // An amount
  [amount({ area: undefined }), "missing", "area", "an area, because the rate is per area"],
  [amount({ area: quantity(2, "gal") }), "unit/mismatch", "area", "an area"],
  [amount({ area: quantity(2, "acre", "N") }), "substance/mismatch", "area", "none, treated, gross or plan"],
  [amount({ rate: inSpray, form: "liquid" }), "missing", "sprayVolume", "because the rate is per volume"],
  [
    amount({ rate: inSpray, form: "liquid", sprayVolume: quantity(1, "gal") }),
    "substance/mismatch",
    "sprayVolume",
    "spray",
  ],
  [
    amount({ rate: inSpray, form: "liquid", sprayVolume: quantity(-1, "gal", "spray") }),
    "range",
    "sprayVolume",
    "zero",
  ],
  [amount({ form: "liquid" }), "missing", "density", "the rate is a mass and the product is liquid"],
  [amount({ rate: poured }), "missing", "density", "the rate is a volume and the product is dry"],
  [amount({ form: "liquid", density: quantity(0, "lb/gal") }), "range", "density", "zero"],
  [
    amount({ form: "liquid", density: quantity(8, "lb/gal", "spray") }),
    "substance/mismatch",
    "density",
    "no substance",
  ],
  [amount({ form: "solid" }), "type", "form", '"dry"'],
  [amount({ size: 1 }), "type", "input.size", "rate"],
  // More powder in a liter than a liter of water weighs
  [
    amount({ rate: quantity(1.1, "kg/L", "product:a/spray"), sprayVolume }),
    "range",
    "rate",
    'perVolume(amount, quantity(100, "gal", "spray"))',
  ],
  [
    amount({ rate: quantity(60, "% v/v", "product:a/spray"), sprayVolume, density: quantity(2, "kg/L") }),
    "range",
    "rate",
    "(8.3 lb/gal) of dry product in the spray",
  ],
  // A rate
  [amount({ rate: null }), "type", "rate", "a rate of product"],
  [amount({ rate: 7 }), "type", "rate", "a rate of product"],
  [
    amount({ rate: quantity(2, "lb", "product:a") }),
    "unit/mismatch",
    "rate",
    "a rate per area or per volume of spray",
  ],
  [
    amount({ rate: quantity(2, "% w/w", "product:a") }),
    "unit/mismatch",
    "rate",
    "by weight it needs a density",
  ],
  [
    amount({ rate: quantity(2, "lb/acre", "N") }),
    "substance/mismatch",
    "rate",
    "a rate of product, such as product:feed-a",
  ],
  [
    amount({ rate: quantity(2, "lb/acre", "product:a/spray") }),
    "substance/mismatch",
    "rate",
    "such as product:feed-a",
  ],
  [
    amount({ rate: quantity(2, "% v/v", "product:a") }),
    "substance/mismatch",
    "rate",
    "such as product:feed-a/spray",
  ],
  [
    amount({ rate: quantity(2, "% v/v", "product:a/water") }),
    "substance/mismatch",
    "rate",
    "a rate of product in the spray",
  ],
  [
    amount({ rate: quantity(101, "% v/v", "product:a/spray") }),
    "range",
    "rate",
    "100 % or less of the spray",
  ],
  [amount({ rate: { ...recipe, per: { value: 0, unit: "gal" } } }), "range", "rate.per", "zero"],
  [amount({ rate: { ...recipe, per: { value: 1, unit: "acre" } } }), "unit/mismatch", "rate.per", "a volume"],
  [
    amount({ rate: { ...recipe, per: quantity(1, "gal", "water") } }),
    "substance/mismatch",
    "rate.per",
    "a volume of finished spray",
  ],
  [
    amount({ rate: { ...recipe, unit: "acre" } }),
    "unit/mismatch",
    "rate",
    "an amount of product, per volume of spray",
  ],
  [
    amount({ rate: { ...recipe, of: "N" } }),
    "substance/mismatch",
    "rate",
    "an amount of product, such as product:feed-a",
  ],
  // The rate of a label
  [label({}), "missing", "min", "a rate of product"],
  [label({ min: perArea }), "missing", "max", "a rate of product"],
  [label({ rate: perArea, min: perArea }), "conflict", "rate", "one of them"],
  [label({ rate: perArea, max: perArea }), "conflict", "rate", "one of them"],
  [label({ min: perArea, max: poured }), "unit/mismatch", "max", "a rate of mass/area"],
  [
    label({ min: perArea, max: quantity(3, "lb/acre", "product:b") }),
    "substance/mismatch",
    "max",
    "a rate of product:a",
  ],
  [
    label({ min: perArea, max: quantity(1, "lb/acre", "product:a") }),
    "conflict",
    "max",
    "2 lb/acre of product:a or more",
  ],
  [label({ rate: perArea, use: "drench" }), "type", "use", '"broadcast" or "spot"'],
  [label({ rate: perArea, note: 7 }), "type", "note", "a text"],
  [label({ rate: perArea, notes: "x" }), "type", "input.notes", "note"],
  // Per volume of spray, and back
  [() => perVolume(perArea as never, sprayVolume), "unit/mismatch", "amount", "rate.per(applicationVolume)"],
  [() => perVolume(poured as never, sprayVolume), "unit/mismatch", "amount", "impliedAreaRate goes back"],
  [() => perVolume(quantity(-2, "lb", "product:a"), sprayVolume), "range", "amount", "zero"],
  [
    () => perVolume(quantity(2, "lb", "N") as never, sprayVolume),
    "substance/mismatch",
    "amount",
    "an amount of product",
  ],
  [
    () => perVolume(quantity(2, "lb", "product:a/spray") as never, sprayVolume),
    "substance/mismatch",
    "amount",
    "an amount of product",
  ],
  [
    () => perVolume(quantity(2, "lb", "product:a"), quantity(1, "gal") as never),
    "substance/mismatch",
    "volume",
    "spray",
  ],
  [
    () => impliedAreaRate({ rate: perArea as never, applicationVolume }),
    "unit/mismatch",
    "rate",
    "strengthForAreaRate takes one per area",
  ],
  [
    () => strengthForAreaRate({ rate: inSpray as never, applicationVolume }),
    "unit/mismatch",
    "rate",
    "impliedAreaRate takes one per volume of spray",
  ],
  [() => strengthForAreaRate({ rate: poured } as never), "missing", "applicationVolume", "or a calibration"],
  [
    () => impliedAreaRate({ rate: inSpray } as never),
    "missing",
    "applicationVolume",
    "a volume of spray per area",
  ],
  [
    () =>
      strengthForAreaRate({ rate: poured, applicationVolume: quantity(0.2, "gal/min", "spray") as never }),
    "unit/mismatch",
    "applicationVolume",
    "a flow becomes one by applicationVolume()",
  ],
  [
    () => strengthForAreaRate({ rate: quantity(30, "gal/acre", "product:a"), applicationVolume }),
    "range",
    "rate",
    "of the spray",
  ],
];

describeRefused("what is refused of a rate", rows);

describe("at the limits", () => {
  test("all of the spray by volume, and a kilogram of powder in a liter of it, are read", () => {
    expect(
      amountFor({ rate: quantity(100, "% v/v", "product:a/spray"), form: "liquid", sprayVolume }).in("gal"),
    ).toBe(100);
    expect(
      amountFor({
        rate: quantity(1, "kg/L", "product:a/spray"),
        form: "dry",
        sprayVolume: quantity(3, "L", "spray"),
      }).in("kg"),
    ).toBe(3);
    // Half of the spray by volume at 2 kg/L is a kilogram in a liter of it.
    expect(
      amountFor({
        rate: quantity(50, "% v/v", "product:a/spray"),
        form: "dry",
        sprayVolume: quantity(3, "L", "spray"),
        density: quantity(2, "kg/L"),
      }).in("kg"),
    ).toBe(3);
  });

  test("a liquid may weigh more than water", () => {
    expect(
      amountFor({
        rate: quantity(1.2, "kg/L", "product:a/spray"),
        form: "liquid",
        sprayVolume: quantity(3, "L", "spray"),
        density: quantity(1.3, "kg/L"),
      }).in("L"),
    ).toBeCloseTo(3.6 / 1.3, 12);
  });

  test("none of it is none, on an area of none", () => {
    expect(amountFor({ rate: quantity(0, "lb/acre", "product:a"), form: "dry", area }).value).toBe(0);
    expect(amountFor({ rate: perArea, form: "dry", area: quantity(0, "acre") }).value).toBe(0);
    expect(problemsOf(() => labelRate({ min: perArea, max: perArea }))).toEqual([]);
  });

  test("an area is read whatever its tag", () => {
    for (const tag of ["none", "treated", "gross", "plan"] as const)
      expect(amountFor({ rate: perArea, form: "dry", area: quantity(2, "acre", tag) }).in("lb")).toBe(4);
  });
});

describe("the unit of an amount", () => {
  test("is that of the rate, where the product is measured as the rate is", () => {
    expect(amountFor({ rate: poured, form: "liquid", area }).toString()).toBe("4 pt of product:a");
    expect(
      amountFor({
        rate: quantity(3, "fl oz/1000 ft2", "product"),
        form: "liquid",
        area: quantity(2000, "ft2"),
      }).toString(),
    ).toBe("6 fl oz of product");
  });

  test("is one of weight where a poured rate is weighed, and the amount is by its density", () => {
    // 4 pt are half a gallon, which weighs 4 lb at 8 lb/gal.
    const weighed = amountFor({ rate: poured, form: "dry", area, density: quantity(8, "lb/gal") });
    expect([weighed.dimension, weighed.in("lb")]).toEqual(["mass", 4]);
    const measured = amountFor({ rate: perArea, form: "liquid", area, density: quantity(8, "lb/gal") });
    expect([measured.dimension, measured.in("pt")]).toEqual(["volume", 4]);
  });
});
