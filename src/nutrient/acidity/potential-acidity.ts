import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  fail,
  outOfRange,
  Quantity,
  timesOf,
} from "../../quantity/index.js";
import { atomicWeights, formulaWeight } from "../label/atomic-weights.js";
import { eachOf, listOf } from "../label/under-path.js";

/**
 * How much of the nitrogen is taken to acidify.
 *
 * - `"half nitrogen credit"`: the classic (Pierre-type) figure of labels and handbooks: half of the
 *   nitrogen is taken up as nitrate, which gives the soil a base back.
 * - `"full nitrification"`: all of it becomes nitrate and leaches: the most that it can do.
 */
export type AcidityConvention = "half nitrogen credit" | "full nitrification";

/** Nitrogen sources whose acidity follows from their formula. */
export type AcidSource =
  | "urea"
  | "ammonia"
  | "ammonium nitrate"
  | "urea ammonium nitrate"
  | "ammonium sulfate"
  | "monoammonium phosphate"
  | "diammonium phosphate"
  | "nitrate";

/** Acid equivalents per mole of nitrogen once all of it is nitrate: 1 for each N of urea, 2 for each of an ammonium salt of a strong acid. */
const acidPerNitrogen: Readonly<Record<AcidSource, number>> = {
  urea: 1,
  ammonia: 1,
  "ammonium nitrate": 1,
  "urea ammonium nitrate": 1,
  "ammonium sulfate": 2,
  "monoammonium phosphate": 2,
  "diammonium phosphate": 1.5,
  nitrate: 0,
};

const calciumCarbonate = { Ca: 1, C: 1, O: 3 } as const;
/** Mass of CaCO3 that neutralizes the acid of one mole. */
const perEquivalent = (): number => formulaWeight(calciumCarbonate) / 2;

const conventions = ["half nitrogen credit", "full nitrification"] as const;

/** An acidity as CaCO3, per mass of nitrogen or of product. */
const acidityOf = <S extends string>(value: number, unit: string, of: S): Quantity<"mass/mass", S> =>
  new Quantity(value, unit, of, "mass/mass");

/**
 * The potential acidity of a nitrogen source per mass of its nitrogen, from its formula: the mass of pure
 * calcium carbonate that would neutralize the acid. Negative for a base.
 *
 * Equation: `a = k M / (2 A)`
 *
 * - `k` acid equivalents per mole of N: by full nitrification 1 for urea, ammonia and ammonium nitrate,
 *   2 for ammonium sulfate and monoammonium phosphate, 1.5 for diammonium phosphate, 0 for nitrate (of
 *   calcium, potassium or sodium); by the half credit half less
 * - `M` = 100.086 g/mol of CaCO3, `A` = 14.007 g/mol of N; `M / (2 A)` = 3.573
 *
 * Range: a convention, not a measurement: what a soil does depends on uptake, leaching and buffering.
 * Tables print 1.56 to 1.83 for urea, 5.24 to 5.4 for ammonium sulfate, -1.29 (calcium nitrate as sold,
 * which holds some ammonium) to -2.0 (potassium nitrate) for nitrates, where the formula gives -1.79.
 *
 * @throws RatewrightError `type`, `missing` without a convention or a source
 *
 * Source: "Acidity generated from common fertilizers", crop adviser study wiki, table 2: 1.8, 5.4 and 3.6
 * are `k` = 0.5, 1.5 and 1; the convention after Pierre 1933 (from memory).
 *
 * @example
 * ```ts
 * import { potentialAcidityOfSource } from "ratewright";
 * const sulfate = potentialAcidityOfSource({ source: "ammonium sulfate", convention: "half nitrogen credit" });
 * Number(sulfate.in("lb/lb").toFixed(2)); // => 5.36
 * ```
 */
export const potentialAcidityOfSource = (input: {
  readonly source: AcidSource;
  readonly convention: AcidityConvention;
}): Quantity<"mass/mass", "CaCO3 equivalent/N"> => {
  expectFields(input, ["source", "convention"], "input");
  const { convention, source } = allOf({
    convention: () => expectOneOf(input.convention, conventions, "convention"),
    source: () => expectOneOf(input.source, Object.keys(acidPerNitrogen) as AcidSource[], "source"),
  });
  const k = acidPerNitrogen[source] - (convention === "half nitrogen credit" ? 0.5 : 0);
  return acidityOf((k * perEquivalent()) / atomicWeights.N, "kg/kg", "CaCO3 equivalent/N");
};

