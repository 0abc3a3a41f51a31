import { fail } from "../errors/errors.js";
import { expectFields, expectOneOf } from "../errors/expect-fields.js";
import { hasOwn } from "../errors/has-own.js";
import type { BaseUnit } from "../unit/base-units.js";
import type { Dimension } from "../unit/dimensions.js";
import { allBaseUnits, isBaseUnit, splitUnit, unitDimension } from "../unit/unit-facts.js";
import type { AnyUnitHint, CheckedUnit, Unit } from "../unit/unit-text.js";

/**
 * The UCUM code of each base unit. The acre of UCUM, `[acr_us]`, is made of survey feet, 4 parts in a
 * million more than the international acre, so acres are written as square yards. UCUM has no differences
 * of temperature, no counts and no kinds of percent: these are told apart by an annotation, which by the
 * standard carries no meaning of its own.
 *
 * Source: the Unified Code for Units of Measure, version 2.1.
 */
const codes: Readonly<Record<BaseUnit, string>> = {
  kg: "kg",
  g: "g",
  mg: "mg",
  t: "t",
  lb: "[lb_av]",
  oz: "[oz_av]",
  "US ton": "[ston_av]",
  grain: "[gr]",
  m: "m",
  cm: "cm",
  mm: "mm",
  um: "um",
  km: "km",
  in: "[in_i]",
  ft: "[ft_i]",
  yd: "[yd_i]",
  mi: "[mi_i]",
  nmi: "[nmi_i]",
  m2: "m2",
  cm2: "cm2",
  "100 m2": "ar",
  ha: "har",
  in2: "[sin_i]",
  ft2: "[sft_i]",
  yd2: "[syd_i]",
  "1000 ft2": "1000.[sft_i]",
  acre: "4840.[syd_i]",
  m3: "m3",
  L: "L",
  mL: "mL",
  in3: "[cin_i]",
  ft3: "[cft_i]",
  yd3: "[cyd_i]",
  gal: "[gal_us]",
  qt: "[qt_us]",
  pt: "[pt_us]",
  cup: "[cup_us]",
  "fl oz": "[foz_us]",
  tbsp: "[tbs_us]",
  tsp: "[tsp_us]",
  bu: "[bu_us]",
  "acre-in": "3630.[cft_i]",
  "acre-ft": "43560.[cft_i]",
  "imp gal": "[gal_br]",
  "imp fl oz": "[foz_br]",
  s: "s",
  min: "min",
  h: "h",
  d: "d",
  week: "wk",
  Pa: "Pa",
  kPa: "kPa",
  bar: "bar",
  psi: "[psi]",
  "°C": "Cel",
  "°F": "[degF]",
  K: "K",
  "°C diff": "K{difference}",
  "°F diff": "5.K{difference}/9",
  "°C d": "K.d",
  "°F d": "5.K.d/9",
  "1": "1",
  "%": "%",
  count: "{count}",
  deg: "deg",
  rad: "rad",
  "% grade": "%{grade}",
  "% w/w": "g/(100.g)",
  "ppm w/w": "[ppm]{w/w}",
  "% v/v": "mL/(100.mL)",
  "ppm v/v": "[ppm]{v/v}",
  "% w/v": "g/(100.mL)",
  "dS/m": "dS/m",
  "mS/cm": "mS/cm",
  "uS/cm": "uS/cm",
  "cmolc/kg": "ceq/kg",
  "meq/100 g": "meq/(100.g)",
  "meq/L": "meq/L",
  "mmolc/L": "meq{charge}/L",
  "MJ/m2": "MJ/m2",
  "MJ/m2/d": "MJ/m2/d",
  "W/m2": "W/m2",
};

/** Other codes for the same sizes, as other programs write them. */
const otherCodes: Readonly<Record<string, BaseUnit>> = {
  l: "L",
  ml: "mL",
  cm3: "mL",
  "[in_i]2": "in2",
  "[ft_i]2": "ft2",
  "[yd_i]2": "yd2",
  "[in_i]3": "in3",
  "[ft_i]3": "ft3",
  "[yd_i]3": "yd3",
  "43560.[ft_i]2": "acre",
  "43560.[sft_i]": "acre",
  "4840.[yd_i]2": "acre",
  "1000.[ft_i]2": "1000 ft2",
  "100.m2": "100 m2",
  hm2: "ha",
  "Cel.d": "°C d",
  "cmol{charge}/kg": "cmolc/kg",
  "mmol{charge}/L": "mmolc/L",
};

/** Codes built on the survey foot, and the international unit of the same name. */
const survey: Readonly<Record<string, BaseUnit>> = {
  "[acr_us]": "acre",
  "[ft_us]": "ft",
  "[yd_us]": "yd",
  "[in_us]": "in",
  "[mi_us]": "mi",
};

