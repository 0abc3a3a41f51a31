import {
  type Citation,
  expectQuantity,
  expectRecord,
  fail,
  type Quantity,
  quantityOf,
} from "../quantity/index.js";
import { type TankCaution, tankCautions } from "./cautions.js";
import { rinseResidue } from "./rinse-residue.js";

/** A published rule for rinsing an empty container. */
export interface RinseRule {
  readonly source: Citation;
  /** Water of one rinse as a share of the container, least and most; by size where the rule says so. */
  readonly fraction: (gallons: number) => readonly [number, number];
  readonly rinses: number;
  /** Seconds of draining; left out where the rule gives none. */
  readonly drainSeconds?: number;
  /** Seconds of shaking; left out where the rule says only to shake. */
  readonly shakeSeconds?: number;
  /** Rinsing with a pressure nozzle instead: seconds, or the least water as a share of the container. */
  readonly pressure?: { readonly seconds?: number; readonly fraction?: number };
  readonly withinHours?: number;
}

const quarterOrFifth = (gallons: number): readonly [number, number] =>
  gallons < 5 ? [0.25, 0.25] : [0.2, 0.2];

/**
 * Published rules for rinsing containers. They disagree: the definition of 1974 takes a tenth of the
 * container where the states and the federal archive take a fifth to a quarter. The current federal text
 * was not read; what stands on the label comes first.
 */
export const rinseRules: Readonly<
  Record<"Illinois" | "Montana" | "US EPA archive" | "1974 definition", RinseRule>
> = {
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
};

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
 * `water of a rinse = share * size`, with a share of 1/4 under 5 gal and 1/5 from 5 gal on (Illinois,
 * Montana), 1/5 to 1/4 (federal archive) or 1/10 (definition of 1974).
 *
 * @param input - `container`, its size, more than zero; `rule`, `"Montana"` where left out; `heel`, what
 *   stays in it after draining, if known, to see the residue
 * @throws RatewrightError `range`, `unit/mismatch`, `type`; `conflict` where the heel is as large as the
 *   container
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
  expectRecord(input, "input");
  const size = expectQuantity(input.container, { dimension: "volume", bound: "positive" }, "container");
  const { rule = "Montana", heel } = input;
  const found: RinseRule | undefined = Object.entries(rinseRules).find(([id]) => id === rule)?.[1];
  if (found === undefined) {
    return fail("type", "rule", rule, "whose rule", { choices: Object.keys(rinseRules) });
  }
  const water = (value: number): Quantity<"volume", "water"> =>
    quantityOf(value, size.unit, "water", "container") as unknown as Quantity<"volume", "water">;
  const shares = found.fraction(size.in("gal"));
  const perRinse = shares.map((share) => water(share * size.value)) as unknown as ContainerRinse["perRinse"];
  const all = shares.map((share) =>
    water(share * size.value * found.rinses),
  ) as unknown as ContainerRinse["water"];
  if (heel !== undefined) {
    const rest = expectQuantity(heel, { dimension: "volume", bound: "positive" }, "heel");
    if (rest.in("L") >= size.in("L")) fail("conflict", "heel", rest, "less than the container holds");
  }
  const { drainSeconds, shakeSeconds, pressure, withinHours, rinses, source } = found;
  const told = (q: Quantity<"volume", "water">): string => `${Number(q.value.toPrecision(4))} ${q.unit}`;
  const [low, high] = perRinse;
  const amount =
    low.value === high.value ? told(low) : `${Number(low.value.toPrecision(4))} to ${told(high)}`;
  const drain = drainSeconds === undefined ? "and let it drain" : `and let it drain for ${drainSeconds} s`;
  return {
    type: "container-rinse",
    version: 1,
    rule,
    rinses,
    perRinse,
    water: all,
    ...(drainSeconds !== undefined && { drainSeconds }),
    ...(shakeSeconds !== undefined && { shakeSeconds }),
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
      `Put in ${amount} of clean water, close it, and shake ${shakeSeconds === undefined ? "vigorously" : `for ${shakeSeconds} s`} so that the water reaches every side.`,
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

/** Where the rinse water of containers goes (University of Illinois, 50 Ways, no. 30). */
export const rinsateGoes =
  "The rinse water goes into the spray tank as part of the load, and with it on to a site that the labels name, within their rates. What cannot go there is kept in a marked drum, as mixing water for a later load of the same product; never on the ground or into a drain.";
