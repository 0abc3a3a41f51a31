import { type Citation, checks, expectFields, fail, frozen, quantity } from "../../quantity/index.js";
import { fieldsOf, type Length } from "../inputs.js";
import { patternOf } from "./profile.js";
import type { SpreadPattern } from "./spread-pattern.js";

/** A length between two bounds. */
export interface LengthRange {
  readonly least: Length;
  readonly most: Length;
}

/**
 * The thrown width, as a row of pans shows it: at least from the outermost pan that caught something on the
 * left to that on the right, at most to the empty pans next to them.
 *
 * @throws RatewrightError `infeasible` where an outermost pan caught something, so that the row does not show the
 *   edge; `type`, `not-finite`, `range`, `unit/mismatch`, `conflict`
 *
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { quantity, spreadPattern, thrownWidth } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [0, 2, 5, 2, 0], unit: "g", pans: { spacing: quantity(2, "ft"), left: 2 },
 * });
 * thrownWidth(pattern).least.in("ft"); // => 4
 * thrownWidth(pattern).most.in("ft"); // => 8
 * ```
 */
export const thrownWidth = (pattern: SpreadPattern): LengthRange => {
  const { catches, offsets, offsetUnit } = patternOf(pattern);
  const last = catches.length - 1;
  for (const end of [0, last]) {
    if ((catches[end] as number) > 0) {
      fail("infeasible", `pattern.catches[${end}]`, catches[end], "an empty pan at the end of the row");
    }
  }
  const left = catches.findIndex((one) => one > 0);
  const right = last - [...catches].reverse().findIndex((one) => one > 0);
  const between = (a: number, b: number): Length =>
    quantity((offsets[b] as number) - (offsets[a] as number), offsetUnit as "ft");
  return { least: between(left, right), most: between(left - 1, right + 1) };
};

/** A published share of the thrown width that counts as the swath. */
export interface ThrowRule {
  readonly id: "half" | "shared strips" | "manure" | "slides";
  /** The swath over the thrown width, least and most. */
  readonly least: number;
  readonly most: number;
  /** The rule as its source puts it, and how overlap is counted in it. */
  readonly text: string;
  readonly source: Citation;
}

/** Published shares of the thrown width. A bare "50 % overlap" means three different things: ask for the pass spacing. */
export const throwRules: readonly ThrowRule[] = /* @__PURE__ */ frozen([
  {
    id: "half",
    least: 0.5,
    most: 0.5,
    text: "50 % overlap of the whole thrown width: the edge lands on the wheel track of the pass before.",
    source: { title: "Spacing between passes with a rotary spreader", publisher: "Purdue University" },
  },
  {
    id: "shared strips",
    least: 1 - 35 / 100,
    most: 1 - 30 / 100,
    text: "30 to 35 % of the thrown width is shared on each side (60 to 70 % in total): read as a spacing of 65 to 70 %.",
    source: {
      title: "Hand-cranked spreaders in container nurseries, AG-826",
      publisher: "NC State Extension",
    },
  },
  {
    id: "manure",
    least: 25 / 45,
    most: 30 / 45,
    text: "A throw of 45 ft makes 25 to 30 ft of effective width: dry manure.",
    source: {
      title: "Picking the right swath width",
      publisher: "Iowa State University manure extension",
      year: 2025,
    },
  },
  {
    id: "slides",
    least: 12 / 20,
    most: 12 / 20,
    text: "A throw of 20 ft makes 12 ft of effective width.",
    source: { title: "Broadcast spreader calibration (slides)", publisher: "turf fertilizer training" },
  },
]);

/**
 * The swath by a published share of the thrown width.
 *
 * `w = f T`, with `T` the thrown width, `thrown`, and `f` the share of the rule from {@link throwRules}; least
 * and most where the source prints a range, in the unit of `thrown`.
 *
 * The rules run from 0.5 to 0.7, and the swath depends on the material and the day more than on the machine:
 * a first setting for a pan test, not its result.
 *
 * @throws RatewrightError `type` for an unknown rule; `missing`, `range`, `unit/mismatch`, `not-finite`
 *
 * Source: with each rule, in {@link throwRules}.
 *
 * @example
 * ```ts
 * import { quantity, swathFromThrow } from "ratewright";
 * const swath = swathFromThrow({ thrown: quantity(45, "ft"), rule: "manure" });
 * [swath.least.in("ft"), swath.most.in("ft")]; // => [25, 30]
 * swathFromThrow({ thrown: quantity(20, "ft"), rule: "half" }).most.in("ft"); // => 10
 * ```
 */
export const swathFromThrow = (input: {
  readonly thrown: Length;
  readonly rule: ThrowRule["id"];
}): LengthRange => {
  const record = expectFields(input, ["thrown", "rule"], "input", "a record with thrown, rule");
  const problems = checks();
  const found = problems.run(() => fieldsOf(record, { thrown: { dimension: "length" } }));
  const taken = problems.run(() => ruleOf(record.rule));
  problems.done();
  const [{ thrown }, rule] = [found as NonNullable<typeof found>, taken as ThrowRule];
  return { least: thrown.times(rule.least), most: thrown.times(rule.most) };
};

const ruleOf = (input: unknown): ThrowRule => {
  const ids = throwRules.map(({ id }) => id).join(", ");
  return throwRules.find(({ id }) => id === input) ?? fail("type", "rule", input, `one of ${ids}`);
};
