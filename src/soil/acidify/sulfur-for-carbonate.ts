import { expectWithin } from "../../numeric/house.js";
import { formulaWeight } from "../../nutrient/index.js";
import { allOf, expectFields, expectQuantity, Quantity } from "../../quantity/index.js";
import { expectLayer, type SoilLayer } from "../report/soil-layer.js";

/**
 * The sulfur that the free lime of a layer takes up before the pH of the soil can fall, once it is all oxidized:
 * `S = c m 32.06 / 100.09`.
 *
 * - `c` carbonate of the soil, as CaCO3 by weight; `m` weight of the layer, see `soilMass`
 *
 * One percent of lime to 6 in takes some 6,400 lb an acre, 147 lb per 1000 ft2: no program for standing turf.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: a mole of sulfur makes the acid of a mole of CaCO3; atomic weights of IUPAC.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { sulfurForCarbonate } from "ratewright/soil";
 * const sulfur = sulfurForCarbonate({
 *   carbonate: quantity(1, "% w/w", "CaCO3 equivalent/soil"), layer: { assumed: "2,000,000 lb/acre" },
 * });
 * Number(sulfur.in("lb/acre").toFixed(0)); // => 6406
 * ```
 */
export const sulfurForCarbonate = (input: {
  readonly carbonate: Quantity<"mass/mass", "CaCO3 equivalent/soil">;
  readonly layer: SoilLayer;
}): Quantity<"mass/area", "S"> => {
  const record = expectFields(input, ["carbonate", "layer"], "input");
  const wanted = { dimension: "mass/mass", of: "CaCO3 equivalent/soil", bound: "non-negative" } as const;
  const read = allOf({
    carbonate: () => {
      const carbonate = expectQuantity(record.carbonate, wanted, "carbonate");
      return expectWithin(carbonate.in("% w/w"), carbonate.in("% w/w"), "carbonate", { max: 100, unit: "%" });
    },
    layer: () => expectLayer(record.layer, "layer"),
  });
  const perCarbonate = formulaWeight({ S: 1 }) / formulaWeight({ Ca: 1, C: 1, O: 3 });
  const { mass } = read.layer;
  return new Quantity((read.carbonate * mass.value * perCarbonate) / 100, mass.unit, "S", "mass/area");
};
