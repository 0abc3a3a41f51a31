import type { Finding } from "../../quantity/index.js";
import { conditionText } from "../limit/limit-condition.js";
import { periodText } from "../limit/period-text.js";
import type { ReadLimit } from "../limit/read-types.js";
import type { LimitOutcome } from "./limit-use.js";

const tidy = (value: number): number => Number(value.toPrecision(4));

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

/**
 * The finding on a limit that is violated, or of which it could not be told because an amount is not known;
 * none where it is kept.
 */
export const limitFindings = (
  outcome: Exclude<LimitOutcome, { outside: string }>,
  limit: ReadLimit,
): Finding[] => {
  const one = "use" in outcome ? outcome.use : outcome.test;
  if (one.violated === false || (one.violated === null && !("use" in outcome))) return [];
  const { part, appliesIf, path, earliestByStatedLimit: day } = one;
  const when =
    day === null ? "" : ` The first day within this limit, as far as the stated applications go: ${day}.`;
  const common = {
    severity: appliesIf.length > 0 ? ("caution" as const) : ("warning" as const),
    path,
    source: limit.source,
  };
  const params = {
    part,
    of: one.limit.of,
    ...(limit.id === undefined ? {} : { limitId: limit.id }),
    ...(day === null ? {} : { earliest: day }),
    ...(appliesIf.length > 0 ? { appliesIf } : {}),
  };
  if ("use" in outcome) {
    const { use } = outcome;
    const { amount, per, of, kind } = use.limit;
    const unit = kind === "count" ? "applications" : amount.unit;
    const remaining = use.remainingUnderStatedLimits.value;
    if (use.violated === null) {
      return [
        {
          ...common,
          severity: "caution",
          code: "limit/not-known",
          params: { ...params, limit: amount.value, known: use.after.value, unit },
          text: `${part}: at least ${tidy(use.after.value)} ${unit} of ${of} ${periodText(per)}, of the stated ${tidy(amount.value)}; how much more is not stated or could not be weighed, so it is not known whether the limit is kept.`,
        },
      ];
    }
    return [
      {
        ...common,
        code: "limit/violated",
        params: {
          ...params,
          limit: amount.value,
          before: use.before.value,
          adds: use.adds.value,
          after: use.after.value,
          remaining,
          unit,
        },
        text: `${part}: ${tidy(use.after.value)} ${unit} of ${of} ${periodText(per)} is over the stated limit of ${tidy(amount.value)} (${tidy(use.before.value)} before, ${tidy(use.adds.value)} now).${when}${conditions(limit, appliesIf)}`,
      },
    ];
  }
  const { test } = outcome;
  const found = test.found ?? "not known";
  return [
    {
      ...common,
      code: `limit/${test.limit.kind.replace(" ", "-")}`,
      params: { ...params, states: test.limit.states, found },
      text: `${part}: ${found}; the stated limit is ${test.limit.states}.${when}${conditions(limit, appliesIf)}`,
    },
  ];
};
