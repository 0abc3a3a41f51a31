import { checks, expectFields, expectList, expectOneOf, Quantity } from "../../quantity/index.js";
import { type TestedNutrient, testedNutrients } from "../soil-test/guideline-types.js";
import type { GuidelineName } from "../soil-test/guidelines.js";
import { type NutrientNeed, nutrientNeed } from "../soil-test/nutrient-need.js";
import { nutrientUse } from "../soil-test/nutrient-use.js";
import type { PlanFigure, SectionNotes } from "./plan-types.js";
import type { ReadAmendmentSite, ReadReport } from "./read-plan-input.js";
import { amountText, relocate } from "./relocate.js";

/** Needs by nutrient. */
export type NutrientSection = SectionNotes & { readonly needs: readonly NutrientNeed[] };

const at = "conventions.nutrients";

interface NeedConvention {
  readonly guideline: unknown;
  readonly perNitrogen: { readonly [E in TestedNutrient]?: unknown };
}

const needOf = (
  nutrient: TestedNutrient,
  convention: NeedConvention,
  report: ReadReport,
  site: ReadAmendmentSite,
): NutrientNeed | undefined => {
  const content = report.elements.get(nutrient);
  if (content === undefined) return undefined;
  const ratio = convention.perNitrogen[nutrient];
  const use = relocate(
    () =>
      nutrientUse({
        nitrogen: site.nitrogen,
        nutrient,
        ...(ratio === undefined
          ? { ...(site.grass === undefined ? {} : { grass: site.grass }) }
          : { perNitrogen: ratio as number }),
      }),
    (path) => (path === "perNitrogen" ? `${at}.perNitrogen.${nutrient}` : `site.${path}`),
  );
  return relocate(
    () =>
      nutrientNeed<TestedNutrient>({
        nutrient,
        test: new Quantity(content, "ppm w/w", `${nutrient}/soil`, "mass/mass"),
        extractant: report.extractant,
        guideline: convention.guideline as GuidelineName,
        use,
        layer: report.layer,
        ...(site.soil === undefined ? {} : { soil: site.soil }),
      }),
    (path) =>
      path.startsWith("guideline")
        ? `${at}.${path}`
        : path === "soil"
          ? "site.soil"
          : path === "nutrient"
            ? `${at}.list`
            : `report.${path}`,
  );
};

/** What each nutrient of the list needs. */
export const nutrientSection = (
  input: unknown,
  report: ReadReport,
  site: ReadAmendmentSite,
): NutrientSection => {
  if (input === undefined) {
    return {
      needs: [],
      figures: [],
      findings: [],
      checked: [],
      notChecked: ["nutrients: no guideline was stated"],
    };
  }
  const record = expectFields(
    input,
    ["guideline", "list", "perNitrogen"],
    at,
    "a guideline and the nutrients",
  );
  const perNitrogen =
    record.perNitrogen === undefined
      ? {}
      : expectFields(record.perNitrogen, testedNutrients, `${at}.perNitrogen`);
  const problems = checks();
  const read = expectList(record.list, `${at}.list`, "nutrient").flatMap((name, i) => {
    const one = problems.run(() => expectOneOf(name, testedNutrients, `${at}.list[${i}]`));
    return one === undefined ? [] : [one];
  });
  const list = [...new Set(read)];
  const needs = list.flatMap((nutrient) => {
    const convention = { guideline: record.guideline, perNitrogen };
    const need = problems.run(() => needOf(nutrient, convention, report, site));
    return need === undefined ? [] : [need];
  });
  problems.done();
  const untested = list.filter((nutrient) => report.elements.get(nutrient) === undefined);
  return {
    needs,
    figures: needs.map(figureOf),
    findings: needs.flatMap(({ findings }) => findings),
    checked: needs.map(({ nutrient, extractant }) => `${nutrient} by ${extractant}`),
    notChecked: [
      ...untested.map((nutrient) => `${nutrient}: not in the report`),
      "phosphorus and nitrogen rules of the place, and what clippings left on the turf give back",
    ],
  };
};

const figureOf = (need: NutrientNeed): PlanFigure => ({
  section: "nutrients",
  of: `${need.target.of} for the season`,
  value: `${amountText(need.target)} (use ${amountText(need.use)} + guideline ${amountText(need.guideline)} - test ${amountText(need.test)}, as ${need.nutrient}${need.surplus.value > 0 ? ": the soil holds more" : ""})`,
  method: `use plus guideline less test, ${need.extractant}`,
  source: need.source,
});
