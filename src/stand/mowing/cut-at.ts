import { expectWithin } from "../../numeric/house.js";
import type { Length } from "../../quantity/index.js";
import { lengthAt } from "../read.js";

/** Takes a height of cut: rotary cutters on roadsides leave 14 in at most (from memory), and 75 in is a figure in mm. */
export const cutAt = (input: unknown): Length => {
  const cut = lengthAt(input, "cut");
  return /^(in|ft|yd)$/.test(cut.unit)
    ? expectWithin(cut, cut.in("in"), "cut", { max: 24, unit: "in" }, "a height of cut of {}")
    : expectWithin(cut, cut.in("cm"), "cut", { max: 60, unit: "cm" }, "a height of cut of {}");
};
