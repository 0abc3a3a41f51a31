// Before the tests in the browser: the site, written afresh.
import { fileURLToPath } from "node:url";
import { writeSite } from "../../.ci/site/build.js";

/** Where the site lies. */
export const siteFolder: string = fileURLToPath(new URL("../../site", import.meta.url));

export default async function setup(): Promise<void> {
  await writeSite(siteFolder);
}
