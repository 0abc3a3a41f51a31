import {
  allOf,
  expectFields,
  expectQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

/** By which formula a wet bulb is computed. */
export type WetBulbMethod = "fit" | "psychrometric equation";

/** A computed temperature with the band in which the true one lies, by the stated error of the formula. */
export interface WetBulb {
  readonly type: "wet-bulb";
  readonly version: 1;
  readonly value: Quantity<"temperature", "none">;
  readonly low: Quantity<"temperature", "none">;
  readonly high: Quantity<"temperature", "none">;
  readonly method: WetBulbMethod;
}

/** How far dry and wet bulb lie apart, with the band in which the true figure lies. */
export interface DeltaT {
  readonly type: "delta-t";
  readonly version: 1;
  readonly value: Quantity<"temperature difference", "none">;
  readonly low: Quantity<"temperature difference", "none">;
  readonly high: Quantity<"temperature difference", "none">;
  readonly method: WetBulbMethod;
}

/** Air temperature and relative humidity. */
export interface AirState {
  readonly temperature: Quantity<"temperature", "none">;
  readonly humidity: Quantity<"1", "none">;
}

/** A state of the air as numbers, °C and percent, or throws. */
const state = (input: AirState): { t: number; rh: number } => {
  const { temperature, humidity } = expectFields(input, ["temperature", "humidity"]);
  return allOf({
    t: () => {
      const air = expectQuantity(temperature, { dimension: "temperature", of: "none" }, "temperature");
      const t = air.in("°C");
      return t >= -20 && t <= 50
        ? t
        : outOfRange("temperature", air, { min: -20, max: 50, unit: "°C" }, "{}, the range it was made for");
    },
    rh: () => {
      const moist = expectQuantity(humidity, { dimension: "1", of: "none" }, "humidity");
      const rh = moist.in("%");
      return rh >= 5 && rh <= 99
        ? rh
        : outOfRange("humidity", moist, { min: 5, max: 99, unit: "%" }, "{}, the range it was made for");
    },
  });
};

/** Sea-level pressure of the standard atmosphere, hPa. */
const pressure = 1013.25;
/** Saturation vapor pressure over water and over ice, hPa, at °C (Tetens, as printed by Murray 1967). */
const overWater = (t: number): number => 6.1078 * Math.exp((17.2693882 * t) / (t + 237.3));
const overIce = (t: number): number => 6.1078 * Math.exp((21.8745584 * t) / (t + 265.5));

/** Where `es(Tw) - A p (T - Tw)` meets the vapor pressure of the air: it rises with Tw, so halving finds it. */
const solved = (
  { t, rh }: { t: number; rh: number },
  saturation: (t: number) => number,
  coefficient: number,
): number => {
  const vapor = (overWater(t) * rh) / 100;
  // At -60 °C no air of the range has so little vapor; at T itself none has more.
  let [low, high] = [-60, t];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (saturation(middle) - coefficient * pressure * (t - middle) > vapor) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
};

/** The wet bulb as its physics gives it: below freezing that of ice, with that of undercooled water beside it. */
const psychrometric = (air: { t: number; rh: number }): { value: number; low: number; high: number } => {
  const wet = solved(air, overWater, 6.6e-4);
  const iced = wet < 0 ? solved(air, overIce, 5.82e-4) : wet;
  return { value: iced, low: Math.min(wet, iced), high: Math.max(wet, iced) };
};

/** Half the width of the band about the psychrometric equation: published coefficients, 5.8e-4 to 6.9e-4, lie within. */
const psychrometricMargin = 0.5;

/** Wet bulb in °C with its band: by the fit wherever it keeps its own stated error, else by the equation. */
const wetBulbOf = (air: {
  t: number;
  rh: number;
}): { value: number; low: number; high: number; method: WetBulbMethod } => {
  const tw = stull(air);
  const by = psychrometric(air);
  // What the fit computes lies up to 1 below and 0.65 above the true figure.
  const [low, high] = [tw - 0.65, tw + 1];
  return tw <= air.t && by.low >= low && by.high <= high
    ? { value: tw, low, high, method: "fit" }
    : {
        value: by.value,
        low: by.low - psychrometricMargin,
        high: by.high + psychrometricMargin,
        method: "psychrometric equation",
      };
};

/**
 * The wet-bulb temperature at sea-level pressure, by a fit to humidity and temperature:
 * `Tw = T atan(0.151977 (RH + 8.313659)^(1/2)) + atan(T + RH) - atan(RH - 1.676331)
 * + 0.00391838 RH^(3/2) atan(0.023101 RH) - 4.686035`, with `T` in °C, `RH` in percent, angles in radians.
 *
 * The fit is stated for 5 to 99 % and -20 to 50 °C with an error between -1 and +0.65 °C, which is the band that is
 * returned, but not for cold and dry air together: the source gives that corner as a picture. Here each value is
 * held against the psychrometric equation, `e = es(Tw) - A p (T - Tw)`, with `e` the vapor pressure of the air, `p`
 * 1013.25 hPa, `A` 6.60e-4 per °C over water and 5.82e-4 over ice. Where that does not lie within the band of the
 * fit (cold and dry air; also the driest air of warm days, by up to 0.4 °C), the equation is solved instead, and
 * the result says so in `method`; below freezing its value is that of an iced bulb, and its band, 0.5 °C wider at
 * each end, holds undercooled water too.
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: R. Stull, "Wet-bulb temperature from relative humidity and air temperature", Journal of Applied
 * Meteorology and Climatology 50 (2011), 2267-2269; abstract read, coefficients as repeated by others. Psychrometric
 * equation and its coefficients: glossary of the American Meteorological Society; saturation: F. W. Murray, Journal
 * of Applied Meteorology 6 (1967), 203-204, as repeated by others. The width of 0.5 °C is ours.
 *
 * @example
 * ```ts
 * import { quantity, wetBulb } from "ratewright";
 * const tw = wetBulb({ temperature: quantity(20, "°C"), humidity: quantity(50, "%") });
 * Number(tw.value.in("°C").toFixed(1)); // => 13.7
 * Number(tw.high.in("°C").toFixed(1)); // => 14.7
 * wetBulb({ temperature: quantity(-20, "°C"), humidity: quantity(5, "%") }).method; // => "psychrometric equation"
 * ```
 */
export const wetBulb = (input: AirState): WetBulb => {
  const { value, low, high, method } = wetBulbOf(state(input));
  return {
    type: "wet-bulb",
    version: 1,
    value: quantity(value, "°C"),
    low: quantity(low, "°C"),
    high: quantity(high, "°C"),
    method,
  };
};

const stull = ({ t, rh }: { t: number; rh: number }): number =>
  t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659)) +
  Math.atan(t + rh) -
  Math.atan(rh - 1.676331) +
  0.00391838 * rh ** 1.5 * Math.atan(0.023101 * rh) -
  4.686035;

/**
 * Delta T, `T - Tw`: how fast a droplet dries. The band is that of {@link wetBulb}; no air has less than 0, so that
 * the ends of the band stop there.
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
  const { value, low, high, method } = wetBulbOf(air);
  return {
    type: "delta-t",
    version: 1,
    value: quantity(air.t - value, "°C diff"),
    low: quantity(Math.max(0, air.t - high), "°C diff"),
    high: quantity(air.t - low, "°C diff"),
    method,
  };
};
