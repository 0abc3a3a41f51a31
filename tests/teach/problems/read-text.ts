// Reads a problem as a learner does: the amounts of its text in order, and what it asks for. It knows the library's words,
// not its code: its own constants are those of NIST Handbook 44, appendix C.

const foot = 0.3048;
const pound = 0.45359237;
const gallon = 231 * 0.0254 ** 3;

const sizes: Readonly<Record<string, number>> = {
  lb: pound,
  oz: pound / 16,
  kg: 1,
  g: 0.001,
  "US ton": 2000 * pound,
  tons: 2000 * pound,
  ton: 2000 * pound,
  t: 1000,
  mg: 1e-6,
  ft: foot,
  inches: foot / 12,
  inch: foot / 12,
  yards: 3 * foot,
  m: 1,
  cm: 0.01,
  mm: 0.001,
  "sq ft": foot ** 2,
  "1,000 sq ft": 1000 * foot ** 2,
  "acre-ft": 43_560 * foot ** 3,
  acres: 43_560 * foot ** 2,
  acre: 43_560 * foot ** 2,
  ha: 10_000,
  "m²": 1,
  "100 m²": 100,
  gallons: gallon,
  gal: gallon,
  pt: gallon / 8,
  "fl oz": gallon / 128,
  L: 0.001,
  mL: 1e-6,
  "cu yd": 27 * foot ** 3,
  "m³": 1,
  seconds: 1,
  second: 1,
  minutes: 60,
  minute: 60,
  hours: 3600,
  hour: 3600,
  h: 3600,
  days: 86_400,
  day: 86_400,
  d: 86_400,
  qt: gallon / 4,
  ppm: 1,
  meq: 1,
  psi: (pound * 9.80665) / (foot / 12) ** 2,
  bar: 100_000,
  mph: (5280 * foot) / 3600,
  "km/h": 1000 / 3600,
  "°F": 1,
  "°C": 1,
  "°F degree-days": 1,
  "°C degree-days": 1,
  "%": 1,
  percent: 1,
  dollars: 1,
  euros: 1,
  min: 60,
};

const names = Object.keys(sizes).sort((a, b) => b.length - a.length);
const unit = `(?:${names.join("|")})`;
const amountOf = new RegExp(
  `([$€]?)(\\d/\\d|-?\\d[\\d,]*(?:\\.\\d+)?)(?: ?(${unit})(?: per (${unit})|/(L|min))?(?![\\w²³/]))?`,
  "g",
);

/** The size of a unit in SI units. */
export const sizeOf = (name: string): number => {
  const found = sizes[name];
  if (found === undefined) throw new Error(`no size of ${name}`);
  return found;
};

const plain = (digits: string): number => {
  const [top, bottom] = digits.replaceAll(",", "").split("/");
  return bottom === undefined ? Number(top) : Number(top) / Number(bottom);
};

/** The factor from a unit as it is written, `lb per 1,000 sq ft`, to SI units. */
const factorOf = (words: string): number => {
  const [top = "", bottom] = words.split(/ per |(?<=gal|L|lb)\/(?=min)/);
  return sizeOf(top.trim()) / (bottom === undefined ? 1 : sizeOf(bottom.trim()));
};

export interface ReadText {
  readonly text: string;
  readonly level: number;
  /** Every amount with a unit, in SI units; percents and money as printed. */
  readonly q: readonly number[];
  /** Every number without a unit, outside of a grade. */
  readonly bare: readonly number[];
  readonly grade: readonly number[];
}

export interface ReadAsk {
  /** SI units, or 1, to the unit asked for. */
  readonly factor: number;
  readonly decimals: number;
}

const places = ["a whole number", "one decimal", "two decimals", "three decimals"];

/** What the last sentence asks for. */
export const readAsk = (text: string): ReadAsk => {
  const last = /Answer (?:in|with) (.+?)(?:, to (.+))?\.$/.exec(text);
  if (last === null) throw new Error(`no question in ${text}`);
  const [, words = "", digits] = last;
  if (words.startsWith("whole ")) return { factor: 1, decimals: 0 };
  if (digits === "the cent") return { factor: factorOf(words), decimals: 2 };
  if (words === "the number") return { factor: 1, decimals: places.indexOf(digits ?? "") };
  const named = words.replace(
    / of (product|nitrogen|phosphorus|phosphate|potassium|potash|active ingredient|pure live seed)/,
    "",
  );
  return { factor: factorOf(named), decimals: places.indexOf(digits ?? "") };
};

/** A text in which `0.6 lb of nitrogen per 1,000 sq ft` is 0.6 lb per 1,000 sq ft. */
export const withoutStuff = (text: string): string =>
  text.replace(
    / of (?:nitrogen|phosphorus \(P\)|active ingredient|product|fertilizer|spray|pure live seed|calcium carbonate equivalent|fresh clippings)(?= per )/g,
    "",
  );

/** The numbers of the story. */
export const readStory = (whole: string, level: number): ReadText => {
  const text = whole.slice(0, whole.lastIndexOf(" Answer "));
  const grade = (/\b(\d+)-(\d+)-(\d+)\b/.exec(text) ?? []).slice(1).map(Number);
  const rest = withoutStuff(text.replace(/\b\d+-\d+-\d+\b/g, "grade"));
  const q: number[] = [];
  const bare: number[] = [];
  for (const [, money, digits = "", top, bottom, below] of rest.matchAll(amountOf)) {
    if (top === undefined && !money) bare.push(plain(digits));
    else q.push((plain(digits) * (top === undefined ? 1 : sizeOf(top))) / sizeOf(bottom ?? below ?? "%"));
  }
  return { text, level, q, bare, grade };
};
