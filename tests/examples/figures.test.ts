import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { figureFolder, figures } from "../../.ci/figures/draw.js";
import { figureSvg } from "../../.ci/figures/frame.js";
import { pans } from "../../.ci/figures/spreader.js";
import { filesBelow, read } from "../house/sources.js";

const pages = filesBelow("docs").filter((path) => path.endsWith(".md"));

describe.each(figures())("the figure $name", (figure) => {
  it("is what the library gives: npm run figures draws it again", () => {
    expect(readFileSync(`${figureFolder}${figure.name}.svg`, "utf8")).toBe(figureSvg(figure));
  });

  it("has a title and a description, and colors for light and for dark", () => {
    const svg = figureSvg(figure);
    expect(svg).toMatch(/<title id="t">[^<]{20,}<\/title>\n<desc id="d">[^<]{100,}<\/desc>/);
    expect(svg).toContain("prefers-color-scheme: dark");
    expect(svg).not.toMatch(/NaN|Infinity|undefined|currentColor/);
  });

  it("stands in a page, with a text for who does not see it", () => {
    const shown = new RegExp(`!\\[[^\\]]{20,}\\]\\((\\.\\./)?figures/${figure.name}\\.svg\\)`);
    expect(pages.filter((path) => shown.test(read(path))).length).toBeGreaterThan(0);
  });
});

describe("the figures of a case", () => {
  it("are drawn from the figures of that case", () => {
    expect(read("docs/cases/swath-from-a-row-of-pans.md")).toContain(`[${pans.join(", ")}]`);
  });
});
