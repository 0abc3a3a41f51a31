import { described } from "../../quantity/house.js";
import { type Checks, checks, fail, outOfRange, quantityOf, shown } from "../../quantity/index.js";
import { entryPlaces } from "../entry/entry-readers.js";
import type { Stated } from "../stated.js";

/** How a field stands in a cell. */
export type CellKind = "text" | "plain" | "list" | "flag" | "number" | "quantity" | "quantities" | "analysis";

const kinds: Readonly<Partial<Record<string, CellKind>>> = {
  date: "plain",
  start: "plain",
  end: "plain",
  form: "plain",
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

/** How a field stands in its cell; free text where nothing else is said. */
export const cellKindOf = (field: string): CellKind => kinds[field] ?? "text";

/** The column that says of each line whether its texts are guarded against being run as formulas. */
export const guardColumn = "guarded";

/** A column by its head: the field, and for a figure its unit and its substance. */
export interface Column {
  readonly field: string;
  readonly unit?: string;
  readonly of?: string;
}

/** `area [ft2]`, `supplies [lb/1000 ft2 of N]`: the unit and the substance stand in the head of the column. */
export const headOf = (field: string, { unit, of }: Omit<Stated, "value">): string =>
  `${field} [${unit}${of === undefined || of === "none" ? "" : ` of ${of}`}]`;

const placeOf = (head: string): string => `head "${head.trim().slice(0, 60)}"`;

const columnOf = (head: string): Column => {
  const path = placeOf(head);
  const [, field = head, inside] = /^([\w.]+)\s*\[([\s\S]*)\]$/.exec(head.trim()) ?? [];
  const name = field.trim();
  if (name === guardColumn && inside === undefined) return { field: name };
  if (!entryPlaces.includes(name)) fail("type", path, name, `one of the fields ${entryPlaces.join(", ")}`);
  const kind = cellKindOf(name);
  if (kind !== "quantity" && kind !== "quantities")
    return inside === undefined ? { field: name } : fail("type", path, head, "a field without a unit");
  if (inside === undefined) return fail("missing", path, head, `the unit in brackets, such as ${name} [lb]`);
  const at = inside.indexOf(" of ");
  const unit = (at < 0 ? inside : inside.slice(0, at)).trim();
  quantityOf(0, unit, "none", path);
  // A name of an older ledger comes back as the one of today.
  const { of } = quantityOf(0, unit, at < 0 ? "none" : inside.slice(at + 4).trim(), path);
  return { field: name, unit, ...(of === "none" ? {} : { of }) };
};

/** More columns than this, or a longer head, is no ledger. */
export const mostColumns = 500;
export const longestHead = 600;

/** Takes the heads of a table within bounds, or throws. */
export const boundedHeads = (heads: readonly string[], path: string): readonly string[] => {
  if (heads.length > mostColumns)
    outOfRange(path, described(`${heads.length} columns`), { max: mostColumns, count: "columns" });
  const long = heads.find((head) => head.length > longestHead);
  return long === undefined
    ? heads
    : outOfRange(path, described(`a column head of ${long.length} characters`), {
        max: longestHead,
        count: "characters",
      });
};

const otherSeparator = (heads: readonly string[], problems: Checks): boolean => {
  const [only = ""] = heads;
  const found = heads.length > 1 ? undefined : [";", "\t"].find((mark) => only.includes(mark));
  if (found === undefined) return false;
  const name = found === ";" ? "semicolons" : "tabs";
  const expected = "commas between the cells: save the table as CSV separated by commas";
  problems.add({ code: "text", path: "head", got: `${name} between the cells`, expected });
  return true;
};

/** Reads the heads of a table, all problems at once; each column may stand there once, however it is spaced. */
export const readColumns = (heads: readonly string[]): readonly Column[] => {
  const problems = checks();
  if (otherSeparator(heads, problems)) problems.done();
  const columns = boundedHeads(heads, "head").map((cell) => problems.run(() => columnOf(cell)));
  const seen = new Set<string>();
  columns.forEach((column, i) => {
    // The names of columns, not the texts of their heads: blanks do not make another column.
    const name = column === undefined ? (heads[i] as string).trim() : JSON.stringify(Object.values(column));
    if (seen.has(name)) {
      const head = heads[i] as string;
      problems.add({
        code: "duplicate",
        path: placeOf(head),
        got: shown(head),
        expected: "each column once",
      });
    }
    seen.add(name);
  });
  for (const needed of ["id", "date"]) {
    if (!columns.some((column) => column?.field === needed))
      problems.add({ code: "missing", path: "head", got: "no such column", expected: `a column ${needed}` });
  }
  problems.done();
  return columns as readonly Column[];
};