/** Equivalents per mole: acid-forming above zero, base-forming below. One of the three of phosphate counts. */
const charges = { P: 1, S: 2, Cl: 1, K: -1, Na: -1, Ca: -2, Mg: -2 } as const;

/** Percent by weight, as elements. */
export type AcidComposition = Readonly<Partial<Record<"N" | keyof typeof charges, number>>>;

/**
 * The potential acidity of a material from its composition: nitrogen, sulfur, chloride and phosphorus form
 * acid, potassium, sodium, calcium and magnesium base.
 *
 * Equation: `a = (M / 2) (f N / A_N + P / A_P + 2 S / A_S + Cl / A_Cl - K / A_K - Na / A_Na - 2 Ca / A_Ca - 2 Mg / A_Mg)`
 *
 * - `N`, `P`, ... percent by weight, as elements (not oxides)
 * - `A` atomic weights, `M` that of CaCO3, g/mol
 * - `f` = 0.5 for the half nitrogen credit, 1 for full nitrification and leaching
 *
 * Range: the whole composition, for an element left out counts as none: ammonium sulfate as nitrogen alone
 * reads 38 and not 112. Iron, zinc, manganese and copper are not counted; carbonates and oxides come out at
 * their calcium carbonate equivalent, elemental sulfur at what it forms once it is sulfate. It gives 112 lb per
 * 100 lb for ammonium sulfate where tables print 110, and 56 for monoammonium phosphate (56 to 65).
 *
 * Sources disagree: a table prints 218 lb per 100 lb for sulfur, which fits a material of 70 %; pure sulfur is 312.
 *
 * @param input.convention - `"half nitrogen credit"` or `"full nitrification"`
 * @returns CaCO3 per product; in `% w/w` it is pounds per 100 lb. Negative for a base
 * @throws RatewrightError `range` (over 100 % in all), `missing`, `type`, `not-finite`
 *
 * Source: method of Pierre 1933 (from memory); the half credit as in Oregon State University, table 26-2,
 * and other tables, with which it agrees to a few percent.
 *
 * @example
 * ```ts
 * import { potentialAcidity } from "ratewright";
 * const nitrate = potentialAcidity({ percent: { N: 13, K: 36.5 }, convention: "half nitrogen credit" });
 * Number(nitrate.in("% w/w").toFixed(1)); // => -23.5
 * ```
 */
export const potentialAcidity = (input: {
  readonly percent: AcidComposition;
  readonly convention: AcidityConvention;
}): Quantity<"mass/mass", "CaCO3 equivalent/product"> => {
  expectFields(input, ["percent", "convention"], "input");
  const { convention, shares } = allOf({
    convention: () => expectOneOf(input.convention, conventions, "convention"),
    shares: () => readComposition(input.percent),
  });
  const nitrogen = convention === "full nitrification" ? 1 : 0.5;
  const acid = shares.reduce(
    (sum, [element, share]) =>
      sum + ((element === "N" ? nitrogen : charges[element]) * share) / atomicWeights[element],
    0,
  );
  return acidityOf(acid * perEquivalent(), "% w/w", "CaCO3 equivalent/product");
};

type AcidElement = keyof AcidComposition;
const acidElements = ["N", "P", "S", "Cl", "K", "Na", "Ca", "Mg"] as const satisfies readonly AcidElement[];

/** Percent by weight of each element that is stated. */
const readComposition = (input: unknown): readonly (readonly [AcidElement, number])[] => {
  const given = expectRecord(input, "percent", "percentages, as elements");
  const stated = Object.keys(given).slice(0, 20);
  if (stated.length === 0) fail("missing", "percent", described("nothing"), "at least one element");
  const shares = eachOf(
    stated,
    (name) => `percent.${name.slice(0, 40)}`,
    (name) => {
      const element =
        acidElements.find((one) => one === name) ??
        fail("substance/unknown", "", name, "N, P, S, Cl, K, Na, Ca or Mg, as elements");
      return [element, expectNumber(given[name], "", { min: 0, max: 100 })] as const;
    },
  );
  const total = shares.reduce((sum, [, share]) => sum + share, 0);
  return total > 100 * (1 + 1e-9)
    ? outOfRange("percent", described(`${total} % in all`), { max: 100, unit: "%" }, "{} in all")
    : shares;
};

