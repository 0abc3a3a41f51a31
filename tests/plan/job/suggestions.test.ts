import { expect, test } from "vitest";
import { tryWorkOrder } from "../../../src/plan/index.js";
import { smallJob } from "../helpers.js";

/** The suggestions for a small job with this target, by place. */
const suggestions = (target: unknown): Readonly<Record<string, string | undefined>> =>
  Object.fromEntries(
    tryWorkOrder(
      smallJob({ treatments: [{ id: "feed", method: "spread", product: "feed-a", target }] } as never),
    ).problems.map(({ path, suggestion }) => [path, suggestion]),
  );

test.each([
  [{ value: 0.8, unit: "lbs/acre", of: "N" }, "lb/acre"],
  [{ value: 0.8, unit: "lb/M", of: "N" }, "lb/1000 ft2"],
  [{ value: 0.8, unit: "lb/acre", of: "nitrogen" }, "N"],
  [{ value: 0.8, unit: "lb/acre", of: "phosphate" }, "P2O5"],
  // 0.8 stone of 14 lb
  [{ value: 0.8, unit: "stone/acre", of: "N" }, '{ "value": 11.2, "unit": "lb/acre", "of": "N" }'],
  [{ value: 0.8, unit: "barrow/acre", of: "N" }, undefined],
])("a job with %o is told what was likely meant: %s", (target, expected) => {
  const told = suggestions(target);
  expect(Object.keys(told).length).toBe(1);
  expect(Object.values(told)).toEqual([expected]);
});

test("a job with nitrate is told both that it may mean", () => {
  const target = { value: 0.8, unit: "lb/acre", of: "nitrate" };
  const job = smallJob({
    treatments: [{ id: "feed", method: "spread", product: "feed-a", target }],
  } as never);
  expect(tryWorkOrder(job).problems.map(({ code, path, choices }) => [code, path, choices])).toEqual([
    ["substance/ambiguous", "treatments[0].target", ["NO3-N", "NO3"]],
  ]);
});

/** What a job is told with one sprayer, limit or part put in place. */
const told = (more: object): readonly unknown[] =>
  tryWorkOrder(smallJob(more as never)).problems.map(({ path, got, expected, suggestion, choices }) => [
    path,
    got,
    suggestion ?? choices ?? expected,
  ]);

