import { describe, expect, test } from "vitest";
import {
  ledger,
  ledgerTotals,
  ledgerWith,
  missingForRecord,
  usRestrictedUseRecord,
} from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { type Job, visitEntries, workOrder } from "../../../src/plan/index.js";
import { quantityFrom } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const feet = (value: number) => ({ value, unit: "ft" });
const job: Job = {
  type: "job",
  version: 1,
  title: "May visit",
  date: "2026-05-04",
  applicator: { name: "crew one", certificate: "3B-17" },
  site: {
    name: "Park",
    parts: [
      { name: "north pitch", shape: "rectangle", length: feet(330), width: feet(180) },
      { name: "bowling green", shape: "square", side: feet(120) },
    ],
  },
  products: [
    {
      id: "feed-a",
      form: "dry",
      analysis: "24-0-11",
      slowNitrogen: { value: 12, unit: "% w/w", of: "N:slow/product" },
    },
    { id: "fungicide", form: "dry", formulation: { code: "WG", scheme: "international" }, lot: "L7" },
    { id: "wetter", form: "liquid", formulation: "surfactant" },
    { id: "regulator", form: "liquid", formulation: "EC", registrationNumber: "000-1" },
  ],
  treatments: [
    {
      id: "feed",
      method: "spread",
      product: "feed-a",
      target: { value: 0.9, unit: "lb/1000 ft2", of: "N" },
      parts: ["north pitch"],
    },
    {
      id: "spray",
      method: "spray",
      mix: [
        { product: "fungicide", rate: { value: 1.5, unit: "lb/acre", of: "product" } },
        { product: "wetter", rate: { value: 0.25, unit: "% v/v", of: "product/spray" } },
        {
          product: "regulator",
          rate: { value: 2, unit: "pt", of: "product", per: { value: 100, unit: "gal" } },
        },
      ],
      parts: ["bowling green"],
    },
  ],
  sprayer: {
    tank: { value: 20, unit: "gal" },
    applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    residualVolume: { value: 2, unit: "gal" },
  },
};

describe("the entries of a visit", () => {
  const entries = visitEntries(job);
  const of = (id: string) => entries.find((entry) => entry.product === id);

  test("are one for each product of each treatment, under an id of their own", () => {
    expect(entries.map(({ id }) => id)).toEqual([
      "2026-05-04 feed feed-a",
      "2026-05-04 spray fungicide",
      "2026-05-04 spray wetter",
      "2026-05-04 spray regulator",
    ]);
  });

  test("state what goes down, by hand", () => {
    // 59,400 ft2 x 3.75 lb/1000 ft2
    expect(of("feed-a")?.amount).toEqual({ value: 222.75, unit: "lb", of: "product" });
    // 14,400 ft2: 14.4 gal of spray go down; the 2 gal that stay in the tank are no part of it
    expect(of("wetter")?.carrierVolume).toEqual({ value: 14.4, unit: "gal", of: "spray" });
    const amount = (id: string, unit: string) => {
      const { value, unit: written } = of(id)?.amount ?? {};
      return quantityFrom({ value, unit: written }).in(unit as "lb");
    };
    expect(amount("fungicide", "oz")).toBeCloseTo((1.5 * 16 * 14_400) / 43_560, 9);
    expect(amount("wetter", "gal")).toBeCloseTo(0.036, 12);
    expect(amount("regulator", "pt")).toBeCloseTo(0.288, 12);
    expect(workOrder(job).sprays[0]?.volume.in("gal")).toBeGreaterThan(14.4);
  });

  test("say what the label and the job say, and who, where and how", () => {
    expect(of("feed-a")).toMatchObject({
      date: "2026-05-04",
      parts: ["north pitch"],
      area: { value: 59_400, unit: "ft2" },
      form: "dry",
      treatment: "feed",
      method: "spread",
      site: "Park",
      applicator: "crew one",
      certificate: "3B-17",
    });
    expect(of("feed-a")?.carrierVolume).toBeUndefined();
    expect([of("fungicide")?.lot, of("regulator")?.registrationNumber]).toEqual(["L7", "000-1"]);
  });

  test("go into the ledger, count there, and are refused there a second time", () => {
    const book = ledger(entries);
    const year = { ledger: book, from: "2026-01-01", to: "2026-12-31" } as const;
    const { supplies } = ledgerTotals({ ...year, part: "north pitch" });
    expect(supplies.N?.in("lb/1000 ft2")).toBeCloseTo(0.9, 12);
    expect(supplies["N:slow"]?.in("lb/1000 ft2")).toBeCloseTo(0.45, 12);
    const check = checkLimits({
      ledger: book,
      proposal: {
        date: "2026-09-10",
        parts: ["north pitch"],
        supplies: [{ value: 2.5, unit: "lb/1000 ft2", of: "N" }],
      },
      limits: [
        { amount: { value: 3, unit: "lb/1000 ft2", of: "N" }, per: "calendar year", source: "invented" },
      ],
    });
    expect(check.uses[0]?.remainingUnderStatedLimits.value).toBeCloseTo(-0.4, 12);
    const [first] = entries;
    if (first === undefined) throw new Error("no entry");
    expect(problemsOf(() => ledgerWith(book, first)).map(({ code }) => code)).toEqual(["duplicate"]);
    expect(missingForRecord(first, usRestrictedUseRecord).gaps.length).toBeGreaterThan(0);
  });

  test("are plain data, of their own at each call, and leave the job as it was", () => {
    expect(JSON.parse(JSON.stringify(entries))).toEqual(entries);
    expect(visitEntries(JSON.parse(JSON.stringify(job)) as Job)).toEqual(entries);
    expect(visitEntries(job)[0]).not.toBe(entries[0]);
  });

  test("of a job that is wrong are not there: what is wrong is told", () => {
    const wrong = { ...job, date: "2026-13-04" } as unknown as Job;
    expect(problemsOf(() => visitEntries(wrong)).map(({ path }) => path)).toEqual(["date"]);
  });
});
