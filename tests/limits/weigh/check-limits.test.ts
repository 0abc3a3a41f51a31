import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type CivilDate } from "../../../src/calendar/index.js";
import { intervalRule, nextDates } from "../../../src/interval/index.js";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits, type Limit, type LimitCheck, type Proposal } from "../../../src/limits/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";

const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
const perAcre = (value: number, of: string) => ({ value, unit: "lb/acre", of });
const source = "plan of the park (invented)";

const check = (
  limits: readonly Limit[],
  proposal: Omit<Proposal, "date"> & { date?: Proposal["date"] },
  entries: Parameters<typeof ledger>[0] = [],
): LimitCheck =>
  checkLimits({ ledger: ledger(entries), limits, proposal: { date: "2026-06-08", ...proposal } });
const only = (result: LimitCheck) => {
  expect(result.uses).toHaveLength(1);
  return result.uses[0] as (typeof result.uses)[number];
};
const codes = (result: LimitCheck): readonly string[] => result.findings.map(({ code }) => code);
const n = (value: number, slow?: number) =>
  slow === undefined ? [lb(value, "N")] : [lb(value, "N"), lb(slow, "N:slow")];

describe("an amount in one application", () => {
  const soluble: Limit = { amount: lb(0.7, "N:quick"), per: "application", source };

  test("equal is within, by hand: 2.0 lb at 65 % slow is 0.70 lb soluble", () => {
    expect(only(check([soluble], { supplies: n(2, 1.3) })).violated).toBe(false);
    expect(only(check([soluble], { supplies: n(2, 1.29) })).violated).toBe(true);
  });

  test("0.9 lb needs two ninths of it slow", () => {
    expect(only(check([soluble], { supplies: n(0.9, 0.9 * (2 / 9)) })).violated).toBe(false);
    expect(only(check([soluble], { supplies: n(0.9, 0.18) })).violated).toBe(true);
  });

  test("does not add what went down on another day", () => {
    const entry = { id: "a", date: "2026-06-07", supplies: n(0.9, 0.3) } as const;
    expect(only(check([soluble], { supplies: n(0.9, 0.3) }, [entry])).before.value).toBe(0);
  });

  test("no later day makes it fit", () => {
    const use = only(check([soluble], { supplies: n(0.9, 0) }));
    expect(use.earliestByStatedLimit).toBeNull();
    expect(check([soluble], { supplies: n(0.9, 0) }).earliestByStatedRules).toBeNull();
  });
});

describe("phosphorus and phosphate", () => {
  const quarter = (of: string): Limit => ({ amount: lb(0.25, of), per: "application", source });

  test("the same figure binds 2.29 times apart", () => {
    const phosphate = { supplies: [lb(0.5, "P2O5")] };
    // 0.5 lb P2O5 holds 0.218 lb P.
    expect(only(check([quarter("P2O5")], phosphate)).violated).toBe(true);
    expect(only(check([quarter("P")], phosphate)).violated).toBe(false);
    expect(only(check([quarter("P")], phosphate)).adds.value).toBeCloseTo(0.218, 3);
  });

  test("elemental P counts against a limit in P2O5", () => {
    expect(only(check([quarter("P2O5")], { supplies: [lb(0.2, "P")] })).adds.value).toBeCloseTo(0.458, 3);
  });

  test("a limit of zero is violated by any", () => {
    const none: Limit = { amount: lb(0, "P"), per: "application", source };
    expect(codes(check([none], { supplies: [lb(0.001, "P2O5")] }))).toEqual(["limit/exceeded"]);
    expect(codes(check([none], { supplies: [lb(0.5, "K2O")] }))).toEqual([]);
  });

  test("one entry in both forms that do not agree is refused", () => {
    expect(complaints(() => check([quarter("P")], { supplies: [lb(0.1, "P"), lb(0.1, "P2O5")] }))).toEqual([
      "conflict proposal.supplies",
    ]);
    expect(check([quarter("P")], { supplies: [lb(0.1, "P"), lb(0.23, "P2O5")] }).uses[0]?.adds.value).toBe(
      0.1,
    );
  });
});

