// Every wrong answer of a problem is what its mistake gives, reckoned again from the figures that the problem prints.
import { describe, expect, it } from "vitest";
import { problem, problemTopics, type QuizProblem } from "../../../src/teach/problems/index.js";
import { type SlipsOf, seenIn } from "./slip-figures.js";
import { applicationSlips } from "./slips-application.js";
import { groundSlips } from "./slips-ground.js";
import { loadSlips } from "./slips-loads.js";
import { recordSlips } from "./slips-records.js";

const slipsOf: Readonly<Record<string, SlipsOf>> = {
  ...applicationSlips,
  ...loadSlips,
  ...groundSlips,
  ...recordSlips,
};

/** What is wrong with the wrong answers of a problem. Printed constants have four digits. */
const slipFaults = (asked: QuizProblem): readonly string[] => {
  const seen = seenIn(asked);
  return asked.mistakes.flatMap(({ mistake, value }) => {
    const told = `${asked.topic} ${asked.level} ${asked.units} seed ${asked.seed}: ${mistake}`;
    const slip = slipsOf[asked.topic]?.[mistake];
    if (slip === undefined) return [`${told} is not known`];
    const found = [slip(seen)].flat().map((each) => each / seen.u);
    return found.some((each) => Math.abs(each - value) <= 1.5e-3 * Math.abs(value))
      ? []
      : [`${told} gives ${found.join(" or ")}, not ${value}: ${asked.text}`];
  });
};

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
