import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectQuantity,
  fail,
  frozen,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type TankCaution, tankCautions } from "../cautions.js";
import { rinseResidue } from "./rinse-residue.js";

/** A published rule for rinsing an empty container. */
export interface RinseRule {
  readonly source: Citation;
  /** Water of one rinse as a share of the container, least and most; by size where the rule says so. */
  readonly fraction: (gallons: number) => readonly [number, number];
  readonly rinses: number;
  /** Seconds of draining; left out where the rule gives none. */
  readonly drainSeconds?: number;
  /** Whether the seconds of draining count from when the flow begins to drip. */
  readonly fromDrip?: boolean;
  /** Seconds of shaking; left out where the rule says only to shake. */
  readonly shakeSeconds?: number;
  /** Containers above so many gallons are rolled instead of shaken, for so many seconds. */
  readonly roll?: { readonly aboveGallons: number; readonly seconds: number };
  /** Rinsing with a pressure nozzle instead: seconds, or the least water as a share of the container. */
  readonly pressure?: { readonly seconds?: number; readonly fraction?: number };
  readonly withinHours?: number;
}

/** Within the guard of a comparison 5 gal are 5 gal, in whatever unit they were given. */
const quarterOrFifth = (gallons: number): readonly [number, number] =>
  exceeds(5, gallons) ? [0.25, 0.25] : [0.2, 0.2];

/**
 * Published rules for rinsing containers. They disagree: the definition of 1974 takes a tenth of the
 * container, the states and the federal archive a fifth to a quarter, and the text that a federal rule puts
 * on US labels a quarter, whatever the size. That text was read on a label, for containers that can be
 * shaken; rolling the larger ones and its pressure rinse are from memory. What stands on the label comes first.
 */
export const rinseRules: Readonly<
  Record<"US federal label text" | "Illinois" | "Montana" | "US EPA archive" | "1974 definition", RinseRule>
> = /* @__PURE__ */ frozen({
  "US federal label text": {
    source: {
      title:
        "Residue removal instructions for nonrefillable containers, 40 CFR 156.146, as a US label prints them",
      publisher: "US Environmental Protection Agency",
      where:
        "triple rinse of a container that can be shaken; larger containers and the pressure rinse (about 40 psi) from memory",
    },
    fraction: () => [0.25, 0.25],
    rinses: 3,
    drainSeconds: 10,
    fromDrip: true,
    shakeSeconds: 10,
    roll: { aboveGallons: 5, seconds: 30 },
    pressure: { seconds: 30 },
  },
  Illinois: {
    source: {
      title: "50 Ways Farmers Can Protect Their Groundwater, no. 30, Rinse Chemical Containers Thoroughly",
      publisher: "University of Illinois",
      url: "http://www.thisland.illinois.edu/50ways/50ways_30.html",
    },
    fraction: quarterOrFifth,
    rinses: 3,
    drainSeconds: 30,
    pressure: { seconds: 60 },
  },
  Montana: {
    source: {
      title: "Administrative Rules of Montana 4.10, Rinsing of pesticide containers",
      publisher: "State of Montana",
      where: "(1)-(2)",
      url: "https://rules.mt.gov/gateway/ShowRuleFile.asp?RID=16614",
    },
    fraction: quarterOrFifth,
    rinses: 3,
    drainSeconds: 30,
    pressure: { fraction: 0.5 },
    withinHours: 48,
  },
  "US EPA archive": {
    source: {
      title: "Farm pesticide container rinsing (archived compliance library)",
      publisher: "US Environmental Protection Agency",
      where: "triple-rinse steps",
      url: "https://webarchive.library.unt.edu/eot2008/20090827135059/http:/www.epa.gov/seahome/library/farmpest.zip",
    },
    fraction: () => [0.2, 0.25],
    rinses: 3,
    drainSeconds: 30,
    shakeSeconds: 30,
    pressure: { seconds: 30 },
  },
  "1974 definition": {
    source: {
      title: "Triple rinsing, definition of 1974",
      publisher: "compliance digest citing the US federal rule",
    },
    fraction: () => [0.1, 0.1],
    rinses: 3,
  },
});

