import { describe, expect, test } from "vitest";
import { daysBetween } from "../../../src/calendar/index.js";
import {
  type NitrogenCaps,
  naturalOrganic,
  polymerCoatedOnSurface,
  programComparison,
  quickRelease,
  remainingNitrogen,
  seasonProgram,
} from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { errorOf } from "../../errors.js";

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
const cap = (pounds: number) => ({ amount: n(pounds), source: "made up" });
const months = [
  "2026-03",
  "2026-04",
  "2026-05",
  "2026-06",
  "2026-07",
  "2026-08",
  "2026-09",
  "2026-10",
  "2026-11",
];
describe("a season program", () => {
  test("takes as few applications as a yearly need and a cap ask for", () => {
    // Michigan State University Extension: 1-2, 3, 4-6 lb a year, no more than 1 lb at one time.
    const counts = [1, 2, 3, 4, 5, 6].map(
      (need) =>
        seasonProgram({
          months: months.map((month) => ({ month })),
          total: n(need),
          plan: { kind: "fewest applications" },
          caps: { perApplication: cap(1) },
        }).applications.length,
    );
    expect(counts).toEqual([1, 2, 3, 4, 5, 6]);
  });

  test("follows the weights of a growth curve", () => {
    const program = seasonProgram({
      months: [
        { month: "2026-04", weight: 1 },
        { month: "2026-05", weight: 3 },
        { month: "2026-06", weight: 0 },
      ],
      total: n(2),
      plan: { kind: "growth curve" },
      caps: {},
    });
    expect(program.months.map(({ planned }) => planned.in("lb/1000 ft2"))).toEqual([0.5, 1.5, 0]);
    expect(program.notChecked.slice(0, 3)).toEqual([
      "a cap per application: none was stated",
      "a cap in any 30 days: none was stated",
      "a cap per calendar year: none was stated",
    ]);
  });

  test("reports what has no room, and never squeezes it in", () => {
    const program = seasonProgram({
      months: [{ month: "2026-06", target: n(2) }],
      plan: { kind: "fewest applications" },
      caps: { perApplication: cap(0.9), per30Days: cap(0.9) },
    });
    expect(program.planned.in("lb/1000 ft2")).toBeCloseTo(0.9, 9);
    expect(program.shortfall.in("lb/1000 ft2")).toBeCloseTo(1.1, 9);
    expect(program.findings.filter(({ code }) => code === "program/shortfall").length).toBeGreaterThan(0);
  });

  test("refuses caps that contradict one another, and what is missing, with the path", () => {
    const months1 = [{ month: "2026-06", target: n(2) }];
    const run = (more: object) =>
      errorOf(() =>
        seasonProgram({ months: months1, plan: { kind: "fewest applications" }, caps: {}, ...more } as never),
      );
    expect(run({ caps: { perApplication: cap(2), perYear: cap(1) } })).toMatchObject({
      code: "conflict",
      path: "caps.perApplication.amount",
    });
    expect(run({ caps: { perYear: { amount: n(1) } } })).toMatchObject({
      code: "missing",
      path: "caps.perYear.source",
    });
    expect(run({ caps: { perMonth: cap(1) } })).toMatchObject({ code: "type", path: "caps.perMonth" });
    expect(run({ caps: undefined })).toMatchObject({ code: "missing", path: "caps" });
    expect(run({ months: [{ month: "2026-13", target: n(1) }] })).toMatchObject({
      code: "date",
      path: "months[0].month",
    });
    expect(run({ months: [{ month: "2026-06" }] })).toMatchObject({ code: "missing", path: "total" });
    expect(run({ months: [...months1, { month: "2026-05", target: n(1) }] })).toMatchObject({
      code: "conflict",
    });
    expect(run({ total: n(3) })).toMatchObject({ code: "conflict", path: "total" });
    const noTarget = { months: [{ month: "2026-06" }], total: n(2) };
    expect(run({ ...noTarget, plan: { kind: "growth curve" } })).toMatchObject({
      code: "missing",
      path: "months[0].weight",
    });
    expect(run({ plan: { kind: "even split", applications: 31 } })).toMatchObject({
      path: "plan.applications",
    });
    expect(run({ months: [{ month: "2026-06", target: quantity(1, "lb/1000 ft2", "P2O5") }] })).toMatchObject(
      {
        code: "substance/mismatch",
        path: "months[0].target",
      },
    );
  });

  test.each([
    [0.1, 0.2, 0.3],
    [0.3, 0.6, 0.9],
    [0.2, 0.4, 0.6],
  ])("a cap that %s and %s use up leaves nothing, and not less", (first, second, cap) => {
    const left = remainingNitrogen({
      on: "2026-05-20",
      applied: [
        { date: "2026-05-01", nitrogen: quantity(first, "lb/1000 ft2", "N") },
        { date: "2026-05-10", nitrogen: quantity(second, "lb/1000 ft2", "N") },
      ],
      caps: { perYear: { amount: quantity(cap, "lb/1000 ft2", "N"), source: "a plan" } },
    });
    expect(left.remainingUnderStatedLimits.in("lb/1000 ft2")).toBe(0);
    expect(left.findings).toEqual([]);
  });

  test("takes what JSON leaves of its input", () => {
    const input = {
      months: [{ month: "2026-06", target: n(1.2) }],
      plan: { kind: "fewest applications" } as const,
      caps: { perApplication: cap(0.9) },
    };
    expect(JSON.stringify(seasonProgram(JSON.parse(JSON.stringify(input))))).toBe(
      JSON.stringify(seasonProgram(input)),
    );
  });
});

