import { type CivilDate, compareDates } from "../../calendar/index.js";
import {
  type Asked,
  addRates,
  type Completion,
  type Content,
  civilDateAt,
  completionFindings,
  entryRates,
  type History,
  type HistoryRow,
  type Labels,
  ledgerHistory,
  noLabels,
  readEntry,
  tellingOf,
  wholeSite,
} from "../../ledger/house.js";
import type { Ledger, LedgerEntry } from "../../ledger/index.js";
import { checks, type Finding, fail, unreadable } from "../../quantity/index.js";
import type { Limit } from "../limit/limit.js";
import type { ApplicationFacts } from "../limit/limit-condition.js";
import { readFacts } from "../limit/read-condition.js";
import { readLimits } from "../limit/read-limit.js";
import type { ReadLimit } from "../limit/read-types.js";
import { type CountedDays, countDays, slowShareOfRow } from "./counted-days.js";
import { limitFindings, notCountedText } from "./limit-findings.js";
import type { LimitTest } from "./limit-test.js";
import { type LimitUse, limitOutcome } from "./limit-use.js";

/** An application that is put to the limits: an entry that is not in the ledger yet. */
export interface Proposal extends Omit<LedgerEntry, "id" | "corrects" | "voids"> {
  /** What is known of it beside its amounts: grass, soil test, distance to water, ... */
  readonly facts?: ApplicationFacts;
}

