import { figuresApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { expectQuantity, type Finding, fail, numberIn, type Quantity } from "../../quantity/index.js";

import { amountText } from "../amount-text.js";
import { amountAt } from "../rate/amount-for.js";
import { expectRate, type RateOf } from "../rate/rate.js";
import type { LoadProduct, ProductLoads } from "./load-amount-types.js";
import type { LoadPlan } from "./read-tank-loads.js";

/** A limit per volume of spray, checked: of this product, per volume. */
const limitAt = (rate: RateOf | undefined, of: string, path: string): RateOf | undefined => {
  if (rate === undefined) return undefined;
  const { basis, product, rate: read } = expectRate(rate, path);
  if (basis === "area") fail("unit/mismatch", path, read, "a concentration: product per volume of spray");
  if (product !== of) fail("substance/mismatch", path, read, `a concentration of ${of}`);
  return rate;
};

/** An amount in words, in as many figures as it takes to read apart from another one. */
const tellIn =
  (unit: string) =>
  (value: number, other: number): string =>
    amountText({ value, unit }, figuresApart(value, other, 4));

/** What goes into the loads of a job, held against the least of a product and its weakest and strongest spray. */
export const loadLimitFindings = (
  product: LoadProduct,
  measured: ProductLoads,
  loads: LoadPlan,
  at: string,
): readonly Finding[] => [
  ...leastFindings(product, measured, loads, at),
  ...concentrationFindings(product, measured, loads, at),
];

const leastFindings = (
  product: LoadProduct,
  measured: ProductLoads,
  loads: LoadPlan,
  at: string,
): readonly Finding[] => {
  if (product.least === undefined) return [];
  const { total } = measured;
  const path = `${at}least`;
  const given = { of: total.of, ...product.least };
  const least = expectQuantity(given, { dimension: total.dimension, of: total.of, bound: "positive" }, path);
  const floor = numberIn(least, total.unit);
  const told = tellIn(total.unit);
  const inTank = amountAt({ ...product, area: loads.areaPerTank, sprayVolume: loads.capacity }, at);
  const most = numberIn(inTank, total.unit);
  if (exceeds(floor, most)) {
    fail(
      "infeasible",
      path,
      least,
      `no more than a full tank takes at this rate, ${amountText({ value: most, unit: total.unit }, 4)}`,
    );
  }
  // Loads of one size would each take so much; where the least is more, no way to share it out helps.
  const shared = numberIn(total, total.unit) / loads.count;
  const advice = loads.loadSplit !== "even" && !exceeds(floor, shared) ? " Use even loads." : "";
  return measured.loads.flatMap((load): readonly Finding[] => {
    const amount = numberIn(load.amount, total.unit);
    if (!exceeds(floor, amount)) return [];
    return [
      {
        code: "load/below-least",
        severity: "warning",
        path,
        params: { product: product.id, load: load.number, amount, least: floor, unit: total.unit },
        text: `Load ${load.number} takes ${told(amount, floor)} of ${product.name ?? product.id}, less than the minimum (${told(floor, amount)}).${advice}`,
      },
    ];
  });
};

const concentrationFindings = (
  product: LoadProduct,
  measured: ProductLoads,
  loads: LoadPlan,
  at: string,
): readonly Finding[] => {
  const rule = product.concentration;
  if (rule === undefined) return [];
  const path = `${at}concentration`;
  const { total } = measured;
  const told = tellIn(total.unit);
  const min = limitAt(rule.min, total.of, `${path}.min`);
  const max = limitAt(rule.max, total.of, `${path}.max`);
  const limitFor = (rate: RateOf | undefined, volume: Quantity<"volume", "spray">): number | undefined =>
    rate === undefined
      ? undefined
      : numberIn(amountAt({ ...product, rate, sprayVolume: volume }, at), total.unit);
  return loads.loads.flatMap((load, i): readonly Finding[] => {
    const share = measured.loads[i];
    if (share === undefined) return [];
    const amount = numberIn(share.amount, total.unit);
    const [low, high] = [limitFor(min, load.volume), limitFor(max, load.volume)];
    if (low !== undefined && high !== undefined && exceeds(low, high)) {
      fail("conflict", `${path}.max`, rule.max, "min or more");
    }
    const passed =
      high !== undefined && exceeds(amount, high)
        ? ({
            code: "load/concentration-above-maximum",
            limit: high,
            word: "stronger than the highest",
          } as const)
        : low !== undefined && exceeds(low, amount)
          ? ({
              code: "load/concentration-below-minimum",
              limit: low,
              word: "weaker than the lowest",
            } as const)
          : undefined;
    if (passed === undefined) return [];
    return [
      {
        code: passed.code,
        severity: "warning",
        path,
        params: { product: product.id, load: load.number, amount, limit: passed.limit, unit: total.unit },
        text: `Load ${load.number} has ${told(amount, passed.limit)} of ${product.name ?? product.id}, ${passed.word} stated concentration (${told(passed.limit, amount)} in this volume).`,
        source: rule.source,
      },
    ];
  });
};
