import { expectNumber, expectRecord, type Finding } from "../quantity/index.js";
import { accountLines, alike } from "./account-text.js";
import { sprayLines, spreadLines } from "./order-text.js";
import { heatText } from "./repeat.js";
import { both, folded, wrapped } from "./text-lines.js";
import type { WorkOrder } from "./work-order.js";

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

const underlined = (title: string): string[] => [title, "-".repeat(title.length)];

/**
 * The work order as plain text, for a sheet that a person can take to the shed. It says nothing that the
 * record does not; figures are rounded for reading only, and shown in the units of the job with the other
 * system beside the ones that matter.
 *
 * @param order - what `workOrder` returned
 * @param options - `width`, the columns of a line: 60 or more; 78 where it is left out
 * @throws RatewrightError `range`, `not-finite` for a width under 60
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
  expectRecord(order, "order");
  const width = expectNumber(options.width ?? 78, "options.width", { min: 60 });
  const { name, area } = order.site;
  const lines: string[] = [
    order.title,
    "=".repeat(Math.min(width, order.title.length)),
    ...wrapped(`${order.date}   ${name}   ${both(area.net)}`, width, "", "  "),
  ];
  const section = (title: string, body: readonly string[]): void => {
    if (body.length > 0) lines.push("", ...underlined(title), ...body);
  };
  section("Look first", findingLines(order.findings, width));
  for (const spread of order.spreads)
    lines.push("", ...spreadLines(spread, name).flatMap((line) => folded(line, width)));
  for (const spray of order.sprays) lines.push("", ...sprayLines(spray, name, width));
  for (const { account, parts } of alike(order.nutrients)) {
    const body = accountLines(account, parts, width);
    if (body.length > 0) lines.push("", ...body);
  }
  section(
    "When again",
    order.repeats.flatMap((repeat) => {
      const { calendar, heatAfter } = repeat;
      const dates =
        calendar === null
          ? []
          : [
              `earliest ${calendar.earliestByStatedRules} by the stated rule`,
              ...(calendar.latestUseful === null ? [] : [`useful until ${calendar.latestUseful}`]),
            ];
      const heat = heatAfter === null ? [] : [heatText(heatAfter)];
      const text = [dates.join(", "), ...heat].filter((part) => part !== "").join(". ");
      return wrapped(text === "" ? "no interval is stated" : text, width, `  ${repeat.treatment}: `, "    ");
    }),
  );
  section(
    "Cautions",
    order.cautions.flatMap(({ text }) => wrapped(text, width, "  - ", "    ")),
  );
  section(
    "Checked",
    order.checked.flatMap((text) => wrapped(text, width, "  - ", "    ")),
  );
  section(
    "Not checked",
    order.notChecked.flatMap((text) => wrapped(text, width, "  - ", "    ")),
  );
  return `${lines.join("\n")}\n`;
};
