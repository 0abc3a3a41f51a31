import type { Estimate } from "../../numeric/index.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectNumber,
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  frozen,
  likeQuantity,
  numberIn,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import type { Carrier } from "../inputs.js";
import { densityConversionFactor } from "./density.js";

type Density = Quantity<"mass/volume", "none">;

/** What can be read as finished spray: a volume per area, or a flow of a nozzle. */
export type SprayMeasure = "volume/area" | "volume/time";

/** A quantity, an estimate of one, or a record of a calibration that holds one. */
export type MeasuredSpray<D extends SprayMeasure, S extends Carrier = Carrier> =
  | Quantity<D, S>
  | Estimate<D, S>
  | { readonly rate: Quantity<D, S>; readonly estimate?: Estimate<D, S> };

/** A measured volume or flow as finished spray, and what was taken for it. */
export interface FinishedSpray<D extends SprayMeasure> {
  readonly type: "finished-spray";
  readonly version: 1;
  readonly value: Quantity<D, "spray">;
  /** With its standard error, where the measurement came with one. */
  readonly estimate?: Estimate<D, "spray">;
  /** What it was measured with. */
  readonly measuredWith: Carrier;
  /** How a measurement with water was carried over: as heavy as water, or by the density that was given. */
  readonly carriedOver: "as heavy as water" | "by its density" | "not needed";
  readonly findings: readonly Finding[];
}

interface Read {
  readonly q: Quantity<SprayMeasure, string>;
  readonly error?: number;
  readonly degreesOfFreedom?: number;
}

const quantityAt = (input: unknown, path: string): Quantity<SprayMeasure, string> => {
  const q = expectAmount(input, { dimensions: ["volume/area", "volume/time"], bound: "positive" }, path);
  return q.of === "spray" || q.of === "water"
    ? q
    : fail(
        "substance/mismatch",
        path,
        q,
        "a volume per area or a flow of spray, or of the water of a calibration",
      );
};

const estimateAt = (input: unknown, path: string): Read => {
  const record = expectFields(input, ["type", "version", "value", "standardError", "degreesOfFreedom"], path);
  const q = quantityAt(record.value, `${path}.value`);
  const { error, degrees } = allOf({
    error: () =>
      expectQuantity(
        record.standardError,
        { dimension: q.dimension, of: q.of, bound: "non-negative" },
        `${path}.standardError`,
      ),
    degrees: () =>
      record.degreesOfFreedom === undefined
        ? undefined
        : expectNumber(record.degreesOfFreedom, `${path}.degreesOfFreedom`, { min: 1 }),
  });
  return {
    q,
    error: numberIn(error, q.unit),
    ...(degrees === undefined ? {} : { degreesOfFreedom: degrees }),
  };
};

const readOf = (input: unknown, path: string): Read => {
  const wanted = "a volume per area or a flow, an estimate of one, or a calibration, with its rate";
  const record = expectRecord(input, path, wanted);
  if (record.type === "estimate") return estimateAt(input, path);
  if (record.unit === undefined && record.rate === undefined) fail("type", path, input, wanted);
  if (record.unit !== undefined || record.rate === undefined) return { q: quantityAt(input, path) };
  return record.estimate === undefined
    ? { q: quantityAt(record.rate, `${path}.rate`) }
    : estimateAt(record.estimate, `${path}.estimate`);
};

/**
 * What a measurement says of finished spray: of a calibration with water, `spray = water / f` with `f` the
 * {@link densityConversionFactor}; of one with spray, itself. A rate, an estimate or the whole record of a calibration goes in,
 * and its standard error goes with it.
 *
 * Where no `density` of the spray is given, it is taken to be as heavy as water, `f = 1`, and the result says so: most
 * sprays of pesticides in water are. Liquid fertilizers are not: 28-0-0 has `f` of 1.13.
 *
 * @param measured - a volume per area or a flow, of spray or of water, more than zero
 * @param options - `density` of the spray
 * @throws RatewrightError `missing`, `type`, `range`, `unit/mismatch`, `substance/mismatch`; `conflict` for a density
 *   beside a measurement that was made with the spray itself
 * Source: University of Georgia, Spraying solutions other than water (divide what is caught of water by the factor).
 *
 * @example
 * ```ts
 * import { asFinishedSpray, calibrationByRefill, quantity } from "ratewright";
 * const measured = calibrationByRefill({
 *   refills: [quantity(2.2, "gal", "water"), quantity(2, "gal", "water")],
 *   area: quantity(2000, "ft2"),
 * });
 * const spray = asFinishedSpray(measured);
 * Number(spray.value.in("gal/1000 ft2").toFixed(2)); // => 1.05
 * spray.carriedOver; // => "as heavy as water"
 * Number(asFinishedSpray(measured, { density: quantity(10.65, "lb/gal") }).value.in("gal/1000 ft2").toFixed(2)); // => 0.93
 * ```
 */
export const asFinishedSpray = <const D extends SprayMeasure>(
  measured: MeasuredSpray<D, "spray"> | MeasuredSpray<D, "water">,
  options: { readonly density?: Density } = {},
): FinishedSpray<D> => {
  const { density } = expectFields(options, ["density"], "options");
  return finishedSpray<D>(measured, density);
};

/** {@link asFinishedSpray} of what was not read yet. */
const finishedSpray = <D extends SprayMeasure>(measured: unknown, density: unknown): FinishedSpray<D> => {
  const { read, factor } = allOf({
    read: () => readOf(measured, "measured"),
    factor: () => (density === undefined ? undefined : densityConversionFactor(density as Density)),
  });
  const { q, error, degreesOfFreedom } = read;
  if (q.of === "spray" && density !== undefined) {
    fail(
      "conflict",
      "density",
      density,
      "no density, because the measurement was made with the spray itself",
    );
  }
  const f = factor ?? 1;
  // The measure of what was read is that of `measured`, which only the caller's types know.
  const value = quantityOf<D, "spray">(q.value / f, q.unit, "spray", "measured");
  return {
    type: "finished-spray",
    version: 1,
    value,
    ...(error === undefined
      ? {}
      : {
          estimate: {
            type: "estimate",
            version: 1,
            value,
            standardError: likeQuantity(value, error / f),
            ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
          },
        }),
    measuredWith: q.of === "spray" ? "spray" : "water",
    carriedOver:
      q.of === "spray" ? "not needed" : density === undefined ? "as heavy as water" : "by its density",
    findings: q.of === "water" && density === undefined ? [asWater] : [],
  };
};

const asWater: Finding = /* @__PURE__ */ frozen({
  code: "spray/as-heavy-as-water",
  severity: "note",
  params: {},
  text: "Measured with water, and the spray is taken to be as heavy as water. Give its density where it is not: a nozzle puts out less of a heavy liquid.",
  source: {
    title: "Spraying solutions other than water",
    publisher: "University of Georgia Extension",
  },
});
