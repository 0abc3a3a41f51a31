import {
  checks,
  expectNumber,
  expectRecord,
  type Finding,
  fail,
  quantityReviver,
} from "../../quantity/index.js";
import { heatText } from "../visit/repeat.js";
import type { WorkOrder } from "../visit/work-order.js";
import { accountLines, alike } from "./account-text.js";
import { sprayLines, spreadLines } from "./order-text.js";
import { both, folded, wrapped } from "./text-lines.js";

/** How the sheet is written. */
export interface WorkOrderTextOptions {
  /** Columns of a line; 78 where it is left out. */
  readonly width?: number;
}

const findingLines = (findings: readonly Finding[], width: number): string[] => {
  const order = { warning: 0, caution: 1, note: 2 };
  const marks = { warning: "!! ", caution: "!  ", note: "-  " };
  return [...findings]
    .sort((a, b) => order[a.severity] - order[b.severity])
    .flatMap((finding) => wrapped(finding.text, width, `  ${marks[finding.severity]}`, "     "));
};

const lists = [
  "spreads",
  "sprays",
  "nutrients",
  "repeats",
  "findings",
  "cautions",
  "checked",
  "notChecked",
] as const satisfies readonly (keyof WorkOrder)[];

/** A work order with its quantities whole, also where it was stored as JSON or came from another copy. */
const expectWorkOrder = (input: unknown): WorkOrder => {
  expectRecord(input, "order", "what workOrder returned");
  const { type, version } = input as Partial<WorkOrder>;
  if (type !== "work-order") fail("type", "order.type", type, "work-order: give what workOrder returned");
  if (version !== 1) fail("range", "order.version", version, "1, the one that is known here");
  const door = checks();
  const { site, title, date } = input as Partial<WorkOrder>;
  for (const [name, text] of Object.entries({ title, date })) {
    if (typeof text !== "string") door.run(() => fail("missing", `order.${name}`, text, "a text"));
  }
  door.run(() => expectRecord(site, "order.site", "the site, as workOrder returned it"));
  for (const name of lists) {
    const list: unknown = (input as Partial<WorkOrder>)[name];
    if (!Array.isArray(list))
      door.run(() => fail("missing", `order.${name}`, list, "a list, as workOrder returned it"));
  }
  door.done();
  return JSON.parse(JSON.stringify(input), quantityReviver) as WorkOrder;
};

const underlined = (title: string): string[] => [title, "-".repeat(title.length)];

/**
 * The work order as plain text, for a sheet that a person can take to the shed. It says nothing that the
 * record does not; figures are rounded for reading only, and shown in the units of the job with the other
 * system beside the ones that matter.
 *
 * @param order - what `workOrder` returned, or what JSON left of it
 * @param options - `width`, the columns of a line: 60 or more; 78 where it is left out
 * @throws RatewrightError `type`, `missing`, `range` for what is no work order; `range`, `not-finite` for a width
 *   under 60
 *
 * @example
 * ```ts
 * import { workOrder, workOrderText } from "ratewright";
 * const order = workOrder({
 *   type: "job",
 *   version: 1,
 *   title: "First feed",
 *   date: "2026-05-04",
 *   site: { name: "Practice pitch", parts: [{ shape: "measured", area: { value: 12400, unit: "ft2" } }] },
 *   products: [{ id: "feed-a", name: "24-0-11", form: "dry", analysis: "24-0-11" }],
 *   treatments: [
 *     { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   ],
 * });
 * workOrderText(order).split("\n").filter((line) => line.startsWith("  rate"));
 * // => ["  rate        3.75 lb/1,000 ft² (183 kg/ha) of product"]
 * ```
 */
export const workOrderText = (order: WorkOrder, options: WorkOrderTextOptions = {}): string => {
  const whole = expectWorkOrder(order);
  const width = expectNumber(options.width ?? 78, "options.width", { min: 60 });
  const { name, area } = whole.site;
  const lines: string[] = [
    whole.title,
    "=".repeat(Math.min(width, whole.title.length)),
    ...wrapped(`${whole.date}   ${name}   ${both(area.net)}`, width, "", "  "),
  ];
  const section = (title: string, body: readonly string[]): void => {
    if (body.length > 0) lines.push("", ...underlined(title), ...body);
  };
  section("Look first", findingLines(whole.findings, width));
  for (const spread of whole.spreads)
    lines.push("", ...spreadLines(spread, name).flatMap((line) => folded(line, width)));
  for (const spray of whole.sprays) lines.push("", ...sprayLines(spray, name, width));
  for (const { account, parts } of alike(whole.nutrients)) {
    const body = accountLines(account, parts, width);
    if (body.length > 0) lines.push("", ...body);
  }
  section(
    "When again",
    whole.repeats.flatMap((repeat) => {
      const { calendar, heatAfter } = repeat;
      const dates =
        calendar === null
          ? []
          : [
              `earliest ${calendar.earliestByStatedRules} by the stated rule`,
              ...(calendar.reapplyBy === null ? [] : [`useful until ${calendar.reapplyBy}`]),
            ];
      const heat = heatAfter === null ? [] : [heatText(heatAfter)];
      const text = [dates.join(", "), ...heat].filter((part) => part !== "").join(". ");
      return wrapped(text === "" ? "no interval is stated" : text, width, `  ${repeat.treatment}: `, "    ");
    }),
  );
  section(
    "Cautions",
    whole.cautions.flatMap(({ text }) => wrapped(text, width, "  - ", "    ")),
  );
  section(
    "Checked",
    whole.checked.flatMap((text) => wrapped(text, width, "  - ", "    ")),
  );
  section(
    "Not checked",
    whole.notChecked.flatMap((text) => wrapped(text, width, "  - ", "    ")),
  );
  return `${lines.join("\n")}\n`;
};
