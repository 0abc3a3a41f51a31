import { expect, test } from "vitest";
import { type Limit, limit } from "../../../src/limits/index.js";
import { problemsOf } from "../../errors.js";

const year = {
  amount: { value: 3, unit: "lb/1000 ft2", of: "N" },
  per: "calendar year",
  source: "plan",
} as const;

// docs/errors.md: "" where the fields of the form are named like those of the record
test("problems of a form stand at its fields where the path is empty", () => {
  const places = (input: object): readonly string[] =>
    problemsOf(() => limit(input as Limit, "")).map(({ code, path }) => `${code} ${path}`);
  expect(limit(year, "")).toEqual(year);
  expect(places({ ...year, amount: { ...year.amount, unit: "lb" }, source: "" })).toEqual([
    "missing source",
    "unit/mismatch amount",
  ]);
  expect(places({ kind: "interval", of: "N", atLeastDays: -1, source: "plan" })).toEqual([
    "range atLeastDays",
  ]);
  expect(places({ ...year, scope: { turf: 3 } })[0]).toMatch(/^\w+ scope/);
  expect(places({ ...year, per: { days: "30" } })[0]).toMatch(/ per\.days$/);
  expect(places({ ...year, most: 3 })).toEqual(["type most"]);
  expect(problemsOf(() => limit("3 lb" as never, "")).map(({ path }) => path)).toEqual(["limit"]);
});
