import { allBaseUnits, isBaseUnit } from "../unit/unit-facts.js";
import { unitName } from "../unit/unit-names.js";

/** What a written name of a unit can mean. */
export interface NameReading {
  /** What it may be read as, where the expected dimension leaves one. */
  readonly reads: readonly string[];
  /** What it is read as where nothing is known of the dimension. */
  readonly sure?: string;
  /** What a refusal names: each can be typed back. */
  readonly choices: readonly string[];
  /** How many of the unit the name stands for, where that is not one: a stone is 14 lb. */
  readonly size?: number;
}

/** Names that people write, per unit, in small letters and without full stops and brackets. */
const names: Readonly<Record<string, string>> = {
  kg: "kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes",
  g: "gm|gms|gram|grams|gramme|grammes",
  mg: "mgs|milligram|milligrams",
  t: "tonne|tonnes|metric ton|metric tons",
  lb: "lbs|lbm|pound|pounds",
  oz: "oz av|oz avdp|ounce av|ounces av|avoirdupois ounce|avoirdupois ounces|oz wt|wt oz|oz weight|weight oz|ounces by weight|ounce by weight|oz by weight|oz by wt|dry oz|oz dry|dry ounce|dry ounces|ounces dry",
  "US ton": "us tons|ton us|tons us|short ton|short tons",
  grain: "grains",
  m: "meter|meters|metre|metres|mtr|mtrs",
  cm: "cms|centimeter|centimeters|centimetre|centimetres",
  mm: "mms|millimeter|millimeters|millimetre|millimetres",
  um: "micron|microns|micrometer|micrometers|micrometre|micrometres",
  km: "kms|kilometer|kilometers|kilometre|kilometres",
  in: "inch|inches|ins",
  ft: "foot|feet",
  yd: "yds|yard|yards",
  mi: "mile|miles",
  nmi: "nautical mile|nautical miles",
  "100 m2": "are|ares",
  "1000 ft2": "msf|ksf|kft2|ksqft|k sq ft",
  ha: "hectare|hectares|has",
  ft2: "sf",
  yd2: "sy",
  acre: "acres|ac|acs",
  L: "lt|ltr|ltrs|liter|liters|litre|litres",
  mL: "mls|cc|ccs|milliliter|milliliters|millilitre|millilitres|cubic centimeter|cubic centimeters|cm3",
  ft3: "cf",
  yd3: "cy",
  gal: "gals|gallon|gallons",
  qt: "qts|quart|quarts",
  pt: "pts|pint|pints",
  cup: "cups",
  "fl oz":
    "floz|fl ozs|fluid ounce|fluid ounces|fluid oz|fl ounce|fl ounces|oz fl|ounces fluid|liquid ounce|liquid ounces|liquid oz",
  tbsp: "tbsps|tbs|tbl|tblsp|tablespoon|tablespoons",
  tsp: "tsps|teaspoon|teaspoons",
  bu: "bushel|bushels",
  "acre-in": "acre in|ac in|acre inch|acre inches",
  "acre-ft": "acre ft|ac ft|acre foot|acre feet",
  "imp gal":
    "imperial gal|imperial gals|imperial gallon|imperial gallons|uk gal|uk gallon|uk gallons|imp gallon|imp gallons|gal imp",
  "imp fl oz":
    "imperial fl oz|imperial fluid ounce|imperial fluid ounces|uk fl oz|uk fluid ounce|uk fluid ounces|imp fluid ounce|imp fluid ounces",
  s: "sec|secs|second|seconds",
  min: "mins|minute|minutes",
  h: "hr|hrs|hour|hours",
  d: "day|days",
  week: "wk|wks|weeks",
  Pa: "pascal|pascals",
  kPa: "kilopascal|kilopascals",
  bar: "bars",
  psi: "psig|pounds per square inch|pound per square inch|lbf/in2",
  "°C d": "°c day|°c days|deg c d|deg c days|celsius degree days",
  "°F d": "°f day|°f days|deg f d|deg f days|fahrenheit degree days",
  "%": "percent|pct|per cent",
  count: "counts|ct|ea|each|plant|plants|plug|plugs|pieces|seeds",
  deg: "degs",
  rad: "radian|radians",
  "% grade": "%grade|% slope|percent grade|percent slope",
  "% w/w":
    "%w/w|% m/m|% by weight|% by wt|% by mass|% wt|% weight|wt%|wt %|weight %|weight percent|percent by weight|percent w/w",
  "ppm w/w": "ppmw|ppm by weight|ppm m/m|parts per million by weight|part per million by weight",
  "% v/v":
    "%v/v|% by volume|% by vol|% vol|% volume|vol%|vol %|volume %|volume percent|percent by volume|percent v/v",
  "ppm v/v": "ppmv|ppm by volume|parts per million by volume|part per million by volume",
  "% w/v": "%w/v|% m/v|percent w/v|percent weight by volume",
  "dS/m": "decisiemens per meter",
  "mS/cm": "mmho/cm|mmhos/cm|millisiemens per centimeter",
  "uS/cm": "umho/cm|umhos/cm|microsiemens per centimeter",
  "cmolc/kg": "cmol/kg|cmol+/kg|cmol c/kg",
  "meq/100 g": "meq/100g|me/100g|me/100 g|meq per 100 g|meq per 100g|milliequivalents per 100 grams",
  "meq/L": "me/l|meq per l|meq per liter|milliequivalents per liter",
  "mmolc/L": "mmolc per liter",
  "MJ/m2/d": "mj/m2/day|mj/m2 d",
  // names for a quotient
  "gal/acre": "gpa",
  "gal/min": "gpm",
  "gal/h": "gph",
  "gal/d": "gpd",
  "ft3/s": "cfs",
  "ft3/min": "cfm",
  "L/min": "lpm",
  "L/h": "lph",
  "mi/h": "mph",
  "nmi/h": "knot|knots|kn|kt|kts",
  "km/h": "kph|kmh|kmph",
  "ft/s": "fps",
  "ft/min": "fpm",
  "grain/gal": "gpg",
};

