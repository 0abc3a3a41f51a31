import { frozen } from "../errors/frozen.js";
/**
 * Every base unit: its dimension and its exact size.
 *
 * A size is a number of SI units of the dimension (kg, m, m2, m3, s, Pa, ...), a product of numbers,
 * or a multiple of another unit of the table (`"12 in"`). All are exact by definition, so a ratio of
 * two units is an exact fraction; only the radian is irrational. US customary measures, unless the
 * name says imperial.
 *
 * Sources:
 * - yard 0.9144 m, pound 0.45359237 kg: international yard and pound agreement of 1959, as in
 *   NIST Handbook 44 (appendix C). The foot is the international foot (the US survey foot was
 *   deprecated after 31 December 2022, Federal Register 85 FR 62698).
 * - gallon 231 in3, bushel 2150.42 in3, fluid ounce 1/128 gallon, acre 43 560 ft2, short ton 2000 lb,
 *   grain 1/7000 lb: NIST Handbook 44, appendix C.
 * - imperial gallon 4.54609 L, fluid ounce 28.4130625 mL (1/160 of it): UK Units of Measurement Regulations 1995, schedule.
 * - pound-force: standard gravity 9.80665 m/s2 (3rd CGPM, 1901). bar 100 kPa.
 * - nautical mile 1852 m: BIPM SI brochure, table 8 of the 8th edition. A knot is one of them an hour.
 * - kelvin and degree Celsius 273.15 apart, degree Fahrenheit 5/9 K: BIPM SI brochure; NIST SP 811.
 */
export const unitSizes = {
  // in kg
  mass: {
    kg: "1",
    g: "0.001",
    mg: "0.000001",
    t: "1000",
    lb: "0.45359237",
    oz: "1/16 lb",
    "US ton": "2000 lb",
    grain: "1/7000 lb",
  },
  // in m
  length: {
    m: "1",
    cm: "0.01",
    mm: "0.001",
    um: "0.000001",
    km: "1000",
    in: "0.0254",
    ft: "12 in",
    yd: "36 in",
    mi: "5280 ft",
    nmi: "1852",
  },
  // in m2
  area: {
    m2: "1",
    cm2: "0.0001",
    "100 m2": "100",
    ha: "10000",
    in2: "0.0254*0.0254",
    ft2: "144 in2",
    yd2: "9 ft2",
    "1000 ft2": "1000 ft2",
    acre: "43560 ft2",
  },
  // in m3
  volume: {
    m3: "1",
    L: "0.001",
    mL: "0.000001",
    in3: "0.0254*0.0254*0.0254",
    ft3: "1728 in3",
    yd3: "27 ft3",
    gal: "231 in3",
    qt: "1/4 gal",
    pt: "1/8 gal",
    cup: "1/16 gal",
    "fl oz": "1/128 gal",
    tbsp: "1/256 gal",
    tsp: "1/768 gal",
    bu: "2150.42 in3",
    "acre-in": "3630 ft3",
    "acre-ft": "43560 ft3",
    "imp gal": "0.00454609",
    "imp fl oz": "1/160 imp gal",
  },
  // in s
  time: { s: "1", min: "60", h: "3600", d: "86400", week: "604800" },
  // in Pa
  pressure: { Pa: "1", kPa: "1000", bar: "100000", psi: "0.45359237*9.80665/0.00064516" },
  // scales; where their zero lies is in zeroPoints
  temperature: { "°C": "1", "°F": "5/9", K: "1" },
  "temperature difference": { "°C diff": "1", "°F diff": "5/9" },
  // in K s
  "degree-days": { "°C d": "86400", "°F d": "48000" },
  "1": { "1": "1", "%": "0.01" },
  count: { count: "1" },
  // in degrees; 180/pi is irrational, so the radian is rounded
  angle: { deg: "1", rad: "57.29577951308232" },
  // rise over run
  "length/length": { "% grade": "0.01" },
  // fractions: what is divided by what is part of the unit
  "mass/mass": { "% w/w": "0.01", "ppm w/w": "0.000001" },
  "volume/volume": { "% v/v": "0.01", "ppm v/v": "0.000001" },
  // 1 g in 100 mL, in kg/m3
  "mass/volume": { "% w/v": "10" },
  // in S/m
  conductivity: { "dS/m": "0.1", "mS/cm": "0.1", "uS/cm": "0.0001" },
  // moles of charge per kg
  "exchange capacity": { "cmolc/kg": "0.01", "meq/100 g": "0.01" },
  // moles of charge per m3
  "charge/volume": { "meq/L": "1", "mmolc/L": "1" },
  // in J/m2
  "radiant exposure": { "MJ/m2": "1000000" },
  // in W/m2
  irradiance: { "MJ/m2/d": "1000000/86400", "W/m2": "1" },
} as const;

