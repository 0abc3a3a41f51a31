import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type LedgerEntry,
  ledger,
  type ResistanceCodeList,
  resistanceCodeLists,
  resistanceRotation,
} from "../../../src/ledger/index.js";
import { complaints } from "../../errors.js";
import { rotationChecks } from "../../published/rotation.js";

const year = { from: "2026-01-01", to: "2026-12-31" } as const;
const spray = (date: string, activeIngredient: string, more: Partial<LedgerEntry> = {}): LedgerEntry => ({
  id: `${date} ${activeIngredient}`,
  date: date as LedgerEntry["date"],
  activeIngredient,
  ...more,
});
const rotationOf = (entries: readonly LedgerEntry[], more: object = {}) =>
  resistanceRotation({ ledger: ledger(entries), ...year, ...more });
const groupOf = (result: ReturnType<typeof rotationOf>, group: string) =>
  [...result.groups, ...result.multiSite].find((use) => use.group === group);

describe("resistanceRotation", () => {
  // By hand: 11, 11+3, M05, 3, 11 on five days.
  const season = [
    spray("2026-05-01", "azoxystrobin"),
    spray("2026-05-15", "azoxystrobin; propiconazole"),
    spray("2026-05-29", "chlorothalonil"),
    spray("2026-06-12", "tebuconazole"),
    spray("2026-06-26", "pyraclostrobin"),
  ];

  test("counts, shares, runs and days by hand", () => {
    const result = rotationOf(season, { on: "2026-07-01" });
    const of = (group: string) => {
      const use = groupOf(result, group);
      return [use?.applications, use?.alone, use?.share.value, use?.longestRun.applications, use?.daysSince];
    };
    expect(of("11")).toEqual([3, 2, 60, 2, 5]);
    expect(of("3")).toEqual([2, 1, 40, 1, 19]);
    expect(of("M05")).toEqual([1, 1, 20, 1, 33]);
    expect(result.multiSite.map(({ group }) => group)).toEqual(["M05"]);
    expect(groupOf(result, "11")?.actives).toEqual(["azoxystrobin", "pyraclostrobin"]);
    expect(groupOf(result, "11")?.longestRun).toEqual({
      applications: 2,
      from: "2026-05-01",
      to: "2026-05-15",
    });
  });

  test("an application of many sites ends a run; one of another scheme does not", () => {
    const twice = (between: string) =>
      groupOf(
        rotationOf([
          spray("2026-05-01", "azoxystrobin"),
          spray("2026-05-08", between),
          spray("2026-05-15", "azoxystrobin"),
        ]),
        "11",
      )?.longestRun.applications;
    expect([twice("chlorothalonil"), twice("bifenthrin"), twice("2,4-D")]).toEqual([1, 2, 2]);
  });

  test("what goes down on one day is one application, in as many products as it comes", () => {
    const result = rotationOf([spray("2026-05-01", "azoxystrobin"), spray("2026-05-01", "propiconazole")]);
    expect(result.groups.map((use) => [use.group, use.applications, use.alone, use.share.value])).toEqual([
      ["11", 1, 0, 100],
      ["3", 1, 0, 100],
    ]);
  });

  test("contents and supplies tell, and the field names what they do not", () => {
    const content = { value: 22.9, unit: "% w/w", of: "ai:azoxystrobin/product" };
    const supply = { value: 1, unit: "lb/acre", of: "ae:2,4-D" };
    const result = rotationOf([
      spray("2026-05-01", "iprodione", { contents: [content] }),
      { id: "b", date: "2026-05-02", supplies: [supply, { ...supply, value: 0, of: "ai:dicamba" }] },
    ]);
    expect(result.groups.map(({ scheme, group, actives }) => [scheme, group, actives])).toEqual([
      ["FRAC", "11", ["azoxystrobin"]],
      ["FRAC", "2", ["iprodione"]],
      ["HRAC", "4", ["2,4-d"]],
    ]);
  });

  test("planned applications count, and days since only up to the day asked for", () => {
    const planned = [{ date: "2026-08-01", actives: ["Azoxystrobin"] }] as const;
    const result = resistanceRotation({ planned, ...year, on: "2026-07-01" });
    expect([groupOf(result, "11")?.applications, groupOf(result, "11")?.daysSince]).toEqual([1, null]);
  });

  test("other parts, other years and corrected entries do not count", () => {
    const on = { parts: ["green"] };
    const result = rotationOf(
      [
        spray("2026-05-01", "azoxystrobin", on),
        spray("2026-05-02", "azoxystrobin", { parts: ["fairway"] }),
        spray("2025-05-01", "azoxystrobin", on),
        spray("2026-05-03", "azoxystrobin", { ...on, id: "x" }),
        spray("2026-05-03", "propiconazole", { ...on, id: "y", corrects: "x" }),
        spray("2026-05-04", "azoxystrobin"),
      ],
      { part: "green" },
    );
    expect(result.groups.map((use) => [use.group, use.applications])).toEqual([
      ["11", 2],
      ["3", 1],
    ]);
  });

  test("what has no code, and what states nothing, is told", () => {
    const result = rotationOf([
      spray("2026-05-01", "unheard-of"),
      { id: "bare", date: "2026-05-02" },
      { id: "feed", date: "2026-05-03", analysis: "24-0-11" },
    ]);
    expect([result.withoutCode, result.notCounted, result.groups]).toEqual([["unheard-of"], ["bare"], []]);
  });

  test("a list of the caller wins over those that are shipped", () => {
    const own: ResistanceCodeList = {
      type: "resistance-code-list",
      version: 1,
      scheme: "FRAC",
      source: "the label of the park's product (invented)",
      reached: "stated by the caller",
      groups: { "99": ["azoxystrobin"] },
      multiSite: [],
    };
    const result = rotationOf(season, { codeLists: [own] });
    expect(groupOf(result, "99")?.applications).toBe(2);
    expect(groupOf(result, "11")?.actives).toEqual(["pyraclostrobin"]);
  });

  test("runs and shares as a count by brute force", () => {
    const names = ["azoxystrobin", "propiconazole", "chlorothalonil", "bifenthrin"] as const;
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...names), { minLength: 1, maxLength: 12 }), (list) => {
        const entries = list.map((name, i) => spray(`2026-05-${String(i + 1).padStart(2, "0")}`, name));
        const fungicides = list.filter((name) => name !== "bifenthrin");
        const use = groupOf(rotationOf(entries), "11");
        const mine = fungicides.filter((name) => name === "azoxystrobin").length;
        expect(use?.applications ?? 0).toBe(mine);
        if (use === undefined) return;
        expect(use.share.value).toBeCloseTo((100 * mine) / fungicides.length, 9);
        const runs = fungicides.map((name) => (name === "azoxystrobin" ? "x" : ".")).join("");
        expect(use.longestRun.applications).toBe(Math.max(...runs.split(".").map((run) => run.length)));
      }),
    );
  });

  test("tells all that is wrong", () => {
    expect(complaints(() => resistanceRotation({ from: "2026-02-30", to: 3, of: 1 } as never))).toEqual([
      "type input.of",
    ]);
    expect(complaints(() => resistanceRotation({ from: "2026-02-30", to: 3 } as never))).toEqual([
      "date from",
      "date to",
    ]);
    expect(complaints(() => resistanceRotation({ ...year, from: "2027-01-01" } as never))).toEqual([
      "date to",
    ]);
  });
});

