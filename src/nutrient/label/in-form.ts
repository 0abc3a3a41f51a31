import { hasOwn } from "../../quantity/house.js";
import { expectAmount, fail, frozen, Quantity } from "../../quantity/index.js";
import { type FormOf, formFactor } from "./forms.js";

/** The dimensions in which a mass of a nutrient appears. */
export type NutrientDimension = (typeof dimensions)[number];

const dimensions: readonly ["mass", "mass/area", "mass/volume", "mass/time", "mass/area/time"] =
  /* @__PURE__ */ frozen(["mass", "mass/area", "mass/volume", "mass/time", "mass/area/time"]);

/**
 * The same amount of a nutrient, stated in another form: phosphorus as phosphate, potash as potassium,
 * nitrate as nitrate-nitrogen.
 *
 * Equation: `m(to) = m(from) * (w(from) / w(to))`, where `w(x) = n * A / M` is the share of the element
 * in `x` by mass: `n` atoms of atomic weight `A` in a formula of weight `M` (g/mol). The factors follow
 * from atomic weights: P2O5 to P 0.43643, K2O to K 0.83015. Handbooks print them rounded, from 0.43 to
 * 0.44 and 0.83.
 *
 * Range: any amount of zero or more. Nitrate-N and ammonium-N are different nitrogen and do not convert.
 *
 * @param amount - a mass, or a rate by mass, of the nutrient in one form
 * @param form - the form wanted
 * @throws RatewrightError `substance/mismatch` where the two are not forms of one nutrient; `range`, `unit/mismatch`,
 *   `type`
 *
 * Source: atomic weights of IUPAC/CIAAW (Prohaska et al. 2022).
 *
 * @example
 * ```ts
 * import { inForm, quantity } from "ratewright";
 * const phosphorus = inForm(quantity(100, "lb", "P2O5"), "P");
 * Number(phosphorus.in("lb").toFixed(3)); // => 43.643
 * phosphorus.of; // => "P"
 * ```
 */
export const inForm = <D extends NutrientDimension, S extends string, const F extends FormOf<S>>(
  amount: Quantity<D, S>,
  form: F,
): Quantity<D, F> => converted<D, F>(amount, form);

/** The amount in another form of its nutrient; its dimension stays. */
const converted = <D extends NutrientDimension, F extends string>(
  amount: unknown,
  form: F,
): Quantity<D, F> => {
  const from = expectAmount(amount, { dimensions, bound: "non-negative" }, "amount");
  const way = hasOwn(nitrogenParts, from.of) ? "; nitrogenOf(amount) counts it as N" : "";
  const factor =
    formFactor(from.of, form) ?? fail("substance/mismatch", "form", form, `another form of ${from.of}${way}`);
  return new Quantity(from.value * factor, from.unit, form, from.dimension as D);
};

/**
 * The oxide of an amount of an element: P as P2O5, K as K2O, Ca as CaO, Mg as MgO.
 *
 * Equation, range, source and errors: see {@link inForm}, of which it is the short form.
 *
 * @throws RatewrightError as {@link inForm}
 *
 * @example
 * ```ts
 * import { oxideOf, quantity } from "ratewright";
 * Number(oxideOf(quantity(1, "lb/1000 ft2", "P")).in("lb/1000 ft2").toFixed(4)); // => 2.2913
 * ```
 */
export const oxideOf = <D extends NutrientDimension, S extends keyof Oxides>(
  amount: Quantity<D, S>,
): Quantity<D, Oxides[S]> => converted<D, Oxides[S]>(amount, formOf(oxides, amount, "P, K, Ca, Mg or Si"));

/**
 * The element in an amount of an oxide: P2O5 as P, K2O as K, CaO as Ca, MgO as Mg.
 *
 * Equation, range, source and errors: see {@link inForm}, of which it is the short form.
 *
 * @throws RatewrightError as {@link inForm}
 *
 * @example
 * ```ts
 * import { elementOf, quantity } from "ratewright";
 * Number(elementOf(quantity(250, "lb", "K2O")).in("lb").toFixed(1)); // => 207.5
 * ```
 */
