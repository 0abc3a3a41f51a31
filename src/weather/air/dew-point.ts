import { allOf, expectFields, fail, inUnit, quantity } from "../../quantity/index.js";
import { expectAir, expectHumidity, type Humidity, type Temperature } from "./expect-air.js";

const [slope, offset] = [17.27, 237.3];
/** The bounds of the air in °C: ours, the source names none. */
const [coldest, hottest] = [-30, 60];

/** The natural logarithm of the vapor pressure of saturated air, without its constant. */
const saturation = (celsius: number): number => (slope * celsius) / (offset + celsius);

/** The dew point in °C of air of `celsius` and `percent`. */
export const dewPointC = (celsius: number, percent: number): number => {
  const b = (Math.log(percent / 100) + saturation(celsius)) / slope;
  return (offset * b) / (1 - b);
};

/**
 * The dew point: the temperature at which air of this humidity is saturated, and dew begins to form.
 *
 * `B = (ln(RH / 100) + 17.27 T / (237.3 + T)) / 17.27`, `Td = 237.3 B / (1 - B)`; `T` in °C, `RH` in percent.
 *
 * A leaf under a clear sky is cooler than the air, so that dew forms before the air itself is saturated. Below
 * freezing the formula is that over water, and frost forms a little above it. Air of -30 to 60 °C; the bounds are ours.
 *
 * @returns in the unit of `temperature`
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: University of Arizona meteorological network, "Dewpoint formulas"; the saturation curve is that of FAO
 * Irrigation and Drainage Paper 56, equation 11.
 *
 * @example
 * ```ts
 * import { dewPoint, quantity } from "ratewright";
 * const evening = { temperature: quantity(70, "°F"), humidity: quantity(65, "%") };
 * Number(dewPoint(evening).in("°F").toFixed(1)); // => 57.7
 * dewPoint({ temperature: quantity(20, "°C"), humidity: quantity(100, "%") }).in("°C").toFixed(9); // => "20.000000000"
 * ```
 */
export const dewPoint = (input: {
  readonly temperature: Temperature;
  readonly humidity: Humidity;
}): Temperature => {
  const fields = expectFields(input, ["temperature", "humidity"]);
  const { temperature, humidity } = allOf({
    temperature: () => expectAir(fields.temperature, "temperature", coldest, hottest),
    humidity: () => expectHumidity(fields.humidity, "humidity"),
  });
  return inUnit(quantity(dewPointC(temperature.in("°C"), humidity.in("%")), "°C"), temperature.unit);
};

/**
 * The relative humidity of air from its temperature and dew point: {@link dewPoint} the other way round.
 *
 * `RH = 100 exp(17.27 Td / (237.3 + Td) - 17.27 T / (237.3 + T))`
 *
 * @throws RatewrightError `conflict` for a dew point above the temperature; `missing`, `range`, `unit/mismatch`, `type`
 * Source: as for {@link dewPoint}.
 *
 * @example
 * ```ts
 * import { humidityFromDewPoint, quantity } from "ratewright";
 * const air = { temperature: quantity(25, "°C"), dewPoint: quantity(12, "°C") };
 * Number(humidityFromDewPoint(air).in("%").toFixed(1)); // => 44.3
 * ```
 */
export const humidityFromDewPoint = (input: {
  readonly temperature: Temperature;
  readonly dewPoint: Temperature;
}): Humidity => {
  const fields = expectFields(input, ["temperature", "dewPoint"]);
  const { temperature, dew } = allOf({
    temperature: () => expectAir(fields.temperature, "temperature", coldest, hottest),
    dew: () => expectAir(fields.dewPoint, "dewPoint", -80, hottest),
  });
  const [t, td] = [temperature.in("°C"), dew.in("°C")];
  if (td > t + 1e-9)
    fail("conflict", "dewPoint", dew, `not more than the temperature, which is ${temperature}`);
  return quantity(100 * Math.exp(Math.min(0, saturation(td) - saturation(t))), "%");
};
