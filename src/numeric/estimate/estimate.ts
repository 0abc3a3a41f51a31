import {
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  likeQuantity,
  numberIn,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";

/** A measured quantity with its standard error: a calibrated rate, a mean catch, a paced-off length. */
export interface Estimate<D extends string, S extends string> {
  readonly type: "estimate";
  readonly version: 1;
  readonly value: Quantity<D, S>;
  /** One standard error, in the unit of the value. */
  readonly standardError: Quantity<D, S>;
  /** Behind the standard error; left out where it is stated and not estimated from the spread of readings. */
  readonly degreesOfFreedom?: number;
}

/** An estimate of these parts; the error is in the unit of the value. */
export const estimateFrom = <D extends string, S extends string>(
  value: Quantity<D, S>,
  error: number,
  degreesOfFreedom?: number,
): Estimate<D, S> => ({
  type: "estimate",
  version: 1,
  value,
  standardError: likeQuantity(value, error),
  ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
});

/** Takes an estimate of any kind, made here or come back from JSON, or throws with the path of what is wrong. */
export const expectEstimate = <D extends string, S extends string>(
  input: Estimate<D, S>,
  path: string,
): Estimate<D, S> => {
  if ((Object(input) as { readonly type?: unknown }).type !== "estimate") {
    return fail("type", path, input, "an estimate, as meanEstimate and statedEstimate give");
  }
  const fields = ["type", "version", "value", "standardError", "degreesOfFreedom"] as const;
  const estimate = expectFields(input, fields, path);
  const value = anyQuantity<D, S>(estimate.value, `${path}.value`);
  const error = expectQuantity(
    estimate.standardError,
    { dimension: value.dimension, of: value.of, bound: "non-negative" },
    `${path}.standardError`,
  );
  const df =
    estimate.degreesOfFreedom === undefined
      ? undefined
      : expectNumber(estimate.degreesOfFreedom, `${path}.degreesOfFreedom`, { min: 1 });
  return estimateFrom(value, numberIn(error, value.unit), df);
};

/** Takes a quantity of any dimension but a temperature, whose zero means nothing, or throws with its path. */
export const anyQuantity = <D extends string = string, S extends string = string>(
  input: unknown,
  path: string,
): Quantity<D, S> => {
  if (input === undefined || input === null) return fail("missing", path, input, "a quantity");
  const { value, unit, of = "none" } = Object(input) as Readonly<Record<string, unknown>>;
  if (typeof input !== "object" || typeof unit !== "string") {
    return fail("type", path, input, 'a quantity, such as quantity(3, "lb")');
  }
  if (typeof of !== "string") return fail("substance/unknown", `${path}.of`, of, "a substance as text");
  const q = quantityOf(value as number, unit, of, path);
  if (q.dimension === "temperature") {
    fail(
      "unit/mismatch",
      path,
      q,
      "a quantity with a true zero, which a temperature has not: give a temperature difference",
    );
  }
  // What the caller's types say of it: dimension and substance were read above, and no reader narrows them here.
  return q as unknown as Quantity<D, S>;
};
