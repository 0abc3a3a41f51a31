import { exceeds } from "../../numeric/index.js";

/** When the tank or the hopper is filled again. */
export type RefillRule = "before a stop" | "when empty";

/** A route in bare numbers, all in the unit of the tank. */
export interface FillQuestion {
  /** What each stop takes. */
  readonly needs: readonly number[];
  /** Whether the tank can be filled there. */
  readonly canFill: readonly boolean[];
  readonly capacity: number;
  /** What the pump leaves in the tank. */
  readonly residual: number;
  /** What the hoses take at the first filling. */
  readonly plumbing: number;
  /** What is in the tank at the start, of the same mix; the hoses are then full of it. */
  readonly start: number;
  readonly refill: RefillRule;
}

/** One filling. */
export interface Fill {
  /** The stop, from 0. */
  readonly stop: number;
  /** How much of the whole route had gone out before. */
  readonly done: number;
  /** What is in the tank before and after; `added` lies between. */
  readonly before: number;
  readonly added: number;
  readonly after: number;
}

/** The fillings, and what is left. */
export interface FillPlan {
  readonly fills: readonly Fill[];
  /** In the tank on the way in, before anything is filled there, and on the way out. */
  readonly arrive: readonly number[];
  readonly leave: readonly number[];
  /** In tank and hoses at the end. */
  readonly left: number;
  /** The first stop that a full tank does not reach from the last place to fill, and what it would have to hold. */
  readonly tooFar?: { readonly stop: number; readonly needs: number };
}

/** More fillings than a day has: a tank that is too small by a factor. */
export const mostFills = 10_000;

/** What the stops behind each one take up to the next place where the tank can be filled. */
const aheadOf = ({ needs, canFill }: FillQuestion): readonly number[] => {
  const ahead = needs.map(() => 0);
  for (let i = needs.length - 2; i >= 0; i--)
    ahead[i] = canFill[i + 1] ? 0 : (needs[i + 1] as number) + (ahead[i + 1] as number);
  return ahead;
};

/** The stop at which a full tank gives out, for one that drives past places where it cannot be filled. */
const firstOutOfReach = (
  { needs, canFill }: FillQuestion,
  ahead: readonly number[],
  most: (i: number) => number,
): FillPlan["tooFar"] => {
  // A route may begin where the tank cannot be filled: it is filled before the route. Behind a stop that cannot be filled
  // less is wanted than behind the last one that can.
  const wanted = ahead.map((behind, i) => (i === 0 && !canFill[0] ? (needs[0] as number) : 0) + behind);
  const stop = wanted.findIndex((amount, i) => exceeds(amount, most(i)));
  return stop < 0 ? undefined : { stop, needs: wanted[stop] as number };
};

/**
 * Where and with how much a tank is filled along a route. What can go out is counted from the start of the route,
 * in all (`loaded`, `done`): the last filling makes both equal, to the last digit.
 */
export const fillPlan = (question: FillQuestion): FillPlan => {
  const { needs, canFill, capacity, residual, start, refill } = question;
  const total = needs.reduce((sum, need) => sum + need, 0);
  const usable = capacity - residual;
  const primed = start > 0 ? 0 : question.plumbing;
  const ahead = aheadOf(question);
  const tooFar = firstOutOfReach(question, ahead, (i) => (i === 0 && !canFill[0] ? usable - primed : usable));
  const none = { fills: [], arrive: [], leave: [], left: 0 };
  if (tooFar !== undefined) return { ...none, tooFar };
  const fills: Fill[] = [];
  let done = 0;
  let loaded = Math.max(0, start - residual);
  // What the first filling takes that never goes out: up to the outlet of the tank, and the hoses.
  let dead = Math.max(0, residual - start) + primed;
  let floor = Math.min(start, residual);
  const inTank = (): number => floor + (loaded - done);
  const fill = (stop: number): void => {
    const before = inTank();
    const room = usable - (fills.length === 0 ? primed : 0);
    const upTo = Math.min(total, done + room);
    if (upTo <= loaded) return;
    const added = upTo - loaded + dead;
    fills.push({ stop, done, before, added, after: before + added });
    loaded = upTo;
    dead = 0;
    floor = residual;
  };
  const arrive: number[] = [];
  const leave: number[] = [];
  needs.forEach((need, i) => {
    const next = i === needs.length - 1 ? total : done + need;
    const behind = ahead[i] as number;
    const open = (canFill[i] as boolean) || i === 0;
    arrive.push(inTank());
    if (open && refill === "before a stop" && exceeds(next + behind, loaded)) fill(i);
    while (open && exceeds(next, loaded)) {
      done = loaded;
      fill(i);
    }
    // What a load lacks within the noise of rounding goes out with the next one.
    done = Math.min(next, loaded);
    if (open && exceeds(done + behind, loaded)) fill(i);
    leave.push(inTank());
  });
  // The hoses are full since the first filling, or were so at the start.
  return { fills, arrive, leave, left: inTank() + question.plumbing };
};
