// What the boxes of a form come to: the working, or every problem with the box that it belongs to.
import {
  type Dimension,
  isSubstance,
  type Problem,
  RatewrightError,
  readQuantity,
} from "../../../src/quantity/index.js";
import { type Derivation, type DerivationUnits, explain } from "../../../src/teach/index.js";
import type { FormState } from "./address.js";

/** An input of the formula, as the page carries it. */
export interface FormInput {
  readonly name: string;
  readonly label: string;
  readonly dimension: string;
  readonly of: string;
  readonly usualUnits: Readonly<Record<DerivationUnits, string>>;
}

/** What is wrong, by the box; what belongs to no box is under the empty name. */
export type ProblemsByBox = ReadonlyMap<string, readonly Problem[]>;

/** What a form comes to. */
export type Outcome =
  | { readonly derivation: Derivation; readonly problems: ProblemsByBox }
  | { readonly derivation: undefined; readonly problems: ProblemsByBox };

/** The box that a path of a problem names: `inputs.rate.value` is the box `rate`. */
const boxOf = (path: string, names: readonly string[]): string => {
  const [box = ""] = path.replace(/^inputs\./, "").split(/[.[]/);
  return names.includes(box) ? box : "";
};

const byBox = (problems: readonly Problem[], names: readonly string[]): ProblemsByBox => {
  const found = new Map<string, Problem[]>();
  for (const problem of problems) {
    const box = boxOf(problem.path, names);
    found.set(box, [...(found.get(box) ?? []), problem]);
  }
  return found;
};

/** Works the formula out for what stands in the boxes. */
export const workOut = (id: string, inputs: readonly FormInput[], state: FormState): Outcome => {
  const names = inputs.map(({ name }) => name);
  const problems: Problem[] = [];
  const given: Record<string, unknown> = {};
  for (const { name, dimension, of } of inputs) {
    const text = state.get(name) ?? "";
    const unit = state.get(`${name}.unit`) ?? "";
    const read = readQuantity(
      { value: text, unit, of },
      {
        dimension: dimension as Dimension,
        of: isSubstance(of) ? of : "none",
        path: name,
      },
    );
    if (read.value === null) problems.push(...read.problems);
    else given[name] = read.value;
  }
  if (problems.length > 0) return { derivation: undefined, problems: byBox(problems, names) };
  try {
    const units = state.get("units") === "metric" ? "metric" : "US";
    const unit = state.get("result") ?? "";
    const digits = Number(state.get("digits") ?? "3");
    const derivation = explain(id, given, { units, digits, ...(unit === "" ? {} : { unit }) });
    return { derivation, problems: new Map() };
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    return { derivation: undefined, problems: byBox(error.problems, names) };
  }
};
