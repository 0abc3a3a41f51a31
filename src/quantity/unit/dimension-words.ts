import { type ErrorCode, fail } from "../errors/errors.js";

/** Amounts as a person of the trade writes them, in US and in metric units; ¤ is a currency. Others are made up of parts. */
const amounts: Readonly<Record<string, string>> = {
  "1": "40 %|0.4",
  mass: "50 lb|20 kg",
  volume: "2 gal|8 L",
  area: "5000 ft2|500 m2",
  length: "10 ft|3 m",
  time: "20 min|2 h",
  count: "12 count",
  pressure: "40 psi|3 bar",
  angle: "30 deg",
  temperature: "72 °F|22 °C",
  "temperature difference": "9 °F diff|5 °C diff",
  "degree-days": "450 °F d|250 °C d",
  conductivity: "2 dS/m",
  "exchange capacity": "12 meq/100 g|12 cmolc/kg",
  "charge/volume": "3 meq/L",
  "radiant exposure": "20 MJ/m2",
  irradiance: "20 MJ/m2/d",
  "mass/mass": "24 % w/w|20 lb/US ton",
  "volume/volume": "0.25 % v/v|2 fl oz/gal",
  "length/length": "5 % grade|1 in/ft",
  "mass/area": "1 lb/1000 ft2|50 kg/ha",
  "volume/area": "1 gal/1000 ft2|400 L/ha",
  "count/area": "12 count/ft2|130 count/m2",
  "mass/volume": "10 lb/gal|1.2 kg/L",
  "length/time": "3 mi/h|5 mm/h",
  "volume/time": "0.4 gal/min|1.5 L/min",
  "1/time": "3 1/d",
  "count/mass": "200000 count/lb|450 count/g",
  money: "40 ¤",
};

/** Dimensions that have a name of their own. */
const names: Readonly<Record<string, string>> = {
  "1": "share",
  mass: "weight",
  "mass/mass": "share by weight",
  "volume/volume": "share by volume",
  "length/length": "slope",
  "length/time": "speed or a depth per time",
  "volume/time": "flow",
  "degree-days": "sum of degree-days",
  conductivity: "electrical conductivity",
  money: "amount of money",
};

/** A part of a quotient in a made-up amount, in US and in metric units. */
const unitsOfParts: Readonly<Record<string, string>> = {
  mass: "lb|kg",
  volume: "gal|L",
  area: "acre|ha",
  length: "ft|m",
  time: "h|h",
  count: "count|count",
  money: "¤|¤",
};

const own = (table: Readonly<Record<string, string>>, key: string): string | undefined =>
  Object.keys(table).includes(key) ? table[key] : undefined;

const named = (part: string): string => own(names, part) ?? part;

/** "weight over an area and per time" of mass/area/time. */
const composed = ([top, ...rest]: readonly string[]): string => {
  const noun =
    top === "money"
      ? /^(mass|volume|count)$/.test(rest[0] as string)
        ? "price"
        : "cost"
      : top === "1"
        ? "number"
        : named(top as string);
  const below = rest.map((part) =>
    part === "area" && top !== "time" ? "over an area" : `per ${part === "count" ? "piece" : named(part)}`,
  );
  return `${noun} ${below.join(" and ")}`;
};

/** The currency of a dimension. */
const tag = /^money:([A-Z]{3})/;

/** What a dimension is called, and how one is written; its own name where it is none. */
const told = (dimension: string): readonly [noun: string, ...examples: string[]] => {
  const currency = tag.exec(dimension)?.[1] ?? "USD";
  const row = dimension.replace(tag, "money");
  const parts = row.split("/");
  const units = parts.map((part) => own(unitsOfParts, part)?.split("|") ?? []);
  const known =
    own(amounts, row)?.split("|") ??
    (units.every(({ length }) => length)
      ? new Set([0, 1].map((side) => `2 ${units.map((pair) => pair[side]).join("/")}`))
      : []);
  const examples = [...known].map((one) => one.replace("¤", currency));
  if (!examples[0]) return [`a quantity of ${dimension}`];
  const noun = own(names, row) ?? (parts[1] ? composed(parts) : row);
  return [`${/^[aeiou]/.test(noun) ? "an" : "a"} ${noun}`, ...examples];
};

/** What a dimension is called: "a weight over an area". */
export const dimensionNoun = (dimension: string): string => told(dimension)[0];

/** One, two or three, of which none has a comma in it. */
const either = (list: readonly string[]): string => list.join(", ").replace(/, (?=[^,]*$)/, " or ");

/** An amount of one of some dimensions, as it is asked for: "a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha". */
export const amountInWords = (...dimensions: readonly string[]): string => {
  const all = dimensions.map(told);
  const examples = all.flatMap(([, ...known]) => known.slice(0, all[1] ? 1 : 2));
  return either(all.map(([noun]) => noun)) + (examples[0] ? `, such as ${either(examples)}` : "");
};

/** The units of the examples, by their exact names: what stands behind the number. A bare number has none. */
const exampleUnits = (dimension: string): readonly string[] =>
  told(dimension)
    .slice(1)
    .map((example) => example.replace(/[\d.]+ ?/, "").replace(/^(?=[A-Z]{3}(?:$|\/))/, "money:"))
    .filter((unit) => unit);

/** A unit of the dimension, for a message. */
export const exampleUnit = (dimension: string): string => exampleUnits(dimension)[0] as string;

/** A unit, as it is asked for: "a unit for a weight over an area, such as lb/1000 ft2 or kg/ha". */
export const unitInWords = (dimension: string): string =>
  `a unit for ${dimensionNoun(dimension)}, such as ${either(exampleUnits(dimension))}`;

/** Throws that an amount of one of some dimensions is due, with the dimensions as `params`. */
export const dimensionDue = (
  code: ErrorCode,
  path: string,
  got: unknown,
  dimensions: string | readonly string[],
  more = "",
): never =>
  fail(code, path, got, amountInWords(...[dimensions].flat()) + more, { params: { dimension: dimensions } });