describe("an amount over a period", () => {
  const yearly: Limit = { amount: lb(3, "N"), per: "calendar year", source };
  const entries = [
    { id: "last year", date: "2025-12-31", supplies: n(9) },
    { id: "a", date: "2026-03-15", supplies: n(1) },
    { id: "b", date: "2026-05-01", supplies: n(1.5) },
  ] as const;

  test("a calendar year: used, left and the day on which it frees up", () => {
    const use = only(check([yearly], { supplies: n(0.8) }, entries));
    expect([use.before.value, use.adds.value, use.after.value]).toEqual([2.5, 0.8, 3.3]);
    expect(use.remainingUnderStatedLimits.value).toBeCloseTo(-0.3, 12);
    expect([use.violated, use.from, use.to]).toEqual([true, "2026-01-01", "2026-12-31"]);
    expect([use.earliestByStatedLimit, use.moreCanBeAppliedFrom]).toEqual(["2027-01-01", "2027-01-01"]);
  });

  test("an entry later in the same year counts as well", () => {
    const later = [...entries, { id: "c", date: "2026-10-01", supplies: n(0.4) }] as const;
    expect(only(check([yearly], { supplies: n(0.2) }, later)).violated).toBe(true);
  });

  test("thirty days roll: day 30 is the first that is free of day 0", () => {
    const limit: Limit = { amount: lb(1, "N"), per: { days: 30 }, source };
    const first = { id: "a", date: "2026-05-10", supplies: n(0.7) } as const;
    // 10 May + 30 days is 9 June.
    const use = only(check([limit], { date: "2026-06-08", supplies: n(0.7) }, [first]));
    expect([use.violated, use.from, use.earliestByStatedLimit, use.moreCanBeAppliedFrom]).toEqual([
      true,
      "2026-05-10",
      "2026-06-09",
      "2026-06-09",
    ]);
    expect(only(check([limit], { date: "2026-06-09", supplies: n(0.7) }, [first])).violated).toBe(false);
  });

  test("rolling days look forward too: the fullest stretch that holds the day counts", () => {
    const limit: Limit = { amount: lb(1, "N"), per: { days: 30 }, source };
    const later = { id: "a", date: "2026-06-20", supplies: n(0.7) } as const;
    const use = only(check([limit], { supplies: n(0.7) }, [later]));
    expect([use.violated, use.to, use.earliestByStatedLimit]).toEqual([true, "2026-06-20", "2026-07-20"]);
  });

  test("what frees up is the oldest of the stretch that was added up, also where it ends later", () => {
    const limit: Limit = { kind: "count", of: "N", atMost: 1, per: { days: 30 }, source };
    // 20 June + 30 days is 20 July; potassium adds nothing.
    const use = only(
      check([limit], { supplies: [lb(0.5, "K2O")] }, [{ id: "a", date: "2026-06-20", supplies: n(0.4) }]),
    );
    expect([use.before.value, use.from, use.to, use.moreCanBeAppliedFrom]).toEqual([
      1,
      "2026-05-22",
      "2026-06-20",
      "2026-07-20",
    ]);
    // 22 May to 20 June is the fullest; 15 May is not in it. 8 June, what is proposed, + 30 days is 8 July.
    const amount: Limit = { amount: lb(1, "N"), per: { days: 30 }, source };
    const both = only(
      check([amount], { supplies: n(0.1) }, [
        { id: "a", date: "2026-05-15", supplies: n(0.1) },
        { id: "b", date: "2026-06-20", supplies: n(0.4) },
      ]),
    );
    expect([both.before.value, both.from, both.moreCanBeAppliedFrom]).toEqual([
      0.4,
      "2026-05-22",
      "2026-07-08",
    ]);
  });

  test("twelve months roll over a leap day", () => {
    const limit: Limit = { amount: lb(1, "N"), per: { months: 12 }, source };
    const leap = { id: "a", date: "2024-02-29", supplies: n(0.7) } as const;
    const on = (date: Proposal["date"]) => only(check([limit], { date, supplies: n(0.7) }, [leap])).violated;
    expect([on("2025-02-28"), on("2025-03-01")]).toEqual([true, false]);
    const use = only(check([limit], { date: "2025-01-01", supplies: n(0.7) }, [leap]));
    expect(use.earliestByStatedLimit).toBe("2025-03-01");
  });

  test("twelve rolling months free the same day in an interval rule and in a limit, every day of nine years", () => {
    const rule = intervalRule({ maximumApplications: { count: 1, per: "12 rolling months" }, source });
    const limit: Limit = { kind: "count", atMost: 1, of: "N", per: { months: 12 }, source };
    for (let date = "2019-06-01" as CivilDate; date < "2028-06-01"; date = addDays(date, 1)) {
      const { earliestByStatedRules } = nextDates({ applied: [date], rule });
      const use = only(
        check([limit], { date: addDays(date, 40), supplies: n(0.1) }, [{ id: "a", date, supplies: n(0.1) }]),
      );
      expect([date, use.earliestByStatedLimit]).toEqual([date, earliestByStatedRules]);
    }
  });

  test("a season that wraps the year end", () => {
    const winter: Limit = { amount: lb(0.5, "N"), per: { from: "12-15", to: "03-01" }, source };
    const before = { id: "a", date: "2025-12-20", supplies: n(0.4) } as const;
    const use = only(check([winter], { date: "2026-02-01", supplies: n(0.2) }, [before]));
    expect([use.violated, use.from, use.to, use.earliestByStatedLimit]).toEqual([
      true,
      "2025-12-15",
      "2026-03-01",
      "2026-03-02",
    ]);
    const outside = check([winter], { date: "2026-06-08", supplies: n(9) }, [before]);
    expect(outside.uses).toEqual([]);
    expect(outside.notChecked.join()).toContain("outside its season");
  });

  test("limits are monotone: a higher one is never violated where a lower one is not", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 400 }), fc.double({ min: 0, max: 2, noNaN: true })), {
          maxLength: 8,
        }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.constantFrom<Limit["per" & keyof Limit]>(
          "calendar year" as never,
          { days: 45 } as never,
          { months: 12 } as never,
        ),
        (past, adds, low, factor, per) => {
          const base = Date.UTC(2025, 7, 1);
          const entries = past.map(([day, value], i) => ({
            id: `e${i}`,
            date: new Date(base + day * 86_400_000).toISOString().slice(0, 10) as "2026-01-01",
            supplies: n(value),
          }));
          const use = (limit: number) =>
            only(check([{ amount: lb(limit, "N"), per, source } as Limit], { supplies: n(adds) }, entries));
          const [a, b] = [use(low), use(low * factor)];
          if (b.violated) expect(a.violated).toBe(true);
          const [dayA, dayB] = [a.earliestByStatedLimit, b.earliestByStatedLimit];
          if (dayA !== null) expect(dayB !== null && dayB <= dayA).toBe(true);
          expect(a.before.value + a.adds.value).toBeCloseTo(a.after.value, 12);
          // The day that is named does fit, and the day before it does not.
          if (a.violated && dayA !== null) {
            const on = (date: string) =>
              check(
                [{ amount: lb(low, "N"), per, source } as Limit],
                { date: date as "2026-01-01", supplies: n(adds) },
                entries,
              ).uses[0]?.violated;
            expect(on(dayA)).toBe(false);
            const eve = new Date(Date.parse(dayA) - 86_400_000).toISOString().slice(0, 10);
            expect(on(eve)).toBe(true);
          }
        },
      ),
      runs(150),
    );
  });
});

