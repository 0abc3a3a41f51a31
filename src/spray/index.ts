export {
  type AcidMeasure,
  type AcidPartner,
  acidEquivalentOf,
  acidShare,
  activeOfAcid,
  type HerbicideAcid,
} from "./acid-equivalent.js";
export {
  type ActiveContent,
  type ActiveSubstance,
  activeInProduct,
  type ProductMeasure,
  type ProductName,
  productForActive,
} from "./active-ingredient.js";
export { applicationVolume, nozzleFlow, sprayWidth, travelSpeed } from "./application-volume.js";
export { type AsApplied, asApplied } from "./as-applied.js";
export { bandFieldRate, bandTreatedArea, bandTreatedRate } from "./band.js";
export { type CatchCourse, type CatchReading, catchCourse } from "./catch-course.js";
export { densityFactor, solutionEquivalent, waterEquivalent } from "./density.js";
export {
  type DropletClass,
  type DropletClassInfo,
  driftableShare,
  dropletClasses,
} from "./droplet-classes.js";
export { courseTime, groundSpeed, type SpeedAverage } from "./ground-speed.js";
export type { Carrier } from "./inputs.js";
export { type NozzleCheck, type NozzleResult, type NozzleVerdict, nozzleCheck } from "./nozzle-check.js";
export { type NozzleLimit, nozzleLimits } from "./nozzle-limits.js";
export { type NozzleSize, nozzleSizes, ratedFlow, type SizeRating } from "./nozzle-sizes.js";
export {
  flowAtPressure,
  type PressureRange,
  pressureForFlow,
  pressureForSpeed,
  type RatedTip,
} from "./pressure.js";
export {
  calibrationByCatch,
  calibrationByRefill,
  type SprayCalibration,
  type SprayedGround,
  type StatedErrors,
} from "./spray-calibration.js";
export { type SprayTime, sprayTime } from "./spray-time.js";
export type { AnyQuantity, RemainingUnderLimit, StatedLimit } from "./stated-limits.js";
export type { CandidateTip, SpeedRange } from "./tip-candidates.js";
export {
  type TipChoice,
  type TipChoices,
  type TipStep,
  tipChoices,
} from "./tip-choices.js";
export { boomHeight, boomWidth, fanOverlap, fanWidth, widthPerNozzle } from "./widths.js";
