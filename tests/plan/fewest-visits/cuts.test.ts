// What a limit says against a choice of days holds of others too: it rules that choice out, and none that keeps the limits.
import { expect, it } from "vitest";
import { addDays, daysBetween } from "../../../src/calendar/index.js";
import { anyBut, ruledOut, type Trial, type TrialOf } from "../../../src/plan/fewest-visits/trial.js";
import { cutsOf } from "../../../src/plan/fewest-visits/visit-cuts.js";
import { visitDays } from "../../../src/plan/fewest-visits/visit-days.js";
import { openBook } from "../../../src/plan/season/schedule-book.js";
import { type Case, cases, start } from "./limit-cases.js";
import { everyTrial, kept } from "./tried.js";

const readCase = ({ days, treatments, limits, before }: Case): TrialOf => {
  const { book, states } = openBook({
    season: { from: start, to: addDays(start, days - 1) },
    treatments,
    limits,
    ...(before && { ledger: before }),
  });
  const all = book.season.treatments.map((treatment, i) => {
    const state = states[i];
    if (state === undefined) throw new Error("no state");
    return visitDays(book, treatment, state, { first: start, placed: treatment.count, leftOut: false });
  });
  return { book, states, all };
};

it.each(cases)("%s: the rows", (_, _visits, given) => {
  const of = readCase(given);
  const trials = everyTrial(given)
    .map((planned) => ({
      holds: kept(planned, given),
      trial: planned.map(
        ({ id, date }): Trial => ({
          treatment: given.treatments.findIndex((one) => one.id === id),
          day: daysBetween(start, date),
        }),
      ),
    }))
    .filter(({ trial }) => trial.every(({ treatment, day }) => of.all[treatment]?.open.includes(day)));
  const sound = trials.filter(({ holds }) => holds);
  const broken = trials.filter(({ holds }) => !holds);
  expect(sound.length).toBeGreaterThan(0);
  for (const { trial } of sound.slice(0, 20)) expect(cutsOf(of, trial)).toEqual([]);
  // Some of them, spread over all.
  for (const { trial } of broken.filter((_one, i) => i % Math.ceil(broken.length / 20) === 0)) {
    const rows = cutsOf(of, trial);
    const exact = JSON.stringify(anyBut(of, trial));
    expect([
      trial,
      ruledOut(
        rows.filter((row) => JSON.stringify(row) !== exact),
        trial,
      ),
    ]).toEqual([trial, true]);
    for (const other of sound)
      expect([trial, other.trial, ruledOut(rows, other.trial)]).toEqual([trial, other.trial, false]);
  }
});
