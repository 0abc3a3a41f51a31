import { type Citation, frozen, quantityOf } from "../../quantity/index.js";
import type { EquationBasis, FormulaSpec } from "./formula.js";

/** A unit in US customary and in metric measure. */
export interface UnitsOfSystem {
  readonly US: string;
  readonly metric: string;
}

/** What a formula takes or gives. */
export interface CatalogueVariable {
  readonly name: string;
  /** As the equation writes it. */
  readonly symbol: string;
  /** What it is, in the words of the trade. */
  readonly label: string;
  readonly dimension: string;
  /** Of what substance; `"none"` for lengths, areas, times and numbers. */
  readonly of: string;
  readonly usualUnits: UnitsOfSystem;
  /** The units in which the numbers of the equation stand; it holds in either column. */
  readonly equationUnits: UnitsOfSystem;
}

/** An input of a formula, with the range in which a problem for learners would put it. */
export interface CatalogueInput extends CatalogueVariable {
  readonly sensible: { readonly min: number; readonly max: number; readonly unit: string };
  /** What the number is for each of, where its unit does not say it: a share of the tank in a minute is `%`, for each `min`. */
  readonly per?: string;
}

/** A formula of the library, as data. */
export interface CatalogueEntry {
  readonly type: "catalogueEntry";
  readonly version: 1;
  /** Stable: it may be stored. */
  readonly id: string;
  /** The exported function that computes it. */
  readonly name: string;
  readonly room: string;
  readonly title: string;
  readonly inputs: readonly CatalogueInput[];
  readonly output: CatalogueVariable;
  /** The equation in symbols: `R = 100 * T / p`. */
  readonly equation: string;
  /** The symbols of the units of numbers in the equation that are amounts, where there are any: `{ 43560: "ft²" }`. */
  readonly constantUnits?: Readonly<Record<number, string>>;
  /** Where people go wrong. */
  readonly traps: readonly string[];
  /** What the equation rests on. */
  readonly basis: EquationBasis;
  /** Where the equation, or an example worked by it, is printed; never empty for a basis of `"published"`. */
  readonly sources: readonly Citation[];
}

const dimensionOf = (unit: string): string => quantityOf(1, unit, "none", "unit").dimension;

const inSystems = ([US, metric]: readonly [string, string]): UnitsOfSystem => ({ US, metric });

/** The entry of a formula: its parts named, and the dimension of each. */
export const entryOf = (room: string, spec: FormulaSpec): CatalogueEntry => {
  const [symbol, label, of, units, equationUnits = units] = spec.output;
  return frozen({
    type: "catalogueEntry",
    version: 1,
    id: spec.id,
    name: spec.name,
    room,
    title: spec.title,
    inputs: spec.inputs.map(([name, sign, what, stuff, usual, [min, max], inEquation = usual, per]) => ({
      name,
      symbol: sign,
      label: what,
      dimension: dimensionOf(usual[0]),
      of: stuff,
      usualUnits: inSystems(usual),
      equationUnits: inSystems(inEquation),
      sensible: { min, max, unit: usual[0] },
      ...(per !== undefined && { per }),
    })),
    output: {
      name: "result",
      symbol,
      label,
      dimension: dimensionOf(units[0]),
      of,
      usualUnits: inSystems(units),
      equationUnits: inSystems(equationUnits),
    },
    equation: spec.equation,
    ...(spec.constantUnits !== undefined && { constantUnits: { ...spec.constantUnits } }),
    traps: [...spec.traps],
    basis: spec.basis,
    sources: [...spec.sources],
  });
};
