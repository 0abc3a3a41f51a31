import type { CivilDate } from "../../calendar/index.js";
import type { History } from "../../ledger/house.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadLimit } from "../limit/read-types.js";
import { type CountedDays, countDays, slowShareOfRow } from "./counted-days.js";
import { limitFindings, notCountedText } from "./limit-findings.js";
import type { LimitTest } from "./limit-test.js";
import { type LimitUse, limitOutcome } from "./limit-use.js";
import type { ReadProposal } from "./read-proposal.js";

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
