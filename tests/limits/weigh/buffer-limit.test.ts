import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ApplicationFacts,
  checkLimits,
  type Limit,
  limit,
  runoffMenu,
  runoffPoints,
} from "../../../src/limits/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";

const source = "label (invented)";
const ft = (value: number) => ({ value, unit: "ft" });
const creek = {
  kind: "buffer",
  of: "any",
  from: "water",
  atLeast: ft(50),
  reductions: [
    { measure: "hooded sprayer", percent: 50 },
    { measure: "drift-reducing adjuvant", percent: 30 },
  ],
  together: "sum",
  source,
} as const;

const testOf = (rule: Limit, facts: ApplicationFacts, parts?: readonly string[]) => {
  const { tests, findings, notChecked } = checkLimits({
    proposal: {
      date: "2026-06-08",
      supplies: [{ value: 1, unit: "lb/acre", of: "ai:dithiopyr" }],
      facts,
      ...(parts && { parts }),
    },
    limits: [rule],
  });
  return { ...tests[0], codes: findings.map(({ code }) => code), notChecked };
};
const edge = (more: object = {}) => ({ from: "water", away: ft(0), ...more });

describe("a buffer", () => {
  test("two measures of 50 and 30 % leave 10 of 50 ft", () => {
    const measures = ["hooded sprayer", "Drift-reducing adjuvant"];
    expect(testOf(creek, { edges: [edge({ away: ft(10), measures })] }).violated).toBe(false);
    const short = testOf(creek, { edges: [edge({ away: ft(9.9), measures })] });
    expect(short.violated).toBe(true);
    expect(short.found).toBe("9.9 ft, of 10 ft after 80 % off 50 ft");
    expect(short.codes).toContain("limit/buffer");
  });

  test("the floor of the label holds it up", () => {
    const floored = { ...creek, floor: ft(15) };
    const measures = ["hooded sprayer", "drift-reducing adjuvant"];
    expect(testOf(floored, { edges: [edge({ away: ft(14), measures })] }).found).toBe(
      "14 ft, of 15 ft after 80 % off 50 ft, the floor",
    );
    expect(testOf(floored, { edges: [edge({ away: ft(15), measures })] }).violated).toBe(false);
  });

  test("in turn 50 and 30 % leave 17.5 ft", () => {
    const rule = { ...creek, together: "in turn" } as const;
    const measures = ["hooded sprayer", "drift-reducing adjuvant"];
    expect(testOf(rule, { edges: [edge({ away: ft(17.4), measures })] }).violated).toBe(true);
    expect(testOf(rule, { edges: [edge({ away: ft(17.5), measures })] }).violated).toBe(false);
  });

  test("a measure that the label does not list shortens nothing, and is named", () => {
    const told = testOf(creek, { edges: [edge({ away: ft(49), measures: ["windbreak"] })] });
    expect(told.violated).toBe(true);
    expect(told.found).toBe("49 ft; not listed, and no reduction: windbreak");
  });

  test("the untreated strip counts with what lies between", () => {
    expect(testOf(creek, { edges: [edge({ away: ft(20), untreated: ft(30) })] }).violated).toBe(false);
    expect(testOf(creek, { edges: [edge({ away: ft(20), untreated: ft(29) })] }).found).toBe(
      "20 ft away and a strip of 29 ft",
    );
  });

  test("units may differ: 50 ft are 15.24 m", () => {
    const metric = (value: number) => edge({ away: { value, unit: "m" } });
    expect(testOf(creek, { edges: [metric(15.24)] }).violated).toBe(false);
    expect(testOf(creek, { edges: [metric(15.23)] }).violated).toBe(true);
  });

  test("what is not stated is not known; an empty list says that there is none", () => {
    expect(testOf(creek, {}).violated).toBeNull();
    expect(testOf(creek, { edges: [{ from: "a well", away: ft(5) }] }).violated).toBeNull();
    expect(testOf(creek, { edges: [] }).violated).toBe(false);
    expect(testOf(creek, { toWater: ft(40) }).violated).toBe(true);
    expect(testOf({ ...creek, from: "a well" }, { toWater: ft(40) }).violated).toBeNull();
  });

  test("an edge of another part does not count, and says nothing of this one", () => {
    const facts = { edges: [edge({ part: "north pitch" })] };
    expect(testOf(creek, facts, ["north pitch"]).violated).toBe(true);
    expect(testOf(creek, facts, ["south pitch"]).violated).toBeNull();
  });

  test("another product is not meant", () => {
    expect(testOf({ ...creek, of: ["ai:prodiamine"] }, { edges: [edge()] }).violated).toBe(false);
  });

  test("refusals name every place", () => {
    expect(
      complaints(() =>
        limit({
          ...creek,
          from: "",
          reductions: [
            { measure: "hooded sprayer", percent: 150 },
            { measure: "a", percent: 1 },
            { measure: "A", percent: 1 },
          ],
          together: "product",
          floor: ft(60),
        } as never),
      ),
    ).toEqual(
      expect.arrayContaining([
        "missing limit.from",
        "range limit.reductions[0].percent",
        "duplicate limit.reductions[2].measure",
        expect.stringMatching(/limit\.together$/),
        "range limit.floor",
      ]),
    );
    const { together: _, ...loose } = creek;
    expect(complaints(() => limit(loose as never))).toEqual(["missing limit.together"]);
    expect(complaints(() => testOf(creek, { edges: [{ from: "water", at: 3 } as never] }))).toHaveLength(1);
    expect(
      complaints(() => testOf(creek, { edges: [edge({ edges: [0, 0], along: ft(3), untreated: ft(-1) })] })),
    ).toEqual(["range proposal.facts.edges[0].untreated", "duplicate proposal.facts.edges[0].edges[1]"]);
  });

  test("law: farther away is never worse, and more reductions never ask for more", () => {
    const share = fc.integer({ min: 0, max: 100 });
    const length = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(length, length, share, share, fc.boolean(), (distance, away, a, b, inTurn) => {
        const rule = {
          ...creek,
          atLeast: ft(distance),
          reductions: [
            { measure: "a", percent: a },
            { measure: "b", percent: b },
          ],
          together: inTurn ? "in turn" : "sum",
        } as const;
        const kept = (at: number, measures: readonly string[]) =>
          testOf(rule, { edges: [edge({ away: ft(at), measures })] }).violated === false;
        if (kept(away, [])) {
          expect(kept(away * 1.5, [])).toBe(true);
          expect(kept(away, ["a"])).toBe(true);
        }
        if (kept(away, ["a"])) expect(kept(away, ["a", "b"])).toBe(true);
        expect(kept(distance, [])).toBe(true);
      }),
      runs(50),
    );
  });
});

