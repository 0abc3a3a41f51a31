import { exceeds } from "../../numeric/index.js";
import { allOf, expectFields, type Finding, numberIn, quantityOf } from "../../quantity/index.js";
import { amountText } from "../amount-text.js";
import { amountsAt } from "../rate/amount-for.js";
import { expectRate } from "../rate/rate.js";
import type {
  LoadAmounts,
  LoadProduct,
  LoadShare,
  MeasuringIncrement,
  ProductAmount,
  ProductLoads,
} from "./load-amount-types.js";
import { loadLimitFindings } from "./load-limits.js";
import { strengthFindings } from "./load-strength.js";
import { expectIncrement, readIncrements, readLoadProducts } from "./read-load-products.js";
import { type LoadPlan, readTankLoads } from "./read-tank-loads.js";
import type { TankLoads } from "./tank-loads.js";
import { wholeShares } from "./whole-shares.js";

/**
 * How much of every product goes into each load: `amount = rate * area that the load is mixed for`, or
 * `rate * volume of the load` for a rate per volume of spray. The last load takes what is left, so that
 * the amounts, added in their order, are the total for the job.
 *
 * With a measuring increment the amounts are whole multiples of it: the running total is rounded, and a load
 * takes the difference of two running totals. They add up as whole numbers of steps to the rounded
 * total, no load is off by as much as one step, and `residue` shows what rounding added or took. A load that rounding
 * gives nothing, or a tenth more or less than was computed, is a finding.
 *
 * More liquid product than the load holds, of one or of all together, and more than 1 kg of dry product per liter of
 * spray cannot be: that is an error. More product than water, or more than 0.25 kg of dry product per liter (2 lb per
 * gallon), is a finding that names the likely slip (common practice, no source).
 *
 * What goes into a load is held against the least of a product (`least`) and its weakest and strongest
 * spray (`concentration`): amount and limit are compared for the volume of that load, as it is measured out.
 *
 * @param input - `loads` from `tankLoads`; `products`, each with `id`, `rate`, `form` and, where its rate
 *   needs one, `density`, and, where they are known, `least` and `concentration`; `increments`, the smallest
 *   graduation of the scale for dry products and of the jug for liquids
 * @throws RatewrightError with the problems of every product: `missing`, `duplicate` (two products with one
 *   id), `substance/mismatch` (a rate of another product than its `id` says), `range` (a step of zero), `infeasible` where even a full tank takes less than the `least` of a product, or a load would have to hold more product than it does, `conflict` (a
 *   concentration with `min` above `max`), and what `amountFor` throws, with paths such as `products[1].rate`
 *
 * Source: Agrochemical and Pesticide Safety handbook, p. 128, examples 4 and 5 (product = rate x area
 * left); Pesticide safety education module 17 (part of a 100 gal recipe). The strongest spray of a label
 * also holds at a reduced volume: position of the UK regulator CRD.
 *
 * @example
 * ```ts
 * import { loadAmounts, quantity, tankLoads } from "ratewright";
 * const loads = tankLoads({
 *   area: quantity(3.5, "acre"),
 *   applicationVolume: quantity(15, "gal/acre", "spray"),
 *   capacity: quantity(30, "gal", "spray"),
 * });
 * const plan = loadAmounts({
 *   loads,
 *   products: [{ id: "a", rate: quantity(3.1, "lb/acre", "product:a"), form: "dry" }],
 *   increments: { dry: { unit: "oz", step: 1 } },
 * });
 * plan.products[0]?.total.toString(); // => "10.85 lb of product:a"
 * plan.products[0]?.loads.map((load) => load.amount.toString()); // => ["99 oz of product:a", "75 oz of product:a"]
 * ```
 */
export const loadAmounts = (input: {
  readonly loads: TankLoads;
  readonly products: readonly LoadProduct[];
  readonly increments?: { readonly dry?: MeasuringIncrement; readonly liquid?: MeasuringIncrement };
}): LoadAmounts => {
  expectFields(input, ["loads", "products", "increments"]);
  const { loads, products, increments } = allOf({
    loads: () => readTankLoads(input.loads, "loads"),
    products: () => readLoadProducts(input.products),
    increments: () => readIncrements(input.increments),
  });
  const shared = products.map((product, i) => {
    const at = `products[${i}]`;
    const byForm = increments[product.form];
    const { value, findings } = productLoads(product, loads, byForm, at);
    const limits = loadLimitFindings(product, value, loads, `${at}.`);
    const path = `${at}.rate`;
    const { basis, rate } = expectRate(product.rate, path);
    const told = { perVolume: basis === "spray volume", rateUnit: rate.unit };
    return { value, name: product.name ?? product.id, path, ...told, findings: [...findings, ...limits] };
  });
  const strength = loads.loads.flatMap(({ number, volume }, i) =>
    strengthFindings(
      shared.map(({ value, name, perVolume, rateUnit, path }) => ({
        id: value.id,
        name,
        amount: (value.loads[i] as LoadShare).amount,
        exact: (value.loads[i] as LoadShare).exact,
        perVolume,
        rateUnit,
        path,
      })),
      volume,
      `Load ${number}`,
    ),
  );
  return {
    type: "load-amounts",
    version: 1,
    products: shared.map(({ value }) => value),
    findings: [...shared.flatMap(({ findings }) => findings), ...strength],
  };
};

