import { expectLiquidDensity } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type Carrier, carried, positive } from "../inputs.js";

/** Water at 20 °C, near enough for a catch: it is 0.998 kg/L there, and 0.2 % is below what a scale shows. */
const waterDensity = (): Quantity<"mass/volume", "none"> => quantity(1, "kg/L");

/**
 * The volume of a catch that was weighed, `V = (full - tare) / density`: a scale reads finer than a jug. A milliliter of
 * water is a gram.
 *
 * @param input - `full`, the weight of the jug with its catch, of water or of spray; `tare`, that of the empty jug, none
 *   where left out; `density`, that of water (1 kg/L) where left out, and needed for anything but water
 * @throws RatewrightError with every problem: `missing` (a density of spray), `range` (an empty jug that weighs as much
 *   as the full one), `unit/mismatch`, `substance/mismatch`, `type`
 * Source: definition; 1 kg/L is the mass of water of the metric system, 8.345 lb per US gallon.
 *
 * @example
 * ```ts
 * import { quantity, weighedCatch } from "ratewright";
 * const caught = weighedCatch({ full: quantity(1313, "g", "water"), tare: quantity(113, "g") });
 * caught.in("mL"); // => 1200
 * ```
 */
export const weighedCatch = <S extends Carrier>(input: {
  readonly full: Quantity<"mass", S>;
  readonly tare?: Quantity<"mass", "none">;
  readonly density?: Quantity<"mass/volume", "none">;
}): Quantity<"volume", S> => {
  const given = expectFields(input, ["full", "tare", "density"]);
  const { full, tare, density } = allOf({
    full: () => carried(input.full, "full", "mass"),
    tare: () =>
      given.tare === undefined
        ? 0
        : expectQuantity(given.tare, { dimension: "mass", of: "none", bound: "non-negative" }, "tare").in(
            "g",
          ),
    density: () =>
      given.density === undefined
        ? undefined
        : expectLiquidDensity(positive(given.density, "density", "mass/volume"), "density"),
  });
  if (density === undefined && full.of !== "water")
    fail(
      "missing",
      "density",
      undefined,
      `the density of the ${full.of}, because only water is known to weigh 1 kg/L`,
    );
  const net = full.in("g") - tare;
  if (!(net > 0)) outOfRange("full", full, { above: tare, unit: "g" }, "{}, which the empty jug weighs");
  const perMilliliter = (density ?? waterDensity()).in("g/mL");
  // Of what was weighed, which the compiler knows from the call.
  return quantityOf<"volume", S>(net / perMilliliter, "mL", full.of, "full");
};
