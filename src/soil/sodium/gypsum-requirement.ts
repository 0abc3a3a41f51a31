import { notShare } from "../../numeric/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  type FactSource,
  fail,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectPercent } from "../report/expect-ph.js";
import { expectLayer, type ReadLayer, type SoilLayer } from "../report/soil-layer.js";
import { gypsumWeight } from "./gypsum-equivalent.js";

const textbook: Citation = /* @__PURE__ */ frozen({
  title: "Practices of Irrigation and On-farm Water Management",
  publisher: "textbook",
  where: "section 8.7.1 and example 8.7",
});

/** How the weight of gypsum is found. */
export type GypsumConvention =
  | "weight of soil"
  | "3.85 t/ha for 30 cm and a meq"
  | "1.7 US tons for an acre-foot and a meq";

/** Gypsum for a sodic soil. */
export interface GypsumRequirement {
  readonly type: "gypsum-requirement";
  readonly version: 1;
  /** Exchangeable sodium to replace. */
  readonly sodium: Quantity<"exchange capacity", "none">;
  /** Pure gypsum, by the arithmetic alone. */
  readonly pure: Quantity<"mass/area", "product:gypsum">;
  /** Pure gypsum times the field factor, over purity: what goes down. */
  readonly rate: Quantity<"mass/area", "product:gypsum">;
  readonly fieldFactor: number;
  /** Percent. */
  readonly purity: number;
  readonly convention: GypsumConvention;
  readonly source: FactSource;
}

/** The layer of soil that the gypsum is to work in: its weight, or its depth and a convention. */
export interface GypsumDepth {
  readonly layer?: SoilLayer;
  readonly depth?: Quantity<"length", "none">;
  readonly convention?: GypsumConvention;
}

const conventions = [
  "weight of soil",
  "3.85 t/ha for 30 cm and a meq",
  "1.7 US tons for an acre-foot and a meq",
] as const;

const percent = (input: unknown, path: string): number =>
  expectPercent(expectQuantity(input, { dimension: "1", of: "none" }, path).in("%"), path);

/**
 * The gypsum that brings a sodic soil from one exchangeable sodium percentage to another:
 * `Na = CEC (E1 - E2) / 100`, `G = Na w m`, `R = G f 100 / p`.
 *
 * - `CEC` exchange capacity, meq/100 g; `E1`, `E2` present and target sodium percentage
 * - `w` = 86.08 mg of gypsum a meq, `m` weight of the layer; or by a convention: 3.85 t/ha for 30 cm and a meq/100 g,
 *   1.7 US tons for an acre-foot and a meq/100 g, both in proportion to depth. They are 1.722 exactly for 4,000,000 lb
 * - `f` field factor, 1.25 in the source, for what does not exchange; `p` purity, percent
 *
 * Gypsum does nothing without drainage and water to leach the sodium, and nothing for a soil that is only salty.
 *
 * @param input.fieldFactor - 1.25 where it is left out; 1 is the arithmetic alone
 * @param input.purity - percent of gypsum in the material as delivered
 * @param input.targetPercent - `E2`
 * @throws RatewrightError `conflict` (a target above the present percentage, a layer beside a convention by depth),
 *   `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: "Practices of Irrigation and On-farm Water Management", section 8.7.1 and example 8.7.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { gypsumRequirement } from "ratewright/soil";
 * const need = gypsumRequirement({
 *   capacity: quantity(22, "meq/100 g"), sodiumPercent: quantity(35, "%"), targetPercent: quantity(15, "%"),
 *   convention: "3.85 t/ha for 30 cm and a meq", depth: quantity(40, "cm"), purity: 100,
 * });
 * Number(need.sodium.in("meq/100 g").toFixed(1)); // => 4.4
 * Number(need.pure.in("t/ha").toFixed(2)); // => 22.59
 * Number(need.rate.in("t/ha").toFixed(2)); // => 28.23
 * ```
 */
export const gypsumRequirement = (
  input: GypsumDepth & {
    readonly capacity: Quantity<"exchange capacity", "none">;
    readonly sodiumPercent: Quantity<"1", "none">;
    readonly targetPercent: Quantity<"1", "none">;
    readonly purity: number;
    readonly fieldFactor?: number;
  },
): GypsumRequirement => {
  const record = expectFields(
    input,
    ["capacity", "sodiumPercent", "targetPercent", "purity", "fieldFactor", "layer", "depth", "convention"],
    "input",
  );
  const charge = { dimension: "exchange capacity", of: "none", bound: "positive" } as const;
  const read = allOf({
    capacity: () => expectQuantity(record.capacity, charge, "capacity").in("meq/100 g"),
    now: () => percent(record.sodiumPercent, "sodiumPercent"),
    target: () => notShare(percent(record.targetPercent, "targetPercent"), "targetPercent", { least: 0.5 }),
    purity: () =>
      notShare(expectNumber(record.purity, "purity", { above: 0, max: 100 }), "purity", { unit: "" }),
    factor: () =>
      record.fieldFactor === undefined
        ? 1.25
        : expectNumber(record.fieldFactor, "fieldFactor", { min: 1, max: 3 }),
    perMeq: () => perMeqOf(record),
  });
  if (read.target > read.now) {
    const expected = `at most the present percentage, which is ${read.now}: gypsum only lowers it`;
    fail("conflict", "targetPercent", read.target, expected);
  }
  const sodium = (read.capacity * (read.now - read.target)) / 100;
  const { convention, value, unit } = read.perMeq;
  const pure = sodium * value;
  return {
    type: "gypsum-requirement",
    version: 1,
    sodium: quantity(sodium, "meq/100 g"),
    pure: quantity(pure, unit, "product:gypsum"),
    rate: quantity((pure * read.factor * 100) / read.purity, unit, "product:gypsum"),
    fieldFactor: read.factor,
    purity: read.purity,
    convention,
    source: textbook,
  };
};

interface PerMeq {
  readonly convention: GypsumConvention;
  readonly value: number;
  readonly unit: "t/ha" | "lb/acre" | "US ton/acre" | "kg/ha";
}

/** Pure gypsum for a meq/100 g of sodium in the layer. */
const perMeqOf = (record: { readonly [K in keyof GypsumDepth]?: unknown }): PerMeq => {
  const convention =
    record.convention === undefined
      ? "weight of soil"
      : expectOneOf(record.convention, conventions, "convention");
  if (convention === "weight of soil") {
    if (record.depth !== undefined)
      fail("conflict", "depth", record.depth, "a layer: it already has a depth");
    const { mass }: ReadLayer = expectLayer(record.layer, "layer");
    const unit = mass.unit === "kg/ha" ? "kg/ha" : "lb/acre";
    return { convention, value: (mass.in(unit) * 10 * gypsumWeight()) / 2 / 1e6, unit };
  }
  if (record.layer !== undefined) {
    fail("conflict", "layer", record.layer, "a depth: the convention already has a weight of soil");
  }
  const depth = expectQuantity(record.depth, { dimension: "length", of: "none", bound: "positive" }, "depth");
  return convention === "3.85 t/ha for 30 cm and a meq"
    ? { convention, value: (3.85 * depth.in("cm")) / 30, unit: "t/ha" }
    : { convention, value: 1.7 * depth.in("ft"), unit: "US ton/acre" };
};
