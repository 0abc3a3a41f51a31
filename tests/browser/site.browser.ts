// The site in a real browser: no errors, no other host, found by the words of the trade, readable by everybody.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startBrowser, textOf, watchedPage } from "./browser.js";
import { type Served, serve } from "./server.js";
import { siteFolder } from "./write-site.js";

/** A page of each kind. */
const kinds = [
  "index.html",
  "search.html?q=bags",
  "start.html",
  "formulas/index.html",
  "formulas/product-rate.html#target=0.9&percent=24",
  "formulas/friction-loss.html",
  "formulas/boom-width.html#nozzles=x&spacing=20",
  "formulas/liquid-product-rate.html#target=0.9&percent=0&density=10",
  "cases/index.html",
  "cases/a-worn-boom.html",
  "cases/growing-in-a-meadow.html",
  "rooms/index.html",
  "rooms/disagreements.html",
  "rooms/bibliography.html",
  "rooms/nomenclature.html",
  "rooms/batch.html",
  "rooms/teach.html",
  "rooms/units.html",
  "rooms/spray.html",
  "evidence/index.html",
  "evidence/price.html",
  "developers.html",
  "changelog.html",
];

/** What people type, and the page that has to stand among the first three. */
const queries: readonly (readonly [words: string, page: string])[] = [
  ["how much fertilizer", "formulas/product-rate.html"],
  ["gallons per acre", "formulas/application-volume.html"],
  ["gpa", "formulas/application-volume.html"],
  ["bags", "formulas/packages-for-need.html"],
  ["how many bags do I need", "formulas/packages-for-need.html"],
  ["nozzle flow", "formulas/nozzle-flow.html"],
  ["mph", "formulas/ground-speed.html"],
  ["area of a circle", "formulas/circle-area.html"],
  ["percent solution", "formulas/concentrate-for-strength.html"],
  ["hard water", "formulas/hardness-from-ions.html"],
  ["how long to water", "formulas/zone-run-time.html"],
  ["grass seed", "formulas/seed-order.html"],
  ["mulch", "formulas/cover-volume.html"],
  ["one third rule", "formulas/mow-at-height.html"],
  ["P2O5", "formulas/phosphorus-of-phosphate.html"],
  ["half-life", "formulas/fraction-remaining.html"],
  ["fertilzer", "formulas/product-rate.html"],
  ["worn nozzle", "cases/a-worn-boom.html"],
  ["soil report", "cases/from-a-soil-report-to-a-plan.html"],
  ["overseeding rate", "formulas/seed-order.html"],
  ["acres per hour", "formulas/effective-field-capacity.html"],
  ["tank mix order", "cases/four-products-in-one-tank.html"],
  ["how often to mow", "formulas/mowing-interval.html"],
  ["spreader setting", "formulas/gate-setting.html"],
  ["reentry interval", "rooms/interval.html"],
  ["too windy to spray", "rooms/weather.html"],
  ["how much sand", "formulas/topdressing-volume.html"],
  ["acre to square feet", "rooms/units.html"],
  ["slow release nitrogen", "cases/one-slow-or-monthly-quick.html"],
  ["cost per pound of nitrogen", "formulas/nutrient-cost.html"],
  ["irrigation audit", "formulas/distribution-uniformity-of-four.html"],
  ["what to charge", "formulas/price-at-markup.html"],
  ["pounds of ai per acre", "formulas/liquid-product-for-active.html"],
  ["SAR irrigation water", "formulas/sodium-adsorption-ratio.html"],
  ["plug spacing", "formulas/plug-spacing.html"],
  ["backpack sprayer", "formulas/strength-for-area-rate.html"],
  ["rinse tank", "formulas/tank-rinse-residue.html"],
  ["when to reapply growth regulator", "cases/when-to-repeat-a-regulator.html"],
  ["nitrogen limit per year", "formulas/nitrogen-left-of-two.html"],
];

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
let site: Served;
beforeAll(async () => {
  [browser, site] = await Promise.all([startBrowser(), serve(siteFolder)]);
});
afterAll(async () => {
  await Promise.all([browser?.close(), site?.close()]);
});

