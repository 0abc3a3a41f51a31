import { exceeds } from "../../numeric/index.js";
import { formFactor, nutrientForms } from "../../nutrient/index.js";
import { Quantity } from "../../quantity/index.js";

/** Substances per area, by name: what an application adds, or what has gone down. */
export type NutrientRates = Readonly<Record<string, Quantity<"mass/area", string>>>;

type Rate = Quantity<"mass/area", string>;

/**
 * The sum of rates, substance by substance. A form of a nutrient that one of them states (MgO) takes what the
 * others state in another form of it (Mg): each form in the sum is all of the nutrient.
 */
export const addRates = (rates: readonly NutrientRates[]): NutrientRates => {
  const [only = {}, ...others] = rates.filter(holdsAny);
  if (others.length === 0) return only;
  const total: Record<string, Rate> = {};
  for (const rate of rates) {
    for (const of of Object.keys(rate)) {
      const q = rate[of] as Rate;
      total[of] = total[of]?.plus(q) ?? q;
    }
  }
  for (const of of Object.keys(total)) {
    const forms = otherForms.get(of);
    if (forms === undefined || !forms.some(({ form }) => total[form] !== undefined)) continue;
    for (const rate of rates) {
      const { unit } = total[of] as Rate;
      if (rate[of] === undefined && isStated(rate, of))
        total[of] = (total[of] as Rate).plus(new Quantity(amountOf(rate, of, unit), unit, of, "mass/area"));
    }
  }
  return total;
};

const holdsAny = (rate: NutrientRates): boolean => Object.keys(rate).length > 0;

/** A rate in a unit that is only known when the program runs. */
export const inUnit = (q: { readonly unit: string }, unit: string): number =>
  (q as { in(unit: string): number } & typeof q).in(unit);

/** The other forms of the same nutrient, and how much of this one is in each by mass; found once for all rates. */
const otherForms: ReadonlyMap<string, readonly { readonly form: string; readonly factor: number }[]> =
  /* @__PURE__ */ new Map(
    Object.values(nutrientForms).flatMap((forms: readonly string[]) =>
      forms.map((of) => [
        of,
        forms.flatMap((form) => {
          const factor = form === of ? undefined : formFactor(form, of);
          return factor === undefined ? [] : [{ form, factor }];
        }),
      ]),
    ),
  );

/** Those substances of a label that can tell how much there is of the wanted ones. */
export const tellingOf = (wanted: Wanted): Wanted => {
  const telling = new Set(wanted);
  for (const of of wanted) for (const { form } of otherForms.get(of) ?? []) telling.add(form);
  return telling;
};

/** The substances that are asked for, where not all are: a large ledger is read for these alone. */
export type Wanted = ReadonlySet<string>;

/** Up to here no form of a nutrient overflows; beyond it all of them are built, and one that does is told. */
export const mostUnchecked = 1e200;

/**
 * An amount of a substance in a unit: P from P2O5 where only that is there, and K from K2O; 0 where
 * there is none. Elemental P is never taken for P2O5.
 */
export const amountOf = (rates: NutrientRates, of: string, unit: string): number => {
  const stated = rates[of];
  if (stated !== undefined) return inUnit(stated, unit);
  for (const { form, factor } of otherForms.get(of) ?? []) {
    const other = rates[form];
    if (other !== undefined) return inUnit(other, unit) * factor;
  }
  return 0;
};

/** Whether a substance is stated, in this form or in another of the same nutrient. */
export const isStated = (rates: NutrientRates, of: string): boolean =>
  rates[of] !== undefined || (otherForms.get(of) ?? []).some(({ form }) => rates[form] !== undefined);

const twins = [
  ["P", "P2O5"],
  ["K", "K2O"],
] as const;

/** What was added to stated rates to make them complete. */
export type Completion = "no slow stated" | "no total stated" | "rest not stated";

const rate = (value: number, unit: string, of: string): Rate => new Quantity(value, unit, of, "mass/area");

/** Nitrogen in a unit that is stated as nitrate and ammonium: all of it is quick-release. */
const mineralIn = (stated: NutrientRates, unit: string): number => {
  const { "NO3-N": nitrate, NO3: ion, "NH4-N": ammonium } = stated;
  const asIon = ion === undefined ? 0 : inUnit(ion, unit) * (formFactor("NO3", "NO3-N") as number);
  return (
    (nitrate === undefined ? asIon : inUnit(nitrate, unit)) +
    (ammonium === undefined ? 0 : inUnit(ammonium, unit))
  );
};

