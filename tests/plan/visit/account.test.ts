// The account of a visit: several treatments as one application, and what is known of them together. Worked by hand.
import { describe, expect, test } from "vitest";
import type { Job } from "../../../src/plan/index.js";
import { smallJob, soundOrder } from "../helpers.js";

const source = "plan of the park (invented)";
const square = (name: string) => ({ name, shape: "square", side: { value: 100, unit: "ft" } }) as const;
const site = { name: "Park", parts: [square("lawn"), square("pitch")] };
const feed = (id: string, value: number, more: object = {}) => ({
  id,
  method: "spread" as const,
  product: "feed-a",
  rate: { value, unit: "lb/1000 ft2", of: "product" },
  ...more,
});
const accounts = (
  treatments: readonly object[],
  limits: NonNullable<Job["limits"]>,
  more: Partial<Job> = {},
) => soundOrder(smallJob({ site, limits, treatments: treatments as never, ...more })).nutrients;
const product = (value: number) =>
  ({ amount: { value, unit: "lb/1000 ft2", of: "product:feed-a" }, per: "application", source }) as never;

describe("two treatments with one product", () => {
  test("are one application of 3 and 2 lb: 5 lb are within 5, and over 4.9", () => {
    const use = (value: number) => accounts([feed("a", 3), feed("b", 2)], [product(value)])[0]?.limits[0];
    expect(use(5)).toMatchObject({ after: { value: 5 }, violated: false });
    expect(use(4.9)).toMatchObject({ after: { value: 5 }, violated: true });
  });

  test("on two parts are one on each", () => {
    const found = accounts(
      [feed("a", 3, { parts: ["lawn"] }), feed("b", 2, { parts: ["pitch"] })],
      [product(5)],
    );
    expect(found.map(({ part, limits }) => [part, limits[0]?.after.value])).toEqual([
      ["lawn", 3],
      ["pitch", 2],
    ]);
  });
});

describe("what is known of several treatments", () => {
  const limit = (applicator: string) =>
    ({
      amount: { value: 3, unit: "lb/1000 ft2", of: "N" },
      per: "calendar year",
      scope: { applicator: [applicator] },
      source,
    }) as never;
  const whose = (...said: readonly (string | undefined)[]) => {
    const treatments = said.map((applicator, i) =>
      feed(`t${i}`, 1, applicator === undefined ? {} : { facts: { applicator } }),
    );
    return accounts(treatments, [limit("professional")])[0]?.limits.map(({ appliesIf }) => appliesIf.length);
  };

  test("a fact on which they agree is known: the limit is meant, or it is not", () => {
    expect(whose("professional", "professional")).toEqual([0]);
    expect(whose("homeowner", "homeowner")).toEqual([]);
  });

  test("a fact on which they differ, or that one does not state, is not: the limit says where it is meant", () => {
    expect(whose("professional", "homeowner")).toEqual([1]);
    expect(whose("professional", undefined)).toEqual([1]);
    expect(whose(undefined, "professional")).toEqual([1]);
    expect(whose("homeowner", "homeowner", "professional")).toEqual([1]);
  });

  test("each part has the facts of its own treatment", () => {
    const found = accounts(
      [
        feed("a", 1, { parts: ["lawn"], facts: { applicator: "homeowner" } }),
        feed("b", 1, { parts: ["pitch"], facts: { applicator: "professional" } }),
      ],
      [limit("professional")],
    );
    expect(found.map(({ part, limits }) => [part, limits.length])).toEqual([
      ["lawn", 0],
      ["pitch", 1],
    ]);
  });
});

describe("a part that the visit leaves out", () => {
  const count = { kind: "count", of: "N", atMost: 4, per: "calendar year", source } as never;
  const amount = {
    amount: { value: 3, unit: "lb/1000 ft2", of: "N" },
    per: "calendar year",
    source,
  } as never;
  const slow = { kind: "slow share", atLeastPercentOfN: 20, source } as never;

  test("has its amounts and numbers so far, and no test of the visit", () => {
    const log = [
      { date: "2026-01-01", nutrients: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }] },
      { date: "2025-12-31", nutrients: [{ value: 0.7, unit: "lb/1000 ft2", of: "N" }] },
    ] as never;
    const [lawn, pitch] = accounts([feed("a", 2.5, { parts: ["lawn"] })], [count, amount, slow], { log });
    // 2.5 lb of 24 % are 0.6 lb of N, beside the half pound of this year.
    expect(lawn?.limits.map(({ after }) => Number(after.value.toFixed(9)))).toEqual([2, 1.1]);
    expect(lawn?.tests).toHaveLength(1);
    expect(pitch?.limits.map(({ limit, after }) => [limit.kind, after.value])).toEqual([
      ["count", 1],
      ["amount", 0.5],
    ]);
    expect([pitch?.tests, pitch?.visit]).toEqual([[], []]);
    expect([lawn?.yearSoFar.N?.value, pitch?.yearAfter.N?.value]).toEqual([0.5, 0.5]);
  });
});

