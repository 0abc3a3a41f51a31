// How a person finds something on a printed sheet.

export type Look = (paper: string) => string;

export const flat = (text: string): string => text.replace(/\s+/g, " ").trim();

/** The lines under a heading in capitals, up to the next rule. */
export const under = (paper: string, heading: string): readonly string[] => {
  const lines = paper.split("\n");
  const from = lines.findIndex((line) => line.includes(heading));
  const to = lines.findIndex((line, i) => i > from && /^[-=]{10}/.test(line));
  return from < 0 ? [] : lines.slice(from, to < 0 ? undefined : to);
};

/** Pieces of a line that two blanks or more part, each with where it ends. */
const pieces = (text: string): readonly { readonly text: string; readonly end: number }[] =>
  [...text.matchAll(/\S(?:\S| (?! ))*/g)].map((found) => ({
    text: found[0],
    end: found.index + found[0].length,
  }));

/** What stands in the row of a name under the head of a column: figures end where their head ends. */
export const cell =
  (heading: string, row: string, column: string): Look =>
  (paper) => {
    const lines = under(paper, heading);
    const at = lines.findIndex(
      (one) => pieces(one).length > 1 && pieces(one).some(({ text }) => text.includes(column)),
    );
    const end = pieces(lines[at] ?? "").find(({ text }) => text.includes(column))?.end;
    const found = lines.slice(at + 1).find((one) => one.includes(row));
    return pieces(found ?? "").find((piece) => piece.end === end)?.text ?? `nothing at ${row}, ${column}`;
  };

/** The sentence, bullet or row that holds some words. */
export const line =
  (heading: string, words: string): Look =>
  (paper) => {
    const items: string[] = [];
    for (const one of under(paper, heading)) {
      // A caution belongs to the step above it; what is not a bullet, a blank, a new sentence or a row goes on.
      if (/^ {2}(- |! |\[ \] |[A-Z][A-Z]|\d|Nozzle|Size|Spreader)/.test(one) || pieces(one).length > 2)
        items.push(one);
      else items.push(`${items.pop() ?? ""} ${one}`);
    }
    return items.map(flat).find((item) => item.includes(words)) ?? `nothing about ${words}`;
  };
