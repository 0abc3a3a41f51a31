import { type Quantity, quantityOf } from "../../quantity/index.js";

/** What a quantity of any kind tells of itself: `Quantity` is one, whatever its dimension and its substance. */
export interface Measure {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
  readonly dimension: string;
}

/** A quantity whose kind is no longer told to the compiler. */
export const anyQuantity = (measure: Measure, path = "quantity"): Quantity<string, string> =>
  quantityOf(measure.value, measure.unit, measure.of, path);
