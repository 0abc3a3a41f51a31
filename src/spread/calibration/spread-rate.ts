import {
  allOf,
  expectFields,
  expectNumber,
  fail,
  numberIn,
  ofKind,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { above, fieldsOf, isMetric } from "../inputs.js";
import { areaOfGround, type TestArea } from "./test-area.js";

/** What was put down: caught or lost, or the weight before and after. */
export type Spread<S extends string> =
  | { readonly amount: Quantity<"mass", S>; readonly before?: never; readonly after?: never }
  | {
      readonly amount?: never;
      /** What was in the hopper, or in the bag, before the run. */
      readonly before: Quantity<"mass", S>;
      /** What was left after it. */
      readonly after: Quantity<"mass", NoInfer<S>>;
    };

/** A calibration run: what was put down, where, in how many passes. */
export type SpreadRun<S extends string = string> = Spread<S> &
  TestArea & {
    /** Passes made over the pan or sheet before it was weighed; 1 where it is left out. */
    readonly passes?: number;
  };

/** What was put down in a run, as it was weighed. */
const amountSpread = <S extends string>(record: Readonly<Record<string, unknown>>): Quantity<"mass", S> => {
  const has = (key: string): boolean => record[key] !== undefined && record[key] !== null;
  if (has("amount") && (has("before") || has("after"))) {
    fail("conflict", "amount", record.amount, "an amount, or the weights before and after, not both");
  }
  if (has("amount") || !(has("before") || has("after"))) {
    return ofKind<"mass", S>(fieldsOf(record, { amount: { dimension: "mass" } }).amount);
  }
  const { before, after } = fieldsOf(record, {
    before: { dimension: "mass" },
    after: { dimension: "mass", bound: "non-negative" },
  });
  if (before.of !== after.of) fail("substance/mismatch", "after", after, `a mass of ${before.of}`);
  const used = before.value - numberIn(after, before.unit);
  if (!(used > 0)) fail("conflict", "after", after, `less than before, which is ${before}`);
  return quantityOf<"mass", S>(used, before.unit, before.of, "before");
};

/** How many passes, or throws. */
export const passesOf = (input: unknown): number => {
  const passes = input === undefined || input === null ? 1 : expectNumber(input, "passes", { min: 1 });
  return Number.isInteger(passes) ? passes : outOfRange("passes", passes, { step: 1 });
};

/** A rate from pounds and square feet, or from kilograms and square meters: multiplied before it is divided. */
const rateOf = <S extends string>(
  amount: Quantity<"mass", S>,
  area: Quantity<"area", "none">,
  passes: number,
): Quantity<"mass/area", S> => {
  const metric = isMetric(area.unit);
  const mass = numberIn(amount, metric ? "kg" : "lb");
  const value = metric ? (mass * 10_000) / area.in("m2") / passes : (mass * 1000) / area.in("ft2") / passes;
  return quantityOf<"mass/area", S>(
    above(value, "amount"),
    metric ? "kg/ha" : "lb/1000 ft2",
    amount.of,
    "amount",
  );
};

/**
 * The rate at which a spreader put material down, from what was caught or lost over a known area.
 *
 * `R = W / (A n)`
 *
 * - `R` rate, mass per area: in lb/1000 ft2 where the ground is given in US customary units, else in kg/ha
 * - `W` what was put down: `amount`, or `before - after`
 * - `A` the area, from `area`, `length` and `width`, `swath` and `distance`, or the turns of a wheel: see
 *   {@link testArea}
 * - `n` the number of passes over it, 1 where it is left out
 *
 * One formula, five methods: known area (a catch box, or the hopper weighed), by difference (`before`,
 * `after`), sheet or tarp and pan (`length`, `width`), wheel turns (`circumference`, `turns`). Trade
 * constants follow from the units: 43 560 ft2 to the acre, 21.78 ton/acre for 1 lb on 1 ft2, 96.03 lb/acre
 * for 1 g on 1 ft2.
 *
 * Range: working speed from line to line; `W`, `A` above zero. A sheet or pan under one pass of a spreader
 * that throws wider than its swath sees a part of what falls there: lay it under three passes a swath
 * apart (then `passes` is 1: they are one coverage), or take the mean over the swath, `overlappedRate`.
 *
 * Sources disagree: one prints weight and area the wrong way round (area divided by weight is no rate);
 * one counts 43 turns of the wheel as a thousandth of the turns to the acre, 43.56: 1.3 % low.
 *
 * @throws RatewrightError `conflict` where nothing was put down, or forms are mixed; `missing`, `range`,
 * `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`; every problem is reported
 *
 * Source: University of Florida, "Dry chemical applicator calibration", table 1; by difference: eXtension,
 * "Calibrating a fire ant bait spreader", 2007; the tarp: Iowa State University Extension, 2001.
 *
 * @example
 * ```ts
 * import { quantity, spreadRate } from "ratewright";
 * const run = { swath: quantity(10, "ft"), distance: quantity(435, "ft") };
 * const rate = spreadRate({ amount: quantity(20, "lb", "product"), ...run });
 * Number(rate.in("lb/acre").toFixed(2)); // => 200.28
 *
 * const pan = { length: quantity(1, "ft"), width: quantity(1, "ft") };
 * const caught = spreadRate({ amount: quantity(6.48, "g", "product"), ...pan, passes: 3 });
 * Number(caught.in("lb/1000 ft2").toFixed(2)); // => 4.76
 * ```
 */
export const spreadRate = <S extends string>(run: SpreadRun<S>): Quantity<"mass/area", S> =>
  rateOfRun<S>(run);

/** {@link spreadRate} of a run that was not read yet. */
export const rateOfRun = <S extends string>(run: unknown): Quantity<"mass/area", S> => {
  const record = expectFields(
    run,
    [
      "amount",
      "before",
      "after",
      "length",
      "width",
      "swath",
      "distance",
      "circumference",
      "turns",
      "area",
      "passes",
    ],
    "run",
    "a record with an amount and an area",
  );
  const { amount, area, passes } = allOf({
    amount: () => amountSpread<S>(record),
    area: () => areaOfGround(record),
    passes: () => passesOf(record.passes),
  });
  return rateOf(amount, area, passes);
};

/**
 * What should be caught in a check at a rate: on a sheet, in a pan, in the box over a run, or lost from
 * the hopper over a test area.
 *
 * `W = R A n`, with the symbols of {@link spreadRate}. In lb where the ground is given in US customary
 * units (ask for it in oz or g), else in kg.
 *
 * The target of one pan is a check of the mean over the swath, not of the pan at the center: a pattern with
 * a peak puts more than the mean there.
 *
 * @param check.passes - `n`, 1 where left out
 * @throws RatewrightError as {@link spreadRate}
 *
 * Source: Texas A&M turfgrass, "Rotary spreader calibration, catch pan" (4.76 lb/1000 ft2 in 1 ft2).
 *
 * @example
 * ```ts
 * import { quantity, targetCatch } from "ratewright";
 * const rate = quantity(4.76, "lb/1000 ft2", "product");
 * const pan = targetCatch({ rate, length: quantity(12, "in"), width: quantity(12, "in") });
 * Number(pan.in("g").toFixed(2)); // => 2.16
 * targetCatch({ rate: quantity(10, "lb/1000 ft2", "product"), area: quantity(200, "ft2") }).in("lb"); // => 2
 * ```
 */
export const targetCatch = <S extends string>(
  check: { readonly rate: Quantity<"mass/area", S>; readonly passes?: number } & TestArea,
): Quantity<"mass", S> => {
  const record = expectFields(
    check,
    ["rate", "passes", "length", "width", "swath", "distance", "circumference", "turns", "area"],
    "check",
    "a record with a rate and an area",
  );
  const { rate, area, passes } = allOf({
    rate: () => fieldsOf(record, { rate: { dimension: "mass/area" } }).rate,
    area: () => areaOfGround(record),
    passes: () => passesOf(record.passes),
  });
  const metric = isMetric(area.unit);
  const value = metric
    ? (rate.in("kg/ha") * area.in("m2") * passes) / 10_000
    : (rate.in("lb/1000 ft2") * area.in("ft2") * passes) / 1000;
  return quantityOf<"mass", S>(above(value, "rate"), metric ? "kg" : "lb", rate.of, "rate");
};
