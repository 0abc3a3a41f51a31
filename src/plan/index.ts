// The whole job: the work order of a visit, its sheet, and the schedule of a season.

// job: the job file and its reading.
export type {
  Job,
  JobHeat,
  JobLogEntry,
  JobProduct,
  JobSite,
  JobSpray,
  JobSprayer,
  JobSpread,
  JobTreatment,
  JobTreatmentBase,
  StatedRate,
} from "./job/job.js";

// visit: the work order: product, loads, order, nutrients, repeats, findings and cautions.
export type { NutrientAccount, NutrientEntry } from "./visit/nutrient-account.js";
export type { HeatWindow, RepeatPlan } from "./visit/repeat.js";
export type { SprayedProduct, SprayOrder } from "./visit/spray-order.js";
export type { SpreadOrder } from "./visit/spread-order.js";
export { tryWorkOrder, type WorkOrder, type WorkOrderResult, workOrder } from "./visit/work-order.js";

// sheet: the work order as text.
export { type WorkOrderTextOptions, workOrderText } from "./sheet/work-order-text.js";

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
