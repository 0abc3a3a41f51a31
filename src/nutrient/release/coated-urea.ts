import { notShare } from "../../numeric/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectFlag,
  expectQuantity,
  type FactSource,
  frozen,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { type ReleaseModel, releaseModel } from "./release-model.js";
import { moist, noResponse, rateThrough } from "./release-models.js";
import type { ReleaseRange } from "./release-range.js";

const thesis: Citation = /* @__PURE__ */ frozen({
  title: "Nitrogen use efficiency of polymer-coated urea",
  publisher: "Brigham Young University",
  year: 2014,
  where: "abstract",
  url: "http://scholarsarchive.byu.edu/etd/3985/",
});

/**
 * Polymer-coated urea on bare soil or thatch. Trials disagree, and the band holds them all:
 *
 * - In Utah 80 % or more was out by day 35, whatever duration the label gave (45 to 180 days): the middle is first
 *   order through 80 % on day 35, the high end all at once.
 * - In Alberta, on thatch in a cool summer, some coatings let out most and others only half within a growing season: the
 *   low end is first order through half on day 150. The abstract prints no number of days; 150 is taken for the season.
 * - In Florida packets of granules on turf let go about as a model of 4, 6 and 9 months said, which lies between.
 *
 * Sources: Brigham Young University (Ransom, thesis) 2014; Zhang, Nyborg and Malhi, HortScience 33 (1998) 1203-1206;
 * Cisar and Snyder, meetings of the American Society of Agronomy 2010; abstracts of all three.
 */
export const polymerCoatedOnSurface: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
  name: "polymer-coated urea on the surface or in thatch",
  placement: "surface or thatch",
  coating: "polymer",
  curve: {
    kind: "first order",
    ratePerDay: {
      low: /* @__PURE__ */ rateThrough(0.5, 150),
      mid: /* @__PURE__ */ rateThrough(0.8, 35),
      // Half a day to be all but gone: "at once" with a finite rate.
      high: 20,
    },
  },
  temperature: { kind: "none" },
  observed: { days: 150 },
  assumptions: [
    "first order between the application and one published point for each end; trials disagree by months",
    "field days that swing; under a steady temperature one trial found little release",
    `${noResponse}; none is applied`,
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
export const polymerCoatedInSoil: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
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

/**
 * Two slow coated fertilizers (43-0-0 and 14-14-14) in soil at 25 °C: 63.6 and 70.8 % was out after 220 days. The source
 * gives no response to temperature; the ends take none at all and the steepest of {@link polymerCoatedInSoil}.
 */
export const slowPolymerCoatedInSoil: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
  name: "slow polymer-coated fertilizer in soil, first order",
  placement: "incorporated",
  coating: "polymer",
  curve: {
    kind: "first order",
    ratePerDay: {
      low: /* @__PURE__ */ rateThrough(0.636, 220),
      high: /* @__PURE__ */ rateThrough(0.708, 220),
    },
  },
  temperature: {
    kind: "Arrhenius",
    activationEnergy: { low: 0, mid: 69.9, high: 98 },
    referenceC: 25,
  },
  observed: { days: 220, fromC: 25, toC: 25 },
  assumptions: [
    moist,
    "first order between the application and the one published day",
    `${noResponse}: the ends take none and 98 kJ/mol of other coatings, the middle 69.9`,
  ],
  source: {
    title: "A rapid technique for prediction of nutrient release from polymer coated fertilizers",
    publisher: "Open Journal of Soil Science 1:40-44 (Wang et al.)",
    year: 2011,
    where: "abstract",
    url: "https://doi.org/10.4236/ojss.2011.12005",
  },
});

/** Percent of sulfur-coated pellets gone after three seasons: 3 to 37 % were still there. */
const gone = { low: 63, mid: 80, high: 97 } as const;
/** Days of lag, and share of the nitrogen a day after it, of wax-sealed granules in a trial on the surface. */
const [sealedLag, sealedPerDay] = [25, 0.01] as const;
/** First-order rate that begins with that share a day and ends at what goes in three seasons. */
const slowest: number = sealedPerDay / (gone.low / 100);

/**
 * Sulfur-coated urea on the surface or in thatch: from wax-sealed granules that wait 25 days and then give 1 % a day, up
 * to broken coatings that hold nothing back.
 *
 * Sources: no slower than uncoated urea, Brigham Young University (Ransom, thesis) 2014, abstract; 3 to 37 % of pellets
 * left after three seasons, Waddington and Turner 1980, abstract; the lag of 25 days and 1 % a day are those of a
 * published surface trial whose paper was not at hand (from memory).
 */
