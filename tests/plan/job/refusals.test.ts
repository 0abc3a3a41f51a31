// What a job says that is wrong, place by place, and what its writer reads: the place, and what belongs there.
import { describe, expect, test } from "vitest";
import { type Job, visitEntries, workOrder, workOrderSheet } from "../../../src/plan/index.js";
import { parkJob } from "../helpers.js";
import { check, problemsAt, type Row, withAt } from "./refused.js";

const long = (length: number): string => "x".repeat(length);
const feed = "products[0]";

test("what was made of a job in its place is told in one line", () => {
  const told = (input: unknown): string => {
    try {
      visitEntries(input as Job);
      return "taken";
    } catch (error) {
      return (error as Error).message;
    }
  };
  const line = (type: string) =>
    `type: expected "job": the job itself, and nothing that was made of it, got "${type}"`;
  const order = workOrder(parkJob());
  expect(told(order)).toBe(line("work-order"));
  expect(told({ type: "ledger", version: 1, entries: [] })).toBe(line("ledger"));
  expect(told(workOrderSheet(order))).toMatch(/^type: expected "job"/);
});

describe("a job that is refused says where, and what belongs there", () => {
  test.each<Row>([
    ["missing type", "type", undefined, '"job"', "nothing"],
    ["type type", "type", "jobs", '"job"', '"jobs"'],
    ["missing version", "version", undefined, "1", "nothing"],
    ["type version", "version", 2, "1", "2"],
    ["missing title", "title", undefined, "a title", "nothing"],
    ["type title", "title", 5, "a title"],
    ["missing date", "date", undefined, expect.stringMatching(/date/)],
    ["missing site", "site", undefined, "a site with a name and parts", "nothing"],
    ["missing site.name", "site.name", undefined, "the name of the site"],
    [
      "duplicate site.parts[1].name",
      "site.parts[1].name",
      "north pitch",
      "a name that no other part has, or no name",
      '"north pitch"',
    ],
    ["missing sprayer", "sprayer", undefined, "a sprayer, because a treatment is sprayed", "nothing"],
    ["type units", "units", "SI", 'one of "US customary", "metric", "both"'],
    ["type log", "log", "none", "a list of earlier applications", '"none"'],
    ["type applicator.name", "applicator.name", 5, "text"],
    ["type applicator.certificate", "applicator.certificate", false, "text"],
    [
      "range applicator.certificate",
      "applicator.certificate",
      long(201),
      expect.stringMatching(/200 characters/),
    ],
  ])("%s", (...row: readonly unknown[]) => check(row as Row));

  test.each<Row>([
    [
      "missing products[0].id",
      `${feed}.id`,
      undefined,
      "a short name without slash or colon, such as feed-a",
    ],
    ["type products[0].id", `${feed}.id`, "feed/a", "a short name without slash or colon, such as feed-a"],
    ["missing products[0].form", `${feed}.form`, undefined, '"dry" or "liquid"'],
    ["type products[0].form", `${feed}.form`, "gas", '"dry" or "liquid"', '"gas"'],
    ["type products[0].type", `${feed}.type`, "label", '"fertilizer", or none', '"label"'],
    ["type products[0].version", `${feed}.version`, 2, "1, or none", "2"],
    ["duplicate products[1].id", "products[1].id", "feed-a", "an id that no other product has", '"feed-a"'],
    [
      "missing products[0].analysis",
      `${feed}.analysis`,
      undefined,
      "the analysis that the slow nitrogen is part of",
      "nothing",
    ],
    ["type products[0].name", `${feed}.name`, 5, "text"],
    ["range products[0].name", `${feed}.name`, long(201), expect.stringMatching(/200 characters/)],
    [
      "range products[0].labelNote",
      `${feed}.labelNote`,
      long(1001),
      expect.stringMatching(/1,?000 characters/),
    ],
    ["type products[0].lot", `${feed}.lot`, 5, "text"],
    ["type products[0].registrationNumber", `${feed}.registrationNumber`, 5, "text"],
    ["type products[0].addBefore", `${feed}.addBefore`, "urea", "a list of names", '"urea"'],
    ["type products[0].addAfter[0]", `${feed}.addAfter`, [5], "a name, such as the id of a product"],
    ["type products[0].groups", `${feed}.groups`, {}, "a list of names"],
    ["type products[0].labelProhibits", `${feed}.labelProhibits`, 5, "a list of names", "5"],
    ["type products[0].contains", `${feed}.contains`, "amine", "a list of ingredients", '"amine"'],
    ["type products[0].lowRate", `${feed}.lowRate`, "yes", "true or false", '"yes"'],
    ["type products[0].nitrogen", `${feed}.nitrogen`, 5, "the label's breakdown of nitrogen"],
    ["type products[0].labelRate", `${feed}.labelRate`, 5, "a range with min and max"],
    ["type products[0].slowNitrogen", `${feed}.slowNitrogen`, null, "percent of product, of N:slow/product"],
    [
      "conflict products[1].packetSize",
      "products[1].packetSize",
      { value: 1, unit: "oz" },
      expect.stringMatching(/^package; packetSize is for water-soluble packets, and this is /),
    ],
    [
      "range products[0].package",
      `${feed}.package`,
      { value: 1001, unit: "t" },
      expect.stringMatching(/^1,?000 t or less in one package/),
    ],
    [
      "range products[1].package",
      "products[1].package",
      { value: 1001, unit: "m3" },
      expect.stringMatching(/^1,?000 m3 or less in one package/),
    ],
    [
      "unit/mismatch products[0].package",
      `${feed}.package`,
      { value: 1, unit: "gal" },
      "a weight, such as 50 lb or 20 kg",
    ],
  ])("%s", (...row: readonly unknown[]) => check(row as Row));

  test("sizes at the limits are taken: 1,000 t, 1,000 cubic meters, 200 and 1,000 characters", () => {
    for (const [place, put] of [
      [`${feed}.package`, { value: 1000, unit: "t" }],
      ["products[1].package", { value: 1000, unit: "m3" }],
      [`${feed}.name`, long(200)],
      [`${feed}.labelNote`, long(1000)],
      [`${feed}.lot`, long(200)],
      ["applicator.name", long(200)],
      ["products[1].contains", []],
      ["products[1].lowRate", false],
      ["treatments[0].passes", 8],
    ] as const)
      expect(problemsAt(withAt(place, put)), place).toEqual([]);
  });
});
