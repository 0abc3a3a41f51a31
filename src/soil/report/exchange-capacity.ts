import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type EquivalentWeights, equivalentWeight } from "./equivalent-weight.js";
import { expectSoilPH } from "./expect-ph.js";
import { expectLayer, type ReadLayer, type SoilLayer } from "./soil-layer.js";

/** The bases that make up base saturation. */
export const baseCations: readonly ["Ca", "Mg", "K", "Na"] = /* @__PURE__ */ frozen(["Ca", "Mg", "K", "Na"]);

/** One of the bases. */
export type BaseCation = (typeof baseCations)[number];

/** What a report prints of a base: content by weight, amount per area, or charge. */
export type PrintedCation<E extends BaseCation> =
  | Quantity<"mass/mass", `${E}/soil`>
  | Quantity<"mass/area", E>
  | Quantity<"exchange capacity", `${E}/soil`>;

/** The share of one base in the exchange capacity. */
export interface CationShare {
  readonly charge: Quantity<"exchange capacity", "none">;
  readonly saturation: Quantity<"1", "none">;
}

/** The exchange capacity of a soil by summation. */
export interface ExchangeCapacity {
  readonly type: "exchange-capacity";
  readonly version: 1;
  readonly capacity: Quantity<"exchange capacity", "none">;
  readonly acidity: Quantity<"exchange capacity", "none">;
  readonly cations: Readonly<Partial<Record<BaseCation, CationShare>>>;
  /** Bases over capacity. */
  readonly baseSaturation: Quantity<"1", "none">;
  readonly findings: readonly Finding[];
}

const chargeOf = (
  input: unknown,
  ion: BaseCation,
  weights: EquivalentWeights,
  layer: ReadLayer | undefined,
): number => {
  const path = `cations.${ion}`;
  const given = input as { readonly value: number; readonly unit: string; readonly of?: string };
  if (typeof input !== "object" || input === null) fail("type", path, input, `a quantity of ${ion}`);
  const q = quantityOf(given.value, given.unit, given.of ?? "none", path);
  if (q.value < 0) outOfRange(path, q, { min: 0 });
  const wanted = q.dimension === "mass/area" ? ion : `${ion}/soil`;
  if (q.of !== wanted) fail("substance/mismatch", path, q, `a quantity of ${wanted}`);
  if (q.dimension === "exchange capacity") return numberIn(q, "meq/100 g");
  const perCharge = 10 * equivalentWeight(ion, weights);
  if (q.dimension === "mass/mass") return numberIn(q, "ppm w/w") / perCharge;
  if (q.dimension !== "mass/area") {
    fail("unit/mismatch", path, q, "mg/kg, meq/100 g, or lb/acre and kg/ha with a layer");
  }
  return layer === undefined
    ? fail("missing", "layer", undefined, `the layer that ${q.unit} is of: { assumed: "2,000,000 lb/acre" }`)
    : (numberIn(q, layer.mass.unit) * 1e6) / layer.mass.value / perCharge;
};

/**
 * The cation exchange capacity by summation, and what of it is taken up by bases:
 * `CEC = Ca + Mg + K + Na + A` and `BS = (Ca + Mg + K + Na) / CEC`, in meq/100 g.
 *
 * - bases as printed: mg/kg or ppm by weight, meq/100 g, or lb/acre and kg/ha with the layer they are of
 * - `A` exchangeable acidity, from `acidityFromBuffer` or as printed; it must be of the buffer of that laboratory
 *
 * Free lime, gypsum and salts dissolve in the extract and count as exchangeable: the sum is then too high. A
 * finding says so for a soil pH of 7.3 or more. Sodium that was not tested counts as none, and a finding says that.
 *
 * @param input.weights - `"atomic weights"`, or `"whole numbers"` as many laboratories print
 * @param input.cations - `Ca`, `Mg`, `K`, `Na` as the report prints them
 * @throws RatewrightError `missing`, `range`, `type`, `unit/mismatch`, `substance/mismatch`; `infeasible` where
 *   everything is zero
 *
 * Source: "CEC calculations", Clemson University Agricultural Service Laboratory.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { acidityFromBuffer, exchangeCapacity } from "ratewright/soil";
 * const found = exchangeCapacity({
 *   cations: {
 *     K: quantity(221, "lb/acre", "K"), Mg: quantity(28, "lb/acre", "Mg"),
 *     Ca: quantity(400, "lb/acre", "Ca"), Na: quantity(12, "lb/acre", "Na"),
 *   },
 *   layer: { assumed: "2,000,000 lb/acre" },
 *   acidity: acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 7.7 }),
 *   weights: "whole numbers",
 * });
 * Number(found.capacity.in("meq/100 g").toFixed(3)); // => 3.825
 * Number(found.baseSaturation.in("%").toFixed(1)); // => 37.3
 * ```
 */