describe("what remains under the stated limits", () => {
  const ask = (on: string, dates: Readonly<Record<string, number>>, caps: NitrogenCaps) =>
    remainingNitrogen({
      on: on as "2026-01-01",
      applied: Object.entries(dates).map(([date, p]) => ({ date: date as "2026-01-01", nitrogen: n(p) })),
      caps,
    });

  test("counts thirty days as the day and the 29 before, or after", () => {
    const caps = { per30Days: cap(1) };
    expect(ask("2026-05-30", { "2026-05-01": 0.7 }, caps).remainingUnderStatedLimits.value).toBeCloseTo(
      0.3,
      12,
    );
    expect(ask("2026-05-31", { "2026-05-01": 0.7 }, caps).remainingUnderStatedLimits.value).toBe(1);
    expect(ask("2026-05-01", { "2026-05-30": 0.7 }, caps).remainingUnderStatedLimits.value).toBeCloseTo(
      0.3,
      12,
    );
    expect(
      ask("2026-05-15", { "2026-05-01": 0.4, "2026-06-05": 0.5 }, caps).remainingUnderStatedLimits.value,
    ).toBeCloseTo(0.5, 12);
    expect(
      ask("2026-05-15", { "2026-05-01": 0.4, "2026-05-30": 0.5 }, caps).remainingUnderStatedLimits.value,
    ).toBeCloseTo(0.1, 12);
  });

  test("counts a year from January to December", () => {
    const caps = { perYear: cap(2) };
    expect(ask("2026-01-01", { "2025-12-31": 2 }, caps).remainingUnderStatedLimits.value).toBe(2);
    expect(ask("2026-12-31", { "2026-01-01": 2 }, caps).remainingUnderStatedLimits.value).toBe(0);
  });

  test("goes below zero where a cap is passed, and warns", () => {
    const left = ask("2026-06-01", { "2026-05-20": 1.5 }, { perApplication: cap(1), per30Days: cap(1.2) });
    expect(left.remainingUnderStatedLimits.value).toBeCloseTo(-0.3, 12);
    expect(left.binding).toEqual(["per30Days"]);
    expect(left.findings.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "nitrogen/cap-exceeded caps.per30Days",
      "nitrogen/cap-exceeded applied[0]",
    ]);
  });

  test("names every cap that binds, rounding apart", () => {
    // 0.9 - 0.6 is 0.30000000000000004.
    const caps = { perApplication: cap(0.3), per30Days: cap(0.9), perYear: cap(2) };
    expect(ask("2026-06-01", { "2026-05-20": 0.6 }, caps).binding).toEqual(["perApplication", "per30Days"]);
  });

  test("needs a cap", () => {
    expect(errorOf(() => ask("2026-06-01", {}, {}))).toMatchObject({ code: "missing", path: "caps" });
  });
});

