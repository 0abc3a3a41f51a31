// What it takes to establish turf and to keep it.

export type { StatedShare } from "./read.js";

// mowing: how high and how often to mow, and how much of the leaf goes.
export { growthBetweenMowings, leafRemoved, mowAtHeight } from "./mowing/mowing-height.js";
export { mowingInterval } from "./mowing/mowing-interval.js";

// seed: how much of a bag is seed that can grow, what it costs, and how many seeds and seedlings a rate gives.
export {
  bulkSeed,
  type LotOrShare,
  type PureLiveShare,
  pricePerPureLiveSeed,
  pureLiveSeed,
  pureLiveSeedIn,
  type SeedLot,
} from "./seed/pure-live-seed.js";
export { type SeedCount, seedCounts, seedCountsOf } from "./seed/seed-counts.js";
export { type SeedLabel, type SeedLabelRow, seedLabel } from "./seed/seed-label.js";
export { type MixtureRow, type SeedMixture, seedMixture, seedMixtureByCount } from "./seed/seed-mixture.js";
export { type SeedOrder, seedOrder } from "./seed/seed-order.js";
export {
  type ExpectedSeedlings,
  expectedSeedlings,
  seedingRate,
  seedsPerArea,
} from "./seed/seeds-per-area.js";

// planting: how many plants, plugs, rolls, pallets and bushels of sprigs an area takes.
export {
  type PlantingGrid,
  type PlantingPattern,
  plantsPerArea,
  spacingFor,
  staggeredRowSpacing,
} from "./planting/grid.js";
export { type PlantOrder, plantsFor } from "./planting/plants-for.js";
export { type Plug, plugsFromSod, type SodOrder, sodForPlugs, sodOrder } from "./planting/plugs.js";
export {
  nurseryArea,
  type SprigBushel,
  type SprigOrder,
  sprigBushels,
  sprigBushelsOf,
  sprigsFor,
} from "./planting/sprigs.js";

// cover: how much of the ground is green by a date, and the spacing or the planting date that it takes.
export {
  type CoverDay,
  type CoverOverTime,
  type CoverReached,
  coverOverTime,
  type GrowInConditions,
} from "./cover/cover-over-time.js";
export type { CoverStart, ScatteredPlants } from "./cover/cover-start.js";
export type { GrowthBasis, GrowthOfDays } from "./cover/growth-days.js";
export { coverOfPatches, diameterForCover } from "./cover/lattice-cover.js";
export { cellsToCover, type PatchMap } from "./cover/patch-map.js";
export {
  type PlantingDateForCover,
  plantingDateForCover,
  type SpacingChoice,
  type SpacingForCover,
  spacingForCover,
} from "./cover/planting-for-cover.js";
export type { SpreadFactors, SpreadRate } from "./cover/spread.js";
export {
  type ObservedSpread,
  observedSpread,
  spreadRateFromCover,
  spreadRateFromPatch,
} from "./cover/spread-rate.js";
