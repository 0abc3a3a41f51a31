import { quantity } from "../../src/quantity/index.js";
import {
  gravimetricWaterContent,
  irrigationWithLeaching,
  leachingRequirement,
  sodiumAdsorptionRatio,
  volumetricWaterContent,
} from "../../src/soil/index.js";
import {
  availableWater,
  frictionLoss,
  grossDepth,
  irrigationInterval,
  irrigationTime,
  pressureHead,
  readilyAvailableWater,
} from "../../src/water/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

const punmia = (example: string): Source => ({
  title: "Irrigation and Water Power Engineering, solved examples",
  publisher: "textbook, as the Scilab textbook companion 2087 carries it",
  where: `example ${example}`,
  url: "https://github.com/FOSSEE/Scilab-TBC-Uploads/tree/master/2087",
});
const mm = (value: number) => quantity(value, "mm");
const percent = (value: number) => quantity(value, "%");
/** A dry unit weight of the book, kN/m3 by 9.81 m/s2, as a density. */
const unitWeight = (kilonewtons: number) => quantity(kilonewtons / 9.81, "g/mL", "soil");
const byVolume = (share: number, bulkDensity = unitWeight(15)) =>
  volumetricWaterContent({ gravimetric: percent(share), bulkDensity });
/** What a root zone holds between two water contents by weight, in mm. */
const held = (meters: number, from: number, down: number, bulkDensity = unitWeight(15)) =>
  availableWater({
    layers: [
      {
        thickness: quantity(meters, "m"),
        capacity: byVolume(from, bulkDensity).minus(byVolume(down, bulkDensity)),
      },
    ],
  }).total;
const dense = (value: number) => quantity(value, "g/mL", "soil");
const dS = (value: number) => quantity(value, "dS/m");

