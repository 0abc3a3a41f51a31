import type { CivilDate } from "../../calendar/index.js";
import { type Finding, plainCopy } from "../../quantity/index.js";
import { turfQuestion } from "./read-turf.js";
import { type TurfFinding, turfRules } from "./turf-rules.js";
import type { TurfConflicts, TurfState, TurfTreatment } from "./turf-types.js";

/**
 * Where a treatment stands against the turf that it is meant for: pre-emergents that stop seed and
 * stolons, a regulator on turf that is not established, a herbicide against the species and the age that
 * its label states, heat and drought stress. What a label states is compared with it; the rest is common
 * practice and says so. No figure is made up where a label states none.
 *
 * @param input.date - the day of the application
 * @param input.treatment - its use, and what the label says about the turf
 * @param input.turf - what is known about the turf
 * @throws RatewrightError `missing`, `type`, `date`, `unit/mismatch`, `range`
 *
 * Source: the label where one is stated; otherwise common practice, no source.
 *
 * @example
 * ```ts
 * import { turfConflicts } from "ratewright";
 * const { findings } = turfConflicts({
 *   date: "2026-05-04",
 *   treatment: { id: "crabgrass", use: "pre-emergent herbicide", activeIngredient: "prodiamine" },
 *   turf: { from: "sprigs", established: false, stress: [] },
 * });
 * findings.map(({ code, source }) => [code, source]);
 * // => [["grow-in/pre-emergent-stops-rooting", "common practice, no source"]]
 * ```
 */
export const turfConflicts = (input: {
  readonly date: CivilDate;
  readonly treatment: TurfTreatment;
  readonly turf: TurfState;
}): TurfConflicts => {
  const given = plainCopy(input);
  const date = turfQuestion(given);
  const { treatment, turf } = given;
  const { id, use, label } = treatment;
  const asked = { date, use, what: treatment.activeIngredient ?? use, label, turf };
  const answers = turfRules.map((rule) => rule(asked));
  return {
    type: "turf-conflicts",
    version: 1,
    findings: answers.flatMap(({ found }) => (found === undefined ? [] : [findingOf(found, id, date)])),
    checked: answers.flatMap(({ checked }) => (checked === undefined ? [] : [`${id}: ${checked}`])),
    notChecked: answers.flatMap(({ notChecked }) =>
      notChecked === undefined ? [] : [`${id}: ${notChecked}`],
    ),
  };
};

const findingOf = (
  { code, severity, text, params, source }: TurfFinding,
  id: string,
  date: CivilDate,
): Finding => ({
  code: `grow-in/${code}`,
  severity,
  path: `treatment ${id}`,
  params: { treatment: id, date, ...params },
  text,
  source: source ?? "common practice, no source",
});
