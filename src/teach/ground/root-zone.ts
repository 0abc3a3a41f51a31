import {
  availableWater,
  depletionFraction,
  runTimeMultiplier,
  supplyPressure,
  timeToRunoff,
} from "../../water/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { fao56 } from "../works/soil-and-air-works.js";
import { californiaTeachingOrganic } from "../works/water-works.js";

const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const depth = ["in", "cm"] as const;
const feet = ["ft", "m"] as const;
const holds = ["in/ft", "mm/m"] as const;
const rate = ["in/h", "mm/h"] as const;
const pressure = ["psi", "bar"] as const;

/** The water of the root zone, and how long it may rain on it. */
export const rootZone: readonly FormulaSpec[] = [
  formula({
    id: "available-water",
    name: "availableWater",
    title: "Water that two layers of a root zone hold",
    inputs: [
      ["first", "t_1", "thickness of the upper layer", "none", depth, [2, 8], feet],
      ["firstHolds", "c_1", "water that it holds", "none", holds, [0.6, 2.4]],
      ["second", "t_2", "thickness of the lower layer", "none", depth, [2, 12], feet],
      ["secondHolds", "c_2", "water that it holds", "none", holds, [0.6, 2.4]],
    ],
    output: ["W", "available water", "none", ["in", "mm"]],
    equation: "W = t_1 * c_1 + t_2 * c_2",
    run: ({ first, firstHolds, second, secondHolds }) =>
      availableWater({
        layers: [
          { thickness: first, capacity: firstHolds },
          { thickness: second, capacity: secondHolds },
        ],
      }).total,
    traps: [
      "Counting soil below the roots.",
      "Leaving the thickness in inches with a capacity for each foot.",
    ],
    basis: "definition",
    sources: [californiaTeachingOrganic],
  }),
  formula({
    id: "depletion-fraction",
    name: "depletionFraction",
    title: "Share of the water at which grass begins to suffer",
    inputs: [
      ["table", "p_0", "share of the table, for 5 mm a day", "none", share, [30, 60], pure],
      ["use", "E", "water use of the turf", "none", ["in/d", "mm/d"], [0.1, 0.3], ["mm/d", "mm/d"]],
    ],
    output: ["p", "share", "none", share, pure],
    equation: "p = p_0 + 0.04 * (5 - E)",
    run: depletionFraction,
    traps: ["Putting in inches a day: the equation is in millimeters."],
    basis: "published",
    sources: [fao56("table 22, footnote, as a public program has it")],
  }),
  formula({
    id: "time-to-runoff",
    name: "timeToRunoff",
    title: "Run time until water runs off, by Horton's curve",
    inputs: [
      ["rate", "P", "precipitation rate", "none", rate, [0.6, 1.9]],
      ["initial", "f_0", "intake of the dry soil", "none", rate, [2, 4]],
      ["basic", "f_c", "intake of the wet soil", "none", rate, [0.1, 0.5]],
      ["decay", "b", "how fast the one falls to the other", "none", ["1/h", "1/h"], [1, 6]],
    ],
    output: ["t", "run time", "none", ["min", "min"], ["h", "h"]],
    equation: "t = (f_0 - P + f_c * ln((f_0 - f_c) / (P - f_c))) / (P * b)",
    run: timeToRunoff,
    traps: ["Running that long on a slope or on packed ground: the source asks to shorten it on turf."],
    basis: "published",
    sources: [
      {
        title: "How long can you irrigate without runoff?",
        publisher: "J. Hung, Grounds Maintenance (trade magazine)",
        where: "the equation",
      },
    ],
  }),
  formula({
    id: "run-time-multiplier",
    name: "runTimeMultiplier",
    title: "Run time multiplier, lower half from lower quarter",
    inputs: [["uniformity", "DU", "distribution uniformity of the lower quarter", "none", share, [45, 85]]],
    output: ["k", "run time multiplier", "none", pure],
    equation: "k = 1 / (0.4 + 0.6 * DU / 100)",
    run: ({ uniformity }) => runTimeMultiplier({ method: "lower half from lower quarter", uniformity }),
    traps: [
      "Dividing by the uniformity itself: that waters the driest quarter in full and the rest too much.",
    ],
    basis: "from memory",
    sources: [],
  }),
  formula({
    id: "pressure-at-head",
    name: "supplyPressure",
    title: "Pressure that is left at a level head",
    inputs: [
      ["supply", "p", "pressure of the supply while it runs", "none", pressure, [50, 90]],
      ["pipes", "a", "loss in the pipes", "none", pressure, [2, 12]],
      ["valves", "b", "loss in meter, preventer and valves", "none", pressure, [3, 18]],
    ],
    output: ["h", "pressure at the head", "none", pressure],
    equation: "h = p - a - b",
    run: ({ supply, pipes, valves }) => supplyPressure({ supply, losses: [pipes, valves] }).atHead,
    traps: ["Reading the gauge with the water shut off: a static pressure is higher."],
    basis: "common practice, no source",
    sources: [],
  }),
];
