import { expectQuantity, outOfRange, type Quantity } from "../quantity/index.js";

/** Below any air that was measured, -89.2 °C at Vostok (from memory). */
export const lowestCelsius = -90;
/** Above any soil below its surface (from memory); 77 °F under °C is beyond, and a code for "no figure" such as 999.9. */
export const highestCelsius = 75;
/** Above any air that was measured, 56.7 °C in Death Valley (from memory). */
export const highestAirCelsius = 60;

/** Takes a temperature of air or soil, or throws: `range` for one that neither can have. */
export const expectTemperature = (input: unknown, path: string): Quantity<"temperature", "none"> => {
  const t = expectQuantity(input, { dimension: "temperature", of: "none" }, path);
  const celsius = t.in("°C");
  return celsius < lowestCelsius - 1e-9 || celsius > highestCelsius + 1e-9
    ? outOfRange(
        path,
        t,
        { min: lowestCelsius, max: highestCelsius, unit: "°C" },
        "a temperature of air or soil: {}",
      )
    : t;
};
