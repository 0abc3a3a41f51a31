import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectRecord,
  expectText,
  outOfRange,
  toldBy,
} from "../../quantity/index.js";
import { runnableEntry } from "../catalogue/catalogue.js";
import type { Derivation, DerivedQuantity } from "../derivation/derivation.js";
import { readInputs } from "../entry/runnable-entry.js";
import { derivationOf } from "./derivation-of.js";
import { type ExplainOptions, readOptions } from "./explain.js";

/** What an earlier step of a chain came to, by its number from 1. */
export interface ResultOfStep {
  readonly resultOf: number;
}

/** One step of a chain: a formula, and its inputs; each a quantity, or what an earlier step came to. */
export interface ChainStep {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
}

/** More steps than any sheet has. */
const mostSteps = 50;

const isReference = (input: unknown): input is { readonly resultOf: unknown } =>
  typeof input === "object" && input !== null && "resultOf" in input;

/** The inputs of a step, with the results of earlier steps in their places. */
const filled = (
  inputs: Readonly<Record<string, unknown>>,
  done: readonly (Derivation | undefined)[],
  path: string,
): Readonly<Record<string, unknown>> => {
  const referred = (
    { resultOf }: { readonly resultOf: unknown },
    at: string,
  ): DerivedQuantity | undefined => {
    const number = typeof resultOf === "number" ? resultOf : Number.NaN;
    if (!Number.isInteger(number) || number < 1 || number > done.length)
      return outOfRange(
        `${at}.resultOf`,
        resultOf,
        { step: 1, min: 1, max: Math.max(1, done.length) },
        "the number of an earlier step, {}",
      );
    return done[number - 1]?.exact;
  };
  return Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => [
      name,
      isReference(input)
        ? referred(
            // A reference is one field: another beside it was meant for something.
            expectFields(input, ["resultOf"], `${path}.inputs.${name}`) as { readonly resultOf: unknown },
            `${path}.inputs.${name}`,
          )
        : input,
    ]),
  );
};

/** Whether a step waits for one that could not be done: its own problem is told, and not this one. */
const waits = (
  inputs: Readonly<Record<string, unknown>>,
  done: readonly (Derivation | undefined)[],
): boolean =>
  Object.values(inputs).some(
    (input) =>
      isReference(input) &&
      typeof input.resultOf === "number" &&
      input.resultOf >= 1 &&
      input.resultOf <= done.length &&
      done[input.resultOf - 1] === undefined,
  );

/** Only the last step has the unit that was asked for. */
const stepsOf = (steps: unknown, read: ReturnType<typeof readOptions>): readonly Derivation[] => {
  const list = expectList(steps, "steps", "step");
  if (list.length > mostSteps)
    return outOfRange("steps", described(`${list.length} steps`), { max: mostSteps });
  const problems = checks();
  const done: (Derivation | undefined)[] = [];
  list.forEach((step, n) => {
    const path = `steps[${n}]`;
    const derivation = problems.run(() => {
      const { id, inputs } = expectFields(step, ["id", "inputs"], path);
      const found = runnableEntry(id, `${path}.id`);
      const given = expectRecord(inputs, `${path}.inputs`, "a record of inputs");
      if (waits(given, done)) return undefined;
      const unit = n === list.length - 1 ? read.unit : undefined;
      const values = readInputs(found.entry, filled(given, done, path), `${path}.inputs`);
      const places = Object.fromEntries(Object.keys(given).map((name) => [name, `${path}.inputs.${name}`]));
      return toldBy(places, () => derivationOf(found, values, { ...read, unit }));
    });
    done.push(derivation);
  });
  problems.done();
  return done.filter((one) => one !== undefined);
};

/**
 * Several formulas as one derivation, where a step takes what an earlier one came to: from a target to a product rate,
 * to the whole area, to packages. Results are carried on unrounded; the rounding is shown at the end of each part.
 *
 * @param title - what the chain answers
 * @param steps - formulas in order, with their inputs; `{ resultOf: 1 }` is what the first step came to
 * @param options - as in {@link explain}; `unit` is that of the last result
 * @throws RatewrightError with the problems of all steps by their paths, as {@link explain}; `range` for a step that
 *   is not earlier; `infeasible`
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { derivationText, explainChain } from "ratewright/teach";
 * const chain = explainChain("Bags for the bowling green", [
 *   { id: "product-rate", inputs: { target: quantity(0.9, "lb/1000 ft2", "N"), percent: quantity(24, "% w/w", "N/product") } },
 *   { id: "product-for-area", inputs: { rate: { resultOf: 1 }, area: quantity(14400, "ft2") } },
 *   { id: "packages-for-need", inputs: { need: { resultOf: 2 }, contents: quantity(50, "lb") } },
 * ]);
 * chain.result.value; // => 2
 * derivationText(chain).includes("m = (3.75 lb product/1,000 ft²) × (14.4 blocks of 1,000 ft²)"); // => true
 * ```
 */
export const explainChain = (
  title: string,
  steps: readonly ChainStep[],
  options: ExplainOptions = {},
): Derivation => {
  const read = allOf({
    title: () => expectText(title, "title", "a title"),
    options: () => readOptions(options),
  });
  const parts = stepsOf(steps, read.options);
  const last = parts[parts.length - 1] as Derivation;
  return {
    ...last,
    title: read.title,
    steps: parts.flatMap((part, n) =>
      part.steps.map((step) => ({ ...step, part: `Step ${n + 1}. ${part.title}` })),
    ),
  };
};
