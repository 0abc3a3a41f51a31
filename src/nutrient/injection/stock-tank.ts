import { counted, described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  Quantity,
  timesOf,
} from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import { expectSource } from "../label/expect-source.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { formFactor } from "../label/forms.js";
import { isNutrient, type Nutrient } from "../label/nutrient.js";
import { eachOf, listOf } from "../label/under-path.js";
import { solveLinear } from "../rate/solve-linear.js";
import { checkedInjector, type Injector } from "./injector.js";
import { stockFindings } from "./stock-findings.js";
import type { StockAmount, StockSalt } from "./stock-salt.js";

/** A recipe for a stock tank, and what it makes. */
export interface StockTank {
  readonly type: "stock-tank";
  readonly version: 1;
  readonly salts: readonly StockAmount[];
  /**
   * Nutrients of the final solution, also those without a target, in the unit of the targets. Each stands once:
   * in the form of its target, else in the first form that a label states.
   */
  readonly solution: Readonly<Partial<Record<Nutrient, Quantity<"mass/volume", Nutrient>>>>;
  /** How much final solution the tank makes. */
  readonly makes: Quantity<"volume", "none">;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** Below this share of the targets a rest of the equations counts as rounding. */
const guard = 1e-9;

/**
 * The salts to dissolve in a stock tank so that, behind the injector, every target is met: one salt for
 * one nutrient, or several for several.
 *
 * Equation: `sum over the salts of x_j a_ij / 100 = c_i D V`, solved for `x_j`
 *
 * - `x_j` mass of salt `j` in the tank
 * - `a_ij` percent of nutrient `i` in salt `j`
 * - `c_i` target in the final solution, mass per volume (ppm is mg/L); `D` volumes of final solution for one
 *   of stock: `N` for `1:N`, `N + 1` for `1+N`
 * - `V` volume of the stock tank, filled up to that volume
 *
 * Range: as many salts as targets, each salt bringing something that no other combination does. Phosphate
 * and potash targets are oxides unless they are targets of P and K. A negative amount means that the salts
 * cannot meet the targets: it is an error, with the salt that is too much.
 *
 * @param input.targets - concentrations in the final solution, each of another nutrient
 * @throws RatewrightError `infeasible`, `missing`, `duplicate`, `conflict` (other number of salts than of
 *   targets), `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: one salt, "How to mix a concentrate for an injector", greenhouse supply newsletter; the
 * three-salt problem, North Dakota State University, PLSC 210, homework 3, 2010 (no printed key).
 *
 * @example
 * ```ts
 * import { fertilizer, injector, quantity, stockTank } from "ratewright";
 * const recipe = stockTank({
 *   targets: [quantity(200, "mg/L", "N"), quantity(100, "mg/L", "P2O5"), quantity(250, "mg/L", "K2O")],
 *   salts: [
 *     { product: fertilizer({ id: "an", analysis: "33.5-0-0" }) },
 *     { product: fertilizer({ id: "mkp", analysis: "0-53-34" }) },
 *     { product: fertilizer({ id: "kcl", analysis: "0-0-62" }) },
 *   ],
 *   injector: injector("1:200"),
 *   tank: quantity(100, "gal"),
 * });
 * recipe.salts.map(({ amount }) => Number(amount.in("lb").toFixed(2))); // => [99.65, 31.49, 50.03]
 * recipe.makes.in("gal"); // => 20000
 * recipe.notChecked[0]; // => "solubility of an, mkp, kcl: none was stated"
 * ```
 */
export const stockTank = (input: {
  readonly targets: readonly NutrientConcentration[];
  readonly salts: readonly StockSalt[];
  readonly injector: Injector;
  readonly tank: Quantity<"volume", "none">;
}): StockTank => {
  expectFields(input, ["targets", "salts", "injector", "tank"], "input");
  const { setting, tank, targets, salts } = allOf({
    setting: () => checkedInjector(input.injector, "injector"),
    tank: () => expectQuantity(input.tank, { dimension: "volume", of: "none", bound: "positive" }, "tank"),
    targets: () => readTargets(input.targets),
    salts: () => readSalts(input.salts),
  });
  if (salts.length !== targets.length) {
    const text = `as many salts as targets, which is ${targets.length}`;
    fail("conflict", "salts", described(counted(salts.length, "salt")), text);
  }
  const unit = targets[0]?.unit as string;
  const wanted = targets.map((target) => numberIn(target, unit));
  const perSolution = amountsPerSolution(salts, targets, wanted);
  const amounts = salts.map(({ product }, j): StockAmount => {
    const of = `product:${product.id}`;
    const value = (perSolution[j] as number) * setting.dilution;
    const perVolume = new Quantity<"mass/volume", string>(value, unit, of, "mass/volume");
    const amount = expectQuantity(timesOf(perVolume, tank), { dimension: "mass", of }, `salts[${j}]`);
    return { id: product.id, perVolume, amount };
  });
  return {
    type: "stock-tank",
    version: 1,
    salts: amounts,
    solution: solutionOf(salts, targets, perSolution, unit),
    makes: tank.times(setting.dilution),
    ...stockFindings(salts, amounts, setting),
  };
};

const mostSalts = 50;

/** The targets, one for each nutrient. */
const readTargets = (input: unknown): readonly Quantity<"mass/volume", Nutrient>[] => {
  const list = listOf(input, "targets", "concentration", mostSalts);
  const read: Quantity<"mass/volume", Nutrient>[] = [];
  return eachOf(list, "targets", (item) => {
    const { value, unit, of } = expectQuantity(item, { dimension: "mass/volume", bound: "non-negative" }, "");
    if (!isNutrient(of)) return fail("substance/mismatch", "", item, "a concentration of a nutrient");
    const target = new Quantity<"mass/volume", Nutrient>(value, unit, of, "mass/volume");
    const other = read.findIndex((one) => formFactor(one.of, of) !== undefined);
    read.push(target);
    return other < 0
      ? target
      : fail("duplicate", "", target, `one target for the nutrient of targets[${other}]`);
  });
};

/** The salts, each with an id of its own. */
const readSalts = (input: unknown): readonly StockSalt[] => {
  const list = listOf(input, "salts", "salt", mostSalts);
  const ids = new Set<string>();
  return eachOf(list, "salts", (item): StockSalt => {
    const { product, solubility, solubilitySource } = expectFields(
      item,
      ["product", "solubility", "solubilitySource"],
      "",
      "a salt: { product }",
    );
    const read = allOf({
      product: () => {
        const label = expectFertilizer(product as Fertilizer, "product");
        if (ids.has(label.id)) fail("duplicate", "product.id", label.id, "an id of its own");
        ids.add(label.id);
        return label;
      },
      solubility: () =>
        solubility === undefined
          ? {}
          : {
              solubility: expectQuantity(
                solubility,
                { dimension: "mass/volume", of: "none", bound: "positive" },
                "solubility",
              ),
            },
      source: () =>
        solubilitySource === undefined
          ? {}
          : { solubilitySource: expectSource(solubilitySource, "solubilitySource") },
    });
    return { product: read.product, ...read.solubility, ...read.source };
  });
};

/** A concentration of any nutrient, so that a list of several can be written down. */
export type NutrientConcentration = { readonly [S in Nutrient]: Quantity<"mass/volume", S> }[Nutrient];

/** Salt per volume of final solution, in the unit of the targets. */
const amountsPerSolution = (
  salts: readonly StockSalt[],
  targets: readonly Quantity<"mass/volume", Nutrient>[],
  wanted: readonly number[],
): readonly number[] => {
  const percent = targets.map(({ of }) => salts.map(({ product }) => percentOf(product.analysis, of)));
  for (const [i, row] of percent.entries()) {
    if ((wanted[i] as number) > 0 && row.every((share) => share === 0)) {
      const wants = `a salt that states ${targets[i]?.of}, as targets[${i}] asks`;
      fail(
        "infeasible",
        "salts",
        salts
          .map(({ product }) => product.id)
          .join(", ")
          .slice(0, 200),
        wants,
      );
    }
  }
  const { x, free } = solveLinear(
    percent,
    wanted.map((target) => target * 100),
  );
  if (free.length > 0) {
    const j = free[0] as number;
    fail(
      "infeasible",
      `salts[${j}]`,
      salts[j]?.product.id,
      "salts that each supply something the others do not: the targets do not fix this one",
    );
  }
  const most = Math.max(...x.map(Math.abs), 0);
  return x.map((amount, j) => {
    if (amount < -guard * most) {
      fail(
        "infeasible",
        `salts[${j}]`,
        described(`${Number(amount.toPrecision(4))} of ${salts[j]?.product.id}`),
        "targets that these salts can meet without taking one of them out",
      );
    }
    return amount <= guard * most ? 0 : amount;
  });
};

/** What the final solution holds, nutrient by nutrient, in the form of the targets, else of the labels. */
const solutionOf = (
  salts: readonly StockSalt[],
  targets: readonly Quantity<"mass/volume", Nutrient>[],
  perSolution: readonly number[],
  unit: string,
): StockTank["solution"] => {
  const names = new Set([
    ...targets.map(({ of }) => of),
    ...salts.flatMap(({ product }) => Object.keys(product.analysis.percent) as Nutrient[]),
  ]);
  const made: Partial<Record<Nutrient, Quantity<"mass/volume", Nutrient>>> = {};
  const seen: Nutrient[] = [];
  for (const name of names) {
    // P of one label and P2O5 of another are one nutrient: the first form stands.
    if (seen.some((other) => formFactor(other, name) !== undefined)) continue;
    seen.push(name);
    const value = salts.reduce(
      (sum, { product }, j) => sum + ((perSolution[j] as number) * percentOf(product.analysis, name)) / 100,
      0,
    );
    if (value > 0) {
      made[name] = new Quantity<"mass/volume", Nutrient>(value, unit, name, "mass/volume");
    }
  }
  return made;
};
