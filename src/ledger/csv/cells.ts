import { checks, fail } from "../../quantity/index.js";
import { entryPlaces } from "../entry/entry-readers.js";
import type { LedgerEntry, LedgerWeather } from "../entry/ledger-entry.js";
import type { Stated } from "../stated.js";
import { type Column, cellKindOf, guardColumn, headOf } from "./columns.js";
import { guardedText, unguardedText } from "./formula-guard.js";

/** The cells of a line by the heads of their columns. */
export type Cells = Map<string, string>;

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
    } else item += text[i];
  }
  // Who types into a spreadsheet puts blanks beside the semicolon as it comes.
  return [...items, item].map((one) => one.trim());
};

const valueAt = (entry: LedgerEntry, field: string): unknown =>
  field.startsWith("weather.")
    ? entry.weather?.[field.slice(8) as keyof LedgerWeather]
    : entry[field as keyof LedgerEntry];

/** What an entry states, cell by cell; its texts guarded against being run as formulas where that is asked for. */
export const cellsOf = (entry: LedgerEntry, guard: boolean): Cells => {
  const cells: Cells = new Map();
  const text = (value: string): string => (guard ? guardedText(value) : value);
  const figure = (field: string, value: Stated): void => {
    cells.set(headOf(field, value), String(value.value));
  };
  for (const field of entryPlaces) {
    const value = valueAt(entry, field);
    if (value === undefined) continue;
    switch (cellKindOf(field)) {
      case "quantity":
        figure(field, value as Stated);
        break;
      case "quantities":
        for (const one of value as readonly Stated[]) figure(field, one);
        break;
      case "list":
        cells.set(field, text(listText(value as readonly string[])));
        break;
      case "analysis":
        cells.set(field, text(typeof value === "string" ? value : JSON.stringify(value)));
        break;
      case "text":
        cells.set(field, text(String(value)));
        break;
      default:
        cells.set(field, String(value));
    }
  }
  if (guard) cells.set(guardColumn, "true");
  return cells;
};

const numberPattern = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

const numberOf = (cell: string, path: string): number =>
  numberPattern.test(cell.trim())
    ? Number(cell) + 0
    : fail("text", path, cell, "a number with a point for the decimals");

const flagOf = (cell: string, path: string): boolean => {
  // A spreadsheet writes its own yes and no in capitals.
  const word = cell.trim().toLowerCase();
  return word === "true" || word === "false" ? word === "true" : fail("type", path, cell, "true or false");
};

const analysisOf = (cell: string): unknown => {
  if (!cell.startsWith("{")) return cell;
  try {
    return JSON.parse(cell) as unknown;
  } catch {
    return fail("text", "analysis", cell, "a grade such as 24-0-11, or an analysis as JSON");
  }
};

/** The entry that the cells of a line state, unread yet; throws all that is wrong with its cells. */
export const entryOf = (cells: readonly string[], columns: readonly Column[]): unknown => {
  const entry: Record<string, unknown> = {};
  const weather: Record<string, unknown> = {};
  const problems = checks();
  const guardAt = columns.findIndex(({ field }) => field === guardColumn);
  const mark = guardAt < 0 ? "" : (cells[guardAt] as string);
  const guarded = mark !== "" && problems.run(() => flagOf(mark, guardColumn)) === true;
  columns.forEach(({ field, unit = "", of }, i) => {
    const cell = cells[i] as string;
    if (cell === "" || field === guardColumn) return;
    const target = field.startsWith("weather.") ? weather : entry;
    const name = field.replace("weather.", "");
    const text = guarded ? unguardedText(cell) : cell;
    const figure = (): Stated => ({
      value: numberOf(cell, field),
      unit,
      ...(of === undefined ? {} : { of }),
    });
    problems.run(() => {
      switch (cellKindOf(field)) {
        case "quantity":
          if (target[name] !== undefined)
            fail("conflict", field, cell, "one figure, not one in each of two units");
          target[name] = figure();
          break;
        case "quantities":
          target[name] = [...((target[name] as Stated[] | undefined) ?? []), figure()];
          break;
        case "list":
          target[name] = listOf(text);
          break;
        case "flag":
          target[name] = flagOf(cell, field);
          break;
        case "number":
          target[name] = numberOf(cell, field);
          break;
        case "analysis":
          target[name] = analysisOf(text);
          break;
        case "text":
          target[name] = text;
          break;
        default:
          target[name] = cell;
      }
    });
  });
  problems.done();
  return Object.keys(weather).length > 0 ? { ...entry, weather } : entry;
};
