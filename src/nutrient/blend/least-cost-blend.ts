import {
  checks,
  expectQuantity,
  expectRecord,
  fail,
  Quantity,
  quantityOf,
  RatewrightError,
} from "../../quantity/index.js";
import { checkMaterials } from "../label/materials.js";
import { type NutrientsSupplied, nutrientsSupplied } from "../rate/nutrients-supplied.js";
import { sumOfSupplies } from "../rate/sum-of-supplies.js";
import type { LeastCostBlendInput } from "./blend-input.js";
import { type LimitRow, limitRows, nitrogenColumns } from "./blend-limits.js";
import { enteringPrice } from "./entering-price.js";
import { type LinearAnswer, type LinearProgram, loadSolver } from "./linear-program.js";
import { missedLimits } from "./missed-limits.js";
import { type ReadProblem, type Solve, shadowPrices } from "./shadow-prices.js";

/** A material in the cheapest batch. */
export interface LeastCostPart<C extends string> {
  readonly product: string;
  readonly amount: Quantity<"mass", `product:${string}`>;
  readonly cost: Quantity<`money:${C}`, "none">;
  /**
   * Of a material that is left out: the price below which it would come in. Missing where the limits keep it
   * out, or it would not be taken for nothing.
   */
  readonly entersBelow?: Quantity<`money:${C}/mass`, "none">;
}

/** One limit at the cheapest batch. */
export interface BlendLimitStanding<C extends string> {
  /** What is limited and on which side: `"N least"`, `"slow share least"`, `"urea most"`. */
  readonly id: string;
  readonly path: string;
  readonly bound: Quantity<string, string>;
  /** What the batch has; missing for a slow share of a batch without nitrogen, which has none. */
  readonly at?: Quantity<string, string>;
  readonly binds: boolean;
  /** What the whole batch would cost less for one step of relaxing; zero where the limit does not bind. */
  readonly shadowPrice: Quantity<`money:${C}`, "none">;
  /** The step, in words: `"1 % N of the batch"`. */
  readonly per: string;
  /**
   * `"exact"` where the price holds for a small step; `"stepwise"` where several limits meet at one point, so
   * that the price was found by relaxing this limit alone by a thousandth.
   */
  readonly priced: "exact" | "stepwise";
}

/** What {@link leastCostBlend} gives. */
export interface LeastCostBlend<C extends string> {
  readonly parts: readonly LeastCostPart<C>[];
  readonly filler: Quantity<"mass", "other:filler">;
  readonly cost: Quantity<`money:${C}`, "none">;
  readonly limits: readonly BlendLimitStanding<C>[];
  readonly supplied: NutrientsSupplied<"mass">;
}

/**
 * The cheapest batch of materials, and filler where it has a price, that keeps to limits on nutrients, slow
 * share, salt index and acidity; with the limits that bind and what relaxing each would save.
 *
 * Equation: minimize `sum of p_i m_i` subject to `sum of m_i = W`, `l_j W <= sum of a_ij m_i <= u_j W`,
 * `sum of (s_i - s n_i) m_i >= 0`, `sum of z_i m_i <= z W`, `sum of c_i m_i <= c W`, `0 <= m_i <= stock`
 *
 * - `m_i` weight of a material, `p_i` its price; `W` weight of the batch
 * - `a_ij` percent of a nutrient, between `l_j` and `u_j` in the batch
 * - `n_i`, `s_i` total and slow nitrogen, percent of product; `s` least slow share of the nitrogen
 * - `z_i` salt index by weight, at most `z`; `c_i` potential acidity, at most `c`. Filler counts 0 for both.
 *
 * The shadow price of a limit is what one step of relaxing saves on the batch, for a small step: at a wider
 * one other materials come in. It is checked by relaxing each binding limit a little and solving again.
 *
 * Range: two or more materials in practice; weights and prices of zero or more. A salt index by weight adds up
 * by weight; an index per unit does not, and is refused.
 *
 * Needs the package `highs` (a linear-programming solver in WebAssembly) beside this library. It is loaded
 * at the first call; nothing else here loads it.
 *
 * @throws RatewrightError (as a rejection) `infeasible` with one problem for each limit that is missed in
 *   the batch that comes nearest, and by how much; `missing` where a limited property is not stated for a material;
 *   `conflict`, `duplicate`, `range`, `unit/mismatch`, `substance/mismatch`; `missing` with the path `highs`
 *   where that package is not installed
 *
 * Source: linear programming; the tests solve the same problems with another solver.
 *
 * @example
 * ```ts
 * import { fertilizer, money, quantity } from "ratewright";
 * import { leastCostBlend } from "ratewright/nutrient/blend";
 * const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));
 * const blend = await leastCostBlend({
 *   batch: quantity(2000, "lb"),
 *   materials: [
 *     { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460) },
 *     { product: fertilizer({ id: "sulfate", analysis: "21-0-0-24S" }), price: perTon(300) },
 *     { product: fertilizer({ id: "potash", analysis: "0-0-60" }), price: perTon(480) },
 *   ],
 *   filler: perTon(40),
 *   limits: {
 *     nutrients: [
 *       { least: quantity(23, "% w/w", "N/product") },
 *       { least: quantity(12, "% w/w", "K2O/product") },
 *     ],
 *   },
 * });
 * blend.parts.map(({ product, amount }) => [product, Number(amount.in("lb").toFixed(3))]);
 * // => [["urea", 1000], ["sulfate", 0], ["potash", 400]]
 * Number(blend.cost.in("money:USD").toFixed(6)); // => 338
 * Number(blend.limits[0]?.shadowPrice.in("money:USD").toFixed(4)); // => 9.1304
 * ```
 */
