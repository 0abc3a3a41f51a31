import { expectWithin } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  likeQuantity,
  type Quantity,
} from "../../quantity/index.js";

/** The heights between which the profile is used here, in m: our own bounds, no source. */
const lowest = 0.3;
const highest = 30;

/** A wind speed with the height above the ground at which it was measured or forecast. */
export interface WindReading {
  readonly type: "wind-reading";
  readonly version: 1;
  readonly speed: Quantity<"length/time", "none">;
  readonly height: Quantity<"length", "none">;
}

const expectHeight = (input: unknown, path: string): Quantity<"length", "none"> => {
  if (input === undefined)
    return fail(
      "missing",
      path,
      input,
      "a height above the ground: weather stations and forecasts state 10 m",
    );
  const height = expectQuantity(input, { dimension: "length", of: "none", bound: "positive" }, path);
  return expectWithin(
    height,
    height.in("m"),
    path,
    { min: lowest, max: highest, unit: "m" },
    "a height above the ground of {}: weather stations and forecasts state 10 m",
  );
};

const expectSpeed = (input: unknown, path: string): Quantity<"length/time", "none"> =>
  input === undefined
    ? fail("missing", path, input, "a wind speed")
    : withinWinds(
        expectQuantity(input, { dimension: "length/time", of: "none", bound: "non-negative" }, path),
        path,
      );

/** The highest mean wind that was measured is 84 m/s, 188 mi/h, on Mount Washington (from memory). */
const withinWinds = (wind: Quantity<"length/time", "none">, path: string): Quantity<"length/time", "none"> =>
  /^(mi|ft)\//.test(wind.unit)
    ? expectWithin(wind, wind.in("mi/h"), path, { max: 190, unit: "mi/h" }, "a wind speed of {}")
    : expectWithin(wind, wind.in("m/s"), path, { max: 85, unit: "m/s" }, "a wind speed of {}");

/** The profile over short grass without its scale. At 2 m the source prints it rounded, to 4.87. */
const profile = (meters: number): number =>
  Math.abs(meters - 2) < 1e-9 ? 4.87 : Math.log(67.8 * meters - 5.42);

/**
 * The wind speed at another height over short grass, by the logarithmic profile:
 * `u(to) = u(from) ln(67.8 to - 5.42) / ln(67.8 from - 5.42)`, heights in m.
 *
 * For 2 m the logarithm is the printed 4.87 (it is 4.8689), so that to 2 m it is the printed
 * `u2 = uz 4.87 / ln(67.8 z - 5.42)`. Weather stations and forecasts state the wind at 10 m; a label may mean the
 * height of the boom, or 2 m.
 *
 * The profile is that of grass 0.12 m high, upwind for some distance, and air that is mixed by wind or sun. Between
 * buildings, behind trees, above a slope and in a temperature inversion the wind near the ground is another one:
 * measure it where you spray. Heights from 0.3 to 30 m; the bounds are ours, the source names none.
 *
 * @param input.wind - the speed that was measured or forecast
 * @param input.from - the height of that speed above the ground
 * @param input.to - the height that is wanted
 * @returns the speed in the unit of `wind`
 * @throws RatewrightError `missing`, `unit/mismatch`, `substance/mismatch`, `range` for a height outside of 0.3 to 30 m
 * or a speed below zero, `type`
 * Source: R. G. Allen et al., "Crop evapotranspiration", FAO Irrigation and Drainage Paper 56, Rome 1998, equation 47
 * and example 14, as a manual of a meteorological language prints both.
 *
 * @example
 * ```ts
 * import { quantity, windAtHeight } from "ratewright";
 * const wind = quantity(3.2, "m/s");
 * const at2 = windAtHeight({ wind, from: quantity(10, "m"), to: quantity(2, "m") });
 * Number(at2.in("m/s").toFixed(2)); // => 2.39
 * const boom = windAtHeight({ wind: quantity(10, "mi/h"), from: quantity(10, "m"), to: quantity(20, "in") });
 * Number(boom.in("mi/h").toFixed(1)); // => 5.2
 * ```
 */
export const windAtHeight = (input: {
  readonly wind: Quantity<"length/time", "none">;
  readonly from: Quantity<"length", "none">;
  readonly to: Quantity<"length", "none">;
}): Quantity<"length/time", "none"> => {
  const fields = expectFields(input, ["wind", "from", "to"]);
  const { wind, from, to } = allOf({
    wind: () => expectSpeed(fields.wind, "wind"),
    from: () => expectHeight(fields.from, "from"),
    to: () => expectHeight(fields.to, "to"),
  });
  const [low, high] = [from.in("m"), to.in("m")];
  return low === high ? wind : likeQuantity(wind, (wind.value * profile(high)) / profile(low));
};

/**
 * A wind that states its height: what a station, a forecast or a hand-held meter says, kept with where it says it.
 *
 * @param input - `speed`, zero or more, and the `height` above the ground at which it holds
 * @throws RatewrightError `missing`, `unit/mismatch`, `range`, `type`
 *
 * @example
 * ```ts
 * import { quantity, windReading } from "ratewright";
 * windReading({ speed: quantity(9, "mi/h"), height: quantity(10, "m") }).height.in("m"); // => 10
 * windReading({ speed: quantity(9, "mi/h") } as never); // => throws missing
 * ```
 */
export const windReading = (input: {
  readonly speed: Quantity<"length/time", "none">;
  readonly height: Quantity<"length", "none">;
}): WindReading => {
  const fields = expectFields(input, ["speed", "height", "type", "version"]);
  const read = allOf({
    speed: () => expectSpeed(fields.speed, "speed"),
    height: () => expectHeight(fields.height, "height"),
  });
  return { type: "wind-reading", version: 1, ...read };
};

/**
 * A wind that states its height, brought to another height by {@link windAtHeight}.
 *
 * @throws RatewrightError as {@link windAtHeight}
 *
 * Source: as {@link windAtHeight}.
 *
 * @example
 * ```ts
 * import { quantity, windReading, windReadingAt } from "ratewright";
 * const station = windReading({ speed: quantity(5, "m/s"), height: quantity(10, "m") });
 * Number(windReadingAt(station, quantity(2, "m")).speed.in("m/s").toFixed(2)); // => 3.74
 * ```
 */
export const windReadingAt = (reading: WindReading, to: Quantity<"length", "none">): WindReading => {
  const { speed, height } = windReading(reading);
  return windReading({ speed: windAtHeight({ wind: speed, from: height, to }), height: to });
};
