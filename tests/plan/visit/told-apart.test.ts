// What a sentence of a visit says is so as it is printed: a figure that is over another reads as more than the other.
import { describe, expect, test } from "vitest";
import { type Job, type JobTreatment, workOrderText } from "../../../src/plan/index.js";
import { found, problemsOf, smallJob, soundOrder } from "../helpers.js";

const lb = "lb/1000 ft2";
const texts = (job: Job, prefix: string) => found(job, prefix).map(({ text }) => text);
const feed = (more: object): JobTreatment =>
  ({ id: "feed", method: "spread", product: "feed-a", ...more }) as JobTreatment;

describe("a hair over", () => {
  test("49 kg of N per hectare are 1.00362 lb per 1,000 sq ft; 48.8250 are 1.00004, which is not told as 1 over 1", () => {
    const job = (value: number) =>
      smallJob({
        treatments: [feed({ target: { value, unit: "kg/ha", of: "N" } })],
        limits: [{ amount: { value: 1, unit: lb, of: "N" }, per: "application", source: "x" }],
      });
    expect(texts(job(49), "limit/")).toEqual([
      "whole site: 1.004 lb/1000 ft2 of N in one application is over the stated limit of 1 (0 before, 1.004 now).",
    ]);
    // 1 lb/1000 ft2 is 0.45359237 / 0.0092903040 kg/ha, 48.8242764
    expect(texts(job(48.825), "limit/")).toEqual([
      "whole site: 1.00001 lb/1000 ft2 of N in one application is over the stated limit of 1 (0 before, 1.00001 now).",
    ]);
    expect(texts(job(48.825), "nitrogen/above")[0]).toContain(
      "48.83 kg/ha of N in one application is above the common advice of 48.82 kg/ha.",
    );
    expect(texts(job(48.824), "limit/")).toEqual([]);
  });

  test("a rate and its label", () => {
    const of = "product";
    const job = smallJob({
      products: [
        {
          id: "feed-a",
          form: "dry",
          analysis: "24-0-11",
          labelRate: { min: { value: 3, unit: lb, of }, max: { value: 4, unit: lb, of } },
        },
      ],
      treatments: [feed({ rate: { value: 4.0003, unit: lb, of } })],
    });
    expect(texts(job, "rate/")).toEqual([
      "feed-a: 4.0003 lb/1000 ft2 is above the label rate of 3 to 4 lb/1000 ft2.",
    ]);
  });
});

describe("one and many", () => {
  const interval = {
    maximumApplications: { count: 1, per: "calendar year" },
    minimumDays: 1,
    source: "label",
  } as const;
  const job = (more: Partial<Job> = {}) =>
    smallJob({
      treatments: [feed({ rate: { value: 1, unit: lb, of: "product" }, interval })],
      log: [{ date: "2026-04-01", product: "feed-a", rate: { value: 1, unit: lb, of: "product" } }],
      ...more,
    });

  test("one application that is one too many for the year, without a word on what nobody wanted", () => {
    expect(texts(job(), "interval/before-earliest")).toEqual([
      "feed: 2026-05-04 is before 2027-01-01, the earliest date by the stated rule. 1 day or more after the application of 2026-04-01. 1 application from 2026-01-01 to 2026-12-31; the rule states 1 at most.",
    ]);
  });

  test("a limit of none is passed by one application, one of one by two", () => {
    const limit = (atMost: number) =>
      ({ kind: "count", of: "N", atMost, per: { days: 1 }, source: "x" }) as const;
    const today = {
      date: "2026-05-04",
      product: "feed-a",
      rate: { value: 1, unit: lb, of: "product" },
    } as const;
    expect(texts(job({ limits: [limit(1)], log: [today] }), "limit/")[0]).toMatch(
      /^whole site: 2 applications of N in 1 day are over the stated limit of 1 \(1 before, 1 now\)\./,
    );
  });
});

