import { describe, expect, test } from "vitest";
import {
  checkLimits,
  type Limit,
  marylandUseLimits,
  newJerseyLimits,
  type Proposal,
  pennsylvaniaLimits,
} from "../../../src/limits/index.js";
import { type SeasonPlan, schedule } from "../../../src/plan/index.js";
import { smallJob, soundOrder } from "../helpers.js";

const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });

describe("a limit that is meant for a part of the year only", () => {
  const feed = { supplies: [lb(0.8, "N"), lb(0.3, "N:slow")] };
  test("lapses after it: Pennsylvania's half pound binds until the end of February", () => {
    const facts = { ground: [], toWater: { value: 100, unit: "ft" } } as const;
    const check = checkLimits({
      proposal: { ...feed, date: "2027-01-15", facts },
      limits: pennsylvaniaLimits.limits,
    });
    expect(check.earliestByStatedRules).toBe("2027-03-01");
    const winter = check.uses.find(({ limit }) => limit.id === "us-pa/winter-n");
    expect([winter?.violated, winter?.earliestByStatedLimit]).toEqual([true, "2027-03-01"]);
  });

  test("and the next one takes over: Maryland's professional waits from 20 November to 1 March", () => {
    const facts = {
      applicator: "Professional",
      ground: [],
      toWater: { value: 100, unit: "ft" },
      equipment: "drop spreader",
    } as const;
    const { uses, tests, earliestByStatedRules } = checkLimits({
      proposal: { ...feed, date: "2026-11-20", facts },
      limits: marylandUseLimits.limits,
    });
    const late = uses.find(({ limit }) => limit.id === "us-md-use/late-n-professional");
    expect([late?.violated, late?.earliestByStatedLimit]).toEqual([true, "2026-12-02"]);
    // A word with a capital is the same word: the dates of anybody else are lifted.
    expect(tests.map(({ limit }) => limit.id)).not.toContain("us-md-use/blackout-dates");
    expect(earliestByStatedRules).toBe("2027-03-01");
  });

  test("is lifted in the part of the year that lifts it", () => {
    const limit: Limit = {
      amount: lb(0.5, "N"),
      per: "application",
      exemptIf: [{ season: { from: "09-01", to: "10-31" } }],
      source: "test",
    };
    const on = (date: Proposal["date"]) =>
      checkLimits({ proposal: { ...feed, date }, limits: [limit] }).earliestByStatedRules;
    expect([on("2026-06-08"), on("2026-09-01"), on("2026-11-01")]).toEqual([
      "2026-09-01",
      "2026-09-01",
      "2027-09-01",
    ]);
  });

  test("never lapses where the part of the year is all of it", () => {
    const scope = { season: { from: "06-01", to: "05-31" } } as const;
    const limit: Limit = { amount: lb(0.5, "N"), per: "application", scope, source: "test" };
    const check = checkLimits({ proposal: { ...feed, date: "2026-06-08" }, limits: [limit] });
    expect(check.earliestByStatedRules).toBeNull();
  });
});

describe("what the facts say in other words", () => {
  const limit: Limit = {
    amount: lb(0, "P"),
    per: "application",
    exemptIf: [{ soilTest: { months: 36, shortOf: "P" } }],
    source: "test",
  };
  test.each([
    ["P", 0],
    ["P2O5", 0],
    ["K", 1],
  ])("a test that is short of %s", (shortOf, limits) => {
    const facts = { soilTest: { date: "2025-06-08", shortOf: [shortOf] } } as const;
    const proposal = { date: "2026-06-08", supplies: [lb(0.1, "P2O5")], facts } as const;
    expect(checkLimits({ proposal, limits: [limit] }).uses).toHaveLength(limits);
  });

  test("New Jersey: potash on frozen ground is not what its section names", () => {
    const on = (of: string): readonly string[] =>
      checkLimits({
        proposal: { date: "2026-06-08", supplies: [lb(0.4, of)], facts: { ground: ["frozen"] } },
        limits: newJerseyLimits.limits,
      }).findings.map(({ params }) => String(params.limitId));
    expect(on("K2O")).toEqual([]);
    expect(on("N")).toContain("us-nj/ground-frozen");
  });
});

