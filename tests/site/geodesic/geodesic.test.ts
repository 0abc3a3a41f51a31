import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../../src/quantity/index.js";
import { cleanPositions, type GeoPolygon, geodesicArea } from "../../../src/site/geodesic/index.js";
import { polygonArea, siteArea, surfaceArea } from "../../../src/site/index.js";
import { rejections } from "../../errors.js";
import { runs } from "../../properties.js";
import { close } from "../helpers.js";

type Place = readonly [number, number];
type Points = readonly Place[];

const closed = (points: Points): Points => [...points, points[0] as Place];
const polygon = (...rings: readonly Points[]): GeoPolygon => ({
  type: "Polygon",
  coordinates: rings.map(closed),
});
const box = (lon: number, lat: number, w: number, h: number): Points => [
  [lon, lat],
  [lon + w, lat],
  [lon + w, lat + h],
  [lon, lat + h],
];

const untyped = geodesicArea as (input: unknown, options?: unknown) => Promise<unknown>;

describe("area on the ellipsoid", () => {
  test("small boxes as the radii of curvature have it, anywhere", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.double({ min: -179, max: 178, noNaN: true }),
        fc.double({ min: -70, max: 70, noNaN: true }),
        async (lon, lat) => {
          // WGS84, by hand: area of a cell is the integral of M N cos(lat)
          const [a, f, d] = [6378137, 1 / 298.257223563, 0.001];
          const e2 = f * (2 - f);
          const cell = (phi: number): number => {
            const w2 = 1 - e2 * Math.sin(phi) ** 2;
            return ((a * (1 - e2)) / w2 ** 1.5) * (a / Math.sqrt(w2)) * Math.cos(phi);
          };
          const middle = ((lat + d / 2) * Math.PI) / 180;
          const expected = cell(middle) * ((d * Math.PI) / 180) ** 2;
          const { area } = await geodesicArea(polygon(box(lon, lat, d, d)));
          close(area.in("m2"), expected, 1e-6);
        },
      ),
      runs(40),
    );
  });

  test("the order of corners and the start change nothing; a hole is taken off; parts add up", async () => {
    const outline = box(8, 50, 0.002, 0.001);
    const hole = box(8.0005, 50.0002, 0.0003, 0.0003);
    const whole = (await geodesicArea(polygon(outline))).area.in("m2");
    const cut = (await geodesicArea(polygon(hole))).area.in("m2");
    close((await geodesicArea(polygon([...outline].reverse()))).area.in("m2"), whole, 1e-9);
    close(
      (await geodesicArea(polygon([...outline.slice(2), ...outline.slice(0, 2)]))).area.in("m2"),
      whole,
      1e-9,
    );
    const net = await geodesicArea(polygon(outline, hole));
    close(net.area.in("m2"), whole - cut, 1e-9);
    expect(net.parts[0]?.cutOuts).toHaveLength(1);
    const other = box(8.01, 50, 0.001, 0.001);
    const both = await geodesicArea({
      type: "MultiPolygon",
      coordinates: [[closed(outline), closed(hole)], [closed(other)]],
    });
    const second = (await geodesicArea(polygon(other))).area.in("m2");
    close(both.area.in("m2"), whole - cut + second, 1e-9);
    expect(both.parts).toHaveLength(2);
    const feature = { type: "Feature", properties: {}, geometry: polygon(outline, hole) } as const;
    close((await geodesicArea(feature)).area.in("m2"), whole - cut, 1e-9);
  });

  test("a plane nearby agrees", async () => {
    // metres north and east of a place, by the radii of curvature at it
    const lat = 40;
    const [a, f] = [6378137, 1 / 298.257223563];
    const e2 = f * (2 - f);
    const w2 = 1 - e2 * Math.sin((lat * Math.PI) / 180) ** 2;
    const north = ((a * (1 - e2)) / w2 ** 1.5) * (Math.PI / 180);
    const east = (a / Math.sqrt(w2)) * Math.cos((lat * Math.PI) / 180) * (Math.PI / 180);
    const corners: Points = [
      [0, 0],
      [120, 10],
      [140, 90],
      [60, 110],
      [-10, 60],
    ];
    const places = corners.map(([x, y]): Place => [-75 + x / east, lat + y / north]);
    const { area, perimeter } = await geodesicArea(polygon(places), { near: [-75, 40] });
    close(area.in("m2"), polygonArea(corners, "m").in("m2"), 1e-4);
    const around = corners.reduce((sum, [x, y], i) => {
      const [u, v] = corners[(i + 1) % corners.length] as Place;
      return sum + Math.hypot(u - x, v - y);
    }, 0);
    close(perimeter.in("m"), around, 1e-4);
  });

  test("figures of open geodesy packages, to the printed place", async () => {
    // The package's own test Planimeter0: a diamond of 1 degree at the equator.
    const diamond = await geodesicArea(
      polygon([
        [-1, 0],
        [0, -1],
        [1, 0],
        [0, 1],
      ]),
    );
    expect(Math.abs(diamond.area.in("m2") - 24_619_419_146)).toBeLessThanOrEqual(1);
    expect(Math.abs(diamond.perimeter.in("m") - 627_598.2731)).toBeLessThanOrEqual(1e-4);
    // A test of an R package of the British grid, with the area that GeographicLib's Planimeter gives.
    const places: Points = [
      [-6.43698696, 58.21740316],
      [-6.43166843, 58.21930597],
      [-6.42706831, 58.22014035],
      [-6.42102546, 58.22034112],
      [-6.42248238, 58.21849188],
      [-6.42639092, 58.21853606],
      [-6.42998435, 58.21824033],
      [-6.43321409, 58.21748949],
    ];
    expect(Math.abs((await geodesicArea(polygon(places))).area.in("m2") - 133_610.6)).toBeLessThan(0.05);
  });

  test("the result goes on to the ground and into a site", async () => {
    const { area } = await geodesicArea(polygon(box(8, 50, 0.001, 0.001)));
    expect(area.of).toBe("plan");
    close(surfaceArea(area, "75 %").in("m2"), 1.25 * area.in("m2"));
    close(siteArea({ parts: [{ shape: "measured", area, slope: "level" }] }).net.in("m2"), area.in("m2"));
  });
});

