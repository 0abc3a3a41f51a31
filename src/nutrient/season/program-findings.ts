import { exceeds } from "../../numeric/index.js";
import { type Citation, checks, type Finding, fail } from "../../quantity/index.js";
import { type NitrogenPortion, type ReadPortion, readPortion } from "../release/released-nitrogen.js";

/** What the field comparison looks at: dates are not needed. */
export interface ComparedProgram {
  readonly name: string;
  readonly applications: readonly { readonly portions: readonly NitrogenPortion[] }[];
}

const buss: Citation = {
  title: "Polymer coated urea in Kentucky bluegrass",
  publisher: "Brigham Young University (Buss, thesis)",
  year: 2016,
  where: "abstract",
  url: "https://scholarsarchive.byu.edu/etd/5669/",
};

const nitrogenOf = (portions: readonly ReadPortion[]): number =>
  portions.reduce((sum, { amount }) => sum + amount, 0);

/** The portions of each program, nitrogen in kg/ha. */
const readPrograms = (programs: readonly ComparedProgram[]): ReadPortion[][] => {
  if (!Array.isArray(programs)) return fail("type", "programs", programs, "a list of programs");
  const door = checks();
  const read = programs.map((program: ComparedProgram, p): ReadPortion[] => {
    const portions: ReadPortion[] = [];
    const list = <T>(input: readonly T[], path: string): readonly T[] =>
      door.run(() => (Array.isArray(input) ? input : fail("type", path, input, "a list"))) ?? [];
    for (const [a, application] of list(program?.applications, `programs[${p}].applications`).entries()) {
      const at = `programs[${p}].applications[${a}].portions`;
      for (const [i, portion] of list(application?.portions, at).entries()) {
        const one = door.run(() => readPortion(portion, "kg/ha"), `${at}[${i}]`);
        if (one !== undefined) portions.push(one);
      }
    }
    return portions;
  });
  door.done();
  return read;
};

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
  const findings: Finding[] = [];
  const quick = read.filter((portions) => portions.every(({ model }) => model.curve.kind === "at once"));
  const full = Math.max(0, ...quick.map(nitrogenOf));
  for (const [p, program] of programs.entries()) {
    const portions = read[p] as ReadPortion[];
    const slow = portions.filter(({ model }) => model.curve.kind !== "at once");
    if (slow.length === 0 || slow.some(({ model }) => model.coating !== "polymer")) continue;
    const total = nitrogenOf(portions);
    const add = (code: string, params: Finding["params"], text: string): void => {
      findings.push({ code, severity: "note", path: `programs[${p}]`, params, text, source: buss });
    };
    const count = program.applications.filter((application) =>
      application.portions.some(({ model }) => model.curve.kind !== "at once"),
    ).length;
    if (count === 1) {
      add(
        "program/coated-once",
        { program: program.name },
        "Coated urea once a year gave a flush and then lost color in the one field comparison read.",
      );
    }
    if (count > 2) {
      add(
        "program/coated-often",
        { program: program.name, applications: count },
        "Three applications of coated urea were no better than two in the one field comparison read.",
      );
    }
    if (full > 0 && exceeds(0.75 * full, total)) {
      add(
        "program/coated-short",
        { program: program.name, share: total / full },
        "Coated urea matched monthly urea with three quarters of its nitrogen in the one field comparison read; with half it fell short. This program has less than three quarters.",
      );
    }
  }
  return findings;
};
