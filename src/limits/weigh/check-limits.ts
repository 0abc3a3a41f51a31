import type { CivilDate } from "../../calendar/index.js";
import { type Asked, completionFindings, ledgerHistory, tellingOf, wholeSite } from "../../ledger/house.js";
import type { Ledger } from "../../ledger/index.js";
import { checks, expectFields, type Finding, unreadable } from "../../quantity/index.js";
import type { Limit } from "../limit/limit.js";
import { readLimits } from "../limit/read-limit.js";
import type { ReadLimit } from "../limit/read-types.js";
import { earliestWithin } from "./earliest-within.js";
import type { LimitTest } from "./limit-test.js";
import type { LimitUse } from "./limit-use.js";
import { limitsOn } from "./limits-on.js";
import { type Proposal, readProposal } from "./read-proposal.js";

/** What the limits say of a proposal. It does not authorize an application: see `notChecked`. */
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

const cautionText =
  "the law and the label may have changed since the limits were read, and local codes may be stricter: both override every figure here";

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
  const products = all.some((of) => of.startsWith("product:"));
  // Whether an entry that names no product puts anything down shows in all that it holds.
  return { substances, ...(!products && { telling: tellingOf(substances) }), products };
};

/**
 * Holds an application against stated limits, with what the ledger says has gone down: for every part of the
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
 * @throws RatewrightError with every problem of proposal and limits; `date`, `type` for the ledger; what `ledger` and
 *   `limit` throw for entries and limits
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
 * check.findings.map(({ code }) => code); // => ["limit/exceeded", "nitrogen/no-slow-stated"]
 * Number(check.uses[0]?.remainingUnderStatedLimits.value.toFixed(9)); // => -0.3
 * check.uses[0]?.earliestByStatedLimit; // => "2027-01-01"
 * ```
 */
export const checkLimits = (input: {
  readonly ledger?: Ledger;
  readonly proposal: Proposal;
  readonly limits: readonly Limit[];
}): LimitCheck => {
  expectFields(input, ["ledger", "proposal", "limits"]);
  const problems = checks();
  for (const field of ["proposal", "limits"] as const)
    for (const problem of unreadable(input?.[field], field)) problems.add(problem);
  problems.done();
  const read = problems.run(() => readProposal(input?.proposal, "proposal"));
  if (input?.limits === undefined) {
    problems.add({ code: "missing", path: "limits", got: "nothing", expected: "a list of limits" });
  }
  const limits = readLimits(input?.limits, problems);
  problems.done();
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
  if (limits.length === 0) notChecked.push("Limits: none stated.");
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
