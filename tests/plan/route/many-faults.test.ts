// Routes in which nearly everything is wrong: what their writer reads, all of it at once, and nothing beside it.
import { describe, expect, test } from "vitest";
import { routeHtml, routeSheet, routeText, tryRouteOrder } from "../../../src/plan/index.js";
import { problemsOf } from "../../errors.js";

const area = { value: 12_000, unit: "ft2" };
const spread = {
  type: "route-job",
  version: 1,
  title: "Tuesday feed",
  date: "2026-05-05",
  products: [{ id: "feed", form: "dry", analysis: "24-0-11" }],
  spread: { product: "feed", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
  spreader: { hopper: { value: 100, unit: "lb" } },
  stops: [{ id: "hall", area }],
};
const spray = {
  ...spread,
  products: [{ id: "wetter", form: "liquid", formulation: "surfactant" }],
  mix: [{ product: "wetter", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }],
  spread: undefined,
  spreader: undefined,
  sprayer: {
    tank: { value: 50, unit: "gal" },
    applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
  },
};
const told = (job: unknown): readonly string[] =>
  tryRouteOrder(job).problems.map(({ code, path, expected }) => `${code} ${path}: ${expected}`);

describe("a route that is wrong in many places", () => {
  test("none of it is there", () => {
    expect(told({})).toEqual([
      'missing type: "route-job"',
      "missing version: 1",
      "missing title: a title",
      "missing date: a date, YYYY-MM-DD",
      "missing stops: a list with at least one stop",
      "missing mix: a mix for the tank, or spread for the hopper",
    ]);
    expect(told(5)).toEqual(["type route: a route"]);
    expect(told(undefined)).toEqual(["missing route: a route"]);
  });

  test("both at once", () => {
    expect(told({ ...spread, mix: spray.mix })).toEqual([
      "conflict spread: only one of them: a route uses one machine",
    ]);
  });

  test("a route that is spread", () => {
    const faulty = {
      ...spread,
      type: "job",
      version: 2,
      title: "x".repeat(201),
      date: "2026-02-30",
      spread: { product: "moon", target: { value: 0.9, unit: "lb", of: "N" }, passes: 9, setting: 5 },
      spreader: { hopper: { value: 0, unit: "lb" }, name: 5, swath: { value: 0, unit: "ft" } },
      startWith: { value: 1, unit: "gal" },
      refill: "often",
      limits: 5,
      facts: 5,
      units: "SI",
      applicator: { name: 5 },
      colour: "red",
    };
    expect(told(faulty)).toEqual([
      "type colour: one of the fields type, version, title, date, products, mix, spread, sprayer, spreader, startWith, refill, stops, limits, facts, units, applicator",
      'type type: "route-job"',
      "type version: 1",
      "range title: 200 characters or fewer",
      "date date: a day that exists: 2026-02 has 28 days",
      "missing spread.product: the id of a product of this job",
      "unit/mismatch spread.target: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha",
      "range spread.passes: 8 or less",
      "type spread.setting: text",
      "type spreader.name: text",
      "range spreader.swath: more than zero",
      "range spreader.hopper: more than zero",
      "unit/mismatch startWith: a weight, such as 50 lb or 20 kg",
      'type refill: one of "before a stop", "when empty"',
      "type limits: a list of limits",
      "type facts: facts of the application",
      'type units: one of "US customary", "metric", "both"',
      "type applicator.name: text",
    ]);
  });

  test("its spread and its spreader, one by one", () => {
    const fields = "one of the fields product, target, rate, passes, setting";
    expect(told({ ...spread, spread: 5 })).toEqual(["type spread: a product with its rate or a target"]);
    expect(told({ ...spread, spread: { ...spread.spread, parts: [] } })).toEqual([
      `type spread.parts: ${fields}`,
    ]);
    expect(told({ ...spread, spread: { product: "feed" } })).toEqual([
      "missing spread: a target of a nutrient, or a rate of product",
    ]);
    expect(told({ ...spread, spreader: undefined })).toEqual([
      "missing spreader: a spreader with its hopper",
    ]);
    expect(told({ ...spread, spreader: {} })).toEqual(["missing spreader.hopper: what the hopper holds"]);
    expect(told({ ...spread, startWith: { value: 1, unit: "lb", of: "spray" } })).toEqual([
      "substance/mismatch startWith.of: product",
    ]);
    for (const of of ["product", "none", undefined])
      expect(told({ ...spread, startWith: { value: 1, unit: "lb", of } })).toEqual([]);
    expect(told({ ...spread, startWith: { value: 101, unit: "lb" } })).toEqual([
      "range startWith: 100 lb or less, what the tank or hopper holds",
    ]);
    expect(told({ ...spread, spreader: { hopper: { value: 1e-9, unit: "lb" } } })[0]).toMatch(
      /^range spreader\.hopper: .*enough for the route in 10000 fills$/,
    );
  });

  test("a route that is sprayed, one by one", () => {
    const machine = (more: object) => told({ ...spray, sprayer: { ...spray.sprayer, ...more } });
    expect(told(spray)).toEqual([]);
    expect(told({ ...spray, sprayer: undefined })).toEqual([
      "missing sprayer: a sprayer, because a mix is sprayed",
    ]);
    expect(told({ ...spray, mix: [] })).toEqual(["missing mix: at least one product"]);
    expect(told({ ...spray, mix: [{ product: "wetter" }] })).toEqual([
      "missing mix[0].rate: a rate of product",
    ]);
    expect(told({ ...spray, products: 5, mix: [{}] })).toEqual([
      "type products: a list with at least one product",
      "missing mix[0].product: the id of a product of this job",
    ]);
    expect(machine({ loadSplit: "even" })).toEqual([
      "conflict sprayer.loadSplit: no loadSplit: each fill is a full tank, or what the rest of the route takes",
    ]);
    expect(machine({ tank: 5 })).toEqual([
      'type sprayer.tank: a volume with its unit, such as { "value": 5, "unit": "..." }',
    ]);
    expect(told({ ...spray, startWith: { value: 1, unit: "gal", of: "product" } })).toEqual([
      "substance/mismatch startWith.of: spray",
    ]);
    expect(told({ ...spray, startWith: 5 })).toEqual(["type startWith: an amount"]);
    expect(told({ ...spray, startWith: { value: -1, unit: "gal" } })).toEqual([
      "range startWith: zero or more",
    ]);
    // 12 gal are what the route takes: with them in the tank nothing is mixed.
    expect(told({ ...spray, startWith: { value: 12, unit: "gal" } })).toEqual([
      "range startWith: less than 12 gal, what the whole route takes: otherwise nothing is mixed; routeLoads says what is left",
    ]);
    expect(told({ ...spray, startWith: { value: 11.9, unit: "gal" } })).toEqual([]);
    expect(machine({ tank: { value: 1e-9, unit: "gal" } })[0]).toMatch(/^range sprayer\.tank: /);
  });

  test("an order instead of the route, and options that are none", () => {
    const { order } = tryRouteOrder(spread);
    expect(told(JSON.parse(JSON.stringify(order)))).toEqual([
      'type type: "route-job": the route that the order was made from, not the order',
    ]);
    const options = (call: (options: never) => unknown, given: object) =>
      problemsOf(() => call(given as never)).map(
        ({ code, path, expected }) => `${code} ${path}: ${expected}`,
      );
    for (const write of [routeSheet, routeText, routeHtml]) {
      const call = (given: never) => write(spread as never, given);
      expect(options(call, { copy: "barn" })).toEqual(['type options.copy: one of "shed", "office"']);
      expect(options(call, { units: "SI" })).toEqual([
        'type options.units: one of "US customary", "metric", "both"',
      ]);
      expect(options(call, { unit: "SI" })[0]).toMatch(/^type options\.unit: one of the fields copy, units/);
    }
    expect(options((given) => routeText(spread as never, given), { width: 59 })).toEqual([
      "range options.width: 60 or more",
    ]);
    expect(options((given) => routeText(spread as never, given), { width: 401 })).toEqual([
      "range options.width: 400 or less",
    ]);
  });
});
