// What a stop writes into its ledger, and what the limits say there.
import { describe, expect, test } from "vitest";
import type { Limit } from "../../../src/limits/index.js";
import { type RouteJob, routeOrder, tryRouteOrder } from "../../../src/plan/index.js";

const source = "label (invented)";
const route = (more: Partial<RouteJob> = {}): RouteJob => ({
  type: "route-job",
  version: 1,
  title: "Round",
  date: "2026-06-09",
  products: [
    {
      id: "iron",
      name: "chelated iron",
      form: "liquid",
      formulation: { code: "SL", scheme: "international" },
      analysis: "6-0-0",
      density: { value: 10, unit: "lb/gal" },
      registrationNumber: "000-9",
      lot: "I1",
    },
    {
      id: "killer",
      form: "liquid",
      formulation: { code: "SL", scheme: "international" },
      contents: [{ value: 4, unit: "lb/gal", of: "ai:x/product" }],
    },
  ],
  mix: [{ product: "iron", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }],
  sprayer: {
    tank: { value: 50, unit: "gal" },
    applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
  },
  stops: [{ id: "hall", area: { value: 12_000, unit: "ft2" } }],
  ...more,
});
const entriesOf = (more: Partial<RouteJob>) =>
  routeOrder(route(more)).stops.map(({ entries }) => JSON.parse(JSON.stringify(entries)));

