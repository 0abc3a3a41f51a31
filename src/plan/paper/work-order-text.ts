import { expectFields, expectNumber } from "../../quantity/index.js";
import { sheetText } from "../sheet/sheet-text.js";
import type { WorkOrder } from "../visit/work-order.js";
import { readOrder } from "./read-order.js";
import { readSheetOptions, sheetOf, type WorkOrderSheetOptions } from "./work-order-sheet.js";

/** How the sheet is written as text. */
export interface WorkOrderTextOptions extends WorkOrderSheetOptions {
  /** Columns of a line; 72 where it is left out. */
  readonly width?: number;
}

/**
 * A sheet of the work order as plain text: the copy for the shed, or the copy for the office. Figures are rounded for
 * measuring and reading only; {@link workOrderSheet} tells how.
 *
 * @param order - what `workOrder` returned, or what JSON left of it: it is read again
 * @param options - `copy` and `units` as in {@link workOrderSheet}; `width`, the columns of a line: 60 to 400, 72 where left out
 * @throws RatewrightError as {@link workOrderSheet}; `range`, `not-finite`, `type` for the width
 *
 * @example
 * ```ts
 * import { workOrder, workOrderText } from "ratewright";
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
 * workOrderText(order).split("\n").filter((line) => line.startsWith("  SET"));
 * // => ["  SET THE SPREADER FOR 3.75 lb per 1,000 sq ft: one pass."]
 * ```
 */
export const workOrderText = (order: WorkOrder, options: WorkOrderTextOptions = {}): string => {
  const read = readOrder(order);
  const given = expectFields(options, ["copy", "units", "width"], "options");
  const { copy, units } = readSheetOptions(given, read);
  const width = Math.floor(expectNumber(given.width ?? 72, "options.width", { min: 60, max: 400 }));
  return sheetText(sheetOf(read, copy, units), width);
};
