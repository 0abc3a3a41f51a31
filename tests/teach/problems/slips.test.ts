// Every wrong answer of a problem is what its mistake gives, reckoned again from the figures that the problem prints.
import { describe, expect, it } from "vitest";
import { problem, problemTopics } from "../../../src/teach/problems/index.js";
import { seedsOf, slipFaults, slipsOf } from "./slip-faults.js";

describe.each(problemTopics)("the wrong answers of $topic", ({ topic, levels }) => {
  // Posed where they are held, and not as the file is loaded: the judge of changed programs changes what runs in a test.
  it("are what their mistakes give, to the dust of floating point; none is reckoned that no problem makes", () => {
    const posed = levels.flatMap((level) =>
      (["US", "metric"] as const).flatMap((units) =>
        seedsOf(topic).map((seed) => problem({ topic, level, seed, units })),
      ),
    );
    expect(posed.flatMap(slipFaults)).toEqual([]);
    const met = posed.flatMap(({ mistakes }) =>
      mistakes.flatMap(({ mistake, also = [] }) => [mistake, ...also]),
    );
    expect([...new Set(met)].sort()).toEqual(Object.keys(slipsOf[topic] ?? {}).sort());
  });
});

describe("the mistakes that are reckoned again", () => {
  it("are those of every topic", () =>
    expect(Object.keys(slipsOf).sort()).toEqual(problemTopics.map(({ topic }) => topic).sort()));
});
