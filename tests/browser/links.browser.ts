// Every link and every anchor of the site leads somewhere; nothing in it points a browser to another host.
import { existsSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { describe, expect, it } from "vitest";
import { filesBelow } from "../house/sources.js";
import { siteFolder } from "./write-site.js";

const pages = new Map(
  filesBelow("site")
    // The reference is written by TypeDoc, which checks its own links.
    .filter((path) => path.endsWith(".html") && !path.startsWith("site/reference/"))
    .map((path) => [
      path.replace(/^site\//, ""),
      readFileSync(join(siteFolder, path.replace(/^site\//, "")), "utf8"),
    ]),
);
const anchors = new Map(
  [...pages].map(([path, html]) => [
    path,
    new Set([...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id)),
  ]),
);

const attributes = (html: string, pattern: RegExp): string[] =>
  [...html.matchAll(pattern)].map(([, value = ""]) => value.replace(/&amp;/g, "&"));

const leadsNowhere = (from: string, link: string): boolean => {
  const [file = "", anchor] = link.split("#");
  const path = file === "" ? from : posix.join(posix.dirname(from), file);
  if (!existsSync(join(siteFolder, path))) return true;
  return (
    anchor !== undefined &&
    !path.startsWith("reference/") &&
    !anchors.get(path)?.has(decodeURIComponent(anchor))
  );
};

describe("the links of the site", () => {
  it("are many", () => {
    expect(pages.size).toBeGreaterThan(250);
  });

  it("lead to a page that is there, and to an anchor that it has", () => {
    const broken = [...pages].flatMap(([path, html]) =>
      attributes(html, /\s(?:href|src|action)="([^"]*)"/g)
        .filter((link) => !/^(https?:|data:)/.test(link) && leadsNowhere(path, link))
        .map((link) => `${path}: ${link}`),
    );
    expect(broken).toEqual([]);
  });

  it("load nothing from another host: what leads there is a link to follow", () => {
    const loaded = [...pages].flatMap(([path, html]) =>
      [
        ...attributes(
          html,
          /<(?:script|img|iframe|source|video|audio|embed)\b[^>]*\ssrc="(https?:[^"]*|\/\/[^"]*)"/g,
        ),
        ...attributes(html, /<(?:link|base|form)\b[^>]*\s(?:href|action)="(https?:[^"]*|\/\/[^"]*)"/g),
      ].map((link) => `${path}: ${link}`),
    );
    expect(loaded).toEqual([]);
  });

  it("stand in pages with a title, one main heading and one set of anchors", () => {
    const odd = [...pages].filter(([path, html]) => {
      const ids = attributes(html, /\sid="([^"]+)"/g);
      return (
        !/<title>[^<]{3,}<\/title>/.test(html) ||
        html.match(/<h1\b/g)?.length !== 1 ||
        (new Set(ids).size !== ids.length && path !== "")
      );
    });
    expect(odd.map(([path]) => path)).toEqual([]);
  });
});
