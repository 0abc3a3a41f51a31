// The search for the fewest visits: it ends, and where a bound ends it, it says so and no more.
import { describe, expect, it } from "vitest";
import { fewestVisits } from "../../../src/plan/fewest-visits/index.js";
import type { IntegerAnswer, NoAnswer } from "../../../src/plan/fewest-visits/integer-program.js";
import { type Bounds, searched, wholeVisits } from "../../../src/plan/fewest-visits/search.js";
import { anyBut, notAll, ruledOut, type Trial } from "../../../src/plan/fewest-visits/trial.js";
import { type VisitDays, visitDays } from "../../../src/plan/fewest-visits/visit-days.js";
import type { SeasonPlan } from "../../../src/plan/index.js";
import { openBook } from "../../../src/plan/season/schedule-book.js";
import { rejections } from "../../errors.js";

const source = "plan of the park (invented)";
const puts = { supplies: [{ value: 0.6, unit: "lb/1000 ft2", of: "N" }] };
/** Two of `a` five days apart share a visit with `b`, but for a limit that lets one lie in any ten days. */
const plan: SeasonPlan = {
  season: { from: "2026-05-01", to: "2026-06-10" },
  treatments: [
    { id: "a", count: 2, puts, interval: { minimumDays: 5, source } },
    { id: "b", count: 1, puts },
  ],
  limits: [{ amount: { value: 1, unit: "lb/1000 ft2", of: "N" }, per: { days: 10 }, source }],
};

describe("a search that a bound ended", () => {
  it("is not settled: no schedule, the bound that ended it, and what to try next", async () => {
    // The first round finds two visits, one of them with 1.2 lb. The plain schedule lies on 1, 11 and 21 May.
    expect(await fewestVisits(plan, { rounds: 1 })).toEqual({
      type: "fewest-visits",
      version: 1,
      outcome: "not settled",
      schedule: null,
      visits: null,
      atLeast: 2,
      proven: false,
      visitsOfPlainSchedule: 3,
      findings: [
        {
          code: "fewest-visits/not-settled",
          severity: "caution",
          path: "options.rounds",
          params: { ended: "rounds", most: 1 },
          text: "Not settled: after 1 round the limits still ruled out every schedule found. Whether one exists is not known. Raise options.rounds, or plan a shorter season or fewer treatments at a time; schedule(plan) places what it can and says what is late.",
        },
      ],
    });
  });

  it("is settled with more rounds: three visits, and nothing found", async () => {
    expect(await fewestVisits(plan, { rounds: 100 })).toMatchObject({
      outcome: "found",
      visits: 3,
      atLeast: 3,
      proven: true,
      findings: [],
    });
  });

  it("takes whole bounds of one or more, and tells both that are wrong", async () => {
    const both = ["range options.nodes", "range options.rounds"];
    expect(await rejections(fewestVisits(plan, { nodes: 0, rounds: 0 }))).toEqual(both);
    expect(await rejections(fewestVisits(plan, { nodes: 1e8 + 1, rounds: 1e5 + 1 }))).toEqual(both);
    expect((await fewestVisits(plan, { nodes: 1e8, rounds: 1e5 })).outcome).toBe("found");
  });
});

/** The search itself, with answers that are handed to it in turn, the last again and again. */
const searchedWith = (answers: readonly (IntegerAnswer | NoAnswer)[], bounds: Partial<Bounds> = {}) => {
  const { book, states } = openBook(plan);
  const all = book.season.treatments.map((treatment, i) => {
    const state = states[i];
    if (state === undefined) throw new Error("no state");
    return visitDays(book, treatment, state, {
      first: "2026-05-01",
      placed: treatment.count,
      leftOut: false,
    });
  });
  let asked = 0;
  const search = () =>
    searched(
      { book, states, all },
      () => {
        const answer = answers[Math.min(asked, answers.length - 1)];
        asked += 1;
        if (answer === undefined) throw new Error("no answer");
        return answer;
      },
      { nodes: 10, rounds: 3, ...bounds },
    );
  return { search, asked: () => asked };
};
/** Columns: 41 days of `a`, 41 of `b`, 41 of visits. */
const chosen = (a: readonly number[], b: readonly number[], bound: number): IntegerAnswer => ({
  status: "found",
  bound,
  proven: true,
  x: Array.from({ length: 3 * 41 }, (_, i) => {
    const day = i % 41;
    const [ofA, ofB] = [a.includes(day), b.includes(day)];
    return (i < 41 ? ofA : i < 82 ? ofB : ofA || ofB) ? 1 : 0;
  }),
});