describe("active ingredient and acid equivalent", () => {
  test("contents by weight per volume: 3.21 pt/acre at 3.74 lb/gal is 1.5 lb ae/acre", () => {
    const limit: Limit = { amount: perAcre(1.5, "ae:2,4-D"), per: "application", source };
    const with3 = (pints: number) =>
      only(
        check([limit], {
          product: "ester",
          form: "liquid",
          rate: { value: pints, unit: "pt/acre", of: "product" },
          contents: [{ value: 3.74, unit: "lb/gal", of: "ae:2,4-D/product" }],
        }),
      );
    expect(with3(3.2).violated).toBe(false);
    expect(with3(3.2).adds.value).toBeCloseTo(1.496, 9);
    expect(with3(3.22).violated).toBe(true);
  });

  test("ai is never ae", () => {
    const limit: Limit = { amount: perAcre(1.5, "ae:2,4-D"), per: "application", source };
    expect(only(check([limit], { supplies: [perAcre(9, "ai:2,4-D")] })).adds.value).toBe(0);
  });

  test("73 lb a year at 7.3 lb is ten applications, not nine", () => {
    const limit: Limit = { amount: perAcre(73, "ai:chlorothalonil"), per: "calendar year", source };
    const entries = Array.from({ length: 9 }, (_, i) => ({
      id: `e${i}`,
      date: `2026-0${1 + (i % 5)}-1${i}` as "2026-01-10",
      supplies: [perAcre(7.3, "ai:chlorothalonil")],
    }));
    const tenth = { supplies: [perAcre(7.3, "ai:chlorothalonil")] };
    expect(only(check([limit], tenth, entries)).violated).toBe(false);
    const eleven = [...entries, { id: "e9", date: "2026-05-30", ...tenth } as const];
    expect(only(check([limit], tenth, eleven)).violated).toBe(true);
  });

  test("a product by volume against a limit by volume", () => {
    const limit: Limit = {
      amount: { value: 0.3, unit: "fl oz/1000 ft2", of: "product:regulator-a" },
      per: "calendar year",
      source,
    };
    const use = only(
      check([limit], {
        product: "regulator-a",
        form: "liquid",
        amount: { value: 1.8, unit: "fl oz" },
        area: { value: 14_400, unit: "ft2" },
      }),
    );
    expect(use.adds.value).toBeCloseTo(0.125, 12);
  });

  test("what could not be weighed is not counted, and said", () => {
    const limit: Limit = { amount: perAcre(1.5, "ae:2,4-D"), per: "calendar year", source };
    const result = check([limit], { supplies: [perAcre(1, "ae:2,4-D")] }, [
      { id: "x", date: "2026-03-01", productName: "unknown" },
    ]);
    expect(result.notChecked.join()).toMatch(/ae:2,4-D applied on \d{4}-\d\d-\d\d \(x\): not stated/);
  });
});