/** What the limits say of a proposal. It is no leave to apply: see `notChecked`. */
export interface LimitCheck {
  readonly type: "limit-check";
  readonly version: 1;
  readonly date: CivilDate;
  /** Limits on amounts and counts, by part of the site. */
  readonly uses: readonly LimitUse[];
  /** All other limits. */
  readonly tests: readonly LimitTest[];
  /** Limits that are violated, and what was taken as read. An empty list is no approval. */
  readonly findings: readonly Finding[];
  /** The first day, from the one proposed on, on which no limit that could be compared is violated; `null` where none is found. */
  readonly earliestByStatedRules: CivilDate | null;
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** A proposal, read: its row, and what is known of it. */
export interface ReadProposal {
  readonly row: HistoryRow;
  readonly facts: ApplicationFacts;
  readonly content: Content;
  readonly completed: readonly Completion[];
}

const cautionText =
  "the law and the label may have changed since the limits were read, and local codes may be stricter: both win over every figure here";

/** Limits put to a proposal on each part of the site that it touches. */
export const limitsOn = (input: {
  readonly proposal: ReadProposal;
  readonly date: CivilDate;
  readonly parts: readonly string[];
  readonly history: History;
  readonly limits: readonly ReadLimit[];
  /** What was counted for the same proposal, history and limits on another day. */
  readonly kept?: CountedDays;
}): { uses: LimitUse[]; tests: LimitTest[]; findings: Finding[]; notChecked: string[] } => {
  const { proposal, date, history } = input;
  const uses: LimitUse[] = [];
  const tests: LimitTest[] = [];
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  const row = { ...proposal.row, date };
  const slowShare = slowShareOfRow(row);
  const known = { date, facts: proposal.facts, slowShare };
  const { content } = proposal;
  const kept: CountedDays = input.kept ?? new Map();
  for (const part of input.parts) {
    countDays(input.limits, { history, part, date, kept });
    for (const limit of input.limits) {
      const outcome = limitOutcome(limit, { date, part, row, known, history, content, kept });
      if ("outside" in outcome) {
        notChecked.push(`${part}: ${limit.id ?? limit.path}, for ${outcome.outside}.`);
        continue;
      }
      if ("use" in outcome) {
        uses.push(outcome.use);
        if (outcome.notCounted.length > 0) {
          notChecked.push(notCountedText(part, outcome.use.limit.of, outcome.notCounted));
        }
      } else {
        tests.push(outcome.test);
        if (outcome.test.violated === null) {
          notChecked.push(
            `${part}: ${limit.id ?? limit.path} (${outcome.test.limit.states}), because what it needs is not stated.`,
          );
        }
      }
      findings.push(...limitFindings(outcome, limit));
    }
  }
  return { uses, tests, findings, notChecked };
};

/** The first day, from a date on, on which none of the limits is violated. */
export const earliestWithin = (input: Parameters<typeof limitsOn>[0]): CivilDate | null => {
  let date: CivilDate | null = input.date;
  const kept: CountedDays = input.kept ?? new Map();
  // Every step goes to a later day that one limit asks for; a year of steps is more than any set of limits needs.
  for (let step = 0; step < 400 && date !== null; step++) {
    const { uses, tests } = limitsOn({ ...input, date, kept });
    const violated = [...uses, ...tests].filter((one) => one.violated === true);
    if (violated.length === 0) return date;
    let next: CivilDate | null = null;
    for (const { earliestByStatedLimit: day } of violated) {
      if (day === null) return null;
      if (next === null || compareDates(day, next) > 0) next = day;
    }
    date = next !== null && compareDates(next, date) > 0 ? next : null;
  }
  return null;
};

/** Reads a proposal; throws all that is wrong. */
export const readProposal = (input: unknown, path: string): { proposal: ReadProposal; date: CivilDate } => {
  if (typeof input !== "object" || input === null) {
    return fail(input === undefined ? "missing" : "type", path, input, "an application");
  }
  const { facts, ...given } = input as Proposal;
  const door = checks();
  const { date: when } = given as { date?: unknown };
  // A date object, such as a Temporal.PlainDate, is taken as its text.
  const text =
    typeof when === "object" && when !== null ? door.run(() => civilDateAt(when, `${path}.date`)) : undefined;
  const entry = text === undefined ? given : { ...given, date: text };
  const labels: Labels = noLabels();
  readEntry(entry, path, door, labels, ["date"]);
  const known = readFacts(facts, `${path}.facts`, door);
  for (const field of ["id", "corrects", "voids"]) {
    if (field in entry)
      door.add({ code: "type", path: `${path}.${field}`, got: field, expected: "no such field" });
  }
  door.done();
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

/** What limits that add up ask of a ledger. */
const askedBy = (limits: readonly ReadLimit[]): Asked => {
  const all = limits.flatMap((limit) =>
    limit.kind === "amount" || limit.kind === "count" || limit.kind === "interval"
      ? [limit.of]
      : limit.kind === "rotation"
        ? [...limit.of, ...(limit.among ?? [])]
        : [],
  );
  const substances = new Set(all.filter((of) => !of.startsWith("product:")));
  return {
    substances,
    telling: tellingOf(substances),
    products: all.some((of) => of.startsWith("product:")),
  };
};

/**
 * Puts an application to stated limits, with what the ledger says has gone down: for every part of the
 * site the number used, the number left, whether the limit is violated, the first day on which the
 * application would stay within it, and the day from which more can be applied.
 *
 * Equation, for an amount or a count over a period: `left = limit - used - added`; the limit is violated
 * where `used + added` exceeds it by more than 1e-9 of it (equal is within). A rolling period takes the
 * fullest stretch that holds the day, later entries of the ledger included. Elemental P is converted to
 * P2O5 and back, never taken for it. What a limit calls an application is one proposal.
 *
 * @param input.ledger - may be left out where nothing has gone down
 * @param input.proposal - like a ledger entry without an id, with `facts` for the limits that ask for them
 * @param input.limits - those of a {@link LimitSet}, and the caller's own
 * @throws RatewrightError with every problem of proposal and limits; `date`, `type` for the ledger
 *
 * Source: arithmetic; the sources of the limits stand with them.
 *
 * @example
 * ```ts
 * import { checkLimits, ledger } from "ratewright";
 * const check = checkLimits({
 *   ledger: ledger([
 *     { id: "a", date: "2026-04-20", supplies: [{ value: 2.5, unit: "lb/1000 ft2", of: "N" }] },
 *   ]),
 *   proposal: { date: "2026-06-08", supplies: [{ value: 0.8, unit: "lb/1000 ft2", of: "N" }] },
 *   limits: [
 *     { amount: { value: 3, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "plan of the park" },
 *   ],
 * });
 * check.findings.map(({ code }) => code); // => ["limit/violated", "nitrogen/no-slow-stated"]
 * Number(check.uses[0]?.remainingUnderStatedLimits.value.toFixed(9)); // => -0.3
 * check.uses[0]?.earliestByStatedLimit; // => "2027-01-01"
 * ```
 */
export const checkLimits = (input: {
  readonly ledger?: Ledger;
  readonly proposal: Proposal;
  readonly limits: readonly Limit[];
}): LimitCheck => {
  const door = checks();
  for (const field of ["proposal", "limits"] as const)
    for (const problem of unreadable(input?.[field], field)) door.add(problem);
  door.done();
  const read = door.run(() => readProposal(input?.proposal, "proposal"));
  if (input?.limits === undefined) {
    door.add({ code: "missing", path: "limits", got: "nothing", expected: "a list of limits" });
  }
  const limits = readLimits(input?.limits, door);
  door.done();
  const { proposal, date } = read as NonNullable<typeof read>;
  const entries = input.ledger ?? { type: "ledger", version: 1, entries: [] };
  const ledger = ledgerHistory(entries, "ledger", askedBy(limits));
  const parts = proposal.row.parts.length > 0 ? proposal.row.parts : [...ledger.parts(), wholeSite];
  const asked = { proposal, date, parts, history: ledger, limits, kept: new Map() };
  const { uses, tests, findings, notChecked } = limitsOn(asked);
  const { rates, unweighed = [] } = proposal.row;
  if (unweighed.length > 0) {
    notChecked.push(`How much the application supplies of ${unweighed.join(", ")}: it could not be weighed.`);
  } else if (rates === undefined) {
    notChecked.push(
      "What the application supplies: it states no analysis, contents or supplies that could be weighed.",
    );
  }
  const completions = completionFindings(proposal.completed, "The application", "proposal", date);
  if (limits.length === 0) notChecked.push("Limits: none are stated.");
  return {
    type: "limit-check",
    version: 1,
    date,
    uses,
    tests,
    findings: [...findings, ...completions],
    earliestByStatedRules: earliestWithin(asked),
    checked: limits.map((limit) => limit.id ?? limit.path),
    notChecked: [...new Set(notChecked), `Whether these are all the limits that bind here: ${cautionText}.`],
  };
};
