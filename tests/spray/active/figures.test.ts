import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { asApplied } from "../../../src/spray/index.js";
import { percent } from "../helpers.js";

// Worked by hand. What lies at a limit is within it; a thousand-millionth past it is, too, for floating point.

describe("what was applied", () => {
  const limit = {
    limit: quantity(2, "gal/acre", "product"),
    before: quantity(1, "gal/acre", "product"),
    period: "calendar year 2026",
    source: "the label",
  };
  const of = (used: number) =>
    asApplied({
      used: quantity(used, "gal", "product"),
      area: quantity(1, "acre"),
      planned: quantity(1, "gal/acre", "product"),
      tolerance: percent(5),
      limits: [limit],
    });
  test("over a limit, and how far over", () => {
    const found = of(1.5);
    const over = found.findings.find(({ code }) => code === "as-applied/limit-exceeded");
    expect(over).toEqual({
      code: "as-applied/limit-exceeded",
      severity: "warning",
      params: { of: "product", period: "calendar year 2026", beyond: 0.5, unit: "gal/acre" },
      text: "The product applied in the calendar year 2026 is over the stated limit by 0.5 gal/acre.",
      source: "the label",
    });
    expect(found.findings[0]?.params).toEqual({ percent: 50, tolerance: 5 });
    expect(found.remainingUnderStatedLimits[0]?.remaining.in("gal/acre")).toBe(-0.5);
  });
  test("just at a limit, nothing remains and nothing is exceeded", () => {
    const found = of(1);
    expect(found.findings).toEqual([]);
    expect(found.remainingUnderStatedLimits[0]).toMatchObject({ exceeded: false });
    expect(found.remainingUnderStatedLimits[0]?.remaining.value).toBe(0);
    expect(found.beyondPlan?.value).toBe(0);
  });
});
