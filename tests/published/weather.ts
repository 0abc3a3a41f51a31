import type { PublishedCheck } from "./check.js";
import { weatherAirChecks } from "./weather-air.js";
import { weatherSunChecks } from "./weather-sun.js";

/** Published checks of the room of weather. */
export const weatherChecks: readonly PublishedCheck[] = [...weatherAirChecks, ...weatherSunChecks];
