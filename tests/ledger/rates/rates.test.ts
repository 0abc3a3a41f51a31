import { describe, expect, test } from "vitest";
import {
  addRates,
  amountOf,
  completeRates,
  isStated,
  slowShareOf,
  tellingOf,
} from "../../../src/ledger/house.js";
import { type LedgerEntry, ledger, ledgerTotals } from "../../../src/ledger/index.js";
import { type Quantity, quantityOf } from "../../../src/quantity/index.js";

type Rate = Quantity<"mass/area", string>;
const rate = (value: number, of: string, unit = "lb/acre"): Rate =>
  quantityOf(value, unit, of, "rate") as Rate;
const rates = (list: Readonly<Record<string, number>>, unit?: string) =>
  Object.fromEntries(Object.entries(list).map(([of, value]) => [of, rate(value, of, unit)]));
const values = (found: Readonly<Record<string, Rate>> | undefined) =>
  Object.fromEntries(Object.entries(found ?? {}).map(([of, q]) => [of, Number(q.value.toFixed(6))]));

// Molar masses: P2O5 141.943, 2 P 61.948; K2O 94.195, 2 K 78.197; MgO 40.304, Mg 24.305; NO3 62.004, N 14.007
const p = 61.948 / 141.943;

describe("nitrogen that is stated in part", () => {
  const n = (list: Readonly<Record<string, number>>) => {
    const { rates: found, completed } = completeRates(rates(list));
    return [values(found), completed];
  };

  test("is completed by hand: the rest is quick where nothing else is said", () => {
    expect(n({ N: 10 })).toEqual([{ N: 10, "N:quick": 10, "N:slow": 0 }, ["no slow stated"]]);
    expect(n({ N: 10, "N:slow": 4 })).toEqual([{ N: 10, "N:quick": 6, "N:slow": 4 }, []]);
    expect(n({ N: 10, "N:quick": 4 })).toEqual([{ N: 10, "N:quick": 4, "N:slow": 6 }, []]);
    expect(n({ N: 10, "N:quick": 4, "N:slow": 3 })).toEqual([
      { N: 10, "N:quick": 7, "N:slow": 3 },
      ["rest not stated"],
    ]);
    const { rates: nitrate } = completeRates(rates({ "NO3-N": 3 }));
    expect(values(nitrate)).toMatchObject({ N: 3, "N:quick": 3, "N:slow": 0 });
    for (const of of ["N", "N:quick", "N:slow"]) expect(nitrate[of]?.of).toBe(of);
    expect(n({ N: 10, "N:quick": 6, "N:slow": 4 })).toEqual([{ N: 10, "N:quick": 6, "N:slow": 4 }, []]);
    // More than the total is refused elsewhere; here nothing goes below zero
    expect(n({ N: 10, "N:slow": 11 })).toEqual([{ N: 10, "N:quick": 0, "N:slow": 11 }, []]);
    expect(n({ N: 10, "N:quick": 11 })).toEqual([{ N: 10, "N:quick": 11, "N:slow": 0 }, []]);
    expect(n({ N: 0 })).toEqual([{ N: 0, "N:quick": 0, "N:slow": 0 }, []]);
  });

  test("without a total is what its parts add up to; nitrate and ammonium are quick", () => {
    const none = ["no total stated"];
    expect(n({ "N:quick": 3, "N:slow": 2 })).toEqual([{ "N:quick": 3, "N:slow": 2, N: 5 }, none]);
    expect(n({ "N:slow": 2 })).toEqual([{ "N:slow": 2, N: 2, "N:quick": 0 }, none]);
    expect(n({ "NO3-N": 1, "NH4-N": 2 })).toEqual([
      { "NO3-N": 1, "NH4-N": 2, N: 3, "N:quick": 3, "N:slow": 0 },
      none,
    ]);
    expect(n({ "NH4-N": 2 })).toEqual([{ "NH4-N": 2, N: 2, "N:quick": 2, "N:slow": 0 }, none]);
    // The larger of what is called quick and of nitrate and ammonium
    expect(n({ "N:quick": 5, "NO3-N": 1, "NH4-N": 2 })[0]).toMatchObject({ N: 5 });
    expect(n({ "N:quick": 2, "NO3-N": 1, "NH4-N": 2 })[0]).toMatchObject({ N: 3, "N:quick": 3 });
    expect(n({ NO3: 62.004_9 })[0]).toMatchObject({ N: expect.closeTo(14.007, 3) });
    // Nitrate in both forms is one nitrate
    expect(n({ NO3: 62.0049, "NO3-N": 14 })[0]).toMatchObject({ N: 14 });
    expect(n({ P: 1 })[1]).toEqual([]);
  });

  test("units of the parts may differ from that of the total: 1 lb/acre is 1.121 kg/ha", () => {
    const { rates: found } = completeRates({
      N: rate(10, "N"),
      "N:slow": rate(4 * 1.120_851_156, "N:slow", "kg/ha"),
    });
    expect(found["N:quick"]?.value).toBeCloseTo(6, 7);
    expect(found["N:quick"]?.unit).toBe("lb/acre");
  });

  test("nothing is added but what is asked for, unless a figure is too large to leave", () => {
    const only = (asked: readonly string[], list: Readonly<Record<string, number>>) =>
      Object.keys(completeRates(rates(list), new Set(asked)).rates).sort();
    expect(only(["N"], { N: 10, P2O5: 1 })).toEqual(["N", "P2O5"]);
    expect(only(["N:quick"], { N: 10 })).toEqual(["N", "N:quick"]);
    expect(only(["N:slow", "P"], { N: 10, P2O5: 1, K2O: 1 })).toEqual(["K2O", "N", "N:slow", "P", "P2O5"]);
    expect(only(["N"], { N: 1e201 })).toEqual(["N", "N:quick", "N:slow"]);
    expect(only(["N"], { N: 1e200 })).toEqual(["N"]);
  });
});

