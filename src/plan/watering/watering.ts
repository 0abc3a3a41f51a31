import { addHours, type Instant } from "../../calendar/index.js";
import type { Finding, Length, Quantity, Time } from "../../quantity/index.js";
import { runTime } from "../../water/index.js";
import type { ReadProduct } from "../job/read-products.js";
import type { ReadWater } from "../job/read-water.js";
import type { ReadTreatment } from "../job/treatments.js";
import { amountConflicts, type ProductWatering, wetAndDry } from "./watering-conflicts.js";
import { waterFindings } from "./watering-findings.js";
import { asMuch, type Weighed, weighed } from "./watering-grounds.js";

/** What is to be done with water after a treatment: the strictest that the labels of its products state. */
export interface Watering {
  readonly rules: readonly ProductWatering[];
  /** Products whose label rule the job does not give. */
  readonly notStated: readonly string[];
  /** The most of what they ask for at least, with the shortest time in which they ask for it. */
  readonly least: Length | null;
  readonly within: Time | null;
  /** The least of what they state at most. */
  readonly most: Length | null;
  /** The longest time for which the leaf has to stay dry. */
  readonly notBefore: Time | null;
  /** Whether no watering keeps all of the rules; a finding names the two products. */
  readonly conflict: boolean;
  /** The same as moments, where the job states when the application ends. */
  readonly dryUntil: Instant | null;
  readonly by: Instant | null;
  /** What is still to be watered beside irrigation that is planned and water that was observed; forecast rain is not counted. */
  readonly remaining: Length | null;
  /** What each part lacks, where they do not all lack the same; `remaining` and `runTime` are those of the driest. */
  readonly byPart?: readonly PartWatering[];
  /** Rain that is forecast for the time in which it counts. */
  readonly forecast: Length | null;
  /** How long the irrigation runs for what remains, or for `least` where that is not known; `null` without a rate. */
  readonly runTime: Time | null;
}

/** What parts that get the same water still lack. */
export interface PartWatering {
  /** By name; empty for parts without one. */
  readonly parts: readonly string[];
  readonly remaining: Length;
  readonly runTime: Time | null;
}

/** A watering, with what is to be told of it. */
interface ToldWatering {
  readonly value: Watering;
  readonly findings: readonly Finding[];
  readonly notChecked: readonly string[];
}

const productsOf = (treatment: ReadTreatment): readonly ReadProduct[] =>
  treatment.method === "spread" ? [treatment.product] : treatment.mix.map(({ product }) => product);

const rulesOf = (treatment: ReadTreatment): readonly ProductWatering[] =>
  productsOf(treatment).flatMap(({ id, name, wateringIn: rule }) =>
    rule === undefined ? [] : [{ product: id, productName: name, rule }],
  );

/** The largest or the smallest of some quantities of one dimension. */
const extreme = <D extends "length" | "time">(
  list: readonly (Quantity<D, "none"> | undefined)[],
  sign: 1 | -1,
): Quantity<D, "none"> | null =>
  list
    .flatMap((q) => (q === undefined ? [] : [q]))
    .reduce<Quantity<D, "none"> | null>(
      (best, q) => (best === null || sign * q.compare(best as typeof q) > 0 ? q : best),
      null,
    );

const notCompared = (
  treatment: ReadTreatment,
  rules: readonly ProductWatering[],
  notStated: readonly string[],
  water: ReadWater | undefined,
): readonly string[] => {
  const of = (why: string): readonly string[] => [
    `${treatment.id}: rain and irrigation against the labels, because ${why}.`,
  ];
  return [
    ...(notStated.length === 0
      ? []
      : [
          `Watering-in and rain-free time of ${notStated.join(", ")}: the job does not give the label's rule.`,
        ]),
    ...(rules.length === 0
      ? []
      : water === undefined
        ? of("the job states no rain and no irrigation")
        : treatment.end === undefined
          ? of("the job does not state when the application ends")
          : Date.parse(water.until) < Date.parse(treatment.end)
            ? of("its list of water ends before the application does")
            : []),
  ];
};

