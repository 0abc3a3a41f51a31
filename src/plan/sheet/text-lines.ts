/** Breaks a text into lines; what follows the first is indented by `hang`. A word that is too long is broken too. */
export const wrapped = (text: string, width: number, first: string, hang: string): string[] => {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const whole of text.split(/\s+/)) {
    const room = Math.max(8, width - hang.length);
    for (let at = 0; at < Math.max(1, whole.length); at += room) {
      const word = whole.slice(at, at + room);
      if (!empty && line.length + 1 + word.length > width) {
        lines.push(line);
        line = hang;
        empty = true;
      }
      line += empty ? word : ` ${word}`;
      empty = false;
    }
  }
  return [...lines, line].map((one) => one.trimEnd());
};