describe("the entries of a stop", () => {
  test("all that is stated of product, stop and applicator: 3 fl oz on 12,000 sq ft in 12 gal", () => {
    const [entries] = entriesOf({
      applicator: { name: "Crew 1", certificate: "C-5" },
      stops: [
        { id: "hall", address: "1 Main Street", turf: "bowling green", area: { value: 12_000, unit: "ft2" } },
      ],
    });
    expect(entries).toEqual([
      {
        id: "2026-06-09 hall iron",
        date: "2026-06-09",
        area: { value: 12_000, unit: "ft2" },
        product: "iron",
        productName: "chelated iron",
        form: "liquid",
        analysis: "6-0-0",
        density: { value: 10, unit: "lb/gal" },
        amount: { value: 36, unit: "fl oz", of: "product" },
        treatment: "Round",
        method: "spray",
        site: "bowling green",
        location: "1 Main Street",
        registrationNumber: "000-9",
        lot: "I1",
        applicator: "Crew 1",
        certificate: "C-5",
        carrierVolume: { value: 12, unit: "gal", of: "spray" },
      },
    ]);
  });

  test("and nothing that is not: no name, no lot, no address; contents where a label states them", () => {
    const mix = [{ product: "killer", rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" } }];
    const [entries] = entriesOf({ mix, applicator: { certificate: "C-5" } });
    expect(entries).toEqual([
      {
        id: "2026-06-09 hall killer",
        date: "2026-06-09",
        area: { value: 12_000, unit: "ft2" },
        product: "killer",
        productName: "killer",
        form: "liquid",
        contents: [{ value: 4, unit: "lb/gal", of: "ai:x/product" }],
        amount: { value: 12, unit: "fl oz", of: "product" },
        treatment: "Round",
        method: "spray",
        certificate: "C-5",
        carrierVolume: { value: 12, unit: "gal", of: "spray" },
      },
    ]);
    expect(Object.keys(entriesOf({ applicator: { name: "Crew 1" } })[0][0])).not.toContain("certificate");
  });
});

describe("the limits of a stop", () => {
  const tests = (limits: readonly Limit[], more: Partial<RouteJob> = {}) => {
    const { uses, tests: found } = routeOrder(route({ limits, ...more })).stops[0]?.limits ?? {
      uses: [],
      tests: [],
    };
    return [
      ...uses.map(({ adds, violated }) => [Number(adds.value.toFixed(6)), violated]),
      ...found.map((one) => [one.found, one.violated]),
    ];
  };
  const both = (...ids: readonly string[]) =>
    ids.map((product) => ({ product, rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }));

  test("on what a product holds: of several the most, and within the limit only where all are known", () => {
    const content = (atMostPercent: number): Limit => ({ kind: "content", of: "N", atMostPercent, source });
    expect(tests([content(6)])).toEqual([["6 %", false]]);
    expect(tests([content(5)])).toEqual([["6 %", true]]);
    // The killer states no analysis: one over the limit is over it all the same, but within it is not known.
    expect(tests([content(5)], { mix: both("iron", "killer") })).toEqual([["6 %", true]]);
    expect(tests([content(6)], { mix: both("iron", "killer") })).toEqual([[null, null]]);
    const products = [
      ...route().products,
      {
        id: "urea",
        form: "dry",
        analysis: "46-0-0",
        formulation: "dry fertilizer",
      } as const,
    ];
    const urea = { product: "urea", rate: { value: 0.1, unit: "lb/1000 ft2", of: "product" } };
    expect(tests([content(46)], { products, mix: [...both("iron"), urea] })).toEqual([["46 %", false]]);
  });

  test("on a product by its name: once, and 3 fl oz per 1,000 sq ft", () => {
    const count: Limit = { kind: "count", of: "product:iron", atMost: 1, per: "calendar year", source };
    expect(tests([count])).toEqual([[1, false]]);
    expect(tests([{ ...count, of: "product:other" }])).toEqual([[0, false]]);
    const amount: Limit = {
      amount: { value: 3, unit: "fl oz/1000 ft2", of: "product:iron" },
      per: "calendar year",
      source,
    };
    expect(tests([amount])).toEqual([[3, false]]);
    expect(tests([amount], { mix: both("iron", "killer") })).toEqual([[3, false]]);
  });

  test("on an active ingredient of two products of the mix, added up: 3 fl oz of 4 lb/gal each", () => {
    const products = [...route().products, { ...(route().products[1] as object), id: "twin" } as never];
    const amount: Limit = {
      amount: { value: 0.2, unit: "lb/1000 ft2", of: "ai:x" },
      per: "calendar year",
      source,
    };
    expect(tests([amount], { products, mix: both("killer") })).toEqual([[0.09375, false]]);
    expect(tests([amount], { products, mix: both("killer", "twin") })).toEqual([[0.1875, false]]);
  });

  test("facts of the stop win over those of the route, and its limits come behind", () => {
    const setback: Limit = { kind: "setback", of: "any", atLeast: { value: 25, unit: "ft" }, source };
    const toWater = (value: number) => ({ toWater: { value, unit: "ft" } });
    const stop = route().stops[0] as RouteJob["stops"][number];
    expect(tests([setback], { facts: toWater(30) })).toEqual([["30 ft", false]]);
    expect(tests([setback], { facts: toWater(30), stops: [{ ...stop, facts: toWater(20) }] })).toEqual([
      ["20 ft", true],
    ]);
    const order = routeOrder(
      route({
        limits: [setback],
        stops: [{ ...stop, facts: toWater(25), limits: [{ ...setback, id: "own" }] }],
      }),
    );
    expect(order.stops[0]?.limits.tests.map(({ limit, path }) => [limit.id, path])).toEqual([
      [undefined, "limits[0]"],
      ["own", "stops[0].limits[0]"],
    ]);
    expect(order.notChecked.join()).not.toContain("none are stated");
    expect(routeOrder(route()).notChecked).toContain("hall: limits, because none are stated.");
  });
});

describe("stops that are refused", () => {
  const told = (stops: unknown, more: object = {}): readonly string[] =>
    tryRouteOrder({ ...route(), stops, ...more }).problems.map(
      ({ code, path, expected }) => `${code} ${path}: ${expected}`,
    );
  const area = { value: 900, unit: "ft2" };

  test("all that is wrong with them, each at its place", () => {
    const stops = [
      5,
      { id: "a" },
      { id: "b", area, site: { parts: [] } },
      { id: "c", site: { parts: [{ shape: "square", side: { value: 9, unit: "lb" } }] } },
      { id: "d", site: { parts: [{ shape: "measured", area }], cutOuts: [{ shape: "measured", area }] } },
      {
        id: "e",
        area: { value: 900, unit: "ft2", of: "N" },
        canFill: "no",
        name: 5,
        address: "",
        turf: "x".repeat(201),
      },
      { id: "f", area, ledger: 5 },
      { id: "g", area, ledger: { type: "log", version: 2, entries: [] } },
      { id: "h", area, ledger: { type: "ledger", version: 1, entries: [{ id: "x" }] } },
      { id: "i", area, limits: 5, facts: { groundd: [] } },
      { area },
    ];
    expect(told(stops)).toEqual([
      "type stops[0]: a stop",
      "missing stops[1].area: the area that is treated, or a site with its shapes",
      "conflict stops[2]: one of them",
      "unit/mismatch stops[3].site.parts[0].side: a length, such as 10 ft or 3 m",
      "range stops[4].site: more than zero",
      "substance/mismatch stops[5].area: a quantity of no substance",
      "type stops[5].canFill: true or false",
      "type stops[5].name: text",
      "missing stops[5].address: text",
      "range stops[5].turf: 200 characters or fewer",
      "type stops[6].ledger: a ledger",
      'type stops[7].ledger.type: "ledger"',
      "missing stops[8].ledger.entries[0].date: a date, YYYY-MM-DD",
      "type stops[9].limits: a list of limits",
      "type stops[9].facts.groundd: one of the fields grass, applicator, place, turf, growingSeason, soilTest, productKind, equipment, ground, toWater, buffer, edges, runoff",
      "missing stops[10].id: a short name that no other stop has",
    ]);
  });

  test("none, or more than a day has", () => {
    expect(told([])).toEqual(["missing stops: at least one stop"]);
    const many = Array.from({ length: 1001 }, (_, i) => ({ id: `${i}`, area }));
    expect(told(many)).toEqual(["range stops: 1000 stops or fewer"]);
    expect(told(many.slice(1))).toEqual([]);
  });
});
