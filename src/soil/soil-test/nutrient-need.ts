import { oxideOf } from "../../nutrient/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  expectText,
  type Finding,
  numberIn,
  Quantity,
} from "../../quantity/index.js";
import { expectLayer, type SoilLayer } from "../report/soil-layer.js";
import {
  type Extractant,
  extractants,
  type SoilGuideline,
  type TestedNutrient,
  testedNutrients,
} from "./guideline-types.js";
import { type GuidelineName, guidelineRow, readGuideline } from "./guidelines.js";

/** The form in which a recommendation states a nutrient. */
export type NeedForm = "P2O5" | "K2O" | "Ca" | "Mg" | "S";

/** A need as a target rate, in the form that fertilizer states. */
export type NeedTarget = { readonly [F in NeedForm]: Quantity<"mass/area", F> }[NeedForm];

/** What a nutrient needs, with the parts that it is made of. */
export interface NutrientNeed {
  readonly type: "nutrient-need";
  readonly version: 1;
  readonly nutrient: TestedNutrient;
  /** All in one unit, as the element, for the layer. */
  readonly use: Quantity<"mass/area", TestedNutrient>;
  readonly guideline: Quantity<"mass/area", TestedNutrient>;
  readonly test: Quantity<"mass/area", TestedNutrient>;
  /** Zero where the soil holds enough. */
  readonly need: Quantity<"mass/area", TestedNutrient>;
  /** The need as fertilizer states it: P2O5 and K2O. It is a target that `productRates` takes. */
  readonly target: NeedTarget;
  /** What the soil holds beyond use and guideline; zero where there is a need. */
  readonly surplus: Quantity<"mass/area", TestedNutrient>;
  readonly extractant: Extractant;
  readonly source: Citation;
  readonly findings: readonly Finding[];
}

/** What {@link nutrientNeed} is told. */
export interface NutrientNeedInput<E extends TestedNutrient> {
  readonly nutrient: E;
  readonly test: Quantity<"mass/mass", `${NoInfer<E>}/soil`>;
  readonly extractant: Extractant;
  readonly guideline: GuidelineName | SoilGuideline;
  /** What the grass takes up until the next test, see `nutrientUse`. */
  readonly use: Quantity<"mass/area", NoInfer<E>>;
  /** The depth that roots draw on, with its bulk density. */
  readonly layer: SoilLayer;
  readonly soil?: string;
}

const fields = ["nutrient", "test", "extractant", "guideline", "use", "layer", "soil"] as const;

/**
 * What a nutrient needs as fertilizer: use plus guideline less test, `F = U + G - T`, never below zero.
 *
 * - `U` what the grass takes up; `G` the level to keep, `T` the test, both ppm of the layer, turned into mass per area
 * - all as the element, then as P2O5 or K2O where fertilizer states it so
 *
 * The level of a range is its lower end. A surplus is a figure of its own and is never turned into a negative need.
 *
 * @throws RatewrightError `conflict` for a guideline of another extractant, `missing`, `range`, `type`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: "Slides on turfgrass nutrition and soil nutrient analyses", 2015, and "Working out the fertilizer recommendation
 * from a soil test", 2014, Asian Turfgrass Center.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { nutrientNeed } from "ratewright/soil";
 * const need = nutrientNeed({
 *   nutrient: "K", test: quantity(50, "mg/kg", "K/soil"), extractant: "Mehlich 3",
 *   guideline: "minimum levels, Mehlich 3", use: quantity(8, "g/m2", "K"),
 *   layer: { depth: quantity(10, "cm"), bulkDensity: quantity(1.5, "g/mL", "soil") },
 * });
 * Number(need.need.in("g/m2").toFixed(2)); // => 6.05
 * Number(need.target.in("g/m2").toFixed(2)); // => 7.29
 * need.target.of; // => "K2O"
 * ```
 */
export const nutrientNeed = <const E extends TestedNutrient>(input: NutrientNeedInput<E>): NutrientNeed => {
  const record = expectFields(input, fields, "input");
  const nutrient = expectOneOf(record.nutrient, testedNutrients, "nutrient");
  const testOf = { dimension: "mass/mass", of: `${nutrient}/soil`, bound: "non-negative" } as const;
  const used = { dimension: "mass/area", of: nutrient, bound: "non-negative" } as const;
  const read = allOf({
    test: () => expectQuantity(record.test, testOf, "test").in("ppm w/w"),
    extractant: () => expectOneOf(record.extractant, extractants, "extractant"),
    guideline: () => readGuideline(record.guideline, "guideline"),
    use: () => expectQuantity(record.use, used, "use"),
    layer: () => expectLayer(record.layer, "layer"),
    soil: () => (record.soil === undefined ? undefined : expectText(record.soil, "soil", "the soil or turf")),
  });
  const row = guidelineRow(read.guideline, { ...read, nutrient });
  const { unit } = read.use;
  const perPpm = numberIn(read.layer.mass, unit) / 1e6;
  const left = read.use.value + (row.from - read.test) * perPpm;
  const amount = (value: number): Quantity<"mass/area", TestedNutrient> =>
    new Quantity<"mass/area", TestedNutrient>(value, unit, nutrient, "mass/area");
  // What adding up rounds off is no need.
  const none = left <= 1e-12 * Math.max(read.use.value, row.from * perPpm);
  return {
    type: "nutrient-need",
    version: 1,
    nutrient,
    use: amount(read.use.value),
    guideline: amount(row.from * perPpm),
    test: amount(read.test * perPpm),
    need: amount(none ? 0 : left),
    target: targetOf(none ? 0 : left, unit, nutrient),
    surplus: amount(none ? Math.max(0, -left) : 0),
    extractant: read.extractant,
    source: { ...read.guideline.source },
    findings: high(nutrient, read.test, row.to, read.guideline),
  };
};

const targetOf = (value: number, unit: string, nutrient: TestedNutrient): NeedTarget => {
  switch (nutrient) {
    case "P":
      return oxideOf(new Quantity(value, unit, "P", "mass/area"));
    case "K":
      return oxideOf(new Quantity(value, unit, "K", "mass/area"));
    case "Ca":
      return new Quantity(value, unit, "Ca", "mass/area");
    case "Mg":
      return new Quantity(value, unit, "Mg", "mass/area");
    default:
      return new Quantity(value, unit, "S", "mass/area");
  }
};

const high = (
  nutrient: TestedNutrient,
  test: number,
  to: number | null,
  { source }: SoilGuideline,
): Finding[] =>
  to !== null && test > to
    ? [
        {
          code: "soil/test-above-range",
          severity: nutrient === "P" ? "caution" : "note",
          path: "test",
          params: { nutrient, test, to, unit: "ppm w/w" },
          text: `${nutrient} tests ${test} ppm, above the range of the guideline, which ends at ${to}.`,
          source,
        },
      ]
    : [];
