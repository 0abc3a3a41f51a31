import { addDays, type CivilDate } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import type { SeasonTreatment } from "../../../src/plan/index.js";
import { type Case, start } from "./limit-cases.js";

/** Every list of so many days, each so many after the one before. */
const choices = (count: number, days: readonly number[], gap: number): readonly (readonly number[])[] =>
  count === 0
    ? [[]]
    : days.flatMap((day) =>
        choices(
          count - 1,
          days.filter((later) => later >= day + gap),
          gap,
        ).map((rest) => [day, ...rest]),
      );

/** A treatment on its day. */
export interface Planned extends Omit<SeasonTreatment, "id"> {
  readonly id: string;
  readonly date: CivilDate;
}

/** Whether every application keeps every limit beside the others, by checkLimits. */
export const kept = (trial: readonly Planned[], { limits, before }: Case): boolean => {
  const entries = trial
    .filter(({ puts }) => puts !== undefined)
    .map(({ date, puts, parts }, i) => ({ id: `e${i}`, date, ...puts, ...(parts && { parts: [...parts] }) }));
  return entries.every(({ id, ...proposal }) => {
    const others = ledger([...(before?.entries ?? []), ...entries.filter((one) => one.id !== id)]);
    const { uses, tests } = checkLimits({ ledger: others, limits, proposal });
    return [...uses, ...tests].every(({ violated }) => violated === false);
  });
};

/** The days on which a treatment is wanted. */
const openTo = ({ within }: SeasonTreatment, days: number): readonly number[] =>
  Array.from({ length: days }, (_, day) => day).filter((day) => {
    const date = addDays(start, day);
    return within === undefined || (within.from <= date && date <= within.to);
  });

/** Every choice of days of the treatments that may lie on several. */
export const everyTrial = ({ days, treatments }: Case): readonly (readonly Planned[])[] =>
  treatments
    .filter(({ id }) => !id.startsWith("visit"))
    .reduce<readonly (readonly Planned[])[]>(
      (lists, one) =>
        lists.flatMap((list) =>
          choices(one.count ?? 1, openTo(one, days), one.interval?.minimumDays ?? 1).map((chosen) => [
            ...list,
            ...chosen.map((day) => ({ ...one, date: addDays(start, day) })),
          ]),
        ),
      [[]],
    );
