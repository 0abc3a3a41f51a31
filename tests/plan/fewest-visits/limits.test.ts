// The fewest visits within limits, beside every choice of days that there is: each is put to `checkLimits`.
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/index.js";
import type { SeasonTreatment } from "../../../src/plan/index.js";
import { found as foundVisits } from "./found.js";
import { type Case, cases, start } from "./limit-cases.js";
import { everyTrial, kept } from "./tried.js";

/** The fewest days of any choice that keeps every limit. */
const triedOut = (given: Case): number => {
  const fixed = given.treatments.flatMap(({ id, within }) => (id.startsWith("visit") ? [within?.from] : []));
  const sizes = everyTrial(given)
    .map((trial) => ({ trial, size: new Set([...fixed, ...trial.map(({ date }) => date)]).size }))
    .sort((a, b) => a.size - b.size);
  return sizes.find(({ trial }) => kept(trial, given))?.size ?? Number.NaN;
};

describe("the fewest visits within limits", () => {
  it.each(cases)("%s: %i", async (_, visits, given) => {
    const { days, treatments, limits, before } = given;
    const found = await foundVisits(
      {
        season: { from: start, to: addDays(start, days - 1) },
        treatments,
        limits,
        ...(before && { ledger: before }),
      },
      { rounds: 8 },
    );
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