describe("counts and intervals", () => {
  const entries = [
    { id: "a", date: "2026-05-01", supplies: [perAcre(1, "ae:2,4-D")] },
    { id: "b", date: "2026-05-22", supplies: [perAcre(1, "ae:2,4-D")] },
  ] as const;
  const one = { supplies: [perAcre(1, "ae:2,4-D")] };

  test("a number of applications a year", () => {
    const limit: Limit = { kind: "count", of: "ae:2,4-D", atMost: 2, per: "calendar year", source };
    const use = only(check([limit], one, entries));
    expect([use.before.value, use.after.value, use.violated, use.earliestByStatedLimit]).toEqual([
      2,
      3,
      true,
      "2027-01-01",
    ]);
    expect(only(check([limit], { supplies: n(1) }, entries)).adds.value).toBe(0);
  });

  test("an interval of 21 days from the one before, and to the one after", () => {
    const limit: Limit = { kind: "interval", of: "ae:2,4-D", atLeastDays: 21, source };
    const on = (date: Proposal["date"]) => check([limit], { date, ...one }, entries).tests[0];
    expect([on("2026-06-11")?.violated, on("2026-06-12")?.violated]).toEqual([true, false]);
    expect(on("2026-06-11")?.earliestByStatedLimit).toBe("2026-06-12");
    // Between the two there is no room on either side.
    expect(on("2026-05-10")?.earliestByStatedLimit).toBe("2026-06-12");
    expect(on("2026-04-10")?.violated).toBe(false);
    expect(on("2026-04-11")?.violated).toBe(true);
  });
});