describe("refused with the place", () => {
  const outline = box(8, 50, 0.002, 0.001);

  test("open rings, crossings, repeats, too few", async () => {
    expect(await rejections(untyped({ type: "Polygon", coordinates: [outline] }))).toEqual([
      "conflict coordinates[0]",
    ]);
    const [a, b, c, d] = outline as readonly [Place, Place, Place, Place];
    expect(await rejections(geodesicArea(polygon([a, c, b, d])))).toEqual(["conflict coordinates[0]"]);
    expect(await rejections(geodesicArea(polygon([a, b, b, c, d])))).toEqual(["duplicate coordinates[0][2]"]);
    expect(await rejections(geodesicArea(polygon([a, b])))).toEqual(["conflict coordinates[0]"]);
  });

  test("holes outside or over one another, parts over one another", async () => {
    const far = box(9, 50, 0.0001, 0.0001);
    const hole = box(8.0005, 50.0002, 0.0003, 0.0003);
    expect(await rejections(geodesicArea(polygon(outline, far)))).toEqual(["conflict coordinates[1][0]"]);
    expect(await rejections(geodesicArea(polygon(outline, hole, hole)))).toEqual(["conflict coordinates[2]"]);
    const twice = { type: "MultiPolygon", coordinates: [[closed(outline)], [closed(outline)]] } as const;
    expect(await rejections(geodesicArea(twice))).toEqual(["conflict coordinates[1]"]);
    // a part in the hole of another is a part
    const island = {
      type: "MultiPolygon",
      coordinates: [[closed(outline), closed(hole)], [closed(hole)]],
    } as const;
    const { area } = await geodesicArea(island);
    close(area.in("m2"), (await geodesicArea(polygon(outline))).area.in("m2"), 1e-9);
    const beside = {
      type: "MultiPolygon",
      coordinates: [[closed(outline)], [closed(box(8.002, 50, 0.001, 0.001))]],
    } as const;
    expect((await geodesicArea(beside)).parts).toHaveLength(2);
  });

  test("swapped, out of range, meters for degrees", async () => {
    // longitude -105 as a latitude
    const swapped = polygon([
      [40, -105],
      [40.001, -105],
      [40.001, -105.001],
    ]);
    const error = await geodesicArea(swapped).catch((caught: unknown) => caught as RatewrightError);
    expect(error).toBeInstanceOf(RatewrightError);
    const problems = (error as RatewrightError).problems;
    expect(problems[0]).toMatchObject({ code: "range", path: "coordinates[0][0][1]" });
    expect(problems[0]?.expected).toContain("swapped");
    const grid = await geodesicArea(polygon(box(500_000, 4_500_000, 100, 100))).catch(
      (caught: unknown) => caught as RatewrightError,
    );
    expect((grid as RatewrightError).problems[0]?.expected).toContain("polygonArea");
    // 11 and 48 could be either: only a known place can tell
    const both = polygon(box(48, 11, 0.001, 0.001));
    expect((await geodesicArea(both)).findings.map(({ code }) => code)).toEqual(["position-order-unchecked"]);
    const near = await geodesicArea(both, { near: [11.01, 48.02] }).catch(
      (caught: unknown) => caught as RatewrightError,
    );
    expect((near as RatewrightError).problems[0]).toMatchObject({ code: "conflict", path: "coordinates" });
    expect((near as RatewrightError).problems[0]?.expected).toContain("swapped");
    expect((await geodesicArea(polygon(outline), { near: [8.1, 50.1] })).findings).toEqual([]);
    expect(
      await rejections(
        geodesicArea(
          polygon(
            box(179.9995, 10, 0.0001, 0.001).map(
              ([x, y], i): Place => (i === 1 || i === 2 ? [-179.9999, y] : [x, y]),
            ),
          ),
        ),
      ),
    ).toEqual(["range coordinates[0][0]"]);
  });

  test("what is no polygon", async () => {
    expect(await rejections(untyped(null))).toEqual(["type geometry"]);
    expect(await rejections(untyped({ type: "LineString", coordinates: [] }))).toEqual([
      "type geometry.type",
    ]);
    expect(await rejections(untyped({ type: "FeatureCollection", features: [] }))).toEqual(["type geometry"]);
    expect(await rejections(untyped({ type: "Polygon", coordinates: [] }))).toEqual(["missing coordinates"]);
    expect(
      await rejections(untyped({ type: "Polygon", coordinates: [[[1, "2"], [1, Number.NaN], 3]] })),
    ).toEqual([
      "not-finite coordinates[0][0][1]",
      "not-finite coordinates[0][1][1]",
      "type coordinates[0][2]",
    ]);
    expect(await rejections(untyped(polygon(outline), { naer: [1, 2] }))).toEqual(["type options.naer"]);
  });
});

