import { describe, expect, test } from "vitest";
import { remainingNitrogen, seasonProgram } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints, problemsOf } from "../../errors.js";

// What remains under stated caps tells, word by word and figure by figure, and what is refused of a season beside all
// else. Figures are reckoned by hand.

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
const of = (pounds: number, source: string) => ({ amount: n(pounds), source });
const kg = (kilograms: number) => quantity(kilograms, "kg/ha", "N");

describe("what remains under stated caps tells", () => {
  const left = (input: object) =>
    remainingNitrogen({
      on: "2026-06-01",
      applied: [
        { date: "2026-01-10", nitrogen: n(1) },
        { date: "2026-05-20", nitrogen: n(0.5) },
        { date: "2026-06-01", nitrogen: n(0.25) },
      ],
      caps: {
        perApplication: of(1, "a label"),
        per30Days: of(1.5, "a code"),
        perYear: of(4, "a plan"),
      },
      ...input,
    } as never);

  test("how far each cap is used, and where it is stated", () => {
    const found = left({});
    expect([found.type, found.version, found.on]).toEqual(["remaining-nitrogen", 1, "2026-06-01"]);
    expect(
      found.caps.map(({ cap, amount, used, remaining, source }) => [
        cap,
        amount.toString(),
        used.value,
        remaining.value,
        source,
      ]),
    ).toEqual([
      ["perApplication", "1 lb/1000 ft2 of N", 0.25, 0.75, "a label"],
      ["per30Days", "1.5 lb/1000 ft2 of N", 0.75, 0.75, "a code"],
      ["perYear", "4 lb/1000 ft2 of N", 1.75, 2.25, "a plan"],
    ]);
    expect(found.remainingUnderStatedLimits.value).toBe(0.75);
    expect(found.binding).toEqual(["perApplication", "per30Days"]);
    expect(found.checked).toEqual([
      "the stated cap per application",
      "the stated cap in any 30 days",
      "the stated cap per calendar year",
    ]);
    expect(found.notChecked).toEqual(["soluble nitrogen, phosphorus, blackout dates and all other rules"]);
    expect(found.findings).toEqual([]);
  });

  test("which caps are over already, in figures and in words, each once", () => {
    const caps = {
      perApplication: of(0.6, "a label"),
      per30Days: of(0.7, "a code"),
      perYear: of(1.5, "a plan"),
    };
    expect(
      left({ caps, applied: [...Array(3)].map(() => ({ date: "2026-06-01", nitrogen: n(0.55) })) }).findings,
    ).toEqual([
      {
        code: "nitrogen/cap-exceeded",
        severity: "warning",
        path: "caps.per30Days",
        params: { cap: "per30Days", amount: 0.7, used: expect.closeTo(1.65, 12), unit: "lb/1000 ft2" },
        text: "1.65 lb/1000 ft2 of nitrogen in any 30 days is already over the stated 0.7.",
        source: "a code",
      },
      {
        code: "nitrogen/cap-exceeded",
        severity: "warning",
        path: "caps.perYear",
        params: { cap: "perYear", amount: 1.5, used: expect.closeTo(1.65, 12), unit: "lb/1000 ft2" },
        text: "1.65 lb/1000 ft2 of nitrogen per calendar year is already over the stated 1.5.",
        source: "a plan",
      },
      {
        code: "nitrogen/cap-exceeded",
        severity: "warning",
        path: "applied[0]",
        params: {
          cap: "perApplication",
          amount: 0.6,
          used: expect.closeTo(1.65, 12),
          unit: "lb/1000 ft2",
          date: "2026-06-01",
        },
        text: "1.65 lb/1000 ft2 of nitrogen on 2026-06-01 is over the stated 0.6 per application.",
        source: "a label",
      },
    ]);
  });

  test("a stretch of thirty days that has the day in it, and no day more", () => {
    // From May 1 the thirtieth day is May 30: what goes down on May 31 counts with the 15th, not with the 1st.
    const used = (other: string): number | undefined =>
      left({
        on: "2026-05-15",
        applied: [
          { date: "2026-05-01", nitrogen: n(0.4) },
          { date: other, nitrogen: n(0.5) },
        ],
        caps: { per30Days: of(2, "a code") },
      }).caps[0]?.used.value;
    expect(used("2026-05-30")).toBe(0.9);
    expect(used("2026-05-31")).toBe(0.5);
  });

  test("all caps that bind but for the noise of large figures", () => {
    // 1000 less 949.9999995 leaves 50.0000005 of one beside 50 of the other.
    const found = left({
      applied: [{ date: "2026-01-10", nitrogen: kg(949.9999995) }],
      caps: {
        perApplication: { amount: kg(50), source: "a label" },
        perYear: { amount: kg(1000), source: "a plan" },
      },
    });
    expect(found.binding).toEqual(["perApplication", "perYear"]);
  });

  test("which caps there are, where none is stated", () => {
    const [problem] = problemsOf(() => left({ caps: {} }));
    expect(problem?.expected).toBe("at least one cap: perApplication, per30Days, perYear");
    expect(problem?.got).toBe("no cap");
  });
});

describe("what is refused of a season, beside all else", () => {
  const plan = (input: object) => () =>
    seasonProgram({
      months: [{ month: "2026-05", target: n(1) }],
      plan: { kind: "fewest applications" },
      caps: {},
      ...input,
    } as never);

  test("a least amount is told with what else is wrong", () => {
    expect(complaints(plan({ caps: 7, leastAmount: { amount: n(-1), source: "s" } }))).toEqual([
      "type caps",
      "range leastAmount.amount",
    ]);
    const [problem] = problemsOf(plan({ leastAmount: 7 }));
    expect([problem?.path, problem?.expected]).toEqual(["leastAmount", "{ amount, source }"]);
  });

  test("a month that is none, in whatever form", () => {
    for (const month of ["12026-05", "2026-05-01", "x2026-05", ["2026-05"], 202605, null]) {
      const [problem] = problemsOf(plan({ months: [{ month, target: n(1) }] }));
      expect([problem?.code, problem?.path, problem?.expected]).toEqual([
        "date",
        "months[0].month",
        "a month written YYYY-MM",
      ]);
    }
  });
});
