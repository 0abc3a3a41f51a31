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

/** The first seeds, and of some topics one more, at which a mistake is met that comes up seldom. */
const seldom: Readonly<Record<string, readonly number[]>> = {
  "stand/seed": [13],
  "plan/season-order": [12],
  "tank/spray-for-active": [17],
};
export const seedsOf = (topic: string): readonly number[] => [
  ...[0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
  ...(seldom[topic] ?? []),
];

/** How far the two ways of reckoning may be apart: the dust of floating point. */
const dust = 1e-9;

/** What is wrong with the wrong answers of a problem. */
export const slipFaults = (asked: QuizProblem): readonly string[] => {
  const seen = seenIn(asked);
  const place = 10 ** -asked.answer.decimals;
  return asked.mistakes.flatMap(({ mistake, value, also = [] }) => {
    const told = `${asked.topic} ${asked.level} ${asked.units} seed ${asked.seed}`;
    const fault = (name: string, within: number): readonly string[] => {
      const slip = slipsOf[asked.topic]?.[name];
      if (slip === undefined) return [`${told}: ${name} is not known`];
      const found = [slip(seen)].flat().map((each) => each / seen.u);
      return found.some((each) => Math.abs(each - value) <= within)
        ? []
        : [`${told}: ${name} gives ${found.join(" or ")}, not ${value}: ${asked.text}`];
    };
    return [
      ...fault(mistake, dust * Math.abs(value)),
      // another way to the same answer, as the question asks for it
      ...also.flatMap((name) => fault(name, place * (1 + dust))),
    ];
  });
};
