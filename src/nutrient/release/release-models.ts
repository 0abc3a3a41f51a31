import { expectFields, expectNumber, type FactSource, fail, frozen, toldBy } from "../../quantity/index.js";
import { type Placement, type ReleaseModel, releaseModel } from "./release-model.js";
import type { ReleaseRange } from "./release-range.js";

/** First-order rate that lets out a share by a day: `k = -ln(1 - F) / t`. */
export const rateThrough = (share: number, days: number): number => -Math.log1p(-share) / days;

/** What a model says of temperature where its source says nothing. */
export const noResponse = "the source gives no response to temperature";
/** What every model in the soil takes for granted. */
export const moist = "the granule stays moist enough to release";

/** Soluble nitrogen: all of it is in the soil with the first water. That urea takes days to become ammonium is left out. */
export const quickRelease: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
  name: "quick (water-soluble) nitrogen",
  placement: "either",
  curve: { kind: "at once" },
  temperature: { kind: "none" },
  assumptions: ["it dissolves on the day of the application; urea and ammonium count alike"],
  source: "common practice, no source",
});

/**
 * Natural organic nitrogen, of which microbes set free what they can: a wide band, for materials differ more than
 * models of them.
 *
 * - Low end: 20 % in ten warm, moist weeks (swine waste), and no more than 35 % ever.
 * - Middle: 60 % in those ten weeks (biosolids), and no more than 70 % ever: heat-dried biosolids on grass
 *   brought 45 to more than 60 % in the year of application and 5 to 10 % in the next.
 * - High end: 60 % within two weeks, as feather meal, blood meal, fish powder and guano gave at 10 to 25 °C.
 *
 * The response to temperature runs from none (these four gave 56 % in eight weeks at 10 °C and 66 % at 25 °C) to
 * that of ureaform; below 10 °C, the coldest that was measured, the low end takes no release at all. Figures end on day
 * 70, and what is drawn on beyond it carries a finding.
 *
 * Sources: ten weeks, figures of North Carolina State University at Cornell University, athletic field program; two
 * and eight weeks, Hartz and Johnston 2006, "Nitrogen availability from high-nitrogen-containing organic fertilizers"
 * (abstract); years, heat-dried biosolids on tall fescue, Applied and Environmental Soil Science 2011, 190731
 * (abstract). The tops of 35 and 70 % follow from these, none prints them.
 */
export const naturalOrganic: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
  name: "natural organic nitrogen",
  placement: "either",
  curve: {
    kind: "first order",
    ratePerDay: {
      low: /* @__PURE__ */ rateThrough(20 / 35, 70),
      mid: /* @__PURE__ */ rateThrough(60 / 70, 70),
      high: /* @__PURE__ */ rateThrough(0.6, 14),
    },
    mostPercent: { low: 35, mid: 70, high: 100 },
  },
  temperature: { kind: "Q10", q10: { low: 1, mid: 1.5, high: 2.5 }, referenceC: 25, restsBelowC: 10 },
  observed: { days: 70, fromC: 10, toC: 25 },
  assumptions: [
    "first order through one published point for each end",
    "moist soil; the materials measured were no turf products but for the biosolids",
    "the part never released, 30 % in the middle and 65 % at the low end, is inferred from two seasons",
  ],
  source: {
    title: "Nitrogen sources",
    publisher: "Cornell University, athletic field program",
    where: "natural organic sources, figures of North Carolina State University",
    url: "http://safesportsfields.cals.cornell.edu/node/160",
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
 * @param input.name - what results and findings call it
 * @throws RatewrightError `range`, `conflict`, `missing`, `not-finite`, `type`
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
  expectFields(input, ["days", "coating", "source", "name"], "input");
  const { days, coating, source } = input;
  const placement: Placement | "either" = coating === undefined ? "either" : "incorporated";
  return toldBy({ "duration.curve.days": "days", duration: "input" }, () =>
    releaseModel(
      {
        name: input.name ?? "stated duration",
        placement,
        ...(coating === undefined ? {} : { coating }),
        curve: { kind: "duration", days },
        temperature: { kind: "none" },
        assumptions: ["even release over the stated duration", moist, `${noResponse}; none is applied`],
        source,
      },
      "duration",
    ),
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
 * @throws RatewrightError `range` (also where the rate grows out of all bounds), `not-finite`, `type`
 *
 * Source: first-order kinetics of coated urea, Ishibashi et al. 1992 (abstract).
 *
 * @example
 * ```ts
 * import { firstOrderRate } from "ratewright";
 * Number(firstOrderRate({ percent: 80, days: 35 }).toFixed(3)); // => 0.046
 * ```
 */
export const firstOrderRate = (input: { readonly percent: number; readonly days: number }): number => {
  expectFields(input, ["percent", "days"], "input");
  const percent = expectNumber(input.percent, "percent", { above: 0, below: 100 });
  const days = expectNumber(input.days, "days", { above: 0 });
  const rate = rateThrough(percent / 100, days);
  return Number.isFinite(rate)
    ? rate
    : fail("range", "days", days, "days over which a rate is a finite number");
};