const one = (unit: string): NameReading => ({ reads: [unit], sure: unit, choices: [] });
const several = (reads: readonly string[], choices: readonly string[] = reads): NameReading => ({
  reads,
  choices,
});

/** Names that could mean several things, and names whose capitals count. */
const special = (name: string): NameReading | undefined => {
  switch (name) {
    case "g":
    case "h":
    case "s":
    case "d":
    case "L":
    case "m":
      return one(name);
    case "1":
      return one("1");
    case "l":
      return one("L");
    case '"':
      return one("in");
    case "'":
      return one("ft");
    case "t":
      return several(["t"], ["tonne", "US ton", "tsp"]);
    case "T":
      return several([], ["US ton", "tonne", "tbsp"]);
    case "M":
      return several([], ["m", "1000 ft2"]);
    case "A":
      return several([], ["acre"]);
    case "a":
      return several([], ["acre", "100 m2"]);
    case "c":
      return several([], ["°C", "cup"]);
    case "#":
      return several(["lb", "count"]);
    case "°":
      return several(["deg"], ["deg", "°F", "°C"]);
    case "K":
      return { reads: ["K", "°C diff"], sure: "K", choices: [] };
    case "Mg":
    case "MG":
      return several([], ["mg", "tonne"]);
    case "MM":
      return several(["mm"]);
    case "LT":
      return several([], ["L", "US ton", "tonne"]);
    case "ML":
    case "Ml":
      return several([], ["mL", "m3"]);
    default:
      return undefined;
  }
};

const unclear = (key: string): NameReading | undefined => {
  if (/^(?:°|deg |degrees? )? ?(?:f|fahrenheit)$|^degf$/.test(key)) {
    return { reads: ["°F", "°F diff"], sure: "°F", choices: [] };
  }
  if (/^(?:°|deg |degrees? )? ?(?:c|celsius|centigrade)$|^degc$/.test(key)) {
    return { reads: ["°C", "°C diff"], sure: "°C", choices: [] };
  }
  if (/^degrees?$/.test(key)) return several(["deg"], ["deg", "°F", "°C"]);
  if (/^kelvins?$/.test(key)) return { reads: ["K", "°C diff"], sure: "K", choices: [] };
  if (/^(?:oz|ozs|ounces?)$/.test(key)) return several(["oz"], ["oz av", "fl oz"]);
  if (/^tons?$/.test(key)) return several([], ["US ton", "tonne"]);
  if (/^(?:cwts?|hundredweights?)$/.test(key)) return several([], ["short cwt", "long cwt"]);
  // a spoon and a cup of Great Britain are metric, and of another size
  if (/^imp (?:cups?|tbsps?|tablespoons?|tsps?|teaspoons?|bu|bushels?)$/.test(key))
    return several([], [key.replace("imp", "US")]);
  if (/^grs?$/.test(key)) return several([], ["grain", "g"]);
  if (/^(?:ppm|parts? per million)$/.test(key)) return several([], ["ppm w/w", "ppm v/v", "mg/L"]);
  if (/^(?:gdd|dd|growing degree days?|degree days?)$/.test(key)) return several([], ["°F d", "°C d"]);
  return undefined;
};

/**
 * Measures that are multiples of a unit: an imperial pint is 1/8 of the imperial gallon (UK Units of Measurement
 * Regulations 1995); a stone is 14 lb (UK Weights and Measures Act 1985, schedule 1); the short and the long hundredweight
 * are 100 and 112 lb and the long ton 2240 lb (NIST Handbook 44, appendix C). All from memory.
 */
