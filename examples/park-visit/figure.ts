/** Draws docs/figures/shed-sheet.svg: the front of the sheet of the visit, up to the store. `tsx examples/park-visit/figure.ts` */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";
import { type Job, workOrder, workOrderText } from "ratewright";

const job = (): Job => JSON.parse(readFileSync(new URL("job.json", import.meta.url), "utf8")) as Job;

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };
const escaped = (text: string): string => text.replace(/[&<>]/g, (sign) => entities[sign] ?? sign);

/** The picture, its spaces kept by non-breaking ones: black text of one width on white, a line of the sheet a line of the picture. */
export const sheetFigure = (): string => {
  const text = workOrderText(workOrder(job()));
  const front = text.slice(0, text.indexOf("\nSTORE\n")).replace(/\n-+$/, "");
  const lines = front.split("\n");
  const [width, height] = [640, 16 * lines.length + 24];
  const rows = lines.map(
    (line, i) => `<text x="16" y="${16 * i + 26}">${escaped(line).replace(/ /g, "\u00a0")}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="t d">
<title id="t">Work order sheet for the shed</title>
<desc id="d">A printed sheet: stop conditions, the spreader's rate for one pass with amounts for each field, and the loads of the sprayer as columns beside the steps.</desc>
<rect width="100%" height="100%" fill="#fff"/>
<g font-family="ui-monospace, Menlo, Consolas, 'Liberation Mono', monospace" font-size="13.4" fill="#000">
${rows.join("\n")}
</g>
</svg>
`;
};

/** Where the picture lies. */
export const figurePath: string = fileURLToPath(
  new URL("../../docs/figures/shed-sheet.svg", import.meta.url),
);

if (argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(new URL("../../docs/figures/", import.meta.url), { recursive: true });
  writeFileSync(figurePath, sheetFigure());
}