export const sulfurCoatedOnSurface: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
  name: "sulfur-coated urea on the surface or in thatch",
  placement: "surface or thatch",
  coating: "sulfur",
  curve: {
    kind: "first order",
    // Middle: 30 % in seven days, within the 11 to 36 % of dissolution rates in print.
    ratePerDay: { low: slowest, mid: /* @__PURE__ */ rateThrough(0.3, 7), high: 20 },
    lagDays: { low: 0, mid: 0, high: sealedLag },
    mostPercent: { low: gone.low, mid: gone.mid, high: 100 },
  },
  temperature: { kind: "none" },
  observed: { days: 1096 },
  assumptions: [
    "first order; the low end waits and then begins with 1 % a day, the high end is all at once",
    "3 to 37 % of the pellets stay closed for years",
    `${noResponse} in figures; warmth speeds it up a lot`,
  ],
  source: thesis,
});

/**
 * A model of sulfur-coated urea in the soil from its seven-day dissolution rate: a wide band, for the rate is no
 * measure across coatings, and a scratch in the coating is the end of it.
 *
 * Equation: first order, `F = A (1 - exp(-k (t - l)))`
 *
 * - high end: `k = -ln(1 - d) / 7`, as in the dissolution test; no lag; `A` = 97 %, or all where `d` is more
 * - low end: `k` begins with 1 % of the nitrogen a day, or is that of the high end where that is slower; a lag `l` of
 *   25 days where the coating is sealed with wax and no lag is stated; `A` = 63 %
 * - `d` share that dissolves in seven days: printed rates are 11 to 36 %
 *
 * The rate rises greatly with temperature, for which no figure was found: the ends take none and a threefold rate for
 * 10 °C, from 25 °C. On the surface {@link releasedNitrogen} widens the band by {@link sulfurCoatedOnSurface}.
 *
 * @param input.sevenDayDissolution - percent of the nitrogen out in the seven-day test, more than 0 and below 100
 * @param input.sealed - whether wax or another soft sealant lies over the sulfur
 * @param input.lagDays - the lag, where the maker states one
 * @throws RatewrightError `range`, `missing`, `type`, `conflict`, `unit/mismatch`
 *
 * Source: dissolution rates and pellets left, Waddington and Turner 1980 (abstract), and Hummel and Waddington, Soil
 * Science Society of America Journal 48 (1984) 191-195 (abstract); temperature and placement, Allen, Hunt and Terman,
 * Agronomy Journal 63 (1971) 529-533 (abstract); lag and 1 % a day as in {@link sulfurCoatedOnSurface}.
 *
 * @example
 * ```ts
 * import { quantity, releasedShares, sulfurCoatedUrea } from "ratewright";
 * const model = sulfurCoatedUrea({ sevenDayDissolution: quantity(25, "%"), sealed: true, source: "the maker's sheet" });
 * const percent = (end: "low" | "high") =>
 *   Array.from(releasedShares(Float64Array.of(7, 25, 56), model.curve, end), (share) => Math.round(100 * share));
 * percent("low"); // => [0, 0, 24]
 * percent("high"); // => [24, 62, 87]
 * ```
 */
export const sulfurCoatedUrea = (input: {
  readonly sevenDayDissolution: Quantity<"1", "none">;
  readonly sealed: boolean;
  readonly lagDays?: ReleaseRange;
  readonly source: FactSource;
}): ReleaseModel => {
  expectFields(input, ["sevenDayDissolution", "sealed", "lagDays", "source"], "input");
  const { lagDays, source } = input;
  const { dissolved, sealed } = allOf({
    dissolved: () => {
      const path = "sevenDayDissolution";
      const given = expectQuantity(
        input.sevenDayDissolution,
        { dimension: "1", of: "none", bound: "positive" },
        path,
      );
      const percent = given.in("%");
      return percent < 100 ? notShare(percent, path) : outOfRange(path, given, { below: 100, unit: "%" });
    },
    sealed: () => expectFlag(input.sealed, "sealed"),
  });
  const fast = rateThrough(dissolved / 100, 7);
  return releaseModel(
    {
      name: `sulfur-coated urea, ${Number(dissolved.toPrecision(3))} % in seven days`,
      placement: "incorporated",
      coating: "sulfur",
      curve: {
        kind: "first order",
        ratePerDay: { low: Math.min(slowest, fast), high: fast },
        lagDays: lagDays ?? { low: 0, high: sealed ? sealedLag : 0 },
        mostPercent: { ...gone, high: Math.max(gone.high, dissolved) },
      },
      temperature: { kind: "Q10", q10: { low: 1, mid: 2, high: 3 }, referenceC: 25 },
      observed: { days: 1096 },
      assumptions: [
        moist,
        "first order from the seven-day dissolution rate, which did not predict the field across coatings",
        "3 to 37 % of the pellets stay closed for years",
        "temperature: no figure is in print; none to a threefold rate for 10 °C",
        ...(sealed && lagDays === undefined ? ["a lag of 0 to 25 days until microbes open the seal"] : []),
      ],
      source,
    },
    "sulfurCoatedUrea",
  );
};
