// What a season of pesticide use comes to, with what was published against each score.
//
// None of the figures says that an application may go ahead.

export { type ActiveApplication, type ActiveUse, type ActiveUses, activeUses } from "./active-use.js";
export {
  type FieldImpact,
  fieldImpact,
  type ImpactQuotient,
  type ImpactRatings,
  impactQuotient,
} from "./impact-quotient.js";
export { type LeachingScore, leachingScore } from "./leaching-score.js";
export { type TreatmentDone, type TreatmentFrequency, treatmentFrequency } from "./treatment-frequency.js";
