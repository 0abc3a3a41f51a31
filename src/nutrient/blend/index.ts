export type {
  BlendLimits,
  BlendMaterial,
  BlendNutrientLimit,
  LeastCostBlendInput,
  SaltIndexByWeight,
} from "./blend-input.js";
export type { BlendLimitStanding, LeastCostBlend, LeastCostPart } from "./blend-result.js";
export { leastCostBlend } from "./least-cost-blend.js";
