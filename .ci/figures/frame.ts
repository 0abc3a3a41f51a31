// The frame of a figure: a plot of Observable Plot as an SVG that stands by itself, readable on light and on dark.
import { type PlotOptions, plot } from "@observablehq/plot";
import { parseHTML } from "linkedom";

/** A figure, and what it says to who does not see it. */
export interface Figure {
  /** The name of the file, without its ending. */
  readonly name: string;
  readonly title: string;
  /** What is to be seen, in sentences. */
  readonly description: string;
  readonly options: PlotOptions;
}

/** The colors of a figure. They never tell something alone: a line is also dashed or named. */
export const ink = "var(--ink)";
export const soft = "var(--soft)";
export const first = "var(--first)";
export const second = "var(--second)";
export const third = "var(--third)";

const style = `:root { --paper: #ffffff; --ink: #16191d; --soft: #5b6470; --first: #0b4f8a; --second: #a8480c; --third: #2f6b1f; }
@media (prefers-color-scheme: dark) { :root { --paper: #14171b; --ink: #e9eaec; --soft: #a9b1bb; --first: #8fc3f2; --second: #ffb27a; --third: #a5d68c; } }
text { white-space: pre; }`;

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;");

/** Places to a hundredth of a pixel: the same on every computer. */
const rounded = (svg: string): string =>
  svg.replace(/-?\d+\.\d{3,}(?:e-?\d+)?/g, (number) => String(Number(Number(number).toFixed(2)) + 0));

/** The figure as a file. */
export const figureSvg = ({ title, description, options }: Figure): string => {
  const { document } = parseHTML("<html><body></body></html>");
  const drawn = plot({
    width: 680,
    height: 340,
    marginLeft: 48,
    marginBottom: 42,
    marginTop: 30,
    ...options,
    document: document as NonNullable<PlotOptions["document"]>,
  });
  const { width = 680, height = 340 } = options;
  const inner = drawn.innerHTML
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/ aria-(?:label|hidden)="[^"]*"/g, "");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="t d" font-family="system-ui, sans-serif" font-size="12.5" text-anchor="middle" fill="var(--ink)" color="var(--ink)">
<title id="t">${escaped(title)}</title>
<desc id="d">${escaped(description)}</desc>
<style>${style}</style>
<rect width="100%" height="100%" fill="var(--paper)"/>
${rounded(inner)
  .replace(/currentColor/g, "var(--ink)")
  .replace(/></g, ">\n<")}
</svg>
`;
};
