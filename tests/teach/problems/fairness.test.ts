import { describe, expect, it } from "vitest";
import { problem, problemTopics } from "../../../src/teach/problems/index.js";
import { chiSquare, faultsOf, huntTopic, onceInTenThousand } from "./faults.js";
import { solvers } from "./solvers.js";
import { wordFaultsOf } from "./word-faults.js";

// `npm run hunt` draws ten thousand seeds of each topic, `npm test` sixty. Slices: `npm run hunt -- fairness -t spray/`.
const seeds = Number(process.env.PROPERTY_HUNT ?? 0) > 0 ? 10_000 : 60;
const first = seeds > 60 ? 1_000_000 : 0;

describe.each(problemTopics)("problems of $topic", ({ topic, levels }) => {
  it("read well at the first seeds of every level", () => {
    for (const level of levels)
      for (const units of ["US", "metric"] as const)
        for (const seed of [0, 1, 2]) {
          const asked = problem({ topic, level, seed, units });
          expect([...faultsOf(asked), ...wordFaultsOf(asked)]).toEqual([]);
        }
  });

  it("have a key that the text gives, four choices that differ, a working that is true, and no absurd figure; each place is right as often", () => {
    const { posed, faults, places } = huntTopic({ topic, levels, seeds, first });
    expect(faults).toEqual([]);
    expect(posed).toBeGreaterThanOrEqual(seeds);
    // a fair draw fails here once in ten thousand topics
    expect(chiSquare(places)).toBeLessThan(onceInTenThousand);
  });
});

describe("the topics", () => {
  it("make 141 combinations of topic and level, or more, and ask every room", () => {
    const combinations = problemTopics.reduce((sum, { levels }) => sum + levels.length, 0);
    expect(combinations).toBeGreaterThanOrEqual(141);
    const rooms = new Set(problemTopics.map(({ topic }) => topic.split("/")[0]));
    expect([...rooms].sort()).toEqual([
      "calendar",
      "indicator",
      "interval",
      "ledger",
      "limits",
      "numeric",
      "nutrient",
      "pest",
      "plan",
      "price",
      "quantity",
      "site",
      "soil",
      "spray",
      "spread",
      "stand",
      "tank",
      "water",
      "weather",
    ]);
    expect(Object.keys(solvers).sort()).toEqual(problemTopics.map(({ topic }) => topic).sort());
  });
});

// Ten thousand seeds found what two hundred did not.
describe("a problem that the hunt found", () => {
  it("five bags exactly are five, where the arithmetic says 5.000000000000001", () => {
    const asked = problem({ topic: "stand/seed", level: 3, seed: 2004651, units: "US" });
    expect(asked.answer.text).toBe("5 bags");
    expect(asked.steps.at(-1)).toBe("n = 5");
  });

  it("a season is not 42 jugs", () => {
    const asked = problem({ topic: "plan/season-order", level: 2, seed: 2008519, units: "metric" });
    expect(asked.answer.value).toBeLessThanOrEqual(40);
  });
});