export const leastCostBlend = async <const C extends string>(
  input: LeastCostBlendInput<C>,
): Promise<LeastCostBlend<C>> => {
  const problem = readProblem(input as LeastCostBlendInput<string>);
  const solve = await loadSolver();
  const answer = solve(problem.program);
  if (answer === undefined) throw new RatewrightError(missedLimits(problem.program, problem.rows, solve));
  return describe(problem, answer, solve) as LeastCostBlend<C>;
};

const readProblem = (input: LeastCostBlendInput<string>): ReadProblem => {
  expectRecord(input, "input");
  const door = checks();
  const batch = door.run(() =>
    expectQuantity(input.batch, { dimension: "mass", of: "none", bound: "positive" }, "batch"),
  );
  const readable = door.run(() => {
    checkMaterials(input.materials?.map?.((material) => material?.product));
    return true;
  });
  const limited = typeof input.limits === "object" && input.limits !== null;
  if (!limited) door.run(() => fail("missing", "limits", input.limits, "limits, at least on one nutrient"));
  if (!readable) door.done();
  // Prices and stocks are read beside a batch that is not, to tell their problems too.
  const { unit, value } = batch ?? { unit: "kg", value: Number.POSITIVE_INFINITY };
  const rows = (limited && door.run(() => limitRows(input))) || [];
  if (door.count() === 0 && rows.length === 0) {
    door.run(() => fail("missing", "limits", "no limit", "a limit, at least on one nutrient"));
  }
  let currency = "";
  const priceOf = (price: unknown, path: string): number => {
    const tag = /^(money:[A-Z]{3})\//.exec(String((price as { unit?: unknown })?.unit))?.[1];
    if (tag === undefined) return fail("unit/mismatch", path, price, "a price per weight");
    currency ||= tag;
    const expected = { dimension: `${currency}/mass`, of: "none", bound: "non-negative" } as const;
    return expectQuantity(price, expected, path).in(`${currency}/${unit}` as never);
  };
  const weigh = (q: unknown, path: string): number =>
    expectQuantity(q, { dimension: "mass", of: "none", bound: "non-negative" }, path).in(unit as never) /
    value;
  const prices = input.materials.map(
    ({ price }, i) => door.run(() => priceOf(price, `materials[${i}].price`)) ?? 0,
  );
  const lower = input.materials.map(({ least }, i) =>
    least === undefined ? 0 : (door.run(() => weigh(least, `materials[${i}].least`)) ?? 0),
  );
  const upper = input.materials.map(({ most }, i) =>
    most === undefined ? 1 : Math.min(1, door.run(() => weigh(most, `materials[${i}].most`)) ?? 1),
  );
  lower.forEach((low, i) => {
    const high = upper[i] as number;
    if (low > high) {
      const path = `materials[${i}].least`;
      door.run(() =>
        fail("conflict", path, input.materials[i]?.least, "at most the batch, and the most of this material"),
      );
    }
  });
  if (input.filler !== undefined) {
    prices.push(door.run(() => priceOf(input.filler, "filler")) ?? 0);
    lower.push(0);
    upper.push(1);
  }
  const [fewest, most] = [lower, upper].map((list) => list.reduce((sum, share) => sum + share, 0)) as [
    number,
    number,
  ];
  const amount = (share: number): string => `${Number((share * value).toPrecision(6))} ${unit}`;
  if (door.count() === 0 && fewest > 1 + 1e-9) {
    door.run(() =>
      fail("infeasible", "materials", amount(fewest), `least amounts that fit into ${amount(1)}`),
    );
  }
  if (door.count() === 0 && most < 1 - 1e-9) {
    door.run(() => fail("infeasible", "materials", amount(most), `materials for ${amount(1)}, or filler`));
  }
  door.done();
  const scale = Math.max(...prices) || 1;
  const program: LinearProgram = {
    cost: prices.map((price) => price / scale),
    lower,
    upper,
    rows: [
      { coefficients: prices.map(() => 1), lower: 1, upper: 1 },
      ...rows.map(({ coefficients, side, bound }) => ({
        coefficients,
        lower: side === "least" ? bound : Number.NEGATIVE_INFINITY,
        upper: side === "most" ? bound : Number.POSITIVE_INFINITY,
      })),
    ],
  };
  return { input, batch: batch as Quantity<"mass", "none">, rows, program, prices, scale, currency };
};

