import { type Citation, frozen, type Quantity, quantity } from "../../quantity/index.js";
import { readRecord, word } from "../read.js";

const inPerFt = {
  "very coarse sand": [0.4, 0.75],
  "coarse sand, fine sand, loamy sand": [0.75, 1.25],
  "sandy loam, fine sandy loam": [1.25, 1.75],
  "very fine sandy loam, loam, silt loam": [1.5, 2.3],
  "clay loam, silty clay loam, sandy clay loam": [1.75, 2.5],
  "sandy clay, silty clay, clay": [1.6, 2.5],
} as const;

/** Groups of soil textures as the table of holding capacity has them. */
export type HoldingTexture = keyof typeof inPerFt;

const textures = Object.keys(inPerFt) as readonly HoldingTexture[];

/** What soils of a texture hold for plants, as a range. */
export interface WaterHolding {
  readonly type: "water-holding";
  readonly version: 1;
  readonly texture: HoldingTexture;
  readonly low: Quantity<"length/length", "none">;
  readonly high: Quantity<"length/length", "none">;
  readonly source: Citation;
}

const davis: Citation = /* @__PURE__ */ frozen({
  title: "Soil characteristics (managing drought)",
  publisher: "University of California, Davis",
  where: "table",
  url: "http://ucmanagedrought.ucdavis.edu/Agriculture/Irrigation_Scheduling/Evapotranspiration_Scheduling_ET/Frequency_of_Irrigation/Soil_Characteristics",
});

/**
 * The available water that soils of a texture hold, as the range of a published table. A root zone of sand built to a
 * specification holds what its test report says.
 *
 * @throws RatewrightError `type` with the textures of the table, `missing`
 *
 * Source: University of California, Davis, "Soil characteristics (managing drought)".
 *
 * @example
 * ```ts
 * import { waterHolding } from "ratewright";
 * const loam = waterHolding({ texture: "very fine sandy loam, loam, silt loam" });
 * [loam.low.in("in/ft"), loam.high.in("in/ft")]; // => [1.5, 2.3]
 * ```
 */
export const waterHolding = (input: { readonly texture: HoldingTexture }): WaterHolding => {
  const { texture } = readRecord(input, { texture: word(textures) }, "a record with texture");
  const [low, high] = inPerFt[texture];
  return {
    type: "water-holding",
    version: 1,
    texture,
    low: quantity(low, "in/ft"),
    high: quantity(high, "in/ft"),
    source: davis,
  };
};
