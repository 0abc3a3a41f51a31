import { expectQuantity, expectRecord, fail, type Quantity, quantity } from "../../quantity/index.js";

/** A computed temperature with the band in which the true one lies, by the stated error of the formula. */
export interface WetBulb {
  readonly type: "wet-bulb";
  readonly version: 1;
  readonly value: Quantity<"temperature", "none">;
  readonly low: Quantity<"temperature", "none">;
  readonly high: Quantity<"temperature", "none">;
}

/** How far dry and wet bulb lie apart, with the band in which the true figure lies. */
export interface DeltaT {
  readonly type: "delta-t";
  readonly version: 1;
  readonly value: Quantity<"temperature difference", "none">;
  readonly low: Quantity<"temperature difference", "none">;
  readonly high: Quantity<"temperature difference", "none">;
}

/** Air temperature and relative humidity. */
export interface AirState {
  readonly temperature: Quantity<"temperature", "none">;
  readonly humidity: Quantity<"1", "none">;
}

/** A state of the air as numbers, °C and percent, or throws. */
const state = (input: AirState): { t: number; rh: number } => {
  const { temperature, humidity } = expectRecord(input, "input");
  const air = expectQuantity(temperature, { dimension: "temperature", of: "none" }, "temperature");
  const moist = expectQuantity(humidity, { dimension: "1", of: "none" }, "humidity");
  const [t, rh] = [air.in("°C"), moist.in("%")];
  if (!(t >= -20 && t <= 50)) fail("range", "temperature", air, "-20 to 50 °C, in which the formula holds");
  if (!(rh >= 5 && rh <= 99)) fail("range", "humidity", moist, "5 to 99 %, in which the formula holds");
  return { t, rh };
};

/**
 * The wet-bulb temperature at sea-level pressure, by a fit to humidity and temperature:
 * `Tw = T atan(0.151977 (RH + 8.313659)^(1/2)) + atan(T + RH) - atan(RH - 1.676331)
 * + 0.00391838 RH^(3/2) atan(0.023101 RH) - 4.686035`, with `T` in °C, `RH` in percent, angles in radians.
 *
 * It holds from 5 to 99 % and from -20 to 50 °C, but not for cold and dry air together: the source gives
 * that corner as a picture, and it is not refused here. Its error there lies between -1 and +0.65 °C, which
 * is the band that is returned.
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: R. Stull, "Wet-bulb temperature from relative humidity and air temperature", Journal of Applied
 * Meteorology and Climatology 50 (2011), 2267-2269; abstract read, coefficients as repeated by others.
 *
 * @example
 * ```ts
 * import { quantity, wetBulb } from "ratewright";
 * const tw = wetBulb({ temperature: quantity(20, "°C"), humidity: quantity(50, "%") });
 * Number(tw.value.in("°C").toFixed(1)); // => 13.7
 * Number(tw.high.in("°C").toFixed(1)); // => 14.7
 * ```
 */
export const wetBulb = (input: AirState): WetBulb => {
  const tw = stull(state(input));
  // What is computed lies up to 1 below and 0.65 above the true figure.
  return {
    type: "wet-bulb",
    version: 1,
    value: quantity(tw, "°C"),
    low: quantity(tw - 0.65, "°C"),
    high: quantity(tw + 1, "°C"),
  };
};

const stull = ({ t, rh }: { t: number; rh: number }): number =>
  t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659)) +
  Math.atan(t + rh) -
  Math.atan(rh - 1.676331) +
  0.00391838 * rh ** 1.5 * Math.atan(0.023101 * rh) -
  4.686035;

/**
 * Delta T, `T - Tw`: how fast a droplet dries. The band is that of {@link wetBulb}; no air has less than 0,
 * so that the ends of the band stop there. The value itself is as computed.
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: as for {@link wetBulb}.
 *
 * @example
 * ```ts
 * import { deltaT, quantity } from "ratewright";
 * const dt = deltaT({ temperature: quantity(20, "°C"), humidity: quantity(50, "%") });
 * Number(dt.value.in("°C diff").toFixed(1)); // => 6.3
 * Number(dt.low.in("°C diff").toFixed(1)); // => 5.3
 * ```
 */
export const deltaT = (input: AirState): DeltaT => {
  const air = state(input);
  const apart = air.t - stull(air);
  return {
    type: "delta-t",
    version: 1,
    value: quantity(apart, "°C diff"),
    low: quantity(Math.max(0, apart - 1), "°C diff"),
    high: quantity(Math.max(0, apart + 0.65), "°C diff"),
  };
};
