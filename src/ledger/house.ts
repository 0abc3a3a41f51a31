// What the floors above this room use beside its index: no part of the public API.
export { joinedHistory, ledgerHistory } from "./book/ledger-history.js";
export { civilDateAt } from "./civil-date-at.js";
export type { Content } from "./entry/content.js";
export { type Asked, entryRates, type Labels, noLabels } from "./entry/entry-row.js";
export {
  applicationCounter,
  type History,
  type HistoryRow,
  historyOf,
  rowText,
  touches,
  wholeSite,
} from "./entry/history.js";
export { readEntry } from "./entry/read-entry.js";
export { readContents, readSupplies } from "./entry/read-supplies.js";
export { expectSource } from "./expect-source.js";
export { completionFindings } from "./rates/completion-findings.js";
export { limitedName, readAreaAmount } from "./rates/limited-name.js";
export {
  addRates,
  amountOf,
  type Completion,
  completeRates,
  inUnit,
  isStated,
  slowShareOf,
  tellingOf,
} from "./rates/nutrient-rates.js";
export { type AreaRates, areaRatesOf, suppliedRates } from "./rates/supplied-rates.js";
export { unweighedOf, weighedContents } from "./rates/unweighed.js";
