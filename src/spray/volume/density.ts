import { expectLiquidDensity } from "../../numeric/house.js";
import {
  allOf,
  expectAmount,
  fail,
  ofKind,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { positive } from "../inputs.js";

type Density = Quantity<"mass/volume", "none">;
type FlowOrVolume = "volume/time" | "volume/area";

/** The weight of water that the printed tables of the factor take. */
const tableWater = (): Density => quantity(8.34, "lb/gal");

/**
 * The density factor of a solution, `f = sqrt(rho / rho(water))`: at the same pressure a heavy solution
 * flows slower, by `1 / f`.
 *
 * Water is taken at 8.34 lb/gal, as the printed tables do; `water` takes another figure (1 kg/L is 8.345
 * lb/gal, and makes no difference to the two places that are printed). It does not correct for viscosity.
 *
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`
 * Source: University of Georgia, Spraying solutions other than water, table 1; University of
 * Nebraska-Lincoln CropWatch, 2016 (28-0-0 of 10.65 lb/gal has 1.13).
 *
 * @example
 * ```ts
 * import { densityConversionFactor, quantity } from "ratewright";
 * Number(densityConversionFactor(quantity(10.65, "lb/gal")).toFixed(2)); // => 1.13
 * ```
 */
export const densityConversionFactor = (density: Density, water: Density = tableWater()): number => {
  const found = allOf({
    density: () => expectLiquidDensity(positive(density, "density", "mass/volume"), "density"),
    water: () => expectLiquidDensity(positive(water, "water", "mass/volume"), "water"),
  });
  return Math.sqrt(found.density.in("lb/gal") / found.water.in("lb/gal"));
};

/**
 * What a tip has to put out of water, to put out what is wanted of a solution: `wanted * f`, with `f` the
 * {@link densityConversionFactor}. Look this up in a chart of tips, which is for water.
 *
 * @param wanted - a volume per area or a flow of spray
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`
 * Source: University of Nebraska-Lincoln CropWatch, 2016, example 1 (20 gal/acre x 1.13 is 22.6).
 *
 * @example
 * ```ts
 * import { quantity, waterEquivalent } from "ratewright";
 * const wanted = quantity(20, "gal/acre", "spray");
 * Number(waterEquivalent(wanted, quantity(10.65, "lb/gal")).in("gal/acre").toFixed(1)); // => 22.6
 * ```
 */
export const waterEquivalent = <D extends FlowOrVolume>(
  wanted: Quantity<D, "spray">,
  density: Density,
  water: Density = tableWater(),
): Quantity<D, "water"> => {
  const { q, factor } = allOf({
    q: () => flowOrVolume(wanted, "wanted", "spray"),
    factor: () => densityConversionFactor(density, water),
  });
  return quantityOf<D, "water">(q.value * factor, q.unit, "water", "wanted");
};

/**
 * What comes out of a solution, from a calibration with water: `water / f`, with `f` the
 * {@link densityConversionFactor}.
 *
 * @param caught - a volume per area or a flow of water
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`
 * Source: University of Georgia, Spraying solutions other than water (divide the chart by the factor).
 *
 * @example
 * ```ts
 * import { quantity, solutionEquivalent } from "ratewright";
 * const caught = quantity(22.6, "gal/acre", "water");
 * Number(solutionEquivalent(caught, quantity(10.65, "lb/gal")).in("gal/acre").toFixed(1)); // => 20
 * ```
 */
export const solutionEquivalent = <D extends FlowOrVolume>(
  caught: Quantity<D, "water">,
  density: Density,
  water: Density = tableWater(),
): Quantity<D, "spray"> => {
  const { q, factor } = allOf({
    q: () => flowOrVolume(caught, "caught", "water"),
    factor: () => densityConversionFactor(density, water),
  });
  return quantityOf<D, "spray">(q.value / factor, q.unit, "spray", "caught");
};

const flowOrVolume = (
  input: unknown,
  path: string,
  of: "spray" | "water",
): Quantity<FlowOrVolume, "spray" | "water"> =>
  input === undefined || input === null
    ? fail("missing", path, input, "a flow or a volume per area")
    : ofKind<FlowOrVolume, "spray" | "water">(
        expectAmount(input, { dimensions: ["volume/time", "volume/area"], of, bound: "positive" }, path),
      );
