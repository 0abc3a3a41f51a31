import { expectTravelSpeed } from "../../numeric/house.js";
import { allOf, expectFields, perOf, type Quantity, quantityOf, timesOf } from "../../quantity/index.js";
import { type Carrier, carried, inSystemOf, type Length, positive, type Speed } from "../inputs.js";

/**
 * The volume of spray that nozzles put on an area, `V = q / (v w)`.
 *
 * - `q` flow of one nozzle, or of the whole boom: volume per time
 * - `v` ground speed
 * - `w` the width that this flow covers: the nozzle spacing of a boom, the row spacing over the number of
 *   nozzles per row (`widthPerNozzle`), the band width for a rate on the treated band, the effective swath
 *   for a whole boom or a boomless nozzle
 *
 * In the units of the trade, `gal/acre = 5940 gal/min / (mi/h * in)` or 495 for a width in ft, and
 * `L/ha = 600 L/min / (km/h * m)`: here the units bring the constants with them. The result is in
 * gal/acre, L/ha or imp gal/acre, as the flow was given.
 *
 * It holds at the speed, the pressure and the mean flow that were measured; at constant pressure the
 * volume goes as 1/speed.
 *
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`,
 * `type`, `not-finite`
 * Source: Cornell Cooperative Extension, Grape guidelines 7.6, 2024; Mesa County Weed and Pest, stationary
 * calibration method (5940, 495).
 *
 * @example
 * ```ts
 * import { applicationVolume, quantity } from "ratewright";
 * const run = { speed: quantity(4, "mi/h"), width: quantity(20, "in") };
 * const volume = applicationVolume({ flow: quantity(0.4, "gal/min", "spray"), ...run });
 * Number(volume.in("gal/acre").toFixed(6)); // => 29.7
 * const metric = { speed: quantity(8, "km/h"), width: quantity(50, "cm") };
 * Number(applicationVolume({ flow: quantity(1, "L/min", "spray"), ...metric }).in("L/ha").toFixed(6)); // => 150
 * ```
 */
export const applicationVolume = <S extends Carrier>(input: {
  readonly flow: Quantity<"volume/time", S>;
  readonly speed: Speed;
  readonly width: Length;
}): Quantity<"volume/area", S> => {
  expectFields(input, ["flow", "speed", "width"]);
  const { flow, speed, width } = allOf({
    flow: () => carried(input.flow, "flow", "volume/time"),
    speed: () => expectTravelSpeed(positive(input.speed, "speed", "length/time"), "speed"),
    width: () => positive(input.width, "width", "length"),
  });
  const { value, unit, of } = perOf(flow, timesOf(speed, width));
  return inSystemOf(quantityOf<"volume/area", S>(value, unit, of, "flow"), flow);
};

/**
 * The flow that a nozzle needs to put on a volume, `q = V v w`, with the symbols of
 * {@link applicationVolume}; in gal/min, L/min or imp gal/min.
 *
 * @param input - `applicationVolume` `V`, `speed` `v` and `width` `w`, each more than zero
 * @throws RatewrightError as {@link applicationVolume}
 * Source: Cornell Cooperative Extension, Grape guidelines 7.6, 2024 (20 gal/acre at 4 mph and 20 in is
 * 0.27 gal/min).
 *
 * @example
 * ```ts
 * import { nozzleFlow, quantity } from "ratewright";
 * const flow = nozzleFlow({
 *   applicationVolume: quantity(20, "gal/acre", "spray"),
 *   speed: quantity(4, "mi/h"),
 *   width: quantity(20, "in"),
 * });
 * Number(flow.in("gal/min").toFixed(4)); // => 0.2694
 * ```
 */
