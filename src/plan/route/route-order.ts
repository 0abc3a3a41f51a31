import type { CivilDate } from "../../calendar/index.js";
import type { LedgerEntry } from "../../ledger/index.js";
import {
  type Finding,
  fail,
  type Problem,
  perOf,
  type Quantity,
  RatewrightError,
} from "../../quantity/index.js";
import type { JobApplicator, SheetUnits } from "../job/job.js";
import { withSuggestions } from "../job/with-suggestions.js";
import { cautionsFor, type WorkOrderCaution } from "../visit/cautions.js";
import type { SprayOrder } from "../visit/spray-order.js";
import type { SpreadOrder } from "../visit/spread-order.js";
import type { WithFindings } from "../visit/with-findings.js";
import { sprayed, spreadOut } from "./fill-route.js";
import { ofFills } from "./of-fills.js";
import { readRoute, routePath } from "./read-route.js";
import type { RouteJob } from "./route-job.js";
import { type RouteAmount, type RouteLoads, routeLoads } from "./route-loads.js";
import { type RouteLimits, type RouteProduct, stopEntries, stopLimits } from "./stop-application.js";

/** A stop of a route: what goes down, what the tank holds, the entries for its ledger, and its limits. */
export interface RouteOrderStop {
  readonly id: string;
  readonly name: string;
  readonly address?: string;
  readonly area: Quantity<"area", "none">;
  /** Spray, or product of the hopper. */
  readonly amount: RouteAmount;
  readonly arriveWith: RouteAmount;
  readonly leaveWith: RouteAmount;
  readonly products: readonly RouteProduct[];
  /** For the ledger of this site, once it is done: `ledgerWith` takes each as it is. */
  readonly entries: readonly LedgerEntry[];
  readonly limits: RouteLimits;
}

/** The order of a day's route. Plain data: through JSON its quantities become `{ value, unit, of }`. */
export interface RouteOrder {
  readonly type: "route-order";
  readonly version: 1;
  readonly title: string;
  readonly date: CivilDate;
  readonly units: SheetUnits;
  readonly applicator: JobApplicator;
  readonly method: "spray" | "spread";
  /** Where the machine is filled, and with how much. */
  readonly loads: RouteLoads;
  /** The mix: each product with its amount for each filling, and the order in which they go in. */
  readonly spray?: SprayOrder;
  readonly spread?: SpreadOrder;
  readonly stops: readonly RouteOrderStop[];
  /** What is left of each product in tank and hoses, or in the hopper. */
  readonly leftOver: readonly RouteProduct[];
  /** What is unusual. An empty list is no approval: see `notChecked`. */
  readonly findings: readonly Finding[];
  readonly cautions: readonly WorkOrderCaution[];
  readonly notChecked: readonly string[];
}

const compute = (input: unknown): RouteOrder => {
  const route = readRoute(input);
  const { treatment, sprayer } = route;
  const method = treatment.method;
  const filled =
    treatment.method === "spray"
      ? sprayed(route, treatment, sprayer ?? fail("missing", "sprayer", undefined, "a sprayer"))
      : spreadOut(route, treatment);
  const { loads, order, amounts } = filled.value;
  const named = (area: Quantity<"area", "none">, out: RouteAmount): readonly RouteProduct[] =>
    amounts(area, out).map(({ product, amount }) => ({
      product: product.id,
      productName: product.name,
      amount,
    }));
  const stops = route.stops.map((stop, i): WithFindings<RouteOrderStop> => {
    const { amount, arriveWith, leaveWith } = loads.stops[i] as RouteLoads["stops"][number];
    const entries = stopEntries({
      route,
      stop,
      products: amounts(stop.area, amount),
      ...(method === "spray" && { spray: amount as Quantity<"volume", string> }),
    });
    const limits = stopLimits(route, stop, entries);
    const { id, name, address, area } = stop;
    const where = { id, name, ...(address !== undefined && { address }), area };
    const products = named(stop.area, amount);
    return {
      ...limits,
      value: { ...where, amount, arriveWith, leaveWith, products, entries, limits: limits.value },
    };
  });
  const perArea = method === "spray" ? sprayer?.applicationVolume : order.spread?.rate;
  return {
    type: "route-order",
    version: 1,
    title: route.title,
    date: route.date,
    units: route.units,
    applicator: route.applicator,
    method,
    loads,
    ...order,
    stops: stops.map(({ value }) => value),
    leftOver: named(perOf(loads.leftOver, perArea) as Quantity<"area", "none">, loads.leftOver),
    findings: [
      ...filled.findings.map((finding) => ({
        ...finding,
        text: ofFills(finding.text),
        ...(finding.path !== undefined && { path: routePath(finding.path, method) }),
      })),
      ...stops.flatMap(({ findings }) => findings),
    ],
    cautions: cautionsFor([treatment], sprayer),
    notChecked: [
      ...new Set([...filled.notChecked, ...stops.flatMap(({ notChecked }) => notChecked)]),
      "Weather, soil moisture, and everything else on the labels and in local codes.",
    ],
  };
};

