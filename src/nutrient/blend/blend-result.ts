import { numberIn, Quantity } from "../../quantity/index.js";
import { type NutrientsSupplied, nutrientsSupplied } from "../rate/nutrients-supplied.js";
import { sumOfSupplies } from "../rate/sum-of-supplies.js";
import { type LimitRow, nitrogenColumns } from "./blend-limits.js";
import { enteringPrice } from "./entering-price.js";
import type { LinearAnswer } from "./linear-program.js";
import type { ReadProblem } from "./read-blend.js";
import { type ShadowPrices, type Solve, shadowPrices } from "./shadow-prices.js";

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
  readonly type: "least-cost-blend";
  readonly version: 1;
  readonly parts: readonly LeastCostPart<C>[];
  readonly filler: Quantity<"mass", "other:filler">;
  readonly cost: Quantity<`money:${C}`, "none">;
  readonly limits: readonly BlendLimitStanding<C>[];
  readonly supplied: NutrientsSupplied<"mass">;
}

/** Money, as a quantity. */
const money = (amount: number, currency: string): Quantity<`money:${string}`, "none"> =>
  new Quantity(amount, currency, "none", currency as `money:${string}`);

/** The cheapest batch as a record. */
export const blendOf = (problem: ReadProblem, answer: LinearAnswer, solve: Solve): LeastCostBlend<string> => {
  const { materials, batch, prices, currency } = problem;
  // The solver keeps to its bounds to 1e-10.
  const shares = answer.x.map((share) => (share < 1e-10 ? 0 : share));
  const total = shares.reduce((sum, share, i) => sum + share * (prices[i] as number), 0) * batch.value;
  const price = shadowPrices(problem, shares, answer, solve);
  const parts = partsOf(problem, shares, answer, solve);
  const filler = problem.filler ? (shares[materials.length] as number) : 0;
  return {
    type: "least-cost-blend",
    version: 1,
    parts,
    filler: new Quantity(filler * batch.value, batch.unit, "other:filler", "mass"),
    cost: money(total, currency),
    limits: [...limitStandings(problem, shares, price), ...stockStandings(problem, shares, price)],
    supplied: sumOfSupplies(
      materials.map(({ product }, i) => nutrientsSupplied(partOf(problem, shares, i), product)),
    ),
  };
};

const partOf = (
  { materials, batch }: ReadProblem,
  shares: readonly number[],
  i: number,
): Quantity<"mass", `product:${string}`> =>
  new Quantity(
    (shares[i] as number) * batch.value,
    batch.unit,
    `product:${materials[i]?.product.id as string}` as const,
    "mass",
  );

const partsOf = (
  problem: ReadProblem,
  shares: readonly number[],
  answer: LinearAnswer,
  solve: Solve,
): readonly LeastCostPart<string>[] => {
  const { materials, batch, program, prices, scale, currency } = problem;
  return materials.map(({ product }, i): LeastCostPart<string> => {
    const out = shares[i] === 0 && (program.upper[i] as number) > 0;
    const entering = out ? enteringPrice(program, i, answer, solve) : undefined;
    const per = `${currency}/mass` as `money:${string}/mass`;
    return {
      product: product.id,
      amount: partOf(problem, shares, i),
      cost: money((shares[i] as number) * batch.value * (prices[i] as number), currency),
      ...(entering === undefined
        ? {}
        : { entersBelow: new Quantity(entering * scale, `${currency}/${batch.unit}`, "none", per) }),
    };
  });
};

/** How the batch stands to the least and the most of each material. */
const stockStandings = (
  { materials, batch, currency }: ReadProblem,
  shares: readonly number[],
  price: ShadowPrices,
): readonly BlendLimitStanding<string>[] =>
  materials.flatMap(({ product, least, most }, i) =>
    (["least", "most"] as const).flatMap((side): BlendLimitStanding<string>[] => {
      const given = side === "least" ? least : most;
      if (given === undefined) return [];
      const path = `materials[${i}].${side}`;
      // Stock beyond the batch does not bind.
      const bound = numberIn(given, batch.unit) / batch.value;
      const binds = Math.abs((shares[i] as number) - bound) <= 1e-9;
      const found = price.ofColumn(i, side, binds);
      return [
        {
          id: `${product.id} ${side}`,
          path,
          bound: new Quantity<string, string>(given.value, given.unit, "none", "mass"),
          at: new Quantity<string, string>((shares[i] as number) * batch.value, batch.unit, "none", "mass"),
          binds,
          shadowPrice: money(found.price, currency),
          per: `1 ${batch.unit} of ${product.id}`,
          priced: found.priced,
        },
      ];
    }),
  );

/** How the batch stands to each limit. */
const limitStandings = (
  { rows, materials, filler, currency }: ReadProblem,
  shares: readonly number[],
  price: ShadowPrices,
): readonly BlendLimitStanding<string>[] =>
  rows.map((row, r): BlendLimitStanding<string> => {
    const at = shownAt(row, shares, nitrogenColumns(materials, filler));
    const { unit, of, bound } = row.shown;
    const dimension = row.kind === "salt index" ? "1" : "mass/mass";
    const met = row.coefficients.reduce((sum, each, i) => sum + each * (shares[i] as number), 0);
    const binds = at !== undefined && Math.abs(met - row.bound) <= 1e-8 * Math.max(1, Math.abs(row.bound));
    const found = price.ofRow(r, binds);
    return {
      id: row.id,
      path: row.path,
      bound: new Quantity<string, string>(bound, unit, of, dimension),
      ...(at === undefined ? {} : { at: new Quantity<string, string>(at, unit, of, dimension) }),
      binds,
      shadowPrice: money(found.price, currency),
      per: row.per,
      priced: found.priced,
    };
  });

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
