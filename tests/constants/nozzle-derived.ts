// Nozzles by hand: twice the flow, the edges of duties, and catches that are off.
import { quantity } from "../../src/quantity/index.js";
import {
  nozzleCheck,
  nozzleWear,
  pressureForFlow,
  pressureForOutput,
  pressureForSpeed,
  pulseWidth,
  tipChoices,
} from "../../src/spray/index.js";
import { type ConstantCheck, cells, edge } from "./check.js";

const room = "spray";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const psi = (value: number) => quantity(value, "psi");
const mph = (value: number) => quantity(value, "mi/h");
const water = (value: number) => quantity(value, "gal/min", "water");

const tip = { flow: water(0.4), pressure: psi(40), lowest: psi(10), highest: psi(200) };
const half = (): ReturnType<typeof pulseWidth> =>
  pulseWidth({
    full: quantity(0.5, "gal/min", "spray"),
    applicationVolume: quantity(59.4, "gal/acre", "spray"),
    speed: mph(1),
    width: quantity(20, "in"),
  });
/** A nozzle that is open for a share of the time: 5940 in·mi/h to the gal/min and gal/acre. */
const open = (duty: number) =>
  pulseWidth({
    full: quantity(1, "gal/min", "spray"),
    applicationVolume: quantity(59.4 * duty, "gal/acre", "spray"),
    speed: mph(1),
    width: quantity(1, "in"),
  });
const choice = (code = "04") =>
  tipChoices({
    applicationVolume: quantity(59.4, "gal/acre", "spray"),
    speeds: { slowest: mph(1), usual: mph(2), fastest: mph(5) },
    spacing: quantity(20, "in"),
    rating: "40 psi",
    tips: [{ code, lowest: psi(10), highest: psi(160) }],
  }).choices[0];

const squares: readonly ConstantCheck[] = cells(
  {
    ...derived,
    within: 1e-9,
    source:
      "twice the flow takes four times the pressure; 43 560 x 12 / 88 = 5940 in·mi/h to the gal/min and gal/acre; 0.4 gal/min at 40 psi holds 59.4 gal/acre on 20 in at 2 mi/h, from 1 to 4 mi/h between 10 and 160 psi: three of the four wanted",
  },
  [
    [
      "pressure for 1 1/4 of the output at 40 psi, psi",
      62.5,
      () =>
        pressureForOutput({
          output: quantity(20, "gal/acre", "spray"),
          from: psi(40),
          wanted: quantity(25, "gal/acre", "spray"),
        }).value.in("psi"),
    ],
    ["pressure for twice the flow of a tip, psi", 160, () => pressureForFlow(tip, water(0.8)).in("psi")],
    [
      "pressure for twice the speed, psi",
      160,
      () =>
        pressureForSpeed({
          pressure: psi(40),
          from: mph(4),
          to: mph(8),
          lowest: psi(10),
          highest: psi(200),
        }).in("psi"),
    ],
    ["duty, %", 40, () => half().duty.in("%")],
    ["pressure of a tip at the usual speed, psi", 40, () => number(choice()?.pressure.in("psi"))],
    ["of half its size, psi", 160, () => number(choice("02")?.pressure.in("psi"))],
    ["at half of it, psi", 10, () => number(choice()?.steps[0]?.pressure.in("psi"))],
    ["speeds that it holds, % of those wanted", 75, () => number(choice()?.ofSpeedRange.in("%"))],
  ],
);

const slow = (code: string) => (at: number) => open(at).findings.some((one) => one.code === code);
const pulses: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-8,
      source: "University of Georgia, Circular 1305: duty cycles typically between 20 and 100 %",
    },
    [
      ["slowest at a duty of 40 % and 1 mi/h: 20/40, mi/h", 0.5, () => half().speeds.slowest.in("mi/h")],
      ["fastest: 100/40, mi/h", 2.5, () => half().speeds.fastest.in("mi/h")],
      ["least duty, %", 20, () => edge((at) => open(at).withinDuty, 50, 1)],
      ["most duty, %", 100, () => edge((at) => open(at).withinDuty, 50, 150)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-8,
      source: "sprayers101, How to size a nozzle for pulse width modulation: 60 to 80 % at the usual speed",
    },
    [
      ["usual duty from, %", 60, () => edge(slow("pulse/outside-usual-duty"), 40, 70)],
      ["usual duty to, %", 80, () => edge(slow("pulse/outside-usual-duty"), 90, 70)],
    ],
  ),
];

