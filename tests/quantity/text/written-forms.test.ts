import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { readUnitName } from "../../../src/quantity/text/aliases.js";

// Unit names as people write them. Amounts are reckoned by hand from the definitions: a stone is 14 lb, a hundredweight 100 lb
// (short) or 112 lb (long), an imperial pint is 1/8 and a quart 1/4 of an imperial gallon.

/** `unit=name|name`: what each name after a number is read as, without any hint of a dimension. */
const names = `
lb=lb|lbs|LB|Lbs.|lb.|lbm|pound|pounds|Pounds
kg=kg|KG|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes
g=g|gm|gms|gram|grams|gramme
mg=mg|milligram|milligrams|milligramme
t=tonne|tonnes|metric ton|metric tons|metric-ton
US ton=US ton|US tons|us ton|short ton|short tons|ton us|tons us
oz=oz av|oz avdp|oz dry|ounces dry|oz wt|oz by wt|oz weight|oz by weight|ozs av|ounce av|ounces avdp|avoirdupois ounces|avoirdupois oz|avoirdupois ounce|dry oz|dry ounces|dry ounce|wt oz|weight ounces
fl oz=fl oz|fl. oz.|fl ozs|floz|fl.oz.|fluid oz|fluid ozs|fluid ounce|fluid ounces|liquid oz|liquid ounces|liquid ounce|oz fl|ounce fl|ounces fluid|oz fluid|oz. fl.|US fl oz|fl oz US|US fluid ounces
gal=gal|gals|gal.|gallon|gallons|US gal|u.s. gal|U S gallons|gal US|gallons US
qt=qt|qts|quart|quarts|US qt|quarts US
pt=pt|pts|pint|pints|US pt|pints US
cup=cup|cups|US cups
tbsp=tbsp|tbsps|tbs|tbl|tblsp|tablespoon|tablespoons|US tbsp
tsp=tsp|tsps|teaspoon|teaspoons|US tsp
bu=bu|bushel|bushels|US bu
acre=ac|acre|acres|US acres|acre US
L=L|l|lt|ltr|liter|liters|litre|litres
mL=mL|ml|mls|milliliter|millilitres|cc|cubic centimeter
m=m|meter|meters|metre|metres|mtr
cm=cm|centimeter|centimetres
mm=mm|millimeter|millimetres
um=um|micron|microns|micrometer|micrometres
km=km|kilometer|kilometres
in=in|inch|inches|"
ft=ft|foot|feet|'
yd=yd|yds|yard|yards
mi=mi|mile|miles
nmi=nmi|nautical mile|nautical miles
ha=ha|hectare|hectares
ft2=ft2|ft^2|sq ft|sq. ft.|sqft|square feet|square foot|ft squared|feet squared|ft sq|foot square|sf
yd2=yd2|sq yd|square yards|sy|yards squared
in2=in2|sq in|square inches|inch squared
m2=m2|m^2|sq m|square meters|m squared|meter square|metres squared
cm2=cm2|square centimeters|sq cm
1000 ft2=1000 ft2|1,000 sq ft|1 000 sq ft|1000ft2|thousand square feet|thousand sq ft|M sq ft|M sq. ft.|M sqft|M ft2|M ft^2|M square feet|M square foot|msf|MSF|ksf|kft2|ksqft
100 m2=are|ares
ft3=ft3|cu ft|cubic feet|cubic foot|ft cubed|feet cubic|ft cu|ft^3|cf
yd3=yd3|cu yd|cubic yards|yards cubed|cy
in3=in3|cu in|cubic inch|inches cubed
m3=m3|cubic meters|cu m|m cubed|m^3
acre-in=acre-in|acre-inch|acre-inches|acre inches|ac-in|ac in
acre-ft=acre-ft|acre-feet|acre foot|ac-ft|ac ft
s=s|sec|secs|second|seconds
min=min|mins|minute|minutes
h=h|hr|hrs|hour|hours
d=d|day|days
week=wk|wks|week|weeks
psi=psi|psig|PSI|pounds per square inch|pound per square inch|lbf/in2
kPa=kPa|kilopascal|kilopascals
Pa=Pa|pascal|pascals
°F=°F|F|deg F|degF|degree F|degrees F|degrees Fahrenheit|Fahrenheit|deg. F|°Fahrenheit
°C=°C|C|deg C|degC|degrees C|degrees Celsius|Celsius|centigrade|degrees centigrade
K=K|kelvin|kelvins
°F d=°F day|deg F d|deg F days|Fahrenheit degree days
°C d=°C day|°C days|deg C d|Celsius degree days
%=%|percent|pct|per cent
% w/w=% w/w|% W/W|%w/w|percent w/w|pct w/w|per cent w/w|% m/m|% wt|% weight|% by weight|% by mass|% mass|% by wt|percent by weight|wt %|wt%|weight %|weight percent
% v/v=% v/v|%v/v|% vol|% by volume|% by vol|percent by volume|vol %|vol%|volume %|volume percent
% w/v=% w/v|% m/v|% weight by volume|percent weight by volume|percent w/v
ppm w/w=ppm w/w|ppm by weight|ppm wt|ppm m/m|parts per million by weight|part per million by mass|ppmw
ppm v/v=ppm v/v|ppm by volume|parts per million by volume|ppmv
meq/100 g=meq/100 g|meq/100g|meq / 100 g|me/100g|meq per 100 g|milliequivalents per 100 grams|milliequivalents per 100 g
cmolc/kg=cmolc/kg|cmol/kg|cmol(+)/kg|cmol c/kg|centimoles of charge per kilogram|centimole of charge per kg
meq/L=meq/L|me/l|milliequivalents per liter|milliequivalents/litre
mmolc/L=mmolc/L|millimoles of charge per liter
dS/m=dS/m|ds/m|decisiemens per meter|decisiemens/m
mS/cm=mS/cm|mmho/cm|millisiemens per centimeter
uS/cm=uS/cm|µS/cm|umho/cm|microsiemens per cm
MJ/m2=MJ/m2|megajoules per square meter
W/m2=W/m2|watts per square meter
gal/acre=gpa|GPA|gal/ac|gallons per acre|gal per A|gal/A
gal/min=gpm|gallons per minute
gal/h=gph
gal/d=gpd
mi/h=mph|miles per hour
km/h=kph|kmh|kmph
nmi/h=knot|knots|kn|kt
ft/s=fps
ft/min=fpm
ft3/s=cfs
ft3/min=cfm
L/min=lpm
1/min=rpm
grain/gal=gpg
count=ct|ea|each|plant|plants|plugs|pieces|seeds
deg=deg
rad=radian|radians
% grade=% grade|%grade|% slope|percent slope|percent grade
imp gal=imp gal|imp. gal.|imperial gallons|UK gal|gal imp
imp fl oz=imp fl oz|imperial fluid ounces|UK fl. oz.|imp floz
money:USD=USD|money:USD
`
  .trim()
  .split("\n")
  .map((line) => {
    const at = line.indexOf("=");
    return [line.slice(0, at), line.slice(at + 1).split("|")] as const;
  });

