import { describe, expect, test } from "vitest";
import { type ApplicationFacts, checkLimits, runoffPoints } from "../../../src/limits/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const source = "label (invented)";
const ft = (value: number) => ({ value, unit: "ft" });
const amount = { amount: { value: 1, unit: "lb/1000 ft2", of: "N" }, per: "application", source } as const;
const withFacts = (facts: object) =>
  checkLimits({ proposal: { date: "2026-06-08", facts: facts as ApplicationFacts }, limits: [amount] });
const withEdge = (edge: object) => withFacts({ edges: [{ from: "water", away: ft(3), ...edge }] });

describe("facts that cannot be read", () => {
  test("what is known of the application", () => {
    const at = "proposal.facts";
    expectRefusals([
      [() => withFacts([] as never), "type", at, /facts of the application/],
      [() => withFacts({ grass: "" }), "missing", `${at}.grass`, /a word/],
      [() => withFacts({ place: 3 }), "type", `${at}.place`, /a word/],
      [() => withFacts({ applicator: "" }), "missing", `${at}.applicator`, /a word/],
      [() => withFacts({ turf: "old" }), "type", `${at}.turf`, /established/],
      [() => withFacts({ growingSeason: 0 }), "range", `${at}.growingSeason`, /1/],
      [() => withFacts({ growingSeason: 1.5 }), "range", `${at}.growingSeason`, /1/],
      [() => withFacts({ soilTest: 3 }), "type", `${at}.soilTest`, /a soil test/],
      [() => withFacts({ soilTest: { date: "x", shortOf: [] } }), "date", `${at}.soilTest.date`, /./],
      [
        () => withFacts({ soilTest: { date: "2026-01-01", shortOf: "P" } }),
        "type",
        `${at}.soilTest.shortOf`,
        /a list of nutrients/,
      ],
      [
        () => withFacts({ soilTest: { date: "2026-01-01", shortOf: ["P", "x y"] } }),
        "substance/unknown",
        `${at}.soilTest.shortOf[1]`,
        /a substance, such as P/,
      ],
      [() => withFacts({ productKind: ["organic", "slow"] }), "type", `${at}.productKind[1]`, /conventional/],
      [() => withFacts({ productKind: [] }), "missing", `${at}.productKind`, /word/],
      [() => withFacts({ equipment: "plow" }), "type", `${at}.equipment`, /drop spreader/],
      [
        () => withFacts({ ground: "frozen" }),
        "type",
        `${at}.ground`,
        /a list, empty where the ground is none of these/,
      ],
      [() => withFacts({ ground: ["frozen", "wet"] }), "type", `${at}.ground[1]`, /saturated/],
      [() => withFacts({ toWater: ft(-1) }), "range", `${at}.toWater`, /0/],
      [() => withFacts({ buffer: { value: 1, unit: "lb" } }), "unit/mismatch", `${at}.buffer`, /length|ft|m/],
    ]);
  });

  test("the edges of the site", () => {
    const at = "proposal.facts.edges";
    expectRefusals([
      [() => withFacts({ edges: 3 }), "type", at, /edge/],
      [
        () => withFacts({ edges: Array.from({ length: 1001 }, () => ({ from: "water", away: ft(1) })) }),
        "range",
        at,
        /1000/,
      ],
      [() => withFacts({ edges: [3] }), "type", `${at}[0]`, /an edge: what is there, and how far away/],
      [() => withEdge({ away: undefined }), "missing", `${at}[0].away`, /how far away it is, 0 at the edge/],
      [() => withEdge({ away: ft(-1) }), "range", `${at}[0].away`, /0/],
      [() => withEdge({ from: "" }), "missing", `${at}[0].from`, /what is there, such as "water"/],
      [() => withEdge({ part: "" }), "missing", `${at}[0].part`, /the name of a part of the site/],
      [() => withEdge({ untreated: ft(-1) }), "range", `${at}[0].untreated`, /0/],
      [() => withEdge({ along: ft(-1) }), "range", `${at}[0].along`, /0/],
      [() => withEdge({ measures: 3 }), "type", `${at}[0].measures`, /measure/],
      [
        () => withEdge({ measures: ["a", ""] }),
        "missing",
        `${at}[0].measures[1]`,
        /a measure, as the limit words it/,
      ],
      [() => withEdge({ edges: [] }), "missing", `${at}[0].edges`, /number of an edge/],
      [() => withEdge({ edges: [-1] }), "range", `${at}[0].edges[0]`, /0.*100.?000/],
      [() => withEdge({ edges: [0.5] }), "range", `${at}[0].edges[0]`, /./],
      [() => withEdge({ edges: [0, 1, 1] }), "duplicate", `${at}[0].edges[2]`, /each edge once/],
      [
        () => withEdge({ edges: [0], along: ft(3) }),
        "conflict",
        `${at}[0].along`,
        /either the numbers of edges, or how long the edge is/,
      ],
    ]);
    withEdge({ edges: [0, 100_000], measures: [], part: "north pitch", untreated: ft(0) });
    withFacts({ edges: [] });
  });

  test("the measures against runoff", () => {
    const points = (measures: unknown) => runoffPoints({ measures: measures as never });
    expectRefusals([
      [() => runoffPoints(3 as never), "type", "input", /measures and a menu/],
      [() => points(undefined), "missing", "measures", /measure/],
      [() => points([3]), "type", "measures[0]", /a measure against runoff/],
      [
        () => points([{ measure: "" }]),
        "missing",
        "measures[0].measure",
        /the measure, as the menu words it/,
      ],
      [() => points([{ measure: "a", points: 51 }]), "range", "measures[0].points", /0.*50/],
      [
        () => points([{ measure: "a", part: "x" }]),
        "type",
        "measures[0].part",
        /no part: give the measures of one part/,
      ],
      [
        () => points([{ measure: "a" }, { measure: " A " }]),
        "duplicate",
        "measures[1].measure",
        /each measure once: it earns its points once/,
      ],
      [
        () => points(Array.from({ length: 1001 }, (_, n) => ({ measure: `m${n}` }))),
        "range",
        "measures",
        /1000/,
      ],
      [() => runoffPoints({ measures: [], menu: "EPA" as never }), "type", "menu", /US EPA/],
      [
        () => withFacts({ runoff: [{ measure: "a", part: "" }] }),
        "missing",
        "proposal.facts.runoff[0].part",
        /the name of a part/,
      ],
      [
        () =>
          withFacts({
            runoff: [
              { measure: "a", part: "x" },
              { measure: "A", part: "x" },
            ],
          }),
        "duplicate",
        "proposal.facts.runoff[1].measure",
        /once/,
      ],
    ]);
    withFacts({ runoff: [{ measure: "a", part: "x" }, { measure: "a", part: "y" }, { measure: "a" }] });
    expect(complaints(() => runoffPoints({ measures: [], men: 3 } as never))).toEqual(["type input.men"]);
  });
});

test("a proposal that cannot be read", () => {
  const put = (proposal: unknown) => checkLimits({ proposal, limits: [amount] } as never);
  expectRefusals([
    [() => put(undefined), "missing", "proposal", /an application/],
    [() => put(null), "type", "proposal", /an application/],
    [() => put("today"), "type", "proposal", /an application/],
    [() => put({ date: "2026-06-08", id: "a" }), "type", "proposal.id", /no such field/],
    [() => put({ date: "2026-06-08", corrects: "a" }), "type", "proposal.corrects", /no such field/],
    [() => put({ date: "2026-06-08", voids: true }), "type", "proposal.voids", /no such field/],
    [() => put({ date: {} }), "date", "proposal.date", /./],
    [() => put({}), "missing", "proposal.date", /./],
  ]);
});
