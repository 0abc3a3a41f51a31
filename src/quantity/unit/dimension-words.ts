import { type ErrorCode, fail } from "../errors/errors.js";

/** Of each dimension: what a person of the trade calls it, and how one is written, in US and in metric units; ¤ is a currency. */
const words: Readonly<Record<string, string>> = {
  "1": "a share|40 %|0.4",
  mass: "a weight|50 lb|20 kg",
  volume: "a volume|2 gal|8 L",
  area: "an area|5000 ft2|500 m2",
  length: "a length|10 ft|3 m",
  time: "a time|20 min|2 h",
  count: "a count|12 count",
  pressure: "a pressure|40 psi|3 bar",
  angle: "an angle|30 deg",
  temperature: "a temperature|72 °F|22 °C",
  "temperature difference": "a temperature difference|9 °F diff|5 °C diff",
  "degree-days": "a sum of degree-days|450 °F d|250 °C d",
  conductivity: "an electrical conductivity|2 dS/m",
  "exchange capacity": "an exchange capacity|12 meq/100 g|12 cmolc/kg",
  "charge/volume": "a charge per volume|3 meq/L",
  "radiant exposure": "a radiant exposure|20 MJ/m2",
  irradiance: "an irradiance|20 MJ/m2/d|500 W/m2",
  "mass/mass": "a share by weight|24 % w/w|20 lb/US ton",
  "volume/volume": "a share by volume|0.25 % v/v|2 fl oz/gal",
  "length/length": "a slope|5 % grade|1 in/ft",
  "mass/area": "a weight over an area|1 lb/1000 ft2|50 kg/ha",
  "volume/area": "a volume over an area|1 gal/1000 ft2|400 L/ha",
  "count/area": "a count over an area|12 count/ft2|130 count/m2",
  "mass/volume": "a weight per volume|10 lb/gal|1.2 kg/L",
  "volume/mass": "a volume per weight|1 fl oz/lb|60 mL/kg",
  "mass/length": "a weight per length|2 lb/ft|3 kg/m",
  "volume/length": "a volume per length|0.1 gal/ft|1 L/m",
  "length/count": "a length per piece|6 in/count|15 cm/count",
  "area/count": "an area per piece|1 ft2/count|0.1 m2/count",
  "count/mass": "a count per weight|200000 count/lb|450 count/g",
  "mass/count": "a weight per piece|1 oz/count|30 g/count",
  "count/volume": "a count per volume|2000 count/bu|50 count/L",
  "volume/count": "a volume per piece|2 fl oz/count|60 mL/count",
  "count/length": "a count per length|2 count/ft|6 count/m",
  "count/time": "a count per time|30 count/h",
  "mass/time": "a weight per time|5 lb/min|2 kg/min",
  "volume/time": "a flow|0.4 gal/min|1.5 L/min",
  "area/time": "an area per time|2 acre/h|1 ha/h",
  "length/time": "a speed or a depth per time|3 mi/h|5 mm/h",
  "area/mass": "an area per weight|1000 ft2/lb|200 m2/kg",
  "area/volume": "an area per volume|400 ft2/gal|10 m2/L",
  "time/area": "a time per area|20 min/1000 ft2|2 h/ha",
  "1/time": "a number per time|3 1/d",
  "mass/area/time": "a weight over an area and per time|1 lb/1000 ft2/week|5 g/m2/d",
  "volume/area/time": "a volume over an area and per time|100 gal/acre/h|2 L/m2/h",
  "mass/volume/time": "a weight per volume and time|1 mg/L/d",
  money: "an amount of money|40 ¤",
  "money/mass": "a price per weight|1.2 ¤/lb|2.5 ¤/kg",
  "money/volume": "a price per volume|30 ¤/gal|8 ¤/L",
  "money/area": "a cost over an area|40 ¤/acre|100 ¤/ha",
  "money/count": "a price per piece|3 ¤/count",
  "money/time": "a cost per time|45 ¤/h",
};

/** What a dimension is called, and how one is written; its own name where it is none. */
const told = (dimension: string): readonly [noun: string, ...examples: string[]] => {
  const [tag = "money", currency = "USD"] = /^money:([A-Z]{3})/.exec(dimension) ?? [];
  const row = dimension.replace(tag, "money");
  const [noun, ...examples] = (Object.hasOwn(words, row) ? (words[row] as string) : "").split("|");
  return [noun || `a quantity of ${dimension}`, ...examples.map((one) => one.replace("¤", currency))];
};

/** What a dimension is called: "a weight over an area". */
export const dimensionNoun = (dimension: string): string => told(dimension)[0];

/** One, two or three. */
const either = (list: readonly string[]): string =>
  [list.slice(0, -1).join(", "), ...list.slice(-1)].filter((part) => part !== "").join(" or ");

/** An amount of one of some dimensions, as it is asked for: "a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha". */
export const amountInWords = (...dimensions: readonly string[]): string => {
  const all = dimensions.map(told);
  const examples =
    all.length === 1 ? (all[0] as readonly string[]).slice(1) : all.flatMap((one) => one[1] ?? []);
  const nouns = either(all.map(([noun]) => noun));
  return examples.length === 0 ? nouns : `${nouns}, such as ${either(examples)}`;
};

/** The units of the examples, by their exact names. */
const exampleUnits = (dimension: string): readonly string[] =>
  told(dimension)
    .slice(1)
    .map((example) => example.replace(/^[\d.]+ ?/, "").replace(/^(?=[A-Z]{3}(?:$|\/))/, "money:"))
    .filter((unit) => unit !== "");

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