describe("resistanceCodeLists", () => {
  // General properties and use of fungicides, Turfgrass Pest Management Guidelines, University of California IPM:
  // the mode of action column. It prints M4 and M5 without the zero that the committee writes.
  test.each([
    ["azoxystrobin", "11"],
    ["captan", "M04"],
    ["chlorothalonil", "M05"],
    ["fludioxonil", "12"],
  ])("%s is %s, as the turf guideline of the University of California prints it", (name, group) => {
    const [frac] = resistanceCodeLists.filter(({ scheme }) => scheme === "FRAC");
    expect(Object.entries(frac?.groups ?? {}).find(([, names]) => names.includes(name))?.[0]).toBe(group);
  });

  test("no active ingredient stands in two groups of one scheme", () => {
    for (const scheme of ["FRAC", "HRAC", "IRAC"]) {
      const lists = resistanceCodeLists.filter((list) => list.scheme === scheme);
      const names = lists.flatMap(({ groups }) => Object.values(groups).flat());
      expect(new Set(names).size).toBe(names.length);
    }
  });

  test("each name of a list that was read is printed in a source of the published checks, and no other", () => {
    const printed = rotationChecks
      .flatMap(({ answers }) => answers.map(({ of }) => of ?? ""))
      .flatMap((of) => of.replace(/^group of |^in IRAC group [0-9A-Z]+: /, "").split(", "));
    const named = (reached: string): readonly string[] =>
      resistanceCodeLists
        .filter((list) => list.reached === reached)
        .flatMap(({ groups }) => Object.values(groups).flat());
    // Fosetyl is printed as its aluminium salt.
    expect(named("read").filter((name) => !printed.includes(name))).toEqual(["fosetyl"]);
    expect(printed).toContain("fosetyl-aluminium");
    expect(named("from memory").filter((name) => printed.includes(name))).toEqual([]);
  });
});
