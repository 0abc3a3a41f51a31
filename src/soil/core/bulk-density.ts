import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { readWeights, type SoilWeight } from "./soil-weights.js";

type Length = Quantity<"length", "none">;

/** How much soil a core holds: its volume, or the inside of the ring. */
type CoreSize =
  | { readonly volume: Quantity<"volume", "none"> | Quantity<"volume", "soil"> }
  | { readonly diameter: Length; readonly length: Length };

/** A bound, to three digits. */
const told = (grams: number): number => Number(grams.toPrecision(3));

const lengthOf = (input: unknown, path: string): Length =>
  input === undefined
    ? fail("missing", path, input, "diameter and length of the core, both inside; or its volume")
    : expectQuantity(input, { dimension: "length", of: "none", bound: "positive" }, path);

const volumeOf = (given: {
  readonly volume?: unknown;
  readonly diameter?: unknown;
  readonly length?: unknown;
}): number => {
  if (given.volume === undefined) {
    const { diameter, length } = allOf({
      diameter: () => lengthOf(given.diameter, "diameter"),
      length: () => lengthOf(given.length, "length"),
    });
    return (Math.PI / 4) * diameter.in("cm") ** 2 * length.in("cm");
  }
  const extra = (["diameter", "length"] as const).find((name) => given[name] !== undefined);
  if (extra !== undefined) fail("conflict", extra, given[extra], "nothing besides the volume");
  const volume = expectQuantity(given.volume, { dimension: "volume", bound: "positive" }, "volume");
  return volume.of === "none" || volume.of === "soil"
    ? volume.in("mL")
    : fail("substance/mismatch", "volume", volume, "the volume of the core: of soil");
};

/**
 * The bulk density of a soil from an undisturbed core, `rho = dry / V`: the weight of the dry soil by the volume it had in
 * the ground, pores and all. In g/mL, which is g/cm3.
 *
 * - `dry` the weight after the oven; `container` the empty weight, where it was weighed with it
 * - `volume` `V` of the core, or `diameter` and `length` inside the ring, `V = pi / 4 d² l`
 *
 * It goes into the layer of {@link soilMass} as it is. Stones count as soil here; take a core without them.
 *
 * @throws RatewrightError `range`, also for a density that no soil has (0.05 to 2.65 g/mL); `conflict` for a volume and a
 * diameter; `missing`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: definition; "Practice problems: porosity and bulk density", University of California, Davis, Soil Science 100
 * (575 g in 400 cm3: 1.44 g/cm3).
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { soilBulkDensity } from "ratewright/soil";
 * const core = soilBulkDensity({ dry: quantity(575, "g"), volume: quantity(400, "mL") });
 * Number(core.in("g/mL").toFixed(2)); // => 1.44
 * const ring = { diameter: quantity(2, "in"), length: quantity(3, "in") };
 * Number(soilBulkDensity({ dry: quantity(216, "g"), ...ring }).in("g/mL").toFixed(2)); // => 1.4
 * ```
 */
export const soilBulkDensity = (
  input: { readonly dry: SoilWeight; readonly container?: SoilWeight } & CoreSize,
): Quantity<"mass/volume", "soil"> => {
  const given = expectFields(input, ["dry", "container", "volume", "diameter", "length"]);
  const { grams, milliliters } = allOf({
    grams: () => readWeights(given, false).dry,
    milliliters: () => volumeOf(given),
  });
  const found = quantity(grams / milliliters, "g/mL", "soil");
  return found.value >= 0.05 && found.value <= 2.65
    ? found
    : outOfRange(
        "dry",
        given.dry,
        { min: told(0.05 * milliliters), max: told(2.65 * milliliters), unit: "g" },
        "{} in that volume: a bulk density of 0.05 to 2.65 g/mL",
      );
};
