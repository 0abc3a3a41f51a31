import { expectRecord, type FactSource, fail } from "../../quantity/index.js";
import type { AmendmentPlan, PlanFigure } from "./plan-types.js";
import { amountText } from "./relocate.js";

const headings: Readonly<Record<PlanFigure["section"], string>> = {
  soil: "Soil",
  lime: "Lime",
  nutrients: "Nutrients",
  sodium: "Sodium",
  water: "Irrigation water",
};

const sourceText = (source: FactSource): string =>
  typeof source === "string"
    ? source
    : [source.publisher, source.title, source.year, source.where]
        .filter((part) => part !== undefined)
        .join(", ");

const list = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => `  - ${line}`), ""];

const sectionText = (plan: AmendmentPlan, section: PlanFigure["section"]): string[] =>
  list(
    headings[section],
    plan.figures
      .filter((figure) => figure.section === section)
      .map(({ of, value, method, source }) => `${of}: ${value} [${method}; ${sourceText(source)}]`),
  );

/**
 * An amendment plan as text for the crew and the office: figures by section, each with its method and source, then
 * findings, cautions, and what was and was not checked.
 *
 * @throws RatewrightError `type` for anything but a plan of `amendmentPlan`
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { amendmentPlan, amendmentPlanText } from "ratewright/soil";
 * const plan = amendmentPlan(
 *   {
 *     laboratory: "county laboratory", date: "2026-03-02", extractant: "Olsen", pH: 7.4, elements: {},
 *     layer: { assumed: "2,000,000 lb/acre" },
 *   },
 *   { name: "meadow", area: quantity(1, "acre"), standing: false, nitrogen: quantity(1, "lb/1000 ft2", "N") },
 *   {},
 * );
 * amendmentPlanText(plan).split("\n")[0]; // => "Amendment plan: meadow, 1 acre"
 * ```
 */
export const amendmentPlanText = (plan: AmendmentPlan): string => {
  const record = expectRecord(plan, "plan", "what amendmentPlan gives");
  if (record.type !== "amendment-plan") fail("type", "plan.type", record.type, "an amendment plan");
  const sections = Object.keys(headings) as readonly PlanFigure["section"][];
  return [
    `Amendment plan: ${plan.site}, ${amountText(plan.area)}`,
    `Report of ${plan.laboratory}, ${plan.date}`,
    "",
    ...sections.flatMap((section) => sectionText(plan, section)),
    ...list(
      "Targets for the season",
      plan.targets.map((target) => `${target.of}: ${amountText(target)}`),
    ),
    ...list(
      "Findings",
      plan.findings.map(({ severity, text }) => `${severity}: ${text}`),
    ),
    ...list(
      "Cautions",
      plan.cautions.map(({ text }) => text),
    ),
    ...list("Checked", plan.checked),
    ...list("Not checked", plan.notChecked),
  ].join("\n");
};
