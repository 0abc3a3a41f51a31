import { type CivilDate, daysBetween } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { expectQuantity, fail, outOfRange, type Quantity } from "../../quantity/index.js";

const rad = Math.PI / 180;
/** Where the upper edge of the sun stands on the horizon, with the refraction of the air, in degrees from the zenith. */
const zenith = 90.833;

const sin = (degrees: number): number => Math.sin(degrees * rad);
const cos = (degrees: number): number => Math.cos(degrees * rad);
/** Days of a century of 100 Julian years. */
const century = 36525;

/**
 * Equation of time in minutes and declination in radians, at a number of minutes after 00:00 UTC of a date: mean longitude,
 * anomaly, center and nutation of the sun in centuries since noon of 1 January 2000.
 */
export const solarAt = (
  date: CivilDate,
  minutes: number,
): { readonly eqtime: number; readonly declination: number } => {
  const t = (daysBetween("2000-01-01", date) + minutes / 1440 - 0.5) / century;
  const longitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
  const anomaly = 357.52911 + t * (35999.05029 - 0.0001537 * t);
  const eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const center =
    sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
    sin(3 * anomaly) * 0.000289;
  const node = 125.04 - 1934.136 * t;
  const apparent = longitude + center - 0.00569 - 0.00478 * sin(node);
  const obliquity =
    23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))) / 60) / 60 + 0.00256 * cos(node);
  const y = Math.tan((obliquity / 2) * rad) ** 2;
  const eqtime =
    y * sin(2 * longitude) -
    2 * eccentricity * sin(anomaly) +
    4 * eccentricity * y * sin(anomaly) * cos(2 * longitude) -
    0.5 * y * y * sin(4 * longitude) -
    1.25 * eccentricity * eccentricity * sin(2 * anomaly);
  return { eqtime: (4 * eqtime) / rad, declination: Math.asin(sin(obliquity) * sin(apparent)) };
};

/** The hour angle at which the sun rises, in degrees; 180 where it stays up, 0 where it stays down. */
export const riseAngle = (latitude: number, declination: number): number => {
  const phi = latitude * rad;
  const angle = cos(zenith) / (Math.cos(phi) * Math.cos(declination)) - Math.tan(phi) * Math.tan(declination);
  return Math.acos(Math.min(1, Math.max(-1, angle))) / rad;
};

/** Takes a latitude or a longitude in degrees. */
export const expectDegrees = (input: unknown, path: string, most: number, sense: string): number => {
  if (input === undefined) return fail("missing", path, input, `${-most} to ${most} deg, ${sense}`);
  const angle: Quantity<"angle", "none"> = expectQuantity(input, { dimension: "angle", of: "none" }, path);
  const degrees = angle.in("deg");
  return exceeds(Math.abs(degrees), most)
    ? outOfRange(path, angle, { min: -most, max: most, unit: "deg" }, `{}, ${sense}`)
    : degrees;
};

/** How an error names the senses. */
export const north = "positive north of the equator";
export const east = "positive east of Greenwich: in America it is negative";
