import { describe, expect, test } from "vitest";
import { seasonProgram } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";

// What a season program tells, word by word and figure by figure. Figures are reckoned by hand.

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
const of = (pounds: number, source: string) => ({ amount: n(pounds), source });
const kg = (kilograms: number) => quantity(kilograms, "kg/ha", "N");

describe("a season program", () => {
  const plan = (input: object) =>
    seasonProgram({
      months: [
        { month: "2026-05", target: n(1) },
        { month: "2026-06", target: n(1) },
      ],
      plan: { kind: "fewest applications" },
      caps: {},
      ...input,
    } as never);
  const rows = (program: ReturnType<typeof seasonProgram>) =>
    program.applications.map(({ date, nitrogen }) => [date, nitrogen.value]);
  const closed = (from: string, to: string) => [{ window: { from, to }, source: "a code" }];

  test("tells each month its target and its nitrogen, and what it was checked against", () => {
    const program = plan({
      total: n(2),
      caps: { perApplication: of(1, "a label") },
      closed: closed("07-01", "07-31"),
    });
    expect([program.type, program.version]).toEqual(["season-program", 1]);
    expect(program.months.map(({ month, target, planned }) => [month, target?.value, planned.value])).toEqual(
      [
        ["2026-05", 1, 1],
        ["2026-06", 1, 1],
      ],
    );
    expect(program.checked).toEqual([
      "the stated cap per application",
      "no applications from 07-01 to 07-31",
      "at least 14 days from one application to the next",
    ]);
    expect(program.notChecked).toEqual([
      "a cap in any 30 days: none was stated",
      "a cap per calendar year: none was stated",
      "soluble nitrogen, phosphorus, weather, soil and all other rules",
    ]);
  });

  test("is told in the unit of its total, else of its first target, whatever the caps are in", () => {
    const caps = { perYear: of(4, "a plan") };
    const units = (input: object) => {
      const { target, planned, shortfall } = plan({ caps, ...input });
      return [...new Set([target.unit, planned.unit, shortfall.unit])];
    };
    const bare = [{ month: "2026-05" }, { month: "2026-06" }];
    expect(units({ months: bare, total: kg(97.6) })).toEqual(["kg/ha"]);
    expect(
      units({
        months: [
          { month: "2026-05", target: kg(49) },
          { month: "2026-06", target: n(1) },
        ],
      }),
    ).toEqual(["kg/ha"]);
    expect(units({ total: quantity(87.12, "lb/acre", "N") })).toEqual(["lb/acre"]);
    const late = [{ month: "2026-05" }, { month: "2026-06", target: kg(49) }];
    expect(units({ months: late, plan: { kind: "even split" } })).toEqual(["kg/ha"]);
    const mixed = plan({
      months: [{ month: "2026-05", target: kg(49) }, { month: "2026-06" }],
      plan: { kind: "even split" },
    });
    expect(mixed.months.map(({ target }) => target?.toString() ?? null)).toEqual(["49 kg/ha of N", null]);
    expect(mixed.target.value).toBe(49);
  });

  test("puts the nitrogen of a month on its open days, and never on those of another", () => {
    // June 1 to 10 are closed: 20 days are left, and halves of them begin on the 11th and, kept 14 days apart, the 25th.
    const program = plan({
      months: [
        { month: "2026-06", target: n(2) },
        { month: "2026-07", target: n(0) },
      ],
      caps: { perApplication: of(1, "a label") },
      closed: closed("06-01", "06-10"),
      leastInterval: { days: 7, source: "our plan" },
    });
    expect(rows(program)).toEqual([
      ["2026-06-11", 1],
      ["2026-06-21", 1],
    ]);
    expect(program.findings).toEqual([]);
    const none = plan({ closed: closed("05-01", "05-31") });
    expect(rows(none)).toEqual([["2026-06-01", 1]]);
    expect(none.findings).toEqual([
      {
        code: "program/shortfall",
        severity: "warning",
        path: "months[0]",
        params: {
          amount: 1,
          unit: "lb/1000 ft2",
          from: "2026-05-01",
          to: "2026-05-31",
          reason: "closed season",
        },
        text: "1 lb/1000 ft2 of nitrogen planned from 2026-05-01 on does not fit by 2026-05-31: every day is in a prohibited period.",
      },
    ]);
  });

  test("of a season that is closed throughout has no room for any of its total, however it is split", () => {
    const bare = [{ month: "2026-05" }, { month: "2026-06" }];
    const of3 = (kind: object, path: string) => {
      const program = plan({ months: bare, total: n(3), plan: kind, closed: closed("04-01", "07-31") });
      expect(program.applications).toEqual([]);
      expect(program.shortfall.value).toBeCloseTo(3, 12);
      expect(new Set(program.findings.map((finding) => finding.path))).toEqual(new Set([path]));
      expect(new Set(program.findings.map(({ params }) => params.reason))).toEqual(
        new Set(["closed season"]),
      );
    };
    of3({ kind: "even split" }, "plan");
    of3({ kind: "even split", applications: 3 }, "plan");
    of3({ kind: "fewest applications" }, "total");
  });

  test("of nothing has no applications, and none is missing", () => {
    const bare = [
      { month: "2026-05", weight: 1 },
      { month: "2026-06", weight: 2 },
    ];
    for (const kind of [
      { kind: "even split" },
      { kind: "even split", applications: 3 },
      { kind: "fewest applications" },
      { kind: "growth curve" },
    ]) {
      const program = plan({ months: bare, total: n(0), plan: kind });
      expect(program.applications).toEqual([]);
      expect(program.findings).toEqual([]);
      expect(program.shortfall.value).toBe(0);
    }
    expect(rows(plan({ months: [{ month: "2026-05", target: n(0) }] }))).toEqual([]);
  });

  test("tells where an application moved to, and from where", () => {
    const moved = plan({ applied: [{ date: "2026-04-25", nitrogen: n(0.3) }] });
    expect(rows(moved)).toEqual([
      ["2026-05-09", 1],
      ["2026-06-01", 1],
    ]);
    expect(moved.findings).toEqual([
      {
        code: "program/moved",
        severity: "note",
        path: "months[0]",
        params: { from: "2026-05-01", to: "2026-05-09" },
        text: "An application planned for 2026-05-01 moved to 2026-05-09, or was split: there was no room before.",
      },
    ]);
    const even = plan({
      months: [{ month: "2026-05" }, { month: "2026-06" }],
      total: n(2),
      plan: { kind: "even split" },
      applied: [{ date: "2026-04-25", nitrogen: n(0.3) }],
    });
    expect(even.findings.map(({ path }) => path)).toEqual(["plan"]);
    const all = plan({
      months: [{ month: "2026-05" }, { month: "2026-06" }],
      total: n(1),
      applied: [{ date: "2026-04-25", nitrogen: n(0.3) }],
    });
    expect(all.findings.map(({ path }) => path)).toEqual(["total"]);
  });

  test("tells why an interval, or the caps, leave no room", () => {
    const close = plan({
      months: [{ month: "2026-05", target: n(1) }],
      applied: [{ date: "2026-05-15", nitrogen: n(0.1) }],
      leastInterval: "thirty days",
    });
    expect(close.findings[0]?.text).toBe(
      "1 lb/1000 ft2 of nitrogen planned from 2026-05-01 on does not fit by 2026-05-31: other applications are closer than the least interval of 30 days.",
    );
    expect(close.leastInterval).toEqual({
      days: 30,
      source: {
        title:
          "Nutrient Management Standards and Criteria, revised 2005, pages 92 and 94: 1 lb N within 30 days",
        publisher: "Virginia Department of Conservation and Recreation, as a comment on the draft repeats it",
        year: 2005,
        url: "https://townhall.virginia.gov/L/viewcomments.cfm?commentid=154",
      },
    });
    const capped = plan({
      months: [{ month: "2026-05", target: n(1) }],
      caps: { perYear: of(0.05, "a plan") },
    });
    expect(capped.findings[0]?.text).toContain("the stated caps leave too little for one application.");
  });

  test("tells of a shorter interval than the practice", () => {
    const weekly = plan({
      months: [{ month: "2026-05" }],
      total: n(1),
      plan: { kind: "even split", applications: 4 },
    });
    expect(weekly.leastInterval).toEqual({ days: 7, source: "the stated number of applications" });
    expect(weekly.findings).toEqual([
      {
        code: "program/interval-shortened",
        severity: "warning",
        path: "plan.applications",
        params: { applications: 4, days: 7, practice: 14 },
        text: "4 applications are 7 days apart at the closest, fewer than the 14 of common practice. State leastInterval to keep a longer one.",
        source: "common practice, no source",
      },
    ]);
  });

  test("waits for a day with room for the whole, and splits only where there is none", () => {
    // 0.4 of 0.9 in any 30 days went down on May 1: 0.5 is left from May 15 on, all of it from May 31 on.
    const caps = { per30Days: of(0.9, "a code") };
    const applied = [{ date: "2026-05-01", nitrogen: n(0.4) }];
    expect(rows(plan({ months: [{ month: "2026-05", target: n(0.9) }], caps, applied }))).toEqual([
      ["2026-05-31", 0.9],
    ]);
    expect(
      rows(
        plan({
          months: [{ month: "2026-05", target: n(0.6) }],
          caps: { perYear: of(0.9, "a code") },
          applied,
        }),
      ),
    ).toEqual([["2026-05-15", 0.5]]);
  });

  test("takes a cap that is met but for noise as room enough", () => {
    const met = plan({
      months: [{ month: "2026-05", target: kg(100) }],
      caps: { perYear: { amount: kg(100 - 5e-8), source: "a plan" } },
    });
    expect(met.planned.value).toBe(100);
    expect(met.findings).toEqual([]);
  });

  test("puts down the least amount where just that is left, and nothing where nothing is", () => {
    const two = (perYear: number, least: number) =>
      plan({
        months: [
          { month: "2026-05", target: n(0.9) },
          { month: "2026-06", target: n(0.9) },
        ],
        caps: { perYear: of(perYear, "a plan") },
        leastAmount: { amount: n(least), source: "our spreader" },
      }).applications.length;
    expect([two(1.2, 0.3), two(1.2, 0.31), two(0.9, 0), two(0.95, 0)]).toEqual([2, 1, 1, 2]);
  });

  test("takes a total that is the sum of its targets, and as many closed seasons as there may be", () => {
    expect(plan({ total: n(2) }).planned.value).toBe(2);
    const [season] = closed("12-01", "12-31");
    expect(plan({ closed: Array(100).fill(season) }).planned.value).toBe(2);
  });
});
