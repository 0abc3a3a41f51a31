/** Exported functions without a worked example, as `room/name`, and why. */
export const withoutExample: Readonly<Record<string, string>> = {};

/** Rooms whose functions compute no fact of the trade: they read, convert, count days, write text, or teach. */
export const roomsWithoutFacts: ReadonlySet<string> = new Set([
  "quantity",
  "calendar",
  "plan",
  "teach",
  "teach/problems",
  "teach/qti",
]);

const reads = "checks a record that a caller makes, and computes nothing";
const rows = "finds rows of a table, each of which has its source";
const writes = "writes what was computed elsewhere as text";

/** Functions of the other rooms without a source in their comment, and why they need none. */
export const withoutSource: Readonly<Record<string, string>> = {
  "interval/intervalRule": reads,
  "interval/degreeDayModel": reads,
  "interval/degreeDayAmount": reads,
  "interval/hourlyWeather": reads,
  "interval/regulatorIntervalsFor": rows,
  "interval/eventWindowsFor": rows,
  "interval/soilTemperaturesFor": rows,
  "interval/turfHalfLivesOf": rows,
  "ledger/ledger": reads,
  "ledger/ledgerWith": reads,
  "ledger/standingEntries": "passes over entries that others correct",
  "limits/limit": reads,
  "numeric/exceeds": "compares; the guard is a rule of this library",
  "numeric/roundTo": "rounds for display",
  "numeric/expectReadings": reads,
  "nutrient/analysis": reads,
  "nutrient/fertilizer": reads,
  "nutrient/isNutrient": "asks whether a text is one of a list",
  "nutrient/releaseModel": reads,
  "pest/insectModel": reads,
  "pest/insectTargetsFor": rows,
  "site/dipTableText": writes,
  "soil/amendmentPlanText": writes,
  "spray/nozzleLimits": rows,
  "stand/seedCountsOf": rows,
  "stand/sprigBushelsOf": rows,
  "tank/isFormulation": "asks whether a text is one of a list",
  "tank/expectWaterTest": reads,
  "water/wateringInRule": reads,
  "weather/windReading": reads,
};

/** Functions that can reach a `throw` but give back what was thrown, or reach one that no input leads to. */
export const withoutThrows: Readonly<Record<string, string>> = {
  "plan/tryWorkOrder": "returns the problems",
  "plan/tryRouteOrder": "returns the problems",
  "quantity/checks": "the list that it makes throws, and says so",
  "spray/nozzleLimits": "takes nothing",
  "tank/mixingOrderTable": "takes nothing",
  "teach/catalogue": "takes nothing",
};