describe("a comparison of programs", () => {
  const quick = {
    name: "quick",
    applications: (["2026-05-01", "2026-06-01", "2026-07-01", "2026-08-01"] as const).map((date) => ({
      date,
      portions: [{ name: "urea", nitrogen: n(0.75), model: quickRelease }],
      cost: money(1, "USD").per(quantity(1, "1000 ft2")),
    })),
  };
  const heavy = {
    name: "heavy",
    applications: [
      {
        date: "2026-05-01" as const,
        portions: [
          { name: "quick", nitrogen: n(0.5), model: quickRelease },
          { name: "coated", nitrogen: n(2.5), model: polymerCoatedOnSurface },
        ],
      },
    ],
  };
  const common = {
    from: "2026-05-01",
    weeks: 20,
    placement: "surface or thatch",
    temperature: { mean: quantity(68, "°F") },
  } as const;

  test("adds up week by week, finds the peak, and says where no cost was stated", () => {
    const result = programComparison({ ...common, programs: [quick, heavy] });
    const [a, b] = result.programs;
    expect(a?.weeks.reduce((sum, { available }) => sum + available.value, 0)).toBeCloseTo(3, 9);
    expect(a?.peakSolubleLoad.mid.value).toBeCloseTo(0.75, 12);
    expect(a?.peakFrom).toBe("2026-05-01");
    expect(a?.cost?.value).toBeCloseTo(4, 12);
    expect(b?.cost).toBeNull();
    expect(result.notChecked[0]).toContain("heavy");
    // First seven days: all of the quick, and by the middle curve 1 - 0.2^(7/35) of the coated.
    expect(b?.peakSolubleLoad.mid.value).toBeCloseTo(0.5 + 2.5 * (1 - 0.2 ** (7 / 35)), 9);
    expect(b?.peakSolubleLoad.high.value).toBeCloseTo(3, 6);
    expect(result.findings.map(({ code }) => code)).toEqual([
      "release/steady-temperature",
      "program/coated-once",
    ]);
  });

  test("refuses two currencies, a name twice and a date outside, with the path", () => {
    const run = (programs: readonly unknown[]) =>
      errorOf(() => programComparison({ ...common, programs: programs as never }));
    expect(run([quick, quick])).toMatchObject({ code: "duplicate", path: "programs[1].name" });
    const euro = { ...quick.applications[0], cost: money(1, "EUR").per(quantity(1, "1000 ft2")) };
    expect(run([{ name: "mixed", applications: [quick.applications[0], euro] }])).toMatchObject({
      code: "unit/mismatch",
      path: "programs[0].applications[1].cost",
    });
    expect(
      run([{ name: "early", applications: [{ ...quick.applications[0], date: "2026-04-30" }] }]),
    ).toMatchObject({
      code: "date",
      path: "programs[0].applications[0].date",
    });
    const bad = {
      ...quick.applications[0],
      portions: [{ name: "x", nitrogen: n(-1), model: naturalOrganic }],
    };
    expect(run([{ name: "bad", applications: [bad] }])).toMatchObject({
      code: "range",
      path: "programs[0].applications[0].portions[0].nitrogen",
    });
  });

  test("takes what JSON leaves of its input", () => {
    const input = { ...common, programs: [quick] };
    const again = programComparison(JSON.parse(JSON.stringify(input)));
    expect(JSON.stringify(again)).toBe(JSON.stringify(programComparison(input)));
  });
});

describe("the days of a season", () => {
  const plan = (list: readonly string[], more: object) =>
    seasonProgram({ months: list.map((month) => ({ month })), caps: {}, ...more } as never);

  test("one application a month is one on the first day of each, though months differ in length", () => {
    const { applications } = plan(["2026-05", "2026-06", "2026-07"], {
      total: n(3),
      plan: { kind: "even split" },
    });
    expect(applications.map(({ date }) => date)).toEqual(["2026-05-01", "2026-06-01", "2026-07-01"]);
  });

  test("nothing is planned in a month that is not listed, and the months add up to the plan", () => {
    for (const more of [
      { plan: { kind: "even split" } },
      { plan: { kind: "even split", applications: 5 } },
      { plan: { kind: "fewest applications" }, caps: { perApplication: cap(0.4) } },
      {
        plan: { kind: "even split", applications: 4 },
        caps: { per30Days: cap(1) },
        closed: [{ window: { from: "05-01", to: "05-31" }, source: "made up" }],
      },
    ]) {
      const program = plan(["2026-05", "2026-09"], { total: n(2), ...more });
      for (const { date } of program.applications) {
        expect(["2026-05", "2026-09"]).toContain(date.slice(0, 7));
      }
      const months = program.months.reduce((sum, { planned }) => sum + planned.value, 0);
      expect(months).toBeCloseTo(program.planned.value, 9);
      expect(program.planned.value + program.shortfall.value).toBeCloseTo(2, 9);
    }
    // 61 days in May and September: halves begin on the 1st and after 30 days, on May 31.
    const halves = plan(["2026-05", "2026-09"], {
      total: n(2),
      plan: { kind: "even split", applications: 2 },
    });
    expect(halves.applications.map(({ date }) => date)).toEqual(["2026-05-01", "2026-05-31"]);
  });

  test("two weeks lie between a plan and what went down, and an entry without nitrogen is none", () => {
    const datesBeside = (pounds: number) =>
      plan(["2026-05"], {
        total: n(0.5),
        plan: { kind: "fewest applications" },
        applied: [{ date: "2026-05-01", nitrogen: n(pounds) }],
      }).applications.map(({ date }) => date);
    expect(datesBeside(0.2)).toEqual(["2026-05-15"]);
    expect(datesBeside(0)).toEqual(["2026-05-01"]);
  });

  test("a leap day is a day of its month", () => {
    const { applications } = plan(["2028-02"], {
      total: n(29),
      plan: { kind: "even split", applications: 29 },
    });
    expect(applications.at(-1)?.date).toBe("2028-02-29");
  });

  test("a growth curve refuses targets of its own, and all problems come together", () => {
    const error = errorOf(() =>
      seasonProgram({
        months: [{ month: "2026-05", target: n(1), weight: 1 }],
        plan: { kind: "growth curve" },
        caps: {},
        applied: [{ date: "2026-02-30", nitrogen: n(1) }],
      }),
    );
    expect(error.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "conflict months[0].target",
      "date applied[0].date",
    ]);
  });
});