/** The nitrogen that is stated as quick-release, as nitrate and ammonium, and as slow; nothing where none of it is. */
export const nitrogenParts = (
  stated: NutrientRates,
  unit: string,
): { readonly quick: number; readonly slow: number } => {
  const { "N:quick": quick, "N:slow": slow } = stated;
  return {
    // Nitrate and ammonium are a part of the quick-release nitrogen, not added to it.
    quick: Math.max(quick === undefined ? 0 : inUnit(quick, unit), mineralIn(stated, unit)),
    slow: slow === undefined ? 0 : inUnit(slow, unit),
  };
};

const fillFrom = (rates: Record<string, Rate>, element: string, oxide: string, wanted?: Wanted): void => {
  if ((wanted !== undefined && !wanted.has(element)) || rates[element] !== undefined) return;
  const o = rates[oxide];
  if (o !== undefined)
    rates[element] = rate(o.value * (formFactor(oxide, element) as number), o.unit, element);
};

/**
 * Completes stated rates, so that every limit finds its form: quick-release nitrogen is the total less the slow,
 * the total at least what is stated of its parts (quick-release, nitrate and ammonium, slow), and phosphorus and
 * potassium stand in both forms. Where neither slow nor quick-release nitrogen is stated, all of it counts as quick-release,
 * and so does what is stated as neither (common practice, no source). Where only the quick-release is stated, the rest
 * of the total is slow.
 *
 * @param wanted - nothing is added but these, where only they are asked for
 */
export const completeRates = (
  stated: NutrientRates,
  wanted?: Wanted,
): { readonly rates: NutrientRates; readonly completed: readonly Completion[] } => {
  const completed: Completion[] = [];
  let asked = wanted;
  let twinned = false;
  let alone = true;
  for (const of in stated) {
    alone &&= of === "N";
    if ((stated[of] as Rate).value > mostUnchecked) asked = undefined;
    twinned ||= of === "P" || of === "P2O5" || of === "K" || of === "K2O";
  }
  const { N: total, "N:quick": quick, "N:slow": slow } = stated;
  if (alone && total !== undefined && asked?.has("N:quick") !== false) {
    // Most lines of a log state a total alone. A record written down at once is made many times as fast as one that grows.
    const quick = rate(total.value, total.unit, "N:quick");
    const rates =
      asked?.has("N:slow") === false
        ? { N: total, "N:quick": quick }
        : { N: total, "N:quick": quick, "N:slow": rate(0, total.unit, "N:slow") };
    return { rates, completed: total.value > 0 ? ["no slow stated"] : [] };
  }
  const rates: Record<string, Rate> = { ...stated };
  if (total !== undefined) {
    const { unit, value } = total;
    if (quick === undefined && asked?.has("N:quick") !== false) {
      const rest = slow === undefined ? value : Math.max(0, value - inUnit(slow, unit));
      rates["N:quick"] = rate(rest, unit, "N:quick");
    }
    if (quick === undefined && slow === undefined && value > 0) completed.push("no slow stated");
    if (quick !== undefined && slow !== undefined) {
      const rest = value - inUnit(slow, unit);
      if (exceeds(rest, inUnit(quick, unit))) {
        rates["N:quick"] = rate(rest, unit, "N:quick");
        completed.push("rest not stated");
      }
    }
    if (slow === undefined && asked?.has("N:slow") !== false) {
      const rest = quick === undefined ? 0 : Math.max(0, value - inUnit(quick, unit));
      rates["N:slow"] = rate(rest, unit, "N:slow");
    }
  } else {
    const one = quick ?? slow ?? stated["NO3-N"] ?? stated.NO3 ?? stated["NH4-N"];
    if (one !== undefined) {
      const { unit } = one;
      const parts = nitrogenParts(stated, unit);
      rates.N = rate(parts.quick + parts.slow, unit, "N");
      rates["N:quick"] = rate(parts.quick, unit, "N:quick");
      rates["N:slow"] ??= rate(0, unit, "N:slow");
      completed.push("no total stated");
    }
  }
  if (twinned)
    for (const [one, other] of twins) {
      fillFrom(rates, other, one, asked);
      fillFrom(rates, one, other, asked);
    }
  return { rates, completed };
};

/** The share of the nitrogen that is slow, in percent; `undefined` where there is none or it is not stated. */
export const slowShareOf = (rates: NutrientRates): number | undefined => {
  const { N: total, "N:slow": slow } = rates;
  return total === undefined || slow === undefined || total.value === 0
    ? undefined
    : (inUnit(slow, total.unit) * 100) / total.value;
};
