import { allBaseUnits, isBaseUnit } from "../unit/unit-facts.js";

/**
 * Names that people write, in small letters and without full stops and brackets: `unit=name|name`. What follows from a
 * rule is not in it: the unit itself, an s for several, `litre` for `liter`, `kilo` and `milli` before a metric name.
 */
const names =
  "kg=kilo;g=gm|gram;t=tonne|metric ton;lb=lbm|pound;US ton=ton us|tons us|short ton;m=meter|mtr;um=micron;in=inch|inches;ft=foot|feet|lf|lin ft|linear ft|linear foot|linear feet|lineal ft|lineal foot|lineal feet;yd=yard;mi=mile;nmi=nautical mile;100 m2=are;1000 ft2=msf|ksf|kft2|ksqft|k sq ft;ha=hectare;ft2=sf;yd2=sy;acre=ac;L=lt|ltr|liter|dm3|cubic decimeter;mL=cc|ccm|cubic centimeter|cm3;m3=cbm;ft3=cf;yd3=cy;gal=gallon;qt=quart;pt=pint;fl oz=floz|fluid ounce;tbsp=tbs|tbl|tblsp|tablespoon;tsp=teaspoon;bu=bushel;acre-in=acre in|ac in|acre inch|acre inches;acre-ft=acre ft|ac ft|acre foot|acre feet;imp gal=gal imp;s=sec|second;min=minute|mn;h=hr|hour;d=day;week=wk;Pa=pascal;psi=psig|pounds per square inch|pound per square inch|lbf/in2|pound force per square inch|pounds force per square inch;°C diff=degree celsius of difference|degrees celsius of difference;°F diff=degree fahrenheit of difference|degrees fahrenheit of difference;°C d=°c day|deg c d|deg c day|celsius degree day|°cd|gdd c|gddc|degree days c|degree days celsius|day degrees c|growing degree days c;°F d=°f day|deg f d|deg f day|fahrenheit degree day|°fd|gdd f|gddf|degree days f|degree days fahrenheit|day degrees f|growing degree days f;%=percent|pct|per cent;count=ct|ea|each|plant|plug|piece|pieces|pc|pcs|seeds;deg=degree;rad=radian;% grade=%grade|% slope|percent grade|percent slope;ppm w/w=ppmw;ppm v/v=ppmv;MJ/m2/d=mj/m2 d;gal/acre=gpa;gal/min=gpm;gal/h=gph;gal/d=gpd;ft3/s=cfs;ft3/min=cfm;L/min=lpm;L/h=lph;mi/h=mph;nmi/h=knot|kn|kt;km/h=kph|kmh|kmph;m/s=mps;g/m2=gsm;ft/s=fps;ft/min=fpm;in/h=iph;1/min=rpm;grain/gal=gpg";

/** Parts of units of the laboratory that do not stand alone. */
const parts =
  "meq=me|milliequivalent;cmolc=cmol|cmol+|cmol c|centimole of charge|centimoles of charge;mmolc=millimole of charge|millimoles of charge;mj=megajoule;w=watt;ds=decisiemens;ms=millisiemens|mmho|millimho;us=microsiemens|umho|micromho;100 g=100g|100 gram|100 grams";

/** Every name of a list with what it stands for: `meter` is `metre` too, metric names take prefixes, several get an s. */
const tableOf = (list: string, table: Map<string, string>): ReadonlyMap<string, string> => {
  for (const row of list.split(";")) {
    const [unit, all] = row.split("=") as [string, string];
    for (const name of all.split("|")) {
      table.set(name, unit);
      if (!/meter|liter|gram|pascal/.test(name)) continue;
      for (const prefix of ["", "kilo", "centi", "milli", "micro"]) {
        const sized = `${prefix === "micro" ? "u" : prefix.slice(0, 1)}${unit}`;
        if (!isBaseUnit(sized)) continue;
        table.set(prefix + name, sized);
        table.set(prefix + name.replace("er", "re").replace("am", "amme"), sized);
      }
    }
  }
  for (const [name, unit] of [...table]) {
    if (/^[a-z° ]*[a-rt-z]$/.test(name) && !table.has(`${name}s`)) table.set(`${name}s`, unit);
  }
  return table;
};

/** The units themselves, by their names in small letters. */
const units = (): Map<string, string> =>
  new Map(
    allBaseUnits()
      .map((unit) => [unit.toLowerCase().replace("-", " "), unit] as const)
      .filter(([name]) => name.length > 1 && !/^(?:oz|°[cf])$/.test(name)),
  );

/** Every written name, made anew. */
export const madeUnitNames = (): ReadonlyMap<string, string> => tableOf(names, units());

/** The parts of units of the laboratory, made anew. */
export const madeStems = (): ReadonlyMap<string, string> => tableOf(parts, new Map());

let written: ReadonlyMap<string, string> | undefined;
let stems: ReadonlyMap<string, string> | undefined;

/** Every written name with the unit that it means; names that could mean several are not in it. */
export const unitNames = (): ReadonlyMap<string, string> => {
  written ??= madeUnitNames();
  return written;
};

/** `meq` for `milliequivalents`: a part of a unit that has a slash of its own. */
export const stemOf = (part: string): string | undefined => {
  stems ??= madeStems();
  return stems.get(part);
};
