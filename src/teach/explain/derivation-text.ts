import { expectList, expectRecord, expectText, fail } from "../../quantity/index.js";
import type { Derivation } from "../derivation/derivation.js";

interface Line {
  readonly kind: string;
  readonly text: string;
  readonly tex: string | undefined;
  readonly part: string | undefined;
}

const optionalText = (value: unknown, path: string): string | undefined =>
  value === undefined ? undefined : expectText(value, path, "a text");

/** What is written of a derivation, read: it may come out of a store. */
const readLines = (derivation: unknown): { readonly title: string; readonly lines: readonly Line[] } => {
  const { type, title, steps } = expectRecord(derivation, "derivation", "a derivation, as explain gives");
  if (type !== "derivation") return fail("type", "derivation.type", type, '"derivation"');
  return {
    title: expectText(title, "derivation.title", "a title"),
    lines: expectList(steps, "derivation.steps", "step").map((step, n) => {
      const path = `derivation.steps[${n}]`;
      const { kind, text, tex, part } = expectRecord(step, path, "a step of a derivation");
      return {
        kind: expectText(kind, `${path}.kind`, "a kind of step"),
        text: expectText(text, `${path}.text`, "the line of a step"),
        tex: optionalText(tex, `${path}.tex`),
        part: optionalText(part, `${path}.part`),
      };
    }),
  };
};

/** The lines of each part, in order; a derivation of one formula is one part without a name. */
const partsOf = (lines: readonly Line[]): { readonly part: string | undefined; readonly lines: Line[] }[] => {
  const parts: { part: string | undefined; lines: Line[] }[] = [];
  for (const line of lines) {
    const last = parts[parts.length - 1];
    if (last !== undefined && last.part === line.part) last.lines.push(line);
    else parts.push({ part: line.part, lines: [line] });
  }
  return parts;
};

/**
 * A derivation as plain text: the title, and a line for each step.
 *
 * @throws RatewrightError `type`, `missing` for anything but a derivation
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { derivationText, explain } from "ratewright/teach";
 * const working = explain("boom-width", { nozzles: 12, spacing: quantity(20, "in") });
 * derivationText(working).split("\n").pop(); // => "20 ft needs no rounding"
 * ```
 */
export const derivationText = (derivation: Derivation): string => {
  const { title, lines } = readLines(derivation);
  return [
    title,
    ...partsOf(lines).flatMap(({ part, lines: own }) => [
      ...(part === undefined ? [] : ["", part]),
      ...own.map(({ text }) => text),
    ]),
  ].join("\n");
};

/** Text that Markdown shows as it is. */
const plain = (text: string): string => text.replace(/[\\\u0060*_{}[\]<>|#]/g, "\\$&");

const markdownLine = ({ kind, text, tex }: Line): string => {
  if (kind === "equation" && tex !== undefined) return `- $${tex}$`;
  return `- ${kind === "rounding" ? `**${plain(text)}**` : plain(text)}`;
};

/**
 * A derivation as Markdown: a heading, and a list of the steps. The equation is TeX between dollar signs.
 *
 * @throws RatewrightError `type`, `missing` for anything but a derivation
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { derivationMarkdown, explain } from "ratewright/teach";
 * const working = explain("boom-width", { nozzles: 12, spacing: quantity(20, "in") });
 * derivationMarkdown(working).split("\n")[0]; // => "### Effective swath of a boom"
 * derivationMarkdown(working).includes("- $w = n \\times s$"); // => true
 * ```
 */
export const derivationMarkdown = (derivation: Derivation): string => {
  const { title, lines } = readLines(derivation);
  return [
    `### ${plain(title)}`,
    "",
    ...partsOf(lines).flatMap(({ part, lines: own }) => [
      ...(part === undefined ? [] : [`#### ${plain(part)}`, ""]),
      ...own.map(markdownLine),
      "",
    ]),
  ]
    .join("\n")
    .trimEnd();
};
