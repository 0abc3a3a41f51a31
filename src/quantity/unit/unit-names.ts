import { shown } from "../errors/errors.js";
import { hasOwn } from "../errors/has-own.js";
import type { BaseUnit } from "./base-units.js";
import { splitUnit } from "./unit-facts.js";

/** Where a unit is at home: US customary, metric, imperial, or used alike. */
export type UnitSystem = "US" | "metric" | "imperial" | "both";

/** Of each base unit: symbol, name of one, name of several, system. */
const info: Readonly<Record<BaseUnit, string>> = {
  kg: "kg|kilogram|kilograms|metric",
  g: "g|gram|grams|metric",
  mg: "mg|milligram|milligrams|metric",
  t: "t|tonne|tonnes|metric",
  lb: "lb|pound|pounds|US",
  oz: "oz|ounce|ounces|US",
  "US ton": "US ton|US ton|US tons|US",
  grain: "grain|grain|grains|US",
  m: "m|meter|meters|metric",
  cm: "cm|centimeter|centimeters|metric",
  mm: "mm|millimeter|millimeters|metric",
  um: "µm|micrometer|micrometers|metric",
  km: "km|kilometer|kilometers|metric",
  in: "in|inch|inches|US",
  ft: "ft|foot|feet|US",
  yd: "yd|yard|yards|US",
  mi: "mi|mile|miles|US",
  nmi: "nmi|nautical mile|nautical miles|both",
  m2: "m²|square meter|square meters|metric",
  cm2: "cm²|square centimeter|square centimeters|metric",
  "100 m2": "100 m²|100 square meters|100 square meters|metric",
  ha: "ha|hectare|hectares|metric",
  in2: "in²|square inch|square inches|US",
  ft2: "ft²|square foot|square feet|US",
  yd2: "yd²|square yard|square yards|US",
  "1000 ft2": "1,000 ft²|1,000 square feet|1,000 square feet|US",
  acre: "acre|acre|acres|US",
  m3: "m³|cubic meter|cubic meters|metric",
  L: "L|liter|liters|metric",
  mL: "mL|milliliter|milliliters|metric",
  in3: "in³|cubic inch|cubic inches|US",
  ft3: "ft³|cubic foot|cubic feet|US",
  yd3: "yd³|cubic yard|cubic yards|US",
  gal: "gal|gallon|gallons|US",
  qt: "qt|quart|quarts|US",
  pt: "pt|pint|pints|US",
  cup: "cup|cup|cups|US",
  "fl oz": "fl oz|fluid ounce|fluid ounces|US",
  tbsp: "tbsp|tablespoon|tablespoons|US",
  tsp: "tsp|teaspoon|teaspoons|US",
  bu: "bu|bushel|bushels|US",
  "acre-in": "acre-in|acre-inch|acre-inches|US",
  "acre-ft": "acre-ft|acre-foot|acre-feet|US",
  "imp gal": "imp gal|imperial gallon|imperial gallons|imperial",
  "imp fl oz": "imp fl oz|imperial fluid ounce|imperial fluid ounces|imperial",
  s: "s|second|seconds|both",
  min: "min|minute|minutes|both",
  h: "h|hour|hours|both",
  d: "d|day|days|both",
  week: "week|week|weeks|both",
  Pa: "Pa|pascal|pascals|metric",
  kPa: "kPa|kilopascal|kilopascals|metric",
  bar: "bar|bar|bar|metric",
  psi: "psi|pound-force per square inch|pounds-force per square inch|US",
  "°C": "°C|degree Celsius|degrees Celsius|metric",
  "°F": "°F|degree Fahrenheit|degrees Fahrenheit|US",
  K: "K|kelvin|kelvins|metric",
  "°C diff": "°C diff|degree Celsius of difference|degrees Celsius of difference|metric",
  "°F diff": "°F diff|degree Fahrenheit of difference|degrees Fahrenheit of difference|US",
  "°C d": "°C d|Celsius degree-day|Celsius degree-days|metric",
  "°F d": "°F d|Fahrenheit degree-day|Fahrenheit degree-days|US",
  "1": "|||both",
  "%": "%|percent|percent|both",
  count: "count|count|count|both",
  deg: "deg|degree|degrees|both",
  rad: "rad|radian|radians|both",
  "% grade": "% grade|percent grade|percent grade|both",
  "% w/w": "% w/w|percent by weight|percent by weight|both",
  "ppm w/w": "ppm w/w|part per million by weight|parts per million by weight|both",
  "% v/v": "% v/v|percent by volume|percent by volume|both",
  "ppm v/v": "ppm v/v|part per million by volume|parts per million by volume|both",
  "% w/v": "% w/v|percent weight by volume|percent weight by volume|both",
  "dS/m": "dS/m|decisiemens per meter|decisiemens per meter|both",
  "mS/cm": "mS/cm|millisiemens per centimeter|millisiemens per centimeter|both",
  "uS/cm": "µS/cm|microsiemens per centimeter|microsiemens per centimeter|both",
  "cmolc/kg": "cmolc/kg|centimole of charge per kilogram|centimoles of charge per kilogram|both",
  "meq/100 g": "meq/100 g|milliequivalent per 100 grams|milliequivalents per 100 grams|both",
  "meq/L": "meq/L|milliequivalent per liter|milliequivalents per liter|both",
  "mmolc/L": "mmolc/L|millimole of charge per liter|millimoles of charge per liter|both",
  "MJ/m2": "MJ/m²|megajoule per square meter|megajoules per square meter|metric",
  "MJ/m2/d": "MJ/m²/d|megajoule per square meter per day|megajoules per square meter per day|metric",
  "W/m2": "W/m²|watt per square meter|watts per square meter|metric",
};

