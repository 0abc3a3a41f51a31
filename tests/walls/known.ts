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
  outOfRange: "it throws whatever it is given; its calls are in tests/quantity",
};

/** Functions whose texts tell what was received, so that NaN may stand in them. */
export const tellers: ReadonlySet<string> = new Set([
  "shown",
  "problemText",
  "problemReason",
  "unitName",
  "unitSymbol",
  "quantitySchema.~standard.validate",
]);

/**
 * Functions that hand back what they were given, with the reason: what stands inside is read by those who asked for it,
 * so that a number that is none may come back.
 */
export const handBack: ReadonlyMap<string, string> = new Map([
  ["expectRecord", "it says that it is a record; each field has a reader of its own"],
  ["expectFields", "it says which fields are there; each field has a reader of its own"],
  ["expectList", "it says that it is a list; each item has a reader of its own"],
  ["frozen", "it freezes a table of those who wrote it, and looks at nothing in it"],
  ["plainCopy", "it copies what is there, before anybody reads it"],
  ["quantityReviver", "JSON.parse hands it every value; what is no quantity stays as JSON has it"],
]);

const typedArrays =
  "a kernel takes Float64Array alone; what JSON leaves of one is refused, with the way to make it again";
const ownFunctions = "takes functions, which JSON drops";

/** Functions whose arguments JSON cannot carry, with the reason. */
export const notInJson: ReadonlyMap<string, string> = new Map([
  ["allOf", ownFunctions],
  ["readFields", ownFunctions],
  ["toldAt", ownFunctions],
  ["toldBy", ownFunctions],
  ["accumulateDegreeDaysC", typedArrays],
  ["accumulateEquivalentDaysC", typedArrays],
  ["hargreavesEvapotranspirationsMmPerD", typedArrays],
  ["highestProductRatesKgPerHa", typedArrays],
  ["nutrientsSuppliedKg", typedArrays],
  ["productRatesKgPerHa", typedArrays],
  ["referenceEvapotranspirationsMmPerD", typedArrays],
  ["releasedShares", typedArrays],
  ["runningDegreeDaysC", typedArrays],
  ["swathCvPercent", typedArrays],
]);

/** Places that a function does not look at, or answers about, so that a day that does not exist may stand there. */
export const notLookedAt: readonly (readonly [name: RegExp, place: RegExp, why: string])[] = [
  [/^(?:expect(?:Record|Fields|List)|frozen|plainCopy|quantityReviver)$/, /./, "hands back what it is given"],
  [/^is(?:CivilDate|Instant)$/, /^0$/, "says whether it is one"],
  [/^releaseByWeek$/, /^0\.start$/, "counts weeks from the first day, whichever that is"],
  [
    /^(?:explainWorkOrder|workOrder(?:Html|Sheet|Text))$/,
    /^0\.nutrients\.\d+\.visit/,
    "prints the sums, not the entries",
  ],
  [/^ledgerTotals$/, /^0\.ledger\.entries\.\d+\.date$/, "an entry that another corrects does not count"],
];

const listOfProblems = "for those who write readers of their own; its calls are in tests/quantity/errors";

/** Functions that hang in results, by their place, with the reason why they are not spoilt there. */
export const heldFunctions: Readonly<Record<string, string>> = {
  "checks.add": listOfProblems,
  "checks.count": listOfProblems,
  "checks.done": listOfProblems,
  "checks.run": listOfProblems,
  "quantitySchema.~standard.validate": "it is spoilt under its own name, for every schema of the examples",
};

/** Function, place in its arguments, what is wrong, and the faults that do it. */
const open: readonly (readonly [name: string, place: string, wrong: Wrong, faults: string])[] = [];

/** All open violations, one by one. */
export const known: readonly KnownViolation[] = open.flatMap(([name, place, wrong, faults]) =>
  faults.split(" ").map((fault) => ({ name, place, fault, wrong })),
);
