// An application that adds nothing of what a limit is about violates nothing, however much went down before.
import { describe, expect, test } from "vitest";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits, type Limit, type Proposal } from "../../../src/limits/index.js";

const source = "plan of the park (invented)";
const n = (value: number) => [{ value, unit: "lb/1000 ft2", of: "N" }];
// 2.5 + 1 = 3.5 lb of N in two applications, over both limits.
const before = ledger([
  { id: "a", date: "2026-04-20", supplies: n(2.5) },
  { id: "b", date: "2026-05-20", supplies: n(1) },
]);
const limits: readonly Limit[] = [
  { amount: { value: 3, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source },
  { kind: "count", of: "N", atMost: 1, per: { days: 60 }, source },
];
const fungicide = [{ value: 0.1, unit: "lb/acre", of: "ai:azoxystrobin" }];
const check = (more: Partial<Proposal>) =>
  checkLimits({ ledger: before, limits, proposal: { date: "2026-06-08", ...more } });

describe("a fungicide after too much nitrogen", () => {
  const { uses, earliestByStatedRules, findings } = check({ supplies: fungicide });

  test("violates no limit on nitrogen, and need not wait", () => {
    expect(uses.map(({ violated, earliestByStatedLimit }) => [violated, earliestByStatedLimit])).toEqual([
      [false, "2026-06-08"],
      [false, "2026-06-08"],
    ]);
    expect(earliestByStatedRules).toBe("2026-06-08");
  });

  test("what was used before stays on record, and a note says so", () => {
    expect(uses.map(({ before: used, adds }) => [used.value, adds.value])).toEqual([
      [3.5, 0],
      [2, 0],
    ]);
    expect(findings.map(({ code, severity, text }) => [code, severity, text])).toEqual([
      [
        "limit/exceeded-before",
        "note",
        "whole site: 3.5 lb/1000 ft2 of N in a calendar year went down, more than the stated limit of 3; this application adds none.",
      ],
      [
        "limit/exceeded-before",
        "note",
        "whole site: 2 applications of N in 60 days went down, more than the stated limit of 1; this application adds none.",
      ],
    ]);
  });
});

test("the least nitrogen is a violation still", () => {
  const { uses, earliestByStatedRules } = check({ supplies: n(0.001) });
  expect(uses.map(({ violated }) => violated)).toEqual([true, true]);
  expect(earliestByStatedRules).toBe("2027-01-01");
});

test("an amount that is not known is not taken for none", () => {
  expect(check({ product: "feed-a" }).uses.map(({ violated }) => violated)).toEqual([true, true]);
});