export const exchangeCapacity = (input: {
  readonly cations: { readonly [E in BaseCation]?: PrintedCation<E> };
  readonly acidity: Quantity<"exchange capacity", "none">;
  readonly layer?: SoilLayer;
  readonly weights?: EquivalentWeights;
  readonly pH?: number;
}): ExchangeCapacity => {
  const record = expectFields(input, ["cations", "acidity", "layer", "weights", "pH"], "input");
  const wanted = { dimension: "exchange capacity", of: "none", bound: "non-negative" } as const;
  const read = allOf({
    cations: () => expectFields(record.cations, baseCations, "cations"),
    acidity: () => expectQuantity(record.acidity, wanted, "acidity").in("meq/100 g"),
    layer: () => (record.layer === undefined ? undefined : expectLayer(record.layer, "layer")),
    weights: () =>
      record.weights === undefined
        ? "atomic weights"
        : expectOneOf(record.weights, ["atomic weights", "whole numbers"], "weights"),
    pH: () => (record.pH === undefined ? undefined : expectSoilPH(record.pH, "pH")),
  });
  const problems = checks();
  const charges = baseCations.flatMap((ion) => {
    if (read.cations[ion] === undefined) {
      if (ion !== "Na") {
        problems.run(() =>
          fail("missing", `cations.${ion}`, undefined, `${ion} as tested; 0 where none was found`),
        );
      }
      return [];
    }
    const charge = problems.run(() => chargeOf(read.cations[ion], ion, read.weights, read.layer));
    return charge === undefined ? [] : [{ ion, charge }];
  });
  problems.done();
  const bases = charges.reduce((sum, { charge }) => sum + charge, 0);
  const capacity = bases + read.acidity;
  if (capacity === 0)
    fail("infeasible", "cations", described("nothing but zeros"), "a soil that holds some charge");
  return {
    type: "exchange-capacity",
    version: 1,
    capacity: quantity(capacity, "meq/100 g"),
    acidity: quantity(read.acidity, "meq/100 g"),
    cations: Object.fromEntries(
      charges.map(({ ion, charge }) => [
        ion,
        { charge: quantity(charge, "meq/100 g"), saturation: quantity((charge * 100) / capacity, "%") },
      ]),
    ),
    baseSaturation: quantity((bases * 100) / capacity, "%"),
    findings: findingsOf(read.cations.Na === undefined, read.pH),
  };
};

const findingsOf = (noSodium: boolean, pH: number | undefined): Finding[] => [
  ...(noSodium
    ? [
        {
          code: "soil/sodium-not-tested",
          severity: "note",
          path: "cations.Na",
          params: {},
          text: "Sodium was not tested and counts as none.",
        } as const,
      ]
    : []),
  ...(pH !== undefined && pH >= 7.3
    ? [
        {
          code: "soil/capacity-by-sum-high",
          severity: "caution",
          path: "pH",
          params: { pH },
          text: `At pH ${pH} free lime or salts may dissolve in the extract: the exchange capacity by summation is then too high, and base saturation means little.`,
          source: "from memory",
        } as const,
      ]
    : []),
];
