import { unitDimension } from "../unit/unit-facts.js";
import { readUnitName } from "./aliases.js";

/** The units that the choices of a typed text stand for: `t` for `tonne`, `oz` for `oz av`. */
export const unitsIn = (choices: readonly string[]): readonly string[] =>
  choices.map((choice) => {
    const unit = choice
      .split("/")
      .map((part) => readUnitName(part)?.sure ?? part)
      .join("/");
    return unitDimension(unit) === undefined ? choice : unit;
  });