const describe = (problem: ReadProblem, answer: LinearAnswer, solve: Solve): LeastCostBlend<string> => {
  const { input, batch, rows, program, prices, scale, currency } = problem;
  const { unit, value } = batch;
  // The solver keeps to its bounds to 1e-10.
  const shares = answer.x.map((share) => (share < 1e-10 ? 0 : share));
  const money = (amount: number): Quantity<`money:${string}`, "none"> =>
    new Quantity(amount, currency, "none", currency as `money:${string}`);
  const perMass = (amount: number): Quantity<`money:${string}/mass`, "none"> =>
    new Quantity(amount, `${currency}/${unit}`, "none", `${currency}/mass` as `money:${string}/mass`);
  const parts = input.materials.map(({ product }, i): LeastCostPart<string> => {
    const share = shares[i] as number;
    const out = share === 0 && (program.upper[i] as number) > 0;
    const entering = out ? enteringPrice(program, i, answer, solve) : undefined;
    return {
      product: product.id,
      amount: new Quantity(share * value, unit, `product:${product.id}` as const, "mass"),
      cost: money(share * value * (prices[i] as number)),
      ...(entering === undefined ? {} : { entersBelow: perMass(entering * scale) }),
    };
  });
  const filler = input.filler === undefined ? 0 : (shares[input.materials.length] as number);
  const total = shares.reduce((sum, share, i) => sum + share * (prices[i] as number), 0) * value;
  const price = shadowPrices(problem, shares, answer, solve);
  const stocks = input.materials.flatMap(({ product, least, most }, i) =>
    (["least", "most"] as const).flatMap((side): BlendLimitStanding<string>[] => {
      const given = side === "least" ? least : most;
      if (given === undefined) return [];
      const path = `materials[${i}].${side}`;
      const stated = quantityOf(given.value, given.unit, "none", path);
      // Stock beyond the batch does not bind.
      const bound = stated.in(unit as never) / value;
      const binds = Math.abs((shares[i] as number) - bound) <= 1e-9;
      const found = price.ofColumn(i, side, binds);
      return [
        {
          id: `${product.id} ${side}`,
          path,
          bound: stated,
          at: new Quantity((shares[i] as number) * value, unit, "none" as string, "mass" as string),
          binds,
          shadowPrice: money(found.price),
          per: `1 ${unit} of ${product.id}`,
          priced: found.priced,
        },
      ];
    }),
  );
  const standings = rows.map((row, r): BlendLimitStanding<string> => {
    const at = shownAt(row, shares, nitrogenColumns(input.materials, input.filler !== undefined));
    const { unit: shownUnit, of, bound } = row.shown;
    const dimension = row.kind === "salt index" ? "1" : "mass/mass";
    const met = row.coefficients.reduce((sum, each, i) => sum + each * (shares[i] as number), 0);
    const binds = at !== undefined && Math.abs(met - row.bound) <= 1e-8 * Math.max(1, Math.abs(row.bound));
    const found = price.ofRow(r, binds);
    return {
      id: row.id,
      path: row.path,
      bound: new Quantity(bound, shownUnit, of, dimension as string),
      ...(at === undefined ? {} : { at: new Quantity(at, shownUnit, of, dimension as string) }),
      binds,
      shadowPrice: money(found.price),
      per: row.per,
      priced: found.priced,
    };
  });
  return {
    parts,
    filler: new Quantity(filler * value, unit, "other:filler", "mass"),
    cost: money(total),
    limits: [...standings, ...stocks],
    supplied: sumOfSupplies(
      parts.map(({ amount }, i) =>
        nutrientsSupplied(amount, (input.materials[i] as never as { product: never }).product),
      ),
    ) as NutrientsSupplied<"mass">,
  };
};

/** What a batch has of what a limit limits, in the unit in which the limit is shown: no slow share without nitrogen. */
const shownAt = (
  row: LimitRow,
  shares: readonly number[],
  nitrogen: readonly number[],
): number | undefined => {
  const met = row.coefficients.reduce((sum, each, i) => sum + each * (shares[i] as number), 0);
  if (row.kind !== "slow share") return met;
  const total = nitrogen.reduce((sum, each, i) => sum + each * (shares[i] as number), 0);
  // The row holds slow nitrogen less the wanted share of the total.
  return total > 0 ? row.shown.bound + (met * 100) / total : undefined;
};
