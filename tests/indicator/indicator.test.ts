import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  activeUses,
  fieldImpact,
  impactQuotient,
  leachingScore,
  quantity,
  treatmentFrequency,
} from "../../src/index.js";
import { complaints } from "../errors.js";

const ratings = (value: number) => ({
  chronic: value,
  dermal: value,
  bird: value,
  fish: value,
  bee: value,
  beneficial: value,
  soilHalfLife: value,
  plantHalfLife: value,
  systemicity: value,
  leaching: value,
  surfaceLoss: value,
});

describe("leachingScore", () => {
  const score = (days: number, koc: number) =>
    leachingScore({ halfLife: quantity(days, "d"), koc: quantity(koc, "mL/g") });

  it("rises with the half-life and falls with the sorption, where the equation holds", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.1, max: 500, noNaN: true }),
        fc.double({ min: 1, max: 9000, noNaN: true }),
        (days, koc) => {
          expect(score(days * 1.1, koc).score).toBeGreaterThan(score(days, koc).score);
          expect(score(days, koc * 1.1).score).toBeLessThan(score(days, koc).score);
        },
      ),
    );
  });

  it("has the classes of its source, with their ends in the middle one", () => {
    // Half-lives of 10 days make the score 4 less the logarithm of Koc.
    expect(
      [10 ** 4.5, 10 ** 4, 10 ** 2.3, 10 ** 2.2, 10 ** 1.2, 10 ** 1.1].map((koc) => score(10, koc).potential),
    ).toEqual(["extremely low", "low", "low", "moderate", "moderate", "high"]);
  });

  it("warns where the equation turns its sign", () => {
    const turned = score(0.1, 1e7);
    expect(turned.score).toBeGreaterThan(2.8);
    expect(turned.findings.map(({ code }) => code)).toContain("leaching/score-turns");
    expect(score(30, 100).findings.map(({ code }) => code)).toEqual(["leaching/not-a-forecast"]);
  });

  it("takes other units, and refuses what is no half-life", () => {
    const found = leachingScore({ halfLife: quantity(1440, "h"), koc: quantity(100, "L/kg") });
    expect(found.score).toBeCloseTo(score(60, 100).score, 12);
    expect(
      complaints(() => leachingScore({ halfLife: quantity(0, "d"), koc: quantity(1, "g/mL") } as never)),
    ).toEqual(["range halfLife", "unit/mismatch koc"]);
  });
});

describe("treatmentFrequency", () => {
  const acre = quantity(1, "acre");
  const done = (rate: number, treated: number) => ({
    name: "spray",
    rate: quantity(rate, "oz/acre", "product:fungicide-a"),
    fullRate: quantity(10, "oz/acre", "product:fungicide-a"),
    treated: quantity(treated, "acre"),
  });

  it("adds up, and does not mind the units of area or rate", () => {
    const list = [done(5, 0.5), done(10, 1)];
    expect(treatmentFrequency({ treatments: list, area: acre }).index).toBeCloseTo(1.25, 12);
    const metric = {
      ...done(5, 0.5),
      fullRate: quantity(10, "oz/acre", "product:fungicide-a"),
      rate: quantity(350.265, "g/ha", "product:fungicide-a"),
    };
    expect(treatmentFrequency({ treatments: [metric], area: acre }).index).toBeCloseTo(0.25, 4);
  });

  it("warns above the full rate and refuses other stuff", () => {
    expect(treatmentFrequency({ treatments: [done(12, 1)], area: acre }).findings[0]).toMatchObject({
      code: "treatment/above-full-rate",
      path: "treatments[0].rate",
    });
    const ai = { ...done(5, 0.5), fullRate: quantity(10, "oz/acre", "ai") };
    expect(complaints(() => treatmentFrequency({ treatments: [done(5, 2), ai], area: acre }))).toEqual([
      "range treatments[0].treated",
      "substance/mismatch treatments[1].fullRate",
    ]);
    const liquid = { ...done(5, 0.5), fullRate: quantity(10, "fl oz/acre", "product:fungicide-a") };
    expect(complaints(() => treatmentFrequency({ treatments: [liquid], area: acre }))).toEqual([
      "unit/mismatch treatments[0].fullRate",
    ]);
  });
});

