// A real browser without a window, and pages of it that tell what went wrong in them.
import { existsSync } from "node:fs";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";

const executablePath = "/usr/bin/chromium";

/** Starts the browser; says what is missing where there is none. */
export const startBrowser = async (): Promise<Browser> => {
  if (!existsSync(executablePath)) {
    throw new Error(
      `${executablePath} is not there: bash .ci/chromium installs it, or install Debian's package chromium`,
    );
  }
  return chromium.launch({ executablePath, args: ["--no-sandbox"] });
};

/** A page, and what went wrong while it was open: errors of its scripts, failed and foreign requests. */
export interface WatchedPage {
  readonly page: Page;
  readonly troubles: string[];
}

/** Opens an empty page that notes its troubles; only requests to `address` are expected. */
export const watchedPage = async (
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<WatchedPage> => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  // A slow machine takes its time, and no test judges by it.
  context.setDefaultTimeout(300_000);
  const page = await context.newPage();
  const troubles: string[] = [];
  const note = (what: string): number => troubles.push(`${page.url().replace(address, "")}: ${what}`);
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") note(message.text());
  });
  page.on("pageerror", (error) => note(error.message));
  page.on("request", (request) => {
    if (!request.url().startsWith(address) && !request.url().startsWith("data:"))
      note(`asks ${request.url()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) note(`${response.status()} for ${response.url()}`);
  });
  return { page, troubles };
};

/** The text of the one element that a selector names. */
export const textOf = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).textContent()) ?? "";
