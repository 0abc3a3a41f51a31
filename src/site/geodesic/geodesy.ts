import { described } from "../../quantity/house.js";
import { fail } from "../../quantity/index.js";

/** Longitude and latitude in degrees, in the order of GeoJSON. */
export type Place = readonly [longitude: number, latitude: number];

/** What is used of the geodesic library: distances, and the area and edge of a ring, on the WGS84 ellipsoid. */
export interface Geodesy {
  /** Distance of two places, in m. */
  readonly distance: (one: Place, other: Place) => number;
  /** Area in m2 and length of the edge in m of a ring, given without its last place again. */
  readonly ring: (places: readonly Place[]) => { readonly area: number; readonly perimeter: number };
}

interface Polygon {
  AddPoint(latitude: number, longitude: number): void;
  Compute(reverse: boolean, sign: boolean): { readonly area?: number; readonly perimeter: number };
}

interface Ellipsoid {
  Inverse(lat1: number, lon1: number, lat2: number, lon2: number): { readonly s12?: number };
  Polygon(polyline: boolean): Polygon;
}

/** The library stands at another depth for each kind of module. */
const ellipsoidOf = (module: unknown): Ellipsoid | undefined => {
  let found = module as
    | { readonly Geodesic?: { readonly WGS84?: Ellipsoid }; readonly default?: unknown }
    | undefined;
  for (let depth = 0; depth < 3 && found !== undefined && found.Geodesic === undefined; depth++) {
    found = found.default as typeof found;
  }
  return found?.Geodesic?.WGS84;
};

const needed = "the package geographiclib-geodesic: npm install geographiclib-geodesic";

/** Loads the geodesic library; nothing else here loads it. */
export const loadGeodesy = async (): Promise<Geodesy> => {
  const module: unknown = await import("geographiclib-geodesic").catch((error: unknown) =>
    fail("missing", "geographiclib-geodesic", String(error), needed),
  );
  const ellipsoid =
    ellipsoidOf(module) ?? fail("missing", "geographiclib-geodesic", described("another module"), needed);
  return {
    distance: ([lon1, lat1], [lon2, lat2]) => ellipsoid.Inverse(lat1, lon1, lat2, lon2).s12 ?? Number.NaN,
    ring: (places) => {
      const polygon = ellipsoid.Polygon(false);
      for (const [longitude, latitude] of places) polygon.AddPoint(latitude, longitude);
      const { area, perimeter } = polygon.Compute(false, true);
      return { area: Math.abs(area ?? Number.NaN), perimeter };
    },
  };
};