describe("what does not add up", () => {
  test("a slow share of exactly 20 % is within", () => {
    const limit: Limit = { kind: "slow share", atLeastPercentOfN: 20, source };
    const violated = (slow: number) => check([limit], { supplies: n(0.9, slow) }).tests[0]?.violated;
    expect([
      violated(0.18),
      violated(0.1799),
      check([limit], { supplies: [lb(1, "K2O")] }).tests[0]?.violated,
    ]).toEqual([false, true, false]);
  });

  test("phosphate in the product", () => {
    const limit: Limit = { kind: "content", of: "P2O5", atMostPercent: 0.67, source };
    const rate = { value: 3, unit: "lb/1000 ft2" };
    const violated = (analysis: string) => check([limit], { analysis, rate }).tests[0]?.violated;
    expect([violated("30-0-4"), violated("29-1-4")]).toEqual([false, true]);
    expect(check([limit], { supplies: n(1) }).tests[0]?.violated).toBeNull();
  });

  test("blackout dates, with the day after them", () => {
    const limit: Limit = {
      kind: "blackout dates",
      of: ["N", "P"],
      blackout: { from: "11-16", to: "02-29" },
      source,
    };
    const on = (date: Proposal["date"], supplies = n(0.5)) => check([limit], { date, supplies }).tests[0];
    expect(on("2026-11-15")?.violated).toBe(false);
    expect([on("2026-11-16")?.violated, on("2026-11-16")?.earliestByStatedLimit]).toEqual([
      true,
      "2027-03-01",
    ]);
    expect(on("2028-02-29")?.earliestByStatedLimit).toBe("2028-03-01");
    expect(on("2026-12-24", [lb(1, "K2O")])?.violated).toBe(false);
    expect(check([limit], { date: "2026-12-24", productName: "unknown" }).tests[0]?.violated).toBeNull();
  });

  test("distance and ground, or that they are not known", () => {
    const setback: Limit = { kind: "setback", of: "any", atLeast: { value: 15, unit: "ft" }, source };
    const ground: Limit = { kind: "ground", of: "any", not: ["frozen"], source };
    const tests = (facts: Proposal["facts"]) =>
      check([setback, ground], { supplies: n(0.5), facts: facts ?? {} }).tests.map(
        ({ violated }) => violated,
      );
    expect(tests({ toWater: { value: 4.572, unit: "m" }, ground: [] })).toEqual([false, false]);
    expect(tests({ toWater: { value: 14, unit: "ft" }, ground: ["saturated", "frozen"] })).toEqual([
      true,
      true,
    ]);
    const unknown = check([setback, ground], { supplies: n(0.5) });
    expect(unknown.tests.map(({ violated }) => violated)).toEqual([null, null]);
    expect(unknown.notChecked).toHaveLength(3);
  });
});

