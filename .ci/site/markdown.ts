// The pages of docs/ as HTML: headings with anchors, links that lead to pages of the site, tables that scroll.
import { posix } from "node:path";
import { Marked, type Tokens } from "marked";
import { escaped, slug } from "./html.js";

/** What a page of Markdown becomes. */
export interface Rendered {
  readonly title: string;
  readonly html: string;
  readonly headings: readonly { readonly id: string; readonly text: string; readonly depth: number }[];
}

/** Where a page of Markdown lies, and where its links lead. */
export interface Place {
  /** In the repository: `docs/cases/a-worn-boom.md`. */
  readonly source: string;
  /** In the site: `cases/a-worn-boom.html`. */
  readonly path: string;
  /** The page of the site for a file of the repository, with its anchor; throws for a file that has none. */
  readonly target: (file: string, anchor: string) => string;
  /** The page that a name in code leads to, from the root of the site, where there is one. */
  readonly named?: (code: string) => string | undefined;
}

/** The way from one page of the site to another. */
export const wayTo = (from: string, to: string): string => {
  const [file = "", anchor] = to.split("#");
  const way = posix.relative(posix.dirname(from), file);
  const there = file === from && anchor !== undefined ? "" : way;
  return anchor === undefined ? there : `${there}#${anchor}`;
};

/** Comments of code are set apart: in the examples they say what comes out. */
const codeHtml = (code: string): string =>
  escaped(code)
    .split("\n")
    .map((line) => line.replace(/(^|\s)(\/\/ .*|# .*)$/, '$1<span class="remark">$2</span>'))
    .join("\n");

/** Markup in a page: an anchor stays one, as the bibliography has one for each work; what else there is, is shown. */
const markup = (text: string): string => {
  if (/^(<a id="[a-z0-9-]+">|<\/a>)$/.test(text)) return text;
  return text.startsWith("<!--") ? "" : escaped(text);
};

/** A page of Markdown as HTML. */
export const render = (markdown: string, place: Place): Rendered => {
  const headings: { id: string; text: string; depth: number }[] = [];
  const taken = new Map<string, number>();
  let title = "";
  let linked = false;
  const anchorOf = (text: string): string => {
    const id = slug(text);
    const times = taken.get(id) ?? 0;
    taken.set(id, times + 1);
    return times === 0 ? id : `${id}-${times}`;
  };
  const marked = new Marked({
    gfm: true,
    renderer: {
      heading({ tokens, depth, text }: Tokens.Heading): string {
        const inner = this.parser.parseInline(tokens);
        const id = anchorOf(text);
        if (depth === 1 && title === "") title = text.replace(/`/g, "");
        else headings.push({ id, text: text.replace(/`/g, ""), depth });
        return `<h${depth} id="${id}">${inner}</h${depth}>\n`;
      },
      link({ href, tokens }: Tokens.Link): string {
        linked = true;
        const inner = this.parser.parseInline(tokens);
        linked = false;
        if (/^https?:/.test(href)) return `<a href="${escaped(href)}" rel="noopener">${inner}</a>`;
        const [file = "", anchor = ""] = href.split("#");
        const meant = file === "" ? place.source : posix.join(posix.dirname(place.source), file);
        return `<a href="${escaped(wayTo(place.path, place.target(meant, anchor)))}">${inner}</a>`;
      },
      image({ href, text }: Tokens.Image): string {
        const meant = posix.join(posix.dirname(place.source), href);
        const way = wayTo(place.path, place.target(meant, ""));
        return `<img src="${escaped(way)}" alt="${escaped(text)}" loading="lazy">`;
      },
      code({ text, lang }: Tokens.Code): string {
        const kind = lang === undefined || lang === "" ? "" : ` class="${escaped(lang.split(" ")[0] ?? "")}"`;
        return `<pre tabindex="0"${kind}><code>${codeHtml(text)}</code></pre>\n`;
      },
      codespan({ text }: Tokens.Codespan): string {
        const way = linked ? undefined : place.named?.(text);
        const code = `<code>${escaped(text)}</code>`;
        return way === undefined ? code : `<a class="computes" href="${wayTo(place.path, way)}">${code}</a>`;
      },
      table(token: Tokens.Table): string {
        const cells = (row: readonly Tokens.TableCell[], tag: string): string =>
          `<tr>${row.map((cell) => `<${tag}>${this.parser.parseInline(cell.tokens)}</${tag}>`).join("")}</tr>`;
        const body = token.rows.map((row) => cells(row, "td")).join("\n");
        const label = escaped(token.header.map(({ text }) => text.replace(/`/g, "")).join(", ")) || "Table";
        return `<div class="table" tabindex="0" role="group" aria-label="${label}"><table><thead>${cells(token.header, "th")}</thead>\n<tbody>${body}</tbody></table></div>\n`;
      },
      html({ text }: Tokens.HTML | Tokens.Tag): string {
        return markup(text);
      },
    },
  });
  const html = marked.parse(markdown, { async: false });
  return { title, html, headings };
};
