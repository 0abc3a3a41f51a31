import { inUnit, quantityOf } from "../../quantity/index.js";
import type { DerivationStep, DerivedQuantity } from "../derivation/derivation.js";
import type { FormulaSpec } from "../entry/formula.js";
import { type RunnableEntry, readInputs, resultOf, runnableOf } from "../entry/runnable-entry.js";
import { crossingSteps } from "../explain/crossing-steps.js";
import { derivationOf } from "../explain/derivation-of.js";
import type { FromStep } from "./steps.js";
import type { Ask, Posed, PosedMistake, ProblemUnits, WorkingStep } from "./topic.js";

/** Formulas that were posed already, as entries; a lesson asks for no room. */
const made = new WeakMap<FormulaSpec, RunnableEntry>();

const entryFor = (spec: FormulaSpec): RunnableEntry => {
  const known = made.get(spec);
  if (known !== undefined) return known;
  const entry = runnableOf("", spec);
  made.set(spec, entry);
  return entry;
};

const isFromStep = (input: unknown): input is FromStep =>
  typeof input === "object" && input !== null && "resultOf" in input;

/** A problem whose answer is what its working comes to. */
interface WorkedPose {
  readonly text: string;
  readonly ask: Ask;
  readonly working: readonly WorkingStep[];
  readonly mistakes: (answer: number) => readonly PosedMistake[];
  readonly within?: readonly [low: number, high: number];
}

/** The inputs of a step, with what earlier steps came to in their places. */
const filled = (
  inputs: Readonly<Record<string, unknown>>,
  done: readonly DerivedQuantity[],
  bare: boolean,
): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => {
      if (!isFromStep(input)) return [name, input];
      const earlier = done[input.resultOf - 1];
      return [
        name,
        bare && earlier !== undefined ? quantityOf(earlier.value, earlier.unit, "none", name) : earlier,
      ];
    }),
  );

/** What each step comes to, in the unit in which its lines tell it. */
const resultsOf = (working: readonly WorkingStep[], units: ProblemUnits): readonly DerivedQuantity[] => {
  const done: DerivedQuantity[] = [];
  for (const step of working) {
    if (step.spec === undefined) {
      const { value, of } = step.from;
      done.push(quantityOf(value, step.from.unit, of, "from"));
      continue;
    }
    const found = entryFor(step.spec);
    const given = filled(step.inputs, done, step.bare === true);
    const result = resultOf(found, readInputs(found.entry, given, "inputs"));
    done.push(inUnit(result, step.unit ?? found.entry.output.usualUnits[units]));
  }
  return done;
};

/** A problem that the functions of the library answer, and that the steps work out line by line. */
export const worked = ({ mistakes, ...pose }: WorkedPose): Posed => {
  // no line is written here: which units an earlier step is told in makes no difference
  const results = resultsOf(pose.working, "metric");
  const last = pose.working[pose.working.length - 1];
  // a share of the seed by weight is asked for in percent
  const answer = (results[results.length - 1] as DerivedQuantity).in((last?.unit ?? pose.ask.unit) as never);
  return { ...pose, answer, mistakes: mistakes(answer) };
};

/** The lines of one step; what is given on one line. */
const linesOf = (steps: readonly DerivationStep[]): readonly string[] => {
  const given = steps.filter(({ kind }) => kind === "given").map(({ text }) => text);
  const rest = steps.filter(({ kind }) => kind !== "given" && kind !== "rounding").map(({ text }) => text);
  return given.length === 0 ? rest : [given.join("; "), ...rest];
};

/** The lines of a working. Rounding is left out: the question says how to round. */
export const workingLines = ({ working, ask }: Posed, units: ProblemUnits): readonly string[] => {
  const done = resultsOf(working, units);
  return working.flatMap((step, n) => {
    const last = n === working.length - 1;
    const heading =
      working.length > 1 ? [`Step ${n + 1}. ${step.spec === undefined ? step.title : step.spec.title}`] : [];
    if (step.spec === undefined) return [...heading, ...linesOf(crossingSteps(step.from, step.unit))];
    const found = entryFor(step.spec);
    const asked = ask.unit.startsWith("money:") ? undefined : ask.unit;
    const given = readInputs(found.entry, filled(step.inputs, done, step.bare === true), "inputs");
    const unit = step.unit ?? (last ? asked : undefined);
    const derivation = derivationOf(found, given, { units, digits: 6, unit, bare: step.bare === true });
    return [...heading, ...linesOf(derivation.steps)];
  });
};