describe("what no rule states", () => {
  test("a first day that nothing moved is the visit itself, and is not told as a rule", () => {
    const text = (interval: object) =>
      workOrderText(
        soundOrder(
          smallJob({
            treatments: [
              feed({ target: { value: 0.9, unit: lb, of: "N" }, interval: { ...interval, source: "label" } }),
            ],
          }),
        ),
        { copy: "office" },
      ).replace(/\n +/g, " ");
    expect(text({ maximumDays: 45 })).toContain("- feed: reapply by Thu Jun 18, 2026");
    expect(text({ minimumDays: 10 })).toContain("- feed: not before Thu May 14, 2026 by the stated rule");
    expect(text({ maximumApplications: { count: 3, per: "calendar year" } })).toContain(
      "- feed: the stated rule sets no date",
    );
  });
});

test("an area that is more than there is, in the unit in which it was given", () => {
  const job = smallJob({
    site: { name: "Pitch", parts: [{ shape: "measured", area: { value: 12.4, unit: "1000 ft2" } }] },
    treatments: [feed({ target: { value: 0.9, unit: lb, of: "N" }, area: { value: 12_401, unit: "ft2" } })],
  });
  expect(problemsOf(job)).toEqual(["range treatments[0].area"]);
  expect(() => soundOrder(job)).toThrow("12400 ft2 or less: the parts are no larger");
});

test("the mixing order of a metric sheet has liters: 12.4 gal are 46.9 L, half of it 23.5 L", () => {
  const job = smallJob({
    units: "metric",
    products: [{ id: "liq", form: "liquid", formulation: "EC" }],
    sprayer: {
      tank: { value: 50, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
    treatments: [
      {
        id: "s",
        method: "spray",
        mix: [{ product: "liq", rate: { value: 1, unit: "fl oz/1000 ft2", of: "product" } }],
      },
    ],
  });
  const office = workOrderText(soundOrder(job), { copy: "office" }).replace(/\n +/g, " ");
  expect(office).toContain("50 % of the load (23.5 L).");
  expect(office).toContain("to the volume of the load (46.9 L).");
  expect(office).not.toMatch(/\d gal\b/);
});

test("the account of a metric sheet is in g per m2, 0.9 lb per 1,000 sq ft is 4.394; a limit is told in the same, and as it is stated", () => {
  const job = smallJob({
    units: "metric",
    limits: [{ amount: { value: 3, unit: lb, of: "N" }, per: "calendar year", source: "plan" }],
  });
  const office = workOrderText(soundOrder(job), { copy: "office" }).replace(/ +/g, " ");
  expect(office).toContain(" g per m² so far visit after\n N 0 4.394 4.394\n");
  expect(office.replace(/\s+/g, " ")).toContain(
    "N in a calendar year: 4.394 of 14.647 g per m², 10.253 left. Stated in: plan, as 3 lb per 1,000 sq ft",
  );
});

test("what the scale cannot show of a product is told under its name", () => {
  const job = smallJob({
    products: [{ id: "wp", name: "iprodione 50 % WP", form: "dry", formulation: "WP" }],
    sprayer: {
      tank: { value: 50, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      increments: { dry: { unit: "oz", step: 1 } },
    },
    treatments: [
      {
        id: "s",
        method: "spray",
        mix: [{ product: "wp", rate: { value: 0.02, unit: "oz/1000 ft2", of: "product" } }],
      },
    ],
  });
  expect(texts(job, "load/step")).toEqual([
    "Load 1 gets no iprodione 50 % WP: a measuring increment of 1 oz by weight is too coarse for what it needs.",
  ]);
});

test("a caution too long for the shed is cut after its first full sentence, never to the name before the colon", () => {
  const name =
    "fertilizer of the groundskeepers' cooperative with a long name for the north and the south pitch";
  const of = "product";
  const job = smallJob({
    products: [
      {
        id: "feed-a",
        name,
        form: "dry",
        analysis: "24-0-11",
        labelRate: { min: { value: 3, unit: lb, of }, max: { value: 4, unit: lb, of } },
      },
    ],
    treatments: [feed({ rate: { value: 0.08, unit: lb, of } })],
  });
  const shed = workOrderText(soundOrder(job)).replace(/\n +/g, " ");
  expect(shed).toContain(
    `! ${name}: 0.08 lb/1000 ft2 is below the label rate of 3 to 4 lb/1000 ft2. More on the office copy.`,
  );
  expect(shed).not.toContain(`! ${name}. More`);
});
