import {
  checks,
  expectNumber,
  expectRecord,
  type Finding,
  fail,
  type NeutralSubstance,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { expectSameProduct, numberIn } from "../inputs.js";
import { amountAt } from "../rate/amount-for.js";
import { expectRate } from "../rate/rate.js";
import type {
  LoadAmounts,
  LoadProduct,
  ProductAmount,
  ProductLoads,
  ReadableStep,
} from "./load-amount-types.js";
import { loadLimitFindings } from "./load-limits.js";
import { readableShares } from "./readable-shares.js";
import type { TankLoads } from "./tank-loads.js";

/**
 * How much of every product goes into each load: `amount = rate * area that the load is mixed for`, or
 * `rate * volume of the load` for a rate per volume of spray. The last load takes what is left, so that
 * the amounts, added in their order, are the total for the job.
 *
 * With a readable step the amounts are whole multiples of it: the running total is rounded, and a load
 * takes the difference of two running totals. They add up as whole numbers of steps to the rounded
 * total, no load is off by as much as one step, and `residue` shows what rounding added or took.
 *
 * What goes into a load is held against the least of a product (`least`) and its weakest and strongest
 * spray (`concentration`): amount and limit are compared for the volume of that load, as it is measured out.
 *
 * @param input - `loads` from `tankLoads`; `products`, each with `id`, `rate`, `form` and, where its rate
 *   needs one, `density`, and, where they are known, `least` and `concentration`; `readable`, a step for
 *   dry products and one for liquids
 * @throws RatewrightError with the problems of every product: `missing`, `duplicate` (two products with one
 *   id), `substance/mismatch` (a rate of another product than its `id` says), `range` (a step of zero), `infeasible` where even a full tank takes less than the `least` of a product, `conflict` (a
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
 *   sprayRate: quantity(15, "gal/acre", "spray"),
 *   capacity: quantity(30, "gal", "spray"),
 * });
 * const plan = loadAmounts({
 *   loads,
 *   products: [{ id: "a", rate: quantity(3.1, "lb/acre", "product:a"), form: "dry" }],
 *   readable: { dry: { unit: "oz", step: 1 } },
 * });
 * plan.products[0]?.total.toString(); // => "10.85 lb of product:a"
 * plan.products[0]?.loads.map((load) => load.amount.toString()); // => ["99 oz of product:a", "75 oz of product:a"]
 * ```
 */
export const loadAmounts = (input: {
  readonly loads: TankLoads;
  readonly products: readonly LoadProduct[];
  readonly readable?: { readonly dry?: ReadableStep; readonly liquid?: ReadableStep };
}): LoadAmounts => {
  expectFields(input, ["loads", "products", "readable"]);
  const { loads, list, readable } = allOf({
    loads: () => loadsOf(input.loads),
    list: () => expectList(input.products, "products", "product"),
    readable: () => readableOf(input.readable),
  });
  const seen = new Set<string>();
  const measured = allInOrder(list, (product, i) => {
    const at = `products[${i}].`;
    const read = productOf(product, at, seen);
    const { value, findings } = productLoads(read, loads, readable[read.form], at);
    return { value, read, findings: [...findings, ...loadLimitFindings(read, value, loads, at)] };
  });
  return {
    type: "load-amounts",
    version: 1,
    products: measured.map(({ value }) => value),
    findings: [
      ...measured.flatMap(({ findings }) => findings),
      ...loads.loads.flatMap((load, i) =>
        strengthFindings(
          measured.map(({ value, read }, j) => ({
            id: value.id,
            amount: (value.loads[i] as LoadShare).amount,
            perVolume: expectRate(read.rate, `products[${j}].rate`).basis === "spray volume",
            path: `products[${j}].rate`,
          })),
          load.volume,
          `load ${load.number}`,
        ),
      ),
    ],
  };
};

/** Takes what `tankLoads` returns, or what JSON left of it. */
const loadsOf = (input: unknown): TankLoads => {
  const { type, loads, mixedFor, volume } = expectRecord(input, "loads", "what tankLoads returns");
  return type === "tank-loads" && Array.isArray(loads) && loads.length > 0 && mixedFor && volume
    ? (input as TankLoads)
    : fail("type", "loads", input, "what tankLoads returns");
};

/** Takes the id of a product, which no other has and of which its rate is. */
const idOf = (product: LoadProduct, at: string, seen: Set<string>): void => {
  const { id, rate } = expectRecord(product, at.slice(0, -1), "a product") as unknown as LoadProduct;
  if (typeof id !== "string" || id === "") fail("missing", `${at}id`, id, "an id of the product");
  if (seen.has(id)) fail("duplicate", `${at}id`, id, "an id that no other product has");
  seen.add(id);
  expectSameProduct(expectRate(rate, `${at}rate`).product, id, `${at}rate`, rate);
};

const productLoads = (
  product: LoadProduct,
  loads: TankLoads,
  byForm: ReadableStep | undefined,
  at: string,
  findings: Finding[],
): ProductLoads => {
  const amountIn = (area: Quantity<"area", NeutralSubstance>, sprayVolume: Quantity<"volume", "spray">) =>
    amountAt({ ...product, area, sprayVolume }, at);
  const total = amountIn(loads.mixedFor, loads.volume);
  const values: number[] = [];
  let used = 0;
  for (const load of loads.loads.slice(0, -1)) {
    const value = numberIn(amountIn(load.mixedFor, load.volume), total.unit);
    values.push(value);
    used += value;
  }
  values.push(total.value - used);
  const of = (value: number, unit: string): ProductAmount => quantityOf(value, unit, total.of, at) as never;
  const readable = product.readable ?? byForm;
  if (readable === undefined) {
    return {
      id: product.id,
      form: product.form,
      total,
      loads: values.map((value, i) => {
        const amount = of(value, total.unit);
        return { number: i + 1, amount, exact: amount };
      }),
    };
  }
  const where = product.readable === undefined ? `readable.${product.form}` : `${at}readable`;
  expectRecord(readable, where, "a unit and a step");
  const step = expectNumber(readable.step, `${where}.step`, { above: 0 });
  const one = quantityOf(step, readable.unit, total.of, `${where}.unit`);
  if (one.dimension !== total.dimension) {
    fail("unit/mismatch", `${where}.unit`, one, `a unit of ${total.dimension}`);
  }
  const inSteps = (value: number): number => numberIn(of(value, total.unit), readable.unit) / step;
  const shares = readableShares(values.map(inSteps), inSteps(total.value));
  const multiple = (steps: number): ProductAmount =>
    of(Number((steps * step).toPrecision(15)), readable.unit);
  const steps = shares.reduce((sum, share) => sum + share, 0);
  shares.forEach((share, i) => {
    if (share === 0 && (values[i] as number) > 0) {
      findings.push({
        code: "load/step-too-coarse",
        severity: "warning",
        path: where,
        params: { product: product.id, load: i + 1, step, unit: readable.unit },
        text: `Load ${i + 1} gets no ${product.id}: a step of ${step} ${readable.unit} is too coarse for what it needs.`,
      });
    }
  });
  const rounded = multiple(steps);
  return {
    id: product.id,
    form: product.form,
    total,
    readable: {
      unit: readable.unit,
      step,
      steps,
      total: rounded,
      residue: of(rounded.value - numberIn(total, readable.unit), readable.unit),
    },
    loads: shares.map((share, i) => ({
      number: i + 1,
      amount: multiple(share),
      exact: of(values[i] as number, total.unit),
      steps: share,
    })),
  };
};