/** What every load takes of a product, computed: the last takes what is left, so that they add up to the total. */
const exactLoads = (
  product: LoadProduct,
  loads: LoadPlan,
  at: string,
): { readonly total: ProductAmount; readonly values: readonly number[] } => {
  const amountIn = amountsAt(product, `${at}.`);
  const total = amountIn(loads.mixedFor, loads.volume);
  const values = loads.loads
    .slice(0, -1)
    .map(({ mixedFor, volume }) => numberIn(amountIn(mixedFor, volume), total.unit));
  return { total, values: [...values, values.reduce((left, value) => left - value, total.value)] };
};

const productLoads = (
  product: LoadProduct,
  loads: LoadPlan,
  byForm: MeasuringIncrement | undefined,
  at: string,
): { readonly value: ProductLoads; readonly findings: readonly Finding[] } => {
  const { id, form } = product;
  const { total, values } = exactLoads(product, loads, at);
  const of = (value: number, unit: string): ProductAmount =>
    quantityOf(value, unit, total.of, at) as ProductAmount;
  const increment = product.increment ?? byForm;
  if (increment === undefined) {
    const shares = values.map((value, i) => {
      const amount = of(value, total.unit);
      return { number: i + 1, amount, exact: amount };
    });
    return { value: { id, form, total, loads: shares }, findings: [] };
  }
  const where = product.increment === undefined ? `increments.${form}` : `${at}.increment`;
  const { unit, step } = expectIncrement(increment, total, where);
  const inSteps = (value: number): number => numberIn(of(value, total.unit), unit) / step;
  const shares = wholeShares(values.map(inSteps), inSteps(total.value));
  const multiple = (count: number): ProductAmount => {
    const value = count * step;
    return of(Number.isSafeInteger(value) ? value : Number(value.toPrecision(15)), unit);
  };
  const steps = shares.reduce((sum, share) => sum + share, 0);
  const rounded = multiple(steps);
  return {
    value: {
      id,
      form,
      total,
      measured: {
        unit,
        step,
        steps,
        total: rounded,
        residue: of(rounded.value - numberIn(total, unit), unit),
      },
      loads: shares.map((share, i) => ({
        number: i + 1,
        amount: multiple(share),
        exact: of(values[i] as number, total.unit),
        steps: share,
      })),
    },
    findings: shares.flatMap((share, i) =>
      coarseness({
        id,
        name: product.name ?? id,
        load: i + 1,
        share,
        exact: inSteps(values[i] as number),
        increment: { unit, step },
        path: where,
      }),
    ),
  };
};

/** Beyond this share of what was computed, rounding to the marks of a jug or a scale is told: common practice, no source. */
const mostRounding = 0.1;

/** A measuring increment that is too coarse for a load: it gives it nothing, or far more or less than was computed. */
const coarseness = (found: {
  readonly id: string;
  readonly name: string;
  readonly load: number;
  /** What it gets, and what was computed, in steps. */
  readonly share: number;
  readonly exact: number;
  readonly increment: MeasuringIncrement;
  readonly path: string;
}): readonly Finding[] => {
  const { id, name, load, share, exact, increment, path } = found;
  const { unit, step } = increment;
  const off = exact > 0 ? (share - exact) / exact : 0;
  if (!exceeds(Math.abs(off), mostRounding)) return [];
  const measure = `a measuring increment of ${amountText({ value: step, unit })} is too coarse for what it needs`;
  const text =
    share === 0
      ? `Load ${load} gets no ${name}: ${measure}.`
      : `Load ${load} gets ${amountText({ value: share * step, unit }, 4)} of ${name} where ${amountText({ value: exact * step, unit }, 3)} is computed, ${Number((100 * Math.abs(off)).toPrecision(2))} % ${off > 0 ? "more" : "less"}: ${measure}.`;
  return [
    {
      code: "load/step-too-coarse",
      severity: "warning",
      path,
      params: { product: id, load, step, unit, percent: 100 * off },
      text,
      ...(share > 0 && { source: "common practice, no source" }),
    },
  ];
};
