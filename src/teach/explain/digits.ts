import { likeQuantity, type Quantity } from "../../quantity/index.js";

/** A quantity rounded to so many significant digits. */
export const rounded = (q: Quantity<string, string>, digits: number): Quantity<string, string> =>
  likeQuantity(q, Number(q.value.toPrecision(digits)));
