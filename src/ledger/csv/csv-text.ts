/** One record of a CSV text: its cells, the physical line on which it begins, from 1, and its text as it stands. */
export interface CsvRecord {
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** A physical line that is no part of any record. */
export interface DamagedLine {
  readonly line: number;
  readonly text: string;
  readonly why: string;
}

/** Reads one record that begins at `at`; where it is damaged, says why. */
const recordAt = (text: string, at: number): { cells: string[]; end: number; why?: string } => {
  const cells: string[] = [];
  let i = at;
  for (;;) {
    let cell = "";
    if (text[i] === '"') {
      i++;
      for (;;) {
        const quote = text.indexOf('"', i);
        if (quote < 0) return { cells, end: i, why: "a quote that is never closed" };
        cell += text.slice(i, quote);
        i = quote + 1;
        if (text[i] !== '"') break;
        cell += '"';
        i++;
      }
      if (i < text.length && !",\r\n".includes(text[i] as string))
        return { cells, end: i, why: "text behind a closing quote" };
    } else {
      const from = i;
      while (i < text.length && !',\r\n"'.includes(text[i] as string)) i++;
      if (text[i] === '"')
        return { cells, end: i, why: "a quote inside a cell that does not begin with one" };
      cell = text.slice(from, i);
    }
    cells.push(cell);
    if (text[i] === ",") i++;
    else break;
  }
  if (text[i] === "\r") i++;
  if (text[i] === "\n") i++;
  return { cells, end: i };
};

const lineEnd = /\r\n|\r|\n/g;

/** The physical lines of a text. */
export const linesOf = (text: string): readonly string[] => text.split(lineEnd);

/** Where the physical line that holds a place ends, its line end included. */
const endOfLine = (text: string, at: number): number => {
  lineEnd.lastIndex = at;
  return lineEnd.exec(text) === null ? text.length : lineEnd.lastIndex;
};

/** A text without the end of its last line. */
const withoutLineEnd = (text: string): string => text.replace(/(\r\n|\r|\n)$/, "");

/**
 * Reads CSV as RFC 4180 writes it: cells between commas, quotes doubled inside quotes, lines that end
 * with CR LF, LF or CR. A damaged record costs its first physical line and no other: reading goes on with the
 * next line, so that one stray quote does not swallow the rest.
 */
export const readCsv = (
  input: string,
): { readonly records: readonly CsvRecord[]; readonly damaged: readonly DamagedLine[] } => {
  const text = input.startsWith("\uFEFF") ? input.slice(1) : input;
  const records: CsvRecord[] = [];
  const damaged: DamagedLine[] = [];
  let at = 0;
  let line = 1;
  while (at < text.length) {
    const { cells, end, why } = recordAt(text, at);
    const width = records[0]?.cells.length;
    const raw = withoutLineEnd(text.slice(at, end));
    const lines = linesOf(raw).length;
    // A record over several lines that has the wrong number of cells began with a stray quote.
    const wrong =
      why ??
      (lines > 1 && width !== undefined && cells.length !== width
        ? "a quote that is never closed"
        : undefined);
    if (wrong === undefined) {
      if (!(cells.length === 1 && cells[0] === "")) records.push({ line, text: raw, cells });
      line += lines;
      at = end;
      continue;
    }
    const next = endOfLine(text, at);
    damaged.push({ line, text: withoutLineEnd(text.slice(at, next)), why: wrong });
    line++;
    at = next;
  }
  return { records, damaged };
};

const cellText = (cell: string): string =>
  /[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell;

/** Writes CSV as RFC 4180 has it: CR LF at the end of each line, quotes only where they are needed. */
export const csvText = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map(cellText).join(",")}\r\n`).join("");
