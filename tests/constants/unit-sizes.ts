// The sizes of the base units, transcribed a second time and independently of the table in the source:
// as a factor to another unit, with the digits that the source prints.

/** One printed factor: `1 unit = printed reference`. */
export interface PrintedFactor {
  readonly unit: string;
  readonly reference: string;
  /** As printed, without spaces between the digits. */
  readonly printed: string;
  /** Whether the source marks it as exact; else it is rounded to the digits printed. */
  readonly exact: boolean;
  readonly source: string;
  /** How the figure reached this file. */
  readonly reached: "read" | "from memory";
}

const sp811 = "NIST Special Publication 811 (2008), appendix B.8, factors for units listed alphabetically";
const hb44 = "NIST Handbook 44, appendix C, General Tables of Units of Measurement";
const si = "BIPM, The International System of Units (SI brochure), 9th edition, 2019";
const uk = "UK Units of Measurement Regulations 1995";
const fao = "FAO Irrigation and Drainage Paper 56 (1998), table 3, conversion factors for radiation";
const ussl =
  "USDA Agriculture Handbook 60 (1954) and its SI restatements: 1 mmho/cm = 1 dS/m, 1 meq/100 g = 1 cmolc/kg";

const rounded = (unit: string, printed: string, reference: string): PrintedFactor => ({
  unit,
  reference,
  printed,
  exact: false,
  source: sp811,
  reached: "from memory",
});
const exact = (unit: string, printed: string, reference: string, source: string): PrintedFactor => ({
  unit,
  reference,
  printed,
  exact: true,
  source,
  reached: "from memory",
});

export const printedFactors: readonly PrintedFactor[] = [
  // mass
  exact("g", "1E-03", "kg", si),
  exact("mg", "1E-06", "kg", si),
  exact("t", "1E+03", "kg", sp811),
  exact("kg", "1E+03", "g", si),
  rounded("lb", "4.535924E-01", "kg"),
  exact("lb", "453.59237", "g", hb44),
  rounded("oz", "2.834952E-02", "kg"),
  exact("oz", "28.349523125", "g", hb44),
  rounded("US ton", "9.071847E+02", "kg"),
  exact("US ton", "2000", "lb", hb44),
  exact("grain", "6.479891E-05", "kg", sp811),
  // length
  exact("m", "100", "cm", si),
  exact("cm", "1E-02", "m", si),
  exact("mm", "1E-03", "m", si),
  exact("um", "1E-06", "m", sp811),
  exact("km", "1E+03", "m", si),
  exact("in", "2.54E-02", "m", sp811),
  exact("ft", "3.048E-01", "m", sp811),
  exact("yd", "9.144E-01", "m", sp811),
  exact("mi", "1.609344E+03", "m", sp811),
  exact("nmi", "1.852E+03", "m", sp811),
  // area
  exact("m2", "1E+04", "cm2", si),
  exact("cm2", "1E-04", "m2", si),
  exact("100 m2", "1E+02", "m2", sp811),
  exact("ha", "1E+04", "m2", sp811),
  exact("in2", "6.4516E-04", "m2", sp811),
  exact("ft2", "9.290304E-02", "m2", sp811),
  rounded("yd2", "8.361274E-01", "m2"),
  exact("1000 ft2", "9.290304E+01", "m2", sp811),
  exact("acre", "43560", "ft2", hb44),
  { ...exact("acre", "4046.8564224", "m2", hb44), reached: "read" },
  // volume
  exact("m3", "1E+03", "L", si),
  exact("L", "1E-03", "m3", sp811),
  exact("mL", "1E-06", "m3", sp811),
  rounded("in3", "1.638706E-05", "m3"),
  rounded("ft3", "2.831685E-02", "m3"),
  rounded("yd3", "7.645549E-01", "m3"),
  rounded("gal", "3.785412E-03", "m3"),
  { ...exact("gal", "231", "in3", hb44), reached: "read" },
  rounded("qt", "9.463529E-04", "m3"),
  rounded("pt", "4.731765E-04", "m3"),
  rounded("cup", "2.365882E-04", "m3"),
  rounded("fl oz", "2.957353E-05", "m3"),
  rounded("tbsp", "1.478676E-05", "m3"),
  rounded("tsp", "4.928922E-06", "m3"),
  rounded("bu", "3.523907E-02", "m3"),
  exact("bu", "2150.42", "in3", hb44),
  // the older tables print 1.233489E+03, which is made of survey feet
  exact("acre-ft", "43560", "ft3", hb44),
  exact("acre-in", "3630", "ft3", hb44),
  exact("imp gal", "4.54609E-03", "m3", uk),
  rounded("imp fl oz", "2.841306E-05", "m3"),
  // time
  exact("s", "1", "s", si),
  exact("min", "6E+01", "s", sp811),
  exact("h", "3.6E+03", "s", sp811),
  exact("d", "8.64E+04", "s", sp811),
  exact("week", "7", "d", si),
  // pressure
  exact("Pa", "1E-03", "kPa", si),
  exact("kPa", "1E+03", "Pa", si),
  exact("bar", "1E+05", "Pa", sp811),
  rounded("psi", "6.894757E+03", "Pa"),
  // differences of temperature and their sums over days
  rounded("°F diff", "5.555556E-01", "°C diff"),
  exact("°C diff", "1.8", "°F diff", si),
  exact("°C d", "1.8", "°F d", si),
  rounded("°F d", "5.555556E-01", "°C d"),
  // angle
  rounded("deg", "1.745329E-02", "rad"),
  { ...rounded("rad", "57.29577951308", "deg"), source: "180 divided by pi, any table of constants" },
  // pure numbers
  exact("%", "0.01", "1", si),
  exact("1", "100", "%", si),
  exact("% grade", "0.01", "m/m", "definition of percent"),
  exact("% w/w", "10", "g/kg", "definition of percent"),
  exact("ppm w/w", "1", "mg/kg", "definition of part per million"),
  exact("% v/v", "10", "mL/L", "definition of percent"),
  exact("ppm v/v", "1E-03", "mL/L", "definition of part per million"),
  exact("% w/v", "10", "g/L", "percent weight by volume: grams in 100 mL"),
  // measured quotients
  exact("dS/m", "1", "mS/cm", ussl),
  exact("mS/cm", "1000", "uS/cm", ussl),
  exact("uS/cm", "0.001", "dS/m", ussl),
  exact("meq/100 g", "1", "cmolc/kg", ussl),
  exact("cmolc/kg", "1", "meq/100 g", ussl),
  exact("meq/L", "1", "mmolc/L", ussl),
  exact("mmolc/L", "1", "meq/L", ussl),
  exact("W/m2", "0.0864", "MJ/m2/d", fao),
  { ...rounded("MJ/m2/d", "11.574", "W/m2"), source: fao },
];

/** Points on the temperature scales: `a` of one is `b` of the other. NIST SP 811, B.9; SI brochure. */
export const temperaturePoints = [
  { a: 32, from: "°F", b: 0, to: "°C" },
  { a: 212, from: "°F", b: 100, to: "°C" },
  { a: -40, from: "°F", b: -40, to: "°C" },
  { a: 0, from: "°C", b: 273.15, to: "K" },
  { a: 273.15, from: "K", b: 32, to: "°F" },
] as const;

/** Units that are the only one of their dimension: there is no factor to be wrong. */
export const soleUnits: readonly string[] = ["count", "MJ/m2"];
