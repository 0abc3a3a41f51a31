import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { agrees, figuresOf } from "./check.js";
import { evidencePage } from "./evidence.js";
import { isExactly, metExactly } from "./exact.js";
import { allChecks } from "./index.js";

let met = 0;
let listed = 0;

describe.each(Object.entries(allChecks))("published examples: %s", (room, checks) => {
  test.each(
    checks.map((check) => [`${check.entry} ${check.source.publisher}: ${check.given}`, check] as const),
  )("%s", (_name, check) => {
    const computed = figuresOf(check);
    expect(computed).toHaveLength(check.answers.length);
    check.answers.forEach((answer, i) => {
      const value = computed[i] as number;
      const beside = `${answer.of}: printed ${answer.printed}, computed ${value}`;
      if (answer.wrong === undefined) {
        expect(agrees(value, answer.printed, answer), beside).toBe(true);
      } else {
        expect(agrees(value, answer.wrong.right, answer), `${beside}, right ${answer.wrong.right}`).toBe(
          true,
        );
        expect(agrees(value, answer.printed, answer), `${beside}: agrees with a figure marked wrong`).toBe(
          false,
        );
      }
      const right = answer.wrong?.right ?? answer.printed;
      const isListed = metExactly(room, check.entry).includes(right);
      if (isExactly(value, right)) met += 1;
      if (isListed) listed += 1;
      // Once met exactly, a figure is held to that; `npm run published:exact` writes the list again
      if (isListed) expect(isExactly(value, right), `${beside}: was met exactly`).toBe(true);
    });
  });
});

test("most figures that are met exactly are listed: npm run published:exact", () => {
  if (met > 0) expect(listed).toBeGreaterThan(0.9 * met);
});

// Here, because it takes the figures that are computed above.
test("the page of evidence is what the checks say: npm run evidence writes it", () => {
  const page = new URL("../../docs/evidence.md", import.meta.url);
  expect(existsSync(page) ? readFileSync(page, "utf8") : "").toBe(evidencePage());
});
