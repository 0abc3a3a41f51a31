import { describe, expect, test } from "vitest";
import { ledger } from "../../../src/ledger/index.js";
import { schedule } from "../../../src/plan/index.js";

const book = ledger([
  { id: "a", date: "2026-03-01", treatment: "feed", parts: ["north pitch"] },
  { id: "b", date: "2026-03-20", treatment: "feed", parts: ["south pitch"] },
]);
const first = (parts: readonly string[] | undefined) => {
  const { visits } = schedule({
    season: { from: "2026-04-01", to: "2026-05-31" },
    treatments: [
      {
        id: "feed",
        ...(parts && { parts }),
        count: 1,
        interval: { minimumDays: 28, maximumDays: 45, source: "plan of the park (invented)" },
      },
    ],
    ledger: book,
  });
  return [visits[0]?.date, visits[0]?.applications[0]?.reapplyBy];
};

describe("what the ledger has of a treatment counts on the parts that it is planned for", () => {
  test("45 days after March 1 on the north pitch are April 15; the feed of the south pitch is another", () => {
    expect(first(["north pitch"])).toEqual(["2026-04-15", "2026-04-15"]);
  });

  test("45 days after March 20 on the south pitch, or on both, are May 4", () => {
    expect(first(["south pitch"])).toEqual(["2026-05-04", "2026-05-04"]);
    expect(first(["north pitch", "south pitch"])).toEqual(["2026-05-04", "2026-05-04"]);
    expect(first(undefined)).toEqual(["2026-05-04", "2026-05-04"]);
  });

  test("on a part that the ledger does not name it has not been done", () => {
    expect(first(["meadow"])).toEqual(["2026-04-01", null]);
  });

  test("of several parts that were not treated on one day it says so", () => {
    const told = (parts: readonly string[] | undefined, more: object = {}) =>
      schedule({
        season: { from: "2026-04-01", to: "2026-05-31" },
        treatments: [
          {
            id: "feed",
            ...(parts && { parts }),
            count: 1,
            interval: { minimumDays: 28, maximumDays: 45, source: "plan of the park (invented)" },
            ...more,
          },
        ],
        ledger: book,
      })
        .findings.filter(({ code }) => code === "schedule/parts-apart")
        .map(({ path, text }) => [path, text]);
    const apart = (words: string) => [
      [
        "treatments[0].parts",
        `feed: its parts were not last treated on the same day (${words}). The dates run from the latest; a part that is due sooner needs a treatment of its own.`,
      ],
    ];
    const both = apart("north pitch 2026-03-01, south pitch 2026-03-20");
    expect(told(["north pitch", "south pitch"])).toEqual(both);
    expect(told(undefined)).toEqual(both);
    expect(told(["north pitch", "meadow"])).toEqual(apart("north pitch 2026-03-01, meadow never"));
    expect(told(["north pitch"])).toEqual([]);
    // what the plan itself states counts on all of its parts
    expect(told(["north pitch", "south pitch"], { applied: ["2026-03-25"] })).toEqual([]);
  });
});

test("a limit that one part has used up holds nothing back on another: 1.8 + 0.5 lb on the south pitch, 0.5 on the north", () => {
  const n = (value: number) => ({ value, unit: "lb/1000 ft2" as const, of: "N" as const });
  const source = "plan of the park (invented)";
  const days = (parts: readonly string[]) =>
    schedule({
      season: { from: "2026-04-01", to: "2026-05-31" },
      limits: [{ kind: "amount", amount: n(2), per: "calendar year", source }],
      treatments: [{ id: "feed", parts, puts: { supplies: [n(0.5)] } }],
      ledger: ledger([{ id: "a", date: "2026-03-01", parts: ["south pitch"], supplies: [n(1.8)] as never }]),
    }).visits.map(({ date }) => date);
  expect(days(["north pitch"])).toEqual(["2026-04-01"]);
  expect(days(["south pitch"])).toEqual([]);
  expect(days(["north pitch", "south pitch"])).toEqual([]);
});
