import { notShare } from "../../numeric/house.js";
import { expectNumber } from "../../quantity/index.js";

/** Percent of a material as received; 0.4 is a share, 0.4 for 40 %: even what is dried by heat keeps more than 1 %. */
export const moistureOf = (input: unknown): number =>
  notShare(expectNumber(input, "moisture", { min: 0, below: 100 }), "moisture", { unit: "" });
