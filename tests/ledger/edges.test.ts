import { describe, expect, test } from "vitest";
import {
  areaRatesOf,
  type HistoryRow,
  historyOf,
  joinedHistory,
  suppliedRates,
} from "../../src/ledger/house.js";
import { ledger, type ResistanceCodeList, resistanceRotation } from "../../src/ledger/index.js";
import { fertilizer } from "../../src/nutrient/index.js";
import { quantityOf } from "../../src/quantity/index.js";
import { complaints } from "../errors.js";

describe("an element beside its oxide", () => {
  const entry = (element: number, oxide: number) =>
    complaints(() =>
      ledger([
        {
          id: "a",
          date: "2026-04-20",
          supplies: [
            { value: element, unit: "lb/acre", of: "P" },
            { value: oxide, unit: "lb/acre", of: "P2O5" },
          ],
        },
      ]),
    );

  test("agrees within 3 %, whatever the size", () => {
    // P2O5 / P = 141.94 / 61.95 = 2.2914: 10 lb are 22.9 lb. 3 % of the larger one is 0.7.
    expect([entry(10, 22.9), entry(10, 23.5), entry(10, 22.3)]).toEqual([[], [], []]);
    expect([entry(10, 23.8), entry(10, 22), entry(0.1, 0.1)]).toEqual(
      Array(3).fill(["conflict entries[0].supplies"]),
    );
  });
});

describe("the parts of an entry", () => {
  const parts = (list: readonly unknown[]) =>
    complaints(() => ledger([{ id: "a", date: "2026-04-20", parts: list as never }]));

  test("are names, each once", () => {
    expect(parts(["north", "south"])).toEqual([]);
    expect(parts(["north", "south", "north"])).toEqual(["duplicate entries[0].parts[2]"]);
    expect(parts(["north", 7])).toEqual(["type entries[0].parts[1]"]);
  });
});

describe("two histories as one", () => {
  const row = (date: HistoryRow["date"], parts: readonly string[] = []): HistoryRow => ({
    date,
    from: date,
    parts,
    products: [],
    productRates: [],
    rates: undefined,
  });
  const none = historyOf({ dates: [], parts: () => [], row: () => row("2026-01-01") });
  test("one alone shows a part what touched it, and not what touched another", () => {
    const rows = [row("2026-05-01", ["south"]), row("2026-05-02"), row("2026-05-03", ["north"])];
    const history = historyOf({
      dates: rows.map(({ date }) => date),
      parts: (i) => rows[i]?.parts ?? [],
      row: (i) => rows[i] as HistoryRow,
    });
    const days: string[] = [];
    history.visit("north", "2026-04-30", ({ date }) => days.push(date));
    expect(days).toEqual(["2026-05-02", "2026-05-03"]);
  });

  const seen = (part: string, from: HistoryRow["date"]) => {
    const days: string[] = [];
    joinedHistory(none, [
      row("2026-05-03", ["north"]),
      row("2026-05-01", ["south"]),
      row("2026-05-02"),
      row("2026-04-30", ["north"]),
    ]).visit(part, from, ({ date }) => days.push(date));
    return days;
  };

  test("shows a part what went down on it or on all of the site, from the day on, by date", () => {
    expect(seen("north", "2026-05-01")).toEqual(["2026-05-02", "2026-05-03"]);
    expect(seen("north", "2026-04-30")).toEqual(["2026-04-30", "2026-05-02", "2026-05-03"]);
    expect(seen("south", "2026-04-30")).toEqual(["2026-05-01", "2026-05-02"]);
  });
});

describe("what a rate supplies", () => {
  test("is the nutrients that were asked for", () => {
    const rates = areaRatesOf(quantityOf(200, "lb/acre", "product:feed", "rate"), undefined);
    const product = fertilizer({ id: "feed", form: "dry", analysis: "20-0-10" });
    const of = suppliedRates({ fertilizer: product }, rates, new Map(), new Set(["N"]));
    // 200 lb of 20 % are 40 lb.
    expect(Object.keys(of ?? {})).toEqual(["N"]);
    expect(of?.N?.value).toBeCloseTo(40, 12);
  });
});

describe("codes of resistance", () => {
  const own = (
    scheme: ResistanceCodeList["scheme"],
    groups: ResistanceCodeList["groups"],
  ): ResistanceCodeList => ({
    type: "resistance-code-list",
    version: 1,
    scheme,
    source: "invented",
    reached: "stated by the caller",
    groups,
    multiSite: [],
  });

  test("one scheme does not shut out another, nor a second group of one list", () => {
    const { groups } = resistanceRotation({
      ledger: ledger([{ id: "a", date: "2026-05-01", activeIngredient: "azoxystrobin" }]),
      from: "2026-01-01",
      to: "2026-12-31",
      codeLists: [
        own("IRAC", { "98": ["azoxystrobin"] }),
        own("HRAC", { "97": ["azoxystrobin"], "96": ["azoxystrobin"] }),
      ],
    });
    expect(groups.map(({ scheme, group }) => `${scheme} ${group}`).sort()).toEqual([
      "FRAC 11",
      "HRAC 96",
      "HRAC 97",
      "IRAC 98",
    ]);
  });
});
