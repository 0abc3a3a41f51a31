import { describe, expect, test } from "vitest";
import { allChecks } from "./index.js";
import { tradeItems } from "./trade.js";

const read = new Set(
  Object.values(allChecks)
    .flat()
    .filter(({ reached }) => reached === "read")
    .map(({ entry }) => entry),
);

describe("what a business computes in a year", () => {
  test.each(tradeItems.map((item) => [item.name, item] as const))(
    "%s: a check that was read, or a reason",
    (_, item) => {
      expect((item.entries?.length ?? 0) > 0 || (item.without?.length ?? 0) > 20).toBe(true);
      for (const entry of item.entries ?? []) expect(read.has(entry), entry).toBe(true);
    },
  );

  test("no item and no entry twice", () => {
    const names = tradeItems.map(({ name }) => name);
    const entries = tradeItems.flatMap((item) => item.entries ?? []);
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(entries).size).toBe(entries.length);
  });
});
