import type { CivilDate } from "../../calendar/index.js";
import type { History } from "../../ledger/house.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadLimit } from "../limit/read-types.js";
import { type CountedDays, countDays, slowShareOfRow } from "./counted-days.js";
import { limitFindings, notCountedText } from "./limit-findings.js";
import type { LimitTest } from "./limit-test.js";
import { type LimitOutcome, type LimitUse, limitOutcome } from "./limit-use.js";
import type { ReadProposal } from "./read-proposal.js";

/** A proposal on some parts of the site, with the limits that it is put to. */
export interface Question {
  readonly proposal: ReadProposal;
  readonly date: CivilDate;
  readonly parts: readonly string[];
  readonly history: History;
  readonly limits: readonly ReadLimit[];
  /** What was counted for the same proposal, history and limits on another day. */
  readonly kept?: CountedDays;
}

interface Outcome {
  readonly part: string;
  readonly limit: ReadLimit;
  readonly outcome: LimitOutcome;
}

const outcomesOf = (question: Question): readonly Outcome[] => {
  const { proposal, date, history, limits } = question;
  const row = { ...proposal.row, date };
  const known = { date, facts: proposal.facts, slowShare: slowShareOfRow(row) };
  const { content } = proposal;
  const kept: CountedDays = question.kept ?? new Map();
  return question.parts.flatMap((part) => {
    countDays(limits, { history, part, date, kept });
    return limits.map((limit) => {
      const outcome = limitOutcome(limit, { date, part, row, known, history, content, kept });
      return { part, limit, outcome };
    });
  });
};

/** What is violated on a day, and from when on it is not; nothing of it is put into words. */
export const violatedOn = (question: Question): readonly (LimitUse | LimitTest)[] =>
  outcomesOf(question).flatMap(({ outcome }) => {
    if ("outside" in outcome) return [];
    const found = "use" in outcome ? outcome.use : outcome.test;
    return found.violated === true ? [found] : [];
  });

/** Limits put to a proposal on each part of the site that it touches. */
export const limitsOn = (
  question: Question,
): { uses: LimitUse[]; tests: LimitTest[]; findings: Finding[]; notChecked: string[] } => {
  const uses: LimitUse[] = [];
  const tests: LimitTest[] = [];
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  for (const { part, limit, outcome } of outcomesOf(question)) {
    if ("outside" in outcome) {
      notChecked.push(`${part}: ${limit.id ?? limit.path}, because ${outcome.outside}.`);
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
  return { uses, tests, findings, notChecked };
};
