/** A sentence of a visit about its job and its loads, as a route numbers them. */
export const ofFills = (text: string): string =>
  text
    .replace(/ for JOB \d+(?=,)/, "")
    .replace(/\b([Ll])oad (?=\d)/g, (_, letter: string) => (letter === "L" ? "Fill " : "fill "));
