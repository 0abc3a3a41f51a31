import { runnableEntry } from "../catalogue/catalogue.js";
import { readInputs, resultOf } from "../catalogue/entry-result.js";
import type { DerivedQuantity } from "../derivation/derivation.js";
import type { ChainStep } from "../explain/explain-chain.js";
import type { Ask, Posed, PosedMistake, Step } from "../topics/topic.js";

/** A problem whose working is that of formulas of the catalogue. */
interface WorkedPose {
  readonly text: string;
  readonly ask: Ask;
  readonly working: readonly ChainStep[];
  /** What is counted by hand before the formulas. */
  readonly before?: readonly Step[];
  /** What is counted by hand after them: it takes what they come to, in the unit of the last formula's result. */
  readonly after?: { readonly unit: string; readonly steps: (result: number) => readonly Step[] };
  readonly mistakes: (answer: number) => readonly PosedMistake[];
  readonly within?: readonly [low: number, high: number];
}

const isReference = (input: unknown): input is { readonly resultOf: number } =>
  typeof input === "object" && input !== null && "resultOf" in input;

/** What a chain of formulas comes to, without its lines. */
const chainResult = (working: readonly ChainStep[]): DerivedQuantity => {
  const done: DerivedQuantity[] = [];
  for (const { id, inputs } of working) {
    const found = runnableEntry(id, "id");
    const filled = Object.fromEntries(
      Object.entries(inputs).map(([name, input]) => [
        name,
        isReference(input) ? done[input.resultOf - 1] : input,
      ]),
    );
    done.push(resultOf(found, readInputs(found.entry, filled, "inputs")));
  }
  return done[done.length - 1] as DerivedQuantity;
};

/** A problem that the formulas of the catalogue answer and work out, line by line. */
export const worked = ({ before = [], after, mistakes, ...pose }: WorkedPose): Posed => {
  const result = chainResult(pose.working).in((after?.unit ?? pose.ask.unit) as never);
  const steps = after?.steps(result) ?? [];
  const answer = steps[steps.length - 1]?.value ?? result;
  return {
    ...pose,
    workingUnit: after?.unit ?? pose.ask.unit,
    answer,
    steps: before,
    after: steps,
    mistakes: mistakes(answer),
  };
};
