// The frame of every page: the head, the way around, and the rules of the label at the foot.
import { escaped } from "./html.js";

/** What a page shows. */
export interface Page {
  /** Where it lies, from the root of the site: `formulas/product-rate.html`. */
  readonly path: string;
  readonly title: string;
  readonly body: string;
  readonly description?: string;
  /** Scripts of the site that it runs, from its root. */
  readonly scripts?: readonly string[];
  /** Which part of the site it belongs to. */
  readonly part?: string;
  /** A class of its own for the main part. */
  readonly kind?: string;
}

/** The parts of the site, as the head of every page names them. */
const parts: readonly (readonly [name: string, path: string])[] = [
  ["Formulas", "formulas/index.html"],
  ["Cases", "cases/index.html"],
  ["Rooms", "rooms/index.html"],
  ["Evidence", "evidence/index.html"],
];

/** Nothing is loaded from anywhere else, and no script or style stands in a page. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; form-action 'self'; base-uri 'none'";

/** The way from a page back to the root of the site: `../` from a page in a folder. */
export const upFrom = (path: string): string => "../".repeat(path.split("/").length - 1);

export const labelRules =
  "The label is the law and overrides every figure here, as do local rules and licensed practice. " +
  "These pages are arithmetic; they do not authorize an application.";

/** A page as HTML. */
export const pageHtml = (page: Page, withReference: boolean): string => {
  const up = upFrom(page.path);
  const shown = withReference ? [...parts, ["Reference", "reference/index.html"] as const] : parts;
  const links = shown
    .map(([name, path]) => {
      const here = page.part === name ? ' aria-current="true"' : "";
      return `<li><a href="${up}${path}"${here}>${name}</a></li>`;
    })
    .join("");
  const scripts = (page.scripts ?? []).map((path) => `<script src="${up}${path}" defer></script>`).join("\n");
  const title = page.path === "index.html" ? page.title : `${page.title} · ratewright`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="referrer" content="no-referrer">
${page.description === undefined ? "" : `<meta name="description" content="${escaped(page.description)}">\n`}<title>${escaped(title)}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="${up}style.css">
${scripts}
</head>
<body>
<a class="skip" href="#main">Skip to the page</a>
<header class="head">
<a class="name" href="${up}index.html">ratewright</a>
<nav aria-label="Parts of the site"><ul>${links}</ul></nav>
<form class="seek" role="search" action="${up}search.html" method="get">
<label class="unseen" for="head-search">Search</label>
<input id="head-search" type="search" name="q" placeholder="bags, gallons per acre…" autocomplete="off">
<button type="submit">Find</button>
</form>
</header>
<main id="main"${page.kind === undefined ? "" : ` class="${page.kind}"`} tabindex="-1">
${page.body}
</main>
<footer class="foot">
<p><strong>Label first.</strong> ${labelRules}</p>
<p>What you type into a form stays in this page. A link to a case holds it behind the <code>#</code>, which a browser sends to
no server.</p>
</footer>
</body>
</html>
`;
};
