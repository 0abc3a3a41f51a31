// What `npm run site` does: the static site, into an empty site/. It needs no server and asks no other host.
import { copyFileSync, cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { argv } from "node:process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { pageHtml } from "./layout.js";
import { sitePages } from "./pages.js";
import { referenceFolder } from "./repository.js";
import { searchScript } from "./search-index.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const here = fileURLToPath(new URL(".", import.meta.url));

/** What was written. */
export interface SiteWritten {
  readonly pages: number;
  readonly formulas: number;
  readonly bytes: Readonly<Record<string, number>>;
}

/** Scripts as one file each, to be run as they are: a page works from a folder too. */
const scripts = async (out: string): Promise<void> => {
  await build({
    entryPoints: [join(here, "client/form.ts"), join(here, "client/search.ts")],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2020",
    outdir: out,
    logLevel: "warning",
  });
};

/** Writes the site into a folder, which is emptied first. */
export const writeSite = async (out: string): Promise<SiteWritten> => {
  rmSync(out, { recursive: true, force: true });
  const bytes: Record<string, number> = {};
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(out, path)), { recursive: true });
    writeFileSync(join(out, path), text);
    bytes[path] = Buffer.byteLength(text);
  };
  const { pages, documents, files } = sitePages();
  const withReference = existsSync(join(referenceFolder, "index.html"));
  if (withReference) cpSync(referenceFolder, join(out, "reference"), { recursive: true });
  for (const page of pages) write(page.path, pageHtml(page, withReference));
  write("search-index.js", searchScript(documents));
  copyFileSync(join(here, "style.css"), join(out, "style.css"));
  for (const file of files) {
    const path = join(out, file.replace(/^docs\//, ""));
    mkdirSync(dirname(path), { recursive: true });
    copyFileSync(join(root, file), path);
  }
  await scripts(out);
  const formulas = pages.filter(({ kind }) => kind === "formula").length;
  return { pages: pages.length, formulas, bytes };
};

if (argv[1] === fileURLToPath(import.meta.url)) {
  const started = Date.now();
  const { pages, formulas } = await writeSite(join(root, "site"));
  console.log(
    `site/: ${pages} pages, ${formulas} of them with a form, in ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
}
