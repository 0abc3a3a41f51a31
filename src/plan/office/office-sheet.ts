import { counted } from "../../quantity/house.js";
import type { Finding } from "../../quantity/index.js";
import type { LoadingStep } from "../../tank/index.js";
import { inWords } from "../sheet/british-words.js";
import { dayText, spokenDates } from "../sheet/day-text.js";
import { nextText } from "../sheet/next-text.js";
import { blank, type SheetBlock, type SheetSection, type WorkOrderSheet } from "../sheet/sheet-types.js";
import { type FirstUnits, firstUnits, measureText, tankMark, unitFor } from "../sheet/sheet-units.js";
import { depthText, timeText } from "../sheet/water-text.js";
import type { RepeatPlan } from "../visit/repeat.js";
import type { SprayOrder } from "../visit/spray-order.js";
import type { WorkOrder } from "../visit/work-order.js";
import { accountSections, sourceText } from "./account-section.js";

const list = (items: readonly string[], mark: "-" | "!" = "-"): SheetBlock => ({ kind: "list", mark, items });

const section = (id: string, title: string, items: readonly string[]): readonly SheetSection[] =>
  items.length === 0 ? [] : [{ id, title, blocks: [list(items)] }];

const severityWords = { warning: "WARNING", caution: "CAUTION", note: "Note" };
const severities = ["warning", "caution", "note"] as const;

const findingTexts = (findings: readonly Finding[], metric: boolean): readonly string[] =>
  severities.flatMap((severity) =>
    findings
      .filter((finding) => finding.severity === severity)
      .map(({ text, source }) => {
        const told = `${severityWords[severity]}: ${spokenDates(text, metric)}`;
        return source === undefined ? told : `${told} [${sourceText(source)}]`;
      }),
  );

const labelWords = {
  within: "within the label rate that the job states",
  outside: "OUTSIDE the label rate that the job states",
  "not stated": "label rate not given: not checked",
  "other measure": "label rate in units of another kind: not checked",
};

/** Rates as the job states them, and whether they were held against the label. */
const rateTexts = (order: WorkOrder, first: FirstUnits, both: boolean): readonly string[] => {
  const other = both ? (["metric"] as const) : [];
  const rates = [...order.spreads, ...order.sprays.flatMap(({ products }) => products)];
  return rates.map((item) => {
    const twin = other.map((system) => ` (${measureText(item.rate, system)})`).join("");
    return `${item.productName}: ${measureText(item.rate, first)}${twin}, ${labelWords[item.labelRate]}`;
  });
};

/** What each label states of water after the application, with who says so. */
const waterTexts = (order: WorkOrder, first: FirstUnits): readonly string[] =>
  [...order.spreads, ...order.sprays].flatMap(({ treatment, watering }) =>
    watering.rules.map(({ productName, rule }) => {
      const { least, most, within, notBefore, source } = rule;
      const parts = [
        ...(least === undefined ? [] : [`at least ${depthText(least, first)}`]),
        ...(most === undefined ? [] : [`at most ${depthText(most, first)}`]),
        ...(within === undefined ? [] : [`within ${timeText(within)}`]),
        ...(notBefore === undefined ? [] : [`no water for ${timeText(notBefore)}`]),
      ];
      return `${treatment}, ${productName}: ${parts.join(", ")} [${source}]`;
    }),
  );

/** A step of the tank, its volumes in the units of the sheet. */
const stepText = ({ text, volume }: LoadingStep, first: FirstUnits): string => {
  if (volume === undefined) return text;
  const [low, high] = volume;
  const unit = unitFor(high, first);
  if (unit === high.unit) return text;
  const marks = low.value === high.value ? [high] : [low, high];
  return text.replace(
    / \([^()]*\)\.$/,
    ` (${marks.map((mark) => tankMark(mark.in("L"), unit)).join(" to ")}).`,
  );
};

/** The order of the tank, why each product stands where it does, and on what the sources disagree. */
const orderSection = (spray: SprayOrder, first: FirstUnits): SheetSection => {
  const { order } = spray;
  const reasons = order.steps
    .filter(({ reason }) => reason !== "")
    .map((step) => {
      const { number, reason, sources } = step;
      const titles = sources.slice(0, 4).map(({ publisher }) => publisher);
      const more = sources.length > 4 ? ` and ${sources.length - 4} more` : "";
      return `${number}. ${stepText(step, first)} Why: ${reason}${titles.length === 0 ? "" : ` [${titles.join("; ")}${more}]`}`;
    });
  const named = (id: string): string =>
    spray.products.find(({ product }) => product === id)?.productName ?? id;
  const pairs = [...order.firm, ...order.open, ...order.unopposed].map(
    ({ first, second, counts }) =>
      `${named(first)} before ${named(second)}: ${counted(counts.for, "published order")} for, ${counts.against} against, ${counts.same} ${counts.same === 1 ? "puts" : "put"} them in one step`,
  );
  const unsaid = order.unsaid.map(
    ({ first, second }) => `${named(first)} before ${named(second)}: no published order says`,
  );
  return {
    id: "mixing order",
    title: `MIXING ORDER: ${spray.treatment} (${order.mixingOrder})`,
    blocks: [list(reasons), ...(pairs.length + unsaid.length === 0 ? [] : [list([...pairs, ...unsaid])])],
  };
};

const lastText = ({ applied }: RepeatPlan, metric: boolean): string => {
  const last = applied[applied.length - 1];
  return last === undefined ? "" : ` (last time: ${dayText(last, metric)})`;
};

/** The copy for the office: what was found, why, by whom, and what was not checked. */
export const officeSheet = (order: WorkOrder): WorkOrderSheet => {
  const first = firstUnits(order.units);
  const metric = first === "metric";
  const { name, certificate } = order.applicator;
  return {
    type: "work-order-sheet",
    version: 1,
    copy: "office",
    units: order.units,
    title: order.title,
    site: order.site.name,
    date: order.date,
    day: dayText(order.date, metric),
    head: [blank("Applicator", name, 20), blank("Certificate no.", certificate, 12)],
    front: [
      ...section(
        "findings",
        "FINDINGS (an empty list is not an approval)",
        findingTexts(order.findings, metric),
      ),
      ...section("rates", "RATES AND LABELS", rateTexts(order, first, order.units === "both")),
      ...section("water", "RAIN AND IRRIGATION AFTERWARD", waterTexts(order, first)),
      ...accountSections(order.nutrients, first),
      ...section(
        "next",
        "NEXT APPLICATION",
        order.repeats.map((repeat) => `${nextText(repeat, metric)}${lastText(repeat, metric)}`),
      ),
      ...order.sprays.map((spray) => orderSection(spray, first)),
      ...section("checked", "CHECKED", order.checked),
      ...section(
        "not checked",
        "NOT CHECKED",
        order.notChecked.map((text) => spokenDates(text, metric)),
      ),
    ],
    back: section(
      "cautions",
      "CAUTIONS AND THEIR SOURCES",
      order.cautions.map(({ text, source }) => `${inWords(text, first)} [${sourceText(source)}]`),
    ),
  };
};
