import { describe, expect, test } from "vitest";
import { exists, read } from "../house/sources.js";
import { equivalents } from "./equivalent-list.js";
import { listedConstants } from "./listed.js";
import { mutantsPage } from "./page.js";
import { summary } from "./summary.js";

describe("the page of mutants", () => {
  test("is what was recorded: npm run mutants:page writes it", () => {
    expect(read("docs/mutants.md")).toBe(mutantsPage());
  });

  test("no room has more noticed than was tried", () => {
    for (const { mutants, tried, noticed, listed = 0 } of Object.values(summary().behavior)) {
      expect(tried).toBeLessThanOrEqual(mutants);
      expect(noticed + listed).toBeLessThanOrEqual(tried);
    }
    for (const { numbers, noticed, listed } of Object.values(summary().constants))
      expect(noticed + listed).toBeLessThanOrEqual(numbers);
  });

  test("what is listed is still there", () => {
    const gone = listedConstants.filter(
      ({ file, line }) =>
        !exists(file) ||
        !read(file)
          .split("\n")
          .some((one) => line.test(one)),
    );
    expect(gone.map(({ file, line }) => `${file} ${line}`)).toEqual([]);
    const none = equivalents.filter(({ file, was }) => !exists(file) || !read(file).includes(was));
    expect(none.map(({ file, was }) => `${file} ${was}`)).toEqual([]);
  });
});
