import { hasOwn } from "../errors/has-own.js";
import { isBaseUnit, unitDimension } from "../unit/unit-facts.js";
import { stemOf, unitNames } from "./unit-names-written.js";

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

const one = (unit: string, size?: number): NameReading => ({
  reads: [unit],
  sure: unit,
  choices: [],
  ...(size !== undefined && { size }),
});

/** `t>tonne|US ton`: may be read as `t`, and a refusal names `tonne` and `US ton`. The choices are the readings where none stand. */
const several = (text: string): NameReading => {
  const [reads, choices = reads] = text.split(">") as [string, string?];
  const list = (names: string): readonly string[] => (names === "" ? [] : names.split("|"));
  return { reads: list(reads), choices: list(choices) };
};

/** A scale of temperature or a difference on it: the expected dimension says which. */
const degrees = (scale: string, difference = scale): NameReading => ({
  reads: [scale, `${difference} diff`],
  sure: scale,
  choices: [],
});

/** Names of one letter, whose capitals count, and names in capitals that could mean several things. */
const letters: Readonly<Record<string, string>> = {
  l: "L",
  H: "h",
  '"': "in",
  "'": "ft",
  t: "t>tonne|US ton|tsp",
  T: ">US ton|tonne|tbsp",
  M: ">m|1000 ft2",
  A: ">acre",
  a: ">acre|100 m2",
  c: ">°C|cup",
  "#": "lb|count",
  "°": "deg>deg|°F|°C",
  Mg: ">mg|tonne",
  MG: ">mg|tonne",
  MM: "mm>mm",
  LT: ">L|US ton|tonne",
  MT: ">tonne",
  ML: ">mL|m3",
  Ml: ">mL|m3",
};

const special = (name: string): NameReading | undefined => {
  if (/^[ghsdLm1]$/.test(name)) return one(name);
  if (name === "K") return degrees("K", "°C");
  const text = hasOwn(letters, name) ? letters[name] : undefined;
  return text === undefined ? undefined : /[>|]/.test(text) ? several(text) : one(text);
};

/** Words that could mean several units. */
const doubtful: readonly (readonly [name: RegExp, readings: string])[] = [
  [/^degrees?$/, "deg>deg|°F|°C"],
  [/^(?:ozs?|ounces?)$/, "oz>oz av|fl oz"],
  [/^tons?$/, ">US ton|tonne"],
  [/^(?:cwts?|hundredweights?)$/, ">short cwt|long cwt"],
  [/^grs?$/, ">grain|g"],
  // 100 kg, and 100 lb in old books
  [/^(?:qtls?|quintals?)$/, ">dt|short cwt"],
  [/^q$/, ">dt|short cwt|qt"],
  [/^(?:ppm|parts? per million)$/, ">ppm w/w|ppm v/v|mg/L"],
  [/^(?:g?dd|(?:growing )?degree days?|day degrees?)$/, ">°F d|°C d"],
];

const unclear = (key: string): NameReading | undefined => {
  const scale = /^(?:°|deg(?:rees?)?)? ?(?:(f|fahrenheit)|c|celsius|centigrade)$/.exec(key);
  if (scale !== null) return degrees(scale[1] === undefined ? "°C" : "°F");
  if (/^kelvins?$/.test(key)) return degrees("K", "°C");
  const readings = doubtful.find(([name]) => name.test(key))?.[1];
  return readings === undefined ? undefined : several(readings);
};

/** The currencies that are known by their code alone. LBS and GAL have the form of a code, too. */
export const currencies: RegExp =
  /^(?:USD|CAD|AUD|NZD|EUR|GBP|CHF|SEK|NOK|DKK|PLN|CZK|JPY|CNY|INR|MXN|BRL|ZAR|SGD|HKD)$/;

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

const baseUnit = (unit: string): string | undefined => (isBaseUnit(unit) ? unit : undefined);

