import ucum from "@lhncbc/ucum-lhc";
import { describe, expect, test } from "vitest";
import { fromUcum, RatewrightError, toUcum } from "../../../src/quantity/index.js";
import { converted } from "../../../src/quantity/value/converted.js";
import { baseUnitDimensions, baseUnitSample, commonQuotientList } from "../samples.js";

const utils = ucum.UcumLhcUtils.getInstance();
const units = [...baseUnitSample, ...commonQuotientList];

describe("UCUM codes", () => {
  test.each(units)("%s: valid by the reference library, and read back", (unit) => {
    const code = toUcum(unit as "lb");
    expect(utils.validateUnitString(code).status).toBe("valid");
    expect(fromUcum(code)).toBe(unit);
  });

  test("every quotient of a sample is valid and comes back", () => {
    for (const [top] of baseUnitDimensions.filter(([, of]) => of === "mass" || of === "volume")) {
      for (const [bottom] of baseUnitDimensions.filter(([, of]) => /^(?:area|volume|time)$/.test(of))) {
        const code = toUcum(`${top}/${bottom}` as "lb/acre");
        expect(utils.validateUnitString(code).status).toBe("valid");
        expect(fromUcum(code)).toBe(`${top}/${bottom}`);
      }
    }
  });

  // The library computes in doubles; a handful of roundings is 1e-14.
  test.each(baseUnitDimensions)("%s converts to the other units of %s as here", (unit, dimension) => {
    for (const [other] of baseUnitDimensions.filter(([, of]) => of === dimension)) {
      const there = utils.convertUnitTo(toUcum(unit as "lb"), 7, toUcum(other as "lb")).toVal;
      const here = converted(7, unit, other);
      expect(Math.abs((there ?? Number.NaN) - here)).toBeLessThanOrEqual(Math.abs(here) * 1e-13);
    }
  });

  test("the acre is the international one", () => {
    expect(toUcum("acre")).toBe("4840.[syd_i]");
    const survey = utils.convertUnitTo("[acr_us]", 1, toUcum("ft2")).toVal as number;
    expect(survey / 43560 - 1).toBeGreaterThan(3.9e-6);
    expect(survey / 43560 - 1).toBeLessThan(4.1e-6);
  });

  test.each([
    ["[lb_av].[acr_us]-1", "lb/acre"],
    ["[acr_us]", "acre"],
    ["[ft_us]", "ft"],
    ["kg/[acr_us]", "kg/acre"],
  ])("%s is refused unless asked for", (code, unit) => {
    expect(() => fromUcum(code)).toThrow(/survey foot/);
    expect(fromUcum(code, { survey: "as international" })).toBe(unit);
  });

  test.each([
    ["kg.har-1", "kg/ha"],
    ["g.m-2", "g/m2"],
    ["kg.har-1.d-1", "kg/ha/d"],
    ["[lb_av]/(43560.[sft_i])", "lb/acre"],
    ["[lb_av]/(43560.[ft_i]2)", "lb/acre"],
    ["[lb_av]/(1000.[ft_i]2)", "lb/1000 ft2"],
    ["/d", "1/d"],
    ["d-1", "1/d"],
    ["l/min", "L/min"],
  ])("%s", (code, unit) => {
    expect(fromUcum(code)).toBe(unit);
    const theirs = utils.convertUnitTo(code, 1, toUcum(unit as "lb")).toVal ?? Number.NaN;
    expect(Math.abs(theirs - 1)).toBeLessThan(1e-13);
  });

  test.each([
    "",
    "lb",
    "[lb_av",
    "mol",
    "kg/",
    "kg//har",
    "m.m",
    "(kg)/((har))",
    "toString",
    "1".repeat(500),
  ])("%s is refused", (code) => {
    expect(() => fromUcum(code)).toThrow(RatewrightError);
  });

  test("money has no code", () => {
    expect(() => toUcum("money:USD/lb")).toThrow(/none for money/);
    expect(() => toUcum("lbs" as "lb")).toThrow(RatewrightError);
    expect(() => toUcum(undefined as never)).toThrow(RatewrightError);
    expect(() => fromUcum(undefined as never)).toThrow(RatewrightError);
  });
});

test("powers of one digit, alone at the end of a factor, and parts that are none", () => {
  expect(fromUcum("kg.m-2")).toBe("kg/m2");
  for (const code of [
    "kg.d-12",
    "kg.har-4",
    "kg.d-1x",
    "kg.xyz",
    "xyz/har",
    "kg/xyz",
    "kg/har/xyz",
    "/",
    ".",
    "kg.",
  ])
    expect(() => fromUcum(code), code).toThrow(RatewrightError);
  expect(fromUcum("[lb_av].(4840.[syd_i])-1")).toBe("lb/acre");
  expect(fromUcum("(4840.[syd_i])")).toBe("acre");
});

test("what is no text is no unit, also a list that reads as one", () => {
  for (const unit of [3, null, {}, ["lb"], Symbol("lb"), { toString: () => "lb" }])
    expect(() => toUcum(unit as never)).toThrow(/as text/);
});
