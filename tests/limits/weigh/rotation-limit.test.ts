import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { australianTurfFungicideLimits, checkLimits, type Limit, limit } from "../../../src/limits/index.js";
import { complaints } from "../../errors.js";

const source = "label (invented)";
const qoi = {
  kind: "rotation",
  group: "FRAC 11",
  of: ["ai:azoxystrobin", "ai:pyraclostrobin"],
  source,
} as const;
const spray = (date: string, name?: string) => ({
  date: date as LedgerEntry["date"],
  ...(name === undefined ? {} : { supplies: [{ value: 0.3, unit: "lb/acre", of: `ai:${name}` }] }),
});
const testOf = (rule: Limit, before: readonly (readonly [string, string?])[], date = "2026-06-01") => {
  const entries = before.map(([day, name], i) => ({ id: `e${i}`, ...spray(day, name) }));
  const check = checkLimits({
    ledger: ledger(entries),
    proposal: spray(date, "azoxystrobin"),
    limits: [rule],
  });
  const [test] = check.tests;
  return [test?.violated, test?.found, test?.earliestByStatedLimit];
};

describe("at most so many in a row", () => {
  const two = { ...qoi, atMostInARow: 2 } as const;

  test.each([
    ["the second", [["2026-05-01", "pyraclostrobin"]], [false, "with this one 2 in a row", "2026-06-01"]],
    [
      "the third",
      [
        ["2026-05-01", "azoxystrobin"],
        ["2026-05-15", "azoxystrobin"],
      ],
      [true, "with this one 3 in a row", null],
    ],
    [
      "the third, with another group between",
      [
        ["2026-05-01", "azoxystrobin"],
        ["2026-05-08", "chlorothalonil"],
        ["2026-05-15", "azoxystrobin"],
      ],
      [false, "with this one 2 in a row", "2026-06-01"],
    ],
    [
      "what went down later counts too",
      [
        ["2026-05-15", "azoxystrobin"],
        ["2026-06-15", "azoxystrobin"],
      ],
      [true, "with this one 3 in a row", null],
    ],
    [
      "two products on one day are one",
      [
        ["2026-05-15", "azoxystrobin"],
        ["2026-05-15", "pyraclostrobin"],
      ],
      [false, "with this one 2 in a row", "2026-06-01"],
    ],
  ] as const)("%s", (_, before, expected) => {
    expect(testOf(two, before)).toEqual(expected);
  });

  test("an entry that tells nothing leaves it open, unless the limit is violated all the same", () => {
    expect(testOf(two, [["2026-05-01", "azoxystrobin"], ["2026-05-08"]])[0]).toBe(null);
    expect(
      testOf(two, [["2026-05-01"], ["2026-05-08", "azoxystrobin"], ["2026-05-15", "azoxystrobin"]])[0],
    ).toBe(true);
  });

  test("with among, only the substances of the scheme end a run", () => {
    const among = { ...two, atMostInARow: 1, among: ["ai:chlorothalonil"] } as const;
    const between = (name: string) =>
      testOf(among, [
        ["2026-05-01", "azoxystrobin"],
        ["2026-05-08", name],
      ])[0];
    expect([between("chlorothalonil"), between("bifenthrin")]).toEqual([false, true]);
  });
});

describe("at most so many over a period", () => {
  test("in a year: the third waits for the next", () => {
    const yearly = { ...qoi, atMost: 2, per: "calendar year" } as const;
    const before = [
      ["2026-03-01", "azoxystrobin"],
      ["2026-04-01", "pyraclostrobin"],
    ] as const;
    expect(testOf(yearly, before)).toEqual([true, "with this one 3 in a calendar year", "2027-01-01"]);
    expect(testOf(yearly, before.slice(1))[0]).toBe(false);
  });

  test("in rolling days: the first day on which the oldest has left", () => {
    const rolling = { ...qoi, atMost: 1, per: { days: 30 } } as const;
    // 15 May counts up to 13 June: 30 days with both ends.
    expect(testOf(rolling, [["2026-05-15", "azoxystrobin"]])[2]).toBe("2026-06-14");
  });
});

test("nothing of the group is no matter of the limit", () => {
  const check = checkLimits({
    proposal: spray("2026-06-01", "chlorothalonil"),
    limits: [{ ...qoi, atMostInARow: 1 }],
  });
  expect(check.tests[0]?.violated).toBe(false);
});

test("a limit that states neither, or names no active ingredient, is refused", () => {
  expect(complaints(() => limit(qoi as Limit))).toEqual(["missing limit.atMost", "missing limit.per"]);
  expect(complaints(() => limit({ ...qoi, atMostInARow: 0, of: ["N"] }))).toEqual([
    "substance/mismatch limit.of[0]",
    "range limit.atMostInARow",
  ]);
});

test("Australian strategy: two QoI in a row are over it, the groups that it names are all there", () => {
  expect(australianTurfFungicideLimits.limits.map((one) => "group" in one && one.group)).toEqual(
    ["1", "2", "4", "7", "11", "21"].map((group) => `FRAC ${group}`),
  );
  const check = checkLimits({
    ledger: ledger([{ id: "a", ...spray("2026-05-15", "azoxystrobin") }]),
    proposal: spray("2026-06-01", "azoxystrobin"),
    limits: australianTurfFungicideLimits.limits,
  });
  expect(check.findings.filter(({ code }) => code === "limit/rotation")).toHaveLength(1);
});