describe("the rounds of a search", () => {
  it("end where a solver finds nothing within its nodes, with the highest bound that was known before", () => {
    const { search } = searchedWith([
      chosen([0, 5], [0], 1.2),
      chosen([0, 5], [5], 0.9),
      { status: "not found" },
    ]);
    expect(search()).toEqual({ ended: "nodes", atLeast: 2 });
    expect(searchedWith([{ status: "not found" }]).search()).toEqual({ ended: "nodes", atLeast: 0 });
  });

  it("end after as many as may be, where each answer is ruled out", () => {
    const one = searchedWith([chosen([0, 5], [0], 2)]);
    expect(one.search()).toEqual({ ended: "rounds", atLeast: 2 });
    expect(one.asked()).toBe(3);
  });

  it("end with the first choice of days that nothing is against, its days in their order", () => {
    const { search, asked } = searchedWith([chosen([0, 5], [0], 2), chosen([0, 20], [10], 3)]);
    expect(search()).toEqual({
      trial: [
        { treatment: 0, day: 0 },
        { treatment: 1, day: 10 },
        { treatment: 0, day: 20 },
      ],
      answer: chosen([0, 20], [10], 3),
    });
    expect(asked()).toBe(2);
  });

  it("solve again with whole applications where they did not come out whole", () => {
    const half = chosen([0, 20], [10], 2);
    const { search, asked } = searchedWith([
      { ...half, x: half.x.map((x, i) => (i === 0 ? 0.5 : x)) },
      chosen([0, 20], [10], 3),
    ]);
    expect(search()).toMatchObject({ answer: { bound: 3 } });
    expect(asked()).toBe(2);
  });

  it("say that there is none only where the solver says so of every choice", () => {
    expect(searchedWith([{ status: "infeasible" }]).search).toThrow(/schedule\(plan\) places what it can/);
  });

  it("take a bound up to whole visits, but for the rounding of the solver", () => {
    expect([1.2, 2, 2 + 1e-9, -3].map(wholeVisits)).toEqual([2, 2, 2, 0]);
  });
});

describe("what rules a choice of days out", () => {
  const of = {
    all: [
      [0, 2, 5],
      [2, 3],
    ].map((open) => ({ open }) as unknown as VisitDays), // no other field is read
  };
  const every = of.all.flatMap(({ open }, treatment) => open.map((day) => ({ treatment, day })));
  const choices = Array.from({ length: 2 ** every.length }, (_, set) =>
    every.filter((_one, i) => (set >> i) % 2 === 1),
  );
  const isSame = (a: readonly Trial[], b: readonly Trial[]): boolean =>
    a.length === b.length && a.every((one) => b.includes(one));

  it("any but one: that one alone is ruled out, none that holds more or less", () => {
    for (const trial of choices)
      for (const other of choices) expect(ruledOut([anyBut(of, trial)], other)).toBe(isSame(trial, other));
  });

  it("not all of these: those that hold them all are ruled out; no row rules nothing out", () => {
    const [first, , third] = every as [Trial, Trial, Trial];
    for (const other of choices) {
      expect(ruledOut([notAll([first, third])], other)).toBe(other.includes(first) && other.includes(third));
      expect(ruledOut([], other)).toBe(false);
    }
  });
});

describe("a year with days that are far apart", () => {
  it("is settled: three within 26 days each can not lie 44 days apart, in a season of 386 days", async () => {
    const year: SeasonPlan = {
      season: { from: "2024-02-20", to: "2025-03-11" },
      treatments: [{ id: "a", count: 3, puts, interval: { minimumDays: 14, maximumDays: 26, source } }],
      limits: [
        { id: "one", kind: "interval", of: "N", atLeastDays: 26, source },
        { id: "two", kind: "interval", of: "N", atLeastDays: 44, source },
      ],
    };
    expect(await rejections(fewestVisits(year))).toEqual(["infeasible treatments"]);
  });
});
