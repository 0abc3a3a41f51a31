import { describe, expect, test } from "vitest";
import { type Job, tryWorkOrder, workOrder } from "../../../src/plan/index.js";
import { RatewrightError } from "../../../src/quantity/index.js";
import { parkJob, problemsOf, smallJob } from "../helpers.js";

/** A job with a fault in every part of it. */
const faultyJob = (): Record<string, unknown> => {
  const job = parkJob() as unknown as Record<string, unknown> & {
    products: Record<string, unknown>[];
    treatments: Record<string, unknown>[];
    log: Record<string, unknown>[];
  };
  const [feed = {}, regulator = {}, urea = {}, wetter = {}] = job.products;
  const [spread = {}, spray = {}] = job.treatments;
  const [logged = {}, stated = {}] = job.log;
  return {
    ...job,
    date: "2015-06-31",
    titel: "x",
    products: [
      { ...feed, analysis: "24-0", package: { value: 50, unit: "gal" } },
      { ...regulator, form: "gas" },
      { ...urea, id: "wetter" },
      { ...wetter, labelRate: { min: { value: 1, unit: "lb", of: "product" } } },
    ],
    treatments: [
      { ...spread, target: { value: 0.8, unit: "lb", of: "N" }, passes: 1.5, parts: ["east pitch"] },
      {
        ...spray,
        mix: [
          { product: "regulator-a", rate: { value: 0.125, unit: "fl oz/1000 ft2", of: "N" } },
          { product: "nobody", rate: { value: 1, unit: "lb/acre", of: "product" } },
        ],
        interval: { minimumDays: 30, maximumDays: 7 },
        degreeDays: {
          method: "guess",
          base: { value: 0, unit: "°C" },
          interval: { value: 200, unit: "°C d" },
          source: "x",
        },
      },
    ],
    sprayer: { tank: { value: -1, unit: "gal" }, applicationVolume: { value: 1, unit: "gal/acre" } },
    log: [
      { ...logged, date: "2016-01-01" },
      { ...stated, nutrients: [{ value: 1, unit: "lb/1000 ft2", of: "nitrogen" }] },
    ],
    limits: [{ amount: { value: 1, unit: "lb", of: "N" }, per: "month", source: "x" }],
  };
};

describe("a job with many faults", () => {
  test.each([
    "type titel",
    "date date",
    "text products[0].analysis",
    "type products[1].form",
    "missing treatments[0].parts[0]",
    "missing treatments[1].mix[1].product",
    "conflict treatments[1].interval.minimumDays",
    "missing treatments[1].interval.source",
    "type treatments[1].degreeDays.method",
    "range sprayer.tank",
    "type limits[0].per",
    "unit/mismatch limits[0].amount",
  ])("tells %s", (problem) => {
    expect(problemsOf(faultyJob())).toContain(problem);
  });

  test.each(["missing treatments[0].product", "missing treatments[1].mix[0].product"])(
    "a product that is itself at fault is not missing where it is used: no %s",
    (problem) => {
      expect(problemsOf(faultyJob())).not.toContain(problem);
    },
  );

  test("gives no order, and says of every problem what it got and what it expected", () => {
    const { order, problems } = tryWorkOrder(faultyJob());
    expect(order).toBeNull();
    for (const { got, expected } of problems) expect(got.length * expected.length).toBeGreaterThan(0);
  });
});