describe("several entries of one day", () => {
  test("are one application under the cap per application", () => {
    const left = remainingNitrogen({
      on: "2026-05-20",
      applied: [
        { date: "2026-05-20", nitrogen: n(0.5) },
        { date: "2026-05-01", nitrogen: n(0.5) },
        { date: "2026-05-01", nitrogen: n(0.6) },
      ],
      caps: { perApplication: cap(0.9) },
    });
    expect(left.remainingUnderStatedLimits.value).toBeCloseTo(0.4, 12);
    expect(left.findings.map(({ path, params }) => [path, params.used])).toEqual([["applied[1]", 1.1]]);
  });

  test("are told with what else is wrong", () => {
    const error = errorOf(() =>
      remainingNitrogen({
        on: "2026-13-01" as never,
        applied: [{ date: "2026-05-20", nitrogen: quantity(1, "lb/acre", "P2O5") as never }],
        caps: {},
      }),
    );
    expect(error.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "date on",
      "missing caps",
      "substance/mismatch applied[0].nitrogen",
    ]);
  });
});

describe("the interval between applications", () => {
  const warm = ["2026-04", "2026-05", "2026-06", "2026-07", "2026-08", "2026-09", "2026-10"];
  const summer = [{ window: { from: "06-01", to: "09-30" }, source: "made up" }] as const;
  const four = (more: object) =>
    seasonProgram({
      months: warm.map((month) => ({ month })),
      total: n(4),
      caps: { perApplication: cap(1) },
      closed: summer,
      plan: { kind: "fewest applications" },
      ...more,
    } as never);
  const datesOf = (program: { readonly applications: readonly { readonly date: string }[] }) =>
    program.applications.map(({ date }) => date);
  const codesOf = (program: { readonly findings: readonly { readonly code: string }[] }) =>
    program.findings.map(({ code }) => code);

  test("is kept over a closed summer: applications lie evenly over the open days", () => {
    // 61 days in April and May and 31 in October: every 23rd of 92.
    const program = four({});
    expect(datesOf(program)).toEqual(["2026-04-01", "2026-04-24", "2026-05-17", "2026-10-09"]);
    expect(program.applications.map(({ nitrogen }) => nitrogen.value)).toEqual([1, 1, 1, 1]);
    expect(program.findings).toEqual([]);
    expect(program.leastInterval).toEqual({ days: 14, source: "common practice, no source" });
  });

  test("is kept where one application a month meets a closed season", () => {
    const program = four({ plan: { kind: "even split" }, total: n(7) });
    const days = datesOf(program).map((date) => daysBetween("2026-01-01", date as "2026-01-01"));
    for (const [i, day] of days.slice(1).entries()) {
      expect(day - (days[i] as number)).toBeGreaterThanOrEqual(14);
    }
  });

  test("leaves a shortfall with its reason where the open days are too few, and squeezes nothing in", () => {
    const program = seasonProgram({
      months: [{ month: "2026-10", target: n(3) }],
      plan: { kind: "fewest applications" },
      caps: { perApplication: cap(1) },
    });
    expect(datesOf(program)).toEqual(["2026-10-01", "2026-10-15"].concat(["2026-10-29"]));
    const tight = seasonProgram({
      months: [{ month: "2026-10", target: n(3) }],
      plan: { kind: "fewest applications" },
      caps: { perApplication: cap(1) },
      leastInterval: "thirty days",
    });
    expect(datesOf(tight)).toEqual(["2026-10-01", "2026-10-31"]);
    expect(tight.shortfall.value).toBe(1);
    expect(tight.findings).toMatchObject([
      { code: "program/moved" },
      { code: "program/shortfall", severity: "warning", params: { reason: "interval", amount: 1 } },
    ]);
  });

  test("gives its reason also for caps and for a season that is closed throughout", () => {
    const reasons = (more: object) =>
      seasonProgram({
        months: [{ month: "2026-06", target: n(2) }],
        plan: { kind: "fewest applications" },
        caps: { perApplication: cap(1), per30Days: cap(1) },
        ...more,
      } as never).findings.flatMap(({ params }) => params.reason ?? []);
    expect(reasons({})).toEqual(["caps"]);
    expect(reasons({ closed: [{ window: { from: "05-01", to: "07-31" }, source: "made up" }] })).toEqual([
      "closed season",
      "closed season",
    ]);
  });

  test("is shortened with a warning where the number of applications is stated and the interval is not", () => {
    const weekly = { plan: { kind: "even split", applications: 13 }, caps: {} };
    const program = four(weekly);
    expect(program.applications).toHaveLength(13);
    expect(program.leastInterval.days).toBe(7);
    expect(program.findings).toMatchObject([
      { code: "program/interval-shortened", severity: "warning", params: { days: 7, practice: 14 } },
    ]);
    const stated = four({ ...weekly, leastInterval: { days: 14, source: "our plan" } });
    expect(codesOf(stated)).toContain("program/shortfall");
    expect(four({ ...weekly, leastInterval: { days: 7, source: "our plan" } }).findings).toEqual([]);
  });

  test("of none still puts no two on one day", () => {
    const program = seasonProgram({
      months: [{ month: "2026-05" }],
      total: n(0.5),
      plan: { kind: "fewest applications" },
      caps: {},
      applied: [{ date: "2026-05-01", nitrogen: n(0.2) }],
      leastInterval: { days: 0, source: "our plan" },
    });
    expect(datesOf(program)).toEqual(["2026-05-02"]);
  });

  test("refuses what is no interval and no practice, with what is", () => {
    expect(errorOf(() => four({ leastInterval: "a month" })).expected).toContain("thirty days");
    expect(errorOf(() => four({ leastInterval: { days: 1.5, source: "x" } }))).toMatchObject({
      code: "range",
      path: "leastInterval.days",
    });
    expect(errorOf(() => four({ leastInterval: { days: 7 } }))).toMatchObject({
      code: "missing",
      path: "leastInterval.source",
    });
    expect(errorOf(() => four({ closd: summer }))).toMatchObject({ code: "type", suggestion: "closed" });
  });
});

