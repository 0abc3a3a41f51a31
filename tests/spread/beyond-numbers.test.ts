import { describe, expect, test } from "vitest";
import { quantity } from "../../src/quantity/index.js";
import {
  bulkDensity,
  effectiveFieldCapacity,
  hopperLoad,
  hopperVolume,
  loadCoverage,
  passesFor,
  rateAtSpeed,
  runLength,
  speedForRate,
  spreadRate,
  spreadWidth,
  targetCatch,
  targetDischarge,
  testArea,
  timedRate,
} from "../../src/spread/index.js";
import { problemsOf } from "../errors.js";

// Inputs that are numbers, and whose result is none: refused at the field that the result is of, in either system of units.

const [vast, tiny] = [1e200, 1e-200];
const mass = (value: number, metric: boolean) => quantity(value, metric ? "kg" : "lb", "product");
const length = (value: number, metric: boolean) => quantity(value, metric ? "m" : "ft");
const area = (value: number, metric: boolean) => quantity(value, metric ? "m2" : "ft2");
const rate = (value: number, metric: boolean) =>
  metric ? quantity(value, "kg/ha", "product") : quantity(value, "lb/1000 ft2", "product");
const speed = (value: number, metric: boolean) => quantity(value, metric ? "m/min" : "ft/min");
const room = (value: number, metric: boolean) => quantity(value, metric ? "m3" : "ft3");
const density = (value: number) => quantity(value, "kg/m3");
const power = { feed: "power-driven" } as const;

type Row = readonly [name: string, path: string, call: (m: boolean) => unknown];
const rows: readonly Row[] = [
  ["a bulk density", "amount", (m) => bulkDensity({ amount: mass(vast, m), volume: room(tiny, m) })],
  [
    "a hopper load",
    "volume",
    (m) =>
      hopperLoad({
        volume: quantity(1e308, m ? "m3" : "ft3", "product"),
        bulkDensity: density(2000),
      }),
  ],
  ["a hopper volume", "load", (m) => hopperVolume({ load: mass(5e-324, m), bulkDensity: density(2000) })],
  [
    "what a load covers",
    "load",
    (m) => loadCoverage({ load: mass(vast, m), rate: rate(tiny, m), swath: length(1, m) }),
  ],
  [
    "how far a load goes",
    "load",
    (m) => loadCoverage({ load: mass(vast, m), rate: rate(1, m), swath: length(tiny, m) }),
  ],
  ["a run", "area", (m) => runLength({ area: area(vast, m), swath: length(tiny, m) })],
  ["a test area", "length", (m) => testArea({ length: length(vast, m), width: length(vast, m) })],
  ["a rate", "amount", (m) => spreadRate({ amount: mass(vast, m), area: area(tiny, m) })],
  ["a catch", "rate", (m) => targetCatch({ rate: rate(vast, m), area: area(vast, m) })],
  [
    "a timed rate",
    "amount",
    (m) =>
      timedRate({
        amount: mass(vast, m),
        time: quantity(tiny, "min"),
        swath: length(1, m),
        speed: speed(1, m),
      }),
  ],
  [
    "a discharge",
    "rate",
    (m) => targetDischarge({ rate: rate(vast, m), swath: length(vast, m), speed: speed(1, m) }),
  ],
  [
    "a rate at another speed",
    "rate",
    (m) => rateAtSpeed({ ...power, rate: rate(1e308, m), from: speed(1000, m), to: speed(1, m) }),
  ],
  [
    "a speed for a rate",
    "target",
    (m) => speedForRate({ ...power, rate: rate(1e308, m), from: speed(1000, m), target: rate(0.01, m) }),
  ],
  [
    "a field capacity",
    "swath",
    (m) =>
      effectiveFieldCapacity({
        swath: length(1e308, m),
        speed: speed(5000, m),
        efficiency: quantity(70, "%"),
      }),
  ],
  [
    "a row of outlets",
    "spacing",
    (m) => spreadWidth({ kind: "outlets", outlets: 1e200, spacing: length(vast, m) }),
  ],
  ["a count of passes", "side", (m) => passesFor({ side: length(1e-300, m), swath: length(1e300, m) })],
];

describe("a result that no number holds is refused at its field", () => {
  test.each(rows)("%s", (_, path, call) => {
    for (const metric of [true, false]) {
      const problems = problemsOf(() => call(metric));
      expect(problems.map((problem) => [problem.code, problem.path])).toEqual([["range", path]]);
      expect(problems[0]?.expected).toContain("inputs whose result is a number, more than zero");
    }
  });
});
