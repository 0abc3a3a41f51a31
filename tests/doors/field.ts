import { all, type FirstThing, q, refused, works } from "./trial.js";

/** Pressure, tips, pumps and swaths as they are taught. */
export const field: readonly FirstThing[] = [
  refused(
    "the square-root rule without a range",
    () => all.flowAtPressure?.({ flow: q(0.4, "gal/min", "water"), pressure: q(40, "psi") }, q(10, "psi")),
    ["outputAtPressure"],
    () =>
      all.outputAtPressure?.({ output: q(0.4, "gal/min", "water"), from: q(40, "psi"), to: q(10, "psi") })
        .value,
    [0.2, "gal/min", "water"],
  ),
  works(
    "the same by gallons per acre",
    () =>
      all.outputAtPressure?.({ output: q(20, "gal/acre", "spray"), from: q(40, "psi"), to: q(10, "psi") })
        .value,
    [10, "gal/acre"],
  ),
  refused(
    "one nozzle alone",
    () => all.nozzleCheck?.({ catches: [q(52, "fl oz", "water")], time: q(1, "min"), divisor: "n" }),
    ["nozzleWear"],
    () =>
      all.nozzleWear?.({
        caught: q(64, "fl oz", "water"),
        time: q(1, "min"),
        rated: q(0.4, "gal/min", "water"),
      }).fromRated,
    [25, "%"],
  ),
  works(
    "how long a jug takes to fill",
    () => all.timeToFill?.({ volume: q(1, "gal", "water"), flow: q(0.4, "gal/min", "water") }),
    [150, "s"],
  ),
  works(
    "a catch on the scale",
    () => all.weighedCatch?.({ full: q(3, "lb", "water"), tare: q(0.5, "lb"), density: q(8, "lb/gal") }),
    [40, "fl oz"],
  ),
  works(
    "a refill by the sight gauge",
    () => all.usedBySightGauge?.({ before: q(50, "gal", "spray"), after: q(10, "gal", "spray") }),
    [40, "gal", "spray"],
  ),
  works(
    "and the calibration from it",
    () =>
      all.calibrationByRefill?.({
        refills: [all.usedBySightGauge?.({ before: q(50, "gal", "spray"), after: q(10, "gal", "spray") })],
        area: q(1, "acre"),
      }).rate,
    [40, "gal/acre", "spray"],
  ),
  works(
    "undiluted product as the carrier",
    () =>
      all.applicationVolume?.({
        flow: q(0.04, "gal/min", "product"),
        speed: q(4, "mi/h"),
        width: q(20, "in"),
      }),
    [2.97, "gal/acre", "product"],
  ),
  works(
    "a spray pattern in milliliters to a volume by area",
    () =>
      all.overlappedVolume?.(
        all.spreadPattern?.({
          catches: [10, 10, 10, 10],
          unit: "mL",
          of: "spray",
          pans: { spacing: q(1, "m"), left: 2 },
          panArea: q(1, "m2"),
        }),
        { swath: q(4, "m") },
      ),
    [10, "mL/m2", "spray"],
  ),
  works(
    "the duty of a pulsed nozzle",
    () =>
      all.pulseWidth?.({
        full: q(0.8, "gal/min", "spray"),
        applicationVolume: q(20, "gal/acre", "spray"),
        speed: q(5.94, "mi/h"),
        width: q(20, "in"),
      }).duty,
    [50, "%"],
  ),
  works(
    "the speeds between the limits of the duty",
    () =>
      all.pulseWidth?.({
        full: q(0.8, "gal/min", "spray"),
        applicationVolume: q(20, "gal/acre", "spray"),
        speed: q(5.94, "mi/h"),
        width: q(20, "in"),
        duty: { least: q(50, "%"), most: q(100, "%") },
      }).speeds?.fastest,
    [11.88, "mi/h"],
  ),
  works(
    "what a pump has to deliver with agitation",
    () =>
      all.pumpCapacity?.({
        boom: q(8, "gal/min", "spray"),
        tank: q(100, "gal", "spray"),
        agitation: q(5, "%"),
        reserve: q(20, "%"),
      }).total,
    [15.6, "gal/min"],
  ),
  works(
    "a rate controller that shows too little",
    () =>
      all.rateControllerCheck?.({ displayed: q(95, "gal", "water"), measured: q(100, "gal", "water") }).error,
    [-5, "%"],
  ),
];
