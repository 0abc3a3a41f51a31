import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectBulkDensity } from "../report/soil-layer.js";
import { readWeights, type SoilWeight } from "./soil-weights.js";

/**
 * The gravimetric water content of a soil sample, `w = (wet - dry) / dry`, in percent of the DRY weight, as soil laboratories
 * print it. Above 100 % in peat and fresh organic matter.
 *
 * - `wet` the weight as it was taken; `dry` after the oven (105 °C to a constant weight)
 * - `container` the empty weight of the can, where the two were weighed with it
 *
 * It goes into {@link volumetricWaterContent} as it is, and into `dryBulkDensity` as moisture by dry weight.
 *
 * @throws RatewrightError `range` for a dry weight above the wet one or a container as heavy as the sample; `missing`,
 * `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: definition; "Water problems: problem set", a university course in soils (62.8 g of water in 298.8 g of dry soil:
 * 21.0 %).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { gravimetricWaterContent } from "ratewright/soil";
 * const water = gravimetricWaterContent({ wet: quantity(361.6, "g"), dry: quantity(298.8, "g") });
 * Number(water.in("%").toFixed(1)); // => 21
 * ```
 */
export const gravimetricWaterContent = (input: {
  readonly wet: SoilWeight;
  readonly dry: SoilWeight;
  readonly container?: SoilWeight;
}): Quantity<"1", "none"> => {
  const { wet, dry } = readWeights(expectFields(input, ["wet", "dry", "container"]), true);
  return quantity((100 * (wet - dry)) / dry, "%");
};

/**
 * The volumetric water content of a soil, `v = w rho / rho_w`: water by volume of soil, which is depth of water by depth of
 * soil. Percent by volume.
 *
 * - `gravimetric` `w`, water in percent of the dry weight, zero or more; see {@link gravimetricWaterContent}
 * - `bulkDensity` `rho` of the dry soil; see {@link soilBulkDensity}. Water is `rho_w` of 1 g/mL
 *
 * Field capacity less wilting point, both by volume, is a `capacity` that `availableWater` takes.
 *
 * @throws RatewrightError `range`, also where the water would fill the whole soil; `missing`, `type` for a bare number,
 * `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; "Soil, Water, and Weather", Oklahoma State University, homework 2.
 *
 * @example
 * ```ts
 * import { availableWater, quantity } from "ratewright";
 * import { volumetricWaterContent } from "ratewright/soil";
 * const bulkDensity = quantity(1.5, "g/mL", "soil");
 * const held = (percent: number) => volumetricWaterContent({ gravimetric: quantity(percent, "%"), bulkDensity });
 * held(20).in("% v/v"); // => 30
 * const layers = [{ thickness: quantity(8, "in"), capacity: held(20).minus(held(8)) }];
 * Number(availableWater({ layers }).total.in("in").toFixed(2)); // => 1.44
 * ```
 */
export const volumetricWaterContent = (input: {
  readonly gravimetric: Quantity<"1", "none">;
  readonly bulkDensity: Quantity<"mass/volume", "soil">;
}): Quantity<"volume/volume", "none"> => {
  const given = expectFields(input, ["gravimetric", "bulkDensity"]);
  const { percent, density } = allOf({
    percent: () => shareOf(given.gravimetric),
    density: () => expectBulkDensity(given.bulkDensity, "bulkDensity"),
  });
  const found = percent * density.in("g/mL");
  return found < 100
    ? quantity(found, "% v/v")
    : outOfRange(
        "gravimetric",
        given.gravimetric,
        { below: 100 / density.in("g/mL"), unit: "%" },
        "{}: more water would fill the whole soil at that bulk density",
      );
};

const shareOf = (input: unknown): number => {
  const such = 'water in percent of the dry weight, such as quantity(21, "%")';
  if (input === undefined) return fail("missing", "gravimetric", input, such);
  if (typeof input === "number") return fail("type", "gravimetric", input, such);
  const bounds = { dimension: "1", of: "none", bound: "non-negative" } as const;
  return expectQuantity(input, bounds, "gravimetric").in("%");
};
