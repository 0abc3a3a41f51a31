import { isCivilDate } from "../../calendar/index.js";
import type { Finding } from "../../quantity/index.js";
import { type CsvRecord, linesOf } from "./csv-text.js";

/**
 * The later lines of a record that look like rows of their own: with a date where the rows have theirs. A note may
 * hold such a line, but two stray quotes, one in each of two rows, make them one just so.
 */
const rowsWithin = ({ line, text }: CsvRecord, dateAt: number): readonly number[] =>
  linesOf(text).flatMap((inner, i) => {
    const cell = i === 0 ? undefined : inner.split(",")[dateAt];
    return cell !== undefined && isCivilDate(cell.replace(/"/g, "").trim()) ? [line + i] : [];
  });

/** The finding on a line of a table whose text goes on over what looks like other rows; none where it does not. */
export const rowWithinFindings = (record: CsvRecord, dateAt: number): readonly Finding[] => {
  const lines = rowsWithin(record, dateAt);
  if (lines.length === 0) return [];
  const many = lines.length > 1;
  const shownLines = `${lines.slice(0, 3).join(", ")}${lines.length > 3 ? ", ..." : ""}`;
  return [
    {
      code: "ledger/row-within-text",
      severity: "caution",
      path: `line ${record.line}`,
      params: { line: record.line, rows: lines.slice(0, 100).map(String) },
      text: `Line ${record.line} has a text in quotes that runs over ${many ? "lines" : "line"} ${shownLines}, which look${many ? "" : "s"} like ${many ? "rows of their own" : "a row of its own"}: it was read as part of that text. Look for stray quotes.`,
    },
  ];
};
