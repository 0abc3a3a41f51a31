// Cells between commas, quoted where they hold a comma or a quote. No cell of these files holds a line break, so that a
// block of the file can be cut at any of them.

/** The cells of a line; `undefined` where a quote is never closed, or text stands behind a closing quote. */
export const cellsOf = (line: string): readonly string[] | undefined => {
  if (!line.includes('"')) return line.split(",");
  const cell = /(?:"((?:[^"]|"")*)"|([^",]*))(,|$)/y;
  const cells: string[] = [];
  for (;;) {
    const found = cell.exec(line);
    if (found === null) return undefined;
    cells.push(found[1] === undefined ? (found[2] as string) : found[1].replaceAll('""', '"'));
    if (found[3] === "") return cells;
  }
};

/** A line of cells. */
export const lineOf = (cells: readonly string[]): string =>
  `${cells.map((cell) => (/[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(",")}\n`;
