import { expectLiquidDensity } from "../../numeric/house.js";
import { interpolate } from "../../numeric/index.js";
import {
  allOf,
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
} from "../../quantity/index.js";
import { type LiquidMaterial, type LiquidMaterialId, liquidMaterials } from "./liquid-materials.js";

const materialOf = (name: LiquidMaterialId): LiquidMaterial =>
  liquidMaterials[expectOneOf(name, Object.keys(liquidMaterials) as LiquidMaterialId[], "material")];

/**
 * The density of a common liquid fertilizer at a temperature, from printed tables.
 *
 * Equation: straight lines between the printed points `(T, d)`; for UAN 28 and 30 they lie on
 * `d = d60 - 0.003 (T - 60)`, in lb/gal with T in °F; the printed ones of UAN 32 are up to 0.01 lb/gal lower.
 *
 * Range: the printed temperatures, 30 to 90 °F for UAN 28 and 30 and 20 to 60 °F for UAN 32 and ammonium
 * polyphosphate; materials with one printed density have that one at 60 °F only. See `liquidMaterials`.
 *
 * @throws RatewrightError `range` outside of the printed temperatures; `type` for another material;
 *   `unit/mismatch`
 *
 * Source: Virginia Cooperative Extension SPES-199, table 1; an industry fact sheet for the others.
 *
 * @example
 * ```ts
 * import { liquidDensity, quantity } from "ratewright";
 * Number(liquidDensity("UAN 28", quantity(65, "°F")).in("lb/gal").toFixed(3)); // => 10.655
 * liquidDensity("UAN 28", quantity(20, "°F")); // => throws range
 * ```
 */
export const liquidDensity = (
  material: LiquidMaterialId,
  temperature: Quantity<"temperature", "none">,
): Quantity<"mass/volume", "none"> => {
  const { fahrenheit, lbPerGal } = materialOf(material);
  const t = expectQuantity(temperature, { dimension: "temperature", of: "none" }, "temperature");
  // Celsius does not convert back to the last digit: 15.555… °C is 60 °F.
  const f = t.in("°F");
  const near = fahrenheit.find((point) => Math.abs(point - f) < 1e-9);
  const [first, last] = [fahrenheit[0] as number, fahrenheit[fahrenheit.length - 1] as number];
  if (near === undefined && (f < first || f > last)) {
    const unit = t.unit === "°F" ? t.unit : "°C";
    const bound = (at: number): number => Number(quantity(at, "°F").in(unit).toPrecision(12));
    outOfRange(
      "temperature",
      t,
      { min: bound(first), max: bound(last), unit },
      first === last ? "{}, the only one printed" : "{}, as printed",
    );
  }
  return quantity(interpolate({ xs: fahrenheit, ys: lbPerGal, x: near ?? f }), "lb/gal");
};

/**
 * The density of a liquid at another temperature, from one known density and a slope.
 *
 * Equation: `d = d0 + k (T - T0)`
 *
 * - `d`, `d0` density at `T` and `T0`, mass per volume
 * - `k` change of density per degree, negative where the liquid expands as it warms; `densitySlopeOfUan`
 *   holds the printed one of urea ammonium nitrate
 *
 * Range: a few tens of degrees around `T0`, where the line was measured: 30 to 90 °F for UAN.
 *
 * @param input.slopePerFahrenheit - density change for each °F, as a density: `quantity(-0.003, "lb/gal")`
 * @param input.measuredAt - `T0`, the temperature of the known density
 * @throws RatewrightError `range` where the density falls to zero; `unit/mismatch`
 *
 * Source: Virginia Cooperative Extension SPES-199, table 1: 0.003 lb/gal per °F for 28 and 30 % UAN.
 *
 * @example
 * ```ts
 * import { densityAt, densitySlopeOfUan, quantity } from "ratewright";
 * const warm = densityAt({
 *   density: quantity(10.67, "lb/gal"),
 *   measuredAt: quantity(60, "°F"),
 *   slopePerFahrenheit: densitySlopeOfUan,
 *   temperature: quantity(90, "°F"),
 * });
 * Number(warm.in("lb/gal").toFixed(2)); // => 10.58
 * ```
 */
export const densityAt = (input: {
  readonly density: Quantity<"mass/volume", "none">;
  readonly measuredAt: Quantity<"temperature", "none">;
  readonly slopePerFahrenheit: Quantity<"mass/volume", "none">;
  readonly temperature: Quantity<"temperature", "none">;
}): Quantity<"mass/volume", "none"> => {
  expectFields(input, ["density", "measuredAt", "slopePerFahrenheit", "temperature"], "input");
  const density = { dimension: "mass/volume", of: "none" } as const;
  const temperature = { dimension: "temperature", of: "none" } as const;
  const read = allOf({
    density: () =>
      expectLiquidDensity(
        expectQuantity(input.density, { ...density, bound: "positive" }, "density"),
        "density",
      ),
    slope: () => expectQuantity(input.slopePerFahrenheit, density, "slopePerFahrenheit"),
    from: () => expectQuantity(input.measuredAt, temperature, "measuredAt"),
    to: () => expectQuantity(input.temperature, temperature, "temperature"),
  });
  const { to, from } = read;
  const result = read.density.plus(read.slope.times(to.in("°F") - from.in("°F")));
  return result.value > 0
    ? result
    : fail("range", "temperature", to, "a temperature at which the line still gives a density above zero");
};

