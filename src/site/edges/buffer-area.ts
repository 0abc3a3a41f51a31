import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectNumber,
  fail,
  outOfRange,
  quantity,
} from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthIn, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";
import type { Point } from "../survey/crossings.js";
import { type Polygon, polygonOf } from "../survey/polygon-area.js";
import { shoelace } from "../survey/rings.js";
import { coveredArea, zoneOf } from "./buffer-sections.js";

/** An edge that a buffer is kept from: one of the outline, or one or all of a hole. */
export interface BufferEdge {
  /** Number of the edge: edge 0 runs from point 0 to point 1, the last one back to point 0. */
  readonly edge?: number;
  /** Number of the hole whose edge it is, such as a pond on the site; all of its edges where `edge` is left out. */
  readonly hole?: number;
  readonly distance: Length;
}

/** A site with a buffer along chosen edges: what the buffer takes away, and what is left. */
export interface BufferArea {
  readonly type: "buffer-area";
  readonly version: 1;
  /** The outline less its holes. */
  readonly gross: Area;
  /** What lies within the distance of a chosen edge; 0 where the distances are. */
  readonly buffer: Area;
  /** What is left: `gross - buffer`, 0 where nothing is. */
  readonly treated: Area;
  readonly edges: readonly {
    readonly edge: number;
    readonly hole?: number;
    readonly length: Length;
    readonly distance: Length;
  }[];
}

/** Edges times buffers: the work grows with it. */
const mostPairs = 200_000;

/**
 * The area of a site that a no-spray buffer along chosen edges takes away, and what is left to treat.
 *
 * Taken away is every point of the site within the `distance` of a chosen edge, measured straight, around corners
 * too: `buffer = area of (site and all within d of an edge)`. It is exact for straight edges and for corners of every
 * kind, convex or not, with holes, and with a distance of its own for each edge: the site is cut into strips between
 * all places where a line or an arc begins, ends or crosses another, and each strip is integrated in closed form.
 *
 * The distance comes from the label, after its reductions ({@link reducedBuffer}). A length that is longer than the
 * strip is wide, as `length * distance` would have it, counts corners twice or misses them; this does not.
 *
 * Which edge is downwind or beside water is the caller's to say; the wind on the day decides. Distances of 0 or more.
 *
 * @param input.points - corners in order, as pairs of numbers
 * @param input.edges - the edges that a buffer is kept from
 * @param input.unit - the unit of length of the numbers
 * @throws RatewrightError `range` for an edge or a hole that is not there, or for too much work; `duplicate` for an edge
 * given twice; `missing` where neither `edge` nor `hole` is given; and what {@link polygonArea} throws
 *
 * Source: plane geometry. Checked against a count of small squares.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { bufferArea } from "ratewright/site";
 * const field = { points: [[0, 0], [300, 0], [300, 200], [0, 200]], unit: "ft" } as const;
 * const creek = bufferArea({ ...field, edges: [{ edge: 0, distance: quantity(50, "ft") }] });
 * creek.buffer.in("ft2"); // => 15000
 * creek.treated.in("ft2"); // => 45000
 * ```
 */
