import { expectQuantity, outOfRange, type Quantity } from "../quantity/index.js";

/** Absolute zero. */
export const lowestCelsius = -273.15;
/** Boiling water: neither air nor soil gets there, but a code for "no figure" such as 999.9 does. */
export const highestCelsius = 100;

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
