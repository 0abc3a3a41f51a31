// The list of units to choose from, out of the library's own.
import { type Dimension, unitName, unitSymbol, unitSystem, unitsOf } from "../../src/quantity/index.js";
import type { CatalogueVariable } from "../../src/teach/index.js";
import { escaped } from "./html.js";

/** The units to offer for a variable: the usual ones first, then all that the library lists for the dimension. */
export const unitsFor = ({ dimension, usualUnits }: CatalogueVariable): readonly string[] => {
  const listed = unitsOf(dimension as Dimension).map(({ unit }): string => unit);
  return [...new Set([usualUnits.US, usualUnits.metric, ...listed])];
};

const groups: readonly (readonly [label: string, system: string])[] = [
  ["US customary", "US"],
  ["Metric", "metric"],
  ["Imperial", "imperial"],
  ["In both", "both"],
];

/** `pounds per acre` beside `lb/acre`, where the name says more than the symbol. */
const optionText = (unit: string): string => {
  if (unit === "1") return "number";
  const [symbol, name] = [unitSymbol(unit), unitName(unit)];
  return name === symbol ? symbol : `${symbol}, ${name}`;
};

/** The options of a select box, by system of units; the usual US unit is chosen. */
export const unitOptions = (variable: CatalogueVariable): string => {
  const units = unitsFor(variable);
  const chosen = variable.usualUnits.US;
  const option = (unit: string): string =>
    `<option value="${escaped(unit)}"${unit === chosen ? " selected" : ""}>${escaped(optionText(unit))}</option>`;
  const lists = groups
    .map(([label, system]) => [label, units.filter((unit) => unitSystem(unit) === system)] as const)
    .filter(([, list]) => list.length > 0);
  return lists.length === 1
    ? units.map(option).join("")
    : lists
        .map(([label, list]) => `<optgroup label="${label}">${list.map(option).join("")}</optgroup>`)
        .join("");
};
