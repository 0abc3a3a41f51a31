import type { SheetBlank, SheetBlock, SheetRow, SheetSection, WorkOrderSheet } from "./sheet-types.js";
import { wrapped } from "./text-lines.js";

const blankText = ({ label, value, room }: SheetBlank): string => `${label} ${value ?? "_".repeat(room)}`;

/** Blanks side by side, as many as a line takes; none is broken in two. */
const blankLines = (blanks: readonly SheetBlank[], width: number): string[] => {
  const lines: string[] = [];
  for (const text of blanks.map(blankText)) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 3 + text.length <= width)
      lines[lines.length - 1] = `${last}   ${text}`;
    else lines.push(...wrapped(text, width, "  ", "    "));
  }
  return lines;
};

/** The least that the first column of a table is given before the table is written row by row. */
const leastFirst = 18;

/** A table: the first column to the left and broken over lines, the others to the right. */
const tableLines = (heads: readonly string[], rows: readonly SheetRow[], width: number): string[] => {
  const all = [heads, ...rows.map(({ cells }) => cells)];
  const widths = heads.map((_, column) => Math.max(...all.map((cells) => (cells[column] ?? "").length)));
  const others = widths.slice(1).reduce((sum, one) => sum + one + 2, 0);
  const first = Math.min(widths[0] ?? 0, width - 2 - others);
  if (first < Math.min(leastFirst, widths[0] ?? 0))
    return heads.length > 4 ? halved(heads, rows, width) : stacked(heads, rows, width);
  const row = (cells: readonly string[]): string[] => {
    const [head = "", ...rest] = cells;
    const [, lead = "", body = head] = /^(\d+ {2}| {3})(.*)$/.exec(head) ?? [];
    const lines = wrapped(body, first, lead, " ".repeat(lead.length));
    const right = rest.map((cell, i) => `  ${cell.padStart(widths[i + 1] ?? 0)}`).join("");
    return lines.map((line, i) => `  ${i === 0 ? `${line.padEnd(first)}${right}` : line}`.trimEnd());
  };
  return [
    ...row(heads),
    ...rows.flatMap(({ cells, note }) => [
      ...row(cells),
      ...(note === undefined ? [] : wrapped(note, width, "     ! ", "       ")),
    ]),
  ];
};

/** A table that is too wide as two, each with the first column. */
const halved = (heads: readonly string[], rows: readonly SheetRow[], width: number): string[] => {
  const cut = Math.ceil((heads.length + 1) / 2);
  const right = (cells: readonly string[]): readonly string[] => [cells[0] ?? "", ...cells.slice(cut)];
  return [
    ...tableLines(
      heads.slice(0, cut),
      rows.map(({ cells, ...row }) => ({ ...row, cells: cells.slice(0, cut) })),
      width,
    ),
    ...tableLines(
      right(heads),
      rows.map(({ cells }) => ({ cells: right(cells) })),
      width,
    ),
  ];
};

/** A table that is too wide for its columns: each row with the head of each of its cells. */
const stacked = (heads: readonly string[], rows: readonly SheetRow[], width: number): string[] =>
  rows.flatMap(({ cells, note }) => {
    const [head = "", ...rest] = cells;
    const told = rest.flatMap((cell, i) => (cell === "" ? [] : [`${heads[i + 1] ?? ""} ${cell}`])).join("; ");
    return [
      ...wrapped(`${head}: ${told}`, width, "  ", "     "),
      ...(note === undefined ? [] : wrapped(note, width, "     ! ", "       ")),
    ];
  });

const blockLines = (block: SheetBlock, width: number): string[] => {
  switch (block.kind) {
    case "text":
      return wrapped(block.text, width, "  ", "  ");
    case "list":
      return block.items.flatMap((item) =>
        wrapped(item, width, `  ${block.mark} `, " ".repeat(3 + block.mark.length)),
      );
    case "blanks":
      return blankLines(block.blanks, width);
    default:
      return tableLines(block.heads, block.rows, width);
  }
};

const sectionLines = (section: SheetSection, width: number): string[] => [
  ...(section.title.length <= width ? [section.title] : wrapped(section.title, width, "", "  ")),
  ...section.blocks.flatMap((block) => blockLines(block, width)),
];

/** A sheet as plain text. */
export const sheetText = (sheet: WorkOrderSheet, width: number): string => {
  const when = `${sheet.day} (${sheet.date})`;
  const copy = sheet.copy === "shed" ? "SHED COPY" : "OFFICE COPY";
  const double = "=".repeat(width);
  const single = "-".repeat(width);
  const between = (sections: readonly SheetSection[], rule: string): string[] =>
    sections.flatMap((section, i) => [...(i === 0 ? [] : [rule]), ...sectionLines(section, width)]);
  return `${[
    ...wrapped(sheet.title.toUpperCase(), width, "", "  "),
    ...wrapped(`${when}, ${sheet.site}: ${copy}`, width, "", "  "),
    ...blankLines(sheet.head, width).map((line) => line.replace(/^ {2}/, "")),
    double,
    ...between(sheet.front, single),
    ...(sheet.back.length === 0 ? [] : [double, ...between(sheet.back, single)]),
  ].join("\n")}\n`;
};
