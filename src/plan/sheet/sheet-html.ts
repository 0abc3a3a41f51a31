import { penned, type SheetBlank, type SheetBlock, type SheetSection, type WorkOrderSheet } from "./sheet-types.js";

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** A text of a job as text of a page: nothing in it is markup. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);

/** Black on white, one page of letter or A4; the back begins on a page of its own. */
const style = `@page{margin:9mm}
*{box-sizing:border-box}
body{font:9.5pt/1.22 Arial,Helvetica,"Liberation Sans",sans-serif;color:#000;background:#fff;margin:0 auto;max-width:195mm}
header{border-bottom:2.5pt solid #000;padding-bottom:1mm}
h1{font-size:14pt;margin:0}
h2{font-size:10.5pt;margin:0 0 .5mm}
p{margin:.6mm 0}
ul{margin:.4mm 0;padding-left:4.5mm;list-style:none}
li{text-indent:-4.5mm}
li::before{display:inline-block;width:4.5mm;text-indent:0}
ul.dash>li::before{content:"\\2013"}
ul.mark>li::before{content:"!";font-weight:bold}
ul.box>li::before{content:"\\2610"}
section{border-bottom:.8pt solid #000;padding:1mm 0}
section.stop{border:2pt solid #000;padding:1mm 2mm;margin-top:1.2mm}
section.stop ul.dash{columns:2;column-gap:6mm}
section.stop ul.dash li{break-inside:avoid}
section:last-child{border-bottom:0}
table{border-collapse:collapse;width:100%;margin:.8mm 0}
th,td{border:.5pt solid #000;padding:.35mm 1.2mm;text-align:right;vertical-align:top}
th{font-weight:bold}
th:first-child,td:first-child{text-align:left}
td.note{text-align:left;font-style:italic;border-top:0}
td.pen{min-width:13mm;height:5.5mm}
.record td{height:5.5mm}
.blanks{display:flex;flex-wrap:wrap;gap:.8mm 5mm;margin:.8mm 0}
.blank i{display:inline-block;border-bottom:.6pt solid #000;min-width:16mm;height:3.6mm}
.front.dense{font-size:8.4pt;line-height:1.13}
.front.dense td,.front.dense th{padding:.1mm 1mm}
.front.dense .record td,.front.dense td.pen{height:4.4mm}
.back{break-before:page}
.ounce{white-space:nowrap}
@media screen{body{padding:6mm}}`;

const blankHtml = ({ label, value, room }: SheetBlank): string =>
  `<span class="blank">${escaped(label)} ${value === null ? `<i style="min-width:${Math.min(80, 2 * room)}mm"></i>` : `<b>${escaped(value)}</b>`}</span>`;

const listClass = { "-": "dash", "!": "mark", "[ ]": "box" } as const;

const cellHtml = (cell: string): string =>
  cell === penned ? '<td class="pen"></td>' : `<td>${cell === "[ ]" ? "&#9744;" : escaped(cell)}</td>`;

const blockHtml = (block: SheetBlock): string => {
  switch (block.kind) {
    case "text":
      return block.strong === true ? `<p><strong>${escaped(block.text)}</strong></p>` : `<p>${escaped(block.text)}</p>`;
    case "list":
      return `<ul class="${listClass[block.mark]}">${block.items.map((item) => `<li>${escaped(item)}</li>`).join("")}</ul>`;
    case "blanks":
      return `<div class="blanks">${block.blanks.map(blankHtml).join("")}</div>`;
    default: {
      const heads = block.heads.map((head) => `<th scope="col">${escaped(head)}</th>`).join("");
      const rows = block.rows.map(({ cells, note }) => {
        const row = `<tr>${cells.map(cellHtml).join("")}</tr>`;
        return note === undefined
          ? row
          : `${row}<tr><td class="note" colspan="${block.heads.length}"><b>!</b> ${escaped(note)}</td></tr>`;
      });
      return `<table><thead><tr>${heads}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
    }
  }
};

const sectionHtml = ({ id, title, blocks }: SheetSection): string =>
  `<section class="${escaped(id.replace(/ /g, "-"))}"><h2>${escaped(title)}</h2>${blocks.map(blockHtml).join("")}</section>`;

/** How many lines a front takes, about: a long one is set smaller, so that it stays on its page. */
const linesOf = (sections: readonly SheetSection[]): number => {
  const of = (block: SheetBlock): number => {
    if (block.kind === "table")
      return 1 + block.rows.reduce((sum, { note, cells }) => sum + (note === undefined ? 1 : 2) + Math.floor((cells[0] ?? "").length / 60), 0);
    if (block.kind === "list") return block.items.reduce((sum, item) => sum + Math.ceil(item.length / 110), 0);
    return block.kind === "text" ? Math.ceil(block.text.length / 110) : 1 + Math.floor(block.blanks.length / 4);
  };
  return sections.reduce((sum, { blocks }) => sum + 1.5 + blocks.reduce((lines, block) => lines + of(block), 0), 0);
};

/** Lines of this size that fit on one page of letter. */
const comfortable = 44;

/** A sheet as one HTML page, complete in itself: no script, no font and no image from elsewhere. */
export const sheetHtml = (sheet: WorkOrderSheet, lang: string): string => {
  const dense = sheet.copy === "shed" && linesOf(sheet.front) > comfortable ? " dense" : "";
  const copy = sheet.copy === "shed" ? "SHED COPY" : "OFFICE COPY";
  return `<!doctype html>
<html lang="${escaped(lang)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width,initial-scale=1">
<title>${escaped(sheet.title)}</title>
<style>
${style}
</style>
</head>
<body>
<main class="front${dense}">
<header><h1>${escaped(sheet.title)}</h1><p>${escaped(sheet.day)} (${escaped(sheet.date)}) &middot; ${escaped(sheet.site)} &middot; ${copy}</p><div class="blanks">${sheet.head.map(blankHtml).join("")}</div></header>
${sheet.front.map(sectionHtml).join("\n")}
</main>
${sheet.back.length === 0 ? "" : `<div class="back">\n${sheet.back.map(sectionHtml).join("\n")}\n</div>\n`}</body>
</html>
`;
};
