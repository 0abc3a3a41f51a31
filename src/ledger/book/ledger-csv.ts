import {
  checks,
  fail,
  isSubstance,
  type Problem,
  quantityOf,
  RatewrightError,
  shown,
} from "../../quantity/index.js";
import { type Labels, noLabels } from "../entry/entry-row.js";
import type { Ledger, LedgerEntry, LedgerWeather } from "../entry/ledger-entry.js";
import { entryPlaces, readEntry } from "../entry/read-entry.js";
import type { Stated } from "../stated.js";
import { type CsvRecord, csvText, readCsv } from "./csv.js";
import { expectLedger, readCorrections } from "./ledger.js";

type Cells = Map<string, string>;
type Kind = "text" | "list" | "flag" | "number" | "quantity" | "quantities" | "analysis";

const kinds: Readonly<Partial<Record<string, Kind>>> = {
  parts: "list",
  area: "quantity",
  analysis: "analysis",
  slowNitrogen: "quantity",
  density: "quantity",
  contents: "quantities",
  amount: "quantity",
  rate: "quantity",
  supplies: "quantities",
  restrictedUse: "flag",
  carrierVolume: "quantity",
  reEntryHours: "number",
  voids: "flag",
  "weather.wind": "quantity",
  "weather.temperature": "quantity",
  "weather.humidity": "quantity",
};

/** `area [ft2]`, `supplies [lb/1000 ft2 of N]`: the unit and the substance stand in the head of the column. */
const headOf = (field: string, { unit, of }: Stated): string =>
  `${field} [${unit}${of === undefined || of === "none" ? "" : ` of ${of}`}]`;

const listText = (list: readonly string[]): string =>
  list.map((item) => item.replace(/[\\;]/g, "\\$&")).join("; ");

const listOf = (text: string): string[] => {
  const items: string[] = [];
  let item = "";
  for (let i = 0; i < text.length; i++) {
    if (text[i] === "\\" && i + 1 < text.length) item += text[++i];
    else if (text[i] === ";") {
      items.push(item);
      item = "";
      if (text[i + 1] === " ") i++;
    } else item += text[i];
  }
  return [...items, item];
};

const cellsOf = (entry: LedgerEntry): Cells => {
  const cells: Cells = new Map();
  const put = (head: string, text: string): void => {
    cells.set(head, text);
  };
  for (const field of entryPlaces) {
    const value: unknown = field.startsWith("weather.")
      ? entry.weather?.[field.slice(8) as keyof LedgerWeather]
      : entry[field as keyof LedgerEntry];
    if (value === undefined) continue;
    switch (kinds[field]) {
      case "quantity":
        put(headOf(field, value as Stated), String((value as Stated).value));
        break;
      case "quantities":
        for (const one of value as readonly Stated[]) put(headOf(field, one), String(one.value));
        break;
      case "list":
        put(field, listText(value as readonly string[]));
        break;
      case "analysis":
        put(field, typeof value === "string" ? value : JSON.stringify(value));
        break;
      default:
        put(field, String(value));
    }
  }
  return cells;
};

/**
 * A ledger as CSV (RFC 4180), one entry a line, with the unit and the substance of every figure in the
 * head of its column: `area [ft2]`, `supplies [lb/1000 ft2 of N]`. Figures in different units stand in
 * different columns, so that {@link ledgerFromCsv} gives back exactly what was written; several supplies or
 * contents of one entry come back in the order of their columns.
 *
 * @throws RatewrightError `type` for what is not a ledger
 *
 * Source of the format: RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files", 2005.
 *
 * @example
 * ```ts
 * import { ledger, ledgerCsv } from "ratewright";
 * const season = ledger([
 *   { id: "a", date: "2026-04-20", parts: ["north pitch"], area: { value: 59400, unit: "ft2" }, note: "dry, calm" },
 * ]);
 * ledgerCsv(season).split("\r\n");
 * // => ["id,date,parts,area [ft2],note", "a,2026-04-20,north pitch,59400,\"dry, calm\"", ""]
 * ```
 */