/** `sq ft`, `square feet`, `ft squared`, `cu yd`, `1,000 sq ft`. */
const powered = (key: string): string | undefined => {
  const lot = /^(?:1,?000|1 000|1k|(?:an? |one )?thousand|(100)) ?(\D.*)$/.exec(key);
  if (lot !== null) return baseUnit(`${lot[1] ?? 1000} ${plainName(lot[2] as string)}`);
  const square = /^(?:square|sq) ?(.+)$/.exec(key)?.[1] ?? /^(.+?) ?(?:2|squared|square|sq)$/.exec(key)?.[1];
  const length =
    square ?? /^(?:cubic|cu) ?(.+)$/.exec(key)?.[1] ?? /^(.+?) ?(?:3|cubed|cubic|cu)$/.exec(key)?.[1];
  if (length === undefined) return undefined;
  return baseUnit(`${length === "m" ? "m" : unitNames().get(length)}${square === undefined ? 3 : 2}`);
};

/** `US gal`, `acres US`. */
const customary = (key: string): string | undefined => {
  const name = /^(?:us|u s) (.+)$/.exec(key)?.[1] ?? /^(.+) us$/.exec(key)?.[1];
  const unit = name === undefined ? undefined : (unitNames().get(name) ?? ounces(name));
  return /^(?:gal|qt|pt|cup|fl oz|tbsp|tsp|bu|acre)$/.test(`${unit}`) ? unit : undefined;
};

/** Ounces of which the text says that they are of weight or of volume. */
const ounces = (key: string): string | undefined =>
  /^(?:(?:ozs?|ounces?) (?:av(?:dp)?|dry|(?:by )?(?:wt|weight))|(?:avoirdupois|dry|wt|weight) (?:oz|ounces?))$/.test(
    key,
  )
    ? "oz"
    : /^(?:(?:fl|fluid|liq|liquid) ?(?:ozs?|ounces?)|(?:oz|ounces?) (?:fl|fluid))$/.test(key)
      ? "fl oz"
      : undefined;

/** `% by weight`, `vol %`, `ppm m/m`: what is divided by what. */
const share = (key: string): string | undefined => {
  const said =
    /^(?:(ppm|parts? per million)|%|percent|pct|per cent) ?(?:by )?(?:(w\/w|m\/m|wt(?:\/wt)?|weight|mass)|(v\/v|vol(?:\/vol)?|volume)|[wm]\/v|weight by volume)$/.exec(
      key,
    );
  if (said !== null) return baseUnit(`${said[1] ? "ppm" : "%"} ${said[2] ? "w/w" : said[3] ? "v/v" : "w/v"}`);
  const before = /^(?:(w)(?:t|eight)|vol(?:ume)?) ?(?:%|percent)$/.exec(key);
  return before === null ? undefined : before[1] ? "% w/w" : "% v/v";
};

/** A unit that has a slash of its own, written out: `milliequivalents per 100 grams`. */
const slashed = (key: string): string | undefined => {
  const parts = key.split(/ ?\/ ?| per /);
  if (parts.length < 2) return undefined;
  const name = (part: string): string => stemOf(part) ?? plainName(part)?.toLowerCase() ?? part;
  return unitNames().get(parts.map(name).join("/"));
};

const plainName = (key: string): string | undefined =>
  unitNames().get(key) ?? powered(key) ?? customary(key) ?? ounces(key) ?? share(key);

/**
 * Measures of Great Britain by the unit of the name without `imp`: the imperial gallon has 160 fluid ounces, 8 pints and 4
 * quarts; the long hundredweight is 112 lb and the long ton 2240 lb. Sources: see {@link multiple}.
 */
const imperial = (name: string, sure: boolean): NameReading | undefined => {
  if (/^(?:cwts?|hundredweights?)$/.test(name)) return one("lb", 112);
  // a ton of Britain is a long one on old labels and a tonne in the trade of today
  if (/^tons?$/.test(name)) return sure ? one("lb", 2240) : several(">long ton|tonne");
  const unit = /\bus\b/.test(name) ? undefined : plainName(name);
  switch (unit) {
    case "gal":
    case "fl oz":
      return one(`imp ${unit}`);
    case "pt":
      return one("imp gal", 1 / 8);
    case "qt":
      return one("imp gal", 1 / 4);
    case "cup":
    case "tbsp":
    case "tsp":
    case "bu":
      // a spoon and a cup of Great Britain are metric, and of another size
      return several(`>US ${unit}`);
    default:
      return undefined;
  }
};

