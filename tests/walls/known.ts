// The violations that are open. Each is to be mended, and then its line goes: the test fails for a
// line that is no longer true, and for a violation that has no line. None is added for code that is new.
import type { Wrong } from "./judge.js";

/** An open violation: in which function, at which place, what was put in, what came out. */
export interface KnownViolation {
  readonly name: string;
  readonly place: string;
  readonly fault: string;
  readonly wrong: Wrong;
}

/** Functions that get no spoilt calls from examples, with the reason. */
export const withoutCalls: Readonly<Record<string, string>> = {
  fail: "it throws whatever it is given; its calls are in tests/quantity",
};

/** Functions whose texts tell what was received, so that NaN may stand in them. */
export const tellers: ReadonlySet<string> = new Set(["shown", "problemText", "problemReason"]);

/** Function, place in its arguments, what is wrong, and the faults that do it. */
const open: readonly (readonly [name: string, place: string, wrong: Wrong, faults: string])[] = [
  ["checkLimits", "0.limits.0.source.where", "not finite", "NaN"],
  ["ledgerCsv", "0.entries.0.area", "NaN or undefined in a text", "minusHuge"],
  ["ledgerCsv", "0.entries.0.area.value", "NaN or undefined in a text", "minusInfinite missing"],
  ["ledgerCsv", "0.entries.0.parts", "foreign error", "infinite"],
  ["ledgerTotals", "0.ledger.entries.0.parts", "foreign error", "zero"],
  ["ledgerWith", "0.entries.0", "foreign error", "missing"],
  ["missingForRecord", "1.source.url", "not finite", "infinite"],
  ["schedule", "0", "no path", "megabyte"],
  ["soilTestReading", "0.nutrient", "foreign error", "bareRecord"],
  ["suggestUnit", "1", "foreign error", "date"],
  ["workOrderText", "0.cautions.0.text", "foreign error", "sparse"],
  ["workOrderText", "0.cautions.4.text", "foreign error", "symbol"],
  ["workOrderText", "0.checked.0", "foreign error", "flag tiny"],
  ["workOrderText", "0.checked.1", "foreign error", "NaN huge"],
  ["workOrderText", "0.findings.0.text", "foreign error", "symbol"],
  ["workOrderText", "0.notChecked.0", "foreign error", "record wrongSubstance"],
  ["workOrderText", "0.notChecked.3", "foreign error", "zero"],
  ["workOrderText", "0.nutrients.0", "foreign error", "bareRecord null record wrongSubstance"],
  ["workOrderText", "0.nutrients.0.limits", "foreign error", "bareRecord null record"],
  ["workOrderText", "0.nutrients.0.part", "foreign error", "hostile"],
  ["workOrderText", "0.nutrients.0.unweighed", "foreign error", "cyclic"],
  ["workOrderText", "0.nutrients.0.visit.0.supplies.K2O", "foreign error", "cyclic"],
  ["workOrderText", "0.nutrients.0.visitTotal", "foreign error", "symbol"],
  ["workOrderText", "0.nutrients.0.visitTotal.K2O", "foreign error", "minusInfinite"],
  ["workOrderText", "0.nutrients.0.visitTotal.K2O.of", "foreign error", "bareRecord record"],
  ["workOrderText", "0.nutrients.0.visitTotal.K2O.unit", "foreign error", "symbol"],
  ["workOrderText", "0.nutrients.0.visitTotal.N", "foreign error", "infinite"],
  ["workOrderText", "0.nutrients.0.visitTotal.N.of", "foreign error", "record wrongSubstance"],
  ["workOrderText", "0.nutrients.0.visitTotal.N.value", "foreign error", "bareRecord null wrongSubstance"],
  ["workOrderText", "0.nutrients.0.visitTotal.N:soluble", "foreign error", "list minusInfinite sparse"],
  ["workOrderText", "0.nutrients.0.visitTotal.N:soluble.of", "foreign error", "bareRecord"],
  ["workOrderText", "0.nutrients.0.visitTotal.N:soluble.value", "foreign error", "bareRecord record"],
  ["workOrderText", "0.nutrients.0.visitTotal.P.of", "foreign error", "bigint cyclic"],
  ["workOrderText", "0.nutrients.0.yearAfter", "foreign error", "missing"],
  ["workOrderText", "0.nutrients.0.yearAfter.K.unit", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter.K2O.of", "foreign error", "minusHuge"],
  ["workOrderText", "0.nutrients.0.yearAfter.K2O.unit", "foreign error", "infinite missing"],
  ["workOrderText", "0.nutrients.0.yearAfter.N.of", "foreign error", "minusHuge"],
  ["workOrderText", "0.nutrients.0.yearAfter.N.unit", "foreign error", "function"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:slow.unit", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:soluble", "foreign error", "poisonedOf"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:soluble.unit", "foreign error", "function minusInfinite"],
  ["workOrderText", "0.nutrients.0.yearAfter.P2O5", "foreign error", "poisonedOf"],
  ["workOrderText", "0.nutrients.0.yearSoFar", "foreign error", "NaN cyclic"],
  ["workOrderText", "0.repeats.0", "foreign error", "record wrongSubstance"],
  ["workOrderText", "0.repeats.0.calendar", "NaN or undefined in a text", "negative text"],
  ["workOrderText", "0.repeats.0.calendar", "foreign error", "bigint cyclic"],
  ["workOrderText", "0.repeats.0.heatAfter", "foreign error", "emptyList"],
  ["workOrderText", "0.repeats.0.treatment", "NaN or undefined in a text", "wrongDimension"],
  ["workOrderText", "0.site.area.gross", "foreign error", "bigint"],
  ["workOrderText", "0.site.area.net.unit", "foreign error", "zero"],
  ["workOrderText", "0.site.area.net.value", "foreign error", "wrongDimension"],
  ["workOrderText", "0.site.area.version", "foreign error", "bigint"],
  ["workOrderText", "0.spreads.0", "foreign error", "bareRecord record wrongSubstance"],
  ["workOrderText", "0.spreads.0.amount.unit", "foreign error", "negative"],
  ["workOrderText", "0.spreads.0.amount.value", "foreign error", "poisonedOf symbol"],
  ["workOrderText", "0.spreads.0.area.of", "foreign error", "cyclic"],
  ["workOrderText", "0.spreads.0.area.unit", "foreign error", "tiny"],
  ["workOrderText", "0.spreads.0.area.value", "foreign error", "bigint"],
  ["workOrderText", "0.spreads.0.parts", "foreign error", "bareRecord record"],
  ["workOrderText", "0.spreads.0.rate", "foreign error", "bigint cyclic negative text"],
  ["workOrderText", "0.spreads.0.rate.unit", "foreign error", "null record wrongSubstance"],
  ["workOrderText", "0.spreads.0.supplies.K.unit", "foreign error", "cyclic"],
  ["workOrderText", "0.spreads.0.target", "foreign error", "hostile"],
  ["workOrderText", "0.spreads.0.target.unit", "foreign error", "flag"],
  ["workOrderText", "0.spreads.0.target.value", "foreign error", "bigint"],
];

/** All open violations, one by one. */
export const known: readonly KnownViolation[] = open.flatMap(([name, place, wrong, faults]) =>
  faults.split(" ").map((fault) => ({ name, place, fault, wrong })),
);