/** What axe-core finds that is serious or critical; of another color scheme the contrast alone is looked at again. */
const violations = async (page: Page, rules: readonly string[]): Promise<string[]> => {
  await page.evaluate(axe);
  const only = rules.length === 0 ? "" : `, { runOnly: ${JSON.stringify(rules)} }`;
  const { violations: all } = (await page.evaluate(`axe.run(document${only})`)) as AxeResults;
  return all
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
};

describe("every kind of page", () => {
  it.each([
    ["light", []],
    ["dark", ["color-contrast"]],
  ] as const)("has no serious violation of accessibility in %s", async (colorScheme, rules) => {
    const { page, troubles } = await watchedPage(browser, site.address, { colorScheme, bypassCSP: true });
    const found: string[] = [];
    for (const path of kinds) {
      await page.goto(site.address + path);
      found.push(...(await violations(page, rules)).map((violation) => `${path}: ${violation}`));
    }
    expect([...found, ...troubles]).toEqual([]);
    await page.context().close();
  });

  it("opens without an error or a request to another host, fits a phone of 360 px, and says that the label comes first", async () => {
    const { page, troubles } = await watchedPage(browser, site.address, {
      viewport: { width: 360, height: 740 },
    });
    const odd: string[] = [];
    for (const path of kinds) {
      await page.goto(site.address + path);
      const { width, footer } = await page.evaluate(() => ({
        width: document.documentElement.scrollWidth,
        footer: document.querySelector("footer")?.textContent ?? "",
      }));
      if (width > 360 || !footer.includes("The label is the law")) odd.push(`${path}: ${width}`);
    }
    expect([...odd, ...troubles]).toEqual([]);
    // The watch would notice: the policy of the page stops the picture, and tells it.
    await page.evaluate(() => {
      new Image().src = "http://192.0.2.1/x.png";
    });
    await expect.poll(() => troubles.length).toBeGreaterThan(0);
    await page.context().close();
  });
});

describe("the search", () => {
  it("finds a page by the words that a person uses, among the first three", async () => {
    const { page, troubles } = await watchedPage(browser, site.address);
    await page.goto(`${site.address}search.html`);
    const missed: string[] = [];
    for (const [words, wanted] of queries) {
      await page.locator("#search").fill(words);
      const first = await page
        .locator("#found a")
        .evaluateAll((links) => links.slice(0, 3).map((link) => link.getAttribute("href")));
      if (!first.includes(wanted)) missed.push(`${words}: ${first.join(", ")}`);
    }
    expect([...missed, ...troubles]).toEqual([]);
    await page.context().close();
  });

  it("is reached from the head of any page, by keyboard, and keeps its words in the address", async () => {
    const { page } = await watchedPage(browser, site.address);
    await page.goto(`${site.address}cases/index.html`);
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Skip to the page");
    // The name of the site and its parts, and then the search.
    const links = await page.locator("header a").count();
    for (let n = 0; n <= links; n++) await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("head-search");
    await page.keyboard.type("bags");
    await page.keyboard.press("Enter");
    await page.waitForURL(/search\.html\?q=bags/);
    expect(await page.locator("#found li").count()).toBeGreaterThan(0);
    expect(await textOf(page, "#count")).toMatch(/^\d+ pages/);
    await page.locator("#search").fill("zzzzqq");
    expect(await textOf(page, "#count")).toBe("0 pages.");
    await page.context().close();
  });
});

describe("the site in a folder, without a server", () => {
  it("computes and finds", async () => {
    const { page, troubles } = await watchedPage(browser, "file://");
    await page.goto(`file://${siteFolder}/formulas/boom-width.html#nozzles=12&spacing=20`);
    expect(await textOf(page, "#answer")).toBe("20 ft");
    await page.goto(`file://${siteFolder}/search.html?q=bags`);
    expect(await page.locator("#found li").count()).toBeGreaterThan(0);
    expect(troubles).toEqual([]);
    await page.context().close();
  });
});
