// What a route says that is wrong, place by place, and what its writer reads.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/index.js";
import { routeLoads, routeText, tryRouteOrder } from "../../../src/plan/index.js";
import { problemsOf } from "../../errors.js";

const job = (name: string) =>
  JSON.parse(readFileSync(new URL(`whole-${name}.json`, import.meta.url), "utf8"));
const told = (more: object, name = "us"): readonly string[] =>
  tryRouteOrder({ ...job(name), ...more }).problems.map(
    ({ code, path, expected }) => `${code} ${path}: ${expected}`,
  );
const [hall, library, school] = job("us").stops;

describe("a route that is refused", () => {
  test.each<readonly [string, object]>([
    ['missing type: "route-job"', { type: undefined }],
    ['type type: "route-job"', { type: "route" }],
    ["missing version: 1", { version: undefined }],
    ["type version: 1", { version: 2 }],
    ["missing title: a title", { title: undefined }],
    ["missing sprayer: a sprayer, because a mix is sprayed", { sprayer: undefined }],
    ["type sprayer: a sprayer", { sprayer: 5 }],
    ["type startWith: an amount", { startWith: 5 }],
    ["substance/mismatch startWith.of: spray", { startWith: { value: 1, unit: "gal", of: "product" } }],
    ['type refill: one of "before a stop", "when empty"', { refill: "often" }],
    ['type units: one of "US customary", "metric", "both"', { units: "SI" }],
    ["type applicator: the name, and the certificate", { applicator: 5 }],
    ["type applicator.name: text", { applicator: { name: 5 } }],
  ])("%s", (expected, more) => expect(told(more)).toContain(expected));

  test("loads that are split otherwise than a route is filled", () => {
    expect(told({ sprayer: { ...job("us").sprayer, loadSplit: "even" } })).toEqual([
      "conflict sprayer.loadSplit: no loadSplit: each fill is a full tank, or what the rest of the route takes",
    ]);
  });

  test("a ledger in which the route is written already", () => {
    const entry = {
      id: "2026-06-09 hall iron",
      date: "2026-06-09",
      product: "iron",
      amount: { value: 36, unit: "fl oz" },
      area: { value: 12_000, unit: "ft2" },
      form: "liquid",
    };
    const stops = [{ ...hall, ledger: { type: "ledger", version: 1, entries: [entry] } }, library, school];
    expect(told({ stops })).toEqual([
      "duplicate stops[0].ledger: a ledger without the entries of this route: they would count twice",
    ]);
  });

  test("a hopper that is not stated, and options that nobody knows", () => {
    expect(told({ spreader: { name: "rotary" } }, "metric").join()).toMatch(/^missing spreader\.hopper: /);
    expect(problemsOf(() => routeText(job("us"), { copi: "shed" } as never))[0]?.path).toBe("options.copi");
    expect(problemsOf(() => routeText(job("us"), 5 as never))[0]?.path).toBe("options");
  });
});

describe("the loads of a route", () => {
  const stop = (id: string, ft2: number, canFill?: boolean) => ({
    id,
    area: quantity(ft2, "ft2"),
    ...(canFill !== undefined && { canFill }),
  });
  const asked = {
    stops: [stop("a", 12_000), stop("b", 12_000)],
    rate: quantity(1, "gal/1000 ft2", "spray"),
    capacity: quantity(20, "gal", "spray"),
  };
  const refused = (more: object): readonly string[] =>
    problemsOf(() => routeLoads({ ...asked, ...more } as never)).map(
      ({ code, path, expected }) => `${code} ${path}: ${expected}`,
    );
  test.each<readonly [string, object]>([
    ["missing stops[0].id: a name that no other stop has", { stops: [{ area: quantity(1, "ft2") }] }],
    ["duplicate stops[1].id: a name that no other stop has", { stops: [stop("a", 1), stop("a", 1)] }],
    ["type stops[0]: a stop with its area", { stops: [5] }],
    [
      "substance/mismatch stops[0].area: an area, of no substance",
      { stops: [{ id: "a", area: { value: 1, unit: "ft2", of: "N" } }] },
    ],
    [
      "substance/mismatch rate: a rate of spray or product; for a nutrient, productRate gives the product rate",
      { rate: quantity(1, "lb/1000 ft2", "N") },
    ],
    ['type refill: one of "before a stop", "when empty"', { refill: "often" }],
  ])("%s", (expected, more) => expect(refused(more)).toContain(expected));
  test("a rate of no substance is taken as it is", () => {
    const bare = routeLoads({ ...asked, rate: quantity(1, "gal/1000 ft2"), capacity: quantity(20, "gal") });
    // 20 gal to the brim, 12 of them for a; b takes 12 and finds 8.
    expect(bare.fills.map(({ added }) => added.value)).toEqual([20, 4]);
  });
  test("a tank whose every gallon stays in it is told at what stays, and at the hoses where both fill it", () => {
    const [room, some] = [quantity(20, "gal", "spray"), quantity(12, "gal", "spray")];
    expect(refused({ capacity: room, residualVolume: room })).toEqual([
      "range residualVolume: less than 20 gal, what the tank holds",
    ]);
    expect(
      refused({ capacity: room, residualVolume: some, plumbingVolume: quantity(8, "gal", "spray") }),
    ).toEqual(["range plumbingVolume: less than 8 gal, what the tank holds on top of the residual volume"]);
  });
  test("a tank too small for a day says how large it has to be", () => {
    // 24 gal in 10,000 fillings are 0.0024 gal, beside what tank and hoses keep
    const tiny = {
      capacity: quantity(1.002, "gal", "spray"),
      residualVolume: quantity(0.75, "gal", "spray"),
      plumbingVolume: quantity(0.25, "gal", "spray"),
    };
    expect(refused(tiny)).toEqual([
      "range capacity: 1.0024 gal or more, enough for the route in 10000 fills",
    ]);
  });
  test("a stop without water on the way is reached on one filling, or named", () => {
    const dry = (area: number) => [stop("a", 12_000), stop("b", area, false), stop("c", 1000)];
    // 20 gal at a, 12 of them gone behind it and filled in again: before b the tank has to hold what b takes, 20 gal do 20,000 sq ft, 20.1 do not.
    expect(
      routeLoads({ ...asked, stops: dry(20_000) }).fills.map(({ stop: at, added }) => [at, added.value]),
    ).toEqual([
      ["a", 20],
      ["a", 12],
      ["c", 1],
    ]);
    expect(refused({ stops: dry(20_100) })).toEqual([
      "infeasible stops[1].canFill: a fill point on the way: from a to the next one the stops take 20.1 gal; fill at one of them, or change the order of the stops",
    ]);
    // A route may begin where nothing can be filled in.
    const first = [stop("a", 12_000, false), stop("b", 8_000, false)];
    expect(
      routeLoads({ ...asked, stops: first }).fills.map(({ stop: at, added }) => [at, added.value]),
    ).toEqual([["a", 20]]);
    expect(refused({ stops: [stop("a", 12_000, false), stop("b", 8_100, false)] })[0]).toMatch(
      /^infeasible stops\[0\]\.canFill: .*from a to the next one the stops take 20\.1 gal/,
    );
  });
});
