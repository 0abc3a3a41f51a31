// The fewest visits within limits, beside every choice of days that there is: each is put to `checkLimits`.
import { describe, expect, it } from "vitest";
import { addDays, type CivilDate } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import type { SeasonTreatment } from "../../../src/plan/index.js";
import { found as foundVisits } from "./found.js";
import { type Case, cases, start } from "./limit-cases.js";

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

interface Planned extends Omit<SeasonTreatment, "id"> {
  readonly id: string;
  readonly date: CivilDate;
}

const kept = (trial: readonly Planned[], { limits, before }: Case): boolean => {
  const entries = trial
    .filter(({ puts }) => puts !== undefined)
    .map(({ date, puts, parts }, i) => ({ id: `e${i}`, date, ...puts, ...(parts && { parts: [...parts] }) }));
  return entries.every(({ id, ...proposal }) => {
    const others = ledger([...(before?.entries ?? []), ...entries.filter((one) => one.id !== id)]);
    const { uses, tests } = checkLimits({ ledger: others, limits, proposal });
    return [...uses, ...tests].every(({ violated }) => violated === false);
  });
};

const openTo = ({ within }: SeasonTreatment, days: number): readonly number[] =>
  Array.from({ length: days }, (_, day) => day).filter((day) => {
    const date = addDays(start, day);
    return within === undefined || (within.from <= date && date <= within.to);
  });

/** The fewest days of any choice that keeps every limit. */
const triedOut = (given: Case): number => {
  const { days, treatments } = given;
  const free = treatments.filter(({ id }) => !id.startsWith("visit"));
  const fixed = treatments.flatMap(({ id, within }) => (id.startsWith("visit") ? [within?.from] : []));
  const all = free.reduce<readonly (readonly Planned[])[]>(
    (lists, one) =>
      lists.flatMap((list) =>
        choices(one.count ?? 1, openTo(one, days), one.interval?.minimumDays ?? 1).map((chosen) => [
          ...list,
          ...chosen.map((day) => ({ ...one, date: addDays(start, day) })),
        ]),
      ),
    [[]],
  );
  const sizes = all
    .map((trial) => ({ trial, size: new Set([...fixed, ...trial.map(({ date }) => date)]).size }))
    .sort((a, b) => a.size - b.size);
  return sizes.find(({ trial }) => kept(trial, given))?.size ?? Number.NaN;
};

describe("the fewest visits within limits", () => {
  it.each(cases)("%s: %i", async (_, visits, given) => {
    const { days, treatments, limits, before } = given;
    const found = await foundVisits({
      season: { from: start, to: addDays(start, days - 1) },
      treatments,
      limits,
      ...(before && { ledger: before }),
    });
    expect([found.visits, found.atLeast, found.proven]).toEqual([visits, visits, true]);
    const placed = found.schedule.visits.flatMap(({ date, applications }) =>
      applications.map(({ treatment }) => ({
        ...(treatments.find(({ id }) => id === treatment) as SeasonTreatment),
        date,
      })),
    );
    expect(placed).toHaveLength(treatments.reduce((sum, { count = 1 }) => sum + count, 0));
    expect(kept(placed, given)).toBe(true);
  });

  it.each(cases)("%s: %i, and no choice of days has fewer", (_, visits, given) => {
    expect(triedOut(given)).toBe(visits);
  });
});
