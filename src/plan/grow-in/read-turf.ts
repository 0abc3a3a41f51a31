import type { CivilDate } from "../../calendar/index.js";
import { civilDateAt, expectSource } from "../../ledger/house.js";
import {
  type Checks,
  checks,
  expectFields,
  expectFlag,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  outOfRange,
  type Reader,
  readFields,
} from "../../quantity/index.js";
import type { LabelOnTurf, TreatmentUse, TurfState, TurfTreatment } from "./turf-types.js";

const uses: readonly TreatmentUse[] = [
  "pre-emergent herbicide",
  "post-emergent herbicide",
  "growth regulator",
  "fertilizer",
  "fungicide",
  "insecticide",
  "other",
];

const text: Reader = (input, path) => expectText(input, path, "text");
const flag: Reader = expectFlag;
const whole: Reader = (input, path) => {
  const n = expectNumber(input, path, { min: 0, max: 3660 });
  return Number.isInteger(n) ? n : outOfRange(path, input, { step: 1 });
};
const temperature: Reader = (input, path) =>
  expectQuantity(input, { dimension: "temperature", of: "none" }, path);
/** A list that may be empty: there is none. */
const listOf =
  (read: Reader): Reader =>
  (input, path) => {
    if (!Array.isArray(input)) return fail("type", path, input, "a list");
    return Array.from(input as unknown[], (item, i) => read(item, `${path}[${i}]`));
  };
const oneOf =
  (words: readonly string[]): Reader =>
  (input, path) =>
    expectOneOf(input, words, path);

const labelReaders: { readonly [K in keyof Required<LabelOnTurf>]: Reader } = {
  namesNewTurf: flag,
  minimumMowings: whole,
  minimumDaysAfterSeeding: whole,
  minimumDaysToSeeding: whole,
  species: listOf(text),
  notSpecies: listOf(text),
  maximumTemperature: temperature,
  source: expectSource,
};

const turfReaders: { readonly [K in keyof Required<TurfState>]: Reader } = {
  species: text,
  from: oneOf(["seed", "sprigs", "stolons", "plugs", "sod"]),
  since: civilDateAt,
  established: flag,
  mowings: whole,
  seedingOn: civilDateAt,
  stress: listOf(oneOf(["heat", "drought"])),
  maximumTemperature: temperature,
};

/** Reads what a treatment is used as; what is wrong goes to `problems`. */
export const readUse = (input: unknown, path: string, problems: Checks): void => {
  problems.run(() => expectOneOf(input, uses, path));
};

/** Reads what a label says of the turf; what is wrong goes to `problems`. */
export const readTurfLabel = (input: unknown, path: string, problems: Checks): void =>
  readFields(input, labelReaders, ["source"], path, "what the label says about the turf", problems);

/** Reads what is known about the turf; what is wrong goes to `problems`. */
export const readTurf = (input: unknown, path: string, problems: Checks): void =>
  readFields(input, turfReaders, [], path, "what is known about the turf", problems);

/** Takes the parts of a question on turf that may come from JSON, or throws all that is wrong. */
export const turfQuestion = (input: {
  readonly date: unknown;
  readonly treatment: TurfTreatment;
  readonly turf: TurfState;
}): CivilDate => {
  expectFields(input, ["date", "treatment", "turf"]);
  const { date, treatment, turf } = input;
  const problems = checks();
  const day = problems.run(() => civilDateAt(date, "date"));
  const fields = ["id", "use", "activeIngredient", "label"];
  const known = problems.run(() => expectFields(treatment, fields, "treatment", "a treatment"));
  if (known !== undefined) {
    problems.run(() => expectText(known.id, "treatment.id", "a name"));
    readUse(known.use, "treatment.use", problems);
    if (known.activeIngredient !== undefined)
      problems.run(() => text(known.activeIngredient, "treatment.activeIngredient"));
    if (known.label !== undefined) readTurfLabel(known.label, "treatment.label", problems);
  }
  readTurf(turf, "turf", problems);
  problems.done();
  return day as CivilDate;
};
