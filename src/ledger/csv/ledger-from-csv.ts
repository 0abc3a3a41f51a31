import { counted, described } from "../../quantity/house.js";
import { checks, type Finding, fail, frozen, type Problem, RatewrightError } from "../../quantity/index.js";
import { readCorrections } from "../book/ledger.js";
import { frozenLedger } from "../book/own-ledger.js";
import { idKey, otherId } from "../entry/entry-id.js";
import { type Labels, noLabels } from "../entry/entry-row.js";
import type { Ledger, LedgerEntry } from "../entry/ledger-entry.js";
import { readEntry } from "../entry/read-entry.js";
import { entryOf } from "./cells.js";
import { type Column, readColumns } from "./columns.js";
import { type CsvRecord, readCsv } from "./csv-text.js";
import { rowWithinFindings } from "./row-within.js";

/** A line of a CSV text that could not be read. */
export interface UnreadLine {
  /** The line of the text, from 1; the head is line 1. */
  readonly line: number;
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** What {@link ledgerFromCsv} gives: all that could be read, and the lines that could not. */
export interface LedgerReading {
  readonly type: "ledger-reading";
  readonly version: 1;
  readonly ledger: Ledger;
  readonly unread: readonly UnreadLine[];
  /** What is wrong with what was read, such as a correction of an entry whose line is lost. */
  readonly problems: readonly Problem[];
  /** What was read and may be meant otherwise, such as a row that two stray quotes made part of a note. */
  readonly findings: readonly Finding[];
}

/** The named cells of a head, without an empty one at its end, as spreadsheets leave it. */
const namedCells = ({
  cells,
}: CsvRecord): { readonly named: readonly string[]; readonly trailing: boolean } => {
  const trailing = cells.length > 1 && cells[cells.length - 1]?.trim() === "";
  return { named: trailing ? cells.slice(0, -1) : cells, trailing };
};

/** What the lines of one table share. */
interface Table {
  readonly columns: readonly Column[];
  /** Whether the head ends with a column without a name. */
  readonly trailing: boolean;
  readonly labels: Labels;
  /** The ids that were read, by what tells them apart. */
  readonly ids: Map<string, string>;
}

/** The entry of one line; throws all that is wrong with it. */
const entryOfLine = (
  { line, cells: found }: CsvRecord,
  { columns, trailing, labels, ids }: Table,
): LedgerEntry => {
  // A column without a name at the end holds nothing; where it does, the line is told as unread.
  const extra = trailing && found.length === columns.length + 1 && found[columns.length]?.trim() === "";
  const cells = extra ? found.slice(0, -1) : found;
  if (cells.length !== columns.length)
    fail(
      "text",
      `line ${line}`,
      described(counted(cells.length, "cell")),
      `${columns.length} cells, as the head has`,
    );
  const entry = entryOf(cells, columns) as LedgerEntry;
  const each = checks();
  readEntry(entry, "", each, labels);
  each.done();
  const { id } = entry;
  const alike = ids.get(idKey(id));
  if (alike !== undefined) fail("duplicate", "id", id, otherId(id, alike, "line"));
  ids.set(idKey(id), id);
  return entry;
};

/** What is wrong with the corrections among the entries that were read. */
const correctionProblems = (entries: readonly LedgerEntry[]): readonly Problem[] => {
  const kept = checks();
  try {
    readCorrections(entries, "entries", kept);
    kept.done();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    return error.problems;
  }
  return [];
};

/**
 * Reads a ledger from CSV that {@link ledgerCsv} or a spreadsheet wrote. A damaged line is reported with
 * its number and its text, and every other line is read. A correction of an entry that is not there stays
 * in the ledger and is reported. A text that runs over what looks like other rows is read, with a finding; a line whose
 * cells are all empty is passed over. Apostrophes come off the texts of lines that the column `guarded` marks `true`.
 *
 * @throws RatewrightError `missing`, `type`, `unit/unknown`, `substance/unknown`, `duplicate` where the
 *   head itself cannot be read: then no line means anything
 *
 * Source of the format: RFC 4180.
 *
 * @example
 * ```ts
 * import { ledgerFromCsv } from "ratewright";
 * const read = ledgerFromCsv(
 *   "id,date,area [ft2]\r\na,2026-04-20,59400\r\nb,2026-04-31,59400\r\nc,2026-06-08,14400\r\n",
 * );
 * read.ledger.entries.map(({ id }) => id); // => ["a", "c"]
 * read.unread.map(({ line, problems }) => [line, problems[0]?.code]); // => [[3, "date"]]
 * ```
 */
export const ledgerFromCsv = (text: string): LedgerReading => {
  if (typeof text !== "string") fail("type", "text", text, "text");
  const { records, damaged } = readCsv(text);
  const [head, ...lines] = records;
  if (head === undefined || head.line !== 1)
    return fail("missing", "text", text, "a head with the names of the columns");
  const { named, trailing } = namedCells(head);
  const columns = readColumns(named);
  const dateAt = columns.findIndex(({ field }) => field === "date");
  const unread: UnreadLine[] = damaged.map(({ line, text: found, why }) => ({
    line,
    text: found,
    problems: [{ code: "text", path: `line ${line}`, got: why, expected: "a line as RFC 4180 has it" }],
  }));
  const entries: LedgerEntry[] = [];
  const findings: Finding[] = [];
  const table: Table = { columns, trailing, labels: noLabels(), ids: new Map() };
  for (const record of lines) {
    if (record.cells.every((cell) => cell.trim() === "")) continue;
    const { line, text: found } = record;
    const at = `line ${line}`;
    try {
      entries.push(entryOfLine(record, table));
      findings.push(...rowWithinFindings(record, dateAt));
    } catch (error) {
      if (!(error instanceof RatewrightError)) throw error;
      const problems = error.problems.map((p) => ({ ...p, path: p.path === at ? at : `${at}.${p.path}` }));
      unread.push({ line, text: found, problems });
    }
  }
  const problems = correctionProblems(entries);
  return {
    type: "ledger-reading",
    version: 1,
    // Each entry was made and read here. One that is corrected twice counts twice, and is told wherever it is counted.
    ledger: frozenLedger(
      frozen(entries),
      problems.every(({ code }) => code === "missing"),
    ),
    unread: unread.sort((a, b) => a.line - b.line),
    problems,
    findings,
  };
};
