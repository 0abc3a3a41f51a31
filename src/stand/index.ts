// What it takes to establish turf and to keep it.

export type { StatedShare } from "./read.js";

// mowing: how high and how often to mow, how much of the leaf goes, and how a reel is set.
export { cutsToHeight, shootGrowth } from "./mowing/cuts-to-height.js";
export { frequencyOfClip, mowingSpeedFor, reelSpeedFor } from "./mowing/frequency-of-clip.js";
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
export type { RestsOn, SpreadFactors, SpreadRate } from "./cover/spread.js";
export {
  type ObservedSpread,
  observedSpread,
  spreadRateFromCover,
  spreadRateFromPatch,
} from "./cover/spread-rate.js";

// turf-work: what coring, verticutting and topdressing take out of the ground and put into it.
export {
  type CoringImpact,
  type CoringPass,
  type CoringProgram,
  coringImpact,
  coringProgram,
  type HolePattern,
  passesForShare,
} from "./turf-work/coring.js";
export {
  type SandForOrganicMatter,
  sandCoefficient,
  sandForOrganicMatter,
  type Topdressing,
  topdressing,
} from "./turf-work/sand.js";
export { type VerticuttingImpact, verticuttingImpact } from "./turf-work/verticutting.js";

// clippings: what their volume says of growth, dry mass and nitrogen.
export {
  type ClippingDensity,
  type ClippingMass,
  clippingDensities,
  clippingMass,
  clippingVolumeFor,
  type DryMassOf,
} from "./clippings/clippings.js";
export { type GrowthRatio, growthRatio } from "./clippings/growth-ratio.js";

// readings: what the roll of a ball and the counts in cores say.
export { type GreenSpeed, greenSpeed } from "./readings/green-speed.js";
export {
  type PestDensity,
  pestDensity,
  type StatedThreshold,
  type ThresholdReading,
} from "./readings/pest-density.js";
