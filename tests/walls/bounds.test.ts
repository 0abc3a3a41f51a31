import { describe, expect, it } from "vitest";
import { dailyTemperatures } from "../../src/calendar/index.js";
import {
  accumulatedDegreeDays,
  dateReached,
  degreeDayAmount,
  degreeDayModel,
} from "../../src/interval/index.js";
import { ledger, ledgerFromCsv, standingEntries } from "../../src/ledger/index.js";
import { limit } from "../../src/limits/index.js";
import {
  expectAmount,
  expectNumber,
  expectQuantity,
  quantity,
  rangeProblem,
} from "../../src/quantity/index.js";
import { complaints } from "../errors.js";

// What has no end is refused before it is walked, and what was read is the reader's own.

describe("a year that was mistyped", () => {
  const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
  const series = dailyTemperatures({
    start: "2026-05-01",
    unit: "°C",
    sensor: "air",
    source: "station at the depot",
    min: [10, 11],
    max: [20, 21],
  });

  it("is refused where a sum would go over more than a century", () => {
    const asked = { series, model, missing: "leave out" } as const;
    expect(
      complaints(() => accumulatedDegreeDays({ ...asked, from: "2026-05-01", to: "9999-12-31" })),
    ).toEqual(["range from"]);
    const threshold = degreeDayAmount({ value: 100, unit: "°C d", model });
    expect(complaints(() => dateReached({ ...asked, from: "0001-01-01", threshold }))).toEqual([
      "range from",
    ]);
    const { daily } = accumulatedDegreeDays({ ...asked, from: "1926-05-03", to: "2026-05-02" });
    expect(daily.length).toBe(36_525);
  });
});

describe("an expectation that is no record", () => {
  const text = "a".repeat(1_000_000) as never;

  it("is refused, and not walked letter by letter", () => {
    expect(complaints(() => expectNumber(3, "width", text))).toEqual(["type bounds"]);
    expect(complaints(() => expectQuantity(quantity(3, "lb"), text, "feed"))).toEqual([
      "missing expected.dimension",
    ]);
    expect(complaints(() => expectAmount(quantity(3, "lb"), text, "feed"))).toEqual([
      "missing expected.dimensions",
    ]);
  });
});

describe("a limit that was read", () => {
  it("is a record of its own", () => {
    const own = {
      amount: { value: 3, unit: "lb/acre", of: "N" },
      per: "calendar year",
      source: "plan",
    } as const;
    const given = { ...own, amount: { ...own.amount } };
    const read = limit(given);
    given.amount.value = 300 as never;
    expect(read).toEqual(own);
  });
});

describe("a ledger that claims more entries than there can be", () => {
  it("is refused at once", () => {
    const endless: never[] = [];
    endless.length = 1e9;
    expect(complaints(() => ledger(endless))).toEqual(["range entries"]);
    expect(complaints(() => standingEntries({ type: "ledger", version: 1, entries: endless }))).toEqual([
      "range ledger.entries",
    ]);
  });
});

describe("the bounds of a problem", () => {
  it("are numbers and texts; one that is infinite bounds nothing", () => {
    for (const bound of [{}, Symbol("s"), Object.create(null)])
      expect(complaints(() => rangeProblem("count", "0", { min: bound as never }))).toEqual([
        "type bounds.min",
      ]);
    const open = rangeProblem("count", "0", { min: 1, max: Number.POSITIVE_INFINITY });
    expect([open.expected, open.params]).toEqual(["1 or more", { min: 1 }]);
    expect(rangeProblem(3 as never, Number.NaN as never, { min: 1 })).toMatchObject({
      path: "3",
      got: "not a number",
    });
  });
});

describe("a zero with a sign in a table", () => {
  it("is read as 0", () => {
    const { ledger: read } = ledgerFromCsv("id,date,supplies [lb/1000 ft2 of N]\r\na,2026-04-20,-0\r\n");
    expect(Object.is(read.entries[0]?.supplies?.[0]?.value, 0)).toBe(true);
  });
});
