import { describe, expect, test } from "vitest";
import { type Finding, quantity } from "../../src/quantity/index.js";
import { loadAmounts, loadingOrder, tankLoads } from "../../src/tank/index.js";

// What a person reads who fills a tank: findings of loads and of the order, word for word.

const gallons = (value: number) => quantity(value, "gal", "spray");
const job = (acres: number) => ({
  area: quantity(acres, "acre"),
  applicationVolume: quantity(10, "gal/acre", "spray"),
  capacity: gallons(50),
});
const measured = (ounces: number) =>
  loadAmounts({
    loads: tankLoads(job(1)),
    products: [{ id: "powder", form: "dry", rate: quantity(ounces, "oz/acre", "product:powder") }],
    increments: { dry: { unit: "oz", step: 1 } },
  }).findings;

const read = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ code, text }) => `${code}: ${text}`);
const only = (findings: readonly Finding[], code: string) => findings.filter((one) => one.code === code);

const rows: readonly (readonly [
  name: string,
  findings: () => readonly Finding[],
  texts: readonly string[],
])[] = [
  [
    "a load that is less than a tenth of the tank",
    () => tankLoads({ ...job(5.1), loadSplit: "full then partial" }).findings,
    [
      "load/small-last: Load 2 is only 1 gal, less than a tenth of the tank: few tanks can agitate that little, and it is hard to measure for. Even loads are 25.5 gal each.",
    ],
  ],
  [
    "a job that is less than a tenth of the tank",
    () => tankLoads(job(0.2)).findings,
    [
      "load/small: The whole job takes 2 gal, less than a tenth of the tank: few tanks can agitate that little, and it is hard to measure for. Use a smaller sprayer.",
    ],
  ],
  [
    "loads of a fixed size that mix too much",
    () => tankLoads({ ...job(3), loadSplit: "fixed size", loadSize: gallons(20) }).findings,
    [
      "load/mixed-over: Loads of a fixed size mix 10 gal more than the job takes. Apply it to a labeled site, at or below the label rate, or mix the last load smaller.",
    ],
  ],
  [
    "a scale that is too coarse",
    () => measured(0.8),
    [
      "load/step-too-coarse: Load 1 gets 1 oz by weight of powder where 0.8 oz by weight is computed, 25 % more: a measuring increment of 1 oz by weight is too coarse for what it needs.",
    ],
  ],
  [
    "a scale that shows nothing",
    () => measured(0.2),
    [
      "load/step-too-coarse: Load 1 gets no powder: a measuring increment of 1 oz by weight is too coarse for what it needs.",
    ],
  ],
  [
    "a label that puts an EC before a powder",
    () =>
      only(
        loadingOrder({
          products: [
            { id: "oil", formulation: "EC", addBefore: ["powder"] },
            { id: "powder", formulation: "WP" },
          ],
        }).findings,
        "order/emulsion-before-powder",
      ),
    [
      "order/emulsion-before-powder: oil (emulsifiable concentrate) goes in before powder (wettable powder): this order is reported to form a floating putty. Check the label again.",
    ],
  ],
];

describe("what is told of a tank", () => {
  test.each(rows)("%s", (_, findings, texts) => {
    expect(read(findings())).toEqual(texts);
  });
});
