import { fail } from "../errors/errors.js";
import { type Dimension, quotientsOfThree, quotientsOfTwo } from "./dimensions.js";
import { baseUnitsOf, unitDimension } from "./unit-facts.js";
import { type UnitSystem, unitName, unitSymbol, unitSystem } from "./unit-names.js";
import { quotientsInUse, type Unit } from "./unit-text.js";

/** One line of a list of units to choose from. */
export interface UnitChoice<D extends string> {
  /** The unit itself, as `quantity` and `in` take it. */
  readonly unit: Unit<D>;
  /** As it is shown beside a number. */
  readonly symbol: string;
  /** In plain English, in the plural. */
  readonly name: string;
  readonly system: UnitSystem;
}

const currency = /^money:[A-Z]{3}/;

/**
 * Whether a text names a dimension.
 *
 * @example
 * ```ts
 * import { isDimension } from "ratewright";
 * isDimension("mass/area"); // => true
 * isDimension("money:USD/area"); // => true
 * isDimension("weight"); // => false
 * ```
 */
export const isDimension = (text: unknown): text is Dimension => {
  // A form asks for the same one again and again.
  if (text === latest) return true;
  const known = typeof text === "string" && named(text);
  if (known) latest = text;
  return known;
};

/** The last text that was found to be a dimension: a memory of the check, not of the caller. */
let latest: unknown = "mass/area";

const named = (text: string): boolean => {
  if (currency.test(text)) {
    const rest = text.replace(currency, "money");
    return rest === "money" || (quotientsOfTwo as readonly string[]).includes(rest);
  }
  return (
    (!text.startsWith("money") && (quotientsOfTwo as readonly string[]).includes(text)) ||
    (quotientsOfThree as readonly string[]).includes(text) ||
    baseUnitsOf(text).length > 0
  );
};

/** Takes a dimension, or throws `type`. */
export const expectDimension = (dimension: unknown, path: string): Dimension =>
  isDimension(dimension) ? dimension : fail("type", path, dimension, "a dimension, such as mass/area");

/**
 * Whether a text is a unit, of the given dimension where one is given. Lets what came out of a select
 * box reach a quantity.
 *
 * @example
 * ```ts
 * import { isUnit, quantity } from "ratewright";
 * const chosen: string = "lb/acre";
 * if (isUnit(chosen, "mass/area")) {
 *   quantity(43.56, chosen).in("lb/1000 ft2"); // => 1
 * }
 * isUnit("fl oz/acre", "mass/area"); // => false
 * ```
 */
export function isUnit<const D extends Dimension>(text: unknown, dimension: D): text is Unit<D>;
export function isUnit(text: unknown): text is Unit<Dimension>;
export function isUnit(text: unknown, dimension?: string): boolean {
  if (typeof text !== "string") return false;
  const measured = unitDimension(text);
  return measured !== undefined && (dimension === undefined || measured === dimension);
}

const usual: Readonly<Record<string, readonly string[]>> = {
  mass: ["lb", "kg"],
  volume: ["gal", "L"],
  length: ["ft", "m"],
  time: ["min", "h", "d"],
  count: ["count"],
};

/** Quotients of usual units, for a dimension that the trade's list leaves out; no US over metric. */
const quotientsOf = (dimension: string): readonly string[] =>
  dimension
    .split("/")
    .map((part) => usual[part] ?? baseUnitsOf(part))
    .reduce((tops, bottoms) => tops.flatMap((top) => bottoms.map((bottom) => `${top}/${bottom}`)))
    .filter((unit) => {
      const systems = unit.split("/").map((part) => unitSystem(part));
      return !(systems.includes("US") && systems.includes("metric"));
    });

/**
 * The units to offer for a dimension: its base units and the trade's common quotients. Every other
 * quotient of the dimension is a unit too.
 *
 * @throws RatewrightError `type` where the text is no dimension
 *
 * @example
 * ```ts
 * import { unitsOf } from "ratewright";
 * unitsOf("mass/area")[0]; // => { unit: "lb/1000 ft2", symbol: "lb/1,000 ft²", name: "pounds per 1,000 square feet", system: "US" }
 * unitsOf("time").map((choice) => choice.name); // => ["seconds", "minutes", "hours", "days", "weeks"]
 * ```
 */
export const unitsOf = <const D extends Dimension>(dimension: D): readonly UnitChoice<D>[] => {
  const known = expectDimension(dimension, "dimension");
  const [, money, below] = /^(money:[A-Z]{3})(?:\/(.+))?$/.exec(known) ?? [];
  const common = (quotientsInUse as Readonly<Record<string, readonly string[]>>)[known] ?? [];
  const own = [...baseUnitsOf(known), ...common];
  const units =
    money === undefined
      ? own.length > 0
        ? own
        : quotientsOf(known)
      : below === undefined
        ? [money]
        : baseUnitsOf(below).map((unit) => `${money}/${unit}`);
  return units.map((unit) => ({
    unit: unit as Unit<D>,
    symbol: unitSymbol(unit),
    name: unitName(unit),
    system: unitSystem(unit),
  }));
};
