import { numberIn, type Quantity, unitSystem } from "../../quantity/index.js";
import { type FirstUnits, figure, unitWords } from "./sheet-units.js";

/** A depth of water: in inches or millimeters, in its own unit where that is of the system. */
export const depthText = (depth: Quantity<"length", "none">, first: FirstUnits): string => {
  const system = unitSystem(depth.unit);
  const unit = system === first ? depth.unit : first === "US" ? "in" : "mm";
  return `${figure(numberIn(depth, unit))} ${unitWords(unit)}`;
};

/** A stretch of time as a label prints it. */
export const timeText = (time: Quantity<"time", "none">): string => `${figure(time.value)} ${time.unit}`;
