import { describe, expect, it } from "vitest";
import { read } from "../house/sources.js";
import type { Results } from "./compare/rows.js";
import { performancePage } from "./page.js";

const results = JSON.parse(read("tests/bench/results.json")) as Results;

describe("docs/performance.md", () => {
  it("is what the last measurement says: npm run bench:page draws it again", () => {
    expect(read("docs/performance.md")).toBe(performancePage(results));
  });

  it("says where another library is faster", () => {
    const page = performancePage(results);
    for (const { name, ways } of results.tasks) {
      const median = (library: string) =>
        ways.find((way) => way.library === library)?.ns.median ?? Number.NaN;
      const faster = ways.filter(
        ({ library, ns }) => !library.startsWith("plain") && ns.median < median("ratewright"),
      );
      const line = page.split("\n").find((one) => one.startsWith(`- ${name} (`)) ?? "";
      for (const { library } of faster) expect(line).toContain(library);
    }
  });
});