export const nozzleFlow = <S extends Carrier>(input: {
  readonly applicationVolume: Quantity<"volume/area", S>;
  readonly speed: Speed;
  readonly width: Length;
}): Quantity<"volume/time", S> => {
  expectFields(input, ["applicationVolume", "speed", "width"]);
  const { volume, speed, width } = allOf({
    volume: () => carried(input.applicationVolume, "applicationVolume", "volume/area"),
    speed: () => expectTravelSpeed(positive(input.speed, "speed", "length/time"), "speed"),
    width: () => positive(input.width, "width", "length"),
  });
  const { value, unit, of } = timesOf(volume, timesOf(speed, width));
  return inSystemOf(quantityOf<"volume/time", S>(value, unit, of, "applicationVolume"), volume);
};

/**
 * The ground speed at which a flow puts on a volume, `v = q / (V w)`, with the symbols of
 * {@link applicationVolume}; in mi/h or km/h.
 *
 * @param input - `flow` `q`, `applicationVolume` `V` and `width` `w`, each more than zero
 * @throws RatewrightError as {@link applicationVolume}
 * Source: the equation of {@link applicationVolume}, solved for the speed.
 *
 * @example
 * ```ts
 * import { quantity, travelSpeed } from "ratewright";
 * const speed = travelSpeed({
 *   flow: quantity(0.4, "gal/min", "spray"),
 *   applicationVolume: quantity(29.7, "gal/acre", "spray"),
 *   width: quantity(20, "in"),
 * });
 * Number(speed.in("mi/h").toFixed(6)); // => 4
 * ```
 */
export const travelSpeed = <S extends Carrier>(input: {
  readonly flow: Quantity<"volume/time", S>;
  readonly applicationVolume: Quantity<"volume/area", NoInfer<S>>;
  readonly width: Length;
}): Speed => {
  expectFields(input, ["flow", "applicationVolume", "width"]);
  const { flow, volume, width } = allOf({
    flow: () => carried(input.flow, "flow", "volume/time"),
    volume: () => carried(input.applicationVolume, "applicationVolume", "volume/area"),
    width: () => positive(input.width, "width", "length"),
  });
  return inSystemOf(groundPerTime(flow, volume).per(width), width);
};

/**
 * The width that one flow has to cover, nozzle spacing or swath, to put on a volume, `w = q / (V v)`, with
 * the symbols of {@link applicationVolume}; in inches or cm.
 *
 * @param input - `flow` `q`, `applicationVolume` `V` and `speed` `v`, each more than zero
 * @throws RatewrightError as {@link applicationVolume}
 * Source: the equation of {@link applicationVolume}, solved for the width.
 *
 * @example
 * ```ts
 * import { quantity, sprayWidth } from "ratewright";
 * const width = sprayWidth({
 *   flow: quantity(1, "L/min", "spray"),
 *   applicationVolume: quantity(150, "L/ha", "spray"),
 *   speed: quantity(8, "km/h"),
 * });
 * Number(width.in("cm").toFixed(6)); // => 50
 * ```
 */
export const sprayWidth = <S extends Carrier>(input: {
  readonly flow: Quantity<"volume/time", S>;
  readonly applicationVolume: Quantity<"volume/area", NoInfer<S>>;
  readonly speed: Speed;
}): Length => {
  expectFields(input, ["flow", "applicationVolume", "speed"]);
  const { flow, volume, speed } = allOf({
    flow: () => carried(input.flow, "flow", "volume/time"),
    volume: () => carried(input.applicationVolume, "applicationVolume", "volume/area"),
    speed: () => expectTravelSpeed(positive(input.speed, "speed", "length/time"), "speed"),
  });
  return inSystemOf(groundPerTime(flow, volume).per(speed), speed);
};

/** The ground that a flow covers in a time. The volume has to be of what the flow is of. */
const groundPerTime = <S extends Carrier>(
  flow: Quantity<"volume/time", S>,
  volume: Quantity<"volume/area", S>,
): Quantity<"area/time", "none"> => {
  positive(volume, "applicationVolume", "volume/area", flow.of);
  const { value, unit, of } = perOf(flow, volume);
  return quantityOf<"area/time", "none">(value, unit, of, "flow");
};