const computed = (input: unknown): RouteOrder => {
  const { type } = Object(input) as { readonly type?: unknown };
  if (type === "route-order")
    fail("type", "type", type, '"route-job": the route that the order was made from, not the order');
  try {
    return compute(input);
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(withSuggestions(error.problems, input));
  }
};

/**
 * The order of a day's route: many sites, one mix or one spreader product, one machine. Where the tank or the hopper is
 * filled, with how much of each product and in which order, what it holds on the way, what goes down at each stop, the
 * entries for the ledger of each site, and the limits of the labels at every stop. {@link routeLoads} has the arithmetic
 * of the fillings; all products of a stop are one application to the limits.
 *
 * The order of the stops is the caller's. Nothing here authorizes an application: the label governs.
 *
 * @param job - a route, or what JSON left of one
 * @throws RatewrightError with every problem of the route, each with its path such as `stops[2].area`: unknown fields
 *   (`type`, with the near one), `missing`, `conflict` (`mix` beside `spread`, `loadSplit` of the sprayer),
 *   `duplicate` (two stops of one name; a ledger that has this route already), `infeasible` as {@link routeLoads},
 *   and what the products and machines of a `Job` throw; `date`, `text`
 *
 * @example
 * ```ts
 * import { routeOrder } from "ratewright";
 * const order = routeOrder({
 *   type: "route-job",
 *   version: 1,
 *   title: "Tuesday feed",
 *   date: "2026-05-05",
 *   products: [{ id: "feed-a", form: "dry", analysis: "24-0-11" }],
 *   spread: { product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   spreader: { hopper: { value: 100, unit: "lb" } },
 *   stops: [
 *     { id: "town hall", area: { value: 12000, unit: "ft2" } },
 *     { id: "library", area: { value: 20000, unit: "ft2" } },
 *   ],
 * });
 * order.loads.fills.map(({ stop, added }) => `${stop}: ${added.value} lb`);
 * // => ["town hall: 100 lb", "library: 20 lb"]
 * order.stops[1]?.entries[0]?.amount; // => { value: 75, unit: "lb", of: "product" }
 * ```
 */
export const routeOrder = (job: RouteJob): RouteOrder => computed(job);

/** What {@link tryRouteOrder} gives: the order, or all that is wrong with the route. */
export type RouteOrderResult =
  | { readonly order: RouteOrder; readonly problems: readonly [] }
  | { readonly order: null; readonly problems: readonly Problem[] };

/**
 * {@link routeOrder} for an app: returns the problems of a route instead of throwing them.
 *
 * @param job - anything
 *
 * @example
 * ```ts
 * import { tryRouteOrder } from "ratewright";
 * const { problems } = tryRouteOrder({ type: "route-job", version: 1, title: "No stops", date: "2026-05-05" });
 * problems.map(({ path }) => path); // => ["stops", "mix"]
 * ```
 */
export const tryRouteOrder = (job: unknown): RouteOrderResult => {
  try {
    return { order: computed(job), problems: [] };
  } catch (error) {
    if (error instanceof RatewrightError) return { order: null, problems: error.problems };
    throw error;
  }
};
