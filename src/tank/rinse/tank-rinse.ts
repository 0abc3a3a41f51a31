import {
  allOf,
  expectAmount,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  plainCopy,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type TankCaution, tankCautions } from "../cautions.js";
import type { Share } from "../inputs.js";
import { litersOf, rinsesOf } from "./rinse-residue.js";

/** More rinses than this nobody makes. */
const mostRinses = 1000;

/** The best use of a given amount of rinse water on a tank. */
export interface TankRinse {
  readonly type: "tank-rinse";
  readonly version: 1;
  readonly rinses: number;
  /** Water of one rinse: all rinses alike leave the least. */
  readonly perRinse: Quantity<"volume", "water">;
  /** What is left of the spray that stayed in the tank, as a share of it. */
  readonly residue: Share;
  /** The same with all of the water in one rinse. */
  readonly inOneRinse: Share;
  /** The least that any number of rinses can leave with this water. */
  readonly limit: Share;
  /** Strength of what stays in the tank after the last rinse, where the strength of the spray is given. */
  readonly strengthLeft?: Quantity<string, string>;
  readonly rinsate: string;
  readonly cautions: readonly TankCaution[];
}

/**
 * How to split a given amount of water over a number of rinses of a tank, and what is left:
 * `residue = (r / (r + V/n))^n`, where r is what the pump leaves and V all of the water. Equal rinses are
 * the best split: the product of the factors `r + v` is largest for equal parts of one sum. More rinses
 * of less water leave less, down to the limit `e^(-V/r)`.
 *
 * It holds where each rinse mixes fully with what stays, and reaches every part of tank and hoses.
 *
 * @param input - `heel`, what tank and hoses keep, more than zero; `water`, all rinse water, zero or more;
 *   `rinses`, a whole number, 3 where left out; `strength` of the spray (a mass or a volume per volume),
 *   if what is left is asked for
 * @throws RatewrightError with every problem: `range`, `unit/mismatch`, `not-finite`, `type`
 *
 * Source: dilution by mass balance, derived.
 *
 * @example
 * ```ts
 * import { quantity, tankRinse } from "ratewright";
 * const rinse = tankRinse({
 *   heel: quantity(1, "gal", "spray"),
 *   water: quantity(12, "gal", "water"),
 *   rinses: 3,
 * });
 * rinse.perRinse.in("gal"); // => 4
 * Number(rinse.residue.in("%").toFixed(2)); // => 0.8
 * Number(rinse.inOneRinse.in("%").toFixed(2)); // => 7.69
 * ```
 */
export const tankRinse = <
  H extends string,
  W extends string,
  D extends string = "mass/volume",
  S extends string = "none",
>(input: {
  readonly heel: Quantity<"volume", H>;
  readonly water: Quantity<"volume", W>;
  readonly rinses?: number;
  readonly strength?: Quantity<D, S>;
}): TankRinse => {
  const given = plainCopy(input);
  expectFields(given, ["heel", "water", "rinses", "strength"]);
  const { heel, water, rinses, strength } = allOf({
    heel: () => litersOf(given.heel, "heel", "positive"),
    water: () => litersOf(given.water, "water", "non-negative"),
    rinses: () => rinsesOf(given.rinses, "rinses"),
    strength: () =>
      given.strength === undefined
        ? undefined
        : expectAmount(
            given.strength,
            { dimensions: ["mass/volume", "volume/volume"], bound: "non-negative" },
            "strength",
          ),
  });
  const residue = (1 / (1 + water / rinses / heel)) ** rinses;
  return {
    type: "tank-rinse",
    version: 1,
    rinses,
    perRinse: quantityOf<"volume", "water">(given.water.value / rinses, given.water.unit, "water", "water"),
    residue: quantity(residue * 100, "%"),
    inOneRinse: quantity((1 / (1 + water / heel)) * 100, "%"),
    limit: quantity(Math.exp(-water / heel) * 100, "%"),
    ...(strength && {
      strengthLeft: quantityOf(strength.value * residue, strength.unit, strength.of, "strength"),
    }),
    rinsate:
      "Spray the rinse water on a labeled site, at or below the label rate: over the area just treated only as far as the label rate leaves room. Never into a drain or ditch or onto a hard surface. Rinse nozzles, screens and hoses too. The label says if a cleaner is needed. Common practice, no source.",
    cautions: tankCautions.filter(({ code }) =>
      ["caution/label-first", "caution/closed-tank", "caution/protective-equipment"].includes(code),
    ),
  };
};

/**
 * How many equal rinses a given amount of water takes to bring the residue down to a share: the smallest n
 * with `(r / (r + V/n))^n <= target`.
 *
 * @param input - `heel`, `water` as in {@link tankRinse}; `target`, the share that may be left, a fraction
 *   between 0 and 100 %
 * @throws RatewrightError `range`, `unit/mismatch`; `infeasible` where no number of rinses gets there
 *   with this water: even the limit `e^(-V/r)` is above the target, or more than 1000 would be needed
 *
 * Source: dilution by mass balance, derived.
 *
 * @example
 * ```ts
 * import { quantity, rinsesFor } from "ratewright";
 * rinsesFor({
 *   heel: quantity(1, "gal", "spray"),
 *   water: quantity(12, "gal", "water"),
 *   target: quantity(0.5, "%"),
 * }); // => 4
 * ```
 */
export const rinsesFor = <H extends string, W extends string>(input: {
  readonly heel: Quantity<"volume", H>;
  readonly water: Quantity<"volume", W>;
  readonly target: Quantity<"1", "none">;
}): number => {
  expectFields(input, ["heel", "water", "target"]);
  const { heel, water, target } = allOf({
    heel: () => litersOf(input.heel, "heel", "positive"),
    water: () => litersOf(input.water, "water", "non-negative"),
    target: () =>
      expectNumber(expectQuantity(input.target, { dimension: "1", of: "none" }, "target").in("1"), "target", {
        above: 0,
        below: 1,
      }),
  });
  for (let n = 1; n <= mostRinses; n++) {
    if ((1 / (1 + water / n / heel)) ** n <= target * (1 + 1e-12)) return n;
  }
  const limit = Math.exp(-water / heel);
  const told = `${Number((limit * 100).toPrecision(3))} %`;
  return fail(
    "infeasible",
    "water",
    input.water,
    limit < target
      ? `more water: with this much it takes more than ${mostRinses} rinses; even endless rinsing leaves ${told}`
      : `more water: with this much, even endless rinsing leaves ${told}`,
  );
};
