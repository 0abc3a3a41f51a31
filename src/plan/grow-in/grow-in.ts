import { addDays, type CivilDate, compareDates } from "../../calendar/index.js";
import { earliestBySeedingIntervals } from "../../interval/index.js";
import { inUnit } from "../../ledger/house.js";
import { plainWord } from "../../limits/house.js";
import { exceeds } from "../../numeric/index.js";
import { expectQuantity, type FactSource, type Finding } from "../../quantity/index.js";
import { turfQuestion } from "./read-turf.js";
import type { LabelOnTurf, TurfConflicts, TurfState, TurfTreatment } from "./turf-types.js";

const common = "common practice, no source";

/**
 * Where a treatment stands against the turf that it is meant for: pre-emergents that stop seed and
 * stolons, a regulator on turf that is not established, a herbicide against the species and the age that
 * its label states, heat and drought stress. What a label states is compared with it; the rest is common
 * practice and says so. No figure is made up where a label states none.
 *
 * @param input.date - the day of the application
 * @param input.treatment - its use, and what the label says of the turf
 * @param input.turf - what is known of the turf
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
  const date = turfQuestion(input);
  const { treatment, turf } = input;
  const { id, use, label } = treatment;
  const what = treatment.activeIngredient ?? use;
  const findings: Finding[] = [];
  const checked: string[] = [];
  const notChecked: string[] = [];
  const add = (
    code: string,
    severity: Finding["severity"],
    text: string,
    params: Finding["params"],
    source: FactSource = common,
  ): void => {
    findings.push({
      code: `grow-in/${code}`,
      severity,
      path: `treatment ${id}`,
      params: { treatment: id, date, ...params },
      text,
      source,
    });
  };
  const herbicide = use === "pre-emergent herbicide" || use === "post-emergent herbicide";
  const named = label?.namesNewTurf === true;

  if (herbicide || use === "growth regulator") {
    if (turf.established === undefined) notChecked.push(`${id}: whether the turf is established.`);
    else checked.push(`${id}: whether the turf is established`);
    if (turf.established === false) {
      const from = turf.from ?? "seed or runners";
      if (use === "pre-emergent herbicide")
        add(
          "pre-emergent-stops-rooting",
          named ? "note" : "warning",
          `${what}: a pre-emergent stops the roots of seed, and of stolons and plugs that peg down; this turf is being established from ${from}.${named ? " The label names use on new turf." : ""}`,
          { from, named: named ? 1 : 0 },
          named ? (label as LabelOnTurf).source : common,
        );
      if (use === "growth regulator")
        add(
          "regulator-not-established",
          named ? "note" : "warning",
          `${what}: a growth regulator slows the filling in of turf that is not yet established.`,
          { from },
          named ? (label as LabelOnTurf).source : common,
        );
      if (
        use === "post-emergent herbicide" &&
        label?.minimumMowings === undefined &&
        label?.minimumDaysAfterSeeding === undefined
      )
        add(
          "herbicide-on-young-turf",
          named ? "note" : "caution",
          `${what}: young turf is hurt by rates that old turf stands; the label says how old it must be.`,
          { from },
        );
    }
  }
  if (label?.minimumMowings !== undefined) {
    if (turf.mowings === undefined)
      notChecked.push(`${id}: the number of mowings, of which the label wants ${label.minimumMowings}.`);
    else {
      checked.push(`${id}: mowings against the label`);
      if (turf.mowings < label.minimumMowings)
        add(
          "too-few-mowings",
          "warning",
          `${what}: ${turf.mowings} mowings; the label wants ${label.minimumMowings}.`,
          { mowings: turf.mowings, minimum: label.minimumMowings },
          label.source,
        );
    }
  }
  if (label?.minimumDaysAfterSeeding !== undefined) {
    if (turf.since === undefined)
      notChecked.push(
        `${id}: the days since seeding, of which the label wants ${label.minimumDaysAfterSeeding}.`,
      );
    else {
      checked.push(`${id}: days since seeding against the label`);
      const earliest = addDays(turf.since, label.minimumDaysAfterSeeding);
      if (compareDates(date, earliest) < 0)
        add(
          "too-soon-after-seeding",
          "warning",
          `${what}: ${date} is before ${earliest}, ${label.minimumDaysAfterSeeding} days after seeding on ${turf.since}.`,
          { since: turf.since, earliest, minimum: label.minimumDaysAfterSeeding },
          label.source,
        );
    }
  }
  if (
    turf.seedingOn !== undefined &&
    compareDates(turf.seedingOn, date) >= 0 &&
    (herbicide || use === "growth regulator")
  ) {
    if (label?.minimumDaysToSeeding !== undefined) {
      checked.push(`${id}: days to the seeding against the label`);
      const { earliestByStatedRules: earliest } = earliestBySeedingIntervals({
        rules: [
          {
            from: "spray",
            to: "seeding",
            minimumDays: label.minimumDaysToSeeding,
            about: what,
            source: label.source,
          },
        ],
        happened: [{ event: "spray", date }],
        next: "seeding",
      });
      if (earliest !== null && compareDates(turf.seedingOn, earliest) < 0)
        add(
          "too-soon-before-seeding",
          "warning",
          `${what}: seeding on ${turf.seedingOn} is before ${earliest}, ${label.minimumDaysToSeeding} days after this application.`,
          { seedingOn: turf.seedingOn, earliest, minimum: label.minimumDaysToSeeding },
          label.source,
        );
    } else {
      notChecked.push(
        `${id}: the days from the application to the seeding of ${turf.seedingOn}, because the label's figure is not stated.`,
      );
      if (use === "pre-emergent herbicide")
        add(
          "pre-emergent-before-seeding",
          named ? "note" : "caution",
          `${what}: a pre-emergent goes on working for weeks to months and stops the seed of ${turf.seedingOn}.`,
          { seedingOn: turf.seedingOn },
        );
    }
  }
  if (label?.species !== undefined || label?.notSpecies !== undefined) {
    if (turf.species === undefined) notChecked.push(`${id}: the species of the turf against the label.`);
    else {
      checked.push(`${id}: the species against the label`);
      const here = plainWord(turf.species);
      const among = (list: readonly string[] | undefined): boolean | undefined =>
        list?.some((species) => plainWord(species) === here);
      const out = among(label.notSpecies) === true;
      if (out || among(label.species) === false)
        add(
          "species-not-on-label",
          "warning",
          `${what}: the label ${out ? "rules out" : "does not name"} ${turf.species}.`,
          { species: turf.species },
          label.source,
        );
    }
  } else if (herbicide || use === "growth regulator")
    notChecked.push(`${id}: the species of the turf, because what the label names is not stated.`);
  const most = label?.maximumTemperature;
  if (most !== undefined) {
    if (turf.maximumTemperature === undefined)
      notChecked.push(`${id}: the temperature of the day against the label.`);
    else {
      checked.push(`${id}: the temperature against the label`);
      const here = expectQuantity(
        turf.maximumTemperature,
        { dimension: "temperature" },
        "turf.maximumTemperature",
      );
      const value = inUnit(here, most.unit);
      if (exceeds(value, most.value))
        add(
          "too-hot",
          "warning",
          `${what}: ${Number(value.toFixed(1))} ${most.unit} is expected; the label states ${most.value} ${most.unit} at most.`,
          { temperature: value, maximum: most.value, unit: most.unit },
          (label as LabelOnTurf).source,
        );
    }
  }
  if (herbicide || use === "growth regulator" || use === "fertilizer") {
    if (turf.stress === undefined) notChecked.push(`${id}: heat and drought stress of the turf.`);
    else {
      checked.push(`${id}: heat and drought stress`);
      if (turf.stress.length > 0)
        add(
          "stress",
          "caution",
          `${what}: turf under ${turf.stress.join(" and ")} stress is hurt more easily and takes up less.`,
          { stress: turf.stress },
        );
    }
  }
  return { type: "turf-conflicts", version: 1, findings, checked, notChecked };
};
