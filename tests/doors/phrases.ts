import { all, type FirstThing, feed, parse, q, refused, value, works } from "./trial.js";

// What is left of the list of doors, phrase by phrase: from a catch of water to loads, shares, results that fit into the
// next function.

const catches = [q(40, "fl oz", "water"), q(41, "fl oz", "water"), q(39, "fl oz", "water")];
const calibration = () =>
  all.calibrationByCatch?.({ catches, course: q(204.1875, "ft"), width: q(20, "in") });
const jug = () =>
  all.liquidFertilizer?.({ id: "drench", perVolume: { N: q(3, "lb/gal", "N") }, package: q(2.5, "gal") });
const urea = all.fertilizer?.({ id: "urea", analysis: "46-0-0" });
const potash = all.fertilizer?.({ id: "potash", analysis: "0-0-60" });

const water: readonly FirstThing[] = [
  works(
    "takes a catch of water to the area of a tank",
    () => all.areaPerTank?.({ capacity: q(50, "gal", "spray"), applicationVolume: calibration() }),
    [1.25, "acre"],
  ),
  refused(
    "holds a catch of water against a target of spray",
    () =>
      all.checkAgainstTarget?.({
        measured: calibration()?.rate,
        target: q(40, "gal/acre", "spray"),
        tolerance: q(5, "%"),
      }),
    ["asFinishedSpray"],
    () =>
      all.checkAgainstTarget?.({
        measured: all.asFinishedSpray?.(calibration()).value,
        target: q(40, "gal/acre", "spray"),
        tolerance: q(5, "%"),
      }).type,
    "target-check",
  ),
  works(
    "says that spray is taken to be as heavy as water",
    () => all.asFinishedSpray?.(calibration()).carriedOver,
    "as heavy as water",
  ),
  works(
    "gives the density of the mix instead",
    () => all.asFinishedSpray?.(calibration(), { density: q(1.28, "kg/L") }).carriedOver,
    "by its density",
  ),
  works(
    "keeps the uncertainty of a catch",
    () => all.asFinishedSpray?.(calibration()).estimate?.standardError,
    [1 / Math.sqrt(3), "gal/acre", "spray"],
  ),
];

const shares: readonly FirstThing[] = [
  works(
    "pounds of N in pounds of product per acre",
    () => q(12, "lb/acre", "N").per?.(q(50, "lb/acre", "product")),
    [24, "% w/w", "N/product"],
  ),
  works(
    "product in spray, by gallons per acre",
    () => q(2, "gal/acre", "product").per?.(q(40, "gal/acre", "spray")),
    [5, "% v/v", "product/spray"],
  ),
  works("one speed by another", () => q(4, "mi/h").per?.(q(5, "mi/h")), [80, "%"]),
  works("a duty cycle", () => q(3, "gal/min", "spray").per?.(q(4, "gal/min", "spray")), [75, "%"]),
  works("a specific gravity", () => q(10, "lb/gal").per?.(q(8, "lb/gal")), [1.25, "1"]),
  works(
    "a volume spread to a depth is an area",
    () => all.coverArea?.({ volume: q(1, "yd3"), depth: q(3, "in") }),
    [108, "ft2"],
  ),
  works("and the depth of it", () => all.coverDepth?.({ volume: q(1, "yd3"), area: q(108, "ft2") }), [
    3,
    "in",
  ]),
  works("gal/1000 ft2 per hour in inches per hour", () => all.depthOf?.(q(1, "ft3/ft2/h", "water")), [
    12,
    "in/h",
  ]),
  works("a depth by time on an area is a flow", () => q(12, "in/h").times?.(q(10, "ft2")), [10, "ft3/h"]),
];