describe("points against runoff", () => {
  const points = { kind: "runoff points", of: "any", atLeastPoints: 6, source } as const;
  const own = [
    { measure: "filter strip", points: 3 },
    { measure: "records", points: 1 },
  ];

  test("the sum is put to what the label asks for; equal is within", () => {
    const rule = { ...points, menu: own };
    const facts = (more: readonly object[]) => ({
      runoff: [{ measure: "Filter strip" }, { measure: "records" }, ...more] as never,
    });
    expect(testOf(rule, facts([{ measure: "swale", points: 2 }])).violated).toBe(false);
    const short = testOf(rule, facts([{ measure: "swale", points: 1 }]));
    expect(short.violated).toBe(true);
    expect(short.found).toBe("5 points: Filter strip 3, records 1, swale 1");
    expect(short.codes).toContain("limit/runoff-points");
  });

  test("a measure without points may make up for what is short: not known", () => {
    expect(testOf({ ...points, menu: own }, { runoff: [{ measure: "swale" }] }).violated).toBeNull();
    expect(testOf({ ...points, atLeastPoints: 0 }, { runoff: [{ measure: "swale" }] }).violated).toBe(false);
  });

  test("none in place are no points, and nothing stated is not known", () => {
    expect(testOf(points, { runoff: [] }).found).toBe("no points");
    expect(testOf(points, { runoff: [] }).violated).toBe(true);
    expect(testOf(points, {}).violated).toBeNull();
  });

  test("points of your own win over the menu, also over that of the agency", () => {
    const measure = "conservation program";
    expect(runoffPoints({ menu: "US EPA", measures: [{ measure }] }).points).toBe(2);
    expect(runoffPoints({ menu: "US EPA", measures: [{ measure, points: 1 }] }).points).toBe(1);
    expect(runoffPoints({ menu: [{ measure, points: 5 }], measures: [{ measure }] }).points).toBe(5);
  });

  test("a measure that the menu does not have is asked for, and counts with what is stated of it", () => {
    const measure = "vegetative filter strip, 30 ft to less than 60 ft";
    const { findings, points: sum } = runoffPoints({ menu: "US EPA", measures: [{ measure }] });
    expect(sum).toBe(0);
    expect(findings.map(({ code }) => code)).toEqual(["runoff/points-not-stated"]);
    expect(testOf({ ...points, menu: "US EPA" as const }, { runoff: [{ measure }] }).violated).toBeNull();
    expect(
      testOf({ ...points, menu: "US EPA" as const }, { runoff: [{ measure, points: 2 }] }).found,
    ).toMatch(/^2 points: vegetative filter strip, 30 ft to less than 60 ft 2$/);
  });

  test("a measure of one part and of the site earns its points once: those of the part", () => {
    const runoff = [
      { measure: "records", points: 1, part: "north pitch" },
      { measure: "records", points: 4 },
    ];
    expect(testOf(points, { runoff }, ["north pitch"]).found).toBe("1 point: records 1");
    expect(testOf(points, { runoff }, ["south pitch"]).found).toBe("4 points: records 4");
  });

  test("the menu is dated, cited, without a measure twice, and frozen", () => {
    const names = runoffMenu.measures.map(({ measure }) => measure);
    expect(new Set(names).size).toBe(names.length);
    expect(runoffMenu.edition).toBe("2025-04-30");
    expect(Object.isFrozen(runoffMenu.measures[0])).toBe(true);
    for (const { points: each } of runoffMenu.measures) expect(each >= 0 && each <= 9).toBe(true);
  });

  test("refusals", () => {
    expect(
      complaints(() =>
        runoffPoints({ measures: [{ measure: "a" }, { measure: "A" }, { measure: "b", points: -1 }] }),
      ),
    ).toEqual(["duplicate measures[1].measure"]);
    expect(complaints(() => runoffPoints({ measures: [{ measure: "b", points: -1 }] }))).toEqual([
      "range measures[0].points",
    ]);
    expect(complaints(() => runoffPoints({ measures: [{ measure: "b", part: "x" }] }))).toEqual([
      "type measures[0].part",
    ]);
    expect(complaints(() => runoffPoints({ measures: [], menu: "EPA" as never }))).toHaveLength(1);
    expect(complaints(() => limit({ ...points, atLeastPoints: 1.5 } as never))).toEqual([
      "range limit.atLeastPoints",
    ]);
  });
});