/** The strictest of some rules: of what they ask for, and of what they state at most. */
const strictest = (
  rules: readonly ProductWatering[],
): Pick<Watering, "least" | "within" | "most" | "notBefore"> => {
  const stated = rules.map(({ rule }) => rule);
  const wanting = stated.filter(({ least }) => least !== undefined);
  return {
    least: extreme(
      wanting.map(({ least }) => least),
      1,
    ),
    within: extreme(
      wanting.map(({ within }) => within),
      -1,
    ),
    most: extreme(
      stated.map(({ most }) => most),
      -1,
    ),
    notBefore: extreme(
      stated.map(({ notBefore }) => notBefore),
      1,
    ),
  };
};

/** What some parts still lack for the rule that asks for the most there, and the forecast rain beside it. */
const needsOf = (
  parts: readonly string[],
  needing: readonly (readonly Weighed[])[],
  at: number,
): { readonly parts: readonly string[]; readonly remaining: Length; readonly forecast: Length } => {
  const here = needing.map((grounds) => grounds[at] as Weighed);
  return {
    parts,
    // There is a rule at least, for the parts are those of the first.
    remaining: extreme(
      here.map(({ sure }) => sure.remaining),
      1,
    ) as Length,
    forecast: extreme(
      here.map(({ all, sure }) => all.received.minus(sure.received)),
      1,
    ) as Length,
  };
};

/** What the labels of a treatment ask for of water, weighed against the rain and the irrigation of the job. */
export const watering = (treatment: ReadTreatment, water: ReadWater | undefined): ToldWatering => {
  const { end, irrigationRate: rate, path } = treatment;
  const rules = rulesOf(treatment);
  const notStated = productsOf(treatment).flatMap(({ name, wateringIn }) =>
    wateringIn === undefined ? [name] : [],
  );
  const conflicts = [...wetAndDry(rules, path, "in one tank"), ...amountConflicts(rules, path)];
  const known =
    water === undefined ? [] : rules.map((rule) => ({ rule, found: weighed(rule, treatment, water) }));
  const needing = known.filter(({ rule }) => rule.rule.least !== undefined).map(({ found }) => found);
  const strict = strictest(rules);
  const { least, within, notBefore } = strict;
  const grounds = (needing[0] ?? []).map(({ parts }, i) => needsOf(parts, needing, i));
  const remaining = extreme(
    grounds.map((one) => one.remaining),
    1,
  );
  const driest = (one: (typeof grounds)[number]): boolean =>
    remaining !== null && asMuch(one.remaining, remaining);
  const forecast = extreme(
    grounds.filter(driest).map((one) => one.forecast),
    // Of parts that lack the same, rain on one is none on the other.
    -1,
  );
  const need = remaining ?? least;
  const runFor = (depth: Length): Time | null =>
    rate === undefined || depth.value === 0 ? null : runTime({ depth, rate });
  const alike = grounds.every(driest);
  return {
    value: {
      rules,
      notStated,
      ...strict,
      conflict: conflicts.some(({ severity }) => severity === "warning"),
      dryUntil: end === undefined || notBefore === null ? null : addHours(end, notBefore.in("h")),
      by: end === undefined || within === null ? null : addHours(end, within.in("h")),
      remaining,
      ...(!alike && {
        byPart: grounds.map((one) => ({
          parts: one.parts.filter((part) => part !== ""),
          remaining: one.remaining,
          runTime: runFor(one.remaining),
        })),
      }),
      forecast,
      runTime: need === null ? null : runFor(need),
    },
    findings: [...conflicts, ...known.flatMap(({ rule, found }) => waterFindings(rule, found, treatment))],
    notChecked: notCompared(treatment, rules, notStated, water),
  };
};

const sameGround = (a: ReadTreatment, b: ReadTreatment): boolean =>
  a.parts === undefined || b.parts === undefined || a.parts.some((part) => b.parts?.includes(part));

/** Treatments of one visit on the same ground, of which one wants water and the other must stay dry. */
export const groundConflicts = (treatments: readonly ReadTreatment[]): readonly Finding[] =>
  treatments.flatMap((a, i) =>
    treatments.slice(i + 1).flatMap((b) => {
      if (!sameGround(a, b)) return [];
      // What one treatment has in itself was told with it.
      const without = (one: ReadTreatment, other: ReadTreatment): readonly ProductWatering[] =>
        rulesOf(one).filter(({ product }) => rulesOf(other).every((rule) => rule.product !== product));
      const [mine, others] = [without(a, b), without(b, a)];
      return [
        ...wetAndDry(mine, a.path, "on the same ground", others),
        ...wetAndDry(others, b.path, "on the same ground", mine),
      ];
    }),
  );
