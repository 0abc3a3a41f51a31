import type { QuizProblem } from "../../../src/teach/problems/index.js";
import { type SlipsOf, seenIn } from "./slip-figures.js";
import { applicationSlips } from "./slips-application.js";
import { groundSlips } from "./slips-ground.js";
import { loadSlips } from "./slips-loads.js";
import { recordSlips } from "./slips-records.js";

/** What each mistake gives, by topic. */
export const slipsOf: Readonly<Record<string, SlipsOf>> = {
  ...applicationSlips,
  ...loadSlips,
  ...groundSlips,
  ...recordSlips,
};

/** What is wrong with the wrong answers of a problem. Printed constants have four digits. */
export const slipFaults = (asked: QuizProblem): readonly string[] => {
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
