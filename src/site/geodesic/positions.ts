import { described } from "../../quantity/house.js";
import { checks, fail, outOfRange } from "../../quantity/index.js";
import type { Place } from "./geodesy.js";

/** As many positions as one outline or track may have. */
export const mostPositions = 20_000;

/** Takes a position of GeoJSON: longitude first, latitude second, an elevation that is not read. */
export const placeOf = (input: unknown, path: string): Place => {
  const expected = "a position [longitude, latitude] in degrees";
  if (!Array.isArray(input) || input.length < 2 || input.length > 3)
    return fail("type", path, input, expected);
  const [longitude, latitude] = input as readonly unknown[];
  const problems = checks();
  [longitude, latitude].forEach((degrees, i) => {
    if (!Number.isFinite(degrees)) {
      problems.run(() => fail("not-finite", `${path}[${i}]`, degrees, "degrees, a finite number"));
    }
  });
  problems.done();
  const [lon, lat] = [longitude as number, latitude as number];
  if (Math.abs(lon) > 360 || Math.abs(lat) > 360) {
    outOfRange(
      path,
      described(`${lon}, ${lat}`),
      { min: -360, max: 360, unit: "deg" },
      `${expected} of {}: eastings and northings go to polygonArea of ratewright/site`,
    );
  }
  if (Math.abs(lat) > 90) {
    const swapped = Math.abs(lon) <= 90;
    outOfRange(
      `${path}[1]`,
      lat,
      { min: -90, max: 90 },
      swapped
        ? "a latitude of {} in the second place: longitude and latitude look swapped"
        : "a latitude of {}",
    );
  }
  if (Math.abs(lon) > 180) outOfRange(`${path}[0]`, lon, { min: -180, max: 180 }, "a longitude of {}");
  return [lon + 0, lat + 0];
};

/** Takes a list of positions; every one that is not right is told. */
export const placesOf = (input: unknown, path: string): readonly Place[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list of positions");
  if (input.length === 0 || input.length > mostPositions) {
    return outOfRange(path, input, { min: 1, max: mostPositions, count: "positions" });
  }
  const problems = checks();
  const places = Array.from(input, (item: unknown, i) => problems.run(() => placeOf(item, `${path}[${i}]`)));
  problems.done();
  return places as readonly Place[];
};
