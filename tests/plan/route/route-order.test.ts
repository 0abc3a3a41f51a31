import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  checkLimits,
  ledger,
  ledgerWith,
  type RouteJob,
  routeHtml,
  routeOrder,
  routeText,
  tryRouteOrder,
} from "../../../src/index.js";

const route = (more: Partial<RouteJob> = {}): RouteJob => ({
  type: "route-job",
  version: 1,
  title: "Tuesday round",
  date: "2026-06-09",
  products: [
    {
      id: "iron",
      name: "chelated iron",
      form: "liquid",
      formulation: { code: "SL", scheme: "international" },
      analysis: "6-0-0",
      density: { value: 10, unit: "lb/gal" },
    },
    { id: "wetter", name: "wetting agent", form: "liquid", formulation: "surfactant" },
  ],
  mix: [
    { product: "iron", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } },
    { product: "wetter", rate: { value: 1, unit: "pt", of: "product", per: { value: 100, unit: "gal" } } },
  ],
  sprayer: {
    tank: { value: 50, unit: "gal" },
    applicationVolume: { value: 1.5, unit: "gal/1000 ft2", of: "spray" },
    residualVolume: { value: 2, unit: "gal" },
    plumbingVolume: { value: 1, unit: "gal" },
  },
  stops: [
    { id: "hall", name: "Town hall", address: "1 Main Street", area: { value: 12_000, unit: "ft2" } },
    { id: "library", area: { value: 20_000, unit: "ft2" } },
    {
      id: "school",
      site: {
        parts: [
          { shape: "rectangle", length: { value: 200, unit: "ft" }, width: { value: 100, unit: "ft" } },
        ],
        cutOuts: [{ shape: "measured", area: { value: 2000, unit: "ft2" } }],
      },
    },
  ],
  ...more,
});

const problems = (job: unknown): readonly string[] =>
  tryRouteOrder(job).problems.map(({ code, path }) => `${code} ${path}`);

