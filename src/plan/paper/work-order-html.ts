import { expectFields } from "../../quantity/index.js";
import { sheetHtml } from "../sheet/sheet-html.js";
import type { WorkOrder } from "../visit/work-order.js";
import { readOrder } from "./read-order.js";
import { readSheetOptions, sheetOf, type WorkOrderSheetOptions } from "./work-order-sheet.js";

/** How the page is drawn: `copy` and `units`. */
export type WorkOrderHtmlOptions = WorkOrderSheetOptions;

/**
 * A sheet of the work order as one HTML page to print: black on white, the front of a usual visit on one page of letter or A4,
 * the cautions on its back. The page is complete in itself, without scripts; no text of a job becomes markup.
 *
 * @param order - what `workOrder` returned, or what JSON left of it: it is read again
 * @param options - `copy` and `units` as in {@link workOrderSheet}
 * @throws RatewrightError as {@link workOrderSheet}
 *
 * @example
 * ```ts
 * import { workOrder, workOrderHtml } from "ratewright";
 * const order = workOrder({
 *   type: "job",
 *   version: 1,
 *   title: "First feed",
 *   date: "2026-05-04",
 *   site: { name: "Practice field", parts: [{ shape: "measured", area: { value: 12400, unit: "ft2" } }] },
 *   products: [{ id: "feed-a", name: "24-0-11", form: "dry", analysis: "24-0-11" }],
 *   treatments: [
 *     { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   ],
 * });
 * workOrderHtml(order).includes("<h1>First feed</h1>"); // => true
 * ```
 */
export const workOrderHtml = (order: WorkOrder, options: WorkOrderHtmlOptions = {}): string => {
  const read = readOrder(order);
  const { copy, units } = readSheetOptions(expectFields(options, ["copy", "units"], "options"), read);
  return sheetHtml(sheetOf(read, copy, units), units === "metric" ? "en" : "en-US");
};