describe("the least amount that goes down at once", () => {
  const rest = (perYear: number, leastAmount?: object) =>
    seasonProgram({
      months: [
        { month: "2026-05", target: n(0.9) },
        { month: "2026-09", target: n(0.9) },
      ],
      plan: { kind: "fewest applications" },
      caps: { perYear: cap(perYear) },
      ...(leastAmount === undefined ? {} : { leastAmount }),
    } as never);

  test("keeps a dribble out of a plan and reports it as a shortfall", () => {
    const program = rest(0.93);
    expect(program.applications.map(({ nitrogen }) => nitrogen.value)).toEqual([0.9]);
    expect(program.shortfall.value).toBeCloseTo(0.9, 12);
  });

  test("lets a rest go down that somebody would spread", () => {
    expect(rest(1.2).applications.map(({ nitrogen }) => Number(nitrogen.value.toFixed(9)))).toEqual([
      0.9, 0.3,
    ]);
    expect(rest(1.2, { amount: n(0.5), source: "our spreader" }).applications).toHaveLength(1);
    expect(rest(0.93, { amount: n(0.02), source: "foliar" }).applications).toHaveLength(2);
  });

  test("does not hold against small applications that are planned whole", () => {
    const program = seasonProgram({
      months: [{ month: "2026-05", target: n(0.05) }],
      plan: { kind: "fewest applications" },
      caps: {},
    });
    expect(program.planned.value).toBe(0.05);
  });
});