type Column = 0 | 1 | 2 | 3;
const nameIn = (unit: string, column: Column): string =>
  typeof unit === "string" && hasOwn(info, unit)
    ? ((info[unit as BaseUnit].split("|") as string[])[column] as string)
    : String(typeof unit === "string" ? unit.replace("money:", "") : shown(unit));

const spelled = (unit: string, column: 0 | 1 | 2, per: string, bottom: 0 | 1): string => {
  const parts = splitUnit(unit);
  if (parts === undefined) return nameIn(unit, column);
  return `${spelled(parts.top, column, per, bottom)}${per}${nameIn(parts.bottom, bottom)}`.trim();
};

/**
 * The symbol of a unit as it is shown: `lb/1000 ft2` as `lb/1,000 ft²`. A text that is no unit comes back
 * as it is.
 *
 * @example
 * ```ts
 * import { unitSymbol } from "ratewright";
 * unitSymbol("lb/1000 ft2"); // => "lb/1,000 ft²"
 * ```
 */
export const unitSymbol = (unit: string): string => spelled(unit, 0, "/", 0);

/**
 * The name of a unit in plain English, in the plural unless `count` is 1.
 *
 * @example
 * ```ts
 * import { unitName } from "ratewright";
 * unitName("lb/1000 ft2"); // => "pounds per 1,000 square feet"
 * unitName("fl oz/gal", 1); // => "fluid ounce per gallon"
 * ```
 */
export const unitName = (unit: string, count = 2): string => spelled(unit, count === 1 ? 1 : 2, " per ", 1);

/**
 * Where a unit is at home; of a quotient, where its parts are, and `"both"` where they differ.
 *
 * @example
 * ```ts
 * import { unitSystem } from "ratewright";
 * unitSystem("fl oz/1000 ft2"); // => "US"
 * unitSystem("kg/ha"); // => "metric"
 * ```
 */
export const unitSystem = (unit: string): UnitSystem => {
  if (typeof unit !== "string") return "both";
  const parts = splitUnit(unit);
  if (parts === undefined) {
    return hasOwn(info, unit) ? (nameIn(unit, 3) as UnitSystem) : "both";
  }
  const [top, bottom] = [unitSystem(parts.top), unitSystem(parts.bottom)];
  return top === "both" || top === bottom ? bottom : bottom === "both" ? top : "both";
};
