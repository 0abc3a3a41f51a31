import { expect, test } from "vitest";
import { ledger, resistanceRotation } from "../../../src/ledger/index.js";

/** The names that an entry's field of active ingredients holds, as the groups of a season count them. */
const names = (activeIngredient: string): readonly string[] => {
  const { groups, multiSite, withoutCode } = resistanceRotation({
    ledger: ledger([{ id: "a", date: "2026-05-01", activeIngredient }]),
    from: "2026-01-01",
    to: "2026-12-31",
  });
  return [
    ...new Set([...[...groups, ...multiSite].flatMap(({ actives }) => actives), ...withoutCode]),
  ].sort();
};

test.each([
  ["azoxystrobin + propiconazole", ["azoxystrobin", "propiconazole"]],
  ["azoxystrobin+propiconazole", ["azoxystrobin", "propiconazole"]],
  ["azoxystrobin; propiconazole", ["azoxystrobin", "propiconazole"]],
  ["azoxystrobin & propiconazole", ["azoxystrobin", "propiconazole"]],
  ["azoxystrobin\npropiconazole", ["azoxystrobin", "propiconazole"]],
  ["azoxystrobin and propiconazole", ["azoxystrobin", "propiconazole"]],
  ["azoxystrobin, propiconazole", ["azoxystrobin", "propiconazole"]],
  // There is 2,4-D, and there are names with "and" in them
  ["2,4-D", ["2,4-d"]],
  ["2,4-D, dicamba and MCPA", ["2,4-d", "dicamba", "mcpa"]],
  ["mandestrobin", ["mandestrobin"]],
  ["sandofan", ["sandofan"]],
  // A percentage behind a name is no part of it
  ["Prodiamine 0.38 %", ["prodiamine"]],
  ["Prodiamine 0.38%", ["prodiamine"]],
  ["prodiamine 12%", ["prodiamine"]],
  ["prodiamine 65 % w", ["prodiamine 65 % w"]],
  ["prodiamine65%", ["prodiamine65%"]],
  ["  prodiamine  3 % ; ", ["prodiamine"]],
])("%s", (text, expected) => {
  expect(names(text)).toEqual(expected);
});
