// Where something that is absent is not told as `missing`: the functions, the place in their arguments with `*` for a
// number, and the code. The list may only shrink; a row that is no longer needed fails the test.
const half =
  "Only together with the other half: an amount over an area is told as the contradiction that it is.";
const another =
  "Without it the whole is not what the named function makes, and the words name that function.";
const open = "To be mended: the reader does not ask first whether anything was given.";

/** By reason, the rows. */
export const groups: readonly (readonly [why: string, rows: string])[] = [
  [
    half,
    `
ledger | 0.*.area | conflict
ledgerWith | 0.entries.*.area | conflict
ledgerTotals | 0.ledger.entries.*.area | conflict
stockOnHand | 0.ledgers.*.entries.*.area | conflict
ledgerWith | 1.area | conflict
`,
  ],
  [
    another,
    `
percentOf | 0.percent | type
`,
  ],
  [
    open,
    `
ledger | 0.*.amount.unit | type
blendSaltIndex | 0.*.partial | type
alkalineHydrolysis | 0.active | type
missingForRecord | 0.amount.unit | type
nextDates remainingNitrogen | 0.applied | type
degreeDayModel regulatorInterval | 0.base | type
releaseModel | 0.curve.kind | type
quantitySchema | 0.dimension | type
ledgerCsv ledgerWith standingEntries | 0.entries | type
ledgerWith | 0.entries.*.amount.unit | type
twoJarReading | 0.failedWithAgent | type
twoJarReading | 0.failedWithoutAgent | type
sulfurApplications sulfurToIncorporate | 0.freeLime | type
convertedNumbers | 0.from | type
earlyEntryObjections | 0.handLabor | type
earliestBySeedingIntervals | 0.happened | type
hourlyWeather | 0.humidity.values | type
stockFlow stockTank | 0.injector | type
checkLimits ledgerTotals resistanceRotation | 0.ledger.entries | type
ledgerTotals | 0.ledger.entries.*.amount.unit | type
checkLimits ledgerTotals resistanceRotation | 0.ledger.version | type
stockOnHand | 0.ledgers.*.entries.*.amount.unit | type
stockOnHand | 0.ledgers.*.type | type
leastCostBlend | 0.materials.*.product | type
dailyNormals dailyTemperatures | 0.max | type
intervalRule | 0.maximumAmount.per | type
intervalRule | 0.maximumApplications.per | type
degreeDayModel runningDegreeDaysC | 0.method | type
dailyNormals dailyTemperatures | 0.min | type
accumulatedDegreeDays calendarAgainstDegreeDays dateReached degreeDayAmount degreeDaySchedule degreeDays | 0.model | type
nutrientCost | 0.nutrient | type
analysisOfMix ratesBySource | 0.parts.*.product | type
costPerArea nutrientCost | 0.price | type
costPerArea highestProductRate nutrientCost | 0.product | type
slowShareRates | 0.products | type
incompatibilities jarTest loadingOrder | 0.products.*.formulation | type
loadAmounts | 0.products.*.rate | type
hourlyWeather | 0.rain.values | type
amountFor impliedAreaRate strengthForAreaRate | 0.rate | type
nextDates | 0.rule | type
earliestBySeedingIntervals | 0.rules | type
stockTank | 0.salts.*.product | type
sulfurCoatedUrea | 0.sealed | type
growthPotential | 0.season | type
dailyNormals dailyTemperatures degreeDayModel | 0.sensor | type
accumulatedDegreeDays dateReached firstRun | 0.series | type
hourlyWeather | 0.soilTemperature.values | type
cheapestSource | 0.sources.*.price | type
cheapestSource | 0.sources.*.product | type
calendarAgainstDegreeDays | 0.starts | type
halfLifeAt | 0.stated | type
productRates | 0.steps.*.product | type
releaseModel | 0.temperature.kind | type
hourlyWeather | 0.temperature.values | type
convertedNumbers | 0.to | type
dailySeries | 0.values | type
ledgerCsv ledgerWith standingEntries | 0.version | type
sprayWindow | 0.weather | type
interpolate | 0.xs | type
interpolate | 0.ys | type
ledgerWith | 1.amount.unit | type
expectQuantity readExact readQuantity | 1.dimension | type
expectAmount | 1.dimensions | type
releasedShares | 1.kind | type
regulatorInterval | 1.sensor | type
amendmentPlan | 1.standing | type
accumulateEquivalentDaysC | 2.kind | type
readFields | 5.run | type
leastCostBlend | 0.materials.*.price | unit/mismatch
earliestBySeedingIntervals | 0.rules.*.minimumDays | range
`,
  ],
];

/** One function, and a place of it that is told with another code. */
export const toldOtherwise: readonly string[] = groups.flatMap(([, rows]) =>
  rows
    .trim()
    .split("\n")
    .flatMap((row) => {
      const [names = "", place = "", code = ""] = row.split(" | ");
      return names.split(" ").map((name) => `${name} | ${place} | ${code}`);
    }),
);