describe("which parts are covered whole", () => {
  const covered = (more: object, treatment: object = {}) =>
    soundOrder(
      smallJob({ site: { ...site, ...more } as never, treatments: [feed("a", 3, treatment)] as never }),
    ).spreads[0]?.byPart.map(({ part }) => part);
  const hole = { shape: "square", side: { value: 10, unit: "ft" } };

  test("all of a site without cut-outs, those that are named, and none where an area is stated or cut out", () => {
    expect(covered({})).toEqual(["lawn", "pitch"]);
    expect(covered({}, { parts: ["pitch"] })).toEqual(["pitch"]);
    expect(covered({ cutOuts: [hole] })).toEqual([]);
    expect(covered({ cutOuts: [hole] }, { parts: ["pitch"] })).toEqual(["pitch"]);
    expect(covered({}, { area: { value: 5000, unit: "ft2" } })).toEqual([]);
    const { name: _, ...nameless } = square("nobody");
    expect(covered({ parts: [square("lawn"), nameless] })).toEqual([]);
  });
});

describe("what the tank must hold", () => {
  const gal = (value: number) => ({ value, unit: "gal" });
  const told = (more: object): readonly string[] => {
    try {
      soundOrder({
        ...smallJob({
          products: [{ id: "wetter", form: "liquid", formulation: "surfactant" }],
          sprayer: {
            tank: gal(50),
            applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
            ...more,
          } as never,
        }),
        treatments: [
          {
            id: "s",
            method: "spray",
            mix: [{ product: "wetter", rate: { value: 3, unit: "fl oz/1000 ft2", of: "product" } }],
          },
        ],
      });
      return [];
    } catch (error) {
      return (error as Error).message.split("\n");
    }
  };

  test("residual and plumbing that fill it exactly leave nothing to spray", () => {
    expect(told({ residualVolume: gal(20), plumbingVolume: gal(30) })).toEqual([
      expect.stringMatching(/^sprayer\.plumbingVolume: .*less than the tank holds/),
    ]);
    expect(told({ residualVolume: gal(50) })).toEqual([
      expect.stringMatching(/^sprayer\.residualVolume: .*less than the tank holds/),
    ]);
    expect(told({ plumbingVolume: gal(50) })).toEqual([
      expect.stringMatching(/^sprayer\.plumbingVolume: .*less than the tank holds/),
    ]);
    expect(told({ residualVolume: gal(20), plumbingVolume: gal(29) })).toEqual([]);
  });

  test("the least load is at most the tank", () => {
    expect(told({ minimumLoad: gal(10) })).toEqual([]);
    expect(told({ minimumLoad: gal(50.1) })).toEqual([
      expect.stringMatching(/^sprayer\.minimumLoad: .*no more than the tank holds/),
    ]);
  });
});

describe("nitrogen", () => {
  const told = (analysis: string, pounds: number) =>
    soundOrder(
      smallJob({
        products: [{ id: "feed-a", form: "dry", analysis }],
        treatments: [feed("a", pounds)] as never,
      }),
    ).findings.flatMap(({ code }) => (code.startsWith("nitrogen/") ? [code] : []));
  test("is told of where there is some: above 1 lb, and where no slow is stated", () => {
    expect(told("0-0-50", 20)).toEqual([]);
    expect(told("24-0-11", 3)).toEqual(["nitrogen/no-slow-stated"]);
    // 20 % of 5 lb is 1 lb; of 5.1 lb it is more.
    expect(told("20-0-0", 5)).toEqual(["nitrogen/no-slow-stated"]);
    expect(told("20-0-0", 5.1)).toEqual(["nitrogen/no-slow-stated", "nitrogen/above-common-advice"]);
  });
});