describe("impactQuotient", () => {
  it("never falls with a rating, and carries what was published against it", () => {
    for (const name of Object.keys(ratings(1)) as (keyof ReturnType<typeof ratings>)[]) {
      const [low, high] = [1, 5].map((value) =>
        impactQuotient({ ratings: { ...ratings(2), [name]: value }, source: "invented" }),
      );
      expect((high?.quotient ?? 0) - (low?.quotient ?? 0), name).toBeGreaterThan(0);
      expect(high?.findings.map(({ code }) => code)).toEqual(["impact-quotient/contested"]);
    }
  });

  it("in use follows the rate, with its unit", () => {
    const active = quantity(1, "lb/acre", "ai:x");
    const [lb, kg] = (["lb/acre", "kg/ha"] as const).map(
      (per) => fieldImpact({ quotient: 50, active, per }).value,
    );
    expect(lb).toBe(50);
    expect(kg).toBeCloseTo(50 * 1.120851, 4);
  });

  it("names the rating that is missing or out of its scale", () => {
    const { bee: _, ...rest } = ratings(1);
    const call = () => impactQuotient({ ratings: { ...rest, fish: 6 }, source: " " } as never);
    expect(complaints(call)).toEqual(["missing source", "range ratings.fish", "missing ratings.bee"]);
    expect(
      complaints(() =>
        fieldImpact({ quotient: 20, active: quantity(1, "lb/acre", "product"), per: "lb/ac" } as never),
      ),
    ).toEqual(["substance/mismatch active", "type per"]);
  });
});

describe("activeUses", () => {
  const area = quantity(4, "ha");

  it("lists the years in order, and within one the ingredients by name", () => {
    const on = (date: `${number}-${number}-${number}`, of: string) => ({
      date,
      active: { value: 2, unit: "kg", of },
    });
    const { uses } = activeUses({
      area,
      applications: [
        on("2021-06-01", "ai:b"),
        on("2020-06-01", "ai:c"),
        on("2021-07-01", "ai:a"),
        on("2020-07-01", "ai:a"),
      ],
    });
    // 2 kg on 4 ha are 0.5 kg/ha.
    expect(uses.map(({ year, of, perArea }) => [year, of, perArea.in("kg/ha")])).toEqual([
      [2020, "ai:a", 0.5],
      [2020, "ai:c", 0.5],
      [2021, "ai:a", 0.5],
      [2021, "ai:b", 0.5],
    ]);
  });

  it("keeps years and ingredients apart, and loses nothing", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            year: fc.integer({ min: 2020, max: 2023 }),
            of: fc.constantFrom("ai:a", "ai:b", "ae:b"),
            kg: fc.double({ min: 0, max: 10, noNaN: true }),
          }),
          { minLength: 1, maxLength: 30 },
        ),
        (list) => {
          const { uses } = activeUses({
            area,
            applications: list.map(({ year, of, kg }) => ({
              date: `${year}-06-01` as `${number}-${number}-${number}`,
              active: { value: kg, unit: "kg", of },
            })),
          });
          const total = list.reduce((sum, { kg }) => sum + kg, 0);
          expect(uses.reduce((sum, { amount }) => sum + amount.in("kg"), 0)).toBeCloseTo(total, 9);
          expect(uses.reduce((sum, { applications }) => sum + applications, 0)).toBe(list.length);
          for (const { amount, perArea } of uses)
            expect(perArea.in("kg/ha")).toBeCloseTo(amount.in("kg") / 4, 12);
          expect(new Set(uses.map(({ year, of }) => `${year} ${of}`)).size).toBe(uses.length);
        },
      ),
    );
  });

  it("needs the area with a rate, and ai rather than product", () => {
    const rate = { value: 1, unit: "lb/acre", of: "ai" };
    expect(
      complaints(() =>
        activeUses({
          area,
          applications: [
            { date: "2026-05-01", active: rate },
            { date: "2026-02-30", active: { ...rate, of: "product" } },
          ],
        } as never),
      ),
    ).toEqual([
      "missing applications[0].area",
      "date applications[1].date",
      "substance/mismatch applications[1].active",
    ]);
  });
});

describe("figures that are too large, or no numbers", () => {
  it("are refused at their place, and give no infinity", () => {
    const active = quantity(1e308, "kg/ha", "ai");
    expect(complaints(() => fieldImpact({ quotient: 227, active, per: "lb/acre" }))).toEqual([
      "not-finite active",
    ]);
    expect(complaints(() => fieldImpact({ quotient: 227, active, per: "kg/ha" }))).toEqual(["range active"]);
    const field = quantity(1, "ha");
    const once = (rate: number, fullRate: number) =>
      treatmentFrequency({
        area: field,
        treatments: [
          {
            name: "May",
            rate: quantity(rate, "kg/ha", "product"),
            fullRate: quantity(fullRate, "kg/ha", "product"),
            treated: field,
          },
        ],
      });
    expect(complaints(() => once(1e308, 1e-3))).toEqual(["range treatments[0].rate"]);
    expect(complaints(() => once(1, 5e-324))).toEqual(["range treatments[0].rate"]);
    // A slip of units is told, and counted as it stands.
    expect(once(43.56, 1).findings.map(({ code }) => code)).toEqual(["treatment/above-full-rate"]);
  });
});
