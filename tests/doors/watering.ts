import { all, type FirstThing, q, refused, works } from "./trial.js";

const cans = [40, 50, 50, 60];
const pipe = { flow: q(10, "gal/min", "water"), diameter: q(1, "in"), length: q(100, "ft") };
const head = { flow: q(4, "gal/min", "water"), spacing: q(30, "ft") };

/** What people do first: depths, cans, run times, use and pipes. */
export const watering: readonly FirstThing[] = [
  refused(
    "what the meter shows, of nothing",
    () => all.waterDepth?.({ volume: q(3000, "gal"), area: q(5000, "ft2") }),
    ["a quantity of water", '"water"'],
    () => all.waterDepth?.({ volume: q(3000, "gal", "water"), area: q(5000, "ft2") }),
    [(3000 * 231) / (5000 * 144), "in"],
  ),
  works(
    "how long 10 gal/min runs for an inch on 1000 ft2",
    () => all.irrigationTime?.({ flow: q(10, "gal/min", "water"), area: q(1000, "ft2"), depth: q(1, "in") }),
    [144000 / 231 / 10, "min"],
  ),
  works(
    "96.25 times the flow by spacing squared",
    () => all.spacingPrecipitationRate?.({ ...head, pattern: "square" }),
    [(96.25 * 4) / 900, "in/h"],
  ),
  refused(
    "heads 30 by 40 by another name",
    () => all.spacingPrecipitationRate?.({ ...head, lateral: q(40, "ft") }),
    ["rowSpacing"],
    () => all.spacingPrecipitationRate?.({ ...head, rowSpacing: q(40, "ft") }),
    [(96.25 * 4) / 1200, "in/h"],
  ),
  refused(
    "catches without the opening of the can",
    () => all.catchCanTest?.({ catches: cans.map((x) => q(x, "mL", "water")), time: q(15, "min") }),
    ["opening of the can", "diameter"],
    () =>
      all.catchCanTest?.({
        catches: cans.map((x) => q(x, "mL", "water")),
        time: q(15, "min"),
        opening: q(100, "cm2"),
      }).rate,
    [20, "mm/h"],
  ),
  refused(
    "catches as a list alone",
    () => all.distributionUniformity?.(cans.map((x) => q(x, "mL", "water"))),
    ["catches"],
    () => all.distributionUniformity?.({ catches: cans.map((x) => q(x, "mL", "water")) }),
    [80, "%"],
  ),
  refused(
    "a uniformity of 0.6",
    () => all.runTimeMultiplier?.({ method: "distribution uniformity", uniformity: 0.6 }),
    ['quantity(0.4, "1")'],
    () => all.runTimeMultiplier?.({ method: "distribution uniformity", uniformity: q(0.6, "1") }),
    1 / 0.6,
  ),
  refused(
    "DU as the name of a method",
    () => all.runTimeMultiplier?.({ method: "DU", uniformity: q(60, "%") }),
    ['"distribution uniformity"'],
    () => all.runTimeMultiplier?.({ method: "distribution uniformity", uniformity: q(60, "%") }),
    1 / 0.6,
  ),
  refused(
    "days of the week by name",
    () => all.wateringWeek?.({ need: q(1.4, "in"), days: ["Mon", "Thu"], rate: q(0.8, "in/h") }),
    ["1 for Monday, 7 for Sunday"],
    () => all.wateringWeek?.({ need: q(1.4, "in"), days: [1, 4], rate: q(0.8, "in/h") }).net,
    [1.4, "in"],
  ),
  refused(
    "a need by the day",
    () => all.wateringWeek?.({ need: q(0.2, "in/d"), days: [1, 4], rate: q(0.8, "in/h") }),
    ['rate.times(quantity(1, "week"))'],
    () =>
      all.wateringWeek?.({ need: q(0.2, "in/d").times?.(q(1, "week")), days: [1, 4], rate: q(0.8, "in/h") })
        .net,
    [1.4, "in"],
  ),
  refused(
    "a reference without its time",
    () => all.turfUse?.({ reference: q(0.3, "in"), coefficient: 0.7 }),
    ["a depth per time", 'quantity(4, "mm/d")'],
    () => all.turfUse?.({ reference: q(0.3, "in/d"), coefficient: 0.7 }),
    [0.21, "in/d"],
  ),
  refused(
    "use without its time",
    () => all.irrigationInterval?.({ water: q(0.75, "in"), use: q(0.25, "in") }),
    ["a depth per time", "such as quantity("],
    () => all.irrigationInterval?.({ water: q(0.75, "in"), use: q(0.25, "in/d") }),
    [3, "d"],
  ),
  works(
    "water by the inch of soil",
    () => all.availableWater?.({ layers: [{ thickness: q(8, "in"), capacity: q(0.125, "in/in") }] }).total,
    [1, "in"],
  ),
  refused(
    "the root zone of a loam",
    () => all.availableWater?.({ soil: "loam", rootDepth: q(6, "in") }),
    ["thickness, capacity", "waterHolding"],
    () =>
      all.availableWater?.({
        layers: [
          {
            thickness: q(6, "in"),
            capacity: all.waterHolding?.({ texture: "very fine sandy loam, loam, silt loam" }).low,
          },
        ],
      }).depth,
    [6, "in"],
  ),
  works("a drop of 10 m, in kilopascals", () => all.pressureOfHeight?.({ height: q(10, "m") }), [
    98.0665,
    "kPa",
  ]),
  refused(
    "spray in a pipe",
    () => all.pipeVelocity?.({ flow: q(10, "gal/min", "spray"), diameter: q(1, "in") }),
    ['"water"'],
    () => all.pipeVelocity?.({ flow: q(10, "gal/min", "water"), diameter: q(1, "in") }).value,
    [(10 * 231) / 60 / ((Math.PI / 4) * 12), "ft/s"],
  ),
  refused(
    "friction without the smoothness of the pipe",
    () => all.frictionLoss?.(pipe),
    ["pipeSmoothness"],
    () => all.pipeSmoothness?.({ material: "PVC" }),
    150,
  ),
  refused(
    "highs and lows the wrong way round",
    () =>
      all.hargreavesEvapotranspiration?.({
        min: q(26.6, "°C"),
        max: q(14.8, "°C"),
        latitude: q(45.72, "deg"),
        date: "1998-07-15",
      }),
    ["not more than max"],
    () =>
      all
        .hargreavesEvapotranspiration?.({
          min: q(14.8, "°C"),
          max: q(26.6, "°C"),
          latitude: q(45.72, "deg"),
          date: "1998-07-15",
        })
        .in?.("mm/d")
        .toFixed?.(1),
    "5.0",
  ),
];
