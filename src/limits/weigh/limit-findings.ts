import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import type { Finding } from "../../quantity/index.js";
import { conditionText } from "../limit/limit-condition.js";
import { periodText } from "../limit/period-text.js";
import type { ReadLimit } from "../limit/read-types.js";
import type { LimitTest } from "./limit-test.js";
import type { LimitOutcome, LimitUse } from "./limit-use.js";

/** What was not counted, and why, in one sentence however many entries there are. */
export const notCountedText = (part: string, of: string, entries: readonly string[]): string => {
  const some = entries.slice(0, 3).join(", ");
  const more = entries.length > 3 ? ` and ${entries.length - 3} more` : "";
  return `${part}: the ${of} applied on ${some}${more}: not stated, or it cannot be weighed.`;
};

const conditions = (limit: ReadLimit, appliesIf: readonly string[]): string => {
  const only =
    appliesIf.length > 0 ? ` It applies where ${appliesIf.join(", and ")}; that was not stated.` : "";
  const lifted = limit.exemptIf?.length
    ? ` Lifted only where ${limit.exemptIf.map(conditionText).join("; or where ")}: the stated facts do not show it.`
    : "";
  return only + lifted;
};

/** What the finding on a limit says of it, whatever its kind. */
const commonOf = (outcome: Compared, limit: ReadLimit) => {
  const { part, appliesIf, path, earliestByStatedLimit: day, limit: stated } = oneOf(outcome);
  return {
    part,
    after: `${day === null ? "" : ` By the stated applications, the first day within this limit is ${day}.`}${conditions(limit, appliesIf)}`,
    finding: {
      severity: appliesIf.length > 0 ? ("caution" as const) : ("warning" as const),
      path,
      source: limit.source,
    },
    params: {
      part,
      of: stated.of,
      ...(limit.id === undefined ? {} : { limitId: limit.id }),
      ...(day === null ? {} : { earliest: day }),
      ...(appliesIf.length > 0 ? { appliesIf } : {}),
    },
  };
};

type Compared = Exclude<LimitOutcome, { outside: string }>;

const oneOf = (outcome: Compared): LimitUse | LimitTest => ("use" in outcome ? outcome.use : outcome.test);

const useFinding = (
  use: LimitUse,
  { part, after: then, finding, params }: ReturnType<typeof commonOf>,
): Finding => {
  const { amount, per, of, kind } = use.limit;
  const { value: most } = amount;
  const after = use.after.value;
  const told = roundedApart(after, most);
  const one = kind === "count" && after === 1;
  const unit = kind === "count" ? "applications" : amount.unit;
  const period = `${one ? "application" : unit} of ${of} ${periodText(per)}`;
  if (use.violated === null)
    return {
      ...finding,
      severity: "caution",
      code: "limit/not-known",
      params: { ...params, limit: most, known: after, unit },
      text: `${part}: at least ${told(after)} ${period}, of the stated ${told(most)}; how much more is not stated or could not be weighed, so it is not known whether the limit is exceeded.`,
    };
  const figures = {
    ...params,
    limit: most,
    before: use.before.value,
    adds: use.adds.value,
    after,
    remaining: use.remainingUnderStatedLimits.value,
    unit,
  };
  if (use.violated === false)
    return {
      ...finding,
      severity: "note",
      code: "limit/exceeded-before",
      params: figures,
      text: `${part}: ${told(after)} ${period} went down, more than the stated limit of ${told(most)}; this application adds none.`,
    };
  return {
    ...finding,
    code: "limit/exceeded",
    params: figures,
    text: `${part}: ${told(after)} ${period} ${kind === "count" && !one ? "are" : "is"} over the stated limit of ${told(most)} (${told(use.before.value)} before, ${told(use.adds.value)} now).${then}`,
  };
};

const testFinding = (
  test: LimitTest,
  { part, after, finding, params }: ReturnType<typeof commonOf>,
): Finding => {
  const { kind, states } = test.limit;
  const found = test.found ?? "not known";
  return {
    ...finding,
    code: `limit/${kind.replace(" ", "-")}`,
    params: { ...params, states, found },
    text: `${part}: ${found}; the stated limit is ${states}.${after}`,
  };
};

/** Whether a limit was exceeded by what went down before, and nothing is added to it. */
const isOverBefore = (outcome: Compared): boolean =>
  "use" in outcome &&
  outcome.use.violated === false &&
  exceeds(outcome.use.before.value, outcome.use.limit.amount.value);

/**
 * The finding on a limit that is violated, that was exceeded before, or of which it could not be told because an amount is
 * not known; none where it is kept.
 */
export const limitFindings = (outcome: Compared, limit: ReadLimit): Finding[] => {
  const { violated } = oneOf(outcome);
  if ((violated === false && !isOverBefore(outcome)) || (violated === null && !("use" in outcome))) return [];
  const common = commonOf(outcome, limit);
  return ["use" in outcome ? useFinding(outcome.use, common) : testFinding(outcome.test, common)];
};
