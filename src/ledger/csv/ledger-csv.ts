import { checks, expectFields, expectFlag, plainCopy } from "../../quantity/index.js";
import { expectLedger } from "../book/ledger.js";
import { isOwnLedger } from "../book/own-ledger.js";
import { entryPlaces } from "../entry/entry-readers.js";
import { noLabels } from "../entry/entry-row.js";
import type { Ledger } from "../entry/ledger-entry.js";
import { readEntry } from "../entry/read-entry.js";
import { cellsOf } from "./cells.js";
import { boundedHeads, guardColumn } from "./columns.js";
import { csvText } from "./csv-text.js";

/**
 * A ledger as CSV (RFC 4180), one entry a line, with the unit and the substance of every figure in the
 * head of its column: `area [ft2]`, `supplies [lb/1000 ft2 of N]`. Figures in different units stand in
 * different columns, so that {@link ledgerFromCsv} gives back exactly what was written; several supplies or
 * contents of one entry come back in the order of their columns.
 *
 * A spreadsheet runs a cell that begins with `=`, `+`, `-` or `@` as a formula, whoever wrote it: with
 * `guardFormulas` such a text gets an apostrophe in front, also behind a comma, a semicolon or a new line inside it.
 * A column `guarded` says so line by line, and {@link ledgerFromCsv} takes the apostrophes off again. Without it
 * the texts are written as they are: good for programs, not for a spreadsheet that others open.
 *
 * @param options.guardFormulas - `false` where it is left out
 * @throws RatewrightError `type` for what is not a ledger; what `ledger` throws for an entry that cannot be read;
 *   `range` for more than 500 columns
 *
 * Source of the format: RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files", 2005.
 * Source of the guard: OWASP, "CSV Injection".
 *
 * @example
 * ```ts
 * import { ledger, ledgerCsv } from "ratewright";
 * const season = ledger([
 *   { id: "a", date: "2026-04-20", parts: ["north pitch"], area: { value: 59400, unit: "ft2" }, note: "dry, calm" },
 * ]);
 * ledgerCsv(season).split("\r\n");
 * // => ["id,date,parts,area [ft2],note", "a,2026-04-20,north pitch,59400,\"dry, calm\"", ""]
 * const sums = ledger([{ id: "a", date: "2026-04-20", note: "=1+1" }]);
 * ledgerCsv(sums, { guardFormulas: true }).split("\r\n");
 * // => ["id,date,note,guarded", "a,2026-04-20,'=1+1,true", ""]
 * ```
 */
export const ledgerCsv = (ledger: Ledger, options: { readonly guardFormulas?: boolean } = {}): string => {
  const { guardFormulas } = expectFields(options, ["guardFormulas"], "options");
  const guard = guardFormulas === undefined ? false : expectFlag(guardFormulas, "options.guardFormulas");
  const given = expectLedger(ledger, "ledger");
  const entries = isOwnLedger(given) ? given.entries : given.entries.map((entry) => plainCopy(entry));
  const problems = checks();
  const labels = noLabels();
  for (const [i, entry] of entries.entries()) readEntry(entry, `ledger.entries[${i}]`, problems, labels);
  problems.done();
  const rows = entries.map((entry) => cellsOf(entry, guard));
  const used = new Set(rows.flatMap((row) => [...row.keys()]));
  const order = [...entryPlaces, guardColumn];
  const place = (head: string): number => order.indexOf(head.replace(/ \[[\s\S]*$/, ""));
  // The order of the fields; within one field the order in which its units come up.
  const heads = [...used].sort((a, b) => place(a) - place(b));
  for (const needed of ["date", "id"]) if (!used.has(needed)) heads.unshift(needed);
  boundedHeads(heads, "ledger");
  return csvText([heads, ...rows.map((row) => heads.map((head) => row.get(head) ?? ""))]);
};
