import { unitDimension } from "../unit/unit-facts.js";
import { readUnitName } from "./aliases.js";

/** The units that the choices of a typed text stand for: `t` for `tonne`, `oz` for `oz av`. */
export const unitsIn = (choices: readonly string[]): readonly string[] =>
  choices.flatMap((choice) => {
    const parts = choice.split("/").map((part) => readUnitName(part));
    // 2 long cwt are not 2 lb
    if (parts.some((part) => part?.size !== undefined)) return [];
    const unit = parts.map((part, i) => part?.sure ?? choice.split("/")[i]).join("/");
    return unitDimension(unit) === undefined ? [] : [unit];
  });
