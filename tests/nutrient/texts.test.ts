import { describe, expect, test } from "vitest";
import {
  activityIndex,
  fertilizer,
  highestProductRate,
  injector,
  liquidFertilizer,
  nitrogenBreakdown,
  quickRelease,
  releasedNitrogen,
  saltOutFindings,
  stockTank,
} from "../../src/nutrient/index.js";
import { type Finding, quantity } from "../../src/quantity/index.js";

// What a person reads who works with fertilizer: findings of the room, word for word.

const tank = (salts: readonly (readonly [id: string, analysis: string])[]) =>
  stockTank({
    targets: [quantity(150, "mg/L", "N"), quantity(50, "mg/L", "P2O5")],
    salts: salts.map(([id, grade]) => ({ product: fertilizer({ id, analysis: grade }) })) as never,
    injector: injector("1:100"),
    tank: quantity(100, "gal"),
  }).findings;

const read = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ code, text }) => `${code}: ${text}`);

const rows: readonly (readonly [
  name: string,
  findings: () => readonly Finding[],
  texts: readonly string[],
])[] = [
  [
    "a label without a breakdown",
    () => nitrogenBreakdown(undefined, 24).findings,
    ["nitrogen/no-breakdown: No slow-release nitrogen on the label: all 24 % N counted as quick-release."],
  ],
  [
    "an activity index of 25",
    () =>
      activityIndex({
        coldInsoluble: quantity(20, "% w/w", "N/product"),
        hotInsoluble: quantity(15, "% w/w", "N/product"),
      }).findings,
    [
      "nitrogen/activity-index-low: The activity index of 25 lies below 40: much of this nitrogen may not become available within a season.",
    ],
  ],
  [
    "a solution of 32 % at 30 °F",
    () => saltOutFindings("UAN 32", quantity(30, "°F")),
    [
      "liquid/salts-out: At 30 °F urea ammonium nitrate solution, 32 % N may salt out: its published salt-out temperature is 32 °F. Crystals plug lines and screens, and the liquid left is weaker.",
    ],
  ],
  ["the same at 40 °F", () => saltOutFindings("UAN 32", quantity(40, "°F")), []],
  [
    "a solution of which none is printed",
    () => saltOutFindings("ammonium thiosulfate", quantity(15, "°F")),
    [
      "liquid/salt-out-not-checked: No source on file gives a salt-out temperature for ammonium thiosulfate solution, so cold was not checked.",
    ],
  ],
  [
    "a cap that leaves nothing",
    () =>
      highestProductRate({
        product: fertilizer({ id: "feed-a", analysis: "20-0-10" }),
        caps: [{ id: "season", limit: quantity(0, "lb/1000 ft2", "N") }],
      }).findings,
    ['rate/cap-used-up: The cap "season" leaves no N (0 lb/1000 ft2): the highest rate is 0.'],
  ],
  [
    "a liquid that is too strong to be one",
    () => liquidFertilizer({ id: "drench", perVolume: { N: quantity(450, "g/L", "N") } }).findings ?? [],
    [
      "liquid/unusually-strong: 450 g of N per liter is more than a 32 % solution of urea and ammonium nitrate holds (422 g/L, 3.5 lb/gal). Check the unit on the label.",
    ],
  ],
  [
    "calcium and phosphate in one stock",
    () =>
      tank([
        ["calcium-nitrate", "15.5-0-0-19Ca"],
        ["phosphate", "0-53-34"],
      ]),
    [
      "stock/precipitate: Calcium (calcium-nitrate) with phosphate or sulfate (phosphate) in one concentrated stock precipitates: use two tanks.",
    ],
  ],
  [
    "one temperature for all days",
    () =>
      releasedNitrogen({
        applied: "2026-05-01",
        days: 7,
        placement: "surface or thatch",
        temperature: { mean: quantity(20, "°C") },
        portions: [{ name: "urea", nitrogen: quantity(0.7, "lb/1000 ft2", "N"), model: quickRelease }],
      }).findings,
    [
      "release/steady-temperature: One mean temperature is used for all days; days that swing release more than steady ones.",
    ],
  ],
];

describe("what is told of nutrients", () => {
  test.each(rows)("%s", (_, findings, texts) => {
    expect(read(findings())).toEqual(texts);
  });
});
