import {
  allOf,
  expectAmount,
  expectFields,
  fail,
  ofKind,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type Area, ground, type Length, positive } from "../inputs.js";

/** The width of the band and of the row, whose quotient is the share of the ground that bands cover. */
const bandShare = (input: { readonly band: Length; readonly row: Length }): readonly [number, number] => {
  const { band, row } = allOf({
    band: () => positive(input.band, "band", "length"),
    row: () => positive(input.row, "row", "length"),
  });
  const wide = band.in(row.unit as "m");
  if (wide > row.value * (1 + 1e-9))
    outOfRange("band", band, { max: row.value, unit: row.unit }, "{}, the row width");
  return [wide, row.value];
};

const rateOf = <D extends string, S extends string>(input: Quantity<D, S>): Quantity<D, S> => {
  if (input === undefined || input === null) fail("missing", "rate", input, "a rate per area");
  const wanted = { dimensions: ["mass/area", "volume/area"], bound: "non-negative" } as const;
  return ofKind<D, S>(expectAmount(input, wanted, "rate"));
};

/**
 * What bands take per area of the whole field, where the rate is for the treated band,
 * `R(field) = R(treated) * band / row`. The rate on the treated band stays what the label says.
 *
 * @param input - `rate` on the treated band, per area, of anything; `band` no wider than `row`
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `type`
 * Source: University of Missouri Extension G1270A; University of Florida, chemical weed control (band
 * spray).
 *
 * @example
 * ```ts
 * import { bandFieldRate, quantity } from "ratewright";
 * bandFieldRate({
 *   rate: quantity(20, "gal/acre", "spray"),
 *   band: quantity(12, "in"),
 *   row: quantity(40, "in"),
 * }).in("gal/acre"); // => 6
 * ```
 */
export const bandFieldRate = <D extends "mass/area" | "volume/area", S extends string>(input: {
  readonly rate: Quantity<D, S>;
  readonly band: Length;
  readonly row: Length;
}): Quantity<D, S> => {
  expectFields(input, ["rate", "band", "row"]);
  const { share, rate } = allOf({ share: () => bandShare(input), rate: () => rateOf(input.rate) });
  return like(rate, (rate.value * share[0]) / share[1]);
};

/**
 * The rate on the treated band of an amount that is told per area of the whole field,
 * `R(treated) = R(field) * row / band`: {@link bandFieldRate} the other way round.
 *
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `type`
 * Source: as {@link bandFieldRate}.
 *
 * @example
 * ```ts
 * import { bandTreatedRate, quantity } from "ratewright";
 * bandTreatedRate({
 *   rate: quantity(6, "gal/acre", "spray"),
 *   band: quantity(12, "in"),
 *   row: quantity(40, "in"),
 * }).in("gal/acre"); // => 20
 * ```
 */
export const bandTreatedRate = <D extends "mass/area" | "volume/area", S extends string>(input: {
  readonly rate: Quantity<D, S>;
  readonly band: Length;
  readonly row: Length;
}): Quantity<D, S> => {
  expectFields(input, ["rate", "band", "row"]);
  const { share, rate } = allOf({ share: () => bandShare(input), rate: () => rateOf(input.rate) });
  return like(rate, (rate.value * share[1]) / share[0]);
};

/**
 * The ground that bands cover in a field, `A(treated) = A(field) * band / row`, tagged as treated area.
 *
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `conflict` for an area that is
 * treated area already
 * Source: as {@link bandFieldRate}.
 *
 * @example
 * ```ts
 * import { bandTreatedArea, quantity } from "ratewright";
 * bandTreatedArea({
 *   area: quantity(10, "acre"),
 *   band: quantity(12, "in"),
 *   row: quantity(40, "in"),
 * }).in("acre"); // => 3
 * ```
 */
export const bandTreatedArea = (input: {
  readonly area: Area | Quantity<"area", "gross"> | Quantity<"area", "plan">;
  readonly band: Length;
  readonly row: Length;
}): Quantity<"area", "treated"> => {
  expectFields(input, ["area", "band", "row"]);
  const { share, area } = allOf({ share: () => bandShare(input), area: () => fieldOf(input.area) });
  return quantityOf<"area", "treated">((area.value * share[0]) / share[1], area.unit, "treated", "area");
};

const fieldOf = (input: unknown): Area => {
  const area = ground(input, "area");
  return (input as { readonly of?: string }).of === "treated"
    ? fail("conflict", "area", input, "the area of the field: this one is treated area already")
    : area;
};

const like = <D extends string, S extends string>(q: Quantity<D, S>, value: number): Quantity<D, S> =>
  quantityOf<D, S>(value, q.unit, q.of, "rate");
