import { expectWithin } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { expectNumber, expectQuantity, fail, outOfRange } from "../../quantity/index.js";
import {
  type Angle,
  angle,
  anyLength,
  type Length,
  type Rate,
  type Read,
  type Temperature,
} from "../read.js";

/** Takes the temperature of air near the ground; codes for "no figure" and the other scale lie outside. */
export const temperature: Read<Temperature> = (input, path) => {
  if (input === undefined || input === null)
    return fail("missing", path, input, 'an air temperature, such as quantity(21.5, "°C")');
  const t = expectQuantity(input, { dimension: "temperature", of: "none" }, path);
  return expectWithin(t, t.in("°C"), path, { min: -90, max: 60, unit: "°C" }, "an air temperature of {}");
};

/** Takes the height of a place above the sea, from the lowest shore to the highest summit. */
export const elevation: Read<Length> = (input, path) => {
  const z = anyLength(input, path);
  expectNumber(z.in("m"), path, { min: -500, max: 9000 });
  return z;
};

/** Takes a latitude, negative in the south. */
export const latitude: Read<Angle> = (input, path) => {
  const at = angle(input, path);
  return expectWithin(
    at,
    at.in("deg"),
    path,
    { min: -90, max: 90, unit: "deg" },
    "a latitude of {}, negative in the south",
  );
};

/** Takes a longitude, negative in the west. */
export const longitude: Read<Angle> = (input, path) => {
  const at = angle(input, path);
  return expectWithin(
    at,
    at.in("deg"),
    path,
    { min: -180, max: 180, unit: "deg" },
    "a longitude of {}, negative in the west",
  );
};

/** Takes a day of the year, 1 to 366. */
export const dayNumber: Read<number> = (input, path) => {
  if (input === undefined) fail("missing", path, input, "a day of the year; dayOfYear(date) gives it");
  const day = expectNumber(input, path, { min: 1, max: 366 });
  return Number.isInteger(day)
    ? day
    : outOfRange(path, day, { step: 1, min: 1, max: 366 }, "a day of the year: {}");
};

/** Takes a wind speed near the ground. */
export const speed: Read<Rate> = (input, path) => {
  if (input === undefined || input === null)
    return fail("missing", path, input, 'a wind speed, such as quantity(2.8, "m/s")');
  const u = expectQuantity(input, { dimension: "length/time", of: "none", bound: "non-negative" }, path);
  return expectWithin(u, u.in("m/s"), path, { max: 85, unit: "m/s" }, "a wind speed of {}");
};

/** Refuses a lowest temperature above the highest. */
export const expectOrder = (min: Temperature, max: Temperature): void => {
  if (exceeds(min.in("°C"), max.in("°C")))
    fail("conflict", "min", min, `not more than max, ${max.toString()}`);
};
