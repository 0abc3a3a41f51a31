/** Solar declination of a day of the year, radians: `0.409 sin(2 pi J / 365 - 1.39)`, FAO-56 equation 24. */
export const declinationOn = (j: number): number => 0.409 * Math.sin(((2 * Math.PI) / 365) * j - 1.39);

/** Sunset hour angle, radians: `acos(-tan(phi) tan(d))`, equation 25; pi where the sun does not set, 0 where it does not rise. */
export const sunsetAt = (latitude: number, declination: number): number => {
  const x = -Math.tan(latitude) * Math.tan(declination);
  return x >= 1 ? 0 : x <= -1 ? Math.PI : Math.acos(x);
};
