import {
  allOf,
  expectAmount,
  expectFields,
  expectFlag,
  expectList,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  likeQuantity,
  type NeutralSubstance,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import type { RefillRule } from "./fill-plan.js";

const fields = [
  "stops",
  "rate",
  "capacity",
  "startWith",
  "residualVolume",
  "plumbingVolume",
  "refill",
] as const;

const refillRules: readonly RefillRule[] = ["before a stop", "when empty"];

/** A day has no more stops. */
const mostStops = 1000;

/** A stop with its area, read. */
export interface ReadArea {
  readonly id: string;
  readonly area: Quantity<"area", NeutralSubstance>;
  readonly canFill: boolean;
}

/** What a route is filled for, read; volumes and masses in the unit of the tank. */
export interface ReadRouteLoads {
  readonly stops: readonly ReadArea[];
  readonly rate: Quantity<"volume/area" | "mass/area", string>;
  readonly capacity: Quantity<string, string>;
  readonly start: number;
  readonly residual: number;
  readonly plumbing: number;
  readonly refill: RefillRule;
}

const readStop = (input: unknown, at: string): ReadArea => {
  const stop = expectFields(input, ["id", "area", "canFill"], at, "a stop with its area");
  return allOf({
    id: () => expectText(stop.id, `${at}.id`, "a name that no other stop has"),
    area: () => {
      const area = expectQuantity(stop.area, { dimension: "area", bound: "positive" }, `${at}.area`);
      return ["none", "treated", "gross", "plan"].includes(area.of)
        ? (area as Quantity<"area", NeutralSubstance>)
        : fail("substance/mismatch", `${at}.area`, area, "an area, of no substance");
    },
    canFill: () => stop.canFill === undefined || expectFlag(stop.canFill, `${at}.canFill`),
  });
};

const readStops = (input: unknown): ReadRouteLoads["stops"] => {
  const list = expectList(input, "stops", "stop");
  if (list.length > mostStops) outOfRange("stops", input, { max: mostStops, count: "stops" });
  const seen = new Set<string>();
  const readers = list.map((item, i) => () => {
    const stop = readStop(item, `stops[${i}]`);
    if (seen.has(stop.id.trim()))
      fail("duplicate", `stops[${i}].id`, stop.id, "a name that no other stop has");
    seen.add(stop.id.trim());
    return stop;
  });
  return Object.values(allOf(Object.fromEntries(readers.entries())));
};

/** Reads what `routeLoads` takes, or throws all that is wrong with it. */
export const readRouteLoads = (input: unknown): ReadRouteLoads => {
  const given = expectFields(input, fields);
  const { rate, stops, refill } = allOf({
    stops: () => readStops(given.stops),
    rate: () => {
      const rate = expectAmount(
        given.rate,
        { dimensions: ["volume/area", "mass/area"], bound: "positive" },
        "rate",
      );
      return rate.of === "spray" ||
        rate.of === "none" ||
        rate.of === "product" ||
        rate.of.startsWith("product:")
        ? rate
        : fail(
            "substance/mismatch",
            "rate",
            rate,
            "a rate of spray or product; for a nutrient, productRate gives the product rate",
          );
    },
    refill: () =>
      given.refill === undefined ? "before a stop" : expectOneOf(given.refill, refillRules, "refill"),
  });
  const dimension = rate.dimension === "mass/area" ? "mass" : "volume";
  const amount = (path: "capacity" | "startWith" | "residualVolume" | "plumbingVolume") => {
    const bound = path === "capacity" ? "positive" : "non-negative";
    const read = expectQuantity(given[path], { dimension, bound }, path);
    return read.of === "none" || read.of === rate.of
      ? quantityOf(read.value, read.unit, rate.of, path)
      : fail("substance/mismatch", path, read, `a ${dimension} of ${rate.of}, as the rate`);
  };
  const zero = (path: "startWith" | "residualVolume" | "plumbingVolume") =>
    given[path] === undefined ? undefined : amount(path);
  const { capacity, start, residual, plumbing } = allOf({
    capacity: () => amount("capacity"),
    start: () => zero("startWith"),
    residual: () => zero("residualVolume"),
    plumbing: () => zero("plumbingVolume"),
  });
  const within = (q: Quantity<string, string> | undefined): number =>
    q === undefined ? 0 : numberIn(q, capacity.unit);
  const read = {
    stops,
    rate,
    capacity,
    refill,
    start: within(start),
    residual: within(residual),
    plumbing: within(plumbing),
  };
  expectRoom(read);
  return read;
};

/** What the tank must hold beside what it cannot put out. */
const expectRoom = ({ capacity, start, residual, plumbing }: ReadRouteLoads): void => {
  const like = (value: number) => likeQuantity(capacity, value);
  if (start > capacity.value)
    outOfRange(
      "startWith",
      like(start),
      { max: capacity.value, unit: capacity.unit },
      "{}, what the tank or hopper holds",
    );
  if (residual >= capacity.value)
    outOfRange(
      "residualVolume",
      like(residual),
      { below: capacity.value, unit: capacity.unit },
      "{}, what the tank holds",
    );
  if (residual + plumbing >= capacity.value)
    outOfRange(
      "plumbingVolume",
      like(plumbing),
      { below: capacity.value - residual, unit: capacity.unit },
      "{}, what the tank holds on top of the residual volume",
    );
};