describe("clean-up of a walk", () => {
  const accuracy = quantity(2, "m");
  // some 70 m a side
  const walk: Points = box(8, 50, 0.001, 0.0006);

  test("a clean walk is left as it is, and closed as a ring", async () => {
    const result = await cleanPositions({ positions: walk, accuracy });
    expect(result.positions).toEqual(walk);
    expect(result.ring).toEqual(closed(walk));
    expect(result.dropped).toEqual([]);
    // and the ring is a polygon
    const { area } = await geodesicArea({ type: "Polygon", coordinates: [result.ring] });
    expect(area.in("m2")).toBeGreaterThan(4000);
  });

  test("repeats, back-steps and the end at the start are dropped and told", async () => {
    const [a, b, c, d] = walk as readonly [Place, Place, Place, Place];
    // 1e-5 degrees are 0.7 m east and 1.1 m north
    const noisy: Points = [a, [8.000005, 50], b, [8.00096, 50.000005], c, d, [8.00001, 50.000005]];
    const result = await cleanPositions({ positions: noisy, accuracy });
    expect(result.positions).toEqual(walk);
    expect(result.dropped.map(({ index, reason }) => `${index} ${reason}`)).toEqual([
      "1 repeat",
      "3 back-step",
      "6 closing",
    ]);
  });

  test("a true turn, and a step back that is longer than two errors, stay", async () => {
    const [a, b] = walk as readonly [Place, Place, Place, Place];
    const back: Points = [a, b, [8.0009, 50], [8.0009, 50.001]];
    expect((await cleanPositions({ positions: back, accuracy })).dropped).toEqual([]);
  });

  test("what is kept and what is dropped make the whole; refusals", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 })), {
          minLength: 1,
          maxLength: 20,
        }),
        async (steps) => {
          const positions = steps.map(([x, y]): Place => [8 + x * 1e-5, 50 + y * 1e-5]);
          const { positions: kept, dropped } = await cleanPositions({ positions, accuracy });
          expect(kept.length + dropped.length).toBe(positions.length);
          const again = await cleanPositions({ positions: kept, accuracy });
          expect(again.dropped.every(({ reason }) => reason !== "repeat")).toBe(true);
        },
      ),
      runs(40),
    );
    expect(await rejections(cleanPositions({ positions: [[8, 95]], accuracy: quantity(0, "m") }))).toEqual([
      "range positions[0][1]",
      "range accuracy",
    ]);
  });
});
