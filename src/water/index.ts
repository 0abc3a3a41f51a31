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
  inverseSunDistance,
  type SolarDay,
  type SolarHour,
  solarDeclination,
  sunsetHourAngle,
} from "./evapotranspiration/sun.js";
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
