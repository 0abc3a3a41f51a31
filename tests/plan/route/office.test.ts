// The office copy of a route: what goes down at each stop, and how the limits stand there.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type RouteJob, routeHtml, routeSheet, routeText } from "../../../src/plan/index.js";

const week = (): RouteJob =>
  JSON.parse(readFileSync(new URL("../../../examples/park-week/route.json", import.meta.url), "utf8"));

describe("the office copy of a route", () => {
  const text = routeText(week(), { copy: "office" });

  test("has the product of each stop: 3 and 6 fl oz per 1,000 sq ft", () => {
    expect(text).toContain("FOUR LAWNS\n");
    expect(text).toMatch(/4 stops: OFFICE COPY/);
    // 14.4 x 3 and x 6; 22.5 x 3 and x 6.
    expect(text).toMatch(/1 {2}Bowling lawn +14,400 sq ft +43\.2 fl oz +86\.4 fl oz/);
    expect(text).toMatch(/3 {2}Library lawn +22,500 sq ft +67\.5 fl oz +135 fl oz/);
  });

  test("has the limits by stop, the order of the tank with its sources, and what was not checked", () => {
    expect(text.replace(/\s+/g, " ")).toMatch(
      /1 Bowling lawn: N in a calendar year: 0\.515 of 3 lb per 1,000 sq ft, 2\.485 left/,
    );
    expect(text).toMatch(/MIXING ORDER/);
    expect(text).toMatch(/NOT CHECKED/);
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(72);
  });

  test("is the same as data and as a page; the crew's copy is what it was", () => {
    expect(routeSheet(week(), { copy: "office" })).toMatchObject({ type: "route-sheet", copy: "office" });
    expect(routeHtml(week(), { copy: "office" })).toContain("PRODUCT AT EACH STOP");
    expect(routeSheet(week()).copy).toBe("shed");
    expect(routeText(week())).not.toContain("PRODUCT AT EACH STOP");
    expect(() => routeSheet(week(), { copy: "barn" as never })).toThrow(/shed/);
  });
});
