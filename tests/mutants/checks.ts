import { problem, problemTopics } from "../../src/teach/problems/index.js";
import { constantChecks, isAsPrinted } from "../constants/index.js";
import { agrees } from "../published/check.js";
import { isExactly, metExactly } from "../published/exact.js";
import { allChecks } from "../published/index.js";
import { teachCases } from "../teach/cases.js";
import { faultsOf } from "../teach/problems/faults.js";
import { printedFaults } from "../teach/problems/printed-figures.js";
import { seedsOf, slipFaults } from "../teach/problems/slip-faults.js";

/** Something that is no copy of our own output, and holds or does not. */
export interface Check {
  readonly room: string;
  readonly name: string;
  readonly holds: () => boolean;
}

/** The problems of each topic, whose key and wrong answers are reckoned again from their words. */
const topicChecks: readonly Check[] = problemTopics.map(({ topic, levels }) => ({
  room: "teach",
  name: topic,
  holds: () =>
    levels.every((level) =>
      (["US", "metric"] as const).every((units) =>
        seedsOf(topic).every((seed) => {
          const asked = problem({ topic, level, seed, units });
          return (
            slipFaults(asked).length === 0 &&
            printedFaults(asked).length === 0 &&
            (seed > 2 || faultsOf(asked).length === 0)
          );
        }),
      ),
    ),
}));

/**
 * Every published figure, every figure that is transcribed twice, and the problems that are solved again from their words.
 * Bundled by constants.ts. @public
 */
export const checks: readonly Check[] = [
  ...Object.entries(allChecks).flatMap(([room, list]) =>
    list.map(({ entry, answers, compute }) => ({
      room,
      name: entry,
      holds: () => {
        const computed = compute();
        return answers.every((answer, n) => {
          const printed = answer.wrong?.right ?? answer.printed;
          const here = computed[n] ?? Number.NaN;
          return metExactly(room, entry).includes(printed)
            ? isExactly(here, printed)
            : agrees(here, printed, answer);
        });
      },
    })),
  ),
  ...constantChecks.map((check) => ({ room: check.room, name: check.what, holds: () => isAsPrinted(check) })),
  ...topicChecks,
  ...teachCases.map(({ name, faults }) => ({ room: "teach", name, holds: () => faults().length === 0 })),
];
