import { describe, expect, test } from "vitest";
import {
  boomHeight,
  brownPatchIndex,
  clippingVolumeFor,
  effectiveFieldCapacity,
  effectiveRain,
  expectedSeedlings,
  grossDepth,
  gypsumRequirement,
  laborHours,
  loadedWage,
  money,
  mowingInterval,
  netDepth,
  passesForShare,
  pumpCapacity,
  pumpPower,
  quantity,
  readilyAvailableWater,
  sprayTime,
  sulfurCoatedUrea,
  ureaform,
  waterStress,
} from "../../src/index.js";
import { problemsOf } from "../errors.js";

type Percent = ReturnType<typeof quantity<"%">>;
type Row = readonly [
  name: string,
  path: string,
  /** What people write, in percent. */
  usual: number,
  /** The least that anybody means, with where it is printed or why. */
  least: number,
  call: (percent: Percent) => unknown,
];

const inches = (value: number) => quantity(value, "in");
const mph = quantity(4, "mi/h");

// The least of each row passes: 20 % for the poorest surface irrigation, 10 % for the least depletion of FAO 56, 50 % for the
// poorest field efficiency of ASAE D497 and less for hand work, 1.5 % N for starved turf (all from memory); the others are
// those that the source of the formula prints, or far below them.
const rows: readonly Row[] = [
  ["grossDepth", "efficiency", 75, 5, (efficiency) => grossDepth({ net: inches(0.75), efficiency })],
  ["netDepth", "efficiency", 80, 5, (efficiency) => netDepth({ gross: inches(0.75), efficiency })],
  [
    "readilyAvailableWater",
    "depletion",
    50,
    5,
    (depletion) => readilyAvailableWater({ available: inches(5), depletion }),
  ],
  [
    "waterStress",
    "depletion",
    50,
    5,
    (depletion) => waterStress({ available: inches(2), depleted: inches(0.1), depletion }),
  ],
  [
    "effectiveRain",
    "share",
    80,
    5,
    (share) => effectiveRain({ rain: inches(1), method: "fixed share", share }),
  ],
  [
    "pumpPower",
    "efficiency",
    60,
    20,
    (efficiency) =>
      pumpPower({ flow: quantity(50, "gal/min", "water"), head: quantity(100, "ft"), efficiency }),
  ],
  [
    "effectiveFieldCapacity",
    "efficiency",
    70,
    10,
    (efficiency) => effectiveFieldCapacity({ swath: quantity(40, "ft"), speed: mph, efficiency }),
  ],
  [
    "sprayTime",
    "efficiency",
    75,
    10,
    (efficiency) =>
      sprayTime({
        area: quantity(10, "acre"),
        speed: mph,
        swath: quantity(20, "ft"),
        efficiency,
        applicationVolume: quantity(40, "gal/acre", "spray"),
        capacity: quantity(150, "gal", "spray"),
        refill: quantity(20, "min"),
      }),
  ],
  [
    "laborHours",
    "tasks[0].efficiency",
    80,
    10,
    (efficiency) =>
      laborHours({
        tasks: [
          {
            name: "mow",
            area: quantity(4, "acre"),
            swath: quantity(6, "ft"),
            speed: mph,
            efficiency,
            times: 30,
          },
        ],
        hoursPerPerson: quantity(1200, "h"),
      } as never),
  ],
  [
    "loadedWage",
    "burden",
    20,
    7.65,
    (burden) =>
      loadedWage({
        wage: money(16, "USD").per(quantity(1, "h")),
        overtime: quantity(10, "%"),
        risk: quantity(0.3, "%"),
        burden,
      }),
  ],
  [
    "boomHeight",
    "overlap",
    50,
    5,
    (overlap) => boomHeight({ angle: quantity(80, "deg"), spacing: inches(20), overlap }),
  ],
  [
    "pumpCapacity",
    "agitation",
    5,
    2.5,
    (agitation) =>
      pumpCapacity({
        boom: quantity(19, "gal/min", "spray"),
        tank: quantity(500, "gal"),
        agitation,
        reserve: quantity(0, "%"),
      }),
  ],
  [
    "pumpCapacity",
    "reserve",
    20,
    5,
    (reserve) =>
      pumpCapacity({
        boom: quantity(19, "gal/min", "spray"),
        tank: quantity(500, "gal"),
        agitation: quantity(5, "%"),
        reserve,
      }),
  ],
  ["passesForShare", "target", 20, 2, (target) => passesForShare({ target, share: quantity(4.9, "%") })],
  [
    "expectedSeedlings",
    "emergence.share",
    50,
    2,
    (share) =>
      expectedSeedlings({
        rate: quantity(2, "lb/1000 ft2", "pure live seed"),
        seedsPerMass: quantity(600_000, "count/lb"),
        emergence: { share, source: "trial" },
      } as never),
  ],
  [
    "mowingInterval",
    "suppression",
    25,
    5,
    (suppression) => mowingInterval({ cut: inches(3), growth: quantity(0.3, "in/d"), suppression } as never),
  ],
  [
    "clippingVolumeFor",
    "share",
    4,
    1.5,
    (share) =>
      clippingVolumeFor({ nitrogen: quantity(1, "g/m2", "N"), share, dryMass: quantity(60, "g/L") } as never),
  ],
  [
    "sulfurCoatedUrea",
    "sevenDayDissolution",
    25,
    5,
    (sevenDayDissolution) => sulfurCoatedUrea({ sevenDayDissolution, sealed: false, source: "label" }),
  ],
  ["ureaform", "activityIndex", 50, 15, (activityIndex) => ureaform({ activityIndex } as never)],
  [
    "brownPatchIndex",
    "meanHumidity",
    90,
    5,
    (meanHumidity) => brownPatchIndex({ meanHumidity, minimumTemperature: quantity(20, "°C") }),
  ],
  [
    "gypsumRequirement",
    "targetPercent",
    15,
    3,
    (targetPercent) =>
      gypsumRequirement({
        capacity: quantity(22, "meq/100 g"),
        sodiumPercent: quantity(35, "%"),
        targetPercent,
        convention: "3.85 t/ha for 30 cm and a meq",
        depth: quantity(40, "cm"),
        purity: 100,
      }),
  ],
];

describe("a share in the place of a percent", () => {
  for (const [name, path, usual, least, call] of rows) {
    test(`${name}: ${usual / 100} % at ${path} is told as ${usual} %`, () => {
      const told = problemsOf(() => call(quantity(usual / 100, "%")));
      expect(told.map((one) => [one.code, one.path, one.suggestion])).toEqual([
        ["range", path, `${usual} %`],
      ]);
      for (const percent of [usual, least])
        expect(problemsOf(() => call(quantity(percent, "%")))).toEqual([]);
      // A pure number is a share, and is taken as one
      expect(problemsOf(() => call(quantity(usual / 100, "1") as never))).toEqual([]);
    });
  }
});

test("a target of more than all of the surface, and waste of more than all of the sod, are refused", () => {
  expect(
    problemsOf(() => passesForShare({ target: quantity(2000, "%"), share: quantity(4.9, "%") })).map(
      ({ path }) => path,
    ),
  ).toEqual(["target"]);
});