/** The same, frozen: what the package hands out. */
export const unitTable: typeof unitSizes = /* @__PURE__ */ frozen(unitSizes);

/** What a temperature scale reads at 0 °C, where that is not 0. */
export const zeroPoints: Readonly<Record<string, number>> = { "°F": 32, K: 273.15 };

type UnitTable = typeof unitTable;

/** The base units of one dimension. */
export type BaseUnitOf<D extends string> = D extends keyof UnitTable
  ? Extract<keyof UnitTable[D], string>
  : never;

/** The units that stand alone; quotients of them are units too, such as `"lb/acre"`. */
export type BaseUnit = keyof BaseUnitDimensions;

/** The dimension of a base unit. */
export type BaseUnitDimension<U extends BaseUnit> = BaseUnitDimensions[U];

/**
 * The dimension of every base unit. It follows from the table, and a test compares the two; written out,
 * it saves each user's compiler from working it out.
 */
export interface BaseUnitDimensions {
  readonly kg: "mass";
  readonly g: "mass";
  readonly mg: "mass";
  readonly t: "mass";
  readonly lb: "mass";
  readonly oz: "mass";
  readonly "US ton": "mass";
  readonly grain: "mass";
  readonly m: "length";
  readonly cm: "length";
  readonly mm: "length";
  readonly um: "length";
  readonly km: "length";
  readonly in: "length";
  readonly ft: "length";
  readonly yd: "length";
  readonly mi: "length";
  readonly nmi: "length";
  readonly m2: "area";
  readonly cm2: "area";
  readonly "100 m2": "area";
  readonly ha: "area";
  readonly in2: "area";
  readonly ft2: "area";
  readonly yd2: "area";
  readonly "1000 ft2": "area";
  readonly acre: "area";
  readonly m3: "volume";
  readonly L: "volume";
  readonly mL: "volume";
  readonly in3: "volume";
  readonly ft3: "volume";
  readonly yd3: "volume";
  readonly gal: "volume";
  readonly qt: "volume";
  readonly pt: "volume";
  readonly cup: "volume";
  readonly "fl oz": "volume";
  readonly tbsp: "volume";
  readonly tsp: "volume";
  readonly bu: "volume";
  readonly "acre-in": "volume";
  readonly "acre-ft": "volume";
  readonly "imp gal": "volume";
  readonly "imp fl oz": "volume";
  readonly s: "time";
  readonly min: "time";
  readonly h: "time";
  readonly d: "time";
  readonly week: "time";
  readonly Pa: "pressure";
  readonly kPa: "pressure";
  readonly bar: "pressure";
  readonly psi: "pressure";
  readonly "°C": "temperature";
  readonly "°F": "temperature";
  readonly K: "temperature";
  readonly "°C diff": "temperature difference";
  readonly "°F diff": "temperature difference";
  readonly "°C d": "degree-days";
  readonly "°F d": "degree-days";
  readonly "1": "1";
  readonly "%": "1";
  readonly count: "count";
  readonly deg: "angle";
  readonly rad: "angle";
  readonly "% grade": "length/length";
  readonly "% w/w": "mass/mass";
  readonly "ppm w/w": "mass/mass";
  readonly "% v/v": "volume/volume";
  readonly "ppm v/v": "volume/volume";
  readonly "% w/v": "mass/volume";
  readonly "dS/m": "conductivity";
  readonly "mS/cm": "conductivity";
  readonly "uS/cm": "conductivity";
  readonly "cmolc/kg": "exchange capacity";
  readonly "meq/100 g": "exchange capacity";
  readonly "meq/L": "charge/volume";
  readonly "mmolc/L": "charge/volume";
  readonly "MJ/m2": "radiant exposure";
  readonly "MJ/m2/d": "irradiance";
  readonly "W/m2": "irradiance";
}
