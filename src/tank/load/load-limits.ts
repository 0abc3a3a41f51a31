import { exceeds } from "../../numeric/index.js";
import {
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";

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

const digits = (value: number): number => Number(value.toPrecision(4));

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
  const inTank = amountAt({ ...product, area: loads.areaPerTank, sprayVolume: loads.capacity }, at);
  const most = numberIn(inTank, total.unit);
  if (exceeds(floor, most)) {
    fail(
      "infeasible",
      path,
      least,
      `a tank that takes as much: at this rate a full one takes ${digits(most)} ${total.unit}`,
    );
  }
  // Loads of one size would each take so much; where the least is more, no way to share it out helps.
  const shared = numberIn(total, total.unit) / loads.count;
  const advice = loads.split !== "even" && !exceeds(floor, shared) ? " Even loads would share it out." : "";
  return measured.loads.flatMap((load): readonly Finding[] => {
    const amount = numberIn(load.amount, total.unit);
    if (!exceeds(floor, amount)) return [];
    return [
      {
        code: "load/below-least",
        severity: "warning",
        path,
        params: { product: product.id, load: load.number, amount, least: floor, unit: total.unit },
        text: `Load ${load.number} takes ${digits(amount)} ${total.unit} of ${product.id}, less than the least that can go in (${digits(floor)} ${total.unit}).${advice}`,
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
  expectRecord(rule, path, "the weakest or the strongest spray, and who says so");
  if (typeof rule.source !== "string" || rule.source === "") {
    fail("missing", `${path}.source`, rule.source, "who says so");
  }
  const { total } = measured;
  const min = limitAt(rule.min, total.of, `${path}.min`);
  const max = limitAt(rule.max, total.of, `${path}.max`);
  if (min === undefined && max === undefined) fail("missing", path, undefined, "min, max or both");
  const limitFor = (rate: RateOf | undefined, volume: Quantity<"volume", "spray">): number | undefined =>
    rate === undefined
      ? undefined
      : numberIn(amountAt({ ...product, rate, sprayVolume: volume }, at), total.unit);
  const findings: Finding[] = [];
  loads.loads.forEach((load, i) => {
    const share = measured.loads[i];
    if (share === undefined) return;
    const amount = numberIn(share.amount, total.unit);
    const [low, high] = [limitFor(min, load.volume), limitFor(max, load.volume)];
    if (low !== undefined && high !== undefined && exceeds(low, high)) {
      fail("conflict", `${path}.max`, rule.max, "min or more");
    }
    const passed =
      high !== undefined && exceeds(amount, high)
        ? ({ code: "load/concentration-above-maximum", limit: high, word: "above the strongest" } as const)
        : low !== undefined && exceeds(low, amount)
          ? ({ code: "load/concentration-below-minimum", limit: low, word: "below the weakest" } as const)
          : undefined;
    if (passed === undefined) return;
    findings.push({
      code: passed.code,
      severity: "warning",
      path,
      params: { product: product.id, load: load.number, amount, limit: passed.limit, unit: total.unit },
      text: `Load ${load.number} has ${digits(amount)} ${total.unit} of ${product.id}, ${passed.word} spray that is stated: ${digits(passed.limit)} ${total.unit} in this volume.`,
      source: rule.source,
    });
  });
  return findings;
};
