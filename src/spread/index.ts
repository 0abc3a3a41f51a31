// Spreaders: setting, pattern, swath and passes.

// calibration: what a spreader puts down, its gate setting, and its speed.
export { type GateSetting, gateSetting, type SettingRate } from "./calibration/gate-setting.js";
export type { GateTrial } from "./calibration/gate-trials.js";
export {
  bulkDensity,
  hopperLoad,
  hopperVolume,
  type LoadCoverage,
  loadCoverage,
} from "./calibration/hopper.js";
export { type Feed, rateAtSpeed } from "./calibration/rate-at-speed.js";
export { spreadRateEstimate, timedRateEstimate } from "./calibration/rate-estimate.js";
export { runLength } from "./calibration/run-length.js";
export { speedForRate } from "./calibration/speed-for-rate.js";
export { type Spread, type SpreadRun, spreadRate, targetCatch } from "./calibration/spread-rate.js";
export { type TestArea, testArea } from "./calibration/test-area.js";
export { targetDischarge, timedRate } from "./calibration/timed-rate.js";

// pattern: a row of pans: pattern, balance and width of throw.
export { type EffectiveSwath, effectiveSwath, type SwathRule } from "./pattern/effective-swath.js";
export { type PanRow, panRow } from "./pattern/pan-row.js";
export { type PatternBalance, patternBalance } from "./pattern/pattern-balance.js";
export {
  type PanPlaces,
  type PatternInput,
  type SpreadPattern,
  spreadPattern,
} from "./pattern/spread-pattern.js";
export {
  type LengthRange,
  swathFromThrow,
  type ThrowRule,
  thrownWidth,
  throwRules,
} from "./pattern/thrown-width.js";

// overlap: how passes overlap: uniformity against swath.
export { type OverlapDeposits, overlapDeposits, type Positions } from "./overlap/overlap-deposits.js";
export { type Driving, swathCvPercent } from "./overlap/overlap-kernel.js";
export { overlappedRate, overlappedRateEstimate, overlappedVolume } from "./overlap/overlapped-rate.js";
export { type SwathCv, type SwathRange, type SwathSearch, swathSearch } from "./overlap/swath-search.js";
export { type SwathUniformity, swathUniformity, type UniformityOptions } from "./overlap/swath-uniformity.js";
export { type UniformityLimit, uniformityLimit, uniformityLimits } from "./overlap/uniformity-limits.js";

// passes: how many passes, headers, hopper loads and time.
export { effectiveFieldCapacity } from "./passes/effective-field-capacity.js";
export { type HeaderStrips, headerStrips } from "./passes/header-strips.js";
export { type PassRates, passRates } from "./passes/pass-rates.js";
export { type PassCount, passesFor } from "./passes/passes-for.js";
export { type Spreader, spreadWidth } from "./passes/spread-width.js";

// ice: salt on walks and lots by the temperature of the pavement.
export {
  type DeicingRate,
  type DeicingStep,
  type DeicingTable,
  deicingRate,
  deicingTables,
} from "./ice/deicing.js";
