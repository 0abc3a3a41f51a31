import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectRecord,
  type Finding,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { isInside, overlap, refuseHoles, ringOf } from "../survey/rings.js";
import { type Geodesy, loadGeodesy, type Place } from "./geodesy.js";
import { placeOf, placesOf } from "./positions.js";

/** A polygon of GeoJSON: the outline first, then what is cut out of it. */
export interface GeoPolygon {
  readonly type: "Polygon";
  readonly coordinates: readonly (readonly (readonly number[])[])[];
}

/** Several polygons of GeoJSON. */
export interface GeoMultiPolygon {
  readonly type: "MultiPolygon";
  readonly coordinates: readonly (readonly (readonly (readonly number[])[])[])[];
}

/** A feature of GeoJSON with one of the two. */
export interface GeoFeature {
  readonly type: "Feature";
  readonly geometry: GeoPolygon | GeoMultiPolygon;
  readonly properties?: unknown;
}

/** An area on the ellipsoid. */
export interface GeodesicArea {
  readonly type: "geodesic-area";
  readonly version: 1;
  /** The outlines less their cut-outs: an area as a map shows it, tagged as such. */
  readonly area: Quantity<"area", "plan">;
  /** Length of all outlines and cut-outs. */
  readonly perimeter: Quantity<"length", "none">;
  readonly parts: readonly {
    readonly area: Quantity<"area", "plan">;
    readonly outline: Quantity<"area", "plan">;
    readonly cutOuts: readonly Quantity<"area", "plan">[];
  }[];
  readonly findings: readonly Finding[];
}

/**
 * The area of a polygon or multipolygon of GeoJSON on the WGS84 ellipsoid, with holes, by geodesics.
 *
 * The area is that of the geodesic polygon (Karney's method, to some 0.1 m2 for the largest, far less for a site):
 * no map projection and no zone. It is the plan area, tagged `plan`; `surfaceArea` of `ratewright/site` brings it to
 * sloping ground, and a part `{ shape: "measured", area, slope: "level" }` takes it as it is. In m2, lengths in m.
 *
 * Read, not believed: rings must be closed (the first position again as the last) and must not cross themselves;
 * holes must lie inside their outline and apart; parts must not overlap; all of it is told with its place, such as
 * `coordinates[0]`. Crossings are looked for along straight lines of longitude and latitude, as GeoJSON draws edges; at
 * the size of a site geodesics are the same to the centimeter.
 *
 * GeoJSON puts longitude first. A latitude of more than 90 is refused as swapped; where both numbers could be either,
 * only `near`, a place that is known, can tell: a polygon more than 100 km away from it is refused. Without `near` a
 * finding says that this was not checked.
 *
 * Needs the package `geographiclib-geodesic` beside this library; it is loaded at the first call.
 *
 * @param geometry - a Polygon, a MultiPolygon, or a Feature with one
 * @param options.near - a known position of the site, `[longitude, latitude]`
 * @throws RatewrightError `conflict` for an open ring, edges that cross, a hole outside of its outline, parts that
 * overlap, a place far from `near`; `range` for degrees out of range, eastings and northings, fewer than 3 corners;
 * `missing` for the package; `type`, `duplicate`, `not-finite`
 *
 * Source: C. F. F. Karney, "Algorithms for geodesics", J. Geodesy 87, 43-55 (2013); RFC 7946 for GeoJSON.
 *
 * @example
 * ```ts
 * import { geodesicArea } from "ratewright/site/geodesic";
 * const pitch = await geodesicArea({
 *   type: "Polygon",
 *   coordinates: [[[8, 50], [8.001, 50], [8.001, 50.001], [8, 50.001], [8, 50]]],
 * });
 * Math.round(pitch.area.in("m2")); // => 7975
 * Number(pitch.area.in("acre").toFixed(2)); // => 1.97
 * ```
 */
export const geodesicArea = async (
  geometry: GeoPolygon | GeoMultiPolygon | GeoFeature,
  options: { readonly near?: readonly [longitude: number, latitude: number] } = {},
): Promise<GeodesicArea> => {
  const record = expectFields(options, ["near"], "options");
  const problems = checks();
  const parts = problems.run(() => polygonsOf(geometry));
  const near = record.near === undefined ? undefined : problems.run(() => placeOf(record.near, "near"));
  problems.done();
  const geodesy = await loadGeodesy();
  const read = parts as readonly GeoPart[];
  if (near !== undefined) refuseFar(geodesy, read, near);
  let [area, perimeter] = [0, 0];
  const found = read.map(({ outline, holes }) => {
    const [whole, ...cut] = [outline, ...holes].map((ring) => geodesy.ring(ring)) as [Ring, ...Ring[]];
    const net = cut.reduce((sum, hole) => sum - hole.area, whole.area);
    area += net;
    perimeter += cut.reduce((sum, hole) => sum + hole.perimeter, whole.perimeter);
    return {
      area: quantity(net, "m2", "plan"),
      outline: quantity(whole.area, "m2", "plan"),
      cutOuts: cut.map((hole) => quantity(hole.area, "m2", "plan")),
    };
  });
  if (!(area > 0)) outOfRange("coordinates", area, { above: 0, unit: "m2" });
  return {
    type: "geodesic-area",
    version: 1,
    area: quantity(area, "m2", "plan"),
    perimeter: quantity(perimeter, "m"),
    parts: found,
    findings: near === undefined ? [orderFinding()] : [],
  };
};