describe("forms of a nutrient", () => {
  test("phosphorus and potassium stand in both", () => {
    expect(values(completeRates(rates({ P2O5: 10, K: 78.1966 })).rates)).toEqual({
      P2O5: 10,
      P: Number((10 * p).toFixed(6)),
      K: 78.1966,
      K2O: expect.closeTo(94.196, 2),
    });
  });

  test("one is found from the other, in the unit asked for", () => {
    const stated = rates({ P2O5: 10, Mg: 24.305 });
    expect(amountOf(stated, "P2O5", "lb/acre")).toBe(10);
    expect(amountOf(stated, "P", "lb/acre")).toBeCloseTo(10 * p, 6);
    expect(amountOf(stated, "MgO", "kg/ha")).toBeCloseTo(40.304 * 1.120_851, 2);
    expect([amountOf(stated, "K", "lb/acre"), amountOf(stated, "ai:prodiamine", "lb/acre")]).toEqual([0, 0]);
    expect(["P2O5", "P", "Mg", "MgO", "K", "N"].map((of) => isStated(stated, of))).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
    ]);
  });

  test("in a sum each form is all of the nutrient", () => {
    const sum = values(
      addRates([rates({ MgO: 40.304, N: 1 }), rates({ Mg: 24.305, N: 2 }), rates({ N: 4 })]),
    );
    expect(sum).toEqual({ MgO: expect.closeTo(80.608, 2), N: 7, Mg: expect.closeTo(48.61, 2) });
    expect(values(addRates([rates({ MgO: 3 }), rates({ MgO: 4 })]))).toEqual({ MgO: 7 });
    expect(addRates([])).toEqual({});
    const one = rates({ N: 1 });
    expect(addRates([one])).toBe(one);
  });

  test("that tell of one another are asked for together", () => {
    expect([...tellingOf(new Set(["P"]))].sort()).toEqual(["P", "P2O5"]);
    expect([...tellingOf(new Set(["ai:prodiamine"]))]).toEqual(["ai:prodiamine"]);
    expect(tellingOf(new Set(["NO3-N"])).has("NO3")).toBe(true);
  });
});

test("the slow share is that of all nitrogen, and of none there is none", () => {
  const share = (list: Readonly<Record<string, number>>) => slowShareOf(rates(list));
  expect(share({ N: 8, "N:slow": 2 })).toBe(25);
  expect(slowShareOf({ N: rate(10, "N"), "N:slow": rate(1.120_851_156, "N:slow", "kg/ha") })).toBeCloseTo(
    10,
    7,
  );
  expect([share({ N: 0, "N:slow": 0 }), share({ N: 8 }), share({ "N:slow": 8 }), share({})]).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

test("a season of entries that state different things in different units adds up: 1 + 1 + 2 lb of N", () => {
  const entry = (id: string, supplies: NonNullable<LedgerEntry["supplies"]>): LedgerEntry => ({
    id,
    date: "2026-05-01",
    supplies,
  });
  const one = { value: 1, unit: "lb/acre" };
  const season = ledger([
    entry("a", [{ ...one, of: "N" }]),
    entry("b", [{ value: 1.120_851_156, unit: "kg/ha", of: "N" }]),
    entry("c", [
      { value: 2, unit: "lb/acre", of: "N" },
      { ...one, of: "P2O5" },
    ]),
    entry("d", [{ ...one, of: "P2O5" }]),
    entry("e", [{ ...one, of: "P" }]),
    entry(
      "f",
      [
        { value: 1, unit: "lb/acre", of: "N" },
        { ...one, of: "N:slow" },
        { ...one, of: "N:quick" },
      ].slice(1),
    ),
  ]);
  const { supplies, applications } = ledgerTotals({ ledger: season, from: "2026-01-01", to: "2026-12-31" });
  expect(applications).toBe(6);
  expect(supplies.N?.in("lb/acre")).toBeCloseTo(6, 6);
  expect(supplies["N:slow"]?.in("lb/acre")).toBeCloseTo(1, 6);
  expect(supplies["N:quick"]?.in("lb/acre")).toBeCloseTo(5, 6);
  expect(supplies.P2O5?.in("lb/acre")).toBeCloseTo(2 + 1 / p, 6);
  expect(supplies.P?.in("lb/acre")).toBeCloseTo(2 * p + 1, 6);
});
