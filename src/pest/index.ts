// When the weather favors a disease, and when to scout for an insect. Neither is a diagnosis.

// disease: how much the weather of a record favors dollar spot, brown patch and Pythium blight.
export {
  type BrownPatchCriterion,
  type BrownPatchSpell,
  type BrownPatchSpells,
  brownPatchSpells,
} from "./disease/brown-patch-hours.js";
export { brownPatchIndex, brownPatchOutlook } from "./disease/brown-patch.js";
export { dollarSpotOutlook, dollarSpotProbability } from "./disease/dollar-spot.js";
export type { DiseaseDay, DiseaseOutlook } from "./disease/outlook.js";
export {
  type PythiumCriteria,
  type PythiumDay,
  type PythiumOutlook,
  pythiumCriteria,
  pythiumOutlook,
} from "./disease/pythium.js";

// insect: at how many degree-days a turf insect emerges or is best looked for, as models of the degree-day engine.
export { type InsectAssumptions, type InsectModel, insectModel } from "./insect/insect-model.js";
export { type InsectTarget, insectTargets, insectTargetsFor } from "./insect/insect-targets.js";