type Ring = ReturnType<Geodesy["ring"]>;

const orderFinding = (): Finding => ({
  code: "position-order-unchecked",
  severity: "note",
  path: "coordinates",
  params: { order: "longitude, latitude" },
  text: "Longitude was taken first, as GeoJSON has it. Whether the two are swapped was not checked: give a known place as near.",
});

/** A polygon that was read, with the path of its place. */
interface GeoPart {
  readonly outline: readonly Place[];
  readonly holes: readonly (readonly Place[])[];
  readonly path: string;
}

const mostParts = 200;

export const polygonsOf = (input: unknown): readonly GeoPart[] => {
  const record = expectRecord(input, "geometry", "a Polygon or MultiPolygon of GeoJSON");
  const { type } = record;
  if (type === "Feature") return polygonsOf(record.geometry);
  if (type === "FeatureCollection") {
    return fail("type", "geometry", type, "one feature at a time: geodesicArea(collection.features[0])");
  }
  if (type === "Polygon") return [partOf(record.coordinates, "coordinates")];
  if (type !== "MultiPolygon") {
    const expected = "Polygon, MultiPolygon or Feature; a track of positions goes to cleanPositions";
    return fail("type", "geometry.type", type, expected);
  }
  const list = expectList(record.coordinates, "coordinates", "polygon");
  if (list.length > mostParts) outOfRange("coordinates", list, { max: mostParts, count: "polygons" });
  const problems = checks();
  const parts = list.map((item, i) => problems.run(() => partOf(item, `coordinates[${i}]`)));
  problems.done();
  const read = parts as readonly GeoPart[];
  read.forEach((part, i) => {
    read.slice(0, i).forEach((other) => {
      // a part may lie in the hole of another
      const apart =
        !overlap(part.outline, other.outline) ||
        other.holes.some((hole) => isInside(part.outline, hole)) ||
        part.holes.some((hole) => isInside(other.outline, hole));
      if (!apart) {
        problems.run(() =>
          fail("conflict", part.path, described(`a polygon over ${other.path}`), "polygons apart"),
        );
      }
    });
  });
  problems.done();
  return read;
};

const partOf = (input: unknown, path: string): GeoPart => {
  const rings = expectList(input, path, "ring");
  const problems = checks();
  const read = rings.map((ring, i) => problems.run(() => closedRing(ring, `${path}[${i}]`)));
  problems.done();
  const [outline, ...holes] = read as readonly (readonly Place[])[];
  refuseHoles(outline as readonly Place[], holes, (i) => `${path}[${i + 1}]`);
  return { outline: outline as readonly Place[], holes, path };
};

/** A ring of GeoJSON: closed, and without crossings. */
const closedRing = (input: unknown, path: string): readonly Place[] => {
  const places = placesOf(input, path);
  const [first, last] = [places[0] as Place, places[places.length - 1] as Place];
  if (places.length < 4 || first[0] !== last[0] || first[1] !== last[1]) {
    fail(
      "conflict",
      path,
      described(
        places.length < 4
          ? `a ring of ${places.length} positions`
          : `an open ring: ${first.join(", ")} to ${last.join(", ")}`,
      ),
      "a closed ring: 4 positions or more, the first again as the last",
    );
  }
  places.forEach((place, i) => {
    const next = places[i + 1];
    if (next !== undefined && Math.abs(next[0] - place[0]) > 180) {
      fail(
        "range",
        `${path}[${i}]`,
        described("an edge across the antimeridian"),
        "a polygon cut in two there, as GeoJSON asks",
      );
    }
  });
  return ringOf(places, path, "each position once: cleanPositions drops repeated fixes");
};

/** Farther from a known place than this is another place. */
const farMeters = 100_000;

const refuseFar = (geodesy: Geodesy, parts: readonly GeoPart[], near: Place): void => {
  for (const { outline, path } of parts) {
    const first = outline[0] as Place;
    const away = geodesy.distance(first, near);
    if (away <= farMeters) continue;
    const [lon, lat] = first;
    const swapped = Math.abs(lon) <= 90 && geodesy.distance([lat, lon], near) <= farMeters;
    fail(
      "conflict",
      path,
      described(`a place ${Math.round(away / 1000)} km from near`),
      swapped ? "longitude first: with the two numbers swapped it is near" : "a place within 100 km of near",
    );
  }
};
