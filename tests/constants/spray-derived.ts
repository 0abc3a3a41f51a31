// Spraying by hand: halves, doubles and whole shares, limits that are told at their edge, and stamps that say what they are.
import { quantity } from "../../src/quantity/index.js";
import {
  acidEquivalentOf,
  activeInProduct,
  asApplied,
  boomHeight,
  catchCourse,
  driftableFines,
  fanOverlap,
  fanWidth,
  nozzleCheck,
  nozzleWear,
  pressureForFlow,
  pressureForOutput,
  pressureForSpeed,
  pulseWidth,
  pumpCapacity,
  readTip,
  timeToFill,
  tipChoices,
} from "../../src/spray/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "spray";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const percent = (value: number) => quantity(value, "%");
const share = (value: number) => quantity(value, "% w/w", "ae/ai");
const psi = (value: number) => quantity(value, "psi");
const mph = (value: number) => quantity(value, "mi/h");
const water = (value: number) => quantity(value, "gal/min", "water");

const active = quantity(1, "lb/acre", "ai:clopyralid");
const actives: readonly ConstantCheck[] = [
  ...cells({ ...derived, within: 1e-12, source: "half of a pound; 48 gal where 50 were planned" }, [
    [
      "acid in 1 lb/acre that is half acid, lb/acre",
      0.5,
      () => acidEquivalentOf(active, share(50)).in("lb/acre"),
    ],
    [
      "deviation, %",
      -4,
      () =>
        number(
          asApplied({
            used: quantity(48, "gal", "product"),
            area: quantity(1, "acre"),
            planned: quantity(50, "gal/acre", "product"),
          }).deviation?.in("%"),
        ),
    ],
  ]),
  ...cells({ ...derived, within: 1e-8, source: "no part is more than the whole, 100 %" }, [
    [
      "most acid in an active ingredient, %",
      100,
      () => edge((at) => goes(() => acidEquivalentOf(active, share(at))), 50, 200),
    ],
    [
      "most active ingredient in a product, %",
      100,
      () =>
        edge(
          (at) =>
            goes(() =>
              activeInProduct({
                product: quantity(1, "lb/acre", "product"),
                content: quantity(at, "% w/w", "ai/product"),
              }),
            ),
          50,
          200,
        ),
    ],
  ]),
];

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
const choice = () =>
  tipChoices({
    applicationVolume: quantity(59.4, "gal/acre", "spray"),
    speeds: { slowest: mph(1), usual: mph(2), fastest: mph(5) },
    spacing: quantity(20, "in"),
    rating: "40 psi",
    tips: [{ code: "04", lowest: psi(10), highest: psi(160) }],
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

const pump = (agitation: number, reserve: number) =>
  pumpCapacity({
    boom: quantity(10, "gal/min", "spray"),
    tank: quantity(500, "gal"),
    agitation: percent(agitation),
    reserve: percent(reserve),
  });
const rest: readonly ConstantCheck[] = [
  ...cells(
    {
      ...derived,
      within: 1e-12,
      source:
        "3 % of 500 gal is 15 gal; a fifth of 25 is 5; 43 560 ft2 to the acre; half of a minute; an acre over 128, times 10",
    },
    [
      ["a tank of 500 gal turned over 3 % a minute, gal/min", 15, () => pump(3, 20).agitation.in("gal/min")],
      ["with a fifth for wear, gal/min", 30, () => pump(3, 20).total.in("gal/min")],
      [
        "43.56 gal/acre on 10 ft at 100 ft/min, gal/min",
        1,
        () =>
          pumpCapacity({
            applicationVolume: quantity(43.56, "gal/acre", "spray"),
            speed: quantity(100, "ft/min"),
            swath: quantity(10, "ft"),
            tank: quantity(500, "gal"),
            agitation: percent(3),
            reserve: percent(0),
          }).boom.in("gal/min"),
      ],
      [
        "1 gal at 2 gal/min, s",
        30,
        () => timeToFill({ volume: quantity(1, "gal", "water"), flow: water(2) }).in("s"),
      ],
      [
        "ten times 1/128 acre, ft2",
        435_600 / 128,
        () => catchCourse({ width: quantity(20, "in"), tenfold: true }).area.in("ft2"),
      ],
    ],
  ),
  ...cells(
    {
      ...derived,
      within: 1e-8,
      source: "no part is more than the whole, 100 %; a fan opens less than 180 degrees",
    },
    [
      ["most of a tank in a minute, %", 100, () => edge((at) => goes(() => pump(at, 0)), 50, 200)],
      [
        "widest fan, degrees",
        180,
        () =>
          edge(
            (at) => goes(() => fanWidth({ angle: quantity(at, "deg"), height: quantity(1, "ft") })),
            90,
            270,
          ),
      ],
    ],
  ),
  ...cells({ ...derived, within: 1e-12, source: "a fan of 90 degrees is twice as wide as it is high" }, [
    [
      "fan of 90 degrees 1 ft high, ft",
      2,
      () => fanWidth({ angle: quantity(90, "deg"), height: quantity(1, "ft") }).in("ft"),
    ],
    [
      "2 ft of fan every 1.6 ft, %",
      25,
      () => fanOverlap({ fan: quantity(2, "ft"), spacing: quantity(1.6, "ft") }).in("%"),
    ],
    [
      "height for that, ft",
      1,
      () =>
        boomHeight({ angle: quantity(90, "deg"), spacing: quantity(1.6, "ft"), overlap: percent(25) }).in(
          "ft",
        ),
    ],
  ]),
  ...cells(
    {
      ...derived,
      source:
        "the stamp prints the angle before the size: 110 in 11004; tips are rated at 40 psi (University of Arizona, Nozzles and droplets)",
    },
    [
      ...[15, 25, 40, 50, 65, 73, 80, 95, 110, 120, 140, 150].map(
        (angle): Cell => [
          `stamp ${angle}04, degrees`,
          angle,
          () => number(readTip(`${angle}04`).angle?.in("deg")),
        ],
      ),
      ["pressure of a stamp, psi", 40, () => readTip("11004").pressure.in("psi")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "GRDC, Spray application manual, module 4.2: below 150 micrometers up to 20 % of a medium spray, less than 10 % of a coarse, less than 5 % of a very coarse one",
    },
    [
      ["driftable fines, medium, %", 20, () => number(driftableFines("M")?.in("%"))],
      ["driftable fines, coarse, %", 10, () => number(driftableFines("C")?.in("%"))],
      ["driftable fines, very coarse, %", 5, () => number(driftableFines("VC")?.in("%"))],
    ],
  ),
];

/** Spraying, by hand. */
export const sprayDerivedConstants: readonly ConstantCheck[] = [
  ...actives,
  ...squares,
  ...pulses,
  ...boom,
  ...rest,
];
