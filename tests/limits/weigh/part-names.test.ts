import { describe, expect, it } from "vitest";
import { ledger, ledgerFromCsv, ledgerTotals } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { siteArea } from "../../../src/site/index.js";
import { problemsOf } from "../../errors.js";

// A name that reads like "meadow" and is another text would be another part, on which nothing went down.
describe("a part of the site that is written in another way does not go uncounted", () => {
  const nitrogen = (parts: string) => ({
    parts: [parts],
    supplies: [{ value: 2.8, unit: "lb/1000 ft2", of: "N" }] as const,
  });
  const entry = (part: string) => ({ id: "a", date: "2026-04-20", ...nitrogen(part) }) as const;
  const cap = {
    amount: { value: 3, unit: "lb/1000 ft2", of: "N" },
    per: "calendar year",
    source: "plan of the park",
  } as const;
  const check = (part: string) =>
    checkLimits({
      limits: [cap],
      ledger: ledger([entry("meadow")]),
      proposal: { date: "2026-06-01", ...nitrogen(part) },
    });

  it("in a ledger", () => {
    expect(problemsOf(() => ledger([entry("meadow ")]))).toMatchObject([
      { path: "entries[0].parts[0]", suggestion: "meadow" },
    ]);
  });

  it("in a ledger that comes from a store", () => {
    const stored = { type: "ledger", version: 1, entries: [entry("meadow ")] } as const;
    const wanted = [{ code: "type", path: "ledger.entries[0].parts[0]", suggestion: "meadow" }];
    const span = { from: "2026-01-01", to: "2026-12-31", part: "meadow" } as const;
    expect(problemsOf(() => ledgerTotals({ ledger: stored, ...span }))).toMatchObject(wanted);
    const proposal = { date: "2026-06-01", ...nitrogen("meadow") } as const;
    expect(problemsOf(() => checkLimits({ ledger: stored, limits: [cap], proposal }))).toMatchObject(wanted);
    const sound = { ...stored, entries: [entry("meadow")] };
    expect(ledgerTotals({ ledger: sound, ...span }).applications).toBe(1);
  });

  it("in a spreadsheet: blanks beside the semicolon are no part of a name", () => {
    const { ledger: read, unread } = ledgerFromCsv(
      "id,date,parts,supplies [lb/1000 ft2 of N]\na,2026-04-20, meadow ; north pitch,2.8\n",
    );
    expect(unread).toEqual([]);
    expect(read.entries[0]?.parts).toEqual(["meadow", "north pitch"]);
  });

  it("in totals", () => {
    const span = { ledger: ledger([entry("meadow")]), from: "2026-01-01", to: "2026-12-31" } as const;
    expect(ledgerTotals({ ...span, part: "meadow" }).supplies.N?.in("lb/1000 ft2")).toBeCloseTo(2.8, 9);
    expect(problemsOf(() => ledgerTotals({ ...span, part: "meadow\t" }))).toMatchObject([
      { path: "part", suggestion: "meadow" },
    ]);
  });

  it("in a proposal that is held against limits", () => {
    // 2.8 lb in April and 2.8 in June are 2.6 over the 3 lb of the year
    expect(check("meadow").uses[0]?.remainingUnderStatedLimits.in("lb/1000 ft2")).toBeCloseTo(-2.6, 9);
    expect(problemsOf(() => check("meadow "))).toMatchObject([
      { path: "proposal.parts[0]", suggestion: "meadow" },
    ]);
  });

  it("in a site", () => {
    const part = { name: "meadow ", shape: "square", side: { value: 120, unit: "ft" } } as const;
    expect(problemsOf(() => siteArea({ parts: [part] }))).toMatchObject([
      { path: "parts[0].name", suggestion: "meadow" },
    ]);
  });
});