test("one product over a limit on contents is enough, whatever the others state", () => {
  const spray = (analysis: string) =>
    soundOrder({
      ...smallJob(),
      sprayer: {
        tank: { value: 20, unit: "gal" },
        applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      },
      products: [
        { id: "feed-a", form: "dry", analysis, formulation: "dry fertilizer" },
        { id: "wetter", form: "liquid", formulation: "surfactant" },
      ],
      limits: [{ kind: "content", of: "P2O5", atMostPercent: 0.67, source: "test" }],
      treatments: [
        {
          id: "spray",
          method: "spray",
          mix: [
            { product: "feed-a", rate: { value: 1, unit: "lb/1000 ft2", of: "product" } },
            { product: "wetter", rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" } },
          ],
        },
      ],
    }).nutrients[0]?.tests.map(({ found, violated }) => [found, violated]);
  expect(spray("10-10-10")).toEqual([["10 %", true]]);
  // The wetter states no analysis: whether both are within is not known.
  expect(spray("46-0-0")).toEqual([[null, null]]);
});

describe("a schedule keeps to the days that a rule leaves", () => {
  const dates = (plan: Omit<SeasonPlan, "season">) =>
    schedule({ season: { from: "2026-04-01", to: "2026-10-31" }, ...plan }).visits.map(({ date }) => date);
  test("a repeat comes before a closed time, not in it", () => {
    const interval = {
      minimumDays: 42,
      maximumDays: 60,
      blackout: [{ from: "05-20", to: "08-01" }],
      source: "label",
    } as const;
    expect(dates({ treatments: [{ id: "feed", interval, count: 2 }] })).toEqual(["2026-04-01", "2026-05-19"]);
  });

  test("a repeat comes before the window ends, however long the one before lasts", () => {
    const window = { from: "04-01", to: "06-30" } as const;
    const interval = { minimumDays: 42, maximumDays: 200, window, source: "label" };
    expect(dates({ treatments: [{ id: "feed", interval, count: 2 }] })).toEqual(["2026-04-01", "2026-06-30"]);
  });

  test("a visit of another treatment is shared only where the rule leaves its day", () => {
    const closed = [{ from: "05-01", to: "05-10" }] as const;
    const treatments = [
      { id: "other", within: { from: "2026-05-05", to: "2026-05-05" } },
      {
        id: "feed",
        count: 1,
        within: { from: "2026-05-02", to: "2026-06-30" },
        interval: { blackout: closed, source: "label" },
      },
    ] as const;
    expect(dates({ treatments, shareWithinDays: 10 })).toEqual(["2026-05-05", "2026-05-11"]);
  });

  test("the whole site is checked on each part that this schedule feeds", () => {
    const puts = { supplies: [lb(2, "N")] };
    const { visits, notPlaced } = schedule({
      season: { from: "2026-04-01", to: "2026-10-31" },
      treatments: [
        { id: "green", parts: ["green"], puts },
        { id: "all", puts, within: { from: "2026-05-01", to: "2026-10-31" } },
      ],
      limits: [{ amount: lb(3, "N"), per: "calendar year", source: "plan" }],
    });
    expect(visits.map(({ date }) => date)).toEqual(["2026-04-01"]);
    expect(notPlaced.map(({ treatment }) => treatment)).toEqual(["all"]);
  });
});

test.each([
  // Closed all year; from 1 March to the end of February, again; all but 29 February, which 2028 has.
  [{ from: "01-01", to: "12-31" }, null],
  [{ from: "03-01", to: "02-29" }, null],
  [{ from: "03-01", to: "02-28" }, "2028-02-29"],
  [{ from: "12-01", to: "02-29" }, "2027-03-01"],
] as const)("blackout %o: the first open day after 24 December 2026 is %s", (blackout, open) => {
  const check = checkLimits({
    proposal: { date: "2026-12-24", supplies: [{ value: 1, unit: "lb/acre", of: "N" }] },
    limits: [{ kind: "blackout dates", of: "any", blackout, source: "code" }],
  });
  expect([check.tests[0]?.violated, check.tests[0]?.earliestByStatedLimit]).toEqual([true, open]);
});
