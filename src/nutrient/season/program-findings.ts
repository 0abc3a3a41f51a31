import { exceeds } from "../../numeric/index.js";
import { type Citation, expectFields, type Finding, fail, frozen, outOfRange } from "../../quantity/index.js";
import { eachOf } from "../label/under-path.js";
import { type NitrogenPortion, type ReadPortion, readPortion } from "../release/nitrogen-portion.js";

/** What the field comparison looks at: dates are not needed. */
export interface ComparedProgram {
  readonly name: string;
  readonly applications: readonly { readonly portions: readonly NitrogenPortion[] }[];
}

const buss: Citation = /* @__PURE__ */ frozen({
  title: "Polymer coated urea in Kentucky bluegrass",
  publisher: "Brigham Young University (Buss, thesis)",
  year: 2016,
  where: "abstract",
  url: "https://scholarsarchive.byu.edu/etd/5669/",
});

const nitrogenOf = (portions: readonly ReadPortion[]): number =>
  portions.reduce((sum, { amount }) => sum + amount, 0);

const mostPrograms = 100;
const mostApplications = 400;
const mostPortions = 100;

/** A list of at most so many items. */
const boundedList = (input: unknown, path: string, of: string, most: number): readonly unknown[] => {
  if (!Array.isArray(input)) return fail("type", path, input, `a list of ${of}s`);
  return input.length > most ? outOfRange(path, input, { max: most, count: `${of}s` }) : Array.from(input);
};

/** The portions of each application of each program, nitrogen in kg/ha; other fields belong to the caller. */
const readPrograms = (programs: unknown): readonly (readonly (readonly ReadPortion[])[])[] =>
  eachOf(boundedList(programs, "programs", "program", mostPrograms), "programs", (program) => {
    const { applications } = expectFields(program, ["name", "applications"], "", "{ name, applications }");
    const list = boundedList(applications, "applications", "application", mostApplications);
    return eachOf(list, "applications", (application) => {
      const { portions } = expectFields(application, ["date", "portions", "cost"], "", "{ portions }");
      const parts = boundedList(portions, "portions", "portion", mostPortions);
      return eachOf(parts, "portions", (portion) => readPortion(portion as NitrogenPortion, "kg/ha"));
    });
  });

const isSlow = ({ model }: ReadPortion): boolean => model.curve.kind !== "at once";

/**
 * What a field trial says of programs with polymer-coated urea beside a program of quick nitrogen: once a
 * year gave a flush and then lost color; half of the nitrogen fell short; two applications with three
 * quarters of it matched monthly urea, and three were no better.
 *
 * A program counts as coated where all of its slow portions are polymer-coated and it has any; as quick
 * where all of its portions are released at once. The quick program with the most nitrogen is the measure.
 * Applications of quick nitrogen alone do not count as applications of coated urea.
 *
 * @throws RatewrightError `type`, `missing`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: Kentucky bluegrass in one region, Brigham Young University (Buss, thesis), 2016, abstract.
 *
 * @example
 * ```ts
 * import { polymerCoatedOnSurface, programFindings, quantity, quickRelease } from "ratewright";
 * const portion = (pounds: number, model: typeof quickRelease) =>
 *   ({ name: "N", nitrogen: quantity(pounds, "lb/1000 ft2", "N"), model });
 * const urea = { name: "urea", applications: [1, 2, 3, 4].map(() => ({ portions: [portion(1, quickRelease)] })) };
 * const once = { name: "coated", applications: [{ portions: [portion(4, polymerCoatedOnSurface)] }] };
 * programFindings([urea, once]).map(({ code }) => code); // => ["program/coated-once"]
 * ```
 */
export const programFindings = (programs: readonly ComparedProgram[]): Finding[] => {
  const read = readPrograms(programs);
  const all = read.map((applications) => applications.flat());
  const full = Math.max(0, ...all.filter((portions) => !portions.some(isSlow)).map(nitrogenOf));
  return read.flatMap((applications, p) => {
    const portions = applications.flat();
    const slow = portions.filter(isSlow);
    if (slow.length === 0 || slow.some(({ model }) => model.coating !== "polymer")) return [];
    const count = applications.filter((application) => application.some(isSlow)).length;
    const given: unknown = programs[p]?.name;
    const name = typeof given === "string" ? given.slice(0, 200) : "";
    return coatedFindings({ name, count, total: nitrogenOf(portions), full }, `programs[${p}]`);
  });
};

/** What the trial has against a program of coated urea. */
const coatedFindings = (
  program: { readonly name: string; readonly count: number; readonly total: number; readonly full: number },
  path: string,
): Finding[] => {
  const { name, count, total, full } = program;
  const note = (code: string, params: Finding["params"], text: string): Finding => ({
    code,
    severity: "note",
    path,
    params: { program: name, ...params },
    text,
    source: buss,
  });
  return [
    ...(count === 1
      ? [
          note(
            "program/coated-once",
            {},
            "Coated urea once a year gave a flush and then lost color in the one field comparison read.",
          ),
        ]
      : []),
    ...(count > 2
      ? [
          note(
            "program/coated-often",
            { applications: count },
            "Three applications of coated urea were no better than two in the one field comparison read.",
          ),
        ]
      : []),
    ...(exceeds(0.75 * full, total)
      ? [
          note(
            "program/coated-short",
            { share: total / full },
            "Coated urea matched monthly urea with three quarters of its nitrogen in the one field comparison read; with half it fell short. This program has less than three quarters.",
          ),
        ]
      : []),
  ];
};
