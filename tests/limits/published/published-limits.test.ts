import { describe, expect, it } from "vitest";
import {
  type ApplicationFacts,
  checkLimits,
  connecticutLimits,
  floridaLimits,
  type LimitSet,
  marylandProductLimits,
  marylandUseLimits,
  minnesotaLimits,
  newYorkLimits,
  type Proposal,
  pennsylvaniaLimits,
  publishedLimits,
  rememberedLimits,
} from "../../../src/index.js";

const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
const slowOne = [lb(1, "N"), lb(1, "N:slow")];
const phosphorus = [lb(0.2, "P")];

/** The ids of the limits that an application breaks for sure. */
const violated = (
  set: LimitSet,
  facts: ApplicationFacts,
  supplies: Proposal["supplies"],
  date: Proposal["date"] = "2026-06-08",
): readonly (string | undefined)[] => {
  const { uses, tests } = checkLimits({
    limits: set.limits,
    proposal: { date, facts, ...(supplies ? { supplies } : {}) },
  });
  return [...uses, ...tests]
    .filter((one) => one.violated && one.appliesIf.length === 0)
    .map((one) => one.limit.id);
};

describe("Pennsylvania's two kinds of enhanced efficiency", () => {
  it("one in phosphorus leaves the 0.9 lb of nitrogen in force", () => {
    expect(violated(pennsylvaniaLimits, { productKind: "enhanced-efficiency phosphorus" }, slowOne)).toEqual([
      "us-pa/total-n",
    ]);
  });
  it("one in nitrogen lifts the 0.9 lb", () => {
    expect(violated(pennsylvaniaLimits, { productKind: "enhanced-efficiency nitrogen" }, slowOne)).toEqual(
      [],
    );
  });
  it("one in nitrogen leaves zero phosphorus in force", () => {
    const kind = { productKind: "enhanced-efficiency nitrogen", turf: "established" } as const;
    expect(violated(pennsylvaniaLimits, kind, phosphorus)).toEqual(["us-pa/p"]);
  });
  it("one in phosphorus lifts zero phosphorus", () => {
    const kind = { productKind: "enhanced-efficiency phosphorus", turf: "established" } as const;
    expect(violated(pennsylvaniaLimits, kind, phosphorus)).toEqual([]);
  });
  it("a product that is both lifts both", () => {
    const kinds = {
      productKind: ["enhanced-efficiency nitrogen", "enhanced-efficiency phosphorus"],
      turf: "established",
    } as const;
    expect(violated(pennsylvaniaLimits, kinds, [...slowOne, ...phosphorus])).toEqual([]);
  });
  it("the word that said neither is refused with the choices", () => {
    const kind = { productKind: "enhanced efficiency" } as never;
    expect(() => violated(pennsylvaniaLimits, kind, slowOne)).toThrow(
      /"enhanced-efficiency nitrogen", "enhanced-efficiency phosphorus"/,
    );
  });
});

describe("conditions that had been merged", () => {
  const lawn = { place: "home lawn" } as const;
  it("Florida's 2 lb are for spring and summer", () => {
    const slow = [lb(1.5, "N"), lb(1.5, "N:slow")];
    expect(violated(floridaLimits, lawn, slow, "2026-06-08")).toEqual([]);
    expect(violated(floridaLimits, lawn, slow, "2026-11-02")).toEqual(["us-fl/total-n-autumn-winter"]);
  });
  it("a golf course in Minnesota lifts nothing without trained staff", () => {
    const course: ApplicationFacts = {
      place: "golf course",
      growingSeason: 5,
      soilTest: { date: "2026-01-01", shortOf: [] },
    };
    expect(violated(minnesotaLimits, { ...course, applicator: "professional" }, phosphorus)).toEqual([
      "us-mn/p",
    ]);
    expect(
      violated(minnesotaLimits, { ...course, applicator: "trained golf course staff" }, phosphorus),
    ).toEqual([]);
  });
  it("a sod farm is no lawn in New York", () => {
    expect(violated(newYorkLimits, { place: "sod farm" }, [lb(1, "K2O")], "2026-01-10")).toEqual([]);
    expect(violated(newYorkLimits, { place: "lawn" }, [lb(1, "K2O")], "2026-01-10")).toEqual([
      "us-ny/blackout-dates",
    ]);
  });
});

describe("what rests on no statute that was read", () => {
  it("Connecticut's winter lasts to the middle of March, also where a soil test lets phosphate go down", () => {
    const facts = {
      place: "lawn",
      turf: "established",
      soilTest: { date: "2026-03-01", shortOf: ["P"] },
    } as const;
    expect(violated(connecticutLimits, facts, phosphorus, "2026-03-15")).toEqual(["us-ct/blackout-dates"]);
    expect(violated(connecticutLimits, facts, phosphorus, "2026-03-16")).toEqual([]);
  });
  it("no published set cites a newspaper", () => {
    const cited = publishedLimits.map(({ source }) => JSON.stringify(source));
    expect(cited.filter((text) => /newspaper|Herald|Bulletin \(|Norwich/.test(text))).toEqual([]);
  });
  it("sets from memory are none of the published ones", () => {
    expect(publishedLimits.filter(({ reached }) => reached !== "read")).toEqual([]);
    expect(rememberedLimits.filter(({ reached }) => reached === "read")).toEqual([]);
  });
  it("what Maryland's rules leave to the university is named as not held", () => {
    expect(marylandProductLimits.notHeld.join(" ")).toMatch(/80 % of the annual rate that the University/);
    expect(marylandUseLimits.notHeld.join(" ")).toMatch(/rates that the University of Maryland recommends/);
  });
});

it("nobody can change a published set", () => {
  for (const set of [...publishedLimits, ...rememberedLimits]) {
    expect(Object.isFrozen(set)).toBe(true);
    expect(Object.isFrozen(set.limits[0])).toBe(true);
    expect(Object.isFrozen(set.notHeld)).toBe(true);
  }
  expect(Object.isFrozen(publishedLimits)).toBe(true);
});
