// Every wrong answer of a problem is what its mistake gives, reckoned again from the figures that the problem prints.
import { describe, expect, it } from "vitest";
import { problem, problemTopics } from "../../../src/teach/problems/index.js";
import { slipFaults, slipsOf } from "./slip-faults.js";

describe.each(problemTopics)("the wrong answers of $topic", ({ topic, levels }) => {
  it("are what their mistakes give", () => {
    const faults = levels.flatMap((level) =>
      (["US", "metric"] as const).flatMap((units) =>
        [0, 1, 2, 3, 4, 5].flatMap((seed) => slipFaults(problem({ topic, level, seed, units }))),
      ),
    );
    expect(faults).toEqual([]);
  });
});

describe("the mistakes that are reckoned again", () => {
  it("are those of every topic", () =>
    expect(Object.keys(slipsOf).sort()).toEqual(problemTopics.map(({ topic }) => topic).sort()));
});
