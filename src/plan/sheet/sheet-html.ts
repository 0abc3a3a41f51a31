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

/** Black on white, one page of letter or A4; the back begins on a page of its own. */
const style = `@page{margin:8mm}
*{box-sizing:border-box}
body{font:9pt/1.2 Arial,Helvetica,"Liberation Sans",sans-serif;color:#000;background:#fff;margin:0 auto;max-width:198mm}
header{border-bottom:2pt solid #000;padding-bottom:.6mm;display:flex;flex-wrap:wrap;gap:0 6mm;align-items:baseline}
h1{font-size:13pt;margin:0}
h2{font-size:10pt;margin:0}
p{margin:.5mm 0}
ul{margin:.3mm 0;padding-left:4.2mm;list-style:none}
li{text-indent:-4.2mm;break-inside:avoid}
li::before{display:inline-block;width:4.2mm;text-indent:0}
ul.dash>li::before{content:"\\2013"}
ul.mark>li::before{content:"!";font-weight:bold}
ul.box>li::before{content:"\\2610"}
.front section{border-bottom:.8pt solid #000;padding:.7mm 0}
.front section.stop{border:2pt solid #000;padding:.7mm 2mm;margin-top:1mm}
.front ul.dash,.front ul.box{columns:2;column-gap:6mm}
.front section:last-child{border-bottom:0}
table{border-collapse:collapse;width:100%;margin:.6mm 0}
th,td{border:.5pt solid #000;padding:.3mm 1.2mm;text-align:right;vertical-align:middle}
th:first-child,td:first-child{text-align:left}
.note{font-style:italic}
td.pen{min-width:12mm;height:5mm}
.blanks{display:flex;flex-wrap:wrap;gap:.6mm 5mm;margin:.6mm 0;align-items:baseline}
.blank i{display:inline-block;border-bottom:.6pt solid #000;min-width:16mm}
.front.dense{font-size:8pt;line-height:1.12}
.front.dense th,.front.dense td{padding:0 1mm}
.front.dense td.pen{height:4.6mm}
.office .front ul{columns:1}
.back{break-before:page}
.office .back{break-before:auto}
@media screen{body{padding:6mm}}`;

const blankHtml = ({ label, value, room }: SheetBlank): string =>
  `<span class="blank">${escaped(label)} ${value === null ? `<i style="min-width:${Math.min(80, 2 * room)}mm"></i>` : `<b>${escaped(value)}</b>`}</span>`;

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

/** How many lines a front takes, about: a long one is set smaller, so that it stays on its page. */
const linesOf = (sections: readonly SheetSection[]): number => {
  const of = (block: SheetBlock): number => {
    if (block.kind === "table")
      return (
        1 +
        block.rows.reduce(
          (sum, { note, cells }) =>
            sum + (note === undefined ? 1 : 2) + Math.floor((cells[0] ?? "").length / 60),
          0,
        )
      );
    if (block.kind === "list")
      return block.items.reduce((sum, item) => sum + Math.ceil(item.length / 110), 0);
    return block.kind === "text"
      ? Math.ceil(block.text.length / 110)
      : 1 + Math.floor(block.blanks.length / 4);
  };
  return sections.reduce(
    (sum, { blocks }) => sum + 1.5 + blocks.reduce((lines, block) => lines + of(block), 0),
    0,
  );
};

/** Lines of this size that fit on one page of letter. */
const comfortable = 60;

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
<body class="${sheet.copy}">
<main class="front${dense}">
<header><h1>${escaped(sheet.title)}</h1><p>${escaped(sheet.day)} (${escaped(sheet.date)}) &middot; ${escaped(sheet.site)} &middot; ${copy}</p><div class="blanks">${sheet.head.map(blankHtml).join("")}</div></header>
${sheet.front.map(sectionHtml).join("\n")}
</main>
${sheet.back.length === 0 ? "" : `<div class="back">\n${sheet.back.map(sectionHtml).join("\n")}\n</div>\n`}</body>
</html>
`;
};
