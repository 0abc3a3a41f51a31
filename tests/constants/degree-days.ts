// Degree-days by hand: the equations of the methods on days that divide evenly.
import { degreeDayModel, runningDegreeDaysC } from "../../src/interval/index.js";
import { type ConstantCheck, cells, edge, goes } from "./check.js";

type Rule = Parameters<typeof runningDegreeDaysC>[0];
const day = (max: number, min: number, rule: Omit<Rule, "maxC" | "minC">): number =>
  runningDegreeDaysC({ ...rule, maxC: Float64Array.of(max), minC: Float64Array.of(min) })[0] as number;
/** Integral of a curve above a level over one day, by its middle points. */
const area = (curve: (share: number) => number, level: number, upTo = Number.POSITIVE_INFINITY): number => {
  const steps = 20_000;
  let sum = 0;
  for (let n = 0; n < steps; n += 1) sum += Math.max(0, Math.min(curve((n + 0.5) / steps), upTo) - level);
  return sum / steps;
};
const sine =
  (max: number, min: number) =>
  (share: number): number =>
    (max + min) / 2 + ((max - min) / 2) * Math.sin(2 * Math.PI * share);
const straight =
  (max: number, min: number) =>
  (share: number): number =>
    share < 0.5 ? min + 2 * share * (max - min) : max - (2 * share - 1) * (max - min);

const room = "interval";
const model = (value: number, unit: "°C" | "°F") =>
  degreeDayModel({ method: "simple average", base: { value, unit }, sensor: "air" });
const thousandth = (value: number): number => Math.round(value * 1000) / 1000;
const baseIn = (id: string): number => Number(/base (-?[\d.]+)[CF]/.exec(id)?.[1]);

/** Methods and bases of degree-days. */
export const degreeDayConstants: readonly ConstantCheck[] = [
  ...cells(
    { room, reached: "derived", source: "Met Éireann, the four cases: III (Tx-b)/2-(b-Tn)/4, IV (Tx-b)/4" },
    [
      // (20 - 8)/2 - (8 - 0)/4 = 6 - 2; (20 - 12)/4 = 2
      [
        "Met Office case III, 20 and 0 °C over 8",
        4,
        () => day(20, 0, { method: "met office cases", baseC: 8 }),
      ],
      [
        "Met Office case IV, 20 and 0 °C over 12",
        2,
        () => day(20, 0, { method: "met office cases", baseC: 12 }),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      source: "the equations of the simple average held at a threshold and of the clamped average",
    },
    [
      [
        "mean 20 held at 18, less 10",
        8,
        () => day(28, 12, { method: "simple average", baseC: 10, upperC: 18, cutoff: "horizontal" }),
      ],
      [
        "mean 20 under a threshold of 25, less 10",
        10,
        () => day(28, 12, { method: "simple average", baseC: 10, upperC: 25, cutoff: "horizontal" }),
      ],
      [
        "30 and 10, held between 10 and 26: (26 + 10)/2 - 10",
        8,
        () => day(30, 10, { method: "clamped average", baseC: 10, upperC: 26 }),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      within: 2e-6,
      source: "the area under the curve of a day, summed over 20,000 strips",
    },
    [
      [
        "single sine, 24 and 4 over 10",
        area(sine(24, 4), 10),
        () => day(24, 4, { method: "single sine", baseC: 10 }),
      ],
      [
        "single triangle, 24 and 4 over 10",
        area(straight(24, 4), 10),
        () => day(24, 4, { method: "single triangle", baseC: 10 }),
      ],
      [
        "single sine held at 20",
        area(sine(24, 4), 10, 20),
        () => day(24, 4, { method: "single sine", baseC: 10, upperC: 20, cutoff: "horizontal" }),
      ],
      [
        "single triangle held at 20",
        area(straight(24, 4), 10, 20),
        () => day(24, 4, { method: "single triangle", baseC: 10, upperC: 20, cutoff: "horizontal" }),
      ],
      [
        "intermediate cutoff: twice what lies above the threshold is lost",
        2 * area(straight(24, 4), 10, 20) - area(straight(24, 4), 10),
        () => day(24, 4, { method: "single triangle", baseC: 10, upperC: 20, cutoff: "intermediate" }),
      ],
      [
        "the same with its floor, where that is not reached",
        2 * area(sine(24, 4), 10, 20) - area(sine(24, 4), 10),
        () => day(24, 4, { method: "single sine", baseC: 10, upperC: 20, cutoff: "intermediate floored" }),
      ],
      [
        "double sine: half a day to 4, half a day to 0",
        (area(sine(24, 4), 10) + area(sine(24, 0), 10)) / 2,
        () => day(24, 4, { method: "double sine", baseC: 10, nextMinC: 0 }),
      ],
      [
        "double triangle: half a day to 4, half a day to 0",
        (area(straight(24, 4), 10) + area(straight(24, 0), 10)) / 2,
        () => day(24, 4, { method: "double triangle", baseC: 10, nextMinC: 0 }),
      ],
    ].map(([what, printed, here]) => [what as string, printed as number, here as () => number] as const),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "University of California, phenology models: 50.0 °F is 10.0 °C, 1080 °F d are 600 °C d; NIST SP 811: t/°C = (t/°F - 32)/1.8",
    },
    [
      ["50 °F as a base, °C", 10, () => baseIn(model(50, "°F").id)],
      ["53 °F stays in °F", 53, () => baseIn(model(53, "°F").id)],
      ["23 °F as a base, °C", -5, () => baseIn(model(23, "°F").id)],
      ["12.345 °C as a base", 12.345, () => baseIn(model(12.345, "°C").id)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      within: 2e-5,
      source:
        "the same two ends on both scales, to the thousandth that a base may have: t/°F = 1.8 t/°C + 32",
    },
    [
      [
        "the warmest base in °F is that in °C",
        1.8 * 50 + 32,
        () => edge((v) => goes(() => model(thousandth(v), "°F")), 60, 150),
      ],
      ["the warmest base in °C", 50, () => edge((v) => goes(() => model(thousandth(v), "°C")), 20, 70)],
      [
        "the coldest base in °F is that in °C",
        1.8 * -40 + 32,
        () => edge((v) => goes(() => model(thousandth(v), "°F")), 0, -90),
      ],
      ["the coldest base in °C", -40, () => edge((v) => goes(() => model(thousandth(v), "°C")), 0, -90)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source: "the coldest air, -89.2 °C at Vostok, and bare soil of some 70 °C: no kernel knows its sensor",
    },
    [
      [
        "coldest day of a kernel, °C",
        -90,
        () => edge((t) => goes(() => day(20, t, { method: "simple average", baseC: 0 })), 0, -300),
      ],
      [
        "hottest day of a kernel, °C",
        75,
        () => edge((t) => goes(() => day(t, 0, { method: "simple average", baseC: 0 })), 20, 150),
      ],
      [
        "coldest base of a kernel, °C",
        -90,
        () => edge((baseC) => goes(() => day(20, 0, { method: "simple average", baseC })), 0, -300),
      ],
      [
        "hottest base of a kernel, °C",
        75,
        () => edge((baseC) => goes(() => day(20, 0, { method: "simple average", baseC })), 20, 150),
      ],
    ],
  ),
];
