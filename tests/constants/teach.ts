// Figures that an entry of the catalogue hands to its function.
import { quantity } from "../../src/index.js";
import { entryResult } from "../../src/teach/index.js";
import { type ConstantCheck, cells } from "./check.js";

const atTwoMeters = (from: number): number =>
  entryResult("wind-at-two-meters", { wind: quantity(1, "m/s"), from: quantity(from, "m") }).in("m/s");

export const teachConstants: readonly ConstantCheck[] = cells(
  { room: "teach", source: "FAO Irrigation and Drainage Paper 56, equation 47", reached: "read" },
  [
    // u2 = uz 4.87 / ln(67.8 z - 5.42): of 10 m ln 672.58 = 6.5111, of 3 m ln 197.98 = 5.2882
    ["wind at 2 m, of 1 m/s at 10 m", 4.87 / Math.log(672.58), () => atTwoMeters(10)],
    ["wind at 2 m, of 1 m/s at 3 m", 4.87 / Math.log(197.98), () => atTwoMeters(3)],
  ],
);