describe("the same unit, by every name", () => {
  test.each(names)("%s", (unit, all) => {
    for (const name of all)
      expect([name, parseQuantity(`3 ${name}`).toJSON()]).toEqual([name, { value: 3, unit, of: "none" }]);
  });

  const doubtful =
    "oz|ozs|ounce|ounces|ton|tons|cwt|cwts|hundredweight|hundredweights|gr|grs|ppm|part per million|parts per million|dd|gdd|degree day|degree days|growing degree days|degree|degrees|stone|stones|long ton|long tons|short cwt|us hundredweight|imp cwt|imperial pints|UK quarts|long hundredweights|imp cup|uk bushels";
  test("with letters before it or behind it a name is none, and nothing is read into it", () => {
    for (const name of [...names.flatMap(([, all]) => all), ...doubtful.split("|")]) {
      for (const text of [`zz${name}`, `${name}zz`, `zz ${name}`])
        expect([text, readUnitName(text)]).toEqual([text, undefined]);
    }
  });

  test("also below a slash, after per, and without a space", () => {
    for (const [unit, all] of names.filter(([of]) =>
      /^(?:acre|ha|ft2|gal|L|100 m2|1000 ft2|d|h)$/.test(of),
    )) {
      for (const name of all) {
        const wanted = { value: 3, unit: `kg/${unit}`, of: "none" };
        if (name === "ct") continue;
        expect([name, parseQuantity(`3 kg/${name}`).toJSON()]).toEqual([name, wanted]);
        expect([name, parseQuantity(`3 kg per ${name}`).toJSON()]).toEqual([name, wanted]);
        expect([name, parseQuantity(`3kg / ${name}`).toJSON()]).toEqual([name, wanted]);
      }
    }
  });
});