/** Solved examples of a textbook of irrigation: soil water. */
export const textbookWaterChecks: readonly PublishedCheck[] = [
  {
    entry: "water-110",
    formulas: ["availableWater", "volumetricWaterContent"],
    source: punmia("3.2"),
    reached: "read",
    given: "0.8 m of soil of 15 kN/m3, field capacity 30 % and wilting point 8 % by weight",
    answers: [
      to("mm/m at field capacity", 459, 1),
      to("mm/m at wilting", 122, 1),
      to("mm available", 269, 1),
    ],
    compute: () => [10 * byVolume(30).in("% v/v"), 10 * byVolume(8).in("% v/v"), held(0.8, 30, 8).in("mm")],
  },
  {
    entry: "water-111",
    formulas: ["gravimetricWaterContent", "volumetricWaterContent", "availableWater"],
    source: punmia("3.4"),
    reached: "read",
    given: "0.9 m of soil of 1.6, field capacity 20 %; a sample of 150 g, 136 g dry",
    answers: [to("mm to field capacity", 140, 1)],
    compute: () => {
      const now = gravimetricWaterContent({ wet: quantity(150, "g"), dry: quantity(136, "g") });
      return [held(0.9, 20, now.in("%"), dense(1.6)).in("mm")];
    },
  },
  {
    entry: "water-112",
    formulas: ["availableWater", "grossDepth"],
    source: punmia("3.6"),
    reached: "read",
    given: "0.7 m of soil of 15 kN/m3, 22 % at field capacity, 10 % at wilting, 14 % now; 75 % efficiency",
    answers: [
      to("cm of storage", 12.8, 0.1),
      to("mm to apply", 86, 1),
      to("mm of field irrigation, from 86 mm", 115, 1),
    ],
    compute: () => [
      held(0.7, 22, 10).in("cm"),
      held(0.7, 22, 14).in("mm"),
      grossDepth({ net: mm(86), efficiency: percent(75) }).in("mm"),
    ],
  },
  {
    entry: "water-113",
    formulas: ["readilyAvailableWater", "irrigationInterval"],
    source: punmia("3.7 and 3.26"),
    reached: "read",
    given:
      "0.75 m of 15 kN/m3 between 27 and 14 %, 80 % of it used at 11 mm/d; 0.7 m of 1300 kg/m3 between 30 and 11 %, 75 % at 12 mm/d",
    answers: [to("days", 10, 1, { printing: "cut" }), to("days in the second", 10, 1, { printing: "cut" })],
    compute: () => {
      const days = (available: ReturnType<typeof mm>, used: number, use: number) =>
        irrigationInterval({
          water: readilyAvailableWater({ available, depletion: percent(used) }),
          use: quantity(use, "mm/d"),
        }).in("d");
      return [days(held(0.75, 27, 14), 80, 11), days(held(0.7, 30, 11, dense(1.3)), 75, 12)];
    },
  },
  {
    entry: "water-114",
    formulas: ["irrigationTime", "availableWater"],
    source: punmia("3.8"),
    reached: "read",
    given: "0.6 m of soil of 1.56 with 22 % at field capacity, 70 % of it used; 250 m by 40 m, 20 L/s",
    answers: [to("mm", 144, 1), to("hours", 20, 1)],
    compute: () => {
      const depth = held(0.6, 22, 0.3 * 22, dense(1.56));
      const flow = quantity(1200, "L/min", "water");
      return [depth.in("mm"), irrigationTime({ flow, area: quantity(10_000, "m2"), depth }).in("h")];
    },
  },
  {
    entry: "water-115",
    formulas: ["availableWater", "grossDepth"],
    source: punmia("3.20"),
    reached: "read",
    given:
      "80 cm of soil of 1.5 g/cc, 27 % at field capacity, 13 % at wilting, 18 % now; 80 % and a loss of 15 %",
    answers: [
      to("cm of storage", 16.8, 0.1),
      to("cm to apply", 10.8, 0.1),
      to("cm at the field", 13.5, 0.1),
      to("cm at the outlet", 15.9, 0.1),
    ],
    compute: () => {
      const net = held(0.8, 27, 18, dense(1.5));
      const field = grossDepth({ net, efficiency: percent(80) });
      return [
        held(0.8, 27, 13, dense(1.5)).in("cm"),
        net.in("cm"),
        field.in("cm"),
        grossDepth({ net: field, efficiency: percent(85) }).in("cm"),
      ];
    },
  },
  {
    entry: "water-116",
    formulas: ["frictionLoss", "pressureHead"],
    source: {
      title: "Scilab textbook companion 3897",
      publisher: "FOSSEE, Indian Institute of Technology Bombay",
      where: "chapter 2, example 2.12 (page 38 of the book)",
      url: "https://github.com/FOSSEE/Scilab-TBC-Uploads",
    },
    reached: "read",
    given: "12 in, C of 100: the flow that loses 10 ft in 1000 ft, 1605 gpm",
    answers: [to("ft in 1000 ft", 10, 1)],
    compute: () => {
      const flow = quantity(1605, "gal/min", "water");
      const pipe = { diameter: quantity(12, "in"), length: quantity(1000, "ft"), smoothness: 100 };
      return [pressureHead({ pressure: frictionLoss({ flow, ...pipe }) }).in("ft")];
    },
  },
];

/** Solved examples of a textbook of irrigation: salt and sodium. */
export const textbookSoilChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-153",
    formulas: ["sodiumAdsorptionRatio"],
    source: punmia("3.1"),
    reached: "read",
    given: "24 of sodium, 3.6 of calcium and 2 of magnesium, meq/L",
    answers: [to("SAR", 14.34, 0.01)],
    compute: () => [
      sodiumAdsorptionRatio({
        Na: quantity(24, "meq/L", "Na"),
        Ca: quantity(3.6, "meq/L", "Ca"),
        Mg: quantity(2, "meq/L", "Mg"),
      }),
    ],
  },
  {
    entry: "soil-154",
    formulas: ["leachingRequirement", "irrigationWithLeaching"],
    source: punmia("16.10 and 16.11"),
    reached: "read",
    given:
      "use of 55.5 mm, water of 1.5 and drainage of 20 mmho/cm; use of 85 mm, water of 1.4, drainage of twice 11 mmho/cm",
    answers: [to("mm", 60, 1), to("mm in the second", 90.8, 0.1)],
    compute: () => {
      const depth = (use: number, water: number, drainage: number) => {
        const { share } = leachingRequirement({
          method: "drainage water",
          water: dS(water),
          drainage: dS(drainage),
        });
        return irrigationWithLeaching({ use: mm(use), share }).in("mm");
      };
      return [depth(55.5, 1.5, 20), depth(85, 1.4, 22)];
    },
  },
];
