import { all, type FirstThing, q, refused, works } from "./trial.js";

/** What people do first: spreading, ground, seed and water. */
export const ground: readonly FirstThing[] = [
  works("4 lb on 1000 ft2", () => all.spreadRate?.({ amount: q(4, "lb", "product"), area: q(1000, "ft2") }), [
    4,
    "lb/1000 ft2",
  ]),
  works(
    "4 lb on a swath of 10 ft and 100 ft",
    () => all.spreadRate?.({ amount: q(4, "lb", "product"), swath: q(10, "ft"), distance: q(100, "ft") }),
    [4, "lb/1000 ft2"],
  ),
  works(
    "half in two directions",
    () => all.passRates?.({ rate: q(4, "lb/1000 ft2", "product"), passes: 2 }).perPass,
    [2, "lb/1000 ft2"],
  ),
  refused(
    "asks passes by position",
    () => all.passRates?.(q(4, "lb/1000 ft2", "product")),
    ["{ rate: ... }"],
    () => all.passRates?.({ rate: q(4, "lb/1000 ft2", "product") }).perPass,
    [2, "lb/1000 ft2"],
  ),
  works(
    "finds the next setting",
    () =>
      all.gateSetting?.({
        trials: [
          { setting: 10, rate: q(3, "lb/1000 ft2", "product") },
          { setting: 14, rate: q(5, "lb/1000 ft2", "product") },
        ],
        target: q(4, "lb/1000 ft2", "product"),
      }).setting,
    12,
  ),
  works("a circle by radius", () => all.circleArea?.({ radius: q(10, "ft") }), [Math.PI * 100, "ft2"]),
  works("a circle by diameter", () => all.circleArea?.({ diameter: q(20, "ft") }), [Math.PI * 100, "ft2"]),
  refused(
    "a circle by a bare length",
    () => all.circleArea?.(q(10, "ft")),
    ["radius, diameter"],
    () => all.circleArea?.({ radius: q(10, "ft") }),
    [Math.PI * 100, "ft2"],
  ),
  works("a triangle", () => all.triangleArea?.({ base: q(10, "ft"), height: q(10, "ft") }), [50, "ft2"]),
  works("a rectangle", () => all.rectangleArea?.({ length: q(10, "ft"), width: q(10, "ft") }), [100, "ft2"]),
  refused(
    "a rectangle by position",
    () => all.rectangleArea?.(q(10, "ft"), q(10, "ft")),
    ["length, width"],
    () => all.rectangleArea?.({ length: q(10, "ft"), width: q(10, "ft") }),
    [100, "ft2"],
  ),
  works(
    "a ring by diameter and width",
    () => all.annulusArea?.({ outerDiameter: q(30, "ft"), width: q(3, "ft") }),
    [Math.PI * (15 ** 2 - 12 ** 2), "ft2"],
  ),
  refused(
    "pairs of numbers as a polygon",
    () =>
      all.polygonArea?.([
        [0, 0],
        [10, 0],
        [10, 10],
      ]),
    ['polygonArea(points, "ft")'],
    () =>
      all.polygonArea?.(
        [
          [0, 0],
          [10, 0],
          [10, 10],
        ],
        "ft",
      ),
    [50, "ft2"],
  ),
  refused(
    "calls the widths offsets",
    () => all.offsetArea?.({ offsets: [q(10, "ft")], spacing: q(10, "ft") }),
    ["did you mean widths?"],
    () =>
      all.offsetArea?.({
        widths: [q(10, "ft"), q(12, "ft"), q(10, "ft")],
        spacing: q(10, "ft"),
        rule: "trapezoidal",
      }),
    [220, "ft2"],
  ),
  works(
    "plugs on a square",
    () => all.plantsFor?.({ area: q(8000, "ft2"), pattern: "square", spacing: q(12, "in") }).plants,
    8000,
  ),
  refused(
    "plugs on a hexagon",
    () => all.plantsFor?.({ area: q(8000, "ft2"), pattern: "hex", spacing: q(12, "in") }),
    ['"triangular"'],
    () => all.plantsFor?.({ area: q(8000, "ft2"), pattern: "triangular", spacing: q(12, "in") }).plants,
    9238,
  ),
  works("pure live seed", () => all.pureLiveSeed?.({ purity: q(98, "%"), germination: q(85, "%") }), [
    83.3,
    "% w/w",
  ]),
  refused(
    "pure live seed of bare numbers",
    () => all.pureLiveSeed?.({ purity: 98, germination: 85 }),
    ["purity", "germination", "quantity("],
    () => all.pureLiveSeed?.({ purity: q(98, "%"), germination: q(85, "%") }),
    [83.3, "% w/w"],
  ),
  works("an inch on 1000 ft2", () => all.waterVolume?.({ depth: q(1, "in"), area: q(1000, "ft2") }), [
    (1000 * 144) / 231,
    "gal",
    "water",
  ]),
  refused(
    "an inch by position",
    () => all.waterVolume?.(q(1, "in"), q(1000, "ft2")),
    ["depth, area"],
    () => all.waterVolume?.({ depth: q(1, "in"), area: q(1000, "ft2") }),
    [(1000 * 144) / 231, "gal"],
  ),
  works(
    "10 gal/min on 1000 ft2",
    () => all.precipitationRate?.({ flow: q(10, "gal/min", "water"), area: q(1000, "ft2") }),
    [(10 * 60 * 231) / 144000, "in/h"],
  ),
  refused(
    "a flow of nothing",
    () => all.precipitationRate?.({ flow: q(10, "gal/min"), area: q(1000, "ft2") }),
    ['"water"'],
    () => all.precipitationRate?.({ flow: q(10, "gal/min", "water"), area: q(1000, "ft2") }),
    [0.9625, "in/h"],
  ),
  works("how long for half an inch", () => all.runTime?.({ depth: q(0.5, "in"), rate: q(1.5, "in/h") }), [
    20,
    "min",
  ]),
  refused(
    "an efficiency in the run time",
    () => all.runTime?.({ depth: q(0.5, "in"), rate: q(1.5, "in/h"), efficiency: q(70, "%") }),
    ["did you mean multiplier?"],
    () => all.grossDepth?.({ net: q(0.7, "in"), efficiency: q(70, "%") }),
    [1, "in"],
  ),
  refused(
    "humidity as a bare number",
    () => all.deltaT?.({ temperature: q(80, "°F"), humidity: 50 }),
    ["humidity", "quantity("],
    () => all.deltaT?.({ temperature: q(80, "°F"), humidity: q(50, "%") }).type,
    "delta-t",
  ),
  refused(
    "growth of a grass by temperature",
    () => all.growthPotential?.({ temperature: q(88, "°F"), grass: "warm-season" }),
    ["did you mean mean?", "did you mean season?"],
    () => all.growthPotential?.({ mean: q(88, "°F"), season: "warm-season" }),
    [100, "%"],
  ),
];
