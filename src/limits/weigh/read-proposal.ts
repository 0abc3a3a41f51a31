import type { CivilDate } from "../../calendar/index.js";
import {
  addRates,
  type Completion,
  type Content,
  civilDateAt,
  entryRates,
  type HistoryRow,
  type Labels,
  noLabels,
  readEntry,
} from "../../ledger/house.js";
import type { LedgerEntry } from "../../ledger/index.js";
import { checks, fail, plainCopy } from "../../quantity/index.js";
import type { ApplicationFacts } from "../limit/limit-condition.js";
import { readFacts } from "../limit/read-condition.js";

/** An application that is put to the limits: an entry that is not in the ledger yet. */
export interface Proposal extends Omit<LedgerEntry, "id" | "corrects" | "voids"> {
  /** What is known of it beside its amounts: grass, soil test, distance to water, ... */
  readonly facts?: ApplicationFacts;
}

/** A proposal, read: its row, and what is known of it. */
export interface ReadProposal {
  readonly row: HistoryRow;
  readonly facts: ApplicationFacts;
  readonly content: Content;
  readonly completed: readonly Completion[];
}

/** Reads a proposal; throws all that is wrong. */
export const readProposal = (input: unknown, path: string): { proposal: ReadProposal; date: CivilDate } => {
  if (typeof input !== "object" || input === null) {
    return fail("type", path, input, "an application");
  }
  const { facts, ...given } = plainCopy(input) as Proposal;
  const problems = checks();
  const { date: when } = given as { date?: unknown };
  // A date object, such as a Temporal.PlainDate, is taken as its text.
  const text =
    typeof when === "object" && when !== null
      ? problems.run(() => civilDateAt(when, `${path}.date`))
      : undefined;
  const entry = text === undefined ? given : { ...given, date: text };
  const labels: Labels = noLabels();
  readEntry(entry, path, problems, labels, ["date"]);
  const known = readFacts(facts, `${path}.facts`, problems);
  for (const field of ["id", "corrects", "voids"]) {
    if (field in entry)
      problems.add({ code: "type", path: `${path}.${field}`, got: field, expected: "no such field" });
  }
  problems.done();
  const { rates, completed, productRates, content, unweighed } = entryRates(entry, labels);
  return {
    date: entry.date,
    proposal: {
      facts: known,
      content,
      completed,
      row: {
        date: entry.date,
        from: path,
        parts: entry.parts ?? [],
        products: entry.product === undefined ? [] : [entry.product],
        productRates,
        rates: rates && addRates([rates]),
        ...(unweighed && { unweighed }),
      },
    },
  };
};
