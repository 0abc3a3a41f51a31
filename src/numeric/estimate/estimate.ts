import { expectNumber, expectQuantity, fail, type Quantity, quantityOf } from "../../quantity/index.js";

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
  standardError: likeWith(value, error),
  ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
});

/** Another number in the unit of a quantity. */
export const likeWith = <D extends string, S extends string>(
  like: Quantity<D, S>,
  value: number,
): Quantity<D, S> => quantityOf(value, like.unit, like.of, "value") as unknown as Quantity<D, S>;

/** The number of a quantity in the unit of another of its kind. */
export const numberIn = (q: unknown, unit: string): number => (q as { in(unit: string): number }).in(unit);

/** Takes an estimate of any kind, made here or come back from JSON, or throws with the path of what is wrong. */
export const expectEstimate = <D extends string, S extends string>(
  input: Estimate<D, S>,
  path: string,
): Estimate<D, S> => {
  if (typeof input !== "object" || input === null || input.type !== "estimate") {
    return fail("type", path, input, "an estimate, as meanEstimate gives");
  }
  const value = anyQuantity(input.value, `${path}.value`) as unknown as Quantity<D, S>;
  const error = expectQuantity(
    input.standardError,
    { dimension: value.dimension, of: value.of, bound: "non-negative" },
    `${path}.standardError`,
  );
  const df =
    input.degreesOfFreedom === undefined
      ? undefined
      : expectNumber(input.degreesOfFreedom, `${path}.degreesOfFreedom`, { min: 1 });
  return estimateFrom(value, numberIn(error, value.unit), df);
};

/** Takes a quantity of any dimension but a temperature, whose zero means nothing, or throws with its path. */
export const anyQuantity = (input: unknown, path: string): Quantity<string, string> => {
  if (input === undefined || input === null) return fail("missing", path, input, "a quantity");
  const { value, unit, of = "none" } = input as { value: number; unit: string; of?: string };
  if (typeof input !== "object" || typeof unit !== "string") return fail("type", path, input, "a quantity");
  const q = quantityOf(value, unit, of, path);
  return q.dimension === "temperature"
    ? fail("unit/mismatch", path, q, "a quantity with a true zero, which a temperature has not")
    : q;
};
