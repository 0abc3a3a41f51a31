import { oneWayProducts, productTable, simpleQuotients } from "./dimensions.js";
import type { Fraction, UnitParts } from "./units.js";
import { unitParts } from "./units.js";

/** How two units multiply or divide: the unit and dimension of the result and an exact factor. */
export interface Plan {
  readonly unit: string;
  readonly dimension: string;
  readonly top: number;
  readonly bottom: number;
}

const likeOf = (dimension: string): string => {
  if (dimension === "length") return "length/length";
  const top = dimension.split("/")[0];
  return top === "mass" || top === "volume" ? `${top}/${top}` : "1";
};

/** `a * b` and `c / a` to their result, built from the table at first use. */
let table: Map<string, string> | undefined;
const lookUp = (key: string): string | undefined => {
  if (table === undefined) {
    table = new Map();
    for (const row of productTable) {
      const [a, b, c] = row.split(/ [*=] /) as [string, string, string];
      table.set(`${a} * ${b}`, c).set(`${b} * ${a}`, c);
      if (a !== c) table.set(`${c} / ${a}`, b);
      if (b !== c) table.set(`${c} / ${b}`, a);
    }
    for (const row of oneWayProducts) {
      const [a, b, c] = row.split(/ [*=] /) as [string, string, string];
      table.set(`${a} * ${b}`, c).set(`${b} * ${a}`, c);
    }
    for (const quotient of simpleQuotients) {
      const [a, b] = quotient.split("/") as [string, string];
      table.set(`${quotient} * ${b}`, a).set(`${b} * ${quotient}`, a);
      table.set(`${a} / ${b}`, quotient).set(`${a} / ${quotient}`, b);
    }
  }
  return table.get(key);
};

const currencyOf = (dimension: string): string => /^money:([A-Z]{3})/.exec(dimension)?.[1] ?? "";
const untagged = (dimension: string): string => dimension.replace(/^money:[A-Z]{3}/, "money");
const tagged = (dimension: string, currency: string): string =>
  dimension.replace(/^money/, `money:${currency}`);

const timesDimension = (a: string, b: string): string | undefined => {
  if (a === "1") return b;
  if (b === "1") return a;
  const result = lookUp(`${untagged(a)} * ${untagged(b)}`);
  return result === undefined ? undefined : tagged(result, currencyOf(a) || currencyOf(b));
};

const perDimension = (a: string, b: string): string | undefined => {
  if (b === "1") return a;
  if (a === b) return likeOf(a);
  const currency = currencyOf(a);
  if (currencyOf(b) !== "" && currencyOf(b) !== currency) return undefined;
  const result = lookUp(`${untagged(a)} / ${untagged(b)}`);
  return result === undefined ? undefined : tagged(result, currency);
};

/** The units in which a result is given where the units of the operands do not name one. */
const metric: Readonly<Record<string, string>> = {
  area: "m2",
  volume: "m3",
  "area/time": "m2/min",
  "mass/mass": "kg/kg",
  "volume/volume": "L/L",
  "length/length": "m/m",
  length: "m",
};
const customary: Readonly<Record<string, string>> = {
  area: "ft2",
  volume: "ft3",
  "area/time": "ft2/min",
  "mass/mass": "lb/lb",
  "volume/volume": "gal/gal",
  "length/length": "ft/ft",
  length: "ft",
};
const customaryUnits = /^(in|ft|yd|mi|in2|ft2|yd2|1000 ft2|acre|lb|oz|gal|qt|pt|fl oz)$/;
const isCustomary = (unit: UnitParts): boolean => customaryUnits.test(unit.top === "" ? unit.unit : unit.top);

/** The unit of a result: what is left when equal dimensions cancel, else a usual unit of the dimension. */
const resultUnit = (dimension: string, a: UnitParts, b: UnitParts, divide: boolean): string => {
  const [bTop, bBottom] = b.top === "" ? [b.unit, ""] : [b.top, b.bottom];
  const [x, y] = divide ? [bBottom, bTop] : [bTop, bBottom];
  const [top, bottom] = a.top === "" ? [a.unit, ""] : [a.top, a.bottom];
  const candidates = [a.unit, b.unit, top, bottom, x, y];
  for (const t of [top, x]) {
    for (const u of [bottom, y]) candidates.push(`${t}/${u}`);
  }
  candidates.push(`1/${bottom}`, `1/${y}`, "1");
  const fits = (unit: string): boolean => unit !== "" && unitParts(unit)?.dimension === dimension;
  const usual = (isCustomary(a) ? customary : metric)[dimension] ?? "";
  return candidates.find(fits) ?? (fits(usual) ? usual : (fallback(dimension, isCustomary(a)) as string));
};

const fallbackUnits = {
  metric: { mass: "kg", volume: "L", area: "m2", length: "m", time: "h", count: "count" },
  customary: { mass: "lb", volume: "gal", area: "ft2", length: "ft", time: "h", count: "count" },
} as const;

const fallback = (dimension: string, us: boolean): string => {
  const names = us ? fallbackUnits.customary : fallbackUnits.metric;
  if (dimension === "degree-days") return "°C d";
  if (dimension === "radiant exposure") return "MJ/m2";
  return dimension
    .split("/")
    .map((part) => (part in names ? names[part as keyof typeof names] : part))
    .join("/");
};

const planOf = (a: UnitParts, b: UnitParts, divide: boolean): Plan | undefined => {
  const dimension = divide
    ? perDimension(a.dimension, b.dimension)
    : timesDimension(a.dimension, b.dimension);
  if (dimension === undefined) return undefined;
  const unit =
    dimension === "1" && a.dimension !== "1" && b.dimension !== "1"
      ? "1"
      : resultUnit(dimension, a, b, divide);
  const result = unitParts(unit) as UnitParts;
  const [bn, bd] = divide ? [b.size[1], b.size[0]] : b.size;
  const factor: Fraction = [a.size[0] * bn * result.size[1], a.size[1] * bd * result.size[0]];
  let [p, q] = factor;
  while (q > BigInt(0)) [p, q] = [q, p % q];
  return { unit, dimension, top: Number(factor[0] / p), bottom: Number(factor[1] / p) };
};

/** How `a` times `b` goes, or `undefined` where the table has no such product. */
export const timesPlan = (a: UnitParts, b: UnitParts): Plan | undefined => remembered(a, b, false);

/** How `a` divided by `b` goes, or `undefined` where the table has no such quotient. */
export const perPlan = (a: UnitParts, b: UnitParts): Plan | undefined => remembered(a, b, true);

const remembered = (a: UnitParts, b: UnitParts, divide: boolean): Plan | undefined => {
  const key = divide ? `/${b.unit}` : b.unit;
  const seen = a.products.get(key);
  if (seen !== undefined) return seen as Plan;
  const plan = planOf(a, b, divide);
  if (plan !== undefined) a.products.set(key, plan);
  return plan;
};
