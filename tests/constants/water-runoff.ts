// Curve numbers as printed, and the equations of the curve number by hand.
import { quantity } from "../../src/quantity/index.js";
import {
  curveNumber,
  curveNumberRunoff,
  type HydrologicSoilGroup,
  type RunoffCover,
  weightedCurveNumber,
} from "../../src/water/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "water";
const soilGroups: readonly HydrologicSoilGroup[] = ["A", "B", "C", "D"];
const rows = (list: readonly (readonly [RunoffCover, string])[]): readonly Cell[] =>
  list.flatMap(([cover, printed]) =>
    printed
      .split(" ")
      .map(
        (value, i): Cell => [
          `${cover}, ${soilGroups[i]}`,
          Number(value),
          () => curveNumber({ cover, soilGroup: soilGroups[i] as HydrologicSoilGroup }).value,
        ],
      ),
  );

/** Pasture stands for open space: TR-55 says that their numbers are the same. */
const agricultural = rows([
  ["open space, poor", "68 79 86 89"],
  ["open space, fair", "49 69 79 84"],
  ["open space, good", "39 61 74 80"],
  ["meadow", "30 58 71 78"],
  ["brush, poor", "48 67 77 83"],
  ["brush, fair", "35 56 70 77"],
  ["brush, good", "30 48 65 73"],
  ["woods, poor", "45 66 77 83"],
  ["woods, fair", "36 60 73 79"],
  ["woods, good", "30 55 70 77"],
]);
const urban = rows([
  ["open space, good", "39 61 74 80"],
  ["paved", "98 98 98 98"],
  ["gravel road", "76 85 89 91"],
  ["dirt road", "72 82 87 89"],
  ["bare, newly graded", "77 86 91 94"],
]);

const storm = (rain: number, initialAbstraction: "0.2 S" | "0.05 S") =>
  curveNumberRunoff({ rain: quantity(rain, "in"), curveNumber: 80, initialAbstraction });
const acres = (curveNumber: number) => ({ area: quantity(1, "acre"), curveNumber });
const ones = (n: number) => Array.from({ length: n }, () => acres(60));
const retention = 1.33 * 2.5 ** 1.15;

/** At 80, S is 1000 / 80 - 10 = 2.5 in. */
const byHand: readonly Cell[] = [
  ["S at 80, in", 2.5, () => storm(3, "0.2 S").retention.in("in")],
  ["Ia at 80, in", 0.5, () => storm(3, "0.2 S").initialAbstraction.in("in")],
  ["Q of 3 in at 80, in", 1.25, () => storm(3, "0.2 S").runoff.in("in")],
  ["Q of 3 in at 80, % of the rain", 125 / 3, () => storm(3, "0.2 S").share.in("%")],
  ["S at 80 for 0.05 S, in", retention, () => storm(3, "0.05 S").retention.in("in")],
  ["Ia at 80 of 0.05 S, in", 0.05 * retention, () => storm(3, "0.05 S").initialAbstraction.in("in")],
  [
    "Q of 3 in at 80 by 0.05 S, in",
    (3 - 0.05 * retention) ** 2 / (3 + 0.95 * retention),
    () => storm(3, "0.05 S").runoff.in("in"),
  ],
  [
    "Q of 1 acre, gal",
    (1.25 * 43_560 * 144) / 231,
    () =>
      curveNumberRunoff({
        rain: quantity(3, "in"),
        curveNumber: 80,
        area: quantity(1, "acre"),
      }).volume?.in("gal") ?? 0,
  ],
  [
    "curve numbers apart",
    5,
    () => edge((at) => weightedCurveNumber({ parts: [acres(60), acres(60 + at)] }).findings.length > 0, 9, 1),
  ],
  ["lowest curve number", 30, () => edge((at) => goes(() => storm1(at)), 40, 20)],
  ["highest curve number", 100, () => edge((at) => goes(() => storm1(at)), 90, 110)],
  [
    "most parts",
    1000,
    () =>
      Math.round(edge((n) => goes(() => weightedCurveNumber({ parts: ones(Math.floor(n)) })), 900, 1100)) - 1,
  ],
];

function storm1(curveNumber: number) {
  return curveNumberRunoff({ rain: quantity(3, "in"), curveNumber });
}

/** Runoff by curve number, typed a second time. */
export const waterRunoffConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source: "TR-55 table 2-2c, as the low impact development manual for Michigan prints it, table 9.2",
    },
    agricultural,
  ),
  ...cells(
    { room, reached: "read", source: "TR-55 table 2-2a, as a textbook adapts it, table 25.5A" },
    urban,
  ),
  ...cells(
    { room, reached: "derived", source: "the equations of TR-55 and of Hawkins et al. 2002, by hand" },
    byHand,
  ),
];
