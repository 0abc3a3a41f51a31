import { weatherAirChecks } from "./weather-air.js";

/** Published checks of the room of weather. */
export const weatherChecks = [...weatherAirChecks];
