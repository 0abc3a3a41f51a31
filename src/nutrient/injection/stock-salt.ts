import type { FactSource, Quantity } from "../../quantity/index.js";
import type { Fertilizer } from "../label/fertilizer.js";

/** A salt for a stock tank, with what is stated of its solubility. */
export interface StockSalt {
  readonly product: Fertilizer;
  /** The most that dissolves, product per volume of water; a cold stock holds less. */
  readonly solubility?: Quantity<"mass/volume", "none">;
  /** Who states it. */
  readonly solubilitySource?: FactSource;
}

/** What is to be dissolved. */
export interface StockAmount {
  readonly id: string;
  readonly amount: Quantity<"mass", string>;
  /** In the stock. */
  readonly perVolume: Quantity<"mass/volume", string>;
}
