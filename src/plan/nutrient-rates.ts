import { formFactor, nutrientForms } from "../nutrient/index.js";
import { Quantity } from "../quantity/index.js";

/** Substances per area, by name: what an application adds, or what has gone down. */
export type NutrientRates = Readonly<Record<string, Quantity<"mass/area", string>>>;

type Rate = Quantity<"mass/area", string>;

/** The sum of rates, substance by substance. */
export const addRates = (rates: readonly NutrientRates[]): NutrientRates => {
  if (rates.length === 1) return rates[0] as NutrientRates;
  const total: Record<string, Rate> = {};
  for (const rate of rates) {
    for (const [of, q] of Object.entries(rate)) total[of] = total[of] === undefined ? q : total[of].plus(q);
  }
  return total;
};

/** A rate in a unit that is only known when the program runs. */
export const inUnit = (q: { readonly unit: string }, unit: string): number =>
  (q as { in(unit: string): number } & typeof q).in(unit);

/** The other form of the same nutrient that is stated, or nothing. */
const otherForm = (rates: NutrientRates, of: string): string | undefined => {
  for (const forms of Object.values(nutrientForms) as readonly (readonly string[])[]) {
    if (!forms.includes(of)) continue;
    return forms.find((form) => rates[form] !== undefined && formFactor(form, of) !== undefined);
  }
  return undefined;
};

/**
 * An amount of a substance in a unit: P from P2O5 where only that is there, and K from K2O; 0 where
 * there is none. Elemental P is never taken for P2O5.
 */
export const amountOf = (rates: NutrientRates, of: string, unit: string): number => {
  const stated = rates[of];
  if (stated !== undefined) return inUnit(stated, unit);
  const form = otherForm(rates, of);
  return form === undefined ? 0 : inUnit(rates[form] as Rate, unit) * (formFactor(form, of) as number);
};

/** Whether a substance is stated, in this form or in another of the same nutrient. */
export const isStated = (rates: NutrientRates, of: string): boolean =>
  rates[of] !== undefined || otherForm(rates, of) !== undefined;

/** What was added to stated rates to make them complete. */
export type Completion = "no slow stated" | "no total stated";

const rate = (value: number, unit: string, of: string): Rate => new Quantity(value, unit, of, "mass/area");

/** Nitrogen in a unit that is stated as nitrate and ammonium: all of it is soluble. */
const mineralIn = (stated: NutrientRates, unit: string): number => {
  const { "NO3-N": nitrate, NO3: ion, "NH4-N": ammonium } = stated;
  const asIon = ion === undefined ? 0 : inUnit(ion, unit) * (formFactor("NO3", "NO3-N") as number);
  return (
    (nitrate === undefined ? asIon : inUnit(nitrate, unit)) +
    (ammonium === undefined ? 0 : inUnit(ammonium, unit))
  );
};

/** The nitrogen that is stated as soluble, as nitrate and ammonium, and as slow; nothing where none of it is. */
export const nitrogenParts = (
  stated: NutrientRates,
  unit: string,
): { readonly soluble: number; readonly slow: number } => {
  const { "N:soluble": soluble, "N:slow": slow } = stated;
  return {
    // Nitrate and ammonium are a part of the soluble nitrogen, not added to it.
    soluble: Math.max(soluble === undefined ? 0 : inUnit(soluble, unit), mineralIn(stated, unit)),
    slow: slow === undefined ? 0 : inUnit(slow, unit),
  };
};

const withTwin = (rates: Record<string, Rate>, element: string, oxide: string): void => {
  const [e, o] = [rates[element], rates[oxide]];
  if (e !== undefined && o === undefined)
    rates[oxide] = rate(e.value * (formFactor(element, oxide) as number), e.unit, oxide);
  if (o !== undefined && e === undefined)
    rates[element] = rate(o.value * (formFactor(oxide, element) as number), o.unit, element);
};

/**
 * Completes stated rates, so that every limit finds its form: soluble nitrogen is the total less the slow,
 * the total at least what is stated of its parts (soluble, nitrate and ammonium, slow), and phosphorus and
 * potassium stand in both forms. Where no slow nitrogen is stated, all of it counts as soluble (common
 * practice, no source).
 */
export const completeRates = (
  stated: NutrientRates,
): { readonly rates: NutrientRates; readonly completed: readonly Completion[] } => {
  const rates: Record<string, Rate> = { ...stated };
  const completed: Completion[] = [];
  const { N: total, "N:soluble": soluble, "N:slow": slow } = stated;
  if (total !== undefined) {
    const { unit, value } = total;
    if (soluble === undefined) {
      const rest = slow === undefined ? value : Math.max(0, value - inUnit(slow, unit));
      rates["N:soluble"] = rate(rest, unit, "N:soluble");
      if (slow === undefined && value > 0) completed.push("no slow stated");
    }
    if (slow === undefined) {
      const rest = soluble === undefined ? 0 : Math.max(0, value - inUnit(soluble, unit));
      rates["N:slow"] = rate(rest, unit, "N:slow");
    }
  } else {
    const one = soluble ?? slow ?? stated["NO3-N"] ?? stated.NO3 ?? stated["NH4-N"];
    if (one !== undefined) {
      const { unit } = one;
      const parts = nitrogenParts(stated, unit);
      rates.N = rate(parts.soluble + parts.slow, unit, "N");
      rates["N:soluble"] = rate(parts.soluble, unit, "N:soluble");
      rates["N:slow"] ??= rate(0, unit, "N:slow");
      completed.push("no total stated");
    }
  }
  withTwin(rates, "P", "P2O5");
  withTwin(rates, "K", "K2O");
  return { rates, completed };
};

/** The share of the nitrogen that is slow, in percent; `undefined` where there is none or it is not stated. */
export const slowShareOf = (rates: NutrientRates): number | undefined => {
  const { N: total, "N:slow": slow } = rates;
  return total === undefined || slow === undefined || total.value === 0
    ? undefined
    : (inUnit(slow, total.unit) * 100) / total.value;
};
