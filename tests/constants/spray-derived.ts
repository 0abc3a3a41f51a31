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
  pumpCapacity,
  readTip,
  timeToFill,
} from "../../src/spray/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "spray";
const derived = { room, reached: "derived" } as const;
const number = (value: number | undefined): number => value ?? Number.NaN;
const percent = (value: number) => quantity(value, "%");
const share = (value: number) => quantity(value, "% w/w", "ae/ai");
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
          `stamp ${angle}-04, degrees`,
          angle,
          // With a dash: 15004 is 15-004 as well as 150-04.
          () => number(readTip(`${angle}-04`).angle?.in("deg")),
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
export const sprayDerivedConstants: readonly ConstantCheck[] = [...actives, ...rest];
