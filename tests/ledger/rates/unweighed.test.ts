import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger, ledgerTotals } from "../../../src/ledger/index.js";
import { checkLimits, type Limit, type Proposal } from "../../../src/limits/index.js";
import { type Job, workOrderText } from "../../../src/plan/index.js";
import { asJson, problemsOf, smallJob, soundOrder } from "../../plan/helpers.js";

/** A liquid that feeds, poured by volume; a content by weight and one per volume. */
const liquid = {
  id: "liq",
  form: "liquid",
  formulation: "EC",
  analysis: "20-0-0",
  contents: [
    { value: 65, unit: "% w/w", of: "ai:2,4-D/product" },
    { value: 120, unit: "g/L", of: "ai:mecoprop-P/product" },
  ],
} as const;

const rate = { value: 2, unit: "gal/acre", of: "product" };

const acre = (product: object, more: Partial<Job> = {}): Job =>
  smallJob({
    site: { name: "Pitch", parts: [{ name: "pitch", shape: "measured", area: { value: 1, unit: "acre" } }] },
    products: [product as typeof liquid],
    sprayer: {
      tank: { value: 50, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
    },
    treatments: [{ id: "feed", method: "spray", parts: ["pitch"], mix: [{ product: "liq", rate }] }],
    ...more,
  } as Partial<Job>);

const most = (value: number, of: string, per: "application" | "calendar year" = "application") => ({
  amount: { value, unit: "lb/acre", of },
  per,
  source: "plan",
});

describe("what could not be weighed", () => {
  const limits = [
    most(1, "N"),
    most(1, "ai:2,4-D"),
    most(2, "ai:mecoprop-P"),
    most(1, "product:liq"),
    { kind: "count", of: "N", atMost: 1, per: "calendar year", source: "plan" },
    { kind: "interval", of: "ai:2,4-D", atLeastDays: 60, source: "plan" },
    most(1, "P2O5"),
  ] as Job["limits"];
  const log = [{ date: "2026-04-20", parts: ["pitch"], product: "liq", rate }] as Job["log"];
  const account = (product: object, more: Partial<Job> = {}) =>
    asJson(acre(product, { limits: limits as never, log: log as never, ...more })).nutrients[0];

  test("is never taken for none: the limit is not known to be kept", () => {
    const uses = account(liquid)?.limits ?? [];
    const of = (name: string) => uses.find((use) => use.limit.of === name && use.limit.kind === "amount");
    expect(["N", "ai:2,4-D", "product:liq"].map((name) => of(name)?.violated)).toEqual([null, null, null]);
    expect(["N", "ai:2,4-D", "product:liq"].map((name) => of(name)?.earliestByStatedLimit)).toEqual([
      null,
      null,
      null,
    ]);
    // It holds no phosphorus by its label, whatever it weighs.
    expect(of("P2O5")?.violated).toBe(false);
    expect(account(liquid)?.unweighed).toEqual(["N", "N:quick", "ai:2,4-D"]);
  });

  test("a content per volume is counted though the one beside it cannot be", () => {
    // 2 gal/acre x 3.785411784 L/gal x 120 g/L = 908.49882816 g/acre; / 453.59237 = 2.0029 lb/acre.
    const use = account(liquid)?.limits.find(({ limit }) => limit.of === "ai:mecoprop-P");
    expect(use?.adds.value).toBeCloseTo(2.0029, 4);
    expect(use?.violated).toBe(true);
  });

  test("it is an application all the same: counts and intervals find it", () => {
    const one = account(liquid);
    const count = one?.limits.find(({ limit }) => limit.kind === "count");
    expect([count?.before.value, count?.adds.value, count?.violated]).toEqual([1, 1, true]);
    // 20 April and 60 days is 19 June.
    const [interval] = one?.tests ?? [];
    expect([interval?.violated, interval?.earliestByStatedLimit]).toEqual([true, "2026-06-19"]);
  });

  test("with a density everything is weighed", () => {
    // 2 gal x 3.785411784 L x 1.2 kg/L = 9.0849882816 kg; 20 % of it, in lb: 4.0058.
    const use = account({ ...liquid, density: { value: 1.2, unit: "kg/L" } })?.limits[0];
    expect(use?.adds.value).toBeCloseTo(4.0058, 4);
    expect(use?.violated).toBe(true);
  });

  test("in the log it leaves the limit of a year unknown, and what is known may break it alone", () => {
    const year = [most(3, "N", "calendar year")] as Job["limits"];
    const dry = { id: "feed-b", form: "dry", analysis: "24-0-11" } as const;
    const job = (lb: number): Job =>
      acre(liquid, {
        products: [liquid, dry],
        limits: year as never,
        log: log as never,
        treatments: [
          {
            id: "feed",
            method: "spread",
            product: "feed-b",
            parts: ["pitch"],
            target: { value: lb, unit: "lb/acre", of: "N" },
          },
        ],
      });
    const violated = (lb: number) => asJson(job(lb)).nutrients[0]?.limits[0]?.violated;
    expect(violated(1)).toBeNull();
    expect(violated(3.1)).toBe(true);
  });

  test("a finding says so, on the limits that it leaves open and no others", () => {
    const found = (product: typeof liquid): readonly (readonly [string, string | undefined])[] =>
      soundOrder(acre(product, { limits: limits as never }))
        .findings.filter(({ code }) => code.startsWith("limit/"))
        .map(({ code, severity }) => [code, severity] as const);
    const open = account(liquid)?.limits.filter(({ violated }) => violated === null).length ?? 0;
    expect(open).toBeGreaterThan(0);
    expect(found(liquid).filter(([code]) => code === "limit/not-known")).toEqual(
      Array(open).fill(["limit/not-known", "caution"]),
    );
    const weighed = { ...liquid, density: { value: 1.2, unit: "kg/L" } } as typeof liquid;
    expect(found(weighed).map(([code]) => code)).not.toContain("limit/not-known");
  });

  test("the sheet says so where the figure stands", () => {
    const sheet = workOrderText(soundOrder(acre(liquid, { limits: limits as never })), {
      copy: "office",
    }).replace(/\s+/g, " ");
    expect(sheet).toContain("N in one application: 0 of 1 lb per acre, plus some that could not be counted");
    expect(sheet).toContain("The true total of N, quick-release N, ai:2,4-D is higher");
    expect(sheet).not.toContain("N in one application: 0 of 1 lb per acre, 1 left");
  });

  test("a proposal that cannot be weighed, by its label", () => {
    const check = checkLimits({
      ledger: ledger([]),
      proposal: { date: "2026-05-04", analysis: "20-0-0", form: "liquid", rate },
      limits: [most(1, "N"), { kind: "interval", of: "N", atLeastDays: 30, source: "plan" }],
    });
    expect(check.uses[0]?.violated).toBeNull();
  });
});

describe("packages and amounts that differ in kind", () => {
  const spray = (product: object) => asJson(acre({ ...liquid, contents: undefined, ...product }));

  test("a weight on the jug is met through the density", () => {
    // 2 gal x 3.785411784 L x 1.2 kg/L = 9.0849882816 kg, of 20 kg: 10.9150117184 kg are left.
    const kg = spray({ density: { value: 1.2, unit: "kg/L" }, package: { value: 20, unit: "kg" } });
    const found = kg.sprays[0]?.products[0]?.packages;
    expect(found?.count).toBe(1);
    expect(found?.leftOver.unit).toBe("kg");
    expect(found?.leftOver.value).toBeCloseTo(10.9150117184, 9);
  });

  test("without a density the order says that the packages are not told", () => {
    const order = spray({ package: { value: 20, unit: "kg" } });
    expect(order.sprays[0]?.products[0]?.packages).toBeUndefined();
    expect(order.notChecked).toContain(
      "liq: how many packages, because it is sold by weight and measured by volume, and no density is stated.",
    );
  });
});

test("magnesium adds up with magnesia: Mg 24.305, MgO 40.304", () => {
  const product = (id: string, of: "Mg" | "MgO") =>
    ({ id, form: "dry", analysis: { basis: "oxide", percent: { [of]: 10 } } }) as const;
  const put = (id: string) =>
    ({ id, method: "spread", product: id, rate: { value: 10, unit: "g/m2", of: "product" } }) as const;
  const account = asJson(
    smallJob({
      products: [product("mg", "Mg"), product("mgo", "MgO")],
      treatments: [put("mg"), put("mgo")],
      limits: [
        { amount: { value: 1.5, unit: "g/m2", of: "Mg" }, per: "application", source: "plan" },
        { amount: { value: 2.6, unit: "g/m2", of: "MgO" }, per: "application", source: "plan" },
      ],
    }),
  ).nutrients[0];
  // 1 g of Mg, and 1 g of MgO x 24.305 / 40.304 = 0.60304 g; the other way round 1.65826 + 1.
  expect(account?.limits.map(({ adds }) => Number(adds.value.toFixed(5)))).toEqual([1.60304, 2.65826]);
  expect(account?.limits.map(({ violated }) => violated)).toEqual([true, true]);
  expect(Number(account?.visitTotal.Mg?.value.toFixed(5))).toBe(1.60304);
});

test("an entry of the log on the day of the visit does not hide the heat since the time before", () => {
  const order = asJson(
    smallJob({
      date: "2026-05-04",
      log: [
        { date: "2026-04-30", product: "feed-a", rate: { value: 3, unit: "lb/1000 ft2", of: "product" } },
        { date: "2026-05-04", product: "feed-a", rate: { value: 3, unit: "lb/1000 ft2", of: "product" } },
      ],
      treatments: [
        {
          id: "feed",
          method: "spread",
          product: "feed-a",
          target: { value: 0.5, unit: "lb/1000 ft2", of: "N" },
          degreeDays: {
            method: "simple average",
            base: { value: 0, unit: "°C" },
            interval: { value: 25, unit: "°C d" },
            source: "s",
          },
        },
      ],
      temperatures: {
        type: "daily-temperatures",
        version: 1,
        start: "2026-04-25",
        unit: "°C",
        sensor: "air",
        min: Array(20).fill(5),
        max: Array(20).fill(15),
        source: "s",
      },
    }),
  );
  // 10 °C d a day, from 1 May on: 30 are reached at the end of 3 May.
  const [repeat] = order.repeats;
  expect([repeat?.degreeDaysBefore?.from, repeat?.degreeDaysBefore?.runsOut]).toEqual([
    "2026-04-30",
    "2026-05-03",
  ]);
  expect(order.findings.map(({ code }) => code)).toContain("degree-days/expired-before");
});

test("a product that is itself at fault brings no second problem about its mix", () => {
  expect(problemsOf(acre({ ...liquid, formulation: "SC" }))).toEqual(["type products[0].formulation"]);
});

test("an entry that names no product does not tell of a limit on one, and the order says so", () => {
  const order = asJson(
    smallJob({
      log: [{ date: "2026-04-20", nutrients: [{ value: 1, unit: "lb/1000 ft2", of: "N" }] }],
      limits: [
        {
          amount: { value: 9, unit: "lb/1000 ft2", of: "product:feed-a" },
          per: "calendar year",
          source: "plan",
        },
        { kind: "interval", of: "product:feed-a", atLeastDays: 30, source: "plan" },
      ],
    }),
  );
  expect(order.notChecked.filter((text) => text.includes("product:feed-a applied on"))).toHaveLength(1);
  expect(order.nutrients[0]?.tests[0]?.violated).toBeNull();
});

test("nitrogen that is stated as neither quick- nor slow-release counts as quick-release: 1 lb less 0.2 lb slow is 0.8 lb", () => {
  const n = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
  const order = asJson(
    smallJob({
      log: [{ date: "2026-04-20", nutrients: [n(1, "N"), n(0.3, "N:quick"), n(0.2, "N:slow")] }],
    }),
  );
  expect(order.nutrients[0]?.yearSoFar["N:quick"]?.value).toBeCloseTo(0.8, 12);
  expect(order.findings.map(({ code }) => code)).toContain("nitrogen/rest-not-stated");
  const whole = [n(1, "N"), n(0.8, "N:quick"), n(0.2, "N:slow")];
  const sound = asJson(smallJob({ log: [{ date: "2026-04-20", nutrients: whole }] }));
  expect(sound.findings.map(({ code }) => code)).not.toContain("nitrogen/rest-not-stated");
});

test("a part that the visit does not touch gets none of a product, and that is known", () => {
  const part = (name: string) => ({ name, shape: "measured", area: { value: 900, unit: "m2" } }) as const;
  const order = asJson(
    smallJob({
      site: { name: "Park", parts: [part("green"), part("verge")] },
      treatments: [
        {
          id: "feed",
          method: "spread",
          product: "feed-a",
          parts: ["green"],
          rate: { value: 3, unit: "lb/1000 ft2", of: "product" },
        },
      ],
      limits: [
        {
          amount: { value: 2, unit: "lb/1000 ft2", of: "product:feed-a" },
          per: "application",
          source: "plan",
        },
      ],
    }),
  );
  expect(order.nutrients.map(({ part: name, limits }) => [name, limits[0]?.violated])).toEqual([
    ["green", true],
    ["verge", false],
  ]);
});

describe("limits put to a ledger, where some of it cannot be weighed", () => {
  const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
  const source = "plan of the park (invented)";
  // A liquid by volume without a density: 20 % of N by weight, of an unknown weight.
  const liquid = { form: "liquid", analysis: "20-20-20", rate: { value: 3, unit: "gal/acre" } } as const;
  const only = (
    limit: Limit,
    proposal: Omit<Proposal, "date"> & { date?: Proposal["date"] },
    entries: readonly LedgerEntry[],
  ) => {
    const check = checkLimits({
      ledger: ledger(entries),
      proposal: { date: "2026-06-08", ...proposal },
      limits: [limit],
    });
    expect(check.uses).toHaveLength(1);
    return { ...(check.uses[0] as (typeof check.uses)[number]), notChecked: check.notChecked };
  };
  const monthly: Limit = { amount: lb(1, "N"), per: { days: 30 }, source };

  test("any stretch that holds the day may be fuller by it, not only the fullest of what is known", () => {
    // 22 May to 20 June holds 0.4 lb; 10 May to 8 June holds what could not be weighed.
    const use = only(monthly, { supplies: [lb(0.5, "N")] }, [
      { id: "a", date: "2026-05-15", ...liquid },
      { id: "b", date: "2026-06-20", supplies: [lb(0.4, "N")] },
    ]);
    expect([use.from, use.to, use.before.value]).toEqual(["2026-05-22", "2026-06-20", 0.4]);
    expect([use.violated, use.earliestByStatedLimit]).toEqual([null, null]);
  });

  test("a later one of unknown amount counts as well, until no stretch holds both", () => {
    const violated = (date: Proposal["date"]) =>
      only(monthly, { date, supplies: [lb(0.5, "N")] }, [{ id: "a", date: "2026-06-20", ...liquid }])
        .violated;
    // 22 May to 20 June are 30 days, 21 May to 20 June 31.
    expect([violated("2026-05-22"), violated("2026-05-21")]).toEqual([null, false]);
    expect([violated("2026-07-19"), violated("2026-07-20")]).toEqual([null, false]);
  });

  test("no first day is named in a year of which not all is known", () => {
    const use = only({ amount: lb(3, "N"), per: "calendar year", source }, { supplies: [lb(0.5, "N")] }, [
      { id: "a", date: "2026-04-01", supplies: [lb(3, "N")] },
      { id: "b", date: "2027-02-01", ...liquid },
    ]);
    expect([use.violated, use.earliestByStatedLimit]).toEqual([true, null]);
  });

  test("an active ingredient per volume counts beside an analysis that cannot be weighed", () => {
    const entry = { ...liquid, contents: [{ value: 1, unit: "lb/gal", of: "ai:prodiamine/product" }] };
    const limit: Limit = {
      amount: { value: 4, unit: "lb/acre", of: "ai:prodiamine" },
      per: "calendar year",
      source,
    };
    // 3 gal/acre at 1 lb/gal is 3 lb/acre, twice is 6.
    const use = only(limit, entry, [{ id: "a", date: "2026-05-20", ...entry }]);
    expect([use.before.value, use.adds.value, use.after.value].map((x) => x.toFixed(9))).toEqual([
      "3.000000000",
      "3.000000000",
      "6.000000000",
    ]);
    expect(use.violated).toBe(true);
    const totals = ledgerTotals({
      ledger: ledger([{ id: "a", date: "2026-05-20", ...entry }]),
      from: "2026-01-01",
      to: "2026-12-31",
    });
    expect(totals.supplies["ai:prodiamine"]?.in("lb/acre")).toBeCloseTo(3, 9);
    expect(totals.notCounted).toEqual(["a"]);
  });

  test("what is proposed counts as an application where its amount is not known", () => {
    const count = (of: string): Limit => ({ kind: "count", of, atMost: 1, per: { days: 30 }, source });
    const entry = { id: "a", date: "2026-06-01", supplies: [lb(0.5, "N")] } as const;
    const use = only(count("N"), liquid, [entry]);
    expect([use.before.value, use.adds.value, use.violated]).toEqual([1, 1, true]);
    expect(only(count("P"), liquid, []).adds.value).toBe(1);
    expect(use.notChecked[0]).toBe(
      "How much the application supplies of N, P2O5, K2O, N:quick: it could not be weighed.",
    );
  });

  test("a label that states no nitrogen has none, whether it can be weighed or not", () => {
    const use = only(monthly, { ...liquid, analysis: "0-0-22" }, []);
    expect([use.adds.value, use.violated]).toEqual([0, false]);
  });
});
