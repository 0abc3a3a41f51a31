// Fillings in bare numbers, each worked out on paper first.
import { describe, expect, test } from "vitest";
import { type FillQuestion, fillPlan } from "../../../src/plan/route/fill-plan.js";

const asked = (more: Partial<FillQuestion>): FillQuestion => {
  const needs = more.needs ?? [10];
  return {
    needs,
    canFill: needs.map(() => true),
    capacity: 20,
    residual: 0,
    plumbing: 0,
    start: 0,
    refill: "before a stop",
    ...more,
  };
};
/** Each filling as stop, what was out by then, before, added, after. */
const fillsOf = (more: Partial<FillQuestion>): readonly (readonly number[])[] =>
  fillPlan(asked(more)).fills.map(({ stop, done, before, added, after }) => [
    stop,
    done,
    before,
    added,
    after,
  ]);

describe("where a tank is filled, and with how much", () => {
  test("a first stop without water is filled for before the route, hoses and all; the next are reached with full hoses", () => {
    // 3 go into the hoses: 17 of 20 can go out. 5 at the first, 12 are left; the second takes 2 and the third 18, a full tank.
    const question = { needs: [5, 2, 18], canFill: [false, true, false], plumbing: 3 };
    expect(fillPlan(asked(question))).toEqual({
      fills: [
        { stop: 0, done: 0, before: 0, added: 20, after: 20 },
        { stop: 1, done: 5, before: 12, added: 8, after: 20 },
      ],
      arrive: [0, 12, 18],
      leave: [12, 18, 0],
      left: 3,
    });
  });

  test("the first stop out of reach is named, with what the tank would have to hold", () => {
    // At the start 17 of 20 can go out; 17 are enough, 17.5 are not.
    const first = (need: number) => ({ needs: [need, 1], canFill: [false, true], plumbing: 3 });
    expect(fillPlan(asked(first(17))).tooFar).toBeUndefined();
    expect(fillPlan(asked(first(17.5)))).toEqual({
      fills: [],
      arrive: [],
      leave: [],
      left: 0,
      tooFar: { stop: 0, needs: 17.5 },
    });
    // Two dry stops behind the second: 12 and 9 are 21.
    const later = { needs: [5, 2, 12, 9, 4], canFill: [true, true, false, false, true] };
    expect(fillPlan(asked(later)).tooFar).toEqual({ stop: 1, needs: 21 });
    expect(fillPlan(asked({ ...later, needs: [5, 2, 12, 8, 4] })).tooFar).toBeUndefined();
  });

  test("a tank that starts full is not filled before it has room", () => {
    expect(fillsOf({ needs: [30], start: 20, plumbing: 2 })).toEqual([[0, 20, 0, 10, 10]]);
    expect(fillPlan(asked({ needs: [30], start: 20, plumbing: 2 })).left).toBe(2);
  });

  test("what is in it at the start counts above the outlet only, and the first filling makes up for the rest", () => {
    const question = { needs: [10], start: 1, residual: 2, plumbing: 0.5 };
    expect(fillPlan(asked(question))).toEqual({
      fills: [{ stop: 0, done: 0, before: 1, added: 11, after: 12 }],
      arrive: [1],
      leave: [2],
      left: 2.5,
    });
  });

  test("no filling where the start is enough: what is left is in tank and hoses", () => {
    const plan = fillPlan(asked({ needs: [3, 2], start: 10, residual: 2, plumbing: 1 }));
    expect(plan).toEqual({ fills: [], arrive: [10, 7], leave: [7, 5], left: 6 });
  });

  test("driven until it is empty, three times at one stop", () => {
    expect(fillsOf({ needs: [50], refill: "when empty" })).toEqual([
      [0, 0, 0, 20, 20],
      [0, 20, 0, 20, 20],
      [0, 40, 0, 10, 10],
    ]);
  });

  test("before a stop, or when empty: 8, 8 and 8 from a tank of 20", () => {
    const needs = [8, 8, 8];
    expect(fillsOf({ needs })).toEqual([
      [0, 0, 0, 20, 20],
      [2, 16, 4, 4, 8],
    ]);
    expect(fillsOf({ needs, refill: "when empty" })).toEqual([
      [0, 0, 0, 20, 20],
      [2, 20, 0, 4, 4],
    ]);
    // Exactly enough is enough.
    expect(fillsOf({ needs: [12, 8] })).toEqual([[0, 0, 0, 20, 20]]);
  });

  test("behind a stop it is topped up for dry stops that follow, even when it is driven empty", () => {
    const question = { needs: [10, 14], canFill: [true, false], refill: "when empty" } as const;
    expect(fillPlan(asked(question))).toEqual({
      fills: [
        { stop: 0, done: 0, before: 0, added: 20, after: 20 },
        { stop: 0, done: 10, before: 10, added: 4, after: 14 },
      ],
      arrive: [0, 14],
      leave: [14, 0],
      left: 0,
    });
  });
});
