import { sprayVolume } from "../application/spray-volume.js";
import type { FormulaSpec } from "../entry/formula.js";

/** The formulas by room, in the order of the chapters of a course. */
export const formulasByRoom = (): Readonly<Record<string, readonly FormulaSpec[]>> => ({
  spray: [...sprayVolume],
});