const multiples: readonly (readonly [name: RegExp, unit: string, size: number])[] = [
  [/^(?:imp|imperial|uk) (?:pts?|pints?)$/, "imp gal", 1 / 8],
  [/^(?:imp|imperial|uk) (?:qts?|quarts?)$/, "imp gal", 1 / 4],
  [/^stones?$/, "lb", 14],
  [/^(?:short|us) (?:cwts?|hundredweights?)$/, "lb", 100],
  [/^(?:long|imp|imperial|uk) (?:cwts?|hundredweights?)$/, "lb", 112],
  [/^(?:long|imp|imperial|uk) tons?$/, "lb", 2240],
];

const multiple = (key: string): NameReading | undefined => {
  const row = multiples.find(([name]) => name.test(key));
  return row === undefined ? undefined : { ...one(row[1]), size: row[2] };
};

/** The currencies that are known by their code alone. LBS and GAL have the form of a code, too. */
export const currencies: RegExp =
  /^(?:USD|CAD|AUD|NZD|EUR|GBP|CHF|SEK|NOK|DKK|PLN|CZK|JPY|INR|MXN|BRL|ZAR|SGD|HKD)$/;

let table: Map<string, string> | undefined;

/** Every written name with the unit that it means; names that could mean several are not in it. */
export const unitNames = (): ReadonlyMap<string, string> => {
  if (table === undefined) {
    table = new Map();
    for (const unit of allBaseUnits()) {
      for (const name of [unit, unitName(unit, 1), unitName(unit)]) {
        const key = keyOf(name);
        if (key.length > 1 && unclear(key) === undefined) table.set(key, unit);
      }
    }
    for (const [unit, list] of Object.entries(names))
      for (const name of list.split("|")) table.set(name, unit);
  }
  return table;
};

const keyOf = (name: string): string =>
  name
    .replace(/[()^]/g, "")
    // a full stop after a letter abbreviates; in 1.000 it means something
    .replace(/([a-z])\./gi, "$1")
    // not in m-2, which is one over m2
    .replace(/-(?!\d)/g, " ")
    .replace(/ {2,}/g, " ")
    .trim()
    .toLowerCase();

/** `sq ft`, `square feet`, `ft squared`, `cu yd`, `1,000 sq ft`, `US gal`. */
const composed = (key: string): string | undefined => {
  const lot = /^(?:1,?000|1 000|thousand|100) ?(\D.*)$/.exec(key);
  if (lot !== null) {
    const unit = `${key.startsWith("100 ") || /^100\D/.test(key) ? "100" : "1000"} ${plainName(lot[1] as string)}`;
    return isBaseUnit(unit) ? unit : undefined;
  }
  const square = /^(?:square|sq) ?(.+)$/.exec(key)?.[1] ?? /^(.+?) ?(?:2|squared|square|sq)$/.exec(key)?.[1];
  const cube = /^(?:cubic|cu) ?(.+)$/.exec(key)?.[1] ?? /^(.+?) ?(?:3|cubed|cubic|cu)$/.exec(key)?.[1];
  const length = square ?? cube;
  if (length !== undefined) {
    const unit = `${length === "m" ? "m" : unitNames().get(length)}${square === undefined ? 3 : 2}`;
    return isBaseUnit(unit) ? unit : undefined;
  }
  const us = /^(?:us|u s) (.+)$/.exec(key)?.[1] ?? /^(.+) us$/.exec(key)?.[1];
  if (us !== undefined) {
    const unit = unitNames().get(us);
    return unit !== undefined && /^(?:gal|qt|pt|cup|fl oz|tbsp|tsp|bu|acre)$/.test(unit) ? unit : undefined;
  }
  return undefined;
};

const plainName = (key: string): string | undefined => unitNames().get(key) ?? composed(key);

/** What a written name of one unit means, in cleaned text; `undefined` where it is none. */
export const readUnitName = (text: string): NameReading | undefined => {
  const name = text.trim();
  if (name === "" || name.length > 60) return undefined;
  const letter = special(name) ?? special(name.replace(/\.$/, ""));
  if (letter !== undefined) return letter;
  if (/^M ?(?:sq\.? ?ft\.?|ft\^?2|square f(?:oo|ee)t)$/.test(name)) return one("1000 ft2");
  const key = keyOf(name);
  const doubtful = unclear(key);
  if (doubtful !== undefined) return doubtful;
  if ((name.length > 1 && isBaseUnit(name)) || /^money:[A-Z]{3}$/.test(name)) return one(name);
  if (currencies.test(name)) return one(`money:${name}`);
  if (key.length < 2 && key !== "%") return undefined;
  const unit = key === "%" ? "%" : plainName(key);
  return unit === undefined ? multiple(key) : one(unit);
};
