// Sprayers: how much they put down, and with which tips.

export type { Carrier } from "./inputs.js";

// volume: application volume, speed, width, bands, density and time.
export { applicationVolume, nozzleFlow, sprayWidth, travelSpeed } from "./volume/application-volume.js";
export { bandFieldRate, bandTreatedArea, bandTreatedRate } from "./volume/band.js";
export { densityConversionFactor, solutionEquivalent, waterEquivalent } from "./volume/density.js";
export {
  asFinishedSpray,
  type FinishedSpray,
  type MeasuredSpray,
  type SprayMeasure,
} from "./volume/finished-spray.js";
export { courseTime, groundSpeed, type SpeedAverage } from "./volume/ground-speed.js";
export { type SprayTime, sprayTime } from "./volume/spray-time.js";
export { boomHeight, boomWidth, fanOverlap, fanWidth, widthPerNozzle } from "./volume/widths.js";

// calibration: what a sprayer puts out, by a timed nozzle catch or by refilling the tank.
export { type CatchCourse, type CatchReading, catchCourse } from "./calibration/catch-course.js";
export { calibrationByCatch } from "./calibration/nozzle-catch.js";
export { type RateControllerCheck, rateControllerCheck } from "./calibration/rate-controller.js";
export { usedBySightGauge } from "./calibration/sight-gauge.js";
export type { SprayCalibration, SprayedGround, StatedErrors } from "./calibration/spray-calibration.js";
export { calibrationByRefill } from "./calibration/tank-refill.js";
export { timeToFill } from "./calibration/time-to-fill.js";
export { weighedCatch } from "./calibration/weighed-catch.js";

// nozzle: pressure and flow, checking a boom, choosing tips.
export {
  type DropletClass,
  type DropletClassInfo,
  driftableFines,
  dropletClasses,
} from "./nozzle/droplet-classes.js";
export { nozzleCheck } from "./nozzle/nozzle-check.js";
export type { NozzleCheck, NozzleResult, NozzleVerdict } from "./nozzle/nozzle-check-types.js";
export { type NozzleLimit, nozzleLimits } from "./nozzle/nozzle-limits.js";
export { type NozzleSize, nozzleSizes, ratedFlow, type SizeRating } from "./nozzle/nozzle-sizes.js";
export {
  flowAtPressure,
  type PressureRange,
  pressureForFlow,
  pressureForSpeed,
  type RatedTip,
} from "./nozzle/pressure.js";
export { type NozzleWear, nozzleWear } from "./nozzle/nozzle-wear.js";
export {
  type ByPressure,
  type Output,
  outputAtPressure,
  pressureForOutput,
} from "./nozzle/output-at-pressure.js";
export {
  type DutyRange,
  type PulseTip,
  type PulseWidth,
  pulseTips,
  pulseWidth,
} from "./nozzle/pulse-width.js";
export { readTip, type StampedTip } from "./nozzle/tip-stamp.js";
export type { CandidateTip, DropletRange, SpeedRange } from "./nozzle/tip-candidates.js";
export { type TipChoice, type TipChoices, type TipStep, tipChoices } from "./nozzle/tip-choices.js";

// active: active ingredient and acid equivalent, and what was applied.
export {
  type AcidMeasure,
  type AcidPartner,
  acidEquivalentOf,
  acidShare,
  activeOfAcid,
  type HerbicideAcid,
} from "./active/acid-equivalent.js";
export { type AcidForm, acidForms } from "./active/acid-forms.js";
export {
  type ActiveContent,
  type ActiveSubstance,
  activeInProduct,
  type ProductMeasure,
  type ProductName,
  productForActive,
} from "./active/active-ingredient.js";
export { type AsApplied, asApplied } from "./active/as-applied.js";
export type { AnyQuantity, RemainingUnderLimit, StatedLimit } from "./active/stated-limits.js";

// pump: the flow that boom and agitation ask of a pump.
export { type PumpCapacity, pumpCapacity } from "./pump/pump-capacity.js";
