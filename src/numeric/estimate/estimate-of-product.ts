import {
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import { expectItems } from "../number/numbers.js";
import { errorOfProduct } from "./error-of-product.js";
import { anyQuantity, type Estimate, estimateFrom, expectEstimate } from "./estimate.js";

/** An estimate of any kind: what {@link estimateOfProduct} needs of one. */
export interface AnyEstimate {
  readonly type: "estimate";
  readonly value: { readonly value: number; readonly unit: string };
  readonly standardError: { readonly value: number; readonly unit: string };
  readonly degreesOfFreedom?: number;
}

/** What goes into a product with its error: an estimate, or just a relative standard error such as 1 %. */
export type EstimateFactor =
  | { readonly estimate: AnyEstimate; readonly power?: number }
  | { readonly relativeError: Quantity<"1", "none">; readonly power?: number };

interface Part {
  /** Relative standard error, times its power. */
  readonly share: number;
  readonly degreesOfFreedom: number | undefined;
}

const partOf = (factor: unknown, path: string): Part => {
  const given = expectFields(
    factor,
    ["estimate", "relativeError", "power"],
    path,
    "an estimate or a relative error",
  );
  const power = given.power === undefined ? 1 : expectNumber(given.power, `${path}.power`);
  if (given.estimate === undefined) {
    if (given.relativeError === undefined)
      fail("missing", path, factor, "one of its fields: an estimate, or a relativeError");
    const share = expectQuantity(
      given.relativeError,
      { dimension: "1", of: "none", bound: "non-negative" },
      `${path}.relativeError`,
    ).in("1");
    return { share: share * Math.abs(power), degreesOfFreedom: undefined };
  }
  if (given.relativeError !== undefined) {
    fail(
      "conflict",
      `${path}.relativeError`,
      given.relativeError,
      "an estimate or a relative error, not both",
    );
  }
  const at = `${path}.estimate`;
  const { value, standardError, degreesOfFreedom } = expectEstimate(
    given.estimate as Estimate<string, string>,
    at,
  );
  if (value.value === 0) fail("range", `${at}.value`, value, "anything but 0, which has no relative error");
  return { share: Math.abs((power * standardError.value) / value.value), degreesOfFreedom };
};

/**
 * A computed product or quotient with its standard error, from what went into it: relative errors add
 * as squares, `u(y) / |y| = sqrt(sum (p u(x) / x)^2)`, and the degrees of freedom are the effective ones,
 * `nu = u^4 / sum (u_i^4 / nu_i)` with `u_i` the relative errors that were estimated from readings.
 * A divisor has power -1; the sign makes no difference to the error.
 *
 * The value itself is computed by the caller, whose formula knows the units. It holds for errors that
 * are independent of one another and small against their values.
 *
 * @throws RatewrightError `missing` for no factors; `type`, `range`, `unit/mismatch`, `not-finite`, all
 * that are found
 * Source: JCGM 100:2008 (GUM), 5.1.6 and G.4.1, equation G.2b (Welch-Satterthwaite).
 *
 * @example
 * ```ts
 * import { estimateOfProduct, meanEstimate, quantity } from "ratewright";
 * const caught = meanEstimate([30, 32, 31].map((value) => quantity(value, "fl oz", "water")));
 * const flow = caught.value.per(quantity(30, "s"));
 * const measured = estimateOfProduct(flow, [
 *   { estimate: caught },
 *   { relativeError: quantity(1, "%"), power: -1 },
 * ]);
 * Number(measured.value.in("fl oz/min").toFixed(1)); // => 62
 * Number(measured.standardError.in("fl oz/min").toFixed(2)); // => 1.31
 * Number((measured.degreesOfFreedom ?? 0).toFixed(1)); // => 3.3
 * ```
 */
export const estimateOfProduct = <D extends string, S extends string>(
  value: Quantity<D, S>,
  factors: readonly EstimateFactor[],
): Estimate<D, S> => {
  const y = anyQuantity<D, S>(value, "value");
  const items = expectItems(factors, "factors", 1, "factor");
  const problems = checks();
  const read = items.map((factor, i) => problems.run(() => partOf(factor, `factors[${i}]`)));
  problems.done();
  const parts = read.flatMap((part) => part ?? []);
  const { error } = errorOfProduct(parts.map(({ share }) => ({ value: 1, error: share })));
  let below = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const { share, degreesOfFreedom } of parts) {
    if (degreesOfFreedom === undefined || share === 0) continue;
    below += (share / error) ** 4 / degreesOfFreedom;
    least = Math.min(least, degreesOfFreedom);
  }
  // Never fewer than the least of the parts, also where rounding would make it so.
  const effective = below > 0 ? Math.max(least, 1 / below) : undefined;
  return estimateFrom(y, Math.abs(y.value) * error, effective);
};
