import { numberIn, unitSymbol, unitSystem } from "../../quantity/index.js";
import type { SheetUnits } from "../job/job.js";
import type { Measure } from "../visit/measure.js";

/** The system whose units come first. */
export type FirstUnits = "US" | "metric";

/** The system that comes first on a sheet. */
export const firstUnits = (units: SheetUnits): FirstUnits => (units === "metric" ? "metric" : "US");

/** A number without noise, with commas between the thousands: `120,825`, `0.125`; its zeros are kept where it is `fixed`. */
export const plainNumber = (value: number, decimals: number, fixed = false): string => {
  const [whole = "0", rest = ""] = Math.abs(value).toFixed(decimals).split(".");
  const digits = fixed ? rest : rest.replace(/0+$/, "");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  const text = digits === "" ? grouped : `${grouped}.${digits}`;
  return value < 0 && Number(text.replace(/,/g, "")) !== 0 ? `-${text}` : text;
};

/** Decimals that show three figures, as many as a dial or a label has. */
const decimalsOf = (value: number): number =>
  value === 0 ? 0 : Math.min(9, Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value)))));

/** A value to three figures, and from a thousand up to the whole number. */
export const figure = (value: number): string => plainNumber(value, decimalsOf(value));

const spelled: Readonly<Record<string, string>> = {
  oz: "oz by weight",
  ft2: "sq ft",
  "1000 ft2": "1,000 sq ft",
  acre: "acre",
  yd2: "sq yd",
};

const side = (unit: string): string => spelled[unit] ?? unitSymbol(unit);

/** A unit in the words of the trade: `lb per 1,000 sq ft`, `oz by weight per acre`. */
export const unitWords = (unit: string): string => {
  if (unit === "% v/v") return "% by volume";
  if (unit === "mi/h") return "mph";
  if (unit === "km/h") return unit;
  if (unit === "% w/v") return "% weight by volume";
  const slash = unit.indexOf("/");
  return slash < 0 ? side(unit) : `${side(unit.slice(0, slash))} per ${side(unit.slice(slash + 1))}`;
};

const usual: Readonly<Record<string, readonly [us: string, metric: string]>> = {
  area: ["ft2", "m2"],
  mass: ["lb", "kg"],
  volume: ["gal", "L"],
  length: ["ft", "m"],
  "length/time": ["mi/h", "km/h"],
  pressure: ["psi", "bar"],
  "mass/area": ["lb/1000 ft2", "g/m2"],
  "volume/area": ["fl oz/1000 ft2", "mL/100 m2"],
  "mass/volume": ["oz/gal", "g/L"],
  "volume/volume": ["% v/v", "% v/v"],
};

/** The unit in which a measure is printed: its own where that is of the system, and otherwise the usual one. */
export const unitFor = (measure: Measure, first: FirstUnits, spray = false): string => {
  const own = unitSystem(measure.unit);
  const other = first === "US" ? "metric" : "US";
  if (own !== other) return measure.unit;
  // who sees a rate per acre on a metric sheet thinks per hectare
  if (first === "metric" && measure.unit.endsWith("/acre")) {
    if (measure.dimension === "mass/area") return "kg/ha";
    if (measure.dimension === "volume/area") return "L/ha";
  }
  if (spray && measure.dimension === "volume/area") return first === "US" ? "gal/1000 ft2" : "L/100 m2";
  return usual[measure.dimension]?.[first === "US" ? 0 : 1] ?? measure.unit;
};

/** A measure in the units of a sheet: `1.67 lb per 1,000 sq ft`. */
export const measureText = (measure: Measure, first: FirstUnits, spray = false): string => {
  const unit = unitFor(measure, first, spray);
  return `${figure(numberIn(measure, unit))} ${unitWords(unit)}`;
};

/**
 * The unit of area that rates of a treatment are told in: people multiply the two. What is smaller than an acre or a hectare
 * in all is told in square feet or square meters: 169 m² can be paced, 0.017 ha cannot.
 */
export const areaUnitOf = (rateUnit: string, whole: Measure, first: FirstUnits): string => {
  const below = rateUnit.slice(rateUnit.indexOf("/") + 1);
  const large = first === "US" ? "acre" : "ha";
  if (below === large && numberIn(whole, below) >= 1) return below;
  return first === "US" ? "ft2" : "m2";
};

/** The unit for what each load covers: that of the whole, and what can be paced where no load covers a tenth of it. */
export const coversUnitOf = (unit: string, loads: readonly Measure[], first: FirstUnits): string =>
  (unit !== "acre" && unit !== "ha") || loads.some((area) => numberIn(area, unit) >= 0.1)
    ? unit
    : first === "US"
      ? "ft2"
      : "m2";

/** An area: `14,400 sq ft`, `3.25 acres`; what is small beside the rest keeps three figures, and is never told as 0. */
export const areaText = (area: Measure, unit: string): string => {
  const value = numberIn(area, unit);
  const usual = unit === "acre" || unit === "ha" ? 3 : value < 100 ? 1 : 0;
  const decimals = value < 10 ** (2 - usual) ? decimalsOf(value) : usual;
  return `${plainNumber(value, decimals)} ${unit === "acre" && value !== 1 ? "acres" : side(unit)}`;
};

/** A volume of spray by the marks of the tank: `4.4 gal`. */
export const tankMark = (liters: number, unit: string): string => {
  const value = numberIn({ value: liters, unit: "L", of: "none" }, unit);
  return `${plainNumber(value, value < 20 ? 2 : value < 200 ? 1 : 0)} ${unitSymbol(unit)}`;
};