export const bufferArea = (input: {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly unit: string;
  readonly holes?: readonly (readonly (readonly [x: number, y: number])[])[];
  readonly edges: readonly BufferEdge[];
}): BufferArea => {
  const { site, list } = readField(input);
  const chosen = chosenEdges(list, site);
  const { units } = site;
  const rings = ringsFromFirstCorner(site);
  const edges = rings.flatMap((ring) => ring.map((_, edge) => edgeOf(ring, edge)));
  const kept = chosen.filter(({ distance }) => distance.value > 0);
  if (kept.length * edges.length + kept.length * kept.length > mostPairs) {
    outOfRange("edges", list, { max: mostPairs, count: "pairs of an edge and a buffer" }, "fewer edges: {}");
  }
  const zones = kept.map(({ ring, edge, distance }) =>
    zoneOf(...edgeOf(rings[ring] as Ring, edge), distance.in(units.length)),
  );
  const gross = rings.slice(1).reduce((sum, ring) => sum - shoelace(ring), shoelace(rings[0] as Ring));
  const covered = zones.length === 0 ? 0 : Math.min(gross, Math.max(0, coveredArea(edges, zones)));
  const left = gross - covered;
  const nothing = left <= 1e-12 * gross;
  return {
    type: "buffer-area",
    version: 1,
    gross: areaIn(gross, units),
    buffer: quantity(nothing ? gross : covered, units.area),
    treated: quantity(nothing ? 0 : left, units.area),
    edges: chosen.map(({ ring, edge, distance }) => {
      const [[x, y], [u, v]] = edgeOf(rings[ring] as Ring, edge);
      return {
        edge,
        ...(ring === 0 ? {} : { hole: ring - 1 }),
        length: lengthIn(Math.hypot(u - x, v - y), units),
        distance,
      };
    }),
  };
};

type Ring = readonly Point[];

/** The outline with its holes, and the edges as they were given. */
const readField = (input: unknown): { readonly site: Polygon; readonly list: readonly unknown[] } => {
  const problems = checks();
  const record = recordWith(input, ["points", "unit", "holes", "edges"], problems, "input");
  const site = problems.run(() => {
    const { points, unit, holes } = record;
    if (typeof unit !== "string") return fail("type", "unit", unit, 'a unit for a length, such as "ft"');
    return polygonOf(points, unit, holes === undefined ? undefined : { holes });
  });
  const list = problems.run(() => expectList(record.edges, "edges", "edge"));
  problems.done();
  return { site: site as Polygon, list: list as readonly unknown[] };
};

/** The outline and the holes as seen from the first corner: a grid far from zero costs no digits. */
const ringsFromFirstCorner = ({ outline, holes }: Polygon): readonly Ring[] => {
  const [originX, originY] = outline[0] as Point;
  return [outline, ...holes].map((ring) => ring.map(([x, y]): Point => [x - originX, y - originY]));
};

const edgeOf = (ring: Ring, edge: number): readonly [Point, Point] => [
  ring[edge] as Point,
  ring[(edge + 1) % ring.length] as Point,
];

interface Chosen {
  /** 0 for the outline, 1 and up for a hole. */
  readonly ring: number;
  readonly edge: number;
  readonly distance: Length;
}

const chosenEdges = (list: readonly unknown[], { outline, holes }: Polygon): readonly Chosen[] => {
  const problems = checks();
  const seen = new Set<string>();
  const found: Chosen[] = [];
  list.forEach((item, i) => {
    const at = `edges[${i}]`;
    problems.run(() => {
      const record = expectFields(item, ["edge", "hole", "distance"], at);
      const distance = lengthOf(record.distance, `${at}.distance`, "non-negative");
      const hole = record.hole === undefined ? undefined : indexOf(record.hole, holes.length, `${at}.hole`);
      const ring = hole === undefined ? outline : (holes[hole] as readonly Point[]);
      if (record.edge === undefined && hole === undefined) {
        fail("missing", `${at}.edge`, undefined, "the number of an edge, or of a hole");
      }
      const edges =
        record.edge === undefined ? ring.map((_, k) => k) : [indexOf(record.edge, ring.length, `${at}.edge`)];
      for (const edge of edges) {
        const key = `${hole ?? "outline"} ${edge}`;
        if (seen.has(key)) fail("duplicate", at, described(`edge ${edge}`), "each edge once");
        seen.add(key);
        found.push({ ring: hole === undefined ? 0 : hole + 1, edge, distance });
      }
    });
  });
  problems.done();
  return found;
};

const indexOf = (input: unknown, count: number, path: string): number => {
  const at = expectNumber(input, path, { min: 0 });
  return Number.isInteger(at) && at < count
    ? at
    : count === 0
      ? fail("range", path, input, "no hole: none was given")
      : outOfRange(path, input, { step: 1, min: 0, max: count - 1 });
};
