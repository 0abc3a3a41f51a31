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
  // what is no quantity; JSON.parse has shown it the numbers inside one by one
  "quantityReviver",
]);

/** Function, place in its arguments, what is wrong, and the faults that do it. */
const open: readonly (readonly [name: string, place: string, wrong: Wrong, faults: string])[] = [];

/** All open violations, one by one. */
export const known: readonly KnownViolation[] = open.flatMap(([name, place, wrong, faults]) =>
  faults.split(" ").map((fault) => ({ name, place, fault, wrong })),
);
