import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  likeQuantity,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type Carrier, carried, positive, type Time } from "../inputs.js";

/** Water at 20 °C, near enough for a catch: it is 0.998 kg/L there, and 0.2 % is below what a scale shows. */
const waterDensity = (): Quantity<"mass/volume", "none"> => quantity(1, "kg/L");

/**
 * The volume of a catch that was weighed, `V = (full - tare) / density`: a scale reads finer than a jug. A milliliter of
 * water is a gram.
 *
 * @param input - `full`, the weight of the jug with its catch, of water or of spray; `tare`, that of the empty jug, none
 *   where left out; `density`, that of water (1 kg/L) where left out, and needed for anything but water
 * @throws RatewrightError with every problem: `missing` (a density of spray), `range` (an empty jug that weighs as much
 *   as the full one), `unit/mismatch`, `substance/mismatch`, `type`
 * Source: definition; 1 kg/L is the mass of water of the metric system, 8.345 lb per US gallon.
 *
 * @example
 * ```ts
 * import { quantity, weighedCatch } from "ratewright";
 * const caught = weighedCatch({ full: quantity(1313, "g", "water"), tare: quantity(113, "g") });
 * caught.in("mL"); // => 1200
 * ```
 */
export const weighedCatch = <S extends Carrier>(input: {
  readonly full: Quantity<"mass", S>;
  readonly tare?: Quantity<"mass", "none">;
  readonly density?: Quantity<"mass/volume", "none">;
}): Quantity<"volume", S> => {
  const given = expectFields(input, ["full", "tare", "density"]);
  const { full, tare, density } = allOf({
    full: () => carried(input.full, "full", "mass"),
    tare: () =>
      given.tare === undefined
        ? 0
        : expectQuantity(given.tare, { dimension: "mass", of: "none", bound: "non-negative" }, "tare").in(
            "g",
          ),
    density: () =>
      given.density === undefined ? undefined : positive(given.density, "density", "mass/volume"),
  });
  if (density === undefined && full.of !== "water")
    fail(
      "missing",
      "density",
      undefined,
      `the density of the ${full.of}, because only water is known to weigh 1 kg/L`,
    );
  const net = full.in("g") - tare;
  if (!(net > 0)) fail("range", "full", full, "more than the empty jug weighs");
  const perMilliliter = (density ?? waterDensity()).in("g/mL");
  // Of what was weighed, which the compiler knows from the call.
  return quantityOf<"volume", S>(net / perMilliliter, "mL", full.of, "full");
};

/**
 * How long it takes to fill a jug at a flow, `t = V / q`: the time to watch for on the stop-watch when the wanted flow is
 * known. The way back is `volume.per(time)`.
 *
 * @param input - `volume` of the jug and `flow`, of the same, both more than zero
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: definition.
 *
 * @example
 * ```ts
 * import { quantity, timeToFill } from "ratewright";
 * timeToFill({ volume: quantity(1, "qt", "water"), flow: quantity(0.5, "gal/min", "water") }).in("s"); // => 30
 * ```
 */
export const timeToFill = <S extends Carrier>(input: {
  readonly volume: Quantity<"volume", S>;
  readonly flow: Quantity<"volume/time", NoInfer<S>>;
}): Time => {
  const given = expectFields(input, ["volume", "flow"]);
  const { volume, flow } = allOf({
    volume: () => carried(input.volume, "volume", "volume"),
    flow: () => carried(given.flow as Quantity<"volume/time", S>, "flow", "volume/time"),
  });
  if (volume.of !== flow.of)
    fail("substance/mismatch", "flow", flow, `a flow of ${volume.of}, as the jug holds`);
  return quantity((volume.in("L") / flow.in("L/min")) * 60, "s");
};

/**
 * What was used between two readings of a sight gauge, `before - after`. It goes into `calibrationByRefill` as one of
 * its `refills`, and into `asApplied` as what was used. Read both on the same level spot.
 *
 * @param input - `before` and `after`, of the same; `after` zero or more and less than `before`
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`;
 *   `conflict` where nothing was used
 * Source: definition.
 *
 * @example
 * ```ts
 * import { quantity, usedBySightGauge } from "ratewright";
 * usedBySightGauge({ before: quantity(60, "gal", "water"), after: quantity(52.5, "gal", "water") }).in("gal"); // => 7.5
 * ```
 */
export const usedBySightGauge = <S extends Carrier>(input: {
  readonly before: Quantity<"volume", S>;
  readonly after: Quantity<"volume", NoInfer<S>>;
}): Quantity<"volume", S> => {
  const given = expectFields(input, ["before", "after"]);
  const { before, after } = allOf({
    before: () => carried(input.before, "before", "volume"),
    after: () =>
      given.after === undefined || given.after === null
        ? fail("missing", "after", given.after, "the reading after the run")
        : expectQuantity(given.after, { dimension: "volume", bound: "non-negative" }, "after"),
  });
  if (after.of !== before.of) fail("substance/mismatch", "after", after, `a volume of ${before.of}`);
  const used = before.value - numberIn(after, before.unit);
  return used > 0
    ? likeQuantity(before, used)
    : fail("conflict", "after", after, "less than before: nothing was used, or the readings are swapped");
};
