// Where a refusal names another place than the one that was spoilt, with good reason: two places disagree, and either of them
// can be the wrong one. The list may only shrink; a row that is no longer needed fails the test.
const inOrder = "Two that have to be in order: it is told at one of them, and the words name the other.";
const alike =
  "The first says of what, or in which dimension, and it is told at the one that differs from it.";
const reference = "A name refers to another that is not there: it is told where it is referred to.";
const together = "Parts that have to add up, told at the list or the record of them.";
const noneOfIt =
  "A product states no more of the nutrient that is asked for: told at its analysis, with the name of it.";
const derived = "The bound comes of several places together: told at the value that lies beyond it.";
const outline = "Edges that cross are no fault of one corner: told at the outline.";
const choice = "The list of what may be chosen is the caller's: told at what was chosen.";
const twice = "The source states a part and it is assumed, too: told at what is assumed, which has to go.";
const instead =
  "With one field gone the others make another kind of record, and it is told what that one lacks.";
const byDate = "A day of a series is named by its date.";
const worked =
  "It comes out of a record that is worked out again: told by the name that the formula gives it.";

/**
 * By reason: the codes that it may have, and then the functions, the place in their arguments, and the path that is named
 * instead; `*` is for a number or a date.
 */
export const groups: readonly (readonly [why: string, codes: string, rows: string])[] = [
  [
    inOrder,
    "conflict range infeasible",
    `
acidForAlkalinity | 0.alkalinity | target
remainingNitrogen | 0.caps.perYear.amount | caps.perApplication.amount
actualVaporPressure dailyReferenceEvapotranspiration degreeDays hargreavesEvapotranspiration meanSaturationVaporPressure monthlyReferenceEvapotranspiration netLongwaveRadiation solarRadiationFromTemperatures | 0.max | min
dailyMeans dailyNormals dailyTemperatures | 0.max.* | min[*]
calendarAgainstDegreeDays degreeDaySchedule | 0.normals.max.* | normals.min[*]
releaseModel | 0.observed.toC | model.observed.fromC
effectiveSwath overlapDeposits overlappedRate overlappedRateEstimate overlappedVolume patternBalance swathSearch swathUniformity thrownWidth | 0.offsets.* | pattern.offsets[*]
releasedNitrogen | 0.portions.*.model.observed.toC | portions[*].model.observed.fromC
releasedNitrogen | 0.portions.*.model.temperature.referenceC | portions[*].model.temperature.restsBelowC
capitalRecovery | 0.price | remaining
nutrientCost | 0.price | worth
sprayWindow | 0.rules.*.wind.max | rules[*].wind.min
blendShare | 0.second | target
accumulatedDegreeDays dateReached | 0.series.max.* | series.min[*]
limeQuality | 0.sieves.passing.* | sieves.passing.*
gypsumRequirement | 0.sodiumPercent | targetPercent
halfLifeAt | 0.stated.*.temperature | temperature
humidityFromDewPoint | 0.temperature | dewPoint
degreeDayWindowState | 0.to | from
gateSetting | 0.trials.*.setting | trials[*].rate
releasedShares | 1.lagDays.high | curve.lagDays.mid
coverOverTime spacingForCover | 0.growth.normals.max.* | growth.normals.min[*]
hargreavesSeries | 0.temperatures.max.* | temperatures.min[*]
`,
  ],
  [
    alike,
    "unit/mismatch substance/mismatch",
    `
expectReadings | 0.* | catches[*]
max min sum | 0.* | items[*]
meanEstimate | 0.* | readings[*]
splitApplication | 0.amount | maximum
spreadRateEstimate timedRateEstimate | 0.amounts.* | amounts[*]
spreadRate | 0.before | after
catchCanTest christiansenUniformity distributionUniformity | 0.catches.* | catches[*]
activityIndex | 0.coldInsoluble | hotInsoluble
replacementDose | 0.elapsed | halfLife
asApplied | 0.limits.*.limit | limits[*].before
loadCoverage | 0.load | rate
applicationsLeft | 0.maximum | rate
checkAgainstTarget | 0.measured | target
checkAgainstTarget | 0.measured.value | measured.standardError
passRates | 0.rate | limit
speedForRate | 0.rate | target
limeForRating | 0.recommended | rating
gateSetting | 0.target | trials[*].rate
degreeDayWindowState | 0.total | from
splitAmendment | 0.total | most
fewestApplications | 0.total | perApplication
treatmentFrequency | 0.treatments.*.rate | treatments[*].fullRate
reorderPoint | 0.use | safetyStock
statedEstimate | 0.value | error
confidenceInterval | 0.value | estimate.standardError
estimateOfProduct | 1.*.estimate.value | factors[*].estimate.standardError
waterDose | 0.concentration | strength
`,
  ],
  [
    reference,
    "conflict missing substance/mismatch",
    `
ledgerWith | 0.entries | entry.corrects
ledgerWith | 0.entries.*.id | entry.corrects
asApplied | 0.fertilizer.id | used
packageCoverage | 0.id | rate
accumulatedDegreeDays calendarAgainstDegreeDays dateReached degreeDayAmount degreeDaySchedule degreeDays | 0.model.base | model.id
degreeDayAmount | 0.model.start | model.id
costPerArea | 0.product.id | rate
routeOrder | 0.products.*.id | mix[*].product
purchaseList | 0.products.*.id | needs[*].product
jarTest loadAmounts | 0.products.*.id | products[*].rate
routeHtml routeOrder routeSheet routeText | 0.products.*.id | spread.product
workOrder | 0.products.*.id | treatments[*].product
workOrder | 0.site.parts.*.name | treatments[*].parts[*]
concentrationOf nutrientsSupplied volumeOfLiquid weightOfLiquid | 1.id | amount
packagesFor | 1.id | need
routeHtml routeOrder routeSheet routeText | 0.products.*.analysis | spread.target
workOrder | 0.products.*.analysis | treatments[*].target
routeOrder | 0.products.*.formulation | mix[*].product
`,
  ],
  [
    together,
    "conflict range infeasible",
    `
blendWaters | 0.*.share | parts
formulaWeight | 0.Ca | formula
formulaWeight | 0.O | formula
ratesBySource | 0.parts.*.share | parts
nitrogenBreakdown | 0.percent.coated | guarantee.percent
nitrogenBreakdown | 0.percent.urea | guarantee.percent
nitrogenBreakdown | 0.percent.waterInsoluble | guarantee.percent
slowShareRates | 0.products.*.nitrogen.percent.coated | products[*].nitrogen.percent
slowShareRates | 0.products.*.nitrogen.percent.urea | products[*].nitrogen.percent
stockTank | 0.salts.*.product.analysis.percent.K2O | salts[*]
stockTank | 0.targets.* | salts[*]
`,
  ],
  [
    noneOfIt,
    "infeasible conflict missing range",
    `
productNitrogen | 0.analysis.percent.N | product.analysis
blendToGrade | 0.materials.*.analysis.percent.K2O | materials
blendToGrade | 0.materials.*.analysis.percent.P2O5 | materials
leastCostBlend | 0.materials.*.product.analysis.percent.K2O | limits.nutrients[*].least
leastCostBlend | 0.materials.*.product.analysis.percent.N | limits.nutrients[*].least
ratesBySource | 0.parts.*.product.analysis.percent.N | parts[*].product.analysis
nutrientCost | 0.product.analysis.percent.N | product.analysis
highestProductRate | 0.product.analysis.percent.N | product.slowNitrogen
nutrientCost | 0.product.analysis.percent.P2O5 | product.analysis
slowShareRates | 0.products.*.analysis.percent.N | products[*].analysis
slowShareRates | 0.products.*.analysis.percent.N | products[*].slowNitrogen
stockTank | 0.salts.*.product.analysis.percent.N | salts
productRates | 0.steps.*.product.analysis.percent.N | steps[*].product.analysis
productRates | 0.steps.*.product.analysis.percent.P2O5 | steps[*].product.analysis
productRates | 0.steps.*.target | steps[*].product.analysis
ratesBySource | 0.target | parts[*].product.analysis
cheapestSource | 0.target | sources
stockTank | 0.targets.* | salts
liquidProductRate productForConcentration productMass productRate | 1.analysis.percent.N | product.analysis
nutrientsSupplied | 1.analysis.percent.N | product.slowNitrogen
liquidProductRate | 1.perVolume.N | product.perVolume
productNitrogen | 0.analysis.percent | product.analysis
productRate | 1.analysis.percent | product.analysis
`,
  ],
  [
    derived,
    "range conflict",
    `
cellsToCover | 0.* | covered
solarRadiationFromSunshine | 0.daylight | sunlight.sunshine
dailyReferenceEvapotranspiration | 0.latitude | sunlight.sunshine
hourlyReferenceEvapotranspiration | 0.length | solar
hourlyReferenceEvapotranspiration | 0.longitude | solar
interpolate | 0.outside | x
densityAt | 0.slopePerFahrenheit | temperature
geodesicArea | 1.near.* | coordinates
expectNumber | 2.max | efficiency
`,
  ],
  [
    outline,
    "conflict",
    `
polygonArea | 0.*.* | points
geodesicArea | 0.coordinates.*.*.* | coordinates[*]
bufferArea | 0.points.*.* | points
radialArea | 0.rays.*.angle | rays
polygonArea | 2.holes.*.*.* | holes[*]
polygonArea | 2.holes.*.*.* | holes[*][*]
`,
  ],
  [
    choice,
    "unit/mismatch type",
    `
expectFields | 1.* | input.rate
expectOneOf | 1.* | units
expectQuantity | 1.dimension | field
expectAmount | 1.dimensions.* | amount
`,
  ],
  [
    twice,
    "conflict missing",
    `
insectModel | 0.target.base | assume.base
insectModel | 0.target.method | assume.method
insectModel | 0.target.sensor | assume.sensor
insectModel | 0.target.start | assume.start
insectModel | 0.target.unit | assume.unit
insectModel | 0.target.upper | assume.upper
insectModel | 0.target.cutoff | assume.upper
`,
  ],
  [
    instead,
    "missing conflict type",
    `
limeQuality | 0.CCE | moisture
nextDates | 0.applied | from
areaOfShape | 0.area | measured
gypsumRequirement | 0.convention | depth
frostChance | 0.dates.winters.*.lastState | dates.winters
leastCostBlend | 0.limits.nutrients | limits
leastCostBlend | 0.limits.nutrients.*.least | limits.nutrients[*]
siteArea | 0.parts.*.area | parts[*].measured
spacingPrecipitationRate | 0.pattern | rowSpacing
liquidFertilizer | 0.perVolume.N | liquidFertilizer.perVolume
overlapDeposits swathSearch swathUniformity | 0.spacing | positions
programComparison releasedNitrogen | 0.temperature.mean | temperature.start
explainChain | 1.*.inputs.need.resultOf | steps[*].inputs.need
`,
  ],
  [
    byDate,
    "missing",
    `
accumulatedDegreeDays | 0.missing | series.*
accumulatedDegreeDays | 0.series.max.* | series.*
accumulatedDegreeDays | 0.series.min.* | series.*
`,
  ],
  [
    worked,
    "range infeasible not-finite unit/mismatch substance/mismatch",
    `
workOrderHtml workOrderSheet workOrderText | 0.spreads.*.area | other
explainWorkOrder | 0.spreads.*.packageSize | product.package
explainWorkOrder | 0.spreads.*.rate | order
explainWorkOrder | 0.spreads.*.supplies.N | fertilizer.analysis.percent.N
explainWorkOrder | 0.spreads.*.supplies.N | product.analysis
explainWorkOrder | 0.spreads.*.supplies.N | unit
explainChain | 1.*.inputs.contents | product.package
explainChain | 1.*.inputs.percent | fertilizer.analysis.percent.N
explainChain | 1.*.inputs.percent | product.analysis
`,
  ],
];
