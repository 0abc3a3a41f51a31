export type {
  Job,
  JobHeat,
  JobLimit,
  JobLogEntry,
  JobProduct,
  JobSite,
  JobSpray,
  JobSprayer,
  JobSpread,
  JobTreatment,
  JobTreatmentBase,
  LimitPeriod,
  Stated,
  StatedRate,
} from "./job.js";
export type { LimitUse, NutrientAccount, NutrientEntry, NutrientRates } from "./nutrient-account.js";
export type { HeatWindow, RepeatPlan } from "./repeat.js";
export type { SprayedProduct, SprayOrder } from "./spray-order.js";
export type { SpreadOrder } from "./spread-order.js";
export { tryWorkOrder, type WorkOrder, type WorkOrderResult, workOrder } from "./work-order.js";
export { type WorkOrderTextOptions, workOrderText } from "./work-order-text.js";
