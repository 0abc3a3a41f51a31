// Days of a rotation by hand, whatever the order in which they are written down; and records that hold nothing.
import { expect, test } from "vitest";
import {
  type LedgerEntry,
  ledger,
  missingForRecord,
  resistanceRotation,
  usRestrictedUseRecord,
  usWorkerProtectionRecord,
} from "../../../src/ledger/index.js";

const entry = (id: string, date: LedgerEntry["date"], active: string): LedgerEntry => ({
  id,
  date,
  activeIngredient: active,
});

test("three days of one group of four, the last two in a row: written down in another order", () => {
  const book = ledger([
    entry("d", "2026-07-06", "propiconazole"),
    entry("a", "2026-05-04", "propiconazole"),
    entry("c", "2026-06-15", "propiconazole"),
    entry("b", "2026-05-25", "azoxystrobin"),
  ]);
  const { groups } = resistanceRotation({
    ledger: book,
    from: "2026-01-01",
    to: "2026-12-31",
    on: "2026-07-16",
  });
  const [most, other] = groups;
  expect([most?.actives, most?.applications, most?.alone, most?.share.in("%"), most?.daysSince]).toEqual([
    ["propiconazole"],
    3,
    3,
    75,
    10,
  ]);
  expect(most?.dates).toEqual(["2026-05-04", "2026-06-15", "2026-07-06"]);
  expect(most?.longestRun).toEqual({ applications: 2, from: "2026-06-15", to: "2026-07-06" });
  expect([other?.actives, other?.longestRun]).toEqual([
    ["azoxystrobin"],
    { applications: 1, from: "2026-05-25", to: "2026-05-25" },
  ]);
});

test("an empty list and a blank text answer nothing that a record asks for", () => {
  const gaps = (more: object, scheme = usWorkerProtectionRecord) =>
    missingForRecord({ id: "a", date: "2026-05-04", ...more } as LedgerEntry, scheme).gaps.map(
      ({ what }) => what,
    );
  const where = "location and description of the area";
  expect(gaps({})).toContain(where);
  expect(gaps({ parts: ["lawn"] })).not.toContain(where);
  expect(gaps({ location: "  " })).toContain(where);
  expect(gaps({ location: "Main Street" })).not.toContain(where);
  const total = "total amount applied";
  expect(gaps({ rate: { value: 1, unit: "lb/acre", of: "product" } }, usRestrictedUseRecord)).toContain(
    total,
  );
  const both = { rate: { value: 1, unit: "lb/acre", of: "product" }, area: { value: 1, unit: "acre" } };
  expect(gaps(both, usRestrictedUseRecord)).not.toContain(total);
});
