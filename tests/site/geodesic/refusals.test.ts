import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../../src/quantity/index.js";
import { cleanPositions, geodesicArea } from "../../../src/site/geodesic/index.js";

type Call = (...given: readonly unknown[]) => Promise<unknown>;
const area = geodesicArea as Call;
const clean = cleanPositions as unknown as Call;

const at = (x: number, y: number) => [
  [x, y],
  [x + 0.001, y],
  [x + 0.001, y + 0.001],
  [x, y],
];
const ring = at(8, 50);
const polygon = (...coordinates: readonly unknown[]) => ({ type: "Polygon", coordinates });
const several = (...coordinates: readonly unknown[]) => ({ type: "MultiPolygon", coordinates });
const accuracy = quantity(3, "m");

const rows: readonly (readonly [
  what: string,
  call: Call,
  given: readonly unknown[],
  said: readonly string[],
])[] = [
  ["no geometry", area, [undefined], ["missing geometry: a Polygon or MultiPolygon of GeoJSON [undefined]"]],
  [
    "nothing of a geometry",
    area,
    [{}],
    [
      "missing geometry.type: Polygon, MultiPolygon or Feature; a track of positions goes to cleanPositions [undefined]",
    ],
  ],
  [
    "a collection",
    area,
    [{ type: "FeatureCollection" }],
    ['type geometry: one feature at a time: geodesicArea(collection.features[0]) ["FeatureCollection"]'],
  ],
  [
    "a point",
    area,
    [{ type: "Point", coordinates: [8, 50] }],
    [
      'type geometry.type: Polygon, MultiPolygon or Feature; a track of positions goes to cleanPositions ["Point"]',
    ],
  ],
  [
    "a polygon of nothing",
    area,
    [{ type: "Polygon" }],
    ["missing coordinates: a list with at least one ring [undefined]"],
  ],
  ["a polygon without a ring", area, [polygon()], ["missing coordinates: at least one ring [an empty list]"]],
  [
    "rings that are none",
    area,
    [
      polygon(
        7,
        [],
        [[8, 50]],
        [
          [8, 50],
          [8.1, 50],
          [8.1, 50.1],
          [8, 50.1],
        ],
      ),
    ],
    [
      "type coordinates[0]: a list of positions [7]",
      "range coordinates[1]: 1 to 20000 positions [a list of 0]",
      "conflict coordinates[2]: a closed ring: 4 positions or more, the first again as the last [a ring of 1 positions]",
      "conflict coordinates[3]: a closed ring: 4 positions or more, the first again as the last [an open ring: 8, 50 to 8, 50.1]",
    ],
  ],
  [
    "positions that are none",
    area,
    [polygon([[8, 50], 7, [8], ["x", null], [400, 0], [100, 95], [8, 95], [190, 8]])],
    [
      "type coordinates[0][1]: a position [longitude, latitude] in degrees [7]",
      "type coordinates[0][2]: a position [longitude, latitude] in degrees [a list of 1]",
      'not-finite coordinates[0][3][0]: degrees, a finite number ["x"]',
      "not-finite coordinates[0][3][1]: degrees, a finite number [null]",
      "range coordinates[0][4]: a position [longitude, latitude] in degrees of -360 to 360 deg: eastings and northings go to polygonArea of ratewright/site [400, 0]",
      "range coordinates[0][5][1]: a latitude of -90 to 90 [95]",
      "range coordinates[0][6][1]: a latitude of -90 to 90 in the second place: longitude and latitude look swapped [95]",
      "range coordinates[0][7][0]: a longitude of -180 to 180 [190]",
    ],
  ],
  [
    "across the antimeridian",
    area,
    [
      polygon([
        [179, 0],
        [-179, 0],
        [-179, 1],
        [179, 0],
      ]),
    ],
    [
      "range coordinates[0][0]: a polygon cut in two there, as GeoJSON asks [an edge across the antimeridian]",
    ],
  ],
  [
    "a position twice",
    area,
    [
      polygon([
        [8, 50],
        [8.001, 50],
        [8, 50],
        [8.001, 50.001],
        [8, 50],
      ]),
    ],
    [
      "duplicate coordinates[0][2]: each position once: cleanPositions drops repeated fixes [the point of coordinates[0][0]]",
    ],
  ],
  [
    "far from the place that is known",
    area,
    [polygon(ring), { near: [9.9, 50] }],
    ["conflict coordinates: a place within 100 km of near [a place 136 km from near]"],
  ],
  [
    "longitude and latitude changed over",
    area,
    [polygon(at(50, 8)), { near: [8, 50] }],
    [
      "conflict coordinates: longitude first: with the two numbers swapped it is near [a place 6062 km from near]",
    ],
  ],
  [
    "a place that is none",
    area,
    [polygon(ring), { near: 7 }],
    ["type near: a position [longitude, latitude] in degrees [7]"],
  ],
  [
    "an option that is not known",
    area,
    [polygon(ring), { far: 1 }],
    ['type options.far: one of the fields near [a field "far"]'],
  ],
  [
    "polygons over one another",
    area,
    [several([at(8, 50)], [at(8.0002, 50.00005)])],
    ["conflict coordinates[1]: polygons apart [a polygon over coordinates[0]]"],
  ],
  ["no polygons", area, [several()], ["missing coordinates: at least one polygon [an empty list]"]],
  [
    "very many polygons",
    area,
    [several(...Array.from({ length: 201 }, () => [ring]))],
    ["range coordinates: 200 polygons or fewer [a list of 201]"],
  ],
  [
    "a cut-out elsewhere",
    area,
    [polygon(ring, at(9, 51))],
    ["conflict coordinates[1][0]: a cut-out inside of its outline [a corner outside of the outline]"],
  ],
  [
    "nothing of a walk",
    clean,
    [{}],
    [
      "missing positions: a list of positions [undefined]",
      'missing accuracy: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a walk of nothing",
    clean,
    [{ positions: [], accuracy: quantity(0, "m") }],
    ["range positions: 1 to 20000 positions [a list of 0]", "range accuracy: more than zero [0 m]"],
  ],
  [
    "a walk that is no list",
    clean,
    [{ positions: 7, accuracy: 3 }],
    [
      "type positions: a list of positions [7]",
      'type accuracy: a length, such as quantity(40, "ft"): a number has no unit [3]',
    ],
  ],
  [
    "a very long walk",
    clean,
    [{ positions: Array.from({ length: 20_001 }, () => [8, 50]), accuracy }],
    ["range positions: 1 to 20000 positions [a list of 20001]"],
  ],
  [
    "a walk of positions that are none",
    clean,
    [
      {
        positions: [
          [8, 50, 1, 2],
          [181, 0],
        ],
        accuracy,
      },
    ],
    [
      "type positions[0]: a position [longitude, latitude] in degrees [a list of 4]",
      "range positions[1][0]: a longitude of -180 to 180 [181]",
    ],
  ],
];

describe("what is refused of positions", () => {
  test.each(rows)("%s", async (_, call, given, said) => {
    const error: unknown = await call(...given).catch((reason: unknown) => reason);
    if (!(error instanceof RatewrightError)) throw error;
    expect(
      error.problems.map(({ code, path, expected, got }) => `${code} ${path}: ${expected} [${got}]`),
    ).toEqual(said);
  });
});
