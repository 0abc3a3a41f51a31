// The violations that are open. Each is to be mended, and then its line goes; none is added for code that is new.
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

export const known: readonly KnownViolation[] = [];
