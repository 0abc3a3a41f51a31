import { fail } from "../../quantity/index.js";
import {
  type Flow,
  flow,
  isMetric,
  type Length,
  length,
  made,
  number,
  type Pressure,
  type Read,
  readRecord,
  whole,
  word,
} from "../read.js";
import { kPaPerMeter } from "./pressure-of-height.js";

/** Smoothness of pipes by material, for the formula of Hazen and Williams. */
const smoothness = {
  PVC: 150,
  polyethylene: 140,
  copper: 140,
  "new steel": 140,
  "galvanized steel": 120,
  "old cast iron": 100,
} as const;

/** A material of pipe. */
export type PipeMaterial = keyof typeof smoothness;

const materials = Object.keys(smoothness) as readonly PipeMaterial[];

/**
 * Hazen and Williams' coefficient `C` of a pipe by its material: the smoother, the higher. Old pipes, joints and scale bring
 * it down.
 *
 * @throws RatewrightError `type` with the materials, `missing`
 *
 * Source: a reference page, "Fluid flow friction loss: Hazen-Williams coefficients": 150 for PVC, 140 for polyethylene,
 * 130 to 140 for copper, 140 to 150 for new steel, 120 for galvanized iron, 89 to 100 for cast iron of 20 years.
 *
 * @example
 * ```ts
 * import { pipeSmoothness } from "ratewright";
 * pipeSmoothness({ material: "PVC" }); // => 150
 * ```
 */
export const pipeSmoothness = (input: { readonly material: PipeMaterial }): number =>
  smoothness[readRecord(input, { material: word(materials) }, "a record with material").material];

const smoothnessOf: Read<number> = (input, path) =>
  input === undefined
    ? fail(
        "missing",
        path,
        input,
        "the smoothness of the pipe, such as 150; pipeSmoothness({ material }) gives it",
      )
    : number({ min: 50, max: 160 })(input, path);

/** Loss of head by meter of pipe, Hazen and Williams in SI units. */
const headPerMeter = (cubicMetersPerSecond: number, c: number, meters: number): number =>
  (10.67 * cubicMetersPerSecond ** 1.852) / (c ** 1.852 * meters ** 4.8704);

/**
 * The pressure that friction takes from water in a straight pipe, by Hazen and Williams:
 * `h = 10.67 L Q^1.852 / (C^1.852 d^4.8704)`, head in m, `Q` in m3/s, `L` and `d` in m.
 *
 * - `flow` `Q` of water; `diameter` `d` inside; `length` `L`
 * - `smoothness` `C`, 50 to 160, see {@link pipeSmoothness}
 * - in kPa for a length in metric units, else in psi. Handbooks print the same as `4.52 Q^1.85 / (C^1.85 d^4.87)` psi/ft
 *
 * For water near 60 °F in turbulent flow, in pipes of 2 in and more at best; fittings and valves come on top, as equivalent
 * lengths or from their charts.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: A. Hazen and G. Williams, "Hydraulic tables", in the SI form that handbooks of water supply print; psi form: a
 * reference page on pipe friction.
 *
 * @example
 * ```ts
 * import { frictionLoss, quantity } from "ratewright";
 * const run = { flow: quantity(10, "gal/min", "water"), diameter: quantity(1, "in"), length: quantity(100, "ft") };
 * frictionLoss({ ...run, smoothness: 150 }).in("psi").toFixed(1); // => "3.0"
 * ```
 */
export const frictionLoss = (input: {
  readonly flow: Flow;
  readonly diameter: Length;
  readonly length: Length;
  readonly smoothness: number;
}): Pressure => {
  const q = readRecord(
    input,
    { flow, diameter: length, length, smoothness: smoothnessOf },
    "a record with flow, diameter, length and smoothness",
  );
  const head = headPerMeter(q.flow.in("m3/h") / 3600, q.smoothness, q.diameter.in("m")) * q.length.in("m");
  const loss = made(head * kPaPerMeter, "kPa", "pressure");
  return isMetric(q.length.unit) ? loss : made(loss.in("psi"), "psi", "pressure");
};

/**
 * The share of the friction loss that remains on a line whose flow leaves it at equal outlets on the way, such as a lateral
 * with heads: `F = 1 / (m + 1) + 1 / (2 N) + sqrt(m - 1) / (6 N²)`, with `m = 1.852` of Hazen and Williams.
 *
 * - `outlets` `N`, 1 to 10,000, the first one spacing from the inlet; multiply {@link frictionLoss} of the whole flow by it
 *
 * @throws RatewrightError `range`, `missing`, `not-finite`
 *
 * Source: J. Christiansen 1942, as a public program of hydraulics has it by his name. Derived as well: it is the sum of
 * `(k / N)^m / N` over the stretches `k` to within 0.005 for one outlet, 0.0006 for two, and 0.0002 from three on.
 *
 * @example
 * ```ts
 * import { multipleOutletFactor } from "ratewright";
 * multipleOutletFactor({ outlets: 1 }).toFixed(3); // => "1.004"
 * multipleOutletFactor({ outlets: 10 }).toFixed(3); // => "0.402"
 * ```
 */
export const multipleOutletFactor = (input: { readonly outlets: number }): number => {
  const { outlets } = readRecord(input, { outlets: whole({ min: 1, max: 10_000 }) }, "a record with outlets");
  const m = 1.852;
  return 1 / (m + 1) + 1 / (2 * outlets) + Math.sqrt(m - 1) / (6 * outlets * outlets);
};
