// Two routes whose sheets stand beside them as they have to read, line by line. Every figure was reckoned by hand first:
//
// us: 1 gal per 1,000 sq ft: 12, 12 and 8 gal; a tank of 24 gal does the first two stops. 3 fl oz per 1,000: 36, 36 and 24, 72 and 24 a
// filling; 1 oz: 12, 12 and 8, in packets of 8 oz 3 and 1. Half of 24 and of 8 gal is the water before them. 8 gal are less than the 9 that
// can be agitated. The packets go in before the iron, so their column stands before its own. 3 / 128 gal x 10 lb x 6 % = 0.01406 lb of N. In the jar 3 / 128 of 500 mL, 11.7 mL.
//
// metric: 40 kg of N from 20 % is 200 kg/ha, 100 a pass: 40 kg on 2,000 m2, 60 kg on 80 x 40 - 200 = 3,000. A hopper of 50 kg has 10 left
// behind the first stop, which do 500 m2 of the second; 50 kg are added twice, 100 kg in all, 5 bags.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { routeHtml, routeText } from "../../../src/plan/index.js";

const read = (name: string): string =>
  readFileSync(new URL(`whole-${name}`, import.meta.url), "utf8").replaceAll("\r", "");

describe.each(["us", "metric"])("the route %s", (name) => {
  test.each(["shed", "office"] as const)("reads as it has to on the copy for the %s", (copy) => {
    const lines = routeText(JSON.parse(read(`${name}.json`)), { copy }).split("\n");
    expect(lines).toEqual(read(`${name}-${copy}.txt`).split("\n"));
  });

  test("has the same cells on its page", () => {
    const page = routeHtml(JSON.parse(read(`${name}.json`))).replaceAll("&nbsp;", " ");
    const found = name === "us" ? ["72.0 fl oz", "3 packets", "12 gal"] : ["60 kg", "10 kg", "3,000 m²"];
    for (const cell of found) expect(page).toContain(`<td>${cell}</td>`);
  });
});
