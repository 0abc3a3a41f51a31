export type {
  BlendLimits,
  BlendMaterial,
  BlendNutrientLimit,
  LeastCostBlendInput,
  SaltIndexByWeight,
} from "./blend-input.js";
export {
  type BlendLimitStanding,
  type LeastCostBlend,
  type LeastCostPart,
  leastCostBlend,
} from "./least-cost-blend.js";
