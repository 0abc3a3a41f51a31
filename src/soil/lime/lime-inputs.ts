import type { Quantity } from "../../quantity/index.js";
import type { SoilLayer } from "../report/soil-layer.js";

interface PHs {
  /** Of the soil, in water, as the report prints it. */
  readonly pH: number;
  readonly targetPH: number;
}

interface ByBuffer extends PHs {
  readonly bufferPH: number;
}

interface ByAcidity extends PHs {
  readonly acidity: Quantity<"exchange capacity", "none">;
}

/** What {@link limeRequirement} is told: the method, and the figures that it takes. */
export type LimeRequirementInput =
  | (PHs & {
      readonly method: "Mehlich buffer, North Carolina";
      readonly bufferPH?: number;
      /** The Ac of the report, meq/100 cm3, in place of the buffer pH. */
      readonly acidityPerVolume?: number;
      readonly residualCredit?: Quantity<"mass/area", "product:standard-lime">;
    })
  | (ByAcidity & {
      readonly method: "Mehlich buffer, Pennsylvania turf" | "Mehlich buffer, Pennsylvania fields";
    })
  | (ByBuffer & {
      readonly method: "Sikora buffer, Oregon" | "buffer pH, Iowa";
    })
  | {
      readonly method: "exchangeable acidity";
      readonly acidity: Quantity<"exchange capacity", "none">;
      readonly layer: SoilLayer;
      /** Percent of the acidity to neutralize; all of it where it is left out. */
      readonly neutralize?: number;
    }
  | {
      readonly method: "base saturation";
      readonly capacity: Quantity<"exchange capacity", "none">;
      readonly baseSaturation: Quantity<"1", "none">;
      readonly targetSaturation: Quantity<"1", "none">;
      readonly layer: SoilLayer;
    }
  | (PHs & {
      readonly method: "pH buffering";
      /** Charge that a unit of pH takes, meq/100 g. */
      readonly perUnitPH: Quantity<"exchange capacity", "none">;
      readonly layer: SoilLayer;
    });
