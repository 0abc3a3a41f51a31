// The whole job: the work order of a visit, its sheet, and the schedule of a season.

// job: the job file and its reading.
export type {
  Job,
  JobApplicator,
  JobDegreeDays,
  JobLogEntry,
  JobProduct,
  JobSite,
  JobSpray,
  JobSprayer,
  JobSpread,
  JobSpreader,
  JobTreatment,
  JobTreatmentBase,
  JobWater,
  JobWaterEvent,
  JobWateringIn,
  SheetUnits,
  StatedRate,
} from "./job/job.js";

export type { PartMeasures } from "./job/read-site.js";

// watering: what labels ask of water after the work, part by part, beside rain and irrigation.
export type { PartWatering, Watering } from "./watering/watering.js";
export type { ProductWatering } from "./watering/watering-conflicts.js";

// visit: the work order: product, loads, order, nutrients, repeats, findings and cautions.
export type { BufferOrder } from "./visit/buffers.js";
export type { NutrientAccount, NutrientEntry } from "./visit/nutrient-account.js";
export type { DegreeDayInterval, RepeatPlan } from "./visit/repeat.js";
export type { SprayedProduct, SprayOrder } from "./visit/spray-order.js";
export type { WorkOrderCaution } from "./visit/cautions.js";
export type { LabelRateCheck } from "./visit/rate-findings.js";
export type { SpreadOrder, SpreadPart } from "./visit/spread-order.js";
export type { PacketShare } from "./visit/whole-packets.js";
export { visitEntries } from "./visit/visit-entries.js";
export { tryWorkOrder, type WorkOrder, type WorkOrderResult, workOrder } from "./visit/work-order.js";

// sheet: what a sheet is made of, in which units and steps its figures are printed, and how it is drawn.
export type { SheetBlank, SheetBlock, SheetRow, SheetSection, WorkOrderSheet } from "./sheet/sheet-types.js";

// shed: what a crew does, step by step, with what it takes out of the store and writes down.

// office: what was found and why, limits with their sources, what was checked and what was not.

// paper: the sheets of a work order as data, as text and as a page to print.
export { type WorkOrderHtmlOptions, workOrderHtml } from "./paper/work-order-html.js";
export { type WorkOrderSheetOptions, workOrderSheet } from "./paper/work-order-sheet.js";
export { type WorkOrderTextOptions, workOrderText } from "./paper/work-order-text.js";

// grow-in: what labels and the age of turf say against a treatment.
export { turfConflicts } from "./grow-in/grow-in.js";
export type {
  LabelOnTurf,
  TreatmentUse,
  TurfConflicts,
  TurfState,
  TurfTreatment,
} from "./grow-in/turf-types.js";

// season: the schedule of a season.
export { schedule } from "./season/schedule.js";
export type {
  DateReason,
  NotPlaced,
  Schedule,
  ScheduledApplication,
  ScheduledVisit,
  SeasonPlan,
  SeasonTreatment,
} from "./season/schedule-types.js";

// route: many sites from one tank or hopper: where it is filled, what each stop takes, and its sheet.
export type { RefillRule } from "./route/fill-plan.js";
export {
  type RouteAmount,
  type RouteArea,
  type RouteFill,
  type RouteLoads,
  routeLoads,
  type RouteStopLoad,
} from "./route/route-loads.js";
export type { RouteJob, RouteSpreader, RouteStop } from "./route/route-job.js";
export {
  type RouteOrder,
  type RouteOrderResult,
  type RouteOrderStop,
  routeOrder,
  tryRouteOrder,
} from "./route/route-order.js";
export {
  type RouteSheet,
  type RouteSheetOptions,
  type RouteTextOptions,
  routeHtml,
  routeSheet,
  routeText,
} from "./route/route-sheet.js";
export type { RouteLimits, RouteProduct } from "./route/stop-application.js";

// purchase: what to buy for a season, what is in the store by the books, and when to order again.
export { purchaseList } from "./purchase/purchase-list.js";
export type {
  PackagesBought,
  PriceBreak,
  ProductNeed,
  PurchasedProduct,
  PurchaseLine,
  PurchaseList,
} from "./purchase/purchase-types.js";
export { type ReorderPoint, reorderPoint, type ProductQuantity } from "./purchase/reorder-point.js";
export {
  type ProductStock,
  type StockOnHand,
  type StockReceipt,
  stockOnHand,
} from "./purchase/stock-on-hand.js";
