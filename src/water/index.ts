// What water the turf needs, gets and keeps: depths and run times, uniformity, evapotranspiration, soil water, supply.

// depth: how much water is that, how fast does a zone put it down, how long must it run, in how many cycles, on which days.
export { catchDepth } from "./depth/catch-depth.js";
export { type CycleAndSoak, cycleAndSoak } from "./depth/cycle-and-soak.js";
export { grossDepth, netDepth } from "./depth/efficiency.js";
export { areaForFlow, depthFromFlow, flowForDepth, irrigationTime } from "./depth/flow-and-time.js";
export { precipitationRate, spacingPrecipitationRate } from "./depth/precipitation-rate.js";
export { type MultiplierMethod, runTime, runTimeMultiplier } from "./depth/run-time.js";
export { type IntakeSoil, type SoilIntake, soilIntake, timeToRunoff } from "./depth/soil-intake.js";
export {
  type HeadGroup,
  type MatchedPrecipitation,
  matchedPrecipitation,
  type SingleHead,
  type ZonePrecipitation,
  zonePrecipitation,
} from "./depth/sprinkler-heads.js";
export { waterDepth, waterVolume } from "./depth/water-volume.js";
export { type WateringDay, type WateringWeek, type Weekday, wateringWeek } from "./depth/watering-week.js";

// uniformity: how evenly does the water fall, by catch cans.
export { type CatchCanTest, catchCanTest } from "./uniformity/catch-can-test.js";
export type { Catches, Remainder } from "./uniformity/catches.js";
export {
  christiansenFromLowerQuarter,
  christiansenUniformity,
} from "./uniformity/christiansen-uniformity.js";
export { distributionUniformity } from "./uniformity/distribution-uniformity.js";
export { schedulingCoefficient } from "./uniformity/scheduling-coefficient.js";

// evapotranspiration: how much water does the turf use, by FAO-56 with every step, by temperatures alone, by turf coefficients.
export {
  atmosphericPressure,
  psychrometricConstantKPaPerC,
  type Wind,
} from "./evapotranspiration/air.js";
export {
  dailyReferenceEvapotranspiration,
  monthlyReferenceEvapotranspiration,
  monthlySoilHeatFlux,
  type ReferenceWeather,
} from "./evapotranspiration/daily.js";
export { hargreavesEvapotranspiration, hargreavesSeries } from "./evapotranspiration/hargreaves.js";
export {
  type HourlyReferenceEvapotranspiration,
  type HourlyWeatherForReference,
  hourlyReferenceEvapotranspiration,
} from "./evapotranspiration/hourly.js";
export {
  hargreavesEvapotranspirationsMmPerD,
  referenceEvapotranspirationsMmPerD,
  type StationDays,
} from "./evapotranspiration/kernels.js";
export {
  clearSkyRadiation,
  netLongwaveRadiation,
  netShortwaveRadiation,
  solarRadiationFromSunshine,
  solarRadiationFromTemperatures,
} from "./evapotranspiration/radiation.js";
export type { ReferenceEvapotranspiration } from "./evapotranspiration/reference-terms.js";
export {
  extraterrestrialRadiation,
  hourlyExtraterrestrialRadiation,
  type SolarHour,
} from "./evapotranspiration/extraterrestrial-radiation.js";
export {
  inverseSunDistance,
  type SolarDay,
  solarDeclination,
  sunsetHourAngle,
} from "./evapotranspiration/sun-position.js";
export type { Sunlight } from "./evapotranspiration/sunlight.js";
export {
  landscapeCoefficient,
  type TurfCoefficient,
  type TurfCoefficientSource,
  type TurfSeason,
  turfCoefficient,
} from "./evapotranspiration/turf-coefficients.js";
export { turfUse } from "./evapotranspiration/turf-use.js";
export {
  type AirMoisture,
  actualVaporPressure,
  meanSaturationVaporPressure,
  type Psychrometer,
  saturationVaporPressure,
  vaporPressureSlopeKPaPerC,
} from "./evapotranspiration/vapor.js";

// soil-water: what does the root zone hold, when is it used up, how much of the rain counts, how does a season run.
export {
  type AvailableWater,
  availableWater,
  type HoldingCapacity,
  type RootZoneLayer,
} from "./soil-water/available-water.js";
export {
  depletionFraction,
  irrigationInterval,
  readilyAvailableWater,
  waterStress,
} from "./soil-water/depletion.js";
export { type EffectiveRainMethod, effectiveRain } from "./soil-water/effective-rain.js";
export { type SoilWaterBalance, soilWaterBalance, type WateringPlan } from "./soil-water/water-balance.js";
export { type SoilWaterDay, soilWaterDay } from "./soil-water/water-day.js";
export { type HoldingTexture, type WaterHolding, waterHolding } from "./soil-water/water-holding.js";

// runoff: how much of a storm runs off, by the curve number of the ground.
export {
  type CurveNumber,
  curveNumber,
  type HydrologicSoilGroup,
  type RunoffCover,
} from "./runoff/curve-number.js";
export {
  type CurveNumberRunoff,
  curveNumberRunoff,
  type InitialAbstraction,
} from "./runoff/curve-number-runoff.js";
export {
  type CurveNumberPart,
  type WeightedCurveNumber,
  weightedCurveNumber,
} from "./runoff/weighted-curve-number.js";

// supply: what flow and pressure does the supply leave at the heads, and what power does a pump take.
export {
  frictionLoss,
  multipleOutletFactor,
  type PipeMaterial,
  pipeSmoothness,
} from "./supply/friction-loss.js";
export { measuredFlow } from "./supply/measured-flow.js";
export { type PipeVelocity, pipeFlow, pipeVelocity } from "./supply/pipe-velocity.js";
export { pressureHead, pressureOfHeight } from "./supply/pressure-of-height.js";
export { type PumpPower, pumpPower } from "./supply/pump-power.js";
export { type SupplyPressure, supplyPressure } from "./supply/supply-pressure.js";

// watering-in: was the water after an application what its label states.
export { type WaterEvent, type WateringIn, wateringIn } from "./watering-in/watering-in.js";
export { type WateringInRule, wateringInRule } from "./watering-in/watering-in-rule.js";
export { type WateringInState, wateringInState } from "./watering-in/watering-in-state.js";
