import { describe, expect, test } from "vitest";
import { agrees } from "./check.js";
import { allChecks } from "./index.js";

describe.each(Object.entries(allChecks))("published examples: %s", (_room, checks) => {
  test.each(
    checks.map((check) => [`${check.entry} ${check.source.publisher}: ${check.given}`, check] as const),
  )("%s", (_name, check) => {
    const computed = check.compute();
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
    });
  });
});
