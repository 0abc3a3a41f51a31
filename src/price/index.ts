// What a visit costs and what to ask for it.

// labor: what a man-hour costs, and how many a site takes.
export { type FieldEfficiency, fieldEfficiency, workRate } from "./labor/field-efficiency.js";
export { type LaborHours, type LaborTask, laborHours } from "./labor/labor-hours.js";
export { crewWage, type LoadedWage, loadedWage } from "./labor/loaded-wage.js";
export { overtimeShare } from "./labor/overtime-share.js";

// machine: what a machine costs to own, to fuel and to run for an hour.
export { lifetimeHourCost, type MachineCost, machineCost, type YearlyCost } from "./machine/machine-cost.js";
export { capitalRecovery, fuelUse } from "./machine/ownership.js";

// visit: break-even, margin or markup, and the price of a visit and of a season.
export { markupOfMargin, marginOfMarkup, priceAtMargin, priceAtMarkup } from "./visit/margin.js";
export {
  type PriceAim,
  type VisitCost,
  type VisitMachine,
  type VisitPrice,
  visitPrice,
} from "./visit/visit-price.js";
