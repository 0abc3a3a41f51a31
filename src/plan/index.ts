export { checkLimits, type LimitCheck, type Proposal } from "./check-limits.js";
export { turfConflicts } from "./grow-in.js";
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
} from "./job.js";
export { ledger, ledgerWith, standingEntries } from "./ledger.js";
export { type LedgerReading, ledgerCsv, ledgerFromCsv, type UnreadLine } from "./ledger-csv.js";
export type { Ledger, LedgerEntry, LedgerWeather } from "./ledger-entry.js";
export { type LedgerTotals, ledgerTotals } from "./ledger-totals.js";
export type {
  AmountLimit,
  ClosedDatesLimit,
  ContentLimit,
  CountLimit,
  GroundLimit,
  IntervalLimit,
  Limit,
  LimitBase,
  LimitPeriod,
  LimitSet,
  SetbackLimit,
  SlowShareLimit,
} from "./limit.js";
export type { ApplicationFacts, LimitCondition } from "./limit-condition.js";
export type { LimitTest } from "./limit-test.js";
export type { LimitUse } from "./limit-use.js";
export type { NutrientAccount, NutrientEntry } from "./nutrient-account.js";
export type { NutrientRates } from "./nutrient-rates.js";
export { publishedLimits, rememberedLimits } from "./published-limits/all.js";
export {
  chlorothalonilRememberedLimits,
  newJerseyRememberedLimits,
  twoFourDRememberedLimits,
} from "./published-limits/from-memory.js";
export {
  illinoisLimits,
  michiganLimits,
  minnesotaLimits,
  wisconsinLimits,
} from "./published-limits/great-lakes.js";
export {
  marylandProductLimits,
  marylandUseLimits,
  newJerseyLimits,
  newJerseySummaryLimits,
  pennsylvaniaLimits,
} from "./published-limits/mid-atlantic.js";
export {
  connecticutLimits,
  manitobaLimits,
  newYorkLimits,
  vermontLimits,
} from "./published-limits/northeast.js";
export { floridaLimits, marionCountyLimits } from "./published-limits/southeast.js";
export { limit } from "./read-limit.js";
export {
  euPlantProtectionRecord,
  missingForRecord,
  type RecordGaps,
  type RecordItem,
  type RecordScheme,
  usRestrictedUseRecord,
  usWorkerProtectionRecord,
} from "./record-schemes.js";
export type { HeatWindow, RepeatPlan } from "./repeat.js";
export { schedule } from "./schedule.js";
export type {
  DateReason,
  NotPlaced,
  Schedule,
  ScheduledApplication,
  ScheduledVisit,
  SeasonPlan,
  SeasonTreatment,
} from "./schedule-types.js";
export type { SprayedProduct, SprayOrder } from "./spray-order.js";
export type { SpreadOrder } from "./spread-order.js";
export type { Stated } from "./stated.js";
export type { LabelOnTurf, TreatmentUse, TurfConflicts, TurfState, TurfTreatment } from "./turf-types.js";
export { tryWorkOrder, type WorkOrder, type WorkOrderResult, workOrder } from "./work-order.js";
export { type WorkOrderTextOptions, workOrderText } from "./work-order-text.js";
