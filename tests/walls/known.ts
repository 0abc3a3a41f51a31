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

/** Functions that hand back what they were given, unread. */
export const handBack: ReadonlySet<string> = new Set([
  "expectRecord",
  "expectFields",
  "expectList",
  "frozen",
]);

/** Function, place in its arguments, what is wrong, and the faults that do it. */
const open: readonly (readonly [name: string, place: string, wrong: Wrong, faults: string])[] = [
  ["accumulatedDegreeDays", "0.model.version", "not finite", "infinite"],
  ["checkLimits", "0.limits.0.source.where", "not finite", "NaN"],
  ["checkLimits", "0.limits.0.source.year", "not finite", "infinite"],
  ["ledgerCsv", "0.entries.0.area", "NaN or undefined in a text", "megabyte minusHuge"],
  ["ledgerCsv", "0.entries.0.area", "foreign error", "poisonedOf"],
  ["ledgerCsv", "0.entries.0.area.unit", "NaN or undefined in a text", "missing"],
  ["ledgerCsv", "0.entries.0.area.value", "NaN or undefined in a text", "minusInfinite missing"],
  ["ledgerCsv", "0.entries.0.date", "NaN or undefined in a text", "wrongDimension"],
  ["ledgerCsv", "0.entries.0.note", "NaN or undefined in a text", "wrongDimension"],
  ["ledgerCsv", "0.entries.0.parts", "foreign error", "infinite"],
  ["ledgerCsv", "0.entries.0.parts.0", "foreign error", "cyclic"],
  ["ledgerTotals", "0.ledger.entries.0.parts", "foreign error", "wrongDimension zero"],
  ["ledgerWith", "0.entries.0", "foreign error", "missing"],
  ["missingForRecord", "1.source.url", "not finite", "infinite"],
  ["standingEntries", "0.entries.2.voids", "not finite", "NaN"],
  ["workOrderText", "0.cautions.0", "foreign error", "infinite"],
  ["workOrderText", "0.cautions.0.code", "foreign error", "cyclic"],
  ["workOrderText", "0.cautions.0.source", "foreign error", "bigint"],
  ["workOrderText", "0.cautions.0.text", "foreign error", "sparse"],
  ["workOrderText", "0.cautions.4", "foreign error", "date list"],
  ["workOrderText", "0.cautions.4.code", "foreign error", "bigint"],
  ["workOrderText", "0.cautions.4.text", "foreign error", "record symbol wrongSubstance"],
  ["workOrderText", "0.checked.0", "foreign error", "flag negative tiny"],
  ["workOrderText", "0.checked.1", "foreign error", "NaN huge"],
  ["workOrderText", "0.findings.0", "foreign error", "list"],
  ["workOrderText", "0.findings.0.severity", "NaN or undefined in a text", "emptyList null protoText record"],
  ["workOrderText", "0.findings.0.source", "foreign error", "cyclic"],
  ["workOrderText", "0.findings.0.text", "foreign error", "symbol wrongSubstance"],
  ["workOrderText", "0.notChecked", "foreign error", "hole"],
  ["workOrderText", "0.notChecked.0", "foreign error", "hostile infinite record sparse wrongSubstance"],
  ["workOrderText", "0.notChecked.3", "foreign error", "cyclic zero"],
  ["workOrderText", "0.nutrients.0", "foreign error", "bareRecord emptyText null record wrongSubstance"],
  [
    "workOrderText",
    "0.nutrients.0.limits",
    "foreign error",
    "bareRecord emptyText hostile null record sparse",
  ],
  ["workOrderText", "0.nutrients.0.part", "foreign error", "hostile"],
  ["workOrderText", "0.nutrients.0.unweighed", "foreign error", "cyclic zero"],
  ["workOrderText", "0.nutrients.0.visit.0.from", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.visit.0.supplies.K", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.visit.0.supplies.K2O", "foreign error", "cyclic"],
  ["workOrderText", "0.nutrients.0.visitTotal", "foreign error", "symbol"],
  ["workOrderText", "0.nutrients.0.visitTotal.K.of", "foreign error", "cyclic"],
  ["workOrderText", "0.nutrients.0.visitTotal.K2O", "foreign error", "minusInfinite"],
  ["workOrderText", "0.nutrients.0.visitTotal.K2O.of", "foreign error", "bareRecord hostile record sparse"],
  [
    "workOrderText",
    "0.nutrients.0.visitTotal.K2O.unit",
    "foreign error",
    "bareRecord emptyList record symbol",
  ],
  ["workOrderText", "0.nutrients.0.visitTotal.K2O.value", "foreign error", "emptyText"],
  ["workOrderText", "0.nutrients.0.visitTotal.N", "foreign error", "infinite"],
  ["workOrderText", "0.nutrients.0.visitTotal.N.of", "foreign error", "record sparse wrongSubstance"],
  ["workOrderText", "0.nutrients.0.visitTotal.N.unit", "foreign error", "emptyList"],
  [
    "workOrderText",
    "0.nutrients.0.visitTotal.N.value",
    "foreign error",
    "bareRecord emptyText null wrongSubstance",
  ],
  ["workOrderText", "0.nutrients.0.visitTotal.N:soluble", "foreign error", "list minusInfinite sparse"],
  ["workOrderText", "0.nutrients.0.visitTotal.N:soluble.of", "foreign error", "bareRecord"],
  ["workOrderText", "0.nutrients.0.visitTotal.N:soluble.value", "foreign error", "bareRecord record sparse"],
  ["workOrderText", "0.nutrients.0.visitTotal.P.of", "foreign error", "bigint cyclic"],
  ["workOrderText", "0.nutrients.0.visitTotal.P.unit", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter", "foreign error", "missing"],
  ["workOrderText", "0.nutrients.0.yearAfter.K.of", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter.K.unit", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter.K2O.of", "foreign error", "function minusHuge poisonedOf"],
  ["workOrderText", "0.nutrients.0.yearAfter.K2O.unit", "foreign error", "infinite missing"],
  ["workOrderText", "0.nutrients.0.yearAfter.N.of", "foreign error", "minusHuge"],
  ["workOrderText", "0.nutrients.0.yearAfter.N.unit", "foreign error", "function"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:slow.of", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:slow.unit", "foreign error", "bigint"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:soluble", "foreign error", "poisonedOf"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:soluble.unit", "foreign error", "function minusInfinite"],
  ["workOrderText", "0.nutrients.0.yearAfter.N:soluble.value", "foreign error", "list"],
  ["workOrderText", "0.nutrients.0.yearAfter.P.unit", "foreign error", "cyclic"],
  ["workOrderText", "0.nutrients.0.yearAfter.P2O5", "foreign error", "poisonedOf"],
  ["workOrderText", "0.nutrients.0.yearSoFar", "foreign error", "NaN cyclic"],
  ["workOrderText", "0.repeats.0", "foreign error", "record wrongSubstance"],
  ["workOrderText", "0.repeats.0.calendar", "NaN or undefined in a text", "negative text"],
  ["workOrderText", "0.repeats.0.calendar", "foreign error", "bigint cyclic"],
  ["workOrderText", "0.repeats.0.heatAfter", "foreign error", "emptyList"],
  ["workOrderText", "0.repeats.0.treatment", "NaN or undefined in a text", "wrongDimension"],
  ["workOrderText", "0.site.area", "foreign error", "date function megabyte"],
  ["workOrderText", "0.site.area.gross", "foreign error", "bigint"],
  ["workOrderText", "0.site.area.gross.value", "foreign error", "cyclic"],
  ["workOrderText", "0.site.area.net.unit", "foreign error", "cyclic"],
  ["workOrderText", "0.site.area.net.value", "foreign error", "missing wrongDimension"],
  ["workOrderText", "0.site.area.version", "foreign error", "bigint"],
  ["workOrderText", "0.sprays", "foreign error", "hole"],
  ["workOrderText", "0.spreads", "foreign error", "hole"],
  ["workOrderText", "0.spreads.0", "foreign error", "bareRecord emptyText record wrongSubstance"],
  ["workOrderText", "0.spreads.0.amount", "foreign error", "hostile sparse"],
  ["workOrderText", "0.spreads.0.amount.value", "foreign error", "poisonedOf record symbol"],
  ["workOrderText", "0.spreads.0.area.of", "foreign error", "cyclic"],
  ["workOrderText", "0.spreads.0.area.value", "foreign error", "bigint"],
  ["workOrderText", "0.spreads.0.parts", "foreign error", "bareRecord record"],
  ["workOrderText", "0.spreads.0.passes", "foreign error", "bigint"],
  ["workOrderText", "0.spreads.0.rate", "foreign error", "bigint cyclic flag negative text tiny zero"],
  ["workOrderText", "0.spreads.0.rate.value", "foreign error", "constructorText cyclic"],
  ["workOrderText", "0.spreads.0.supplies.K.of", "foreign error", "bigint"],
  ["workOrderText", "0.spreads.0.supplies.K.unit", "foreign error", "cyclic"],
  ["workOrderText", "0.spreads.0.supplies.P.unit", "foreign error", "cyclic"],
  ["workOrderText", "0.spreads.0.target", "foreign error", "hostile negative"],
  ["workOrderText", "0.spreads.0.target.value", "foreign error", "bigint"],
];

/** All open violations, one by one. */
export const known: readonly KnownViolation[] = open.flatMap(([name, place, wrong, faults]) =>
  faults.split(" ").map((fault) => ({ name, place, fault, wrong })),
);
