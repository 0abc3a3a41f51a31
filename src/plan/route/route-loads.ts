import { exceeds } from "../../numeric/index.js";
import {
  fail,
  likeQuantity,
  type NeutralSubstance,
  numberIn,
  outOfRange,
  type Quantity,
  type QuantityJson,
  timesOf,
} from "../../quantity/index.js";
import { fillPlan, mostFills, type RefillRule } from "./fill-plan.js";
import { type ReadArea, type ReadRouteLoads, readRouteLoads } from "./read-route-loads.js";

/** A mass or a volume: of product in a hopper, of spray in a tank. */
export type RouteAmount = Quantity<"mass", string> | Quantity<"volume", string>;

/** A stop of a route: what it is called, and the area that is treated there. */
export interface RouteArea {
  readonly id: string;
  /** A `Quantity` fits. */
  readonly area: QuantityJson;
  /** `false` where the tank cannot be filled; it can where this is left out. */
  readonly canFill?: boolean;
}

/** One filling of the tank or the hopper. */
export interface RouteFill {
  /** 1 for the first. */
  readonly number: number;
  /** The stop at which it is filled. */
  readonly stop: string;
  /** What of that stop is done already: zero where it is filled before the stop. */
  readonly doneThere: Quantity<"area", NeutralSubstance>;
  /** What the tank holds before, what is filled in, and what it holds then. */
  readonly before: RouteAmount;
  readonly added: RouteAmount;
  readonly after: RouteAmount;
  /** What this filling treats until the next one. */
  readonly area: Quantity<"area", NeutralSubstance>;
  readonly full: boolean;
}

/** What a stop takes, and what the tank holds on the way in and on the way out. */
export interface RouteStopLoad {
  readonly id: string;
  readonly area: Quantity<"area", NeutralSubstance>;
  readonly amount: RouteAmount;
  /** In the tank on the way in, before anything is filled in there. */
  readonly arriveWith: RouteAmount;
  readonly leaveWith: RouteAmount;
}

/** Where a tank or a hopper is filled along a route, and with how much. */
export interface RouteLoads {
  readonly type: "route-loads";
  readonly version: 1;
  readonly refill: RefillRule;
  readonly capacity: RouteAmount;
  readonly area: Quantity<"area", NeutralSubstance>;
  /** What all stops take. */
  readonly amount: RouteAmount;
  /** What is filled in, in all. */
  readonly loaded: RouteAmount;
  /** What tank and hoses hold at the end. */
  readonly leftOver: RouteAmount;
  readonly stops: readonly RouteStopLoad[];
  readonly fills: readonly RouteFill[];
}

/**
 * Where a tank or a hopper is filled along a route, and with how much. The order of the stops is the caller's.
 *
 * - `need_i = rate * area_i` is what a stop takes; `left = left - need_i` is what the tank holds behind it
 * - with `refill: "before a stop"` it is filled before a stop that it does not finish, on top of what is in it;
 *   with `"when empty"` it is driven until it is empty, and filled in the middle of a stop
 * - a filling goes to `capacity`, or to what the rest of the route takes where that is less: the last one leaves
 *   nothing but what tank and hoses keep
 * - before stops where it cannot be filled (`canFill: false`) it takes along what all of them take; before the first
 *   stop it is always filled, where the day starts
 * - the first filling also goes up to the outlet of the tank (`residualVolume`) and into the hoses
 *   (`plumbingVolume`): `loaded + startWith = what all stops take + leftOver`; with `startWith` the hoses are full already,
 *   and what they hold is in `leftOver` beside it
 *
 * @param input - `stops` in the order in which they are driven, each with `id`, `area` and, where it cannot be filled,
 *   `canFill: false`; `rate` of spray or of product, more than zero; `capacity`; `startWith`, what is in the tank of the
 *   same mix at the start, with full hoses (for a sprayer that starts empty leave it out); `residualVolume`,
 *   `plumbingVolume`; `refill`, `"before a stop"` where left out
 * @throws RatewrightError with every problem: `missing`, `type`, `range`, `unit/mismatch`, `substance/mismatch`,
 *   `duplicate` (two stops of one name); `range` on `capacity` where the day would take more than 10 000 fillings;
 *   `infeasible` on `stops[i].canFill` where a full tank does not reach from one place to fill to the next
 *
 * Source: volumes added up, no source.
 *
 * @example
 * ```ts
 * import { quantity, routeLoads } from "ratewright";
 * const route = routeLoads({
 *   stops: [
 *     { id: "town hall", area: quantity(12000, "ft2") },
 *     { id: "library", area: quantity(20000, "ft2") },
 *     { id: "north school", area: quantity(18000, "ft2") },
 *   ],
 *   rate: quantity(1.5, "gal/1000 ft2", "spray"),
 *   capacity: quantity(50, "gal", "spray"),
 * });
 * route.fills.map(({ stop, added }) => `${stop}: ${added.value} gal`);
 * // => ["town hall: 50 gal", "north school: 25 gal"]
 * route.stops.map(({ leaveWith }) => leaveWith.value); // => [32, 2, 0]
 * ```
 */
