import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type TankCaution, tankCautions } from "../cautions.js";
import { rinseResidue } from "./rinse-residue.js";
import { type RinseRule, type RinseRuleId, rinseRules } from "./rinse-rules.js";

/** How to rinse an empty container by a published rule. */
export interface ContainerRinse {
  readonly type: "container-rinse";
  readonly version: 1;
  readonly rule: RinseRuleId;
  readonly rinses: number;
  /** Water of one rinse, least and most. */
  readonly perRinse: readonly [Quantity<"volume", "water">, Quantity<"volume", "water">];
  /** Water of all rinses, least and most; it is part of the load. */
  readonly water: readonly [Quantity<"volume", "water">, Quantity<"volume", "water">];
  readonly drainSeconds?: number;
  readonly shakeSeconds?: number;
  /** Seconds of rolling, for a container that the rule takes as too large to shake. */
  readonly rollSeconds?: number;
  readonly pressure?: { readonly seconds?: number; readonly water?: Quantity<"volume", "water"> };
  readonly withinHours?: number;
  /** What is left of what stayed in the container, with the least water; only where `heel` is given. */
  readonly residue?: Quantity<"1", "none">;
  readonly steps: readonly string[];
  /** Where the rinse water goes. */
  readonly rinsate: string;
  readonly cautions: readonly TankCaution[];
  readonly source: Citation;
}

/**
 * How to rinse an empty container by a published rule: the water of each rinse by the size of the
 * container, shaking, draining, how often, and where the rinse water goes. The label wins over any rule.
 *
 * `water of a rinse = share * size`, with a share of 1/4 (text of US labels), 1/4 under 5 gal and 1/5 from
 * 5 gal on (Illinois, Montana), 1/5 to 1/4 (federal archive) or 1/10 (definition of 1974).
 *
 * @param input - `container`, its size, more than zero; `rule`, `"US federal label text"` where left out;
 *   `heel`, what stays in it after draining, if known, to see the residue
 * @throws RatewrightError with every problem: `range`, `unit/mismatch`, `type`; `conflict` where the heel is
 *   as large as the container
 *
 * Source: each rule of `rinseRules` names its own.
 *
 * @example
 * ```ts
 * import { containerRinse, quantity } from "ratewright";
 * const jug = containerRinse({ container: quantity(2.5, "gal") });
 * jug.perRinse.map((water) => water.in("gal")); // => [0.625, 0.625]
 * jug.rinses; // => 3
 * containerRinse({ container: quantity(5, "gal"), rule: "Illinois" }).perRinse[0].in("gal"); // => 1
 * ```
 */
export const containerRinse = <C extends string, H extends string = "none">(input: {
  readonly container: Quantity<"volume", C>;
  readonly rule?: RinseRuleId;
  readonly heel?: Quantity<"volume", H>;
}): ContainerRinse => {
  expectFields(input, ["container", "rule", "heel"]);
  const { size, rule, heel } = allOf({
    size: () => expectQuantity(input.container, { dimension: "volume", bound: "positive" }, "container"),
    rule: () => ruleOf(input.rule),
    heel: () =>
      input.heel === undefined
        ? undefined
        : expectQuantity(input.heel, { dimension: "volume", bound: "positive" }, "heel"),
  });
  const found = rinseRules[rule];
  if (heel !== undefined && heel.in("L") >= size.in("L"))
    fail("conflict", "heel", heel, "less than the container holds");
  const water = (share: number, times = 1): Quantity<"volume", "water"> =>
    waterLike(size, share * size.value * times);
  const [least, most] = found.fraction(size.in("gal"));
  const { rinses, source } = found;
  const perRinse = [water(least), water(most)] as const;
  return {
    type: "container-rinse",
    version: 1,
    rule,
    rinses,
    perRinse,
    water: [water(least, rinses), water(most, rinses)],
    ...timingOf(found, size),
    ...(heel !== undefined && { residue: rinseResidue({ heel, rinse: perRinse[0], rinses }) }),
    steps: stepsOf(found, perRinse, timingOf(found, size), rule === "Montana"),
    rinsate: rinsateGoes,
    cautions: tankCautions.filter(({ code }) => rinseCautions.includes(code)),
    source,
  };
};

/** An amount of water in the unit of the container. */
const waterLike = ({ unit }: Quantity<"volume", string>, value: number): Quantity<"volume", "water"> =>
  quantityOf<"volume", "water">(value, unit, "water", "container");

const rinseCautions: readonly string[] = [
  "caution/container-rinse",
  "caution/protective-equipment",
  "caution/no-food-containers",
];

type Timing = Pick<
  ContainerRinse,
  "drainSeconds" | "shakeSeconds" | "rollSeconds" | "pressure" | "withinHours"
>;

/** What a rule says of a container of this size in seconds and hours: one that is too large to shake is rolled. */
const timingOf = (
  { drainSeconds, shakeSeconds, roll, pressure, withinHours }: RinseRule,
  size: Quantity<"volume", string>,
): Timing => {
  const rolled = roll !== undefined && exceeds(size.in("gal"), roll.aboveGallons);
  return {
    ...(drainSeconds !== undefined && { drainSeconds }),
    ...(shakeSeconds !== undefined && !rolled && { shakeSeconds }),
    ...(rolled && { rollSeconds: roll.seconds }),
    ...(pressure !== undefined && {
      pressure: {
        ...(pressure.seconds !== undefined && { seconds: pressure.seconds }),
        ...(pressure.fraction !== undefined && {
          water: waterLike(size, pressure.fraction * size.value),
        }),
      },
    }),
    ...(withinHours !== undefined && { withinHours }),
  };
};

const stepsOf = (
  { fromDrip, rinses }: RinseRule,
  [low, high]: ContainerRinse["perRinse"],
  { drainSeconds, shakeSeconds, rollSeconds }: Timing,
  untilClean: boolean,
): readonly string[] => {
  const figure = ({ value }: Quantity<"volume", "water">): number => Number(value.toPrecision(4));
  const amount = `${low.value === high.value ? "" : `${figure(low)} to `}${figure(high)} ${high.unit}`;
  const drain = `and let it drain${drainSeconds === undefined ? "" : ` for ${drainSeconds} s`}${fromDrip ? " after it begins to drip" : ""}`;
  const move =
    rollSeconds === undefined
      ? `shake ${shakeSeconds === undefined ? "vigorously" : `for ${shakeSeconds} s`}`
      : `roll it on its side, at least one full turn, for ${rollSeconds} s, tip it back and forth on one end and then on the other,`;
  return [
    `Empty the container into the tank ${drain}.`,
    `Put in ${amount} of clean water, close it, and ${move} so that the water reaches every side.`,
    `Pour the rinse water into the tank ${drain}.`,
    `Do this ${rinses === 1 ? "once" : `${rinses} times`} with fresh water${untilClean ? ", and more until no residue is visible" : ""}.`,
    "Make the container unusable, leave its label on until it is handed in, and never reuse it.",
  ];
};

const ruleOf = (input: unknown): RinseRuleId =>
  input === undefined
    ? "US federal label text"
    : expectOneOf(input, Object.keys(rinseRules) as RinseRuleId[], "rule");

/** Where the rinse water of containers goes (University of Illinois, 50 Ways, no. 30). */
export const rinsateGoes =
  "The rinse water goes into the spray tank as part of the load, for a labeled site at or below the label rate. Keep what cannot go there in a marked drum, as mixing water for a later load of the same product; never pour it on the ground or into a drain.";