describe("the problems of a job", () => {
  test.each<[string, Partial<Record<keyof Job, unknown>>, string]>([
    [
      "a rate of nitrogen where one of product is wanted",
      {
        treatments: [
          { id: "f", method: "spread", product: "feed-a", rate: { value: 1, unit: "lb/acre", of: "N" } },
        ],
      },
      "substance/mismatch treatments[0].rate.of",
    ],
    [
      "a target of product",
      {
        treatments: [
          {
            id: "f",
            method: "spread",
            product: "feed-a",
            target: { value: 1, unit: "lb/acre", of: "product" },
          },
        ],
      },
      "substance/mismatch treatments[0].target.of",
    ],
    [
      "a target without its nutrient",
      {
        treatments: [{ id: "f", method: "spread", product: "feed-a", target: { value: 1, unit: "lb/acre" } }],
      },
      "missing treatments[0].target.of",
    ],
    [
      "target and rate",
      {
        treatments: [
          {
            id: "f",
            method: "spread",
            product: "feed-a",
            target: { value: 1, unit: "lb/acre", of: "N" },
            rate: { value: 1, unit: "lb/acre", of: "product" },
          },
        ],
      },
      "conflict treatments[0]",
    ],
    [
      "neither target nor rate",
      { treatments: [{ id: "f", method: "spread", product: "feed-a" }] },
      "missing treatments[0]",
    ],
    [
      "a nutrient that the product has none of",
      {
        treatments: [
          { id: "f", method: "spread", product: "feed-a", target: { value: 1, unit: "lb/acre", of: "P2O5" } },
        ],
      },
      "infeasible products[0].analysis",
    ],
    [
      "more area than there is",
      {
        treatments: [
          {
            id: "f",
            method: "spread",
            product: "feed-a",
            area: { value: 1, unit: "acre" },
            target: { value: 1, unit: "lb/acre", of: "N" },
          },
        ],
      },
      "range treatments[0].area",
    ],
    [
      "a spray without a sprayer",
      {
        treatments: [
          {
            id: "f",
            method: "spray",
            mix: [{ product: "feed-a", rate: { value: 1, unit: "lb/acre", of: "product" } }],
          },
        ],
      },
      "missing sprayer",
    ],
    [
      "slow nitrogen above the total",
      {
        products: [
          {
            id: "feed-a",
            form: "dry",
            analysis: "24-0-11",
            slowNitrogen: { value: 25, unit: "% w/w", of: "N:slow/product" },
          },
        ],
      },
      "conflict products[0].slowNitrogen",
    ],
    [
      "slow nitrogen as a share of nitrogen",
      {
        products: [
          {
            id: "feed-a",
            form: "dry",
            analysis: "24-0-11",
            slowNitrogen: { value: 50, unit: "% w/w", of: "N:slow/N" },
          },
        ],
      },
      "substance/mismatch products[0].slowNitrogen",
    ],
    ["the wrong version", { version: 2 }, "type version"],
    ["an empty list of treatments", { treatments: [] }, "missing treatments"],
    [
      "a log entry in the future",
      {
        log: [
          { date: "2026-05-05", product: "feed-a", rate: { value: 3, unit: "lb/1000 ft2", of: "product" } },
        ],
      },
      "date log[0].date",
    ],
    [
      "a log entry that counts twice",
      {
        log: [
          {
            date: "2026-05-01",
            product: "feed-a",
            rate: { value: 3, unit: "lb/1000 ft2", of: "product" },
            nutrients: [{ value: 1, unit: "lb/acre", of: "N" }],
          },
        ],
      },
      "conflict log[0]",
    ],
    [
      "phosphorus in two forms that differ",
      {
        log: [
          {
            date: "2026-05-01",
            nutrients: [
              { value: 1, unit: "lb/acre", of: "P" },
              { value: 1, unit: "lb/acre", of: "P2O5" },
            ],
          },
        ],
      },
      "conflict log[0].nutrients",
    ],
    [
      "a null where a record belongs",
      { products: [{ id: "feed-a", form: "dry", analysis: "24-0-11", slowNitrogen: null }] },
      "type products[0].slowNitrogen",
    ],
    [
      "a step of the scale in the wrong unit",
      {
        sprayer: {
          tank: { value: 10, unit: "gal" },
          applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
          increments: { dry: { unit: "mL", step: 1 } },
        },
      },
      "unit/mismatch sprayer.increments.dry.unit",
    ],
    [
      "temperatures out of order",
      {
        temperatures: {
          type: "daily-temperatures",
          version: 1,
          start: "2026-05-01",
          unit: "°C",
          sensor: "air",
          min: [20],
          max: [10],
          source: "x",
        },
      },
      "temperatures",
    ],
  ])("%s", (_name, change, expected) => {
    const found = problemsOf({ ...smallJob(), ...change });
    expect(found.some((one) => one === expected || one.includes(expected))).toBe(true);
  });

  test("workOrder throws the same problems", () => {
    expect(() => workOrder(smallJob({ date: "2026-02-30" }))).toThrow(RatewrightError);
    expect(problemsOf(smallJob())).toEqual([]);
  });
});
