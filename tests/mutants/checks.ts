import { constantChecks, isAsPrinted } from "../constants/index.js";
import { agrees } from "../published/check.js";
import { isExactly, metExactly } from "../published/exact.js";
import { allChecks } from "../published/index.js";

/** Something that is no copy of our own output, and holds or does not. */
export interface Check {
  readonly room: string;
  readonly name: string;
  readonly holds: () => boolean;
}

/** Every published figure, and every figure that is transcribed twice. Bundled by constants.ts. @public */
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
];
