import { type Citation, expectNumber, expectRecord, type FactSource } from "../../quantity/index.js";
import { type Placement, type ReleaseModel, releaseModel } from "./release-model.js";
import type { ReleaseRange } from "./release-range.js";

const thesis: Citation = {
  title: "Nitrogen use efficiency of polymer-coated urea",
  publisher: "Brigham Young University (Ransom, thesis)",
  year: 2014,
  where: "abstract",
  url: "http://scholarsarchive.byu.edu/etd/3985/",
};
const unmoved = "the source gives no response to temperature; none is applied";
const moist = "the granule stays moist enough to release";

/** First-order rate that lets out a share by a day: `k = -ln(1 - F) / t`. */
const rateOf = (share: number, days: number): number => -Math.log(1 - share) / days;

/** Soluble nitrogen: all of it is in the soil with the first water. That urea takes days to become ammonium is left out. */
export const quickRelease: ReleaseModel = /* @__PURE__ */ releaseModel({
  name: "quick (water-soluble) nitrogen",
  placement: "either",
  curve: { kind: "at once" },
  temperature: { kind: "none" },
  assumptions: ["it dissolves on the day of the application; urea and ammonium count alike"],
  source: "common practice, no source",
});

/**
 * Polymer-coated urea on bare soil or thatch: 80 % or more was out by day 35, whatever duration was on
 * the label (45 to 180 days). Low end: first order through 80 % on day 35; middle: through 90 %, half-way
 * between the printed 80 and all; high end: all at once.
 */
export const polymerCoatedOnSurface: ReleaseModel = /* @__PURE__ */ releaseModel({
  name: "polymer-coated urea on the surface or in thatch",
  placement: "surface or thatch",
  coating: "polymer",
  curve: {
    kind: "first order",
    ratePerDay: {
      low: /* @__PURE__ */ rateOf(0.8, 35),
      mid: /* @__PURE__ */ rateOf(0.9, 35),
      // Half a day to be all but gone: "at once" with a finite rate.
      high: 20,
    },
  },
  temperature: { kind: "none" },
  assumptions: [
    "first order between the application and the one published day",
    "field days that swing; under a steady temperature the trial found little release",
    unmoved,
  ],
  source: thesis,
});

/**
 * Four coated ureas in moist (paddy) soil: first order, 0.0177 to 0.0326 a day at 25 °C, with an apparent
 * activation energy of 69.9 to 98.0 kJ/mol. All four had a lag, whose length is not printed in what was read.
 *
 * Another coating did otherwise: of resin-coated urea in soil 25 and 67 % was leached in four weeks at 5 and
 * 35 °C (Brown, Luebs and Pratt, Agronomy Journal 58:175-178, 1966, abstract). This model gives 3 to 11 % and 71 to
 * 96 %: its response to temperature is the steeper.
 */
export const polymerCoatedInSoil: ReleaseModel = /* @__PURE__ */ releaseModel({
  name: "polymer-coated urea in soil, first order",
  placement: "incorporated",
  coating: "polymer",
  curve: { kind: "first order", ratePerDay: { low: 0.0177, high: 0.0326 } },
  temperature: {
    kind: "Arrhenius",
    activationEnergy: { low: 69.9, high: 98 },
    referenceC: 25,
  },
  assumptions: [
    moist,
    "no lag before the release begins",
    "all nitrogen comes out in the end",
    "a steep response to temperature: in a trial of another coating more came out at 5 °C and less at 35 °C",
  ],
  source: {
    title: "Estimation of the nitrogen liquation of coated urea by kinetic method",
    publisher:
      "Japanese Journal of Soil Science and Plant Nutrition 63:664-668 (Ishibashi, Konno and Kimoto)",
    year: 1992,
    where: "abstract",
  },
});

/** Two slow coated fertilizers (43-0-0 and 14-14-14) in soil at 25 °C: 63.6 and 70.8 % was out after 220 days. */
export const slowPolymerCoatedInSoil: ReleaseModel = /* @__PURE__ */ releaseModel({
  name: "slow polymer-coated fertilizer in soil, first order",
  placement: "incorporated",
  coating: "polymer",
  curve: {
    kind: "first order",
    ratePerDay: {
      low: /* @__PURE__ */ rateOf(0.636, 220),
      high: /* @__PURE__ */ rateOf(0.708, 220),
    },
  },
  temperature: { kind: "none" },
  assumptions: [moist, "first order between the application and the one published day", unmoved, "25 °C"],
  source: {
    title: "A rapid technique for prediction of nutrient release from polymer coated fertilizers",
    publisher: "Open Journal of Soil Science 1:40-44 (Wang et al.)",
    year: 2011,
    where: "abstract",
    url: "https://doi.org/10.4236/ojss.2011.12005",
  },
});