/**
 * Measures that are multiples of a unit.
 *
 * Sources: UK Units of Measurement Regulations 1995 (SI 1995/1804), schedule: gallon 4.54609 L, quart 1.1365225 L, pint
 * 0.56826125 L, fluid ounce 28.4130625 mL, stone 6.35029318 kg, hundredweight 50.80234544 kg, ton 1.0160469088 t, which are
 * 1/4, 1/8 and 1/160 of the gallon and 14, 112 and 2240 lb; NIST Handbook 44, appendix C, avoirdupois units of mass:
 * a hundredweight of 100 lb ("short"), a long one of 112 lb, a long ton of 2240 lb. `tests/published` computes them.
 */
const multiple = (key: string): NameReading | undefined => {
  const long = /^long ((?:cwt|hundredweight|ton)s?)$/.exec(key);
  const said = long ?? /^(?:imp|imperial|u ?k) (.+)$/.exec(key) ?? /^(.+) (?:imp|imperial|u ?k)$/.exec(key);
  const name = said?.[1];
  if (name !== undefined) return imperial(name, !key.startsWith("imp "));
  if (/^stones?$/.test(key)) return one("lb", 14);
  return /^(?:short|us) (?:cwts?|hundredweights?)$/.test(key) ? one("lb", 100) : undefined;
};

/** Multiples that metric labels and meters print, by the prefix: `hL`, `MPa`, `dt`; micrograms and microliters. */
const prefixed: readonly (readonly [name: RegExp, unit: string, size: number])[] = [
  [/^(?:kl|kilolit(?:er|re)s?)$/, "m3", 1],
  [/^(?:hl|hectolit(?:er|re)s?)$/, "L", 100],
  [/^(?:dl|decilit(?:er|re)s?)$/, "L", 0.1],
  [/^(?:cl|centilit(?:er|re)s?)$/, "mL", 10],
  [/^(?:ul|microlit(?:er|re)s?)$/, "mL", 0.001],
  [/^(?:ug|mcg|micrograms?)$/, "mg", 0.001],
  [/^(?:dts?|decitonnes?)$/, "kg", 100],
  [/^(?:km2|(?:sq|square) (?:km|kilomet(?:er|re)s?))$/, "ha", 100],
  [/^(?:mpa|megapascals?)$/, "kPa", 1000],
  [/^(?:hpa|hectopascals?|mbars?|millibars?)$/, "kPa", 0.1],
  [/^ms\/m$/, "dS/m", 0.01],
];

const metricMultiple = (key: string): NameReading | undefined => {
  const found = prefixed.find(([name]) => name.test(key));
  return found && one(found[1], found[2]);
};

/** What a written name of one unit means, in cleaned text; `undefined` where it is none. */
export const readUnitName = (text: string): NameReading | undefined => {
  const name = text.trim();
  if (name.length > 60) return undefined;
  const letter = special(name) ?? special(name.replace(/\.$/, ""));
  if (letter !== undefined) return letter;
  if (/^M ?(?:sq\.? ?ft\.?|ft\^?2|square f(?:oo|ee)t)$/.test(name)) return one("1000 ft2");
  const key = keyOf(name);
  const doubt = unclear(key);
  if (doubt !== undefined) return doubt;
  if (/^money:[A-Z]{3}$/.test(name)) return one(name);
  if (currencies.test(name)) return one(`money:${name}`);
  const unit = key === "%" ? key : (plainName(key) ?? slashed(key));
  return unit === undefined ? (multiple(key) ?? metricMultiple(key)) : one(unit);
};

/** The units that the choices of a typed text stand for: `t` for `tonne`, `oz` for `oz av`. */
export const unitsIn = (choices: readonly string[]): readonly string[] =>
  choices.flatMap((choice) => {
    const parts = choice.split("/").map((part) => readUnitName(part));
    // 2 long cwt are not 2 lb
    if (parts.some((part) => part?.size !== undefined)) return [];
    const unit = parts.map((part, i) => part?.sure ?? choice.split("/")[i]).join("/");
    return unitDimension(unit) === undefined ? [] : [unit];
  });
