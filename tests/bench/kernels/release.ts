// The release kernels beside loops written by hand that do the same checks.
import {
  accumulateEquivalentDaysC,
  type ReleaseCurve,
  releasedShares,
  type TemperatureResponse,
} from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const days = 14_610;
const minC = Float64Array.from({ length: days }, (_, i) => 10 * Math.sin(i / 58) + 5);
const maxC = minC.map((t) => t + 10);
const out = new Float64Array(days);
const shares = new Float64Array(days);
const one = (x: number) => ({ low: x, high: x });
const response: TemperatureResponse = { kind: "Arrhenius", activationEnergy: one(80), referenceC: 25 };
const curve: ReleaseCurve = { kind: "first order", ratePerDay: one(0.02) };
const cosines = [1, 3, 5, 7].map((odd) => Math.cos((odd * Math.PI) / 8));

const daysByHand = (): void => {
  const c = 80_000 / 8.314462618;
  let total = 0;
  for (let i = 0; i < days; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    if (!(low >= -60 && high <= 100 && low <= high)) throw new Error(`day ${i}`);
    let sum = 0;
    for (const point of cosines) {
      const t = (high + low) / 2 + ((high - low) / 2) * point;
      sum += Math.exp(c * (1 / 298.15 - 1 / (t + 273.15)));
    }
    total += sum / 4;
    out[i] = total;
  }
};
const sharesByHand = (): void => {
  for (let i = 0; i < days; i++) {
    const t = out[i] as number;
    if (!(t >= 0 && t < Number.POSITIVE_INFINITY)) throw new Error(`day ${i}`);
    shares[i] = -Math.expm1(-0.02 * t);
  }
};

/** The release kernels. */
export const releaseRows: readonly KernelRow[] = [
  {
    name: "accumulateEquivalentDaysC, Arrhenius",
    of: "day",
    items: days,
    hand: daysByHand,
    own: () => accumulateEquivalentDaysC(maxC, minC, response, "mid", out),
    results: [
      daysByHand,
      () => {
        accumulateEquivalentDaysC(maxC, minC, response, "mid", out);
      },
    ].map((run) => () => {
      run();
      return out[days - 1] as number;
    }),
  },
  {
    name: "releasedShares, first order",
    of: "day",
    items: days,
    hand: sharesByHand,
    own: () => releasedShares(out, curve, "mid", shares),
    results: [
      sharesByHand,
      () => {
        releasedShares(out, curve, "mid", shares);
      },
    ].map((run) => () => {
      run();
      return shares[days >> 1] as number;
    }),
  },
];
