import type { CivilDate } from "../../calendar/index.js";
import type { Finding } from "../../quantity/index.js";
import type { Completion } from "./nutrient-rates.js";

const texts: Readonly<Record<Completion, readonly [string, string]>> = {
  "no slow stated": [
    "nitrogen/no-slow-stated",
    "states no slow-release nitrogen: all of its nitrogen counts as quick-release.",
  ],
  "rest not stated": [
    "nitrogen/rest-not-stated",
    "states less quick- and slow-release nitrogen than nitrogen in all: the rest counts as quick-release.",
  ],
  "no total stated": [
    "nitrogen/no-total-stated",
    "states no total nitrogen: the quick- and slow-release nitrogen that it states count as the total.",
  ],
};

/** Says what was taken as read to complete the stated nitrogen. */
export const completionFindings = (
  completed: readonly Completion[],
  what: string,
  path: string,
  date: CivilDate,
): readonly Finding[] =>
  completed.map((completion): Finding => {
    const [code, text] = texts[completion];
    return {
      code,
      severity: "note",
      path,
      params: { date },
      text: `${what} ${text}`,
      source: "common practice, no source",
    };
  });
