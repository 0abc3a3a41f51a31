import { notShare } from "../../numeric/house.js";
import { expectNumber } from "../../quantity/index.js";

/** Percent of a material as received; 0.4 is a share, 0.4 for 40 %: what comes out of a dryer keeps more than 1 % too. */
export const moistureOf = (input: unknown): number =>
  notShare(expectNumber(input, "moisture", { min: 0, below: 100 }), "moisture", { unit: "" });
