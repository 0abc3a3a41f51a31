import { dimensionNoun } from "../../quantity/house.js";
import { type Dimension, fail, inUnit, isUnit } from "../../quantity/index.js";
import type {
  Derivation,
  DerivationStep,
  DerivationUnits,
  DerivedQuantity,
} from "../derivation/derivation.js";
import type { CatalogueEntry, CatalogueInput, CatalogueVariable } from "../entry/catalogue-entry.js";
import { type RunnableEntry, resultOf } from "../entry/runnable-entry.js";
import { equationTex, equationText, roundedUp } from "../expression/equation-text.js";
import { numberOf } from "../expression/expression.js";
import { readEquation } from "../expression/read-expression.js";
import { plainScript, symbolText } from "../expression/scripts.js";
import { written } from "../expression/write-expression.js";
import { amountPerText, amountText, numberText } from "./amount-text.js";
import { crossingSteps } from "./crossing-steps.js";
import { rounded } from "./digits.js";

/** Options that have been read. */
export interface ReadOptions {
  readonly units: DerivationUnits;
  readonly digits: number;
  readonly unit: string | undefined;
  /** Whether the numbers stand in the equation without their units: in a sum of many. */
  readonly bare?: boolean;
}

const givenStep = ({ symbol, label, per }: CatalogueInput, q: DerivedQuantity): DerivationStep => ({
  kind: "given",
  text: `${symbolText(symbol)} = ${amountPerText(q, per)} (${label})`,
  quantities: [q],
});

/** A number where a symbol stood: in parentheses where a minus or a unit would be misread. */
const putIn = (q: DerivedQuantity, bare: boolean, per: string | undefined): string => {
  const text = bare ? numberText(q.value) : amountPerText(q, per);
  return q.value < 0 || / /.test(text) || (per !== undefined && !bare) ? `(${text})` : text;
};

/** A number that is not whole, with as many digits as it takes to see that. */
const partText = (value: number): string => {
  const texts = [6, 8, 10, 12].map((digits) => numberText(value, digits));
  return texts.find((text) => text.includes(".")) ?? numberText(value);
};

/** The equation with the numbers in it, and what it comes to; what is rounded up is told before and after. */
const solved = (
  { equation, inputs, constantUnits }: CatalogueEntry,
  amounts: ReadonlyMap<string, DerivedQuantity>,
  gives: DerivedQuantity,
  bare: boolean,
): readonly [substitution: DerivationStep, result: DerivationStep] => {
  const { symbol, tree } = readEquation(equation);
  const inside = roundedUp(tree);
  const script = {
    ...plainScript,
    symbol: (name: string) => {
      const q = amounts.get(name);
      const per = inputs.find(({ symbol: own }) => own === name)?.per;
      return q === undefined ? plainScript.symbol(name) : putIn(q, bare, per);
    },
    number: (value: number) => {
      const unit = constantUnits?.[value];
      return unit === undefined ? plainScript.number(value) : `(${numberText(value)} ${unit})`;
    },
  };
  const numbers = new Map([...amounts].map(([name, q]) => [name, q.value]));
  const before = inside === undefined ? gives.value : numberOf(inside, numbers);
  const whole = Math.abs(before - gives.value) <= 1e-9 * Math.abs(gives.value);
  const result = whole
    ? amountText(gives)
    : `${partText(before)}, rounded up to a whole number: ${amountText(gives)}`;
  return [
    {
      kind: "substitution",
      text: `${symbolText(symbol)} = ${written(inside ?? tree, script)}`,
      quantities: [...amounts.values()],
    },
    { kind: "result", text: `${symbolText(symbol)} = ${result}`, quantities: [gives] },
  ];
};

/** The last line: the result with fewer digits. */
const roundingStep = (exact: DerivedQuantity, digits: number): DerivationStep => {
  const result = rounded(exact, digits);
  const how = digits === 1 ? "1 significant digit" : `${digits} significant digits`;
  return {
    kind: "rounding",
    text:
      amountText(result) === amountText(exact)
        ? `${amountText(exact)} needs no rounding`
        : `${amountText(exact)} ≈ ${amountText(result)}, rounded to ${how}`,
    quantities: [exact, result],
  };
};

/** The unit that was asked for, where it is one of the result. */
const resultUnit = ({ dimension, usualUnits }: CatalogueVariable, unit: string): string =>
  isUnit(unit, dimension as Dimension)
    ? unit
    : fail(
        "unit/mismatch",
        "options.unit",
        unit,
        `a unit for ${dimensionNoun(dimension)}, such as ${usualUnits.US}`,
      );

/** The working of one formula for inputs that have been read. */
export const derivationOf = (
  found: RunnableEntry,
  given: Readonly<Record<string, DerivedQuantity>>,
  { units, digits, unit, bare = false }: ReadOptions,
): Derivation => {
  const { entry } = found;
  const output = entry.output;
  const amounts = entry.inputs.map((input) => [input, given[input.name] as DerivedQuantity] as const);
  const inEquation = new Map(
    amounts.map(([{ symbol, equationUnits }, q]) => [symbol, inUnit(q, equationUnits[units])]),
  );
  const gives = inUnit(resultOf(found, given), output.equationUnits[units]);
  const exact = inUnit(gives, unit === undefined ? output.usualUnits[units] : resultUnit(output, unit));
  return {
    type: "derivation",
    version: 1,
    title: entry.title,
    units,
    steps: [
      ...amounts.flatMap(([input, q]) => (input.label === "" ? [] : [givenStep(input, q)])),
      {
        kind: "equation",
        text: equationText(entry.equation),
        tex: equationTex(entry.equation),
        quantities: [],
      },
      ...amounts.flatMap(([{ equationUnits, per }, q]) => crossingSteps(q, equationUnits[units], per)),
      ...solved(entry, inEquation, gives, bare),
      ...crossingSteps(gives, exact.unit),
      roundingStep(exact, digits),
    ],
    exact,
    result: rounded(exact, digits),
  };
};
