import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { complaint } from "../../errors.js";

const rate = (value: number) => quantity(value, "lb/1000 ft2", "CaCO3 equivalent");
const codes = (found: { readonly findings: readonly { readonly code: string }[] }) =>
  found.findings.map(({ code }) => code);

describe("splitting and acidifying", () => {
  const split = (more: object) =>
    soil.splitAmendment({
      total: rate(150),
      most: rate(50),
      source: "the label",
      first: "2026-01-31",
      monthsApart: 1,
      ...more,
    } as Parameters<typeof soil.splitAmendment>[0]);
  const dates = (more: object) => split(more).applications.map(({ date }) => date);

  it("months are counted from the first, and a yearly maximum waits for its year", () => {
    expect(dates({})).toEqual(["2026-01-31", "2026-02-28", "2026-03-31"]);
    expect(dates({ perYear: rate(100) })).toEqual(["2026-01-31", "2026-02-28", "2027-01-31"]);
    expect(dates({ perYear: rate(40) })).toEqual(["2026-01-31", "2027-01-31", "2028-01-31", "2029-01-31"]);
    expect(dates({ total: rate(0) })).toEqual([]);
    expect(dates({ total: rate(60), most: rate(1) })).toHaveLength(60);
  });

  it("three years after the first are within the test, and a month more outlasts it", () => {
    expect(codes(split({ total: rate(150), most: rate(50), monthsApart: 18 }))).toEqual([]);
    const late = split({ total: rate(150), most: rate(50), monthsApart: 19 });
    expect(late.findings[0]).toMatchObject({
      path: "first",
      params: { last: "2029-03-31", months: 36 },
      source: {
        title: "Home Lawn - Maintain: soil should be retested in three years",
        publisher: "Pennsylvania State University",
      },
    });
    expect(complaint(() => split({ monthsApart: 24 }))).toBe("nothing thrown");
  });

  it("sulfur goes on turf of 2 in, and free lime is told", () => {
    const sulfur = (freeLime: boolean, inches = 2) =>
      soil.sulfurApplications({
        total: quantity(10, "lb/1000 ft2", "S"),
        mowingHeight: quantity(inches, "in"),
        freeLime,
        first: "2026-04-01",
        monthsApart: 1,
      });
    expect(sulfur(false).applications.map(({ rate: one }) => one.value)).toEqual([5, 5]);
    expect(codes(sulfur(false))).toEqual([]);
    expect(sulfur(true).findings.at(-1)).toMatchObject({ code: "sulfur/free-lime", path: "freeLime" });
  });
});
