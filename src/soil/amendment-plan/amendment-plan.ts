import type { RateTarget } from "../../nutrient/index.js";
import { allOf, expectFields, type Finding, numberIn, Quantity } from "../../quantity/index.js";
import { exchangeSection } from "./exchange-section.js";
import { limeSection } from "./lime-section.js";
import { nutrientSection } from "./nutrient-section.js";
import { ironCaution, limeCaution, planCautions, sodiumCaution } from "./plan-cautions.js";
import type {
  AmendmentConventions,
  AmendmentPlan,
  AmendmentSite,
  SectionNotes,
  SoilReport,
  WaterPlan,
} from "./plan-types.js";
import { type ReadAmendmentSite, readAmendmentSite, readReport } from "./read-plan-input.js";
import { sodiumSection } from "./sodium-section.js";
import { waterSection } from "./water-section.js";

/** The nitrogen that is left to bring, once the water's is credited. */
const creditedNitrogen = (
  { nitrogen }: ReadAmendmentSite,
  water: WaterPlan | null,
): { readonly nitrogen: Quantity<"mass/area", "N">; readonly findings: readonly Finding[] } => {
  const brought = water?.load?.nitrogen;
  if (brought === undefined || brought === null) return { nitrogen, findings: [] };
  const left = nitrogen.value - numberIn(brought, nitrogen.unit);
  return {
    nitrogen: new Quantity(Math.max(0, left), nitrogen.unit, "N", "mass/area"),
    findings:
      left < 0
        ? [
            {
              code: "soil/water-nitrogen-covers",
              severity: "caution",
              path: "report.water",
              params: { brought: brought.value, unit: brought.unit },
              text: "The irrigation water of the season supplies more nitrogen than was planned: no more is needed.",
            },
          ]
        : [],
  };
};

/**
 * A laboratory report turned into amendments for a site, by stated conventions: exchange capacity, lime down to the
 * dates, nutrient needs, gypsum, and what the irrigation water means.
 *
 * Each figure comes with its method and source (`figures`); what could not be judged stands in `notChecked`, and an empty
 * list of findings is no approval. A convention that is left out is not replaced by another. A soil at or above its target
 * pH gets no lime, and the plan says that it looked.
 *
 * `targets` are rates that `productRates` takes, one for each nutrient with a need; `nitrogen` is the total for
 * `seasonProgram`, the nitrogen of the season less what the irrigation water brings.
 *
 * @param report - what the laboratory wrote, in its own units
 * @param site - where it goes
 * @param conventions - whose methods, guidelines and maxima are followed
 * @throws RatewrightError with every problem of report, site and conventions, under paths such as `report.pH`,
 *   `conventions.lime.targetPH`; `conflict` where a guideline is of another extractant
 *
 * Source: named in each figure.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { amendmentPlan } from "ratewright/soil";
 * const plan = amendmentPlan(
 *   {
 *     laboratory: "county laboratory", date: "2026-03-02", extractant: "Mehlich 3", pH: 5.6,
 *     layer: { depth: quantity(4, "in"), bulkDensity: quantity(1.3, "g/mL", "soil") },
 *     acidity: quantity(5.2, "meq/100 g"), elements: { K: quantity(40, "mg/kg", "K/soil") },
 *   },
 *   {
 *     name: "practice field", area: quantity(80000, "ft2"), standing: true,
 *     nitrogen: quantity(3, "lb/1000 ft2", "N"), grass: "cool-season grass",
 *   },
 *   {
 *     lime: {
 *       method: "Mehlich buffer, Pennsylvania turf", targetPH: 6.5,
 *       material: { id: "lime-a", quality: { CCE: 90 } },
 *       most: { amount: quantity(100, "lb/1000 ft2", "product"), source: "the laboratory" },
 *       first: "2026-10-01", monthsApart: 6,
 *     },
 *     nutrients: { guideline: "minimum levels, Mehlich 3", list: ["K"] },
 *   },
 * );
 * plan.lime?.product.rate.in("lb/1000 ft2"); // => 100
 * plan.targets.map(({ of }) => of); // => ["N", "K2O"]
 * ```
 */
export const amendmentPlan = (
  report: SoilReport,
  site: AmendmentSite,
  conventions: AmendmentConventions,
): AmendmentPlan => {
  const read = allOf({
    report: () => readReport(report),
    site: () => readAmendmentSite(site),
    conventions: () => expectFields(conventions, ["lime", "nutrients", "sodium", "leaching"], "conventions"),
  });
  const given = read.conventions;
  const soil = exchangeSection(read.report);
  const { lime, nutrients, sodium, water } = allOf({
    lime: () => limeSection(given.lime, read.report, read.site, soil.exchange),
    nutrients: () => nutrientSection(given.nutrients, read.report, read.site),
    sodium: () => sodiumSection(given.sodium, read.report, soil.exchange),
    water: () => waterSection(given.leaching, read.report, read.site),
  });
  const { nitrogen, findings } = creditedNitrogen(read.site, water.water);
  const sections: readonly SectionNotes[] = [soil, lime, nutrients, sodium, water];
  const needed: readonly RateTarget[] = nutrients.needs.map(({ target }) => target);
  return {
    type: "amendment-plan",
    version: 1,
    site: read.site.name,
    area: read.site.area,
    laboratory: read.report.laboratory,
    date: read.report.date,
    exchange: soil.exchange,
    lime: lime.lime,
    needs: nutrients.needs,
    gypsum: sodium.gypsum,
    water: water.water,
    nitrogen,
    targets: [nitrogen as RateTarget, ...needed].filter(({ value }) => value > 0),
    figures: sections.flatMap(({ figures }) => figures),
    findings: [...sections.flatMap((one) => one.findings), ...findings],
    cautions: [
      ...planCautions,
      ...(lime.lime === null ? [] : [limeCaution]),
      ...(sodium.gypsum === null && water.water === null ? [] : [sodiumCaution]),
      ...(read.report.pH >= 7 ? [ironCaution] : []),
    ],
    checked: sections.flatMap(({ checked }) => checked),
    notChecked: [
      ...sections.flatMap((one) => one.notChecked),
      ...(read.report.freeLime === true && read.report.pH > 7
        ? ["sulfur: with free lime in the soil no rate for turf lowers the pH in a useful time"]
        : []),
      "salt of the soil, micronutrients, weather, the turf itself and all other rules",
    ],
  };
};
