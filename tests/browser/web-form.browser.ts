// The example of a form without a framework, in a real browser, on the built files.
import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { quantity } from "../../src/index.js";
import { unitsOf } from "../../src/quantity/index.js";
import { explainChain } from "../../src/teach/index.js";
import { root } from "../house/sources.js";
import { startBrowser, textOf, watchedPage } from "./browser.js";
import { type Served, serve } from "./server.js";

let browser: Browser;
let served: Served;
beforeAll(async () => {
  if (!existsSync(join(root, "dist/esm/index.js")))
    throw new Error("dist/ is not there: npm run build writes it");
  [browser, served] = await Promise.all([startBrowser(), serve(root)]);
});
afterAll(async () => {
  await Promise.all([browser?.close(), served?.close()]);
});

const fill = async (page: Page, boxes: Readonly<Record<string, string>>): Promise<void> => {
  for (const [name, value] of Object.entries(boxes)) await page.locator(`[name=${name}]`).fill(value);
  await page.getByRole("button", { name: "How many bags?" }).click();
};

describe("the form of the example", () => {
  it("gives bags, amounts in any unit and the working, from good input", async () => {
    const { page, troubles } = await watchedPage(browser, served.address);
    await page.goto(`${served.address}examples/web-form/index.html`);
    expect(await page.locator('[name="rate.unit"] option').count()).toBe(unitsOf("mass/area").length);
    await fill(page, { rate: "0.9", area: "32,000", analysis: "24-0-11", bag: "50" });
    expect(await textOf(page, "#bags")).toBe("3 bags, 30 lb left over");
    expect(await textOf(page, "#shown-need")).toBe("120 lb");
    expect(await textOf(page, "#shown-rate")).toBe("3.75 lb/1,000 ft²");
    await page.locator("[name=shown-need]").selectOption("kg");
    expect(await textOf(page, "#shown-need")).toBe("54.43 kg");
    await page.locator("[name=shown-rate]").selectOption("kg/ha");
    expect(await textOf(page, "#shown-rate")).toBe("183.1 kg/ha");
    const expected = explainChain("Bags for the field", [
      {
        id: "product-rate",
        inputs: { target: quantity(0.9, "lb/1000 ft2", "N"), percent: quantity(24, "% w/w", "N/product") },
      },
      { id: "product-for-area", inputs: { rate: { resultOf: 1 }, area: quantity(32_000, "ft2") } },
      { id: "packages-for-need", inputs: { need: { resultOf: 2 }, contents: quantity(50, "lb") } },
    ]);
    expect(await page.locator("#working li").allTextContents()).toEqual(
      expected.steps.map(({ text }) => text),
    );
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  it("takes metric units", async () => {
    const { page } = await watchedPage(browser, served.address);
    await page.goto(`${served.address}examples/web-form/index.html`);
    await page.locator('[name="rate.unit"]').selectOption("kg/ha");
    await page.locator('[name="area.unit"]').selectOption("ha");
    await page.locator('[name="bag.unit"]').selectOption("kg");
    await fill(page, { rate: "48", area: "0.5", analysis: "24-0-11", bag: "25" });
    // 48 kg N on each hectare from 24 % are 200 kg; half a hectare takes 100 kg.
    expect(await textOf(page, "#bags")).toBe("4 bags, 0 kg left over");
    await page.context().close();
  });

  it("shows every problem beside its box, by its path, and takes the result away", async () => {
    const { page, troubles } = await watchedPage(browser, served.address);
    await page.goto(`${served.address}examples/web-form/index.html`);
    await fill(page, { rate: "0.9", area: "32000", analysis: "24-0-11", bag: "50" });
    expect(await page.locator("#result").isVisible()).toBe(true);

    await fill(page, { rate: "0,9", area: "", analysis: "24-0", bag: "-50" });
    expect(await textOf(page, "#rate-problem")).toMatch(/^rate\.value: expected .*0,9/);
    expect(await textOf(page, "#area-problem")).toMatch(/^area\.value: expected a number/);
    expect(await textOf(page, "#bag-problem")).toMatch(/^bag\.value: expected more than zero/);
    expect(await textOf(page, "#analysis-problem")).toMatch(/^fertilizer\.analysis: .*24-0/);
    expect(await page.locator("#result").isVisible()).toBe(false);
    expect(await page.locator("[aria-invalid]").count()).toBe(4);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("rate");

    await fill(page, { rate: "0.9", area: "32000", analysis: "0-0-50", bag: "50" });
    expect(await textOf(page, "#analysis-problem")).toMatch(/expected some N, of which feed states none/);
    expect(await page.locator("#result").isVisible()).toBe(false);
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  it("fits a phone of 360 px", async () => {
    const { page } = await watchedPage(browser, served.address, { viewport: { width: 360, height: 740 } });
    await page.goto(`${served.address}examples/web-form/index.html`);
    await fill(page, { rate: "0.9", area: "32000", analysis: "24-0-11", bag: "50" });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await page.context().close();
  });
});
