import { quantityOf } from "../../quantity/index.js";
import type { DerivedQuantity } from "../derivation/derivation.js";
import type { FormulaSpec } from "../entry/formula.js";
import { numberOf } from "../expression/expression.js";
import { readEquation } from "../expression/read-expression.js";
import type { WorkingStep } from "./topic.js";

/** What an earlier step came to, counted from 1. */
export interface FromStep {
  readonly resultOf: number;
}

/** What an earlier step of a working came to, counted from 1. */
export const fromStep = (resultOf: number): FromStep => ({ resultOf });

/** A formula of the catalogue as a step of a working; its result in a unit other than the usual one, if any. */
export const use = (
  spec: FormulaSpec,
  inputs: Readonly<Record<string, unknown>>,
  unit?: string,
): WorkingStep => ({ spec, inputs, unit });

/** An amount in other units, as a step of a working. */
export const convert = (
  title: string,
  amount: { readonly value: number; readonly unit: string; readonly of: string },
  unit: string,
): WorkingStep => ({ title, from: quantityOf(amount.value, amount.unit, amount.of, "amount"), unit });

/**
 * What stands in a sum: what it is, how much, in which unit, and the unit in which the sum takes it where that is another.
 * Without words it is a figure of the text.
 */
type Part = readonly [label: string, value: number | FromStep, unit: string, inSum?: string];

/**
 * A sum that is no formula of the trade, as a step of a working: what is left, two amounts together. Each figure stands
 * in it as a number of its unit.
 */
export const total = (input: {
  readonly title: string;
  readonly equation: string;
  readonly parts: Readonly<Record<string, Part>>;
  readonly unit: string;
  /** What it is of, where a formula takes it after. */
  readonly of?: string;
}): WorkingStep => {
  const { title, equation, parts, unit, of = "none" } = input;
  const { symbol, tree } = readEquation(equation);
  const entries = Object.entries(parts);
  const spec: FormulaSpec = {
    id: "sum",
    name: "sum",
    title,
    inputs: entries.map(([name, [label, , own, inSum = own]]) => [
      name,
      name,
      label,
      "none",
      [own, own],
      [0, 1],
      [inSum, inSum],
    ]),
    output: [symbol, title, of, [unit, unit]],
    equation,
    run: (given: Readonly<Record<string, DerivedQuantity>>) => {
      const numbers = entries.map(
        ([name, [, , own, inSum = own]]) => [name, given[name]?.in(inSum as never) ?? 0] as const,
      );
      return quantityOf(numberOf(tree, new Map(numbers)), unit, of, "sum");
    },
    traps: [],
    basis: "derived",
    sources: [],
  };
  const inputs = Object.fromEntries(
    entries.map(([name, [, value, own]]) => [
      name,
      typeof value === "number" ? quantityOf(value, own, "none", name) : value,
    ]),
  );
  return { spec, inputs, unit, bare: true };
};

/** The mean of readings, as a step of a working. */
export const meanOf = (title: string, readings: readonly number[], unit: string): WorkingStep => {
  const names = readings.map((_, n) => `x_${n + 1}`);
  return total({
    title,
    equation: `m = (${names.join(" + ")}) / ${readings.length}`,
    parts: Object.fromEntries(names.map((name, n) => [name, ["", readings[n] ?? 0, unit] as const])),
    unit,
  });
};

const toEuros = ([US, metric]: readonly [string, string]): readonly [string, string] => [
  US.replace("USD", "EUR"),
  metric.replace("USD", "EUR"),
];

/** A formula of dollars as one of euros. */
export const inEuros = (spec: FormulaSpec): FormulaSpec => ({
  ...spec,
  inputs: spec.inputs.map(([name, symbol, label, of, units, sensible, inEquation = units, ...per]) => [
    name,
    symbol,
    label,
    of,
    toEuros(units),
    sensible,
    toEuros(inEquation),
    ...per,
  ]),
  output: [spec.output[0], spec.output[1], spec.output[2], toEuros(spec.output[3])],
});