describe("the order of a route", () => {
  test("product over all stops is what was loaded less what is left", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 500, max: 60_000 }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 12, max: 300 }),
        fc.constantFrom("before a stop" as const, "when empty" as const),
        (areas, tank, refill) => {
          const stops = areas.map((area, i) => ({ id: `${i}`, area: { value: area, unit: "ft2" } }));
          const job = route({ stops, refill });
          const order = routeOrder({
            ...job,
            sprayer: { ...job.sprayer, tank: { value: tank, unit: "gal" } } as never,
          });
          order.spray?.products.forEach(({ loads, amount }, p) => {
            const loaded = loads.reduce((sum, { exact }) => sum + exact.value, 0);
            expect(loaded).toBeCloseTo(amount.value, 6);
            const gone = order.stops.reduce((sum, { products }) => sum + (products[p]?.amount.value ?? 0), 0);
            expect(gone + (order.leftOver[p]?.amount.value ?? 0)).toBeCloseTo(loaded, 6);
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  test("by hand: 36 fl oz on 12,000 ft2, 75 gal + 3 gal kept, a pint of wetter in 100 gal", () => {
    const { stops, loads, leftOver, spray } = routeOrder(route());
    expect(stops.map(({ products }) => products[0]?.amount.value)).toEqual([36, 60, 54]);
    expect(loads.loaded.value).toBeCloseTo(78, 9);
    expect(leftOver.map(({ amount }) => Number(amount.value.toFixed(6)))).toEqual([6, 0.03]);
    expect(spray?.products[1]?.amount.value).toBeCloseTo(0.78, 9);
    expect(spray?.products[0]?.loads.map(({ amount }) => Number(amount.value.toFixed(6)))).toEqual([
      100, 38, 18,
    ]);
  });

  test("the ledger takes the entries as they are, and a route that is written in it is refused", () => {
    const order = routeOrder(route());
    for (const { entries } of order.stops) {
      const book = entries.reduce(ledgerWith, ledger());
      expect(ledger(JSON.parse(JSON.stringify(book.entries))).entries).toHaveLength(2);
    }
    const { entries = [] } = order.stops[0] ?? {};
    expect(entries[0]).toMatchObject({
      location: "1 Main Street",
      carrierVolume: { value: 18, unit: "gal" },
    });
    const [hall, ...rest] = route().stops;
    const again = route({
      stops: [{ ...(hall as RouteJob["stops"][number]), ledger: ledger(entries) }, ...rest],
    });
    expect(problems(again)).toEqual(["duplicate stops[0].ledger"]);
  });

  test("one mix under the limits of every stop: as checkLimits says of the same entry", () => {
    const before = ledger([
      { id: "may", date: "2026-05-01", supplies: [{ value: 0.9, unit: "lb/1000 ft2", of: "N" }] },
    ]);
    const limits = [
      {
        amount: { value: 0.91, unit: "lb/1000 ft2", of: "N" },
        per: "calendar year",
        source: "plan",
      } as const,
    ];
    const job = route({ limits, mix: (route().mix ?? []).slice(0, 1) });
    const stops = job.stops.map((stop, i) => (i === 1 ? { ...stop, ledger: before } : stop));
    const order = routeOrder({ ...job, stops });
    expect(order.stops.map(({ limits: told }) => told.uses[0]?.violated)).toEqual([false, true, false]);
    expect(order.findings.filter(({ code }) => code === "limit/exceeded").map(({ path }) => path)).toEqual([
      "stops[1]",
    ]);
    const { id: _, ...proposal } = order.stops[1]?.entries[0] ?? { id: "" };
    const check = checkLimits({ ledger: before, proposal: proposal as never, limits });
    expect(order.stops[1]?.limits.uses[0]?.after.value).toBe(check.uses[0]?.after.value);
    expect(order.stops[1]?.limits.earliestByStatedRules).toBe(check.earliestByStatedRules);
    // 3 fl oz of 10 lb/gal with 6 % N.
    expect(order.stops[0]?.limits.uses[0]?.adds.value).toBeCloseTo((3 / 128) * 10 * 0.06, 12);
  });

  test("a spreader: two passes and a hopper", () => {
    const fed: RouteJob = {
      type: "route-job",
      version: 1,
      title: "Feed",
      date: "2026-05-05",
      products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", package: { value: 50, unit: "lb" } }],
      spread: { product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" }, passes: 2 },
      spreader: { hopper: { value: 100, unit: "lb" }, swath: { value: 6, unit: "ft" } },
      startWith: { value: 10, unit: "lb" },
      stops: [
        { id: "a", area: { value: 12_000, unit: "ft2" } },
        { id: "b", area: { value: 40_000, unit: "ft2" } },
      ],
    };
    const order = routeOrder(fed);
    // 45 lb and 150 lb at 3.75: 10 are there, 90 go in; 55 are left, 45 more, then 50 for the rest.
    expect(order.loads.fills.map(({ stop, added }) => [stop, added.value])).toEqual([
      ["a", 90],
      ["b", 45],
      ["b", 50],
    ]);
    expect(order.leftOver[0]?.amount.value).toBe(0);
    expect(order.spread?.packages?.count).toBe(4);
    // 185 lb leave the store: 10 lb are in the hopper.
    const store = routeText(fed).split("STORE")[1];
    expect(store).toMatch(/185(\.0)? lb/);
    expect(store).not.toMatch(/195(\.0)? lb/);
  });

  test("a blank behind the name of a stop is refused: it would read as the stop beside it", () => {
    const area = { value: 5000, unit: "ft2" };
    const stops = [
      { id: "hall", area },
      { id: "hall ", area },
    ];
    expect(problems(route({ stops }))).toEqual(["type stops[1].id"]);
  });

  test("an order in place of the route: the message says what goes in", () => {
    const order = routeOrder(route());
    expect(() => routeText(order as never)).toThrow(/the route that the order was made from/);
  });

  test("problems by path, all at once, with the next step", () => {
    expect(problems({ ...route(), stops: [{ id: "a" }, { id: "a", aera: 3 }], mixx: [] })).toEqual([
      "type mixx",
      "missing stops[0].area",
      "type stops[1].aera",
      "duplicate stops[1].id",
    ]);
    const job = route();
    expect(problems({ ...job, spread: { product: "iron" } })).toEqual(["conflict spread"]);
    expect(problems({ ...job, sprayer: { ...job.sprayer, loadSplit: "even" } })).toEqual([
      "conflict sprayer.loadSplit",
    ]);
    expect(
      problems({ ...job, mix: [{ product: "nobody", rate: { value: 1, unit: "pt", of: "product" } }] }),
    ).toEqual(["missing mix[0].product"]);
    expect(problems({ ...job, startWith: { value: 1, unit: "lb" } })).toEqual(["unit/mismatch startWith"]);
    expect(problems({ ...job, startWith: { value: 49, unit: "gal" }, stops: job.stops.slice(0, 1) })).toEqual(
      ["range startWith"],
    );
    const [iron, wetter] = job.products as [object, object];
    expect(
      problems({
        ...job,
        products: [{ ...iron, density: undefined }, wetter],
        mix: [{ product: "iron", rate: { value: 3, unit: "lb/acre", of: "product" } }],
      }),
    ).toEqual(["missing products[0].density"]);
  });

  test("the sheet has each stop once, each filling with its mark, and adds up in its units", () => {
    const text = routeText(route(), { width: 90 });
    expect(text).toContain("FILL 1");
    expect(text).toMatch(/1 {2}Town hall, 1 Main Street .*12,000 sq ft .*18 gal .*50 gal .*31 gal/);
    expect(text).toContain("Whole route: 75 gal. 3 fills: 78 gal; 3 gal left in tank and hoses at the end");
    expect(text.replace(/\s+/g, " ")).toContain(
      "left in tank and hoses at the end: ____ (labeled site, at or below the label rate).",
    );
    expect(text).toMatch(/FILL 2 +19 gal/);
    expect(text.replace(/\s+/g, " ")).toContain("The hoses take 1 gal of the first fill.");
    const begun = routeText(route({ startWith: { value: 20, unit: "gal" } }), { width: 90 });
    // 20 in the tank and 1 in the hoses, and 57 filled in, less 75, leave 3.
    expect(begun.replace(/\s+/g, " ")).toMatch(
      /75 gal\. \d fills?: 57 gal, on top of 20 gal in the tank and 1 gal in the hoses at the start; 3 gal left/,
    );
    expect(begun).not.toContain("The hoses take");
    const metric = routeText(route(), { units: "metric", width: 90 });
    expect(metric).not.toMatch(/ gal|sq ft| lb /);
    const html = routeHtml(route({ title: "<b>round</b>" }));
    expect(html).toContain("&lt;b&gt;round&lt;/b&gt;");
    for (const line of routeText(route()).split("\n")) expect(line.length).toBeLessThanOrEqual(72);
  });
});
