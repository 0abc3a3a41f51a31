import {
  allOf,
  type Citation,
  expectFields,
  expectFlag,
  expectNumber,
  expectOneOf,
  type Finding,
  fail,
  frozen,
  Quantity,
  quantity,
} from "../../quantity/index.js";

const source: Citation = /* @__PURE__ */ frozen({
  title: "Acidifying soil",
  publisher: "Royal Horticultural Society",
  where: "Quantities to apply",
  url: "https://rhs.org.uk/soil-composts-mulches/acidifying-soil",
});

/** Grams a square meter, to 15 cm. */
const rates = {
  sulfur: { sandy: 135, clay: 270 },
  "ferrous sulfate": { sandy: 1080, clay: 2160 },
} as const;

/** An acidifying material that is mixed into bare soil. */
export type AcidifyingMaterial = "sulfur" | "ferrous sulfate";

/** A rate for bare soil. */
export interface AcidifyingRate {
  readonly type: "acidifying-rate";
  readonly version: 1;
  readonly rate: Quantity<"mass/area", "S" | "product:ferrous-sulfate">;
  readonly depth: Quantity<"length", "none">;
  readonly source: Citation;
  readonly findings: readonly Finding[];
}

/**
 * Sulfur or ferrous sulfate to mix into BARE soil before planting, from pH 7.0 to 7.5 down to 6.0 to 6.5, top 15 cm:
 * sulfur 135 (sandy) or 270 (clay) g/m2, ferrous sulfate eight times that.
 *
 * This is 5 to 11 times the most that goes on standing turf at once (`sulfurApplications`). The source has no other
 * span of pH and no table by texture; outside it the call is refused. A soil with free lime cannot realistically be
 * acidified, and is refused too.
 *
 * @param input.material - sulfur or ferrous sulfate
 * @param input.targetPH - what the soil is to come down to
 * @throws RatewrightError `range` (a pH outside the span), `infeasible` with free lime, `missing`, `type`
 *
 * Source: "Acidifying soil", Royal Horticultural Society. It prints 63 oz/yd2 for 2160 g/m2, which is 63.7.
 *
 * @example
 * ```ts
 * import { sulfurToIncorporate } from "ratewright/soil";
 * const rate = sulfurToIncorporate({
 *   material: "sulfur", texture: "sandy", pH: 7.3, targetPH: 6.3, freeLime: false,
 * });
 * rate.rate.in("g/m2"); // => 135
 * Number(rate.rate.in("lb/1000 ft2").toFixed(1)); // => 27.7
 * ```
 */
export const sulfurToIncorporate = (input: {
  readonly material: AcidifyingMaterial;
  readonly texture: "sandy" | "clay";
  readonly pH: number;
  readonly targetPH: number;
  readonly freeLime: boolean;
}): AcidifyingRate => {
  const record = expectFields(input, ["material", "texture", "pH", "targetPH", "freeLime"], "input");
  const read = allOf({
    material: () => expectOneOf(record.material, ["sulfur", "ferrous sulfate"], "material"),
    texture: () => expectOneOf(record.texture, ["sandy", "clay"], "texture"),
    pH: () => expectNumber(record.pH, "pH", { min: 7, max: 7.5 }),
    targetPH: () => expectNumber(record.targetPH, "targetPH", { min: 6, max: 6.5 }),
    freeLime: () => expectFlag(record.freeLime, "freeLime"),
  });
  if (read.freeLime) {
    fail(
      "infeasible",
      "freeLime",
      true,
      "a soil without free lime; sulfurForCarbonate gives what the lime takes up",
    );
  }
  const of = read.material === "sulfur" ? "S" : "product:ferrous-sulfate";
  return {
    type: "acidifying-rate",
    version: 1,
    rate: new Quantity<"mass/area", "S" | "product:ferrous-sulfate">(
      rates[read.material][read.texture],
      "g/m2",
      of,
      "mass/area",
    ),
    depth: quantity(15, "cm"),
    source,
    findings: [
      {
        code: "sulfur/bare-soil-only",
        severity: "warning",
        path: "material",
        params: {},
        text: "For bare soil, mixed in well ahead of planting: on standing turf this rate can kill the grass. Test the soil again before a second dose.",
        source,
      },
    ],
  };
};
