import { allOf, expectQuantity, fail, numberIn, Quantity } from "../../quantity/index.js";
import { expectLayer, type SoilLayer } from "./soil-layer.js";

/** The substance of which a soil has so much: `K` of `K/soil`. */
export const substanceInSoil = (of: string, path: string): string =>
  of.endsWith("/soil") && of.indexOf("/") === of.length - 5
    ? of.slice(0, -5)
    : fail(
        "substance/mismatch",
        path,
        of,
        'a share of the soil, such as quantity(50, "mg/kg", "K/soil"); a rate per area goes into contentInSoil',
      );

/**
 * What a layer of soil holds of something, per area, from its content: `a = c m`.
 *
 * - `c` content of the dry soil by weight, `ppm w/w` or `mg/kg`, of `K/soil` and the like, zero or more
 * - `m` dry weight of the layer per area, see `soilMass`. In lb/acre for a layer in US customary units, else kg/ha
 *
 * `lb/acre = 2 ppm` holds for 2,000,000 lb of soil only. In general `lb/acre = 0.2266 ppm d rho` with inches and g/cm3;
 * 10 cm at 1.5 g/cm3 hold 0.15 g/m2 per ppm.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; worked by Woods, "Calculating potassium fertilizer requirement", for 10 cm at 1.5 g/cm3.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { amountInSoil } from "ratewright/soil";
 * const potassium = quantity(50, "mg/kg", "K/soil");
 * const layer = { depth: quantity(10, "cm"), bulkDensity: quantity(1.5, "g/mL", "soil") };
 * amountInSoil(potassium, layer).in("g/m2"); // => 7.5
 * amountInSoil(potassium, { assumed: "2,000,000 lb/acre" }).toString(); // => "100 lb/acre of K"
 * ```
 */
export const amountInSoil = <E extends string>(
  content: Quantity<"mass/mass", `${E}/soil`>,
  layer: SoilLayer,
): Quantity<"mass/area", E> => {
  const read = allOf({
    content: () => {
      const q = expectQuantity(content, { dimension: "mass/mass", bound: "non-negative" }, "content");
      return { ppm: q.in("ppm w/w"), of: substanceInSoil(q.of, "content") };
    },
    layer: () => expectLayer(layer, "layer"),
  });
  const { mass } = read.layer;
  const value = (read.content.ppm * mass.value) / 1e6;
  return new Quantity(value, mass.unit, read.content.of as E, "mass/area");
};

/**
 * The content of a layer of soil, from what it holds per area: `c = a / m`, in ppm by weight. The inverse of
 * {@link amountInSoil}: it reads a report in pounds an acre or grams a square meter.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; pounds an acre halved are ppm, for 2,000,000 lb of soil, as reports print.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { contentInSoil } from "ratewright/soil";
 * const printed = quantity(175, "lb/acre", "K");
 * contentInSoil(printed, { assumed: "2,000,000 lb/acre" }).in("mg/kg"); // => 87.5
 * ```
 */
export const contentInSoil = <E extends string>(
  amount: Quantity<"mass/area", E>,
  layer: SoilLayer,
): Quantity<"mass/mass", `${E}/soil`> => {
  const read = allOf({
    amount: () => expectQuantity(amount, { dimension: "mass/area", bound: "non-negative" }, "amount"),
    layer: () => expectLayer(layer, "layer"),
  });
  const { mass } = read.layer;
  if (read.amount.of === "none" || read.amount.of.includes("/")) {
    fail("substance/mismatch", "amount", read.amount, "an amount of one substance, such as K");
  }
  const value = (numberIn(read.amount, mass.unit) * 1e6) / mass.value;
  return new Quantity(value, "ppm w/w", `${read.amount.of}/soil` as `${E}/soil`, "mass/mass");
};