/**
 * Potential acidity per mass of nitrogen from the figure per mass of product that tables and labels print.
 *
 * Equation: `a = A * 100 / n`
 *
 * - `A` CaCO3 per product: `% w/w` for pounds per 100 lb, `lb/US ton` for pounds per ton; below zero for a base
 * - `n` percent of nitrogen in the product
 *
 * @param options.nitrogenPercent - `n`
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: "N source potential acidity and basicity", growers' page: ammonium sulfate 2200 lb per ton,
 * with 21 % N 5.24 lb per lb N.
 *
 * @example
 * ```ts
 * import { acidityPerNitrogen, quantity } from "ratewright";
 * const stated = quantity(2200, "lb/US ton", "CaCO3 equivalent/product");
 * Number(acidityPerNitrogen(stated, { nitrogenPercent: 21 }).in("lb/lb").toFixed(2)); // => 5.24
 * ```
 */
export const acidityPerNitrogen = (
  acidity: Quantity<"mass/mass", "CaCO3 equivalent/product">,
  options: { readonly nitrogenPercent: number },
): Quantity<"mass/mass", "CaCO3 equivalent/N"> => {
  const { stated, percent } = allOf({
    stated: () =>
      expectQuantity(acidity, { dimension: "mass/mass", of: "CaCO3 equivalent/product" }, "acidity").in(
        "% w/w",
      ),
    options: () => expectFields(options, ["nitrogenPercent"], "options"),
    percent: () => expectNumber(Object(options).nitrogenPercent, "nitrogenPercent", { above: 0, max: 100 }),
  });
  return acidityOf(stated / percent, "kg/kg", "CaCO3 equivalent/N");
};

/** Nitrogen of one source in a season, with its potential acidity. */
export interface AcidifyingNitrogen {
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly acidity: Quantity<"mass/mass", "CaCO3 equivalent/N">;
}

/**
 * The calcium carbonate, as pure CaCO3, that offsets the potential acidity of a season's nitrogen.
 *
 * Equation: `L = sum(N_i a_i)`
 *
 * - `N_i` nitrogen of source `i` in the season, mass per area
 * - `a_i` its potential acidity, CaCO3 per N; below zero for a base
 *
 * The result is below zero where the bases outweigh. It is what the nitrogen adds, not what the soil
 * needs: a lime need comes from a soil test, and the amount of a liming material from its own calcium
 * carbonate equivalent.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: factors per pound of nitrogen, University of California table "Nitrogen fertilizer
 * characteristics" (ammonium sulfate 5.24, urea 1.56).
 *
 * @example
 * ```ts
 * import { limeForNitrogen, potentialAcidityOfSource, quantity } from "ratewright";
 * const lime = limeForNitrogen([
 *   {
 *     nitrogen: quantity(4, "lb/1000 ft2", "N"),
 *     acidity: potentialAcidityOfSource({ source: "urea", convention: "half nitrogen credit" }),
 *   },
 * ]);
 * Number(lime.in("lb/1000 ft2").toFixed(2)); // => 7.15
 * lime.of; // => "CaCO3 equivalent"
 * ```
 */
export const limeForNitrogen = (
  season: readonly AcidifyingNitrogen[],
): Quantity<"mass/area", "CaCO3 equivalent"> => {
  const list = listOf(season, "season", "source", mostSources);
  const parts = eachOf(list, "season", (item) => {
    const entry = expectFields(item, ["nitrogen", "acidity"], "", "{ nitrogen, acidity }");
    const { nitrogen, acidity } = allOf({
      nitrogen: () =>
        expectQuantity(
          entry.nitrogen,
          { dimension: "mass/area", of: "N", bound: "non-negative" },
          "nitrogen",
        ),
      acidity: () =>
        expectQuantity(entry.acidity, { dimension: "mass/mass", of: "CaCO3 equivalent/N" }, "acidity"),
    });
    return expectQuantity(
      timesOf(nitrogen, acidity),
      { dimension: "mass/area", of: "CaCO3 equivalent" },
      "lime",
    );
  });
  return parts.reduce((sum, part) => sum.plus(part));
};

const mostSources = 1000;