/** The printed change of density of urea ammonium nitrate solutions for each °F: Virginia Cooperative Extension SPES-199. */
export const densitySlopeOfUan: Quantity<"mass/volume", "none"> = /* @__PURE__ */ frozen(
  /* @__PURE__ */ quantity(-0.003, "lb/gal"),
);

/**
 * The part of a liquid's volume that a change of density takes away: what a tank seems to lose as it cools,
 * though nothing was drawn.
 *
 * Equation: `s = 1 - d1 / d2`
 *
 * - `s` share of the first volume, positive where the liquid shrinks
 * - `d1`, `d2` density before and after, mass per volume
 *
 * Range: the same mass, no loss.
 *
 * @throws RatewrightError `range`, `unit/mismatch`
 *
 * Source: 28-0-0 stored at 80 °F (10.6 lb/gal) and cooled to 40 °F (10.74 lb/gal) seems to shrink by 1.3 %
 * ("Estimated physical characteristics of fertilizer material", industry fact sheet).
 *
 * @example
 * ```ts
 * import { inventoryShrink, quantity } from "ratewright";
 * const lost = inventoryShrink(quantity(10.6, "lb/gal"), quantity(10.74, "lb/gal"));
 * Number(lost.in("% v/v").toFixed(2)); // => 1.3
 * ```
 */
export const inventoryShrink = (
  before: Quantity<"mass/volume", "none">,
  after: Quantity<"mass/volume", "none">,
): Quantity<"volume/volume", "none"> => {
  const bound = { dimension: "mass/volume", of: "none", bound: "positive" } as const;
  const { first, second } = allOf({
    first: () => expectLiquidDensity(expectQuantity(before, bound, "before"), "before"),
    second: () => expectLiquidDensity(expectQuantity(after, bound, "after"), "after"),
  });
  const last = numberIn(second, first.unit);
  return quantity(((last - first.value) * 100) / last, "% v/v");
};

/**
 * Findings about a liquid fertilizer in the cold: whether the coldest temperature of the tank lies at or
 * below the printed temperature at which crystals form, by each source that prints one.
 *
 * An empty list does not mean that the tank stays clear: `liquidMaterials` says which sources print a
 * figure, and actual ones vary with the make.
 *
 * Source: see `liquidMaterials`; 32-0-0 is printed as 28 °F and as 32 °F, 28-0-0 as -1 °F and as 1 °F.
 *
 * @throws RatewrightError `type` for another material; `unit/mismatch`
 *
 * @example
 * ```ts
 * import { quantity, saltOutFindings } from "ratewright";
 * saltOutFindings("UAN 32", quantity(30, "°F")).map(({ params }) => params.saltOutFahrenheit); // => [32]
 * saltOutFindings("ammonium thiosulfate", quantity(15, "°F"))[0]?.code; // => "liquid/salt-out-not-checked"
 * ```
 */
export const saltOutFindings = (
  material: LiquidMaterialId,
  coldest: Quantity<"temperature", "none">,
): readonly Finding[] => {
  const { saltOut, name } = materialOf(material);
  const t = expectQuantity(coldest, { dimension: "temperature", of: "none" }, "coldest");
  const f = t.in("°F");
  const told = (degrees: number): string =>
    t.unit === "°F"
      ? `${Number(degrees.toFixed(1))} °F`
      : `${Number(quantity(degrees, "°F").in("°C").toFixed(1))} °C`;
  if (saltOut.length === 0) {
    return [
      {
        code: "liquid/salt-out-not-checked",
        severity: "note",
        params: { material },
        text: `No source on file gives a salt-out temperature for ${name}, so cold was not checked.`,
      },
    ];
  }
  return saltOut
    .filter(({ fahrenheit }) => f <= fahrenheit + 1e-9)
    .map(({ fahrenheit, source }) => ({
      code: "liquid/salts-out",
      severity: "warning" as const,
      params: { material, coldestFahrenheit: Number(f.toFixed(1)), saltOutFahrenheit: fahrenheit },
      text: `At ${told(f)} ${name} may salt out: its published salt-out temperature is ${told(fahrenheit)}. Crystals plug lines and screens, and the liquid left is weaker.`,
      source,
    }));
};
