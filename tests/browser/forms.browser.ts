// The forms of the site, in a real browser: they give what the library gives, and tell what it tells.
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exampleInputs } from "../../.ci/site/example-inputs.js";
import { problemReason, quantityOf, RatewrightError, readQuantity } from "../../src/quantity/index.js";
import {
  type CatalogueEntry,
  catalogue,
  catalogueEntry,
  type Derivation,
  explain,
} from "../../src/teach/index.js";
import { agrees } from "../published/check.js";
import { startBrowser, textOf, watchedPage } from "./browser.js";
import { publishedForms } from "./published-forms.js";
import { type Served, serve } from "./server.js";
import { siteFolder } from "./write-site.js";

type System = "US" | "metric";

let browser: Browser;
let site: Served;
beforeAll(async () => {
  [browser, site] = await Promise.all([startBrowser(), serve(siteFolder)]);
});
afterAll(async () => {
  await Promise.all([browser?.close(), site?.close()]);
});

/** What the library gives for the example of a form. */
const workingOf = (entry: CatalogueEntry, system: System): Derivation => {
  const example = exampleInputs(entry, system);
  const inputs = entry.inputs.map(({ name, of }) => {
    const { value, unit } = example[name] as { value: string; unit: string };
    return [name, quantityOf(Number(value), unit, of, name)] as const;
  });
  return explain(entry.id, Object.fromEntries(inputs), { units: system });
};

const linesOf = (working: Derivation): string[] =>
  working.steps.filter(({ kind }) => kind !== "equation").map(({ text }) => text);

const typedAddress = (id: string, boxes: Readonly<Record<string, string>>): string =>
  `${site.address}formulas/${id}.html#${new URLSearchParams(boxes).toString()}`;

/** In a page: fills in its example in both systems, and gives the lines of the working, the equation left out. */
const shownWorkings = (): string[][] =>
  ["US", "metric"].map((system) => {
    document.querySelector<HTMLInputElement>(`[name=units][value=${system}]`)?.click();
    document.querySelector<HTMLButtonElement>("[data-do=clear]")?.click();
    document.querySelector<HTMLButtonElement>("[data-do=example]")?.click();
    return [...document.querySelectorAll("#working li:not(.equation)")].map((line) => line.textContent ?? "");
  });

/** Where the lines that the pages show are not the library's, and what else went wrong. */
const compareAll = async (entries: readonly CatalogueEntry[]): Promise<string[]> => {
  const { page, troubles } = await watchedPage(browser, site.address);
  const differing: string[] = [];
  for (const entry of entries) {
    await page.goto(`${site.address}formulas/${entry.id}.html`, { waitUntil: "domcontentloaded" });
    const shown = await page.evaluate(shownWorkings);
    const expected = [linesOf(workingOf(entry, "US")), linesOf(workingOf(entry, "metric"))];
    if (JSON.stringify(shown) !== JSON.stringify(expected))
      differing.push(`${entry.id}: ${JSON.stringify(shown)}`);
  }
  await page.context().close();
  return [...differing, ...troubles];
};

describe("the forms", () => {
  it("give, line by line, what the library gives for the example of every formula, in both systems", async () => {
    const all = catalogue();
    expect(all.length).toBeGreaterThan(200);
    const half = Math.ceil(all.length / 2);
    const found = await Promise.all([compareAll(all.slice(0, half)), compareAll(all.slice(half))]);
    expect(found.flat()).toEqual([]);
  });

  it("give published figures, in the unit that is asked for", async () => {
    const watched = await watchedPage(browser, site.address);
    const { page } = watched;
    const off: string[] = [];
    for (const { entry, formula, inputs, result, answer } of publishedForms) {
      await page.goto(`${site.address}formulas/${formula}.html`);
      for (const [name, [value, unit]] of Object.entries(inputs)) {
        await page.locator(`[name="${name}"]`).fill(value);
        await page.locator(`[name="${name}.unit"]`).selectOption(unit);
      }
      await page.locator("[name=result]").selectOption(result);
      await page.locator("[name=digits]").selectOption("6");
      const shown = await textOf(page, "#answer");
      const figure = Number(/^[\d.,]+/.exec(shown)?.[0]?.replace(/,/g, ""));
      if (!agrees(figure, answer.printed, answer))
        off.push(`${entry} ${formula}: ${shown}, published ${answer.printed}`);
    }
    expect(publishedForms.length).toBeGreaterThan(12);
    expect([...off, ...watched.troubles]).toEqual([]);
    await page.context().close();
  });

  it("put the library's message beside the field", async () => {
    const { page, troubles } = await watchedPage(browser, site.address);
    await page.goto(`${site.address}formulas/product-rate.html`);
    await page.getByRole("button", { name: "Work it out" }).click();
    expect(await textOf(page, "#problem-target")).toBe('Expected a number, got "".');
    expect(await page.locator("[name=target]").getAttribute("aria-invalid")).toBe("true");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("name"))).toBe("target");

    await page.locator("[name=target]").fill("0,9");
    await page.locator("[name=percent]").fill("24");
    const { problems } = readQuantity(
      { value: "0,9", unit: "lb/1000 ft2", of: "N" },
      { dimension: "mass/area", of: "N", path: "target" },
    );
    const said = problemReason(problems[0] as NonNullable<(typeof problems)[0]>);
    expect((await textOf(page, "#problem-target")).toLowerCase()).toContain(said.toLowerCase());
    expect(await textOf(page, "#problem-percent")).toBe("");
    expect(await page.locator("#working li").count()).toBe(0);

    await page.locator("[name=target]").fill("0.9");
    expect(await textOf(page, "#answer")).toBe("3.75 lb product/1,000 ft²");
    expect(await textOf(page, "#problem-target")).toBe("");
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  it("tell what a formula itself refuses, beside the field", async () => {
    const { page } = await watchedPage(browser, site.address);
    let message = "";
    try {
      explain("course-time", {
        course: quantityOf(88, "ft", "none", ""),
        speed: quantityOf(0, "mi/h", "none", ""),
      });
    } catch (error) {
      if (error instanceof RatewrightError)
        message = problemReason(error.problems[0] as (typeof error.problems)[0]);
    }
    expect(message).toMatch(/^expected more than zero/);
    await page.goto(typedAddress("course-time", { course: "88", speed: "0" }));
    expect((await textOf(page, "#problem-speed")).toLowerCase()).toContain(message.toLowerCase());
    expect(await textOf(page, "#problem-course")).toBe("");
    await page.context().close();
  });
});