describe("scope and exceptions", () => {
  const bermuda: Limit = {
    amount: lb(4, "N"),
    per: "calendar year",
    source,
    scope: { grass: ["bermudagrass"] },
  };

  test("another grass is outside, an unknown one is said", () => {
    expect(check([bermuda], { supplies: n(5), facts: { grass: "zoysiagrass" } }).uses).toEqual([]);
    const unknown = check([bermuda], { supplies: n(5, 2) });
    expect(unknown.findings.map(({ severity }) => severity)).toEqual(["caution"]);
    expect(only(unknown).appliesIf).toEqual(["the grass is bermudagrass"]);
    expect(
      check([bermuda], { supplies: n(5, 2), facts: { grass: "bermudagrass" } }).findings.map(
        ({ severity }) => severity,
      ),
    ).toEqual(["warning"]);
  });

  const noP: Limit = {
    amount: lb(0, "P"),
    per: "application",
    source,
    exemptIf: [{ soilTest: { months: 36, shortOf: "P" } }, { turf: ["being established"] }],
  };
  const violated = (facts: Proposal["facts"]) =>
    check([noP], { supplies: [lb(0.5, "P2O5")], facts: facts ?? {} }).findings.length > 0;

  test("a soil test lifts it for 36 months, to the day, and only where it shows the lack", () => {
    expect(violated({ soilTest: { date: "2023-06-08", shortOf: ["P"] } })).toBe(false);
    expect(violated({ soilTest: { date: "2023-06-07", shortOf: ["P"] } })).toBe(true);
    expect(violated({ soilTest: { date: "2026-06-09", shortOf: ["P"] } })).toBe(true);
    expect(violated({ soilTest: { date: "2026-01-01", shortOf: ["K"] } })).toBe(true);
    expect(violated({ turf: "being established" })).toBe(false);
    expect(violated({})).toBe(true);
  });
});

describe("parts of the site", () => {
  const yearly: Limit = { amount: lb(1, "N"), per: "calendar year", source };
  const entries = [
    { id: "a", date: "2026-03-01", parts: ["pitch"], supplies: n(0.9) },
    { id: "b", date: "2026-03-02", supplies: n(0.2) },
  ] as const;

  test("each part has its own account; an entry without parts counts on all", () => {
    const result = check([yearly], { supplies: n(0.1) }, entries);
    expect(result.uses.map(({ part, before }) => [part, before.value])).toEqual([
      ["pitch", 1.1],
      ["whole site", 0.2],
    ]);
    expect(check([yearly], { parts: ["lawn"], supplies: n(0.1) }, entries).uses[0]?.before.value).toBe(0.2);
  });

  test("an amount over an area is a rate: 222.75 lb of 24-0-11 over 59 400 ft2 is 0.9 lb N", () => {
    const use = only(
      check([yearly], {
        parts: ["lawn"],
        analysis: "24-0-11",
        amount: { value: 222.75, unit: "lb" },
        area: { value: 59_400, unit: "ft2" },
      }),
    );
    expect(use.adds.value).toBeCloseTo(0.9, 12);
  });
});

describe("several limits at once", () => {
  test("the day on which none of them is violated", () => {
    const limits: Limit[] = [
      { amount: lb(1, "N"), per: { days: 30 }, source },
      { kind: "blackout dates", of: ["N"], blackout: { from: "06-01", to: "09-30" }, source },
    ];
    const result = check(limits, { supplies: n(0.8) }, [{ id: "a", date: "2026-05-20", supplies: n(0.8) }]);
    expect(result.findings).toHaveLength(3);
    expect(result.earliestByStatedRules).toBe("2026-10-01");
    expect(result.checked).toEqual(["limits[0]", "limits[1]"]);
  });

  test("what is wrong with limits and proposal is told at once", () => {
    expect(
      complaints(() =>
        checkLimits({
          proposal: { date: "2026-02-30", amount: { value: 1, unit: "acre" } } as never,
          limits: [
            { amount: lb(-1, "N"), per: "month", source: "" },
            { kind: "setback", of: "nothing", atLeast: { value: 1, unit: "lb" }, source },
            { kind: "count", of: "product:", atMost: 1.5, per: { days: 0 }, source, fuss: 1 },
          ] as never,
        }),
      ),
    ).toEqual([
      "date proposal.date",
      "unit/mismatch proposal.amount",
      "conflict proposal.area",
      "missing limits[0].source",
      "range limits[0].amount.value",
      "type limits[0].per",
      "type limits[1].of",
      "unit/mismatch limits[1].atLeast",
      "type limits[2].fuss",
      "range limits[2].atMost",
      "substance/mismatch limits[2].of",
      "range limits[2].per.days",
    ]);
  });

  test("quantities and date objects go in as they are", () => {
    const date = { year: 2026, month: 6, day: 8, toString: () => "2026-06-08" };
    const result = checkLimits({
      proposal: { date, supplies: [quantity(39.06, "kg/ha", "N")] } as never,
      limits: [{ amount: quantity(0.8, "lb/1000 ft2", "N"), per: "application", source }],
    });
    expect(result.date).toBe("2026-06-08");
    // 39.06 kg/ha is 0.80001 lb/1000 ft2.
    expect(only(result).adds.value).toBeCloseTo(0.80001, 4);
    expect(complaints(() => ledger([{ id: "a", date } as never]))).toEqual(["type entries[0].date"]);
  });

  test("the result is plain data and says that no list of limits is complete", () => {
    const result = check([], { supplies: n(0.5, 0.2) });
    expect(result.notChecked.join()).toMatch(/none stated.*local codes may be stricter/);
    expect(JSON.parse(JSON.stringify(result)).type).toBe("limit-check");
  });
});

