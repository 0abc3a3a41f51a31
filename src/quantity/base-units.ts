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
 * - imperial gallon 4.54609 L, of 160 fluid ounces: UK Units of Measurement Regulations 1995.
 * - pound-force: standard gravity 9.80665 m/s2 (3rd CGPM, 1901). bar 100 kPa.
 * - kelvin and degree Celsius 273.15 apart, degree Fahrenheit 5/9 K: BIPM SI brochure; NIST SP 811.
 */
export const baseUnits = {
  // mass, in kg
  kg: "mass:1",
  g: "mass:0.001",
  mg: "mass:0.000001",
  t: "mass:1000",
  lb: "mass:0.45359237",
  oz: "mass:1/16 lb",
  "US ton": "mass:2000 lb",
  grain: "mass:1/7000 lb",
  // length, in m
  m: "length:1",
  cm: "length:0.01",
  mm: "length:0.001",
  um: "length:0.000001",
  km: "length:1000",
  in: "length:0.0254",
  ft: "length:12 in",
  yd: "length:36 in",
  mi: "length:5280 ft",
  // area, in m2
  m2: "area:1",
  cm2: "area:0.0001",
  "100 m2": "area:100",
  ha: "area:10000",
  in2: "area:0.0254*0.0254",
  ft2: "area:144 in2",
  yd2: "area:9 ft2",
  "1000 ft2": "area:1000 ft2",
  acre: "area:43560 ft2",
  // volume, in m3
  m3: "volume:1",
  L: "volume:0.001",
  mL: "volume:0.000001",
  in3: "volume:0.0254*0.0254*0.0254",
  ft3: "volume:1728 in3",
  yd3: "volume:27 ft3",
  gal: "volume:231 in3",
  qt: "volume:1/4 gal",
  pt: "volume:1/8 gal",
  cup: "volume:1/16 gal",
  "fl oz": "volume:1/128 gal",
  tbsp: "volume:1/256 gal",
  tsp: "volume:1/768 gal",
  bu: "volume:2150.42 in3",
  "acre-in": "volume:3630 ft3",
  "acre-ft": "volume:43560 ft3",
  "imp gal": "volume:0.00454609",
  "imp fl oz": "volume:1/160 imp gal",
  // time, in s
  s: "time:1",
  min: "time:60",
  h: "time:3600",
  d: "time:86400",
  week: "time:604800",
  // pressure, in Pa
  Pa: "pressure:1",
  kPa: "pressure:1000",
  bar: "pressure:100000",
  psi: "pressure:0.45359237*9.80665/0.00064516",
  // temperatures have a zero point (see zeroPoints); differences and degree-days have none
  "°C": "temperature:1",
  "°F": "temperature:5/9",
  K: "temperature:1",
  "°C diff": "temperature difference:1",
  "°F diff": "temperature difference:5/9",
  "°C d": "degree-days:1",
  "°F d": "degree-days:5/9",
  // pure numbers and counts
  "1": "1:1",
  "%": "1:0.01",
  count: "count:1",
  // angle, in degrees; 180/pi is irrational, so the radian is rounded
  deg: "angle:1",
  rad: "angle:57.29577951308232",
  // rise over run
  "% grade": "length/length:0.01",
  // fractions: what is divided by what is part of the unit
  "% w/w": "mass/mass:0.01",
  "ppm w/w": "mass/mass:0.000001",
  "% v/v": "volume/volume:0.01",
  "ppm v/v": "volume/volume:0.000001",
  "% w/v": "mass/volume:10",
  // named quotients that are measured as such
  "dS/m": "conductivity:0.1",
  "mS/cm": "conductivity:0.1",
  "uS/cm": "conductivity:0.0001",
  "cmolc/kg": "exchange capacity:0.01",
  "meq/100 g": "exchange capacity:0.01",
  "meq/L": "charge/volume:1",
  "mmolc/L": "charge/volume:1",
  "MJ/m2": "radiant exposure:1000000",
  "MJ/m2/d": "irradiance:1000000/86400",
  "W/m2": "irradiance:1",
} as const;

/** Where the zero of a temperature scale lies, as read on that scale at 0 °C. */
export const zeroPoints: Readonly<Record<string, number>> = { "°C": 0, "°F": 32, K: 273.15 };

/** The units that stand alone; quotients of them are units too, such as `"lb/acre"`. */
export type BaseUnit = keyof typeof baseUnits;