export const routeLoads = (input: {
  readonly stops: readonly RouteArea[];
  readonly rate: QuantityJson;
  readonly capacity: QuantityJson;
  readonly startWith?: QuantityJson;
  readonly residualVolume?: QuantityJson;
  readonly plumbingVolume?: QuantityJson;
  readonly refill?: RefillRule;
}): RouteLoads => {
  const read = readRouteLoads(input);
  const { stops, rate, capacity, residual, plumbing, start, refill } = read;
  const needs = stops.map(({ area }) => numberIn(timesOf(rate, area), capacity.unit));
  const total = needs.reduce((sum, need) => sum + need, 0);
  if (exceeds(total / (capacity.value - residual - plumbing), mostFills))
    tooSmall(capacity, total / mostFills + residual + plumbing);
  const canFill = stops.map((stop) => stop.canFill);
  const question = { needs, canFill, capacity: capacity.value, residual, plumbing, start, refill };
  const plan = fillPlan(question);
  const amount = (value: number): RouteAmount => likeQuantity(capacity, value) as RouteAmount;
  if (plan.tooFar !== undefined) outOfReach(plan.tooFar, stops, capacity);
  const [head] = stops as readonly [ReadArea];
  const area = (value: number): Quantity<"area", NeutralSubstance> => likeQuantity(head.area, value);
  const areas = stops.map((stop) => numberIn(stop.area, head.area.unit));
  const [areaBefore, needBefore] = [sumsBefore(areas), sumsBefore(needs)];
  const whole = areaBefore[stops.length] as number;
  const there = plan.fills.map(({ done, stop }) => {
    const share = (done - (needBefore[stop] as number)) / (needs[stop] as number);
    return Math.min(1, Math.max(0, share)) * (areas[stop] as number);
  });
  const marks = plan.fills.map(({ stop }, i) => (areaBefore[stop] as number) + (there[i] as number));
  return {
    type: "route-loads",
    version: 1,
    refill,
    capacity: amount(capacity.value),
    area: area(whole),
    amount: amount(total),
    loaded: amount(plan.fills.reduce((sum, { added }) => sum + added, 0)),
    leftOver: amount(plan.left),
    stops: stops.map((stop, i) => ({
      id: stop.id,
      area: stop.area,
      amount: amount(needs[i] as number),
      arriveWith: amount(plan.arrive[i] as number),
      leaveWith: amount(plan.leave[i] as number),
    })),
    fills: plan.fills.map((fill, i) => ({
      number: i + 1,
      stop: (stops[fill.stop] as ReadArea).id,
      doneThere: area(there[i] as number),
      before: amount(fill.before),
      added: amount(fill.added),
      after: amount(fill.after),
      area: area((marks[i + 1] ?? whole) - (marks[i] as number)),
      full: fill.after >= capacity.value * (1 - 1e-9),
    })),
  };
};

const tooSmall = (capacity: QuantityJson, least: number): never =>
  outOfRange(
    "capacity",
    capacity,
    { min: least, unit: capacity.unit },
    `{}, enough for the route in ${mostFills} fills`,
  );

/** What lies before each item of a list, and behind the last one. */
const sumsBefore = (list: readonly number[]): readonly number[] => {
  const sums = [0];
  for (const [i, item] of list.entries()) sums.push((sums[i] as number) + item);
  return sums;
};

const outOfReach = (
  { stop, needs }: { readonly stop: number; readonly needs: number },
  stops: ReadRouteLoads["stops"],
  capacity: Quantity<string, string>,
): never => {
  const at = stops.findIndex(({ canFill }, i) => i >= stop && !canFill);
  const rounded = likeQuantity(capacity, Number(needs.toPrecision(4)));
  return fail(
    "infeasible",
    `stops[${at}].canFill`,
    false,
    `a fill point on the way: from ${stops[stop]?.id} to the next one the stops take ${rounded.value} ${rounded.unit}; fill at one of them, or change the order of the stops`,
  );
};
