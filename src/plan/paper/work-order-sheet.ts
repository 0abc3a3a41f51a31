import { expectFields, expectOneOf } from "../../quantity/index.js";
import type { SheetUnits } from "../job/job.js";
import { officeSheet } from "../office/office-sheet.js";
import { shedSheet } from "../shed/shed-sheet.js";
import type { WorkOrderSheet } from "../sheet/sheet-types.js";
import type { WorkOrder } from "../visit/work-order.js";
import { readOrder } from "./read-order.js";

/** Which sheet, and in which units. */
export interface WorkOrderSheetOptions {
  /** `"shed"`, for the crew, where it is left out; `"office"` has the findings, reasons, limits and sources. */
  readonly copy?: "shed" | "office";
  /** The units of the job where it is left out. */
  readonly units?: SheetUnits;
}

/** Reads the options that all sheets have. */
export const readSheetOptions = (
  options: { readonly copy?: unknown; readonly units?: unknown },
  order: WorkOrder,
): { readonly copy: "shed" | "office"; readonly units: SheetUnits } => {
  const { copy = "shed", units = order.units } = options;
  return {
    copy: expectOneOf(copy, ["shed", "office"], "options.copy"),
    units: expectOneOf(units, ["US customary", "metric", "both"], "options.units"),
  };
};

/** The sheet of an order that was read. */
export const sheetOf = (order: WorkOrder, copy: "shed" | "office", units: SheetUnits): WorkOrderSheet =>
  copy === "shed" ? shedSheet({ ...order, units }) : officeSheet({ ...order, units });

/**
 * The sheet of a work order as data: sections of lines, tables and blanks, for an app that draws them itself.
 * {@link workOrderText} and {@link workOrderHtml} draw the same.
 *
 * Amounts are rounded to the tool that they are measured with, and what is printed adds up: the loads of a product to its
 * total, and what is used and what goes back to what is taken out of the store. `"____"` is a place to write.
 *
 * @param order - what `workOrder` returned, or what JSON left of it: it is read again
 * @param options - `copy` and `units`; the copy for the shed in the units of the job where they are left out
 * @throws RatewrightError with every problem of the order: `type`, `missing`, `range`, `not-finite`, `unit/unknown`,
 *   `unit/mismatch`, `conflict`, `date`; `type` for an option that is not known
 *
 * @example
 * ```ts
 * import { workOrder, workOrderSheet } from "ratewright";
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
 * workOrderSheet(order).front.map(({ id }) => id); // => ["stop", "spread", "store", "after", "record"]
 * ```
 */
export const workOrderSheet = (order: WorkOrder, options: WorkOrderSheetOptions = {}): WorkOrderSheet => {
  const read = readOrder(order);
  const { copy, units } = readSheetOptions(expectFields(options, ["copy", "units"], "options"), read);
  return sheetOf(read, copy, units);
};
