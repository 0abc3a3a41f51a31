import {
  expectAmount,
  expectFields,
  expectQuantity,
  likeQuantity,
  type Quantity,
} from "../../quantity/index.js";

/**
 * The dose that brings a growth regulator back to its full amount, `R = F - F 0.5^(G / H)`: what has
 * decayed since the last application, by a half-life in degree-days.
 *
 * The source states the equation with half-lives for three actives (see `replacementHalfLives`), and that
 * suppression still grew over three applications when the trial was ended after four weeks.
 *
 * @param input.full - `F`, the full rate, of product or of active
 * @param input.elapsed - `G`, degree-days since the last application
 * @param input.halfLife - `H`, degree-days of the same model, more than zero
 * @throws RatewrightError `substance/mismatch` for degree-days of two models; `range`, `unit/mismatch`, `type`
 * Source: "How to guide PGR applications by growing degree days", trade magazine on research of the
 * University of Nebraska, 2021.
 *
 * @example
 * ```ts
 * import { degreeDayAmount, degreeDayModel, quantity, replacementDose } from "ratewright";
 * const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
 * const heat = (value: number) => degreeDayAmount({ value, unit: "°C d", model });
 * replacementDose({
 *   full: quantity(7, "fl oz/acre", "product"), elapsed: heat(116), halfLife: heat(116),
 * }).in("fl oz/acre"); // => 3.5
 * ```
 */
export const replacementDose = <
  D extends "mass/area" | "volume/area",
  S extends string,
  M extends string,
>(input: {
  readonly full: Quantity<D, S>;
  readonly elapsed: Quantity<"degree-days", M>;
  readonly halfLife: Quantity<"degree-days", NoInfer<M>>;
}): Quantity<D, S> => {
  expectFields(input, ["full", "elapsed", "halfLife"]);
  const full = expectAmount(
    input.full,
    { dimensions: ["mass/area", "volume/area"], bound: "positive" },
    "full",
  );
  const wanted = { dimension: "degree-days" } as const;
  const elapsed = expectQuantity(input.elapsed, { ...wanted, bound: "non-negative" }, "elapsed");
  const halfLife = expectQuantity(
    input.halfLife,
    { ...wanted, of: elapsed.of, bound: "positive" },
    "halfLife",
  );
  const gone = -Math.expm1((-Math.LN2 * elapsed.in("°C d")) / halfLife.in("°C d"));
  return likeQuantity(input.full, full.value * (gone + 0));
};
