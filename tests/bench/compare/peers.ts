// The general-purpose unit libraries that the tasks are measured beside, each with what it needs of them.
import { squareMeters } from "@buge/ts-units/area/index.js";
import { kilograms as kilogramsOfTsUnits } from "@buge/ts-units/mass/index.js";
import { convert, convertMany } from "convert";
import Qty from "js-quantities";
import { unit as mathUnit, multiply, type Unit } from "mathjs";
import * as safe from "safe-units";
import unitMath from "unitmath";
import * as uom from "uom";

/** A mass in the place of an area, in each library: those that check refuse it. */
export const wrongCalls: Readonly<Record<string, () => unknown>> = {
  "safe-units": () => safe.Measure.of(5, safe.pounds).plus(safe.Measure.of(2, safe.acres) as never),
  "@buge/ts-units": () => tsPound(5).plus(tsAcre(2) as never),
  uom: () => uom.Amount.valueAs(uomAcre as never, uom.Amount.create(5, uomPound)),
  convert: () => convert(5, "lb").to("acre" as never),
  unitmath: () => unitMath(5, "lb").to("acre"),
  mathjs: () => mathUnit(5, "lb").to("acre"),
  "js-quantities": () => Qty(5, "lb").to("acre"),
};

/** A text that is no weight to its end, where kilograms are wanted: who leaves out what it does not know takes it for five pounds. */
export const wrongTexts: Readonly<Record<string, () => unknown>> = {
  convert: () => convertMany("5 lb acre" as "5 lb").to("kg"),
  unitmath: () => unitMath("5 lb acre").to("kg"),
  mathjs: () => mathUnit("5 lb acre").to("kg"),
  "js-quantities": () => Qty("5 lb acre").to("kg"),
};

const kgPerPound = 0.45359237;
const m2PerAcre = 4046.8564224;

const tsPound = kilogramsOfTsUnits.times(kgPerPound).withSymbol("lb");
const tsAcre = squareMeters.times(m2PerAcre).withSymbol("ac");
const tsHectare = squareMeters.times(10_000).withSymbol("ha");
const tsRate = tsPound.per(tsAcre);

const { Amount, BaseUnits, Unit: UomUnit } = uom;
const uomPound = UomUnit.timesNumber("Pound", kgPerPound, BaseUnits.Kilogram);
const uomAcre = UomUnit.timesNumber(
  "Acre",
  m2PerAcre,
  UomUnit.times("SquareMeter", "Area", BaseUnits.Meter, BaseUnits.Meter),
);

const safeRate = safe.pounds.per(safe.acres);

/** What each task is, in one library: `undefined` where it is not offered. */
export interface Ways {
  readonly construct: (n: number) => unknown;
  readonly convertMade: (made: never) => number;
  readonly rateTimesArea?: (rate: number, hectares: number) => number;
  /** A typed text, read by the library. */
  readonly read?: (text: string) => unknown;
  /** A typed text into a text in kilograms. */
  readonly formToForm: (text: string) => string;
}

/** For a library that reads no text: the number and the unit by hand, the unit out of a table. */
const byHand = <U>(units: Readonly<Record<string, U>>, kg: (n: number, unit: U) => number) => {
  return (text: string): string => {
    const space = text.indexOf(" ");
    const unit = units[text.slice(space + 1)];
    const n = Number(text.slice(0, space));
    if (unit === undefined || !Number.isFinite(n)) throw new Error(text);
    return `${kg(n, unit)} kg`;
  };
};

/** Plain arithmetic: no check of anything. */
export const plain: Ways = {
  construct: (n) => ({ value: n, unit: "lb" }),
  convertMade: ((made: { readonly value: number }) => made.value * kgPerPound) as Ways["convertMade"],
  rateTimesArea: (rate, hectares) => ((rate * kgPerPound) / m2PerAcre) * hectares * 10_000,
  read: (text) => {
    const space = text.indexOf(" ");
    return { value: Number(text.slice(0, space)), unit: text.slice(space + 1) };
  },
  formToForm: byHand({ lb: kgPerPound, kg: 1 }, (n, factor) => n * factor),
};

/** The libraries' own ways, by name. */
export const ways: Readonly<Record<string, Ways>> = {
  "safe-units": {
    construct: (n) => safe.Measure.of(n, safe.pounds),
    convertMade: ((made: safe.Mass) => made.valueIn(safe.kilograms)) as Ways["convertMade"],
    rateTimesArea: (rate, hectares) =>
      safe.Measure.of(rate, safeRate)
        .times(safe.Measure.of(hectares, safe.hectares))
        .valueIn(safe.kilograms as never),
    formToForm: byHand({ lb: safe.pounds, kg: safe.kilograms }, (n, unit) =>
      safe.Measure.of(n, unit).valueIn(safe.kilograms),
    ),
  },
  "@buge/ts-units": {
    construct: (n) => tsPound(n),
    convertMade: ((made: ReturnType<typeof tsPound>) =>
      made.in(kilogramsOfTsUnits).amount) as Ways["convertMade"],
    rateTimesArea: (rate, hectares) =>
      tsRate(rate)
        .times(tsHectare(hectares))
        .in(kilogramsOfTsUnits as never).amount,
    formToForm: byHand(
      { lb: tsPound, kg: kilogramsOfTsUnits },
      (n, unit) => unit(n).in(kilogramsOfTsUnits).amount,
    ),
  },
  uom: {
    construct: (n) => Amount.create(n, uomPound),
    convertMade: ((made: uom.Amount.Amount<"Mass">) =>
      Amount.valueAs(BaseUnits.Kilogram as never, made)) as Ways["convertMade"],
    formToForm: byHand({ lb: uomPound, kg: BaseUnits.Kilogram }, (n, unit) =>
      Amount.valueAs(BaseUnits.Kilogram as never, Amount.create(n, unit as never)),
    ),
  },
  convert: {
    construct: (n) => convert(n, "lb"),
    convertMade: ((made: { to(unit: "kg"): number }) => made.to("kg")) as Ways["convertMade"],
    read: (text) => convertMany(text as "5 lb").to("lb"),
    formToForm: (text) => `${convertMany(text as "5 lb").to("kg")} kg`,
  },
  unitmath: {
    construct: (n) => unitMath(n, "lb"),
    convertMade: ((made: ReturnType<typeof unitMath>) => made.to("kg").getValue()) as Ways["convertMade"],
    rateTimesArea: (rate, hectares) =>
      unitMath(rate, "lb/acre").mul(unitMath(hectares, "hectare")).to("kg").getValue(),
    read: (text) => unitMath(text),
    formToForm: (text) => unitMath(text).to("kg").toString(),
  },
  mathjs: {
    construct: (n) => mathUnit(n, "lb"),
    convertMade: ((made: Unit) => made.toNumber("kg")) as Ways["convertMade"],
    rateTimesArea: (rate, hectares) =>
      (multiply(mathUnit(rate, "lb/acre"), mathUnit(hectares, "hectare")) as Unit).toNumber("kg"),
    read: (text) => mathUnit(text),
    formToForm: (text) => mathUnit(text).to("kg").toString(),
  },
  "js-quantities": {
    construct: (n) => Qty(n, "lb"),
    convertMade: ((made: ReturnType<typeof Qty>) => made.to("kg").scalar) as Ways["convertMade"],
    rateTimesArea: (rate, hectares) => Qty(rate, "lb/acre").mul(Qty(hectares, "hectare")).to("kg").scalar,
    read: (text) => Qty(text),
    formToForm: (text) => Qty(text).to("kg").toString(),
  },
};