const sprayer = (tank: unknown) => ({
  sprayer: { tank, applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" } },
});

test("a measure without its unit, or with its number as text, is told at that very place", () => {
  expect(told(sprayer({ value: 10 }))).toEqual([["sprayer.tank.unit", "nothing", "the unit of the number"]]);
  expect(told(sprayer({ value: "1,000", unit: "L" }))).toEqual([["sprayer.tank.value", '"1,000"', "1000"]]);
  expect(told(sprayer({ value: "ten", unit: "gal" }))).toEqual([["sprayer.tank.value", '"ten"', "a number"]]);
  expect(told(sprayer({ unit: "gal" }))).toEqual([["sprayer.tank.value", "nothing", "a number"]]);
});

test("a measure in another form is told how the file writes it", () => {
  expect(told(sprayer("10 gal"))).toEqual([["sprayer.tank", '"10 gal"', '{ "value": 10, "unit": "gal" }']]);
  expect(told(sprayer("10 gallons"))).toEqual([
    ["sprayer.tank", '"10 gallons"', '{ "value": 10, "unit": "gal" }'],
  ]);
  // Without a blank between the two, and with a slip in the word.
  for (const typed of ["10gallns", "10  gallns "])
    expect(told(sprayer(typed))).toEqual([
      ["sprayer.tank", JSON.stringify(typed), '{ "value": 10, "unit": "gal" }'],
    ]);
  expect(told(sprayer(10))).toEqual([
    ["sprayer.tank", "10", 'a volume with its unit, such as { "value": 10, "unit": "..." }'],
  ]);
});

test("a weight where a weight per area is asked for is told in plain words", () => {
  const target = { value: 0.8, unit: "lb", of: "N" };
  expect(told({ treatments: [{ id: "feed", method: "spread", product: "feed-a", target }] })).toEqual([
    ["treatments[0].target", "0.8 lb of N", "a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha"],
  ]);
});

test.each([
  ["year", ["calendar year", '{ "months": 12 }']],
  ["month", '{ "months": 1 }'],
  ["30 days", '{ "days": 30 }'],
])("a limit per %s", (per, expected) => {
  const limit = { amount: { value: 1, unit: "lb/acre", of: "N" }, per, source: "plan" };
  expect(told({ limits: [limit] })).toEqual([["limits[0].per", `"${per}"`, expected]]);
});

test("every part that the site does not have is told, and both ends of a part of the year", () => {
  const site = {
    name: "Pitch",
    parts: [{ name: "pitch", shape: "measured", area: { value: 900, unit: "m2" } }],
  };
  const treatments = [
    {
      id: "feed",
      method: "spread",
      product: "feed-a",
      target: { value: 0.8, unit: "lb/acre", of: "N" },
      parts: ["Pitch", "pich"],
    },
  ];
  expect(told({ site, treatments })).toEqual([
    ["treatments[0].parts[0]", '"Pitch"', ["pitch"]],
    ["treatments[0].parts[1]", '"pich"', ["pitch"]],
  ]);
  const blackout = {
    kind: "blackout dates",
    of: "any",
    blackout: { from: "12-1", to: "3-1" },
    source: "code",
  };
  expect(tryWorkOrder(smallJob({ limits: [blackout] } as never)).problems.map(({ path }) => path)).toEqual([
    "limits[0].blackout.from",
    "limits[0].blackout.to",
  ]);
});

test("an amount in words, or for a hundred gallons, is told as the record that the file takes", () => {
  const feed = (target: unknown) =>
    told({ treatments: [{ id: "feed", method: "spread", product: "feed-a", target }] });
  expect(feed("0.9 lb N/1000 sq ft")).toEqual([
    ["treatments[0].target", '"0.9 lb N/1000 sq ft"', '{ "value": 0.9, "unit": "lb/1000 ft2", "of": "N" }'],
  ]);
  expect(feed(0.9).map((one) => (one as readonly unknown[])[0])).toEqual(["treatments[0].target"]);
  // 2 pt in 100 gal are 0.02 pt/gal, 250 g in 100 L 2.5 g/L
  const mixed = (value: number, unit: string) =>
    tryWorkOrder({
      ...smallJob(sprayer({ value: 50, unit: "gal" }) as never),
      products: [{ id: "wetter", form: "liquid", formulation: "surfactant" }],
      treatments: [
        {
          id: "wet",
          method: "spray",
          mix: [{ product: "wetter", rate: { value, unit, of: "product/spray" } }],
        },
      ],
    }).problems.map(({ path, suggestion }) => [path, suggestion]);
  expect(mixed(2, "pt/100 gal")).toEqual([
    ["treatments[0].mix[0].rate", '{ "value": 0.02, "unit": "pt/gal", "of": "product/spray" }'],
  ]);
  expect(mixed(250, "g/100 L")).toEqual([
    ["treatments[0].mix[0].rate", '{ "value": 2.5, "unit": "g/L", "of": "product/spray" }'],
  ]);
  expect(mixed(2, "jug/tank")).toEqual([["treatments[0].mix[0].rate", undefined]]);
});

test("what people call a field or a choice leads to its name", () => {
  expect(told({ facts: { water: "pond" } })).toEqual([["facts.water", 'a field "water"', "toWater"]]);
  expect(told({ units: "us" })).toEqual([["units", '"us"', "US customary"]]);
  const part = { name: "lawn", area: { value: 5000, unit: "ft2" } };
  const [first] = told({ site: { name: "Park", parts: [part] } });
  expect(first).toEqual(["site.parts[0].shape", "nothing", "measured"]);
});

test("the unit of a scale is a unit, not a measure", () => {
  const unit = (name: string) =>
    tryWorkOrder({
      ...smallJob(),
      sprayer: {
        tank: { value: 50, unit: "gal" },
        applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
        increments: { dry: { unit: name, step: 1 } },
      },
    }).problems.map(({ path, expected, suggestion }) => [path, expected, suggestion]);
  expect(unit("lbs")).toEqual([["sprayer.increments.dry.unit", "a unit, such as lb/acre", "lb"]]);
});

test("what is told of a log beside a ledger, and of a code with several meanings", () => {
  expect(told({ log: [], ledger: { type: "ledger", version: 1, entries: [] } })).toEqual([
    ["ledger", "log and ledger", "only one of them: both would count twice"],
  ]);
  const [problem] = tryWorkOrder(
    smallJob({ products: [{ id: "feed-a", form: "liquid", formulation: "WSP" }] } as never),
  ).problems;
  expect([problem?.path, problem?.expected]).toEqual([
    "products[0].formulation",
    'a code with one meaning, or the list that the label follows: { "code": "WSP", "scheme": "international" }',
  ]);
});