describe("a form by keyboard alone", () => {
  it("is filled in, computed and read, and every stop on the way has a name", async () => {
    const { page, troubles } = await watchedPage(browser, site.address);
    await page.goto(`${site.address}formulas/product-rate.html`);
    const nameless: string[] = [];
    const tabTo = async (name: string): Promise<void> => {
      for (let n = 0; n < 60; n++) {
        await page.keyboard.press("Tab");
        const stop = await page.evaluate(() => {
          const at = document.activeElement as HTMLInputElement;
          const named = at.labels?.[0]?.textContent ?? at.getAttribute("aria-label") ?? at.textContent ?? "";
          return { name: at.getAttribute("name"), named: named.trim(), tag: at.outerHTML.slice(0, 80) };
        });
        if (stop.named === "") nameless.push(stop.tag);
        if (stop.name === name) return;
      }
      throw new Error(`${name} is not reached by the Tab key`);
    };
    await tabTo("target");
    await page.keyboard.type("0.9");
    await tabTo("target.unit");
    await tabTo("percent");
    await page.keyboard.type("24");
    await page.keyboard.press("Enter");
    expect(await textOf(page, "#answer")).toBe("3.75 lb product/1,000 ft²");
    expect([...nameless, ...troubles]).toEqual([]);
    await page.context().close();
  });
});

describe("the address of a form", () => {
  it("holds the case: who opens it sees the same", async () => {
    const { page: first } = await watchedPage(browser, site.address);
    await first.goto(`${site.address}formulas/water-volume.html`);
    await first.locator("[name=units][value=metric]").check();
    await first.locator("[name=depth]").fill("12,5".replace(",", "."));
    await first.locator("[name=area]").fill("3 1/2");
    await first.locator('[name="area.unit"]').selectOption("1000 ft2");
    await first.locator("[name=result]").selectOption("m3");
    await first.locator("[name=digits]").selectOption("5");
    await first.waitForURL(/#.*digits=5/);
    const [address, shown] = [first.url(), await textOf(first, "#answer")];
    expect(shown).toMatch(/m³/);

    const { page: second } = await watchedPage(browser, site.address);
    await second.goto(address);
    expect(await textOf(second, "#answer")).toBe(shown);
    expect(await second.locator("[name=area]").inputValue()).toBe("3 1/2");
    expect(await second.locator("[name=units][value=metric]").isChecked()).toBe(true);
    await second.waitForTimeout(300);
    expect(second.url()).toBe(address);

    await second.getByRole("button", { name: "Clear" }).click();
    await second.waitForURL((url) => url.hash === "");
    expect(await second.locator("[name=area]").inputValue()).toBe("");
    await Promise.all([first.context().close(), second.context().close()]);
  });

  it("takes a unit that the list does not have, and tells one that is none", async () => {
    const { page } = await watchedPage(browser, site.address);
    await page.goto(typedAddress("boom-width", { nozzles: "12", spacing: "0.5", "spacing.unit": "yd" }));
    expect(await textOf(page, "#answer")).toBe("18 ft");
    await page.goto(
      typedAddress("time-to-fill", { volume: "1", "volume.unit": "gal", flow: "2", "flow.unit": "qt/min" }),
    );
    expect(await textOf(page, "#answer")).toBe("120 s");
    await page.goto(typedAddress("boom-width", { nozzles: "12", spacing: "20", "spacing.unit": "<b>inch" }));
    expect(await textOf(page, "#problem-spacing")).toContain("<b>inch");
    expect(await page.locator("#problem-spacing b").count()).toBe(0);
    await page.context().close();
  });

  it("leaves a link to a heading of the page alone", async () => {
    const { page } = await watchedPage(browser, site.address);
    await page.goto(`${site.address}formulas/boom-width.html#traps`);
    await page.waitForTimeout(300);
    expect(new URL(page.url()).hash).toBe("#traps");
    expect(catalogueEntry("boom-width").traps.length).toBeGreaterThan(0);
    await page.context().close();
  });
});