export const ledgerCsv = (ledger: Ledger): string => {
  const { entries } = expectLedger(ledger, "ledger");
  const door = checks();
  const labels = noLabels();
  for (const [i, entry] of entries.entries()) readEntry(entry, `ledger.entries[${i}]`, door, labels);
  door.done();
  const rows = entries.map(cellsOf);
  const used = new Set(rows.flatMap((row) => [...row.keys()]));
  const place = (head: string): number => entryPlaces.indexOf(head.replace(/ \[.*$/, ""));
  // The order of the fields; within one field the order in which its units come up.
  const heads = [...used].sort((a, b) => place(a) - place(b));
  for (const needed of ["date", "id"]) if (!used.has(needed)) heads.unshift(needed);
  return csvText([heads, ...rows.map((row) => heads.map((head) => row.get(head) ?? ""))]);
};

interface Column {
  readonly field: string;
  readonly unit?: string;
  readonly of?: string;
}

const columnOf = (head: string): Column => {
  const [, field = head, inside] = /^([\w.]+) \[(.*)\]$/.exec(head.trim()) ?? [];
  const name = field.trim();
  const path = `head "${head}"`;
  if (!entryPlaces.includes(name)) fail("type", path, name, `one of the fields ${entryPlaces.join(", ")}`);
  const measured = kinds[name] === "quantity" || kinds[name] === "quantities";
  if (!measured)
    return inside === undefined ? { field: name } : fail("type", path, head, "a field without a unit");
  if (inside === undefined) return fail("missing", path, head, `the unit in brackets, such as ${name} [lb]`);
  const at = inside.indexOf(" of ");
  const unit = at < 0 ? inside : inside.slice(0, at);
  const of = at < 0 ? undefined : inside.slice(at + 4);
  quantityOf(0, unit, "none", path);
  if (of !== undefined && !isSubstance(of)) fail("substance/unknown", path, of, "a substance, such as N");
  return { field: name, unit, ...(of === undefined ? {} : { of }) };
};

const numberPattern = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

const numberIn = (cell: string, path: string): number =>
  numberPattern.test(cell.trim())
    ? Number(cell)
    : fail("text", path, cell, "a number with a point for the decimals");

const entryOf = (cells: readonly string[], columns: readonly Column[]): unknown => {
  const entry: Record<string, unknown> = {};
  const weather: Record<string, unknown> = {};
  const door = checks();
  columns.forEach(({ field, unit, of }, i) => {
    const cell = cells[i] as string;
    if (cell === "") return;
    const target = field.startsWith("weather.") ? weather : entry;
    const name = field.replace("weather.", "");
    const figure = (): Stated => ({
      value: numberIn(cell, field),
      unit: unit as string,
      ...(of === undefined ? {} : { of }),
    });
    door.run(() => {
      switch (kinds[field]) {
        case "quantity":
          if (target[name] !== undefined)
            fail("conflict", field, cell, "one figure, not one in each of two units");
          target[name] = figure();
          break;
        case "quantities":
          target[name] = [...((target[name] as Stated[] | undefined) ?? []), figure()];
          break;
        case "list":
          target[name] = listOf(cell);
          break;
        case "flag":
          target[name] =
            cell === "true" || cell === "false"
              ? cell === "true"
              : fail("type", field, cell, "true or false");
          break;
        case "number":
          target[name] = numberIn(cell, field);
          break;
        case "analysis":
          target[name] = cell.startsWith("{") ? analysisIn(cell) : cell;
          break;
        default:
          target[name] = cell;
      }
    });
  });
  door.done();
  return Object.keys(weather).length > 0 ? { ...entry, weather } : entry;
};

const analysisIn = (cell: string): unknown => {
  try {
    return JSON.parse(cell) as unknown;
  } catch {
    return fail("text", "analysis", cell, "a grade such as 24-0-11, or an analysis as JSON");
  }
};

/** A line of a CSV text that could not be read. */
export interface UnreadLine {
  /** The line of the text, from 1; the head is line 1. */
  readonly line: number;
  readonly text: string;
  readonly problems: readonly Problem[];
}

/** What {@link ledgerFromCsv} gives: all that could be read, and the lines that could not. */
export interface LedgerReading {
  readonly ledger: Ledger;
  readonly unread: readonly UnreadLine[];
  /** What is wrong with what was read, such as a correction of an entry whose line is lost. */
  readonly problems: readonly Problem[];
}

/** More columns than this, or a longer head, is no ledger. */
const mostColumns = 500;
const longestHead = 300;

/** The cells of the head, without an empty one at its end, as spreadsheets leave it. */
const headCells = ({ line, cells }: CsvRecord): CsvRecord & { readonly trailing: boolean } => {
  const trailing = cells.length > 1 && cells[cells.length - 1]?.trim() === "";
  const named = trailing ? cells.slice(0, -1) : cells;
  if (named.length > mostColumns)
    fail("range", "head", `${named.length} columns`, `${mostColumns} columns or fewer`);
  const long = named.find((cell) => cell.length > longestHead);
  if (long !== undefined)
    fail("range", "head", `a column head of ${long.length} characters`, `${longestHead} characters or fewer`);
  return { line, cells: named, trailing };
};

/**
 * Reads a ledger from CSV that {@link ledgerCsv} or a spreadsheet wrote. A damaged line is reported with
 * its number and its text, and every other line is read. A correction of an entry that is not there stays
 * in the ledger and is reported.
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
  const [first, ...lines] = records;
  const head = first && headCells(first);
  if (head === undefined || head.line !== 1)
    return fail("missing", "text", text, "a head with the names of the columns");
  const door = checks();
  const columns = head.cells.map((cell) => door.run(() => columnOf(cell)));
  const names = new Set<string>();
  for (const cell of head.cells) {
    const name = cell.trim();
    if (names.has(name))
      door.add({ code: "duplicate", path: `head "${name}"`, got: shown(cell), expected: "each column once" });
    names.add(name);
  }
  for (const needed of ["id", "date"]) {
    if (!columns.some((column) => column?.field === needed))
      door.add({ code: "missing", path: "head", got: "no such column", expected: `a column ${needed}` });
  }
  door.done();
  const unread: UnreadLine[] = damaged.map(({ line, text: found, why }) => ({
    line,
    text: found,
    problems: [{ code: "text", path: `line ${line}`, got: why, expected: "a line as RFC 4180 has it" }],
  }));
  const entries: LedgerEntry[] = [];
  const labels: Labels = noLabels();
  const ids = new Set<string>();
  for (const { line, cells: found } of lines) {
    // A column without a name at the end holds nothing; where it does, the line is told as unread.
    const extra =
      found.length === columns.length + 1 && head.trailing && found[columns.length]?.trim() === "";
    const cells = extra ? found.slice(0, -1) : found;
    const at = `line ${line}`;
    try {
      if (cells.length !== columns.length)
        fail("text", at, `${cells.length} cells`, `${columns.length} cells, as the head has`);
      const entry = entryOf(cells, columns as Column[]) as LedgerEntry;
      const each = checks();
      readEntry(entry, "", each, labels);
      each.done();
      if (ids.has(entry.id)) fail("duplicate", "id", entry.id, "an id that no other line has");
      ids.add(entry.id);
      entries.push(entry);
    } catch (error) {
      if (!(error instanceof RatewrightError)) throw error;
      const problems = error.problems.map((p) => ({ ...p, path: p.path === at ? at : `${at}.${p.path}` }));
      unread.push({ line, text: csvText([cells]).trimEnd(), problems });
    }
  }
  const kept = checks();
  readCorrections(entries, "entries", kept);
  const problems: Problem[] = [];
  try {
    kept.done();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    problems.push(...error.problems);
  }
  return {
    ledger: { type: "ledger", version: 1, entries },
    unread: unread.sort((a, b) => a.line - b.line),
    problems,
  };
};