/** Whose rule for rinsing a container. */
export type RinseRuleId = keyof typeof rinseRules;

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
  const water = (value: number): Quantity<"volume", "water"> =>
    quantityOf<"volume", "water">(value, size.unit, "water", "container");
  const shares = found.fraction(size.in("gal"));
  const perRinse = shares.map((share) => water(share * size.value)) as unknown as ContainerRinse["perRinse"];
  const all = shares.map((share) =>
    water(share * size.value * found.rinses),
  ) as unknown as ContainerRinse["water"];
  const { drainSeconds, fromDrip, pressure, withinHours, rinses, source, roll } = found;
  const rollSeconds =
    roll !== undefined && exceeds(size.in("gal"), roll.aboveGallons) ? roll.seconds : undefined;
  const shakeSeconds = rollSeconds === undefined ? found.shakeSeconds : undefined;
  const told = (q: Quantity<"volume", "water">): string => `${Number(q.value.toPrecision(4))} ${q.unit}`;
  const [low, high] = perRinse;
  const amount =
    low.value === high.value ? told(low) : `${Number(low.value.toPrecision(4))} to ${told(high)}`;
  const drain = `and let it drain${drainSeconds === undefined ? "" : ` for ${drainSeconds} s`}${fromDrip ? " after it begins to drip" : ""}`;
  const move =
    rollSeconds === undefined
      ? `shake ${shakeSeconds === undefined ? "vigorously" : `for ${shakeSeconds} s`}`
      : `roll it on its side, at least one full turn, for ${rollSeconds} s, tip it back and forth on one end and then on the other,`;
  return {
    type: "container-rinse",
    version: 1,
    rule,
    rinses,
    perRinse,
    water: all,
    ...(drainSeconds !== undefined && { drainSeconds }),
    ...(shakeSeconds !== undefined && { shakeSeconds }),
    ...(rollSeconds !== undefined && { rollSeconds }),
    ...(pressure !== undefined && {
      pressure: {
        ...(pressure.seconds !== undefined && { seconds: pressure.seconds }),
        ...(pressure.fraction !== undefined && { water: water(pressure.fraction * size.value) }),
      },
    }),
    ...(withinHours !== undefined && { withinHours }),
    ...(heel !== undefined && { residue: rinseResidue({ heel, rinse: low, rinses }) }),
    steps: [
      `Empty the container into the tank ${drain}.`,
      `Put in ${amount} of clean water, close it, and ${move} so that the water reaches every side.`,
      `Pour the rinse water into the tank ${drain}.`,
      `Do this ${rinses} times with fresh water${rule === "Montana" ? ", and more often until no residue is to be seen" : ""}.`,
      "Make the container unusable, keep its label on it until it is handed in, and put it to no other use.",
    ],
    rinsate: rinsateGoes,
    cautions: tankCautions.filter(({ code }) =>
      ["caution/container-rinse", "caution/protective-equipment", "caution/no-food-containers"].includes(
        code,
      ),
    ),
    source,
  };
};

const ruleOf = (input: unknown): RinseRuleId => {
  const rule = input === undefined ? "US federal label text" : input;
  const ids = Object.keys(rinseRules) as RinseRuleId[];
  return ids.find((id) => id === rule) ?? fail("type", "rule", rule, "whose rule", { choices: ids });
};

/** Where the rinse water of containers goes (University of Illinois, 50 Ways, no. 30). */
export const rinsateGoes =
  "The rinse water goes into the spray tank as part of the load, and with it on to a site that the labels name, within their rates. What cannot go there is kept in a marked drum, as mixing water for a later load of the same product; never on the ground or into a drain.";