const fitting: readonly FirstThing[] = [
  works("nitrate counts as nitrogen", () => all.nitrogenOf?.(q(2, "lb/acre", "NO3-N")), [2, "lb/acre", "N"]),
  works(
    "the grade of a mix",
    () =>
      all.analysisOfMix?.({
        parts: [
          { product: urea, amount: q(50, "lb", "product:urea") },
          { product: potash, amount: q(50, "lb", "product:potash") },
        ],
      }).percent?.N,
    23,
  ),
  refused(
    "a liquid in lb of N per gallon as a fertilizer",
    () => all.fertilizer?.({ id: "l", form: "liquid", perVolume: { N: q(3, "lb/gal", "N") } }),
    ["liquidFertilizer("],
    () => all.liquidProductRate?.(q(3, "lb/acre", "N"), jug()),
    [1, "gal/acre"],
  ),
  refused(
    "a rate by weight of a liquid",
    () => all.productRate?.(q(3, "lb/acre", "N"), jug()),
    ["liquidProductRate("],
    () =>
      all.packagesFor?.(all.liquidProductRate?.(q(3, "lb/acre", "N"), jug()).times?.(q(5, "acre")), jug())
        .count,
    2,
  ),
  works(
    "the ammonium sulfate for hard water goes into the mix",
    () =>
      all
        .ammoniumSulfateMinimum?.({ Ca: q(100, "mg/L", "Ca") })
        .product?.rate?.times?.(q(100, "gal", "spray")),
    [0.9, "lb"],
  ),
  works(
    "the course of catchCourse goes into the calibration",
    () => all.calibrationByCatch?.({ catches, course: all.catchCourse?.({ width: q(20, "in") }) }).rate,
    [40, "gal/acre"],
  ),
  refused(
    "asks for a rate per gallon out of two rates by area",
    () => all.perVolume?.(q(2, "pt/acre", "product"), q(40, "gal/acre", "spray")),
    [".per(", "impliedAreaRate"],
    () => q(2, "pt/acre", "product").per?.(q(40, "gal/acre", "spray")),
    [0.625, "% v/v"],
  ),
  works(
    "and back",
    () =>
      all.impliedAreaRate?.({
        rate: all.perVolume?.(q(2, "pt", "product"), q(100, "gal", "spray")),
        applicationVolume: q(40, "gal/acre", "spray"),
      }),
    [0.8, "pt/acre"],
  ),
  works(
    "how much room a load takes in the hopper",
    () => all.hopperVolume?.({ load: q(90, "lb", "product"), bulkDensity: q(45, "lb/ft3") }),
    [2, "ft3"],
  ),
  works("a treated area in a function of the site", () => all.squareSide?.(q(144, "ft2", "treated")), [
    12,
    "ft",
  ]),
  refused(
    "the mean of quantities",
    () => all.mean?.([q(1, "lb"), q(3, "lb")]),
    ["meanEstimate"],
    () => all.meanEstimate?.([q(1, "lb"), q(3, "lb")]).value,
    [2, "lb"],
  ),
  refused(
    "credits nitrate to a target by its own name",
    () => all.productRate?.(q(1, "lb/1000 ft2", "NO3-N"), feed),
    ["nitrogenOf("],
    () => all.productRate?.(all.nitrogenOf?.(q(1, "lb/1000 ft2", "NO3-N")), feed),
    [100 / 24, "lb/1000 ft2"],
  ),
];

const messages: readonly FirstThing[] = [
  works(
    "a range carries its bounds",
    () => {
      const read = all.readQuantity?.(
        { value: -1, unit: "lb" },
        { dimension: "mass", bound: "positive" },
      ) as unknown as { problems: readonly { params?: { above?: number } }[] };
      return read.problems[0]?.params?.above === 0;
    },
    true,
  ),
  works(
    "the path can be left out of the text",
    () =>
      all.problemReason?.({
        code: "range",
        path: "width",
        got: "0",
        expected: "more than 0",
      }) as unknown as string,
    "expected more than 0, got 0",
  ),
  refused(
    "types pounds a month",
    () => parse("1 lb/1000 ft2/month"),
    ["{ months: 1 }"],
    () => parse("1 lb/1000 ft2"),
    [1, "lb/1000 ft2"],
  ),
  refused(
    "types words where a box gives names",
    () => {
      const read = all.readExact?.(
        { value: 3, unit: "lbs/M", of: "N" },
        { dimension: "mass/area", of: "N" },
      ) as unknown as { problems: readonly { expected: string }[] };
      throw new (all.RatewrightError as unknown as new (problems: unknown) => Error)(read.problems);
    },
    ["readQuantity"],
    () => value("3 lbs/M", { dimension: "mass/area", of: "N" }),
    [3, "lb/1000 ft2", "N"],
  ),
];

/** What is left of the list, phrase by phrase. */
export const phrases: readonly FirstThing[] = [...water, ...shares, ...fitting, ...messages];