/**
 * The UCUM code of a unit, for exchange with other programs.
 *
 * @throws RatewrightError `unit/unknown`; also for money, which UCUM has no codes for
 *
 * @example
 * ```ts
 * import { toUcum } from "ratewright";
 * toUcum("lb/acre"); // => "[lb_av]/(4840.[syd_i])"
 * toUcum("mg/L"); // => "mg/L"
 * ```
 */
export const toUcum = <const U extends AnyUnitHint | (string & {})>(unit: CheckedUnit<U>): string =>
  typeof unit === "string"
    ? codeOf(unit, unit)
    : fail("unit/unknown", "unit", unit, "a unit as text: of a quantity q, q.unit");

const codeOf = (unit: string, whole: string): string => {
  if (isBaseUnit(unit)) return codes[unit];
  const sides = splitUnit(unit);
  if (sides === undefined)
    return fail("unit/unknown", "unit", whole, "a unit that UCUM has a code for; it has none for money");
  const bottom = codeOf(sides.bottom, whole);
  return `${codeOf(sides.top, whole)}/${/[./]/.test(bottom) ? `(${bottom})` : bottom}`;
};

/** What {@link fromUcum} does with units of the survey foot. */
export interface FromUcumOptions {
  /** `"refuse"` where left out; `"as international"` takes `[acr_us]` as an acre, 4.0e-6 off. */
  readonly survey?: "refuse" | "as international";
}

/** Splits at a sign outside brackets of any kind. */
const splitOutside = (code: string, sign: string): readonly string[] => {
  const parts = [""];
  let depth = 0;
  for (const character of code) {
    if ("([{".includes(character)) depth += 1;
    if (")]}".includes(character)) depth -= 1;
    if (character === sign && depth === 0) parts.push("");
    else parts[parts.length - 1] += character;
  }
  return parts;
};

/**
 * The unit of a UCUM code: each code that `toUcum` writes, quotients of them, and negative powers
 * (`kg.har-1`).
 *
 * `[acr_us]` and the other survey units are refused unless `survey: "as international"`: the survey foot
 * is 2 parts in a million longer, and was deprecated after 2022.
 *
 * @param options - `survey`, how the survey units are read
 * @throws RatewrightError `unit/unknown`
 *
 * @example
 * ```ts
 * import { fromUcum } from "ratewright";
 * fromUcum("kg/har"); // => "kg/ha"
 * fromUcum("[gal_us].min-1"); // => "gal/min"
 * fromUcum("[lb_av]/[acr_us]", { survey: "as international" }); // => "lb/acre"
 * ```
 */
export const fromUcum = (code: string, options: FromUcumOptions = {}): Unit<Dimension> => {
  const { survey: foot } = expectFields(options, ["survey"], "options", "a record of options");
  if (foot !== undefined) expectOneOf(foot, ["refuse", "as international"], "options.survey");
  const expected = "a UCUM code of a unit in the table, or a quotient of such codes";
  if (typeof code !== "string" || code === "" || code.length > 100)
    return fail("unit/unknown", "code", code, expected);
  const known = (part: string): string | undefined => {
    const bare = /^\(([^()]*)\)$/.exec(part)?.[1] ?? part;
    const unit = allBaseUnits().find((one) => codes[one] === bare);
    if (unit !== undefined) return unit;
    if (hasOwn(otherCodes, bare)) return otherCodes[bare];
    if (!hasOwn(survey, bare)) return undefined;
    if (foot === "as international") return survey[bare];
    return fail("unit/unknown", "code", code, `an international unit: ${bare} is built on the survey foot`, {
      suggestion: codes[survey[bare] as BaseUnit],
    });
  };
  const [first, ...below] = splitOutside(code, "/") as [string, ...string[]];
  const whole = known(code);
  if (whole !== undefined) return whole as Unit<Dimension>;
  const tops: string[] = [];
  const bottoms: string[] = [];
  // "4840.[syd_i]" is one unit, "kg.har-1" two
  for (const factor of splitOutside(first, ".")) {
    const power = /(.+)-([123])$/.exec(factor);
    if (power === null) tops.push(factor);
    else bottoms.push(`${power[1]}${power[2] === "1" ? "" : power[2]}`);
  }
  // a part that is none leaves nothing beside its slash, and that is no unit
  const unit = [tops.join("."), ...bottoms, ...below]
    .map((part) => (part === "" ? "1" : known(part)))
    .join("/");
  return unitDimension(unit) === undefined
    ? fail("unit/unknown", "code", code, expected)
    : (unit as Unit<Dimension>);
};
