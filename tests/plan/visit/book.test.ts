import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger, ledgerCsv, ledgerFromCsv, ledgerWith } from "../../../src/ledger/index.js";
import { type Job, visitEntries, workOrder } from "../../../src/plan/index.js";
import { problemsOf, smallJob } from "../helpers.js";

const lb = "lb/1000 ft2";
const may: Job = smallJob({
  site: { name: "Park", parts: [{ name: "lawn", shape: "measured", area: { value: 10_000, unit: "ft2" } }] },
  treatments: [
    {
      id: "spring feed",
      method: "spread",
      product: "feed-a",
      target: { value: 0.9, unit: lb, of: "N" },
      parts: ["lawn"],
    },
  ],
});
const book = ledger(visitEntries(may));
const june = (more: Partial<Job> = {}): Job => ({
  ...may,
  date: "2026-06-08",
  treatments: [
    {
      id: "summer feed",
      method: "spread",
      product: "feed-a",
      target: { value: 0.5, unit: lb, of: "N" },
      parts: ["lawn"],
      interval: { minimumDays: 42, source: "plan" },
    },
  ],
  limits: [{ amount: { value: 2, unit: lb, of: "N" }, per: "calendar year", source: "plan" }],
  ledger: book,
  ...more,
});
const lawn = (job: Job) => {
  const { nutrients, ...order } = workOrder(job);
  const [account] = nutrients;
  return {
    order,
    account,
    soFar: account?.yearSoFar.N?.in(lb),
    left: account?.limits[0]?.remainingUnderStatedLimits.value,
  };
};

describe("the next visit takes the book of the last one", () => {
  test("0.9 lb in May and 0.5 now leave 0.6 of 2, and 42 days from May 4 are June 15", () => {
    const { order, soFar, left } = lawn(june());
    expect(soFar).toBeCloseTo(0.9, 12);
    expect(left).toBeCloseTo(0.6, 12);
    expect(order.repeats[0]?.applied).toEqual(["2026-05-04"]);
    expect(order.findings.map(({ code }) => code)).toContain("interval/before-earliest");
    expect(workOrder(june({ date: "2026-06-15" })).findings.map(({ code }) => code)).not.toContain(
      "interval/before-earliest",
    );
  });

  test("what JSON left of the book says the same", () => {
    const stored = JSON.parse(JSON.stringify(june())) as Job;
    expect(JSON.stringify(workOrder(stored))).toBe(JSON.stringify(workOrder(june())));
  });

  test("a correction counts in place of what it corrects: 50 lb of 24 % on 10,000 sq ft are 1.2 lb", () => {
    const [first] = book.entries as readonly [LedgerEntry];
    const amount = { value: 50, unit: "lb", of: "product" } as const;
    const corrected = ledgerWith(book, { ...first, id: "again", corrects: first.id, amount });
    expect(lawn(june({ ledger: corrected })).soFar).toBeCloseTo(1.2, 12);
    const none = ledgerWith(book, { id: "no", date: first.date, corrects: first.id, voids: true });
    expect(lawn(june({ ledger: none })).soFar).toBeUndefined();
    expect(lawn(june({ ledger: none })).order.repeats[0]?.applied).toEqual([]);
  });

  test("an entry after the visit is no part of the year so far, and counts toward the limit", () => {
    const later = ledgerWith(book, {
      id: "sept",
      date: "2026-09-01",
      parts: ["lawn"],
      treatment: "summer feed",
      supplies: [{ value: 0.3, unit: lb, of: "N" }],
    });
    const { soFar, left, order } = lawn(june({ ledger: later }));
    expect(soFar).toBeCloseTo(0.9, 12);
    expect(left).toBeCloseTo(0.3, 12);
    expect(order.repeats[0]?.applied).toEqual(["2026-05-04"]);
  });

  test("an entry of a treatment of this job counts for it alone, also with the product of another", () => {
    const [feed] = june().treatments as readonly [Job["treatments"][number]];
    const two = june({ treatments: [feed, { ...feed, id: "spring feed" }] });
    expect(workOrder(two).repeats.map(({ applied }) => applied)).toEqual([[], ["2026-05-04"]]);
  });

  test("a part that the site does not have is named, and counts for no other", () => {
    const other = ledger([
      { id: "x", date: "2026-05-01", parts: ["Lawn"], supplies: [{ value: 1, unit: lb, of: "N" }] },
    ]);
    const { soFar, order } = lawn(june({ ledger: other }));
    expect(soFar).toBeUndefined();
    expect(order.notChecked).toContain(
      "Ledger entries on Lawn: the site of the job has no part of that name.",
    );
  });

  test("a site without named parts keeps its account beside entries that name some", () => {
    const whole = smallJob({
      ledger: ledger([
        { id: "x", date: "2026-05-01", parts: ["lawn"], supplies: [{ value: 1, unit: lb, of: "N" }] },
        { id: "y", date: "2026-05-02", supplies: [{ value: 0.5, unit: lb, of: "N" }] },
      ]),
    });
    const { nutrients, notChecked } = workOrder(whole);
    expect(nutrients.map(({ part }) => part)).toEqual(["whole site"]);
    expect(nutrients[0]?.yearSoFar.N?.in(lb)).toBeCloseTo(0.5, 12);
    expect(notChecked).toContain("Ledger entries on lawn: the site of the job has no part of that name.");
  });

  test("the day of the visit: another entry is told, the entries of the visit itself are refused", () => {
    const same = ledgerWith(book, { ...(book.entries[0] as LedgerEntry), id: "b", date: "2026-06-08" });
    const told = workOrder(june({ ledger: same })).findings.find(({ code }) => code === "log/day-of-visit");
    expect(told?.text).toContain("The ledger has feed-a on 2026-06-08");
    expect(told?.text).toContain("take it out of the ledger");
    expect(problemsOf(june({ ledger: ledger(visitEntries(june())) }))).toEqual(["duplicate ledger"]);
  });

  test("what is wrong with it is told with its place, beside what else is wrong", () => {
    const spoilt = JSON.parse(JSON.stringify(june()));
    spoilt.ledger.entries[0].amount.value = -3;
    spoilt.title = "";
    expect(problemsOf(spoilt)).toEqual(["missing title", "range ledger.entries[0].amount.value"]);
    expect(problemsOf(june({ log: [] }))).toEqual(["conflict ledger"]);
    expect(problemsOf({ ...june(), ledger: [] })).toEqual(["type ledger"]);
    expect(problemsOf({ ...june(), ledger: { ...book, version: 2 } })).toEqual(["type ledger.version"]);
  });
});

test("an entry keeps the grade as a bag prints it, in a spreadsheet too; more than a grade stays a record", () => {
  expect(book.entries[0]?.analysis).toBe("24-0-11");
  expect(ledgerCsv(book).split("\r\n")[1]).toContain(",24-0-11,");
  expect(ledgerFromCsv(ledgerCsv(book)).ledger.entries[0]?.analysis).toBe("24-0-11");
  const iron = visitEntries({
    ...may,
    products: [{ id: "feed-a", form: "dry", analysis: "24-0-11 (2% Fe)" }],
  });
  expect(iron[0]?.analysis).toEqual({ basis: "oxide", percent: { N: 24, P2O5: 0, K2O: 11, Fe: 2 } });
  const plain = visitEntries({
    ...may,
    products: [{ id: "feed-a", form: "dry", analysis: "18-6-12", basis: "element" }],
  });
  expect(plain[0]?.analysis).toMatchObject({ basis: "element" });
});
