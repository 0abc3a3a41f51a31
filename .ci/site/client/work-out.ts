// What the boxes of a form come to: the working, or every problem with the box that it belongs to.
import {
  type Dimension,
  isSubstance,
  type Problem,
  RatewrightError,
  readQuantity,
  shown,
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

/**
 * The box that a problem belongs to: the one that its path names, `inputs.rate.value` the box `rate`; where the function
 * calls its argument otherwise, the one box whose figure the problem quotes.
 */
const boxOf = (
  { path, got }: Problem,
  names: readonly string[],
  given: Readonly<Record<string, unknown>>,
): string => {
  const own = path.replace(/^inputs\./, "").replace(/\.(value|unit|of)$/, "");
  if (names.includes(own)) return own;
  const one = (fits: (text: string) => boolean): string | undefined => {
    const found = names.filter((name) => name in given && told(given[name]).some(fits));
    return found.length === 1 ? found[0] : undefined;
  };
  return (
    one((text) => text === got) ??
    one((text) => text.length > 1 && String(got).includes(text)) ??
    one((text) => text === /^"?(-?[\d.]+) /.exec(String(got))?.[1]) ??
    own.split(/[.[\]]+/).find((part) => names.includes(part)) ??
    ""
  );
};

/** How a problem may quote a figure: as a quantity, or as a bare number. */
const told = (value: unknown): readonly string[] => [
  shown(value),
  ...(typeof value === "object" && value !== null && "value" in value ? [shown(value.value)] : []),
];

const byBox = (
  problems: readonly Problem[],
  names: readonly string[],
  given: Readonly<Record<string, unknown>> = {},
): ProblemsByBox => {
  const found = new Map<string, Problem[]>();
  for (const problem of problems) {
    const box = boxOf(problem, names, given);
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
    return { derivation: undefined, problems: byBox(error.problems, names, given) };
  }
};
