import { describe, expect, test } from "vitest";
import {
  areaRatesOf,
  completionFindings,
  limitedName,
  readAreaAmount,
  suppliedRates,
  unweighedOf,
  weighedContents,
} from "../../../src/ledger/house.js";
import { fertilizer } from "../../../src/nutrient/index.js";
import { type Quantity, quantityOf } from "../../../src/quantity/index.js";
import { expectRefusals } from "../../refusals.js";

type Rate = Quantity<"mass/area", string>;
const _rate = (value: number, of: string, unit = "lb/acre"): Rate =>
  quantityOf(value, unit, of, "rate") as Rate;
const values = (found: Readonly<Record<string, Rate>> | undefined) =>
  Object.fromEntries(Object.entries(found ?? {}).map(([of, q]) => [of, Number(q.value.toFixed(6))]));

describe("a rate of product", () => {
  const density = quantityOf<"mass/volume", "none">(10, "lb/gal", "none", "density");
  const poured = quantityOf(2, "gal/acre", "product", "rate");
  const spread = quantityOf(100, "lb/acre", "product", "rate");

  test("goes both ways by the density: 2 gal of 10 lb/gal are 20 lb", () => {
    const both = areaRatesOf(poured, density);
    expect([both.byVolume?.in("gal/acre" as never), both.byMass?.in("lb/acre" as never)]).toEqual([
      2,
      expect.closeTo(20, 9),
    ]);
    const back = areaRatesOf(spread, density);
    expect([back.byMass?.value, back.byVolume?.in("gal/acre" as never)]).toEqual([
      100,
      expect.closeTo(10, 9),
    ]);
    expect([areaRatesOf(poured, undefined).byMass, areaRatesOf(spread, undefined).byVolume]).toEqual([
      undefined,
      undefined,
    ]);
    expect(areaRatesOf(undefined, density)).toEqual({});
  });

  const feed = fertilizer({ id: "feed", form: "liquid", analysis: "12-4-0" });
  const slow = fertilizer({
    id: "slow",
    form: "dry",
    analysis: "20-0-10",
    slowNitrogen: quantityOf(20, "% w/w", "N:slow/product", "slow") as never,
  });
  const byWeight = quantityOf(0.5, "% w/w", "ai:prodiamine/product", "content");
  const perVolume = quantityOf(4, "lb/gal", "ai:dithiopyr/product", "content");
  const nothing = quantityOf(0, "lb/gal", "ai:asulam/product", "content");

  test("supplies what its label and its contents hold: 100 lb of 12 % are 12 lb", () => {
    const found = suppliedRates(
      { fertilizer: feed, contents: [byWeight, perVolume] },
      areaRatesOf(poured, density),
    );
    expect(values(found)).toMatchObject({ N: 2.4, "ai:prodiamine": 0.1, "ai:dithiopyr": 8 });
    expect(suppliedRates({}, areaRatesOf(spread, undefined))).toBeUndefined();
    expect(suppliedRates({ contents: [] }, areaRatesOf(spread, undefined))).toBeUndefined();
    expect(suppliedRates({ fertilizer: feed }, areaRatesOf(poured, undefined))).toBeUndefined();
    expect(suppliedRates({ contents: [perVolume] }, areaRatesOf(spread, undefined))).toBeUndefined();
  });

  test("that cannot be weighed leaves open what is stated the other way, by name", () => {
    const label = { fertilizer: feed, contents: [byWeight, perVolume, nothing] };
    expect(unweighedOf(label, areaRatesOf(poured, undefined)).slice().sort()).toEqual([
      "N",
      "N:quick",
      "P2O5",
      "ai:prodiamine",
    ]);
    expect(unweighedOf(label, areaRatesOf(spread, undefined))).toEqual(["ai:dithiopyr"]);
    expect(unweighedOf(label, areaRatesOf(spread, density))).toEqual([]);
    expect(values(weighedContents([byWeight, perVolume], areaRatesOf(poured, undefined)))).toEqual({
      "ai:dithiopyr": 8,
    });
    // All of the nitrogen is slow: none of it is quick
    expect(unweighedOf({ fertilizer: slow }, {}).slice().sort()).toEqual(["K2O", "N", "N:slow"]);
  });
});

test("what was taken as read is told in a sentence", () => {
  const found = completionFindings(
    ["no slow stated", "rest not stated", "no total stated"],
    "The application",
    "proposal",
    "2026-06-08",
  );
  expect(found.map(({ code, text }) => [code, text])).toEqual([
    [
      "nitrogen/no-slow-stated",
      "The application states no slow-release nitrogen: all of its nitrogen counts as quick-release.",
    ],
    [
      "nitrogen/rest-not-stated",
      "The application states less quick- and slow-release nitrogen than nitrogen in all: the rest counts as quick-release.",
    ],
    [
      "nitrogen/no-total-stated",
      "The application states no total nitrogen: the quick- and slow-release nitrogen that it states count as the total.",
    ],
  ]);
  for (const one of found)
    expect(one).toMatchObject({
      severity: "note",
      path: "proposal",
      params: { date: "2026-06-08" },
      source: "common practice, no source",
    });
});

test("names of what a limit can be about", () => {
  const wanted = /^a nutrient such as N or P2O5, or ai:, ae: or product: with a name/;
  for (const good of [
    "N",
    "N:quick",
    "N:slow",
    "P2O5",
    "ai:prodiamine",
    "ae:2,4-D",
    "product:feed-a",
    "other:dye",
  ])
    expect(limitedName(good, "of")).toBe(good);
  expectRefusals([
    [() => limitedName(undefined, "of"), "missing", "of", wanted],
    ...[
      "none",
      "treated",
      "gross",
      "plan",
      "product",
      "ai",
      "ae",
      "water",
      "spray",
      "soil",
      "seed",
      "N/product",
      "ai:a/product",
      "x y",
      3,
    ].map((bad) => [() => limitedName(bad, "of"), "substance/mismatch", "of", wanted] as const),
    [() => readAreaAmount(3, "amount"), "type", "amount", /^an amount per area/],
    [
      () => readAreaAmount({ value: 1, unit: "gal/acre", of: "N" }, "amount"),
      "unit/mismatch",
      "amount",
      /^a weight over an area/,
    ],
  ]);
  expect(readAreaAmount({ value: 1, unit: "gal/acre", of: "other:dye" }, "amount").dimension).toBe(
    "volume/area",
  );
});
