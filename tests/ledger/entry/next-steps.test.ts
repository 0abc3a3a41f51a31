import { expect, test } from "vitest";
import { ledger } from "../../../src/ledger/index.js";
import { checkAgainstTarget } from "../../../src/numeric/index.js";
import { quantity, RatewrightError } from "../../../src/quantity/index.js";

const told = (work: () => unknown): readonly string[] => {
  try {
    work();
  } catch (error) {
    if (error instanceof RatewrightError)
      return error.problems.map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
    throw error;
  }
  return [];
};

test("an id in voids is told where it belongs", () => {
  const wrong = { id: "v", date: "2026-05-05", voids: "a" } as never;
  expect(told(() => ledger([{ id: "a", date: "2026-05-04" }, wrong]))).toEqual([
    "type entries[1].voids: true, and in corrects the id of the entry that never happened",
  ]);
});

test("an entry or a proposal that adds nothing is told how to say so", () => {
  expect(told(() => ledger([{ id: "a", date: "2026-05-04", supplies: [] }]))).toEqual([
    'missing entries[0].supplies: at least one nutrient or active ingredient; what adds none says so: { value: 0, unit: "lb/1000 ft2", of: "N" }',
  ]);
});

test("a catch of product against a target of a named product: both ways on", () => {
  const measured = quantity(4, "lb/1000 ft2", "product");
  const target = quantity(4, "lb/1000 ft2", "product:feed-a") as never;
  const call = () => checkAgainstTarget({ measured, target, tolerance: quantity(5, "%") });
  expect(told(call)).toEqual([
    'substance/mismatch target: a target of product, as measured; or the catch stated as "product:feed-a"',
  ]);
});

test.each([
  ["2026-06-08T07:30-05:00", "07:30-05:00"],
  ["2026-06-08T07:30:15Z", "07:30Z"],
  ["2026-06-08T07:30:15.250Z", "07:30Z"],
  ["07:30 pm", "19:30"],
  ["7:30", "07:30"],
  ["7.30", "07:30"],
  ["7:30 am", "07:30"],
  ["7:30PM", "19:30"],
  ["12:15 a.m.", "00:15"],
  ["12:15 pm", "12:15"],
  ["13:15 pm", undefined],
  ["0:15 am", undefined],
  ["24:00", undefined],
  ["07:60", undefined],
  ["half past seven", undefined],
])("the time of day in %s is %s", (start, time) => {
  const work = () => ledger([{ id: "a", date: "2026-06-08", start } as never]);
  try {
    work();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    expect(error.problems.map(({ code, path, suggestion }) => [code, path, suggestion])).toEqual([
      ["date", "entries[0].start", time],
    ]);
    // what is suggested can be written
    if (time !== undefined)
      expect(ledger([{ id: "a", date: "2026-06-08", start: time }]).entries.length).toBe(1);
    return;
  }
  expect.unreachable();
});

test("what a record calls the weather or the hours leads to the field", () => {
  const near = (more: object): readonly unknown[] => {
    try {
      ledger([{ id: "a", date: "2026-06-08", ...more } as never]);
    } catch (error) {
      if (error instanceof RatewrightError) return error.problems.map(({ suggestion }) => suggestion);
    }
    return [];
  };
  expect(near({ wind: { value: 5, unit: "mi/h" } })).toEqual(["weather"]);
  expect(near({ rei: 12 })).toEqual(["reEntryHours"]);
});
