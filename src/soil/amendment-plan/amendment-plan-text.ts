import { type CivilDate, civilDate } from "../../calendar/index.js";
import {
  allOf,
  checks,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import type { AmendmentPlan, PlanFigure } from "./plan-types.js";
import { amountText } from "./relocate.js";

const headings: Readonly<Record<PlanFigure["section"], string>> = {
  soil: "Soil",
  lime: "Lime",
  nutrients: "Nutrients",
  sodium: "Sodium",
  water: "Irrigation water",
};

/** Takes the source of a figure as text. */
const sourceText = (input: unknown, path: string): string => {
  if (typeof input === "string") return expectText(input, path, "a source");
  const { publisher, title, year, where } = expectRecord(input, path, "a source");
  if (year !== undefined) expectNumber(year, `${path}.year`);
  const parts = [
    publisher === undefined ? undefined : expectText(publisher, `${path}.publisher`, "a publisher"),
    expectText(title, `${path}.title`, "a title"),
    year === undefined ? undefined : String(year),
    where === undefined ? undefined : expectText(where, `${path}.where`, "a place in the source"),
  ];
  return parts.filter((part) => part !== undefined).join(", ");
};

const list = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [title, ...lines.map((line) => `  - ${line}`), ""];

/** A plan for one site has some dozens of lines. */
const most = 1000;

/** Takes a list of the plan, each entry with its reader; all problems at once. */
const entriesOf = <T>(
  input: unknown,
  path: string,
  what: string,
  read: (entry: unknown, at: string) => T,
): readonly T[] => {
  if (Array.isArray(input) && input.length === 0) return [];
  const problems = checks();
  const found: T[] = [];
  if (Array.isArray(input) && input.length > most) outOfRange(path, input, { max: most, count: "entries" });
  expectList(input, path, what).forEach((entry, i) => {
    const one = problems.run(() => read(entry, `${path}[${i}]`));
    if (one !== undefined) found.push(one);
  });
  problems.done();
  return found;
};

const sentence = (input: unknown, at: string): string => expectText(input, at, "a sentence");

const figure = (input: unknown, at: string): { readonly section: string; readonly line: string } => {
  const record = expectRecord(input, at, "a figure of the plan");
  const { section, of, value, method } = allOf({
    section: () => expectOneOf(record.section, Object.keys(headings), `${at}.section`),
    of: () => expectText(record.of, `${at}.of`, "what it is a figure of"),
    value: () => expectText(record.value, `${at}.value`, "the figure in words"),
    method: () => expectText(record.method, `${at}.method`, "a method"),
  });
  return { section, line: `${of}: ${value} [${method}; ${sourceText(record.source, `${at}.source`)}]` };
};

const target = (input: unknown, at: string): string => {
  const read = expectQuantity(input, { dimension: "mass/area" }, at);
  return `${read.of}: ${amountText(read)}`;
};

const finding = (input: unknown, at: string): string => {
  const { severity, text } = expectRecord(input, at, "a finding");
  return `${expectText(severity, `${at}.severity`, "a severity")}: ${sentence(text, `${at}.text`)}`;
};

const caution = (input: unknown, at: string): string =>
  sentence(expectRecord(input, at, "a caution").text, `${at}.text`);

/**
 * An amendment plan as text for the crew and the office: figures by section, each with its method and source, then
 * findings, cautions, and what was and was not checked.
 *
 * @throws RatewrightError `type`, `missing`, `not-finite`, `range`, `unit/mismatch`, `date` for anything but a plan of
 * `amendmentPlan`, all that are found
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
  const read = allOf({
    site: () => expectText(record.site, "plan.site", "the name of the site"),
    area: () => expectQuantity(record.area, { dimension: "area", bound: "positive" }, "plan.area"),
    laboratory: () => expectText(record.laboratory, "plan.laboratory", "the name of the laboratory"),
    date: () => civilDate(record.date as CivilDate, "plan.date"),
    figures: () => entriesOf(record.figures, "plan.figures", "figure", figure),
    targets: () => entriesOf(record.targets, "plan.targets", "target", target),
    findings: () => entriesOf(record.findings, "plan.findings", "finding", finding),
    cautions: () => entriesOf(record.cautions, "plan.cautions", "caution", caution),
    checked: () => entriesOf(record.checked, "plan.checked", "sentence", sentence),
    notChecked: () => entriesOf(record.notChecked, "plan.notChecked", "sentence", sentence),
  });
  return [
    // The area is the caller's own figure: it is not rounded to what a rate is told in.
    `Amendment plan: ${read.site}, ${amountText(read.area, 7)}`,
    `Report of ${read.laboratory}, ${read.date}`,
    "",
    ...Object.entries(headings).flatMap(([section, heading]) =>
      list(
        heading,
        read.figures.filter((one) => one.section === section).map(({ line }) => line),
      ),
    ),
    ...list("Targets for the season", read.targets),
    ...list("Findings", read.findings),
    ...list("Cautions", read.cautions),
    ...list("Checked", read.checked),
    ...list("Not checked", read.notChecked),
  ].join("\n");
};
