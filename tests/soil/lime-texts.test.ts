import { describe, expect, test } from "vitest";
import { type Finding, quantity } from "../../src/quantity/index.js";
import { limeProductRate, limeQuality, limeRequirement } from "../../src/soil/index.js";

const meq = (value: number) => quantity(value, "meq/100 g");
const assumed = { assumed: "2,000,000 lb/acre" } as const;

type Told = readonly (readonly [code: string, severity: Finding["severity"], text: string])[];
const lime = (input: object) => limeRequirement(input as Parameters<typeof limeRequirement>[0]).findings;
const atTarget: Told = [
  ["lime/none-needed", "note", "The soil is at its target of pH 6.5: no lime is called for."],
];

const told: readonly (readonly [name: string, found: () => readonly Finding[], told: Told])[] = [
  [
    "a soil at its target",
    () => lime({ method: "buffer pH, Iowa", pH: 6.5, targetPH: 6.5, bufferPH: 6.8 }),
    atTarget,
  ],
  [
    "between two rows",
    () => lime({ method: "Sikora buffer, Oregon", pH: 5, targetPH: 6, bufferPH: 6.05 }),
    [
      [
        "lime/between-rows",
        "note",
        "The table has no row for 6.05: the rate is interpolated between its neighbors.",
      ],
    ],
  ],
  [
    "a doubtful figure",
    () => lime({ method: "buffer pH, Iowa", pH: 5, targetPH: 6.9, bufferPH: 5.8 }),
    [
      [
        "lime/doubtful-figure",
        "caution",
        "The last figure of this column, 10,600 lb an acre, breaks the steps of the rest, which would give 11,000: it may be a misprint.",
      ],
    ],
  ],
  [
    "lime of the last months",
    () =>
      lime({
        method: "Mehlich buffer, North Carolina",
        pH: 5,
        targetPH: 6,
        bufferPH: 6.5,
        residualCredit: quantity(1, "US ton/acre", "product:standard-lime"),
      }),
    [
      [
        "lime/credit-covers",
        "note",
        "The lime of the last months, not yet used up, covers the need: no lime is called for now.",
      ],
    ],
  ],
  [
    "the least rate of a guide",
    () => lime({ method: "Mehlich buffer, Pennsylvania fields", pH: 6, targetPH: 6.5, acidity: meq(3) }),
    [
      [
        "lime/least-rate",
        "note",
        "Up to 4.0 meq/100 g of acidity the guide gives 2,000 lb an acre for pH 6.5, whatever the acidity.",
      ],
    ],
  ],
  [
    "a very acid soil",
    () => lime({ method: "pH buffering", pH: 4.2, targetPH: 6, perUnitPH: meq(2), layer: assumed }),
    [
      [
        "lime/buffering-not-straight",
        "caution",
        "Below pH 4.5 a soil takes more lime for a unit of pH than above: at 4.2 a straight line is too low.",
      ],
    ],
  ],
  [
    "sieves that come to 99 %",
    () =>
      limeQuality({ CCE: 90, scheme: "British Columbia", sieves: { fractions: [7.8, 2.4, 10, 78.8] } })
        .findings,
    [
      [
        "lime/fractions-short",
        "caution",
        "The sieve fractions add up to 99 %: what is missing counts as lime that does not react.",
      ],
    ],
  ],
  [
    "lime rated by another state",
    () =>
      limeProductRate({
        requirement: limeRequirement({ method: "buffer pH, Iowa", pH: 5, targetPH: 6.5, bufferPH: 6.4 }),
        quality: limeQuality({
          CCE: 90,
          scheme: "New York ENV",
          sieves: { passing: { 20: 100, 60: 80, 100: 60 } },
        }),
        id: "lime-a",
      }).findings,
    [
      [
        "lime/other-scheme",
        "caution",
        "The recommendation counts lime by Iowa ECCE, the lime was rated by New York ENV: the same lime rates differently.",
      ],
    ],
  ],
];

describe("what the soil room says of lime", () => {
  test.each(told.map(([name, found, list]) => [name, found, list] as const))("%s", (_name, found, list) => {
    expect(found().map(({ code, severity, text }) => [code, severity, text])).toEqual(list);
  });
});
