import {
  penned,
  type SheetBlank,
  type SheetBlock,
  type SheetSection,
  type WorkOrderSheet,
} from "./sheet-types.js";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** A text of a job as text of a page: nothing in it is markup. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);

/** Black on white, nothing below 10 points; the back begins on a page of its own, and each page says which it is. */
const style = `@page{margin:6mm 8mm 8mm;@bottom-right{content:"page " counter(page) " of " counter(pages);font:9pt Arial,Helvetica,"Liberation Sans",sans-serif}}
*{box-sizing:border-box}
body{font:10pt/1.09 Arial,Helvetica,"Liberation Sans",sans-serif;color:#000;background:#fff;margin:0 auto;padding:0 .3mm;max-width:200mm}
header{border-bottom:2pt solid #000;padding-bottom:.4mm;display:flex;flex-wrap:wrap;gap:0 5mm;align-items:baseline}
h1{font-size:13pt;margin:0;overflow-wrap:anywhere}
h2{font-size:10.5pt;margin:0;overflow-wrap:anywhere;break-after:avoid}
p{margin:.3mm 0}
ul{margin:.2mm 0;padding-left:4.4mm;list-style:none}
li{text-indent:-4.4mm;break-inside:avoid;overflow-wrap:anywhere}
li::before{display:inline-block;width:4.4mm;text-indent:0}
ul.dash>li::before{content:"\\2013"}
ul.mark>li::before{content:"!";font-weight:bold}
ul.box>li::before{content:"\\2610"}
section{border-bottom:.8pt solid #000;padding:.6mm 0}
section.stop{border:2pt solid #000;padding:.5mm 2mm;margin-top:.8mm}
.front .stop ul.dash,.front .after ul.box{columns:2;column-gap:6mm}
section:last-child{border-bottom:0}
table{border-collapse:collapse;width:100%;margin:.4mm 0}
tr{break-inside:avoid}
th,td{border:.5pt solid #000;padding:.1mm 1.1mm;text-align:right;vertical-align:middle}
th:first-child,td:first-child{text-align:left;overflow-wrap:anywhere}
.note{font-style:italic}
td.pen{min-width:12mm;height:4.6mm}
.record td.pen{height:5mm}
.blanks{display:flex;flex-wrap:wrap;gap:.4mm 5mm;margin:.4mm 0;align-items:baseline}
.blank i{display:inline-block;border-bottom:.6pt solid #000;min-width:14mm}
.reverse{break-before:page}
.reverse header{border-bottom-width:1pt}
.office .reverse{break-before:auto}
@media screen{body{padding:6mm}}`;

const blankHtml = ({ label, value, room }: SheetBlank): string =>
  `<span class="blank">${escaped(label)} ${value === null ? `<i style="min-width:${Math.min(80, Math.round(16 * room) / 10)}mm"></i>` : `<b>${escaped(value)}</b>`}</span>`;

const listClass = { "-": "dash", "!": "mark", "[ ]": "box" } as const;

/** A short amount stays on one line: `44.0 fl oz`. */
const unbroken = (cell: string): string =>
  cell.length <= 16 ? escaped(cell).replace(/ /g, "&nbsp;") : escaped(cell);

const cellHtml = (cell: string): string =>
  cell === penned ? '<td class="pen"></td>' : `<td>${cell === "[ ]" ? "&#9744;" : unbroken(cell)}</td>`;

const blockHtml = (block: SheetBlock): string => {
  switch (block.kind) {
    case "text":
      return block.strong === true
        ? `<p><strong>${escaped(block.text)}</strong></p>`
        : `<p>${escaped(block.text)}</p>`;
    case "list":
      return `<ul class="${listClass[block.mark]}">${block.items.map((item) => `<li>${escaped(item)}</li>`).join("")}</ul>`;
    case "blanks":
      return `<div class="blanks">${block.blanks.map(blankHtml).join("")}</div>`;
    default: {
      const heads = block.heads.map((head) => `<th scope="col">${unbroken(head)}</th>`).join("");
      const rows = block.rows.map(({ cells, note }) => {
        const [head = "", ...rest] = cells;
        const warning = note === undefined ? "" : ` <b class="note">! ${escaped(note)}</b>`;
        return `<tr><td>${escaped(head)}${warning}</td>${rest.map(cellHtml).join("")}</tr>`;
      });
      return `<table><thead><tr>${heads}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
    }
  }
};

const sectionHtml = ({ id, title, blocks }: SheetSection): string =>
  `<section class="${escaped(id.replace(/ /g, "-"))}"><h2>${escaped(title)}</h2>${blocks.map(blockHtml).join("")}</section>`;

/** What the back is the back of: it lies on a page of its own. */
const backHead = ({ copy, title, day }: WorkOrderSheet): string =>
  copy === "office" ? "" : `<header><p>${escaped(title)}, ${escaped(day)}: back</p></header>\n`;

/** A sheet as one HTML page, complete in itself: no script, no font and no image from elsewhere. */
export const sheetHtml = (sheet: WorkOrderSheet, lang: string): string => {
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
<body class="${sheet.copy}">
<main class="front">
<header><h1>${escaped(sheet.title)}</h1><p>${escaped(sheet.day)} (${escaped(sheet.date)}) &middot; ${escaped(sheet.site)} &middot; ${copy}</p><div class="blanks">${sheet.head.map(blankHtml).join("")}</div></header>
${sheet.front.map(sectionHtml).join("\n")}
</main>
${sheet.back.length === 0 ? "" : `<div class="reverse">\n${backHead(sheet)}${sheet.back.map(sectionHtml).join("\n")}\n</div>\n`}</body>
</html>
`;
};
