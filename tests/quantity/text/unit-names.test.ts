import { describe, expect, test } from "vitest";
import { unitTable } from "../../../src/quantity/index.js";
import { madeNames } from "../../../src/quantity/substance/substance-names.js";
import { madeStems, madeUnitNames } from "../../../src/quantity/text/unit-names-written.js";

// Names as people write them, in small letters, with the unit that each is: in several columns, by hand.
const written: readonly string[] = [
  "kg kilo kilos kilogram kilograms kilogramme kilogrammes",
  "g gm gms gram grams gramme grammes",
  "mg milligram milligrams milligramme",
  "t tonne tonnes metric_ton metric_tons",
  "lb lbs lbm lbms pound pounds",
  "US_ton us_ton us_tons ton_us tons_us short_ton short_tons",
  "grain grain grains",
  "m meter meters metre metres mtr mtrs",
  "cm cm centimeter centimetre centimeters centimetres",
  "mm mm mms millimeter millimetre millimetres",
  "um um micrometer micrometre micron microns",
  "km km kms kilometer kilometre kilometers",
  "in in inch inches",
  "ft ft foot feet",
  "yd yd yds yard yards",
  "mi mi mile miles",
  "nmi nmi nautical_mile nautical_miles",
  "100_m2 are ares 100_m2",
  "1000_ft2 msf ksf kft2 ksqft k_sq_ft 1000_ft2",
  "ha ha hectare hectares",
  "ft2 ft2 sf",
  "yd2 yd2 sy",
  "acre acre acres ac acs",
  "L lt ltr ltrs liter liters litre litres",
  "mL ml mls cc ccs cm3 cubic_centimeter cubic_centimeters milliliter millilitre milliliters",
  "ft3 ft3 cf",
  "gal gal gals gallon gallons",
  "qt qt qts quart quarts",
  "pt pt pts pint pints",
  "cup cup cups",
  "fl_oz fl_oz floz fluid_ounce fluid_ounces",
  "tbsp tbsp tbsps tbs tbl tbls tblsp tblsps tablespoon tablespoons",
  "tsp tsp tsps teaspoon teaspoons",
  "bu bu bushel bushels",
  "acre-in acre_in ac_in acre_inch acre_inches",
  "acre-ft acre_ft ac_ft acre_foot acre_feet",
  "imp_gal imp_gal imp_gals gal_imp",
  "s sec secs second seconds",
  "min min mins minute minutes",
  "h hr hrs hour hours",
  "d day days",
  "week week weeks wk wks",
  "Pa pa pascal pascals",
  "kPa kpa kilopascal kilopascals",
  "bar bar bars",
  "psi psi psig pounds_per_square_inch pound_per_square_inch lbf/in2 pound_force_per_square_inch",
  "°F_d °f_d °f_day °f_days deg_f_d deg_f_day fahrenheit_degree_day fahrenheit_degree_days",
  "°C_d °c_d °c_day deg_c_day celsius_degree_day celsius_degree_days",
  "% percent pct per_cent",
  "count count counts ct cts ea each plant plants plug plugs pieces seeds",
  "deg deg degs degree degrees",
  "rad rad rads radian radians",
  "%_grade %_grade %grade %_slope percent_grade percent_slope",
  "gal/acre gpa",
  "gal/min gpm",
  "gal/h gph",
  "ft3/s cfs",
  "L/min lpm",
  "mi/h mph",
  "nmi/h knot knots kn kt kts",
  "km/h kph kmh kmph",
  "1/min rpm",
  "grain/gal gpg",
];
const clean = (name: string): string => name.replaceAll("_", " ");

describe("names of units as people write them", () => {
  const names = madeUnitNames();
  test.each(written)("%s", (row) => {
    const [unit = "", ...all] = row.split(" ");
    for (const name of all)
      expect([clean(name), madeUnitNames().get(clean(name))]).toEqual([clean(name), clean(unit)]);
  });

  // What could mean several things is read elsewhere, with the dimension that is wanted.
  test.each(["oz", "°c", "°f", "m", "g", "l", "t", "k", "d", "s", "h", "%", "1", "", "Stryker was here!"])(
    '"%s" is no name',
    (name) => {
      expect(madeUnitNames().get(name)).toBeUndefined();
    },
  );

  test("an s is added to a word, and to no sign, no number and no word that has one", () => {
    for (const name of ["inchess", "ft2s", "1000 ft2s", "dS/ms", "%s", "lbss", "m3s", "acre inchess"])
      expect([name, madeUnitNames().has(name)]).toEqual([name, false]);
  });

  test("metric prefixes go before metric names alone, and a size that is in the table", () => {
    for (const name of [
      "kilogallon",
      "kilogm",
      "millimtr",
      "millifoot",
      "kilocubic centimeter",
      "centigram",
      "centiliter",
      "kiloliter",
      "millipascal",
      "microgram",
      "microliter",
      "kmeter",
      "millinautical mile",
      "gallore",
      "quarre",
    ])
      expect([name, madeUnitNames().has(name)]).toEqual([name, false]);
    expect(names.get("micrometer")).toBe("um");
  });

  test("each stands for a unit that is one", () => {
    const base = new Set(Object.values(unitTable).flatMap((units) => Object.keys(units)));
    for (const unit of madeUnitNames().values())
      for (const part of base.has(unit) ? [] : unit.split("/"))
        expect([unit, base.has(part)]).toEqual([unit, true]);
  });

  test("parts of the units of a laboratory", () => {
    const rows = [
      "meq me milliequivalent milliequivalents",
      "cmolc cmol cmols cmol+ cmol_c centimole_of_charge centimoles_of_charge",
      "mmolc millimole_of_charge millimoles_of_charge",
      "mj megajoule megajoules",
      "w watt watts",
      "ds decisiemens",
      "ms millisiemens mmho mmhos",
      "us microsiemens umho umhos",
      "100_g 100g 100_gram 100_grams",
    ];
    for (const row of rows) {
      const [stem = "", ...all] = row.split(" ");
      for (const name of all)
        expect([clean(name), madeStems().get(clean(name))]).toEqual([clean(name), clean(stem)]);
    }
    for (const name of ["gram", "lb", "decisiemenss", "100gs", "kilogram", ""])
      expect(madeStems().has(name)).toBe(false);
  });
});

describe("names of substances as people write them", () => {
  test.each([
    ["nitrogen", "N"],
    ["total n", "N"],
    ["n:soluble", "N:quick"],
    ["readily available nitrogen", "N:quick"],
    ["controlled release nitrogen", "N:slow"],
    ["nitrate n", "NO3-N"],
    ["nitrate", "NO3"],
    ["ammoniacal nitrogen", "NH4-N"],
    ["phosphorus", "P"],
    ["available phosphate", "P2O5"],
    ["soluble potash", "K2O"],
    ["potassium", "K"],
    ["sulphate", "SO4"],
    ["sulphur", "S"],
    ["aluminium", "Al"],
    ["hardness", "hardness as CaCO3"],
    ["cce", "CaCO3 equivalent"],
    ["formulated product", "product"],
    ["a.i.", "ai"],
    ["acid equivalent", "ae"],
    ["spray mix", "spray"],
    ["pls", "pure live seed"],
    ["p2o5", "P2O5"],
    ["pure live seed", "pure live seed"],
    ["hco3", "HCO3"],
    // symbols of one or two letters keep their capitals: k may be anything
    ["n", undefined],
    ["k", undefined],
    ["fe", undefined],
    ["ai", undefined],
    ["P2O5", undefined],
  ])("%s: %s", (name, token) => {
    expect(madeNames().get(name)).toBe(token);
  });
});
