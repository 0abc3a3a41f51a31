import { type CivilDate, compareDates } from "../../calendar/index.js";
import { expectFields, expectName, fail } from "../../quantity/index.js";
import { civilDateAt } from "../civil-date-at.js";
import type { Asked } from "../entry/entry-row.js";
import { applicationCounter, touches, wholeSite } from "../entry/history.js";
import type { Ledger } from "../entry/ledger-entry.js";
import type { NutrientRates } from "../rates/nutrient-rates.js";
import { rateSums } from "../rates/rate-sums.js";
import { standingReader } from "./ledger-history.js";

/** What has gone down per area on one part of the site, from one date to another. */
export interface LedgerTotals {
  readonly type: "ledger-totals";
  readonly version: 1;
  readonly part: string;
  readonly from: CivilDate;
  readonly to: CivilDate;
  /** Per area, substance by substance. What an entry does not state counts as none. */
  readonly supplies: NutrientRates;
  /** Entries of one day that name the same treatment are one: the products of a mix. */
  readonly applications: number;
  /**
   * Ids of entries that state nothing of what went down, or not enough to weigh all of it; where no `part` is asked for,
   * also of those that name parts: ask for each part.
   */
  readonly notCounted: readonly string[];
}

/** Each row as it is stated: what is added to complete it is added to the sums, once. */
const asStated: Asked = { substances: new Set(), products: false };

/**
 * Totals per area of what a ledger has on one part of the site, from one date to another, both included:
 * the sum of `amount * analysis / area` of the entries that stand, nutrient by nutrient, and of active
 * ingredients where their contents are stated.
 *
 * An entry of several parts counts on each of them at its mean rate, `amount / area`. An entry without
 * parts counts everywhere.
 *
 * @param input.part - a part of the site; where it is left out, only entries without parts count
 * @throws RatewrightError `date`, `type`; what `ledger` throws for an entry that is counted
 *
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { ledger, ledgerTotals } from "ratewright";
 * const season = ledger([
 *   {
 *     id: "a", date: "2026-04-20", parts: ["north pitch"], area: { value: 60000, unit: "ft2" },
 *     analysis: "24-0-11", amount: { value: 225, unit: "lb" },
 *   },
 *   { id: "b", date: "2026-06-08", supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }] },
 * ]);
 * const totals = ledgerTotals({ ledger: season, from: "2026-01-01", to: "2026-12-31", part: "north pitch" });
 * Number(totals.supplies.N?.in("lb/1000 ft2").toFixed(4)); // => 1.4
 * totals.applications; // => 2
 * ```
 */
export const ledgerTotals = (input: {
  readonly ledger: Ledger;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly part?: string;
}): LedgerTotals => {
  expectFields(input, ["ledger", "from", "to", "part"]);
  const from = civilDateAt(input.from, "from");
  const to = civilDateAt(input.to, "to");
  if (compareDates(from, to) > 0) fail("date", "to", to, `a date not earlier than ${from}`);
  const reader = standingReader(input.ledger, "ledger", asStated);
  const part =
    input.part === undefined ? wholeSite : expectName(input.part, "part", "the name of a part of the site");
  const sums = rateSums();
  const notCounted: { readonly date: CivilDate; readonly id: string }[] = [];
  let applications = 0;
  const isNext = applicationCounter();
  // In the order of the ledger, which is that of the memory: a large one is read in a fraction of the time.
  for (const place of reader.places) {
    const date = reader.date(place);
    if (date < from || date > to) continue;
    const { id, treatment } = reader.entry(place);
    if (!touches(reader.parts(place), part)) {
      if (input.part === undefined) notCounted.push({ date, id });
      continue;
    }
    const row = reader.row(place);
    if (isNext(date, treatment)) applications++;
    if (row.rates === undefined || (row.unweighed ?? []).length > 0) notCounted.push({ date, id });
    if (row.rates !== undefined) sums.add(row.rates);
  }
  return {
    type: "ledger-totals",
    version: 1,
    part,
    from,
    to,
    supplies: sums.total(),
    applications,
    notCounted: notCounted.sort((a, b) => compareDates(a.date, b.date)).map(({ id }) => id),
  };
};
