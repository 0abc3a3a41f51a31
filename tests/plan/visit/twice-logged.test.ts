import { expect, test } from "vitest";
import { ledger, workOrder } from "../../../src/index.js";

const job = {
  type: "job",
  version: 1,
  title: "Feed",
  date: "2026-06-04",
  site: { name: "Park", parts: [{ name: "lawn", shape: "measured", area: { value: 20000, unit: "ft2" } }] },
  products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
  treatments: [
    { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
  ],
} as const;
const entry = {
  date: "2026-04-15",
  treatment: "feed",
  product: "feed-a",
  form: "dry",
  analysis: "24-0-11",
  parts: ["lawn"],
  area: { value: 20000, unit: "ft2" },
} as const;
const amount = (value: number) => ({ value, unit: "lb", of: "product" }) as const;
const told = (...amounts: readonly number[]) => {
  const book = ledger(amounts.map((value, i) => ({ ...entry, id: `e${i}`, amount: amount(value) })));
  const order = workOrder({ ...job, ledger: book } as never);
  return order.findings.filter(({ code }) => code === "log/twice").map(({ path }) => path);
};

test("an application that stands twice in the book is told, for both amounts are counted", () => {
  expect(told(75)).toEqual([]);
  expect(told(75, 75)).toEqual(["ledger"]);
  // two loads of another size are two entries of one application
  expect(told(75, 40)).toEqual([]);
});

test("in a log too", () => {
  const row = {
    date: "2026-04-15",
    treatment: "feed",
    product: "feed-a",
    rate: { value: 3.75, unit: "lb/1000 ft2", of: "product" },
  };
  const order = workOrder({ ...job, log: [row, row] } as never);
  expect(order.findings.filter(({ code }) => code === "log/twice").map(({ path }) => path)).toEqual([
    "log[1]",
  ]);
});

test("without the name of a treatment too, and once for each repeat", () => {
  const row = {
    date: "2026-04-15",
    product: "feed-a",
    rate: { value: 3.75, unit: "lb/1000 ft2", of: "product" },
  };
  const other = { ...row, rate: { ...row.rate, value: 3 } };
  const order = workOrder({ ...job, log: [row, other, row, row] } as never);
  const found = order.findings.filter(({ code }) => code === "log/twice");
  expect(found.map(({ path, params }) => [path, params.first])).toEqual([
    ["log[2]", "log[0]"],
    ["log[3]", "log[0]"],
  ]);
  expect(found[0]?.text).toMatch(/^feed-a of 2026-04-15 stands twice in the log with the same amount: both/);
});