export const elementOf = <D extends NutrientDimension, S extends keyof Elements>(
  amount: Quantity<D, S>,
): Quantity<D, Elements[S]> =>
  converted<D, Elements[S]>(amount, formOf(elements, amount, "P2O5, K2O, CaO, MgO or SiO2"));

/** The substances that hold nitrogen, of which {@link nitrogenOf} takes the nitrogen. */
export type NitrogenForm = "N" | "N:quick" | "N:slow" | "NO3-N" | "NH4-N" | "NO3";

/** What of each counts as nitrogen, by mass; nitrate as the ion by its formula. */
const nitrogenParts: Readonly<Record<NitrogenForm, () => number>> = {
  N: () => 1,
  "N:quick": () => 1,
  "N:slow": () => 1,
  "NO3-N": () => 1,
  "NH4-N": () => 1,
  NO3: () => formFactor("NO3", "NO3-N") as number,
};

/**
 * The nitrogen in an amount of nitrate, nitrate-nitrogen, ammonium-nitrogen, or quick- or slow-release nitrogen: what a
 * credit for irrigation water or for a soil test takes off a target of N.
 *
 * Equation: `m(N) = m * f`, with `f` 1 for what is told as nitrogen (NO3-N, NH4-N, N:slow, ...) and
 * `A(N) / (A(N) + 3 * A(O))` = 0.2259 for nitrate told as the ion NO3.
 *
 * It is a part of the nitrogen, not all of it: add the parts that the laboratory tells, each once. Whether a plant gets
 * it this season is another question.
 *
 * @throws RatewrightError `substance/mismatch` for what holds no nitrogen; `range`, `unit/mismatch`
 *
 * Source: atomic weights of IUPAC/CIAAW; 45 ppm of NO3 are 10 ppm of NO3-N ("Nitrogen in irrigation water", University of
 * California).
 *
 * @example
 * ```ts
 * import { nitrogenOf, quantity } from "ratewright";
 * const credit = nitrogenOf(quantity(27, "lb/acre", "NO3-N"));
 * credit.toString(); // => "27 lb/acre of N"
 * quantity(100, "lb/acre", "N").minus(credit).in("lb/acre"); // => 73
 * Number(nitrogenOf(quantity(45, "mg/L", "NO3")).in("mg/L").toFixed(1)); // => 10.2
 * ```
 */
export const nitrogenOf = <D extends NutrientDimension, S extends NitrogenForm>(
  amount: Quantity<D, S>,
): Quantity<D, "N"> => {
  const from = expectAmount(amount, { dimensions, bound: "non-negative" }, "amount");
  return hasOwn(nitrogenParts, from.of)
    ? new Quantity(from.value * nitrogenParts[from.of as S](), from.unit, "N", from.dimension as D)
    : fail(
        "substance/mismatch",
        "amount",
        from,
        "an amount of NO3-N, NH4-N, NO3 or another form of nitrogen",
      );
};

/** The oxide in which labels and recommendations state an element. */
export interface Oxides {
  readonly P: "P2O5";
  readonly K: "K2O";
  readonly Ca: "CaO";
  readonly Mg: "MgO";
  readonly Si: "SiO2";
}

/** The element of an oxide. */
export interface Elements {
  readonly P2O5: "P";
  readonly K2O: "K";
  readonly CaO: "Ca";
  readonly MgO: "Mg";
  readonly SiO2: "Si";
}

/** The other form of what an amount is of, by a table. */
const formOf = <T extends object, S extends keyof T>(
  table: T,
  amount: { readonly of: S } | undefined,
  forms: string,
): T[S] => {
  const of: unknown = amount?.of;
  return typeof of === "string" && hasOwn(table, of)
    ? table[of as S]
    : fail("substance/mismatch", "amount", amount, `an amount of ${forms}`);
};

const oxides: Oxides = { P: "P2O5", K: "K2O", Ca: "CaO", Mg: "MgO", Si: "SiO2" };
const elements: Elements = { P2O5: "P", K2O: "K", CaO: "Ca", MgO: "Mg", SiO2: "Si" };