const caught = (catches: readonly number[], rated?: number) =>
  nozzleCheck({
    catches: catches.map((value) => quantity(value, "gal", "water")),
    time: quantity(1, "min"),
    ...(rated === undefined ? {} : { rated: water(rated) }),
    divisor: "n",
  });
const all = (flow: number) => [flow, flow];
const verdict = (catches: readonly number[], rated?: number) => caught(catches, rated).nozzles[0]?.verdict;
/** One nozzle of four beside three that catch 1: with x it lies 3(x - 1)/(x + 3) above or below the mean. */
const fourth = (x: number): readonly number[] => [x, 1, 1, 1];
const off = (limit: number): number => (3 + 3 * limit) / (3 - limit);
const worn = (flow: number) =>
  nozzleWear({ caught: quantity(flow, "gal", "water"), time: quantity(1, "min"), rated: water(1) });
const clean = (x: number): boolean => verdict(fourth(x)) === "clean";
const boom: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "from memory",
      within: 1e-8,
      source:
        "limits of worn and uneven tips: replaced above 110 % of the rated flow, none more than 5 % off the mean of the boom (Ohio State; Alberta); a tip x beside three of 1 lies 3(x - 1)/(x + 3) off the mean",
    },
    [
      ["flow that is worn, of the rated", 1.1, () => edge((x) => verdict(all(x), 1) === "keep", 1, 2)],
      ["flow that is plugged, of the rated", 0.9, () => edge((x) => verdict(all(x), 1) === "keep", 1, 0.5)],
      ["tip above the mean", off(0.05), () => edge((x) => verdict(fourth(x)) === "keep", 1, 2)],
      ["tip below the mean", off(-0.05), () => edge((x) => !clean(x), 1, 0.5)],
      // Three of 1 and one of 1.1: their mean of 1.025 is 10 % below this. Up to it the three are the plugged ones.
      [
        "rated flow that the boom as a whole falls short of",
        1.025 / 0.9,
        () => edge((rated) => verdict([1.1, 1, 1, 1], rated) === "check again", 1.12, 1.3),
      ],
      ["single tip that is worn", 1.1, () => edge((x) => worn(x).verdict === "keep", 1, 2)],
      ["single tip that is plugged", 0.9, () => edge((x) => worn(x).verdict === "keep", 1, 0.5)],
      ["lower end of the band, of the mean", 0.95, () => caught(all(2)).band.low.in("gal/min") / 2],
      ["upper end of the band, of the mean", 1.05, () => caught(all(2)).band.high.in("gal/min") / 2],
    ],
  ),
  ...cells(
    {
      ...derived,
      within: 1e-8,
      source:
        "catches of 1.5 and 0.5 lie 50 % off their mean; 0.8 where 1 is rated is 20 % low, 1.25 a quarter high",
    },
    [
      ["off the mean, %", 50, () => number(caught([1.5, 0.5]).nozzles[0]?.fromMean.in("%"))],
      ["off the rated flow, %", 25, () => number(caught(all(1.25), 1).nozzles[0]?.fromRated?.in("%"))],
      [
        "boom below the rated flow, %",
        -20,
        () =>
          Number(caught(all(0.8), 1).findings.find(({ code }) => code === "nozzle/boom-low")?.params.percent),
      ],
      [
        "a tip beside one that is plugged is held against those that spray: x over (x + 1)/2",
        1.05 / 0.95,
        () => edge((x) => caught([x, 1, 0]).nozzles[0]?.verdict === "check again", 1.05, 1.3),
      ],
    ],
  ),
];

/** Nozzles, by hand. */
export const nozzleDerivedConstants: readonly ConstantCheck[] = [...squares, ...pulses, ...boom];