describe("what a ledger is read for", () => {
  const substances = [
    "N",
    "N:quick",
    "N:slow",
    "P",
    "P2O5",
    "K",
    "K2O",
    "NO3",
    "NO3-N",
    "Ca",
    "CaO",
    "ai:prodiamine",
  ];
  const entries = fc.array(
    fc.oneof(
      fc.record({
        supplies: fc
          .uniqueArray(fc.constantFrom("N", "P", "K2O", "NO3", "Ca", "ai:prodiamine"), {
            minLength: 1,
            maxLength: 3,
          })
          .map((names) => names.map((of, i) => lb(0.3 + 0.2 * i, of))),
      }),
      fc.record({
        analysis: fc.constantFrom("24-0-11", "10-10-10", "0-46-0"),
        product: fc.constantFrom("feed-a", "feed-b"),
        rate: fc.constantFrom({ value: 3, unit: "lb/1000 ft2" }, { value: 90, unit: "kg/ha" }),
      }),
    ),
    { maxLength: 8 },
  );
  const limits = fc.array(
    fc.tuple(
      fc.constantFrom(...substances, "product:feed-a"),
      fc.constantFrom<"calendar year" | { days: number }>("calendar year", { days: 40 }),
    ),
    { minLength: 1, maxLength: 5 },
  );

  test("a limit finds the same whatever other limits are asked beside it", () => {
    fc.assert(
      fc.property(entries, limits, (rows, asked) => {
        const season = rows.map((row, i) => ({
          id: `e${i}`,
          date: `2026-05-${10 + i}` as "2026-05-10",
          ...row,
        }));
        const stated = asked.map(([of, per]): Limit => ({ amount: lb(2, of), per, source }));
        const uses = (some: readonly Limit[]) =>
          check(some, { supplies: n(0.5) }, season).uses.map(({ path: _, ...use }) => use);
        expect(uses(stated)).toEqual(stated.flatMap((one) => uses([one])));
      }),
      runs(40),
    );
  });

  test("an entry of a class counts what its prototype gives, by hand: 1 + 0.5 lb", () => {
    class Fed {
      readonly id = "a";
      readonly date = "2026-05-10";
      get supplies() {
        return n(1);
      }
    }
    const season = { type: "ledger", version: 1, entries: [new Fed()] } as const;
    const limits: readonly Limit[] = [{ amount: lb(2, "N"), per: "calendar year", source }];
    const { uses } = checkLimits({
      ledger: season,
      limits,
      proposal: { date: "2026-06-08", supplies: n(0.5) },
    });
    expect(uses[0]?.after.in("lb/1000 ft2")).toBe(1.5);
  });
});