/** Ureaform and methylene urea, uncoated: usually 8 to 12 weeks, by microbes, little in cold soil. */
export const ureaFormaldehyde: ReleaseModel = /* @__PURE__ */ releaseModel({
  name: "ureaform or methylene urea",
  placement: "either",
  curve: { kind: "duration", days: { low: 56, high: 84 } },
  temperature: { kind: "none" },
  assumptions: ["even release over the published duration", "warm, moist soil: microbes release it", unmoved],
  source: {
    title: "Field science: nitrogen sources",
    publisher: "SportsTurf magazine",
    year: 2016,
    where: "February, page 13",
    url: "http://read.dmtmag.com/i/628092-february-2016/12",
  },
});

/**
 * Natural organic nitrogen in warm, moist soil: in ten weeks 20 % (swine waste), 60 % (biosolids) and
 * 70 % (poultry manure and feathers) came out.
 */
export const naturalOrganic: ReleaseModel = /* @__PURE__ */ releaseModel({
  name: "natural organic nitrogen",
  placement: "either",
  curve: {
    kind: "first order",
    ratePerDay: {
      low: /* @__PURE__ */ rateOf(0.2, 70),
      mid: /* @__PURE__ */ rateOf(0.6, 70),
      high: /* @__PURE__ */ rateOf(0.7, 70),
    },
  },
  temperature: { kind: "none" },
  assumptions: ["first order between the application and the one published day", "warm, moist soil", unmoved],
  source: {
    title: "Nitrogen sources (figures of North Carolina State University)",
    publisher: "Cornell University, athletic field programme",
    where: "natural organic sources",
  },
});

/**
 * A model from a duration that a label or a handbook states: all of the nitrogen, evenly, over so many
 * days. That it comes evenly is an assumption. A stated duration of a coated product holds, at best, for
 * granules worked into the soil: that is the placement of the model where it has a coating.
 *
 * @param input.days - shortest and longest duration, days, more than zero
 * @param input.coating - where the granule has one
 * @param input.source - the label or the handbook
 * @throws RatewrightError `range`, `conflict`, `missing`, `not-finite`
 *
 * Source: for coated urea in the field, incorporated granules lasted about as long as the label said and
 * granules on the surface did not: Brigham Young University (Ransom, thesis), 2014, abstract.
 *
 * @example
 * ```ts
 * import { statedDuration } from "ratewright";
 * const model = statedDuration({ days: { low: 90, high: 120 }, coating: "polymer", source: "the label" });
 * model.placement; // => "incorporated"
 * ```
 */
export const statedDuration = (input: {
  readonly days: ReleaseRange;
  readonly coating?: "polymer" | "sulfur" | "polymer and sulfur";
  readonly source: FactSource;
  readonly name?: string;
}): ReleaseModel => {
  expectRecord(input, "input");
  const { days, coating, source } = input;
  const placement: Placement | "either" = coating === undefined ? "either" : "incorporated";
  return releaseModel(
    {
      name: input.name ?? "stated duration",
      placement,
      ...(coating === undefined ? {} : { coating }),
      curve: { kind: "duration", days },
      temperature: { kind: "none" },
      assumptions: ["even release over the stated duration", moist, unmoved],
      source,
    },
    "duration",
  );
};

/**
 * First-order rate, per day, that has let out a share of the nitrogen by a day: what one published point
 * says, if the release is first order.
 *
 * Equation: `k = -ln(1 - F / 100) / t`
 *
 * - `F` percent released, above 0 and below 100
 * - `t` days since the application, above 0
 *
 * @throws RatewrightError `range`, `not-finite`
 *
 * Source: first-order kinetics of coated urea, Ishibashi et al. 1992 (abstract).
 *
 * @example
 * ```ts
 * import { firstOrderRate } from "ratewright";
 * Number(firstOrderRate({ percent: 80, days: 35 }).toFixed(3)); // => 0.046
 * ```
 */
export const firstOrderRate = (input: { readonly percent: number; readonly days: number }): number =>
  rateOf(
    expectNumber(input?.percent, "percent", { above: 0, below: 100 }) / 100,
    expectNumber(input.days, "days", { above: 0 }),
  );