describe("measures that are a number of others", () => {
  test.each([
    ["2 stone", 28, "lb"],
    ["1/2 stone", 7, "lb"],
    ["2 stones", 28, "lb"],
    ["3 short cwt", 300, "lb"],
    ["3 US cwt", 300, "lb"],
    ["3 short hundredweights", 300, "lb"],
    ["3 us hundredweight", 300, "lb"],
    ["3 long cwt", 336, "lb"],
    ["3 long cwts", 336, "lb"],
    ["3 long hundredweight", 336, "lb"],
    ["3 imp cwt", 336, "lb"],
    ["3 imperial hundredweights", 336, "lb"],
    ["3 UK cwt", 336, "lb"],
    ["2 long ton", 4480, "lb"],
    ["2 long tons", 4480, "lb"],
    ["2 imperial tons", 4480, "lb"],
    ["2 UK ton", 4480, "lb"],
    ["3 imp pt", 0.375, "imp gal"],
    ["3 imperial pints", 0.375, "imp gal"],
    ["3 UK pints", 0.375, "imp gal"],
    ["3 imp qt", 0.75, "imp gal"],
    ["3 imperial quarts", 0.75, "imp gal"],
    ["3 imp pt/acre", 0.375, "imp gal/acre"],
    ["3 long cwt/acre", 336, "lb/acre"],
    // below the slash the number divides: 28 lb for each 14 lb are 2 for each
    ["28 lb/stone", 2, "lb/lb"],
    ["1 gal/imp pt", 8, "gal/imp gal"],
  ])("%s", (text, value, unit) => {
    const read = parseQuantity(text);
    expect([read.value, read.unit, read.of]).toEqual([value, unit, "none"]);
  });
});

describe("a number below the slash divides, as the label means it", () => {
  // 2 pt in 100 gal are 0.02 pt in each
  test.each([
    ["2 pt/100 gal", 0.02, "pt/gal"],
    ["2 pt per 100 gallons", 0.02, "pt/gal"],
    ["2 pt per 100 gal water", 0.02, "pt/gal"],
    ["32 fl oz/100 gal", 0.32, "fl oz/gal"],
    ["5 lb/50 lb", 0.1, "lb/lb"],
    ["12 kg/1,500 L", 0.008, "kg/L"],
    ["$28/50 lb", 0.56, "money:USD/lb"],
    ["3 lb/10 ft2", 0.3, "lb/ft2"],
    ["5 lb/100 sq ft", 0.05, "lb/ft2"],
    ["6 lb/2 h", 3, "lb/h"],
  ])("%s", (text, value, unit) => {
    const dimension = unit.startsWith("money") ? { dimension: "money:USD/mass" as const } : {};
    const of = /water/.test(text) ? { of: "none/water" } : {};
    const read = parseQuantity(text, { ...dimension, ...of } as never);
    expect(read.value).toBeCloseTo(value, 15);
    expect(read.unit).toBe(unit);
  });
});

describe("powers below zero", () => {
  test.each([
    ["5 kg ha-1", 5, "kg/ha"],
    ["5 kg ha^-1", 5, "kg/ha"],
    ["5 kg ha⁻¹ d⁻¹", 5, "kg/ha/d"],
    ["5 g m-2", 5, "g/m2"],
    ["5 L m^-3", 5, "L/m3"],
    ["5 lb 1000 ft-2", 5, "lb/1000 ft2"],
    ["5 lb 1,000 ft^-2", 5, "lb/1000 ft2"],
    ["5 L 100 m-2", 5, "L/100 m2"],
    ["5 kg N ha-1", 5, "kg/ha"],
    ["3 d-1", 3, "1/d"],
  ])("%s", (text, value, unit) => {
    const read = parseQuantity(text);
    expect([read.value, read.unit]).toEqual([value, unit]);
  });
});
